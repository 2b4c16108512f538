package org.neckgeom.strength;

import org.neckgeom.fault.Refusal;

/**
 * A bent line over the neck: rise and slope at nodes, between them the cubic that has both. Rise is toward the strings.
 */
final class Bend {

    private final double[] x;
    private final double[] slope;
    private final double[] rise;

    Bend(double[] x, double[] slope, double[] rise) {
        this.x = x;
        this.slope = slope;
        this.rise = rise;
    }

    /** Returns this line plus a multiple of another over the same nodes. */
    Bend plus(Bend other, double factor) {
        double[] sumSlope = new double[x.length];
        double[] sumRise = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            sumSlope[i] = slope[i] + factor * other.slope[i];
            sumRise[i] = rise[i] + factor * other.rise[i];
        }
        return new Bend(x, sumSlope, sumRise);
    }

    /** Returns this line with all its slopes and rises times a number. */
    Bend times(double factor) {
        double[] moreSlope = new double[x.length];
        double[] moreRise = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            moreSlope[i] = factor * slope[i];
            moreRise[i] = factor * rise[i];
        }
        return new Bend(x, moreSlope, moreRise);
    }

    /** Returns this line on a neck that was bowed evenly before, by a curvature: positive where it hung. */
    Bend bowed(double curvature) {
        double[] moreSlope = new double[x.length];
        double[] moreRise = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            moreSlope[i] = slope[i] + curvature * x[i];
            moreRise[i] = rise[i] + curvature * x[i] * x[i] / 2;
        }
        return new Bend(x, moreSlope, moreRise);
    }

    /** Returns the same line turned and shifted so that its body end stays where it was, level. */
    Bend clampedAtEnd() {
        int last = x.length - 1;
        double[] s = new double[x.length];
        double[] r = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            s[i] = slope[i] - slope[last];
            r[i] = rise[i] - rise[last] - slope[last] * (x[i] - x[last]);
        }
        return new Bend(x, s, r);
    }

    double riseAt(double at) {
        int i = panel(at);
        double h = x[i + 1] - x[i];
        double t = (at - x[i]) / h;
        double u = 1 - t;
        return u * u * ((1 + 2 * t) * rise[i] + t * h * slope[i])
                + t * t * ((1 + 2 * u) * rise[i + 1] - u * h * slope[i + 1]);
    }

    double slopeAt(double at) {
        int i = panel(at);
        double h = x[i + 1] - x[i];
        double t = (at - x[i]) / h;
        double u = 1 - t;
        return 6 * t * u * (rise[i + 1] - rise[i]) / h + u * (1 - 3 * t) * slope[i] + t * (1 - 3 * u) * slope[i + 1];
    }

    private int panel(double at) {
        if (!(at >= x[0] && at <= x[x.length - 1])) {
            throw Refusal.of(
                    "station", "range", "be between " + x[0] + " mm and " + x[x.length - 1] + " mm", at + " mm");
        }
        int low = 0;
        int high = x.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (x[middle] <= at) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Gap at one place under a straight line laid over the bent one from a to b, positive where the bent line hangs. */
    double gapAt(double at, double a, double b) {
        double ra = riseAt(a);
        double rb = riseAt(b);
        return ra + (rb - ra) * (at - a) / (b - a) - riseAt(at);
    }

    /** Place of the greatest gap between a and b. */
    double deepest(double a, double b) {
        return extreme(a, b, 1);
    }

    /** Place of the greatest rise over the straight line between a and b. */
    double highest(double a, double b) {
        return extreme(a, b, -1);
    }

    private double extreme(double a, double b, int sign) {
        double ra = riseAt(a);
        double chord = (riseAt(b) - ra) / (b - a);
        double best = a;
        double bestGap = 0;
        int bestNode = -1;
        for (int i = panel(a) + 1; i < x.length && x[i] < b; i++) {
            double gap = sign * (ra + chord * (x[i] - a) - rise[i]);
            if (gap > bestGap) {
                bestGap = gap;
                best = x[i];
                bestNode = i;
            }
        }
        if (bestNode < 0) {
            return best;
        }
        // The gap's derivative changes sign once between the neighbours of the best node.
        boolean after = sign * (chord - slope[bestNode]) > 0;
        int left = after ? bestNode : bestNode - 1;
        return Math.max(a, Math.min(b, parallel(left, chord)));
    }

    /** Where the slope in a panel, a quadratic of the place, comes to that of a chord. */
    private double parallel(int left, double chord) {
        double h = x[left + 1] - x[left];
        double mean = (rise[left + 1] - rise[left]) / h;
        double square = 3 * (slope[left] + slope[left + 1] - 2 * mean);
        double linear = 6 * mean - 4 * slope[left] - 2 * slope[left + 1];
        double constant = slope[left] - chord;
        double root = Math.sqrt(Math.max(0, linear * linear - 4 * square * constant));
        double half = -0.5 * (linear + (linear < 0 ? -root : root));
        double first = constant / half;
        double t = first >= 0 && first <= 1 ? first : half / square;
        return x[left] + h * Math.max(0, Math.min(1, Double.isNaN(t) ? 0 : t));
    }
}
