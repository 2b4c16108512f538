package org.neckgeom.geometry;

import java.util.Arrays;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Head;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Scale;
import org.neckgeom.measure.Spread;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;

/**
 * The wood left between the rod's channel and the back of the neck, along the whole channel. Immutable.
 *
 * <p>At each station the section of the wood is {@code |y/a|^p + |z/b|^p = 1} below the glue face, a the half-width, b the
 * depth there; the wood left is the least distance from the channel's floor and its two corners to that curve, in the
 * plane of the section. Exact for the section, as the distance over a flat floor is least at a corner. Taper is slight
 * enough that the distance in space is the same to a hundredth of a millimetre.
 *
 * <p>The channel lies in the middle unless it is told off centre. The back follows its profile past its two frets. Where
 * the channel runs on into a pitched head (x under 0) the wood ends at the head's back if that comes first, and is
 * otherwise taken as the neck's back carried straight on: an estimate on the safe side. {@link #volute} and
 * {@link #heelFrom} add what the two transitions leave on.
 */
public final class WoodLeft {

    private final Channel channel;
    private final BackProfile back;
    private final Scale scale;
    private final Object widthKey;
    private final DoubleUnaryOperator halfWidth;
    private final double headPitch;
    private final double headThickness;
    private final double offset;
    private final double skew;
    private final BackTransitions transitions;
    private final SuperellipseArc bass;
    private final SuperellipseArc treble;
    private final LengthStyle style;

    private WoodLeft(WoodLeft from, double offset, double skew, BackTransitions transitions) {
        this.channel = from.channel;
        this.back = from.back;
        this.scale = from.scale;
        this.widthKey = from.widthKey;
        this.halfWidth = from.halfWidth;
        this.headPitch = from.headPitch;
        this.headThickness = from.headThickness;
        this.offset = offset;
        this.skew = skew;
        this.transitions = transitions;
        this.bass = from.bass;
        this.treble = from.treble;
        this.style = from.style;
    }

    private WoodLeft(
            Channel channel,
            BackProfile back,
            Scale scale,
            Object widthKey,
            DoubleUnaryOperator halfWidth,
            double headPitch,
            double headThickness,
            LengthStyle style) {
        this.channel = Objects.requireNonNull(channel, "channel");
        this.back = Objects.requireNonNull(back, "back");
        this.scale = Objects.requireNonNull(scale, "scale");
        this.widthKey = widthKey;
        this.halfWidth = Objects.requireNonNull(halfWidth, "half-width");
        this.headPitch = headPitch;
        this.headThickness = headThickness;
        this.offset = 0;
        this.skew = 0;
        this.transitions = BackTransitions.NONE;
        this.bass = new SuperellipseArc(back.bassPower());
        this.treble = back.bassPower() == back.treblePower() ? bass : new SuperellipseArc(back.treblePower());
        this.style = style;
    }

    /**
     * Returns the question for a whole design.
     *
     * @param neck with scale, fingerboard, back and rod told; its head is used when told
     * @return the wood left under its channel, the channel in the middle
     * @throws IllegalArgumentException if a part that is needed has not been told
     */
    public static WoodLeft under(NeckDesign neck) {
        Channel channel = neck.channel()
                .orElseThrow(() -> new IllegalArgumentException("\"" + neck.name()
                        + "\" must have its rod told for the wood left, but has none: add .rod(...)"));
        neck.fingerboard();
        Head head = neck.head().orElse(null);
        return new WoodLeft(
                channel,
                neck.back(),
                neck.scale(),
                neck,
                neck::halfWidthAtMm,
                head == null ? 0 : head.pitchRad(),
                head == null ? Double.POSITIVE_INFINITY : head.thicknessMm(),
                neck.style());
    }

    /**
     * Returns the question for a channel and a back without a whole design.
     *
     * @param channel the channel
     * @param back the back
     * @param scale the scale the back's frets belong to
     * @param halfWidthMm half the neck's width in mm at a station in mm from the nut, more than 0 along the channel
     * @return the wood left, the channel in the middle
     */
    public static WoodLeft under(Channel channel, BackProfile back, Scale scale, DoubleUnaryOperator halfWidthMm) {
        return new WoodLeft(channel, back, scale, halfWidthMm, halfWidthMm, 0, Double.POSITIVE_INFINITY, back.style());
    }

    /**
     * Returns a copy with the channel off the middle.
     *
     * @param atHeadEnd offset of the channel at its head end, positive toward the treble side
     * @return the same neck
     */
    public WoodLeft offCentre(Quantity<Length> atHeadEnd) {
        return new WoodLeft(this, HouseUnits.mm(atHeadEnd, "channel offset"), skew, transitions);
    }

    /**
     * Returns a copy with the channel askew, turned about its head end.
     *
     * @param angle to the centreline, under 10 deg either way; positive when it runs to the treble side toward the body
     * @return the same neck
     */
    public WoodLeft skewed(Quantity<Angle> angle) {
        return new WoodLeft(this, offset, HouseUnits.radBetween(angle, -10, 10, "channel skew"), transitions);
    }

    /**
     * Returns a copy with a volute: extra depth that is greatest at the nut and runs out smoothly both ways,
     * {@code extra (1 + cos(pi x / length)) / 2}.
     *
     * @param extra depth at the nut, 0 or more
     * @param length from the nut to where it has run out, more than 0
     * @return the same neck
     */
    public WoodLeft volute(Quantity<Length> extra, Quantity<Length> length) {
        return new WoodLeft(
                this,
                offset,
                skew,
                transitions.volute(
                        HouseUnits.mmNotNegative(extra, "volute"), HouseUnits.mmPositive(length, "volute length")));
    }

    /**
     * Returns a copy whose back turns down into the heel: a quarter circle of a radius, tangent to the back where it
     * starts.
     *
     * @param start station from which the wood gets deeper, from the nut
     * @param radius of the transition, more than 0
     * @return the same neck
     */
    public WoodLeft heelFrom(Quantity<Length> start, Quantity<Length> radius) {
        return new WoodLeft(
                this,
                offset,
                skew,
                transitions.heel(HouseUnits.mm(start, "heel start"), HouseUnits.mmPositive(radius, "heel radius")));
    }

    /**
     * Returns the thinnest place along the channel and its pocket, between stations too.
     *
     * @return where and how much
     */
    public WoodAt least() {
        return atMm(leastStation(0, 0));
    }

    /**
     * Returns the wood left at a station.
     *
     * @param station from the nut, within the channel
     * @return where and how much
     */
    public WoodAt at(Quantity<Length> station) {
        double x = HouseUnits.mm(station, "station");
        if (!(x >= channel.startMm() && x <= channel.endMm())) {
            throw HouseUnits.refused(
                    "station",
                    "within the channel, from " + style.brief(channel.startMm()) + " to "
                            + style.brief(channel.endMm()),
                    station);
        }
        return atMm(x);
    }

    /**
     * Returns the wood left in mm at evenly spread stations, both ends of the channel among them.
     *
     * @param stations 2 or more
     * @return a fresh array, from the head end on
     */
    public double[] alongMm(int stations) {
        if (stations < 2) {
            throw new IllegalArgumentException("stations must be 2 or more, but were " + stations);
        }
        double from = channel.startMm();
        double to = channel.endMm();
        double[] wood = new double[stations];
        for (int i = 0; i < stations; i++) {
            wood[i] = woodMm(i == stations - 1 ? to : from + (to - from) * i / (stations - 1), 0, 0);
        }
        return wood;
    }

    /**
     * Returns the chance that less wood is left at the thinnest place than a limit, when one spread says how far the wood
     * left there may be off. Exact for that spread.
     *
     * @param limit 0 or more
     * @param spread of the wood left, positive more wood
     * @return the chance
     */
    public WoodChance chanceBelow(Quantity<Length> limit, Spread<Length> spread) {
        double least = HouseUnits.mmNotNegative(limit, "limit");
        WoodAt thinnest = least();
        SpreadLaw law = new SpreadLaw(Objects.requireNonNull(spread, "spread"));
        return WoodChance.of(1 - law.above(least - thinnest.woodMm()), least, thinnest, style);
    }

    /**
     * Returns the chance that less wood is left anywhere than a limit, when depth, offset and carving each have a spread.
     * The real distance is taken at each pair of errors, not its slope: a centred channel loses wood whichever way it
     * wanders. Estimate: integrated at the stations thinnest as designed and at the ends of the spreads, to about 1e-3 of
     * the chance.
     *
     * @param limit 0 or more
     * @param spreads of depth, offset and carving
     * @return the chance
     */
    public WoodChance chanceBelow(Quantity<Length> limit, WoodSpreads spreads) {
        double least = HouseUnits.mmNotNegative(limit, "limit");
        SpreadLaw depth = spreads.depthLaw();
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
        return WoodChance.of(chance, least, least(), style);
    }

    /** Wood at a station with the channel deeper by d and shifted by e. */
    double woodMm(double x, double d, double e) {
        return section(x).woodUnder(middle(x) + e, channel.widthAtMm(x), channel.depthAtMm(x) + d, 0);
    }

    private double leastStation(double d, double e) {
        double[] jumps = channel.hasPocket()
                ? new double[] {channel.pocketStartMm(), channel.pocketStartMm() + channel.pocketLengthMm(), 0}
                : new double[] {0};
        double[] stations = WoodScan.stations(channel.startMm(), channel.endMm(), jumps);
        return WoodScan.least(x -> woodMm(x, d, e), stations);
    }

    private WoodAt atMm(double x) {
        BackSection section = section(x);
        double middle = middle(x);
        double width = channel.widthAtMm(x);
        double floor = channel.depthAtMm(x);
        double corner = section.thinnestOnTreble(middle, width, floor, 0) ? middle + width / 2 : middle - width / 2;
        return WoodAt.ofMm(
                x,
                section.woodUnder(middle, width, floor, 0),
                section.depthAt(middle) - floor,
                section.thinnestToward(corner, floor),
                style);
    }

    private double middle(double x) {
        return offset + (x - channel.startMm()) * StrictMath.tan(skew);
    }

    private BackSection section(double x) {
        double a = halfWidth.applyAsDouble(x);
        double b = depth(x);
        if (!(a > 0 && b > 0)) {
            throw new ArithmeticException("the neck has no section at " + style.brief(x) + " from the nut: half-width "
                    + style.brief(a) + ", depth " + style.brief(b));
        }
        return new BackSection(bass, treble, a, 0, b);
    }

    private double depth(double x) {
        double deep = back.depthAtMm(x, scale) + transitions.extraAt(x);
        if (x < 0 && headThickness < Double.POSITIVE_INFINITY) {
            // The head's back lies t below its face, which falls away from the nut line by tan(pitch).
            double headBack = headThickness / StrictMath.cos(headPitch) - x * StrictMath.tan(headPitch);
            return Math.min(deep, headBack);
        }
        return deep;
    }

    /** True for the same neck, off centre and with transitions alike. */
    @Override
    public boolean equals(Object other) {
        return other instanceof WoodLeft that
                && channel.equals(that.channel)
                && back.equals(that.back)
                && scale.equals(that.scale)
                && widthKey.equals(that.widthKey)
                && Double.compare(offset, that.offset) == 0
                && Double.compare(skew, that.skew) == 0
                && transitions.equals(that.transitions);
    }

    @Override
    public int hashCode() {
        return Objects.hash(channel, back, scale, widthKey, offset, skew, transitions);
    }

    /** Returns the thinnest place and the channel it is under. */
    @Override
    public String toString() {
        return least() + "\n  under " + channel;
    }
}
