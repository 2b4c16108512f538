package org.neckgeom.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of a polyline: straight, or an arc by its bulge. Nothing here goes by way of the arc's centre, which lies far
 * off for a shallow arc and would cost its digits.
 */
record Edge(Spot from, Spot to, double bulge) {

    /** Angles under this take a series for {@code A - sin A}, whose terms would cancel. */
    private static final double SMALL = 0.2;

    private double chord() {
        return from.distanceMm(to);
    }

    /** Included angle in rad, positive counter-clockwise. */
    private double angle() {
        return 4 * StrictMath.atan(bulge);
    }

    private double radius() {
        double b = Math.abs(bulge);
        return chord() * (1 + b * b) / (4 * b);
    }

    double lengthMm() {
        return bulge == 0 ? chord() : radius() * Math.abs(angle());
    }

    /** Twice the area between chord and arc, with the sign of the bulge. */
    double twiceSegment() {
        if (bulge == 0) {
            return 0;
        }
        double a = angle();
        double q = a * a;
        double lessSine =
                Math.abs(a) < SMALL ? a * q / 6 * (1 - q / 20 * (1 - q / 42 * (1 - q / 72))) : a - StrictMath.sin(a);
        double r = radius();
        return r * r * lessSine;
    }

    /** Widens a box of least u and v, then greatest, to hold this line. */
    void widen(double[] box) {
        for (Spot end : List.of(from, to)) {
            box[0] = Math.min(box[0], end.uMm());
            box[1] = Math.min(box[1], end.vMm());
            box[2] = Math.max(box[2], end.uMm());
            box[3] = Math.max(box[3], end.vMm());
        }
        if (bulge != 0 && chord() > 0) {
            box[0] = Math.min(box[0], -reach(-1, 0));
            box[1] = Math.min(box[1], -reach(0, -1));
            box[2] = Math.max(box[2], reach(1, 0));
            box[3] = Math.max(box[3], reach(0, 1));
        }
    }

    /** How far the belly of an arc reaches in a direction, minus infinity where an end reaches farther. */
    private double reach(int u, int v) {
        double c = chord();
        double along = ((to.uMm() - from.uMm()) * u + (to.vMm() - from.vMm()) * v) / c;
        double left = ((to.uMm() - from.uMm()) * v - (to.vMm() - from.vMm()) * u) / c;
        double b = Math.abs(bulge);
        double rest = 1 - b * b;
        double most = Math.abs(rest * along);
        if (-2 * bulge * left < (b <= 1 ? most : -most)) {
            return Double.NEGATIVE_INFINITY;
        }
        double side = Math.signum(bulge) * left;
        double off = side < 0 ? along * along / (1 - side) : 1 + side;
        double middle = (from.uMm() + to.uMm()) / 2 * u + (from.vMm() + to.vMm()) / 2 * v;
        return middle + c * (b / 2 + rest * off / (4 * b));
    }

    /**
     * More than 0 left of the chord, less than 0 right of it, seen along it. A spot on the chord's line counts as if it
     * lay a hair higher and less than a hair to the right, so that spots on shared corners are counted once.
     */
    private double side(Spot spot) {
        double du = to.uMm() - from.uMm();
        double dv = to.vMm() - from.vMm();
        double side = du * (spot.vMm() - from.vMm()) - dv * (spot.uMm() - from.uMm());
        if (side != 0) {
            return side;
        }
        return dv != 0 ? -dv : du;
    }

    /** Whether a line from the spot toward greater u leaves the outline, or enters it, through chord or arc, but not both. */
    boolean isCrossed(Spot spot) {
        double side = side(spot);
        boolean rises = to.vMm() > spot.vMm();
        boolean crossed = from.vMm() > spot.vMm() != rises && side > 0 == rises;
        return crossed ^ (side * bulge < 0 && overCircle(spot) < 0);
    }

    /** Least distance from a spot in mm. */
    double distanceMm(Spot spot) {
        double c = chord();
        if (!(c > 0)) {
            return from.distanceMm(spot);
        }
        double x = along(spot);
        if (bulge == 0) {
            double at = Math.min(1, Math.max(0, x / c));
            return from.plus(at * (to.uMm() - from.uMm()), at * (to.vMm() - from.vMm()))
                    .distanceMm(spot);
        }
        double y = left(spot);
        double rest = 1 - bulge * bulge;
        double first = x * rest - 2 * bulge * y;
        double second = (c - x) * rest - 2 * bulge * y;
        boolean beside = Math.abs(bulge) <= 1 ? first >= 0 && second >= 0 : first >= 0 || second >= 0;
        return beside ? Math.abs(overCircle(spot)) : Math.min(from.distanceMm(spot), to.distanceMm(spot));
    }

    private double along(Spot spot) {
        return ((spot.uMm() - from.uMm()) * (to.uMm() - from.uMm())
                        + (spot.vMm() - from.vMm()) * (to.vMm() - from.vMm()))
                / chord();
    }

    private double left(Spot spot) {
        return ((to.uMm() - from.uMm()) * (spot.vMm() - from.vMm())
                        - (to.vMm() - from.vMm()) * (spot.uMm() - from.uMm()))
                / chord();
    }

    /** How far a spot lies outside the arc's circle, in mm: its power over its distance and radius, both times 4 bulge. */
    private double overCircle(Spot spot) {
        double c = chord();
        if (!(c > 0)) {
            return from.distanceMm(spot);
        }
        double x = along(spot);
        double y = left(spot);
        double b = 4 * Math.abs(bulge);
        double level = Math.signum(bulge) * c * (1 - bulge * bulge);
        double power = b * (x * (x - c) + y * y) - 2 * y * level;
        double du = b * (x - c / 2);
        double dv = b * y - level;
        return power / (Math.sqrt(du * du + dv * dv) + c * (1 + bulge * bulge));
    }

    /** Spots on an arc between its ends, so near each other that no chord leaves it by more than a tolerance. */
    List<Spot> between(double tolerance) {
        if (bulge == 0) {
            return List.of();
        }
        double r = radius();
        // acos(1 - t) = 2 asin(sqrt(t / 2)), which keeps its digits for small t.
        double most = Math.min(StrictMath.PI, 4 * StrictMath.asin(Math.min(1, Math.sqrt(tolerance / (2 * r)))));
        double whole = angle();
        int n = (int) Math.ceil(Math.abs(whole) / most);
        double cu = to.uMm() - from.uMm();
        double cv = to.vMm() - from.vMm();
        double perChord = (1 + bulge * bulge) / (2 * bulge);
        List<Spot> inner = new ArrayList<>();
        for (int k = 1; k < n; k++) {
            double half = whole * k / n / 2;
            double turn = half - whole / 2;
            double size = perChord * StrictMath.sin(half);
            double cos = size * StrictMath.cos(turn);
            double sin = size * StrictMath.sin(turn);
            inner.add(from.plus(cu * cos - cv * sin, cv * cos + cu * sin));
        }
        return inner;
    }
}
