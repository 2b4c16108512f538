package org.neckgeom.sweep;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;

/**
 * The result of one design of a {@link Sweep}: its place in the grid, and its answer or the reason why it has none.
 * Immutable when designs and answers are.
 *
 * @param <D> the kind of design
 * @param <R> the kind of answer
 */
public final class SweepResult<D, R> extends ValueAnswer {

    private static final Form<Map.Entry<String, Object>> SETTING = Form.<Map.Entry<String, Object>>of("setting")
            .fact("name", Kind.NAME, "of the axis", Map.Entry::getKey)
            .fact("value", Kind.ANY, "on the axis", Map.Entry::getValue);

    private static final Form<SweepResult<?, ?>> FORM = Form.<SweepResult<?, ?>>of("sweep-result")
            .fact("index", Kind.WHOLE, "0 for the first", SweepResult::index)
            .fact("settings", Kind.table(SETTING), "of each axis", x -> List.copyOf(x.settings.entrySet()))
            .factIfAny("result", Kind.ANY, "answer of the design", SweepResult::answer)
            .factIfAny("refusal", Kind.NAME, "why there is none", SweepResult::refused)
            .finds("answered", "design {index}: {result:cut 300}")
            .finds("refused", "design {index}: refused: {refusal:cut 291}")
            .each("settings", "{name}", "{value:cut 60}", 8, "");

    private final long index;
    private final Map<String, Object> settings;
    private final @Nullable D design;
    private final @Nullable R answer;
    private final String refusal;

    private SweepResult(
            long index, Map<String, Object> settings, @Nullable D design, @Nullable R answer, String refusal) {
        super(FORM, SweepAxis.styleOf(settings.values(), answer));
        this.index = index;
        this.settings = settings;
        this.design = design;
        this.answer = answer;
        this.refusal = refusal;
    }

    /** Asks the question; a design that was refused, or that the question refuses, is an answer too. */
    static <D, R> SweepResult<D, R> of(
            long index, Map<String, Object> settings, Made<D> made, Function<? super D, ? extends R> question) {
        D design = made.design();
        if (design == null) {
            return new SweepResult<>(index, settings, null, null, made.refusal());
        }
        try {
            R answer = Objects.requireNonNull(question.apply(design), "answer");
            return new SweepResult<>(index, settings, design, answer, "");
        } catch (IllegalArgumentException | ArithmeticException refused) {
            return new SweepResult<>(index, settings, design, null, Made.sentence(refused));
        }
    }

    /** {@return the place in the sweep, by which {@link Sweep#result} makes the same result again; 0 for the first} */
    public long index() {
        return index;
    }

    /** {@return the value of each axis by its name, in their order, unmodifiable; an Amount for a quantity} */
    public Map<String, Object> settings() {
        return settings;
    }

    /** {@return the design; the design, or nothing when it could not be made} */
    public Optional<D> design() {
        return Optional.ofNullable(design);
    }

    /** {@return the answer; the answer, or nothing when design or question were refused} */
    public Optional<R> answer() {
        return Optional.ofNullable(answer);
    }

    /** {@return why there is no answer; empty when there is one} */
    public String refusal() {
        return refusal;
    }

    private Optional<String> refused() {
        return answer == null ? Optional.of(refusal) : Optional.empty();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {index, settings, design(), answer(), refusal};
    }
}
