package org.neckgeom.shape;

import java.util.Objects;

/**
 * A straight line between two points. Immutable.
 *
 * @param from one end
 * @param to the other end
 */
public record Line(Point from, Point to) {

    /** Square of the sine of an angle at which an end is as near as the nearest points, to 1e-12 of the lines' length. */
    private static final double PARALLEL = 1e-24;

    /**
     * Checks that both ends are there.
     *
     * @param from one end
     * @param to the other end
     */
    public Line {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }

    /** {@return its length in mm; 0 or more} */
    public double lengthMm() {
        return from.distanceMm(to);
    }

    /**
     * {@return its direction; it must not be a single point}
     */
    public Direction direction() {
        return new Direction(to.xMm() - from.xMm(), to.yMm() - from.yMm(), to.zMm() - from.zMm());
    }

    /**
     * {@return the point at a share of the way; beyond its ends too}
     *
     * @param share 0 at the first end, 1 at the other
     */
    public Point at(double share) {
        return new Point(
                from.xMm() + share * (to.xMm() - from.xMm()),
                from.yMm() + share * (to.yMm() - from.yMm()),
                from.zMm() + share * (to.zMm() - from.zMm()));
    }

    /**
     * {@return the least distance from a point to this line between its ends, in mm}
     *
     * @param point the point
     */
    public double distanceMm(Point point) {
        Objects.requireNonNull(point, "point");
        double[] d = vector(from, to);
        double square = dot(d, d);
        double share = square > 0 ? dot(d, vector(from, point)) / square : 0;
        return at(Math.min(1, Math.max(0, share))).distanceMm(point);
    }

    /**
     * {@return the least distance between two lines, each between its ends, in mm}
     *
     * @param other the other line
     */
    public double distanceMm(Line other) {
        Objects.requireNonNull(other, "other");
        double least = Math.min(
                Math.min(distanceMm(Objects.requireNonNull(other, "other").from), distanceMm(other.to)),
                Math.min(other.distanceMm(from), other.distanceMm(to)));
        double[] d = vector(from, to);
        double[] e = vector(other.from, other.to);
        double[] n = cross(d, e);
        double square = dot(n, n);
        if (!(square > PARALLEL * dot(d, d) * dot(e, e))) {
            return least; // parallel: an end is among the nearest points
        }
        double share = dot(cross(vector(from, other.from), e), n) / square;
        return share >= 0 && share <= 1 ? Math.min(least, other.distanceMm(at(share))) : least;
    }

    private static double[] vector(Point from, Point to) {
        return new double[] {to.xMm() - from.xMm(), to.yMm() - from.yMm(), to.zMm() - from.zMm()};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    /** {@return such as {@code line from (0, 0, 0) mm to (10, 0, 0) mm}} */
    @Override
    public String toString() {
        return "line from " + from + " to " + to;
    }
}
