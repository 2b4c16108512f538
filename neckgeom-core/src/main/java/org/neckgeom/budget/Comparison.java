package org.neckgeom.budget;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * First order held against trials of the function itself (JCGM 101:2008, clause 8). Immutable.
 *
 * @param <Q> the kind of the result
 */
public final class Comparison<Q extends Quantity<Q>> extends ValueAnswer {

    /** Coverage of the intervals that are compared. */
    static final Amount<Dimensionless> COVERAGE = ShopUnits.percent(95);

    private static final Form<Comparison<?>> FORM = Form.<Comparison<?>>of("comparison")
            .fact("title", Kind.NAME, "what is computed", both -> both.title)
            .fact("firstOrder", Kind.ESTIMATE, "result by derivatives", Comparison::firstOrder)
            .fact("trials", Kind.ESTIMATE, "result by trials", both -> both.trials.estimate())
            .fact("firstOrderInterval", Kind.INTERVAL, "of 95 %", both -> both.firstOrder.interval(COVERAGE))
            .fact("trialsInterval", Kind.INTERVAL, "of 95 %", both -> both.trials.interval(COVERAGE))
            .fact("difference", Kind.AMOUNT, "of the ends, the larger", Comparison::difference)
            .fact("tolerance", Kind.AMOUNT, "of the difference", Comparison::tolerance)
            .finds("agrees", Comparison::isValidated, "{title}: first order agrees with the trials")
            .finds("disagrees", "{title}: first order DISAGREES with the trials: use the trials")
            .line("firstOrder", "first order", "{firstOrder:own}")
            .line("trials", "trials", "{trials:own fine}")
            .line("firstOrderInterval", "95 % by first order", "{firstOrderInterval:own}")
            .line("trialsInterval", "95 % by trials", "{trialsInterval:own fine}")
            .line("difference", "largest difference", "{difference:own fine digits 3}")
            .line("tolerance", "let pass", "{tolerance:own fine digits 3}")
            .fitted();

    private final String title;
    private final Estimate<Q> firstOrder;
    private final Simulated<Q> trials;
    private final double difference;
    private final double tolerance;
    private final ShopUnit<Q> unit;

    Comparison(String title, Estimate<Q> firstOrder, Simulated<Q> trials, int digits, ShopUnit<Q> unit) {
        super(FORM, LengthStyle.ofUnit(unit));
        if (digits < 1 || digits > 2) {
            throw Refusal.of("digits", "range", "be 1 or 2", "were", digits);
        }
        this.title = title;
        this.firstOrder = firstOrder;
        this.trials = trials;
        this.unit = unit;
        Interval<Q> one = firstOrder.interval(COVERAGE);
        Interval<Q> two = trials.interval(COVERAGE);
        this.difference = Math.max(
                Math.abs(one.libraryLow() - two.libraryLow()), Math.abs(one.libraryHigh() - two.libraryHigh()));
        this.tolerance = new AdaptiveRun(COVERAGE.libraryValue(), digits)
                .tolerance(trials.standardDeviation().libraryValue());
    }

    /** {@return whether both ends of the 95 % interval by first order agree with the trials, within the tolerance} */
    public boolean isValidated() {
        return difference <= tolerance;
    }

    /** {@return the first-order result} */
    public Estimate<Q> firstOrder() {
        return firstOrder;
    }

    /** {@return the result of the trials} */
    public Simulated<Q> trials() {
        return trials;
    }

    /** {@return the larger difference between the ends of the two 95 % intervals; 0 or more} */
    public Amount<Q> difference() {
        return Amount.ofLibrary(difference, unit);
    }

    /** {@return the difference that is let pass; half a unit of the last digit of u that matters} */
    public Amount<Q> tolerance() {
        return Amount.ofLibrary(tolerance, unit);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, firstOrder, trials, tolerance, unit.kind()};
    }
}
