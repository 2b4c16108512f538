package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;

/**
 * One section across the neck's wood, on plain doubles: two superellipse quarters that meet on the centreline, at the
 * full depth; in the heel blended with its trapezoid. Immutable.
 *
 * <p>The section is convex, so the distance to its back is a concave function of the point: over the flat floor of a
 * channel it is least at one of the floor's two corners, and for a rounded corner it is the distance of the rounding's
 * centre less the rounding's radius. That makes the answer exact without searching along the floor.
 *
 * @param halfWidth half the width of the glue face, more than 0
 * @param depth wood below the glue face on the centreline, more than 0
 * @param heel share of the heel's trapezoid, 0 in the shaft and 1 at the mating face
 * @param top half the trapezoid's width at the glue face
 * @param narrowing what half the trapezoid's width loses per mm of depth
 */
record BackSection(
        SuperellipseArc bass,
        SuperellipseArc treble,
        double halfWidth,
        double depth,
        double heel,
        double top,
        double narrowing) {

    private static final double COARSEST = 0.25;
    private static final double FINEST = 1e-6;
    private static final double NARROW = 1e-10;

    static BackSection ofShaft(SuperellipseArc bass, SuperellipseArc treble, double halfWidth, double depth) {
        return new BackSection(bass, treble, halfWidth, depth, 0, halfWidth, 0);
    }

    BackSection curved(SuperellipseArc onBass, SuperellipseArc onTreble) {
        return new BackSection(onBass, onTreble, halfWidth, depth, heel, top, narrowing);
    }

    /**
     * Points from the bass edge over the ridge to the treble edge, as many as chords need that leave the curve by no more
     * than a tolerance: v is upward, so the wood has negative v.
     */
    List<Spot> outline(double tolerance) {
        List<Spot> points = new ArrayList<>();
        side(false, tolerance, points);
        int ridge = points.size();
        List<Spot> other = new ArrayList<>();
        side(true, tolerance, other);
        Collections.reverse(other);
        Spot first = other.get(0);
        points.addAll(first.equals(points.get(ridge - 1)) ? other.subList(1, other.size()) : other);
        return points;
    }

    /** One side from its edge to the ridge. */
    private void side(boolean onTreble, double tolerance, List<Spot> points) {
        double middle = diagonal(onTreble);
        points.add(at(0, onTreble, middle));
        halved(0, 1, onTreble, middle, tolerance, points);
        halved(1, 2, onTreble, middle, tolerance, points);
    }

    private void halved(double from, double to, boolean onTreble, double middle, double tolerance, List<Spot> points) {
        Spot a = at(from, onTreble, middle);
        Spot b = at(to, onTreble, middle);
        double between = (from + to) / 2;
        Polyline chord = Polyline.open(List.of(a, b));
        boolean near = to - from <= COARSEST
                && chord.distanceMm(at(between, onTreble, middle)) <= tolerance / 2
                && chord.distanceMm(at((from + between) / 2, onTreble, middle)) <= tolerance
                && chord.distanceMm(at((between + to) / 2, onTreble, middle)) <= tolerance;
        if (near || to - from < FINEST) {
            points.add(b);
        } else {
            halved(from, between, onTreble, middle, tolerance, points);
            halved(between, to, onTreble, middle, tolerance, points);
        }
    }

    /** Where a side's unit curve crosses its diagonal: {@code 2^(-1/p)}. */
    double diagonal(boolean onTreble) {
        return StrictMath.pow(2, -1 / arc(onTreble).exponent());
    }

    /**
     * A point of a side by its place along it, 0 at the edge and 2 at the ridge: to 1 the depth runs evenly, then the width,
     * each where the curve is not steep in it.
     */
    Spot at(double place, boolean onTreble, double middle) {
        double z = unitDepth(place, onTreble, middle);
        double across = across(unitWidth(place, onTreble, middle), z);
        return new Spot(onTreble ? across : -across, -depth * z);
    }

    /** Depth of that point on the unit curve. */
    double unitDepth(double place, boolean onTreble, double middle) {
        return place <= 1 ? place * middle : arc(onTreble).depthAt((2 - place) * middle, 1, 1);
    }

    /** Its half-width on the unit curve. */
    double unitWidth(double place, boolean onTreble, double middle) {
        return place <= 1 ? arc(onTreble).halfWidthAt(place * middle, 1, 1) : (2 - place) * middle;
    }

    /** Half the width at a point of the unit curve. */
    double across(double unitWidth, double unitDepth) {
        double wide = halfWidth * unitWidth;
        return heel == 0 ? wide : (1 - heel) * wide + heel * (top - narrowing * depth * unitDepth);
    }

    /** Half the width so deep below the glue face, on one side; 0 at the full depth and below. */
    double halfWidthAt(double z, boolean onTreble) {
        if (z >= depth) {
            return heel > 0 && z == depth ? heel * (top - narrowing * depth) : 0;
        }
        double round = arc(onTreble).halfWidthAt(z, halfWidth, depth);
        return heel == 0 ? round : (1 - heel) * round + heel * (top - narrowing * z);
    }

    /** Area in mm2. Exact. */
    double area() {
        double round = halfWidth * depth * (bass.unitArea() + treble.unitArea());
        return (1 - heel) * round + heel * 2 * (top * depth - narrowing * depth * depth / 2);
    }

    /** Signed distance from a point of the wood to the back: negative when the point is beyond it. */
    double distance(double y, double v) {
        if (heel > 0) {
            return inTheHeel(y, v);
        }
        boolean onTreble = y >= 0;
        double own = onTreble ? toTreble(y, v) : toBass(-y, v);
        if (isEven()) {
            return own;
        }
        // With unlike sides the nearest point may lie across the centreline.
        double other = Math.abs(onTreble ? toBass(-y, v) : toTreble(y, v));
        return other < Math.abs(own) ? Math.copySign(other, own) : own;
    }

    /** The same where the section is a blend: its sides sought by depth, its cap a level line. */
    private double inTheHeel(double y, double v) {
        double least = Math.abs(depth - v);
        boolean nearer = y >= 0;
        for (boolean onTreble : isEven() ? new boolean[] {nearer} : new boolean[] {true, false}) {
            double u = onTreble ? y : -y;
            double cap = halfWidthAt(depth, onTreble);
            double beyond = Math.max(0, u - cap);
            least = Math.min(least, Math.sqrt(beyond * beyond + (depth - v) * (depth - v)));
            least = Math.min(least, toSide(u, v, onTreble));
        }
        boolean inside = v < depth && (y >= 0 ? y < halfWidthAt(v, true) : -y < halfWidthAt(v, false));
        return inside ? least : -least;
    }

    private double toSide(double u, double v, boolean onTreble) {
        return arc(onTreble).blendDistance(u, v, (1 - heel) * halfWidth, heel * top, heel * narrowing, depth);
    }

    /**
     * Wood left under a channel of this section.
     *
     * @param middle the channel's middle, positive toward the treble side
     * @param width the channel's width
     * @param floor depth of the floor below the glue face
     * @param rounding radius of the floor's corners, 0 for square ones, at most half the width and the depth
     */
    double woodUnder(double middle, double width, double floor, double rounding) {
        double reach = 0.5 * width - rounding;
        double v = floor - rounding;
        if (isEven()) {
            // The distance falls with |y|, so the corner further from the middle is the one that counts.
            double y = Math.abs(middle) + reach;
            return (heel == 0 ? toTreble(y, v) : inTheHeel(y, v)) - rounding;
        }
        return Math.min(distance(middle - reach, v), distance(middle + reach, v)) - rounding;
    }

    /**
     * The same, and how the distance in space goes on from there; not in the heel.
     *
     * @param along how the half axes change, which takes the step from the foot
     */
    double woodUnder(double middle, double width, double floor, double rounding, AlongNeck along) {
        double reach = 0.5 * width - rounding;
        double v = floor - rounding;
        if (isEven()) {
            return treble.distance(Math.abs(middle) + reach, v, halfWidth, depth, along) - rounding;
        }
        double least = Double.POSITIVE_INFINITY;
        for (double y : new double[] {middle - reach, middle + reach}) {
            AlongNeck toTreble = along.again();
            AlongNeck toBass = along.again();
            double onTreble = treble.distance(y, v, halfWidth, depth, toTreble);
            double onBass = bass.distance(-y, v, halfWidth, depth, toBass);
            boolean treblesIsNearer = Math.abs(onTreble) < Math.abs(onBass);
            double there = Math.copySign(Math.min(Math.abs(onTreble), Math.abs(onBass)), y >= 0 ? onTreble : onBass);
            if (there < least) {
                least = there;
                along.take(treblesIsNearer ? toTreble : toBass);
            }
        }
        return least - rounding;
    }

    /** Whether the wood is thinnest at the corner on the treble side. */
    boolean thinnestOnTreble(double middle, double width, double floor, double rounding) {
        double reach = 0.5 * width - rounding;
        double v = floor - rounding;
        return distance(middle + reach, v) < distance(middle - reach, v);
    }

    /** Whether the nearest point of the back lies toward the treble side of a point; false where both sides are as near. */
    boolean isNearestOnTreble(double y, double v) {
        double toTreble = Math.abs(heel > 0 ? toSide(y, v, true) : toTreble(y, v));
        double toBass = Math.abs(heel > 0 ? toSide(-y, v, false) : toBass(-y, v));
        return y > 0 ? toTreble <= toBass : toTreble < toBass;
    }

    /** Depth of the back below the glue face at y, 0 outside the section. */
    double depthAt(double y) {
        boolean onTreble = y >= 0;
        double out = Math.abs(y);
        if (heel == 0) {
            return arc(onTreble).depthAt(out, halfWidth, depth);
        }
        double lo = 0;
        double hi = depth;
        if (out >= halfWidthAt(0, onTreble)) {
            return 0;
        }
        if (out <= halfWidthAt(depth, onTreble)) {
            return depth;
        }
        while (hi - lo > NARROW * depth) {
            double middle = (lo + hi) / 2;
            if (halfWidthAt(middle, onTreble) > out) {
                lo = middle;
            } else {
                hi = middle;
            }
        }
        return (lo + hi) / 2;
    }

    private SuperellipseArc arc(boolean onTreble) {
        return onTreble ? treble : bass;
    }

    private boolean isEven() {
        return bass.equals(treble);
    }

    private double toTreble(double u, double v) {
        return treble.distance(u, v, halfWidth, depth);
    }

    private double toBass(double u, double v) {
        return bass.distance(u, v, halfWidth, depth);
    }
}
