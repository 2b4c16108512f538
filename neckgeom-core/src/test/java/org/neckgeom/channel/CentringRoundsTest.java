package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.channel.SlotVerdict.Contradiction;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;

class CentringRoundsTest {

    private static final BenchUncertainty BENCH = BenchUncertainty.withDefaults()
            .repeatability(mm(0.02))
            .cutScatter(mm(0.02))
            .moveScatter(mm(0.02));

    private static TrialCut walls(double offset) {
        return TrialCut.walls(mm(30 + offset), mm(30 - offset));
    }

    private static CentringRounds first(double offset) {
        return CentringRounds.of(walls(offset)).bench(BENCH);
    }

    private static CentringRounds twoRounds() {
        return first(-0.71).fenceMoved(FenceMove.away(mm(0.70))).trialCut(walls(-0.02));
    }

    private static BlankOnFence mandolin(Fence fence) {
        Channel channel = Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                .startingAt(mm(3))
                .endClearance(mm(0.5));
        return BlankOnFence.of(Blank.ofLength(mm(640)).section(mm(61), mm(20)).nutAt(mm(200)), channel, fence);
    }

    @Test
    void estimate_weighsCutsThroughTheMoves() {
        SlotOffset estimate = twoRounds().estimate();

        // By hand: a cut R = 0.0002 + 0.0004; after the move -0.01 with P = 0.0010; K = 0.0010/0.0016.
        assertThat(estimate.amountMm()).isCloseTo(-0.01 + 0.625 * -0.01, within(1e-12));
        assertThat(estimate.uncertaintyMm()).isCloseTo(Math.sqrt(0.001 * 0.0006 / 0.0016), within(1e-12));
    }

    @Test
    void place_hasTheScatterOfTheNecksOwnCutOnceMore() {
        // By hand: P = 0.000375 and the neck's own 0.0004.
        assertThat(twoRounds().place().start().uncertaintyMm()).isCloseTo(Math.sqrt(0.000775), within(1e-12));
        NormalDistribution law = NormalDistribution.of(-0.01625, Math.sqrt(0.000775));

        assertThat(twoRounds().next(mm(0.1)).chance().getAsDouble())
                .isCloseTo(law.probability(-0.1, 0.1), within(1e-12));
        assertThat(twoRounds().place().conformanceProbability(mm(0.1)))
                .isEqualTo(twoRounds().next(mm(0.1)).chance().getAsDouble());
    }

    @Test
    void chance_ofAGuessedScatterIsStudents() {
        CentringRounds guessed = CentringRounds.of(walls(0))
                .bench(BenchUncertainty.withDefaults().repeatability(mm(0.02)));

        // By hand: V = 0.0002 + 0.0004 + 0.0004, of which 0.0008 has 4 degrees: nu = 4 (0.0010/0.0008)^2 = 6.25 (GUM
        // G.4).
        TDistribution law = TDistribution.of(6.25);
        double z = 0.1 / Math.sqrt(0.001);
        assertThat(guessed.next(mm(0.1)).chance().getAsDouble())
                .isCloseTo(law.cumulativeProbability(z) * 2 - 1, within(1e-9));
        assertThat(guessed.next(mm(0.1)).toString()).contains("scatter of cuts 0.020 mm (common practice)");
        assertThat(first(0).next(mm(0.1)).toString()).doesNotContain("common practice");
    }

    @Test
    void fenceMoved_isSignedByTheCutter() {
        assertThat(first(0.2).fenceMoved(FenceMove.toward(mm(0.3))).estimate().amountMm())
                .isCloseTo(-0.1, within(1e-12));
        assertThat(first(0.2).fenceMoved(FenceMove.away(mm(0.3))).estimate().amountMm())
                .isCloseTo(0.5, within(1e-12));
    }

    @Test
    void fenceMoved_byLeavesAtTheBlockOfAPivotingFenceMovesTheCutterByItsShare() {
        Fence fence = Fence.pivoting(mm(800)).fromPivot(mm(300), mm(600));
        StopGap gap = first(0.355).move().at(fence);
        FeelerStack stack =
                gap.leaves(FeelerSet.of(List.of(mm(0.5), mm(0.2), mm(0.01))).halfWidth(mm(0.003)));

        SlotOffset after = first(0.355).fenceMoved(FenceMove.by(stack)).estimate();

        // 0.710 at the block is 0.355 at the cutter; three leaves of 0.003/sqrt(3) at the block, half of it at the
        // cutter.
        assertThat(gap.gap().libraryValue()).isCloseTo(0.71, within(1e-12));
        assertThat(after.amountMm()).isCloseTo(0, within(1e-12));
        assertThat(after.uncertaintyMm())
                .isCloseTo(Math.sqrt(0.0006 + 0.0004 + 3 * 0.003 * 0.003 / 3 / 4), within(1e-12));
    }

    @Test
    void next_movesReadsAndCuts() {
        assertThat(first(-0.71).next(mm(0.1)).step()).isEqualTo(SlotStep.MOVE);
        CentringRounds coarse = first(-0.71).bench(BENCH.repeatability(mm(0.05)));
        assertThat(coarse.next(mm(0.1)).step()).isEqualTo(SlotStep.READ_AGAIN);
        assertThat(twoRounds().next(mm(0.1)).step()).isEqualTo(SlotStep.CUT);
        assertThat(twoRounds().next(mm(0.1)).toString()).startsWith("cut the neck: 99.9 %");
    }

    @Test
    void next_foreseesTheStepAfter() {
        assertThat(first(-0.71).next(mm(0.1)).then()).contains(SlotStep.CUT);
        assertThat(twoRounds().next(mm(0.1)).then()).isEmpty();
    }

    @Test
    void next_isTheMoveThatTheLeavesMake() {
        CentringRounds rounds = CentringRounds.of(walls(-0.708))
                .bench(BENCH)
                .inBlank(mandolin(Fence.pivoting(mm(800)).fromPivot(mm(300), mm(600))))
                .leaves(FeelerSet.metric20());

        // Walls alone do not place the slot in a blank of 61 mm.
        assertThat(rounds.next(mm(0.1)).step()).isEqualTo(SlotStep.MEASURE_PIECE);
        CentringRounds read = CentringRounds.of(walls(-0.708).piece(mm(66)).slot(mm(6)))
                .bench(BENCH)
                .inBlank(mandolin(Fence.pivoting(mm(800)).fromPivot(mm(300), mm(600))))
                .leaves(FeelerSet.metric20());
        // By hand: c = -0.708 + 33, in the blank + 1.792; at the block twice that.
        assertThat(read.next(mm(0.1)).move().towardMm()).isCloseTo(1.792, within(1e-12));
        assertThat(read.next(mm(0.1)).gap().orElseThrow().gap().libraryValue()).isCloseTo(3.584, within(1e-12));
    }

    /**
     * A fence set by a rule may be millimetres off, farther than one stack of leaves goes. By hand: of 20 leaves the thickest four are
     * 0.85 + 0.90 + 0.95 + 1.00 = 3.70 mm, so 5 mm are one such move and 1.30 mm.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 2.8, 3.7, 5, 12, 26})
    void next_isToMoveHoweverFarTheSlotIsOff(double off) {
        SlotVerdict verdict = first(-off).leaves(FeelerSet.metric20()).next(mm(0.1));

        assertThat(verdict.step()).isEqualTo(SlotStep.MOVE);
        assertThat(verdict.move().amountMm()).isCloseTo(off, within(1e-12));
        String remedy = verdict.leaves().orElseThrow().remedy();
        if (off <= 3.7) {
            assertThat(remedy).isEmpty();
        } else {
            assertThat(remedy).startsWith("in " + ((int) Math.floor(off / 3.7) + 1) + " moves: ");
        }
        if (off == 5) {
            assertThat(remedy)
                    .isEqualTo("in 2 moves: 0.85 + 0.90 + 0.95 + 1.00 leaves, then 0.60 + 0.70 leaves, exact");
        }
    }

    @Test
    void readAgain_isNotAnotherCut() {
        CentringRounds again = first(0.06).readAgain(walls(0.02));

        // By hand: one cut read twice, u^2 = 0.0001, and the scatter of one cut.
        assertThat(again.estimate().amountMm()).isCloseTo(0.04, within(1e-12));
        assertThat(again.estimate().uncertaintyMm()).isCloseTo(Math.sqrt(0.0005), within(1e-12));
        assertThatThrownBy(() -> first(0.06).fenceMoved(FenceMove.away(mm(0.1))).readAgain(walls(0)))
                .hasMessage("a cut read again must follow that cut, but a fence move came before it");
    }

    @Test
    void contradiction_asksWhetherTheFenceWentTheOtherWay() {
        CentringRounds wrongWay =
                first(-0.71).fenceMoved(FenceMove.toward(mm(0.70))).trialCut(walls(-0.01));

        SlotVerdict verdict = wrongWay.next(mm(0.3));

        assertThat(verdict.contradiction()).contains(Contradiction.DIRECTION);
        assertThat(verdict.step()).isEqualTo(SlotStep.CHECK_MOVE);
        assertThat(verdict.isStop()).isTrue();
    }

    @Test
    void contradiction_isReadAgainThenCutAgain() {
        CentringRounds slipped =
                first(-0.71).fenceMoved(FenceMove.away(mm(0.70))).trialCut(walls(0.25));

        assertThat(slipped.next(mm(0.3)).contradiction()).contains(Contradiction.SETTING);
        assertThat(slipped.next(mm(0.3)).step()).isEqualTo(SlotStep.READ_AGAIN);
        assertThat(slipped.readAgain(walls(0.25)).next(mm(0.3)).step()).isEqualTo(SlotStep.TRIAL_CUT);
        // Two cuts agree: the setting is where they show it, by hand the mean of 0.25 (read twice) and 0.27.
        CentringRounds settled = slipped.readAgain(walls(0.25)).trialCut(walls(0.27));
        assertThat(settled.next(mm(0.3)).contradiction()).isEmpty();
        assertThat(settled.estimate().amountMm())
                .isCloseTo((0.25 / 0.0005 + 0.27 / 0.0006) / (1 / 0.0005 + 1 / 0.0006), within(1e-12));
        // The next cut agrees with the moves: the odd one is left out. By hand: P = 0.0010, R = 0.0006.
        CentringRounds odd = slipped.readAgain(walls(0.25)).trialCut(walls(0.01));
        assertThat(odd.estimate().amountMm()).isCloseTo(-0.01 + 0.02 * 0.001 / 0.0016, within(1e-12));
        assertThat(odd.toString()).contains("one cut is left out");
        // It agrees with neither.
        assertThat(slipped.readAgain(walls(0.25))
                        .trialCut(walls(0.9))
                        .next(mm(0.3))
                        .contradiction())
                .contains(Contradiction.FENCE_LOST);
    }

    @Test
    void contradiction_ofOneCutsReadingsLeavesItOutUntilReadAgain() {
        TrialCut wrong = TrialCut.walls(mm(30), mm(30)).slot(mm(6)).piece(mm(67));
        CentringRounds rounds = twoRounds().trialCut(wrong);

        assertThat(rounds.next(mm(0.1)).contradiction()).contains(Contradiction.READINGS);
        assertThat(rounds.next(mm(0.1)).step()).isEqualTo(SlotStep.READ_AGAIN);
        assertThat(rounds.estimate()).isEqualTo(twoRounds().estimate());
        CentringRounds read =
                rounds.readAgain(TrialCut.walls(mm(30), mm(30)).slot(mm(6)).piece(mm(66)));
        assertThat(read.next(mm(0.1)).contradiction()).isEmpty();
        assertThat(read.estimate().uncertaintyMm())
                .isLessThan(twoRounds().estimate().uncertaintyMm());
    }

    /**
     * A misfit f, repeated readings known well: of one cut it is refused above 3.2905 u, of two above 3.4808 u, two-sided
     * 0.001 and 0.0005 (scipy.stats.norm.isf).
     */
    @Test
    void contradiction_ofACutsReadingsIsNotClearedByMoreCuts() {
        double u = Closure.of(closing(0)).bench(BENCH).uncertaintyMm();
        CentringRounds refused = CentringRounds.of(closing(3.4 * u)).bench(BENCH);
        CentringRounds more = refused.trialCut(closing(0)).trialCut(closing(0));

        assertThat(refused.next(mm(0.1)).contradiction()).contains(Contradiction.READINGS);
        assertThat(more.closures().get(0).outcome()).isEqualTo(Closure.Outcome.REFUSED);
        assertThat(more.estimate())
                .isEqualTo(CentringRounds.of(closing(0))
                        .bench(BENCH)
                        .trialCut(closing(0))
                        .estimate());
        // The same misfit as the third cut of three is one that closes with a warning; a new reading clears the first.
        assertThat(CentringRounds.of(closing(0))
                        .bench(BENCH)
                        .trialCut(closing(0))
                        .trialCut(closing(3.4 * u))
                        .closures()
                        .get(2)
                        .outcome())
                .isEqualTo(Closure.Outcome.WARNS);
        assertThat(refused.readAgain(closing(0)).next(mm(0.1)).contradiction()).isEmpty();
    }

    /** Four readings that miss by so much. */
    private static TrialCut closing(double misfit) {
        return TrialCut.walls(mm(30), mm(30)).slot(mm(6 + misfit)).piece(mm(66)).repeatability(mm(0.02));
    }

    @Test
    void next_beforeAnyCutAsksForOneOrForParallelEdges() {
        Blank tapered =
                Blank.ofLength(mm(640)).section(mm(61), mm(20)).nutAt(mm(200)).outOfParallel(mm(1.5));
        BlankOnFence run =
                BlankOnFence.of(tapered, mandolin(Fence.onePiece(mm(600))).channel(), Fence.onePiece(mm(600)));

        assertThat(CentringRounds.on(mandolin(Fence.onePiece(mm(600))))
                        .bench(BENCH)
                        .next(mm(0.1))
                        .step())
                .isEqualTo(SlotStep.TRIAL_CUT);
        // By hand: half of the taper over the channel's 300 mm is 0.35 mm, 0.18 either way at best, over 0.1.
        assertThat(CentringRounds.on(run).bench(BENCH).next(mm(0.1)).step()).isEqualTo(SlotStep.SQUARE_EDGES);
        assertThat(CentringRounds.on(run.edgesStay()).bench(BENCH).next(mm(0.1)).step())
                .isEqualTo(SlotStep.TAPERED_STRIP);
        assertThatThrownBy(() -> CentringRounds.on(run).fenceMoved(FenceMove.away(mm(0.7))))
                .hasMessageStartingWith("a fence move must follow a trial cut");
    }

    @Test
    void next_refusesALimitOfNothing() {
        assertThatThrownBy(() -> twoRounds().next(mm(0))).hasMessage("limit must be more than 0 mm, but was 0 mm");
    }

    @Test
    void next_namesWhatKeepsALimitOutOfReach() {
        SlotVerdict verdict =
                CentringRounds.of(walls(0)).bench(BENCH.cutScatter(mm(0.05))).next(mm(0.05));

        assertThat(verdict.step()).isEqualTo(SlotStep.CANNOT);
        assertThat(verdict.toString()).contains("the scatter of cuts, 0.050 mm").contains("ten trial cuts");
    }
}
