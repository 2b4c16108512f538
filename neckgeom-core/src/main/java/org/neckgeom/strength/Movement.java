package org.neckgeom.strength;

/** How wood changes its size across the grain with its moisture. */
final class Movement {

    /** Moisture, in percent, above which wood neither swells nor shrinks. */
    static final double FIBRE_SATURATION = 30;

    private Movement() {}

    /**
     * Returns the change from one moisture to another as a share of the size at the first.
     *
     * <p>{@code S (M2 - M1)/30 / (1 - S (30 - M1)/30)}: Wood Handbook (2010) Eq. 13-3. Exactly undone by going back,
     * which {@code C (M2 - M1)} is not. Estimate: straight line from 0 to 30 % moisture.
     *
     * @param shrinkage S, green to ovendry, a ratio of the green size
     * @param fromPercent M1, moisture in percent
     * @param toPercent M2, moisture in percent
     */
    static double change(double shrinkage, double fromPercent, double toPercent) {
        double from = Math.min(fromPercent, FIBRE_SATURATION);
        double to = Math.min(toPercent, FIBRE_SATURATION);
        // Not the ratio of two sizes less 1: a small change would lose its digits.
        return shrinkage * (to - from) / (FIBRE_SATURATION - shrinkage * (FIBRE_SATURATION - from));
    }

    /**
     * Returns the shrinkage in a direction across the grain: {@code ST cos^2 phi + SR sin^2 phi}. Estimate: the two are
     * principal strains, rings flat over the piece.
     *
     * @param radial SR, a ratio
     * @param tangential ST, a ratio
     * @param ringAngle phi, from the direction measured to the growth rings, rad: 0 where the rings lie along it
     */
    static double shrinkageAcross(double radial, double tangential, double ringAngle) {
        double c = StrictMath.cos(ringAngle);
        double s = StrictMath.sin(ringAngle);
        return tangential * c * c + radial * s * s;
    }
}
