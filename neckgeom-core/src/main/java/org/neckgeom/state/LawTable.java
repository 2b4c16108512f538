package org.neckgeom.state;

import org.neckgeom.kernel.Bessel;
import org.neckgeom.measure.ErrorDistribution.Law;

/**
 * The characteristic function of a law of unit scale, with mirror symmetry, averaged over what its scale may be:
 * a table with cubic interpolation, right to about 1e-7.
 */
final class LawTable {

    /** Beyond it every factor of a series is small enough to count as 0 together with the others. */
    private static final double LAST = 64.0;

    private static final double STEP = 0.05;

    private final double[] values;

    /**
     * Makes the table.
     *
     * @param law of the cause; not samples
     * @param top half the width of a trapezoid's top, over that of its base
     * @param logDeviation standard deviation of the logarithm of its own scale
     */
    LawTable(Law law, double top, double logDeviation) {
        int n = (int) Math.round(LAST / STEP) + 3;
        this.values = new double[n + 1];
        double[] factors = new double[Scales.OWN.size()];
        for (int m = 0; m < factors.length; m++) {
            factors[m] = StrictMath.exp(logDeviation * Scales.OWN.z[m]);
        }
        for (int i = 0; i <= n; i++) {
            double x = (i - 1) * STEP;
            double sum = 0.0;
            if (logDeviation == 0.0) {
                sum = of(law, top, x);
            } else {
                for (int m = 0; m < factors.length; m++) {
                    sum += Scales.OWN.weights[m] * of(law, top, x * factors[m]);
                }
            }
            values[i] = sum;
        }
    }

    private static double of(Law law, double top, double x) {
        return switch (law) {
            case NORMAL -> StrictMath.exp(-0.5 * x * x);
            case RECTANGULAR -> sinc(x);
            case ARCSINE -> Bessel.j0(x);
            default -> sinc(0.5 * (1.0 + top) * x) * sinc(0.5 * (1.0 - top) * x);
        };
    }

    private static double sinc(double x) {
        return Math.abs(x) < 1e-4 ? 1.0 - x * x / 6.0 : StrictMath.sin(x) / x;
    }

    /** The function at an argument of either sign. */
    double at(double argument) {
        double x = Math.abs(argument) * (1.0 / STEP);
        if (!(x < LAST / STEP)) {
            return 0.0;
        }
        return Cubic.at(values, x);
    }

    /** Multiplies a row of products by the function at evenly spaced arguments. */
    void times(double[] products, int from, int count, double first, double step) {
        for (int k = 0; k < count; k++) {
            products[from + k] *= at(first + k * step);
        }
    }
}
