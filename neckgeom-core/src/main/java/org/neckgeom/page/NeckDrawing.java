package org.neckgeom.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.neckgeom.drawing.HeadShape;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.neck.Channel;
import org.neckgeom.shape.Spot;

/** The whole neck at a glance, head to the left: from above and from the side at one scale, what is cut so far shown as cut. */
final class NeckDrawing {

    /** How far the chords of an arc may leave it. */
    private static final double ARC_MM = 0.02;

    private static final double EDGE = 6;
    private static final double TOP = 20;
    private static final double BETWEEN = 30;
    private static final double LABELS = 20;

    private final NeckShape shape;
    private final Shown shown;
    private final boolean isCut;
    private final Optional<HeadShape> head;
    private final double tip;
    private final double end;
    private final double scale;
    private final double half;
    private final double above;
    private final double below;

    private NeckDrawing(NeckShape shape, Shown shown, boolean isCut) {
        this.shape = shape;
        this.shown = shown;
        this.isCut = isCut;
        this.head = shape.headShape().map(HeadShape::seenInPlan);
        List<Spot> plan = new ArrayList<>(outline());
        plan.addAll(shape.edge(-1));
        plan.addAll(shape.edge(1));
        shape.anchorPlan().ifPresent(plan::addAll);
        List<Spot> side = new ArrayList<>(wood());
        side.addAll(shape.boardTop());
        double least = 0;
        double most = shape.boardEnd();
        double wide = 0;
        double high = 0;
        double deep = 0;
        for (Spot spot : plan) {
            wide = Math.max(wide, Math.abs(spot.vMm()));
        }
        for (Spot spot : side) {
            high = Math.max(high, spot.vMm());
            deep = Math.max(deep, -spot.vMm());
        }
        plan.addAll(side);
        for (Spot spot : plan) {
            least = Math.min(least, spot.uMm());
            most = Math.max(most, spot.uMm());
        }
        this.tip = least;
        this.end = most;
        this.half = wide;
        this.above = high;
        this.below = deep;
        this.scale = (Drawing.WIDTH - 2 * EDGE) / (end - tip);
    }

    /**
     * Draws it.
     *
     * @param isCut whether the channel is cut
     */
    static Figure of(NeckShape shape, Shown shown, boolean isCut) {
        return new NeckDrawing(shape, shown, isCut).figure();
    }

    private Figure figure() {
        String cut = shape.design()
                .channel()
                .map(channel -> channel.isLocatingGroove() ? "locating groove" : "channel")
                .map(name -> isCut ? " The " + name + " is cut." : " Dashes: the " + name + ", not cut yet.")
                .orElse("");
        Drawing drawing = new Drawing(
                "The neck",
                "The neck from above and from the bass side, head to the left, both at one scale. "
                        + shape.design().frets() + " frets, body at fret "
                        + shape.design().bodyAtFret() + "." + cut,
                TOP + (2 * half + above + below) * scale + BETWEEN + LABELS);
        above(drawing);
        side(drawing);
        label(drawing, 0, "nut", "middle");
        double joint = shape.bodyJoint();
        label(drawing, joint, "body, " + shown.length(joint), "middle");
        return new Figure("neck", drawing, "From above, treble side at the top, and from the bass side." + cut);
    }

    private List<Spot> outline() {
        return head.map(HeadShape::outline).orElse(List.of());
    }

    private double u(double x) {
        return EDGE + (x - tip) * scale;
    }

    /** The strings' side with the head to the left has the treble side at the top. */
    private List<Spot> plan(List<Spot> points) {
        return points.stream()
                .map(p -> new Spot(u(p.uMm()), TOP + (half - p.vMm()) * scale))
                .toList();
    }

    private List<Spot> turned(List<Spot> points) {
        double face = TOP + (2 * half + above) * scale + BETWEEN;
        return points.stream()
                .map(p -> new Spot(u(p.uMm()), face - p.vMm() * scale))
                .toList();
    }

    private void above(Drawing drawing) {
        head.ifPresent(there -> {
            drawing.shape(there.hasOutline() ? "wood" : "outline", plan(outline()));
            there.slots()
                    .forEach(slot -> drawing.shape(
                            "hollow", plan(slot.straightened(ARC_MM).spots())));
            there.posts().forEach(post -> drawing.ring(plan(List.of(post)).get(0)));
        });
        shape.anchorPlan().ifPresent(anchor -> drawing.shape("wood", plan(anchor)));
        List<Spot> board = new ArrayList<>(shape.edge(-1));
        List<Spot> treble = new ArrayList<>(shape.edge(1));
        Collections.reverse(treble);
        board.addAll(treble);
        drawing.shape("board", plan(board));
        for (int n = 0; n <= shape.design().frets(); n++) {
            drawing.through(n == 0 ? "nut" : "fret", plan(shape.fretLine(n)));
        }
        shape.design()
                .channel()
                .ifPresent(channel -> drawing.shape(
                        isCut ? "hollow" : "hidden",
                        plan(shape.channelPlan(channel).straightened(ARC_MM).spots())));
        shape.barsPlan().forEach(bar -> drawing.shape("hidden", plan(bar)));
    }

    private List<Spot> wood() {
        List<Spot> wood = new ArrayList<>(shape.head().isPresent() ? shape.headSide() : anchor());
        wood.addAll(shape.backLineToFace());
        if (hasFace()) {
            List<Spot> face = new ArrayList<>(shape.heelFace());
            Collections.reverse(face);
            wood.addAll(face);
        } else {
            wood.add(new Spot(shape.woodEnd(), 0));
        }
        return wood;
    }

    private boolean hasFace() {
        return shape.woodEnd() <= shape.bodyJoint() && shape.design().heel().isPresent();
    }

    private List<Spot> anchor() {
        double to = shape.anchorEnd();
        return to < 0 ? List.of(new Spot(to, 0), new Spot(to, -shape.drawnDepth(0))) : List.of(new Spot(0, 0));
    }

    private void side(Drawing drawing) {
        drawing.shape("wood", turned(wood()));
        if (shape.head().isPresent()) {
            shape.veneersSide().forEach(veneer -> drawing.shape("board", turned(veneer)));
        }
        List<Spot> board = new ArrayList<>(shape.boardTop());
        board.add(new Spot(shape.boardEnd(), 0));
        board.add(new Spot(0, 0));
        drawing.shape("board", turned(board));
        shape.design().channel().ifPresent(channel -> channel(drawing, channel));
    }

    private void channel(Drawing drawing, Channel channel) {
        drawing.shape(
                isCut ? "hollow" : "hidden",
                turned(shape.channelSide(channel).straightened(ARC_MM).spots()));
    }

    private void label(Drawing drawing, double x, String words, String anchor) {
        double u = u(x);
        double mid = TOP + 2 * half * scale + BETWEEN / 2;
        drawing.line("leader", u, TOP + half * scale, u, mid - 8);
        drawing.label("words halo", anchor, u, mid + 3, words);
    }
}
