package org.neckgeom.state;

/**
 * Evenly spaced points of a standard normal variable with weights that add up to 1: a smooth function is averaged all but
 * exactly.
 */
final class Scales {

    /** Of the common factor of all guesses. */
    static final Scales COMMON = new Scales(0.75, 6.0);

    /** Of the same, where a chance to 1e-5 is enough. */
    static final Scales COMMON_BROADLY = new Scales(1.0, 5.0);

    /** Of a scale of its own, where a chance to 1e-5 is enough. */
    static final Scales OWN = new Scales(0.8, 4.0);

    /** Of a scale of its own, where what is averaged has corners. */
    static final Scales FINE = new Scales(0.05, 5.0);

    final double[] z;
    final double[] weights;

    private Scales(double step, double reach) {
        int n = (int) Math.round(reach / step);
        this.z = new double[2 * n + 1];
        this.weights = new double[2 * n + 1];
        double sum = 0.0;
        for (int i = -n; i <= n; i++) {
            z[i + n] = i * step;
            weights[i + n] = StrictMath.exp(-0.5 * z[i + n] * z[i + n]);
            sum += weights[i + n];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
    }

    /**
     * Error allowed at a point, so that the weighted errors of all add up to one error: the more the less a point counts, for the
     * least work.
     */
    double allowed(double weight, double all) {
        double roots = 0.0;
        for (double one : weights) {
            roots += Math.sqrt(one);
        }
        return all / (roots * Math.sqrt(weight));
    }

    int size() {
        return z.length;
    }

    /** Factor of every guess at a point. */
    static double factor(double z) {
        return StrictMath.exp(Cause.GUESS * z);
    }
}
