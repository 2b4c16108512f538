package org.neckgeom.budget;

import org.neckgeom.numeric.NormalLaw;

/**
 * The distribution of a sum of independent parts about its mean, computed and not simulated. Values y are counted from
 * the mean. Immutable, safe to share between threads.
 */
abstract class ExactLaw {

    /** Most that a probability may be off, in sums of normal and rectangular parts of like size. */
    static final double ACCURACY = 1e-12;

    /** A sum of sub-Gaussian parts passes this many standard deviations with a probability under 1e-15. */
    static final double FARTHEST_SDS = 8.3;

    private static final int MOST_STEPS = 200;

    /** Of a search for a quantile, in standard deviations. */
    private static final double LAST_STEP = 1e-14;

    /** Of the bend that two densities foretell for Newton's step: so little that what they do not foretell is nothing. */
    private static final double LAST_BEND = 1e-13;

    private static final double WITHIN_BEND = 1e-15;

    /** Of a tail to a standard deviation; where a law is flat, rounding leaves far less. */
    private static final double LEAST_RISE = 0.01;

    private final double sd;
    private final double excess;
    private final boolean symmetric;
    private final double lowest;
    private final double highest;
    private final double searchLow;
    private final double searchHigh;

    ExactLaw(Parts parts) {
        double variance = parts.variance();
        this.sd = Math.sqrt(variance);
        this.excess = variance > 0.0 ? parts.fourthCumulant() / (variance * variance) : 0.0;
        this.symmetric = parts.isSymmetric();
        this.highest = parts.highest();
        this.lowest = symmetric ? highest : parts.mirrored().highest();
        double normalReach = 10.0 * Math.sqrt(parts.normalVariance);
        this.searchHigh = parts.bounded() + normalReach;
        this.searchLow = (symmetric ? parts.bounded() : parts.mirrored().bounded()) + normalReach;
    }

    /** Largest error of a probability. */
    abstract double accuracy();

    /** Probability of a value up to y. */
    abstract double lower(double y);

    /** Probability of a value above y. */
    abstract double upper(double y);

    abstract double density(double y);

    /** Puts into out the probability above y, or up to y, and the density there. */
    void tailAndDensity(double y, boolean above, double[] out) {
        out[0] = above ? upper(y) : lower(y);
        out[1] = density(y);
    }

    /** Where the distribution function bends sharply or begins and ends to rise. */
    abstract double[] breaks();

    final double sd() {
        return sd;
    }

    final double lowest() {
        return -lowest;
    }

    final double highest() {
        return highest;
    }

    /**
     * Probability of a value from low to high, taken from the two tails so that a small probability outside keeps its
     * digits.
     */
    final double between(double low, double high) {
        return Math.max(0.0, 1.0 - outside(low, high));
    }

    final double outside(double low, double high) {
        double below = low == Double.NEGATIVE_INFINITY ? 0.0 : strictlyLower(low);
        if (symmetric && low == -high && low < 0.0) {
            return Math.min(1.0, 2.0 * below);
        }
        double above = high == Double.POSITIVE_INFINITY ? 0.0 : upper(high);
        return Math.min(1.0, below + above);
    }

    /** Probability of a value under y; differs from {@link #lower} where samples put weight on single values. */
    double strictlyLower(double y) {
        return lower(y);
    }

    /**
     * The least y that is not exceeded with probability p, 0 &lt; p &lt; 1: Cornish and Fisher's start, then Newton's
     * steps.
     */
    final double quantile(double p) {
        if (sd == 0.0) {
            return 0.0;
        }
        boolean down = p <= 0.5;
        double tail = down ? p : 1.0 - p;
        double low = -searchLow;
        double high = searchHigh;
        double z = NormalLaw.quantile(p);
        double y = sd * (z + excess * (z * z * z - 3.0 * z) / 24.0);
        double[] here = new double[2];
        double last = Double.NaN;
        double lastDensity = Double.NaN;
        for (int i = 0; i < MOST_STEPS; i++) {
            if (!(y > low && y < high)) {
                y = 0.5 * (low + high);
            }
            tailAndDensity(y, !down, here);
            double miss = down ? here[0] - tail : tail - here[0];
            if (miss >= 0.0) {
                high = y;
            } else {
                low = y;
            }
            double next = y - miss / here[1];
            // Where the law rises, so small a step ends the search, though it may lead to an end of the bracket itself.
            if (Math.abs(next - y) <= LAST_STEP * sd && here[1] * sd > LEAST_RISE * tail) {
                return Math.max(low, Math.min(high, next));
            }
            // How the density has changed since the last step shows how Newton's line bends: it saves the step that
            // only
            // confirms.
            double bend = 0.5 * (here[1] - lastDensity) / (y - last) / here[1] * (next - y) * (next - y);
            boolean foretold = Math.abs(bend) <= LAST_BEND * sd && Math.abs(bend * (y - last)) <= WITHIN_BEND * sd * sd;
            if (foretold && here[1] * sd > LEAST_RISE * tail) {
                return Math.max(low, Math.min(high, next - bend));
            }
            last = y;
            lastDensity = here[1];
            // Close by, or in a corner of the law: Newton's step first, halving where it leads out.
            if (!(next > low && next < high) || i % 16 == 15) {
                next = 0.5 * (low + high);
            } else if (Math.abs(miss) <= 2e-15 || Math.abs(next - y) <= LAST_STEP * sd) {
                return next;
            }
            if (high - low <= 4e-16 * sd || next == y) {
                return high;
            }
            y = next;
        }
        return high;
    }
}
