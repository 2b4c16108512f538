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
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;

class ClosureTest {

    private static TrialCut trial(double a, double b, double d, double w) {
        return TrialCut.walls(mm(a), mm(b)).slot(mm(d)).piece(mm(w)).readWithin(mm(0.02));
    }

    @Test
    void of_allowsTwiceTheUncertaintyOfFourReadings() {
        Closure closure = Closure.of(TrialCut.walls(inch(1.2030), inch(1.2038))
                .slot(inch(0.2365))
                .piece(inch(2.6436))
                .readWithin(thou(0.8)));

        assertThat(closure.closes()).isTrue();
        assertThat(closure.misfitMm()).isCloseTo(-0.3 * 0.0254, within(1e-12));
        assertThat(closure.allowedMm()).isCloseTo(3.2 * 0.0254, within(1e-12));
        assertThat(closure).hasToString("readings close: 0.3 thou short, allowed 3.2");
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
        assertThat(closure.toString()).startsWith("readings do not close: 1.000 mm short, allowed 0.080");
    }

    @Test
    void cutBy_tellsThatTheSlotWasMisread() {
        Closure closure = Closure.of(trial(30, 31, 5, 67)).cutBy(Cutter.straight(mm(6)));

        assertThat(closure.suspects()).containsExactly(TrialReading.SLOT);
        assertThat(closure.toString()).contains("suspect the slot").contains("a whole division misread?");
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
                        .readWithin(mm(0.02)));

        assertThat(closure.closes()).isFalse();
        assertThat(closure.suspects()).containsExactly(TrialReading.FENCE_WALL);
        assertThat(closure.toString()).contains("fence wall disagree");
    }

    @Test
    void of_refusesWallsThatLeaveNoSlot() {
        Closure closure = Closure.of(TrialCut.walls(mm(34), mm(34)).piece(mm(67)));

        assertThat(closure.closes()).isFalse();
        assertThat(closure.suspects()).doesNotContain(TrialReading.SLOT);
        assertThat(closure.toString()).contains("no room for a slot");
    }

    /** Honest readings are called inconsistent as often as two standard deviations say: 4.55 % of 20,000. */
    @ParameterizedTest
    @ValueSource(longs = {3, 33})
    void closes_failsHonestReadingsInOneOfTwentyTwo(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int failed = 0;
        for (int i = 0; i < 20_000; i++) {
            double[] e = random.doubles(4).map(x -> 0).toArray();
            for (int j = 0; j < 4; j++) {
                e[j] = 0.02 * random.nextGaussian();
            }
            if (!Closure.of(trial(30 + e[0], 31 + e[1], 6 + e[2], 67 + e[3])).closes()) {
                failed++;
            }
        }
        // 1 - erf(sqrt 2) = 0.0455; its standard deviation in 20,000 is 0.0015.
        assertThat(failed / 20_000.0).as("seed " + seed).isBetween(0.0395, 0.0515);
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

    /** By hand: of three readings the odd one lies 2/3 of its error from the mean, and 3 u sqrt(2/3) is let pass. */
    @Test
    void of_letsRepeatedReadingsDifferByThreeTimesTheirRepeatability() {
        double most = 3 * 0.02 * Math.sqrt(2 / 3.0) * 1.5;

        assertThat(repeated(most - 1e-6).closes()).isTrue();
        assertThat(repeated(most + 1e-6).closes()).isFalse();
        assertThat(repeated(-most - 1e-6).suspects()).containsExactly(TrialReading.FAR_WALL);
    }

    private static Closure repeated(double error) {
        List<Amount<Length>> odd = List.of(mm(30), mm(30), mm(30 + Math.abs(error)));
        List<Amount<Length>> even = List.of(mm(31), mm(31), mm(31));
        return Closure.of((error > 0 ? TrialCut.walls(odd, even) : TrialCut.walls(even, odd)).readWithin(mm(0.02)));
    }

    /** By hand: 2 sqrt(u^2 + u^2 + 2 r u u + u^2 + u^2). */
    @Test
    void allowed_growsWhereOneErrorIsInBothWalls() {
        TrialCut alike = trial(30, 31, 6, 67).wallsCorrelated(1);
        TrialCut opposite = trial(30, 31, 6, 67).wallsCorrelated(-1);

        assertThat(Closure.of(trial(30, 31, 6, 67)).allowedMm()).isCloseTo(2 * 0.02 * 2, within(1e-15));
        assertThat(Closure.of(alike).allowedMm()).isCloseTo(2 * 0.02 * Math.sqrt(6), within(1e-15));
        assertThat(Closure.of(opposite).allowedMm()).isCloseTo(2 * 0.02 * Math.sqrt(2), within(1e-15));
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
    void misfit_thatIsAWholeDivisionIsNamed() {
        assertThat(Closure.of(trial(30, 31, 6, 68)).toString())
                .contains("the misfit is about 1 mm, a whole division misread?");
        assertThat(Closure.of(trial(30, 31, 6, 67.5)).toString())
                .contains("the misfit is about 0.5 mm, a whole division misread?");
        assertThat(Closure.of(trial(30, 31, 6, 67.3)).toString()).doesNotContain("division");
        assertThat(Closure.of(TrialCut.walls(inch(1.2), inch(1.2))
                                .slot(inch(0.25))
                                .piece(inch(2.6))
                                .readWithin(thou(0.8)))
                        .toString())
                .contains("the misfit is about 0.05 in, a whole division misread?");
    }

    @Test
    void misfit_thatPrintsAsNothingIsNone() {
        assertThat(Closure.of(trial(29.84, 31.26, 6, 67.1))).hasToString("readings close exactly, allowed 0.080 mm");
    }
}
