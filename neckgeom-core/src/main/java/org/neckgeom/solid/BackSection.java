package org.neckgeom.solid;

/**
 * One section across the neck's wood, on plain doubles: two superellipse quarters that meet on the centreline, at the
 * full depth. Immutable.
 *
 * <p>The section is convex, so the distance to its back is a concave function of the point: over the flat floor of a
 * channel it is least at one of the floor's two corners, and for a rounded corner it is the distance of the rounding's
 * centre less the rounding's radius. That makes the answer exact without searching along the floor.
 *
 * @param halfWidth half the width of the glue face, more than 0
 * @param depth wood below the glue face on the centreline, more than 0
 */
record BackSection(SuperellipseArc bass, SuperellipseArc treble, double halfWidth, double depth) {

    /** Signed distance from a point of the wood to the back: negative when the point is beyond it. */
    double distance(double y, double v) {
        boolean onTreble = y >= 0;
        double own = onTreble ? toTreble(y, v) : toBass(-y, v);
        if (isEven()) {
            return own;
        }
        // With unlike sides the nearest point may lie across the centreline.
        double other = Math.abs(onTreble ? toBass(-y, v) : toTreble(y, v));
        return other < Math.abs(own) ? Math.copySign(other, own) : own;
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
            return toTreble(Math.abs(middle) + reach, v) - rounding;
        }
        return Math.min(distance(middle - reach, v), distance(middle + reach, v)) - rounding;
    }

    /** Whether the wood is thinnest at the corner on the treble side. */
    boolean thinnestOnTreble(double middle, double width, double floor, double rounding) {
        double reach = 0.5 * width - rounding;
        double v = floor - rounding;
        return distance(middle + reach, v) < distance(middle - reach, v);
    }

    /** Whether the nearest point of the back lies toward the treble side of a point; false where both sides are as near. */
    boolean isNearestOnTreble(double y, double v) {
        double toTreble = Math.abs(toTreble(y, v));
        double toBass = Math.abs(toBass(-y, v));
        return y > 0 ? toTreble <= toBass : toTreble < toBass;
    }

    /** Depth of the back below the glue face at y, 0 outside the section. */
    double depthAt(double y) {
        return y >= 0 ? treble.depthAt(y, halfWidth, depth) : bass.depthAt(-y, halfWidth, depth);
    }

    private boolean isEven() {
        return bass == treble;
    }

    private double toTreble(double u, double v) {
        return treble.distance(u, v, halfWidth, depth);
    }

    private double toBass(double u, double v) {
        return bass.distance(u, v, halfWidth, depth);
    }
}
