package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.strength.ReferenceRows.number;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;

/** Transformed sections against quadrature (sections.csv: mpmath), a textbook's composite beam and closed forms. */
class SectionMomentsTest {

    static Stream<Map<String, String>> sections() {
        return ReferenceRows.of("sections.csv");
    }

    @ParameterizedTest
    @MethodSource("sections")
    void section_isThatOfQuadrature(Map<String, String> row) {
        NeckBeam beam = beam(row);
        SectionMoments section = new SectionMoments();

        beam.section(100, section);

        assertThat(section.stretchStiffness()).isCloseTo(number(row, "EA"), withinPercentage(1e-9));
        assertThat(section.neutralAxis()).isCloseTo(number(row, "neutral_axis"), withinPercentage(1e-9));
        assertThat(section.bendingStiffness()).isCloseTo(number(row, "EI"), withinPercentage(1e-9));
    }

    static NeckBeam beam(Map<String, String> row) {
        Taper radius = row.get("radius").isEmpty() ? null : new Taper(number(row, "radius"), 0);
        List<BondedBar> bars = new ArrayList<>();
        for (int i = 0; i < number(row, "bars"); i++) {
            bars.add(new BondedBar(
                    i == 0 ? -8 : 8,
                    0,
                    300,
                    number(row, "bar_width"),
                    number(row, "bar_top"),
                    number(row, "bar_height"),
                    number(row, "bar_modulus")));
        }
        Channel channel = number(row, "slot_depth") == 0
                ? null
                : Channel.forRod(TrussRod.twoWay(mm(300))
                                .section(
                                        mm(number(row, "slot_width")),
                                        mm(number(row, "slot_depth") - number(row, "strip"))))
                        .fillet(mm(number(row, "strip")));
        return new NeckBeam(
                300,
                new NeckBeam.Board(
                        new Taper(number(row, "board_width"), 0),
                        new Taper(number(row, "thickness"), 0),
                        radius,
                        number(row, "board_modulus")),
                new NeckBeam.Back(
                        new Taper(number(row, "half_width"), 0),
                        new Taper(number(row, "depth"), 0),
                        Superellipse.of(number(row, "p")),
                        Superellipse.of(number(row, "p")),
                        number(row, "back_modulus")),
                channel,
                0,
                bars);
    }

    @Test
    void rectangle_givesTheCompositeBeamOfTheTextbook() {
        // R. C. Hibbeler, Mechanics of Materials, composite beams: wood 150 mm x 150 mm (12 GPa) on a steel strip
        // 150 mm x 20 mm (200 GPa) has its neutral axis 36.38 mm up and I = 9.358e6 mm4 in steel. From memory; the
        // arithmetic with n = 0.06 gives 36.379310 and 9357830.46.
        SectionMoments section = new SectionMoments();

        section.rectangle(200_000, 150, 0, 20);
        section.rectangle(12_000, 150, 20, 170);

        assertThat(section.neutralAxis()).isCloseTo(36.38, within(0.005));
        assertThat(section.bendingStiffness() / 200_000).isCloseTo(9.358e6, within(500.0));
        assertThat(section.neutralAxis()).isCloseTo((3000 * 10 + 1350 * 95.0) / 4350, withinPercentage(1e-12));
    }

    @Test
    void rectangle_givesTheSlottedHalfEllipse() {
        // Closed form: half ellipse a 26, b 15 less a slot 6 x 10 from the flat side (section-properties, exact).
        SectionMoments section = new SectionMoments();

        section.superellipse(1, 26, 15, Superellipse.of(2));
        section.rectangle(-1, 6, -10, 0);

        assertThat(section.stretchStiffness()).isCloseTo(552.6105674500096815, withinPercentage(1e-11));
        assertThat(-section.neutralAxis()).isCloseTo(6.5145334020881958607, withinPercentage(1e-11));
        assertThat(section.bendingStiffness()).isCloseTo(9007.0241715455394858, withinPercentage(1e-11));
    }

    @ParameterizedTest
    @ValueSource(doubles = {23.0 / 0.24999, 23.0 / 0.25001, 23.0 / 0.2499999999, 23.0 / 0.2500000001})
    void board_seriesAndClosedFormMeet(double radius) {
        SectionMoments section = new SectionMoments();
        section.board(1, 46, 6, radius);

        double[] exact = boardByCircularSegment(46, 6, radius);

        // The segment's closed form loses digits itself: 1e-9 relative is what it can promise.
        assertThat(section.stretchStiffness()).isCloseTo(exact[0], withinPercentage(1e-7));
        assertThat(section.bendingStiffness()).isCloseTo(exact[1], withinPercentage(1e-7));
    }

    /** Rectangle plus circular segment: A = R^2 (t - sin t cos t), Ic from (R^4/4)(t - sin t cos t + 2 sin^3 t cos t). */
    private static double[] boardByCircularSegment(double width, double thickness, double radius) {
        double t = Math.asin(width / 2 / radius);
        double edge = thickness - radius * (1 - Math.cos(t));
        double bare = t - Math.sin(t) * Math.cos(t);
        double area = radius * radius * bare;
        double fromCentre = 2 * radius / 3 * Math.pow(Math.sin(t), 3) / bare;
        double own = Math.pow(radius, 4) / 4 * (bare + 2 * Math.pow(Math.sin(t), 3) * Math.cos(t))
                - area * fromCentre * fromCentre;
        double up = edge + fromCentre - radius * Math.cos(t);
        double whole = width * edge + area;
        double axis = (width * edge * edge / 2 + area * up) / whole;
        double second = width * edge * edge * edge / 12 + width * edge * Math.pow(edge / 2 - axis, 2);
        return new double[] {whole, second + own + area * Math.pow(up - axis, 2)};
    }

    @Test
    void board_flattensSmoothly() {
        SectionMoments flat = new SectionMoments();
        flat.board(1, 46, 6, Double.POSITIVE_INFINITY);
        SectionMoments nearly = new SectionMoments();
        nearly.board(1, 46, 6, 1e9);

        assertThat(nearly.bendingStiffness()).isCloseTo(flat.bendingStiffness(), withinPercentage(1e-4));
        assertThat(nearly.bendingStiffness()).isLessThan(flat.bendingStiffness());
    }

    @Test
    void section_saysWhereTheChannelBreaksThrough() {
        NeckBeam beam = new NeckBeam(
                300,
                new NeckBeam.Board(new Taper(34, 0), new Taper(6, 0), null, 12_000),
                new NeckBeam.Back(new Taper(17, 0), new Taper(14.5, 0), Superellipse.of(2), Superellipse.of(2), 12_000),
                Channel.forRod(TrussRod.twoWay(mm(280)).section(mm(6), mm(14.4)))
                        .startingAt(mm(10)),
                0,
                List.of());

        assertThatThrownBy(() -> beam.section(42, new SectionMoments()))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageStartingWith("the rod channel breaks through the back at 42.0 mm from the nut");
        assertThat(stiffness(beam, 5)).isPositive();
    }

    private static double stiffness(NeckBeam beam, double x) {
        SectionMoments section = new SectionMoments();
        beam.section(x, section);
        return section.bendingStiffness();
    }

    /**
     * The middle half of a half ellipse, |y| up to a/2: with y = a sin t, t up to 30 deg, area a D (sin t cos t + t) = 0.9566115 a D, first
     * moment a D^2 (sin t - sin^3 t / 3) = 0.4583333 a D^2, second a D^3 (2/3) (3 t/8 + sin 2t / 4 + sin 4t / 32) = 0.2932795 a D^3.
     */
    @Test
    void strip_ofAHalfEllipse_isAsByHand() {
        SectionMoments section = new SectionMoments();
        section.strip(1, -12, 0, 24, 15, Superellipse.of(2));
        section.strip(1, 0, 12, 24, 15, Superellipse.of(2));

        double area = 0.9566115 * 24 * 15;
        double first = -0.4583333 * 24 * 15 * 15;
        assertThat(section.stretchStiffness()).isCloseTo(area, within(1e-6 * area));
        assertThat(section.neutralAxis()).isCloseTo(first / area, within(1e-6 * 15));
        assertThat(section.bendingStiffness())
                .isCloseTo(0.2932795 * 24 * 15 * 15 * 15 - first * first / area, within(1e-6 * 24 * 15 * 15 * 15));
    }

    /** Strips over the whole width are the whole superellipse, whose moments are exact, for any exponent. */
    @Test
    void strips_overTheWholeWidth_areTheWholeBack() {
        for (double exponent : new double[] {1.5, 2, 2.6, 4}) {
            Superellipse shape = Superellipse.of(exponent);
            SectionMoments whole = new SectionMoments();
            whole.superellipse(3, 22, 16, shape);
            SectionMoments strips = new SectionMoments();
            strips.strip(3, -22, -8, 22, 16, shape);
            strips.strip(3, -8, 0, 22, 16, shape);
            strips.strip(3, 0, 22, 22, 16, shape);

            assertThat(strips.stretchStiffness())
                    .as("%s", exponent)
                    .isCloseTo(whole.stretchStiffness(), within(1e-13 * whole.stretchStiffness()));
            assertThat(strips.bendingStiffness())
                    .as("%s", exponent)
                    .isCloseTo(whole.bendingStiffness(), within(1e-13 * whole.bendingStiffness()));
        }
    }
}
