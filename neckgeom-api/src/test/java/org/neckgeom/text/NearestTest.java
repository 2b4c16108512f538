package org.neckgeom.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

    private static final List<String> KNOWN = List.of("length", "width", "thickness", "body at fret", "wood", "rod");

    @ParameterizedTest
    @CsvSource({
        "lenght, length",
        "Length, length",
        "body-at-fret, body at fret",
        "body_at_fert, body at fret",
        "thikness, thickness",
        "wdth, width",
        "rods, rod"
    })
    void to_findsTheSlip(String typed, String meant) {
        assertThat(Nearest.to(typed, KNOWN)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"colour", "x", "strings", "heel"})
    void to_doesNotGuess(String typed) {
        assertThat(Nearest.to(typed, KNOWN)).isEmpty();
    }

    /** Distances counted by hand, among them the textbook pair of words (3: two replaced, one added). */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ab, ba, 1", "'', abc, 3", "abc, '', 3", "same, same, 0", "ca, abc, 3"})
    void slips_countsByHand(String a, String b, int expected) {
        assertThat(Nearest.slips(a, b)).isEqualTo(expected);
        assertThat(Nearest.slips(b, a)).isEqualTo(expected);
    }

    @Test
    void to_takesTheFirstOfEquals() {
        assertThat(Nearest.to("heal", List.of("heel", "head"))).contains("heel");
    }
}
