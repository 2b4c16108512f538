package org.neckgeom.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Names, lists of names, and the guess at a name misspelt. */
class NamesTest {

    @Test
    void checked_takesFiftyCharactersOnOneLine() {
        assertThat(Names.checked("  cut the slot ", "a name")).isEqualTo("cut the slot");
        assertThat(Names.checked("x".repeat(50), "a name")).hasSize(50);
        assertThat(Names.sentence("x".repeat(100), "a reason")).hasSize(100);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Names.checked("x".repeat(51), "a name"))
                .withMessage("a name must be 1 to 50 characters on one line, but was \"" + "x".repeat(50) + "...\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Names.sentence("x".repeat(101), "a reason"))
                .withMessageStartingWith("a reason must be 1 to 100 characters");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Names.checked("   ", "a name"))
                .withMessage("a name must be 1 to 50 characters on one line, but was \"   \"");
        assertThatIllegalArgumentException().isThrownBy(() -> Names.checked("two\nlines", "a name"));
    }

    @Test
    void code_isLettersAndDigitsWithHyphens() {
        assertThat(Names.code("cut rod channel")).isEqualTo("cut-rod-channel");
        assertThat(Names.code("fingerboard's parallel edges")).isEqualTo("fingerboards-parallel-edges");
        assertThat(Names.code("(Saw 2 slots, then glue)")).isEqualTo("saw-2-slots-then-glue");
        assertThat(Names.code("\u00d6l auftragen")).isEqualTo("\u00f6l-auftragen");
        assertThat(Names.code("***")).isEqualTo("***");
        assertThatNullPointerException().isThrownBy(() -> Names.code(null));
    }

    /** Letters put in, left out or changed: up to four are a slip, the fewest win. */
    @Test
    void unknown_guessesTheNearestOfSeveral() {
        List<String> known = List.of("glue wings", "glue head", "cut scarf");

        assertThat(Names.unknown("glue wing", "operation", known)).hasMessageEndingWith("did you mean \"glue wings\"?");
        assertThat(Names.unknown("glue hat", "operation", known)).hasMessageEndingWith("did you mean \"glue head\"?");
        assertThat(Names.unknown("cutscraf", "operation", known)).hasMessageEndingWith("did you mean \"cut scarf\"?");
        assertThat(Names.unknown("cut scarfabcd", "operation", known)).hasMessageContaining("did you mean");
        assertThat(Names.unknown("cut scarfabcde", "operation", known).getMessage())
                .doesNotContain("did you mean");
        assertThat(Names.unknown("", "operation", List.of("abcd"))).hasMessageContaining("did you mean");
        assertThat(Names.unknown("", "operation", List.of("abcde")).getMessage())
                .doesNotContain("did you mean");
        assertThat(Names.unknown("b", "operation", List.of("c", "a"))).hasMessageEndingWith("did you mean \"a\"?");
    }

    @Test
    void phrase_joinsWithCommasAndAnd() {
        assertThat(Names.phrase(List.of())).isEmpty();
        assertThat(Names.phrase(List.of("a"))).isEqualTo("a");
        assertThat(Names.phrase(List.of("a", "b"))).isEqualTo("a and b");
        assertThat(Names.phrase(List.of("a", "b", "c"))).isEqualTo("a, b and c");
    }

    @Test
    void shortList_countsWhatDoesNotFit() {
        assertThat(Names.shortList(List.of())).isEmpty();
        assertThat(Names.shortList(List.of("a", "b", "c"))).isEqualTo("a, b, c");
        // 2 of 40 and a comma make 82; with the third there would be 122 of 120 characters.
        assertThat(Names.shortList(Collections.nCopies(4, "x".repeat(40))))
                .isEqualTo("x".repeat(40) + ", " + "x".repeat(40) + " and 2 more");
        assertThat(Names.shortList(List.of("x".repeat(58), "y".repeat(62)))).doesNotContain("more");
        assertThat(Names.shortList(List.of("x".repeat(58), "y".repeat(63)))).endsWith(" and 1 more");
    }

    @Test
    void all_namesTheListThatHasAHole() {
        assertThat(Names.all(List.of(1, 2), "row")).containsExactly(1, 2);
        assertThat(Names.all(new Integer[] {1, 2}, "row")).containsExactly(1, 2);
        assertThatNullPointerException()
                .isThrownBy(() -> Names.all(Arrays.asList(1, null), "row"))
                .withMessage("row");
    }
}
