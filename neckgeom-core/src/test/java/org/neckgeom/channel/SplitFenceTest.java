package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SplitFenceTest {

    /**
     * The edge as a line y = t + s x, pressed down at the cutter (x = 0): the lowest t allowed by contact
     * at the two ends of each half it can touch, found by trying slopes one by one.
     */
    private static double pressedHome(double along, double length, double gap, double step) {
        double lead = along;
        double trail = along - length;
        double best = Double.POSITIVE_INFINITY;
        for (int i = -40000; i <= 40000; i++) {
            double slope = Math.abs(step) / gap * i / 40000;
            double lift = Double.NEGATIVE_INFINITY;
            if (trail <= -gap) {
                lift = Math.max(lift, Math.max(-slope * trail, slope * gap));
            }
            if (lead >= gap) {
                lift = Math.max(lift, Math.max(step - slope * gap, step - slope * lead));
            }
            best = Math.min(best, lift);
        }
        return -best;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, -0.3})
    void shift_isTheLowestPlaceOfAPressedEdge(double step) {
        for (double along : new double[] {25, 60, 150, 300, 420, 474}) {
            assertThat(SplitFence.shift(along, 500, 20, step))
                    .as("along " + along)
                    .isCloseTo(pressedHome(along, 500, 20, step), within(2e-5 + Math.abs(step) / 40000 * 25));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, -0.3})
    void shift_runsBackwardsWhenTheStepIsTurnedRound(double step) {
        for (double along : new double[] {5, 25, 60, 150, 300, 420, 480, 495}) {
            // Seen from the other end, and from the other half, the same fence.
            assertThat(SplitFence.shift(along, 500, 20, step) + step)
                    .isCloseTo(SplitFence.shift(500 - along, 500, 20, -step), within(1e-12));
        }
    }
}
