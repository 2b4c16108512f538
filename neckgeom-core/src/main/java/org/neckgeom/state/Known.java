package org.neckgeom.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.UncertaintyComponent;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.Once;
import org.neckgeom.kernel.RoughSum;
import org.neckgeom.measure.Chance;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.LibraryUnits;

/**
 * What is known of a deviation of a neck: its estimate, the chance of limits, and whose error it is. Immutable.
 *
 * <p>The estimate takes every spread as given. A chance counts besides how well each spread is known: a guess of common
 * practice is uncertain by a quarter, half of that variance common to all guesses.
 */
public final class Known extends ValueAnswer {

    private static final Form<Known> FORM = Form.<Known>of("known")
            .fact("title", Kind.NAME, "of the deviation", Known::title)
            .fact("estimate", Kind.ESTIMATE, "with the spreads as given", Known::estimate)
            .fact("shares", Kind.table(Share.FORM), "of the variance by step, largest first", Known::shares)
            .fact(
                    "readings",
                    Kind.WHOLE,
                    "that count in the state",
                    known -> known.state.readings().size())
            .finds("known", "{title}: {estimate:own fine value}, standard deviation {estimate:own fine deviation}")
            .each("shares", "{name}", "{share}", 6, "and {more:of smaller one/smaller ones}")
            .fitted();

    static final double PESSIMISTIC = 1.645;

    private static final double NOTHING = 1e-9;
    private static final double LEAST_COVERAGE = 0.01;
    private static final double MOST_COVERAGE = 0.9999;

    /** The usual coverage, 95 %: checks, text, data and page of a plan ask for it. */
    public static final double USUAL = 0.95;

    private static final int MOST_STEPS = 40;
    private static final double SETTLED = 1e-5;

    /** About so many times longer is an interval whose spreads are guesses, uncertain by a quarter: where the search begins. */
    private static final double LONGER = 1.07;

    private static final double MANY_DEGREES = 30.0;
    private static final double MOST_OF_IT = 0.9;

    private final Knowledge state;
    private final String title;
    private final Deviation of;
    private final Supplier<Estimate<Length>> estimate = new Once<>(this::estimated);
    private final Supplier<List<Weighted>> sums = new Once<>(this::summed);
    private final Supplier<Interval<Length>> usual = new Once<>(() -> about(USUAL));

    Known(Knowledge state, String title, Deviation of) {
        super(FORM, state.style());
        this.state = state;
        this.title = Words.name(title, "a title");
        this.of = Objects.requireNonNull(of, "deviation");
        state.requireKnown(of);
    }

    /** {@return the deviation in words} */
    public String title() {
        return title;
    }

    /** {@return the deviation} */
    public Deviation of() {
        return of;
    }

    /** {@return the best estimate with its standard uncertainty, the spreads taken as given} */
    public Estimate<Length> estimate() {
        return estimate.get();
    }

    private Estimate<Length> estimated() {
        Solved solved = state.solved();
        return Estimate.ofLibrary(
                LibraryUnits.finite(solved.mean(of), title, "mm"),
                Math.sqrt(solved.variance(of)),
                Double.POSITIVE_INFINITY,
                state.style().fineUnit());
    }

    /**
     * {@return it as a budget, the spreads taken as given: each cause that no reading touches with its own law, the others
     * together as one normal part}
     */
    public Budget<Length> budget() {
        Solved solved = state.solved();
        List<UncertaintyComponent> all = new ArrayList<>();
        double constant = of.constantMm();
        double read = solved.mean(of);
        double touched = 0.0;
        for (int i = 0; i < of.size(); i++) {
            Cause cause = state.cause(of.name(i));
            if (solved.isTouched(cause.name())) {
                touched++;
            } else {
                read -= of.coefficient(i) * cause.spread().libraryMean();
                all.add(new UncertaintyComponent(cause.name(), cause.step(), of.coefficient(i), cause.spread()));
            }
        }
        Budget<Length> budget = Budget.of(title, state.style().fineUnit());
        for (UncertaintyComponent one : all) {
            budget = budget.with(one);
        }
        if (touched == 0.0 && constant == 0.0) {
            return budget;
        }
        double u = Math.sqrt(square(solved.root(of)));
        return budget.with(
                touched == 0.0 ? "known shift" : "what was read",
                ErrorDistribution.of(Estimate.ofLibrary(
                        read, u, Double.POSITIVE_INFINITY, state.style().fineUnit())));
    }

    private static double square(double[] root) {
        return Solved.dot(root, root);
    }

    /**
     * {@return the chance of keeping limits, as far as it is earned}
     *
     * @param limits to be kept
     */
    public Chance chance(Limits<Length> limits) {
        double low = Objects.requireNonNull(limits, "limits").libraryLower();
        double high = limits.libraryUpper();
        double outside = outside(low, high);
        boolean guesses = hasGuesses();
        double worse = guesses ? outsideAt(low, high, Scales.factor(PESSIMISTIC)) : outside;
        Chance chance = Chance.outside(outside).accurateTo(RoughSum.ACCURACY).atWorst(worse);
        return isWellKnown() ? chance.wellKnown() : chance;
    }

    /**
     * {@return the chance of keeping limits by weighted trials, each cause with its own law and its spread as given} Where a
     * reading touches causes, {@link #chance} takes them as normal: right to about 0.002 for five or more causes of like
     * size, worse for one or two, or for a reading far off. Its accuracy is three standard errors of the trials.
     *
     * @param limits to be kept
     * @throws ArithmeticException if a reading has no uncertainty, a cause that was read has single samples for its law, or too
     *     few trials agree with the readings
     */
    public Chance chanceByTrials(Limits<Length> limits) {
        Objects.requireNonNull(limits, "limits");
        double[] outside = trials().outside(limits.libraryLower(), limits.libraryUpper());
        return Chance.outside(outside[0]).accurateTo(Math.min(1.0, outside[1]));
    }

    WeightedTrials trials() {
        return new WeightedTrials(state, of);
    }

    /**
     * {@return the interval about the estimate that holds the deviation with a probability, as far as the spreads are known}
     *
     * @param coverage from 0.01 to 0.9999
     * @throws IllegalArgumentException if it is not
     */
    public Interval<Length> interval(double coverage) {
        if (!(coverage >= LEAST_COVERAGE && coverage <= MOST_COVERAGE)) {
            throw Refusal.of("coverage", "range", "be from 0.01 to 0.9999", Numbers.plain(coverage));
        }
        return coverage == USUAL ? usual.get() : about(coverage);
    }

    private Interval<Length> about(double coverage) {
        double mean = estimate().libraryValue();
        double half = half(mean, 1.0 - coverage, estimate().libraryUncertainty());
        return Interval.ofLibrary(mean - half, mean + half, state.style().fineUnit());
    }

    /**
     * Half the length of the interval about the mean that is left with a probability: secants of the normal deviate that has
     * the same tail, which is nearly straight; halves of what is left, or a longer step, where a secant leads past it.
     */
    private double half(double mean, double left, double u) {
        if (u == 0.0) {
            return 0.0;
        }
        double wanted = NormalLaw.coverageFactor(1.0 - left);
        double low = 0.0;
        double high = Double.POSITIVE_INFINITY;
        double before = 0.0;
        double deviateBefore = 0.0;
        double half = u * wanted * (hasGuesses() ? LONGER : 1.0);
        for (int i = 0; i < MOST_STEPS; i++) {
            double outside = outside(mean - half, mean + half, Scales.COMMON_BROADLY);
            double deviate = NormalLaw.coverageFactor(Math.max(1e-12, 1.0 - outside));
            if (Math.abs(deviate - wanted) <= SETTLED * wanted || high - low <= SETTLED * low) {
                break;
            }
            if (deviate < wanted) {
                low = half;
            } else {
                high = half;
            }
            double secant = half + (wanted - deviate) * (half - before) / (deviate - deviateBefore);
            before = half;
            deviateBefore = deviate;
            double most = Math.min(high, 10.0 * half);
            half = secant > low && secant < most && i % 4 != 3
                    ? secant
                    : high == Double.POSITIVE_INFINITY ? most : (low + high) / 2.0;
        }
        return half;
    }

    /** Chance of breaking limits, over what the scales may be. */
    double outside(double low, double high) {
        return outside(low, high, Scales.COMMON);
    }

    private double outside(double low, double high, Scales unread) {
        if (hasGuesses() && state.readings().isEmpty()) {
            return outsideUnread(sums.get().get(0).sum(), low, high, unread);
        }
        double all = 0.0;
        for (Weighted one : sums.get()) {
            all += one.weight() * one.sum().outside(low, high);
        }
        return all;
    }

    private static double outsideUnread(RoughSum sum, double low, double high, Scales scales) {
        double all = 0.0;
        for (int k = 0; k < scales.size(); k++) {
            all += scales.weights[k] * sum.outsideAt(low, high, Scales.factor(scales.z[k]));
        }
        return all;
    }

    /** What is left, if the guesses are off by a factor; how probable that is, given the readings. */
    private record Weighted(RoughSum sum, double weight) {}

    private List<Weighted> summed() {
        if (!hasGuesses() || state.readings().isEmpty()) {
            return List.of(new Weighted(sum(solved(state, 1.0), 1.0), 1.0)); // of every factor: no reading bears on it
        }
        return scales(state, Scales.COMMON).stream()
                .map(one -> new Weighted(sum(one.solved(), one.factor()), one.weight()))
                .toList();
    }

    /**
     * The state if all guesses were off by a factor.
     *
     * @param solved the state
     * @param factor of the guesses' scales
     * @param weight how probable the factor is, given the readings
     */
    record Scaled(Solved solved, double factor, double weight) {}

    /** The state over what the common factor of the guesses may be: the readings say how probable each factor is. */
    static List<Scaled> scales(Knowledge state, Scales scales) {
        List<Scaled> all = new ArrayList<>();
        double top = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < scales.size(); k++) {
            double factor = Scales.factor(scales.z[k]);
            Solved solved = solved(state, factor);
            double log = solved.logLikelihood() + StrictMath.log(scales.weights[k]);
            top = Math.max(top, log);
            all.add(new Scaled(solved, factor, log));
        }
        double most = top;
        double sum = all.stream()
                .mapToDouble(one -> StrictMath.exp(one.weight() - most))
                .sum();
        return all.stream()
                .map(one -> new Scaled(one.solved(), one.factor(), StrictMath.exp(one.weight() - most) / sum))
                .filter(one -> one.weight() > NOTHING)
                .toList();
    }

    /**
     * Chance of breaking limits by one sum, every scale on its own and none common: what steps and readings are compared
     * by.
     */
    double outsideByOneSum(Limits<Length> limits) {
        return sum(solved(state, 1.0), 1.0, Cause::wholeGuessLogDeviation)
                .outside(limits.libraryLower(), limits.libraryUpper());
    }

    /** Chance of breaking limits if every guess were so many times as wide. */
    private double outsideAt(double low, double high, double factor) {
        return state.readings().isEmpty()
                ? sums.get().get(0).sum().outsideAt(low, high, factor)
                : sum(solved(state, factor), factor).outside(low, high);
    }

    /** Guesses so many times as wide, and every cause with a scale of its own as wide as its mean square. */
    static Solved solved(Knowledge state, double factor) {
        return state.solved(cause -> {
            double own = cause.ownLogDeviation();
            return (cause.isGuess() ? factor : 1.0) * StrictMath.exp(own * own);
        });
    }

    /** The sum of what is left: normal for what readings touch, each other cause by its own law, guesses times a factor. */
    private RoughSum sum(Solved solved, double factor) {
        return sum(solved, factor, Cause::guessLogDeviation);
    }

    private RoughSum sum(Solved solved, double factor, ToDoubleFunction<Cause> logDeviation) {
        Scales scales = Scales.COMMON;
        RoughSum.Builder sum =
                RoughSum.builder().factors(Scales.factor(scales.z[0]), Scales.factor(scales.z[scales.size() - 1]));
        double shift = solved.mean(of);
        for (int i = 0; i < of.size(); i++) {
            Cause cause = state.cause(of.name(i));
            if (!solved.isTouched(cause.name())) {
                shift -= of.coefficient(i) * cause.spread().libraryMean();
                double times = cause.isGuess() ? factor : 1.0;
                sum.add(
                        cause.spread().scaled(times),
                        of.coefficient(i),
                        logDeviation.applyAsDouble(cause),
                        cause.isGuess());
            }
        }
        return sum.shift(shift).normal(Math.sqrt(square(solved.root(of)))).build();
    }

    private boolean hasGuesses() {
        return of.causes().stream().anyMatch(name -> state.cause(name).isGuess());
    }

    private boolean isWellKnown() {
        double[] shares = state.solved().shares(of);
        double all = 0.0;
        double known = 0.0;
        for (int i = 0; i < shares.length; i++) {
            Cause cause = state.cause(of.name(i));
            double square = Math.abs(shares[i]);
            all += square;
            double degrees = cause.spread().degreesOfFreedom();
            // Degrees that were counted: a figure given without any may be a guess too.
            boolean counted = degrees >= MANY_DEGREES && degrees < Double.POSITIVE_INFINITY;
            known += !cause.isGuess() && counted ? square : 0.0;
        }
        return known >= MOST_OF_IT * all;
    }

    /** {@return the share of the variance that each step has now, largest first; they add up to 1} */
    public List<Share> shares() {
        Map<String, Double> steps = new LinkedHashMap<>();
        double[] shares = state.solved().shares(of);
        for (int i = 0; i < shares.length; i++) {
            steps.merge(state.cause(of.name(i)).step(), shares[i], Double::sum);
        }
        return listed(steps, Share.Level.STEP);
    }

    /**
     * {@return the share of the variance that each cause of a step has now, largest first; they add up to that of the step}
     *
     * @param step one of {@link #shares()}
     */
    public List<Share> sharesIn(String step) {
        Objects.requireNonNull(step, "step");
        Map<String, Double> causes = new LinkedHashMap<>();
        double[] shares = state.solved().shares(of);
        for (int i = 0; i < shares.length; i++) {
            if (state.cause(of.name(i)).step().equals(step)) {
                causes.put(of.name(i), shares[i]);
            }
        }
        return listed(causes, Share.Level.CAUSE);
    }

    private List<Share> listed(Map<String, Double> squares, Share.Level level) {
        double all = state.solved().variance(of);
        return squares.entrySet().stream()
                .map(one -> new Share(one.getKey(), level, all > 0.0 ? one.getValue() / all : 0.0))
                .sorted(Comparator.comparingDouble(share -> -share.fraction()))
                .toList();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {state, title, of};
    }
}
