package org.neckgeom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** An answer is facts; its text is for people, and no code looks into it. What is looked into is listed here. */
class TextReadBackTest {

    /** A string asked for words, or taken apart at some. A set of names asked for one looks the same: ask by a constant. */
    private static final Pattern LOOK_INSIDE =
            Pattern.compile("\\.(matches|contains|replace|replaceAll|replaceFirst|startsWith|endsWith|split)\\(\\s*\"");

    /** Where that is right: how often, and why. */
    private static final Map<String, Integer> ALLOWED = Map.ofEntries(
            Map.entry("neck/StringSet", 1), // reads a pitch that a user wrote
            Map.entry("form/Csv", 1), // escapes quotes in a cell
            Map.entry("form/JsonReader", 2), // reads JSON that came from outside
            Map.entry("form/Way", 2), // reads the words in braces while the class loads
            Map.entry("stock/WoodTable", 1), // looks up a wood by a name that a user gave
            Map.entry("table/Faults", 1), // puts what a user wrote on one line
            Map.entry("table/Branch", 2), // parts the path of a key that has moved
            Map.entry("table/QuantityType", 1), // finds the unit of its own lossless text
            Map.entry("text/Report", 1), // indents further lines
            Map.entry("units/AmountText", 4), // counts the digits of a number
            Map.entry("units/ShopUnits", 7), // reads a quantity that a user wrote
            Map.entry("page/Sheet", 1), // escapes quotes in a cell
            Map.entry("page/Version1", 1), // writes a code of an old document in words
            Map.entry("page/Style", 1), // puts colours into the style sheet
            Map.entry("form/Statement", 2), // parts a sentence behind its first brace
            Map.entry("plan/BenchCard", 1), // the ways in which braces print
            Map.entry("plan/BenchSession", 2), // reads a line that a maker typed
            Map.entry("plan/BenchSettings", 4), // the ways in which braces print; makes a code of a key
            Map.entry("plan/Clearance", 1), // the way in which one brace prints
            Map.entry("plan/ShopDigits", 2), // the ways in which braces print
            Map.entry("plan/SpareParts", 2), // the ways in which braces print
            Map.entry("plan/NeckFeature", 1)); // makes a key of a constant's name

    @Test
    void code_looksIntoTextOnlyWhereListed() throws IOException {
        Map<String, Integer> found = new TreeMap<>();
        for (String module : List.of("neckgeom-api", "neckgeom-core")) {
            Path root = Path.of("..", module, "src", "main", "java", "org", "neckgeom");
            for (Path file : sources(root)) {
                int count = looks(Files.readString(file));
                if (count > 0) {
                    String name = root.relativize(file).toString().replace('\\', '/');
                    found.put(name.substring(0, name.length() - ".java".length()), count);
                }
            }
        }

        assertThat(found).isEqualTo(new TreeMap<>(ALLOWED));
    }

    private static List<Path> sources(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java")).collect(Collectors.toList());
        }
    }

    private static int looks(String source) {
        return (int) LOOK_INSIDE.matcher(source).results().count();
    }

    @Test
    void rule_seesALookIntoText() {
        assertThat(looks("if (answer.toString().startsWith(\"within\")) {")).isEqualTo(1);
        assertThat(looks("for (String line : value.split(\"\\n\", -1)) {\n text.matches(\n    \"a|b\")"))
                .isEqualTo(2);
        assertThat(looks("known.contains(name) || text.replace('_', ' ')")).isZero();
    }
}
