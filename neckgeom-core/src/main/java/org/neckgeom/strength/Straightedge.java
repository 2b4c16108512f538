package org.neckgeom.strength;

import org.jspecify.annotations.Nullable;

/**
 * A straightedge laid over the bent neck from one place to another, the rod pulling with any force.
 *
 * <p>Gaps are linear in the rod's force at each place, so the greatest gap is a convex function of the force and Newton's
 * rule finds the force for a wanted gap from one side without overshooting twice.
 *
 * @param strings the bent line with the rod slack
 * @param rod what one newton in the rod adds, or null
 * @param before curvature of the neck without either, 1/mm, positive where it hangs
 * @param from x of one end, mm
 * @param to x of the other end, mm
 */
record Straightedge(Bend strings, @Nullable Bend rod, double before, double from, double to) {

    private static final int MOST_STEPS = 200;
    private static final double LARGEST_FORCE = 1e6;

    /** A curvature that was found for a bow leaves it to this, far below what anything reads. */
    private static final double SAME_MM = 1e-9;

    /** On a neck that is straight without strings and rod. */
    Straightedge(Bend strings, @Nullable Bend rod, double from, double to) {
        this(strings, rod, 0, from, to);
    }

    /** From other places to others, on the same neck. */
    Straightedge between(double otherFrom, double otherTo) {
        return otherFrom == from && otherTo == to ? this : new Straightedge(strings, rod, before, otherFrom, otherTo);
    }

    /** On a neck that is bowed evenly without strings and rod. */
    Straightedge bowed(double curvature) {
        return curvature == before ? this : new Straightedge(strings, rod, curvature, from, to);
    }

    /** Greatest gap of the neck without strings and rod, negative where it is humped. */
    double ownBow() {
        return before * (to - from) * (to - from) / 8;
    }

    /** The even curvature, without strings and rod, of a neck that has a bow with the rod slack. */
    double curvatureFor(double wanted) {
        double perRelief = 8 / ((to - from) * (to - from));
        double off = bowed(0).bow(0) - wanted;
        double low = 0;
        double high = -off * perRelief;
        while (off != 0 && Math.signum(bowed(high).bow(0) - wanted) == Math.signum(off)) {
            low = high;
            high *= 2;
        }
        return low == high ? 0 : Crossing.of(k -> bowed(k).bow(0) - wanted, low, high, 1e-12 * Math.abs(high));
    }

    /** On a neck softer by a logarithm, its load and the arm of its rod larger by others. */
    Straightedge softer(double softness, double load, double arm) {
        return new Straightedge(
                strings.times(StrictMath.exp(softness + load)),
                rod == null ? null : rod.times(StrictMath.exp(softness + arm)),
                before,
                from,
                to);
    }

    /** What strings and rod add. */
    Bend added(double force) {
        return rod == null || force == 0 ? strings : strings.plus(rod, force);
    }

    Bend under(double force) {
        return before == 0 ? added(force) : added(force).bowed(before);
    }

    /** Greatest gap under the straightedge, 0 or more. */
    double relief(double force) {
        Bend bend = under(force);
        return bend.gapAt(bend.deepest(from, to), from, to);
    }

    /** Where the greatest gap is. */
    double reliefAt(double force) {
        return under(force).deepest(from, to);
    }

    /** How far the neck rises over the line between the two ends at most, 0 or more. */
    double hump(double force) {
        Bend bend = under(force);
        return -bend.gapAt(bend.highest(from, to), from, to) + 0.0;
    }

    /**
     * Greatest gap less greatest rise: the relief of a neck that hangs all along, minus the hump of one that is humped all
     * along, and for an S what is left. Falls steadily as a straightening force grows.
     */
    double bow(double force) {
        return relief(force) - hump(force);
    }

    /** Returns the force nearest to none that leaves the wanted bow: none where it is there; NaN where no force does it. */
    double forceFor(double wanted) {
        if (rod == null) {
            return Double.NaN;
        }
        if (before != 0 && Math.abs(bow(0) - wanted) < SAME_MM) {
            return 0;
        }
        double force = wanted > 0 ? forceForGap(rod, wanted) : Double.NaN;
        // A rod never undoes the strings exactly: near 0 what is left is an S, and gap and rise both count.
        boolean hangsAllAlong = !Double.isNaN(force) && hump(force) == 0;
        return hangsAllAlong ? force : forceByChords(wanted);
    }

    private double forceForGap(Bend byOneNewton, double wanted) {
        double force = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            Bend bend = under(force);
            double at = bend.deepest(from, to);
            double gap = bend.gapAt(at, from, to);
            if (gap == 0) {
                at = byOneNewton.highest(from, to);
            }
            double perNewton = byOneNewton.gapAt(at, from, to);
            double step = (wanted - gap) / perNewton;
            // A rod whose pull opens the gap there cannot close it.
            if (!(perNewton < 0) || Math.abs(force + step) > LARGEST_FORCE) {
                return Double.NaN;
            }
            force += step;
            if (Math.abs(step) <= 1e-12 * Math.abs(force) || step == 0) {
                return force + 0.0;
            }
        }
        return Double.NaN;
    }

    private double forceByChords(double wanted) {
        double low = 0;
        double sign = Math.signum(bow(0) - wanted);
        double high = sign;
        while (sign != 0 && Math.signum(bow(high) - wanted) == sign) {
            low = high;
            high *= 2;
            if (Math.abs(high) > LARGEST_FORCE) {
                return Double.NaN;
            }
        }
        return low == high ? high : Crossing.of(force -> bow(force) - wanted, low, high, 1e-12 * Math.abs(high));
    }
}
