package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Neck;
import org.neckgeom.validation.PracticeFigures;

/** Back-bow of fret tangs. The document's figure with the board in the section is in StrengthChecks. */
class TangBowTest {

    /** A half ellipse 50 wide and 21 deep, 11500 MPa, under a board 50 x 6, 15000 MPa. */
    static NeckBeam plain() {
        return beam(15000, 6);
    }

    private static NeckBeam beam(double boardModulus, double thickness) {
        Superellipse ellipse = Superellipse.of(2);
        return new NeckBeam(
                400,
                new NeckBeam.Board(new Taper(50, 0), new Taper(thickness, 0), null, boardModulus),
                new NeckBeam.Back(new Taper(25, 0), new Taper(21, 0), ellipse, ellipse, 11500),
                null,
                0,
                List.of());
    }

    @Test
    void evenFrets_haveTheBowOfTheClosedForm() {
        double[] frets = IntStream.rangeClosed(0, 20).mapToDouble(i -> 20.0 * i).toArray();
        SectionMoments section = new SectionMoments();
        plain().section(0, section);
        double push = 15000 * 50 * 2.5 * (6 - 1.25 - section.neutralAxis());

        // f i/d E_b A_s z/(E I) L^2/8, exact for a middle fret and evenly many gaps.
        assertThat(TangBow.perInterference(plain(), frets, 2.5))
                .isCloseTo(push / section.bendingStiffness() / 20 * 400 * 400 / 8, within(1e-9));
    }

    @Test
    void boardLeftOutOfTheSection_isTheFigureOfTheScript() {
        // Q9 has the shaft alone in EI, the layer in the place of the shaft's own top: superseded by the document's
        // text.
        double a = 25.0;
        double b = 21.0;
        double stiff = 11500 * a * b * b * b * (Math.PI / 8 - 8 / (9 * Math.PI));
        double axis = 4 * b / (3 * Math.PI);
        double bow = 0.2 * 0.05 / 22 * 15000 * 125 * (axis - 1.25) / stiff * 400 * 400 / 8;
        double[] frets = IntStream.rangeClosed(0, 400).mapToDouble(x -> x).toArray();

        assertThat(bow).isCloseTo(PracticeFigures.of("Q9"), within(1e-8));
        assertThat(0.2 * 0.05 / 22 * TangBow.perInterference(plain(), frets, 2.5))
                .isLessThan(bow);
    }

    @Test
    void fitted_givesBackWhatWasRead() {
        Neck neck = SampleNecks.octaveMandolin();
        TangBow bow = TangBow.of(neck, mm(0.05));
        double low = bow.backBow().low().libraryValue();
        double high = bow.backBow().high().libraryValue();
        TangBow fitted = bow.fitted(mm(0.8 * high));

        assertThat(high).isCloseTo(3 * low, within(1e-12));
        assertThat(fitted.backBow().low().libraryValue()).isCloseTo(0.8 * high, within(1e-12));
        assertThat(fitted.interference(mm(0.025)).backBow().high().libraryValue())
                .isCloseTo(0.4 * high, within(1e-12));
    }

    @Test
    void badInput_isRefused() {
        Neck neck = SampleNecks.octaveMandolin();

        assertThatThrownBy(() -> TangBow.of(neck, mm(-0.01)))
                .hasMessageContaining("interference must be from 0 to 0.5 mm");
        assertThatThrownBy(() -> TangBow.of(neck, mm(0.05)).slotDepth(mm(20)))
                .hasMessageContaining("slot's depth must be less than the board's thickness");
        assertThatThrownBy(() -> TangBow.of(neck, mm(0.05)).fitted(mm(9)))
                .hasMessageContaining("back-bow must be no more than");
        assertThatThrownBy(() -> TangBow.of(neck, mm(0)).fitted(mm(0.1))).isInstanceOf(ArithmeticException.class);
    }
}
