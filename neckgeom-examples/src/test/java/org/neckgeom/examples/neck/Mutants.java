package org.neckgeom.examples.neck;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts a slip of the hand, a broken disk or a hostile one could make of a neck file. */
final class Mutants {

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    private static final Pattern UNIT = Pattern.compile("(?<=[0-9] )(mm|in|deg|thou|N|%|rpm|mm/min|degC|Hz)\\b");
    private static final Pattern KEY = Pattern.compile("(?m)^ *([a-z][a-z ]*)(?=:)");
    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "-1",
            "1e999",
            "1e308",
            "-1e308",
            "1e-320",
            "NaN",
            ".inf",
            "1,5",
            "1_000",
            "0x10",
            "1 3/4",
            "3/0",
            "00",
            "1e9",
            "1e-12",
            "999999999999999999999",
            "+5",
            "5.",
            ".5",
            "½",
            "٣",
            "1/3",
            "--1",
            "1 2 3");
    private static final List<String> UNITS = List.of(
            "mm", "in", "deg", "thou", "N", "lbf", "%", "rpm", "Hz", "degC", "K", "m", "ft", "rad", "", "furlong", "MM",
            "″", "mm mm");
    private static final List<String> PIECES = List.of(
            "\t",
            "\u0000",
            "\uFEFF",
            "\u2028",
            "\u0085",
            "\r",
            "\r\n",
            "é",
            "𝄞",
            "\uD800",
            "日本",
            "\u202E",
            "'",
            "\"",
            "{",
            "}",
            "[",
            "]",
            "&a ",
            "*a",
            "!!str ",
            "!x ",
            "<<: *a\n",
            "<<: {name: x}\n",
            "---\n",
            "...\n",
            "%YAML 1.1\n",
            "%TAG ! x:\n",
            "? ",
            ": ",
            "- ",
            "|\n",
            ">\n",
            "# ",
            "~",
            "null",
            "yes",
            "@",
            "`",
            ",",
            "\n",
            "  ",
            "a: b: c",
            "[[[[[[[[[[[[[[[[",
            "{a: {a: {a: {a: {a: {a: {a: {a: {a: {a: {a: {a: {a: 1}}}}}}}}}}}}}",
            "\u00A0",
            "\\",
            "\u007F",
            "\u001B[31m");

    private Mutants() {}

    /** A text that is wrong, or right, in one to four places. */
    static String of(String text, SplittableRandom random) {
        String mutant = text;
        for (int steps = random.nextInt(3) == 0 ? random.nextInt(2, 5) : 1; steps > 0; steps--) {
            mutant = step(mutant, random);
        }
        return mutant;
    }

    private static String step(String text, SplittableRandom random) {
        if (text.isEmpty()) {
            return pick(PIECES, random);
        }
        return switch (random.nextInt(13)) {
            case 0, 1, 2 -> replaced(text, NUMBER, pick(NUMBERS, random), random);
            case 3, 4 -> replaced(text, UNIT, pick(UNITS, random), random);
            case 5 -> replaced(text, KEY, key(text, random), random);
            case 6 -> withoutLines(text, random);
            case 7 -> linesSwapped(text, random);
            case 8 -> lineTwice(text, random);
            case 9 -> indented(text, random);
            case 10 -> inserted(text, pick(PIECES, random), random);
            case 11 -> characterChanged(text, random);
            default -> text.substring(0, random.nextInt(text.length()));
        };
    }

    private static String pick(List<String> list, SplittableRandom random) {
        return list.get(random.nextInt(list.size()));
    }

    private static String replaced(String text, Pattern what, String by, SplittableRandom random) {
        Matcher matcher = what.matcher(text);
        long count = matcher.results().count();
        if (count == 0) {
            return text;
        }
        matcher.reset();
        for (long skip = random.nextLong(count); skip >= 0; skip--) {
            matcher.find();
        }
        return text.substring(0, matcher.start(matcher.groupCount() == 1 && what == KEY ? 1 : 0))
                + by
                + text.substring(matcher.end());
    }

    private static String key(String text, SplittableRandom random) {
        List<String> keys =
                KEY.matcher(text).results().map(result -> result.group(1)).toList();
        return keys.isEmpty() ? "name" : pick(keys, random);
    }

    private static List<String> lines(String text) {
        return new ArrayList<>(List.of(text.split("\n", -1)));
    }

    private static String withoutLines(String text, SplittableRandom random) {
        List<String> lines = lines(text);
        int from = random.nextInt(lines.size());
        lines.subList(from, Math.min(lines.size(), from + random.nextInt(1, 4))).clear();
        return String.join("\n", lines);
    }

    private static String linesSwapped(String text, SplittableRandom random) {
        List<String> lines = lines(text);
        int one = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        String kept = lines.set(one, lines.get(other));
        lines.set(other, kept);
        return String.join("\n", lines);
    }

    private static String lineTwice(String text, SplittableRandom random) {
        List<String> lines = lines(text);
        String line = lines.get(random.nextInt(lines.size()));
        lines.add(random.nextInt(lines.size()), line);
        return String.join("\n", lines);
    }

    private static String indented(String text, SplittableRandom random) {
        List<String> lines = lines(text);
        int at = random.nextInt(lines.size());
        String line = lines.get(at);
        lines.set(at, random.nextBoolean() ? "  " + line : line.stripLeading());
        return String.join("\n", lines);
    }

    private static String inserted(String text, String piece, SplittableRandom random) {
        int at = random.nextInt(text.length());
        return text.substring(0, at) + piece + text.substring(at);
    }

    private static String characterChanged(String text, SplittableRandom random) {
        int at = random.nextInt(text.length());
        char other = random.nextBoolean() ? (char) random.nextInt(32, 127) : (char) random.nextInt(0, 65_536);
        return text.substring(0, at) + other + text.substring(at + 1);
    }
}
