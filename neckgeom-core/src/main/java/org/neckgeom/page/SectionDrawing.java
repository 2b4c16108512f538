package org.neckgeom.page;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.neck.Channel;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.WoodAt;

/** The neck cut across at one station, seen from the body, bass to the left: board, wood, channel, rod, wood left. */
final class SectionDrawing {

    private static final double LEFT_EDGE = 100;
    private static final double RIGHT_EDGE = Drawing.WIDTH - LEFT_EDGE;
    private static final double ROOM = RIGHT_EDGE - LEFT_EDGE - 20;
    private static final double TOP = 14;
    private static final double LEAST_HEIGHT = 122;
    private static final double MOST_SCALE = 3.2;

    private final NeckShape shape;
    private final Shown shown;
    private final double x;
    private final double scale;
    private final double middle;

    private SectionDrawing(NeckShape shape, Shown shown, double x) {
        this.shape = shape;
        this.shown = shown;
        this.x = x;
        this.scale = Math.min(MOST_SCALE, ROOM / (2 * shape.halfWidth(x)));
        this.middle = shape.channelMiddle(x);
    }

    /**
     * Draws a section.
     *
     * @param x station
     * @param where the station in words, such as {@code fret 5}
     * @param left wood left there, if the channel reaches it
     */
    static Figure of(NeckShape shape, Shown shown, double x, String where, Optional<WoodAt> left, String id) {
        return new SectionDrawing(shape, shown, x).figure(where, left, id);
    }

    private Figure figure(String where, Optional<WoodAt> left, String id) {
        double board = shape.design().boardThicknessAtMm(x);
        double depth = shape.backDepth(x);
        double height = Math.max(LEAST_HEIGHT, (board + depth) * scale + 2 * TOP);
        Optional<Channel> channel = shape.sectionChannel().filter(c -> c.depthAtMm(x) > 0);
        String words = "Cut across at " + where + ", seen from the body, bass side to the left: "
                + shown.length(2 * shape.halfWidth(x)) + " wide, wood " + shown.length(depth) + " deep, board "
                + shown.length(board) + " thick"
                + channel.map(c -> (c.isLocatingGroove() ? ", groove " : ", channel ")
                                + shown.by(c.widthAtMm(x), c.depthAtMm(x))
                                + shape.channelOff(x, shown)
                                        .map(off -> ", " + off)
                                        .orElse(""))
                        .orElse(", no channel here")
                + left.map(wood -> ", " + shown.length(wood.woodMm()) + " of wood left")
                        .orElse("") + ".";
        Drawing drawing = new Drawing("Section at " + where, words, height);
        drawing.shape("wood", page(shape.section(x)));
        drawing.shape("board", page(shape.boardSection(x)));
        LabelColumn west = LabelColumn.leftOf(LEFT_EDGE - 8);
        LabelColumn east = LabelColumn.rightOf(RIGHT_EDGE + 8);
        double a = shape.halfWidth(x);
        west.add(at(new Spot(-a * 0.8, board / 2)), shown.label(board), "board thick");
        east.add(at(new Spot(a, 0)), shown.label(2 * a), "wide");
        east.add(at(new Spot(0, -depth)), shown.label(depth), "wood deep");
        shape.stripsAcross(x).forEach(joint -> drawing.through("seam", page(joint)));
        channel.ifPresent(cut -> channel(drawing, west, east, cut));
        shape.barsAcross(x).forEach(bar -> drawing.shape("rod", page(bar)));
        left.ifPresent(wood -> woodLeft(drawing, west, wood));
        west.drawOn(drawing, 0, height);
        east.drawOn(drawing, 0, height);
        return new Figure(id, drawing, shown.length(x) + " from the nut.");
    }

    private void channel(Drawing drawing, LabelColumn west, LabelColumn east, Channel cut) {
        double half = cut.widthAtMm(x) / 2;
        double floor = cut.depthAtMm(x);
        drawing.shape("hollow", page(box(middle, half, 0, floor)));
        double end = cut.startMm() + cut.reinforcement().lengthMm();
        if (cut.archMm() == 0 && x <= end && !cut.isLocatingGroove()) {
            double top = cut.filletMm();
            drawing.shape(
                    "rod",
                    page(box(
                            middle,
                            cut.reinforcement().widthMm() / 2,
                            top,
                            top + cut.reinforcement().heightMm())));
        }
        west.add(
                at(new Spot(middle - half, -floor / 2)),
                shown.label(2 * half),
                cut.isLocatingGroove() ? "groove wide" : "channel wide");
        east.add(
                at(new Spot(middle + half / 2, -floor)),
                shown.label(floor),
                cut.isLocatingGroove() ? "groove deep" : "channel deep");
    }

    private void woodLeft(Drawing drawing, LabelColumn west, WoodAt wood) {
        Channel cut = shape.sectionChannel().orElseThrow();
        double half = cut.widthAtMm(x) / 2;
        Spot corner = new Spot(middle + (wood.isTowardTreble() ? half : -half), -cut.depthAtMm(x));
        List<Spot> back = shape.section(x);
        // A centred channel is as near on both sides; the bass side has the label.
        Spot bassCorner = new Spot(middle - half, -cut.depthAtMm(x));
        Spot nearBass = nearest(back, bassCorner);
        Spot near = nearest(back, corner);
        if (nearBass.distanceMm(bassCorner) <= near.distanceMm(corner) + 1e-6) {
            near = nearBass;
            corner = bassCorner;
        }
        drawing.line("least", at(corner).uMm(), at(corner).vMm(), at(near).uMm(), at(near).vMm());
        west.add(at(near), shown.label(wood.woodMm()), "wood left");
    }

    private static Spot nearest(List<Spot> curve, Spot from) {
        return IntStream.range(1, curve.size())
                .mapToObj(i -> nearest(curve.get(i - 1), curve.get(i), from))
                .min(Comparator.comparingDouble(from::distanceMm))
                .orElseThrow();
    }

    /** The nearest point of a chord. */
    private static Spot nearest(Spot a, Spot b, Spot from) {
        double u = b.uMm() - a.uMm();
        double v = b.vMm() - a.vMm();
        double square = u * u + v * v;
        double along = square > 0 ? ((from.uMm() - a.uMm()) * u + (from.vMm() - a.vMm()) * v) / square : 0;
        double share = Math.max(0, Math.min(1, along));
        return a.plus(share * u, share * v);
    }

    private static List<Spot> box(double middle, double half, double top, double bottom) {
        double left = middle - half;
        double right = middle + half;
        return List.of(new Spot(left, -top), new Spot(right, -top), new Spot(right, -bottom), new Spot(left, -bottom));
    }

    private List<Spot> page(List<Spot> points) {
        return points.stream().map(this::at).toList();
    }

    private Spot at(Spot p) {
        double board = shape.design().boardThicknessAtMm(x);
        return new Spot(Drawing.WIDTH / 2 + p.uMm() * scale, TOP + (board - p.vMm()) * scale);
    }
}
