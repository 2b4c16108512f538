package org.neckgeom.channel;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.neckgeom.shop.Fence;

/**
 * How far the fence holds a blank's edge off the line of its infeed half, the cutter at any station: r(x). Lengths in mm.
 *
 * <p>Let F be how far the fence's face is proud of the line of its infeed half, and E how far the edge (or the strip on it)
 * is proud of its own line, both at the place xi along the fence, 0 at the cutter. The blank's line lies over all points
 * F + E that fence and edge share, and is pressed home at the cutter: {@code r} is the least concave majorant of these
 * points at xi = 0, straight between its corners. Where all contacts lie on one side of the cutter its last segment is run
 * on. Exact for an edge that is straight between its knots.
 */
final class Riding {

    /** Places in one half of the fence at which a curved edge is looked at. */
    private static final int STEPS = 400;

    private final double leadEnd;
    private final double trailEnd;
    private final double half;
    private final double halfGap;
    private final double step;
    private final double direction;
    private final @Nullable DoubleUnaryOperator edge;
    private final double[] side;

    /**
     * A blank's edge on a fence.
     *
     * @param from first station of what rides on the fence: the blank's head end, or a strip's
     * @param to its last station
     * @param headLeads whether the head end goes past the cutter first
     * @param fence with the cutter at the middle of its length; its step is how far the outfeed half is proud of the infeed half
     * @param edge how far the edge is proud of its line at a station, toward the fence positive; null for a straight one
     * @param side of a head that reaches past the edge: its corners, each a station and how far it is proud, straight between
     */
    Riding(double from, double to, boolean headLeads, Fence fence, @Nullable DoubleUnaryOperator edge, double... side) {
        this.leadEnd = headLeads ? from : to;
        this.trailEnd = headLeads ? to : from;
        this.half = fence.lengthMm() / 2;
        this.halfGap = fence.gapMm() / 2;
        this.step = fence.outOfLineMm();
        this.direction = headLeads ? -1 : 1;
        this.edge = edge;
        this.side = side;
    }

    /** True where every station has the same answer, 0. */
    boolean isStraight() {
        return step == 0 && edge == null && side.length == 0;
    }

    /** How far the edge's line is held off the infeed half's line at the cutter, positive away from the fence. */
    double at(double x) {
        return isStraight() ? 0 : over(x).majorantAtZero();
    }

    /** The tangent of the angle between the edge's line and the infeed half's at the cutter, positive where the outfeed end is held off. */
    double slopeAt(double x) {
        return isStraight() ? 0 : over(x).slopeAtZero();
    }

    private Points over(double x) {
        double past = direction * (leadEnd - x);
        double still = direction * (trailEnd - x);
        Points points = new Points();
        half(points, x, Math.max(-half, still), Math.min(-halfGap, past), 0);
        half(points, x, Math.max(halfGap, still), Math.min(half, past), step);
        for (int i = 0; i + 3 < side.length; i += 2) {
            double one = direction * (side[i] - x);
            double other = direction * (side[i + 2] - x);
            clipped(points, one, side[i + 1], other, side[i + 3], -half, -halfGap, 0);
            clipped(points, one, side[i + 1], other, side[i + 3], halfGap, half, step);
        }
        return points;
    }

    private void half(Points points, double x, double from, double to, double face) {
        if (!(from <= to)) {
            return;
        }
        if (edge == null) {
            points.add(from, face);
            points.add(to, face);
            return;
        }
        for (int i = 0; i <= STEPS; i++) {
            double xi = from + (to - from) * i / STEPS;
            points.add(xi, face + edge.applyAsDouble(x + direction * xi));
        }
    }

    /** Adds the ends of what a half of the fence, from {@code from} to {@code to}, has of a straight side. */
    private static void clipped(
            Points points,
            double one,
            double proud,
            double other,
            double otherProud,
            double from,
            double to,
            double face) {
        double low = Math.max(from, Math.min(one, other));
        double high = Math.min(to, Math.max(one, other));
        if (!(low <= high)) {
            return;
        }
        double slope = one == other ? 0 : (otherProud - proud) / (other - one);
        points.add(low, face + (low == one ? proud : low == other ? otherProud : proud + slope * (low - one)));
        points.add(high, face + (high == one ? proud : high == other ? otherProud : proud + slope * (high - one)));
    }

    /** The upper hull of points that are few, or come from left to right. */
    private static final class Points {

        private double[] xi = new double[8];
        private double[] high = new double[8];
        private int count;

        void add(double place, double height) {
            if (count == xi.length) {
                xi = Arrays.copyOf(xi, 2 * count);
                high = Arrays.copyOf(high, 2 * count);
            }
            int i = count++;
            while (i > 0 && xi[i - 1] > place) {
                xi[i] = xi[i - 1];
                high[i] = high[i - 1];
                i--;
            }
            xi[i] = place;
            high[i] = height;
        }

        double majorantAtZero() {
            int right = hull();
            return right == 0 ? count == 0 ? 0 : high[0] : high[right - 1] - slope(right) * xi[right - 1];
        }

        double slopeAtZero() {
            int right = hull();
            return right == 0 ? 0 : slope(right);
        }

        private double slope(int right) {
            return (high[right] - high[right - 1]) / (xi[right] - xi[right - 1]);
        }

        /** Leaves the upper hull in the first places, and returns the right end of its segment over 0; 0 where there is none. */
        private int hull() {
            int top = 0;
            for (int i = 0; i < count; i++) {
                if (top > 0 && xi[top - 1] == xi[i]) {
                    if (high[top - 1] >= high[i]) {
                        continue;
                    }
                    top--;
                }
                while (top > 1
                        && (high[top - 1] - high[top - 2]) * (xi[i] - xi[top - 1])
                                <= (high[i] - high[top - 1]) * (xi[top - 1] - xi[top - 2])) {
                    top--;
                }
                xi[top] = xi[i];
                high[top++] = high[i];
            }
            if (top < 2) {
                return 0;
            }
            int right = 1;
            while (right < top - 1 && xi[right] < 0) {
                right++;
            }
            return right;
        }
    }
}
