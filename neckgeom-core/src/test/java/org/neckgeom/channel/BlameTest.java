package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.channel.TrialReading.FAR_WALL;
import static org.neckgeom.channel.TrialReading.NEAR_WALL;
import static org.neckgeom.channel.TrialReading.PIECE;
import static org.neckgeom.channel.TrialReading.SLOT;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

class BlameTest {

    private static final double U = 0.02;

    private static double[] one(double reading) {
        return new double[] {reading};
    }

    @Test
    void suspects_areAllFourWhenNothingElseIsKnown() {
        Blame blame = Blame.of(one(30), one(31), U).slot(6).piece(66);

        assertThat(blame.suspects()).containsExactlyInAnyOrder(NEAR_WALL, FAR_WALL, SLOT, PIECE);
    }

    @Test
    void suspects_nameTheSlotThatDoesNotFitItsCutter() {
        Blame blame = Blame.of(one(30), one(31), U).slot(5).piece(67).shouldBe(SLOT, 6, 0.05);

        assertThat(blame.suspects()).containsExactly(SLOT);
    }

    @Test
    void suspects_nameThePieceThatDoesNotFitItsBlank() {
        Blame blame = Blame.of(one(30), one(31), U).slot(6).piece(66).shouldBe(PIECE, 67, 0.1);

        assertThat(blame.suspects()).containsExactly(PIECE);
    }

    @Test
    void suspects_areTheWallsWhenSlotAndPieceAreAsTheyShouldBe() {
        Blame blame = Blame.of(one(30), one(31), U)
                .slot(6)
                .piece(68)
                .shouldBe(SLOT, 6, 0.05)
                .shouldBe(PIECE, 68, 0.1);

        assertThat(blame.suspects()).containsExactlyInAnyOrder(NEAR_WALL, FAR_WALL);
    }

    @Test
    void suspects_nameTheWallWhoseReadingsDisagree() {
        double[] fence = {30.00, 31.01, 30.01};
        Blame blame =
                Blame.of(fence, new double[] {31.02, 31.00, 31.01}, U).slot(6).piece(67.01);

        assertThat(blame.suspects()).containsExactly(NEAR_WALL);
        assertThat(blame.oddReading(NEAR_WALL)).isEqualTo(1);
    }

    @Test
    void suspects_doNotBlameAWallForBeingReadOften() {
        double[] fence = {30.00, 30.03, 29.98, 30.01, 29.97, 30.02, 29.99, 30.02, 30.00, 29.98};
        Blame blame = Blame.of(fence, one(31), U)
                .slot(6)
                .piece(68)
                .shouldBe(SLOT, 6, 0.05)
                .shouldBe(PIECE, 68, 0.1);

        assertThat(blame.suspects()).contains(FAR_WALL).doesNotContain(SLOT, PIECE);
    }

    /** The closed form against a least-squares fit of all three widths with Hipparchus's QR. */
    @Test
    void misfitWithout_isTheResidualOfLeastSquares() {
        Blame blame = Blame.of(new double[] {30.00, 30.03}, one(31), U)
                .slot(6.05)
                .piece(67.3)
                .shouldBe(SLOT, 6, 0.05)
                .shouldBe(PIECE, 67, 0.1);
        // rows: two fence walls, (far wall freed), slot, piece, slot as it should be, piece likewise
        double[][] rows = {{1, 0, 0}, {1, 0, 0}, {0, 0, 1}, {1, 1, 1}, {0, 0, 1}, {1, 1, 1}};
        double[] seen = {30.00, 30.03, 6.05, 67.3, 6, 67};
        double[] u = {U, U, U, U, 0.05, 0.1};
        RealMatrix design = new Array2DRowRealMatrix(rows);
        RealVector right = new ArrayRealVector(seen);
        for (int i = 0; i < u.length; i++) {
            design.setRowVector(i, design.getRowVector(i).mapDivide(u[i]));
            right.setEntry(i, seen[i] / u[i]);
        }
        RealVector fit = new QRDecomposition(design).getSolver().solve(right);
        double residual = design.operate(fit).subtract(right).getNorm();

        assertThat(blame.misfitWithout(FAR_WALL)).isCloseTo(residual * residual, within(1e-9));
    }
}
