package org.neckgeom.budget;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
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
import org.neckgeom.measure.Limits;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * What trials by Monte Carlo came to: mean, standard deviation, coverage intervals, yield. Immutable. Source: JCGM
 * 101:2008, 7.5 to 7.7.
 *
 * @param <Q> the kind of the result
 */
public final class Simulated<Q extends Quantity<Q>> extends ValueAnswer {

    /** How batches of trials settled, as {@link Simulation#adaptive} has it. */
    record Settled(int digits, int batches, long batchSize) {}

    private static final Form<Simulated<?>> FORM = Shown.withLimits(Form.<Simulated<?>>of("simulated"), s -> s.limits)
            .fact("title", Kind.NAME, "what is computed", trials -> trials.title)
            .fact("trials", Kind.WHOLE, "how many", Simulated::trials)
            .fact("mean", Kind.ESTIMATE, "with how far off the trials may be", Simulated::mean)
            .fact("standardDeviation", Kind.AMOUNT, "of the result", Simulated::standardDeviation)
            .fact("intervals", Kind.table(Coverage.FORM), "as probable below as above", Simulated::intervals)
            .factIfAny("yield", Kind.PROBABILITY, "of keeping the limits", Simulated::yieldIfAny)
            .factIfAny(
                    "digits",
                    Kind.WHOLE,
                    "of the deviation that settled",
                    s -> s.settled().map(Settled::digits))
            .factIfAny(
                    "batches",
                    Kind.WHOLE,
                    "of trials until then",
                    s -> s.settled().map(Settled::batches))
            .factIfAny(
                    "batchSize",
                    Kind.WHOLE,
                    "trials of a batch",
                    s -> s.settled().map(Settled::batchSize))
            .finds("trials", "{title}: {trials:grouped} trials")
            .line("mean", "mean", "{mean:own fine value}")
            .line("standardDeviation", "standard deviation", "{standardDeviation:own fine beside mean}")
            .each("intervals", "{coverage:percent ..2} within", "{interval:own fine}")
            .line("yield", "{kept}", "{yield}")
            .note(
                    "settled",
                    "settled to {digits:of digit/digits} of the deviation after {batches} batches of {batchSize}")
            .fitted();

    private final String title;
    private final BlockEngine.Tally tally;
    private final double reference;
    private final @Nullable Limits<Q> limits;
    private final @Nullable Settled settled;
    private final ShopUnit<Q> unit;

    Simulated(
            String title,
            BlockEngine.Tally tally,
            double reference,
            @Nullable Limits<Q> limits,
            @Nullable Settled settled,
            ShopUnit<Q> unit) {
        super(FORM, LengthStyle.ofUnit(unit));
        this.title = title;
        this.tally = tally;
        this.reference = reference;
        this.limits = limits;
        this.settled = settled;
        this.unit = unit;
    }

    /** {@return the number of trials; 2 or more} */
    public long trials() {
        return tally.trials();
    }

    /**
     * {@return the mean of the trials with its standard uncertainty {@code s/sqrt(n)}: how far off the trials may be,
     * not how much the result spreads}
     */
    public Estimate<Q> mean() {
        return Estimate.ofLibrary(
                reference + tally.mean(), Math.sqrt(tally.variance() / tally.trials()), tally.trials() - 1.0, unit);
    }

    /** {@return the standard deviation of the trials; 0 or more} */
    public Amount<Q> standardDeviation() {
        return Amount.ofLibrary(Math.sqrt(tally.variance()), unit);
    }

    /** {@return the result as an estimate: mean and standard deviation of the trials} */
    public Estimate<Q> estimate() {
        return Estimate.ofLibrary(
                reference + tally.mean(), Math.sqrt(tally.variance()), Double.POSITIVE_INFINITY, unit);
    }

    /**
     * {@return the probabilistically symmetric coverage interval (7.7.2)}
     *
     * @param coverage more than 0 and less than 100 percent
     * @throws IllegalArgumentException if the values were not kept
     */
    public Interval<Q> interval(Quantity<Dimensionless> coverage) {
        double[] ends = ends(values(), tally, LibraryUnits.probability(coverage, "coverage"));
        return Interval.ofLibrary(reference + ends[0], reference + ends[1], unit);
    }

    /**
     * {@return the shortest coverage interval (7.7.4); sorts all values; the interval; of equally short ones the
     * lowest}
     *
     * @param coverage more than 0 and less than 100 percent
     * @throws IllegalArgumentException if the values were not kept
     */
    public Interval<Q> shortestInterval(Quantity<Dimensionless> coverage) {
        double p = LibraryUnits.probability(coverage, "coverage");
        double[] sorted = values().clone();
        Arrays.sort(sorted);
        int inside = inside(sorted.length, p);
        int best = 0;
        for (int r = 1; r + inside < sorted.length; r++) {
            if (sorted[r + inside] - sorted[r] < sorted[best + inside] - sorted[best]) {
                best = r;
            }
        }
        int top = Math.min(best + inside, sorted.length - 1);
        return Interval.ofLibrary(reference + sorted[best], reference + sorted[top], unit);
    }

    /**
     * {@return how often the trials kept the limits given beforehand, with the uncertainty of a count}
     *
     * @throws IllegalArgumentException if no limits were given
     */
    public Yield<Q> yield() {
        if (limits == null) {
            throw Refusal.because(
                    "limits",
                    "missing",
                    "the trials of " + title + " need limits for this, but had none: add .withLimits(...)");
        }
        return Yield.counted(title, limits, tally.inside(), tally.trials());
    }

    /**
     * {@return how often the trials kept some limits, with the uncertainty of a count}
     *
     * @param allowed what is allowed
     * @throws IllegalArgumentException if the values were not kept
     */
    public Yield<Q> yield(Limits<Q> allowed) {
        double low = Objects.requireNonNull(allowed, "allowed").libraryLower() - reference;
        double high = allowed.libraryUpper() - reference;
        long inside = 0;
        for (double value : values()) {
            inside += value >= low && value <= high ? 1 : 0;
        }
        return Yield.counted(title, allowed, inside, tally.trials());
    }

    private double[] values() {
        double[] values = tally.values();
        if (values == null) {
            throw Refusal.because(
                    "values",
                    "missing",
                    "the trials of " + title
                            + " need their values for this, but kept none: leave out .withoutQuantiles()");
        }
        return values;
    }

    /** 7.7.1: q is p M rounded half up; r the middle of what is left, rounded half up where M - q is odd. */
    static double[] ends(double[] values, BlockEngine.Tally tally, double p) {
        int inside = inside(values.length, p);
        int low = Math.max(1, (values.length - inside + 1) / 2);
        int high = Math.min(values.length, low + inside);
        return OrderStatistics.of(values, tally.least(), tally.most(), low - 1, high - 1);
    }

    private static int inside(int count, double p) {
        return (int) Math.min(count - 1L, (long) Math.floor(p * count + 0.5));
    }

    private List<Coverage> intervals() {
        return tally.values() == null ? List.of() : Coverage.all(this::interval, 95, 99);
    }

    private Optional<Double> yieldIfAny() {
        return limits == null ? Optional.empty() : Optional.of(this.yield().probability());
    }

    private Optional<Settled> settled() {
        return Optional.ofNullable(settled);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, tally, reference, Optional.ofNullable(limits), settled(), unit.kind()};
    }
}
