package org.neckgeom.examples.file;

import java.util.Objects;
import java.util.function.Function;

/**
 * What was found under a key: a value, nothing (the key is not in the file and need not be), or something unusable
 * that has been noted as a problem already. Immutable.
 *
 * <p>Asking an unusable one for its value stops the {@link Section#make} it is used in, silently: the maker gets one
 * sentence for one mistake, not a second one about its consequences.
 *
 * @param <T> the type of the value
 */
public final class Found<T> {

    /** Thrown where a value is asked for that is not there; caught by {@link Section#make}. */
    static final class NotThere extends RuntimeException {

        private static final long serialVersionUID = 1L;

        NotThere() {
            super("a value was asked for that the file does not give", null, false, false);
        }
    }

    private static final Found<?> ABSENT = new Found<>(null, false);
    private static final Found<?> UNUSABLE = new Found<>(null, true);

    private final T value;
    private final boolean unusable;

    private Found(T value, boolean unusable) {
        this.value = value;
        this.unusable = unusable;
    }

    /**
     * A value.
     *
     * @param <T> its type
     * @param value the value
     * @return found
     */
    public static <T> Found<T> of(T value) {
        return new Found<>(Objects.requireNonNull(value, "value"), false);
    }

    /**
     * Nothing, and nothing wrong with that.
     *
     * @param <T> the type the value would have
     * @return absent
     */
    @SuppressWarnings("unchecked") // holds no value of any type
    public static <T> Found<T> absent() {
        return (Found<T>) ABSENT;
    }

    /**
     * Something that can't be used and has been noted.
     *
     * @param <T> the type the value would have
     * @return unusable
     */
    @SuppressWarnings("unchecked") // holds no value of any type
    public static <T> Found<T> unusable() {
        return (Found<T>) UNUSABLE;
    }

    /**
     * Whether there is a value.
     *
     * @return true for a value
     */
    public boolean isThere() {
        return value != null;
    }

    /**
     * Whether the key is not in the file.
     *
     * @return true for nothing
     */
    public boolean isAbsent() {
        return value == null && !unusable;
    }

    /**
     * Whether there is something that can't be used.
     *
     * @return true where a problem has been noted
     */
    public boolean isUnusable() {
        return unusable;
    }

    /**
     * The value.
     *
     * @return the value; inside {@link Section#make} a missing one ends the making
     */
    public T value() {
        if (value == null) {
            throw new NotThere();
        }
        return value;
    }

    /**
     * The value, or a usual one where the file gives none.
     *
     * @param usual taken when the key is absent
     * @return the value; an unusable one ends the {@link Section#make} it is asked in
     */
    public T orElse(T usual) {
        return isAbsent() ? usual : value();
    }

    /**
     * Something made of the value.
     *
     * @param <R> the type of what is made
     * @param making makes it, and may find it unusable
     * @return what was made; absent or unusable as this is
     */
    public <R> Found<R> then(Function<T, Found<R>> making) {
        if (value != null) {
            return making.apply(value);
        }
        return unusable ? unusable() : absent();
    }

    @Override
    public String toString() {
        return value != null ? value.toString() : unusable ? "unusable" : "absent";
    }
}
