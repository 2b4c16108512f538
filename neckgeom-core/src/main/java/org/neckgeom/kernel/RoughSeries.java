package org.neckgeom.kernel;

import java.util.List;

/**
 * The law of a sum about 0 by its characteristic function at {@code (k + 1/2) step}.
 *
 * @param re real parts
 * @param im imaginary parts
 * @param step pi over the reach, or less
 * @param reach what the sum all but never passes, Student's tails aside
 * @param left the largest characteristic function among the last terms: what the series leaves out at most
 * @param students errors with tails that pass the reach
 * @param others the same, of errors that were divided by the factor
 * @param factor the factor
 */
@SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
record RoughSeries(
        double[] re,
        double[] im,
        double step,
        double reach,
        double left,
        List<RoughPart> students,
        List<RoughPart> others,
        double factor) {

    private static final int WAVES = 8;
    private static final double NOTHING = 1e-12;

    /** Probability of a sum under low or above high. */
    double outside(double low, double high) {
        double above = above(high);
        double below = low == -high && isSymmetric() ? above : below(low);
        return Math.max(0.0, Math.min(1.0, above + below));
    }

    private boolean isSymmetric() {
        for (double part : im) {
            if (part != 0.0) {
                return false;
            }
        }
        return true;
    }

    private double above(double y) {
        if (Math.abs(y) > reach) {
            return y > 0.0 ? tail(y) : 1.0 - tail(-y);
        }
        return 0.5 - sum(y) - passing(y);
    }

    private double below(double y) {
        if (Math.abs(y) > reach) {
            return y < 0.0 ? tail(-y) : 1.0 - tail(y);
        }
        return 0.5 + sum(y) + passing(y);
    }

    /**
     * What the midpoint rule mistakes: the sum's sign is turned from one wave's length on, and back from two, and so on. The
     * terms have turning signs, so half of the last is as good as all that follow.
     */
    private double passing(double y) {
        if (students.isEmpty() && others.isEmpty()) {
            return 0.0;
        }
        double wave = 2.0 * Math.PI / step;
        double sum = 0.0;
        for (int m = 1; m <= WAVES; m++) {
            double term = tail(m * wave - y) - tail(m * wave + y);
            boolean last = m == WAVES || Math.abs(term) < NOTHING;
            sum += (m % 2 == 1 ? 1.0 : -1.0) * (last ? 0.5 : 1.0) * term;
            if (last) {
                break;
            }
        }
        return sum;
    }

    private double tail(double x) {
        double sum = 0.0;
        for (RoughPart part : students) {
            sum += part.studentTail(x);
        }
        for (RoughPart part : others) {
            sum += part.studentTail(x * factor);
        }
        return sum;
    }

    private double sum(double y) {
        double sin = StrictMath.sin(0.5 * step * y);
        double cos = StrictMath.cos(0.5 * step * y);
        double stepSin = 2.0 * sin * cos;
        double stepCos = 1.0 - 2.0 * sin * sin;
        double sum = 0.0;
        for (int k = 0; k < re.length; k++) {
            sum += (re[k] * sin - im[k] * cos) / (k + 0.5);
            double turned = sin * stepCos + cos * stepSin;
            cos = cos * stepCos - sin * stepSin;
            sin = turned;
        }
        return sum / Math.PI;
    }
}
