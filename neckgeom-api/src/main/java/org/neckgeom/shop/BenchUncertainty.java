package org.neckgeom.shop;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * The standard uncertainties of one bench: of a reading, of the calliper's zero, of a cut and of a fence move. Immutable.
 *
 * <p>Two cuts at one setting do not lie in the same place: how the work is pressed, chips, play. That scatter is in every
 * trial cut and once more in the neck's own cut. To know it, make ten cuts in scrap without touching the fence, and give
 * their standard deviation with their number: {@link #cutScatter(Quantity, int)}.
 *
 * <p>Defaults (common practice): a reading 0.05 mm, a calliper's zero 0.01 mm, a cut 0.02 mm and a fence move 0.02 mm, each one
 * standard deviation; the one of a cut counts as known from five cuts.
 */
public final class BenchUncertainty implements Answer, SaysLengths<BenchUncertainty> {

    /** The scatter of cuts and where it comes from, such as {@code 0.020 mm, common practice}. */
    static final Form<BenchUncertainty> CUT_SCATTER = Form.<BenchUncertainty>of("cut-scatter")
            .fact("standardDeviation", Kind.MM, "of the places of cuts at one setting", BenchUncertainty::cutScatterMm)
            .factIfAny("cuts", Kind.WHOLE, "how many it was found from", BenchUncertainty::cutScatterCuts)
            .finds(
                    "common-practice",
                    BenchUncertainty::isCutScatterDefault,
                    "{standardDeviation:small}, common practice: make ten cuts at one setting to know it")
            .finds("from-cuts", "{standardDeviation:small}, from {cuts} cuts")
            .finds("well-known", "{standardDeviation:small}");

    static final Form<BenchUncertainty> FORM = Form.<BenchUncertainty>of("bench-uncertainty")
            .finds("bench", "Bench, standard uncertainties")
            .fact("repeatability", Kind.MM, "of one reading", BenchUncertainty::readingMm)
            .line("repeatability", "reading", "{repeatability:small}")
            .fact(
                    "resolution",
                    Kind.MM,
                    "of the instrument; 0 where its repeatability has it",
                    BenchUncertainty::resolutionMm)
            .line("resolution", "resolution", bench -> bench.resolution == 0, "contained in it")
            .line("resolution", "resolution", bench -> bench.resolution > 0, "{resolution:small} a step")
            .fact("calliperZero", Kind.MM, "common to all its readings", BenchUncertainty::calliperZeroMm)
            .line("calliperZero", "calliper zero", "{calliperZero:small}")
            .fact("blankCalliperZero", Kind.MM, "of another calliper that read the blank", bench -> bench.blankZero)
            .line("blankCalliperZero", "of the blank's", "{blankCalliperZero:small}")
            .row("cutScatter", "cut scatter", Kind.answer(CUT_SCATTER), "of cuts at one setting", bench -> bench)
            .fact(
                    "moveUncertainty",
                    Kind.MM,
                    "of a fence move, feeler gauges not counted",
                    BenchUncertainty::moveScatterMm)
            .line("moveUncertainty", "fence move", "{moveUncertainty:small}");

    /** Standard deviation of two cuts' places at one setting, in mm; common practice. */
    public static final double DEFAULT_CUT_SCATTER_MM = 0.02;

    /** How well a fence moved on feeler gauges against a block repeats, one standard deviation in mm; common practice. */
    public static final double DEFAULT_MOVE_SCATTER_MM = 0.02;

    /** Standard uncertainty of a calliper's zero, in mm; common practice. */
    public static final double DEFAULT_CALLIPER_ZERO_MM = 0.01;

    /** A guess is worth as much as a standard deviation found from five cuts. */
    private static final double GUESSED_DEGREES = 4;

    private static final BenchUncertainty DEFAULTS = new BenchUncertainty(
            TrialCut.USUAL_REPEATABILITY_MM,
            0,
            DEFAULT_CALLIPER_ZERO_MM,
            Double.NaN,
            DEFAULT_CUT_SCATTER_MM,
            GUESSED_DEGREES,
            true,
            DEFAULT_MOVE_SCATTER_MM,
            LengthStyle.MILLIMETRES);

    private final double reading;
    private final double resolution;
    private final double zero;
    /** NaN where the blank was read by the same calliper. */
    private final double blankZero;

    private final double cut;
    private final double cutDegrees;
    private final boolean isCutGuessed;
    private final double move;
    private final LengthStyle style;

    private BenchUncertainty(
            double reading,
            double resolution,
            double zero,
            double blankZero,
            double cut,
            double cutDegrees,
            boolean isCutGuessed,
            double move,
            LengthStyle style) {
        this.reading = reading;
        this.resolution = resolution;
        this.zero = zero;
        this.blankZero = blankZero;
        this.cut = cut;
        this.cutDegrees = cutDegrees;
        this.isCutGuessed = isCutGuessed;
        this.move = move;
        this.style = style;
    }

    /**
     * Returns the uncertainties of common practice.
     *
     * @return the defaults
     */
    public static BenchUncertainty withDefaults() {
        return DEFAULTS;
    }

    /**
     * Returns these with another repeatability of a reading.
     *
     * @param standardDeviation of one reading of a wall or a width, more than 0
     * @return the uncertainties, printed in its unit
     */
    public BenchUncertainty reading(Quantity<Length> standardDeviation) {
        double u = HouseUnits.mmPositive(standardDeviation, "repeatability");
        LengthStyle itsStyle = LengthStyle.of(standardDeviation);
        return new BenchUncertainty(u, resolution, zero, blankZero, cut, cutDegrees, isCutGuessed, move, itsStyle);
    }

    /**
     * Returns these with the resolution of the instrument. Its rounding, {@code q/sqrt(12)}, is in every mean of readings,
     * however many they are (GUM F.2.2.1).
     *
     * @param smallestStep q, smallest step that the instrument shows, 0 or more; 0 when it is contained in the repeatability
     * @return the uncertainties
     */
    public BenchUncertainty resolution(Quantity<Length> smallestStep) {
        double q = HouseUnits.mmNotNegative(smallestStep, "resolution");
        return new BenchUncertainty(reading, q, zero, blankZero, cut, cutDegrees, isCutGuessed, move, style);
    }

    /**
     * Returns these with another uncertainty of the calliper's zero, common to all its readings. Inside jaws have a zero of
     * their own, as uncertain.
     *
     * @param standardUncertainty of the zero, 0 or more
     * @return the uncertainties
     */
    public BenchUncertainty calliperZero(Quantity<Length> standardUncertainty) {
        double z = HouseUnits.mmNotNegative(standardUncertainty, "calliper zero");
        return new BenchUncertainty(reading, resolution, z, blankZero, cut, cutDegrees, isCutGuessed, move, style);
    }

    /**
     * Returns these with a blank that was read by another calliper than the trial pieces. One calliper's zero cancels between
     * piece and blank, however far off it is; two zeros do not.
     *
     * @param standardUncertainty of the other calliper's zero, 0 or more
     * @return the uncertainties
     */
    public BenchUncertainty blankCalliperZero(Quantity<Length> standardUncertainty) {
        double z = HouseUnits.mmNotNegative(standardUncertainty, "blank calliper's zero");
        return new BenchUncertainty(reading, resolution, zero, z, cut, cutDegrees, isCutGuessed, move, style);
    }

    /**
     * Returns these with a cut scatter that is well known.
     *
     * @param standardDeviation of the places of cuts at one setting, 0 or more
     * @return the uncertainties
     */
    public BenchUncertainty cutScatter(Quantity<Length> standardDeviation) {
        double u = HouseUnits.mmNotNegative(standardDeviation, "cut scatter");
        return new BenchUncertainty(
                reading, resolution, zero, blankZero, u, Double.POSITIVE_INFINITY, false, move, style);
    }

    /**
     * Returns these with a cut scatter found from a few cuts at one setting.
     *
     * @param standardDeviation of their places, 0 or more
     * @param cuts how many they were, 2 or more
     * @return the uncertainties; chances then use Student's law with one degree of freedom less than cuts
     */
    public BenchUncertainty cutScatter(Quantity<Length> standardDeviation, int cuts) {
        double u = HouseUnits.mmNotNegative(standardDeviation, "cut scatter");
        if (!(cuts >= 2)) {
            throw Refusal.of("cuts behind the cut scatter", "at-least", "be 2 or more", "were", cuts);
        }
        return new BenchUncertainty(reading, resolution, zero, blankZero, u, cuts - 1, false, move, style);
    }

    /**
     * Returns these with another scatter of fence moves.
     *
     * @param standardDeviation of a move at the cutter, feeler gauges not counted, 0 or more
     * @return the uncertainties
     */
    public BenchUncertainty moveScatter(Quantity<Length> standardDeviation) {
        double u = HouseUnits.mmNotNegative(standardDeviation, "move scatter");
        return new BenchUncertainty(reading, resolution, zero, blankZero, cut, cutDegrees, isCutGuessed, u, style);
    }

    /**
     * Returns the repeatability of one reading.
     *
     * @return one standard deviation, more than 0
     */
    public Amount<Length> reading() {
        return style.amount(reading);
    }

    /**
     * Returns the repeatability of one reading in mm.
     *
     * @return one standard deviation, more than 0
     */
    public double readingMm() {
        return reading;
    }

    /**
     * Returns the resolution of the instrument in mm.
     *
     * @return 0 where it is contained in the repeatability
     */
    public double resolutionMm() {
        return resolution;
    }

    /**
     * Returns the standard uncertainty of the calliper's zero in mm.
     *
     * @return 0 or more
     */
    public double calliperZeroMm() {
        return zero;
    }

    /**
     * Returns the standard uncertainty of the zero of the calliper that the blank was read by, in mm.
     *
     * @return 0 or more; nothing where it is the calliper of the trial pieces
     */
    public OptionalDouble blankCalliperZeroMm() {
        return Double.isNaN(blankZero) ? OptionalDouble.empty() : OptionalDouble.of(blankZero);
    }

    /**
     * Returns the scatter of cuts at one setting in mm.
     *
     * @return one standard deviation, 0 or more
     */
    public double cutScatterMm() {
        return cut;
    }

    /**
     * Returns the degrees of freedom of the cut scatter.
     *
     * @return infinite where it is well known
     */
    public double cutScatterDegreesOfFreedom() {
        return cutDegrees;
    }

    /**
     * Returns how many cuts the cut scatter was found from, if it was.
     *
     * @return nothing where it is well known or a default
     */
    public Optional<Integer> cutScatterCuts() {
        return isCutGuessed || Double.isInfinite(cutDegrees) ? Optional.empty() : Optional.of((int) cutDegrees + 1);
    }

    /**
     * Returns whether the cut scatter is the default of common practice.
     *
     * @return false where it was given
     */
    public boolean isCutScatterDefault() {
        return isCutGuessed;
    }

    /**
     * Returns the scatter of a fence move at the cutter in mm, feeler gauges not counted.
     *
     * @return one standard deviation, 0 or more
     */
    public double moveScatterMm() {
        return move;
    }

    @Override
    public Form<BenchUncertainty> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return style;
    }

    @Override
    public BenchUncertainty in(LengthStyle other) {
        return new BenchUncertainty(
                reading,
                resolution,
                zero,
                blankZero,
                cut,
                cutDegrees,
                isCutGuessed,
                move,
                Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof BenchUncertainty other
                && Double.compare(reading, other.reading) == 0
                && Double.compare(resolution, other.resolution) == 0
                && Double.compare(zero, other.zero) == 0
                && Double.compare(blankZero, other.blankZero) == 0
                && Double.compare(cut, other.cut) == 0
                && Double.compare(cutDegrees, other.cutDegrees) == 0
                && isCutGuessed == other.isCutGuessed
                && Double.compare(move, other.move) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(reading, resolution, zero, blankZero, cut, cutDegrees, isCutGuessed, move);
    }

    /** Returns a row for each. */
    @Override
    public String toString() {
        return text(style());
    }
}
