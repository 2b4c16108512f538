package org.neckgeom.channel;

/**
 * What is known of one offset after moves and readings: a mean and a variance, updated one step at a
 * time (the scalar Kalman recursion). Immutable.
 *
 * <p>Exact for normal errors: the result is the weighted least-squares estimate from all readings,
 * each carried through the moves made since.
 */
final class ScalarFilter {

    private final double mean;
    private final double variance;

    private ScalarFilter(double mean, double variance) {
        this.mean = mean;
        this.variance = variance;
    }

    /** The first reading starts it. */
    static ScalarFilter start(double reading, double u) {
        return new ScalarFilter(reading, u * u);
    }

    /** After a move that takes {@code move} off the offset and is itself uncertain by u. */
    ScalarFilter moved(double move, double u) {
        return new ScalarFilter(mean - move, variance + u * u);
    }

    /** After one more reading of the offset, uncertain by u. */
    ScalarFilter read(double reading, double u) {
        double noise = u * u;
        double sum = variance + noise;
        if (!(sum > 0)) {
            return new ScalarFilter(reading, 0);
        }
        double gain = variance / sum;
        // noise * gain is (1 - gain) * variance without the cancellation.
        return new ScalarFilter(mean + gain * (reading - mean), noise * gain);
    }

    /** How far a reading lies from what was expected, in standard deviations of the difference. */
    double surprise(double reading, double u) {
        double spread = Math.sqrt(variance + u * u);
        double miss = Math.abs(reading - mean);
        return miss == 0 ? 0 : miss / spread;
    }

    double mean() {
        return mean;
    }

    double u() {
        return Math.sqrt(variance);
    }
}
