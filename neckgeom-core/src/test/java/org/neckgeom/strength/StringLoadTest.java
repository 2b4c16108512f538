package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import javax.measure.quantity.Force;
import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fan;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.neck.StringMaterial;
import org.neckgeom.neck.StringSet;
import org.neckgeom.units.Amount;

/** String pull against worked examples and common practice; moments by hand. */
class StringLoadTest {

    @Test
    void tensions_areThoseOfTheWorkedExamples() {
        // OpenStax, University Physics Volume 1, 16.3, the guitar string: mu 0.309 g/m and 56.40 N at 427.23 m/s, and
        // 5.78 g/m with 1055.00 N; on 650 mm that speed is 328.638 Hz.
        StringLoad low = onTheCentreline(StringSet.of(hertz(427.23 / 1.3)).linearDensities(gramPerMetre(5.78)));
        StringLoad high = onTheCentreline(StringSet.of(hertz(427.23 / 1.3)).linearDensities(gramPerMetre(0.309)));

        assertThat(low.tensions().get(0).libraryValue()).isCloseTo(1055.00, within(0.005));
        assertThat(high.tensions().get(0).libraryValue()).isCloseTo(56.40, within(0.005));
        assertThat(low.total()).isEqualTo(low.tensions().get(0));
    }

    private static StringLoad onTheCentreline(StringSet one) {
        return StringLoad.of(Necks.mandolin().scale(mm(650)).strings(one));
    }

    @Test
    void tensions_countThatOuterStringsRunOutward() {
        // 14 mm from the centreline at the nut, 3 mm from the edge; by the taper 19.41 mm at 325 mm, so 24.82 mm at
        // 650.
        double length = Math.hypot(650, 10.8203);
        StringLoad two = onTheCentreline(StringSet.of(hertz(100), hertz(100)).linearDensities(gramPerMetre(5)));

        assertThat(two.tensions().get(0).libraryValue())
                .isCloseTo(0.005 * Math.pow(0.2 * length, 2), withinPercentage(1e-4));
    }

    @Test
    void tensions_ofPlainSteelFollowFromItsDiameter() {
        // Computed with 30 digits for 7850 kg/m3 and 650 mm: 0.2286 mm at E4 59.1623911, 0.3302 mm at B3 69.2770002 N.
        StringLoad low = onTheCentreline(StringSet.of(pitch("B3")).diameters(inch(0.013)));
        StringLoad high = onTheCentreline(StringSet.of(pitch("E4")).diameters(inch(0.009)));

        assertThat(low.tensions().get(0).libraryValue()).isCloseTo(69.2770002493724297, withinPercentage(1e-7));
        assertThat(high.tensions().get(0).libraryValue()).isCloseTo(59.1623911032033362, withinPercentage(1e-7));
    }

    @Test
    void total_countsEveryStringOfACourse() {
        assertThat(StringLoad.of(Necks.mandolin()).total()).isEqualTo(newton(760));
    }

    @Test
    void momentAtFret_isPullTimesLever() {
        // Common practice: 11 to 13 mm of lever on a guitar, so 8 to 9 N m for 720 N; the lever here by hand.
        StringLoad load = StringLoad.of(SampleNecks.guitar());
        double[] layers = FiniteDifferenceNeck.layers(
                SampleNecks.guitar(), SampleNecks.guitar().scale().fretMm(7));
        double lever = load.momentAtFret(7).libraryValue() / load.total().libraryValue();
        double x = SampleNecks.guitar().scale().fretMm(7);
        // 6.35 mm of board, frets 1.1 mm, 0.4 mm at the nut and 1.6 mm more at half the scale; strings over the crown
        // lie
        // lower at the edges, by 0.35 mm on average at most.
        double high = 6.35 + 1.5 + 1.6 * x / (647.7 / 2) - layers[0];

        assertThat(lever).isBetween(high - 0.45, high);
        assertThat(lever).isBetween(11.0, 14.0);
    }

    @Test
    void momentIntervalAtFret_holdsTheMoment() {
        StringLoad load = StringLoad.of(Necks.mandolin());

        assertThat(load.momentIntervalAtFret(7).contains(load.momentAtFret(7))).isTrue();
        assertThatThrownBy(() -> load.momentAtFret(15))
                .hasMessage("fret must be between 0 and that at the body, 14, but was 15");
    }

    @Test
    void heights_lengthenTheLever() {
        StringLoad load = StringLoad.of(Necks.mandolin());
        StringLoad higher = load.heights(StringHeights.of(mm(1.4), mm(3)));

        // One millimetre more on 760 N.
        assertThat(higher.momentAtFret(3).libraryValue() - load.momentAtFret(3).libraryValue())
                .isCloseTo(760, within(0.5));
        assertThatThrownBy(() -> StringHeights.of(mm(0.4), mm(-1)))
                .hasMessageStartingWith("action must be 0 mm or more");
    }

    @Test
    void plain_andWrapped_addUp() {
        // Copper wire of radius 1.20 mm: 0.0403531293168 kg/m (OpenStax 16.3 problem, 0.040 printed).
        assertThat(StringMaterial.COPPER.plain(mm(2.4)).libraryValue())
                .isCloseTo(40.3531293168, withinPercentage(1e-9));
        double core = StringMaterial.STEEL.plain(mm(0.4)).libraryValue();
        double ring = Math.PI / 4 * Math.PI * (0.4 + 0.3) * 0.3 * 8.8;
        assertThat(StringMaterial.STEEL
                        .wrapped(mm(0.4), StringMaterial.PHOSPHOR_BRONZE, mm(0.3))
                        .libraryValue())
                .isCloseTo(core + ring, withinPercentage(1e-9));
        assertThatThrownBy(() -> StringMaterial.NYLON.plain(mm(0)))
                .hasMessageStartingWith("string diameter must be more");
    }

    /**
     * T = 4 L^2 f^2 m (a string's law, as in general texts), each string on its own scale: 5 g/m at 100 Hz on 700 mm makes
     * 98 N and on 650 mm 84.5 N. The middle one runs straight along the centreline, on half of both outer runs,
     * (sqrt(700^2 - 9^2) + sqrt(650^2 - 9^2)) / 2 = 674.939 mm: 91.109 N.
     */
    @Test
    void tensions_ofFannedFretsAreThoseOfEachStringsOwnScale() {
        Neck fanned = Neck.named("fan")
                .fannedFrets(
                        Fan.between(mm(700), mm(650)).perpendicularAt(7),
                        StringSet.of(hertz(100), hertz(100), hertz(100))
                                .linearDensities(gramPerMetre(5))
                                .diameters(mm(1))
                                .across(Across.of(mm(4), mm(54))))
                .fingerboard(Fingerboard.tapered(mm(44), mm(58)))
                .back(BackProfile.between(mm(15), mm(16)));

        List<Amount<Force>> tensions = StringLoad.of(fanned).tensions();

        assertThat(tensions.get(0).libraryValue()).isCloseTo(98, within(1e-9));
        assertThat(tensions.get(1).libraryValue()).isCloseTo(91.109, within(0.0005));
        assertThat(tensions.get(2).libraryValue()).isCloseTo(84.5, within(1e-9));
    }
}
