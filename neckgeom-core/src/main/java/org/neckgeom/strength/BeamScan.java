package org.neckgeom.strength;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.NoAnswer;

/**
 * The bent neck under its strings, and for one newton in the rod, from the nut to the clamped body joint.
 *
 * <p>The tension of the strings acts on the bent neck: their line runs from the lifted nut to the saddle, so the bow adds to
 * its own moment: 4 to 9 % more relief on the necks of the tests. In the nut's frame, rise u and slope 0 there,
 * {@code EI u'' = M(x) + C x - P u} with the saddle held to the clamped end by
 * {@code C = P u'(L) - (P/xs)(L u'(L) - u(L))}: a linear initial value problem, solved for M and for x alone.
 *
 * <p>Panels end wherever section or moment jumps. In each the two-stage Gauss-Legendre rule, whose two unknown curvatures
 * come from two linear equations; error of fourth order in the panel length.
 *
 * @param strings the line under the strings, the rod slack; rise and slope 0 at the nut
 * @param rod the line for one newton in the rod while the strings pull, or null if there is no rod
 */
record BeamScan(Bend strings, @Nullable Bend rod) {

    /** Default number of panels for a neck: 240 stations. */
    static final int USUAL_PANELS = 120;

    /** For a difference or the end of an interval: a fourth-order rule needs few. */
    static final int FEW_PANELS = 36;

    private static final double ROOT = Math.sqrt(3);
    private static final double FIRST = 0.5 - ROOT / 6;
    private static final double SECOND = 0.5 + ROOT / 6;
    private static final double A11 = 1 / 24.0;
    private static final double A12 = 1 / 8.0 - ROOT / 12;
    private static final double A21 = 1 / 8.0 + ROOT / 12;

    /**
     * Scans a neck.
     *
     * @param rodPull the rod, or null
     * @param panels about how many; two stations each
     * @throws ArithmeticException if the tension of the strings would buckle the neck
     */
    static BeamScan of(NeckBeam beam, StringPull pull, @Nullable RodPull rodPull, int panels) {
        return over(nodes(beam.breaks(jumps(pull, rodPull)), panels), beam, pull, rodPull);
    }

    /** Over given nodes: a method of its own, as the streams that find the nodes would keep the compiler from inlining its loop. */
    private static BeamScan over(double[] x, NeckBeam beam, StringPull pull, @Nullable RodPull rodPull) {
        Stations stations = new Stations(x, beam);
        Track byStrings = new Track(x);
        Track byRamp = new Track(x);
        Track byRod = new Track(x);
        Panel panel = new Panel();
        for (int i = 0; i + 1 < x.length; i++) {
            double h = x[i + 1] - x[i];
            double x1 = x[i] + FIRST * h;
            double x2 = x[i] + SECOND * h;
            double axis1 = stations.axis[2 * i];
            double axis2 = stations.axis[2 * i + 1];
            double flexible1 = stations.flexible[2 * i];
            double flexible2 = stations.flexible[2 * i + 1];
            panel.set(h, pull.pull() * flexible1, pull.pull() * flexible2);
            byStrings.step(i, panel, pull.moment(x1, axis1) * flexible1, pull.moment(x2, axis2) * flexible2);
            byRamp.step(i, panel, x1 * flexible1, x2 * flexible2);
            if (rodPull != null) {
                byRod.step(i, panel, rodPull.moment(x1, axis1) * flexible1, rodPull.moment(x2, axis2) * flexible2);
            }
        }
        double left = 1 - byRamp.turn(pull);
        if (!(left > 0)) {
            throw NoAnswer.because(
                    "bow", "buckles", "the neck would buckle under the tension of the strings: it is too slender");
        }
        byStrings.add(byRamp, byStrings.turn(pull) / left);
        byRod.add(byRamp, byRod.turn(pull) / left);
        return new BeamScan(byStrings.bend(), rodPull == null ? null : byRod.bend());
    }

    private static double[] jumps(StringPull pull, @Nullable RodPull rodPull) {
        DoubleStream ofRod = rodPull == null ? DoubleStream.empty() : DoubleStream.of(rodPull.start(), rodPull.end());
        return DoubleStream.concat(ofRod, Arrays.stream(pull.starts())).toArray();
    }

    /** Neutral axis and flexibility at each panel's two stations, in a pass of their own: no station waits for another here. */
    private static final class Stations {

        private final double[] axis;
        private final double[] flexible;

        Stations(double[] x, NeckBeam beam) {
            axis = new double[2 * x.length - 2];
            flexible = new double[axis.length];
            SectionMoments section = new SectionMoments();
            for (int i = 0; i + 1 < x.length; i++) {
                double h = x[i + 1] - x[i];
                put(2 * i, x[i] + FIRST * h, beam, section);
                put(2 * i + 1, x[i] + SECOND * h, beam, section);
            }
        }

        private void put(int i, double at, NeckBeam beam, SectionMoments section) {
            beam.section(at, section);
            axis[i] = section.neutralAxis();
            flexible[i] = beam.flexibility(at, section);
        }
    }

    /** The two linear equations of a panel: {@code k = q - p (u + c h v + h^2 A k)}, solved once for all loads. */
    private static final class Panel {

        private double h;
        private double p1;
        private double p2;
        private double m11;
        private double m12;
        private double m21;
        private double m22;

        void set(double length, double pullOver1, double pullOver2) {
            h = length;
            p1 = pullOver1;
            p2 = pullOver2;
            double h2 = h * h;
            double a = 1 + p1 * h2 * A11;
            double b = p1 * h2 * A12;
            double c = p2 * h2 * A21;
            double d = 1 + p2 * h2 * A11;
            double over = 1 / (a * d - b * c);
            m11 = d * over;
            m12 = -b * over;
            m21 = -c * over;
            m22 = a * over;
        }
    }

    /** Rise and slope over the nodes for one load. */
    private static final class Track {

        private final double[] x;
        private final double[] slope;
        private final double[] rise;

        Track(double[] x) {
            this.x = x;
            this.slope = new double[x.length];
            this.rise = new double[x.length];
        }

        void step(int i, Panel panel, double q1, double q2) {
            double h = panel.h;
            double u = rise[i];
            double v = slope[i];
            double r1 = q1 - panel.p1 * (u + FIRST * h * v);
            double r2 = q2 - panel.p2 * (u + SECOND * h * v);
            double k1 = panel.m11 * r1 + panel.m12 * r2;
            double k2 = panel.m21 * r1 + panel.m22 * r2;
            slope[i + 1] = v + h / 2 * (k1 + k2);
            rise[i + 1] = u + h * v + h * h / 2 * (SECOND * k1 + FIRST * k2);
        }

        /** What this line adds to C. */
        double turn(StringPull pull) {
            int last = x.length - 1;
            return pull.pull() * slope[last] - pull.overSaddle() * (x[last] * slope[last] - rise[last]);
        }

        /** Adds a multiple of another line over the same nodes. */
        void add(Track other, double factor) {
            for (int i = 0; i < x.length; i++) {
                slope[i] += factor * other.slope[i];
                rise[i] += factor * other.rise[i];
            }
        }

        Bend bend() {
            return new Bend(x, slope, rise);
        }
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
}
