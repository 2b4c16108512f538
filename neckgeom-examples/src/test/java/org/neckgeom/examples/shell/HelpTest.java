package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What help() shows is what the shell answers; {@link Approved} says how to take new answers over. */
class HelpTest {

    private static ScriptShell shell;

    private static final Path TOPICS = Path.of("src/main/resources/help");
    private static final String TYPED = "> ";

    static List<String> topics() {
        return Help.topics();
    }

    @BeforeAll
    static void open() throws ScriptFailed {
        shell = TestShell.open();
    }

    @AfterAll
    static void close() {
        shell.close();
    }

    @BeforeEach
    void forget() {
        shell.forget();
    }

    @ParameterizedTest
    @MethodSource("topics")
    void topic_showsWhatTheShellAnswers(String topic) throws Exception {
        Path file = TOPICS.resolve(topic.replace(' ', '-') + ".txt");
        List<String> lines = Files.readAllLines(file);
        List<String> typed =
                lines.stream().filter(line -> line.startsWith(TYPED)).toList();
        StringBuilder said = new StringBuilder(String.join("\n", lines.subList(0, 3))).append('\n');

        for (String line : typed) {
            said.append(line).append('\n');
            said.append(Printed.by(() -> shell.run(topic, line.substring(TYPED.length()))));
        }

        assertThat(said.length())
                .as("something was answered")
                .isGreaterThan(String.join("\n", typed).length() + 120);
        Approved.check(file, said.toString());
    }

    @ParameterizedTest
    @MethodSource("topics")
    void topic_beginsWithAQuestionAndASentenceThatIsTyped(String topic) {
        List<String> lines = Help.topic(topic).lines().toList();

        assertThat(lines.get(0)).endsWith("?");
        assertThat(lines.get(2)).isEmpty();
        assertThat(lines.stream().filter(line -> line.startsWith(TYPED)))
                .as("the sentence in short is one of those typed")
                .anySatisfy(line -> assertThat(line).isEqualTo(TYPED + "println(" + lines.get(1) + ");"));
    }

    @Test
    void topics_haveTheirFilesAndNoFileIsForgotten() throws IOException {
        try (Stream<Path> files = Files.list(TOPICS)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(Help.topics().stream()
                            .map(topic -> topic.replace(' ', '-') + ".txt")
                            .toList());
        }
    }

    @Test
    void screen_fitsOneScreen() {
        List<String> lines = Help.screen().lines().toList();

        assertThat(lines)
                .hasSizeLessThanOrEqualTo(28)
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(120));
        assertThat(Help.topics()).allSatisfy(topic -> assertThat(Help.screen()).contains("\n  " + topic + "  "));
    }

    @Test
    void topic_saysWhatThereIsWhenItIsUnknown() {
        assertThat(Help.topic("colours")).startsWith("There is no help on \"colours\". There is on: units, centring");
        assertThat(Help.topic(" Centring ")).startsWith("Which way does the fence go");
    }

    @Test
    void shell_printsHelp() throws Exception {
        String printed = Printed.by(() -> shell.run("help", "help();\nhelp(\"turned pass\");"));

        assertThat(printed)
                .startsWith("Topics, in the order of work.")
                .contains("How far off, without reading a wall?\n");
    }
}
