package org.neckgeom.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.Estimate;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * What was read on a test piece after one pass along the fence: the wall left on the fence side and the one on the far
 * side, such as {@code walls 29.84 and 31.26 mm, read within 0.02 mm}. Immutable.
 *
 * <p>The slot's width and the piece's width may be read too; then the readings can be checked against each other. Each
 * may be read several times. Unless told, a single reading on wood repeats to {@link #USUAL_REPEATABILITY_MM}, and
 * several readings speak for themselves (GUM 4.2, Type A).
 */
public final class TrialCut implements SaysLengths<TrialCut> {

    /**
     * How well a calliper repeats on wood, one standard deviation in mm: 0.05, the wider end of common practice (0.03 to
     * 0.05). Used when nothing is told and a wall was read once.
     */
    public static final double USUAL_REPEATABILITY_MM = 0.05;

    private static final double[] READ_ONCE = {};
    private static final double NOT_READ = Double.NaN;
    private static final double NOT_TOLD = Double.NaN;

    private final double fenceMm;
    private final double farMm;
    private final double slotMm;
    private final double pieceMm;
    /** The readings of a wall that was read several times; a wall read once has its reading in its mean alone. */
    private final double[] fence;

    private final double[] far;
    private final double repeatability;
    private final double correlation;
    private final ShopUnit<Length> unit;

    private TrialCut(
            double fenceMm,
            double farMm,
            double slotMm,
            double pieceMm,
            double[] fence,
            double[] far,
            double repeatability,
            double correlation,
            ShopUnit<Length> unit) {
        this.fenceMm = fenceMm;
        this.farMm = farMm;
        this.slotMm = slotMm;
        this.pieceMm = pieceMm;
        this.fence = fence;
        this.far = far;
        this.repeatability = repeatability;
        this.correlation = correlation;
        this.unit = unit;
    }

    /**
     * Returns a trial cut with each wall read once.
     *
     * @param fenceSide the wall between slot and fence, more than 0; its unit is the one answers are given in
     * @param farSide the wall on the other side, more than 0
     * @return the trial cut
     */
    public static TrialCut walls(Quantity<Length> fenceSide, Quantity<Length> farSide) {
        double a = HouseUnits.mmPositive(fenceSide, "fence wall");
        double b = HouseUnits.mmPositive(farSide, "far wall");
        ShopUnit<Length> unit = LengthStyle.of(fenceSide).unit();
        return new TrialCut(a, b, NOT_READ, NOT_READ, READ_ONCE, READ_ONCE, NOT_TOLD, 0, unit);
    }

    /**
     * Returns a trial cut with each wall read several times.
     *
     * @param fenceSide one or more readings of the wall between slot and fence, each more than 0
     * @param farSide one or more readings of the wall on the other side, each more than 0
     * @return the trial cut
     */
    public static TrialCut walls(List<? extends Quantity<Length>> fenceSide, List<? extends Quantity<Length>> farSide) {
        double[] a = readings(fenceSide, "fence wall");
        double[] b = readings(farSide, "far wall");
        ShopUnit<Length> unit = LengthStyle.of(fenceSide.get(0)).unit();
        TrialCut cut = new TrialCut(mean(a), mean(b), NOT_READ, NOT_READ, several(a), several(b), NOT_TOLD, 0, unit);
        // Readings too far apart to have a scatter are refused here, not when they are printed.
        cut.fenceWall();
        cut.farWall();
        return cut;
    }

    /**
     * Returns this trial cut with the slot's width read as well.
     *
     * @param width more than 0
     * @return the trial cut
     */
    public TrialCut slot(Quantity<Length> width) {
        double d = HouseUnits.mmPositive(width, "slot width");
        return new TrialCut(fenceMm, farMm, d, pieceMm, fence, far, repeatability, correlation, unit);
    }

    /**
     * Returns this trial cut with the test piece's width read as well.
     *
     * @param width more than 0
     * @return the trial cut
     */
    public TrialCut piece(Quantity<Length> width) {
        double w = HouseUnits.mmPositive(width, "piece width");
        return new TrialCut(fenceMm, farMm, slotMm, w, fence, far, repeatability, correlation, unit);
    }

    /**
     * Returns this trial cut with the repeatability of the instrument: how far single readings of one and the same wall
     * scatter, as one standard deviation.
     *
     * @param standardDeviation of one reading, more than 0
     * @return the trial cut
     */
    public TrialCut readWithin(Quantity<Length> standardDeviation) {
        double u = HouseUnits.mmPositive(standardDeviation, "repeatability");
        return new TrialCut(fenceMm, farMm, slotMm, pieceMm, fence, far, u, correlation, unit);
    }

    /**
     * Returns this trial cut with correlated wall readings: one calliper that reads both walls too large by the same
     * unknown amount correlates them.
     *
     * @param coefficient in [-1, 1]; 0 unless told
     * @return the trial cut
     */
    public TrialCut wallsCorrelated(double coefficient) {
        if (!(coefficient >= -1 && coefficient <= 1)) {
            throw Refusal.of("correlation of the walls", "range", "be between -1 and 1", Numbers.plain(coefficient));
        }
        return new TrialCut(fenceMm, farMm, slotMm, pieceMm, fence, far, repeatability, coefficient + 0.0, unit);
    }

    /**
     * Returns the wall on the fence side.
     *
     * @return the mean of its readings with its standard uncertainty
     */
    public Estimate<Length> fenceWall() {
        return estimate(fenceMm, fence);
    }

    /**
     * Returns the wall on the far side.
     *
     * @return the mean of its readings with its standard uncertainty
     */
    public Estimate<Length> farWall() {
        return estimate(farMm, far);
    }

    /**
     * Returns the slot's width, if it was read.
     *
     * @return the reading with its standard uncertainty, or nothing
     */
    public Optional<Estimate<Length>> slot() {
        return Double.isNaN(slotMm) ? Optional.empty() : Optional.of(readOnce(slotMm));
    }

    /**
     * Returns the test piece's width, if it was read.
     *
     * @return the reading with its standard uncertainty, or nothing
     */
    public Optional<Estimate<Length>> piece() {
        return Double.isNaN(pieceMm) ? Optional.empty() : Optional.of(readOnce(pieceMm));
    }

    /**
     * Returns the readings of the wall on the fence side, in mm.
     *
     * @return a fresh array, at least one
     */
    public double[] fenceReadingsMm() {
        return fence.length == 0 ? new double[] {fenceMm} : fence.clone();
    }

    /**
     * Returns the readings of the wall on the far side, in mm.
     *
     * @return a fresh array, at least one
     */
    public double[] farReadingsMm() {
        return far.length == 0 ? new double[] {farMm} : far.clone();
    }

    /**
     * Returns the correlation coefficient of the two wall readings.
     *
     * @return in [-1, 1]
     */
    public double wallCorrelation() {
        return correlation;
    }

    /**
     * Returns the style answers about this cut are printed in: that of the fence wall.
     *
     * @return the style
     */
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    private Estimate<Length> estimate(double mean, double[] several) {
        return several.length == 0 ? readOnce(mean) : readSeveralTimes(mean, several);
    }

    private Estimate<Length> readOnce(double mm) {
        return Estimate.ofHouse(mm, single(), Double.POSITIVE_INFINITY, unit);
    }

    private Estimate<Length> readSeveralTimes(double mean, double[] readings) {
        if (Double.isNaN(repeatability)) {
            Estimate<Length> own = Estimate.repeated(
                    Arrays.stream(readings).mapToObj(ShopUnit.MILLIMETRE::of).toList());
            if (own.uncertaintyHouse() > 0) {
                return own.in(unit);
            }
        }
        // Readings that all agree say more about the instrument's steps than about its scatter.
        return Estimate.ofHouse(mean, single() / Math.sqrt(readings.length), Double.POSITIVE_INFINITY, unit);
    }

    private double single() {
        return Double.isNaN(repeatability) ? USUAL_REPEATABILITY_MM : repeatability;
    }

    private static double mean(double[] readings) {
        double mean = readings[0];
        for (int i = 1; i < readings.length; i++) {
            mean += (readings[i] - mean) / (i + 1);
        }
        return mean;
    }

    private static double[] several(double[] readings) {
        return readings.length > 1 ? readings : READ_ONCE;
    }

    private static double[] readings(List<? extends Quantity<Length>> lengths, String name) {
        if (Objects.requireNonNull(lengths, name).isEmpty()) {
            throw Refusal.of(name, "at-least", "be read once or more", "there was no reading", "");
        }
        double[] mm = new double[lengths.size()];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = HouseUnits.mmPositive(lengths.get(i), name);
        }
        return mm;
    }

    @Override
    public TrialCut in(LengthStyle other) {
        ShopUnit<Length> itsUnit = Objects.requireNonNull(other, "style").unit();
        return new TrialCut(fenceMm, farMm, slotMm, pieceMm, fence, far, repeatability, correlation, itsUnit);
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof TrialCut other
                && Double.compare(fenceMm, other.fenceMm) == 0
                && Double.compare(farMm, other.farMm) == 0
                && Double.compare(slotMm, other.slotMm) == 0
                && Double.compare(pieceMm, other.pieceMm) == 0
                && Arrays.equals(fence, other.fence)
                && Arrays.equals(far, other.far)
                && Double.compare(repeatability, other.repeatability) == 0
                && Double.compare(correlation, other.correlation) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                fenceMm,
                farMm,
                slotMm,
                pieceMm,
                Arrays.hashCode(fence),
                Arrays.hashCode(far),
                repeatability,
                correlation);
    }

    /** Returns the readings, a row each. */
    @Override
    public String toString() {
        Report report =
                Report.titled("Trial cut").row("fence wall", fenceWall()).row("far wall", farWall());
        slot().ifPresent(width -> report.row("slot", width));
        piece().ifPresent(width -> report.row("piece", width));
        if (correlation != 0) {
            report.row("correlation", Numbers.trimmed(correlation, 3));
        }
        return report.toString();
    }

    /**
     * Returns the repeatability of a single reading as it was told, if it was.
     *
     * @return one standard deviation, or nothing
     */
    public Optional<Amount<Length>> repeatability() {
        return Double.isNaN(repeatability) ? Optional.empty() : Optional.of(Amount.ofHouse(repeatability, unit));
    }
}
