package org.neckgeom.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {

    @ParameterizedTest
    @CsvSource({
        "647.6999999999999, 647.7",
        "0.30000000000000004, 0.3",
        "0, 0",
        "-0.0, 0",
        "-1, -1",
        "12, 12",
        "1200000, 1200000",
        "0.0000001, 0.0000001",
        "0.00000009, 9E-8",
        "999999999999999, 1000000000000000",
        "123456789012345, 123456789012000",
        "1e15, 1E+15",
        "1.5e300, 1.5E+300",
        "NaN, NaN",
        "Infinity, infinity",
        "-Infinity, -infinity",
    })
    void plain_hasTwelveDigitsAndNoNoise(double value, String text) {
        assertThat(Numbers.plain(value)).isEqualTo(text);
    }

    @Test
    void significant_staysFiniteForTheLargestDouble() {
        assertThat(Numbers.significant(Double.MAX_VALUE, 4)).isEqualTo("1.798E+308");
        assertThat(Numbers.significant(-Double.MAX_VALUE, 4)).isEqualTo("-1.798E+308");
    }

    /** A double has at most 1,074 decimals (IEEE 754); a text of 2^31 of them has no room in memory. */
    @ParameterizedTest
    @CsvSource({"-1", "101", "2147483647", "-2147483648"})
    void decimals_outOfReachAreRefused(int decimals) {
        String sentence = "decimals must be 0 to 100, but were " + decimals;

        assertThatThrownBy(() -> Numbers.fixed(1, decimals))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(sentence);
        assertThatThrownBy(() -> Numbers.trimmed(1, decimals))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(sentence);
    }

    @Test
    void plain_readsBackToTwelveDigits() {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 50_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-20, 21));

            BigDecimal read = new BigDecimal(Numbers.plain(value));

            assertThat(read.compareTo(new BigDecimal(value).round(new MathContext(12))))
                    .as("seed 8, trial %d, %s", i, value)
                    .isZero();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.71, 3, 0.710",
        "0.0005, 3, 0.001",
        "-0.0005, 3, -0.001",
        "-0.0004, 3, 0.000",
        "2.675, 2, 2.68", // as the digits say, not as the double's 2.67499...
        "1.005, 2, 1.01",
        "12.5, 0, 13",
        "-12.5, 0, -13",
        "1e300, 3, 1E+300",
        "999999999999, 1, 999999999999.0",
        "NaN, 2, NaN",
        "-Infinity, 2, -infinity",
    })
    void fixed_roundsHalvesAwayFromZero(double value, int decimals, String text) {
        assertThat(Numbers.fixed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"8.5, 3, 8.5", "8.50049, 3, 8.5", "100, 3, 100", "-0.0001, 3, 0", "0.1234567, 4, 0.1235", "NaN, 1, NaN"
    })
    void trimmed_dropsZeros(double value, int decimals, String text) {
        assertThat(Numbers.trimmed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.014142, 3",
        "0.05, 3",
        "0.0996, 2",
        "0.5, 2",
        "1, 1",
        "2, 1",
        "9.96, 0",
        "25, 0",
        "100, 0",
        "3e-12, 9",
        "0, 7",
        "-1, 7",
        "NaN, 7",
        "Infinity, 7"
    })
    void decimalsFor_keepsTwoDigitsOfTheUncertainty(double uncertainty, int decimals) {
        assertThat(Numbers.decimalsFor(uncertainty, 7)).isEqualTo(decimals);
    }

    @ParameterizedTest
    @CsvSource({
        "0, below 0.1 %",
        "1, more than 99.9 %",
        "0.5, 50.0 %",
        "0.95, 95.0 %",
        "0.9949, 99.5 %",
        "0.9989, 99.9 %",
        "0.9991, more than 99.9 %",
        "0.9999996, more than 99.9 %",
        "0.001, 0.1 %",
        "0.0006, 0.1 %",
        "0.0004, below 0.1 %",
        "1e-300, below 0.1 %",
    })
    void percent_neverReadsAsCertainWhatIsNot(double probability, String text) {
        assertThat(Numbers.percent(probability)).isEqualTo(text);
    }

    /** The quick way and that by all digits are one: twelve digits first, halves to even, then halves away from zero. */
    @Test
    void fixed_isThatOfAllDigits() {
        SplittableRandom random = new SplittableRandom(39);
        for (int i = 0; i < 200_000; i++) {
            int decimals = random.nextInt(0, 12);
            double size = Math.pow(10, random.nextInt(-3, 15) - decimals);
            double value = (random.nextDouble() - 0.5) * size;
            if (i % 2 == 0) {
                // Near a half of the last place, or on it.
                double last = Math.pow(10, -decimals);
                value = (Math.rint(value / last) + 0.5 + random.nextInt(-2, 3) * Math.pow(10, -random.nextInt(1, 13)))
                        * last;
            }
            BigDecimal exact = new BigDecimal(value)
                    .round(new MathContext(12, RoundingMode.HALF_EVEN))
                    .setScale(decimals, RoundingMode.HALF_UP);

            assertThat(new BigDecimal(Numbers.fixed(value, decimals)))
                    .as("seed 39, trial %d, %s to %d", i, value, decimals)
                    .isEqualTo(exact);
            if (Math.abs(value) < 1) {
                assertThat(Numbers.isNothing(value, decimals))
                        .as("seed 39, trial %d, %s to %d", i, value, decimals)
                        .isEqualTo(exact.signum() == 0);
            }
        }
    }

    @Test
    void percent_neverClaimsCertainty() {
        SplittableRandom random = new SplittableRandom(21);
        for (int i = 0; i < 20_000; i++) {
            double p = Math.pow(random.nextDouble(), 12);
            for (double chance : new double[] {p, 1 - p}) {
                assertThat(Numbers.percent(chance))
                        .as("seed 21, trial %d, %s", i, chance)
                        .doesNotContain("100")
                        .matches("below 0\\.1 %|more than 99\\.9 %|\\d+\\.\\d %")
                        .isNotEqualTo("0.0 %");
            }
        }
    }
}
