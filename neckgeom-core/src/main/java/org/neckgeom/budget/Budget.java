package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.Named;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * An {@index "uncertainty budget"} ({@index "tolerance stack-up"}, {@index "error budget"}): named input quantities, each
 * with its error distribution and sensitivity coefficient, combined to one result {@code y = sum of c_i x_i}.
 *
 * <p>Four answers to the same sum: {@link #worstCase} (arithmetic stack), {@link #rootSumSquare} (combined standard
 * uncertainty, GUM 5.1), {@link #distribution} (exact) and {@link #simulate} (Monte Carlo, JCGM 101). The inputs are
 * independent unless {@link #correlated}. Each input has a unit of its own kind; the result has the unit of the budget,
 * mm by default.
 *
 * <p>The distribution and the trials take a normal input as normal, however few degrees of freedom its deviation has.
 * The degrees of freedom count in {@link #rootSumSquare} (effective degrees of freedom, GUM G.4) and in {@link #yield},
 * which is averaged over the deviations that they leave open.
 *
 * <p>Errors: two inputs of one name, or a name that is not in the budget, throw {@link org.neckgeom.fault.Refusal} (an
 * {@code IllegalArgumentException}). Immutable: each {@code with} returns a new budget.
 *
 * <pre>{@code
 * var bridge = Budget.named("string line at the bridge")
 *     .with("body joint", 2.1, ErrorDistribution.rectangular(mm(0.15)))
 *     .with("fingerboard", 1.1, ErrorDistribution.normal(mm(0.08)));
 * println(bridge.rootSumSquare());
 * println(bridge.shares());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 0.00 mm, u 0.20 mm
 * string line at the bridge: shares of the variance
 *   body joint   81.0 %  (0.18 mm)
 *   fingerboard  19.0 %  (0.088 mm)
 * }</pre>
 *
 * @see org.neckgeom.state.DatumTree
 * @see Propagation
 * @param <Q> the kind of the result
 */
public final class Budget<Q extends Quantity<Q>> extends ValueAnswer {

    static final Form<Budget<?>> FORM = Form.<Budget<?>>of("budget")
            .fact("title", Kind.NAME, "name of the result", Budget::title)
            .factIfAny(
                    "exactly",
                    Kind.NAME,
                    "full name of the result",
                    budget -> Optional.of(budget.note).filter(note -> !note.isEmpty()))
            .fact("sum", Kind.ESTIMATE, "of the errors", Budget::rootSumSquare)
            .fact(
                    "shares",
                    Kind.table(VarianceShare.FORM),
                    "of the variance, largest first",
                    budget -> List.copyOf(budget.shares().list()))
            .factIfAny(
                    "correlations",
                    Kind.table(Correlation.FORM),
                    "of its components",
                    budget -> Optional.of(budget.correlations()).filter(pairs -> !pairs.isEmpty()))
            .finds("sum", "{title}: {sum:own fine value}, standard deviation {sum:own fine deviation}")
            .each("shares", "{name}", "{contribution:own fine digits 2}", 6, "and {more:of smaller one/smaller ones}")
            .note("exactly", "{exactly}")
            .fitted();

    private static final double MOST_DEVIATIONS = 1_000;

    /** Default number of standard deviations at which the worst case takes a normal part. */
    public static final double USUAL_NORMAL_FACTOR = 3.0;

    private final String title;
    private final ShopUnit<Q> unit;
    private final Named<UncertaintyComponent> named;
    private final List<Correlation> correlations;
    private final String note;

    private Budget(
            String title,
            ShopUnit<Q> unit,
            Named<UncertaintyComponent> named,
            List<Correlation> correlations,
            String note) {
        super(FORM, LengthStyle.ofUnit(unit));
        this.title = title;
        this.unit = unit;
        this.named = named;
        this.correlations = correlations;
        this.note = note;
    }

    /**
     * {@return an empty budget of a length, read in millimetres}
     *
     * @param title what adds up, such as {@code slot offset}
     */
    public static Budget<Length> named(String title) {
        return of(title, ShopUnit.MILLIMETRE);
    }

    /**
     * {@return this budget as one of a kind of result}
     *
     * @param <R> the kind
     * @param kind such as {@code Length.class}
     * @throws IllegalArgumentException if its result is of another kind
     */
    @SuppressWarnings("unchecked") // a unit of that kind has the name of its own
    public <R extends Quantity<R>> Budget<R> ofKind(Class<R> kind) {
        ShopUnit.named(unit.toString(), kind);
        return (Budget<R>) this;
    }

    /**
     * {@return an empty budget of any kind of quantity}
     *
     * @param <Q> the kind of the result
     * @param title what adds up
     * @param unit the unit the result is read in
     */
    public static <Q extends Quantity<Q>> Budget<Q> of(String title, ShopUnit<Q> unit) {
        return new Budget<>(
                Words.name(title, "a title"), Objects.requireNonNull(unit, "unit"), Named.none(), List.of(), "");
    }

    /**
     * {@return this budget with one more component of the same kind as the result, sensitivity 1}
     *
     * @param name a name not yet in the budget
     * @param spread its spread
     * @throws IllegalArgumentException if the name is taken
     */
    public Budget<Q> with(String name, ErrorDistribution<Q> spread) {
        return with(new UncertaintyComponent(name, name, 1.0, spread));
    }

    /**
     * {@return this budget with one more component that moves the result by a factor}
     *
     * @param name a name not yet in the budget
     * @param sensitivity how much the result moves in its library unit (mm, rad, N, MPa) to one library unit of the
     *     error
     * @param spread its spread, of any kind of quantity
     * @throws IllegalArgumentException if the name is taken or the sensitivity is not finite
     */
    public Budget<Q> with(String name, double sensitivity, ErrorDistribution<?> spread) {
        return with(new UncertaintyComponent(name, name, sensitivity, spread));
    }

    /**
     * {@return this budget with one more component}
     *
     * @param component its name not yet in the budget
     * @throws IllegalArgumentException if the name is taken
     */
    public Budget<Q> with(UncertaintyComponent component) {
        if (named.find(Objects.requireNonNull(component, "component").name()) != null) {
            throw givenTwice(component);
        }
        return new Budget<>(title, unit, named.with(component.name(), component), correlations, note);
    }

    private IllegalArgumentException givenTwice(UncertaintyComponent component) {
        return Refusal.of(
                "components",
                "once",
                "have different names",
                "",
                "\"" + component.name() + "\" was given twice in " + title);
    }

    /** The same budget under a shorter title, with its exact title in a note. */
    Budget<Q> titled(String shorter, String exactly) {
        return new Budget<>(shorter, unit, named, correlations, exactly);
    }

    /** The same budget with all its components at once, their names known to differ. */
    Budget<Q> withAll(List<UncertaintyComponent> all) {
        Named<UncertaintyComponent> fresh = Named.none();
        for (UncertaintyComponent one : all) {
            if (fresh.find(one.name()) != null) {
                throw givenTwice(one);
            }
            fresh = fresh.with(one.name(), one);
        }
        return new Budget<>(title, unit, fresh, correlations, note);
    }

    /**
     * {@return the same budget read in another unit}
     *
     * @param other the unit
     */
    public Budget<Q> in(ShopUnit<Q> other) {
        return new Budget<>(title, Objects.requireNonNull(other, "unit"), named, correlations, note);
    }

    /**
     * {@return this budget with another spread for a component, or for each component of a step}
     *
     * @param name a component or a step
     * @param spread the new spread, of the same kind of quantity
     * @throws IllegalArgumentException if nothing is called so, or the kind differs
     */
    public Budget<Q> replaced(String name, ErrorDistribution<?> spread) {
        Objects.requireNonNull(spread, "spread");
        List<UncertaintyComponent> old = components();
        Named<UncertaintyComponent> all = named;
        for (int i : find(name)) {
            all = all.with(old.get(i).name(), replaced(old.get(i), spread));
        }
        return new Budget<>(title, unit, all, correlations, note);
    }

    private UncertaintyComponent replaced(UncertaintyComponent old, ErrorDistribution<?> spread) {
        checkKind(old, spread);
        UncertaintyComponent fresh = old.with(spread);
        if (isCorrelated(old) && fresh.contribution() > 0.0) {
            checkNormal(fresh);
        }
        return fresh;
    }

    private static void checkKind(UncertaintyComponent old, ErrorDistribution<?> spread) {
        if (old.spread().unit().kind() != (Class<?>) spread.unit().kind()) {
            throw Refusal.of(
                    "spread of " + old.name(),
                    "kind",
                    "be " + old.spread().unit().kindInWords(),
                    spread);
        }
    }

    private static void checkNormal(UncertaintyComponent one) {
        if (one.spread().law() != ErrorDistribution.Law.NORMAL || one.contribution() == 0.0) {
            throw Refusal.of(
                    "correlated components",
                    "normal",
                    "have a normal spread that reaches the result",
                    "",
                    one.name() + " was " + one);
        }
    }

    private boolean isCorrelated(UncertaintyComponent one) {
        return correlations.stream().anyMatch(pair -> pair.isOf(one.name()));
    }

    /**
     * {@return this budget with some of its components correlated, {@code u^2 = sum of c_i c_j u_i u_j r_ij} (JCGM 100:2008,
     * 5.2.2)} The components keep their names; what is replaced, measured, allowed or allocated later keeps its
     * coefficients. Exact, for normal spreads.
     *
     * <p>One and the same error that enters twice needs no correlation: give it once, with the sum of its sensitivities,
     * signs and all. A {@link org.neckgeom.state.DatumTree} does that by itself.
     *
     * @param correlations pairs of components, beside those given before; those not named are independent
     * @throws IllegalArgumentException if nothing is called so, a spread is not normal or is nothing, a pair is given twice,
     *     or no errors can be correlated like that
     */
    public Budget<Q> correlated(Correlation... correlations) {
        List<Correlation> pairs = new ArrayList<>(this.correlations);
        for (Correlation pair : Objects.requireNonNull(correlations, "correlations")) {
            pairs.add(Objects.requireNonNull(pair, "correlation"));
        }
        for (Correlation pair : pairs) {
            if (pairs.stream()
                            .filter(other -> other.isOf(pair.one()) && other.isOf(pair.other()))
                            .count()
                    > 1) {
                throw Refusal.of(
                        "correlations",
                        "once",
                        "each be of another pair",
                        "",
                        "that of " + pair.one() + " and " + pair.other() + " was given twice");
            }
            checkNormal(component(pair.one()));
            checkNormal(component(pair.other()));
        }
        Coefficients.check(
                components().stream()
                        .filter(one -> pairs.stream().anyMatch(pair -> pair.isOf(one.name())))
                        .toList(),
                pairs);
        return new Budget<>(title, unit, named, List.copyOf(pairs), note);
    }

    private UncertaintyComponent component(String name) {
        UncertaintyComponent one = components().get(find(name).iterator().next());
        if (!one.name().equals(name)) {
            throw Refusal.of(
                    "\"" + name + "\"", "component", "be a component", "", "is a step of \"" + one.name() + "\"");
        }
        return one;
    }

    /** {@return the correlations of its components; those of which none is named are independent} */
    public List<Correlation> correlations() {
        return correlations;
    }

    /**
     * {@return this budget with one component measured: its spread gives way to the reading, which shifts the result
     * by its value and leaves its uncertainty}
     *
     * <p>Components that are correlated with it are better known by the reading as well: they, and it, take the mean and
     * the uncertainty that they have given the reading (conditional normal law).
     *
     * @param name a component, or a step of a single component
     * @param reading the error as read, of the component's own kind
     * @throws IllegalArgumentException if nothing, or more than one component, is called so, or the kind differs
     */
    public Budget<Q> measured(String name, Estimate<?> reading) {
        if (find(name).size() > 1) {
            throw Refusal.because(
                    name,
                    "several",
                    "\"" + name + "\" is the name of several components: measure one of " + namesOf(find(name)));
        }
        UncertaintyComponent one = components().get(find(name).iterator().next());
        if (!isCorrelated(one)) {
            return replaced(name, ErrorDistribution.of(reading));
        }
        checkKind(one, ErrorDistribution.of(reading));
        return given(one, reading);
    }

    /** Kalman's update of all that hang together with one by coefficients. */
    private Budget<Q> given(UncertaintyComponent read, Estimate<?> reading) {
        Coefficients coefficients = new Coefficients(correlations);
        List<UncertaintyComponent> group = coefficients.group(read, components());
        double u = reading.libraryUncertainty();
        double prior = read.spread().libraryScale();
        double innovation = reading.libraryValue() - read.spread().libraryMean();
        double whole = prior * prior + u * u;
        Named<UncertaintyComponent> all = named;
        for (UncertaintyComponent one : group) {
            double r = coefficients.between(one.name(), read.name());
            double own = one.spread().libraryScale();
            // 1 - r^2 s^2/(s^2 + u^2) as a sum, so that a sharp reading loses no digits.
            double left = Math.sqrt(((1.0 - r * r) * prior * prior + u * u) / whole);
            double gain = whole > 0.0 ? r * own * prior / whole : 0.0;
            all = all.with(one.name(), one.with(moved(one.spread(), gain * innovation, left, reading)));
        }
        List<Correlation> pairs = new ArrayList<>();
        for (int i = 0; i < group.size(); i++) {
            for (int j = i + 1; j < group.size(); j++) {
                UncertaintyComponent one = group.get(i);
                UncertaintyComponent other = group.get(j);
                double a = coefficients.between(one.name(), read.name());
                double b = coefficients.between(other.name(), read.name());
                double r = coefficients.between(one.name(), other.name());
                double both =
                        Math.sqrt(((1.0 - a * a) * prior * prior + u * u) * ((1.0 - b * b) * prior * prior + u * u));
                double rest = (r - a * b) * prior * prior + r * u * u;
                if (rest != 0.0 && both > 0.0) {
                    pairs.add(new Correlation(one.name(), other.name(), Math.max(-1.0, Math.min(1.0, rest / both))));
                }
            }
        }
        correlations.stream()
                .filter(pair -> group.stream().noneMatch(one -> pair.isOf(one.name())))
                .forEach(pairs::add);
        return new Budget<>(title, unit, all, List.copyOf(pairs), note);
    }

    private static <E extends Quantity<E>> ErrorDistribution<E> moved(
            ErrorDistribution<E> spread, double by, double times, Estimate<?> reading) {
        double degrees = Math.min(spread.degreesOfFreedom(), reading.degreesOfFreedom());
        return spread.scaled(times).shifted(Amount.ofLibrary(by, spread.unit())).degreesOfFreedom(degrees);
    }

    /** {@return the title; what adds up} */
    public String title() {
        return title;
    }

    /** {@return the unit the result is read in} */
    public ShopUnit<Q> unit() {
        return unit;
    }

    /** {@return the components in the order they were given} */
    public List<UncertaintyComponent> components() {
        return named.values();
    }

    /** {@return the worst case: every error at its end, all on the same side; normal parts at 3 standard deviations} */
    public WorstCase<Q> worstCase() {
        return worstCase(USUAL_NORMAL_FACTOR);
    }

    /**
     * {@return the worst case with normal parts at a stated number of standard deviations} Exact.
     *
     * @param normalFactor k, more than 0
     */
    public WorstCase<Q> worstCase(double normalFactor) {
        if (!(normalFactor > 0.0 && normalFactor <= MOST_DEVIATIONS)) {
            throw Refusal.of(
                    "normal factor",
                    "range",
                    "be more than 0 and no more than " + Numbers.plain(MOST_DEVIATIONS),
                    Numbers.plain(normalFactor));
        }
        double low = 0.0;
        double high = 0.0;
        boolean unbounded = false;
        for (UncertaintyComponent one : components()) {
            double[] range = one.range(normalFactor);
            low += range[0];
            high += range[1];
            unbounded |= !one.spread().isBounded() && range[1] > range[0];
        }
        return new WorstCase<>(title, low, high, unbounded ? normalFactor : 0.0, unit);
    }

    /**
     * {@return the root sum of squares as an estimate: the sum of the shifts, {@code u = sqrt(sum of (c_i u_i)^2)} and
     * the effective degrees of freedom {@code u^4 / sum of ((c_i u_i)^4 / nu_i)}} Its {@code expanded} and {@code
     * interval} use Student's factor for them.
     *
     * <p>Exact for mean and u. Estimate for the degrees of freedom (Welch and Satterthwaite). Source: JCGM 100:2008,
     * 5.1.2 and G.4.1.
     */
    public Estimate<Q> rootSumSquare() {
        double mean = 0.0;
        double variance = 0.0;
        double fourth = 0.0;
        for (UncertaintyComponent one : sum().independent().components()) {
            double square = one.contribution() * one.contribution();
            mean += one.sensitivity() * one.spread().libraryMean();
            variance += square;
            fourth += square * square / one.degreesOfFreedom();
        }
        double degrees = fourth > 0.0 ? variance * variance / fourth : Double.POSITIVE_INFINITY;
        return Estimate.ofLibrary(mean, Math.sqrt(variance), degrees, unit);
    }

    /** {@return the exact distribution of the result: computed, not simulated} */
    public ResultDistribution<Q> distribution() {
        Parts parts = sum().parts(null);
        return new ResultDistribution<>(title, ExactLaws.of(parts), parts.mean, unit);
    }

    /**
     * {@return how often the result keeps its limits, with the uncertainty that comes from spreads known by few
     * readings}
     *
     * @param limits what is allowed
     */
    public Yield<Q> yield(Limits<Q> limits) {
        return Yield.of(sum().independent(), limits);
    }

    /** {@return each component's share of the variance, largest first} */
    public VarianceShares<Q> shares() {
        return VarianceShares.of(sum(), false);
    }

    /** {@return each step's share of the variance, the components of a step together, largest first} */
    public VarianceShares<Q> sharesByStep() {
        return VarianceShares.of(sum(), true);
    }

    /**
     * {@return how wide a component, or all components of a step together, may be if the rest stay}
     *
     * @param name a component or a step
     * @param limits what is allowed
     * @param probability how often the limits are to be kept at least
     * @throws IllegalArgumentException if nothing is called so, or it has no spread to widen
     * @throws ArithmeticException if the rest alone already break the limits too often; the message states by how much
     */
    public Allowance<Q> allowance(String name, Limits<Q> limits, Quantity<Dimensionless> probability) {
        double p = LibraryUnits.probability(probability, "probability");
        return Allowance.of(sum(), name, find(name), limits, p);
    }

    /**
     * {@return a simulation by Monte Carlo, not yet run; the same seed gives the same trials on any number of threads}
     *
     * @param seed any number
     */
    public Simulation<Q> simulate(long seed) {
        double mean = rootSumSquare().libraryValue();
        List<UncertaintyComponent> all = sum().independent().components();
        return new Simulation<>(
                title,
                () -> (draws, out, n) -> {
                    Arrays.fill(out, 0, n, 0.0);
                    for (UncertaintyComponent one : all) {
                        UncertaintyComponent.drawSpread(one.spread(), one.sensitivity(), false, draws, out, n);
                    }
                },
                mean,
                seed,
                true,
                unit);
    }

    Sum<Q> sum() {
        return new Sum<>(title, unit, components(), correlations);
    }

    /** The places of the components of a name, its own or that of their step. */
    Set<Integer> find(String name) {
        Objects.requireNonNull(name, "name");
        List<UncertaintyComponent> components = components();
        Set<Integer> found = new TreeSet<>();
        for (int i = 0; i < components.size(); i++) {
            if (components.get(i).name().equals(name)) {
                return Set.of(i);
            }
            if (components.get(i).step().equals(name)) {
                found.add(i);
            }
        }
        if (found.isEmpty()) {
            Set<Integer> all = new TreeSet<>();
            for (int i = 0; i < components.size(); i++) {
                all.add(i);
            }
            throw Refusal.because(
                    "component",
                    "unknown",
                    "nothing in " + title + " is called " + Words.quoted(name) + "; there are " + namesOf(all));
        }
        return found;
    }

    private String namesOf(Set<Integer> which) {
        List<UncertaintyComponent> components = components();
        return which.stream()
                .limit(10)
                .map(i -> "\"" + components.get(i).name() + "\"")
                .collect(Collectors.joining(", "));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, unit.kind(), components(), Set.copyOf(correlations)};
    }
}
