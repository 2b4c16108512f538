package org.neckgeom.numeric;

import org.neckgeom.fault.Refusal;

/**
 * Student's t law for any number of degrees of freedom above 0, such as {@code quantile(0.975, 4) = 2.776}; infinite
 * degrees of freedom give the normal law.
 *
 * <p>The probability is an incomplete beta function: a series of positive terms about the middle, a continued fraction
 * in the tail (NIST Digital Library of Mathematical Functions, 8.17.8 and 8.17.22).
 */
public final class StudentLaw {

    /**
     * Largest relative error, down to probabilities of 1e-285; quantiles lose a factor 1/n under one degree of freedom.
     */
    public static final double RELATIVE_ACCURACY = 1e-13;

    /** Terms in {@code 1/a, 1/a^3, ...} of {@code ln(Gamma(a + 1/2) / (sqrt(a) Gamma(a)))}. */
    private static final double[] GAMMA_RATIO = {
        -1.0 / 8.0, 1.0 / 192.0, -1.0 / 640.0, 17.0 / 14336.0, -31.0 / 18432.0, 691.0 / 180224.0, -5461.0 / 425984.0
    };

    /** Power series of {@code sqrt(w / (1 - exp(-w)))}. */
    private static final double[] STRETCH = {
        1.0,
        0.25,
        0.010416666666666666,
        -0.0026041666666666665,
        -9.765625e-05,
        5.154079861111111e-05,
        1.2756024718915344e-06,
        -1.110097087880291e-06,
        -1.9670584004181822e-08,
        2.4836319884715677e-08,
        3.3966619960386745e-10,
        -5.690071833942187e-10,
        -6.3372301556671304e-12,
        1.3251315155878903e-11,
        1.2468358960996804e-13
    };

    /** From here on the tail is a normal law with corrections; the continued fraction would lose digits. */
    private static final double LARGE_FROM = 1000.0;

    /** Above this many degrees of freedom the law differs from the normal by less than its rounding, over 38 sigma. */
    private static final double NORMAL_FROM = 1e22;

    private StudentLaw() {}

    /**
     * {@return the density at t; 0 or more}
     *
     * <p>{@code Gamma((n+1)/2) / (sqrt(n pi) Gamma(n/2)) (1 + t*t/n)^(-(n+1)/2)}. Exact.
     *
     * @param t any number
     * @param degreesOfFreedom n, more than 0, may be infinity
     * @throws IllegalArgumentException if {@code degreesOfFreedom} is not more than 0
     */
    public static double density(double t, double degreesOfFreedom) {
        double n = checked(degreesOfFreedom);
        return n >= NORMAL_FROM ? NormalLaw.density(t) : StrictMath.exp(logDensity(Math.abs(t), n));
    }

    /**
     * {@return the probability of a value up to t; in [0, 1]; NaN if t is NaN} Exact.
     *
     * @param t any number, infinities too
     * @param degreesOfFreedom more than 0, may be infinity
     * @throws IllegalArgumentException if {@code degreesOfFreedom} is not more than 0
     */
    public static double cdf(double t, double degreesOfFreedom) {
        double n = checked(degreesOfFreedom);
        if (n >= NORMAL_FROM) {
            return NormalLaw.cdf(t);
        }
        return t <= 0.0 ? tail(-t, n) : 1.0 - tail(t, n);
    }

    /**
     * {@return the probability of a value above t, with full relative accuracy however small it is; in [0, 1]; NaN if t
     * is NaN} Exact.
     *
     * @param t any number, infinities too
     * @param degreesOfFreedom more than 0, may be infinity
     * @throws IllegalArgumentException if {@code degreesOfFreedom} is not more than 0
     */
    public static double upperTail(double t, double degreesOfFreedom) {
        return cdf(-t, degreesOfFreedom);
    }

    /**
     * {@return the value that is not exceeded with probability p; the quantile; negative infinity at 0, infinity at 1
     * and where it passes the largest double} Exact.
     *
     * @param p probability, in [0, 1]
     * @param degreesOfFreedom more than 0, may be infinity
     * @throws IllegalArgumentException if p is outside [0, 1], or {@code degreesOfFreedom} is not more than 0
     */
    public static double quantile(double p, double degreesOfFreedom) {
        double n = checked(degreesOfFreedom);
        if (!(p >= 0.0 && p <= 1.0)) {
            throw Refusal.of("p", "range", "be in [0, 1]", p);
        }
        if (n >= NORMAL_FROM) {
            return NormalLaw.quantile(p);
        }
        double size = size(Math.abs(p - 0.5), Math.min(p, 1.0 - p), n);
        return p < 0.5 ? -size : size;
    }

    /**
     * {@return the factor k for which a value lies in [-k, k] with probability p: the coverage factor of an expanded
     * uncertainty (JCGM 100:2008, G.3); 0 or more; infinity at 1} Exact.
     *
     * @param p probability, in [0, 1]
     * @param degreesOfFreedom more than 0, may be infinity
     * @throws IllegalArgumentException if p is outside [0, 1], or {@code degreesOfFreedom} is not more than 0
     */
    public static double coverageFactor(double p, double degreesOfFreedom) {
        double n = checked(degreesOfFreedom);
        if (n >= NORMAL_FROM) {
            return NormalLaw.coverageFactor(p);
        }
        if (!(p >= 0.0 && p <= 1.0)) {
            throw Refusal.of("p", "range", "be in [0, 1]", p);
        }
        return size(0.5 * p, 0.5 * (1.0 - p), n);
    }

    private static double checked(double degreesOfFreedom) {
        if (!(degreesOfFreedom > 0.0)) {
            throw Refusal.of("degreesOfFreedom", "more-than", "be more than 0", degreesOfFreedom);
        }
        return degreesOfFreedom;
    }

    /** Probability above t, for t of 0 or more. */
    private static double tail(double t, double n) {
        if (t == Double.POSITIVE_INFINITY) {
            return 0.0;
        }
        // About the middle the complement is exact enough; further out it would lose the tail's digits.
        if (t < middle(n)) {
            return 0.5 - fromMiddle(t, n);
        }
        return n < LARGE_FROM ? 0.5 * tailByFraction(t, n) : tailNearNormal(t, n);
    }

    /**
     * With {@code u*u = n ln(1 + t*t/n)} the tail is {@code f(0)} times the integral from u of
     * {@code exp(-v*v/2) sqrt(w / (1 - exp(-w)))}, {@code w = v*v/n}, taken power by power of w.
     */
    private static double tailNearNormal(double t, double n) {
        double uu = n * StrictMath.log1p((t / n) * t);
        double u = Math.sqrt(uu);
        double height = StrictMath.exp(logHeight(n));
        double edge = u * NormalLaw.density(u) / n;
        double moment = NormalLaw.upperTail(u);
        double sum = moment;
        for (int k = 1; k < STRETCH.length; k++) {
            moment = edge + (2.0 * k - 1.0) / n * moment;
            edge *= uu / n;
            sum += STRETCH[k] * moment;
        }
        return height / NormalLaw.density(0.0) * sum;
    }

    /** Where the series about the middle hands over to the continued fraction. */
    private static double middle(double n) {
        return Math.min(1.25, Math.sqrt(2.0 * n));
    }

    private static double size(double fromMiddle, double above, double n) {
        return fromMiddle <= fromMiddle(middle(n), n) ? middleQuantile(fromMiddle, n) : tailQuantile(above, n);
    }

    /** Probability between 0 and t: {@code t f(t) sum ((n+1)/2)_k / (3/2)_k y^k}, {@code y = t*t/(n + t*t)}. */
    private static double fromMiddle(double t, double n) {
        double y = t * t / (n + t * t);
        double term = 1.0;
        double sum = 1.0;
        for (int k = 0; term > 1e-17 * sum; k++) {
            term *= y * (0.5 * (n + 1.0) + k) / (1.5 + k);
            sum += term;
        }
        return t * StrictMath.exp(logDensity(t, n)) * sum;
    }

    /** {@code I_x(n/2, 1/2)}, {@code x = n/(n + t*t)}, by Lentz's rule for the continued fraction of DLMF 8.17.22. */
    private static double tailByFraction(double t, double n) {
        double a = 0.5 * n;
        double x = 1.0 / (1.0 + (t / n) * t);
        double c = 1.0;
        double d = 1.0 / (1.0 - (a + 0.5) / (a + 1.0) * x);
        double f = d;
        for (int m = 1; m < 100_000; m++) {
            double even = m * (0.5 - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
            d = 1.0 / (1.0 + even * d);
            c = 1.0 + even / c;
            f *= c * d;
            double odd = -(a + m) * (a + 0.5 + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
            d = 1.0 / (1.0 + odd * d);
            c = 1.0 + odd / c;
            double step = c * d;
            f *= step;
            if (Math.abs(step - 1.0) < 2e-16) {
                break;
            }
        }
        // x^a (1-x)^(1/2) / (a B(a, 1/2)) is 2 t f(t) / n, without a gamma function of its own.
        return 2.0 * StrictMath.exp(logDensity(t, n) + StrictMath.log(t / n)) * f;
    }

    private static double logDensity(double t, double n) {
        double ratio = (t / n) * t;
        double log = ratio < 1e300 ? StrictMath.log1p(ratio) : 2.0 * StrictMath.log(t) - StrictMath.log(n);
        return logHeight(n) - 0.5 * (n + 1.0) * log;
    }

    /** {@code ln f(0) = ln(Gamma(a + 1/2) / (Gamma(a) sqrt(2 a pi)))}, {@code a = n/2}: steps up to 16, then a series. */
    private static double logHeight(double n) {
        double a = 0.5 * n;
        double steps = 1.0 / Math.sqrt(a);
        double b = a;
        while (b < 16.0) {
            steps *= b / (b + 0.5);
            b += 1.0;
        }
        double w = 1.0 / (b * b);
        double series = 0.0;
        for (int i = GAMMA_RATIO.length - 1; i >= 0; i--) {
            series = series * w + GAMMA_RATIO[i];
        }
        return StrictMath.log(steps * Math.sqrt(b) / Math.sqrt(2.0 * Math.PI)) + series / b;
    }

    /**
     * The t with the given probability between 0 and t; the probability bends down in t, so Newton's steps climb to it.
     */
    private static double middleQuantile(double probability, double n) {
        double t = probability / StrictMath.exp(logHeight(n));
        for (int i = 0; i < 60; i++) {
            double step = (probability - fromMiddle(t, n)) / StrictMath.exp(logDensity(t, n));
            t += step;
            if (!(Math.abs(step) > 1e-15 * t)) {
                break;
            }
        }
        return t;
    }

    /** The t with the given probability above it, by Newton's steps on the logarithms of both. */
    private static double tailQuantile(double probability, double n) {
        if (probability == 0.0) {
            return Double.POSITIVE_INFINITY;
        }
        double logChance = StrictMath.log(probability);
        double power = (logHeight(n) + 0.5 * (n - 1.0) * StrictMath.log(n) - logChance) / n;
        double z = -NormalLaw.quantile(probability);
        double nearNormal = z + z * (z * z + 1.0) / (4.0 * n);
        double s = n > 2.0 ? Math.min(power, StrictMath.log(nearNormal)) : power;
        if (s > 709.0) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < 100; i++) {
            double t = StrictMath.exp(s);
            double above = tail(t, n);
            double slope = -StrictMath.exp(logDensity(t, n) + s) / above;
            double step = (logChance - StrictMath.log(above)) / slope;
            s += Math.max(-1.0, Math.min(1.0, step));
            if (!(Math.abs(step) > 4e-16 * Math.max(1.0, Math.abs(s)))) {
                break;
            }
        }
        return StrictMath.exp(s);
    }
}
