package org.neckgeom.geometry;

/**
 * The neck's angle on plain doubles: millimetres and radians.
 *
 * <p>With the body's reference plane level, a point of the fret plane at distance S from the joint toward the bridge
 * stands {@code h_j + S sin t} above it, and the string {@code a_s cos t} higher.
 */
final class NeckSetKernel {

    private NeckSetKernel() {}

    /** Height of the string's top over the fret plane at the saddle, on the straight line through nut and 12th fret. */
    static double stringAtSaddle(double scaleMm, double compensationMm, double atNutMm, double atTwelfthMm) {
        return atNutMm + (atTwelfthMm - atNutMm) * ((scaleMm + compensationMm) / (scaleMm / 2));
    }

    /** Angle t with {@code H = S sin t + a_s cos t}: {@code asin(H / sqrt(S^2 + a_s^2)) - atan2(a_s, S)}. */
    static double angle(double riseMm, double reachMm, double stringMm) {
        return StrictMath.asin(riseMm / StrictMath.hypot(reachMm, stringMm)) - StrictMath.atan2(stringMm, reachMm);
    }

    /** String over the fret plane at the saddle when the angle is given: {@code (H - S sin t) / cos t}. */
    static double stringFromAngle(double riseMm, double reachMm, double angleRad) {
        return (riseMm - reachMm * StrictMath.sin(angleRad)) / StrictMath.cos(angleRad);
    }

    /** Turn that moves a point at distance S by d square to the arm: {@code asin(sin t + d / S) - t}. */
    static double turnFor(double changeMm, double reachMm, double angleRad) {
        return StrictMath.asin(StrictMath.sin(angleRad) + changeMm / reachMm) - angleRad;
    }

    /** Drop of a dome of radius R at distance r from its pole: {@code R - sqrt(R^2 - r^2)}, free of cancellation. */
    static double drop(double radiusMm, double distanceMm) {
        if (Double.isInfinite(radiusMm)) {
            return 0.0;
        }
        return distanceMm
                * distanceMm
                / (radiusMm + StrictMath.sqrt((radiusMm - distanceMm) * (radiusMm + distanceMm)));
    }
}
