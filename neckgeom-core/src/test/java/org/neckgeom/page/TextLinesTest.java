package org.neckgeom.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextLinesTest {

    private static String wrapped(String lead, String sentence) {
        return new TextLines().wrapped(lead, sentence).toString();
    }

    /** 80 columns: 5 of indent and 75 of the word. */
    @Test
    void wrapped_partsAWordLongerThanALine() {
        assertThat(wrapped("   * ", "see " + "x".repeat(160) + " end"))
                .isEqualTo("   * see\n     " + "x".repeat(75) + "\n     " + "x".repeat(75) + "\n     " + "x".repeat(10)
                        + " end\n");
    }

    /** A word that has room on a line of its own goes there whole. */
    @Test
    void wrapped_keepsAWordWholeBesideALongLead() {
        String lead = "l".repeat(60);

        assertThat(wrapped(lead, "w".repeat(36))).isEqualTo(lead + "\n" + " ".repeat(44) + "w".repeat(36) + "\n");
        assertThat(wrapped("l".repeat(90), "w")).isEqualTo("l".repeat(90) + "\n" + " ".repeat(44) + "w\n");
    }

    /** A letter of two code units stays whole: 79 columns of single ones leave no room for it. */
    @Test
    void wrapped_partsNoLetter() {
        String clef = "\uD834\uDD1E";

        assertThat(wrapped("", "x".repeat(79) + clef + "y")).isEqualTo("x".repeat(79) + "\n" + clef + "y\n");
    }
}
