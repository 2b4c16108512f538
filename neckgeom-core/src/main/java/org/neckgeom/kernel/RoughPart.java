package org.neckgeom.kernel;

import java.util.Arrays;
import java.util.function.Supplier;
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

    /** A logarithm all but never passes so many standard deviations. */
    private static final double FAR = 8.5;

    private static final int PANELS = 24;

    private static final int AFRESH = 256;
    private static final double NOTHING = 1e-18;

    private final SpreadLaw about;
    private final Law law;
    private final double scale;
    private final double top;
    private final double[] samples;
    private final double logDeviation;
    private final double degrees;
    private final Supplier<LogScales> bells;

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
        this.bells = new Once<>(() -> LogScales.normal(logDeviation, degrees));
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

    /** Probability of more than high or less than low, of this error alone: without a series. */
    double outside(double low, double high) {
        return above(high, 1.0) + above(-low, -1.0);
    }

    private double above(double x, double sign) {
        if (isStudent()) {
            return studentTail(x);
        }
        if (isSamples()) {
            return Arrays.stream(samples)
                            .map(sample -> sampleAbove(sign * sample, x))
                            .sum()
                    / samples.length;
        }
        if (logDeviation == 0.0 || x == 0.0) {
            return about.above(x + about.mean());
        }
        return x > 0.0 ? averaged(x) : 1.0 - averaged(-x);
    }

    /** Mean of the tail over the scale, from the scales on at which the law's corners pass x; there a root may begin. */
    private double averaged(double x) {
        double[] ends = {-FAR, passing(scale, x), passing(top, x), FAR};
        double sum = 0.0;
        for (int i = 1; i < ends.length; i++) {
            double from = ends[i - 1];
            sum += TenPoints.integral(
                    root -> {
                        double z = from + root * root;
                        double tail = about.above(x * StrictMath.exp(-logDeviation * z) + about.mean());
                        return 2.0 * root * NormalLaw.density(z) * tail;
                    },
                    0.0,
                    Math.sqrt(ends[i] - from),
                    PANELS);
        }
        return sum;
    }

    /** Standard deviations of the scale's logarithm at which a corner of the law passes x. */
    private double passing(double corner, double x) {
        double z = StrictMath.log(x / corner) / logDeviation;
        return Math.max(-FAR, Math.min(FAR, z));
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
        LogScales scales = LogScales.normal(logDeviation, Double.POSITIVE_INFINITY);
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
        GuessedWaves guessed = isStudent() ? null : GuessedWaves.of(law, logDeviation);
        if (guessed != null) {
            guessed.multiply(scale * step, from, re);
            return;
        }
        double[] sum = new double[re.length];
        switch (law) {
            case NORMAL -> bells(bells.get(), step, from, sum);
            case RECTANGULAR -> sincs(scale * step, from, sum);
            case ARCSINE -> swings(step, from, sum);
            default -> products(step, from, sum);
        }
        for (int k = 0; k < re.length; k++) {
            re[k] *= sum[k];
        }
    }

    private LogScales waves(double step, int from, int count) {
        return LogScales.waves(logDeviation, scale * step * (from + count), from == 0);
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

    /** Rectangular: {@code sin(a t)/(a t)}. */
    private void sincs(double a, int from, double[] sum) {
        int n = sum.length;
        LogScales scales = waves(a / scale, from, n);
        double[] weight = scales.waveWeights(a * (from + n)).clone();
        for (int j = 0; j < weight.length; j++) {
            weight[j] /= a * scales.factor()[j];
        }
        Turn turn = new Turn(scales.factor(), a, from + 0.5);
        for (int k = 0; k < n; k++) {
            sum[k] = turn.sines(weight) / (from + k + 0.5);
            turn.next();
        }
    }

    /**
     * Trapezoidal: {@code sin(a t)/(a t) sin(b t)/(b t)}, half base a + b, half top a - b; {@code sin(a t) sin(b t)} is
     * {@code (cos((a - b) t) - cos((a + b) t))/2}, two waves of their own.
     */
    private void products(double step, int from, double[] sum) {
        int n = sum.length;
        double a = 0.5 * (scale + top) * step;
        double b = 0.5 * (scale - top) * step;
        LogScales scales = waves(step, from, n);
        double[] fast = scales.waveWeights(scale * step * (from + n)).clone();
        double[] slow = scales.waveWeights(top * step * (from + n)).clone();
        for (int j = 0; j < fast.length; j++) {
            double square = a * b * scales.factor()[j] * scales.factor()[j];
            slow[j] = 0.5 * (slow[j] - fast[j]) / square;
            fast[j] /= square;
        }
        Turn one = new Turn(scales.factor(), a, from + 0.5);
        Turn two = top == 0.0 ? one : new Turn(scales.factor(), b, from + 0.5);
        Turn between = new Turn(scales.factor(), top * step, from + 0.5);
        boolean both = !Double.isInfinite(scales.fastest());
        for (int k = 0; k < n; k++) {
            double sines = one.products(two, fast) + (both ? between.cosines(slow) : 0.0);
            sum[k] = sines / square(from + k + 0.5);
            one.next();
            if (top > 0.0) {
                two.next();
                between.next();
            }
        }
    }

    /** Arcsine: {@code J0(a t)}. */
    private void swings(double step, int from, double[] sum) {
        LogScales scales = waves(step, from, sum.length);
        double[] weight = scales.waveWeights(scale * step * (from + sum.length));
        for (int j = 0; j < weight.length; j++) {
            double a = scales.factor()[j] * scale * step;
            for (int k = 0; k < sum.length && weight[j] > NOTHING; k++) {
                sum[k] += weight[j] * Bessel.j0(a * (from + k + 0.5));
            }
        }
    }

    /** Multiplies complex numbers by the characteristic function of samples. */
    void multiply(double step, int from, double[] re, double[] im) {
        LogScales scales = waves(step, from, re.length);
        int m = scales.factor().length;
        double[] all = new double[m * samples.length];
        double[] weight = new double[all.length];
        for (int i = 0; i < samples.length; i++) {
            double[] wave = scales.waveWeights(Math.abs(samples[i]) * step * (from + re.length));
            for (int j = 0; j < m; j++) {
                all[i * m + j] = samples[i] * scales.factor()[j];
                weight[i * m + j] = wave[j] / samples.length;
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
}
