package org.neckgeom.form;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.neckgeom.units.LengthStyle;

/** A sentence with facts: the one that it begins with, and the words after it. */
class StatementTest {

    private static Statement words(String words) {
        return Statement.of("fence-place", words, LengthStyle.MILLIMETRES);
    }

    @Test
    void lead_isTheFactThatTheWordsBeginWith() {
        Statement fence = words("{place}, from the fence").with("place", Kind.MM, 27.5);

        assertThat(fence.lead().orElseThrow()).hasToString("27.5 mm");
        assertThat(fence.afterLead().orElseThrow()).hasToString("from the fence");
        assertThat(fence.code()).isEqualTo("fence-place");
        assertThat(fence.hasFacts()).isTrue();
    }

    @Test
    void lead_isNothingWhereTheWordsBeginWithAWord() {
        Statement far = words("so far as {place}").with("place", Kind.MM, 27.5);

        assertThat(far.lead()).isEmpty();
        assertThat(far.afterLead().orElseThrow()).hasToString("so far as 27.5 mm");
        assertThat(words("as it is").lead()).isEmpty();
        assertThat(words("as it is").hasFacts()).isFalse();
    }

    @Test
    void afterLead_isNothingWhereTheWordsEnd() {
        assertThat(words("{place}").with("place", Kind.MM, 27.5).afterLead()).isEmpty();
        assertThat(words("{place} wide")
                        .with("place", Kind.MM, 27.5)
                        .afterLead()
                        .orElseThrow())
                .hasToString("wide");
    }
}
