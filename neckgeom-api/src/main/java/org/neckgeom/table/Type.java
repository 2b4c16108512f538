package org.neckgeom.table;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Kind;
import org.neckgeom.units.LengthStyle;

/**
 * What sort of value a key takes: how it is read from plain data, written, checked, and described. Immutable. {@link Types}
 * has them.
 *
 * @param <V> the type of the value
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public abstract class Type<V> {

    Type() {}

    /** Reads plain data; returns null where a fault was noted. */
    abstract @Nullable V read(Object data, String path, Faults faults);

    /** Writes as plain data: maps, lists, texts, numbers, booleans. */
    abstract Object write(V value, Spelling spelling);

    /** How a value is written as a fact of its noun: in words, and as {@link #write} has it. */
    Kind<V> kind() {
        return Kind.own(
                (value, style) -> in(value, style).toString(),
                (value, style) -> write(value, Spelling.JSON),
                schema(Spelling.JSON));
    }

    /** What a JSON Schema (draft 2020-12) can state of it. */
    abstract Map<String, Object> schema(Spelling spelling);

    /** {@return what may be written, in a maker's words, such as {@code a length such as 648 mm or 25 1/2 in}} */
    public abstract String allowed();

    /** Refuses a value that is not allowed. */
    void check(V value, String name) {}

    /** The same value, printed in another style of length. */
    V in(V value, LengthStyle style) {
        return value;
    }

    /** The style of the first length in a value. */
    Optional<LengthStyle> style(V value) {
        return Optional.empty();
    }

    /** The keys inside a value. */
    Optional<Table<?>> inside() {
        return Optional.empty();
    }

    /** What may be written. */
    @Override
    public final String toString() {
        return allowed();
    }
}
