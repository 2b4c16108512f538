package org.neckgeom.budget;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Chance;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The result of a Monte Carlo simulation (propagation of distributions): mean, standard deviation, coverage intervals,
 * yield. Immutable. Source: JCGM 101:2008, 7.5 to 7.7.
 *
 * @param <Q> the kind of the result
 */
public final class Simulated<Q extends Quantity<Q>> extends ValueAnswer {

    /** How batches of trials settled, as {@link Simulation#adaptive} has it. */
    record Settled(int digits, int batches, long batchSize) {}

    private static final Form<Simulated<?>> FORM = Shown.withLimits(Form.<Simulated<?>>of("simulated"), s -> s.limits)
            .fact("title", Kind.NAME, "name of the result", trials -> trials.title)
            .fact("trials", Kind.WHOLE, "how many", Simulated::trials)
            .factIfAny("undefined", Kind.WHOLE, "trials that have no value", Simulated::undefinedIfAny)
            .factIfAny("trouble", Kind.NAME, "why the first of those has none", Simulated::trouble)
            .factIfAny("mean", Kind.ESTIMATE, "with how far off the trials may be", s -> s.ifDeviation(Simulated::mean))
            .factIfAny(
                    "standardDeviation", Kind.AMOUNT, "of the result", s -> s.ifDeviation(Simulated::standardDeviation))
            .fact("intervals", Kind.table(Coverage.FORM), "as probable below as above", Simulated::intervals)
            .factIfAny("yield", Kind.CHANCE, "of keeping the limits", Simulated::yieldIfAny)
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
            .line("undefined", "undefined", "{undefined:grouped} of {trials:grouped} trials have no value")
            .line("trouble", "the first", "{trouble}")
            .line("mean", "mean", "{mean:own fine value}")
            .line("standardDeviation", "standard deviation", "{standardDeviation:own fine beside mean}")
            .line("noDeviation", "standard deviation", Simulated::lacksDeviation, "none")
            .each("intervals", "{coverage:percent ..2} interval", "{interval:own fine}")
            .line("yield", "{kept}", "{yield}")
            .note(
                    "settled",
                    "settled to {digits:of digit/digits} of the deviation after {batches} batches of {batchSize}")
            .fitted();

    private final String title;
    private final BlockEngine.Tally tally;
    private final double reference;
    private final boolean hasDeviation;
    private final @Nullable Limits<Q> limits;
    private final @Nullable Settled settled;
    private final ShopUnit<Q> unit;

    Simulated(
            String title,
            BlockEngine.Tally tally,
            double reference,
            boolean hasDeviation,
            @Nullable Limits<Q> limits,
            @Nullable Settled settled,
            ShopUnit<Q> unit) {
        super(FORM, LengthStyle.ofUnit(unit));
        this.title = title;
        this.tally = tally;
        this.reference = reference;
        this.hasDeviation = hasDeviation;
        this.limits = limits;
        this.settled = settled;
        this.unit = unit;
    }

    /** {@return the number of trials; 2 or more} */
    public long trials() {
        return tally.trials();
    }

    /**
     * {@return the number of trials that have no value: the function returned none, or an infinite one, or threw; 0 or more}
     */
    public long undefined() {
        return tally.undefined();
    }

    /** {@return why the first trial that has no value has none, as the function put it, if it threw} */
    public Optional<String> trouble() {
        return Optional.ofNullable(tally.trouble());
    }

    /**
     * {@return the mean of the trials with its standard uncertainty {@code s/sqrt(n)}: how far off the trials may be,
     * not how much the result spreads}
     *
     * @throws ArithmeticException if a trial has no value, or the result has no standard deviation
     */
    public Estimate<Q> mean() {
        double variance = variance("mean");
        return Estimate.ofLibrary(
                reference + tally.mean(), Math.sqrt(variance / tally.trials()), tally.trials() - 1.0, unit);
    }

    /**
     * {@return the standard deviation of the trials; 0 or more}
     *
     * @throws ArithmeticException if a trial has no value, or the result has no standard deviation
     */
    public Amount<Q> standardDeviation() {
        return Amount.ofLibrary(Math.sqrt(variance("standard deviation")), unit);
    }

    /**
     * {@return the result as an estimate: mean and standard deviation of the trials}
     *
     * @throws ArithmeticException if a trial has no value, or the result has no standard deviation
     */
    public Estimate<Q> estimate() {
        double variance = variance("estimate");
        return Estimate.ofLibrary(reference + tally.mean(), Math.sqrt(variance), Double.POSITIVE_INFINITY, unit);
    }

    private double variance(String wanted) {
        if (tally.undefined() > 0) {
            throw NoAnswer.because(
                    "trials",
                    "undefined",
                    "there is no " + wanted + " of " + title + ": " + lacking()
                            + trouble().map(why -> " (" + why + ")").orElse(""));
        }
        if (!hasDeviation) {
            throw NoAnswer.because(
                    "trials",
                    "no-deviation",
                    "there is no " + wanted + " of " + title
                            + ": an input has Student's law of 2 degrees of freedom or fewer, which has no standard"
                            + " deviation; ask for an interval");
        }
        return tally.variance();
    }

    /** Such as {@code 812 of 10000 trials have no value}. */
    private String lacking() {
        return tally.undefined() + " of " + tally.trials() + " trials have no value";
    }

    private boolean lacksDeviation() {
        return tally.undefined() > 0 || !hasDeviation;
    }

    private <A> Optional<A> ifDeviation(Function<Simulated<Q>, A> answer) {
        return lacksDeviation() ? Optional.empty() : Optional.of(answer.apply(this));
    }

    private Optional<Number> undefinedIfAny() {
        return tally.undefined() > 0 ? Optional.of(tally.undefined()) : Optional.empty();
    }

    /**
     * {@return the probabilistically symmetric coverage interval (7.7.2)} Trials without a value are taken as lowest and as
     * highest of all in turn; where both give the same interval, to half a unit of its second digit, the wider is given.
     *
     * @param coverage more than 0 and less than 100 percent
     * @throws IllegalArgumentException if the values were not kept
     * @throws ArithmeticException if too many trials have no value for an interval to be known
     */
    public Interval<Q> interval(Quantity<Dimensionless> coverage) {
        double p = LibraryUnits.probability(coverage, "coverage");
        values();
        Interval<Q> interval = intervalIfAny(coverage);
        if (interval == null) {
            throw NoAnswer.because(
                    "trials",
                    "undefined",
                    "there is no " + Numbers.trimmed(100 * p, 2) + " % interval of " + title + ": " + lacking()
                            + trouble().map(why -> " (" + why + ")").orElse(""));
        }
        return interval;
    }

    @Nullable
    Interval<Q> intervalIfAny(Quantity<Dimensionless> coverage) {
        double[] ends = ends(tally, LibraryUnits.probability(coverage, "coverage"));
        return Double.isNaN(ends[0]) ? null : Interval.ofLibrary(reference + ends[0], reference + ends[1], unit);
    }

    /**
     * {@return the shortest coverage interval (7.7.4); sorts all values; the interval; of equally short ones the
     * lowest}
     *
     * @param coverage more than 0 and less than 100 percent
     * @throws IllegalArgumentException if the values were not kept
     * @throws ArithmeticException if a trial has no value
     */
    public Interval<Q> shortestInterval(Quantity<Dimensionless> coverage) {
        double p = LibraryUnits.probability(coverage, "coverage");
        double[] sorted = values().clone();
        if (tally.undefined() > 0) {
            variance("shortest interval");
        }
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
     * {@return the yield: the share of trials that kept the limits given beforehand, with the uncertainty of a count}
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
        return Yield.counted(title, limits, tally.inside(), tally.undefined(), tally.trials());
    }

    /**
     * {@return the yield: the share of trials that kept some limits, with the uncertainty of a count}
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
        return Yield.counted(title, allowed, inside, tally.undefined(), tally.trials());
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

    /**
     * 7.7.1: q is p M rounded half up; r the middle of what is left, rounded half up where M - q is odd. NaN where it matters
     * how the trials without a value are placed.
     */
    static double[] ends(BlockEngine.Tally tally, double p) {
        double[] values = Objects.requireNonNull(tally.values(), "values of the trials");
        int inside = inside(values.length, p);
        int low = Math.max(1, (values.length - inside + 1) / 2);
        int high = Math.min(values.length, low + inside);
        int undefined = (int) tally.undefined();
        if (undefined == 0) {
            return OrderStatistics.of(values, tally.least(), tally.most(), low - 1, high - 1);
        }
        int defined = values.length - undefined;
        if (low - 1 - undefined < 0 || high - 1 >= defined) {
            return new double[] {Double.NaN, Double.NaN};
        }
        double[] some = Arrays.stream(values).filter(x -> !Double.isNaN(x)).toArray();
        double[] found = OrderStatistics.of(
                some, tally.least(), tally.most(), low - 1 - undefined, low - 1, high - 1 - undefined, high - 1);
        double tolerance = Tolerance.of((found[3] - found[0]) / (2.0 * NormalLaw.coverageFactor(p)), 2);
        return found[1] - found[0] <= tolerance && found[3] - found[2] <= tolerance
                ? new double[] {found[0], found[3]}
                : new double[] {Double.NaN, Double.NaN};
    }

    private static int inside(int count, double p) {
        return (int) Math.min(count - 1L, (long) Math.floor(p * count + 0.5));
    }

    private List<Coverage> intervals() {
        return tally.values() == null
                ? List.of()
                : Coverage.all(
                        this::interval,
                        DoubleStream.of(95, 99)
                                .filter(percent -> !Double.isNaN(ends(tally, percent / 100)[0]))
                                .toArray());
    }

    private Optional<Chance> yieldIfAny() {
        return limits == null ? Optional.empty() : Optional.of(this.yield().chance());
    }

    private Optional<Settled> settled() {
        return Optional.ofNullable(settled);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, tally, reference, hasDeviation, Optional.ofNullable(limits), settled(), unit.kind()
        };
    }
}
