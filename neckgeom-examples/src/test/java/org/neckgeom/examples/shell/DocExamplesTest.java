package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every piece of code on the documentation's pages, {@code <pre>{@code ...}</pre>}, runs and prints what stands below it.
 *
 * <p>{@code -Dneckgeom.approve=true} takes the new answers over; see {@link Approved}.
 */
class DocExamplesTest {

    private static final Path OVERVIEW = Path.of("src/main/javadoc/overview.html");
    private static final List<Path> SOURCES =
            List.of(Path.of("../neckgeom-api/src/main/java"), Path.of("../neckgeom-core/src/main/java"));

    /** Code, and what it prints; each line may begin with the star of a comment. */
    private static final Pattern EXAMPLE = Pattern.compile(
            "<pre>\\{@code\n(.*?)(?: \\* |)}</pre>\n(?: \\*|)\n(?: \\* |)<p>prints\n(?: \\*|)\n(?: \\* |)"
                    + "<pre>\\{@code\n(.*?)(?: \\* |)}</pre>\n",
            Pattern.DOTALL);

    private static ScriptShell shell;

    @BeforeAll
    static void open() throws ScriptFailed {
        shell = TestShell.open();
    }

    @AfterAll
    static void close() {
        shell.close();
    }

    /** The pages that have code on them; the overview last, as its own imports are forgotten with it. */
    static List<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>();
        for (Path root : SOURCES) {
            try (Stream<Path> files = Files.walk(root)) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .filter(file -> TestShell.read(file).contains("<pre>{@code"))
                        .sorted()
                        .forEach(pages::add);
            }
        }
        pages.add(OVERVIEW);
        return pages;
    }

    @Test
    void pages_areThoseOfAllTopics() throws IOException {
        List<String> names = pages().stream()
                .map(page -> page.getName(page.getNameCount() - 2).toString())
                .toList();

        assertThat(names)
                .contains("javadoc", "units", "measure", "shop", "stock", "neck")
                .contains(
                        "board",
                        "head",
                        "heel",
                        "solid",
                        "channel",
                        "strength",
                        "budget",
                        "sweep",
                        "order",
                        "plan",
                        "template",
                        "page");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void examples_printWhatThePageSays(Path page) throws Exception {
        String whole = TestShell.read(page);
        String answered = whole;
        List<MatchResult> examples = EXAMPLE.matcher(whole).results().toList();
        assertThat(whole.split("<pre>\\{@code\n", -1))
                .as("every code stands over what it prints, in %s", page)
                .hasSize(2 * examples.size() + 1);
        shell.forget();
        for (MatchResult example : examples) {
            String star = example.group(1).startsWith(" *") ? " * " : "";
            String printed = Printed.by(() -> shell.run(page.toString(), withoutStars(example.group(1))));
            assertThat(printed).as("what %s prints", page).isNotBlank();
            String after = printed.lines()
                    .map(line -> (star + line).stripTrailing() + "\n")
                    .reduce("", String::concat);
            int at = answered.indexOf(example.group()) + example.start(2) - example.start();
            answered = answered.substring(0, at)
                    + after
                    + answered.substring(at + example.group(2).length());
        }
        if (!answered.equals(whole)) {
            Approved.check(page, answered);
        }
    }

    private static String withoutStars(String text) {
        return text.replaceAll("(?m)^ \\* ?", "");
    }
}
