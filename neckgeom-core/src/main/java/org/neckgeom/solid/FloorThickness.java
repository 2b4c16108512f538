package org.neckgeom.solid;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.SpreadLaw;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.LibraryUnits;

/**
 * The {@index "wood under the channel"} (floor thickness, {@index "remaining thickness"}): the least distance left from
 * the truss rod channel to the neck's back, along the whole channel. Immutable.
 *
 * <p>At each station the section of the wood is {@code |y/a|^p + |z/b|^p = 1} below the glue face, a the half-width, b
 * the depth there, blended with its trapezoid in the heel. The wood left is the distance in space from the channel's floor
 * and its two corners to that back; over a flat floor it is least at a corner. Where the back slopes it is less than the
 * distance in the section. Along the channel the thinnest place is found to 1e-7 mm: stretches that cannot hold a thinner
 * one are left out by a bound.
 *
 * <p>Default: channel centred. The back is that of {@link BackShape}: its profile, with volute and heel; where the
 * channel runs on into the head (x under 0), an estimate on the safe side.
 */
public final class FloorThickness extends ValueAnswer {

    private static final Form<FloorThickness> FORM = Form.<FloorThickness>of("wood-left")
            .factIfAny(
                    "gap", Kind.answer(BackShape.Sentences.GAP), "where the neck has no section", FloorThickness::gap)
            .factIfAny(
                    "least",
                    Kind.answer(WoodAt.Sentences.FORM),
                    "thinnest place",
                    w -> w.gap().isEmpty() ? Optional.of(w.least()) : Optional.empty())
            .fact("channel", Kind.ANSWER, "under which it is left", w -> w.channel)
            .findsOnly("no-section", w -> w.gap().isPresent(), "Wood left: none, {gap}")
            .finds("wood-left", "{least}")
            .note("channel", "under {channel}");

    private static final double STILL_MM = 1e-9;
    /** So many steps to the nearest point in space, and so little that the last one may leave. */
    private static final int NEWTON = 4;

    private static final double FORETOLD_MM = 2e-9;
    private static final double NARROW_MM = 1e-5;
    private static final double NEAR_END = 0.02;
    private static final double NEAR_END_MM = 1e-4;
    private static final int ROUNDS = 60;
    private static final int SAMPLES = 8;

    private final Channel channel;
    private final BackShape back;
    private final double offset;
    private final double skew;
    /** Tangent of the skew. */
    private final double slant;

    private final double rounding;
    /** Where the slope of the back jumps, or its section changes its kind. */
    private final double[] breaks;
    /** The thinnest place, sought on the first question. */
    private final @Nullable WoodAt[] least = new WoodAt[1];

    private FloorThickness(Channel channel, BackShape back, double offset, double skew, double rounding) {
        super(FORM, Objects.requireNonNull(back, "back").style());
        this.channel = Objects.requireNonNull(channel, "channel");
        this.back = back;
        this.offset = offset;
        this.skew = skew;
        this.slant = StrictMath.tan(skew);
        this.rounding = rounding;
        this.breaks = DoubleStream.concat(
                        DoubleStream.concat(
                                DoubleStream.of(back.depth().corners()),
                                DoubleStream.of(back.halfWidth().corners())),
                        DoubleStream.concat(DoubleStream.of(0), back.heelStartMm().stream()))
                .toArray();
    }

    /**
     * {@return the question for a whole design; the wood left under its channel, the channel in the middle}
     *
     * @param neck with scale, fingerboard, back and truss rod; its head is used if it has one
     * @throws IllegalArgumentException if a part that is needed is missing
     */
    public static FloorThickness under(Neck neck) {
        Channel channel = Objects.requireNonNull(neck, "neck")
                .channel()
                .orElseThrow(() -> Refusal.because(
                        "rod",
                        "missing",
                        "\"" + neck.name()
                                + "\" needs its rod for the wood left, but has none: add .trussRod(...) or .bar(...)"));
        return under(channel, BackShape.of(neck));
    }

    /**
     * {@return the question for a channel and a back with its transitions; the channel in the middle}
     *
     * @param channel the channel
     * @param back the back
     */
    public static FloorThickness under(Channel channel, BackShape back) {
        return new FloorThickness(channel, back, 0, 0, 0);
    }

    /**
     * {@return a copy with the channel off the middle}
     *
     * @param atHeadEnd offset of the channel at its head end, positive toward the treble side
     */
    public FloorThickness offCentre(Quantity<Length> atHeadEnd) {
        return new FloorThickness(channel, back, LibraryUnits.mm(atHeadEnd, "channel offset"), skew, rounding);
    }

    /**
     * {@return a copy with the channel askew, turned about its head end}
     *
     * @param angle to the centreline, under 10 deg either way; positive when it runs to the treble side toward the body
     */
    public FloorThickness skewed(Quantity<Angle> angle) {
        return new FloorThickness(
                channel, back, offset, LibraryUnits.radBetween(angle, -10, 10, "channel skew"), rounding);
    }

    /**
     * {@return a copy whose channel has a floor with rounded corners, as a ball-nosed cutter leaves it; the pocket's
     * stay square} The wood left is then the distance from a rounding's centre less its radius.
     *
     * @param radius 0 for square corners, up to half the channel's width and its depth
     */
    public FloorThickness roundedFloor(Quantity<Length> radius) {
        double r = LibraryUnits.mmNotNegative(radius, "floor's rounding");
        double most =
                Math.min(channel.widthMm() / 2, Math.min(channel.depthMm(), channel.depthMm() + channel.archMm()));
        if (!(r <= most)) {
            throw LibraryUnits.refused("floor's rounding", "at-most", "no more than " + style().brief(most), radius);
        }
        return new FloorThickness(channel, back, offset, skew, r);
    }

    /** {@return the channel; the channel, as it would lie in the middle} */
    public Channel channel() {
        return channel;
    }

    /** {@return the back; the back with its volute and its turn into the heel} */
    public BackShape back() {
        return back;
    }

    /** {@return the thinnest place along the channel and its pocket, between stations too; where and how much} */
    public WoodAt least() {
        WoodAt known = least[0];
        if (known == null) {
            known = atMm(leastStation(this::woodMm));
            least[0] = known;
        }
        return known;
    }

    /**
     * {@return the wood left at a station; where and how much}
     *
     * @param station from the nut, inside the channel
     */
    public WoodAt at(Quantity<Length> station) {
        double x = LibraryUnits.mm(station, "station");
        if (!(x >= channel.startMm() && x <= channel.endMm())) {
            throw LibraryUnits.refused(
                    "station",
                    "range",
                    "inside the channel, from " + style().brief(channel.startMm()) + " to "
                            + style().brief(channel.endMm()),
                    station);
        }
        return atMm(x);
    }

    /**
     * {@return the wood left in mm at evenly spread stations, both ends of the channel among them; from the head end
     * on}
     *
     * @param stations 2 to 100,000
     */
    public double[] alongMm(int stations) {
        double[] wood = WoodScan.evenly(channel.startMm(), channel.endMm(), stations);
        for (int i = 0; i < stations; i++) {
            wood[i] = woodMm(wood[i]);
        }
        return wood;
    }

    /**
     * {@return the wood left at evenly spread stations, both ends of the channel among them; from the head end on}
     *
     * @param stations 2 to 100,000
     */
    public List<WoodAt> along(int stations) {
        double[] x = WoodScan.evenly(channel.startMm(), channel.endMm(), stations);
        return Arrays.stream(x).mapToObj(this::atMm).toList();
    }

    /**
     * {@return the probability that less wood is left at the thinnest place than a limit, for one distribution of the
     * wood left there} Exact for that distribution.
     *
     * @param limit 0 or more
     * @param spread of the wood left, positive more wood
     */
    public FloorProbability probabilityBelow(Quantity<Length> limit, ErrorDistribution<Length> spread) {
        double least = LibraryUnits.mmNotNegative(limit, "limit");
        WoodAt thinnest = least();
        SpreadLaw law = new SpreadLaw(Objects.requireNonNull(spread, "spread"));
        return new FloorProbability(law.below(least - thinnest.woodMm()), least, thinnest, style());
    }

    /**
     * {@return the probability that less wood is left anywhere than a limit, when depth, offset and carving each have a
     * spread} The real distance is taken at each pair of errors, not its slope: a centred channel loses wood whichever
     * way it wanders. Estimate: integrated at the stations thinnest as designed and at the ends of the spreads, to
     * about 1e-3 of the probability.
     *
     * @param limit 0 or more
     * @param spreads of depth, offset and carving
     */
    public FloorProbability probabilityBelow(Quantity<Length> limit, WoodSpreads spreads) {
        double least = LibraryUnits.mmNotNegative(limit, "limit");
        SpreadLaw depth = Objects.requireNonNull(spreads, "spreads").depthLaw();
        SpreadLaw aside = spreads.offsetLaw();
        double[] stations = {
            least().stationMm(),
            leastStation(depth.mean(), aside.lowest()),
            leastStation(depth.mean(), aside.highest()),
            leastStation(depth.highest(), aside.mean())
        };
        double[] worst = Arrays.stream(stations).sorted().distinct().toArray();
        double[] inSpace = Arrays.stream(worst).map(this::inSpace).toArray();
        double chance = WoodOdds.below(
                least,
                (d, e) -> {
                    double thinnest = Double.POSITIVE_INFINITY;
                    for (int i = 0; i < worst.length; i++) {
                        thinnest = Math.min(thinnest, inSpace[i] * inSection(worst[i], d, e));
                    }
                    return thinnest;
                },
                depth,
                aside,
                spreads.carvingLaw());
        return new FloorProbability(chance, least, least(), style());
    }

    /** Wood in the section at a station with the channel deeper by d and shifted by e. */
    double inSection(double x, double d, double e) {
        return sectionAway(x, x, d, e);
    }

    /** Distance in the section at another station from the channel as it lies at x. */
    double sectionAway(double there, double x, double d, double e) {
        return back.sectionMm(there)
                .woodUnder(channelMiddleMm(x) + e, channel.widthAtMm(x), channel.depthAtMm(x) + d, roundingAt(x));
    }

    /**
     * Wood in space at a station: the least of {@code sqrt((x' - x)^2 + s(x')^2)}, s the distance in the section at x'. With L
     * the most s can change per mm, no x' farther off than {@code 2 L s / (1 + L^2)} can be nearer.
     */
    double woodMm(double x) {
        BackSection section = back.sectionMm(x);
        boolean inHeel = section.heel() > 0;
        AlongNeck along = back.alongAt(x, 0);
        double straight = inHeel ? inSection(x, 0, 0) : woodUnder(section, x, along);
        if (!(straight > 0)) {
            return straight;
        }
        double[] bounds = back.boundsIn(x - straight, x + straight);
        double reach = reach(bounds[0], straight);
        if (hasBreak(x - straight, x + straight)) {
            bounds = back.boundsIn(x - reach, x + reach);
            reach = reach(bounds[0], straight);
        }
        if (!(reach > STILL_MM)) {
            return straight;
        }
        // Past a corner so far off the squared distance only grows: (d + t)^2 + (s - L t)^2 with d of L s or more.
        double quiet = bounds[0] < 1 ? bounds[0] * straight / (1 - bounds[0] * bounds[0]) : reach;
        // A rounded floor is a disc in its section: its distance in space is not that of its middle less its radius.
        boolean plain = !inHeel && roundingAt(x) == 0 && !hasBreak(x - quiet, x + quiet);
        double found = plain ? byNewton(x, Math.min(quiet, reach), bounds[1], along) : Double.NaN;
        return found > 0 ? found : bySections(x, reach, straight);
    }

    private static double reach(double speed, double straight) {
        return Math.min(straight, 2 * speed * straight / (1 + speed * speed));
    }

    /** Wood in the section at a station under the channel as it lies at x. */
    private double woodUnder(BackSection section, double x, AlongNeck along) {
        return section.woodUnder(channelMiddleMm(x), channel.widthAtMm(x), channel.depthAtMm(x), roundingAt(x), along);
    }

    /** From one station to the next, each where the nearest point in space is foretold; not a number where they do not close in. */
    private double byNewton(double x, double reach, double bend, AlongNeck first) {
        AlongNeck along = first;
        double offset = 0;
        for (int round = 0; round < NEWTON; round++) {
            double step = along.step();
            if (!(Math.abs(offset + step) <= reach)) {
                return Double.NaN;
            }
            // The depth's second derivative changes over a step by no more than twice its bound.
            if (bend * step * step < FORETOLD_MM) {
                return Math.sqrt(along.squared());
            }
            offset += step;
            along = back.alongAt(x + offset, offset);
            woodUnder(back.sectionMm(x + offset), x, along);
        }
        return Double.NaN;
    }

    /** Whether the slope of the back jumps between two stations, or its section changes its kind. */
    private boolean hasBreak(double from, double to) {
        for (double x : breaks) {
            if (x > from && x < to) {
                return true;
            }
        }
        return false;
    }

    /** What the distance in the section is multiplied by to be the one in space. */
    private double inSpace(double x) {
        double straight = inSection(x, 0, 0);
        return straight > 0 ? woodMm(x) / straight : 1;
    }

    /** Squared distance through the section at another station. */
    private double squared(double there, double x) {
        double s = sectionAway(there, x, 0, 0);
        return (there - x) * (there - x) + s * s;
    }

    /** By distances in sections alone, where the slope jumps nearby each side of a corner on its own. */
    private double bySections(double x, double reach, double straight) {
        double[] ends = WoodScan.ends(x - reach, x + reach, breaks);
        double least = straight * straight;
        for (int i = 0; i + 1 < ends.length; i++) {
            least = Math.min(least, leastOn(x, ends[i], ends[i + 1]));
        }
        return Math.sqrt(least);
    }

    /** The least squared distance from the channel at x on a stretch without corners. */
    private double leastOn(double x, double from, double to) {
        double step = (to - from) / SAMPLES;
        double[] q = new double[SAMPLES + 1];
        int best = 0;
        for (int k = 0; k <= SAMPLES; k++) {
            q[k] = squared(from + k * step, x);
            best = q[k] < q[best] ? k : best;
        }
        if (best > 0 && best < SAMPLES) {
            double[] at = {from + (best - 1) * step, from + best * step, from + (best + 1) * step};
            return narrowed(x, at, new double[] {q[best - 1], q[best], q[best + 1]});
        }
        // At an end, unless it falls on from there.
        double end = best == 0 ? from : to;
        double next = best == 0 ? from + step : to - step;
        double near = end + Math.copySign(Math.min(NEAR_END_MM, NEAR_END * step), next - end);
        double there = squared(near, x);
        double beyond = best == 0 ? q[1] : q[SAMPLES - 1];
        if (!(there < q[best])) {
            return q[best];
        }
        return best == 0
                ? narrowed(x, new double[] {end, near, next}, new double[] {q[best], there, beyond})
                : narrowed(x, new double[] {next, near, end}, new double[] {beyond, there, q[best]});
    }

    /** The least between three places of which the middle one is lowest: by parabolas, or by thirds where they do not close in. */
    private double narrowed(double x, double[] at, double[] q) {
        for (int round = 0; round < ROUNDS && at[2] - at[0] > NARROW_MM; round++) {
            double left = at[1] - at[0];
            double right = at[2] - at[1];
            double d1 = (q[1] - q[0]) / left;
            double d2 = (q[2] - q[1]) / right;
            double vertex = 0.5 * (at[0] + at[1]) - d1 * (at[2] - at[0]) / (2 * (d2 - d1));
            boolean inside = vertex > at[0] && vertex < at[2];
            if (inside && Math.abs(vertex - at[1]) < NARROW_MM) {
                return Math.min(q[1], squared(vertex, x));
            }
            // Two parabolas, then a third of the longer side: the bracket shrinks for any shape.
            double next = inside && round % 3 < 2 ? vertex : right > left ? at[1] + right / 3 : at[1] - left / 3;
            double value = squared(next, x);
            boolean after = next > at[1];
            if (value < q[1]) {
                at = after ? new double[] {at[1], next, at[2]} : new double[] {at[0], next, at[1]};
                q = after ? new double[] {q[1], value, q[2]} : new double[] {q[0], value, q[1]};
            } else {
                at = after ? new double[] {at[0], at[1], next} : new double[] {next, at[1], at[2]};
                q = after ? new double[] {q[0], q[1], value} : new double[] {value, q[1], q[2]};
            }
        }
        return q[1];
    }

    private Optional<BackShape.Gap> gap() {
        double[] last = new double[1];
        try {
            leastStation(x -> {
                last[0] = x;
                return woodMm(x);
            });
            return Optional.empty();
        } catch (NoAnswer noSection) {
            return Optional.of(back.gapMm(last[0]));
        }
    }

    private double leastStation(double d, double e) {
        return leastStation(x -> inSection(x, d, e));
    }

    private double leastStation(DoubleUnaryOperator wood) {
        double from = channel.startMm();
        double to = channel.endMm();
        double[] pocket = channel.hasAdjusterPocket()
                ? new double[] {
                    channel.adjusterPocketStartMm(), channel.adjusterPocketStartMm() + channel.adjusterPocketLengthMm()
                }
                : new double[0];
        double[] jumps = DoubleStream.concat(DoubleStream.of(pocket), DoubleStream.of(breaks))
                .toArray();
        return WoodScan.least(wood, this::motion, WoodScan.ends(from, to, jumps));
    }

    /** How points of the back move beside a channel that goes along: its floor's arch and its skew move too. */
    private double[] motion(double from, double to) {
        // No more wood is left than the neck is deep, so no point of the back farther along counts.
        double reach = Math.max(back.depth().valueAt(from), back.depth().valueAt(to));
        double[] bounds = back.boundsIn(from - reach, to + reach);
        return new double[] {bounds[0] + floorSlope() + Math.abs(slant), bounds[1] + floorBend()};
    }

    /** Steepest the floor's arch gets, at its ends. */
    private double floorSlope() {
        double half = channel.lengthMm() / 2;
        double radius = archRadius();
        return Double.isInfinite(radius) ? 0 : half / Math.sqrt((radius - half) * (radius + half));
    }

    /** Its greatest second derivative, at its ends. */
    private double floorBend() {
        double half = channel.lengthMm() / 2;
        double radius = archRadius();
        double root = Math.sqrt((radius - half) * (radius + half));
        return Double.isInfinite(radius) ? 0 : radius * radius / (root * root * root);
    }

    private double archRadius() {
        double s = Math.abs(channel.archMm());
        double half = channel.lengthMm() / 2;
        return s == 0 ? Double.POSITIVE_INFINITY : (half * half + s * s) / (2 * s);
    }

    WoodAt atMm(double x) {
        BackSection section = back.sectionMm(x);
        double middle = channelMiddleMm(x);
        double width = channel.widthAtMm(x);
        double floor = channel.depthAtMm(x);
        double r = roundingAt(x);
        double reach = section.thinnestOnTreble(middle, width, floor, r) ? width / 2 - r : r - width / 2;
        return new WoodAt(
                x,
                woodMm(x),
                section.depthAt(middle) - floor,
                section.isNearestOnTreble(middle + reach, floor - r),
                style());
    }

    /**
     * {@return how far the channel's middle lies from the centreline at a station, in mm; positive toward the treble side}
     *
     * @param stationMm from the nut in mm
     */
    public double channelMiddleMm(double stationMm) {
        return offset + (LibraryUnits.stationMm(stationMm) - channel.startMm()) * slant;
    }

    /** The pocket is cut with another tool: where it is the wider one, its corners are square. */
    private double roundingAt(double x) {
        boolean inPocket = channel.hasAdjusterPocket() && channel.widthAtMm(x) > channel.widthMm()
                || channel.depthAtMm(x) > channel.floorDepthAtMm(x);
        return inPocket ? 0 : rounding;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {channel, back, offset, skew, rounding};
    }
}
