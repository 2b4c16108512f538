package org.neckgeom.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.fault.Refusal;

/** Mutants of a plan's data: each is read as a design or refused in a sentence. */
@Tag("long")
class PlanDataFuzzTest {

    private static final int MUTANTS = Integer.getInteger("neckgeom.mutants", 5_000);
    private static final Duration HANGS = Duration.ofMinutes(5).plusMillis(20L * MUTANTS);
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    private static final Pattern WORD = Pattern.compile("\"[A-Za-z ]+\"");
    private static final Pattern MACHINE_WORDS = Pattern.compile("\\bjava\\.|org\\.neckgeom|Exception|Optional\\[");
    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "-1",
            "1e999",
            "-1e999",
            "1e308",
            "1e-320",
            "NaN",
            "Infinity",
            "01",
            "1.",
            ".5",
            "+1",
            "0x1",
            "1e",
            "null",
            "true",
            "\"5\"",
            "[]",
            "{}",
            "9".repeat(400));
    private static final List<String> PIECES = List.of(
            ",",
            "{",
            "}",
            "[",
            "]",
            "\"",
            ":",
            "\\u",
            "\\ud800",
            "\u0000",
            "\n",
            "\t",
            "\uFEFF",
            "//",
            "null",
            "NaN",
            "é",
            "{\"unit\":\"mm\"}",
            "\"unit\":\"furlong\",",
            "\"value\":1,");

    private int accepted;

    @Test
    void designFrom_acceptsOrRefusesEveryMutantInASentence() {
        String whole = Document.PLAN.json(Necks.octavePlan());
        String design = whole.substring(0, whole.indexOf("\n", whole.indexOf("\"strings\"")));
        List<String> faults = assertTimeoutPreemptively(HANGS, () -> faults(whole, design.length()));

        System.out.println("designs: " + MUTANTS + " mutants, " + accepted + " accepted");
        assertThat(faults.stream().limit(20)).isEmpty();
        assertThat(accepted).isBetween(MUTANTS / 50, MUTANTS - MUTANTS / 5);
    }

    private List<String> faults(String whole, int designEnd) {
        List<String> faults = new ArrayList<>();
        for (int seed = 0; seed < MUTANTS; seed++) {
            String mutant = mutant(whole, designEnd, new SplittableRandom(seed));
            try {
                Document.PLAN.read(mutant).neckAsGiven().toString();
                accepted++;
            } catch (IllegalArgumentException | ArithmeticException e) {
                String message = e.getMessage();
                if (message == null
                        || message.split(" ").length < 4
                        || message.length() > 1_000
                        || MACHINE_WORDS.matcher(message).find()) {
                    faults.add("seed " + seed + ": not a sentence: " + e);
                }
            } catch (RuntimeException | StackOverflowError e) {
                faults.add("seed " + seed + ": threw " + e);
            }
        }
        return faults;
    }

    /** Most changes hit the part that is read back, as the rest is only parsed. */
    private static String mutant(String text, int designEnd, SplittableRandom random) {
        int at = random.nextInt(random.nextInt(4) == 0 ? text.length() : designEnd);
        return switch (random.nextInt(7)) {
            case 0, 1 -> replaced(text, NUMBER, NUMBERS.get(random.nextInt(NUMBERS.size())), at);
            case 2 ->
                replaced(
                        text,
                        WORD,
                        WORD.matcher(text)
                                .results()
                                .skip(random.nextInt(60))
                                .findFirst()
                                .map(MatchResult::group)
                                .orElse("\"x\""),
                        at);
            case 3 -> text.substring(0, at) + PIECES.get(random.nextInt(PIECES.size())) + text.substring(at);
            case 4 -> text.substring(0, at) + (char) random.nextInt(0, 65_536) + text.substring(at + 1);
            case 5 -> withoutALine(text, at);
            default -> text.substring(0, at);
        };
    }

    private static String replaced(String text, Pattern what, String by, int from) {
        var matcher = what.matcher(text);
        return matcher.find(from) ? text.substring(0, matcher.start()) + by + text.substring(matcher.end()) : text;
    }

    private static String withoutALine(String text, int at) {
        int start = text.lastIndexOf('\n', at) + 1;
        int end = text.indexOf('\n', at);
        return end < 0 ? text : text.substring(0, start) + text.substring(end + 1);
    }

    @Test
    void designFrom_refusesWhatIsMeantToHurt() {
        for (String hostile : List.of(
                "[".repeat(1_000_000),
                "{\"a\":".repeat(1_000_000),
                "\"" + "x".repeat(5_000_000),
                "9".repeat(1_000_000),
                "{" + "\"a\":1,".repeat(200_000) + "}",
                "\"" + "\\u0041".repeat(300_000),
                "")) {
            assertTimeoutPreemptively(
                    HANGS,
                    () -> assertThatThrownBy(() -> Document.PLAN.read(hostile).neckAsGiven())
                            .isExactlyInstanceOf(Refusal.class)
                            .satisfies(e -> assertThat(e.getMessage().length()).isLessThan(1_000)));
        }
    }
}
