package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * Named inputs with their spreads, and any function of them: what becomes of the result? Immutable.
 *
 * <p>Two answers that check each other: first order by derivatives, which is a {@link Budget} and answers the same
 * questions; and trials of the function itself. {@link #compared} shows whether the first may be trusted.
 *
 * <p>Inputs reach the function in library units (mm, rad, N, MPa), in the order they were given. A formula of {@link
 * Dual} numbers gives exact derivatives; one of plain numbers is differenced about the inputs' means, with steps of
 * 6e-6 of an input's size or of its standard deviation, whichever is more (good to about 1e-9 relative).
 *
 * <p>An input with a normal spread of few degrees of freedom is drawn from Student's law, shifted and scaled (JCGM
 * 101:2008, 6.4.9).
 *
 * @param <Q> the kind of the result
 */
public final class Propagation<Q extends Quantity<Q>> extends ValueAnswer {

    private static final double RELATIVE_STEP = 6e-6;

    /** A result as a plain function of the inputs. */
    @FunctionalInterface
    public interface Formula {

        /**
         * {@return the result in its library unit}
         *
         * @param x the inputs in library units, in their order; the array is used again for the next trial
         */
        double at(double[] x);
    }

    /** A result as a function of numbers that carry their derivatives. */
    @FunctionalInterface
    public interface DualFormula {

        /**
         * {@return the result in its library unit; the result with its derivatives}
         *
         * @param x the inputs in library units, in their order
         */
        Dual at(Dual[] x);
    }

    private record Input(String name, double value, ErrorDistribution<?> spread) {

        private static final Form<Input> FORM = Form.<Input>of("propagation-input")
                .fact("name", Kind.NAME, "of the input", Input::name)
                .fact("spread", Kind.SPREAD, "of its error", Input::spread);

        double mean() {
            return value + spread.libraryMean();
        }
    }

    private static final Form<Propagation<?>> FORM = Form.<Propagation<?>>of("propagation")
            .fact("title", Kind.NAME, "name of the result", to -> to.title)
            .fact("count", Kind.WHOLE, "how many inputs", to -> to.inputs.size())
            .factIfAny("firstOrder", Kind.ESTIMATE, "result by derivatives", Propagation::firstOrderIfAny)
            .factIfAny("refusal", Kind.NAME, "why there is no result by derivatives", Propagation::refusal)
            .fact("inputs", Kind.table(Input.FORM), "in the order given", to -> to.inputs)
            .finds("propagation", "{title} of {count:of input/inputs}")
            .line("firstOrder", "first order", "{firstOrder:own}")
            .line("refusal", "first order", "none: {refusal}")
            .each("inputs", "{name}", "{spread}", 8, "")
            .fitted();

    private final String title;
    private final ShopUnit<Q> unit;
    private final List<Input> inputs;
    private final @Nullable Formula formula;
    private final @Nullable DualFormula dual;

    private Propagation(
            String title, ShopUnit<Q> unit, List<Input> inputs, @Nullable Formula formula, @Nullable DualFormula dual) {
        super(FORM, Shown.style(unit, inputs.stream().map(Input::spread)));
        this.title = title;
        this.unit = unit;
        this.inputs = inputs;
        this.formula = formula;
        this.dual = dual;
    }

    /**
     * {@return a propagation without inputs yet}
     *
     * @param <Q> the kind of the result
     * @param title the result's name, such as {@code neck angle}
     * @param unit the unit the result is read in
     */
    public static <Q extends Quantity<Q>> Propagation<Q> to(String title, ShopUnit<Q> unit) {
        return new Propagation<>(
                Words.name(title, "a title"), Objects.requireNonNull(unit, "unit"), List.of(), null, null);
    }

    /**
     * {@return this propagation with one more input}
     *
     * @param <E> the kind of the input
     * @param name a name not yet given
     * @param value the nominal value
     * @param spread how its error spreads about that
     * @throws IllegalArgumentException if the name is taken
     */
    public <E extends Quantity<E>> Propagation<Q> input(String name, Quantity<E> value, ErrorDistribution<E> spread) {
        Words.name(name, "an input's name");
        if (inputs.stream().anyMatch(other -> other.name().equals(name))) {
            throw Refusal.of(
                    "inputs", "once", "have different names", "", "\"" + name + "\" was given twice to " + title);
        }
        List<Input> more = new ArrayList<>(inputs);
        more.add(new Input(name, Amount.from(value, name).libraryValue(), Objects.requireNonNull(spread, "spread")));
        return new Propagation<>(title, unit, List.copyOf(more), formula, dual);
    }

    /**
     * {@return this propagation through a plain function; its derivatives are central differences}
     *
     * @param function of the inputs in library units, without side effects: several threads call it
     */
    public Propagation<Q> through(Formula function) {
        return new Propagation<>(title, unit, inputs, Objects.requireNonNull(function, "function"), null);
    }

    /**
     * {@return this propagation through a formula that carries exact derivatives}
     *
     * @param function of the inputs in library units, without side effects
     */
    public Propagation<Q> throughDual(DualFormula function) {
        Objects.requireNonNull(function, "function");
        Formula plain = x -> {
            Dual[] constants = new Dual[x.length];
            for (int i = 0; i < x.length; i++) {
                constants[i] = Dual.constant(x[i]);
            }
            return function.at(constants).value();
        };
        return new Propagation<>(title, unit, inputs, plain, function);
    }

    /** {@return the result at the inputs' means} */
    public Amount<Q> value() {
        return Amount.ofLibrary(at(means()), unit);
    }

    /**
     * {@return the derivatives of the result by each input, in library units, in the order of the inputs: exact through
     * a formula of {@link Dual}, otherwise central differences}
     */
    public double[] derivatives() {
        double[] x = means();
        double[] found = new double[x.length];
        if (dual != null) {
            Dual[] seeds = new Dual[x.length];
            for (int i = 0; i < x.length; i++) {
                seeds[i] = Dual.input(x[i], i);
            }
            Dual result = dual.at(seeds);
            for (int i = 0; i < x.length; i++) {
                String of = "derivative of " + title + " by " + inputs.get(i).name();
                found[i] = LibraryUnits.finite(result.slope(i), of, "");
            }
            return found;
        }
        return differences();
    }

    /** {@return the derivatives by central differences, to check those of a formula of {@link Dual}} */
    public double[] differences() {
        double[] x = means();
        double[] found = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            double middle = x[i];
            double sd = Math.sqrt(inputs.get(i).spread().libraryVariance());
            double size = Math.max(Math.abs(middle), sd);
            double step = RELATIVE_STEP * (size > 0.0 ? size : 1.0);
            x[i] = middle + step;
            double up = x[i];
            double above = at(x);
            x[i] = middle - step;
            double below = at(x);
            found[i] = (above - below) / (up - x[i]);
            x[i] = middle;
        }
        return found;
    }

    /**
     * {@return the first-order budget: each input with its derivative as sensitivity, about the result at the means;
     * the budget; its result is the difference from {@link #value}}
     *
     * <p>Estimate: right where the function is straight over the inputs' spreads. Source: JCGM 100:2008, 5.1.
     */
    public Budget<Q> budget() {
        double[] slopes = derivatives();
        List<UncertaintyComponent> all = new ArrayList<>();
        for (int i = 0; i < slopes.length; i++) {
            Input input = inputs.get(i);
            all.add(new UncertaintyComponent(input.name(), input.name(), slopes[i], centred(input.spread())));
        }
        return Budget.of(title, unit).withAll(all);
    }

    private static <E extends Quantity<E>> ErrorDistribution<E> centred(ErrorDistribution<E> spread) {
        return spread.libraryMean() == 0.0
                ? spread
                : spread.shifted(Amount.ofLibrary(-spread.libraryMean(), spread.unit()));
    }

    /** {@return the first-order result: value at the means, combined standard uncertainty, degrees of freedom} */
    public Estimate<Q> firstOrder() {
        Estimate<Q> spread = budget().rootSumSquare();
        return Estimate.ofLibrary(at(means()), spread.libraryUncertainty(), spread.degreesOfFreedom(), unit);
    }

    /**
     * {@return the question to trials of the function itself; yet to be run}
     *
     * @param seed any number
     */
    public Simulation<Q> simulate(long seed) {
        double reference = at(means());
        List<Input> all = inputs;
        Formula function = formula();
        return new Simulation<>(
                title, () -> new Trials(all, function, reference), reference, seed, hasDeviation(), unit);
    }

    /** Student's law of 2 degrees of freedom or fewer has no standard deviation. */
    private boolean hasDeviation() {
        return inputs.stream()
                .map(Input::spread)
                .noneMatch(spread -> spread.law() == ErrorDistribution.Law.NORMAL
                        && spread.libraryScale() > 0
                        && spread.degreesOfFreedom() <= 2);
    }

    /** Fills blocks with results of the function; an exception leaves its trial without a value. */
    private static final class Trials implements BlockEngine.Filler {

        private final List<Input> inputs;
        private final Formula function;
        private final double reference;
        private final double[][] columns;
        private final double[] row;
        private @Nullable String trouble;

        Trials(List<Input> inputs, Formula function, double reference) {
            this.inputs = inputs;
            this.function = function;
            this.reference = reference;
            this.columns = new double[inputs.size()][BlockEngine.BLOCK];
            this.row = new double[inputs.size()];
        }

        @Override
        public void fill(Draws draws, double[] out, int n) {
            trouble = null;
            for (int i = 0; i < columns.length; i++) {
                Arrays.fill(columns[i], 0, n, inputs.get(i).mean());
                UncertaintyComponent.drawSpread(inputs.get(i).spread(), 1.0, true, draws, columns[i], n);
            }
            for (int t = 0; t < n; t++) {
                for (int i = 0; i < columns.length; i++) {
                    row[i] = columns[i][t];
                }
                out[t] = value() - reference;
            }
        }

        @SuppressWarnings("PMD.AvoidCatchingGenericException") // a user's function may throw any
        private double value() {
            try {
                return function.at(row);
            } catch (RuntimeException e) {
                trouble = trouble == null ? String.valueOf(e.getMessage()) : trouble;
                return Double.NaN;
            }
        }

        @Override
        public @Nullable String trouble() {
            return trouble;
        }
    }

    /**
     * Compares first order with trials as JCGM 101:2008, clause 8, does: the ends of both 95 % intervals must agree to
     * half a unit of the last of the significant digits of u. Where an input has no standard deviation, Student's law of 2
     * degrees of freedom or fewer, u is the width of the interval over that of a normal law, {@code 3.92}.
     *
     * @param seed any number
     * @param digits significant digits of u that matter, 1 or 2
     * @return the comparison
     */
    public Comparison<Q> compared(long seed, int digits) {
        Estimate<Q> first = firstOrder();
        // The trials settle to a digit more than is compared (8.2), as far as the trials allow.
        Simulated<Q> trials = simulate(seed).adaptive(Comparison.COVERAGE, Math.min(2, digits + 1));
        return new Comparison<>(title, first, trials, hasDeviation(), digits, unit);
    }

    private Formula formula() {
        if (formula == null) {
            throw Refusal.because(
                    "function", "missing", title + " needs its function for this, but has none: add .through(...)");
        }
        return formula;
    }

    private double[] means() {
        formula();
        return inputs.stream().mapToDouble(Input::mean).toArray();
    }

    private double at(double[] x) {
        return LibraryUnits.finite(formula().at(x), title, unit.symbol());
    }

    private Optional<Estimate<Q>> firstOrderIfAny() {
        return formula == null || refusal().isPresent() ? Optional.empty() : Optional.of(firstOrder());
    }

    private Optional<String> refusal() {
        try {
            if (formula != null) {
                firstOrder();
            }
            return Optional.empty();
        } catch (IllegalArgumentException | ArithmeticException e) {
            return Optional.ofNullable(e.getMessage());
        }
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, unit.kind(), inputs, Optional.ofNullable(formula), Optional.ofNullable(dual)};
    }
}
