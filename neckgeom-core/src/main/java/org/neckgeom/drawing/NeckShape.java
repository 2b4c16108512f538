package org.neckgeom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.BackShape;

/**
 * The outlines of a designed neck in its own frame, in mm: the one source of the page's drawings and of the templates.
 * Side views are points (x, z), plans (x, y), sections (y, z).
 */
public final class NeckShape {

    /** Stations between points of a curve along the neck. */
    private static final double STEP_MM = 2;

    /** Points of a section's curve on each side of the ridge: the chords leave the curve by under 0.005 mm. */
    private static final int SECTION_POINTS = 160;

    private final Neck design;
    private final Settled settled;
    private final Optional<FannedFrets> fan;
    private final BackShape back;

    public NeckShape(Neck design, Settled settled) {
        this.design = design;
        this.settled = settled;
        this.fan = FannedFrets.of(design);
        this.back = BackShape.of(design);
    }

    public Neck design() {
        return design;
    }

    public Stations stations() {
        return Stations.of(design, settled.woodLeft());
    }

    /** Depth of the wood across at a station, as a section shows it. */
    public double backDepth(double x) {
        return stations().backDepth(x);
    }

    /** Depth of the wood on the centreline at a station as drawn, with volute and turn into the heel. */
    public double drawnDepth(double x) {
        return back.depthAtMm(x);
    }

    public double bodyJoint() {
        return design.bodyJointMm();
    }

    /**
     * Where the neck's wood ends: at the body joint, or under the board's end where the channel runs on past the joint, as
     * in a neck that lies in a pocket.
     */
    public double woodEnd() {
        boolean runsOn =
                design.channel().map(channel -> channel.endMm() > bodyJoint()).orElse(false);
        return runsOn ? boardEnd() : bodyJoint();
    }

    public double fret(double n) {
        return design.scale().fretMm(n);
    }

    /** Where a fret more would lie: the usual end of the board. */
    public double boardEnd() {
        return fret(design.frets() + 1);
    }

    public double halfWidth(double x) {
        return design.halfWidthAtMm(x);
    }

    /** The board's edge of a side, from the nut line to its end; the straight taper needs two points. */
    public List<Spot> edge(int side) {
        int end = side < 0 ? 0 : 1;
        return List.of(fretLine(0).get(end), fretLine(design.frets() + 1).get(end));
    }

    /** A fret from the board's bass edge to its treble edge: 0 is the nut, one more than there are the board's end. */
    public List<Spot> fretLine(int n) {
        double x = fret(n);
        double bass = fan().map(fan -> fan.onBassEdge(n, design).libraryValue()).orElse(x);
        double treble =
                fan().map(fan -> fan.onTrebleEdge(n, design).libraryValue()).orElse(x);
        return List.of(new Spot(bass, -halfWidth(bass)), new Spot(treble, halfWidth(treble)));
    }

    public Optional<FannedFrets> fan() {
        return fan;
    }

    /** The middle of each string from the nut line to the board's end, from bass to treble; empty without strings. */
    public List<List<Spot>> strings() {
        return StringSpacing.atNut(design)
                .flatMap(nut -> StringSpacing.atSaddle(design).map(saddle -> strings(nut, saddle)))
                .orElse(List.of());
    }

    private List<List<Spot>> strings(StringPlaces atNut, StringPlaces atSaddle) {
        double nutLine =
                fan().map(fan -> StrictMath.tan(fan.slant(0).libraryValue())).orElse(0.0);
        double saddleLine = fan().map(fan -> StrictMath.tan(fan.saddleSlant().libraryValue()))
                .orElse(0.0);
        List<Spot> last = fretLine(design.frets() + 1);
        double endLine = (last.get(1).uMm() - last.get(0).uMm())
                / (last.get(1).vMm() - last.get(0).vMm());
        double[] nut = atNut.centresMm();
        double[] saddle = atSaddle.centresMm();
        List<List<Spot>> strings = new ArrayList<>();
        for (int i = 0; i < nut.length; i++) {
            Spot from = new Spot(nutLine * nut[i], nut[i]);
            Spot to = new Spot(settled.saddleMm() + saddleLine * saddle[i], saddle[i]);
            double run = to.uMm() - from.uMm();
            double aside = to.vMm() - from.vMm();
            double share = (last.get(0).uMm()
                            - from.uMm()
                            + endLine * (from.vMm() - last.get(0).vMm()))
                    / (run - endLine * aside);
            strings.add(List.of(from, from.plus(share * run, share * aside)));
        }
        return strings;
    }

    public double stockMm() {
        return settled.stockMm();
    }

    /** The back on the centreline from the nut to the wood's end, as deep past the body joint as at it. */
    public List<Spot> backLine() {
        return along(0, woodEnd(), x -> -drawnDepth(Math.min(x, bodyJoint())));
    }

    /** The board's top on the centreline. */
    public List<Spot> boardTop() {
        return List.of(
                new Spot(0, design.boardThicknessAtMm(0)), new Spot(boardEnd(), design.boardThicknessAtMm(boardEnd())));
    }

    /** The channel in side view: down its head end, along the floor and the pocket, up its heel end; an arched floor is arcs. */
    public Polyline channelSide(Channel channel) {
        List<Spot> points = new ArrayList<>(List.of(new Spot(channel.startMm(), 0)));
        List<Double> bulges = new ArrayList<>(List.of(0.0));
        double from = channel.startMm();
        double to = channel.endMm();
        if (channel.hasAdjusterPocket()) {
            double start = channel.adjusterPocketStartMm();
            double end = start + channel.adjusterPocketLengthMm();
            floor(channel, from, start, points, bulges);
            points.add(new Spot(start, -channel.adjusterPocketDepthMm()));
            points.add(new Spot(end, -channel.adjusterPocketDepthMm()));
            bulges.addAll(List.of(0.0, 0.0));
            floor(channel, end, to, points, bulges);
        } else {
            floor(channel, from, to, points, bulges);
        }
        points.add(new Spot(to, 0));
        bulges.add(0.0);
        return Polyline.closed(
                points, bulges.stream().mapToDouble(bulge -> bulge).toArray());
    }

    /** The floor between two stations: straight, or one arc of the circle of radius {@code (L^2/4 + s^2) / (2 s)}. */
    private static void floor(Channel channel, double from, double to, List<Spot> points, List<Double> bulges) {
        if (!(to > from)) {
            return;
        }
        Spot first = new Spot(from, -channel.floorDepthAtMm(from));
        Spot last = new Spot(to, -channel.floorDepthAtMm(to));
        double s = channel.archMm();
        double half = channel.lengthMm() / 2;
        double halfAngle = StrictMath.asin(first.distanceMm(last) * s / (half * half + s * s));
        points.addAll(List.of(first, last));
        bulges.addAll(List.of(StrictMath.tan(halfAngle / 2), 0.0));
    }

    /** The channel in plan, closed. */
    public List<Spot> channelPlan(Channel channel) {
        double half = channel.widthMm() / 2;
        List<Spot> treble = new ArrayList<>();
        treble.add(new Spot(channel.startMm(), half));
        if (channel.hasAdjusterPocket()) {
            double wide = channel.adjusterPocketWidthMm() / 2;
            double start = channel.adjusterPocketStartMm();
            double end = start + channel.adjusterPocketLengthMm();
            treble.add(new Spot(start, half));
            treble.add(new Spot(start, wide));
            treble.add(new Spot(end, wide));
            treble.add(new Spot(end, half));
        }
        treble.add(new Spot(channel.endMm(), half));
        List<Spot> all = new ArrayList<>(treble);
        for (int i = treble.size() - 1; i >= 0; i--) {
            all.add(new Spot(treble.get(i).uMm(), -treble.get(i).vMm()));
        }
        return all;
    }

    /** The wood's back across at a station, from the bass edge over the ridge to the treble edge. */
    public List<Spot> section(double x) {
        double a = halfWidth(x);
        double b = backDepth(x);
        List<Spot> points = new ArrayList<>();
        IntStream.rangeClosed(0, SECTION_POINTS)
                .forEach(i -> points.add(quarter(-a, b, i, design.back().bassPower())));
        IntStream.range(0, SECTION_POINTS)
                .map(i -> SECTION_POINTS - 1 - i)
                .forEach(i -> points.add(quarter(a, b, i, design.back().treblePower())));
        return points;
    }

    /** Point i of a quarter of a superellipse, from its edge (0) to its ridge. */
    private static Spot quarter(double a, double b, int i, double power) {
        if (i == 0) {
            return new Spot(a, 0);
        }
        if (i == SECTION_POINTS) {
            return new Spot(0, -b);
        }
        double t = i * StrictMath.PI / 2 / SECTION_POINTS;
        return new Spot(
                a * StrictMath.pow(StrictMath.cos(t), 2 / power), -b * StrictMath.pow(StrictMath.sin(t), 2 / power));
    }

    /** Height of the board's crown under its middle at half the width: {@code R - sqrt(R^2 - a^2)}; 0 when flat. */
    public double crownDrop(double x) {
        double radius = design.crownRadiusAtMm(x);
        double a = halfWidth(x);
        return Double.isInfinite(radius) ? 0 : a * a / (radius + Math.sqrt(radius * radius - a * a));
    }

    /** The board across at a station, closed, the crown as a fine line. */
    public List<Spot> boardSection(double x) {
        double a = halfWidth(x);
        double top = design.boardThicknessAtMm(x);
        double radius = design.crownRadiusAtMm(x);
        List<Spot> points = new ArrayList<>();
        points.add(new Spot(-a, 0));
        int pieces = Double.isInfinite(radius) ? 1 : 24;
        for (int i = 0; i <= pieces; i++) {
            double y = -a + 2 * a * i / pieces;
            double drop = Double.isInfinite(radius) ? 0 : y * y / (radius + Math.sqrt(radius * radius - y * y));
            points.add(new Spot(y, top - drop));
        }
        points.add(new Spot(a, 0));
        return points;
    }

    public Optional<Head> head() {
        return design.head();
    }

    public Optional<HeadShape> headShape() {
        return design.head().map(head -> HeadShape.of(design, head));
    }

    /** A point of the head in side view: so far along its face from the break line, so deep under the face. */
    public static Spot headSide(Head head, double along, double deep) {
        double sin = StrictMath.sin(head.angleRad());
        double cos = StrictMath.cos(head.angleRad());
        return new Spot(-along * cos + deep * sin, -along * sin - deep * cos);
    }

    /** Where the head's back meets a back so deep under the glue face, measured along the head's face. */
    public static double alongHeadWhereBackMeets(Head head, double depth) {
        double sin = StrictMath.sin(head.angleRad());
        return (depth - head.thicknessMm() * StrictMath.cos(head.angleRad())) / sin;
    }

    /** Points of a line along the neck, one every two millimetres, both ends among them. */
    private static List<Spot> along(double from, double to, DoubleUnaryOperator z) {
        int pieces = Math.max(1, (int) Math.ceil((to - from) / STEP_MM));
        List<Spot> points = new ArrayList<>();
        for (int i = 0; i <= pieces; i++) {
            double x = i == pieces ? to : from + (to - from) * i / pieces;
            points.add(new Spot(x, z.applyAsDouble(x)));
        }
        return straightened(points);
    }

    /** Drops inner points of straight runs, so that a straight back stays one line. */
    private static List<Spot> straightened(List<Spot> points) {
        List<Spot> kept = new ArrayList<>();
        kept.add(points.get(0));
        for (int i = 1; i < points.size() - 1; i++) {
            Spot a = kept.get(kept.size() - 1);
            Spot b = points.get(i);
            Spot c = points.get(i + 1);
            double across = (b.uMm() - a.uMm()) * (c.vMm() - a.vMm()) - (b.vMm() - a.vMm()) * (c.uMm() - a.uMm());
            if (Math.abs(across) > 1e-9 * a.distanceMm(c)) {
                kept.add(b);
            }
        }
        kept.add(points.get(points.size() - 1));
        return kept;
    }

    /** The joint's line in side view: its end on the front, then its end on the back. */
    public static List<Spot> glueLine(ScarfJoint joint, double pitch) {
        double depth = joint.shaftThickness().libraryValue();
        Spot back = new Spot(joint.backLineMm(), -depth);
        double front = joint.frontLineMm();
        return joint.place() == JointPlace.IN_THE_HEAD
                ? List.of(new Spot(-front * StrictMath.cos(pitch), -front * StrictMath.sin(pitch)), back)
                : List.of(new Spot(front, 0), back);
    }
}
