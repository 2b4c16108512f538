package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.drawing.Stations;
import org.neckgeom.heel.BackSet;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The drawings of a sheet, in the order they are shown. */
final class Figures {

    private Figures() {}

    static List<Figure> of(Contents contents) {
        NeckShape shape = contents.shape();
        Shown shown = contents.shown();
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("plan", PlanDrawing.of(shape, shown), planWords(contents, shape)));
        figures.add(side(contents, shape, shown));
        contents.scarf()
                .flatMap(joint -> shape.head().map(head -> ScarfDrawing.of(shape, joint, head, shown)))
                .ifPresent(figures::add);
        contents.neckSet()
                .flatMap(set -> contents.design()
                        .heel()
                        .filter(Heel::isFittedByItsFace)
                        .map(heel -> contents.settled()
                                .offHeel()
                                .map(corners -> asRead(heel, corners, shown))
                                .orElseGet(() -> lever(set, heel, shown))))
                .ifPresent(figures::add);
        int i = 0;
        Stations stations = contents.stations();
        for (Stations.Station cut : stations.cuts()) {
            i++;
            figures.add(SectionDrawing.of(shape, shown, cut.x(), cut.name(), stations.woodAt(cut.x()), "section-" + i));
        }
        return List.copyOf(figures);
    }

    private static String planWords(Contents contents, NeckShape shape) {
        boolean room = shape.headShape().map(head -> !head.hasOutline()).orElse(false);
        boolean wings = shape.headShape()
                .map(head -> !head.wings(shape.stockMm()).isEmpty())
                .orElse(false);
        return "Bass side to the left. Frets from the nut, in "
                + contents.shown().unitInWords()
                + (shape.fan().isPresent() ? ", at the bass edge of the board" : "")
                + (contents.design().channel().filter(Channel::isLocatingGroove).isPresent()
                        ? ". Dashes: the locating groove under the board"
                        : ". Dashes: the channel under the board")
                + (room ? ", and the room the head's own outline has" : "")
                + "."
                + (wings ? " Thin lines along the head: the seams of its wings." : "");
    }

    private static Figure side(Contents contents, NeckShape shape, Shown shown) {
        boolean isOpen = contents.design()
                        .heel()
                        .filter(heel -> !(heel.joint() instanceof PlateScrews))
                        .isPresent()
                && contents.design().back().heelTransition().isEmpty();
        String heel = isOpen ? " The heel's curve is not given: the line is its mating face. Carve your own." : "";
        return new Figure(
                "side",
                SideDrawing.of(shape, shown, contents.scarf()),
                "Strings to the left. Stations from the nut along the neck, depths from the glue face." + heel);
    }

    /** What comes off by the readings at the bridge. */
    private static Figure asRead(Heel heel, HeelCorners corners, Shown shown) {
        return HeelDrawing.of(
                heel,
                corners,
                "Wood to take off, by the readings at the bridge, so that frets and centreline meet it in their places.",
                shown);
    }

    /**
     * The wood to take off the heel for a millimetre, or a round part of an inch, up at the bridge: the rate for any
     * reading.
     */
    private static Figure lever(BackSet set, Heel heel, Shown shown) {
        Amount<Length> rise = shown.style().nearMillimetre();
        HeelCorners corners = set.correction(heel, rise, ShopUnits.mm(0));
        return HeelDrawing.of(
                heel,
                corners,
                "Wood to take off to raise the line of the frets by "
                        + shown.length(rise.libraryValue()) + " at the bridge, "
                        + shown.length(set.reach().libraryValue()) + " away.",
                shown);
    }
}
