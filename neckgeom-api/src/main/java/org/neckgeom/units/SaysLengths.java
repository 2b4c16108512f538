package org.neckgeom.units;

/**
 * What says lengths when it is printed, and can be asked to say them in another style: {@code plan.in(INCH_FRACTIONS)}.
 *
 * <p>A style changes what is printed and the unit amounts are read in, never a value: the copy equals the original. An
 * answer takes the style of the first length it was asked with; what is asked of a copy keeps the copy's.
 *
 * @param <T> the kind of the copy, the implementing type itself
 */
@FunctionalInterface
public interface SaysLengths<T> {

    /**
     * Returns the same with its lengths said in a style.
     *
     * @param style how lengths are printed
     * @return a copy equal to this
     */
    T in(LengthStyle style);
}
