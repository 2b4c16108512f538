package org.neckgeom.strength;

/**
 * The floor of a rod channel: straight, or an arc deepest in the middle.
 *
 * <p>{@code depth(x) = dm - (R - sqrt(R^2 - u^2))} with u from the middle, sagitta {@code s = dm - de} and
 * {@code R = (L^2/4 + s^2)/(2 s)}. Exact.
 *
 * @param start x of its nut end, mm
 * @param end x of its body end, mm
 * @param width width, mm
 * @param endDepth de, depth of the floor below the glue face at both ends, mm
 * @param middleDepth dm, depth in the middle, mm
 */
record RodPath(double start, double end, double width, double endDepth, double middleDepth) {

    static RodPath straight(double start, double end, double width, double depth) {
        return new RodPath(start, end, width, depth, depth);
    }

    boolean covers(double x) {
        return x >= start && x <= end;
    }

    /** Depth of the floor below the glue face at x, taken on beyond the ends as the same curve. */
    double depthAt(double x) {
        double s = middleDepth - endDepth;
        if (s == 0) {
            return middleDepth;
        }
        double half = (end - start) / 2;
        double u = x - (start + end) / 2;
        double r = (half * half + s * s) / (2 * s);
        // R - sqrt(R^2 - u^2) without its cancellation; a negative s gives a floor that is shallowest in the middle.
        return middleDepth - u * u / (r + Math.copySign(Math.sqrt(r * r - u * u), r));
    }
}
