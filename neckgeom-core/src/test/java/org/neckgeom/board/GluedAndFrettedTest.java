package org.neckgeom.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.ShopUnit;

/** Clamps of a board and bend of its frets. Figures in BoardChecks. */
class GluedAndFrettedTest {

    /** 43 wide at the nut, 56 at the body joint, which lies at 440. */
    private static final Neck BOARD = Neck.named("board")
            .scale(mm(880))
            .fingerboard(Fingerboard.tapered(mm(43), mm(56)))
            .back(BackProfile.between(mm(21), mm(21)))
            .bodyAtFret(12);

    @Test
    void clamps_areCountedByForceAndByTheCaul() {
        GlueClamps clamps = GlueClamps.of(BOARD);

        assertThat(clamps.count()).isEmpty();
        assertThat(clamps.each(newton(15246)).count()).hasValue(1);
        // 440 mm by 2 x 15 mm.
        assertThat(clamps.each(newton(1500)).caul(mm(15)).count()).hasValue(15);
        assertThat(clamps.each(newton(1500)).caul(mm(40)).count()).hasValue(11);
        assertThat(clamps.pressure(ShopUnit.MEGAPASCAL.of(1.4)).force().libraryValue())
                .isCloseTo(2 * clamps.force().libraryValue(), within(1e-9));
    }

    @Test
    void clampsOfANeck_haveItsGluedFace() {
        Neck neck = SampleNecks.octaveMandolin();
        double joint = neck.bodyJointMm();

        assertThat(GlueClamps.of(neck).force().libraryValue())
                .isCloseTo(0.7 * joint * (neck.halfWidthAtMm(0) + neck.halfWidthAtMm(joint)), within(1e-9));
    }

    @Test
    void clamps_refuseWhatCannotBe() {
        assertThatThrownBy(() -> GlueClamps.of(BOARD).each(newton(0)))
                .hasMessageContaining("force of a clamp must be more than 0 N");
        assertThatThrownBy(() -> GlueClamps.of(BOARD).pressure(ShopUnit.MEGAPASCAL.of(-1)))
                .hasMessageContaining("pressure must be more than 0");
    }

    @Test
    void fret_bearsAtItsEndsWhereTighterThanTheBoard() {
        Neck neck = SampleNecks.octaveMandolin();
        double board = neck.crownRadiusAtMm(neck.scale().fretMm(5));

        assertThat(FretBend.of(neck, 5, mm(0.85 * board)).gap().libraryValue()).isPositive();
        assertThat(FretBend.of(neck, 5, mm(board)).gap().libraryValue()).isCloseTo(0, within(1e-12));
        assertThat(FretBend.of(neck, 5, mm(2 * board)).toString())
                .contains("its ends")
                .contains("bend it tighter");
    }

    @Test
    void fret_refusesWhatCannotBe() {
        Neck neck = SampleNecks.octaveMandolin();

        assertThatThrownBy(() -> FretBend.of(neck, 0, mm(200))).hasMessageContaining("fret must be from 1 to");
        assertThatThrownBy(() -> FretBend.of(neck, 5, mm(10)))
                .hasMessageContaining("wire's radius must be more than half the board's width");
    }
}
