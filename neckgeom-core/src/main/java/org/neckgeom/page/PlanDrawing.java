package org.neckgeom.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.neckgeom.drawing.HeadShape;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Spot;

/** The neck from the strings' side, head up, bass to the left: taper, frets, strings, channel under the board. */
final class PlanDrawing {

    /** How far the chords of an arc may leave it. */
    private static final double ARC_MM = 0.02;

    /** Frets whose place is printed: those with a marker, and the first. Common practice. */
    private static final List<Integer> MARKED = List.of(1, 3, 5, 7, 9, 12, 15, 17, 19, 21, 24);

    private final NeckShape shape;
    private final Neck design;
    private final Shown shown;
    private final Optional<HeadShape> head;
    private final Upright page;
    private final LabelColumn frets = LabelColumn.leftOf(Upright.LEFT_EDGE - 8);
    private final LabelColumn widths = LabelColumn.rightOf(Upright.RIGHT_EDGE + 8);

    private PlanDrawing(NeckShape shape, Shown shown) {
        this.shape = shape;
        this.design = shape.design();
        this.shown = shown;
        this.head = shape.headShape().map(HeadShape::seenInPlan);
        double half = 0;
        double tip = Math.min(-10, shape.anchorEnd());
        double end = shape.boardEnd();
        List<Spot> corners = new ArrayList<>(headOutline());
        corners.addAll(shape.edge(-1));
        corners.addAll(shape.edge(1));
        for (Spot corner : corners) {
            half = Math.max(half, Math.abs(corner.vMm()));
            tip = Math.min(tip, corner.uMm());
            end = Math.max(end, corner.uMm());
        }
        this.page = Upright.fitting(tip, end, -half, half, 1);
    }

    static Drawing of(NeckShape shape, Shown shown) {
        return new PlanDrawing(shape, shown).drawn();
    }

    private List<Spot> headOutline() {
        return head.map(HeadShape::outline).orElse(List.of());
    }

    private Drawing drawn() {
        Drawing drawing = new Drawing(
                "Plan",
                "The neck from the front, head at the top, bass side to the left, at one scale. "
                        + design.fingerboard() + "; " + design.frets() + " frets; the body begins at fret "
                        + design.bodyAtFret()
                        + (design.bars().isPresent()
                                ? ". The channel and two bars lie under the board."
                                : design.channel()
                                                .filter(Channel::isLocatingGroove)
                                                .isPresent()
                                        ? ". The locating groove lies under the board."
                                        : ". The channel lies under the board.")
                        + shape.fan().map(fan -> " The frets are fanned.").orElse("")
                        + (shape.strings().isEmpty()
                                ? ""
                                : " " + shape.strings().size() + " strings, each in its place."),
                page.height());
        head.ifPresent(there -> head(drawing, there));
        shape.anchorPlan().ifPresent(anchor -> {
            drawing.shape("wood", page.all(anchor));
            widths.add(
                    page.at(shape.anchorEnd(), shape.halfWidth(0)), shown.label(-shape.anchorEnd()), "for the anchor");
        });
        board(drawing);
        design.channel().ifPresent(channel -> channel(drawing, channel));
        shape.barsPlan().forEach(bar -> drawing.shape("hidden", page.all(bar)));
        frets(drawing);
        strings(drawing);
        drawing.line("centre", centre().uMm(), page.top() - 8, centre().uMm(), page.bottom() + 8);
        frets.drawOn(drawing, 2, page.height() - 2);
        widths.drawOn(drawing, 2, page.height() - 2);
        return drawing;
    }

    private Spot centre() {
        return page.at(0, 0);
    }

    private void head(Drawing drawing, HeadShape there) {
        List<Spot> corners = page.all(headOutline());
        drawing.shape(there.hasOutline() ? "wood" : "outline", corners);
        for (List<Spot> seam : there.wings(shape.stockMm())) {
            drawing.through("seam", page.all(seam));
        }
        there.slots()
                .forEach(slot -> drawing.shape(
                        "hollow", page.all(slot.straightened(ARC_MM).spots())));
        // The corners run from the nut line's treble end to the tip and back to its bass end.
        Spot tip = corners.get(corners.size() / 2 - 1);
        Spot nut = corners.get(0);
        Spot side = new Spot((tip.uMm() + nut.uMm()) / 2, (tip.vMm() + nut.vMm()) / 2);
        widths.add(
                tip,
                shown.label(there.head().widthAtTipMm()),
                there.hasOutline() ? "head wide at tip" : "head room wide");
        widths.add(side, shown.label(there.head().lengthMm()), "long, on its face");
        if (there.hasOutline()) {
            widths.add(nut, shown.label(there.head().widthAtBreakLineMm()), "at break line");
        }
    }

    private void board(Drawing drawing) {
        List<Spot> outline = new ArrayList<>(shape.edge(-1));
        List<Spot> treble = new ArrayList<>(shape.edge(1));
        Collections.reverse(treble);
        outline.addAll(treble);
        drawing.shape("board", page.all(outline));
        width(0, "wide at nut");
        width(12, "at fret 12");
        if (design.bodyAtFret() != 12) {
            width(design.bodyAtFret(), "body, fret " + design.bodyAtFret());
        }
    }

    /** Across the neck, square to it, where the fret crosses its middle. */
    private void width(int fret, String words) {
        double x = shape.fret(fret);
        widths.add(page.at(x, shape.halfWidth(x)), shown.label(2 * shape.halfWidth(x)), words);
    }

    private void frets(Drawing drawing) {
        for (int n = 0; n <= design.frets(); n++) {
            List<Spot> line = shape.fretLine(n);
            drawing.through(n == 0 ? "nut" : "fret", page.all(line));
            if (n == 0 || MARKED.contains(n)) {
                double x = line.get(0).uMm();
                frets.add(page.all(line).get(0), shown.column(x), n == 0 ? "nut" : "fret " + n);
            }
        }
    }

    private void strings(Drawing drawing) {
        List<List<Spot>> strings = shape.strings();
        strings.forEach(string -> drawing.through("string", page.all(string)));
        List<Spot> posts = head.map(HeadShape::posts).orElse(List.of());
        posts.forEach(post -> drawing.ring(page.at(post.uMm(), post.vMm())));
        for (int i = 0; i < strings.size() && strings.size() == posts.size(); i++) {
            drawing.through(
                    "string", page.all(List.of(posts.get(i), strings.get(i).get(0))));
        }
    }

    private void channel(Drawing drawing, Channel channel) {
        drawing.shape(
                "hidden",
                page.all(shape.channelPlan(channel).straightened(ARC_MM).spots()));
        double at = channel.startMm() + channel.lengthMm() * 0.62;
        widths.add(
                page.at(at, channel.widthMm() / 2),
                shown.label(channel.widthMm()),
                channel.isLocatingGroove() ? "groove wide" : "channel wide");
        if (channel.hasAdjusterPocket()) {
            double pocket = channel.adjusterPocketStartMm() + channel.adjusterPocketLengthMm() / 2;
            widths.add(
                    page.at(pocket, channel.adjusterPocketWidthMm() / 2),
                    shown.label(channel.adjusterPocketWidthMm()),
                    "pocket wide");
        }
    }
}
