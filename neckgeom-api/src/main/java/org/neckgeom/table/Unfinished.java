package org.neckgeom.table;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A noun on its way, with the values given so far and those missing. Immutable.
 *
 * @param <T> the noun
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public abstract class Unfinished<T> {

    private final Values<T> values;
    private final String text;
    private final List<Object> beside;

    /**
     * Takes what has been given so far.
     *
     * @param values of the noun
     * @param text what is there and what lacks, such as {@code Tenon, holes not given yet}
     * @param beside what else makes two of them different
     */
    protected Unfinished(Values<T> values, String text, Object... beside) {
        this.values = Objects.requireNonNull(values, "values");
        this.text = Objects.requireNonNull(text, "text");
        this.beside = List.of(beside);
    }

    /** {@return what has been given so far; key by key} */
    protected final Values<T> values() {
        return values;
    }

    @Override
    public final boolean equals(@Nullable Object other) {
        return other instanceof Unfinished<?> that
                && getClass() == that.getClass()
                && values.equals(that.values)
                && beside.equals(that.beside);
    }

    @Override
    public final int hashCode() {
        return Objects.hash(values, beside);
    }

    /** Returns what is there and what lacks. */
    @Override
    public final String toString() {
        return text;
    }
}
