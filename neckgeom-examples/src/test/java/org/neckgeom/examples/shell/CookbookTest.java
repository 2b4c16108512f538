package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.examples.neck.ShippedNecks;

/**
 * The examples' README: every question is typed again, and its answer compared.
 *
 * <p>{@code -Dneckgeom.approve=true} takes the new answers over; see {@link Approved}.
 */
class CookbookTest {

    private static final Path COOKBOOK = Path.of("README.md");
    private static final Pattern BENCH =
            Pattern.compile("## What is on the bench\n\n```java\n(.*?)```", Pattern.DOTALL);
    private static final Pattern ENTRY = Pattern.compile(
            "### (\\d+\\. [^\n]*\\?)\n\n```java\n(.*?)```\n\nprints\n\n```text\n(.*?)```\n\n(.*?)\n(?=\n#|\\z)",
            Pattern.DOTALL);

    private static ScriptShell shell;

    /** A question with what is typed, what is answered, and what is said about it. */
    private record Entry(String question, String typed, String answered, String about) {
        @Override
        public String toString() {
            return question;
        }
    }

    @BeforeAll
    static void layOutTheBench() throws Exception {
        shell = TestShell.open();
        Matcher bench = BENCH.matcher(TestShell.read(COOKBOOK));
        assertThat(bench.find()).isTrue();
        shell.run("README.md", bench.group(1));
        shell.keep();
    }

    @AfterAll
    static void close() {
        shell.close();
    }

    static Stream<Entry> entries() {
        return ENTRY.matcher(TestShell.read(COOKBOOK))
                .results()
                .map(found -> new Entry(found.group(1), found.group(2), found.group(3), found.group(4)));
    }

    @Test
    void cookbook_hasItsQuestionsInOrder() {
        List<String> numbers =
                entries().map(entry -> entry.question().split("\\.")[0]).toList();
        List<String> wanted = new ArrayList<>();
        for (int i = 1; i <= 49; i++) {
            wanted.add(Integer.toString(i));
        }

        assertThat(numbers).isEqualTo(wanted);
        assertThat(TestShell.read(COOKBOOK).split("```text", -1))
                .as("no block is left out")
                .hasSize(50);
    }

    @ParameterizedTest
    @MethodSource("entries")
    void entry_isAnsweredAsItSays(Entry entry) throws Exception {
        shell.forget();

        String printed = Printed.by(() -> shell.run("README.md, " + entry.question(), entry.typed()));

        assertThat(printed).isNotBlank().doesNotContain("```");
        assertThat(entry.about()).containsPattern("(?m)^(Formula|Method|Assumes|Source): ");
        String whole = TestShell.read(COOKBOOK);
        String before = entry.typed() + "```\n\nprints\n\n```text\n" + entry.answered() + "```";
        String after = entry.typed() + "```\n\nprints\n\n```text\n" + printed + "```";
        assertThat(whole).contains(before);
        Approved.check(COOKBOOK, whole.replace(before, after));
    }

    @Test
    void commands_namedInTheCookbookAreThere() {
        String whole = TestShell.read(COOKBOOK);

        assertThat(whole).contains("--check my-neck.yaml", "--html plan.html --pdf templates.pdf");
        assertThat(whole).contains("`src/main/necks`", "`src/main/necks/neck.schema.json`");
        assertThat(Path.of("src/main/necks/neck.schema.json")).exists();
        for (String neck : ShippedNecks.names()) {
            assertThat(whole).contains("`" + neck + "`");
            assertThat(Path.of("src/main/necks", neck)).exists();
        }
    }
}
