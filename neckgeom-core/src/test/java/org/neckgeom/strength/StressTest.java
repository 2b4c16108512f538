package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.newton;

import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Neck;
import org.neckgeom.stock.Wood;

/** Stress against the textbook's M c/I, against statics, and beside the strength of the wood. */
class StressTest {

    @Test
    void strain_isThatOfTheTextbook() {
        // M c/I: 50 mm x 21 mm under 12000 N mm: 3.2653061224489795918 MPa at the face, compression above.
        SectionMoments plank = new SectionMoments();
        plank.rectangle(12_600, 50, 0, 21);

        assertThat(12_600 * plank.strain(0, 12_000, 0)).isCloseTo(3.2653061224489795918, withinPercentage(1e-10));
        assertThat(12_600 * plank.strain(0, 12_000, 21)).isCloseTo(-3.2653061224489795918, withinPercentage(1e-10));
        assertThat(12_600 * plank.strain(1050, 0, 7)).isCloseTo(-1, withinPercentage(1e-10));
    }

    @Test
    void strain_isInEquilibriumWithTheLoad() {
        // Summed over thin layers of the half ellipse and the flat board the stress gives the push and the moment back.
        SectionMoments section = new SectionMoments();
        section.superellipse(11_600, 20, 15, Superellipse.of(2));
        section.board(12_300, 40, 6, Double.POSITIVE_INFINITY);
        double push = 0;
        double moment = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double z = -15 + 21 * (i + 0.5) / n;
            double breadth = z < 0 ? 11_600 * 40 * Math.sqrt(1 - z * z / 225) : 12_300 * 40;
            double pull = breadth * section.strain(760, 9000, z) * 21 / n;
            push -= pull;
            moment -= pull * (z - section.neutralAxis());
        }

        assertThat(push).isCloseTo(760, within(0.1));
        assertThat(moment).isCloseTo(9000, within(1.0));
    }

    @Test
    void inNeck_isTheStressOfTheWorstSectionByHand() {
        Neck neck = Necks.mandolin();
        FiniteDifferenceNeck other = new FiniteDifferenceNeck(neck);
        Stress stress = Relief.of(neck).stress();
        double x = stress.place().libraryValue();

        assertThat(stress.inNeck().libraryValue()).isCloseTo(atBack(neck, other, x), withinPercentage(0.1));
        for (double elsewhere : new double[] {0, 60, 150, 299}) {
            assertThat(atBack(neck, other, elsewhere))
                    .as("at %s mm", elsewhere)
                    .isLessThanOrEqualTo(stress.inNeck().libraryValue());
        }
    }

    /**
     * M c/I - P E/EA with c down to the back, the moment taken on the finite-difference neck; EA from areas: half ellipse,
     * channel 6 mm x 9 mm, board less what the crown takes off, w^3/(24 R).
     */
    private static double atBack(Neck neck, FiniteDifferenceNeck other, double x) {
        double[] layers = FiniteDifferenceNeck.layers(neck, x);
        double half = neck.halfWidthAtMm(x);
        double depth = neck.backDepthAtMm(x);
        double crown = Math.pow(2 * half, 3) / (24 * 400);
        double ea = 11_600 * (Math.PI / 2 * half * depth - 54) + 12_300 * (12 * half - crown);
        return 11_600 * other.moment(x, layers[0]) * (depth + layers[0]) / layers[1] - 760 * 11_600 / ea;
    }

    @Test
    void shareOfStrength_isSmallForANeckThatStands() {
        Stress stress = Relief.of(Necks.mandolin()).stress();

        assertThat(stress.shareOfStrength().orElseThrow()).isBetween(0.01, 0.15);
        assertThat(stress.shareOfStrength().orElseThrow())
                .isCloseTo(stress.inNeck().libraryValue() / 101, withinPercentage(1e-9));
        assertThat(stress.inNeckInterval().contains(stress.inNeck())).isTrue();
        assertThat(stress.inFingerboardInterval().contains(stress.inFingerboard()))
                .isTrue();
    }

    @Test
    void shareOfStrength_isNotKnownWithoutAStrength() {
        Neck own = Necks.mandolin().wood(Wood.named("offcut").modulus(gigapascal(11)));

        assertThat(Relief.of(own).stress().shareOfStrength()).isEmpty();
        assertThat(Relief.of(own).stress().toString()).contains("bending strength of offcut not known");
    }

    @Test
    void stressWithRodAt_addsTheRodsPush() {
        Relief relief = Relief.of(SampleNecks.guitar());

        assertThat(relief.stressWithRodAt(newton(0))).isEqualTo(relief.stress());
        assertThat(relief.stressWithRodAt(newton(3000)).inNeck().libraryValue())
                .isGreaterThan(relief.stress().inNeck().libraryValue());
        assertThat(relief.stressWithRodAt(newton(3000)).toString()).contains("rod at", "3000 N");
        assertThatThrownBy(() -> relief.stressWithRodAt(newton(-1))).isInstanceOf(IllegalArgumentException.class);
    }
}
