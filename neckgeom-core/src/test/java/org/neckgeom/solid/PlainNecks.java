package org.neckgeom.solid;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.Volute;

/**
 * Invented necks by lot of the kind that the plain formulas knew before there was one solid: square nut, head without swing, as
 * wide all along, in one piece; back straight through two depths; channel level and in the middle. The formulas stand here as
 * they were, on plain doubles.
 *
 * @param second fret of the back's second depth; the first is at fret 1
 * @param power exponent of the back on both sides
 * @param pitch of the head in deg
 */
record PlainNecks(
        double scale,
        double nut,
        double growth,
        double depth,
        double deeper,
        int second,
        double power,
        double pitch,
        double headLength,
        double headWidth,
        double headThickness,
        double start,
        double rodWidth,
        double rodHeight) {

    static final int BODY = 14;
    private static final int FIRST = 1;
    private static final int FAR = 12;

    static PlainNecks of(SplittableRandom random) {
        return new PlainNecks(
                random.nextDouble(560, 700),
                random.nextDouble(36, 54),
                random.nextDouble(4, 13),
                random.nextDouble(16, 19),
                random.nextDouble(0.2, 3),
                random.nextInt(4, BODY),
                random.nextInt(3) == 0 ? 2 : random.nextDouble(1.6, 3.5),
                random.nextDouble(1, 25),
                random.nextDouble(150, 230),
                random.nextDouble(70, 95),
                random.nextDouble(12, 17),
                random.nextDouble(14, 30),
                random.nextDouble(4, 8),
                random.nextDouble(6, 9.5));
    }

    /** As wide and as deep all along. */
    PlainNecks level() {
        return new PlainNecks(
                scale,
                nut,
                0,
                depth,
                0,
                second,
                power,
                pitch,
                headLength,
                headWidth,
                headThickness,
                start,
                rodWidth,
                rodHeight);
    }

    PlainNecks elliptic() {
        return new PlainNecks(
                scale,
                nut,
                growth,
                depth,
                deeper,
                second,
                2,
                pitch,
                headLength,
                headWidth,
                headThickness,
                start,
                rodWidth,
                rodHeight);
    }

    Neck neck() {
        return neck(back(), head());
    }

    BackProfile back() {
        return BackProfile.between(mm(depth), mm(depth + deeper))
                .atFrets(FIRST, second)
                .power(power);
    }

    BackProfile voluted(double extra, double length) {
        return back().volute(Volute.of(mm(extra), mm(length)));
    }

    BackProfile turned(double radius) {
        return back().heelTransition(
                        HeelTransition.ofRadius(mm(radius)).slope(deg(70)).capLength(mm(12)));
    }

    Head head() {
        return Head.angled(deg(pitch))
                .length(mm(headLength))
                .width(mm(headWidth))
                .thickness(mm(headThickness));
    }

    Neck neck(BackProfile back, Head head) {
        return Neck.named("plain, by lot")
                .scale(mm(scale))
                .fingerboard(Fingerboard.tapered(mm(nut), mm(nut + growth))
                        .farWidthAtFret(FAR)
                        .thickness(mm(6)))
                .back(back)
                .frets(20)
                .bodyAtFret(BODY)
                .head(head)
                .heel(Heel.of(mm(85), mm(2 * halfWidthAt(joint()))).capWidth(mm(24)))
                .channel(
                        Channel.forRod(TrussRod.twoWay(mm(joint() - 60 - start)).section(mm(rodWidth), mm(rodHeight)))
                                .startingAt(mm(start)));
    }

    double rad() {
        return Math.toRadians(pitch);
    }

    double fret(int n) {
        return scale * (1 - Math.pow(2, -n / 12.0));
    }

    double joint() {
        return fret(BODY);
    }

    /** Rule of three between two widths. */
    double halfWidthAt(double x) {
        return nut / 2 + growth / 2 * x / fret(FAR);
    }

    /** Rule of three between two depths. */
    double depthAt(double x) {
        return depth + deeper * (x - fret(FIRST)) / (fret(second) - fret(FIRST));
    }

    /** Up to the second of the two depths, where the plain formula took the heel's blocks to begin. */
    double blankEnd() {
        return fret(second);
    }

    /** {@code L sin a + t cos a}. */
    double headDepth() {
        return headLength * Math.sin(rad()) + headThickness * Math.cos(rad());
    }

    /** The deeper of the head and of 65 places of the back up to the second depth. */
    double blankThickness(double extra, double length) {
        double deepest = headDepth();
        for (int i = 0; i <= 64; i++) {
            double x = blankEnd() * i / 64;
            double volute = x < length ? extra * (1 + Math.cos(Math.PI * x / length)) / 2 : 0;
            deepest = Math.max(deepest, depthAt(x) + volute);
        }
        return deepest;
    }

    /** {@code L cos a} before the nut, and up to the body joint. */
    double blankLength() {
        return headLength * Math.cos(rad()) + joint();
    }

    /** The greatest that a point of the back moves across per mm along: both half axes grow evenly. */
    double steepest() {
        return Math.hypot(growth / 2 / fret(FAR), deeper / (fret(second) - fret(FIRST)));
    }

    /** Distance in the section from a corner of the floor to {@code |y/a|^p + |z/b|^p = 1}: laid out by an angle, narrowed by the golden section. */
    double woodInSection(double x, double width, double floor) {
        double step = Math.PI / 2 / 96;
        int best = 0;
        for (int i = 1; i <= 96; i++) {
            best = away(x, i * step, width, floor) < away(x, best * step, width, floor) ? i : best;
        }
        double lo = Math.max(0, best - 1) * step;
        double hi = Math.min(96, best + 1) * step;
        double golden = (Math.sqrt(5) - 1) / 2;
        for (int k = 0; k < 60; k++) {
            double one = hi - golden * (hi - lo);
            double two = lo + golden * (hi - lo);
            if (away(x, one, width, floor) < away(x, two, width, floor)) {
                hi = two;
            } else {
                lo = one;
            }
        }
        return away(x, (lo + hi) / 2, width, floor);
    }

    private double away(double x, double t, double width, double floor) {
        double y = halfWidthAt(x) * Math.pow(Math.cos(t), 2 / power);
        double z = depthAt(x) * Math.pow(Math.sin(t), 2 / power);
        return Math.hypot(y - width / 2, z - floor);
    }

    /**
     * The same for an ellipse, by its normal: the foot of (u, v) is {@code (a^2 u / (s + a^2), b^2 v / (s + b^2))}, s between
     * {@code b v - b^2} and 0 (textbook geometry, from memory); s by halving.
     */
    double woodInEllipse(double x, double width, double floor) {
        double a = halfWidthAt(x);
        double b = depthAt(x);
        double u = width / 2;
        double lo = Math.max(b * floor - b * b, a * u - a * a);
        double hi = 0;
        for (int k = 0; k < 60; k++) {
            double s = (lo + hi) / 2;
            double y = a * u / (s + a * a);
            double z = b * floor / (s + b * b);
            if (y * y + z * z > 1) {
                lo = s;
            } else {
                hi = s;
            }
        }
        double s = (lo + hi) / 2;
        return Math.hypot(a * a * u / (s + a * a) - u, b * b * floor / (s + b * b) - floor);
    }

    /** The least of 200 stations in sections, the scan of before. */
    double woodScanned(double width, double floor, double end) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 200; i++) {
            least = Math.min(least, woodInEllipse(start + (end - start) * i / 199, width, floor));
        }
        return least;
    }
}
