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
 * A sweep ({@index "parameter study"}): many designs and one question. The designs are one design with values for some of its
 * quantities, or a list of designs, or both.
 *
 * <p>The axis given last changes fastest. Each design is made and asked when the stream comes to it; the sweep holds no
 * result. A stream is split by halves with exact sizes. The question must be a pure function; then the results of
 * {@code parallel()} and their order are those of a single thread.
 *
 * <p>Errors: a design or a question that throws {@code IllegalArgumentException} or {@code ArithmeticException} gives a
 * result with the reason, and the sweep continues; any other exception ends it. Immutable.
 *
 * <pre>{@code
 * var lengths = Sweep.of(Scale.of(mm(560))).over("scale", Axis.steps(mm(560), mm(580), mm(5)), (s, l) -> Scale.of(l));
 * lengths.results(s -> FretTable.of(s, 12).fret(12)).forEach(result -> println(result));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * design 0: fret 12 at 280.000 mm
 *   scale  560 mm
 * design 1: fret 12 at 282.500 mm
 *   scale  565 mm
 * design 2: fret 12 at 285.000 mm
 *   scale  570 mm
 * design 3: fret 12 at 287.500 mm
 *   scale  575 mm
 * design 4: fret 12 at 290.000 mm
 *   scale  580 mm
 * }</pre>
 *
 * @see SweepResult
 * @param <D> the kind of design: a {@link org.neckgeom.neck.Neck}, a plan, or any other type the question takes
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
     * size, in one thread unless {@code parallel()} is called}
     *
     * @param <R> the kind of answer
     * @param question a pure function that does not give null
     */
    public <R> Stream<SweepResult<D, R>> results(Function<? super D, ? extends R> question) {
        return stream(question, null);
    }

    /**
     * {@return the results with progress reported; a stream as of {@link #results(Function)}, which ends in a {@code
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
