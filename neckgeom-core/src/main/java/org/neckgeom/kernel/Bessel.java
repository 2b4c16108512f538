package org.neckgeom.kernel;

/** The Bessel function J0, which is the characteristic function of an arcsine error. */
public final class Bessel {

    /** From here on Hankel's expansion reaches double accuracy. */
    private static final double FAR = 25.0;

    private Bessel() {}

    /**
     * Returns {@code J0(x)} to 4e-16 absolute: Miller's backward recurrence below 25, Hankel's expansion above (NIST
     * Digital Library of Mathematical Functions, 10.74(iv) and 10.17.3).
     */
    public static double j0(double x) {
        double size = Math.abs(x);
        return size < FAR ? backward(size) : hankel(size);
    }

    private static double backward(double x) {
        if (x < 1e-8) {
            return 1.0 - 0.25 * x * x;
        }
        int start = 2 * ((int) (0.5 * x * 1.4) + 16);
        double twoOverX = 2.0 / x;
        double above = 0.0;
        // From 1e-8 on the 32 steps or more make it 1e51 at most.
        double here = 1e-250;
        double sum = 0.0;
        for (int n = start; n > 0; n--) {
            double below = n * twoOverX * here - above;
            above = here;
            here = below;
            if ((n - 1) % 2 == 0) {
                sum += n == 1 ? here : 2.0 * here;
            }
        }
        return here / sum;
    }

    private static double hankel(double x) {
        double term = 1.0;
        double p = 1.0;
        double q = 0.0;
        double over = 1.0 / (8.0 * x);
        for (int k = 1; k < 60; k++) {
            double odd = 2.0 * k - 1.0;
            double next = -term * odd * odd * over / k;
            if (Math.abs(next) < 1e-17 || Math.abs(next) > Math.abs(term)) {
                break;
            }
            term = next;
            // Signs run p: + - +, q: + - +, with a_k = ((-1)(-9)(-25)...)/(k! 8^k).
            switch (k % 4) {
                case 1 -> q += term;
                case 2 -> p -= term;
                case 3 -> q -= term;
                default -> p += term;
            }
        }
        double sin = StrictMath.sin(x);
        double cos = StrictMath.cos(x);
        // cos(x - pi/4) and sin(x - pi/4), without rounding x - pi/4.
        return Math.sqrt(1.0 / (Math.PI * x)) * (p * (cos + sin) - q * (sin - cos));
    }
}
