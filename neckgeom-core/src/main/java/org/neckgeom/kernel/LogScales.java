package org.neckgeom.kernel;

import org.neckgeom.numeric.NormalLaw;

/**
 * Scales that are known only roughly, as a grid of their logarithms with weights that add up to 1: evenly spaced, so that a
 * smooth function is averaged all but exactly.
 *
 * <p>A guess has a normal logarithm. The standard deviation of a normal error that was read n + 1 times is that of Student's
 * law, {@code sqrt(n / chi-square of n)}, whose logarithm y has the density {@code exp(-n y - n/2 exp(-2 y))} but for a
 * factor.
 *
 * <p>A wave {@code cos(s v)}, v the scale, turns {@code tau s v} radians for one standard deviation of its logarithm. Where that
 * is many, the average over the wave is nothing, and more points than the grid has would be needed to find so: there its
 * weight is taken away gently, over a stretch of scales in which it is nothing anyway.
 *
 * @param factor scales as multiples of the given one
 * @param weight how likely each is
 * @param logDeviation of the scale
 * @param fastest how many radians a wave may turn for one standard deviation of the logarithm; infinite where the grid is fine
 *     enough for every wave
 */
@SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
record LogScales(double[] factor, double[] weight, double logDeviation, double fastest) {

    /** A normal logarithm passes so many standard deviations with a probability of 1e-12. */
    static final double REACH = 7.0;

    /** Widest step of a normal logarithm, in standard deviations: the average of 1 is then right to {@code exp(-2 pi^2/0.36)}. */
    private static final double WIDEST = 0.6;

    /**
     * Widest step of a logarithm where a normal error is averaged: that average and the density of Student's logarithm are
     * smooth up to an imaginary part of pi/4.
     */
    private static final double WIDEST_NORMAL = 0.16;

    /** Turns that a grid finds too many by, before its own waves show above 1e-11. */
    private static final double MARGIN = 5.0;

    /** Turns from which on the average over a wave is under 1e-13, twice as many: a series' terms may double between grids. */
    private static final double GONE = 18.0;

    /** The farthest logarithm of a scale, which no length comes near. */
    private static final double FARTHEST = 300.0;

    private static final LogScales KNOWN =
            new LogScales(new double[] {1.0}, new double[] {1.0}, 0.0, Double.POSITIVE_INFINITY);

    /**
     * Scales of a normal error.
     *
     * @param logDeviation standard deviation of the logarithm, 0 for a known scale
     * @param degrees of freedom of the error's deviation, may be infinite
     */
    static LogScales normal(double logDeviation, double degrees) {
        boolean student = degrees < Double.POSITIVE_INFINITY;
        if (logDeviation == 0.0 && !student) {
            return KNOWN;
        }
        double step = WIDEST_NORMAL;
        if (logDeviation > 0.0) {
            step = Math.min(step, WIDEST * logDeviation);
        }
        if (student) {
            step = Math.min(step, WIDEST * deviation(degrees));
        }
        double[][] grid = student ? student(degrees, step) : new double[][] {{0.0}, {1.0}};
        return of(
                logDeviation > 0.0 ? convolved(grid, normalGrid(logDeviation, step), step) : grid,
                logDeviation,
                Double.POSITIVE_INFINITY);
    }

    /**
     * Scales of an error whose characteristic function waves.
     *
     * @param logDeviation standard deviation of the logarithm, 0 for a known scale
     * @param swing the most that the characteristic function's argument comes to, in radians
     * @param fromNothing whether it comes to less than half of that too
     */
    static LogScales waves(double logDeviation, double swing, boolean fromNothing) {
        if (logDeviation == 0.0) {
            return KNOWN;
        }
        double turns = swing * logDeviation * StrictMath.exp((REACH - 1.0) * logDeviation);
        double fastest = fromNothing ? Double.POSITIVE_INFINITY : fastest(logDeviation);
        boolean fine = turns <= fastest;
        double step = Math.min(WIDEST, 2.0 * Math.PI / ((fine ? turns : fastest) + MARGIN));
        return of(
                normalGrid(logDeviation, step * logDeviation), logDeviation, fine ? Double.POSITIVE_INFINITY : fastest);
    }

    private static LogScales of(double[][] grid, double logDeviation, double fastest) {
        double[] factor = new double[grid[0].length];
        double sum = 0.0;
        for (int i = 0; i < factor.length; i++) {
            factor[i] = StrictMath.exp(grid[0][i]);
            sum += grid[1][i];
        }
        for (int i = 0; i < factor.length; i++) {
            grid[1][i] /= sum;
        }
        return new LogScales(factor, grid[1], logDeviation, fastest);
    }

    /** Turns over which a wave's weight goes so gently that nothing of the wave is left by it. */
    private static double fastest(double logDeviation) {
        double fastest = 2.0 * GONE;
        while (width(logDeviation, fastest) * Math.sqrt(0.5 * GONE * fastest) < 7.5) {
            fastest *= 1.1;
        }
        return fastest;
    }

    /** Standard deviation of the edge over which the weight goes, six of them to each side. */
    private static double width(double logDeviation, double fastest) {
        return StrictMath.log(fastest / GONE) / (12.0 * logDeviation);
    }

    /**
     * Weights of a wave.
     *
     * @param swing the most that its argument comes to at the given scale, in radians
     */
    double[] waveWeights(double swing) {
        if (Double.isInfinite(fastest)) {
            return weight;
        }
        double middle = 0.5 * StrictMath.log(fastest * GONE);
        double edge = logDeviation * width(logDeviation, fastest);
        double[] weights = new double[weight.length];
        for (int j = 0; j < weights.length; j++) {
            double turns = swing * logDeviation * factor[j];
            weights[j] =
                    turns == 0.0 ? weight[j] : weight[j] * NormalLaw.upperTail((StrictMath.log(turns) - middle) / edge);
        }
        return weights;
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
    private static double[][] normalGrid(double logDeviation, double step) {
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
        while (logDensity((high + 1) * step, degrees) > -32.0 && high * step < FARTHEST) {
            high++;
        }
        double[][] grid = new double[2][high - low + 1];
        for (int i = low; i <= high; i++) {
            grid[0][i - low] = i * step;
            grid[1][i - low] = StrictMath.exp(logDensity(i * step, degrees));
        }
        if (high * step >= FARTHEST) {
            // By less than a degree of freedom the scale may be anything: all that is farther counts as that far.
            grid[1][high - low] += StrictMath.exp(logDensity(high * step, degrees)) / (degrees * step);
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
