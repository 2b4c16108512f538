package org.neckgeom.budget;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * First order held against trials of the function itself (JCGM 101:2008, clause 8). Immutable.
 *
 * @param <Q> the kind of the result
 */
public final class Comparison<Q extends Quantity<Q>> implements SaysLengths<Comparison<Q>> {

    /** Coverage of the intervals that are compared, in percent. */
    static final double COVERAGE_PERCENT = 95.0;

    private final String title;
    private final Estimate<Q> firstOrder;
    private final Simulated<Q> trials;
    private final double lowOff;
    private final double highOff;
    private final double tolerance;
    private final ShopUnit<Q> unit;

    private Comparison(
            String title,
            Estimate<Q> firstOrder,
            Simulated<Q> trials,
            double lowOff,
            double highOff,
            double tolerance,
            ShopUnit<Q> unit) {
        this.title = title;
        this.firstOrder = firstOrder;
        this.trials = trials;
        this.lowOff = lowOff;
        this.highOff = highOff;
        this.tolerance = tolerance;
        this.unit = unit;
    }

    Comparison(String title, Estimate<Q> firstOrder, Simulated<Q> trials, int digits, ShopUnit<Q> unit) {
        if (digits < 1 || digits > 2) {
            throw Refusal.of("digits", "range", "be 1 or 2", "were", digits);
        }
        this.title = title;
        this.firstOrder = firstOrder;
        this.trials = trials;
        this.unit = unit;
        Quantity<Dimensionless> coverage = Amount.of(COVERAGE_PERCENT, ShopUnit.PERCENT);
        Interval<Q> one = firstOrder.interval(coverage);
        Interval<Q> two = trials.interval(coverage);
        this.lowOff = Math.abs(one.lowHouse() - two.lowHouse());
        this.highOff = Math.abs(one.highHouse() - two.highHouse());
        this.tolerance = new AdaptiveRun(COVERAGE_PERCENT / 100.0, digits)
                .tolerance(trials.standardDeviation().house());
    }

    /**
     * Says whether first order is validated: both ends of its 95 % interval agree with the trials.
     *
     * @return true when both differences are within the tolerance
     */
    public boolean isValidated() {
        return lowOff <= tolerance && highOff <= tolerance;
    }

    /**
     * Returns the first-order result.
     *
     * @return the estimate
     */
    public Estimate<Q> firstOrder() {
        return firstOrder;
    }

    /**
     * Returns the result of the trials.
     *
     * @return the trials
     */
    public Simulated<Q> trials() {
        return trials;
    }

    /**
     * Returns the larger difference between the ends of the two 95 % intervals.
     *
     * @return 0 or more
     */
    public Amount<Q> difference() {
        return Amount.ofHouse(Math.max(lowOff, highOff), unit);
    }

    /**
     * Returns the difference that is let pass.
     *
     * @return half a unit of the last digit of u that matters
     */
    public Amount<Q> tolerance() {
        return Amount.ofHouse(tolerance, unit);
    }

    @Override
    public Comparison<Q> in(LengthStyle other) {
        return new Comparison<>(
                title, firstOrder.in(other), trials.in(other), lowOff, highOff, tolerance, other.fineUnitFor(unit));
    }

    @Override
    public String toString() {
        Quantity<Dimensionless> coverage = Amount.of(COVERAGE_PERCENT, ShopUnit.PERCENT);
        Report report = Report.titled(title + ": first order "
                        + (isValidated() ? "agrees with the trials" : "DISAGREES with the trials: use the trials"))
                .row("first order", firstOrder)
                .row("trials", trials.estimate())
                .row("95 % by first order", firstOrder.interval(coverage))
                .row("95 % by trials", trials.interval(coverage))
                .row("largest difference", Shown.size(Math.max(lowOff, highOff), unit))
                .row("let pass", Shown.size(tolerance, unit));
        return report.fitted();
    }
}
