package org.neckgeom.kernel;

/**
 * Scales that are known only roughly, as a grid of their logarithms with weights that add up to 1: evenly spaced, so that a
 * smooth function is averaged all but exactly.
 *
 * <p>A guess has a normal logarithm. The standard deviation of a normal error that was read n + 1 times is that of Student's
 * law, {@code sqrt(n / chi-square of n)}, whose logarithm y has the density {@code exp(-n y - n/2 exp(-2 y))} but for a
 * factor.
 *
 * @param factor scales as multiples of the given one
 * @param weight how likely each is
 */
record LogScales(double[] factor, double[] weight) {

    /** A normal logarithm passes so many standard deviations with a probability of 1e-12. */
    static final double REACH = 7.0;

    /** Widest step of a normal logarithm, in standard deviations: the average of 1 is then right to {@code exp(-2 pi^2/0.36)}. */
    private static final double WIDEST = 0.6;

    /**
     * Widest step of a logarithm where a normal error is averaged: that average and the density of Student's logarithm are
     * smooth up to an imaginary part of pi/4.
     */
    private static final double WIDEST_NORMAL = 0.16;

    private static final LogScales KNOWN = new LogScales(new double[] {1.0}, new double[] {1.0});

    /**
     * Scales of an error.
     *
     * @param logDeviation standard deviation of the logarithm, 0 for a known scale
     * @param degrees of freedom of a normal error's deviation, may be infinite
     * @param swing how many radians the characteristic function's argument comes to at most; 0 where it does not swing, but
     *     falls like a normal one's
     */
    static LogScales of(double logDeviation, double degrees, double swing) {
        boolean student = degrees < Double.POSITIVE_INFINITY;
        if (logDeviation == 0.0 && !student) {
            return KNOWN;
        }
        double step = swing == 0.0 ? WIDEST_NORMAL : swingStep(logDeviation, swing);
        if (logDeviation > 0.0) {
            step = Math.min(step, WIDEST * logDeviation);
        }
        if (student) {
            step = Math.min(step, WIDEST * deviation(degrees));
        }
        double[][] grid = student ? student(degrees, step) : new double[][] {{0.0}, {1.0}};
        if (logDeviation > 0.0) {
            grid = convolved(grid, normal(logDeviation, step), step);
        }
        double[] factor = new double[grid[0].length];
        double sum = 0.0;
        for (int i = 0; i < factor.length; i++) {
            factor[i] = StrictMath.exp(grid[0][i]);
            sum += grid[1][i];
        }
        for (int i = 0; i < factor.length; i++) {
            grid[1][i] /= sum;
        }
        return new LogScales(factor, grid[1]);
    }

    /** A swing turns fastest where the scale is largest; five more keep what is beyond the grid's own waves under 1e-11. */
    private static double swingStep(double logDeviation, double swing) {
        double fastest = swing * logDeviation * StrictMath.exp((REACH - 1.0) * logDeviation);
        return logDeviation * 2.0 * Math.PI / (fastest + 5.0);
    }

    /**
     * Standard deviation of the logarithm of a standard deviation that is known by so many degrees of freedom:
     * {@code sqrt(trigamma(n/2)) / 2}, which is near {@code 1/sqrt(2 n)}; 0 for infinitely many.
     */
    static double deviation(double degrees) {
        double x = 0.5 * degrees;
        double sum = 0.0;
        while (x < 12.0) {
            sum += 1.0 / (x * x);
            x += 1.0;
        }
        // Asymptotic series, NIST Digital Library of Mathematical Functions, 5.15.8.
        double over = 1.0 / x;
        double square = over * over;
        double series =
                1.0 + 0.5 * over + square * (1.0 / 6.0 - square * (1.0 / 30.0 - square * (1.0 / 42.0 - square / 30.0)));
        return 0.5 * Math.sqrt(sum + over * series);
    }

    /** Places of the grid and weights of the logarithm of a guess. */
    private static double[][] normal(double logDeviation, double step) {
        int reach = (int) Math.ceil(REACH * logDeviation / step);
        double[][] grid = new double[2][2 * reach + 1];
        for (int i = -reach; i <= reach; i++) {
            double z = i * step / logDeviation;
            grid[0][i + reach] = i * step;
            grid[1][i + reach] = StrictMath.exp(-0.5 * z * z);
        }
        return grid;
    }

    private static double[][] student(double degrees, double step) {
        int low = 0;
        while (logDensity((low - 1) * step, degrees) > -32.0) {
            low--;
        }
        int high = 0;
        while (logDensity((high + 1) * step, degrees) > -32.0) {
            high++;
        }
        double[][] grid = new double[2][high - low + 1];
        for (int i = low; i <= high; i++) {
            grid[0][i - low] = i * step;
            grid[1][i - low] = StrictMath.exp(logDensity(i * step, degrees));
        }
        return grid;
    }

    /** Less than that at 0, where it is highest. */
    private static double logDensity(double y, double n) {
        return -n * (y + 0.5 * StrictMath.expm1(-2.0 * y));
    }

    /** The grid of the sum of two logarithms, both on grids of the same step. */
    private static double[][] convolved(double[][] one, double[][] two, double step) {
        double[][] grid = new double[2][one[0].length + two[0].length - 1];
        for (int i = 0; i < one[0].length; i++) {
            for (int j = 0; j < two[0].length; j++) {
                grid[1][i + j] += one[1][i] * two[1][j];
            }
        }
        for (int i = 0; i < grid[0].length; i++) {
            grid[0][i] = one[0][0] + two[0][0] + i * step;
        }
        return grid;
    }
}
