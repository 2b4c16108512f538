package org.neckgeom.solid;

import org.jspecify.annotations.Nullable;
import org.neckgeom.kernel.Powers;
import org.neckgeom.kernel.TenPoints;

/**
 * One quarter of the curve {@code (y/a)^p + (z/b)^p = 1}, and distances to it, on plain doubles.
 *
 * <p>The exponent is fixed for an instance, the half axes come with each question. Points of the unit curve are laid
 * out once, so a question starts from the nearest of them without any power and ends with a few guarded Newton steps.
 * The transcendental functions are those of StrictMath, or of {@link Powers} where they are asked often: the same bits on
 * every machine.
 */
final class SuperellipseArc {

    /** Greatest error of {@link #distance} relative to the larger half axis; the tests hold it to this. */
    static final double ACCURACY = 1e-12;

    /** Least exponent: below 1 the curve is hollow and no longer a neck. */
    static final double LEAST_EXPONENT = 1;

    /** Greatest exponent: at 20 the curve is a box with corners hardly round. */
    static final double GREATEST_EXPONENT = 20;

    private static final int POINTS = 41;
    private static final int MIDDLE = POINTS / 2;
    private static final int STEPS = 60;
    private static final double NEAR = 1e-4;

    /** A distance changes with the square of so small a step. */
    private static final double STILL = 1e-8;

    private static final double TOWARD_END = 1e-4;
    private static final double AT_END = 1e-16;
    private static final double SHORT = 1e-7;

    private static final int TAYLOR_ROUNDS = 3;
    private static final int PANELS = 4;

    private final double p;
    private final double[] unitY = new double[POINTS];
    private final double[] unitZ = new double[POINTS];
    /** The first three derivatives of the other coordinate there, by the one that a foot near it is sought along; 0 at the ends. */
    private final double[] slopes = new double[POINTS];

    private final double[] bends = new double[POINTS];
    private final double[] thirds = new double[POINTS];
    /** The unit quarter's area, worked out at the first question: a whole volume asks a thousand times. */
    private final @Nullable Double[] area = new Double[1];

    SuperellipseArc(double p) {
        this.p = p;
        for (int i = 0; i < POINTS; i++) {
            double t = StrictMath.PI / 2 * i / (POINTS - 1);
            unitY[i] = i == POINTS - 1 ? 0.0 : StrictMath.pow(StrictMath.cos(t), 2 / p);
            unitZ[i] = StrictMath.pow(StrictMath.sin(t), 2 / p);
            double power = i == POINTS - 1 ? 0.0 : StrictMath.cos(t) * StrictMath.cos(t);
            if (i > 0 && i < POINTS - 1) {
                derive(i, i >= MIDDLE ? power : 1 - power);
            }
        }
    }

    /** Derives the curve at a point of the grid whose coordinate has the power s. */
    private void derive(int i, double s) {
        double t = i >= MIDDLE ? unitY[i] : unitZ[i];
        double w = i >= MIDDLE ? unitZ[i] : unitY[i];
        double rest = 1 - s;
        double k = (p - 1) / (t * rest);
        slopes[i] = -w * s / (t * rest);
        bends[i] = slopes[i] * k;
        thirds[i] = bends[i] * k - slopes[i] * k * (1 - (p + 1) * s) / (t * rest);
    }

    double exponent() {
        return p;
    }

    /**
     * Area under the unit quarter: {@code Gamma(1 + 1/p)^2 / Gamma(1 + 2/p)}, found as {@code 2 integral_0^c (1 - t^p)^(1/p) dt
     * - c^2} with {@code c = 2^(-1/p)}, as the curve is its own mirror about the diagonal; on that stretch it is smooth.
     */
    double unitArea() {
        Double known = area[0];
        if (known == null) {
            known = quadrature();
            area[0] = known;
        }
        return known;
    }

    private double quadrature() {
        double c = StrictMath.pow(2, -1 / p);
        return 2 * TenPoints.integral(t -> root(1 - power(t)), 0, c, PANELS) - c * c;
    }

    /** Half-width of the curve at depth z: {@code a (1 - (z/b)^p)^(1/p)}, 0 below the curve. */
    double halfWidthAt(double z, double a, double b) {
        return z >= b ? 0.0 : a * root(1 - power(z / b));
    }

    /** Depth of the curve at distance y from its middle: {@code b (1 - (y/a)^p)^(1/p)}, 0 outside. */
    double depthAt(double y, double a, double b) {
        return y >= a ? 0.0 : b * root(1 - power(y / a));
    }

    /**
     * {@return the signed distance from a point to this quarter: positive inside the curve, negative beyond it; in the
     * unit of the arguments}
     *
     * @param u the point's distance from the middle plane, in the arc's own direction; negative on the other side
     * @param v the point's depth, 0 or more
     * @param a half-width, more than 0
     * @param b depth, more than 0
     */
    double distance(double u, double v, double a, double b) {
        return distance(u, v, a, b, null);
    }

    /**
     * The same, and how the distance in space goes on from there.
     *
     * @param along how the half axes change, which takes the step from the foot; nothing to leave it out
     */
    double distance(double u, double v, double a, double b, @Nullable AlongNeck along) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = valley(0, u, v, a, b); i < POINTS; i = valley(i + 1, u, v, a, b)) {
            AlongNeck its = along == null ? null : along.again();
            double share = vertex(sample(i - 1, u, v, a, b), sample(i, u, v, a, b), sample(i + 1, u, v, a, b));
            double found = i >= MIDDLE
                    ? signed(unitY, i, -1, share, u, v, a, b, its)
                    : signed(unitZ, i, 1, share, v, u, b, a, its);
            if (Math.abs(found) < Math.abs(best)) {
                best = found;
                if (along != null && its != null) {
                    along.take(its);
                }
            }
        }
        return best;
    }

    /** The first point of the grid, from one on, that neither neighbour is nearer than; a loop of its own, as it is short and hot. */
    private int valley(int from, double u, double v, double a, double b) {
        double[] y = unitY;
        double[] z = unitZ;
        double before = sample(from - 1, u, v, a, b);
        double here = sample(from, u, v, a, b);
        for (int i = from + 1; i < POINTS; i++) {
            double dy = a * y[i] - u;
            double dz = b * z[i] - v;
            double after = dy * dy + dz * dz;
            if (here <= before && here <= after) {
                return i - 1;
            }
            before = here;
            here = after;
        }
        return here <= before ? POINTS - 1 : POINTS;
    }

    /**
     * Distance from a point to the quarter blended with a straight side: half-width {@code share a y + rest - narrowing z} at the
     * unit curve's point (y, z), z times the depth. Where the section is a blend, as in the heel; not signed.
     *
     * @param u the point's distance from the middle plane, in the arc's own direction
     * @param v the point's depth
     * @param wide share of the half-width that is this curve's
     * @param rest half-width of the straight side at the glue face
     * @param narrowing what the straight side loses per depth
     * @param b depth, more than 0
     */
    double blendDistance(double u, double v, double wide, double rest, double narrowing, double b) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < POINTS; i++) {
            double z = b * unitZ[i];
            double here = squared(wide * unitY[i] + rest - narrowing * z - u, z - v);
            if (here < least) {
                least = here;
                best = i;
            }
        }
        boolean byWidth = best >= MIDDLE;
        double[] unit = byWidth ? unitY : unitZ;
        double one = unit[Math.max(0, best - 1)];
        double other = unit[Math.min(POINTS - 1, best + 1)];
        double lo = Math.min(one, other);
        double hi = Math.max(one, other);
        double t = unit[best];
        for (int step = 0; step < STEPS; step++) {
            double s = power(t);
            double far = 1 - s;
            if (!(t > 0 && far > 0)) {
                t = t > 0 ? 0.5 * (lo + hi) : TOWARD_END * hi;
                continue;
            }
            // The unit curve's other coordinate with its first and second derivative.
            double w = root(far);
            double w1 = -w * s / (t * far);
            double w2 = w1 * (p - 1) / (t * far);
            double z = b * (byWidth ? w : t);
            double z1 = b * (byWidth ? w1 : 1);
            double z2 = byWidth ? b * w2 : 0;
            double dy = wide * (byWidth ? t : w) + rest - narrowing * z - u;
            double y1 = wide * (byWidth ? 1 : w1) - narrowing * z1;
            double y2 = (byWidth ? 0 : wide * w2) - narrowing * z2;
            double dz = z - v;
            least = Math.min(least, squared(dy, dz));
            double g = dy * y1 + dz * z1;
            if (g < 0) {
                lo = t;
            } else {
                hi = t;
            }
            double next = t - g / (y1 * y1 + z1 * z1 + dy * y2 + dz * z2);
            // Where the foot is the quarter's end, steps lead past it: close in on it fast.
            double inside = lo == 0 && next <= 0 ? TOWARD_END * t : 0.5 * (lo + hi);
            double taken = next > lo && next < hi ? next : inside;
            if (Math.abs(taken - t) <= STILL * (t + STILL) || hi - lo <= SHORT) {
                break;
            }
            t = taken;
        }
        return StrictMath.sqrt(least);
    }

    private static double squared(double dy, double dz) {
        return dy * dy + dz * dz;
    }

    /** Where between two neighbours, -1 to 1, the parabola through three squared distances is least. */
    private static double vertex(double before, double here, double after) {
        double bend = before - 2 * here + after;
        return bend > 0 && bend < Double.POSITIVE_INFINITY ? 0.5 * (before - after) / bend : 0;
    }

    /**
     * Signed distance to the foot near a point of the grid, for the curve written as {@code y = a t, z(t)}. Newton on
     * half the derivative of the squared distance, kept between the neighbours. The last step is not taken but added in
     * closed form: {@code d^2 - g^2 / curvature} is right to its third power, and saves two powers.
     */
    private double signed(
            double[] unit,
            int i,
            int up,
            double share,
            double u,
            double v,
            double a,
            double b,
            @Nullable AlongNeck along) {
        int next = Math.max(0, Math.min(POINTS - 1, i + up));
        int last = Math.max(0, Math.min(POINTS - 1, i - up));
        double lo = unit[last];
        double hi = unit[next];
        double toward = up * share;
        double t = fromTaylor(
                i, up < 0, lo, hi, toward > 0 ? toward * (hi - unit[i]) : toward * (unit[i] - lo), u, v, a, b);
        double squared = 0;
        double inward = 1;
        for (int step = 0; step < STEPS; step++) {
            double s = power(t);
            double rest = 1 - s;
            double z = b * root(Math.max(rest, 0));
            double dy = a * t - u;
            double dz = z - v;
            squared = dy * dy + dz * dz;
            if (!(t > 0 && rest > 0)) {
                inward = t > 0 ? dy : dz;
                t = 0.5 * (lo + hi);
                if (!(t > 0 && t < 1)) {
                    break;
                }
                continue;
            }
            double slope = -z * s / (t * rest);
            double g = a * dy + dz * slope;
            inward = dz * a - dy * slope;
            if (g < 0) {
                lo = t;
            } else {
                hi = t;
            }
            double curvature = a * a + slope * slope + dz * slope * (p - 1) / (t * rest);
            double change = -g / curvature;
            boolean inBracket = t + change > lo && t + change < hi;
            double inside = lo == 0 && t + change <= 0 ? TOWARD_END * t : 0.5 * (lo + hi);
            double taken = inBracket ? change : inside - t;
            // Close to the curve the squared distance has no digits to spare: go on to the end there.
            double near = squared > NEAR * a * b ? 1e-5 * t : 1e-11 * (t + 1e-6);
            if (Math.abs(taken) <= near || t < AT_END) {
                if (along != null && inBracket) {
                    along.at(
                            up < 0,
                            new AlongNeck.Foot(t, z / b, a, b, dy, dz, slope, g, curvature, squared, p / (t * rest)));
                }
                squared -= inBracket ? g * g / curvature : 0;
                break;
            }
            t += taken;
        }
        return Math.copySign(StrictMath.sqrt(Math.max(squared, 0)), inward);
    }

    /**
     * Where to start near a point of the grid: the foot on the curve's Taylor polynomial of third degree there, which needs no
     * power. So one evaluation of the curve is enough where the curve is smooth.
     *
     * @param guess step from the grid's point
     */
    private double fromTaylor(
            int i, boolean byWidth, double lo, double hi, double guess, double u, double v, double a, double b) {
        double t = byWidth ? unitY[i] : unitZ[i];
        if (i == 0 || i == POINTS - 1) {
            return t + guess;
        }
        double w = byWidth ? unitZ[i] : unitY[i];
        double w1 = slopes[i];
        double w2 = bends[i];
        double w3 = thirds[i];
        double step = guess;
        for (int round = 0; round < TAYLOR_ROUNDS; round++) {
            double z1 = b * (w1 + step * (w2 + step * w3 / 2));
            double z2 = b * (w2 + step * w3);
            double dy = a * (t + step) - u;
            double dz = b * (w + step * (w1 + step * (w2 / 2 + step * w3 / 6))) - v;
            double curvature = a * a + z1 * z1 + dz * z2;
            double next = step - (a * dy + dz * z1) / curvature;
            if (!(curvature > 0 && t + next > lo && t + next < hi)) {
                return t + guess;
            }
            step = next;
        }
        return t + step;
    }

    /**
     * Returns the support of the curve: how far out its tangent with normal direction phi lies from the middle of the
     * glue face. {@code ((a cos phi)^q + (b sin phi)^q)^(1/q)} with {@code 1/p + 1/q = 1}.
     */
    double support(double phi, double a, double b) {
        double side = a * Math.abs(StrictMath.cos(phi));
        double down = b * StrictMath.sin(phi);
        double larger = Math.max(side, down);
        if (p == 1) {
            return larger;
        }
        double q = p / (p - 1);
        return larger * StrictMath.pow(StrictMath.pow(side / larger, q) + StrictMath.pow(down / larger, q), 1 / q);
    }

    /** Squared distance to a point of the grid, infinite past its ends. */
    private double sample(int i, double u, double v, double a, double b) {
        if (i < 0 || i >= POINTS) {
            return Double.POSITIVE_INFINITY;
        }
        double dy = a * unitY[i] - u;
        double dz = b * unitZ[i] - v;
        return dy * dy + dz * dz;
    }

    private double power(double x) {
        return p == 2 ? x * x : p == 1 ? x : Powers.power(x, p);
    }

    private double root(double x) {
        return p == 2 ? StrictMath.sqrt(x) : p == 1 ? x : Powers.power(x, 1 / p);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SuperellipseArc that && Double.compare(p, that.p) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(p);
    }
}
