package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Fence;
import org.neckgeom.stock.Blank;

/** What settings that are not exact do to the depth, the ends and the middle of a channel; figures worked by hand. */
class SettingUncertaintyTest {

    private static final Blank BLANK =
            Blank.ofLength(mm(640)).section(mm(61), mm(20)).nutAt(mm(200));
    private static final RodSlot SLOT =
            RodSlot.of(Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                    .startingAt(mm(3))
                    .depthClearance(mm(0.2)));

    /** Each pass is set anew to its block, so the last setting alone makes the depth: not sqrt(4) times as much. */
    @Test
    void passes_setWithin_givesTheDepthOneSettingsUncertainty() {
        PassPlan passes = SLOT.passes(Passes.noDeeperThan(mm(2.5))).settingUncertainty(mm(0.02));

        assertThat(passes.passes()).hasSize(4);
        assertThat(passes.depthAsSet()).isEqualTo(Estimate.of(mm(9.2), mm(0.02)));
        assertThat(passes.toString()).contains("standard uncertainty of settings and depth: 0.020 mm");
    }

    @Test
    void passes_withoutASetting_sayNothingOfIt() {
        PassPlan passes = SLOT.passes(Passes.noDeeperThan(mm(2.5)));

        assertThat(passes.depthAsSet().libraryUncertainty()).isZero();
        assertThat(passes.toString()).doesNotContain("set within");
        assertThat(passes.settingUncertainty(mm(0.02))).isNotEqualTo(passes);
    }

    @Test
    void stops_setWithin_giveTheEndsTheirUncertainty_eitherEndLeading() {
        StopBlocks stops = SLOT.stops(Cutter.straight(mm(6)), BLANK).settingUncertainty(mm(0.3));

        assertThat(stops.start()).isEqualTo(Estimate.of(mm(3), mm(0.3)));
        assertThat(stops.end()).isEqualTo(Estimate.of(mm(303), mm(0.3)));
        assertThat(stops.turned().start()).isEqualTo(stops.end());
        assertThat(stops.turned().toString()).contains("standard uncertainty of stops and channel ends: 0.30 mm");
    }

    /** 2 thou too thick and known to half a thou: all of both goes into the offset, toward the fence. */
    @Test
    void spacer_uncertainThickness_goesIntoTheOffsetWhole() {
        BlankOnFence bare = BlankOnFence.of(BLANK, SLOT.channel(), Fence.onePiece(mm(600)));
        BlankOnFence thicker =
                bare.strip(Estimate.of(inch(0.002), inch(0.0005))).trialWithoutStrip();

        assertThat(thicker.shiftMm(100) - bare.shiftMm(100)).isCloseTo(0.0508, within(1e-15));
        assertThat(Math.sqrt(thicker.stripVariance())).isCloseTo(0.0127, within(1e-15));
    }

    @Test
    void setWithin_rejectsWhatIsLessThanNothing() {
        assertThatThrownBy(() -> SLOT.passes(Passes.noDeeperThan(mm(2.5))).settingUncertainty(mm(-0.1)))
                .hasMessage("uncertainty of setting must be 0 mm or more, but was -0.1 mm");
    }
}
