package org.neckgeom.strength;

/**
 * Curvature along the neck, integrated twice: under the strings, and for one newton in the rod.
 *
 * <p>Panels end wherever section or moment jumps; each has two Gauss points, which make slope and rise exact for a
 * curvature that is quadratic in a panel. Error of fourth order in the panel length.
 */
final class BeamScan {

    /** Panels for a neck unless told: 240 stations. */
    static final int USUAL_PANELS = 120;

    private static final double GAUSS = 0.5 / Math.sqrt(3);

    private final Bend strings;
    private final Bend rod;

    private BeamScan(Bend strings, Bend rod) {
        this.strings = strings;
        this.rod = rod;
    }

    static BeamScan of(NeckBeam beam, StringPull pull, RodPull rodPull, int panels) {
        double[] breaks = rodPull == null ? beam.breaks() : beam.breaks(rodPull.start(), rodPull.end());
        double[] x = nodes(breaks, panels);
        int n = x.length;
        double[] stringSlope = new double[n];
        double[] stringRise = new double[n];
        double[] rodSlope = new double[n];
        double[] rodRise = new double[n];
        SectionMoments section = new SectionMoments();
        for (int i = 0; i + 1 < n; i++) {
            double h = x[i + 1] - x[i];
            double middle = (x[i] + x[i + 1]) / 2;
            double ds = 0;
            double rs = 0;
            double dr = 0;
            double rr = 0;
            for (int side = -1; side <= 1; side += 2) {
                double at = middle + side * GAUSS * h;
                beam.section(at, section);
                double axis = section.neutralAxis();
                double flexibility = h / 2 / section.bendingStiffness();
                double toEnd = x[i + 1] - at;
                double bend = pull.moment(at, axis) * flexibility;
                ds += bend;
                rs += toEnd * bend;
                if (rodPull != null) {
                    bend = rodPull.moment(at, axis) * flexibility;
                    dr += bend;
                    rr += toEnd * bend;
                }
            }
            stringSlope[i + 1] = stringSlope[i] + ds;
            stringRise[i + 1] = stringRise[i] + h * stringSlope[i] + rs;
            rodSlope[i + 1] = rodSlope[i] + dr;
            rodRise[i + 1] = rodRise[i] + h * rodSlope[i] + rr;
        }
        Bend strings = new Bend(x, stringSlope, stringRise);
        return new BeamScan(strings, rodPull == null ? null : new Bend(x, rodSlope, rodRise));
    }

    /** Nodes with about the wanted number of panels, at least one in every piece. */
    private static double[] nodes(double[] breaks, int panels) {
        double whole = breaks[breaks.length - 1] - breaks[0];
        int[] counts = new int[breaks.length - 1];
        int sum = 0;
        for (int k = 0; k < counts.length; k++) {
            counts[k] = (int) Math.max(1, Math.round(panels * (breaks[k + 1] - breaks[k]) / whole));
            sum += counts[k];
        }
        double[] x = new double[sum + 1];
        int i = 0;
        for (int k = 0; k < counts.length; k++) {
            for (int j = 0; j < counts[k]; j++) {
                x[i++] = breaks[k] + (breaks[k + 1] - breaks[k]) * j / counts[k];
            }
        }
        x[i] = breaks[breaks.length - 1];
        return x;
    }

    /** The line under the strings, the rod slack; its nut end at rise and slope 0. */
    Bend strings() {
        return strings;
    }

    /** The line for one newton in the rod, or null if there is no rod. */
    Bend rod() {
        return rod;
    }
}
