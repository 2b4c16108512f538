package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.channel.Pass;
import org.neckgeom.channel.PassPlan;
import org.neckgeom.channel.Passes;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;
import org.neckgeom.shape.Point;
import org.neckgeom.shop.Cutter;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnits;

/**
 * The tool path of a rod channel as points: where the middle of the cutter's tip runs, pass by pass, to and fro. It is no
 * machine code. Immutable.
 *
 * <p>Frame of the stock: x from the nut line along the centreline, positive toward the body; y across, positive toward the
 * treble side; z up from the glue face, so wood has negative z. In x and y the middle stays inside each end and wall by half
 * the slot that one run cuts, the cutter's radius and half its runout: the ends are cut round, and square corners are left to a
 * chisel. At an end where the channel runs out of the work ({@link #openAt}) the middle runs as far past it, and no corner is left. A channel or pocket wider than the cutter is run to and fro
 * over its width, then along both ends. Each pass of an arched floor follows the arch by its share of the depth, as chords within
 * the tolerance. Where the floor slopes, the middle runs as high as a flat cutter must so that its edge cuts no deeper than the
 * floor that tables, drawings, meshes and wood left have; on the centreline it cuts to that floor, at the round ends too. A flat tip
 * leaves up to its radius times the slope beside the centreline, {@code r^2 / (2 R)} in the middle of a floor of radius R (0.001 mm),
 * and twice its radius times the slope at the ends of a floor that is shallower in the middle. The pocket comes last, by passes of its own from the glue face.
 *
 * <p>Defaults: safe height 5 mm over the glue face, step-over half the cutter's diameter (both common practice), tolerance
 * 0.02 mm.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class ToolPath extends ValueAnswer {

    private static final Form<ToolPath> FORM = Form.<ToolPath>of("tool-path")
            .fact("channel", Kind.ANSWER, "that is cut", p -> p.channel)
            .fact("cutter", Kind.MM, "diameter", p -> p.cutter.diameterMm())
            .fact("safeHeight", Kind.MM, "over the glue face, for moves between parts", p -> p.safe)
            .fact("stepOver", Kind.MM, "greatest, across", p -> p.stepOver)
            .fact("tolerance", Kind.MM, "greatest distance of a chord from an arched floor", p -> p.tolerance)
            .fact("radius", Kind.MM, "of the round ends", ToolPath::radius)
            .fact("passes", Kind.table(ToolPass.Sentences.FORM), "in the order they are run", ToolPath::passes)
            .fact("points", Kind.WHOLE, "of all passes", p -> p.points().size())
            .finds("tool-path", "Tool path of the channel: cutter {cutter:brief}, {points:of point/points}")
            .line("channel", "channel", "{channel}")
            .each(
                    "passes",
                    "{part}, pass {number}",
                    "{depth:table text} deep, {points:of point/points}, runs {length:table brief}",
                    4,
                    "and {more} more passes")
            .line("safe", "safe height", "{safeHeight:brief} over the glue face")
            .line(
                    "ends",
                    "ends",
                    p -> p.openEnds().isEmpty(),
                    "round, radius {radius:brief}: square corners are left to a chisel")
            .line(
                    "ends",
                    "ends",
                    p -> p.openEnds().contains(End.HEAD),
                    "head end open: the middle runs {radius:brief} past it")
            .line(
                    "ends",
                    "ends",
                    p -> p.openEnds().contains(End.HEEL),
                    "heel end open: the middle runs {radius:brief} past it")
            .line(
                    "ends",
                    "ends",
                    p -> p.openEnds().size() == 1,
                    "the other round, radius {radius:brief}: square corners are left to a chisel")
            .note(
                    "frame",
                    "x from the nut line toward the body, y toward the treble side, z up from the glue face; middle of the"
                            + " cutter's tip");

    private static final Form<Row> ROW = Form.<Row>of("tool-point")
            .fact("part", Kind.NAME, "channel or adjuster pocket", row -> row.pass.part())
            .fact("pass", Kind.WHOLE, "of its part, from 1", row -> row.pass.number())
            .fact("x", Kind.MM, "from the nut line toward the body", row -> row.point.xMm())
            .fact("y", Kind.MM, "from the centreline toward the treble side", row -> row.point.yMm())
            .fact("z", Kind.MM, "up from the glue face", row -> row.point.zMm())
            .fact("cutter", Kind.MM, "diameter", row -> row.path.cutter.diameterMm())
            .fact("safeHeight", Kind.MM, "over the glue face", row -> row.path.safe)
            .finds("point", "{part}, pass {pass}: {x}, {y}, {z}");

    private static final int MOST_POINTS = 100_000;
    private static final double SAFE_MM = 5;
    private static final double TOLERANCE_MM = 0.02;
    private static final double COARSEST_MM = 1;
    private static final double FINEST_MM = 1e-4;
    private static final double SAME_MM = 1e-6;

    /** A width that is a whole number of steps on paper must not gain a row from rounding noise. */
    private static final double SLACK = 1e-9;

    private final Channel channel;
    private final Cutter cutter;
    private final OpenEnds open;
    private final PassPlan plan;
    private final @Nullable PassPlan pocket;
    private final double safe;
    private final double stepOver;
    private final double tolerance;

    /** One point of the path with its pass. */
    private record Row(ToolPath path, ToolPass pass, Point point) {}

    private ToolPath(
            Channel channel,
            Cutter cutter,
            OpenEnds open,
            PassPlan plan,
            @Nullable PassPlan pocket,
            double safe,
            double stepOver,
            double tolerance) {
        super(FORM, channel.style());
        this.channel = channel;
        this.cutter = cutter;
        this.open = open;
        this.plan = plan;
        this.pocket = pocket;
        this.safe = safe;
        this.stepOver = stepOver;
        this.tolerance = tolerance;
    }

    /**
     * {@return the path of a channel by a rule of passes}
     *
     * @param channel to be cut, with its adjuster pocket if it has one
     * @param cutter no wider than the channel, nor than channel and pocket are long
     * @param rule such as {@code Passes.noDeeperThan(mm(3))}
     */
    public static ToolPath of(Channel channel, Cutter cutter, Passes rule) {
        return of(channel, cutter, RodSlot.of(channel).passes(rule), rule);
    }

    /**
     * {@return the path of a channel by passes as planned}
     *
     * @param channel to be cut, with its adjuster pocket if it has one
     * @param cutter no wider than the channel, nor than channel and pocket are long
     * @param passes of the channel, down to its depth; none of the pocket's is deeper than the deepest of them
     */
    public static ToolPath of(Channel channel, Cutter cutter, PassPlan passes) {
        double step = Objects.requireNonNull(passes, "passes").passes().stream()
                .map(Pass::step)
                .mapToDouble(Amount::libraryValue)
                .max()
                .orElseThrow();
        return of(channel, cutter, passes, Passes.noDeeperThan(ShopUnits.mm(step)));
    }

    private static ToolPath of(Channel channel, Cutter cutter, PassPlan passes, Passes inPocket) {
        double d = Objects.requireNonNull(cutter, "cutter").diameterMm();
        double narrowest = Math.min(Objects.requireNonNull(channel, "channel").widthMm(), channel.lengthMm());
        if (channel.hasAdjusterPocket()) {
            narrowest = Math.min(narrowest, channel.adjusterPocketLengthMm());
        }
        if (!(d <= narrowest * (1 + SLACK))) {
            throw LibraryUnits.refused(
                    "cutter diameter",
                    "at-most",
                    "no more than " + channel.style().brief(narrowest) + ", the least width or length to cut",
                    cutter.diameter());
        }
        double deepest = RodSlot.of(channel).depth().deepest().libraryValue();
        if (!(Math.abs(passes.depth().libraryValue() - deepest) <= SAME_MM)) {
            throw LibraryUnits.refused(
                    "depth of the passes",
                    "same",
                    "the channel's deepest, " + channel.style().text(deepest),
                    passes.depth());
        }
        PassPlan pocket = channel.hasAdjusterPocket() ? RodSlot.of(channel).pocketPasses(inPocket) : null;
        return new ToolPath(channel, cutter, OpenEnds.NONE, passes, pocket, SAFE_MM, d / 2, TOLERANCE_MM).held();
    }

    /**
     * {@return a copy with another safe height}
     *
     * @param overGlueFace at which the cutter may move freely, more than 0
     */
    public ToolPath safeHeight(Quantity<Length> overGlueFace) {
        double mm = LibraryUnits.mmPositive(overGlueFace, "safe height");
        return new ToolPath(channel, cutter, open, plan, pocket, mm, stepOver, tolerance);
    }

    /**
     * {@return a copy with another step-over, where the channel or its pocket is wider than the cutter}
     *
     * @param most from one row to the next, more than 0, no more than the cutter's diameter
     */
    public ToolPath stepOver(Quantity<Length> most) {
        double mm = LibraryUnits.mmPositive(most, "step-over");
        if (!(mm >= cutter.diameterMm() / 100 && mm <= cutter.diameterMm())) {
            throw LibraryUnits.refused(
                    "step-over", "range", "from a hundredth of the cutter's diameter to all of it", most);
        }
        return new ToolPath(channel, cutter, open, plan, pocket, safe, mm, tolerance).held();
    }

    /**
     * {@return a copy with another tolerance}
     *
     * @param most greatest distance of a chord from an arched floor, 0.0001 to 1 mm
     */
    public ToolPath tolerance(Quantity<Length> most) {
        double mm = LibraryUnits.mmPositive(most, "tolerance");
        if (!(mm >= FINEST_MM && mm <= COARSEST_MM)) {
            throw LibraryUnits.refused("tolerance", "range", "from 0.0001 to 1 mm", most);
        }
        return new ToolPath(channel, cutter, open, plan, pocket, safe, stepOver, mm).held();
    }

    /**
     * {@return a copy that runs past the channel's ends where it runs out of the work, until the cut is as wide there as elsewhere}
     * Default: closed at both.
     *
     * @param ends that are open, such as {@code stops.openEnds()}
     */
    public ToolPath openAt(Set<End> ends) {
        return new ToolPath(channel, cutter, new OpenEnds(ends), plan, pocket, safe, stepOver, tolerance).held();
    }

    /** The path, if it is short enough for a list. */
    private ToolPath held() {
        double count = count(plan, alongChannel().length, channel.widthMm())
                + (pocket == null ? 0 : count(pocket, 2, channel.adjusterPocketWidthMm()));
        if (!(count <= MOST_POINTS)) {
            throw Refusal.of(
                    "tool path",
                    "at-most",
                    "have no more than " + MOST_POINTS + " points: take a wider cutter, a wider step-over or a coarser"
                            + " tolerance",
                    "would have",
                    Numbers.plain(count));
        }
        return this;
    }

    private double count(PassPlan depths, int stations, double width) {
        return (double) depths.passes().size() * stations * (steps(width) + 2);
    }

    /** {@return the cutter's diameter; more than 0} */
    public Amount<Length> cutter() {
        return style().amount(cutter.diameterMm());
    }

    /** {@return the ends at which the channel runs out of the work; none, one or both} */
    public Set<End> openEnds() {
        return open.ends();
    }

    /** Half the slot that one run cuts. */
    private double radius() {
        return cutter.slotWidthMm() / 2;
    }

    /** {@return the height over the glue face for moves between channel and pocket; more than 0} */
    public Amount<Length> safeHeight() {
        return style().amount(safe);
    }

    /** {@return the passes in the order they are run, the pocket's last; one or more} */
    public List<ToolPass> passes() {
        List<ToolPass> all = new ArrayList<>(channelPasses());
        if (pocket != null) {
            all.addAll(pocketPasses(pocket));
        }
        return List.copyOf(all);
    }

    private List<ToolPass> channelPasses() {
        double deepest = plan.depth().libraryValue();
        return passes(plan, false, alongChannel(), channel.widthMm(), x -> tipDepthAt(x) / deepest);
    }

    private List<ToolPass> pocketPasses(PassPlan depths) {
        double start = channel.adjusterPocketStartMm();
        double end = start + channel.adjusterPocketLengthMm();
        return passes(
                depths, true, new double[] {firstMm(start), lastMm(end)}, channel.adjusterPocketWidthMm(), x -> 1);
    }

    /** Stations of the middle between which its depth is straight within the tolerance: as many one side of the channel's middle as the other. */
    private double[] alongChannel() {
        if (channel.archMm() == 0) {
            return new double[] {firstMm(channel.startMm()), lastMm(channel.endMm())};
        }
        double middle = channel.startMm() + channel.lengthMm() / 2;
        double[] toHead = fromTheEnd(open.isOpenAtHead(channel, channel.startMm()));
        double[] toHeel = fromTheEnd(open.isOpenAtHeel(channel, channel.endMm()));
        DoubleStream heel = IntStream.range(0, toHeel.length).mapToDouble(i -> middle - toHeel[toHeel.length - 1 - i]);
        return DoubleStream.concat(DoubleStream.of(toHead).map(from -> middle + from), heel)
                .distinct()
                .toArray();
    }

    /** Stations of the middle from the head end to the channel's middle, from which they are seen. */
    private double[] fromTheEnd(boolean isOpen) {
        double r = radius();
        double half = channel.lengthMm() / 2;
        // The edge of the cutter that meets the floor first runs over this stretch.
        boolean isDeeper = channel.archMm() > 0;
        double[] edge = isDeeper
                ? arc(-half, Math.min(-r, 0), channel.archMm())
                : arc(isOpen ? -half : Math.min(2 * r - half, 0), 0, channel.archMm());
        double[] stations =
                DoubleStream.of(edge).map(x -> x + (isDeeper ? r : -r)).toArray();
        if (!isOpen) {
            stations[0] = r - half;
        }
        return isOpen && isDeeper
                ? DoubleStream.concat(DoubleStream.of(-half - r), DoubleStream.of(stations))
                        .toArray()
                : stations;
    }

    /** The middle's first station in what begins there: inside it, or past the channel's open end. */
    private double firstMm(double start) {
        return open.isOpenAtHead(channel, start) ? start - radius() : start + radius();
    }

    /** The same of its last in what ends there. */
    private double lastMm(double end) {
        return open.isOpenAtHeel(channel, end) ? end + radius() : end - radius();
    }

    /** Places on the floor's circle, seen from its middle, of {@code ceil(A / (2 acos(1 - tol/R)))} chords. */
    private double[] arc(double from, double to, double arch) {
        double s = Math.abs(arch);
        double half = channel.lengthMm() / 2;
        double radius = (half * half + s * s) / (2 * s);
        double first = StrictMath.asin(from / radius);
        double last = StrictMath.asin(to / radius);
        double most = 2 * StrictMath.acos(Math.max(0, 1 - tolerance / radius));
        int chords = (int) Math.max(1, Math.ceil((last - first) / most));
        double[] places = new double[chords + 1];
        for (int i = 0; i <= chords; i++) {
            places[i] = i == chords ? to : radius * StrictMath.sin(first + (last - first) * i / chords);
        }
        return places;
    }

    /** The deepest that the tip may be with its middle at a station: the shallowest floor under it. */
    private double tipDepthAt(double x) {
        double r = radius();
        double middle = channel.startMm() + channel.lengthMm() / 2;
        double back = Math.max(channel.startMm(), x - r);
        double front = Math.min(channel.endMm(), x + r);
        return channel.archMm() < 0
                ? channel.floorDepthAtMm(Math.max(back, Math.min(front, middle)))
                : Math.min(channel.floorDepthAtMm(back), channel.floorDepthAtMm(front));
    }

    /** Every pass begins where the one before it ended. */
    private List<ToolPass> passes(
            PassPlan depths, boolean inPocket, double[] stations, double width, DoubleUnaryOperator share) {
        List<ToolPass> all = new ArrayList<>();
        List<double[]> rows = rows(stations, width);
        for (Pass pass : depths.passes()) {
            double depth = pass.height().libraryValue();
            List<Point> points = rows.stream()
                    .map(at -> new Point(at[0], at[1], -depth * share.applyAsDouble(at[0])))
                    .toList();
            all.add(new ToolPass(pass.number(), inPocket, points, style()));
            Collections.reverse(rows);
        }
        return all;
    }

    /**
     * x and y of the middle: one row where the cutter is as wide; else to and fro over the width, and once more along both ends,
     * where rows leave ridges between them.
     */
    private List<double[]> rows(double[] stations, double width) {
        double aside = Math.max(0, (width - cutter.slotWidthMm()) / 2);
        int steps = (int) steps(width);
        List<double[]> all = new ArrayList<>();
        for (int row = 0; row <= steps; row++) {
            row(stations, steps == 0 ? 0 : aside * (2.0 * row / steps - 1), row % 2 == 0, all);
        }
        if (steps > 0) {
            boolean back = steps % 2 == 0;
            row(stations, -aside, !back, all);
            all.add(new double[] {stations[back ? 0 : stations.length - 1], aside});
        }
        return all;
    }

    /** How many step-overs a width takes beyond the cutter's own. */
    private double steps(double width) {
        return Math.ceil(Math.max(0, width - cutter.slotWidthMm()) / stepOver * (1 - SLACK));
    }

    private static void row(double[] stations, double y, boolean toBody, List<double[]> all) {
        for (int i = 0; i < stations.length; i++) {
            all.add(new double[] {stations[toBody ? i : stations.length - 1 - i], y});
        }
    }

    /** {@return the points of all passes in turn; between channel and pocket the cutter is lifted to the safe height} */
    public List<Point> points() {
        return passes().stream().flatMap(pass -> pass.points().stream()).toList();
    }

    /** {@return x, y and z of the points of all passes in turn, in mm; a fresh array} */
    public double[] xyzMm() {
        return passes().stream()
                .flatMapToDouble(pass -> Arrays.stream(pass.xyzMm()))
                .toArray();
    }

    /**
     * {@return the points as comma-separated values (RFC 4180): part, pass, x, y, z, cutter diameter, safe height; the lines,
     * each ending in CR LF}
     *
     * @param style whose unit lengths are written in
     */
    public String csv(LengthStyle style) {
        return ROW.csv(passes().stream().flatMap(this::rows).toList(), style);
    }

    private Stream<Row> rows(ToolPass pass) {
        return pass.points().stream().map(point -> new Row(this, pass, point));
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {channel, cutter, open, plan, pocket, safe, stepOver, tolerance};
    }
}
