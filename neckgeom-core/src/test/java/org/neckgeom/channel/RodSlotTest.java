package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shop.Caution;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Fence;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.LengthStyle;

class RodSlotTest {

    private static final Blank BLANK =
            Blank.ofLength(mm(640)).section(mm(61), mm(20)).nutAt(mm(20));
    private static final Cutter CUTTER = Cutter.straight(mm(6));
    private static final Channel CHANNEL = Channel.forRod(
                    TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
            .startingAt(mm(3))
            .fillet(mm(1))
            .depthClearance(mm(0.2));
    private static final RodSlot SLOT = RodSlot.of(CHANNEL);

    @Test
    void depth_isRodAndCoverAndClearance() {
        assertThat(SLOT.depth().deepestMm()).isCloseTo(10.2, within(1e-12));
        assertThat(SLOT.depth()).hasToString("10.2 mm deep: rod 9, fillet 1, clearance 0.2");
    }

    static Stream<String[]> arches() {
        return Reference.rows("arched-floor.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("arches")
    void depthAt_isTheCircleThroughThreePoints(String length, String end, String middle, String x, String depth) {
        double start = 4;
        double endDepth = Double.parseDouble(end);
        RodSlot slot = RodSlot.of(Channel.forRod(TrussRod.singleAction(mm(Double.parseDouble(length)), mm(5)))
                .startingAt(mm(start))
                .depthClearance(mm(endDepth - 5))
                .arch(mm(Double.parseDouble(middle) - endDepth)));
        // A hair inside, so that adding the start does not put the ends outside.
        double station = start + Math.min(Double.parseDouble(x), Double.parseDouble(length) - 1e-12);

        assertThat(slot.depthAt(mm(station)).libraryValue()).isCloseTo(Double.parseDouble(depth), within(1e-10));
    }

    @Test
    void depthAt_ofAnArchIsTheSameFromEitherEndAndNothingOutside() {
        RodSlot slot = RodSlot.of(Channel.forRod(TrussRod.singleAction(mm(400), mm(5)))
                .depthClearance(mm(3))
                .arch(mm(6)));

        assertThat(slot.depthAt(mm(40)).libraryValue())
                .isCloseTo(slot.depthAt(mm(360)).libraryValue(), within(1e-12));
        assertThat(slot.depthAt(mm(-1)).libraryValue()).isZero();
        assertThat(slot.depth().deepestMm()).isCloseTo(14, within(1e-12));
        assertThat(slot.depth())
                .hasToString("8 mm deep at the ends, 14 mm in the middle: rod 5, fillet 0, clearance 3");
    }

    @Test
    void floor_laysOutTheTemplate() {
        RodSlot slot = RodSlot.of(Channel.forRod(TrussRod.singleAction(mm(380), mm(5)))
                .depthClearance(mm(4))
                .arch(mm(5)));

        // R = (190^2 + 5^2)/10; a quarter along, y = 95: 9025/(3612.5 + 3611.2506) above the deepest.
        assertThat(slot.floor().radius()).isEqualTo(mm(3612.5));
        assertThat(slot.floor().toString())
                .startsWith("floor arched, radius 3612.5 mm\n")
                .contains("95 mm from the nut     12.751 mm deep")
                .contains("380 mm from the nut    9.000 mm deep");
        assertThat(SLOT.floor()).hasToString("floor flat, 10.2 mm deep from 3 mm to 303 mm");
        assertThatThrownBy(() -> SLOT.floor().radius()).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void depthAt_countsThePocket() {
        RodSlot slot = RodSlot.of(CHANNEL.adjusterPocket(mm(20)).section(mm(10), mm(12)));

        assertThat(slot.depthAt(mm(10)).libraryValue()).isEqualTo(12);
        assertThat(slot.depthAt(mm(30)).libraryValue()).isCloseTo(10.2, within(1e-12));
    }

    @Test
    void passes_endAtTheDepth() {
        PassPlan plan = SLOT.passes(Passes.noDeeperThan(mm(3)).lastPass(mm(0.5)));

        assertThat(plan.passes()).hasSize(5);
        assertThat(plan.depth().libraryValue()).isCloseTo(10.2, within(1e-12));
    }

    @Test
    void stops_areACutterRadiusInsideTheSlotsEnds() {
        StopBlocks stops = SLOT.stops(CUTTER, BLANK);

        // By hand: blank from -20 to 620, slot 3 to 303, radius 3. First centre at 6: 614 of the blank behind it.
        // Last centre at 300: 320 of the blank before it.
        assertThat(stops.leading()).isEqualTo(End.HEAD);
        assertThat(stops.rear().fromCentre().libraryValue()).isCloseTo(614, within(1e-12));
        assertThat(stops.front().fromCentre().libraryValue()).isCloseTo(320, within(1e-12));
        assertThat(stops.front().fromNearEdge()).isEqualTo(mm(317));
        assertThat(stops.front().fromFarEdge()).isEqualTo(mm(323));
    }

    @Test
    void stops_moveTheBlankByTheSlotLessACutter() {
        StopBlocks stops = SLOT.stops(CUTTER, BLANK);

        // Between the stops lie the blank and its way: slot length less cutter.
        assertThat(stops.rear().fromCentre().libraryValue()
                        + stops.front().fromCentre().libraryValue())
                .isCloseTo(640 + 300 - 6, within(1e-12));
    }

    @Test
    void stops_turnedChangePlaces() {
        StopBlocks stops = SLOT.stops(CUTTER, BLANK);

        assertThat(stops.turned().leading()).isEqualTo(End.HEEL);
        assertThat(stops.turned().rear()).isEqualTo(stops.front());
        assertThat(stops.turned().front()).isEqualTo(stops.rear());
        assertThat(stops.turned().turned()).isEqualTo(stops);
    }

    @Test
    void stops_areNoneWhereTheSlotIsOpen() {
        RodSlot open = RodSlot.of(
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))).startingAt(mm(320)));

        StopBlocks stops = open.stops(CUTTER, BLANK);

        assertThat(stops.front().isOpen()).isTrue();
        assertThat(stops.rear().isOpen()).isFalse();
        assertThat(stops.toString())
                .contains("none: the slot is open there")
                .contains("the slot's closed end is round, radius 3 mm: chisel it square, or run 3 mm farther")
                .doesNotContain("ends are round");
    }

    @Test
    void openEnds_areThoseWithoutAStop_whicheverEndLeads() {
        RodSlot open = RodSlot.of(
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))).startingAt(mm(320)));

        assertThat(open.stops(CUTTER, BLANK).openEnds()).containsExactly(End.HEEL);
        assertThat(open.stops(CUTTER, BLANK).turned().openEnds()).containsExactly(End.HEEL);
        assertThat(SLOT.stops(CUTTER, BLANK).openEnds()).isEmpty();
        assertThat(SLOT.stops(CUTTER, BLANK).headEndAt(mm(3)).openEnds()).containsExactly(End.HEAD);
    }

    /** A cutter with 0.2 of runout ends its slot 0.1 farther from its centre: each stop as much nearer. */
    @Test
    void stops_countTheRunoutThatLengthensTheSlot() {
        StopBlocks plain = SLOT.stops(CUTTER, BLANK);
        StopBlocks wobbly = SLOT.stops(CUTTER.runout(mm(0.2)), BLANK);

        assertThat(wobbly.front().fromCentre().libraryValue())
                .isCloseTo(plain.front().fromCentre().libraryValue() - 0.1, within(1e-9));
        assertThat(wobbly.rear().fromCentre().libraryValue())
                .isCloseTo(plain.rear().fromCentre().libraryValue() - 0.1, within(1e-9));
    }

    @Test
    void stops_ofAChannelWiderThanTheCutterTellTheTwoRuns() {
        RodSlot wide = RodSlot.of(CHANNEL.sideClearance(mm(0.3)));

        assertThat(wide.stops(CUTTER, BLANK).toString())
                .contains(
                        "two runs, first the fence 0.150 mm toward the cutter from the middle, then 0.300 mm away from it: the far");
    }

    @Test
    void pocketStops_areThoseOfThePocket() {
        RodSlot slot = RodSlot.of(CHANNEL.adjusterPocket(mm(20)).section(mm(10), mm(12)));

        StopBlocks stops = slot.pocketStops(Cutter.straight(mm(10)), BLANK);

        assertThat(stops.rear().fromCentre().libraryValue()).isCloseTo(620 - 3 - 5, within(1e-12));
        assertThat(stops.front().fromCentre().libraryValue()).isCloseTo(23 - 5 + 20, within(1e-12));
        assertThatThrownBy(() -> slot.pocketStops(Cutter.straight(mm(12)), BLANK))
                .hasMessage("cutter diameter must be 10 mm or less (the pocket's width and length), but was 12 mm");
        assertThatThrownBy(() -> SLOT.pocketStops(CUTTER, BLANK)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void sidePlay_isCutterAndRunoutLessRod() {
        assertThat(SLOT.sideClearance(CUTTER.runout(mm(0.05))).libraryValue()).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void stops_refuseWhatDoesNotGoTogether() {
        assertThatThrownBy(() -> SLOT.stops(Cutter.straight(mm(61)), BLANK))
                .hasMessage("cutter diameter must be less than the blank's width of 61 mm, but was 61 mm");
        assertThatThrownBy(() -> SLOT.stops(CUTTER, Blank.ofLength(mm(640)).section(mm(61), mm(10))))
                .hasMessage("channel depth must be less than the blank's thickness of 10 mm, but was 10.2 mm");
        assertThatThrownBy(() -> SLOT.stops(CUTTER, Blank.ofLength(mm(290)).section(mm(61), mm(20))))
                .hasMessage("channel end must be 290 mm or less (the blank's heel end, from the nut), but was 303 mm");
        assertThatThrownBy(() -> RodSlot.of(CHANNEL.startingAt(mm(-30))).stops(CUTTER, BLANK))
                .hasMessage(
                        "channel start must be -20 mm or more (the blank's head end, from the nut), but was -30 mm");
    }

    @Test
    void cautions_areThereForWhatApplies() {
        assertThat(SLOT.cautions(CUTTER).list().get(0).code()).isEqualTo("MACHINE_FIRST");
        assertThat(SLOT.cautions(CUTTER).list())
                .extracting(Caution::code)
                .contains(
                        "STOPPED_CUT",
                        "CLIMB_FEED",
                        "DEPTH_PER_PASS",
                        "CUTTER_CREEP",
                        "TAPE_SLIPS",
                        "DUST",
                        "NARROW_STOCK")
                .doesNotContain("SHORT_FLUTES", "CUTTER_TOO_WIDE", "CARBON_DUST");
        assertThat(SLOT.cautions(CUTTER.flutes(2, mm(8)).shank(mm(6)).stickOut(mm(30)))
                        .list())
                .extracting(Caution::code)
                .contains("SHORT_FLUTES");
        assertThat(SLOT.cautions(Cutter.straight(mm(6.5))).list())
                .extracting(Caution::code)
                .contains("CUTTER_TOO_WIDE");
        assertThat(SLOT.cautions(CUTTER, Blank.ofLength(mm(640)).section(mm(80), mm(13)))
                        .list())
                .extracting(Caution::code)
                .contains("THIN_FLOOR", "STOPPED_CUT")
                .doesNotContain("NARROW_STOCK");
        assertThat(RodSlot.of(Channel.forRod(TrussRod.twoWay(mm(640)).section(mm(6), mm(9)))
                                .startingAt(mm(-20)))
                        .cautions(CUTTER, BLANK)
                        .list())
                .extracting(Caution::code)
                .as("a slot open at both ends is not stopped")
                .doesNotContain("STOPPED_CUT");
        assertThat(RodSlot.of(Channel.forBar(Bar.carbon(mm(300)).section(mm(6), mm(9))))
                        .cautions(CUTTER)
                        .list())
                .extracting(Caution::code)
                .contains("CARBON_DUST");
    }

    @Test
    void text_printsInAnotherStyle() {
        RodSlot slot = RodSlot.of(Channel.forRod(TrussRod.twoWay(inch(12)).section(inch(0.25), inch("3/8"))));

        assertThat(slot.depth()).hasToString("0.375 in deep: rod 0.375, fillet 0, clearance 0");
        assertThat(slot.depth().text(LengthStyle.MILLIMETRES))
                .isEqualTo("9.525 mm deep: rod 9.525, fillet 0, clearance 0");
    }

    private static List<String> codes(Channel channel, Cutter cutter, Blank blank) {
        return RodSlot.of(channel).cautions(cutter, blank).list().stream()
                .map(Caution::code)
                .toList();
    }

    /** Common practice: 3 mm of floor, a carrier under 300 mm of length or 40 mm of width, a slot 0.2 mm wider than the rod. */
    @Test
    void cautions_beginAtTheirLimits() {
        Channel nine = Channel.forRod(TrussRod.twoWay(mm(200)).section(mm(6), mm(9)));
        Channel pocket = nine.adjusterPocket(mm(20)).section(mm(10), mm(12));
        Channel arched = Channel.forRod(TrussRod.singleAction(mm(200), mm(5)))
                .depthClearance(mm(4))
                .arch(mm(3));

        assertThat(codes(nine, CUTTER, Blank.ofLength(mm(640)).section(mm(80), mm(12))))
                .doesNotContain("THIN_FLOOR");
        assertThat(codes(nine, CUTTER, Blank.ofLength(mm(640)).section(mm(80), mm(11.99))))
                .contains("THIN_FLOOR");
        assertThat(codes(pocket, CUTTER, Blank.ofLength(mm(640)).section(mm(80), mm(14.99))))
                .contains("THIN_FLOOR");
        assertThat(codes(arched, CUTTER, Blank.ofLength(mm(640)).section(mm(80), mm(15))))
                .doesNotContain("THIN_FLOOR");
        assertThat(codes(arched, CUTTER, Blank.ofLength(mm(640)).section(mm(80), mm(14.99))))
                .contains("THIN_FLOOR");
        assertThat(codes(nine, CUTTER, Blank.ofLength(mm(300)).section(mm(40), mm(20))))
                .doesNotContain("NARROW_STOCK");
        assertThat(codes(nine, CUTTER, Blank.ofLength(mm(299)).section(mm(40), mm(20))))
                .contains("NARROW_STOCK");
        assertThat(codes(nine, CUTTER, Blank.ofLength(mm(300)).section(mm(39.9), mm(20))))
                .contains("NARROW_STOCK");
    }

    @Test
    void cautions_ofACutterTooShortOrTooWideBeginAtItsSize() {
        Channel nine = Channel.forRod(TrussRod.twoWay(mm(200)).section(mm(6), mm(9)));
        Channel wide = nine.sideClearance(mm(0.3));
        Cutter thick = CUTTER.shank(mm(6)).stickOut(mm(30));
        Blank blank = Blank.ofLength(mm(640)).section(mm(80), mm(20));

        assertThat(codes(nine, thick.flutes(2, mm(9)), blank)).doesNotContain("SHORT_FLUTES");
        assertThat(codes(nine, thick.flutes(2, mm(8.9)), blank)).contains("SHORT_FLUTES");
        assertThat(codes(nine.adjusterPocket(mm(20)).section(mm(10), mm(12)), thick.flutes(2, mm(11.9)), blank))
                .contains("SHORT_FLUTES");
        assertThat(codes(nine.adjusterPocket(mm(20)).section(mm(10), mm(12)), thick.flutes(2, mm(12)), blank))
                .doesNotContain("SHORT_FLUTES");
        // A shank thinner than the cutter follows it down.
        assertThat(codes(nine, thick.flutes(2, mm(8)).shank(mm(5)), blank)).doesNotContain("SHORT_FLUTES");
        assertThat(codes(nine, CUTTER.flutes(2, mm(8)).shank(mm(5)).stickOut(mm(9)), blank))
                .doesNotContain("SHORT_FLUTES");
        assertThat(codes(nine, CUTTER.flutes(2, mm(8)).shank(mm(5)).stickOut(mm(8.9)), blank))
                .contains("SHORT_FLUTES");
        assertThat(codes(nine, Cutter.straight(mm(6.1)).runout(mm(0.09)), blank))
                .doesNotContain("CUTTER_TOO_WIDE");
        assertThat(codes(nine, Cutter.straight(mm(6.1)).runout(mm(0.11)), blank))
                .contains("CUTTER_TOO_WIDE");
        // The channel was meant to be that wide.
        assertThat(codes(wide, Cutter.straight(mm(6.3)), blank)).doesNotContain("CUTTER_TOO_WIDE");
    }

    @Test
    void everyQuestion_refusesABlankTheChannelDoesNotGoInto() {
        Blank thin = Blank.ofLength(mm(640)).section(mm(61), mm(10.2)).nutAt(mm(20));
        RodSlot pocket = RodSlot.of(CHANNEL.adjusterPocket(mm(20)).section(mm(10), mm(12)));
        String message = "channel depth must be less than the blank's thickness of 10.2 mm, but was 10.2 mm";

        assertThatThrownBy(() -> SLOT.stops(CUTTER, thin)).hasMessage(message);
        assertThatThrownBy(() -> BlankOnFence.of(thin, CHANNEL, Fence.onePiece(mm(600))))
                .hasMessage(message);
        assertThatThrownBy(() -> SLOT.cautions(CUTTER, thin)).hasMessage(message);
        assertThatThrownBy(() -> pocket.pocketStops(
                        CUTTER, Blank.ofLength(mm(640)).section(mm(61), mm(12)).nutAt(mm(20))))
                .hasMessage("channel depth must be less than the blank's thickness of 12 mm, but was 12 mm");
    }

    @Test
    void pocketPasses_needAPocket() {
        assertThatThrownBy(() -> SLOT.pocketPasses(Passes.noDeeperThan(mm(3))))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("no pocket");
        assertThat(RodSlot.of(CHANNEL.adjusterPocket(mm(20)).section(mm(10), mm(12)))
                        .pocketPasses(Passes.noDeeperThan(mm(3)))
                        .passes())
                .hasSize(4);
    }

    @Test
    void stops_takeACutterAsWideAsTheChannelIsLong() {
        RodSlot shortest = RodSlot.of(
                Channel.forRod(TrussRod.twoWay(mm(10)).section(mm(10), mm(9))).startingAt(mm(3)));

        StopBlocks stops = shortest.stops(Cutter.straight(mm(10)), BLANK);

        // One plunge: the blank touches both stops at once.
        assertThat(stops.rear().fromCentre().libraryValue()
                        + stops.front().fromCentre().libraryValue())
                .isCloseTo(640, within(1e-12));
        assertThatThrownBy(() -> shortest.stops(Cutter.straight(mm(10.1)), BLANK))
                .hasMessage("cutter diameter must be no more than the channel's length of 10 mm, but was 10.1 mm");
    }
}
