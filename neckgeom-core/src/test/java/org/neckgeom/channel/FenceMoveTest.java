package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.TrialCut;

class FenceMoveTest {

    private static FenceMove move(double offset, double u) {
        return FenceMove.of(SlotOffset.of(mm(offset), mm(u)));
    }

    @Test
    void leaves_areTheNearestStack() {
        FeelerStack stack = move(-0.71, 0.014).leaves(FeelerSet.metric20());

        assertThat(stack).hasToString("0.70 leaf, 0.010 mm short");
        assertThat(stack.residual().libraryValue()).isCloseTo(0.01, within(1e-12));
        assertThat(stack.isClose()).isTrue();
    }

    @Test
    void leaves_carryTheirTolerancesAsRootOfSquares() {
        FeelerStack stack = move(1.35, 0.01).leaves(FeelerSet.metric20().halfWidth(mm(0.01)));

        // Two leaves of +-0.01, rectangular: sqrt(2) 0.01/sqrt(3).
        assertThat(stack.leaves()).hasSize(2);
        assertThat(stack.uncertainty().libraryValue()).isCloseTo(0.01 * Math.sqrt(2 / 3.0), within(1e-15));
        assertThat(stack).hasToString("0.65 + 0.70 leaves, exact, u 0.0082 mm");
    }

    @Test
    void leaves_ofAnInchSetForAnInchMove() {
        FeelerStack stack = FenceMove.of(SlotOffset.of(thou(27.5), thou(0.5))).leaves(FeelerSet.inch26());

        assertThat(stack.residual().libraryValue()).isCloseTo(0, within(1e-12));
        assertThat(stack).hasToString("0.0025 + 0.025 leaves, exact");
    }

    @Test
    void leaves_farBeyondTheSetAreSplitIntoMoves() {
        FeelerStack stack = move(9.3, 0.01).leaves(FeelerSet.metric20());

        assertThat(stack.isClose()).isFalse();
        // 3.70 is the most four leaves make: twice that, and 1.90 left.
        assertThat(stack.remedy())
                .startsWith("in 3 moves: 2 times 0.85 + 0.90 + 0.95 + 1.00 leaves, then ")
                .endsWith("exact");
    }

    @Test
    void leaves_thinnerThanTheThinnestAreReachedByChangingStacks() {
        FeelerSet few = FeelerSet.of(List.of(mm(0.30), mm(0.38), mm(0.50)));

        FeelerStack stack = move(0.08, 0.005).leaves(few);

        assertThat(stack.leaves()).isEmpty();
        assertThat(stack.remedy())
                .isEqualTo("in two moves: set the block over 0.30 leaf, then put 0.38 leaf in its place, exact; or"
                        + " paper or tape, measured (about 0.10 mm), makes up for it");
        assertThat(move(-0.08, 0.005).leaves(few).remedy())
                .as("away from the cutter the thicker stack stands in the gap first")
                .startsWith("in two moves: set the block over 0.38 leaf, then put 0.30 leaf in its place");
    }

    @Test
    void leaves_refusesSevenInAStack() {
        assertThatThrownBy(() -> move(1, 0.01).leaves(FeelerSet.metric20(), 7))
                .hasMessage("leaves in a stack must be 1 to 6, but were 7");
    }

    @Test
    void leaves_ofNothingCannotBeASet() {
        assertThatThrownBy(() -> FeelerSet.of(List.of(mm(0.1), mm(0))))
                .hasMessage("feeler gauges must be more than 0 mm, but was 0 mm");
    }

    @Test
    void at_aPivotingFenceTakesTheBlocksShare() {
        StopGap gap = move(-0.71, 0.014).at(Fence.pivoting(mm(600)).fromPivot(mm(300), mm(450)));

        // m B/C = 0.71 * 450/300
        assertThat(gap.gap().libraryValue()).isCloseTo(1.065, within(1e-12));
        assertThat(gap).hasToString("1.065 mm at the stop block for 0.710 mm at the cutter (1.5 to 1)");
        assertThat(gap.leaves(FeelerSet.metric20()).height().libraryValue()).isCloseTo(1.05, within(1e-12));
    }

    @Test
    void at_aSlidingFenceIsTheMoveItself() {
        assertThat(move(-0.71, 0.014).at(Fence.onePiece(mm(600))).gap().libraryValue())
                .isCloseTo(0.71, within(1e-12));
    }

    @Test
    void toString_saysWhenTheMoveIsLostInItsUncertainty() {
        assertThat(move(0.005, 0.014))
                .hasToString("fence toward the cutter by 0.005 mm, less than its own uncertainty");
        assertThat(move(0, 0.014)).hasToString("fence stays where it is");
    }

    @Test
    void handling_takesTheLeavesOutToGoAwayAndPutsThemInToComeNearer() {
        assertThat(move(-0.7, 0.01).handling()).contains("take them out");
        assertThat(move(0.7, 0.01).handling()).contains("put the leaves between");
    }

    @Test
    void offset_refusesNaNByTheUnitItself() {
        assertThatThrownBy(() -> SlotOffset.of(mm(Double.NaN), mm(0.1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SlotOffset.of(inch(0.1), mm(-0.1)))
                .hasMessage("uncertainty must be 0 mm or more, but was -0.1 mm");
    }

    /** By hand: 0.028 in are 0.7112 mm, and 0.70 mm are 27.56 thou. */
    @Test
    void leaves_inAnotherUnitSayTheirHeightInTheMoves() {
        assertThat(move(-0.71, 0.014).leaves(FeelerSet.inch26()))
                .hasToString("0.013 + 0.015 in leaves (0.711 mm), 0.001 mm over");
        assertThat(FenceMove.of(SlotOffset.of(thou(28), thou(0.5))).leaves(FeelerSet.metric20()))
                .hasToString("0.70 mm leaf (27.6 thou), 0.4 thou short");
    }

    @Test
    void questions_areRefusedWhereNoMoveIsAdvised() {
        FenceMove refused = Centring.of(
                        TrialCut.walls(mm(30), mm(31)).slot(mm(6)).piece(mm(68)).repeatability(mm(0.02)))
                .move();
        String why = "readings do not close: 1.000 mm short, limit 0.103; read all four again";

        assertThat(refused.isAdvised()).isFalse();
        assertThatThrownBy(refused::isTowardTheCutter)
                .isInstanceOf(ArithmeticException.class)
                .hasMessageStartingWith(why);
        assertThatThrownBy(() -> refused.leaves(FeelerSet.metric20())).hasMessageStartingWith(why);
        assertThatThrownBy(() -> refused.at(Fence.onePiece(mm(600)))).hasMessageStartingWith(why);
        assertThat(refused.toString()).startsWith("no move advised: " + why);
    }

    @Test
    void leaves_areOneToSix() {
        assertThat(move(-0.71, 0.014).leaves(FeelerSet.metric20(), 1).leaves()).hasSize(1);
        assertThat(move(5.4, 0.001).leaves(FeelerSet.metric20(), 6).height().libraryValue())
                .isCloseTo(5.25, within(0.16));
        assertThatThrownBy(() -> move(1, 0.01).leaves(FeelerSet.metric20(), 0))
                .hasMessage("leaves in a stack must be 1 to 6, but were 0");
    }

    @Test
    void at_aPivotingFenceChangesStacksInTheMovesDirection() {
        FeelerSet few = FeelerSet.of(List.of(mm(0.30), mm(0.38), mm(0.50)));
        Fence same = Fence.onePiece(mm(600));

        assertThat(move(0.08, 0.005).at(same).leaves(few).remedy())
                .startsWith("in two moves: set the block over 0.30 leaf, then put 0.38 leaf");
        assertThat(move(-0.08, 0.005).at(same).leaves(few).remedy())
                .startsWith("in two moves: set the block over 0.38 leaf, then put 0.30 leaf");
    }

    @Test
    void at_aPivotingFenceTheUncertaintyGrowsWithTheLever() {
        StopGap gap = move(-0.71, 0.014).at(Fence.pivoting(mm(600)).fromPivot(mm(300), mm(450)));

        assertThat(gap.ratio()).isCloseTo(1.5, within(1e-12));
        assertThat(gap.uncertainty().libraryValue()).isCloseTo(0.021, within(1e-15));
        assertThat(gap.leaves(FeelerSet.metric20()).isClose()).isTrue();
    }

    /** Two leaves make at most 1.95 mm: 3.9 in two moves exactly, and what is far beyond is not for leaves. */
    @Test
    void leaves_countTheMovesOfALongWay() {
        assertThat(move(3.95, 0.001).leaves(FeelerSet.metric20(), 2).remedy())
                .isEqualTo("in 3 moves: 2 times 0.95 + 1.00 leaves, then 0.05 leaf, exact");
        assertThat(move(2.2, 0.001).leaves(FeelerSet.metric20(), 2).remedy())
                .isEqualTo("in 2 moves: 0.95 + 1.00 leaves, then 0.25 leaf, exact");
        assertThat(move(500, 0.001).leaves(FeelerSet.metric20(), 2).remedy()).startsWith("too far for leaves");
    }

    @Test
    void leaves_areCloseWithinTwiceTheUncertaintyOrAFiftiethOfAMillimetre() {
        FeelerSet one = FeelerSet.of(List.of(mm(0.5)));

        assertThat(move(0.52, 0).leaves(one).isClose()).isTrue();
        assertThat(move(0.521, 0).leaves(one).isClose()).isFalse();
        assertThat(move(0.56, 0.03).leaves(one).isClose()).isTrue();
        assertThat(move(0.561, 0.03).leaves(one).isClose()).isFalse();
    }
}
