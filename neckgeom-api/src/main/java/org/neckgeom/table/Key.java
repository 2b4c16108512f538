package org.neckgeom.table;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One thing that can be given of a noun: its name, the type of its value, its default and its meaning.
 * Immutable; {@link Table} makes them.
 *
 * @param <T> the noun
 * @param <V> the type of its value
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Key<T, V> {

    final Table<T> table;
    final int index;
    final Type<V> type;
    final @Nullable V usual;
    final boolean isNeeded;
    final boolean isInline;
    private final String name;
    private final String about;
    private final String label;

    Key(
            Table<T> table,
            int index,
            String name,
            Type<V> type,
            @Nullable V usual,
            boolean isNeeded,
            boolean isInline,
            String about,
            String label) {
        this.table = table;
        this.index = index;
        this.name = Objects.requireNonNull(name, "name");
        this.type = Objects.requireNonNull(type, "type");
        this.usual = usual;
        this.isNeeded = isNeeded;
        this.isInline = isInline;
        this.about = Objects.requireNonNull(about, "about");
        this.label = label;
    }

    /**
     * {@return this key with another name in the messages of fluent calls, where no path names its owner}
     *
     * @param words such as {@code head veneer}; the noun and the key when not given
     */
    public Key<T, V> called(String words) {
        return table.replaced(new Key<>(
                table, index, name, type, usual, isNeeded, isInline, about, Objects.requireNonNull(words, "words")));
    }

    /** {@return the name in words, such as {@code body at fret}} */
    public String name() {
        return name;
    }

    /** The name in a spelling. */
    String name(Spelling spelling) {
        return spelling.of(name);
    }

    /** The name in a message without a path. */
    String label() {
        return label;
    }

    /** {@return the meaning; one line} */
    public String about() {
        return about;
    }

    /** The name. */
    @Override
    public String toString() {
        return name;
    }
}
