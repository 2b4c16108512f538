package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Powers and logarithms against the JDK's; the law of pairs against its formula. */
class PairLawTest {

    private static final double PER_MILLIARD = 1e-7;

    @Test
    void powers_areThoseOfTheJdk() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 20_000; i++) {
            double y = random.nextDouble(-1022, 1020);
            double x = StrictMath.pow(2, y);

            assertThat(Powers.exp2(y)).as("2^" + y).isCloseTo(x, withinPercentage(PER_MILLIARD));
            assertThat(Powers.log2(x)).as("log2 " + x).isCloseTo(y, within(3e-13));
            double near = 1 + y * 1e-6;
            assertThat(Powers.log2(near))
                    .as("log2 " + near)
                    .isCloseTo(StrictMath.log(near) / StrictMath.log(2), within(2e-14));
        }
        assertThat(Powers.exp2(0)).isEqualTo(1);
        assertThat(Powers.exp2(-1022)).isPositive();
        assertThat(Powers.exp2(-1100)).isZero();
        assertThat(Powers.exp2(Double.NEGATIVE_INFINITY)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1, 2, 4.7, 30, 5000, 9e6, 2e7, Double.POSITIVE_INFINITY})
    void beyond_isTheFormula(double nu) {
        PairLaw law = new PairLaw(nu);
        for (double r = 0; r < 12; r += 0.37) {
            double exact = nu > 1e9 ? StrictMath.exp(-r * r / 2) : StrictMath.pow(1 + r * r / nu, -nu / 2);

            assertThat(law.beyond(r * r)).as("r " + r).isCloseTo(exact, within(1e-7));
        }
        double far = law.reach(1e-4);
        assertThat(law.beyond(far * far)).isCloseTo(1e-4, within(1e-9));
    }
}
