package org.neckgeom.strength;

/** How wood changes its size across the grain with its moisture. */
final class Movement {

    /** Moisture, in percent, above which wood neither swells nor shrinks. */
    static final double FIBRE_SATURATION = 30;

    private Movement() {}

    /**
     * Returns the factor from the size at one moisture to that at another.
     *
     * <p>{@code (1 - S (30 - M2)/30)/(1 - S (30 - M1)/30)}: Wood Handbook (2010) Eq. 13-3. Going there and back gives 1
     * exactly, which {@code 1 + C (M2 - M1)} does not. Estimate: straight line from 0 to 30 % moisture.
     *
     * @param shrinkage S, green to ovendry, a ratio of the green size
     * @param fromPercent M1, moisture in percent
     * @param toPercent M2, moisture in percent
     */
    static double factor(double shrinkage, double fromPercent, double toPercent) {
        return sizeOverGreen(shrinkage, toPercent) / sizeOverGreen(shrinkage, fromPercent);
    }

    private static double sizeOverGreen(double shrinkage, double percent) {
        return 1 - shrinkage * Math.max(0, FIBRE_SATURATION - percent) / FIBRE_SATURATION;
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
