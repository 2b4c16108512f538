package org.neckgeom.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.mmPerMinute;
import static org.neckgeom.units.ShopUnits.rpm;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.List;
import java.util.Locale;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.LengthStyle;

/** Cutter, fence, leaves and test piece: defaults, one thing changed at a time, refusals. */
class BenchNounsTest {

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    @Test
    void cutter_hasTheUsualProportions() {
        Cutter cutter = Cutter.straight(mm(6));

        assertThat(cutter.flutes()).isEqualTo(2);
        assertThat(cutter.fluteLengthMm()).isEqualTo(18);
        assertThat(cutter.shankMm()).isEqualTo(6);
        assertThat(cutter.stickOutMm()).isEqualTo(24);
        assertThat(cutter.material()).isEqualTo(Cutter.Material.STEEL);
        assertThat(cutter.runoutMm()).isZero();
        assertThat(cutter).hasToString("6 mm straight cutter, 2 flutes of 18 mm, shank 6 mm, stick-out 24 mm, steel");
    }

    @Test
    void cutter_changesOneThingAndLeavesTheOldOne() {
        Cutter old = Cutter.straight(inch("1/4"));

        Cutter changed = old.flutes(1, inch(1.5)).shank(inch("1/2")).carbide().runout(thou(1));

        assertThat(changed.flutes()).isEqualTo(1);
        assertThat(changed.fluteLengthMm()).isEqualTo(38.1);
        assertThat(changed.stickOutMm()).isEqualTo(38.1); // no less than its flutes
        assertThat(changed.shankMm()).isEqualTo(12.7);
        assertThat(changed.runoutMm()).isCloseTo(0.0254, within(1e-17));
        // 0.25 in and 1 thou, by hand: 6.35 + 0.0254
        assertThat(changed.slotWidthMm()).isCloseTo(6.3754, within(1e-12));
        assertThat(changed.stickOut(inch(2)).stickOutMm()).isEqualTo(50.8);
        assertThat(changed.style()).isEqualTo(LengthStyle.DECIMAL_INCHES);
        assertThat(changed)
                .hasToString(
                        "0.25 in straight cutter, 1 flute of 1.5 in, shank 0.5 in, stick-out 1.5 in, carbide, runout 0.001 in");
        assertThat(old).isEqualTo(Cutter.straight(inch("1/4")));
        assertThat(changed.steel().material()).isEqualTo(Cutter.Material.STEEL);
    }

    @Test
    void cutter_refusesWhatCannotBe() {
        Cutter cutter = Cutter.straight(mm(6));

        refused(() -> Cutter.straight(mm(0)), "cutter diameter must be more than 0 mm, but was 0 mm");
        refused(() -> cutter.flutes(0, mm(10)), "flutes must be a whole number from 1 to 8, but was 0");
        refused(() -> cutter.flutes(2, mm(-1)), "flute length must be more than 0 mm, but was -1 mm");
        refused(() -> cutter.shank(mm(0)), "shank diameter must be more than 0 mm, but was 0 mm");
        refused(() -> cutter.stickOut(mm(10)), "stick-out must be 18 mm or more, the flute length, but was 10 mm");
        refused(() -> cutter.runout(mm(-0.01)), "runout must be 0 mm or more, but was -0.01 mm");
        refused(
                () -> Cutter.straight(mm(1e308)),
                "cutter diameter must be no more than 1000000000 mm in size, but was 1E+308 mm");
    }

    @Test
    void material_isThatOfTheTables() {
        // Steel: OpenStax, University Physics 1, Table 12.1 prints 200 GPa; carbide from memory, 550 to 650 GPa.
        assertThat(Cutter.Material.STEEL.modulusMPa()).isEqualTo(200_000);
        assertThat(Cutter.Material.CARBIDE.modulusMPa()).isBetween(550_000.0, 650_000.0);
    }

    @Test
    void fence_hasItsLeverage() {
        assertThat(Fence.onePiece(mm(600)).leverage()).isEqualTo(1);
        assertThat(Fence.split(mm(600), mm(0.1)).leverage()).isEqualTo(1);
        assertThat(Fence.split(mm(600), mm(-0.1)).outOfLineMm()).isEqualTo(-0.1);
        // The block's gap for a move m at the cutter is m B/C.
        assertThat(Fence.pivoting(mm(600)).fromPivot(mm(300), mm(570)).leverage())
                .isEqualTo(1.9);
        assertThat(Fence.pivoting(mm(600)).fromPivot(mm(300), mm(700)).stopFromPivotMm())
                .isEqualTo(700);
        assertThat(Fence.onePiece(mm(600)).outOfLineMm()).isZero();
    }

    @Test
    void fence_namesItsBuild() {
        assertThat(Fence.onePiece(mm(600))).hasToString("one-piece fence, 600 mm");
        assertThat(Fence.split(inch(24), thou(4)))
                .hasToString("split fence, 24 in, halves out of line by 0.004 in, gap 0.75 in");
        assertThat(Fence.pivoting(mm(600)).fromPivot(mm(300), mm(570)))
                .hasToString("pivoting fence, 600 mm, cutter 300 mm and stop 570 mm from the pivot");
    }

    @Test
    void fence_refusesWhatCannotBe() {
        refused(() -> Fence.onePiece(mm(0)), "fence length must be more than 0 mm, but was 0 mm");
        refused(
                () -> Fence.pivoting(mm(600)).fromPivot(mm(601), mm(570)),
                "cutter from pivot must be 600 mm or less, the fence's length, but was 601 mm");
        refused(
                () -> Fence.pivoting(mm(600)).fromPivot(mm(0), mm(570)),
                "cutter's distance from the pivot must be more than 0 mm, but was 0 mm");
        refused(
                () -> Fence.pivoting(mm(600)).fromPivot(mm(300), mm(-1)),
                "stop block's distance from the pivot must be more than 0 mm, but was -1 mm");
    }

    @Test
    void leaves_areTheCommonSets() {
        // Common practice: 20 leaves to 1 mm by 0.05; 13 leaves by 0.05 to 0.3, then 0.1; 26 leaves, 1.5 to 25 thou.
        double[] metric = FeelerSet.metric20().thicknessesMm();
        assertThat(metric).hasSize(20).isSorted();
        for (int i = 0; i < 20; i++) {
            assertThat(metric[i])
                    .isEqualTo(Double.parseDouble("0." + String.format(Locale.ROOT, "%02d", 5 * (i + 1) % 100))
                            + (i == 19 ? 1 : 0));
        }
        assertThat(FeelerSet.metric13().thicknessesMm())
                .hasSize(13)
                .isSorted()
                .startsWith(0.05)
                .endsWith(0.9, 1.0);
        double[] inch = FeelerSet.inch26().thicknessesMm();
        assertThat(inch).hasSize(26).isSorted();
        assertThat(inch[0]).isCloseTo(0.0381, within(1e-17));
        assertThat(inch[2]).isCloseTo(0.0635, within(1e-17));
        assertThat(inch[3]).isCloseTo(0.0762, within(1e-16));
        assertThat(inch[25]).isCloseTo(0.635, within(1e-16));
    }

    @Test
    void leaves_areKeptApartFromTheListTheyCameIn() {
        var thicknesses = new java.util.ArrayList<>(List.of(mm(0.3), mm(0.1)));
        FeelerSet set = FeelerSet.of(thicknesses);
        thicknesses.set(0, mm(9));

        assertThat(set.thicknessesMm()).containsExactly(0.1, 0.3);
        assertThat(set).hasToString("2 gauges, 0.1 mm to 0.3 mm");
        assertThat(FeelerSet.of(List.of(inch(0.01)))).hasToString("1 gauge, 10 thou");
        assertThat(FeelerSet.inch26()).hasToString("26 gauges, 1.5 thou to 25 thou");
        assertThat(FeelerSet.metric20().halfWidth(mm(0.005)))
                .hasToString("20 gauges, 0.05 mm to 1 mm, half-width 0.005 mm");
    }

    @Test
    void leaves_refuseWhatCannotBe() {
        refused(
                () -> FeelerSet.of(List.of()),
                "feeler gauges must be a list of 1 to 60 items, each a length of more than 0 mm and at most 3000 mm with its unit,"
                        + " such as 44.5 mm or 1 3/4 in, but was a list of 0 items");
        refused(() -> FeelerSet.of(List.of(mm(0.1), mm(0))), "feeler gauges must be more than 0 mm, but was 0 mm");
        refused(
                () -> FeelerSet.metric20().halfWidth(mm(-0.1)),
                "half-width of a gauge's error must be 0 mm or more, but was -0.1 mm");
        refused(
                () -> FeelerSet.metric20().halfWidth(mm(0.05)),
                "half-width must be less than 0.05 mm, the thinnest gauge, but was 0.05 mm");
    }

    @Test
    void measuredPiece_isWiderByTheDifference() {
        TestPiece piece = TestPiece.measured(Estimate.of(mm(61.1), mm(0.03)));

        Estimate<javax.measure.quantity.Length> wider = piece.widerThan(Estimate.of(mm(61), mm(0.04)));

        assertThat(wider.libraryValue()).isCloseTo(0.1, within(1e-14));
        assertThat(wider.libraryUncertainty()).isCloseTo(0.05, within(1e-16));
        assertThat(wider.degreesOfFreedom()).isInfinite();
        assertThat(piece.isCopied()).isFalse();
        assertThat(piece).hasToString("test piece, 61.100 mm, u 0.030 mm");
    }

    @Test
    void measuredPiece_keepsItsDegreesOfFreedom() {
        // Welch and Satterthwaite: 0.57 with 9 degrees of freedom and 0.25 known surely give 12.8 (a course note's
        // figure).
        TestPiece piece = TestPiece.measured(Estimate.of(mm(61), mm(0.57), 9));

        assertThat(piece.widerThan(Estimate.of(mm(61), mm(0.25))).degreesOfFreedom())
                .isCloseTo(12.8, within(0.05));
        // Two alike: twice the degrees of freedom of one.
        assertThat(TestPiece.measured(Estimate.of(mm(61), mm(0.1), 4))
                        .widerThan(Estimate.of(mm(61), mm(0.1), 4))
                        .degreesOfFreedom())
                .isCloseTo(8, within(1e-12));
        assertThat(TestPiece.measured(Estimate.of(mm(61), mm(0), 4))
                        .widerThan(Estimate.of(mm(61), mm(0)))
                        .degreesOfFreedom())
                .isInfinite();
    }

    @Test
    void copiedPiece_carriesTwoRips() {
        TestPiece piece = TestPiece.copied(mm(0.04));

        Estimate<javax.measure.quantity.Length> wider = piece.widerThan(Estimate.of(mm(61), mm(9)));

        assertThat(wider.libraryValue()).isZero();
        assertThat(wider.libraryUncertainty()).isCloseTo(0.04 * 1.4142135623730951, within(1e-16));
        assertThat(piece).hasToString("test piece copied, differs from the blank by 0.000 mm, u 0.057 mm");
        refused(() -> TestPiece.copied(mm(-1)), "rip repeatability must be 0 mm or more, but was -1 mm");
        refused(
                () -> TestPiece.measured(Estimate.of(mm(0), mm(1))),
                "piece width must be more than 0 mm, but was 0 mm");
    }

    @Test
    void shop_hasWhatIsUsual() {
        Shop metric = Shop.with(Cutter.straight(mm(6)));
        Shop inches = Shop.with(Cutter.straight(inch("1/4")));

        assertThat(metric.feelerGauges()).isEqualTo(FeelerSet.metric20());
        assertThat(inches.feelerGauges()).isEqualTo(FeelerSet.inch26());
        assertThat(metric.fence()).isEqualTo(Fence.onePiece(mm(600)));
        assertThat(metric.deepestPass()).isEqualTo(mm(1.5)); // a quarter of the diameter in hardwood: common practice
        assertThat(metric.lastPass()).isEqualTo(mm(0));
        assertThat(metric.repeatability()).isEqualTo(mm(BenchUncertainty.USUAL_REPEATABILITY_MM));
    }

    @Test
    void shop_changesOneThingAndLeavesTheOldOne() {
        Shop old = Shop.with(Cutter.straight(mm(6)));

        Shop changed = old.fence(Fence.onePiece(mm(900)))
                .feelerGauges(FeelerSet.metric13())
                .repeatability(mm(0.02))
                .passes(mm(2), mm(0.5));

        assertThat(changed.fence()).isEqualTo(Fence.onePiece(mm(900)));
        assertThat(changed.feelerGauges()).isEqualTo(FeelerSet.metric13());
        assertThat(changed.repeatability()).isEqualTo(mm(0.02));
        assertThat(changed.deepestPass()).isEqualTo(mm(2));
        assertThat(changed.lastPass()).isEqualTo(mm(0.5));
        assertThat(changed.cutter()).isEqualTo(old.cutter());
        assertThat(old).isEqualTo(Shop.with(Cutter.straight(mm(6))));
        refused(() -> old.passes(mm(2), mm(3)), "last pass must be 2 mm or less, the deepest pass, but was 3 mm");
        refused(() -> old.passes(mm(0), mm(0)), "deepest pass must be more than 0 mm, but was 0 mm");
    }

    @Test
    void shop_tellsFeedAndTurningTogether() {
        Shop shop = Shop.with(Cutter.straight(mm(6)));
        Shop complete = shop.feed(mmPerMinute(1500), rpm(16_000));

        assertThat(shop.feed()).isEmpty();
        assertThat(shop.turning()).isEmpty();
        assertThat(complete.feed()).contains(mmPerMinute(1500));
        assertThat(complete.turning()).contains(rpm(16_000));
        assertThat(complete.cutter()).isEqualTo(Cutter.straight(mm(6)));
        assertThat(complete.toString()).endsWith("feed           1500 mm/min at 16000 rpm");
        assertThat(shop.toString()).doesNotContain("feed").doesNotContain("last pass");
        assertThat(shop.passes(mm(2), mm(0.5)).toString()).contains("deepest pass   2 mm\n  last pass      0.5 mm");
        assertThat(complete).isNotEqualTo(shop).isNotEqualTo("Shop");
        assertThat(complete.hashCode()).isNotEqualTo(shop.hashCode());
    }

    @Test
    void shop_feedsNoFasterThanAnyMachine() {
        Shop shop = Shop.with(Cutter.straight(mm(6)));

        assertThat(shop.feed(mmPerMinute(30_000), rpm(60_000)).turning()).contains(rpm(60_000));
        refused(
                () -> shop.feed(mmPerMinute(30_001), rpm(16_000)),
                "feed must be more than 0 mm/min and 30000 mm/min or less, but was 30001 mm/min");
        refused(
                () -> shop.feed(mmPerMinute(1500), rpm(60_001)),
                "speed of rotation must be more than 0 rpm and 60000 rpm or less, but was 60001 rpm");
        refused(() -> shop.feed(mmPerMinute(0), rpm(1)), "feed must be more than 0 mm/min, but was 0 mm/min");
    }

    @Test
    void shop_mayTakeItsLastPassAsDeepAsAnyOther() {
        Shop shop = Shop.with(Cutter.straight(mm(6))).passes(mm(2), mm(2));

        assertThat(shop.lastPass()).isEqualTo(shop.deepestPass()).isEqualTo(mm(2));
    }

    @Test
    void pieceAndNeckKnownSurely_areWiderSurely() {
        Estimate<javax.measure.quantity.Length> wider =
                TestPiece.measured(Estimate.of(mm(61), mm(0))).widerThan(Estimate.of(mm(60), mm(0)));

        assertThat(wider.libraryValue()).isEqualTo(1);
        assertThat(wider.libraryUncertainty()).isZero();
        assertThat(wider.degreesOfFreedom()).isInfinite();
    }
}
