package org.neckgeom.table;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Tree;
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

    /**
     * Reads a value that is a part of a larger document.
     *
     * @param tree the plain data
     * @param place its path in the document, with which each fault's path begins
     * @return the value
     * @throws IllegalArgumentException with all faults at once, each with its path
     */
    public V read(Tree tree, String place) {
        Faults faults = new Faults();
        Object data = Objects.requireNonNull(tree, "tree").plain();
        Objects.requireNonNull(place, "place");
        V value = null;
        if (data == null || data.equals("")) {
            faults.sentence(place, "empty", place + " has no value; give " + allowed());
        } else {
            value = read(data, place, faults);
        }
        faults.refuseIfAny();
        return Objects.requireNonNull(value, "value");
    }

    /**
     * Writes a value as plain data, so that it reads back equal.
     *
     * @param value allowed by this type
     * @param spelling of keys and quantities
     * @return the tree
     */
    public Tree tree(V value, Spelling spelling) {
        return Tree.of(write(Objects.requireNonNull(value, "value"), Objects.requireNonNull(spelling, "spelling")));
    }

    /** Writes as plain data: maps, lists, texts, numbers, booleans. */
    abstract Object write(V value, Spelling spelling);

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
