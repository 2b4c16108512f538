package org.neckgeom.strength;

import java.util.Arrays;

/**
 * What lies between the middle of a half superellipse and a line beside it: {@code F_k(r) = integral of (1 - t^p)^(k/p) dt from 0 to r}
 * for k = 1, 2 and 3, which are its area over {@code a b}, twice its first moment about the flat side over {@code a b^2} and three
 * times its second over {@code a b^3}.
 *
 * <p>By the binomial series in {@code w = r^p} up to one half; beyond, what is left to the edge, {@code (1/p) integral of v^(k/p)
 * (1 - v)^(1/p - 1) dv from 0 to 1 - w}, by that in {@code 1 - w}. Either is cut where its terms are below a double's last digit.
 */
final class SuperellipseStrips {

    /** Each term is less than half the one before, and the first ones fall faster. */
    private static final int TERMS = 46;

    private static final int POWERS = 3;

    private final double exponent;
    private final double[] whole;
    private final double[][] near = new double[POWERS][TERMS];
    private final double[][] left = new double[POWERS][TERMS];

    SuperellipseStrips(double exponent, double... whole) {
        this.exponent = exponent;
        this.whole = whole;
        double[] fromEdge = binomials(1 / exponent - 1);
        for (int k = 1; k <= POWERS; k++) {
            double[] fromMiddle = binomials(k / exponent);
            for (int j = 0; j < TERMS; j++) {
                near[k - 1][j] = fromMiddle[j] / (exponent * j + 1);
                left[k - 1][j] = fromEdge[j] / (k + exponent * (j + 1));
            }
        }
    }

    /** Coefficients of {@code (1 - x)^power}. */
    private static double[] binomials(double power) {
        double[] all = new double[TERMS];
        all[0] = 1;
        for (int j = 1; j < TERMS; j++) {
            all[j] = -all[j - 1] * (power - j + 1) / j;
        }
        return all;
    }

    /** {@return F_1, F_2 and F_3 out to a line} Odd: negative on the other side of the middle. Beyond the edge, the whole. */
    double[] outTo(double r) {
        double out = Math.min(1, Math.abs(r));
        double w = StrictMath.pow(out, exponent);
        double[] sums = w > 0.5 ? withoutEdge(1 - w) : fromMiddle(out, w);
        return r < 0 ? Arrays.stream(sums).map(sum -> -sum).toArray() : sums;
    }

    private double[] fromMiddle(double out, double w) {
        double[] sums = summed(near, w);
        for (int k = 0; k < POWERS; k++) {
            sums[k] *= out;
        }
        return sums;
    }

    private double[] withoutEdge(double v) {
        double[] sums = summed(left, v);
        double root = StrictMath.pow(v, 1 / exponent);
        double power = v;
        for (int k = 0; k < POWERS; k++) {
            power *= root;
            sums[k] = whole[k] - power * sums[k];
        }
        return sums;
    }

    /** Three sums in one loop: none waits for another. */
    private static double[] summed(double[][] series, double x) {
        double[] first = series[0];
        double[] second = series[1];
        double[] third = series[2];
        double a = 0;
        double b = 0;
        double c = 0;
        for (int j = TERMS - 1; j >= 0; j--) {
            a = a * x + first[j];
            b = b * x + second[j];
            c = c * x + third[j];
        }
        return new double[] {a, b, c};
    }
}
