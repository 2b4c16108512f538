package org.neckgeom.strength;

import org.neckgeom.fault.Refusal;

/**
 * The gamma and beta functions for the arguments the area of a superellipse needs.
 *
 * <p>{@code 1/gamma} has no singularity, so its Taylor series about 1.5 converges fast on {@code [1, 2]}; other arguments
 * come there by {@code gamma(z + 1) = z gamma(z)}. Relative error below 1e-14.
 */
final class GammaFunction {

    /** Coefficients of {@code 1/gamma(1.5 + t)} in powers of t, computed with 60 digits by mpmath 1.3.0. */
    private static final double[] RECIPROCAL = {
        1.1283791670955125739,
        -0.04117452644528310145,
        -0.52665443552554447926,
        0.1751020260439345615,
        0.050966860247706076775,
        -0.042155169368535600993,
        0.0066128978268241272766,
        0.002120731442572938336,
        -0.0011107302545948907171,
        0.00015235762076747687217,
        0.000025355204923814165278,
        -0.000013896805717913756022,
        2.1562032905141724535e-6,
        5.7942640540526725042e-8,
        -8.9135511183111160541e-8,
        1.7103469415915373749e-8,
        -9.3136864452419015685e-10,
        -2.6804741033496625565e-10,
        7.4589322333163260507e-11,
        -8.0128070614147183709e-12
    };

    private GammaFunction() {}

    /**
     * Returns {@code gamma(z)}.
     *
     * @param z argument in {@code (0, 100]}
     */
    static double gamma(double z) {
        if (!(z > 0 && z <= 100)) {
            throw Refusal.of("argument of gamma", "range", "be in (0, 100]", z);
        }
        double factor = 1;
        double reduced = z;
        while (reduced > 2) {
            reduced -= 1;
            factor *= reduced;
        }
        if (reduced < 1) {
            factor /= reduced;
            reduced += 1;
        }
        double t = reduced - 1.5;
        double sum = 0;
        for (int i = RECIPROCAL.length - 1; i >= 0; i--) {
            sum = sum * t + RECIPROCAL[i];
        }
        return factor / sum;
    }

    /** Returns {@code beta(u, v) = gamma(u) gamma(v)/gamma(u + v)}. */
    static double beta(double u, double v) {
        return gamma(u) * gamma(v) / gamma(u + v);
    }
}
