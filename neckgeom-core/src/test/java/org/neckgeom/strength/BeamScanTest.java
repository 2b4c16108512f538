package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;

/** Bending against closed forms of Euler-Bernoulli beams and a finite-difference beam solved by Hipparchus. */
class BeamScanTest {

    static final Superellipse ELLIPSE = Superellipse.of(2);
    private static final double EXACT = 1e-7; // percent: 1e-9 relative

    /** A rectangle 50 mm x 21 mm with E = 12600 MPa: I = 38587.5 mm4. */
    static NeckBeam plank(double length) {
        return board(length, new Taper(50, 0), new Taper(21, 0));
    }

    static NeckBeam board(double length, Taper width, Taper thickness) {
        return new NeckBeam(
                length,
                new NeckBeam.Board(width, thickness, null, 12_600),
                new NeckBeam.Back(new Taper(0, 0), new Taper(1, 0), ELLIPSE, ELLIPSE, 12_600),
                null,
                0,
                List.of());
    }

    static RodPull couple(double length) {
        return new RodPull.Couple(0, length, 1);
    }

    @Test
    void of_bendsAPlankUnderEndMomentsAsTheTextbook() {
        // M L^2/(8 E I) and M L/(2 E I): 450 mm, 12000 N mm: 0.62473969179508538109 mm, 0.0055532417048452033875 rad.
        Bend bend = BeamScan.of(plank(450), StringPull.NONE, couple(450), 7).rod();

        assertThat(-12_000 * bend.gapAt(225, 0, 450)).isCloseTo(0.62473969179508538109, withinPercentage(EXACT));
        assertThat(12_000 * (bend.slopeAt(0) - bend.slopeAt(450)) / 2)
                .isCloseTo(0.0055532417048452033875, withinPercentage(EXACT));
    }

    @ParameterizedTest
    @CsvSource({"1", "3", "40"})
    void of_bendsACantileverUnderAnEndLoadAsTheTextbook(int panels) {
        // P L^3/(3 E I), P L^2/(2 E I): 100 mm, 50 N: 0.034279269782995082639 mm, 0.00051418904674492623958 rad.
        // Strings that rise from the neutral axis are such a load: M = 50 x.
        SectionMoments section = new SectionMoments();
        plank(100).section(0, section);
        StringPull pull = new StringPull(0, 0, 50, 0);
        Bend bend = BeamScan.of(plank(100), pull, null, panels).strings().clampedAtEnd();

        assertThat(bend.riseAt(0)).isCloseTo(0.034279269782995082639, withinPercentage(EXACT));
        assertThat(-bend.slopeAt(0)).isCloseTo(0.00051418904674492623958, withinPercentage(EXACT));
        assertThat(section.neutralAxis()).isEqualTo(10.5);
    }

    @Test
    void deepest_isThatOfOneEndMoment() {
        // M = 12000 N mm at the far end only: M L^2/(9 sqrt(3) E I) at L/sqrt(3): 0.32061655931674344829 mm.
        StringPull pull = new StringPull(0, 0, 12_000 / 450.0, 0);
        Bend bend = BeamScan.of(plank(450), pull, null, 200).strings();

        double at = bend.deepest(0, 450);

        assertThat(at).isCloseTo(450 / Math.sqrt(3), within(1e-3));
        assertThat(bend.gapAt(at, 0, 450)).isCloseTo(0.32061655931674344829, withinPercentage(1e-6));
        assertThat(bend.highest(0, 450)).isEqualTo(0);
    }

    @Test
    void of_bendsATaperedWidthAsTheClosedForm() {
        // EI = c (b0 + b1 x), constant M: rise = (M/(c b1^2)) (u ln(u/b0) - b1 x), u = b0 + b1 x.
        double b0 = 40;
        double b1 = 0.04;
        double c = 12_600 * Math.pow(21, 3) / 12;
        NeckBeam beam = board(400, new Taper(b0, b1), new Taper(21, 0));

        double rise =
                -BeamScan.of(beam, StringPull.NONE, couple(400), 120).rod().riseAt(400);

        double u = b0 + b1 * 400;
        assertThat(rise).isCloseTo((u * Math.log(u / b0) - b1 * 400) / (c * b1 * b1), withinPercentage(EXACT));
    }

    @Test
    void of_bendsATaperedDepthAsTheClosedForm() {
        // EI = c d^3, d = d0 + d1 x, constant M: rise = (M/c) (x/(2 d1 d0^2) - (1/d0 - 1/d)/(2 d1^2)).
        double d0 = 14;
        double d1 = 0.01;
        double c = 12_600 * 50 / 12.0;
        NeckBeam beam = board(400, new Taper(50, 0), new Taper(d0, d1));

        double rise =
                -BeamScan.of(beam, StringPull.NONE, couple(400), 120).rod().riseAt(400);

        double d = d0 + d1 * 400;
        double exact = (400 / (2 * d1 * d0 * d0) - (1 / d0 - 1 / d) / (2 * d1 * d1)) / c;
        assertThat(rise).isCloseTo(exact, withinPercentage(EXACT));
    }

    @Test
    void of_isOfFourthOrder() {
        NeckBeam beam = board(400, new Taper(50, 0), new Taper(10, 0.03));
        double[] error = new double[3];
        for (int i = 0; i < 3; i++) {
            double c = 12_600 * 50 / 12.0;
            double d = 10 + 0.03 * 400;
            double exact = (400 / (2 * 0.03 * 100) - (0.1 - 1 / d) / (2 * 0.03 * 0.03)) / c;
            double rise = -BeamScan.of(beam, StringPull.NONE, couple(400), 4 << i)
                    .rod()
                    .riseAt(400);
            error[i] = Math.abs(rise - exact);
        }

        assertThat(error[0] / error[1]).isBetween(13.0, 19.0);
        assertThat(error[1] / error[2]).isBetween(14.0, 18.0);
    }

    @Test
    void of_bendsAnEccentricColumnAsTheClosedForm() {
        // Pinned 450 mm, 700 N, end moments 12000 N mm: (M/P)(sec u - 1) = 0.64429208246930746789 mm in the middle.
        // Half
        // of it is a cantilever of 225 mm, its pull parallel to the neck and the saddle far away.
        SectionMoments section = new SectionMoments();
        plank(225).section(0, section);
        StringPull pull = new StringPull(700, 12_000 + 700 * section.neutralAxis(), 0, 0);

        Bend bend = BeamScan.of(plank(225), pull, null, 60).strings().clampedAtEnd();

        assertThat(bend.riseAt(0)).isCloseTo(0.64429208246930746789, withinPercentage(EXACT));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.901, 0.900851524650898",
        "100, 1.33, 1.3306733992765",
        "150, 1.75, 1.75102661811157",
        "200, 2.56, 2.56489539774337"
    })
    void of_bendsTheBenchmarkColumnAsPublished(double kip, double printed, double exact) {
        // ANSI/AISC 360, Commentary, second-order benchmark case 2: printed deflections in inches, exact ones from
        // tan(u)/u.
        double top = benchmarkColumn(kip);

        assertThat(top).isCloseTo(printed, within(0.006)).isCloseTo(exact, withinPercentage(1e-6));
    }

    /** Cantilever 28 ft, I = 484 in4, E = 29000 ksi, 1 kip across at the top; in kip and inches here. */
    static double benchmarkColumn(double kip) {
        double ei = 29_000 * 484;
        double thickness = 10;
        NeckBeam beam = new NeckBeam(
                336,
                new NeckBeam.Board(new Taper(12 * ei / Math.pow(thickness, 3), 0), new Taper(thickness, 0), null, 1),
                new NeckBeam.Back(new Taper(0, 0), new Taper(1, 0), ELLIPSE, ELLIPSE, 1),
                null,
                0,
                List.of());
        StringPull pull = new StringPull(kip, kip * thickness / 2, 1, 0);
        return BeamScan.of(beam, pull, null, 100).strings().clampedAtEnd().riseAt(0);
    }

    @Test
    void of_refusesANeckThatWouldBuckle() {
        // Euler: pi^2 E I/(4 L^2) = 5924 N for a cantilever of 450 mm; a saddle far away keeps the pull parallel.
        StringPull below = new StringPull(5800, 5800 * 10.5 + 1000, 0, 0);
        StringPull above = new StringPull(6050, 6050 * 10.5 + 1000, 0, 0);

        assertThat(BeamScan.of(plank(450), below, null, 60)
                        .strings()
                        .clampedAtEnd()
                        .riseAt(0))
                .isGreaterThan(5);
        assertThatThrownBy(() -> BeamScan.of(plank(450), above, null, 60))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("buckle");
    }

    @Tag("long")
    @Test
    void of_agreesWithAFiniteDifferenceBeam() {
        // Nothing shared with the code: sections summed from thin layers; w'' = (M + pull on the bent neck)/EI with
        // w = w' = 0 at the body joint as one linear system in all w, solved by Hipparchus.
        double length = 339;
        NeckBeam beam = NeckBeamTest.mandolin(length);
        StringPull pull = StringPull.NONE.plus(760, new Line(new Point(0, 0, 7.5), new Point(562, 0, 9.9)));
        RodPull rod = new RodPull.Couple(3, 303, 4.5);
        BeamScan scan = BeamScan.of(beam, pull, rod, BeamScan.USUAL_PANELS);
        int n = 678;
        double h = length / n;
        double slope = Math.atan2(9.9 - 7.5, 562);
        double along = 760 * Math.cos(slope);
        RealMatrix matrix = MatrixUtils.createRealMatrix(n + 1, n + 1);
        RealMatrix loads = MatrixUtils.createRealMatrix(n + 1, 2);
        for (int i = 1; i <= n; i++) {
            double x = i * h;
            double[] layers = NeckBeamTest.layers(beam, x);
            double f = h * h / layers[1];
            // The last row mirrors w beyond the clamp: w(n + 1) = w(n - 1) and w(n) = 0.
            matrix.addToEntry(i - 1, i - 1, i == n ? 2 : 1);
            matrix.addToEntry(i - 1, i, -2 + f * along);
            if (i < n) {
                matrix.addToEntry(i - 1, i + 1, 1);
            }
            matrix.addToEntry(i - 1, 0, -f * along * (1 - x / 562));
            loads.setEntry(i - 1, 0, f * along * (7.5 + Math.tan(slope) * x - layers[0]));
            loads.setEntry(i - 1, 1, x > 3 && x < 303 ? -4.5 * f : x == 3 || x == 303 ? -2.25 * f : 0);
        }
        matrix.setEntry(n, n, 1);
        RealMatrix w = new QRDecomposition(matrix).getSolver().solve(loads);

        Bend strings = scan.strings().clampedAtEnd();
        Bend perNewton = scan.rod().clampedAtEnd();
        for (int i = 0; i < n - 60; i += 60) {
            assertThat(strings.riseAt(i * h)).as("at %s mm", i * h).isCloseTo(w.getEntry(i, 0), withinPercentage(0.05));
            assertThat(perNewton.riseAt(i * h))
                    .as("at %s mm", i * h)
                    .isCloseTo(w.getEntry(i, 1), withinPercentage(0.05));
        }
    }

    @Test
    void rod_isTheAreaMomentOfItsCouple() {
        // Constant moment between two points of a prismatic beam, span L, couple from p to q: by Mohr's area-moment
        // theorem the gap in the middle of the span is M/(2 E I) times the integral of the smaller lever arm.
        NeckBeam beam = plank(400);
        Bend bend = BeamScan.of(beam, StringPull.NONE, new RodPull.Couple(50, 350, 1), 40)
                .rod();

        double area = 2 * (200 * 200 - 50 * 50) / 2.0 / 2;
        assertThat(-bend.gapAt(200, 0, 400)).isCloseTo(area / (12_600 * 38587.5), withinPercentage(EXACT));
    }
}
