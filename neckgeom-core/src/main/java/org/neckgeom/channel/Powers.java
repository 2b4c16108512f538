package org.neckgeom.channel;

/**
 * Powers of 2 and logarithms to base 2 from small tables, for integrals that ask thousands of times: a few nanoseconds in place of
 * the fifty of {@link StrictMath}, with the same bits on every machine.
 */
final class Powers {

    private static final int PARTS = 64;
    private static final int LOG_BITS = 8;
    private static final int LOG_PARTS = 1 << LOG_BITS;
    private static final int MANTISSA_BITS = 52;
    private static final int BIAS = 1023;
    private static final int LEAST_EXPONENT = -1022;
    private static final double LN_2 = StrictMath.log(2);
    private static final double PER_LN_2 = 1 / LN_2;

    /** {@code 2^(i/64)}. */
    private static final double[] ROOTS = new double[PARTS];

    /** Of the middle of each part of [1, 2): one over it, and its logarithm. */
    private static final double[] INVERSES = new double[LOG_PARTS];

    private static final double[] LOGS = new double[LOG_PARTS];

    static {
        for (int i = 0; i < PARTS; i++) {
            ROOTS[i] = StrictMath.pow(2, i / (double) PARTS);
        }
        for (int i = 0; i < LOG_PARTS; i++) {
            INVERSES[i] = 1 / (1 + (i + 0.5) / LOG_PARTS);
            LOGS[i] = -StrictMath.log(INVERSES[i]) / LN_2;
        }
    }

    private Powers() {}

    /** {@code 2^y} to 1e-10 of itself, for y under 1023; 0 where it is under 1e-307. */
    static double exp2(double y) {
        if (!(y >= LEAST_EXPONENT)) {
            return 0;
        }
        int steps = (int) Math.floor(y * PARTS + 0.5);
        double rest = (y - steps / (double) PARTS) * LN_2;
        double root = ROOTS[steps & (PARTS - 1)];
        double scale = Double.longBitsToDouble((long) ((steps >> 6) + BIAS) << MANTISSA_BITS);
        return scale * (root + root * rest * (1 + rest * (0.5 + rest * (1.0 / 6))));
    }

    /** The logarithm of a normal number above 0 to base 2, to 1e-14. */
    static double log2(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int part = (int) (bits >>> (MANTISSA_BITS - LOG_BITS)) & (LOG_PARTS - 1);
        long exponent = (bits >>> MANTISSA_BITS) - BIAS;
        double mantissa = Double.longBitsToDouble(bits & ((1L << MANTISSA_BITS) - 1) | (long) BIAS << MANTISSA_BITS);
        double r = mantissa * INVERSES[part] - 1;
        double log = r * (1 - r * (1.0 / 2 - r * (1.0 / 3 - r * (1.0 / 4))));
        return exponent + (LOGS[part] + log * PER_LN_2);
    }
}
