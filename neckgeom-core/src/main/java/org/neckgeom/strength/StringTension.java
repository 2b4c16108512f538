package org.neckgeom.strength;

/** Tension of a string from its pitch: Mersenne's law as Taylor derived it, {@code T = mu (2 L f)^2}. */
final class StringTension {

    private StringTension() {}

    /**
     * Returns tension in N. Exact for an ideal flexible string.
     *
     * @param kgPerM mu, mass per length in kg/m
     * @param scaleMm L, speaking length in mm
     * @param hertz f, frequency in Hz
     */
    static double newton(double kgPerM, double scaleMm, double hertz) {
        double speed = 2 * scaleMm / 1000 * hertz;
        return kgPerM * speed * speed;
    }

    /** Mass per length of a plain round string: {@code rho pi d^2/4}, in kg/m from kg/m3 and mm. */
    static double plainKgPerM(double kgPerM3, double diameterMm) {
        double d = diameterMm / 1000;
        return kgPerM3 * Math.PI * d * d / 4;
    }

    /**
     * Mass per length of one close layer of round wire around a round core:
     * {@code rho pi^2 dw (dc + dw)/4}, kg/m. Estimate: the turns touch and the wire keeps its round section; the small
     * slope of the helix is left out.
     */
    static double windingKgPerM(double kgPerM3, double coreMm, double wireMm) {
        double dc = coreMm / 1000;
        double dw = wireMm / 1000;
        return kgPerM3 * Math.PI * Math.PI * dw * (dc + dw) / 4;
    }
}
