package org.neckgeom.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceTest {

    /** The print rule; the first row is the string line within 1 mm of default.csv. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "0.000385655; 0.00187446; 99.9 %, from 99.8 % as your guesses go",
                "0.0517609;   0.131249;   94.8 %, from 86.8 % as your guesses go",
                "0.034;       0.034;      96.6 %",
                "0.034;       0.068;      96.6 %",
                "0.034;       0.0681;     96.6 %, from 93.1 % as your guesses go",
                "0.001;       0.001;      99.9 %",
                "0.00099;     0.001;      99.9 %",
                "0.00099;     0.00099;    better than 99.9 %",
                "1e-5;        0.0012;     99.9 %, from 99.8 % as your guesses go",
                "1e-5;        1e-4;       better than 99.9 %",
                "1e-5;        0.99e-4;    better than 99.99 %",
                "1e-9;        1e-9;       better than 99.99 %",
                "0;           0;          better than 99.99 %",
                "0.9989;      0.9989;     0.1 %",
                "0.9998;      0.9998;     below 0.1 %",
                "1;           1;          below 0.1 %",
                "0.3;         0.99999;    70.0 %, from below 0.1 % as your guesses go",
            })
    void toString_printsWhatIsEarned(double outside, double atWorst, String text) {
        assertThat(Chance.outside(outside).atWorst(atWorst)).hasToString(text);
    }

    @Test
    void toString_printsAThirdNineOfWhatIsWellKnownAlone() {
        assertThat(Chance.outside(9e-6).wellKnown()).hasToString("better than 99.999 %");
        assertThat(Chance.outside(9e-6)).hasToString("better than 99.99 %");
        assertThat(Chance.outside(1e-12).wellKnown()).hasToString("better than 99.999 %");
        assertThat(Chance.outside(1.1e-5).wellKnown()).hasToString("better than 99.99 %");
    }

    @Test
    void toString_countsTheErrorOfTheNumber() {
        assertThat(Chance.outside(1e-12).accurateTo(1e-3)).hasToString("99.9 %");
        assertThat(Chance.outside(1e-12).accurateTo(2e-4)).hasToString("better than 99.9 %");
        assertThat(Chance.outside(1e-12).accurateTo(3e-10).wellKnown()).hasToString("better than 99.999 %");
        assertThat(Chance.outside(0.9999).accurateTo(0.01)).hasToString("below 0.1 %");
    }

    @Test
    void toString_neverClaimsCertainty() {
        SplittableRandom random = new SplittableRandom(13);
        for (int i = 0; i < 20_000; i++) {
            double outside = Math.pow(random.nextDouble(), 9);
            Chance chance = Chance.outside(random.nextBoolean() ? outside : 1 - outside)
                    .atWorst(Math.pow(random.nextDouble(), 4))
                    .accurateTo(Math.pow(random.nextDouble(), 20));

            assertThat(chance.toString())
                    .as("seed 13, trial %d", i)
                    .doesNotContain("100")
                    .doesNotContainPattern("(^|[^\\d.])0\\.0 %");
        }
    }

    @Test
    void chance_keepsItsNumbers() {
        Chance chance = Chance.outside(0.25).atWorst(0.5).accurateTo(1e-9).wellKnown();

        assertThat(chance.outside()).isEqualTo(0.25);
        assertThat(chance.probability()).isEqualTo(0.75);
        assertThat(chance.outsideAtWorst()).isEqualTo(0.5);
        assertThat(chance.accuracy()).isEqualTo(1e-9);
        assertThat(chance.isWellKnown()).isTrue();
        assertThat(Chance.outside(0.25).outsideAtWorst()).isEqualTo(0.25);
        assertThat(Chance.outside(0.25).isWellKnown()).isFalse();
    }

    @Test
    void badChance_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Chance.outside(1.5))
                .withMessage("probability outside must be in [0, 1], but was 1.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Chance.outside(Double.NaN))
                .withMessage("probability outside must be in [0, 1], but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Chance.outside(0.5).atWorst(-0.1))
                .withMessage("probability outside at worst must be in [0, 1], but was -0.1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Chance.outside(0.5).accurateTo(2))
                .withMessage("accuracy of a probability must be in [0, 1], but was 2");
    }
}
