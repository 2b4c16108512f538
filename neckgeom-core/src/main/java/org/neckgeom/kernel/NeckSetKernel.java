package org.neckgeom.kernel;

/**
 * The neck's angle on plain doubles: millimetres and radians.
 *
 * <p>With the body's reference plane level, a point of the fret plane at distance S from the joint toward the bridge
 * lies {@code h_j + S sin t} above it, and the string {@code a_s cos t} higher.
 */
public final class NeckSetKernel {

    private NeckSetKernel() {}

    /** Height of the string's underside over the fret plane at the saddle, on the straight line through nut and 12th fret. */
    public static double stringAtSaddle(double scaleMm, double compensationMm, double atNutMm, double atTwelfthMm) {
        return atNutMm + (atTwelfthMm - atNutMm) * ((scaleMm + compensationMm) / (scaleMm / 2));
    }

    /**
     * Angle t with {@code H = S sin t + a_s cos t}: {@code asin(H / hyp) - atan2(a_s, S)}, hyp the hypotenuse of S and a_s.
     *
     * <p>Written as one arctangent: near a level neck the two angles would cancel. Of {@code h s - c w}, the sine, the
     * square {@code (h s)^2 - (c w)^2 = h^2 - c^2} is a product of a sum and a difference of what was given.
     */
    public static double angle(double riseMm, double reachMm, double stringMm) {
        double hyp = StrictMath.hypot(reachMm, stringMm);
        double h = riseMm / hyp;
        double s = reachMm / hyp;
        double c = stringMm / hyp;
        double w = StrictMath.sqrt((1 - h) * (1 + h));
        double one = h * s;
        double two = c * w;
        double sine = one * two > 0 ? (riseMm - stringMm) / hyp * ((riseMm + stringMm) / hyp) / (one + two) : one - two;
        return StrictMath.atan2(sine, s * w + h * c);
    }

    /**
     * What a turn d at angle t does to the string's height over the fret plane at the saddle:
     * {@code 2 sin(d/2) (a_s sin m - S cos m) / cos(t + d)}, {@code m = t + d/2}, which is the difference of
     * {@code (H - S sin t) / cos t} without the difference.
     */
    public static double stringChange(double reachMm, double stringMm, double angleRad, double turnRad) {
        double middle = angleRad + turnRad / 2;
        return 2
                * StrictMath.sin(turnRad / 2)
                * (stringMm * StrictMath.sin(middle) - reachMm * StrictMath.cos(middle))
                / StrictMath.cos(angleRad + turnRad);
    }

    /** Drop of a dome of radius R at distance r from its pole: {@code R - sqrt(R^2 - r^2)}, free of cancellation. */
    public static double drop(double radiusMm, double distanceMm) {
        if (Double.isInfinite(radiusMm)) {
            return 0.0;
        }
        return distanceMm
                * distanceMm
                / (radiusMm + StrictMath.sqrt((radiusMm - distanceMm) * (radiusMm + distanceMm)));
    }
}
