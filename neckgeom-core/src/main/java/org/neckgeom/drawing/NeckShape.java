package org.neckgeom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.neck.Bars;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.shape.Direction;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.FretLine;
import org.neckgeom.solid.HeadSolid;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.solid.StringLine;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * The outlines of a designed neck in its own frame, in mm: the one source of the page's drawings and of the templates.
 * Side views are points (x, z), plans (x, y), sections (y, z).
 */
public final class NeckShape {

    /** How far the chords of a curve along the neck may leave it. */
    private static final double CHORD_MM = 0.02;

    /** {@code tan(90 deg / 4)}. */
    private static final double QUARTER_BULGE = Math.sqrt(2) - 1;

    private static final double SAME_MM = 1e-9;

    /** Off the middle by less is drawn and not mentioned: it is a fifth of a line's width at full size. */
    private static final double SEEN_MM = 0.05;

    private static final int HALVINGS = 100;

    private static final Amount<Length> SECTION_TOLERANCE = ShopUnits.mm(0.005);

    private final Neck design;
    private final Settled settled;
    private final Optional<FannedFrets> fan;
    private final NeckSolid solid;
    private final BackShape back;

    public NeckShape(Neck design, Settled settled) {
        this.design = design;
        this.settled = settled;
        this.fan = FannedFrets.of(design);
        this.solid = NeckSolid.of(design);
        this.back = settled.woodLeft().map(FloorThickness::back).orElse(solid.back());
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

    /** The channel that a section shows, as its back: cut as far as the plan has it. */
    public Optional<Channel> sectionChannel() {
        return settled.woodLeft().map(FloorThickness::channel).or(design::channel);
    }

    /** How far the channel of a section lies from its middle, positive toward the treble side: as the wood under it is taken. */
    public double channelMiddle(double x) {
        return settled.woodLeft().map(wood -> wood.channelMiddleMm(x)).orElse(0.0);
    }

    /** The same in words, where it can be seen. */
    public Optional<String> channelOff(double x, Shown shown) {
        double off = Math.abs(channelMiddle(x));
        return off < SEEN_MM
                ? Optional.empty()
                : Optional.of(shown.length(off) + " off the middle, to which side is not known");
    }

    /** Depth of the wood on the centreline at a station as drawn, with volute and turn into the heel. */
    public double drawnDepth(double x) {
        return solid.depth().valueAt(x);
    }

    public double bodyJoint() {
        return design.bodyJointMm();
    }

    /**
     * Where the neck's wood ends: at the body joint, or under the board's end where the channel runs on past the joint, as
     * in a neck that lies in a pocket.
     */
    public double woodEnd() {
        Optional<Double> inItsPocket = design.heel()
                .filter(heel -> heel.joint() instanceof PlateScrews)
                .flatMap(heel -> heel.joint().pastShoulder())
                .map(past -> bodyJoint() + past.libraryValue());
        if (inItsPocket.isPresent()) {
            return inItsPocket.get();
        }
        boolean runsOn =
                design.channel().map(channel -> channel.endMm() > bodyJoint()).orElse(false);
        return runsOn ? boardEnd() : bodyJoint();
    }

    /** Where the neck's wood begins that is not a head's: past the nut line under a string anchor, else at the nut line. */
    public double anchorEnd() {
        return design.stringAnchor().map(past -> -past.libraryValue()).orElse(0.0);
    }

    /** The wood past the nut line under a string anchor, as wide as the neck at the nut, closed; nothing without one. */
    public Optional<List<Spot>> anchorPlan() {
        return solid.anchor().map(Polyline::spots);
    }

    /** The channels of two bars beside the middle in plan, closed; none without bars. */
    public List<List<Spot>> barsPlan() {
        return solid.barChannels().stream().map(Polyline::spots).toList();
    }

    /** The channels of two bars in the section at a station, each closed; none where there are no bars. */
    public List<List<Spot>> barsAcross(double x) {
        return design.bars()
                .filter(bars -> bars.channel().depthAtMm(x) > 0)
                .map(bars -> barsAcross(bars, x))
                .orElse(List.of());
    }

    private List<List<Spot>> barsAcross(Bars bars, double x) {
        Channel cut = bars.channel();
        double half = cut.widthMm() / 2;
        double middle = bars.asideMm(x, bodyJoint());
        return Stream.of(-1, 1)
                .map(side -> List.of(
                        new Spot(side * middle - half, 0),
                        new Spot(side * middle + half, 0),
                        new Spot(side * middle + half, -cut.depthMm()),
                        new Spot(side * middle - half, -cut.depthMm())))
                .toList();
    }

    /** The joints of a laminated shaft in the section at a station, each from the glue face to the back; none of one piece. */
    public List<List<Spot>> stripsAcross(double x) {
        List<Spot> outline = section(x);
        return design.stripEdgesMm().stream()
                .filter(edge -> Math.abs(edge) < halfWidth(x) - SAME_MM)
                .map(edge -> List.of(new Spot(edge, 0), new Spot(edge, below(outline, edge))))
                .toList();
    }

    /** Height of an outline so far from the middle, straight between its points. */
    private static double below(List<Spot> outline, double across) {
        for (int i = 1; i < outline.size(); i++) {
            Spot a = outline.get(i - 1);
            Spot b = outline.get(i);
            if (a.uMm() <= across && b.uMm() >= across && b.uMm() > a.uMm()) {
                return a.vMm() + (b.vMm() - a.vMm()) * (across - a.uMm()) / (b.uMm() - a.uMm());
            }
        }
        return 0;
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
        FretLine line = solid.fret(n);
        return List.of(line.bass(), line.treble());
    }

    public Optional<FannedFrets> fan() {
        return fan;
    }

    /** The middle of each string from the nut line to the board's end, from bass to treble; empty without strings. */
    public List<List<Spot>> strings() {
        List<Spot> last = fretLine(design.frets() + 1);
        double endLine = (last.get(1).uMm() - last.get(0).uMm())
                / (last.get(1).vMm() - last.get(0).vMm());
        List<List<Spot>> strings = new ArrayList<>();
        for (StringLine string : solid.strings()) {
            Point nut = string.underside().from();
            Point saddle = string.underside().to();
            double run = saddle.xMm() - nut.xMm();
            double aside = saddle.yMm() - nut.yMm();
            double share = (last.get(0).uMm()
                            - nut.xMm()
                            + endLine * (nut.yMm() - last.get(0).vMm()))
                    / (run - endLine * aside);
            Spot from = new Spot(nut.xMm(), nut.yMm());
            strings.add(List.of(from, from.plus(share * run, share * aside)));
        }
        return strings;
    }

    /** The board that shaft and head are sawn from, where they are still to be sawn. */
    public Optional<ScarfBoard> board() {
        return settled.board();
    }

    public double stockMm() {
        return settled.stockMm();
    }

    /** The back on the centreline from the crease or the nut to the wood's end, as deep past the body joint as at it. */
    public List<Spot> backLine() {
        double from = crease();
        double joint = bodyJoint();
        List<Spot> points = new ArrayList<>(solid.back().carriedOn().chords(from, joint, CHORD_MM).stream()
                .map(spot -> new Spot(spot.uMm(), -spot.vMm()))
                .toList());
        if (woodEnd() > joint) {
            points.add(new Spot(woodEnd(), -drawnDepth(joint)));
        }
        return points;
    }

    /** The same without what lies past the mating face, up to where the back meets it. */
    public List<Spot> backLineToFace() {
        if (woodEnd() > bodyJoint()) {
            return backLine();
        }
        return solid.back().carriedOn().chords(crease(), backEnd(), CHORD_MM).stream()
                .map(spot -> new Spot(spot.uMm(), -spot.vMm()))
                .toList();
    }

    /** Where the back meets the mating face on the centreline. */
    private double backEnd() {
        double reach =
                drawnDepth(bodyJoint()) + design.heel().map(Heel::heightMm).orElse(0.0);
        double lo = bodyJoint() - reach;
        double hi = bodyJoint() + reach;
        for (int i = 0; i < HALVINGS && hi - lo > Math.ulp(hi); i++) {
            double middle = (lo + hi) / 2;
            if (middle < faceAt(drawnDepth(middle))) {
                lo = middle;
            } else {
                hi = middle;
            }
        }
        return (lo + hi) / 2;
    }

    /** The mating face in side view, from the glue face to the heel's cap, or to the back of a neck without a heel. */
    public List<Spot> heelFace() {
        double deep = design.heel().map(Heel::heightMm).orElseGet(() -> drawnDepth(backEnd()));
        return List.of(new Spot(bodyJoint(), 0), new Spot(faceAt(deep), -deep));
    }

    /** Station of the mating face so deep below the glue face. */
    private double faceAt(double deep) {
        Plane face = solid.matingFace();
        return (face.offsetMm() + face.normal().z() * deep) / face.normal().x();
    }

    /** The heel's wood angle between the shaft's glue face and the mating face, in rad. */
    public double heelFaceRad() {
        Direction out = solid.matingFace().normal();
        return StrictMath.atan2(out.x(), -out.z());
    }

    /** Where the head's back meets the shaft's before the nut; at the nut where it does not: from there on the shaft's counts. */
    public double crease() {
        return Math.min(0, solid.creaseMm().orElse(0));
    }

    /** The board's top on the centreline, its fall-away counted. */
    public List<Spot> boardTop() {
        double end = boardEnd();
        List<Double> stations = new ArrayList<>(List.of(0.0));
        boolean falls = design.fingerboard().fallAway().isPresent() && bodyJoint() < end;
        if (falls) {
            stations.add(bodyJoint());
        }
        stations.add(end);
        return stations.stream().map(x -> new Spot(x, solid.boardTopMm(x, 0))).toList();
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

    /** The channel in plan, closed, a hole: its ends as round as the cutter, square where that is not known or it runs out of the wood. */
    public Polyline channelPlan(Channel channel) {
        return rounded(channelCorners(channel), corner -> isOut(channel, corner) ? 0 : settled.cutterMm() / 2);
    }

    private boolean isOut(Channel channel, Spot corner) {
        return settled.openEnds().contains(End.HEAD) && corner.uMm() == channel.startMm()
                || settled.openEnds().contains(End.HEEL) && corner.uMm() == channel.endMm();
    }

    private static List<Spot> channelCorners(Channel channel) {
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

    /** A clockwise outline of right angles with its outer corners round, each as far as its lines allow. */
    private static Polyline rounded(List<Spot> corners, ToDoubleFunction<Spot> radius) {
        List<Spot> spots = new ArrayList<>();
        List<Double> bulges = new ArrayList<>();
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Spot before = corners.get((i + n - 1) % n);
            Spot corner = corners.get(i);
            Spot after = corners.get((i + 1) % n);
            double in = before.distanceMm(corner);
            double out = corner.distanceMm(after);
            double turn = (corner.uMm() - before.uMm()) * (after.vMm() - corner.vMm())
                    - (corner.vMm() - before.vMm()) * (after.uMm() - corner.uMm());
            double r = Math.min(radius.applyAsDouble(corner), Math.min(in, out) / 2);
            if (r > 0 && turn < 0) {
                Spot from = between(corner, before, r / in);
                if (spots.isEmpty() || from.distanceMm(spots.get(spots.size() - 1)) > SAME_MM) {
                    spots.add(from);
                    bulges.add(-QUARTER_BULGE);
                } else {
                    bulges.set(bulges.size() - 1, -QUARTER_BULGE);
                }
                spots.add(between(corner, after, r / out));
            } else {
                spots.add(corner);
            }
            bulges.add(0.0);
        }
        int last = spots.size() - 1;
        if (spots.get(last).distanceMm(spots.get(0)) <= SAME_MM) {
            spots.remove(last);
            bulges.remove(last);
        }
        return Polyline.closed(
                spots, bulges.stream().mapToDouble(bulge -> bulge).toArray());
    }

    private static Spot between(Spot from, Spot to, double share) {
        return from.plus(share * (to.uMm() - from.uMm()), share * (to.vMm() - from.vMm()));
    }

    /** The wood's back across at a station, from the bass edge over the ridge to the treble edge. */
    public List<Spot> section(double x) {
        return back.at(ShopUnits.mm(x)).outline(SECTION_TOLERANCE).spots();
    }

    /** Height of the board's crown under its middle at half the width: {@code R - sqrt(R^2 - a^2)}; 0 when flat. */
    public double crownDrop(double x) {
        return NeckSetKernel.drop(design.crownRadiusAtMm(x), halfWidth(x));
    }

    /** The board across at a station, closed, the crown as a fine line. */
    public List<Spot> boardSection(double x) {
        double a = halfWidth(x);
        List<Spot> points = new ArrayList<>();
        points.add(new Spot(-a, 0));
        int pieces = Double.isInfinite(design.crownRadiusAtMm(x)) ? 1 : 24;
        for (int i = 0; i <= pieces; i++) {
            double y = -a + 2 * a * i / pieces;
            points.add(new Spot(y, solid.boardTopMm(x, y)));
        }
        points.add(new Spot(a, 0));
        return points;
    }

    public Optional<Head> head() {
        return design.head();
    }

    public Optional<HeadShape> headShape() {
        return solid.head().map(head -> new HeadShape(head, false));
    }

    /** A point of the head on the centreline in side view: so far along its face from the nut line, so deep under the face. */
    public Spot headSide(double along, double deep) {
        HeadSolid there = solid.head().orElseThrow();
        double pitch = there.head().angleRad();
        // Behind a slanted nut a thickness square to the face is longer in the plane of the centreline.
        double here = deep * StrictMath.cos(pitch) / there.face().normal().z();
        double sin = StrictMath.sin(pitch);
        double cos = StrictMath.cos(pitch);
        return new Spot(-along * cos + here * sin, -along * sin - here * cos);
    }

    /** The head's wood in side view from the nut line by the tip and its back to the crease, or to the nut of a flat one. */
    public List<Spot> headSide() {
        Head head = solid.head().orElseThrow().head();
        List<Spot> points = new ArrayList<>(
                List.of(new Spot(0, 0), headSide(head.lengthMm(), 0), headSide(head.lengthMm(), head.thicknessMm())));
        if (head.angleRad() == 0) {
            points.add(new Spot(0, -head.thicknessMm()));
            return points;
        }
        double meets = crease();
        points.add(new Spot(meets, -solid.head().orElseThrow().backDepth().valueAt(meets)));
        return points;
    }

    /** The head's veneers in side view, each a closed run; none without. */
    public List<List<Spot>> veneersSide() {
        return veneersSide(crease(), solid.head().orElseThrow().head().lengthMm());
    }

    /** The same so far along the head, that on its back from where the back's wood begins, no nearer than the nut. */
    public List<List<Spot>> veneersSide(double backFrom, double l) {
        Head head = solid.head().orElseThrow().head();
        double t = head.thicknessMm();
        List<List<Spot>> all = new ArrayList<>();
        if (head.veneerMm() > 0) {
            double from = head.veneerShortOfNutMm();
            all.add(List.of(
                    headSide(from, 0),
                    headSide(l, 0),
                    headSide(l, -head.veneerMm()),
                    headSide(from, -head.veneerMm())));
        }
        if (head.backVeneerMm() > 0) {
            double from = -backFrom / StrictMath.cos(head.angleRad());
            double low = t + head.backVeneerMm();
            double start = Math.max(0, from) + t * StrictMath.tan(head.angleRad());
            all.add(List.of(headSide(start, t), headSide(l, t), headSide(l, low), headSide(start, low)));
        }
        return all;
    }

    /** The joint's line in side view: its end on the front, then its end on the back. */
    public List<Spot> glueLine(ScarfJoint joint) {
        Line line = solid.glueLine(joint);
        return List.of(
                new Spot(line.from().xMm(), line.from().zMm()),
                new Spot(line.to().xMm(), line.to().zMm()));
    }
}
