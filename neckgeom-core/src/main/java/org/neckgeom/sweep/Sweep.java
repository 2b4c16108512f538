package org.neckgeom.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;

/**
 * Many designs and one question: a design and the values some of its quantities shall take, or a list of designs, or both.
 * Immutable; holds no result.
 *
 * <p>The axis named last turns fastest. Each design is made and asked when the stream comes to it, and a stream is split
 * by halves with exact sizes; as the question is a pure function, the results of {@code parallel()} and their order are
 * those of a single thread. A design or a question that is refused (by {@code IllegalArgumentException} or
 * {@code ArithmeticException}) gives a result that says so, and the sweep goes on; any other exception ends it.
 *
 * @param <D> the kind of design: a {@link org.neckgeom.neck.Neck}, a plan, whatever the question takes
 */
public final class Sweep<D> extends ValueAnswer {

    private static final Form<Sweep<?>> FORM = Form.<Sweep<?>>of("sweep")
            .fact("designs", Kind.WHOLE, "how many", Sweep::size)
            .fact("axes", Kind.table(SweepAxis.FORM), "the last turns fastest", x -> List.copyOf(x.axes))
            .finds("sweep", "Sweep of {designs:of design/designs}")
            .each("axes", "{name}", "{values}", 8, "");

    private final List<D> designs;
    private final List<SweepAxis<D>> axes;
    private final long size;

    private Sweep(List<D> designs, List<SweepAxis<D>> axes) {
        super(FORM, SweepAxis.styleOf(axes.stream().map(axis -> axis.value(0)).toList(), null));
        this.designs = designs;
        this.axes = axes;
        long count = designs.size();
        for (SweepAxis<D> axis : axes) {
            long so = count;
            if (Math.multiplyHigh(so, axis.size()) != 0 || so * axis.size() < 0) {
                throw Refusal.of(
                        "designs of a sweep",
                        "at-most",
                        "be " + Long.MAX_VALUE + " or fewer",
                        "",
                        "axis \"" + axis.name() + "\" makes them more");
            }
            count = so * axis.size();
        }
        this.size = count;
    }

    /**
     * {@return a sweep over a single design, until axes are added}
     *
     * @param <D> the kind of design
     * @param design the design
     */
    public static <D> Sweep<D> of(D design) {
        return new Sweep<>(List.of(Objects.requireNonNull(design, "design")), List.of());
    }

    /**
     * {@return a sweep over a list of designs}
     *
     * @param <D> the kind of design
     * @param designs one or more
     */
    public static <D> Sweep<D> ofEach(List<? extends D> designs) {
        if (Objects.requireNonNull(designs, "designs").isEmpty()) {
            throw Refusal.of("designs of a sweep", "at-least", "be 1 or more", "there were none", "");
        }
        designs.forEach(design -> Objects.requireNonNull(design, "design"));
        return new Sweep<>(List.copyOf(designs), List.of());
    }

    /**
     * {@return this sweep with each design so far taken with each value of a quantity}
     *
     * @param <Q> the kind of quantity
     * @param name a name not yet taken, such as {@code nut width}, of 1 to 100 characters on one line
     * @param axis the values
     * @param change the design with a value; a pure function that does not give null
     */
    public <Q extends Quantity<Q>> Sweep<D> over(String name, Axis<Q> axis, BiFunction<D, Amount<Q>, D> change) {
        Objects.requireNonNull(axis, "axis");
        return with(SweepAxis.of(checked(name), axis.size(), axis::value, Objects.requireNonNull(change, "change")));
    }

    /**
     * {@return this sweep with each design so far taken with each of some choices, such as woods}
     *
     * @param <T> the kind of choice
     * @param name a name not yet taken, such as {@code wood}, of 1 to 100 characters on one line
     * @param choices one or more
     * @param change the design with a choice; a pure function that does not give null
     */
    public <T> Sweep<D> overEach(String name, List<? extends T> choices, BiFunction<D, T, D> change) {
        String called = checked(name);
        if (Objects.requireNonNull(choices, "choices").isEmpty()) {
            throw Refusal.of("choices of \"" + called + "\"", "at-least", "be 1 or more", "there were none", "");
        }
        choices.forEach(choice -> Objects.requireNonNull(choice, "choice"));
        List<T> all = List.copyOf(choices);
        return with(SweepAxis.of(called, all.size(), all::get, Objects.requireNonNull(change, "change")));
    }

    private Sweep<D> with(SweepAxis<D> axis) {
        List<SweepAxis<D>> more = new ArrayList<>(axes);
        more.add(axis);
        return new Sweep<>(designs, List.copyOf(more));
    }

    private String checked(String name) {
        Words.name(name, "an axis' name");
        if (axes.stream().anyMatch(axis -> axis.name().equals(name))) {
            throw Refusal.of("axes", "once", "have different names", "", "\"" + name + "\" was given twice");
        }
        return name;
    }

    /** {@return how many designs there are; 1 or more} */
    public long size() {
        return size;
    }

    /**
     * {@return the results, in the order of the grid; nothing is done before the stream is read; a stream of known
     * size, in one thread until {@code parallel()} is said}
     *
     * @param <R> the kind of answer
     * @param question a pure function that does not give null
     */
    public <R> Stream<SweepResult<D, R>> results(Function<? super D, ? extends R> question) {
        return stream(question, null);
    }

    /**
     * {@return the results, told how far they are; a stream as of {@link #results(Function)}, which ends in a {@code
     * CancellationException} when cancelled}
     *
     * @param <R> the kind of answer
     * @param question a pure function that does not give null
     * @param progress called after each result, and asked whether to go on
     */
    public <R> Stream<SweepResult<D, R>> results(Function<? super D, ? extends R> question, SweepProgress progress) {
        return stream(question, new Countdown(size, Objects.requireNonNull(progress, "progress")));
    }

    private <R> Stream<SweepResult<D, R>> stream(
            Function<? super D, ? extends R> question, @Nullable Countdown countdown) {
        Objects.requireNonNull(question, "question");
        LongFunction<SweepCursor<D>> places = index -> new SweepCursor<>(designs, axes, index);
        return StreamSupport.stream(new SweepSpliterator<>(places, question, countdown, 0, size), false);
    }

    /**
     * {@return a single result: what the stream gives at that place} By this a service hands out places instead of
     * designs.
     *
     * @param <R> the kind of answer
     * @param index 0 for the first
     * @param question a pure function that does not give null
     */
    public <R> SweepResult<D, R> result(long index, Function<? super D, ? extends R> question) {
        Objects.requireNonNull(question, "question");
        if (index < 0 || index >= size) {
            throw Refusal.of("index of a design", "range", "be between 0 and " + (size - 1), index);
        }
        SweepCursor<D> cursor = new SweepCursor<>(designs, axes, index);
        return SweepResult.of(index, cursor.settings(), cursor.made(), question);
    }

    /**
     * {@return how many of all designs will do, and between which values of the axes}
     *
     * @param will true for a design that will do; a pure function
     */
    public SweepSummary<D> keeping(Predicate<? super D> will) {
        return results(Objects.requireNonNull(will, "will")::test).collect(SweepSummary.collector());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {designs, axes};
    }
}
