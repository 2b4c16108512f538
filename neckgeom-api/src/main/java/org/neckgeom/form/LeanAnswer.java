package org.neckgeom.form;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.neckgeom.units.LengthStyle;

/**
 * An answer that equals another of its type with the same parts, and prints in the style of the first length given. It
 * keeps nothing else: its form loads when it is first printed. Immutable.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public abstract class LeanAnswer implements Answer {

    private final LengthStyle style;

    /**
     * Takes the style.
     *
     * @param style of the first length given
     */
    protected LeanAnswer(LengthStyle style) {
        this.style = Objects.requireNonNull(style, "style");
    }

    /**
     * {@return everything that determines this answer: doubles, arrays, values, null for a part that is absent} The
     * style is none of them.
     */
    protected abstract @Nullable Object[] parts();

    @Override
    public final LengthStyle style() {
        return style;
    }

    @Override
    public final boolean equals(@Nullable Object other) {
        return this == other
                || other instanceof LeanAnswer that
                        && getClass() == that.getClass()
                        && Arrays.deepEquals(parts(), that.parts());
    }

    @Override
    public final int hashCode() {
        return Arrays.deepHashCode(parts());
    }

    @Override
    public String toString() {
        return text(style);
    }
}
