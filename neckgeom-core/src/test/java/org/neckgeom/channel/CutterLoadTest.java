package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.inchPerMinute;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.mmPerMinute;
import static org.neckgeom.units.ShopUnits.rpm;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.shop.Caution;
import org.neckgeom.shop.Cutter;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.ShopUnit;

class CutterLoadTest {

    private static final Cutter CUTTER = Cutter.straight(mm(6))
            .flutes(2, mm(22))
            .shank(mm(12.7))
            .stickOut(mm(30))
            .carbide();

    private static CutterLoad load(double feed, double turns, double depth) {
        return CutterLoad.of(CUTTER, Wood.BLACK_WALNUT, mmPerMinute(feed), rpm(turns), mm(depth))
                .cuttingForce(gigapascal(0.033));
    }

    // pi d n and f/(n z): 1/4 in, two flutes, 18,000 rpm, 100 in/min is 359.084040305313 m/min and 0.00277777777777778
    // in.
    @Test
    void rimSpeedAndChipLoad_areTheShopFormulas() {
        CutterLoad load =
                CutterLoad.of(Cutter.straight(inch(0.25)), Wood.SUGAR_MAPLE, inchPerMinute(100), rpm(18000), inch(0.1));

        assertThat(load.rimSpeed().valueIn(ShopUnit.METRE_PER_SECOND) * 60)
                .isCloseTo(359.084040305313367, within(1e-9));
        assertThat(load.chipLoad().valueIn(ShopUnit.INCH)).isCloseTo(0.00277777777777778, within(1e-14));
    }

    @Test
    void force_isPowerOverRimSpeed() {
        CutterLoad load = load(1800, 16000, 2.9);

        // k_c a D f = 33 * 2.9 * 6 * 30 N mm/s
        assertThat(load.power().valueIn(ShopUnit.WATT)).isCloseTo(33 * 2.9 * 6 * 30 / 1000, within(1e-9));
        assertThat(load.force().libraryValue())
                .isCloseTo(load.power().libraryValue() * 1000 / (Math.PI * 6 * 16000 / 60), within(1e-9));
        // One edge always in the cut: the mean of k a f_z sin over half a turn is 2 k a f_z/pi.
        assertThat(load.force().libraryValue())
                .isCloseTo(33 * 2.9 * load.chipLoad().libraryValue() * 2 / Math.PI, within(1e-12));
    }

    // Feed = rpm * chip load * edges (shop formula): 16,000 rpm, two edges, 0.10 mm is 3,200 mm/min.
    @Test
    void chipLoad_turnsTheShopFormulaRound() {
        assertThat(load(3200, 16000, 2.9).chipLoad().libraryValue()).isCloseTo(0.10, within(1e-9));
    }

    static Stream<String[]> cantilevers() {
        return Reference.rows("stepped-cantilever.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("cantilevers")
    void bend_isTheSteppedCantileverByVirtualWork(
            String force, String modulus, String free, String freeD, String root, String rootD, String bend) {
        assertThat(CutterLoad.bend(
                        Double.parseDouble(force),
                        Double.parseDouble(modulus),
                        Double.parseDouble(free),
                        CutterLoad.roundSecondMoment(Double.parseDouble(freeD)),
                        Double.parseDouble(root),
                        CutterLoad.roundSecondMoment(Double.parseDouble(rootD))))
                .isCloseTo(Double.parseDouble(bend), within(1e-14));
    }

    @Test
    void bend_takesTheFlutesAtFourFifthsOfTheDiameter() {
        CutterLoad load = load(1800, 16000, 2.9);

        // The table's third case is this cutter under 3.5 N: flutes 22 mm at 4.8 mm, shank 8 mm at 12.7 mm.
        assertThat(load.bend().libraryValue() * 3.5 / load.force().libraryValue())
                .isCloseTo(0.0008194627087914530204, within(1e-14));
    }

    @Test
    void slotWidth_growsByTheRunout() {
        CutterLoad load =
                CutterLoad.of(CUTTER.runout(mm(0.04)), Wood.BLACK_WALNUT, mmPerMinute(1800), rpm(16000), mm(2));

        assertThat(load.slotWidth().libraryValue()).isCloseTo(6.04, within(1e-12));
    }

    // Common practice by diameter.
    @ParameterizedTest
    @CsvSource({"6, 24000", "25, 24000", "25.1, 18000", "50, 18000", "60, 12000", "70, 10000", "100, 10000"})
    void usualFastest_fallsWithTheDiameter(double diameter, double fastest) {
        CutterLoad load =
                CutterLoad.of(Cutter.straight(mm(diameter)), Wood.BLACK_WALNUT, mmPerMinute(1000), rpm(8000), mm(1));

        assertThat(load.usualFastest().valueIn(ShopUnit.RPM)).isCloseTo(fastest, within(1e-9));
    }

    @Test
    void cautions_nameWhatIsOutOfTheUsual() {
        assertThat(load(1800, 16000, 2.9).cautions().list())
                .extracting(Caution::code)
                .contains("MACHINE_FIRST", "CLIMB_FEED", "DUST")
                .doesNotContain("TOO_FAST", "PASS_TOO_DEEP", "RUBS", "BITES");
        assertThat(load(1800, 26000, 3.1).cautions().list())
                .extracting(Caution::code)
                .contains("TOO_FAST", "PASS_TOO_DEEP", "RUBS");
        assertThat(load(9000, 16000, 1).cautions().list())
                .extracting(Caution::code)
                .contains("BITES");
    }

    @Test
    void pass_refusesMoreThanTheCutterStandsOut() {
        assertThatThrownBy(() -> load(1800, 16000, 31))
                .hasMessage("pass depth must be no more than the cutter's stick-out, 30 mm, but was 31 mm");
        assertThatThrownBy(() -> load(0, 16000, 3)).hasMessage("feed must be more than 0 mm/min, but was 0 mm/min");
    }
}
