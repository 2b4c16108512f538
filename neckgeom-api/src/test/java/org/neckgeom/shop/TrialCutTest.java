package org.neckgeom.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.neckgeom.units.LengthStyle;

class TrialCutTest {

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    @Test
    void singleReading_hasTheUsualRepeatability() {
        TrialCut cut = TrialCut.walls(mm(29.84), mm(31.26));

        assertThat(cut.nearWall().value()).isEqualTo(mm(29.84));
        assertThat(cut.farWall().value()).isEqualTo(mm(31.26));
        assertThat(cut.nearWall().standardUncertainty()).isEqualTo(mm(0.05)); // common practice on wood: 0.03 to 0.05
        assertThat(cut.nearWall().degreesOfFreedom()).isInfinite();
        assertThat(cut.slot()).isEmpty();
        assertThat(cut.piece()).isEmpty();
        assertThat(cut.repeatability()).isEmpty();
        assertThat(cut.wallCorrelation()).isZero();
    }

    /** Two readings 0.001 mm apart are not known to half a micrometre: the calliper's step of 0.01 mm stays in their mean. */
    @Test
    void severalReadings_thatAgreeKeepTheInstrumentsStep() {
        TrialCut cut = TrialCut.walls(List.of(mm(30.000), mm(30.001)), List.of(mm(30.170), mm(30.171)));

        assertThat(cut.nearWall().libraryUncertainty())
                .isCloseTo(Math.sqrt(0.0005 * 0.0005 + 0.0001 / 12), within(1e-12));
    }

    @Test
    void severalReadings_speakForThemselves() {
        TrialCut cut = TrialCut.walls(List.of(mm(29.8), mm(29.9), mm(30.0)), List.of(mm(31)));

        // Mean 29.9, s = 0.1 from the differences -0.1, 0, 0.1; u = s/sqrt(3) (GUM 4.2.3), and a calliper's step of
        // 0.01,
        // q/sqrt(12) (GUM F.2.2.1); the step is known, so the degrees of freedom grow by the fourth power (GUM G.4).
        double withStep = Math.sqrt(0.01 / 3 + 0.0001 / 12);
        assertThat(cut.nearWall().libraryValue()).isCloseTo(29.9, within(1e-14));
        assertThat(cut.nearWall().libraryUncertainty()).isCloseTo(withStep, within(1e-14));
        assertThat(cut.nearWall().degreesOfFreedom())
                .isCloseTo(2 * Math.pow(withStep / (0.1 / Math.sqrt(3)), 4), within(1e-9));
        assertThat(cut.farWall().standardUncertainty()).isEqualTo(mm(0.05));
    }

    @Test
    void equalReadings_areNoProofOfAPerfectInstrument() {
        TrialCut cut = TrialCut.walls(List.of(mm(30), mm(30), mm(30), mm(30)), List.of(mm(31)));

        assertThat(cut.nearWall().libraryUncertainty()).isCloseTo(0.025, within(1e-17)); // 0.05/sqrt(4)
        assertThat(cut.nearWall().degreesOfFreedom()).isInfinite();
    }

    @Test
    void toldRepeatability_countsForEveryReading() {
        TrialCut cut = TrialCut.walls(List.of(mm(29.8), mm(29.9), mm(30.0), mm(30.1)), List.of(mm(31)))
                .repeatability(mm(0.02))
                .slot(mm(6.02))
                .piece(mm(67));

        assertThat(cut.nearWall().libraryUncertainty()).isCloseTo(0.01, within(1e-17));
        assertThat(cut.farWall().libraryUncertainty()).isEqualTo(0.02);
        assertThat(cut.slot().orElseThrow().libraryUncertainty()).isEqualTo(0.02);
        assertThat(cut.piece().orElseThrow().value()).isEqualTo(mm(67));
        assertThat(cut.repeatability()).isEqualTo(Optional.of(mm(0.02)));
    }

    @Test
    void readings_areKeptApartFromTheirLists() {
        var fence = new ArrayList<>(List.of(mm(29.8), mm(29.9)));
        TrialCut cut = TrialCut.walls(fence, List.of(mm(31)));
        fence.set(0, mm(99));

        assertThat(cut.nearReadingsMm()).containsExactly(29.8, 29.9);
        assertThat(cut.farReadingsMm()).containsExactly(31);
    }

    @Test
    void changes_leaveTheOldOne() {
        TrialCut old = TrialCut.walls(inch(1.2), inch(1.25));

        TrialCut changed = old.slot(mm(6)).piece(mm(70)).repeatability(thou(1)).wallsCorrelated(0.5);

        assertThat(old).isEqualTo(TrialCut.walls(inch(1.2), inch(1.25)));
        assertThat(changed.wallCorrelation()).isEqualTo(0.5);
        assertThat(changed.style()).isEqualTo(LengthStyle.DECIMAL_INCHES);
        assertThat(changed)
                .hasToString(String.join(
                        "\n",
                        "Trial cut",
                        "  near wall    1.2000 in, u 0.0010 in",
                        "  far wall     1.2500 in, u 0.0010 in",
                        "  slot         0.2362 in, u 0.0010 in",
                        "  piece        2.7559 in, u 0.0010 in",
                        "  correlation  0.5"));
    }

    @Test
    void badReadings_areRefused() {
        TrialCut cut = TrialCut.walls(mm(30), mm(31));

        refused(() -> TrialCut.walls(mm(-3), mm(31)), "near wall must be more than 0 mm, but was -3 mm");
        refused(() -> TrialCut.walls(mm(30), inch(0.0)), "far wall must be more than 0 in, but was 0 in");
        refused(() -> TrialCut.walls(List.of(), List.of(mm(1))), "near wall must be read 1 to 100 times, but was 0");
        refused(() -> cut.slot(mm(0)), "slot width must be more than 0 mm, but was 0 mm");
        refused(() -> cut.piece(mm(0)), "piece width must be more than 0 mm, but was 0 mm");
        refused(() -> cut.repeatability(mm(0)), "repeatability must be more than 0 mm, but was 0 mm");
        refused(() -> cut.wallsCorrelated(1.01), "correlation of the walls must be between -1 and 1, but was 1.01");
        refused(
                () -> cut.wallsCorrelated(Double.NaN),
                "correlation of the walls must be between -1 and 1, but was NaN");
    }

    @Test
    void slotAndPiece_readSeveralTimes() {
        TrialCut cut = TrialCut.walls(mm(30), mm(31))
                .slot(List.of(mm(6), mm(6.02)))
                .piece(List.of(mm(67), mm(67.02), mm(67.01), mm(67.01)))
                .repeatability(mm(0.02));

        assertThat(cut.slot().orElseThrow().libraryValue()).isCloseTo(6.01, within(1e-12));
        assertThat(cut.piece().orElseThrow().libraryUncertainty()).isCloseTo(0.01, within(1e-15));
        assertThat(cut.slotReadingsMm()).containsExactly(6, 6.02);
        assertThat(cut.pieceReadingsMm()).hasSize(4);
        assertThat(TrialCut.walls(mm(30), mm(31)).slotReadingsMm()).isEmpty();
        assertThat(TrialCut.walls(mm(30), mm(31)).piece(mm(67)).pieceReadingsMm())
                .containsExactly(67);
        assertThat(cut).isNotEqualTo(cut.piece(mm(67.01))).isEqualTo(cut.slot(List.of(mm(6), mm(6.02))));
        refused(() -> cut.slot(List.of()), "slot width must be read 1 to 100 times, but was 0");
    }

    @Test
    void impossibleReadings_areRefusedInOneSentence() {
        TrialCut walls = TrialCut.walls(mm(3), mm(61));

        refused(() -> walls.piece(mm(3)), "far wall 61 mm is longer than the piece, 3 mm. Read both again.");
        refused(
                () -> TrialCut.walls(inch(3), inch(1)).piece(inch(2.5)),
                "near wall 3 in is longer than the piece, 2.5 in. Read both again.");
        TrialCut narrow = TrialCut.walls(mm(1), mm(1));
        String wide = "slot 6 mm is wider than the piece, 5 mm. Read both again.";
        refused(() -> narrow.slot(mm(6)).piece(mm(5)), wide);
        refused(() -> narrow.piece(mm(5)).slot(mm(6)), wide);
        refused(
                () -> TrialCut.walls(mm(30), mm(31)).slot(mm(6)).piece(mm(85)),
                "near wall 30 mm, far wall 31 mm and slot 6 mm make 67 mm, but the piece is 85 mm. Read all of them again.");
        refused(
                () -> TrialCut.walls(mm(30), mm(31)).piece(mm(50)),
                "near wall 30 mm and far wall 31 mm make 61 mm, but the piece is 50 mm. Read all of them again.");
        // A slip of two digits is left to the closure, and walls alone may leave any slot.
        assertThat(TrialCut.walls(mm(30), mm(31)).slot(mm(6)).piece(mm(76)).piece())
                .isPresent();
        assertThat(TrialCut.walls(mm(10), mm(10)).piece(mm(76)).piece()).isPresent();
    }

    /** By hand: a fifth of a blank of 61 mm is 12.2 mm. */
    @Test
    void question_asksForThePieceOnlyWhereItIsFarFromTheBlank() {
        TrialCut walls = TrialCut.walls(mm(34), mm(34));

        assertThat(walls.question(mm(61))).isEmpty();
        assertThat(walls.slot(mm(5.1)).question(mm(61))).isEmpty();
        assertThat(walls.slot(mm(5.3)).question(mm(61)).orElseThrow())
                .hasToString("walls and slot make a piece of 73.3 mm, the blank is 61 mm: was the right piece read?");
        assertThat(walls.piece(mm(73.1)).question(mm(61))).isEmpty();
        assertThat(walls.piece(mm(74)).question(mm(61)).orElseThrow())
                .hasToString("the piece was read as 74 mm, the blank is 61 mm: was the right piece read?");
        assertThat(TrialCut.walls(mm(20), mm(20)).piece(mm(48)).question(mm(61)))
                .isPresent();
    }
}
