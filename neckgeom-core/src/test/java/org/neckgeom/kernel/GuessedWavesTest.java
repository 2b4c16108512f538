package org.neckgeom.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.ErrorDistribution.Law;

/** The table of guessed errors beside an average of the textbook characteristic functions over 40,001 scales. */
class GuessedWavesTest {

    private static final int SCALES = 20_000;

    @Test
    void theTableIsTheAverageOfTheLawOverWhatTheScaleMayBe() {
        for (double tau : List.of(RoughSum.GUESS, RoughSum.WHOLE_GUESS)) {
            held(Law.NORMAL, tau, x -> StrictMath.exp(-0.5 * x * x));
            held(Law.RECTANGULAR, tau, x -> StrictMath.sin(x) / x);
            held(Law.TRIANGULAR, tau, x -> StrictMath.pow(StrictMath.sin(0.5 * x) / (0.5 * x), 2.0));
        }
    }

    private static void held(Law law, double tau, DoubleUnaryOperator known) {
        for (double x :
                new double[] {0.001, 0.02, 0.5, 1.0, 3.3, 7.77, 20.2, 41.5, 63.9, 90.0, 95.93, 95.97, 97.0, 250.0}) {
            double[] found = {1.0};
            Objects.requireNonNull(GuessedWaves.of(law, tau)).multiply(2.0 * x, 0, found);
            assertThat(found[0]).as("%s %s %s", law, tau, x).isCloseTo(average(known, tau, x), within(5e-12));
        }
    }

    private static double average(DoubleUnaryOperator known, double tau, double x) {
        double sum = 0.0;
        double weights = 0.0;
        for (int i = -SCALES; i <= SCALES; i++) {
            double z = 9.0 * i / SCALES;
            double weight = StrictMath.exp(-0.5 * z * z);
            sum += weight * known.applyAsDouble(x * StrictMath.exp(tau * z));
            weights += weight;
        }
        return sum / weights;
    }

    @Test
    void thereIsNoTableOfOtherLawsAndScales() {
        assertThat(GuessedWaves.of(Law.RECTANGULAR, 0.3)).isNull();
        assertThat(Arrays.stream(Law.values()).filter(law -> GuessedWaves.of(law, RoughSum.GUESS) != null))
                .containsExactlyInAnyOrder(Law.NORMAL, Law.RECTANGULAR, Law.TRIANGULAR);
    }
}
