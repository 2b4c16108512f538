package org.neckgeom.numeric;

import org.neckgeom.fault.Refusal;

/**
 * The standard normal law, mean 0 and standard deviation 1, such as {@code cdf(1.96) = 0.975}.
 *
 * <p>Tails keep their relative accuracy: {@code upperTail(10)} is as good as {@code upperTail(1)}. The error function
 * is taken in W. J. Cody's three rational pieces (Rational Chebyshev approximations for the error function,
 * Mathematics of Computation 23, 1969), the quantile in M. J. Wichura's (Algorithm AS 241, Applied Statistics 37, 1988).
 */
public final class NormalLaw {

    /** Largest relative error of every method here, for results that are normal doubles. */
    public static final double RELATIVE_ACCURACY = 2e-15;

    private static final double SQRT_HALF = 0.7071067811865476;
    private static final double INVERSE_SQRT_PI = 0.5641895835477563;
    private static final double INVERSE_SQRT_TWO_PI = 0.3989422804014327;

    private static final double[] ERF_TOP = {
        1.85777706184603153e-1,
        3.16112374387056560e00,
        1.13864154151050156e02,
        3.77485237685302021e02,
        3.20937758913846947e03
    };
    private static final double[] ERF_BOTTOM = {
        1.0, 2.36012909523441209e01, 2.44024637934444173e02, 1.28261652607737228e03, 2.84423683343917062e03
    };
    private static final double[] MIDDLE_TOP = {
        2.15311535474403846e-8,
        5.64188496988670089e-1,
        8.88314979438837594e0,
        6.61191906371416295e01,
        2.98635138197400131e02,
        8.81952221241769090e02,
        1.71204761263407058e03,
        2.05107837782607147e03,
        1.23033935479799725e03
    };
    private static final double[] MIDDLE_BOTTOM = {
        1.0,
        1.57449261107098347e01,
        1.17693950891312499e02,
        5.37181101862009858e02,
        1.62138957456669019e03,
        3.29079923573345963e03,
        4.36261909014324716e03,
        3.43936767414372164e03,
        1.23033935480374942e03
    };
    private static final double[] FAR_TOP = {
        1.63153871373020978e-2,
        3.05326634961232344e-1,
        3.60344899949804439e-1,
        1.25781726111229246e-1,
        1.60837851487422766e-2,
        6.58749161529837803e-4
    };
    private static final double[] FAR_BOTTOM = {
        1.0,
        2.56852019228982242e00,
        1.87295284992346725e00,
        5.27905102951428412e-1,
        6.05183413124413191e-2,
        2.33520497626869185e-3
    };

    private static final double[] QUANTILE_TOP = {
        2.5090809287301226727e3,
        3.3430575583588128105e4,
        6.7265770927008700853e4,
        4.5921953931549871457e4,
        1.3731693765509461125e4,
        1.9715909503065514427e3,
        1.3314166789178437745e2,
        3.3871328727963666080e0
    };
    private static final double[] QUANTILE_BOTTOM = {
        5.2264952788528545610e3,
        2.8729085735721942674e4,
        3.9307895800092710610e4,
        2.1213794301586595867e4,
        5.3941960214247511077e3,
        6.8718700749205790830e2,
        4.2313330701600911252e1,
        1.0
    };
    private static final double[] TAIL_TOP = {
        7.74545014278341407640e-4,
        2.27238449892691845833e-2,
        2.41780725177450611770e-1,
        1.27045825245236838258e0,
        3.64784832476320460504e0,
        5.76949722146069140550e0,
        4.63033784615654529590e0,
        1.42343711074968357734e0
    };
    private static final double[] TAIL_BOTTOM = {
        1.05075007164441684324e-9,
        5.47593808499534494600e-4,
        1.51986665636164571966e-2,
        1.48103976427480074590e-1,
        6.89767334985100004550e-1,
        1.67638483018380384940e0,
        2.05319162663775882187e0,
        1.0
    };
    private static final double[] DEEP_TOP = {
        2.01033439929228813265e-7,
        2.71155556874348757815e-5,
        1.24266094738807843860e-3,
        2.65321895265761230930e-2,
        2.96560571828504891230e-1,
        1.78482653991729133580e0,
        5.46378491116411436990e0,
        6.65790464350110377720e0
    };
    private static final double[] DEEP_BOTTOM = {
        2.04426310338993978564e-15,
        1.42151175831644588870e-7,
        1.84631831751005468180e-5,
        7.86869131145613259100e-4,
        1.48753612908506148525e-2,
        1.36929880922735805310e-1,
        5.99832206555887937690e-1,
        1.0
    };

    private NormalLaw() {}

    /**
     * {@return the density at x; 0 or more; NaN for NaN}
     *
     * <p>{@code exp(-x*x/2) / sqrt(2 pi)}. Exact.
     *
     * @param x any number
     */
    public static double density(double x) {
        return INVERSE_SQRT_TWO_PI * bell(Math.abs(x));
    }

    /**
     * {@return the probability of a value up to x; in [0, 1]; NaN for NaN}
     *
     * <p>{@code Phi(x)}. Exact.
     *
     * @param x any number, infinities too
     */
    public static double cdf(double x) {
        return x <= 0.0 ? tail(-x) : 1.0 - tail(x);
    }

    /**
     * {@return the probability of a value above x, with full relative accuracy however small it is; in [0, 1]; NaN for
     * NaN}
     *
     * <p>{@code 1 - Phi(x)}. Exact.
     *
     * @param x any number, infinities too
     */
    public static double upperTail(double x) {
        return cdf(-x);
    }

    /**
     * {@return the probability of a value from {@code low} to {@code high}, each tail taken on its own side, so that a
     * narrow band far out is not lost; in [0, 1]; NaN if an end is NaN}
     *
     * <p>{@code Phi(high) - Phi(low)}. Exact.
     *
     * @param low lower end, may be negative infinity
     * @param high upper end, not below {@code low}, may be infinity
     * @throws IllegalArgumentException if {@code high} is below {@code low}
     */
    public static double between(double low, double high) {
        if (high < low) {
            throw Refusal.of("high", "at-least", "be at least low = " + low, high);
        }
        if (low > 0.0) {
            return tail(low) - tail(high);
        }
        if (high < 0.0) {
            return tail(-high) - tail(-low);
        }
        return fromMiddle(high) + fromMiddle(-low);
    }

    /**
     * {@return the value that is not exceeded with probability p; the quantile; negative infinity at 0, infinity at 1}
     *
     * <p>{@code Phi^-1(p)}. Exact. For a small probability of exceeding q use {@code -quantile(q)}.
     *
     * @param p probability, in [0, 1]
     * @throws IllegalArgumentException if p is outside [0, 1] or not a number
     */
    public static double quantile(double p) {
        if (!(p >= 0.0 && p <= 1.0)) {
            throw Refusal.of("p", "range", "be in [0, 1]", p);
        }
        double q = p - 0.5;
        if (Math.abs(q) <= 0.425) {
            double r = 0.180625 - q * q;
            return q * polynomial(QUANTILE_TOP, r) / polynomial(QUANTILE_BOTTOM, r) + 0.0;
        }
        double small = q < 0.0 ? p : 1.0 - p;
        if (small == 0.0) {
            return Math.copySign(Double.POSITIVE_INFINITY, q);
        }
        double r = Math.sqrt(-StrictMath.log(small));
        double size = r <= 5.0
                ? polynomial(TAIL_TOP, r - 1.6) / polynomial(TAIL_BOTTOM, r - 1.6)
                : polynomial(DEEP_TOP, r - 5.0) / polynomial(DEEP_BOTTOM, r - 5.0);
        return Math.copySign(size, q);
    }

    /**
     * {@return the factor k for which a value lies within k standard deviations of the mean with probability p; 0 or
     * more; infinity at 1}
     *
     * <p>{@code Phi(k) - Phi(-k) = p}. Exact.
     *
     * @param p probability, in [0, 1]
     * @throws IllegalArgumentException if p is outside [0, 1] or not a number
     */
    public static double coverageFactor(double p) {
        if (!(p >= 0.0 && p <= 1.0)) {
            throw Refusal.of("p", "range", "be in [0, 1]", p);
        }
        if (p < 0.5) {
            double k = p / (2.0 * INVERSE_SQRT_TWO_PI);
            // The probability as a function of k bends down, so these Newton steps climb to k from below.
            for (int i = 0; i < 6; i++) {
                k += (0.5 * p - fromMiddle(k)) / density(k);
            }
            return k;
        }
        return -quantile(0.5 * (1.0 - p)) + 0.0;
    }

    /** Probability above x, for x of 0 or more. */
    private static double tail(double x) {
        double z = x * SQRT_HALF;
        if (z <= 0.46875) {
            return 0.5 - fromMiddle(x);
        }
        if (x > 39.0) {
            return 0.0;
        }
        double scaled;
        if (z <= 4.0) {
            scaled = polynomial(MIDDLE_TOP, z) / polynomial(MIDDLE_BOTTOM, z);
        } else {
            double w = 1.0 / (z * z);
            scaled = (INVERSE_SQRT_PI - w * polynomial(FAR_TOP, w) / polynomial(FAR_BOTTOM, w)) / z;
        }
        return 0.5 * scaled * bell(x);
    }

    /** Probability between 0 and x, for x of 0 or more. */
    private static double fromMiddle(double x) {
        double z = x * SQRT_HALF;
        if (!(z <= 0.46875)) {
            return 0.5 - tail(x);
        }
        return 0.5 * z * polynomial(ERF_TOP, z * z) / polynomial(ERF_BOTTOM, z * z);
    }

    /** {@code exp(-x*x/2)}; the square is split, as its rounding alone would cost digits in the tail. */
    private static double bell(double x) {
        if (x > 39.0) {
            return 0.0;
        }
        double coarse = Math.rint(x * 16.0) / 16.0;
        return StrictMath.exp(-0.5 * coarse * coarse) * StrictMath.exp(-0.5 * (x - coarse) * (x + coarse));
    }

    private static double polynomial(double[] fromHighest, double x) {
        double sum = fromHighest[0];
        for (int i = 1; i < fromHighest.length; i++) {
            sum = sum * x + fromHighest[i];
        }
        return sum;
    }
}
