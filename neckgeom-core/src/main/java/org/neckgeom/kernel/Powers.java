package org.neckgeom.kernel;

/**
 * Powers and logarithms to base 2 from small tables, for kernels that ask thousands of times: a few nanoseconds in place of
 * the fifty or more of {@link StrictMath}, with the same bits on every machine.
 */
public final class Powers {

    private static final int BITS = 8;
    private static final int PARTS = 1 << BITS;
    private static final int LOG_BITS = 8;
    private static final int LOG_PARTS = 1 << LOG_BITS;
    private static final int MANTISSA_BITS = 52;
    private static final long MIDDLE_BIT = 1L << (MANTISSA_BITS - LOG_BITS - 1);
    private static final long MIDDLE_MASK = -1L << (MANTISSA_BITS - LOG_BITS);
    private static final int BIAS = 1023;
    private static final int LEAST_EXPONENT = -1022;
    private static final double LN_2 = StrictMath.log(2);
    private static final double PER_LN_2 = 1 / LN_2;

    /** {@code 2^(i/256)}. */
    private static final double[] ROOTS = new double[PARTS];

    /** Of the middle of each part: one over it, and its logarithm. */
    private static final double[] INVERSES = new double[LOG_PARTS];

    private static final double[] LOGS = new double[LOG_PARTS];

    static {
        for (int i = 0; i < PARTS; i++) {
            ROOTS[i] = StrictMath.pow(2, i / (double) PARTS);
        }
        for (int i = 0; i < LOG_PARTS; i++) {
            double middle = 1 + (i + 0.5) / LOG_PARTS;
            INVERSES[i] = 1 / middle;
            LOGS[i] = StrictMath.log(middle) / LN_2;
        }
    }

    private Powers() {}

    /** Returns {@code 2^y} to 4e-16 of itself, for y under 1023; 0 where it is under 1e-307. */
    public static double exp2(double y) {
        if (!(y >= LEAST_EXPONENT)) {
            return 0;
        }
        int steps = (int) Math.floor(y * PARTS + 0.5);
        double rest = (y - steps / (double) PARTS) * LN_2;
        double root = ROOTS[steps & (PARTS - 1)];
        double scale = Double.longBitsToDouble((long) ((steps >> BITS) + BIAS) << MANTISSA_BITS);
        double square = rest * rest;
        return scale * (root + root * (rest + square * (0.5 + rest * (1.0 / 6) + square * (1.0 / 24))));
    }

    /** Returns the logarithm of a normal number above 0 to base 2, to 4e-16 or the last bit. */
    public static double log2(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int part = (int) (bits >>> (MANTISSA_BITS - LOG_BITS)) & (LOG_PARTS - 1);
        long exponent = (bits >>> MANTISSA_BITS) - BIAS;
        long mantissaBits = bits & ((1L << MANTISSA_BITS) - 1) | (long) BIAS << MANTISSA_BITS;
        double mantissa = Double.longBitsToDouble(mantissaBits);
        double middle = Double.longBitsToDouble((mantissaBits & MIDDLE_MASK) | MIDDLE_BIT);
        // The difference of two numbers so near each other has no rounding.
        double r = (mantissa - middle) * INVERSES[part];
        double square = r * r;
        double log = r - square * (1.0 / 2 - r * (1.0 / 3) + square * (1.0 / 4 - r * (1.0 / 5)));
        return exponent + (LOGS[part] + log * PER_LN_2);
    }

    /** Returns the natural logarithm of a normal number above 0, as good as {@link #log2}. */
    public static double ln(double x) {
        return log2(x) * LN_2;
    }

    /**
     * Returns {@code x^y}, of a normal x to {@code 4e-16 (1 + |y| + |y log2 x|)} of itself where that is from 1e-307 to under
     * {@code 2^1023}, 0 below; of another x as the JDK has it.
     */
    public static double power(double x, double y) {
        return x >= Double.MIN_NORMAL && x <= Double.MAX_VALUE ? exp2(y * log2(x)) : StrictMath.pow(x, y);
    }
}
