package org.neckgeom.examples.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Thirty questions as makers and embedders type them: the documentation's own words lead to the answer. */
class QuestionsTest {

    private static final String QUESTIONS = "/site/questions.csv";

    /** As many as one looks at. */
    private static final int LOOKED_AT = 5;

    private static final int PAGES_LOOKED_AT = 3;

    private static DocIndex index;

    @BeforeAll
    static void read() throws IOException {
        index = DocIndex.of(Path.of("../neckgeom-api/src/main/java"), Path.of("../neckgeom-core/src/main/java"));
    }

    @ParameterizedTest
    @CsvFileSource(resources = QUESTIONS, numLinesToSkip = 1)
    void question_isAnsweredByFirstSentences(String question, String term, String answer) {
        assertThat(index.answers(question).stream().limit(LOOKED_AT))
                .as(question)
                .contains(answer);
    }

    @ParameterizedTest
    @CsvFileSource(resources = QUESTIONS, numLinesToSkip = 1)
    void term_isOfferedByTheSearchBox(String question, String term, String answer) {
        assertThat(index.offered(term)).as(term).contains(answer);
    }

    @ParameterizedTest
    @CsvFileSource(resources = QUESTIONS, numLinesToSkip = 1)
    void question_leadsToThePageOfThePackage(String question, String term, String answer) {
        String inPackage = index.entries().stream()
                .filter(entry -> entry.name().equals(answer))
                .findFirst()
                .orElseThrow()
                .inPackage();

        assertThat(index.pagesFor(question).stream().limit(PAGES_LOOKED_AT))
                .as(question)
                .contains(inPackage);
    }

    @Test
    void questions_areThirty() throws IOException {
        try (Stream<String> lines = java.nio.file.Files.lines(Path.of("src/test/resources" + QUESTIONS))) {
            assertThat(lines.skip(1).distinct()).hasSize(30);
        }
    }

    /** What the library does not do has no answer. */
    @ParameterizedTest
    @ValueSource(strings = {"varnish", "carburettor", "soundhole rosette"})
    void whatIsNotThere_isNotFound(String question) {
        assertThat(index.answers(question)).isEmpty();
        assertThat(index.offered(question)).isEmpty();
        assertThat(index.pagesFor(question)).isEqualTo(List.of());
    }
}
