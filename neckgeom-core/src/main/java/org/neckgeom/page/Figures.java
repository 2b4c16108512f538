package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.drawing.Stations;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The drawings of a sheet, by the place where they are wanted. */
final class Figures {

    private Figures() {}

    /** The whole neck from the front and from the side, with its measures. */
    static List<Figure> measures(Contents contents) {
        NeckShape shape = contents.shape();
        Shown shown = contents.shown();
        return List.of(
                new Figure("plan", PlanDrawing.of(shape, shown), planWords(contents, shape)),
                side(contents, shape, shown));
    }

    /** The joint beside its section, and so of the head as it was read. */
    static Optional<Figure> scarf(Contents contents) {
        Neck design = contents.design();
        Neck made = contents.job()
                .flatMap(job -> job.plan().made().head())
                .map(design::head)
                .orElse(design);
        NeckShape shape = new NeckShape(made, contents.settled());
        Optional<ScarfJoint> joint = contents.scarf()
                .map(drawn -> contents.job()
                        .map(job -> ScarfJoint.of(
                                shape.head().orElseThrow(), job.blank(), FannedFrets.nutSlant(shape.design())))
                        .orElse(drawn));
        return joint.flatMap(sawn -> shape.head().map(head -> ScarfDrawing.of(shape, sawn, head, contents.shown())));
    }

    /** What comes off the heel by what was read at the bridge. */
    static Optional<Figure> heelAsRead(Contents contents) {
        return contents.neckSet()
                .flatMap(set -> heel(contents)
                        .flatMap(heel ->
                                contents.settled().offHeel().map(corners -> asRead(heel, corners, contents.shown()))));
    }

    /** The heel's mating face with what comes off it so far; nothing where it is not fitted by its face. */
    static Optional<Figure> heelFace(Contents contents) {
        return heelAsRead(contents)
                .or(() -> contents.neckSet()
                        .flatMap(set -> heel(contents)
                                .map(heel -> HeelDrawing.of(
                                        heel,
                                        set.correction(heel, ShopUnits.mm(0), ShopUnits.mm(0)),
                                        "Nothing comes off before height and centreline are read at the bridge.",
                                        contents.shown()))));
    }

    /** What would come off the heel for a round size, where nothing was read at the bridge. */
    static Optional<Figure> heelLever(Contents contents) {
        return contents.neckSet()
                .filter(set -> contents.settled().offHeel().isEmpty())
                .flatMap(set -> heel(contents).map(heel -> lever(set, heel, contents.shown())));
    }

    private static Optional<Heel> heel(Contents contents) {
        return contents.design().heel().filter(Heel::isFittedByItsFace);
    }

    static List<Figure> sections(Contents contents) {
        NeckShape shape = contents.shape();
        List<Figure> figures = new ArrayList<>();
        int i = 0;
        Stations stations = contents.stations();
        for (Stations.Station cut : stations.cuts()) {
            i++;
            figures.add(SectionDrawing.of(
                    shape, contents.shown(), cut.x(), cut.name(), stations.woodAt(cut.x()), "section-" + i));
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
