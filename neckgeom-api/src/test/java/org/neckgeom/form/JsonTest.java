package org.neckgeom.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What RFC 8259 allows and forbids; the cases follow its grammar, sections 3 to 7. */
class JsonTest {

    @Test
    void read_takesEveryKindOfValue() {
        Object read = Json.read(" {\"a\": [1, -0.5e+2, true, false, null], \"b\": {\"c\": \"x\"}, \"d\": []}\r\n\t")
                .plain();

        assertEquals(
                Map.of("a", Arrays.asList(1.0, -50.0, true, false, null), "b", Map.of("c", "x"), "d", List.of()), read);
    }

    @Test
    void read_takesEscapes() {
        assertEquals(
                "\" \\ / \b \f \n \r \t \u00e9 \uD83C\uDFB8",
                Json.read("\"\\\" \\\\ \\/ \\b \\f \\n \\r \\t \\u00E9 \\ud83c\\udfb8\"")
                        .plain());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "{",
                "[",
                "[1,]",
                "{\"a\":1,}",
                "{a:1}",
                "{\"a\" 1}",
                "[1 2]",
                "01",
                "1.",
                ".5",
                "+1",
                "1e",
                "NaN",
                "Infinity",
                "tru",
                "nul",
                "'a'",
                "\"a",
                "\"\\x\"",
                "\"\\u12g4\"",
                "\"a\nb\"",
                "1 2",
                "[1]]",
                "{\"a\":1 \"b\":2}",
                "-"
            })
    void read_refusesWhatTheGrammarRefuses(String text) {
        String message = assertThrows(IllegalArgumentException.class, () -> Json.read(text))
                .getMessage();

        assertTrue(message.startsWith("JSON must have ") && message.contains("at line "), message);
    }

    @Test
    void read_refusesANameToldTwice_andTooDeepNesting() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Json.read("{\"a\":1,\"a\":2}"))
                .getMessage()
                .contains("\"a\" once only"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Json.read("[".repeat(100_000)))
                .getMessage()
                .contains("no more than 100 levels"));
    }

    @ParameterizedTest
    @CsvSource({"'[1,\n  x]', 2, 3", "'{\"a\":\n\n\"b}', 3, 4"})
    void read_saysWhere(String text, int line, int column) {
        String message = assertThrows(IllegalArgumentException.class, () -> Json.read(text))
                .getMessage();

        assertTrue(message.contains("at line " + line + ", column " + column), message);
    }

    @Test
    void of_writesWhatReadReads() {
        Map<String, Object> odd =
                Map.of("<b>&\"\\", List.of("\u0000\n\u2028\uD83C\uDFB8", 0.1, true, Map.of(), List.of()));

        assertEquals(odd, Json.read(Json.of(odd)).plain());
    }
}
