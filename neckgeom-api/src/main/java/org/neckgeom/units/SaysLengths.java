package org.neckgeom.units;

import org.jspecify.annotations.Nullable;

/**
 * What says lengths when it is printed, and can be asked to say them in another style: {@code plan.in(INCH_FRACTIONS)}.
 *
 * <p>A style changes what is printed and the unit amounts are read in, never a value: the copy equals the original. An
 * answer takes the style of the first length it was asked with; what is asked of a copy keeps the copy's.
 *
 * @param <T> the kind of the copy, the implementing type itself
 */
@FunctionalInterface
@SuppressWarnings("exports") // JSpecify is for compilers only
public interface SaysLengths<T> {

    /**
     * {@return the same with its lengths said in a style; a copy equal to this}
     *
     * @param style how lengths are printed
     */
    T in(LengthStyle style);

    /**
     * {@return a part said in a style, or nothing where there is none: for a value some of whose parts need not be
     * told; a copy equal to the part, or null}
     *
     * @param <P> the kind of the part
     * @param part the part, or null
     * @param style how lengths are printed
     */
    static <P extends SaysLengths<P>> @Nullable P said(@Nullable P part, LengthStyle style) {
        return part == null ? null : part.in(style);
    }
}
