package org.neckgeom.examples.file;

import java.util.Objects;

/**
 * A key a section may hold: its name, the kind of its value, whether it must be there, and a line on what it means.
 * Immutable.
 *
 * @param <T> the type of its value
 */
public final class Key<T> {

    private final String name;
    private final Kind<T> kind;
    private final boolean required;
    private final String about;

    private Key(String name, Kind<T> kind, boolean required, String about) {
        this.name = Objects.requireNonNull(name, "name");
        this.kind = Objects.requireNonNull(kind, "kind");
        this.required = required;
        this.about = Objects.requireNonNull(about, "about");
    }

    /**
     * A key that must be there.
     *
     * @param <T> the type of its value
     * @param name the key as written in the file
     * @param kind the kind of its value
     * @param about what it means, in one line
     * @return the key
     */
    public static <T> Key<T> needed(String name, Kind<T> kind, String about) {
        return new Key<>(name, kind, true, about);
    }

    /**
     * A key that may be left out.
     *
     * @param <T> the type of its value
     * @param name the key as written in the file
     * @param kind the kind of its value
     * @param about what it means, in one line, and what holds when it is left out
     * @return the key
     */
    public static <T> Key<T> optional(String name, Kind<T> kind, String about) {
        return new Key<>(name, kind, false, about);
    }

    /**
     * The key as written in the file.
     *
     * @return such as {@code body at fret}
     */
    public String name() {
        return name;
    }

    /**
     * The kind of its value.
     *
     * @return the kind
     */
    public Kind<T> kind() {
        return kind;
    }

    /**
     * Whether the section must hold it.
     *
     * @return true when it must
     */
    public boolean isRequired() {
        return required;
    }

    /**
     * What it means.
     *
     * @return one line
     */
    public String about() {
        return about;
    }

    /** The name. */
    @Override
    public String toString() {
        return name;
    }
}
