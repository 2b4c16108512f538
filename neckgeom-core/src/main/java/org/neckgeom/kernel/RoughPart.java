package org.neckgeom.kernel;

import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.ErrorDistribution.Law;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.numeric.StudentLaw;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** One independent error of a sum, about 0: its characteristic function, averaged over its scale, and how far it reaches. */
final class RoughPart {

    /** A normal error passes so many standard deviations with a probability of 6e-14. */
    private static final double NORMAL_REACH = 7.5;

    /** Largest tail that may be left out where errors of other causes are added to it. */
    private static final double LEFT_OUT = 1e-11;

    private static final double MOST_STUDENT = 4_000.0;

    /** Two scales pass so many standard deviations of their logarithms at once with a probability of 1e-13. */
    private static final double TOGETHER = 5.0;

    private static final int AFRESH = 256;
    private static final double NOTHING = 1e-18;

    private final SpreadLaw about;
    private final Law law;
    private final double scale;
    private final double top;
    private final double[] samples;
    private final double logDeviation;
    private final double degrees;

    private RoughPart(ErrorDistribution<?> spread, double sign, double logDeviation, double degrees) {
        this.about = new SpreadLaw(spread);
        this.law = spread.law();
        this.scale = spread.libraryScale();
        this.top = spread.libraryTopScale();
        this.samples = spread.libraryCentredSamples();
        for (int i = 0; i < samples.length; i++) {
            samples[i] *= sign;
        }
        this.logDeviation = logDeviation;
        this.degrees = degrees;
    }

    /**
     * An error of which the standard deviation, or the half-width, is known only roughly.
     *
     * @param logDeviation standard deviation of the scale's own logarithm, 0 or more
     */
    static RoughPart of(ErrorDistribution<?> spread, double coefficient, double logDeviation) {
        double degrees = spread.degreesOfFreedom();
        boolean normal = spread.law() == Law.NORMAL;
        return new RoughPart(
                spread.scaled(Math.abs(coefficient)),
                Math.signum(coefficient),
                normal || Double.isInfinite(degrees)
                        ? logDeviation
                        : StrictMath.hypot(logDeviation, LogScales.deviation(degrees)),
                normal ? degrees : Double.POSITIVE_INFINITY);
    }

    static RoughPart normal(double sd) {
        return of(ErrorDistribution.normal(Amount.ofLibrary(sd, ShopUnit.MILLIMETRE)), 1.0, 0.0);
    }

    boolean isNothing() {
        return scale == 0.0 || law == Law.BIAS;
    }

    boolean isStudent() {
        return degrees < Double.POSITIVE_INFINITY;
    }

    boolean isRough() {
        return logDeviation > 0.0 || isStudent();
    }

    /** Whether its characteristic function is complex and need not fall. */
    boolean isSamples() {
        return law == Law.SAMPLES;
    }

    /** Whether {@link #above} is known without a series. */
    boolean isClosed() {
        return isSamples() || logDeviation == 0.0;
    }

    /** Probability of more than high or less than low, of one of which {@link #isClosed} is true. */
    double outside(double low, double high) {
        return above(high, 1.0) + above(-low, -1.0);
    }

    private double above(double x, double sign) {
        if (isStudent()) {
            return studentTail(x);
        }
        if (!isSamples()) {
            return about.above(x + about.mean());
        }
        double sum = 0.0;
        for (double sample : samples) {
            sum += sampleAbove(sign * sample, x);
        }
        return sum / samples.length;
    }

    /** Probability that a sample times its rough scale is more than x. */
    private double sampleAbove(double sample, double x) {
        if (logDeviation == 0.0 || sample * x <= 0.0) {
            return sample > x ? 1.0 : 0.0;
        }
        double farther = NormalLaw.upperTail(StrictMath.log(x / sample) / logDeviation);
        return x > 0.0 ? farther : 1.0 - farther;
    }

    /** Variance at the scale's median. */
    double variance() {
        return about.variance();
    }

    /** How many times its scale it may be. */
    double widest() {
        return StrictMath.exp(LogScales.REACH * logDeviation);
    }

    /** An error it all but never passes, if its scale is as given. */
    double end() {
        return law == Law.NORMAL ? NORMAL_REACH * scale : scale;
    }

    /**
     * Of Student's law: from here on a tail of the sum is that of this error alone, but for {@link #LEFT_OUT}; the rest, of
     * variance V, adds the share {@code n (n + 1)/2 V/x^2}.
     *
     * @param sd of the sum
     */
    double studentReach(double sd) {
        double q = Math.max(NORMAL_REACH, 4.0 * sd / scale);
        double most = MOST_STUDENT * Math.max(1.0, sd / scale);
        while (q < most
                && StudentLaw.upperTail(q, degrees)
                                * Math.min(1.0, 0.5 * degrees * (degrees + 1.0) * square(sd / (q * scale)))
                        > LEFT_OUT) {
            q *= 1.1;
        }
        return q * scale * widest();
    }

    /** Probability of more than x, of Student's law. */
    double studentTail(double x) {
        LogScales scales = LogScales.of(logDeviation, Double.POSITIVE_INFINITY, 0.0);
        double sum = 0.0;
        for (int j = 0; j < scales.factor().length; j++) {
            sum += scales.weight()[j] * StudentLaw.upperTail(x / (scale * scales.factor()[j]), degrees);
        }
        return sum;
    }

    private static double square(double x) {
        return x * x;
    }

    /** Adds to two variances and to two ends: as wide as it may be together with others, and what one may be wider still. */
    void addTo(double[] sums, double times, double square) {
        double together = StrictMath.exp(TOGETHER * logDeviation);
        double proxy = times * times * square;
        sums[0] += proxy * together * together;
        sums[1] = Math.max(sums[1], proxy * (widest() * widest() - together * together));
        sums[2] += times * end() * together;
        sums[3] = Math.max(sums[3], times * end() * (widest() - together));
    }

    /**
     * Multiplies numbers by the characteristic function of a symmetric error at {@code (k + 1/2) step}, k from {@code from}
     * on.
     */
    void multiply(double step, int from, double[] re) {
        LogScales scales = scales(step * (from + re.length));
        double[] sum = new double[re.length];
        switch (law) {
            case NORMAL -> bells(scales, step, from, sum);
            case TRIANGULAR -> sincs(scales, 0.5 * scale * step, 0.5 * scale * step, from, sum);
            case TRAPEZOIDAL -> sincs(scales, 0.5 * (scale + top) * step, 0.5 * (scale - top) * step, from, sum);
            case ARCSINE -> swings(scales, step, from, sum);
            default -> sincs(scales, scale * step, 0.0, from, sum);
        }
        for (int k = 0; k < re.length; k++) {
            re[k] *= sum[k];
        }
    }

    private LogScales scales(double last) {
        return LogScales.of(logDeviation, degrees, law == Law.NORMAL ? 0.0 : scale * last);
    }

    /**
     * Normal: {@code exp(-(a t)^2/2)}, each from the one before by the quotient of the two, which falls evenly itself; afresh
     * now and then, as the rounding grows with the square of the terms.
     */
    private void bells(LogScales scales, double step, int from, double[] sum) {
        for (int j = 0; j < scales.factor().length; j++) {
            double a = scales.factor()[j] * scale * step;
            double fall = StrictMath.exp(-a * a);
            double bell = 1.0;
            for (int start = 0; start < sum.length && bell > NOTHING; start += AFRESH) {
                bell = scales.weight()[j] * StrictMath.exp(-0.5 * square(a * (from + start + 0.5)));
                double quotient = StrictMath.exp(-a * a * (from + start + 1.0));
                int end = Math.min(sum.length, start + AFRESH);
                for (int k = start; k < end && bell > NOTHING; k++) {
                    sum[k] += bell;
                    bell *= quotient;
                    quotient *= fall;
                }
            }
        }
    }

    /** Two rectangles, {@code sin(a t)/(a t) sin(b t)/(b t)}, or one where b is nothing. */
    private static void sincs(LogScales scales, double a, double b, int from, double[] sum) {
        int m = scales.factor().length;
        Turn one = new Turn(scales.factor(), a, from + 0.5);
        double[] weight = new double[m];
        for (int j = 0; j < m; j++) {
            weight[j] = scales.weight()[j] / (a * scales.factor()[j]) / (b > 0.0 ? b * scales.factor()[j] : 1.0);
        }
        if (b == 0.0) {
            for (int k = 0; k < sum.length; k++) {
                sum[k] = one.sines(weight) / (from + k + 0.5);
                one.next();
            }
        } else if (b == a) {
            for (int k = 0; k < sum.length; k++) {
                sum[k] = one.products(one, weight) / square(from + k + 0.5);
                one.next();
            }
        } else {
            Turn two = new Turn(scales.factor(), b, from + 0.5);
            for (int k = 0; k < sum.length; k++) {
                sum[k] = one.products(two, weight) / square(from + k + 0.5);
                one.next();
                two.next();
            }
        }
    }

    /** Arcsine: {@code J0(a t)}. */
    private void swings(LogScales scales, double step, int from, double[] sum) {
        for (int j = 0; j < scales.factor().length; j++) {
            double a = scales.factor()[j] * scale * step;
            for (int k = 0; k < sum.length; k++) {
                sum[k] += scales.weight()[j] * Bessel.j0(a * (from + k + 0.5));
            }
        }
    }

    /** Multiplies complex numbers by the characteristic function of samples. */
    void multiply(double step, int from, double[] re, double[] im) {
        LogScales scales = scales(step * (from + re.length));
        int m = scales.factor().length;
        double[] all = new double[m * samples.length];
        double[] weight = new double[all.length];
        for (int i = 0; i < samples.length; i++) {
            for (int j = 0; j < m; j++) {
                all[i * m + j] = samples[i] * scales.factor()[j];
                weight[i * m + j] = scales.weight()[j] / samples.length;
            }
        }
        Turn turn = new Turn(all, step, from + 0.5);
        for (int k = 0; k < re.length; k++) {
            double cos = turn.cosines(weight);
            double sin = turn.sines(weight);
            double real = re[k] * cos - im[k] * sin;
            im[k] = re[k] * sin + im[k] * cos;
            re[k] = real;
            turn.next();
        }
    }

    /** Many angles that turn by steps of their own. */
    static final class Turn {

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
}
