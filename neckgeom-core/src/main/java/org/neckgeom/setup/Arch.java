package org.neckgeom.setup;

/**
 * A channel floor that is an arc of a circle, or level: depth at any station. Exact.
 *
 * <p>With sagitta {@code s = middle - end} over a length {@code L} the curvature is
 * {@code k = 2 s / (L^2/4 + s^2)}, and at y from the middle the floor lies
 * {@code k y^2 / (1 + sqrt(1 - k^2 y^2))} above the deepest point. This is
 * {@code R - sqrt(R^2 - y^2)} without its cancellation, holds for a level floor and, with s below 0,
 * for a channel laid from the back, shallow in the middle.
 */
final class Arch {

    private Arch() {}

    static double depthAt(double x, double start, double end, double endDepth, double middleDepth) {
        double length = end - start;
        double k = curvature(length, middleDepth - endDepth);
        double y = x - (start + end) / 2;
        double root = Math.sqrt(Math.max(0, 1 - k * k * y * y));
        return middleDepth - k * y * y / (1 + root);
    }

    /** The signed curvature 1/R in 1/mm; 0 for a level floor. */
    static double curvature(double length, double sagitta) {
        return 2 * sagitta / (length * length / 4 + sagitta * sagitta);
    }
}
