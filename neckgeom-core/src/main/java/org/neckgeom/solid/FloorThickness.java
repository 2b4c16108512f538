package org.neckgeom.solid;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
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
 * the depth there; the wood left is the least distance from the channel's floor and its two corners to that curve, in
 * the plane of the section. Exact for the section, as the distance over a flat floor is least at a corner. Taper is
 * slight enough that the distance in space is the same to a hundredth of a millimetre.
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

    private final Channel channel;
    private final BackShape back;
    private final double offset;
    private final double skew;
    private final double rounding;
    /** The thinnest place, sought on the first question. */
    private final @Nullable WoodAt[] least = new WoodAt[1];

    private FloorThickness(Channel channel, BackShape back, double offset, double skew, double rounding) {
        super(FORM, Objects.requireNonNull(back, "back").style());
        this.channel = Objects.requireNonNull(channel, "channel");
        this.back = back;
        this.offset = offset;
        this.skew = skew;
        this.rounding = rounding;
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
            known = atMm(leastStation(0, 0));
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
            wood[i] = woodMm(wood[i], 0, 0);
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
            leastStation(0, 0),
            leastStation(depth.mean(), aside.lowest()),
            leastStation(depth.mean(), aside.highest()),
            leastStation(depth.highest(), aside.mean())
        };
        double[] worst = Arrays.stream(stations).sorted().distinct().toArray();
        double chance = WoodOdds.below(
                least,
                (d, e) -> {
                    double thinnest = Double.POSITIVE_INFINITY;
                    for (double x : worst) {
                        thinnest = Math.min(thinnest, woodMm(x, d, e));
                    }
                    return thinnest;
                },
                depth,
                aside,
                spreads.carvingLaw());
        return new FloorProbability(chance, least, least(), style());
    }

    /** Wood at a station with the channel deeper by d and shifted by e. */
    double woodMm(double x, double d, double e) {
        return back.sectionMm(x)
                .woodUnder(middle(x) + e, channel.widthAtMm(x), channel.depthAtMm(x) + d, roundingAt(x));
    }

    private Optional<BackShape.Gap> gap() {
        double[] last = new double[1];
        try {
            leastStation(x -> {
                last[0] = x;
                return woodMm(x, 0, 0);
            });
            return Optional.empty();
        } catch (NoAnswer noSection) {
            return Optional.of(back.gapMm(last[0]));
        }
    }

    private double leastStation(double d, double e) {
        return leastStation(x -> woodMm(x, d, e));
    }

    private double leastStation(DoubleUnaryOperator wood) {
        double[] jumps = channel.hasAdjusterPocket()
                ? new double[] {
                    channel.adjusterPocketStartMm(),
                    channel.adjusterPocketStartMm() + channel.adjusterPocketLengthMm(),
                    0
                }
                : new double[] {0};
        double[] stations = WoodScan.stations(channel.startMm(), channel.endMm(), jumps);
        return WoodScan.least(wood, stations);
    }

    private WoodAt atMm(double x) {
        BackSection section = back.sectionMm(x);
        double middle = middle(x);
        double width = channel.widthAtMm(x);
        double floor = channel.depthAtMm(x);
        double r = roundingAt(x);
        double reach = section.thinnestOnTreble(middle, width, floor, r) ? width / 2 - r : r - width / 2;
        return new WoodAt(
                x,
                section.woodUnder(middle, width, floor, r),
                section.depthAt(middle) - floor,
                section.isNearestOnTreble(middle + reach, floor - r),
                style());
    }

    private double middle(double x) {
        return offset + (x - channel.startMm()) * StrictMath.tan(skew);
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
