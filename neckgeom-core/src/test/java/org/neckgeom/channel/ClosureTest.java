package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;

class ClosureTest {

    private static TrialCut trial(double a, double b, double d, double w) {
        return TrialCut.walls(mm(a), mm(b)).slot(mm(d)).piece(mm(w)).repeatability(mm(0.02));
    }

    @Test
    void of_allowsWhatOneHonestCutInAHundredExceeds() {
        Closure closure = Closure.of(TrialCut.walls(inch(1.2030), inch(1.2038))
                .slot(inch(0.2365))
                .piece(inch(2.6436))
                .repeatability(thou(0.8)));

        assertThat(closure.closes()).isTrue();
        assertThat(closure.misfitMm()).isCloseTo(-0.3 * 0.0254, within(1e-12));
        // 2.575829 standard uncertainties of four readings: the normal law's two-sided 1 %.
        assertThat(closure.allowedMm()).isCloseTo(2.575829 * 1.6 * 0.0254, within(1e-6));
        assertThat(closure).hasToString("readings close: 0.3 thou short, limit 4.1");
    }

    @Test
    void of_withoutSlotOrPieceIsNotChecked() {
        Closure closure = Closure.of(TrialCut.walls(mm(30), mm(31)));

        assertThat(closure.isComplete()).isFalse();
        assertThat(closure.closes()).isTrue();
        assertThat(closure).hasToString("not checked: read the slot and the piece as well");
    }

    @Test
    void suspects_cannotBeToldFromFourSingleReadings() {
        Closure closure = Closure.of(trial(30, 31, 6, 68));

        assertThat(closure.closes()).isFalse();
        assertThat(closure.suspects()).containsExactlyInAnyOrder(TrialReading.values());
        assertThat(closure.toString())
                .startsWith("readings do not close: 1.000 mm short, limit 0.103")
                .contains("any of the four may be wrong");
    }

    @Test
    void cutBy_tellsThatTheSlotWasMisread() {
        Closure closure = Closure.of(trial(30, 31, 5, 67)).cutBy(Cutter.straight(mm(6)));

        assertThat(closure.suspects()).containsExactly(TrialReading.SLOT);
        assertThat(closure.toString())
                .contains("suspect the slot")
                .contains("a whole division of the slot misread, 1 mm, would explain it");
    }

    @Test
    void pieceShouldBe_tellsThatThePieceWasMisread() {
        Closure closure = Closure.of(trial(30, 31, 6, 76)).pieceShouldBe(mm(67), mm(0.1));

        assertThat(closure.suspects()).containsExactly(TrialReading.PIECE);
        assertThat(closure.toString()).contains("the piece written as 76 instead of 67 would explain it");
    }

    @Test
    void of_seesAnOddReadingAmongRepeatedOnes() {
        Closure closure = Closure.of(
                TrialCut.walls(List.of(mm(30.00), mm(30.01), mm(30.51)), List.of(mm(31.00), mm(31.01), mm(31.02)))
                        .repeatability(mm(0.02)));

        assertThat(closure.closes()).isFalse();
        assertThat(closure.suspects()).containsExactly(TrialReading.NEAR_WALL);
        assertThat(closure.toString()).contains("near wall disagree");
    }

    @Test
    void of_refusesWallsThatLeaveNoSlot() {
        Closure closure = Closure.of(TrialCut.walls(mm(34), mm(34)).piece(mm(67)));

        assertThat(closure.closes()).isFalse();
        assertThat(closure.suspects()).doesNotContain(TrialReading.SLOT);
        assertThat(closure.toString()).contains("no room for a slot");
    }

    /**
     * One of the four readings is made wrong by 0.4 to 5 mm, with what slot and piece should be at hand: the culprit must
     * be among the suspects (it is left out only where noise speaks against it by 20 to 1), and a slot or a piece must be
     * found alone.
     */
    @ParameterizedTest
    @ValueSource(longs = {8, 88})
    void suspects_holdTheCulprit(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int missed = 0;
        int foundAlone = 0;
        int slotsAndPieces = 0;
        for (int i = 0; i < 2000; i++) {
            double[] read = {30, 31, 6, 67};
            for (int j = 0; j < 4; j++) {
                read[j] += 0.02 * random.nextGaussian();
            }
            int wrong = random.nextInt(4);
            read[wrong] += random.nextDouble(0.4, 5) * (random.nextBoolean() ? 1 : -1);
            Closure closure = Closure.of(trial(read[0], read[1], read[2], read[3]))
                    .slotShouldBe(mm(6), mm(0.05))
                    .pieceShouldBe(mm(67), mm(0.05));
            TrialReading culprit = TrialReading.values()[wrong];
            missed += closure.suspects().contains(culprit) ? 0 : 1;
            if (wrong > 1) {
                slotsAndPieces++;
                foundAlone += closure.suspects().equals(List.of(culprit)) ? 1 : 0;
            }
        }
        assertThat(missed).as("missed, seed " + seed).isLessThan(20);
        assertThat(foundAlone).as("found alone, seed " + seed).isGreaterThan(slotsAndPieces * 95 / 100);
    }

    @Test
    void slotShouldBe_refusesNothingAsUncertainty() {
        assertThatThrownBy(() -> Closure.of(trial(30, 31, 6, 67)).slotShouldBe(mm(6), mm(0)))
                .hasMessage("expected slot width's uncertainty must be more than 0 mm, but was 0 mm");
    }

    /**
     * By hand: of three readings the odd one lies 2/3 of its error from the mean, whose standard deviation is u sqrt(2/3). Six
     * readings are compared: each may be refused with a chance of 0.001/6, two-sided 3.7614 by scipy.stats.norm.isf.
     */
    @Test
    void of_letsRepeatedReadingsDifferByWhatChanceAllows() {
        double most = 3.7614 * 0.02 * Math.sqrt(2 / 3.0) * 1.5;

        assertThat(repeated(most - 1e-4).closes()).isTrue();
        assertThat(repeated(most - 1e-4).warns()).isTrue();
        assertThat(repeated(most - 1e-4).toString()).startsWith("readings of the near wall hardly agree");
        assertThat(repeated(most + 1e-4).closes()).isFalse();
        assertThat(repeated(-most - 1e-4).suspects()).containsExactly(TrialReading.FAR_WALL);
    }

    private static Closure repeated(double error) {
        List<Amount<Length>> odd = List.of(mm(30), mm(30), mm(30 + Math.abs(error)));
        List<Amount<Length>> even = List.of(mm(31), mm(31), mm(31));
        return Closure.of((error > 0 ? TrialCut.walls(odd, even) : TrialCut.walls(even, odd)).repeatability(mm(0.02)));
    }

    /** By hand: one zero in both walls and in the piece, which takes one of them away: u sqrt(4 - 2 rho). */
    @Test
    void uncertainty_shrinksWhereOneZeroIsInWallsAndPiece() {
        TrialCut alike = trial(30, 31, 6, 67).wallsCorrelated(1);

        assertThat(Closure.of(trial(30, 31, 6, 67)).uncertaintyMm()).isCloseTo(2 * 0.02, within(1e-15));
        assertThat(Closure.of(alike).uncertaintyMm()).isCloseTo(0.02 * Math.sqrt(2), within(1e-15));
        assertThat(Closure.of(alike).slotBySameZero().uncertaintyMm()).isCloseTo(0.02 * 2, within(1e-15));
    }

    /** By hand: zeros of 0.01 and four readings of 0.02; the slot by the same zero doubles it: 4 0.0004 + 4 0.0001. */
    @Test
    void bench_addsTheZerosThatDoNotCancel() {
        BenchUncertainty bench = BenchUncertainty.withDefaults().calliperZero(mm(0.01));

        assertThat(Closure.of(trial(30, 31, 6, 67)).bench(bench).uncertaintyMm())
                .isCloseTo(Math.sqrt(4 * 0.0004 + 2 * 0.0001), within(1e-15));
        assertThat(Closure.of(trial(30, 31, 6, 67))
                        .bench(bench)
                        .slotBySameZero()
                        .uncertaintyMm())
                .isCloseTo(Math.sqrt(4 * 0.0004 + 4 * 0.0001), within(1e-15));
        assertThat(Closure.of(trial(30, 31, 6, 67))
                        .bench(bench.resolution(mm(0.12)))
                        .uncertaintyMm())
                .isCloseTo(Math.sqrt(4 * 0.0004 + 2 * 0.0001 + 4 * 0.12 * 0.12 / 12), within(1e-15));
    }

    @Test
    void outcome_warnsBeforeItRefuses() {
        // Two-sided 1 % and 0.1 % of the normal law: 0.1030 and 0.1316 mm.
        assertThat(Closure.of(trial(30, 31.10, 6, 67)).outcome()).isEqualTo(Closure.Outcome.CLOSES);
        Closure warned = Closure.of(trial(30, 31.12, 6, 67));
        assertThat(warned.outcome()).isEqualTo(Closure.Outcome.WARNS);
        assertThat(warned.closes()).isTrue();
        assertThat(warned.suspects()).isEmpty();
        assertThat(warned)
                .hasToString(
                        "readings hardly close: 0.120 mm too long, limit 0.103; read it again, or close a further cut,"
                                + " before the neck is cut");
        assertThat(Closure.of(trial(30, 31.14, 6, 67)).outcome().code()).isEqualTo("does-not-close");
        // Among six cuts each has a sixth of the chance: 3.1440 and 3.7648.
        assertThat(warned.inSession(6).outcome()).isEqualTo(Closure.Outcome.CLOSES);
        assertThatThrownBy(() -> warned.inSession(0)).hasMessage("cuts of a session must be 1 or more, but were 0");
    }

    /** One width read twice: when its readings agree it is cleared, when they differ by the misfit it is to blame. */
    @Test
    void suspects_ofOneWidthReadTwice() {
        TrialCut once = TrialCut.walls(mm(30), mm(31)).slot(mm(6)).repeatability(mm(0.02));

        assertThat(Closure.of(once.piece(List.of(mm(68), mm(68.01)))).suspects())
                .containsExactlyInAnyOrder(TrialReading.NEAR_WALL, TrialReading.FAR_WALL, TrialReading.SLOT);
        Closure blamed = Closure.of(once.piece(List.of(mm(67), mm(76))));
        assertThat(blamed.suspects()).containsExactly(TrialReading.PIECE);
        assertThat(blamed.toString()).contains("the piece written as 76 instead of 67 would explain it");
    }

    /** All read twice: the one whose pair differs; a mistake made twice stays hidden. */
    @Test
    void suspects_ofAllReadTwice() {
        List<Amount<Length>> fence = List.of(mm(30), mm(30.02));
        TrialCut slotOff = TrialCut.walls(fence, List.of(mm(31), mm(31.01)))
                .slot(List.of(mm(6), mm(6.5)))
                .piece(List.of(mm(67), mm(67.01)))
                .repeatability(mm(0.02));
        TrialCut tilted = slotOff.slot(List.of(mm(6), mm(6.01))).piece(List.of(mm(68), mm(68.01)));

        assertThat(Closure.of(slotOff).suspects()).containsExactly(TrialReading.SLOT);
        assertThat(Closure.of(tilted).suspects()).containsExactlyInAnyOrder(TrialReading.values());
    }

    /** A cutter's slot is known within 0.1 mm: it shows something from 3.3 sqrt(0.04^2 + 0.1^2) = 0.355 mm on. */
    @Test
    void cutBy_showsNothingOfSmallMisfits() {
        Cutter cutter = Cutter.straight(mm(6));

        assertThat(Closure.of(trial(30, 31, 5.65, 67)).cutBy(cutter).suspects()).hasSize(4);
        assertThat(Closure.of(trial(30, 31, 5.64, 67)).cutBy(cutter).suspects()).containsExactly(TrialReading.SLOT);
    }

    @Test
    void wallsThatFillThePiece_leaveNoSlot() {
        assertThat(Closure.of(TrialCut.walls(mm(34), mm(33)).piece(mm(67))).closes())
                .isFalse();
        assertThat(Closure.of(TrialCut.walls(mm(34), mm(32.9)).piece(mm(67))).closes())
                .isTrue();
    }

    @Test
    void cutBy_expectsTheCutterWithItsRunout() {
        Cutter wobbly = Cutter.straight(mm(6)).runout(mm(0.5));

        // 6.5 was read and 6.5 is expected: the slot is not to blame.
        assertThat(Closure.of(trial(30, 31, 6.5, 67)).cutBy(wobbly).suspects()).doesNotContain(TrialReading.SLOT);
        assertThat(Closure.of(trial(30, 31, 5.5, 67)).cutBy(wobbly).suspects()).containsExactly(TrialReading.SLOT);
    }

    @Test
    void slip_isNamedForASingleSuspectOnly() {
        assertThat(Closure.of(trial(30, 31, 6, 68)).toString()).doesNotContain("would explain it");
        assertThat(Closure.of(trial(30, 31, 6, 68))
                        .pieceShouldBe(mm(67), mm(0.1))
                        .toString())
                .contains("a whole division of the piece misread, 1 mm, would explain it");
        assertThat(Closure.of(trial(30, 31, 6, 67.7))
                        .pieceShouldBe(mm(67), mm(0.05))
                        .toString())
                .contains("suspect the piece")
                .doesNotContain("would explain it");
        assertThat(Closure.of(TrialCut.walls(inch(1.2), inch(1.2))
                                .slot(inch(0.25))
                                .piece(inch(2.6))
                                .repeatability(thou(0.8)))
                        .pieceShouldBe(inch(2.65), thou(2))
                        .toString())
                .contains("a whole division of the piece misread, 0.05 in, would explain it");
    }

    @Test
    void misfit_thatPrintsAsNothingIsNone() {
        assertThat(Closure.of(trial(29.84, 31.26, 6, 67.1))).hasToString("readings agree exactly; limit 0.103 mm");
    }
}
