package org.neckgeom.budget;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.numeric.NormalLaw;
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
            .fact("title", Kind.NAME, "name of the result", both -> both.title)
            .fact("firstOrder", Kind.ESTIMATE, "result by derivatives", Comparison::firstOrder)
            .factIfAny("trials", Kind.ESTIMATE, "result by trials", Comparison::estimateIfAny)
            .factIfAny("undefined", Kind.WHOLE, "trials that have no value", Comparison::undefinedIfAny)
            .fact("count", Kind.WHOLE, "of the trials", both -> both.trials.trials())
            .fact("firstOrderInterval", Kind.INTERVAL, "of 95 %", both -> both.firstOrder.interval(COVERAGE))
            .factIfAny("trialsInterval", Kind.INTERVAL, "of 95 %", both -> Optional.ofNullable(both.byTrials))
            .factIfAny("difference", Kind.AMOUNT, "of the ends, the larger", Comparison::differenceIfAny)
            .factIfAny("tolerance", Kind.AMOUNT, "of the difference", Comparison::toleranceIfAny)
            .finds("agrees", Comparison::isValidated, "{title}: first order agrees with the trials")
            .finds("undefined", Comparison::hasUndefined, "{title}: first order is NOT PROVED: trials have no value")
            .finds("disagrees", "{title}: first order DISAGREES with the trials: use the trials")
            .line("firstOrder", "first order", "{firstOrder:own}")
            .line("undefined", "undefined", "{undefined:grouped} of {count:grouped} trials have no value")
            .line("trials", "trials", "{trials:own fine}")
            .line("noDeviation", "trials", both -> both.estimateIfAny().isEmpty(), "standard deviation: none")
            .line("firstOrderInterval", "95 % by first order", "{firstOrderInterval:own}")
            .line("trialsInterval", "95 % by trials", "{trialsInterval:own fine}")
            .line("difference", "largest difference", "{difference:own fine digits 3}")
            .line("tolerance", "let pass", "{tolerance:own fine digits 3}")
            .fitted();

    private final String title;
    private final Estimate<Q> firstOrder;
    private final Simulated<Q> trials;
    private final @Nullable Interval<Q> byTrials;
    private final double difference;
    private final double tolerance;
    private final boolean hasDeviation;
    private final ShopUnit<Q> unit;

    Comparison(
            String title,
            Estimate<Q> firstOrder,
            Simulated<Q> trials,
            boolean hasDeviation,
            int digits,
            ShopUnit<Q> unit) {
        super(FORM, LengthStyle.ofUnit(unit));
        if (digits < 1 || digits > 2) {
            throw Refusal.of("digits", "range", "be 1 or 2", "were", digits);
        }
        this.title = title;
        this.firstOrder = firstOrder;
        this.trials = trials;
        this.hasDeviation = hasDeviation;
        this.unit = unit;
        this.byTrials = trials.intervalIfAny(COVERAGE);
        if (byTrials == null) {
            this.difference = Double.NaN;
            this.tolerance = Double.NaN;
            return;
        }
        Interval<Q> one = firstOrder.interval(COVERAGE);
        this.difference = Math.max(
                Math.abs(one.libraryLow() - byTrials.libraryLow()),
                Math.abs(one.libraryHigh() - byTrials.libraryHigh()));
        this.tolerance = Tolerance.of(
                estimateIfAny()
                        .map(Estimate::libraryUncertainty)
                        .orElse((byTrials.libraryHigh() - byTrials.libraryLow())
                                / (2 * NormalLaw.coverageFactor(COVERAGE.libraryValue()))),
                digits);
    }

    /**
     * {@return whether both ends of the 95 % interval by first order agree with the trials, within the tolerance; never, where
     * a trial has no value}
     */
    public boolean isValidated() {
        return !hasUndefined() && difference <= tolerance;
    }

    private boolean hasUndefined() {
        return trials.undefined() > 0;
    }

    private Optional<Estimate<?>> estimateIfAny() {
        return hasUndefined() || !hasDeviation ? Optional.empty() : Optional.of(trials.estimate());
    }

    private Optional<Number> undefinedIfAny() {
        return hasUndefined() ? Optional.of(trials.undefined()) : Optional.empty();
    }

    private Optional<Amount<?>> differenceIfAny() {
        return byTrials == null ? Optional.empty() : Optional.of(difference());
    }

    private Optional<Amount<?>> toleranceIfAny() {
        return byTrials == null ? Optional.empty() : Optional.of(tolerance());
    }

    /** {@return the first-order result} */
    public Estimate<Q> firstOrder() {
        return firstOrder;
    }

    /** {@return the result of the trials} */
    public Simulated<Q> trials() {
        return trials;
    }

    /**
     * {@return the larger difference between the ends of the two 95 % intervals; 0 or more}
     *
     * @throws ArithmeticException if so many trials have no value that their interval is not known
     */
    public Amount<Q> difference() {
        trials.interval(COVERAGE);
        return Amount.ofLibrary(difference, unit);
    }

    /**
     * {@return the difference that is let pass; half a unit of the last digit of u that matters}
     *
     * @throws ArithmeticException if so many trials have no value that their interval is not known
     */
    public Amount<Q> tolerance() {
        trials.interval(COVERAGE);
        return Amount.ofLibrary(tolerance, unit);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, firstOrder, trials, tolerance, unit.kind()};
    }
}
