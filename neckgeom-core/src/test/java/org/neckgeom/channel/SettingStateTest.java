package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SettingStateTest {

    private static final double INF = Double.POSITIVE_INFINITY;

    private static SettingState first(double y, double u) {
        return SettingState.first(y, u * u, 0, INF);
    }

    @Test
    void cut_weighsTwoEqualReadingsTheSame() {
        SettingState state = first(0.10, 0.02).cut(0.20, 0.02 * 0.02, 0, INF);

        assertThat(state.mean()).isCloseTo(0.15, within(1e-15));
        assertThat(Math.sqrt(state.variance())).isCloseTo(0.02 / Math.sqrt(2), within(1e-15));
    }

    @Test
    void moved_addsItsOwnError() {
        SettingState state = first(0.71, 0.03).movedTowardCutter(0.70, 0.04 * 0.04);

        assertThat(state.mean()).isCloseTo(0.01, within(1e-15));
        assertThat(Math.sqrt(state.variance())).isCloseTo(0.05, within(1e-15));
    }

    @Test
    void cut_withoutUncertaintyIsBelieved() {
        SettingState state = first(0.3, 0).cut(0.2, 0, 0, INF);

        assertThat(state.mean()).isEqualTo(0.2);
        assertThat(Math.sqrt(state.variance())).isZero();
    }

    /**
     * The recursion against generalised least squares on all readings at once, solved with Hipparchus:
     * unknown is the offset now; reading i sees it plus the moves since, whose errors it shares with
     * every earlier reading.
     */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void recursion_isLeastSquaresOnAllReadings(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int rounds = random.nextInt(2, 7);
        double[] reading = random.doubles(rounds, -1, 1).toArray();
        double[] uRead = random.doubles(rounds, 0.01, 0.1).toArray();
        double[] move = random.doubles(rounds - 1, -1, 1).toArray();
        double[] uMove = random.doubles(rounds - 1, 0.01, 0.1).toArray();

        SettingState state = first(reading[0], uRead[0]);
        for (int i = 1; i < rounds; i++) {
            state = state.movedTowardCutter(move[i - 1], uMove[i - 1] * uMove[i - 1])
                    .cut(reading[i], uRead[i] * uRead[i] / 4, uRead[i] * uRead[i] * 0.75, INF);
        }

        RealMatrix covariance = new Array2DRowRealMatrix(rounds, rounds);
        double[] carried = new double[rounds];
        for (int i = 0; i < rounds; i++) {
            carried[i] = reading[i];
            for (int m = i; m < rounds - 1; m++) {
                carried[i] -= move[m];
            }
            for (int j = 0; j < rounds; j++) {
                double shared = i == j ? uRead[i] * uRead[i] : 0;
                for (int m = Math.max(i, j); m < rounds - 1; m++) {
                    shared += uMove[m] * uMove[m];
                }
                covariance.setEntry(i, j, shared);
            }
        }
        RealMatrix weight = new LUDecomposition(covariance).getSolver().getInverse();
        double weights = 0;
        double weighted = 0;
        for (int i = 0; i < rounds; i++) {
            for (int j = 0; j < rounds; j++) {
                weights += weight.getEntry(i, j);
                weighted += weight.getEntry(i, j) * carried[j];
            }
        }
        assertThat(state.mean()).as("seed " + seed).isCloseTo(weighted / weights, within(1e-12));
        assertThat(Math.sqrt(state.variance())).as("seed " + seed).isCloseTo(Math.sqrt(1 / weights), within(1e-12));
    }
}
