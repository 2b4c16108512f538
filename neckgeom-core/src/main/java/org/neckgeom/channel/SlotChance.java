package org.neckgeom.channel;

import java.util.Arrays;
import org.neckgeom.kernel.Powers;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.numeric.StudentLaw;

/**
 * The conformance probability of a slot along its whole length, from the estimates at its two ends.
 *
 * <p>The offset at the part t of the channel is {@code e(t) = (1 - t) e1 + t e2 - r(t)}: e1 and e2 share what the setting is
 * uncertain by (variance V) and have a part of their own each (the blank's width read there); r is known at knots. That all
 * knots keep {@code |e| <= L} is a polygon in (e1, e2). Lengths in mm.
 *
 * <p>Seen from the best values, in scales of the law (so that its contours are circles), an edge of the polygon lies at
 * a distance d, and the part past it in an angle of {@code d phi} has the probability {@code S(d/cos(phi)) d phi/(2
 * pi)}. S is the probability of a pair to lie farther out than so many scales: {@code exp(-r^2/2)}, or for Student's
 * law of nu degrees of freedom {@code (1 + r^2/nu)^(-nu/2)}. With {@code tan(phi) = sinh(x)} the probability of
 * breaking the limit past one edge is the integral of {@code S(d cosh(x))/cosh(x)}, over {@code 2 pi}: smooth for all
 * d, so that few places do (Gauss and Legendre). The edges add up; one that is seen from outside counts the other way.
 * Exact but for the integral, 1e-7.
 */
final class SlotChance {

    private static final double[] NODES = {
        0.1252334085114689,
        0.3678314989981802,
        0.5873179542866175,
        0.7699026741943047,
        0.9041172563704748,
        0.9815606342467192
    };
    private static final double[] WEIGHTS = {
        0.2491470458134027,
        0.2334925365383546,
        0.2031674267230657,
        0.1600783285433464,
        0.1069393259953191,
        0.0471753363865114
    };
    /** Half a panel of x, at most: keeps the integral's error under 1e-7 for any law. */
    private static final double HALF_PANEL = 1.5;

    /** The probability of a pair farther out than this is left out. */
    private static final double SMALLEST_TAIL = 1e-10;

    /** Past so many times its distance along an edge the angle left is nothing. */
    private static final double FARTHEST = 1e10;

    private static final double LN_2 = StrictMath.log(2);

    /** An edge nearer to the best values than this, in scales, is as good as through them. */
    private static final double NEAREST = 1e-9;

    private final double limit;
    /** Parts of the channel, 0 first and 1 last, and what the fence shifts the slot by there. */
    private final double[] parts;

    private final double[] shifts;
    private final double degreesOfFreedom;
    /** The polygon's corners, counterclockwise: e1 and e2 in turn; none where no slot keeps the limit. */
    private final double[] corners;

    private final PairLaw law;

    /** How far out a pair still counts, in scales. */
    private final double reach;

    SlotChance(double limit, double[] parts, double[] shifts, double degreesOfFreedom) {
        this.limit = limit;
        this.parts = parts;
        this.shifts = shifts;
        this.degreesOfFreedom = degreesOfFreedom;
        this.corners = corners(limit, parts, shifts);
        this.law = new PairLaw(degreesOfFreedom);
        this.reach = law.reach(SMALLEST_TAIL);
    }

    /** The region that both ends keep is a square; each knot between them cuts off the part that it does not keep. */
    private static double[] corners(double limit, double[] parts, double[] shifts) {
        int last = parts.length - 1;
        double a = shifts[0];
        double b = shifts[last];
        double[] corners = {a - limit, b - limit, a + limit, b - limit, a + limit, b + limit, a - limit, b + limit};
        for (int i = 1; i < last; i++) {
            corners = kept(corners, limit, parts[i], shifts[i], 1);
            corners = kept(corners, limit, parts[i], shifts[i], -1);
        }
        return corners;
    }

    private static double[] kept(double[] corners, double limit, double part, double shift, int side) {
        if (corners.length == 0) {
            return corners;
        }
        double[] kept = new double[corners.length + 2];
        int count = 0;
        double before = 0;
        for (int i = 0; i <= corners.length; i += 2) {
            int at = i % corners.length;
            double room = limit - side * ((1 - part) * corners[at] + part * corners[at + 1] - shift);
            if (i > 0 && room * before < 0) {
                double way = before / (before - room);
                kept[count++] = corners[i - 2] + way * (corners[at] - corners[i - 2]);
                kept[count++] = corners[i - 1] + way * (corners[at + 1] - corners[i - 1]);
            }
            if (i < corners.length && room >= 0) {
                kept[count++] = corners[at];
                kept[count++] = corners[at + 1];
            }
            before = room;
        }
        return Arrays.copyOf(kept, count);
    }

    /**
     * Whether no best values with this difference of the ends have a greater probability than those in the middle of
     * the band: the polygon is then a square, and the law the same with the ends changed over (Anderson's inequality,
     * from memory).
     */
    boolean isBestInTheMiddle(double u1, double u2) {
        return parts.length == 2 && u1 == u2;
    }

    /** The middle of the band from the least to the greatest offset, for ends whose best values are e1 and e2. */
    double middle(double e1, double e2) {
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts.length; i++) {
            double e = (1 - parts[i]) * e1 + parts[i] * e2 - shifts[i];
            most = Math.max(most, e);
            least = Math.min(least, e);
        }
        return (most + least) / 2;
    }

    /** The conformance probability.
     *
     * @param e1 best value at the channel's head end, before the fence's shift
     * @param e2 at its heel end
     * @param variance that the ends share
     * @param u1 standard uncertainty of the first end's own part
     * @param u2 of the second's
     */
    double keeps(double e1, double e2, double variance, double u1, double u2) {
        if (u1 == 0 && u2 == 0) {
            return together(e1, e2, variance);
        }
        return 1 - breaks(e1, e2, variance, u1, u2, 1);
    }

    /**
     * The probability of breaking the limit, or {@code most} where it is more than that.
     *
     * @param most in (0, 1]; under a half it is soon found that it is more
     */
    double breaks(double e1, double e2, double variance, double u1, double u2, double most) {
        if (u1 == 0 && u2 == 0) {
            return Math.min(most, 1 - together(e1, e2, variance));
        }
        // Past one edge lies half of all, and more.
        boolean isInside = isKept(e1, e2);
        if (corners.length == 0 || !isInside && most <= 0.5) {
            return most;
        }
        double s1 = Math.sqrt(variance + u1 * u1);
        double pull = variance / (s1 * s1);
        double rest = Math.sqrt(variance * u1 * u1 / (s1 * s1) + u2 * u2);
        double sum = isInside ? 0 : 1;
        int last = corners.length - 2;
        double ax = (corners[last] - e1) / s1;
        double ay = (corners[last + 1] - e2 - pull * (corners[last] - e1)) / rest;
        for (int i = 0; i <= last && !(isInside && sum >= most); i += 2) {
            double bx = (corners[i] - e1) / s1;
            double by = (corners[i + 1] - e2 - pull * (corners[i] - e1)) / rest;
            double dx = bx - ax;
            double dy = by - ay;
            double length = Math.sqrt(dx * dx + dy * dy);
            if (length > 0) {
                double d = (ax * dy - ay * dx) / length;
                double past = past(Math.abs(d), (ax * dx + ay * dy) / length, (bx * dx + by * dy) / length);
                sum += d >= 0 ? past : -past;
            }
            ax = bx;
            ay = by;
        }
        return Math.min(most, Math.max(0, sum));
    }

    private boolean isKept(double e1, double e2) {
        boolean isKept = true;
        for (int i = 0; i < parts.length; i++) {
            isKept &= Math.abs((1 - parts[i]) * e1 + parts[i] * e2 - shifts[i]) <= limit;
        }
        return isKept;
    }

    /** Probability of the part past an edge at a distance, from one place along it to another, in scales. */
    private double past(double distance, double from, double to) {
        double d = Math.max(NEAREST, distance);
        if (d >= reach) {
            return 0;
        }
        double ratio = Math.min(reach / d, FARTHEST);
        double most = asinh(Math.sqrt(ratio * ratio - 1));
        double start = Math.max(-most, asinh(from / d));
        double end = Math.min(most, asinh(to / d));
        if (!(start < end)) {
            return 0;
        }
        int panels = (int) Math.ceil((end - start) / (2 * HALF_PANEL));
        double half = (end - start) / (2 * panels);
        double dd = d * d;
        double sum = 0;
        for (int panel = 0; panel < panels; panel++) {
            double grown = Powers.exp2((start + (2 * panel + 1) * half) / LN_2);
            double shrunk = 1 / grown;
            for (int k = 0; k < NODES.length; k++) {
                double step = Powers.exp2(half / LN_2 * NODES[k]);
                double back = 1 / step;
                double right = (grown * step + shrunk * back) / 2;
                double left = (grown * back + shrunk * step) / 2;
                sum += WEIGHTS[k]
                        * (law.beyond(dd * right * right) * left + law.beyond(dd * left * left) * right)
                        / (right * left);
            }
        }
        return half * sum / (2 * Math.PI);
    }

    private static double asinh(double x) {
        double size = Math.abs(x);
        return Math.copySign(Powers.ln(size + Math.sqrt(1 + size * size)), x);
    }

    /** Both ends move as one: all knots keep the limit for a stretch of the setting. */
    private double together(double e1, double e2, double variance) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts.length; i++) {
            double e = (1 - parts[i]) * e1 + parts[i] * e2 - shifts[i];
            low = Math.max(low, -limit - e);
            high = Math.min(high, limit - e);
        }
        if (!(high > low)) {
            return 0;
        }
        if (variance == 0) {
            return low <= 0 && high >= 0 ? 1 : 0;
        }
        double u = Math.sqrt(variance);
        return between(low / u, high / u, degreesOfFreedom);
    }

    /** From the nearer tail, so that a small probability keeps its digits. */
    private static double between(double low, double high, double degreesOfFreedom) {
        if (Double.isInfinite(degreesOfFreedom)) {
            return low > 0
                    ? NormalLaw.upperTail(low) - NormalLaw.upperTail(high)
                    : NormalLaw.cdf(high) - NormalLaw.cdf(low);
        }
        return low > 0
                ? StudentLaw.upperTail(low, degreesOfFreedom) - StudentLaw.upperTail(high, degreesOfFreedom)
                : StudentLaw.cdf(high, degreesOfFreedom) - StudentLaw.cdf(low, degreesOfFreedom);
    }
}
