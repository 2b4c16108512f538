package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.neck.Head;
import org.neckgeom.shop.Fence;
import org.neckgeom.stock.Blank;

class HeadInterferenceTest {

    private static final Fence LONG = Fence.onePiece(mm(3000));
    private static final Blank BLANK = Blank.ofLength(mm(640)).section(mm(61), mm(20));
    private static final Head HEAD = Head.angled(deg(13)).length(mm(185)).width(mm(76));

    static Stream<String[]> swung() {
        return Reference.rows("swung-head.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("swung")
    void skew_isTheContactLineOfTheTable(
            String swing,
            String pitch,
            String length,
            String tip,
            String shaft,
            String shaftLength,
            String station,
            String proud,
            String skew,
            String shift) {
        double alpha = Double.parseDouble(pitch);
        Head head = (alpha == 0 ? Head.flat() : Head.angled(deg(alpha)))
                .length(mm(Double.parseDouble(length)))
                .width(mm(Double.parseDouble(tip)))
                .swung(deg(Double.parseDouble(swing)));
        Blank blank =
                Blank.ofLength(mm(Double.parseDouble(shaftLength))).section(mm(Double.parseDouble(shaft)), mm(20));

        // The table's head widens evenly from the shaft's width at the nut.
        HeadSkew found = HeadInterference.of(head, blank, LONG)
                .outline(blank.width(), mm(Double.parseDouble(tip)))
                .skew();

        assertThat(found.proud().libraryValue()).isCloseTo(Double.parseDouble(proud), within(1e-11));
        assertThat(found.angleAt(mm(0)).value()).isCloseTo(Double.parseDouble(skew), within(1e-11));
        assertThat(found.at(mm(Double.parseDouble(station))).amountMm())
                .isCloseTo(-Double.parseDouble(shift), within(1e-10));
    }

    @Test
    void skew_onTheOtherSideIsThatOfTheHeadSwungAway() {
        HeadInterference there = HeadInterference.of(HEAD.swung(deg(0.6)), BLANK, LONG);

        assertThat(there.fenceOnTheOtherSide().proud().libraryValue())
                .isLessThan(there.proud().libraryValue());
        assertThat(there.fenceOnTheOtherSide().fenceOnTheOtherSide()).isEqualTo(there);
        assertThat(HeadInterference.of(HEAD.swung(deg(-0.6)), BLANK, LONG).proud())
                .isEqualTo(there.proud());
    }

    @Test
    void spacer_isWhatStandsProudAndTheClearance() {
        Spacer spacer = HeadInterference.of(HEAD, BLANK, LONG).spacer(mm(1));

        assertThat(spacer.leastThickness().libraryValue()).isCloseTo(8.5, within(1e-12));
        assertThat(spacer.toString()).startsWith("parallel spacer of 8.5 mm or more on the fence side");
        assertThat(spacer.skewFrom(mm(0.1)).offsetMmAt(0)).isCloseTo(-0.1, within(1e-12));
        assertThat(spacer.skewFrom(mm(0.1)).skew().libraryValue()).isCloseTo(Math.atan(0.1 / 640), within(1e-15));
    }

    @Test
    void spacer_isNotNeededForANarrowHead() {
        Spacer spacer = HeadInterference.of(HEAD.width(mm(60)), BLANK, LONG).spacer(mm(1));

        assertThat(spacer.isNeeded()).isFalse();
        assertThat(spacer.leastThickness().libraryValue()).isZero();
        assertThat(HeadInterference.of(HEAD.width(mm(60)), BLANK, LONG).skew())
                .hasToString("no skew: the head stays inside the shaft's edge");
    }

    @Test
    void rocking_isShallowFromTheVeneersEdgeToTheFarEnd() {
        double pitch = Math.toRadians(13);
        double h = 2 * Math.cos(pitch) - 3 * Math.sin(pitch);
        double reach = 3 * Math.cos(pitch) + 2 * Math.sin(pitch);

        TableRocking rocking =
                HeadInterference.of(HEAD.veneer(mm(2), mm(3)), BLANK, LONG).rocking();

        assertThat(rocking.height().libraryValue()).isCloseTo(h, within(1e-12));
        assertThat(rocking.shallowAt(mm(0)).libraryValue()).isCloseTo(h * 640 / (640 + reach), within(1e-12));
        assertThat(rocking.shallowAt(mm(640)).libraryValue()).isZero();
    }

    @Test
    void rocking_isNoneForAVeneerThatStopsShort() {
        assertThat(HeadInterference.of(HEAD.veneer(mm(2), mm(9)), BLANK, LONG)
                        .rocking()
                        .isRocking())
                .isFalse();
        // On a flat head nothing short of no veneer helps.
        assertThat(HeadInterference.of(Head.flat().veneer(mm(2), mm(9)), BLANK, LONG)
                        .rocking()
                        .height()
                        .libraryValue())
                .isEqualTo(2);
    }

    @Test
    void at_refusesAStationBeyondTheShaft() {
        assertThatThrownBy(() -> HeadInterference.of(HEAD, BLANK, LONG).skew().at(mm(641)))
                .hasMessage("station must be no farther than the shaft's end at 640 mm, but was 641 mm");
    }

    @Test
    void fenceStep_shiftsByTheWholeStepAtMost() {
        FenceStep step = FenceStep.of(Fence.split(mm(600), mm(0.2)).gap(mm(50)), mm(640));

        assertThat(step.at(mm(0)).amountMm()).isZero();
        assertThat(step.at(mm(640)).amountMm()).isCloseTo(-0.2, within(1e-12));
        assertThat(step.at(mm(320)).amountMm()).isCloseTo(-0.2 * 300 / 325, within(1e-12));
        assertThat(FenceStep.of(LONG, mm(640))).hasToString("no step: the slot runs straight");
        assertThatThrownBy(() -> FenceStep.of(Fence.split(mm(600), mm(0.2)).gap(mm(50)), mm(40)))
                .hasMessage("piece length must be more than the fence's gap of 50 mm, but was 40 mm");
    }
}
