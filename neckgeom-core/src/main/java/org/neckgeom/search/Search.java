package org.neckgeom.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Plan;
import org.neckgeom.sweep.Axis;
import org.neckgeom.sweep.SweepProgress;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * A design search ({@index "optimisation"}): the least or greatest of one aim or several over variables with units, while
 * limits are kept, such as a plan's own checks. Where a {@link org.neckgeom.sweep.Sweep} asks every design of a grid, a
 * search asks as few as it can.
 *
 * <p>A search over steps alone with no more designs than may be asked asks them all, and its answer is exact. Any other
 * answer is the best that was found. The same search with the same seed gives the same answer, in one thread or in
 * parallel, when its functions are pure. A design that throws {@code IllegalArgumentException} or {@code
 * ArithmeticException} is refused, counted, and worse than any other; any other exception ends the search.
 *
 * <p>Errors: {@link org.neckgeom.fault.Refusal} for a name given twice, an empty range, and a search without variable or
 * aim. Methods: {@linkplain org.neckgeom.search the package's page}. Immutable.
 *
 * @see SearchResult
 * @param <D> the kind of design: a {@link org.neckgeom.plan.Job}, a neck, or any other type
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Search<D> extends ValueAnswer {

    /** How many designs are asked at most by default. */
    public static final int DEFAULT_DESIGNS = 2_000;

    private static final int MOST_DESIGNS = 1_000_000;
    private static final int DEFAULT_FRONT = 20;
    private static final int MOST_OF_A_FRONT = 1_000;

    private static final Form<Search<?>> FORM = Form.<Search<?>>of("search")
            .fact("variables", Kind.shortList(Kind.NAME), "by name", x -> x.task.variableNames())
            .fact("aims", Kind.shortList(Kind.NAME), "by name", x -> x.task.aimNames())
            .fact("limits", Kind.shortList(Kind.NAME), "by name", x -> x.task.limitNames())
            .fact("designs", Kind.WHOLE, "that may be asked", x -> x.task.designs())
            .finds("search", "Search over at most {designs:of design/designs}")
            .line("variables", "variables", "{variables}")
            .line("aims", "aims", "{aims}")
            .line("limits", "limits", "{limits}");

    private final Task<D> task;

    private Search(Task<D> task) {
        super(FORM, task.style());
        this.task = task;
    }

    /**
     * {@return a search from a design, until variables, aims and limits are added}
     *
     * @param <D> the kind of design
     * @param design what the variables change
     */
    public static <D> Search<D> of(D design) {
        return new Search<>(new Task<>(
                Objects.requireNonNull(design, "design"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Task.Options(1, DEFAULT_DESIGNS, DEFAULT_FRONT, false),
                LengthStyle.MILLIMETRES));
    }

    /**
     * {@return this search with a continuous variable}
     *
     * @param <Q> the kind of quantity
     * @param name a name not yet taken, such as {@code head angle}, of 1 to 100 characters on one line
     * @param from the least value; its unit is that of all
     * @param to the greatest value, more than from
     * @param change the design with a value; a pure function that does not give null
     */
    public <Q extends Quantity<Q>> Search<D> between(
            String name, Quantity<Q> from, Quantity<Q> to, BiFunction<D, Amount<Q>, D> change) {
        Amount<Q> low = Amount.from(from, "from");
        Amount<Q> high = Amount.from(to, low.unit(), "to");
        if (!(low.libraryValue() < high.libraryValue())) {
            throw Refusal.of("to", "more-than", "be more than " + low, high);
        }
        return with(
                Variable.between(
                        fresh(name, task.variableNames(), "variables"),
                        low,
                        high,
                        Objects.requireNonNull(change, "change")),
                low.unit());
    }

    /**
     * {@return this search with a stepped variable}
     *
     * @param <Q> the kind of quantity
     * @param name a name not yet taken, such as {@code blank thickness}, of 1 to 100 characters on one line
     * @param axis the values, neighbours next to each other
     * @param change the design with a value; a pure function that does not give null
     */
    public <Q extends Quantity<Q>> Search<D> over(String name, Axis<Q> axis, BiFunction<D, Amount<Q>, D> change) {
        Objects.requireNonNull(axis, "axis");
        return with(
                Variable.steps(
                        fresh(name, task.variableNames(), "variables"), axis, Objects.requireNonNull(change, "change")),
                axis.value(0).unit());
    }

    /**
     * {@return this search with choices, which have no order, such as woods}
     *
     * @param <T> the kind of choice
     * @param name a name not yet taken, such as {@code wood}, of 1 to 100 characters on one line
     * @param choices one or more, by whose {@code equals} an earlier result is read
     * @param change the design with a choice; a pure function that does not give null
     */
    public <T> Search<D> overEach(String name, List<? extends T> choices, BiFunction<D, T, D> change) {
        String called = fresh(name, task.variableNames(), "variables");
        if (Objects.requireNonNull(choices, "choices").isEmpty()) {
            throw Refusal.of("choices of \"" + called + "\"", "at-least", "be 1 or more", "there were none", "");
        }
        choices.forEach(choice -> Objects.requireNonNull(choice, "choice"));
        List<T> all = List.copyOf(choices);
        return with(Variable.choice(called, all, Objects.requireNonNull(change, "change")), null);
    }

    private Search<D> with(Variable<D> variable, @Nullable ShopUnit<?> unit) {
        boolean first = task.variables().isEmpty() && unit != null && unit.kind() == (Class<?>) Length.class;
        LengthStyle printed = first && unit != null ? LengthStyle.ofUnit(unit) : style();
        return new Search<>(task.with(more(task.variables(), variable), printed));
    }

    /**
     * {@return this search with something that shall be least} With a second aim the result is a front.
     *
     * @param <Q> the kind of quantity
     * @param name a name not yet taken by an aim, of 1 to 100 characters on one line
     * @param aim of a design; a pure function that does not give null
     */
    public <Q extends Quantity<Q>> Search<D> least(String name, Function<? super D, ? extends Quantity<Q>> aim) {
        return aim(name, 1, aim);
    }

    /**
     * {@return this search with something that shall be greatest} With a second aim the result is a front.
     *
     * @param <Q> the kind of quantity
     * @param name a name not yet taken by an aim, of 1 to 100 characters on one line
     * @param aim of a design; a pure function that does not give null
     */
    public <Q extends Quantity<Q>> Search<D> greatest(String name, Function<? super D, ? extends Quantity<Q>> aim) {
        return aim(name, -1, aim);
    }

    private <Q extends Quantity<Q>> Search<D> aim(
            String name, int sign, Function<? super D, ? extends Quantity<Q>> aim) {
        Objects.requireNonNull(aim, "aim");
        String called = fresh(name, task.aimNames(), "aims");
        Aim<D> one = new Aim<>(
                called, sign, made -> Aim.figure(called, "be a quantity", () -> Amount.from(aim.apply(made), called)));
        return new Search<>(task.aims(more(task.aims(), one)));
    }

    /**
     * {@return this search with limits on a figure of the design}
     *
     * @param <Q> the kind of quantity
     * @param name a name not yet taken by a limit, of 1 to 100 characters on one line
     * @param value of a design; a pure function that does not give null
     * @param limits what is allowed
     */
    public <Q extends Quantity<Q>> Search<D> within(
            String name, Function<? super D, ? extends Quantity<Q>> value, Limits<Q> limits) {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(limits, "limits");
        String called = fresh(name, task.limitNames(), "limits");
        Rules<D> one = new Rules<>(List.of(called), made -> {
            Amount<Q> found = Aim.figure(called, "be a quantity", () -> Amount.from(value.apply(made), called));
            return List.of(SearchMargin.of(called, found, limits));
        });
        return new Search<>(task.rules(more(task.rules(), one)));
    }

    /**
     * {@return this search with checks of a plan that shall be OK} A plan without one of them is refused.
     *
     * @param plan of a design, such as {@code Job::plan}; a pure function that does not give null
     * @param codes one or more checks, none twice
     */
    public Search<D> keeping(Function<? super D, Plan> plan, CheckCode... codes) {
        Objects.requireNonNull(plan, "plan");
        if (Objects.requireNonNull(codes, "codes").length == 0) {
            throw Refusal.of("checks to keep", "at-least", "be 1 or more", "there were none", "");
        }
        List<String> taken = new ArrayList<>(task.limitNames());
        for (CheckCode code : codes) {
            taken.add(fresh(Objects.requireNonNull(code, "code").code(), taken, "limits"));
        }
        Rules<D> checks = CheckMargin.rules(plan, List.copyOf(Arrays.asList(codes)));
        return new Search<>(task.rules(more(task.rules(), checks)));
    }

    private static <T> List<T> more(List<T> list, T one) {
        List<T> all = new ArrayList<>(list);
        all.add(one);
        return List.copyOf(all);
    }

    private static String fresh(String name, List<String> taken, String what) {
        Words.name(name, "name");
        if (taken.contains(name)) {
            throw Refusal.of(what, "once", "have different names", "", "\"" + name + "\" was given twice");
        }
        return name;
    }

    /**
     * {@return this search with another seed; 1 by default}
     *
     * @param seed any number; the same seed gives the same answer
     */
    public Search<D> seed(long seed) {
        Task.Options now = task.options();
        return options(seed, now.designs(), now.frontSize(), now.isParallel());
    }

    /**
     * {@return this search with another number of designs that may be asked; {@value #DEFAULT_DESIGNS} by default}
     *
     * @param most 1 to 1,000,000
     */
    public Search<D> designs(int most) {
        Task.Options now = task.options();
        return options(now.seed(), range("designs", most, 1, MOST_DESIGNS), now.frontSize(), now.isParallel());
    }

    /**
     * {@return this search with another number of designs on a front at most, the least crowded; 20 by default}
     *
     * @param most 2 to 1,000
     */
    public Search<D> frontSize(int most) {
        Task.Options now = task.options();
        return options(
                now.seed(), now.designs(), range("designs of a front", most, 2, MOST_OF_A_FRONT), now.isParallel());
    }

    private static int range(String name, int value, int least, int most) {
        if (value < least || value > most) {
            throw Refusal.of(name, "range", "be a whole number from " + least + " to " + most, value);
        }
        return value;
    }

    /** {@return this search with the designs of a batch asked by the threads of the common pool, or of the pool it runs in} */
    public Search<D> parallel() {
        Task.Options now = task.options();
        return options(now.seed(), now.designs(), now.frontSize(), true);
    }

    private Search<D> options(long seed, int designs, int frontSize, boolean parallel) {
        return new Search<>(task.options(new Task.Options(seed, designs, frontSize, parallel)));
    }

    /**
     * {@return this search started from the points of an earlier one too} They are asked first, so that the answer is no
     * worse than the best of them. A value outside a variable's range is taken as the nearest inside it. Every variable has to
     * be one of the earlier search.
     *
     * @param result of an earlier search
     */
    public Search<D> from(SearchResult<?> result) {
        List<Map<String, Object>> all = new ArrayList<>(task.earlier());
        Objects.requireNonNull(result, "result").found().forEach(point -> all.add(point.settings()));
        Task<D> warm = task.earlier(List.copyOf(all));
        warm.places();
        return new Search<>(warm);
    }

    /** {@return the result} */
    public SearchResult<D> result() {
        return result((asked, most) -> true);
    }

    /**
     * {@return the result, which is the best so far when stopped}
     *
     * @param progress asked after each batch, by the calling thread, with the designs asked by now and the most there may
     *     be; its false stops the search
     */
    public SearchResult<D> result(SweepProgress progress) {
        Objects.requireNonNull(progress, "progress");
        boolean fixed = task.variables().isEmpty();
        if (fixed || task.aims().isEmpty()) {
            String what = fixed ? "variables of a search" : "aims of a search";
            throw Refusal.of(what, "at-least", "be 1 or more", "there were none", "");
        }
        return new Course<>(task, progress).result();
    }

    Task<D> task() {
        return task;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {task};
    }
}
