package org.neckgeom.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {

    /** Letters that steer a terminal, end a line, turn the reading direction, or are none: The Unicode Standard, chapter 23. */
    @ParameterizedTest
    @ValueSource(
            ints = {
                0x00, 0x0A, 0x0D, 0x1B, 0x7F, 0x85, 0x9B, 0x2028, 0x2029, 0x202E, 0x2066, 0x200F, 0x061C, 0x200B,
                0xFEFF, 0xD800, 0xDFFF, 0xFFFE, 0xFFFF, 0xFDD0, 0x1FFFE, 0x10FFFF, 0xE0041
            })
    void names_haveNoLetterThatDoesNotPrint(int c) {
        String name = "a" + (c >= 0xD800 && c <= 0xDFFF ? String.valueOf((char) c) : Character.toString(c)) + "b";
        String shown = String.format("a\\u%04xb", c);

        assertThat(Words.isLine(name)).isFalse();
        assertThat(Words.shown(name)).isEqualTo(shown);
        assertThat(Words.quoted(name)).isEqualTo("\"" + shown + "\"");
        assertThatThrownBy(() -> Words.name(name, "a name"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a name must be 1 to 100 characters on one line, but was \"" + shown + "\"");
    }

    /** Latin with accents, Greek, Hebrew, Persian with its joiner, Chinese, and a letter past the first plane. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Octave mandolin, walnut", "Lo\u00ff", "\u03c8", "\u05d2\u05d9\u05d8\u05e8\u05d4",
                "\u0645\u06cc\u200c\u0634\u0648\u062f", "\u7b8f", "\uD83C\uDFB8", "a \u2014 b"
            })
    void names_mayBeOfAnyScript(String name) {
        assertThat(Words.name(name, "a name")).isSameAs(name);
        assertThat(Words.shown(name)).isSameAs(name);
    }

    @Test
    void line_isCutInItsOwnRefusal() {
        assertThatThrownBy(() -> Words.line("x".repeat(51), "a step", 50))
                .hasMessage("a step must be 1 to 50 characters on one line, but was \"" + "x".repeat(50) + "...\"");
        assertThatThrownBy(() -> Words.line(" ", "a step", 50)).hasMessageContaining("but was \" \"");
    }
}
