package org.neckgeom.channel;

/**
 * The state of one setting of the fence: the distance c from the fence to the slot's middle, as a mean and the parts of
 * its variance, after trial cuts and moves. Lengths in mm. Immutable.
 *
 * <p>The recursion is the scalar Kalman filter, exact for normal errors: a cut read as y with the variance R (its readings and
 * the scatter of cuts) gives {@code K = P/(P + R)}, {@code c += K (y - c)}, {@code P = P R/(P + R)}; a move toward the cutter
 * by D gives {@code c -= D} and adds its own variance. The parts of P stand apart because each is known from its own number
 * of readings.
 */
record SettingState(double mean, double fromReadings, double fromCuts, double fromMoves, double doubt) {

    /**
     * The first cut.
     *
     * @param y the value read
     * @param readingVariance of that reading
     * @param cutVariance of one cut at one setting
     * @param degreesOfFreedom of the reading
     */
    static SettingState first(double y, double readingVariance, double cutVariance, double degreesOfFreedom) {
        return new SettingState(y, readingVariance, cutVariance, 0, square(readingVariance) / degreesOfFreedom);
    }

    double variance() {
        return fromReadings + fromCuts + fromMoves;
    }

    SettingState movedTowardCutter(double distance, double moveVariance) {
        return new SettingState(mean - distance, fromReadings, fromCuts, fromMoves + moveVariance, doubt);
    }

    SettingState cut(double y, double readingVariance, double cutVariance, double degreesOfFreedom) {
        double noise = readingVariance + cutVariance;
        double sum = variance() + noise;
        if (!(sum > 0)) {
            return new SettingState(y, 0, 0, 0, 0);
        }
        double gain = variance() / sum;
        double kept = noise / sum;
        double kept2 = kept * kept;
        double gain2 = gain * gain;
        return new SettingState(
                mean + gain * (y - mean),
                kept2 * fromReadings + gain2 * readingVariance,
                kept2 * fromCuts + gain2 * cutVariance,
                kept2 * fromMoves,
                kept2 * kept2 * doubt + square(gain2 * readingVariance) / degreesOfFreedom);
    }

    /**
     * Effective degrees of freedom of the variance of an answer (GUM G.4, Welch and Satterthwaite).
     *
     * @param moreCuts variance of the scatter of cuts that the answer adds, of the same unknown scatter
     * @param known variance that it adds and that is known
     * @param ofCuts degrees of freedom of the scatter of cuts
     */
    double degreesOfFreedom(double moreCuts, double known, double ofCuts) {
        double all = doubt + square(fromCuts + moreCuts) / ofCuts;
        double total = variance() + moreCuts + known;
        return all > 0 ? square(total) / all : Double.POSITIVE_INFINITY;
    }

    private static double square(double x) {
        return x * x;
    }
}
