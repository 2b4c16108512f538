package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The words of the library: comments, Javadoc and texts of {@code src/main} of all three modules, and every Markdown file, have
 * no banned word and have the words that a maker or a metrologist searches.
 */
class WordsTest {

    private static final Path ROOT = Path.of("..");

    private static final List<String> MODULES = List.of("neckgeom-api", "neckgeom-core", "neckgeom-examples");

    /** Words of earlier versions that a neck file may still have; only the table that reads one may write it, as a whole text. */
    private static final Map<String, String> STILL_READ =
            Map.of("\"anywhere alike\"", "neckgeom-core/src/main/java/org/neckgeom/budget/SpreadKeys.java");

    /** A banned word; not after a dot, where it is part of a name. */
    private static final Pattern BANNED = Pattern.compile(
            "(?<![.\\w])(?:"
                    + Stream.of(
                                    "told|untold|tells?|telling|says|said|reckon\\w*|alike|whatever|nobody|lives",
                                    "go(?:es)? into|stands(?! proud)|comes? out|what it|nothing in the way",
                                    "makes? no sense|that much|good for|out of it")
                            .collect(Collectors.joining("|"))
                            .replace(" ", "\\s+")
                    + ")(?!\\w)",
            Pattern.CASE_INSENSITIVE);

    /** What a text may be: a comment, a text block, a string or a character, each read whole. */
    private static final Pattern TOKEN = Pattern.compile(
            "/\\*.*?\\*/|//[^\\n]*|\"\"\".*?\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"|'(?:[^'\\\\\\n]|\\\\.)+'",
            Pattern.DOTALL);

    /** Names in a comment. */
    private static final Pattern LINK = Pattern.compile("\\{@link(?:plain)?\\s+[^\\s}]*");

    /** Between two words of one sentence: the margin of a comment, the seam of two literals. */
    private static final Pattern SEAM = Pattern.compile("\\n\\s*(?:\\*(?!/)|//)|\"\\s*\\+\\s*\"");

    private static final List<String> TEXTS = List.of(".java", ".html", ".jsh", ".txt", ".yaml", ".json", ".md");

    /** Each file by its name, as it is written. */
    private static final Map<String, String> FILES = new TreeMap<>();

    /** All comments, texts and Markdown in small letters, a blank between two words. */
    private static String allText;

    @BeforeAll
    static void read() throws IOException {
        for (Path file : files()) {
            FILES.put(name(file), Files.readString(file));
        }
        allText = FILES.entrySet().stream()
                .map(file -> text(file.getValue(), isJava(file.getKey())))
                .collect(Collectors.joining(" "))
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT);
    }

    @Test
    void noBannedWord_isUsed() {
        List<String> faults = new ArrayList<>();
        FILES.forEach((name, source) ->
                banned(withoutStillRead(name, source), isJava(name)).forEach(fault -> faults.add(name + ":" + fault)));

        assertThat(faults).isEmpty();
    }

    @Test
    void everyWordStillRead_isWrittenWhereItIsRead() {
        STILL_READ.forEach((text, name) -> assertThat(FILES.get(name)).contains(text));
    }

    private static String withoutStillRead(String name, String source) {
        String rest = source;
        for (Map.Entry<String, String> word : STILL_READ.entrySet()) {
            rest = word.getValue().equals(name)
                    ? rest.replace(word.getKey(), " ".repeat(word.getKey().length()))
                    : rest;
        }
        return rest;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                // the trade's words
                "headstock",
                "peghead",
                "fretboard",
                "wings (ears)",
                "truss rod",
                "truss rod channel",
                "scarf joint",
                "splice",
                "break angle",
                "break line",
                "nut width",
                "nut line",
                "nut ledge",
                "neck blank",
                "cutting list",
                "neck profile",
                "neck angle",
                "neck set",
                "neck reset",
                "overstand",
                "heel block",
                "mating face",
                "neck pocket",
                "tuner post",
                "fret position",
                "fret spacing",
                "scale length",
                "fanned frets",
                "multi-scale",
                "perpendicular fret",
                "compound radius",
                "string spacing",
                "edge margin",
                "fillet",
                "stick-out",
                "side clearance",
                "router bit",
                "chip load",
                "fence move",
                "stop block",
                "feeler gauge",
                "test piece",
                "trial cut",
                "near wall",
                "far wall",
                "slot offset",
                "action",
                "relief",
                "back-bow",
                "fret sprout",
                "string tension",
                "order of work",
                "cut sheet",
                "full-size template",
                // the standards' words
                "tolerance stack-up",
                "error budget",
                "uncertainty budget",
                "sensitivity coefficient",
                "variance share",
                "worst case",
                "monte carlo",
                "standard uncertainty",
                "repeatability",
                "half-width",
                "degrees of freedom",
                "coverage interval",
                "95 % interval",
                "measured value",
                "error distribution",
                "tolerance limits",
                "conformance probability",
                "guard band",
                "yield",
                "closure",
                "misclosure",
                "outlier",
                "equilibrium moisture content",
                "parameter study"
            })
    void wordThatIsSearched_isFound(String word) {
        assertThat(allText.contains(word.toLowerCase(Locale.ROOT)))
                .as("whether \"%s\" is found in comments, texts or Markdown", word)
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "`/** Unless told. */ int a;`, 1: told",
                "`int a;\n\n// what\n// it does`, 3: what it",
                "`String s = \"stands\";`, 1: stands",
                "`String s = \"it comes \"\n    + \"out round\";`, 1: comes out",
                "`/**\n * It is what\n * it is. */`, 2: what it",
                "`String s = \"\"\"\n    one\n    he says so\n    \"\"\";`, 3: says"
            })
    void aBannedWord_isSeenInCommentAndText_withItsLine(String source, String fault) {
        assertThat(banned(source, true)).containsExactly(fault);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "boolean alike = told(says);",
                "/** The head stands proud by 2 mm. */",
                "/** {@link Plan#told() the plan}, see {@code plan.Told}. */",
                "char c = '\"'; int told; char d = '\"';",
                "/** Foretold, standstill. */"
            })
    void aName_orAnotherWord_isNoBannedWord(String source) {
        assertThat(banned(source, true)).isEmpty();
    }

    /** Line and word of each banned word, in order. */
    private static List<String> banned(String source, boolean isJava) {
        List<String> faults = new ArrayList<>();
        Matcher found = BANNED.matcher(text(source, isJava));
        while (found.find()) {
            long line = 1
                    + source.substring(0, found.start())
                            .chars()
                            .filter(c -> c == '\n')
                            .count();
            faults.add(line + ": " + found.group().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT));
        }
        return faults;
    }

    /** The comments and texts of a source, blanks in place of all else, so that every word keeps its place. */
    private static String text(String source, boolean isJava) {
        if (!isJava) {
            return source;
        }
        StringBuilder text = new StringBuilder();
        Matcher token = TOKEN.matcher(source);
        while (token.find()) {
            blank(source, text.length(), token.start(), text);
            text.append(token.group());
        }
        blank(source, text.length(), source.length(), text);
        for (Pattern joint : List.of(LINK, SEAM)) {
            Matcher found = joint.matcher(text.toString());
            while (found.find()) {
                text.replace(found.start(), found.end(), " ".repeat(found.end() - found.start()));
            }
        }
        return text.toString();
    }

    private static void blank(String source, int from, int to, StringBuilder text) {
        source.substring(from, to)
                .chars()
                .forEach(c -> text.append(c == '"' || c == '+' || c == '\n' ? (char) c : ' '));
    }

    private static List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>(markdown(ROOT));
        for (String module : MODULES) {
            files.addAll(markdown(ROOT.resolve(module)));
            try (Stream<Path> main = Files.walk(ROOT.resolve(module).resolve("src/main"))) {
                main.filter(file -> TEXTS.stream().anyMatch(name(file)::endsWith))
                        .forEach(files::add);
            }
        }
        return files.stream().sorted().toList();
    }

    private static List<Path> markdown(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> name(file).endsWith(".md")).toList();
        }
    }

    private static boolean isJava(String name) {
        return name.endsWith(".java");
    }

    private static String name(Path file) {
        return ROOT.relativize(file).toString().replace('\\', '/');
    }
}
