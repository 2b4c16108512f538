package org.neckgeom.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YamlTextTest {

    private final Problems problems = new Problems();

    @Test
    void read_keepsLinesAndPaths() {
        YamlText.Document top = document("# a comment\nname: A neck\n\nblank:\n  length: 640 mm\n  edges: [a, b]\n");

        assertThat(top.plain())
                .isEqualTo(Map.of("name", "A neck", "blank", Map.of("length", "640 mm", "edges", List.of("a", "b"))));
        assertThat(top.place("blank")).isEqualTo(new Place("n.yaml", 4, "blank"));
        assertThat(top.place("blank.length")).isEqualTo(new Place("n.yaml", 5, "blank.length"));
        assertThat(top.place("blank.edges[2]")).isEqualTo(new Place("n.yaml", 6, "blank.edges[2]"));
        assertThat(top.place("blank.width"))
                .as("what is not there stands where its group does")
                .isEqualTo(new Place("n.yaml", 4, "blank.width"));
    }

    @Test
    void read_keepsEveryValueAsTheTextWritten() {
        Map<?, ?> top =
                entries("a: 020\nb: no\nc: '1 3/4 in'\nd: 1e3\ne: ~\nf: \"~\"\ng:\nh: 0x10\ni: 1 3/4 in # wide\n");

        assertThat(top.values().stream().map(Object::toString))
                .containsExactly("020", "no", "1 3/4 in", "1e3", "", "~", "", "0x10", "1 3/4 in");
    }

    @Test
    void read_acceptsAByteOrderMarkAndAYamlDirective() {
        assertThat(entries("\uFEFFname: x\n").keySet()).hasToString("[name]");
        assertThat(entries("%YAML 1.2\n---\nname: x\n").keySet()).hasToString("[name]");
        assertThat(entries("---\nname: x\n...\n").keySet()).hasToString("[name]");
    }

    @Test
    void read_notesADuplicateKeyWithBothLinesAndReadsOn() {
        entries("a: 1\nb:\n  c: 2\n  c: 3\na: 4\n");

        assertThat(problems.inOrder().stream().map(Problem::toString))
                .containsExactly(
                        "n.yaml, line 4: b.c is given twice, on line 3 and on line 4; keep one of them",
                        "n.yaml, line 5: a is given twice, on line 1 and on line 5; keep one of them");
    }

    @Test
    void read_refusesMachineryByName() {
        assertRefused("a: &wide 3 mm\nb: *wide\n", 1, "the anchor &wide is not allowed");
        assertRefused("a: *wide\n", 1, "the alias *wide is not allowed; write the value out");
        assertRefused("a: !!java.lang.Runtime x\n", 1, "the tag tag:yaml.org,2002:java.lang.Runtime is not allowed");
        assertRefused("a: 1\nb: !thing {c: 1}\n", 2, "the tag !thing is not allowed");
        assertRefused("a: 1\n? [b, c]\n: 2\n", 2, "a list or a group is where a key belongs");
        assertRefused("a: 1\n---\nb: 2\n", 2, "a second document starts here");
        assertRefused("%TAG ! tag:x.org:\n---\na: !b 1\n", 3, "the tag tag:x.org:b is not allowed");
    }

    @Test
    void read_refusesWhatIsNotYaml() {
        assertRefused("name: [a\nb: c\n", 2, "is not YAML from here on");
        assertRefused("a:\n\tb: 1\n", 2, "this line has a tab; indent with blanks");
        assertRefused("a: b: c\n", 1, "put quotes round a text that holds a colon");
        assertRefused("PK\u0003\u0004", 0, "is not YAML");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# only a comment\n", "---\n...\n"})
    void read_refusesAnEmptyFile(String text) {
        if (text.startsWith("---")) {
            assertThat(document(text).plain()).isEqualTo("");
        } else {
            assertRefused(text, 0, "the file holds nothing but blanks and comments");
        }
    }

    @Test
    void read_refusesHugeAndDeepFiles() {
        assertRefused("a: " + "x".repeat(YamlText.MOST_CHARACTERS), 0, "more than the 262144 allowed");
        assertRefused("[".repeat(13) + "]".repeat(13), 1, "deeper than the 12 levels allowed");
    }

    @Test
    void read_staysQuickOnHostileText() {
        // The usual bomb: nine lists of ten aliases each would unfold to a thousand million texts.
        StringBuilder bomb = new StringBuilder("a: &a [x,x,x,x,x,x,x,x,x,x]\n");
        for (char c = 'b'; c < 'k'; c++) {
            bomb.append(c).append(": &").append(c).append(" [");
            bomb.append(("*" + (char) (c - 1) + ",").repeat(10)).append("]\n");
        }
        String deep = "[".repeat(200_000);

        for (String hostile : List.of(bomb.toString(), deep, "{".repeat(200_000), "- ".repeat(100_000))) {
            assertTimeoutPreemptively(
                    Duration.ofSeconds(20),
                    () -> assertThatThrownBy(() -> YamlText.read("n.yaml", hostile, problems))
                            .isInstanceOf(FileRefused.class));
        }
    }

    private Map<?, ?> entries(String text) {
        return (Map<?, ?>) document(text).plain();
    }

    private YamlText.Document document(String text) {
        return YamlText.read("n.yaml", text, problems);
    }

    private void assertRefused(String text, int line, String part) {
        assertThatThrownBy(() -> YamlText.read("n.yaml", text, problems))
                .isInstanceOfSatisfying(FileRefused.class, refused -> {
                    assertThat(refused.problems()).hasSize(1);
                    assertThat(refused.problems().get(0).place().line()).isEqualTo(line);
                    assertThat(refused).hasMessageContaining(part).hasMessageStartingWith("n.yaml");
                });
    }
}
