package org.neckgeom.table;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.units.LengthStyle;

/**
 * A thing that a maker describes by the keys of a {@link Table}: a head, a blank, a cutter. Immutable. Two are equal when
 * all that is given of them, or holds by default, is equal.
 *
 * @param <T> the implementing type
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public abstract class Noun<T extends Noun<T>> implements Answer {

    private final Values<T> values;

    /**
     * Takes what was given, once all that is needed is there.
     *
     * @param values key by key
     * @throws IllegalArgumentException naming every key that lacks
     */
    protected Noun(Values<T> values) {
        this.values = Objects.requireNonNull(values, "values").complete();
    }

    /** {@return what was given; key by key} */
    protected final Values<T> values() {
        return values;
    }

    /** {@return the style answers about this are printed in: that of the first length given} */
    @Override
    public LengthStyle style() {
        return values.style();
    }

    /** {@return the form made of the keys; a noun that prints otherwise has its own} */
    @Override
    public Form<T> form() {
        return values.form();
    }

    @Override
    public final boolean equals(@Nullable Object other) {
        return other instanceof Noun<?> that && getClass() == that.getClass() && values.equals(that.values);
    }

    @Override
    public final int hashCode() {
        return values.hashCode();
    }

    @Override
    public String toString() {
        return text(style());
    }
}
