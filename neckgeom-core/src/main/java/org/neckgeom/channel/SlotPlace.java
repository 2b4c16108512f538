package org.neckgeom.channel;

import java.util.Arrays;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The place of the channel in the neck blank: its slot offset at every station. Immutable.
 *
 * <p>An offset is positive when the slot lies too far from the fence. Between two stations at which it is known, it
 * runs straight. {@link #conformanceProbability} is for the whole length of the channel at once, never the product of two ends'
 * probabilities: they share the setting of the fence.
 */
public final class SlotPlace extends LeanAnswer {

    private final double[] stations;
    private final double[] offsets;
    private final double[] shifts;
    private final double variance;
    private final double startUncertainty;
    private final double endUncertainty;
    private final double degreesOfFreedom;

    SlotPlace(
            double[] stations,
            double[] offsets,
            double[] shifts,
            double variance,
            double startUncertainty,
            double endUncertainty,
            double degreesOfFreedom,
            LengthStyle style) {
        super(style);
        this.stations = stations;
        this.offsets = offsets;
        this.shifts = shifts;
        this.variance = variance;
        this.startUncertainty = startUncertainty;
        this.endUncertainty = endUncertainty;
        this.degreesOfFreedom = degreesOfFreedom;
    }

    /** The place in a piece as wide as the trial pieces: the same offset everywhere. */
    static SlotPlace inPieces(double offset, double variance, double degreesOfFreedom, LengthStyle style) {
        return new SlotPlace(
                new double[] {0, 1},
                new double[] {offset, offset},
                new double[2],
                variance,
                0,
                0,
                degreesOfFreedom,
                style);
    }

    /**
     * {@return the place of a slot read on the neck itself at both of its ends, which share nothing}
     *
     * @param atStart offset at the channel's head end
     * @param start its station from the nut
     * @param atEnd offset at the channel's heel end
     * @param end its station, more than the first
     * @throws IllegalArgumentException if the second station is not beyond the first
     */
    public static SlotPlace read(
            Estimate<Length> atStart, Quantity<Length> start, Estimate<Length> atEnd, Quantity<Length> end) {
        double x0 = LibraryUnits.mm(start, "first station");
        double x1 = LibraryUnits.mm(end, "second station");
        if (!(x1 > x0)) {
            throw LibraryUnits.refused(
                    "second station", "more-than", "more than the first, " + Amount.from(start, "start"), end);
        }
        return new SlotPlace(
                new double[] {x0, x1},
                new double[] {
                    Objects.requireNonNull(atStart, "first offset").libraryValue(),
                    Objects.requireNonNull(atEnd, "second offset").libraryValue()
                },
                new double[2],
                0,
                atStart.libraryUncertainty(),
                atEnd.libraryUncertainty(),
                Math.min(atStart.degreesOfFreedom(), atEnd.degreesOfFreedom()),
                LengthStyle.of(start));
    }

    /**
     * {@return this place with its head end where it was read on the neck itself, as uncertain as that reading; the
     * heel end besides as uncertain as the slot's course from end to end}
     *
     * @param atStart offset at the channel's head end
     */
    public SlotPlace readAtStart(Estimate<Length> atStart) {
        double runOut = StrictMath.hypot(startUncertainty, endUncertainty);
        double by = Objects.requireNonNull(atStart, "offset").libraryValue() - offsets[0];
        double u = atStart.libraryUncertainty();
        return new SlotPlace(
                stations,
                Arrays.stream(offsets).map(e -> e + by).toArray(),
                shifts,
                u * u,
                0,
                runOut,
                atStart.degreesOfFreedom(),
                style());
    }

    /**
     * {@return the offset at a station with its uncertainty; beyond the channel's ends its line goes on straight}
     *
     * @param station from the nut, positive toward the body
     */
    public SlotOffset at(Quantity<Length> station) {
        double x = LibraryUnits.mm(station, "station");
        return SlotOffset.ofMm(offsetMmAt(x), uncertaintyMmAt(x), degreesOfFreedom, style());
    }

    /**
     * {@return the offset at a station in mm, positive when the slot lies too far from the fence}
     *
     * @param stationMm from the nut in mm
     */
    public double offsetMmAt(double stationMm) {
        double x = LibraryUnits.stationMm(stationMm);
        int right = 1;
        while (right < stations.length - 1 && stations[right] < x) {
            right++;
        }
        double from = stations[right - 1];
        double part = (x - from) / (stations[right] - from);
        return offsets[right - 1] + part * (offsets[right] - offsets[right - 1]);
    }

    private double uncertaintyMmAt(double x) {
        double start = stations[0];
        double t = Math.min(1, Math.max(0, (x - start) / (stations[stations.length - 1] - start)));
        double one = (1 - t) * startUncertainty;
        double other = t * endUncertainty;
        return Math.sqrt(variance + one * one + other * other);
    }

    /** {@return the standard uncertainty that the offsets at all stations share, such as that of the fence's setting} */
    public Amount<Length> sharedUncertainty() {
        return style().amount(Math.sqrt(variance));
    }

    /** {@return the channel's head end, from the nut} */
    public Amount<Length> startStation() {
        return style().amount(stations[0]);
    }

    /** {@return the channel's heel end, from the nut} */
    public Amount<Length> endStation() {
        return style().amount(endStationMm());
    }

    /** {@return the offset at the channel's head end, with its uncertainty} */
    public SlotOffset start() {
        return at(startStation());
    }

    /** {@return the offset at the channel's heel end, with its uncertainty} */
    public SlotOffset end() {
        return at(endStation());
    }

    /** {@return the offset where it is largest, with its uncertainty} */
    public SlotOffset worst() {
        return at(style().amount(worstStationMm()));
    }

    /** {@return the station at which the offset is largest, in mm; mm from the nut} */
    public double worstStationMm() {
        int worst = 0;
        for (int i = 1; i < offsets.length; i++) {
            worst = Math.abs(offsets[i]) > Math.abs(offsets[worst]) ? i : worst;
        }
        return stations[worst];
    }

    private double endStationMm() {
        return stations[stations.length - 1];
    }

    private boolean isWorstBetweenTheEnds() {
        return worstStationMm() != stations[0] && worstStationMm() != endStationMm();
    }

    /** Middle of the band from the least to the greatest offset: what a fence move can take away. */
    double middleMm() {
        return (Arrays.stream(offsets).min().orElseThrow()
                        + Arrays.stream(offsets).max().orElseThrow())
                / 2;
    }

    /** {@return the angle between slot and blank's middle, positive: away from the fence toward the body} */
    public Amount<Angle> skew() {
        int last = offsets.length - 1;
        double slope = (offsets[last] - offsets[0]) / (stations[last] - stations[0]);
        return Amount.ofLibrary(StrictMath.atan(slope), ShopUnit.DEGREE);
    }

    /** {@return whether the slot runs parallel to the blank's middle; true where every station has the same offset} */
    public boolean isParallel() {
        return Arrays.stream(offsets).allMatch(e -> e == offsets[0]);
    }

    /**
     * {@return the conformance probability: that the offset is within a limit along the whole channel; a ratio in [0,
     * 1]}
     *
     * @param limit either side of the middle, more than 0
     * @throws IllegalArgumentException if the limit is not more than 0
     */
    public double conformanceProbability(Quantity<Length> limit) {
        int last = stations.length - 1;
        return law(LibraryUnits.mmPositive(limit, "limit"))
                .keeps(
                        offsets[0] + shifts[0],
                        offsets[last] + shifts[last],
                        variance,
                        startUncertainty,
                        endUncertainty);
    }

    /** The probability for a limit, from what is known of the two ends without the fence's shift. */
    SlotChance law(double limitMm) {
        double start = stations[0];
        double length = stations[stations.length - 1] - start;
        double[] parts = Arrays.stream(stations).map(x -> (x - start) / length).toArray();
        return new SlotChance(limitMm, parts, shifts, degreesOfFreedom);
    }

    /** From the least to the greatest shift by the fence, or by what is between fence and blank. */
    double shiftRangeMm() {
        return Arrays.stream(shifts).max().orElseThrow()
                - Arrays.stream(shifts).min().orElseThrow();
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        private static final Form<SlotPlace> FORM = Form.<SlotPlace>of("slot-place")
                .fact("startStation", Kind.MM, "the channel's head end from the nut", place -> place.stations[0])
                .fact("start", Kind.answer(SlotOffset.Sentences.FORM), "at the head end", SlotPlace::start)
                .findsOnly("parallel", SlotPlace::isParallel, "{start}")
                .line("start", "at {startStation:brief}", "{start}")
                .fact("endStation", Kind.MM, "the channel's heel end from the nut", SlotPlace::endStationMm)
                .fact("end", Kind.answer(SlotOffset.Sentences.FORM), "at the heel end", SlotPlace::end)
                .line("end", "at {endStation:brief}", "{end}")
                .fact("worstStation", Kind.MM, "where the offset is largest, from the nut", SlotPlace::worstStationMm)
                .fact("worst", Kind.answer(SlotOffset.Sentences.FORM), "where it is largest", SlotPlace::worst)
                .line("worst", "at {worstStation:brief}", SlotPlace::isWorstBetweenTheEnds, "{worst}")
                .fact(
                        "largestOffset",
                        Kind.MM,
                        "positive: too far from the fence",
                        p -> p.offsetMmAt(p.worstStationMm()))
                .finds(
                        "askew",
                        "Slot in the blank: largest offset {largestOffset:size text} at {worstStation:brief} from the nut");
    }

    @Override
    public Form<SlotPlace> form() {
        return Sentences.FORM;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {stations, offsets, shifts, variance, startUncertainty, endUncertainty, degreesOfFreedom};
    }
}
