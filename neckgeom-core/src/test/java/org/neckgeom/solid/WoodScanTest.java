package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class WoodScanTest {

    private static final WoodScan.Motion STILL = (from, to) -> new double[] {0.02, 1e-3};

    @Test
    void least_closesInToTheBound() {
        double x = WoodScan.least(
                s -> 5 + 1e-4 * (s - 137.7) * (s - 137.7),
                (from, to) -> new double[] {0.04, 2e-4},
                WoodScan.ends(3, 303));

        // Within 1e-7 of the least: 1e-4 (x - 137.7)^2 <= 1e-7.
        assertThat(x).isCloseTo(137.7, offset(0.032));
    }

    @Test
    void least_seesAShortPocketBetweenItsEnds() {
        double x = WoodScan.least(s -> s > 100.3 && s < 100.9 ? 3 : 5, STILL, WoodScan.ends(0, 400, 100.3, 100.9));

        assertThat(x).isBetween(100.3, 100.9);
    }

    @Test
    void least_staysAtTheEndWhereTheWoodIsThinnest() {
        double[] ends = WoodScan.ends(3, 303);

        assertThat(WoodScan.least(s -> 5 + s / 100, STILL, ends)).isEqualTo(3);
        assertThat(WoodScan.least(s -> 15 - s / 100, STILL, ends)).isEqualTo(303);
    }

    /** Distances that bend no more than is stated, minima of several of them: nothing thinner than was found, by dense samples. */
    @Test
    void least_isTheLeastOfManySeeded() {
        SplittableRandom random = new SplittableRandom(20);
        for (int n = 0; n < 200; n++) {
            double[] middle = random.doubles(3, 0, 300).toArray();
            double[] bend = random.doubles(3, 1e-6, 1e-3).toArray();
            double[] low = random.doubles(3, 4, 6).toArray();
            DoubleUnaryOperator wood = x -> {
                double least = Double.POSITIVE_INFINITY;
                for (int i = 0; i < 3; i++) {
                    least = Math.min(least, low[i] + bend[i] * (x - middle[i]) * (x - middle[i]) / 2);
                }
                return least;
            };

            double found = wood.applyAsDouble(
                    WoodScan.least(wood, (from, to) -> new double[] {0.3, 1e-3}, WoodScan.ends(0, 300)));

            for (double x = 0; x <= 300; x += 0.05) {
                assertThat(wood.applyAsDouble(x)).as("case %d at %s", n, x).isGreaterThan(found - 1e-7);
            }
        }
    }

    @Test
    void ends_haveAHairToEachSideOfAJump() {
        assertThat(WoodScan.ends(0, 400)).containsExactly(0, 400);
        // Only 100.3 lies inside.
        assertThat(WoodScan.ends(0, 400, 100.3, 0, 400, -5, 500)).containsExactly(0, 100.3 - 4e-7, 100.3 + 4e-7, 400);
    }

    @Test
    void evenly_takesTwoOrMore() {
        assertThat(WoodScan.evenly(3, 303, 2)).containsExactly(3, 303);
        assertThat(WoodScan.evenly(3, 303, 4)).containsExactly(3, 103, 203, 303);
        assertThatThrownBy(() -> WoodScan.evenly(3, 303, 1)).hasMessageContaining("but were 1");
    }
}
