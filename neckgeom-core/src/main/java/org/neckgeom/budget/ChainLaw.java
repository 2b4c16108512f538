package org.neckgeom.budget;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.neckgeom.kernel.Bessel;

/**
 * The exact distribution of a linear chain: {@code F(y) = sum_j w_j G(y + s_j)}.
 *
 * <p>The p largest rectangles of half-widths a are taken out in closed form: each turns a function into the difference
 * of its integral at two knots, {@code (G1(y + a) - G1(y - a)) / (2 a)}. What stays in, R, has the p times integrated
 * distribution function {@code G(u) = E[(u - R)+^p] / p!}. Beyond the reach B of R that is 0 or a polynomial of R's
 * exact moments; inside it, R's characteristic function phi at the nodes {@code k pi / B} gives a Fourier series, and
 * the rest of {@code G} is a Bernoulli polynomial averaged over R, again by exact moments (Poisson's summation formula;
 * J. Gil-Pelaez, Biometrika 38, 1951; R. B. Davies, Biometrika 60, 1973). With everything taken out the sum is the
 * piecewise polynomial of a sum of rectangles.
 */
final class ChainLaw extends ExactLaw {

    private static final int REANCHOR = 32;

    /** {@code B_j / j!} with {@code B_1 = +1/2}. */
    private static final double[] BERNOULLI = {
        1.0,
        1.0 / 2.0,
        1.0 / 12.0,
        0.0,
        -1.0 / 720.0,
        0.0,
        1.0 / 30_240.0,
        0.0,
        -1.0 / 1_209_600.0,
        0.0,
        1.0 / 47_900_160.0,
        0.0,
        -691.0 / 1_307_674_368_000.0,
        0.0,
        1.0 / 74_724_249_600.0,
        0.0
    };

    private final @Nullable ChainLaw mirror;
    private final double accuracy;
    private final double inverseUnit;
    private final double edge;
    private final double[] knots;
    private final double[] weights;
    private final double[] beyond;
    private final double[] within;
    private final double[] real;
    private final double[] imaginary;

    ChainLaw(Parts parts, ChainPlan plan) {
        this(parts, plan, true);
    }

    private ChainLaw(Parts parts, ChainPlan plan, boolean withMirror) {
        super(parts);
        this.accuracy = plan.accuracy();
        int p = plan.out();
        double unit = plan.reach() > 0.0 ? plan.reach() : parts.rectangles.length > 0 ? parts.rectangles[0] : 1.0;
        this.inverseUnit = 1.0 / unit;
        this.edge = plan.reach() > 0.0 ? 1.0 : 0.0;
        double[][] grid = grid(parts, plan, inverseUnit);
        this.knots = grid[0];
        this.weights = grid[1];
        double[] moments = moments(parts, plan, inverseUnit, p + 1);
        // E[(u - R)^p] / p! = sum u^r / r! * (-1)^(p-r) m_(p-r), with m_i = E[R^i] / i!.
        this.beyond = new double[p + 1];
        double factorial = 1.0;
        for (int r = 0; r <= p; r++) {
            factorial *= Math.max(1, r);
            beyond[r] = ((p - r) % 2 == 0 ? moments[p - r] : -moments[p - r]) / factorial;
        }
        this.within = new double[p + 2];
        factorial = 1.0;
        for (int r = 0; r <= p + 1; r++) {
            factorial *= Math.max(1, r);
            double sum = 0.0;
            double period = 0.5;
            for (int j = 0; j <= p + 1 - r; j++) {
                int i = p + 1 - r - j;
                sum += period * BERNOULLI[j] * (i % 2 == 0 ? moments[i] : -moments[i]);
                period *= 2.0;
            }
            within[r] = sum / factorial;
        }
        this.real = new double[plan.nodes()];
        this.imaginary = new double[plan.nodes()];
        series(parts, plan, inverseUnit, real, imaginary);
        if (parts.isSymmetric()) {
            this.mirror = this;
        } else {
            this.mirror = withMirror ? new ChainLaw(parts.mirrored(), plan, false) : null;
        }
    }

    @Override
    double accuracy() {
        return accuracy;
    }

    @Override
    double lower(double y) {
        return at(y, false, false)[0];
    }

    @Override
    double strictlyLower(double y) {
        return at(y, false, true)[0];
    }

    @Override
    double upper(double y) {
        return at(y, true, false)[0];
    }

    @Override
    double density(double y) {
        return at(y, false, false)[1];
    }

    @Override
    void tailAndDensity(double y, boolean above, double[] out) {
        tailAndDensity(y, above, false, out);
    }

    private double[] at(double y, boolean above, boolean strictly) {
        double[] out = new double[2];
        tailAndDensity(y, above, strictly, out);
        return out;
    }

    private void tailAndDensity(double y, boolean above, boolean strictly, double[] out) {
        boolean turn = y > 0.0 && mirror != null;
        ChainLaw side = y > 0.0 && mirror != null ? mirror : this;
        side.sumAndSlope(turn ? -y : y, turn != strictly, out);
        if (turn != above) {
            out[0] = 1.0 - out[0];
        }
    }

    /** F(y), or its limit from below, clipped to [0, 1] as rounding may pass an end by 1e-16; and its slope. */
    private void sumAndSlope(double y, boolean fromBelow, double[] out) {
        double v = y * inverseUnit;
        double total = 0.0;
        double slope = 0.0;
        for (int j = 0; j < knots.length; j++) {
            double u = v + knots[j];
            if (u >= edge) {
                if (!(fromBelow && beyond.length == 1 && u == edge && edge == 0.0)) {
                    total += weights[j] * polynomial(beyond, u);
                    slope += weights[j] * slope(beyond, u);
                }
            } else if (u > -edge) {
                inside(u, out);
                total += weights[j] * out[0];
                slope += weights[j] * out[1];
            }
        }
        out[0] = Math.max(0.0, Math.min(1.0, total));
        out[1] = Math.max(0.0, slope) * inverseUnit;
    }

    @Override
    double[] breaks() {
        double unit = 1.0 / inverseUnit;
        double[] all = new double[edge == 0.0 ? knots.length : 3 * knots.length];
        for (int j = 0; j < knots.length; j++) {
            all[j] = -knots[j] * unit;
            if (edge > 0.0) {
                all[knots.length + j] = all[j] - unit;
                all[2 * knots.length + j] = all[j] + unit;
            }
        }
        Arrays.sort(all);
        return all;
    }

    /** The series and its derivative, which multiplies term k by {@code -i pi (k + 1)}. */
    private void inside(double u, double[] out) {
        double angle = Math.PI * u;
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        double re = 0.0;
        double im = 0.0;
        double slopeRe = 0.0;
        double slopeIm = 0.0;
        // A double, as turning an int into one may wait for the term before, by luck of the registers.
        double term = real.length;
        for (int k = real.length - 1; k >= 0; k--) {
            double a = re + real[k];
            double b = im + imaginary[k];
            re = a * cos + b * sin;
            im = b * cos - a * sin;
            double c = slopeRe + term * imaginary[k];
            double d = slopeIm - term * real[k];
            term--;
            slopeRe = c * cos + d * sin;
            slopeIm = d * cos - c * sin;
        }
        out[0] = polynomial(within, u) + re;
        out[1] = slope(within, u) + Math.PI * slopeRe;
    }

    private static double polynomial(double[] c, double u) {
        double sum = c[c.length - 1];
        for (int r = c.length - 2; r >= 0; r--) {
            sum = sum * u + c[r];
        }
        return sum;
    }

    private static double slope(double[] c, double u) {
        double sum = 0.0;
        for (int r = c.length - 1; r >= 1; r--) {
            sum = sum * u + r * c[r];
        }
        return sum;
    }

    /** Knots in units of the reach with their weights, equal ones merged: rectangles taken out, then samples. */
    private static double[][] grid(Parts parts, ChainPlan plan, double inverseUnit) {
        double[] at = {0.0};
        double[] weight = {1.0};
        int i = 0;
        while (i < plan.out()) {
            double a = parts.rectangles[i] * inverseUnit;
            int run = 1;
            while (i + run < plan.out() && parts.rectangles[i + run] == parts.rectangles[i]) {
                run++;
            }
            double[] nextAt = new double[at.length * (run + 1)];
            double[] nextWeight = new double[nextAt.length];
            double scale = StrictMath.pow(0.5 / a, run);
            double binomial = 1.0;
            for (int m = 0; m <= run; m++) {
                double shift = (run - 2 * m) * a;
                double factor = (m % 2 == 0 ? binomial : -binomial) * scale;
                for (int j = 0; j < at.length; j++) {
                    nextAt[m * at.length + j] = at[j] + shift;
                    nextWeight[m * at.length + j] = weight[j] * factor;
                }
                binomial = binomial * (run - m) / (m + 1);
            }
            at = nextAt;
            weight = nextWeight;
            i += run;
        }
        if (plan.samplesOut()) {
            for (double[] set : parts.samples) {
                double[] nextAt = new double[at.length * set.length];
                double[] nextWeight = new double[nextAt.length];
                for (int m = 0; m < set.length; m++) {
                    for (int j = 0; j < at.length; j++) {
                        nextAt[m * at.length + j] = at[j] - set[m] * inverseUnit;
                        nextWeight[m * at.length + j] = weight[j] / set.length;
                    }
                }
                at = nextAt;
                weight = nextWeight;
            }
        }
        return new double[][] {at, weight};
    }

    /** {@code E[R^i] / i!} for i up to the given order, R in units of its reach: products of moment series, no signs. */
    private static double[] moments(Parts parts, ChainPlan plan, double inverseUnit, int order) {
        double[] all = new double[order + 1];
        all[0] = 1.0;
        if (order < 2 || plan.reach() == 0.0) {
            return all;
        }
        double[] one = new double[order + 1];
        double variance = parts.normalVariance * inverseUnit * inverseUnit;
        if (variance > 0.0) {
            one[0] = 1.0;
            for (int i = 2; i <= order; i += 2) {
                one[i] = one[i - 2] * variance / i;
            }
            multiply(all, one);
        }
        for (int n = plan.out(); n < parts.rectangles.length; n++) {
            double a = parts.rectangles[n] * inverseUnit;
            one[0] = 1.0;
            for (int i = 2; i <= order; i += 2) {
                one[i] = one[i - 2] * a * a / (i * (i + 1.0));
            }
            multiply(all, one);
        }
        for (double width : parts.arcsines) {
            double a = width * inverseUnit;
            one[0] = 1.0;
            for (int i = 2; i <= order; i += 2) {
                one[i] = one[i - 2] * a * a / ((double) i * i);
            }
            multiply(all, one);
        }
        if (!plan.samplesOut()) {
            for (double[] set : parts.samples) {
                double[] powers = new double[order + 1];
                for (double x : set) {
                    double term = 1.0;
                    for (int i = 0; i <= order; i++) {
                        powers[i] += term / set.length;
                        term *= x * inverseUnit / (i + 1);
                    }
                }
                multiply(all, powers);
            }
        }
        return all;
    }

    private static void multiply(double[] all, double[] by) {
        for (int n = all.length - 1; n >= 0; n--) {
            double sum = 0.0;
            for (int i = 0; i <= n; i++) {
                sum += all[n - i] * by[i];
            }
            all[n] = sum;
        }
    }

    /** Coefficients {@code phi(k pi / B) i^(p+1) / (k pi)^(p+1)}, k from 1. */
    private static void series(Parts parts, ChainPlan plan, double inverseUnit, double[] re, double[] im) {
        int n = re.length;
        int p = plan.out();
        double variance = parts.normalVariance * inverseUnit * inverseUnit * Math.PI * Math.PI;
        double step = StrictMath.exp(-variance);
        double value = 1.0;
        double ratio = 1.0;
        for (int k = 1; k <= n; k++) {
            if (k % REANCHOR == 1) {
                value = StrictMath.exp(-0.5 * variance * k * k);
                ratio = StrictMath.exp(-0.5 * variance * (2.0 * k + 1.0));
            } else {
                value *= ratio;
                ratio *= step;
            }
            re[k - 1] = value;
        }
        double[] factors = new double[n];
        for (int r = p; r < parts.rectangles.length; r++) {
            // A triangle is two equal rectangles.
            if (r == p || parts.rectangles[r] != parts.rectangles[r - 1]) {
                rectangle(factors, parts.rectangles[r] * inverseUnit * Math.PI);
            }
            for (int k = 0; k < n; k++) {
                re[k] *= factors[k];
            }
        }
        for (double width : parts.arcsines) {
            for (int k = 1; k <= n; k++) {
                re[k - 1] *= Bessel.j0(width * inverseUnit * Math.PI * k);
            }
        }
        if (!plan.samplesOut()) {
            for (double[] set : parts.samples) {
                timesSamples(re, im, set, inverseUnit * Math.PI);
            }
        }
        for (int k = 1; k <= n; k++) {
            double over = 1.0 / (Math.PI * k);
            double scale = over;
            for (int i = 0; i < p; i++) {
                scale *= over;
            }
            double a = re[k - 1] * scale;
            double b = im[k - 1] * scale;
            switch ((p + 1) % 4) {
                case 0 -> {
                    re[k - 1] = a;
                    im[k - 1] = b;
                }
                case 1 -> {
                    re[k - 1] = -b;
                    im[k - 1] = a;
                }
                case 2 -> {
                    re[k - 1] = -a;
                    im[k - 1] = -b;
                }
                default -> {
                    re[k - 1] = b;
                    im[k - 1] = -a;
                }
            }
        }
    }

    /** Puts {@code sin(k w) / (k w)} at node k, the sines by rotation, taken afresh now and then. */
    private static void rectangle(double[] factors, double w) {
        double cos1 = StrictMath.cos(w);
        double sin1 = StrictMath.sin(w);
        double over = 1.0 / w;
        double cos = 1.0;
        double sin = 0.0;
        double node = 0.0;
        for (int k = 1; k <= factors.length; k++) {
            node++;
            if (k % REANCHOR == 0) {
                cos = StrictMath.cos(node * w);
                sin = StrictMath.sin(node * w);
            } else {
                double turned = cos * cos1 - sin * sin1;
                sin = sin * cos1 + cos * sin1;
                cos = turned;
            }
            factors[k - 1] = sin * over / node;
        }
    }

    private static void timesSamples(double[] re, double[] im, double[] set, double w) {
        for (int k = 1; k <= re.length; k++) {
            double c = 0.0;
            double s = 0.0;
            for (double x : set) {
                c += StrictMath.cos(k * w * x);
                s += StrictMath.sin(k * w * x);
            }
            double a = re[k - 1];
            double b = im[k - 1];
            re[k - 1] = (a * c - b * s) / set.length;
            im[k - 1] = (a * s + b * c) / set.length;
        }
    }
}
