package org.neckgeom.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Head;
import org.neckgeom.design.NeckDesign;

/** The neck from the strings' side, head up, bass to the left: taper, frets, strings, channel under the board. */
final class PlanDrawing {

    /** Frets whose place is printed: those with a marker, and the first. Common practice. */
    private static final List<Integer> MARKED = List.of(1, 3, 5, 7, 9, 12, 15, 17, 19, 21, 24);

    private static final double STRING_INSET_MM = 3;

    private final NeckShape shape;
    private final NeckDesign design;
    private final Shown shown;
    private final Upright page;
    private final LabelColumn frets = LabelColumn.leftOf(Upright.LEFT_EDGE - 8);
    private final LabelColumn widths = LabelColumn.rightOf(Upright.RIGHT_EDGE + 8);

    private PlanDrawing(NeckShape shape, Shown shown) {
        this.shape = shape;
        this.design = shape.design();
        this.shown = shown;
        double half = Math.max(shape.halfWidth(0), shape.halfWidth(shape.boardEnd()));
        double tip = -10;
        for (Point corner : headCorners()) {
            half = Math.max(half, Math.abs(corner.v()));
            tip = Math.min(tip, corner.u());
        }
        this.page = Upright.fitting(tip, shape.boardEnd(), -half, half, 1);
    }

    static Drawing of(NeckShape shape, Shown shown) {
        return new PlanDrawing(shape, shown).drawn();
    }

    private List<Point> headCorners() {
        return shape.head()
                .map(head -> shape.headPlan(head, StrictMath.cos(head.pitchRad())))
                .orElse(List.of());
    }

    private Drawing drawn() {
        Drawing drawing = new Drawing(
                "Plan",
                "The neck from the front, head at the top, bass side to the left, at one scale. "
                        + design.fingerboard() + "; " + design.frets() + " frets; the body begins at fret "
                        + design.bodyAtFret() + ". The channel lies under the board.",
                page.height());
        shape.head().ifPresent(head -> head(drawing, head));
        board(drawing);
        design.channel().ifPresent(channel -> channel(drawing, channel));
        frets(drawing);
        strings(drawing);
        drawing.line("centre", centre().u(), page.top() - 8, centre().u(), page.bottom() + 8);
        frets.drawOn(drawing, 2, page.height() - 2);
        widths.drawOn(drawing, 2, page.height() - 2);
        return drawing;
    }

    private Point centre() {
        return page.at(0, 0);
    }

    private void head(Drawing drawing, Head head) {
        List<Point> corners = page.all(headCorners());
        drawing.shape("outline", corners);
        // The corners run from the nut line's bass end to the tip and back to its treble end.
        Point tip = corners.get(2);
        Point side = new Point(
                (tip.u() + corners.get(3).u()) / 2, (tip.v() + corners.get(3).v()) / 2);
        widths.add(tip, shown.length(head.widthMm()), "head room wide");
        widths.add(side, shown.length(head.lengthMm()), "long, on its face");
    }

    private void board(Drawing drawing) {
        List<Point> outline = new ArrayList<>(shape.edge(-1));
        List<Point> treble = new ArrayList<>(shape.edge(1));
        Collections.reverse(treble);
        outline.addAll(treble);
        drawing.shape("board", page.all(outline));
        width(0, "wide at nut");
        width(shape.fret(12), "at fret 12");
        if (design.bodyAtFret() != 12) {
            width(shape.bodyJoint(), "body, fret " + design.bodyAtFret());
        }
    }

    private void width(double x, String words) {
        widths.add(page.at(x, shape.halfWidth(x)), shown.length(2 * shape.halfWidth(x)), words);
    }

    private void frets(Drawing drawing) {
        for (int n = 0; n <= design.frets(); n++) {
            double x = shape.fret(n);
            Point bass = page.at(x, -shape.halfWidth(x));
            Point treble = page.at(x, shape.halfWidth(x));
            drawing.line(n == 0 ? "nut" : "fret", bass.u(), bass.v(), treble.u(), treble.v());
            if (n == 0 || MARKED.contains(n)) {
                frets.add(bass, shown.column(x), n == 0 ? "nut" : "fret " + n);
            }
        }
    }

    private void strings(Drawing drawing) {
        if (!design.hasStrings()) {
            return;
        }
        int courses = design.strings().courses();
        for (int i = 0; i < courses; i++) {
            double share = courses == 1 ? 0 : 2.0 * i / (courses - 1) - 1;
            Point from = page.at(0, share * (shape.halfWidth(0) - STRING_INSET_MM));
            double end = shape.boardEnd();
            Point to = page.at(end, share * (shape.halfWidth(end) - STRING_INSET_MM));
            drawing.line("string", from.u(), from.v(), to.u(), to.v());
        }
    }

    private void channel(Drawing drawing, Channel channel) {
        drawing.shape("hidden", page.all(shape.channelPlan(channel)));
        double at = channel.startMm() + channel.lengthMm() * 0.62;
        widths.add(page.at(at, channel.widthMm() / 2), shown.length(channel.widthMm()), "channel wide");
        if (channel.hasPocket()) {
            double pocket = channel.pocketStartMm() + channel.pocketLengthMm() / 2;
            widths.add(
                    page.at(pocket, channel.pocketWidthMm() / 2), shown.length(channel.pocketWidthMm()), "pocket wide");
        }
    }
}
