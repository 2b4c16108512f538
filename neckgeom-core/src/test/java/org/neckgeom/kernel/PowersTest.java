package org.neckgeom.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Powers and logarithms against the JDK's {@code StrictMath}, which is fdlibm: right to its last bit. */
class PowersTest {

    private static final int DRAWS = 20_000;

    @Test
    void exp2AndLog2_areThoseOfTheJdk() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < DRAWS; i++) {
            double y = random.nextDouble(-1022, 1020);
            double x = StrictMath.pow(2, y);

            assertThat(Powers.exp2(y) / x).as("2^" + y).isCloseTo(1, within(6e-16));
            assertThat(Powers.log2(x)).as("log2 " + x).isCloseTo(y, within(3e-13));
            double near = 1 + y * 1e-6;
            assertThat(Powers.log2(near))
                    .as("log2 " + near)
                    .isCloseTo(StrictMath.log1p(near - 1) / StrictMath.log(2), within(3e-16));
        }
        assertThat(Powers.exp2(0)).isEqualTo(1);
        assertThat(Powers.exp2(-1022)).isPositive();
        assertThat(Powers.exp2(-1100)).isZero();
        assertThat(Powers.exp2(Double.NEGATIVE_INFINITY)).isZero();
    }

    /** As a back's curve asks: bases to 1, exponents 1 to 20 and one over them. */
    @Test
    void power_isThatOfTheJdk() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < DRAWS; i++) {
            double x = StrictMath.pow(random.nextDouble(), 1 + 9 * random.nextDouble());
            double p = random.nextDouble(1, 20);

            for (double y : new double[] {p, 1 / p}) {
                double theirs = StrictMath.pow(x, y);
                double miss = 6e-16 + 4e-16 * (y + Math.abs(y * StrictMath.log(x)));

                assertThat(Powers.power(x, y)).as(x + "^" + y).isCloseTo(theirs, within(miss * theirs + 1e-307));
            }
        }
        for (double end : new double[] {0, 1, Double.MIN_VALUE, -0.5, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThat(Powers.power(end, 2.5)).as(end + "^2.5").isEqualTo(Double.valueOf(StrictMath.pow(end, 2.5)));
        }
    }
}
