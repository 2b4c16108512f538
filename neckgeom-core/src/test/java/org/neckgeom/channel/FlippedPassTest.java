package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.neckgeom.shop.Caution;

class FlippedPassTest {

    @Test
    void offset_isHalfOfWhatTheSlotWidened() {
        OffsetMagnitude offset =
                FlippedPass.widened(mm(6.02), mm(6.31)).repeatability(mm(0.02)).offset();

        assertThat(offset.size().libraryValue()).isCloseTo(0.145, within(1e-12));
        assertThat(offset.uncertainty().libraryValue()).isCloseTo(0.02 / Math.sqrt(2), within(1e-15));
        assertThat(offset.toString())
                .startsWith("0.145 mm one way or the other, u 0.014 mm\n")
                .contains("too far from the fence  turned end for end, the far wall is cut")
                .contains("instead the same edge, the fence 0.290 mm away: the far wall is cut");
        assertThat(offset.nearerTheFence().amountMm()).isCloseTo(-0.145, within(1e-12));
        assertThat(offset.fartherFromTheFence().amountMm()).isCloseTo(0.145, within(1e-12));
    }

    /** Both runs drawn as boxes with JTS on pieces whose other edge rides the fence; the slot is their union. */
    @Test
    void offset_isWhatTwoDrawnRunsLeave() {
        long seed = 77;
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 200; trial++) {
            double width = random.nextDouble(40, 90);
            double d = random.nextDouble(3, 10);
            double e = random.nextDouble(-d / 2, d / 2);
            double centre = width / 2 + e;
            Envelope slot = new Envelope(centre - d / 2, centre + d / 2, 0, 1);
            slot.expandToInclude(new Envelope(width - centre - d / 2, width - centre + d / 2, 0, 1));

            OffsetMagnitude found =
                    FlippedPass.widened(mm(d), mm(slot.getWidth())).offset();

            assertThat(found.size().libraryValue())
                    .as("seed " + seed + " trial " + trial)
                    .isCloseTo(Math.abs(e), within(1e-9));
        }
    }

    @Test
    void offset_takesTheUsualRepeatabilityWhereNoneIsTold() {
        assertThat(FlippedPass.widened(mm(6.02), mm(6.31)).offset())
                .asString()
                .startsWith("0.145 mm one way or the other, u 0.035 mm\n");
    }

    @Test
    void toString_sendsItToScrapAndNamesTheWallThatIsCut() {
        assertThat(FlippedPass.widened(mm(6.02), mm(6.31)).toString())
                .startsWith("slot 6.02 mm, turned 6.31 mm: widened by 0.29 mm\n")
                .contains("on scrap only, light, in a carrier")
                .contains("slot too near it             the wall at the fence is cut, a climb cut: never by hand")
                .contains(Caution.known("CLIMB_FEED").text());
    }

    @Test
    void offset_ofASlotThatDidNotWidenIsNothing() {
        assertThat(FlippedPass.widened(mm(6.02), mm(6.01))
                        .repeatability(mm(0.02))
                        .offset()
                        .size()
                        .libraryValue())
                .isZero();
    }

    @Test
    void offset_ofASlotThatNarrowedHasNoAnswer() {
        assertThatThrownBy(() -> FlippedPass.widened(mm(6.02), mm(5.8))
                        .repeatability(mm(0.02))
                        .offset())
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("a turned pass can only widen a slot, but 6.020 mm became 5.800 mm: read both again");
    }

    @Test
    void widened_refusesTwoSlots() {
        assertThatThrownBy(() -> FlippedPass.widened(mm(6), mm(12.5)))
                .hasMessage(
                        "second width must be 12 mm or less (twice the first: beyond it the runs leave two slots), but"
                                + " was 12.5 mm");
    }
}
