package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.Call;
import org.neckgeom.measure.Limits;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.TrialCut;

class CentringRoundsTest {

    private static Centring centring(double offset, double uRead) {
        return Centring.of(TrialCut.walls(mm(30 + offset), mm(30 - offset)).readWithin(mm(uRead)));
    }

    private static CentringRounds twoRounds() {
        return CentringRounds.start(centring(-0.71, 0.02)).moved(mm(0.70)).then(centring(-0.02, 0.02));
    }

    @Test
    void estimate_weighsReadingsThroughTheMoves() {
        Offset estimate = twoRounds().estimate();

        // By hand: after the move -0.01 with P = 0.0002 + 0.0004; reading -0.02 with 0.0002: K = 6/8.
        assertThat(estimate.amountMm()).isCloseTo(-0.01 + 0.75 * -0.01, within(1e-12));
        assertThat(estimate.uncertaintyMm()).isCloseTo(Math.sqrt(0.00015), within(1e-12));
    }

    @Test
    void chanceWithin_isTheNormalLawsAsCommonsStatisticsHasIt() {
        CentringRounds rounds = twoRounds();
        NormalDistribution law = NormalDistribution.of(
                rounds.estimate().amountMm(), rounds.estimate().uncertaintyMm());
        NormalDistribution moved =
                NormalDistribution.of(0, Math.hypot(rounds.estimate().uncertaintyMm(), 0.02));

        assertThat(rounds.chanceWithin(mm(0.03)).ratio()).isCloseTo(law.probability(-0.03, 0.03), within(1e-12));
        assertThat(rounds.chanceAfterOneMore(mm(0.03)).ratio())
                .isCloseTo(moved.probability(-0.03, 0.03), within(1e-12));
    }

    @Test
    void moved_byAStackCountsTheLeavesOwnErrorAndGoesAsTheMoveSays() {
        CentringRounds start = CentringRounds.start(centring(0.71, 0.02)).movesWithin(mm(0.03));
        LeafStack stack = start.move().leaves(FeelerSet.metric20().eachWithin(mm(0.01)));

        Offset after = start.moved(stack).estimate();

        assertThat(after.amountMm()).isCloseTo(0.01, within(1e-12));
        assertThat(after.uncertaintyMm()).isCloseTo(Math.sqrt(0.0002 + 0.0009 + 0.01 * 0.01 / 3), within(1e-12));
    }

    @Test
    void moved_eitherWayIsSignedByTheCutter() {
        CentringRounds start = CentringRounds.start(centring(0.2, 0.02));

        assertThat(start.movedTowardTheCutter(mm(0.3)).estimate().amountMm()).isCloseTo(-0.1, within(1e-12));
        assertThat(start.movedAwayFromTheCutter(mm(0.3)).estimate().amountMm()).isCloseTo(0.5, within(1e-12));
        assertThatThrownBy(() -> start.moved(mm(-0.1))).hasMessage("move must be 0 mm or more, but was -0.1 mm");
    }

    @Test
    void next_movesThenCuts() {
        assertThat(CentringRounds.start(centring(-0.71, 0.02)).next(mm(0.06)).kind())
                .isEqualTo(NextStep.Kind.MOVE);
        assertThat(twoRounds().next(mm(0.06)).kind()).isEqualTo(NextStep.Kind.CUT);
        assertThat(twoRounds().next(mm(0.06)).toString()).startsWith("cut the neck: 99.9");
    }

    @Test
    void next_readsAgainWhileTheOffsetIsInDoubt() {
        // The fence repeats to 0.002, the reading to 0.05: one more reading is what is missing.
        CentringRounds rounds = CentringRounds.start(centring(0.01, 0.05)).movesWithin(mm(0.002));

        assertThat(rounds.next(mm(0.06)).kind()).isEqualTo(NextStep.Kind.READ_AGAIN);
    }

    @Test
    void next_saysWhenTheFenceIsTooCoarse() {
        // The offset is known to 0.003 and lies just outside; a move that repeats to 0.2 would make it worse.
        CentringRounds rounds = CentringRounds.start(centring(0.028, 0.0042)).movesWithin(mm(0.2));

        NextStep step = rounds.next(mm(0.03), percent(95));

        assertThat(step.kind()).isEqualTo(NextStep.Kind.FINER_MEANS);
        assertThat(step.bestChance()).isLessThan(0.2);
        assertThat(step.toString()).startsWith("a finer fence or a wider limit: ");
    }

    @Test
    void then_noticesAFenceThatSlipped() {
        CentringRounds rounds =
                CentringRounds.start(centring(-0.71, 0.02)).moved(mm(0.70)).then(centring(0.25, 0.02));

        assertThat(rounds.isConsistent()).isFalse();
        assertThat(rounds.next(mm(0.3)).kind()).isEqualTo(NextStep.Kind.READ_AGAIN);
        assertThat(rounds.next(mm(0.3)).toString()).contains("start the rounds anew");
        assertThat(rounds.toString()).contains("the fence slipped or a reading is wrong");
    }

    @Test
    void verdict_isThatOfAllRoundsTogether() {
        assertThat(twoRounds().verdict(Limits.within(mm(0.05))).call()).isEqualTo(Call.WITHIN);
        assertThat(twoRounds().verdict(Limits.within(mm(0.04))).call()).isEqualTo(Call.UNDECIDED);
    }

    @Test
    void start_refusesReadingsThatDoNotClose() {
        Centring wrong = Centring.of(
                TrialCut.walls(mm(30), mm(30)).slot(mm(6)).piece(mm(67)).readWithin(mm(0.02)));

        assertThatThrownBy(() -> CentringRounds.start(wrong)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> twoRounds().then(wrong)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void start_widensAnUncertaintyOfFewDegreesOfFreedom() {
        Centring few = Centring.of(
                TrialCut.walls(List.of(mm(30.00), mm(30.02), mm(30.04)), List.of(mm(31.00), mm(31.02), mm(31.04))));

        // t(0.975, 4) = 2.776 (table of Student's t), normal 1.960; u = 0.02/sqrt(6).
        assertThat(CentringRounds.start(few).estimate().uncertaintyMm())
                .isCloseTo(0.02 / Math.sqrt(6) * 2.776 / 1.960, within(1e-5));
    }

    @Test
    void chanceWithin_refusesALimitOfNothing() {
        assertThatThrownBy(() -> twoRounds().chanceWithin(mm(0)))
                .hasMessage("limit must be more than 0 mm, but was 0 mm");
    }

    @Test
    void toString_saysWhatItAssumesOfAMoveUntilTold() {
        CentringRounds rounds = twoRounds();

        assertThat(rounds.toString()).contains("0.020 mm (one standard deviation, taken as none was told");
        assertThat(rounds.movesWithin(mm(0.02)).toString())
                .contains("0.020 mm (one standard deviation)")
                .doesNotContain("taken as");
        assertThat(rounds.movesWithin(mm(0.02)).chanceAfterOneMore(mm(0.1)))
                .isEqualTo(rounds.chanceAfterOneMore(mm(0.1)));
    }
}
