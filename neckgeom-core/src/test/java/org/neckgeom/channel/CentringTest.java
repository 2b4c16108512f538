package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.measure.Decision;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.shop.TestPiece;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

class CentringTest {

    private static final TrialCut FIRST = TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02));
    private static final TrialCut SECOND = TrialCut.walls(inch(1.2030), inch(1.2038))
            .slot(inch(0.2365))
            .piece(inch(2.6436))
            .repeatability(thou(0.8));

    @Test
    void offset_isHalfTheDifferenceOfTheWalls() {
        SlotOffset offset = Centring.of(FIRST).offset();

        assertThat(offset.amountMm()).isCloseTo(-0.71, within(1e-12));
        assertThat(offset.uncertaintyMm()).isCloseTo(0.02 / Math.sqrt(2), within(1e-15));
        assertThat(offset).hasToString("slot 0.710 mm nearer the fence, u 0.014 mm");
    }

    @Test
    void move_goesAwayFromTheCutterWhenTheSlotIsTooNearTheFence() {
        FenceMove move = Centring.of(FIRST).move();

        assertThat(move.isTowardTheCutter()).isFalse();
        assertThat(move.amountMm()).isCloseTo(0.71, within(1e-12));
        assertThat(move).hasToString("fence away from the cutter by 0.710 mm");
    }

    @Test
    void onWidth_addsHalfTheDifferenceInWidth() {
        // By hand, in thou: (1203.0 - 1203.8)/2 = -0.4; the neck 0.4 wider: another -0.2.
        SlotOffset offset = Centring.of(SECOND).onWidth(inch(2.6440)).offset();

        assertThat(offset.amount().valueIn(ShopUnit.THOU)).isCloseTo(-0.6, within(1e-9));
        // u^2 = (u_a^2 + u_b^2 + u_Wt^2 + u_W^2)/4 with all four 0.8 thou: u = 0.8.
        assertThat(offset.uncertainty().valueIn(ShopUnit.THOU)).isCloseTo(0.8, within(1e-9));
    }

    @Test
    void onWidth_takesTheSlotWhereThePieceWasNotRead() {
        Centring centring =
                Centring.of(TrialCut.walls(mm(29.5), mm(31)).slot(mm(6)).repeatability(mm(0.02)));

        // The middle of the slot is 32.5 from the fence; the middle of a 64 mm neck at 32.
        SlotOffset there = centring.onWidth(Estimate.ofLibrary(64, 0, Double.POSITIVE_INFINITY, ShopUnit.MILLIMETRE))
                .offset();

        assertThat(there.amountMm()).isCloseTo(0.5, within(1e-12));
        assertThat(there.uncertaintyMm()).isCloseTo(Math.hypot(0.02, 0.01), within(1e-15));
    }

    @Test
    void onWidth_withoutPieceOrSlotHasNoAnswer() {
        assertThatThrownBy(() -> Centring.of(FIRST).onWidth(mm(66)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("read the piece or the slot as well");
    }

    @Test
    void onWidth_refusesAPieceTheSlotWouldMiss() {
        assertThatThrownBy(() -> Centring.of(SECOND).onWidth(mm(30)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "piece width must be more than the slot's distance from the fence, 1.3214 in, but was 30 mm");
    }

    @Test
    void onNeckCopiedBy_addsHalfOfTwoRips() {
        SlotOffset there =
                Centring.of(FIRST).onNeckCopiedBy(TestPiece.copied(mm(0.04))).offset();

        assertThat(there.amountMm()).isCloseTo(-0.71, within(1e-12));
        assertThat(there.uncertaintyMm()).isCloseTo(Math.sqrt(0.0002 + 0.0008), within(1e-12));
    }

    @Test
    void onNeck_addsHalfTheMeasuredDifference() {
        Estimate<Length> neck = Estimate.of(mm(67.06), mm(0.03));
        TestPiece piece = TestPiece.measured(Estimate.of(mm(67.10), mm(0.04)));

        SlotOffset there = Centring.of(FIRST).onNeck(neck, piece).offset();

        assertThat(there.amountMm()).isCloseTo(-0.71 + 0.02, within(1e-12));
        assertThat(there.uncertaintyMm()).isCloseTo(Math.sqrt(0.0002 + 0.0025 / 4), within(1e-12));
    }

    @Test
    void along_runsAskewByHalfTheTaper() {
        Centring centring = Centring.of(
                TrialCut.walls(mm(30), mm(30)).slot(mm(6)).piece(mm(66)).repeatability(mm(0.02)));

        SlotLine line =
                centring.along(Blank.ofLength(mm(400)).section(mm(62), mm(20)).outOfParallel(mm(-8)));

        assertThat(line.offsetMmAt(0)).isCloseTo(0, within(1e-12));
        assertThat(line.offsetMmAt(400)).isCloseTo(4, within(1e-12));
        assertThat(line.offsetMmAt(100)).isCloseTo(1, within(1e-12));
        assertThat(line.skew().libraryValue()).isCloseTo(Math.atan(0.01), within(1e-12));
    }

    @Test
    void offset_dropsTheZeroErrorOfOneInstrument() {
        double zero = 0.4;
        Centring read =
                Centring.of(TrialCut.walls(mm(29.84 + zero), mm(31.26 + zero)).repeatability(mm(0.02)));

        assertThat(read.offset().amountMm())
                .isCloseTo(Centring.of(FIRST).offset().amountMm(), within(1e-12));
    }

    @Test
    void offset_uncertaintyTakesTheCorrelationIn() {
        // sqrt(u^2 + u^2 - 2 rho u^2)/2 with u = 0.02, rho = 0.5: 0.01.
        SlotOffset offset = Centring.of(FIRST.wallsCorrelated(0.5)).offset();

        assertThat(offset.uncertaintyMm()).isCloseTo(0.01, within(1e-15));
    }

    @Test
    void offset_ofRepeatedReadingsHasWelchSatterthwaiteFreedom() {
        List<org.neckgeom.units.Amount<Length>> fence = List.of(mm(30.00), mm(30.02), mm(30.04));
        List<org.neckgeom.units.Amount<Length>> far = List.of(mm(31.00), mm(31.02), mm(31.04));

        SlotOffset offset = Centring.of(TrialCut.walls(fence, far)).offset();

        // Each mean has s/sqrt(3) = 0.02/sqrt(3) with 2 degrees, and a known step of 0.01/sqrt(12); equal parts add
        // their degrees.
        double ofReadings = 0.0004 / 3;
        double withStep = ofReadings + 0.0001 / 12;
        assertThat(offset.amountMm()).isCloseTo(-0.5, within(1e-12));
        assertThat(offset.uncertaintyMm()).isCloseTo(Math.sqrt(withStep / 2), within(1e-12));
        assertThat(offset.estimate().degreesOfFreedom())
                .isCloseTo(4 * Math.pow(withStep / ofReadings, 2), within(1e-9));
    }

    static Stream<Long> seeds() {
        return Stream.of(101L, 102L, 103L);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void of_isMirroredByATurnedPieceAndFreeOfTheUnit(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 200; trial++) {
            double a = random.nextDouble(20, 40);
            double b = random.nextDouble(20, 40);
            double d = random.nextDouble(3, 10);
            double u = random.nextDouble(0.001, 0.1);
            double w = a + b + d;
            Centring straight = Centring.of(
                    TrialCut.walls(mm(a), mm(b)).slot(mm(d)).piece(mm(w)).repeatability(mm(u)));
            Centring turned = Centring.of(
                    TrialCut.walls(mm(b), mm(a)).slot(mm(d)).piece(mm(w)).repeatability(mm(u)));
            Centring inches = Centring.of(TrialCut.walls(inch(a / 25.4), inch(b / 25.4))
                    .slot(inch(d / 25.4))
                    .piece(inch(w / 25.4))
                    .repeatability(inch(u / 25.4)));

            String where = "seed " + seed + " trial " + trial;
            assertThat(turned.offset().amountMm())
                    .as(where)
                    .isEqualTo(-straight.offset().amountMm() + 0.0);
            assertThat(inches.offset().amountMm())
                    .as(where)
                    .isCloseTo(straight.offset().amountMm(), within(1e-12));
            assertThat(inches.offset().uncertaintyMm())
                    .as(where)
                    .isCloseTo(straight.offset().uncertaintyMm(), within(1e-15));
            assertThat(inches.closure().allowedMm())
                    .as(where)
                    .isCloseTo(straight.closure().allowedMm(), within(1e-14));
            assertThat(turned.onWidth(mm(w + 1)).offset().amountMm())
                    .as(where + ": a neck 1 mm wider brings the slot 0.5 mm nearer the fence either way round")
                    .isCloseTo(turned.offset().amountMm() - 0.5, within(1e-9));
        }
    }

    static Stream<String[]> conformity() {
        return Reference.rows("conformity.csv").stream();
    }

    /** Conformance probabilities of the table, the readings made so that the offset and its u come out as there. */
    @ParameterizedTest
    @MethodSource("conformity")
    void verdict_hasThePublishedConformanceProbability(
            String what, String y, String u, String low, String up, String p) {
        double offset = Double.parseDouble(y);
        double uncertainty = Double.parseDouble(u);
        TrialCut trial =
                TrialCut.walls(mm(100 + offset), mm(100 - offset)).repeatability(mm(uncertainty * Math.sqrt(2)));
        Limits<Length> limits = Limits.between(mm(Double.parseDouble(low)), mm(Double.parseDouble(up)));

        double found = org.neckgeom.measure.Verdict.of(
                        Centring.of(trial).offset().estimate(), limits)
                .probability();

        // The offset is a difference of walls near 100, so some 1e-14 of it is lost to rounding.
        assertThat(found).as(what).isCloseTo(Double.parseDouble(p), within(1e-11));
    }

    @Test
    void verdict_keepsAGuardBandOfTwiceTheUncertainty() {
        assertThat(Centring.of(FIRST).verdict(Limits.within(mm(0.10))).call()).isEqualTo(Decision.OUTSIDE);
        assertThat(Centring.of(TrialCut.walls(mm(30.1), mm(30)).repeatability(mm(0.02)))
                        .verdict(Limits.within(mm(0.10)))
                        .call())
                .isEqualTo(Decision.WITHIN);
        assertThat(Centring.of(TrialCut.walls(mm(30.2), mm(30)).repeatability(mm(0.02)))
                        .verdict(Limits.within(mm(0.10)))
                        .call())
                .isEqualTo(Decision.UNDECIDED);
    }

    @Test
    void verdict_refusesALimitNoReadingCouldMeet() {
        assertThatThrownBy(() -> Centring.of(FIRST).verdict(Limits.within(mm(0.02))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("limit must be 0.028 mm or more (the guard band: twice the standard uncertainty of the"
                        + " offset), but was 0.020 mm; read each wall 2 times as often, or use a finer instrument");
    }

    @Test
    void verdict_givesNoneOnReadingsThatDoNotClose() {
        Centring centring = Centring.of(
                TrialCut.walls(mm(30), mm(30)).slot(mm(6)).piece(mm(67)).repeatability(mm(0.02)));

        assertThat(centring.move().isAdvised()).isFalse();
        assertThatThrownBy(() -> centring.move().amount()).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> centring.verdict(Limits.within(mm(0.5))))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("1.000 mm short");
    }

    @Test
    void text_isTheSameInInches() {
        assertThat(Centring.of(FIRST).offset().text(LengthStyle.DECIMAL_INCHES))
                .isEqualTo("slot 27.95 thou nearer the fence, u 0.56 thou");
    }

    /**
     * All four readings adjusted by least squares under {@code a + d + b = W}, solved with Hipparchus: the offset and its
     * uncertainty stay what the walls alone say.
     */
    @Test
    void offset_isTheLeastSquaresOneOfAllFourReadings() {
        double[] seen = {29.84, 31.26, 6.03, 67.10};
        // Unknowns a, b, d; the piece is their sum.
        RealMatrix design = new Array2DRowRealMatrix(new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 1, 1}});
        RealMatrix normal = new LUDecomposition(design.transpose().multiply(design))
                .getSolver()
                .getInverse();
        RealVector fit = normal.operate(design.transpose().operate(new ArrayRealVector(seen)));
        double variance = (normal.getEntry(0, 0) + normal.getEntry(1, 1) - 2 * normal.getEntry(0, 1)) / 4 * 0.02 * 0.02;

        SlotOffset offset = Centring.of(TrialCut.walls(mm(seen[0]), mm(seen[1]))
                        .slot(mm(seen[2]))
                        .piece(mm(seen[3]))
                        .repeatability(mm(0.02)))
                .offset();

        assertThat(offset.amountMm()).isCloseTo((fit.getEntry(0) - fit.getEntry(1)) / 2, within(1e-12));
        assertThat(offset.uncertaintyMm()).isCloseTo(Math.sqrt(variance), within(1e-15));
    }

    @Test
    void fromWalls_agreesWithCentring() {
        SlotOffset offset = SlotOffset.fromWalls(mm(29.84), mm(31.26)).repeatability(mm(0.02));

        assertThat(offset.amountMm()).isEqualTo(Centring.of(FIRST).offset().amountMm());
        assertThat(offset.uncertaintyMm()).isCloseTo(Centring.of(FIRST).offset().uncertaintyMm(), within(1e-16));
    }

    @Test
    void toString_saysOnceWhatWasAssumedOfTheReadings() {
        String note = "assumes: repeatability of readings 0.05 mm (common practice)";
        Centring untold =
                Centring.of(TrialCut.walls(mm(29.84), mm(31.26)).slot(mm(6)).piece(mm(67.1)));

        assertThat(untold.toString()).containsOnlyOnce(note);
        assertThat(untold.closure().toString()).containsOnlyOnce(note);
        assertThat(Centring.of(FIRST).toString()).doesNotContain("taken as");
        assertThat(Centring.of(TrialCut.walls(inch(1.2030), inch(1.2038))).toString())
                .contains("assumes: repeatability of readings 2.0 thou");
        assertThat(Centring.of(TrialCut.walls(List.of(mm(29.84), mm(29.86)), List.of(mm(31.26), mm(31.24))))
                        .toString())
                .doesNotContain("taken as");
        assertThat(Centring.of(TrialCut.walls(List.of(mm(29.84), mm(29.86)), List.of(mm(31.26), mm(31.24)))
                                .piece(mm(67.1)))
                        .toString())
                .contains("repeatability of single readings");
    }

    @Test
    void offset_thatPrintsAsNothingHasNoSide() {
        assertThat(SlotOffset.of(thou(-0.01), thou(0))).hasToString("slot in the middle");
        assertThat(SlotOffset.of(mm(-0.0004), mm(0.05))).hasToString("slot in the middle, u 0.050 mm");
        assertThat(SlotOffset.of(mm(0.006), mm(0.05))).hasToString("slot 0.006 mm farther from the fence, u 0.050 mm");
        assertThat(SlotOffset.of(mm(-0.71), mm(0.014))).hasToString("slot 0.710 mm nearer the fence, u 0.014 mm");
    }
}
