package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Bars;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.stock.Wood;

/** Sections of whole necks against layers summed from the design's outlines. */
class SectionsTest {

    @Test
    void at_isTheSumOfItsLayers() {
        Neck crooked =
                Necks.mandolin().back(BackProfile.between(mm(14.5), mm(16.5)).asymmetric(2, 3.2));
        for (Neck neck : new Neck[] {Necks.mandolin(), SampleNecks.guitar(), SampleNecks.shortScaleBass(), crooked}) {
            for (double x : new double[] {0, 55, 171, 270, 305}) {
                Section section = Sections.of(neck).at(mm(x));
                double[] layers = FiniteDifferenceNeck.layers(neck, x);

                assertThat(section.stiffnessNm2() * 1e6)
                        .as("%s at %s mm", neck.name(), x)
                        .isCloseTo(layers[1], withinPercentage(0.05));
                assertThat(section.neutralAxis().libraryValue())
                        .as("%s at %s mm", neck.name(), x)
                        .isCloseTo(layers[0], withinPercentage(0.1));
            }
        }
    }

    @Test
    void all_runsFromNutToBody() {
        Sections sections = Sections.of(Necks.mandolin());

        assertThat(sections.all()).hasSizeGreaterThanOrEqualTo(200);
        assertThat(sections.all().get(0)).isEqualTo(sections.atFret(0));
        assertThat(sections.all().get(240)).isEqualTo(sections.atFret(14));
        assertThat(sections.table().lines()).hasSize(241);
    }

    @Test
    void softest_isAtTheNutOfANeckThatGrows() {
        assertThat(Sections.of(Necks.mandolin()).softest().station()).isEqualTo(mm(0));
    }

    @Test
    void atFret_hasAnIntervalThatHoldsTheValue() {
        Section section = Sections.of(SampleNecks.guitar()).atFret(7);

        assertThat(section.stiffnessNm2()).isBetween(section.leastStiffnessNm2(), section.mostStiffnessNm2());
        assertThat(section.neutralAxisInterval().contains(section.neutralAxis()))
                .isTrue();
    }

    @Test
    void atFret_intervalGrowsWithTheVariation() {
        Wood tested = Wood.SUGAR_MAPLE.withName("tested").modulus(gigapascal(12.6));
        Section wide = Sections.of(SampleNecks.guitar().wood(tested)).atFret(5);
        Section narrow = Sections.of(SampleNecks.guitar().wood(tested.modulusVariation(percent(3))))
                .atFret(5);

        assertThat(narrow.mostStiffnessNm2() - narrow.leastStiffnessNm2())
                .isLessThan(wide.mostStiffnessNm2() - wide.leastStiffnessNm2());
        assertThat(narrow.stiffnessNm2()).isEqualTo(wide.stiffnessNm2());
    }

    @Test
    void at_refusesStationsOffTheNeck() {
        Sections sections = Sections.of(Necks.mandolin());

        assertThatThrownBy(() -> sections.at(mm(400)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("station must be between the nut and the body joint at 310.")
                .hasMessageEndingWith("but was 400 mm");
        assertThatThrownBy(() -> sections.atFret(15)).isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * A half ellipse 50 x 15 of 11,500 MPa under a board 50 x 6 of 15,000, by hand. Shaft: area pi/2 25 15 = 589.0, its
     * middle 4 15/(3 pi) = 6.366 under the face, EI (pi/8 - 8/(9 pi)) 25 15^3 11,500 = 106.5e6. Board: middle 3 over it. The
     * glue line adds 6.774e6 4.5e6/11.274e6 9.366^2 = 237.2e6, so that 0.449 of the back-bow is asked of the caul.
     */
    @Test
    void forwardInTheCaul_undoesTheShaftsOwnBend() {
        Section middle = Sections.of(plain()).at(mm(150));

        assertThat(middle.forwardInTheCaul(mm(0.8)).libraryValue()).isCloseTo(0.8 * 0.449, withinPercentage(0.2));
        assertThat(middle.forwardInTheCaul(mm(-0.8)))
                .isEqualTo(middle.forwardInTheCaul(mm(0.8)).negated());
        assertThat(middle.forwardInTheCaul(mm(0)).libraryValue()).isZero();
    }

    /**
     * The same with two carbon bars 3 x 10 of 130,000 MPa in place of its wood, flush with the glue face, by hand. Shaft with
     * bars: bars 60 (130,000 - 11,500) = 7.11e6 at 5 under the face, own EI 118,500 500 = 59.25e6; both together 13.884e6 at
     * 5.667, EI 106.5e6 + 59.25e6 + 6.774e6 7.11e6/13.884e6 1.366^2 = 172.2e6. The glue line adds 13.884e6 4.5e6/18.384e6
     * 8.667^2 = 255.3e6: the bars belong to the shaft, not to the board.
     */
    @Test
    void forwardInTheCaul_bendsTheShaftWithItsBars() {
        Neck barred = plain().bars(Bars.of(Bar.carbon(mm(280)).section(mm(3), mm(10)), mm(10)));
        Section middle = Sections.of(barred).at(mm(150));

        assertThat(middle.forwardInTheCaul(mm(0.8)).libraryValue())
                .isCloseTo(0.8 * 172.2 / 255.3, withinPercentage(0.2));
    }

    private static Neck plain() {
        return Neck.named("Plain")
                .scale(mm(600))
                .fingerboard(Fingerboard.tapered(mm(50), mm(50))
                        .thickness(mm(6))
                        .wood(Wood.SUGAR_MAPLE.withName("board").modulus(gigapascal(15))))
                .back(BackProfile.between(mm(15), mm(15)).rounded())
                .frets(20)
                .bodyAtFret(12)
                .wood(Wood.SUGAR_MAPLE.withName("shaft").modulus(gigapascal(11.5)));
    }
}
