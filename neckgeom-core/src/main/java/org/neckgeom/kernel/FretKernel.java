package org.neckgeom.kernel;

/** Fret positions on plain doubles: millimetres, equal division of the octave. */
public final class FretKernel {

    private static final double LN2 = StrictMath.log(2);

    private FretKernel() {}

    /**
     * {@return the share of the scale that lies between nut and fret; share in [0, 1)}
     *
     * <p>{@code 1 - 2^(-fret / divisions)}, by expm1, so that the first frets lose no digits to the subtraction.
     *
     * @param fret number of the fret, 0 or more; need not be whole
     * @param divisions steps to the octave, more than 0
     */
    public static double share(double fret, double divisions) {
        return 0.0 - StrictMath.expm1(-fret / divisions * LN2);
    }

    /** Returns the error in cents of a fret that sits {@code errorMm} too far from the nut; positive is sharp. */
    public static double cents(double soundingMm, double errorMm) {
        // The sounding length shrinks by the error; 1200 log2(l / (l - e)).
        return -1200 * StrictMath.log1p(-errorMm / soundingMm) / LN2;
    }
}
