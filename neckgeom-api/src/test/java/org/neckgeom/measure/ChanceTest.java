package org.neckgeom.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceTest {

    /** The rule, case by case; the first three are the string line of an octave mandolin within 1, 0.8 and 0.5 mm. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3.86e-4 | 1.87e-3 | false | 99.9 %, from 99.8 % as your guesses go",
                "3.15e-3 | 1.42e-2 | false | 99.7 %, from 98.6 % as your guesses go",
                "0.0518 | 0.131 | false | 94.8 %, from 86.9 % as your guesses go",
                "0.0518 | 0.0518 | false | 94.8 %",
                "5e-4 | 9e-4 | false | better than 99.9 %",
                "5e-5 | 9e-5 | false | better than 99.99 %",
                "5e-7 | 9e-6 | false | better than 99.99 %",
                "5e-7 | 9e-6 | true | better than 99.999 %",
                "0 | 0 | true | better than 99.999 %",
                "1e-3 | 1e-3 | true | 99.9 %",
                "0.9999 | 1 | false | below 0.1 %",
                "1 | 1 | false | below 0.1 %",
                "0.5 | 0.6 | false | 50.0 %"
            })
    void toString_hasTheNinesThatAreEarned(double outside, double worse, boolean known, String text) {
        assertThat(Chance.ofOutside(outside, 0, worse, known)).hasToString(text);
    }

    @Test
    void toString_countsTheErrorOfTheChance() {
        assertThat(Chance.ofOutside(0, 1e-4, 0, true)).hasToString("better than 99.9 %");
        assertThat(Chance.ofOutside(0, 0.2, 0, true)).hasToString("80.0 %");
    }

    @Test
    void probability_isTheRest() {
        Chance chance = Chance.ofOutside(0.25, 1e-6, 0.5, false);

        assertThat(chance.probability()).isEqualTo(0.75);
        assertThat(chance.outside()).isEqualTo(0.25);
        assertThat(chance.pessimisticOutside()).isEqualTo(0.5);
        assertThat(chance)
                .isEqualTo(Chance.ofOutside(0.25, 1e-6, 0.5, false))
                .isNotEqualTo(Chance.ofOutside(0.25, 1e-6, 0.5, true));
    }

    @Test
    void ofOutside_refusesWhatIsNoChance() {
        assertThatThrownBy(() -> Chance.ofOutside(1.5, 0, 0, false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("chance outside must be in [0, 1], but was 1.5");
        assertThatThrownBy(() -> Chance.ofOutside(0, 0, Double.NaN, false))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
