package org.neckgeom.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;

/** Depth of nut slots: the string is straight. Figures in BoardChecks. */
class NutSlotTest {

    private static final Scale SCALE = Scale.of(mm(648));

    private static Neck neck() {
        return Neck.named("n")
                .scale(SCALE)
                .fingerboard(Fingerboard.tapered(mm(43), mm(56)).fretHeight(mm(1.1)))
                .back(BackProfile.between(mm(21), mm(21)));
    }

    @Test
    void gap_isOnTheStraightString() {
        SplittableRandom random = new SplittableRandom(23);
        for (int i = 0; i < 200; i++) {
            double gap = random.nextDouble(0, 1);
            double action = random.nextDouble(0, 4);
            NutSlot slot = NutSlot.of(SCALE, mm(gap), mm(action));
            double nut = slot.atNut().libraryValue();
            double first = SCALE.fretMm(1);
            double third = SCALE.fretMm(3);

            assertThat(nut + (action - nut) * first / SCALE.fretMm(12))
                    .as("%d", i)
                    .isCloseTo(gap, within(1e-12));
            assertThat(slot.gapHeldAtThird().libraryValue()).isCloseTo(nut * (third - first) / third, within(1e-12));
        }
    }

    @Test
    void filing_leavesTheSaddleWhereItIs() {
        NutSlot before = NutSlot.of(SCALE, mm(0.6), mm(2.2));
        NutSlot after = before.filedTo(mm(0.45));

        assertThat(after.gap().libraryValue()).isCloseTo(0.45, within(1e-12));
        double saddleBefore =
                2 * before.action().libraryValue() - before.atNut().libraryValue();
        double saddleAfter = 2 * after.action().libraryValue() - after.atNut().libraryValue();
        assertThat(saddleAfter).isCloseTo(saddleBefore, within(1e-12));
        assertThatThrownBy(() -> before.filedTo(mm(0.7)))
                .hasMessageContaining("gap over fret 1 must be no more than 0.6 mm as it is, but was 0.7 mm");
    }

    @Test
    void neck_givesTheHeightsOfItsSet() {
        NeckSet set = NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2.2)).fretPlane(mm(7));
        NutSlot slot = NutSlot.of(neck().neckSet(set));

        assertThat(slot.overBoard().orElseThrow().libraryValue()).isCloseTo(1.5, within(1e-12));
        assertThat(NutSlot.ofTreble(neck().neckSet(set)).atNut().libraryValue()).isEqualTo(0.4);
        assertThatThrownBy(() -> NutSlot.of(neck())).hasMessageContaining("has no string heights");
    }

    @Test
    void quickCheck_isCommonPractice() {
        assertThat(NutSlot.of(SCALE, mm(0.33), mm(1.7)).isTooDeep()).isFalse();
        assertThat(NutSlot.of(SCALE, mm(0.25), mm(1.7)).isTooDeep()).isTrue();
        assertThat(NutSlot.of(SCALE, mm(0.1), mm(2.2)).toString()).contains("under the fret plane: too deep");
    }

    @Test
    void badInput_isRefused() {
        assertThatThrownBy(() -> NutSlot.of(SCALE, mm(-0.1), mm(2)))
                .hasMessageContaining("gap over fret 1 must be 0 mm or more, but was -0.1 mm");
        assertThatThrownBy(() -> NutSlot.of(SCALE.divisions(1), mm(0.1), mm(2)))
                .hasMessageContaining("frets to the octave must be 3 or more, but was 1");
        assertThatThrownBy(() -> NutSlot.of(SCALE, mm(0.3), mm(2)).fretHeight(mm(0)))
                .hasMessageContaining("fret height must be more than 0 mm");
    }
}
