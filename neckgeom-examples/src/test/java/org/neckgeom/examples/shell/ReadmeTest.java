package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.template.Cards;
import org.neckgeom.template.Paper;

/** What the README says that the shell prints is what it prints. */
class ReadmeTest {

    private static final Pattern EXAMPLE =
            Pattern.compile("```java\n(.*?)```\\s+prints\\s+```text\n(.*?)```", Pattern.DOTALL);

    @ParameterizedTest
    @CsvSource({"../README.md, 2", "../neckgeom-core/README.md, 1"})
    void examples_printWhatTheReadmeStates(Path readme, int count) throws Exception {
        Matcher example = EXAMPLE.matcher(TestShell.read(readme));
        int examples = 0;
        while (example.find()) {
            examples++;
            String typed = example.group(1);
            String printed = Printed.by(() -> {
                try (ScriptShell shell = TestShell.open()) {
                    assertThat(shell.run("README.md", typed)).isZero();
                }
            });

            assertThat(printed).isEqualTo(example.group(2));
        }
        assertThat(examples).as("examples with their output in %s", readme).isEqualTo(count);
    }

    @Test
    void readme_isShort() {
        assertThat(TestShell.read(Path.of("../README.md")).lines().count()).isLessThanOrEqualTo(130);
        assertThat(TestShell.read(Path.of("../DEVELOPERS.md")).lines().count()).isLessThanOrEqualTo(200);
    }

    @Test
    void commands_areThoseOfTheBuild() {
        String readme = TestShell.read(Path.of("../README.md"));

        assertThat(readme).contains("    mvn -q compile exec:java\n").contains("    mvn -B -ntp verify\n");
        assertThat(TestShell.read(Path.of("../.ci/run"))).contains("mvn -B -ntp verify");
    }

    /** The picture of a card in the README is the sheet that has the channel's card, as {@code --cards} writes it. */
    @Test
    void card_isTheOneThatIsPrinted() throws Exception {
        String picture = "neckgeom-examples/src/main/resources/pictures/channel-card.svg";
        String sheets = Cards.of(NeckFile.read(ShippedNecks.DEFAULT)).toPages(Paper.A4);
        Matcher sheet = Pattern.compile("<svg .*?</svg>", Pattern.DOTALL).matcher(sheets);
        String channel = sheet.results()
                .map(MatchResult::group)
                .filter(one -> one.contains("CUT ROD CHANNEL"))
                .findFirst()
                .orElseThrow();

        assertThat(TestShell.read(Path.of("../README.md"))).contains("](" + picture + ")");
        Approved.check(Path.of("..").resolve(picture), channel + "\n");
    }
}
