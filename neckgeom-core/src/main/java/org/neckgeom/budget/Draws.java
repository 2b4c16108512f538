package org.neckgeom.budget;

import org.neckgeom.kernel.Mix;
import org.neckgeom.numeric.NormalLaw;

/**
 * Draws of one block of trials: xoshiro256++ (D. Blackman and S. Vigna, ACM Transactions on Mathematical Software 47,
 * 2021), seeded from a seed and the block's number, so that a block holds the same trials whichever thread draws it.
 *
 * <p>Each method adds one part to a whole block; the state is held in locals meanwhile, for speed.
 */
final class Draws {

    private static final double UNIT = 0x1p-53;

    /** The bits of a number in [1, 2) but for its fraction: faster than turning a long into a double. */
    private static final long ONE_AND = 0x3FF0000000000000L;

    private static final int LAYERS = 256;
    private static final double RIGHTMOST = 3.6541528853610088;
    private static final double AREA =
            RIGHTMOST * bell(RIGHTMOST) + Math.sqrt(2.0 * Math.PI) * NormalLaw.upperTail(RIGHTMOST);
    private static final double[] EDGE = new double[LAYERS + 1];
    private static final double[] HEIGHT = new double[LAYERS + 1];
    /** Twice the edges, as the fraction drawn is at most half of 1 either side of 0. */
    private static final double[] SCALE = new double[LAYERS];

    static {
        // Marsaglia and Tsang's ziggurat (Journal of Statistical Software 5, 2000) of 256 layers of equal area.
        EDGE[0] = AREA / bell(RIGHTMOST);
        EDGE[1] = RIGHTMOST;
        for (int i = 2; i < LAYERS; i++) {
            EDGE[i] = Math.sqrt(-2.0 * StrictMath.log(AREA / EDGE[i - 1] + bell(EDGE[i - 1])));
        }
        EDGE[LAYERS] = 0.0;
        for (int i = 0; i <= LAYERS; i++) {
            HEIGHT[i] = bell(EDGE[i]);
        }
        for (int i = 0; i < LAYERS; i++) {
            SCALE[i] = 2.0 * EDGE[i];
        }
    }

    private long a;
    private long b;
    private long c;
    private long d;

    /** Four words of SplitMix64's stream to a block, so that no two blocks share one. */
    Draws(long seed, long block) {
        long z = Mix.of(seed) + 4 * block * 0x9E3779B97F4A7C15L;
        a = Mix.of(z += 0x9E3779B97F4A7C15L);
        b = Mix.of(z += 0x9E3779B97F4A7C15L);
        c = Mix.of(z += 0x9E3779B97F4A7C15L);
        d = Mix.of(z + 0x9E3779B97F4A7C15L);
    }

    long next() {
        long result = Long.rotateLeft(a + d, 23) + a;
        long t = b << 17;
        c ^= a;
        d ^= b;
        b ^= c;
        a ^= d;
        c ^= t;
        d = Long.rotateLeft(d, 45);
        return result;
    }

    /** A number in [0, 1). */
    double unit() {
        return (next() >>> 11) * UNIT;
    }

    void addNormal(double[] out, int n, double sd) {
        long s0 = a;
        long s1 = b;
        long s2 = c;
        long s3 = d;
        for (int i = 0; i < n; i++) {
            long bits = Long.rotateLeft(s0 + s3, 23) + s0;
            long t = s1 << 17;
            s2 ^= s0;
            s3 ^= s1;
            s1 ^= s2;
            s0 ^= s3;
            s2 ^= t;
            s3 = Long.rotateLeft(s3, 45);
            int layer = (int) bits & (LAYERS - 1);
            double x = (Double.longBitsToDouble(ONE_AND | bits >>> 12) - 1.5) * SCALE[layer];
            if (Math.abs(x) >= EDGE[layer + 1]) {
                a = s0;
                b = s1;
                c = s2;
                d = s3;
                x = besideTheCore(x, layer);
                s0 = a;
                s1 = b;
                s2 = c;
                s3 = d;
            }
            out[i] += sd * x;
        }
        a = s0;
        b = s1;
        c = s2;
        d = s3;
    }

    private double besideTheCore(double first, int firstLayer) {
        double x = first;
        int layer = firstLayer;
        while (true) {
            double size = Math.abs(x);
            if (size < EDGE[layer + 1]) {
                return x;
            }
            if (layer == 0) {
                return Math.copySign(tail(), x);
            }
            if (HEIGHT[layer] + unit() * (HEIGHT[layer + 1] - HEIGHT[layer]) < bell(size)) {
                return x;
            }
            long bits = next();
            layer = (int) bits & (LAYERS - 1);
            x = (Double.longBitsToDouble(ONE_AND | bits >>> 12) - 1.5) * SCALE[layer];
        }
    }

    private double tail() {
        while (true) {
            double x = -StrictMath.log(1.0 - unit()) / RIGHTMOST;
            double y = -StrictMath.log(1.0 - unit());
            if (2.0 * y > x * x) {
                return RIGHTMOST + x;
            }
        }
    }

    private static double bell(double x) {
        return StrictMath.exp(-0.5 * x * x);
    }

    void addRectangle(double[] out, int n, double halfWidth) {
        double scale = 2.0 * halfWidth;
        long s0 = a;
        long s1 = b;
        long s2 = c;
        long s3 = d;
        for (int i = 0; i < n; i++) {
            long bits = Long.rotateLeft(s0 + s3, 23) + s0;
            long t = s1 << 17;
            s2 ^= s0;
            s3 ^= s1;
            s1 ^= s2;
            s0 ^= s3;
            s2 ^= t;
            s3 = Long.rotateLeft(s3, 45);
            out[i] += scale * (Double.longBitsToDouble(ONE_AND | bits >>> 12) - 1.5);
        }
        a = s0;
        b = s1;
        c = s2;
        d = s3;
    }

    void addArcsine(double[] out, int n, double halfWidth) {
        for (int i = 0; i < n; i++) {
            double x;
            double y;
            double square;
            do {
                x = unit();
                y = unit();
                x *= x;
                y *= y;
                square = x + y;
            } while (square >= 1.0 || square == 0.0);
            // The cosine of twice a random angle.
            out[i] += halfWidth * ((x - y) / square);
        }
    }

    void addSamples(double[] out, int n, double[] samples) {
        for (int i = 0; i < n; i++) {
            out[i] += samples[(int) (unit() * samples.length)];
        }
    }

    /** A normal part over the root of a chi-square by its degrees of freedom; gamma by G. Marsaglia and W. Tsang, 2000. */
    void addStudent(double[] out, int n, double scale, double degreesOfFreedom) {
        double[] normal = new double[1];
        double shape = 0.5 * degreesOfFreedom + (degreesOfFreedom < 2.0 ? 1.0 : 0.0);
        double e = shape - 1.0 / 3.0;
        double f = 1.0 / Math.sqrt(9.0 * e);
        for (int i = 0; i < n; i++) {
            double gamma;
            while (true) {
                normal[0] = 0.0;
                addNormal(normal, 1, 1.0);
                double v = 1.0 + f * normal[0];
                if (v <= 0.0) {
                    continue;
                }
                v = v * v * v;
                double bound = 0.5 * normal[0] * normal[0] + e * (1.0 - v + StrictMath.log(v));
                if (StrictMath.log(1.0 - unit()) < bound) {
                    gamma = e * v;
                    break;
                }
            }
            if (degreesOfFreedom < 2.0) {
                gamma *= StrictMath.pow(1.0 - unit(), 2.0 / degreesOfFreedom);
            }
            normal[0] = 0.0;
            addNormal(normal, 1, 1.0);
            out[i] += scale * normal[0] / Math.sqrt(2.0 * gamma / degreesOfFreedom);
        }
    }
}
