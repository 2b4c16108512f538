package org.neckgeom.kernel;

/** Many angles that turn by steps of their own. */
final class Turn {

    private final double[] sin;
    private final double[] cos;
    private final double[] stepSin;
    private final double[] stepCos;

    /** Angles {@code start * step * factor}, which turn by {@code step * factor}. */
    Turn(double[] factor, double step, double start) {
        int n = factor.length;
        sin = new double[n];
        cos = new double[n];
        stepSin = new double[n];
        stepCos = new double[n];
        for (int j = 0; j < n; j++) {
            double turn = factor[j] * step;
            sin[j] = StrictMath.sin(turn * start);
            cos[j] = StrictMath.cos(turn * start);
            stepSin[j] = StrictMath.sin(turn);
            stepCos[j] = StrictMath.cos(turn);
        }
    }

    void next() {
        for (int j = 0; j < sin.length; j++) {
            double turned = sin[j] * stepCos[j] + cos[j] * stepSin[j];
            cos[j] = cos[j] * stepCos[j] - sin[j] * stepSin[j];
            sin[j] = turned;
        }
    }

    double sines(double[] weight) {
        return sum(weight, sin);
    }

    double cosines(double[] weight) {
        return sum(weight, cos);
    }

    private static double sum(double[] weight, double[] of) {
        double even = 0.0;
        double odd = 0.0;
        int j = 0;
        for (; j + 1 < of.length; j += 2) {
            even += weight[j] * of[j];
            odd += weight[j + 1] * of[j + 1];
        }
        return j < of.length ? even + odd + weight[j] * of[j] : even + odd;
    }

    double products(Turn other, double[] weight) {
        double even = 0.0;
        double odd = 0.0;
        int j = 0;
        for (; j + 1 < sin.length; j += 2) {
            even += weight[j] * sin[j] * other.sin[j];
            odd += weight[j + 1] * sin[j + 1] * other.sin[j + 1];
        }
        return j < sin.length ? even + odd + weight[j] * sin[j] * other.sin[j] : even + odd;
    }
}
