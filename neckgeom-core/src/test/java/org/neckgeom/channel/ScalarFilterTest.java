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

class ScalarFilterTest {

    @Test
    void read_weighsTwoEqualReadingsAlike() {
        ScalarFilter filter = ScalarFilter.start(0.10, 0.02).read(0.20, 0.02);

        assertThat(filter.mean()).isCloseTo(0.15, within(1e-15));
        assertThat(filter.u()).isCloseTo(0.02 / Math.sqrt(2), within(1e-15));
    }

    @Test
    void moved_addsItsOwnError() {
        ScalarFilter filter = ScalarFilter.start(0.71, 0.03).moved(0.70, 0.04);

        assertThat(filter.mean()).isCloseTo(0.01, within(1e-15));
        assertThat(filter.u()).isCloseTo(0.05, within(1e-15));
    }

    @Test
    void read_withoutUncertaintyIsBelieved() {
        ScalarFilter filter = ScalarFilter.start(0.3, 0).read(0.2, 0);

        assertThat(filter.mean()).isEqualTo(0.2);
        assertThat(filter.u()).isZero();
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

        ScalarFilter filter = ScalarFilter.start(reading[0], uRead[0]);
        for (int i = 1; i < rounds; i++) {
            filter = filter.moved(move[i - 1], uMove[i - 1]).read(reading[i], uRead[i]);
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
        assertThat(filter.mean()).as("seed " + seed).isCloseTo(weighted / weights, within(1e-12));
        assertThat(filter.u()).as("seed " + seed).isCloseTo(Math.sqrt(1 / weights), within(1e-12));
    }
}
