package org.neckgeom.design;

import org.jspecify.annotations.Nullable;
import org.neckgeom.table.Values;

/**
 * A noun on its way, with what has been given of it so far and what it lacks. Immutable.
 *
 * @param <T> the noun
 */
abstract class Unfinished<T> {

    private final Values<T> values;
    private final String lacks;

    Unfinished(Values<T> values, String lacks) {
        this.values = values;
        this.lacks = lacks;
    }

    final Values<T> values() {
        return values;
    }

    @Override
    public final boolean equals(@Nullable Object other) {
        return other instanceof Unfinished<?> that && getClass() == that.getClass() && values.equals(that.values);
    }

    @Override
    public final int hashCode() {
        return values.hashCode();
    }

    /** Returns such as {@code tenon, holes not given yet}. */
    @Override
    public final String toString() {
        return lacks + " not given yet";
    }
}
