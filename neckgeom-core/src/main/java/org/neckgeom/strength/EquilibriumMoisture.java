package org.neckgeom.strength;

/**
 * Moisture content that wood comes to in still air, after Wood Handbook (FPL-GTR-190, 2010) Eq. 4-5, in degrees Celsius.
 *
 * <p>{@code M = 1800/W (K h/(1 - K h) + (K1 K h + 2 K1 K2 K^2 h^2)/(1 + K1 K h + K1 K2 K^2 h^2))}. Estimate.
 */
final class EquilibriumMoisture {

    private EquilibriumMoisture() {}

    /**
     * Returns moisture in percent of the ovendry mass.
     *
     * @param humidity relative humidity, a ratio in [0, 1)
     * @param celsius temperature in degrees Celsius
     */
    static double percent(double humidity, double celsius) {
        double t = celsius;
        double w = 349 + 1.29 * t + 0.0135 * t * t;
        double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
        double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
        double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
        double kh = k * humidity;
        double dissolved = kh / (1 - kh);
        double second = k1 * k2 * kh * kh;
        double hydrated = (k1 * kh + 2 * second) / (1 + k1 * kh + second);
        return 1800 / w * (dissolved + hydrated);
    }
}
