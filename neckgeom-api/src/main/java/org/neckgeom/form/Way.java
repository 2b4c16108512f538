package org.neckgeom.form;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringTokenizer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A way to print a fact in braces, such as {@code size beside u} in <code>{offset:size beside u}</code>. Words, in any
 * order, parted by blanks:
 *
 * <ul>
 *   <li>for a length, as {@link org.neckgeom.units.LengthStyle} prints it: {@code text}, {@code brief}, {@code small},
 *       {@code mark}; {@code beside KEY}, rounded by the uncertainty KEY, or by that of the estimate KEY;
 *   <li>for any quantity: {@code given} in the unit it was given in; {@code after KEY}, printed as KEY is, and without its
 *       unit where KEY ends in it;
 *   <li>for any number: {@code 2} with two decimals, {@code 1|2} with one decimal of a millimetre or two of an inch,
 *       {@code ..4} with up to four, {@code ..2|3} likewise, {@code digits 2} with two significant digits;
 *   <li>{@code size} without its sign, {@code bare} without its unit, {@code table} in decimals even where the style has
 *       fractions, {@code fine} in the unit for small differences, {@code own} in the decimal unit it was given in where
 *       the style has that, {@code percent} as hundredths;
 *   <li>for an estimate, all that its value takes, and {@code value}, rounded by its uncertainty, {@code u}, the
 *       uncertainty, which is not there where it is 0, and {@code deviation}, the same to two digits, there where it is 0;
 *   <li>for a count: {@code grouped}, and {@code of pass/passes} with the word that fits, which must be last;
 *   <li>for a name and for any value: {@code cut 60}, at most so many letters and then three dots;
 *   <li>for a list: {@code first 12}, {@code once} with its unit once, and then how many are left out, {@code and} or
 *       {@code or} before the last; for an answer: {@code finding}, its first line alone, {@code capital}, the same as a
 *       sentence begins, and {@code whole}, every row of its tables.
 * </ul>
 */
record Way(Mode mode, int decimals, int inchDecimals, Set<Flag> flags, Map<String, String> named, List<String> words) {

    enum Mode {
        PLAIN,
        TEXT,
        BRIEF,
        SMALL,
        MARK,
        GIVEN,
        BESIDE,
        FIXED,
        TRIMMED,
        DIGITS,
        GROUPED,
        COUNT,
        FINDING,
        CAPITAL,
        WHOLE,
        VALUE,
        U,
        DEVIATION
    }

    enum Flag {
        SIZE,
        BARE,
        TABLE,
        FINE,
        PERCENT,
        OWN,
        ONCE,
        AND,
        OR
    }

    static final Way PLAIN = new Way(Mode.PLAIN, 0, 0, EnumSet.noneOf(Flag.class), Map.of(), List.of());

    private static final Pattern DECIMALS = Pattern.compile("(\\.\\.)?\\d(\\|\\d)?");
    private static final Pattern COUNT = Pattern.compile("[1-9]\\d{0,2}");

    boolean size() {
        return flags.contains(Flag.SIZE);
    }

    boolean bare() {
        return flags.contains(Flag.BARE);
    }

    boolean table() {
        return flags.contains(Flag.TABLE);
    }

    boolean fine() {
        return flags.contains(Flag.FINE);
    }

    boolean percent() {
        return flags.contains(Flag.PERCENT);
    }

    boolean own() {
        return flags.contains(Flag.OWN);
    }

    boolean once() {
        return flags.contains(Flag.ONCE);
    }

    int first() {
        return count("first");
    }

    private int count(String word) {
        String count = named.get(word);
        return count == null ? Integer.MAX_VALUE : Integer.parseInt(count);
    }

    @Nullable
    String beside() {
        return named.get("beside");
    }

    @Nullable
    String after() {
        return named.get("after");
    }

    /** What parts the last of a list from those before it. */
    String last() {
        return flags.contains(Flag.AND) ? " and " : flags.contains(Flag.OR) ? " or " : ", ";
    }

    /** The same flags in another mode, with two digits where digits are asked for. */
    Way as(Mode other) {
        return new Way(other, 2, 2, flags, named, words);
    }

    /** The text, or its first letters where it is longer than this way lets it be. */
    String cut(String text) {
        int cut = count("cut");
        return text.length() <= cut ? text : text.substring(0, cut) + "...";
    }

    /** The same without the unit. */
    Way withoutUnit() {
        Set<Flag> more = EnumSet.copyOf(flags);
        more.add(Flag.BARE);
        return new Way(mode, decimals, inchDecimals, more, named, words);
    }

    /** Returns the way that some words ask for; null where they ask for none. */
    static @Nullable Way parsed(String asked) {
        Mode mode = Mode.PLAIN;
        int decimals = 0;
        int inchDecimals = 0;
        Set<Flag> flags = EnumSet.noneOf(Flag.class);
        Map<String, String> named = new HashMap<>();
        List<String> words = List.of();
        StringTokenizer all = new StringTokenizer(asked, " ");
        do {
            String word = all.hasMoreTokens() ? all.nextToken() : "";
            switch (word) {
                case "text",
                        "brief",
                        "small",
                        "mark",
                        "given",
                        "grouped",
                        "finding",
                        "capital",
                        "whole",
                        "value",
                        "u",
                        "deviation" -> mode = Mode.valueOf(word.toUpperCase(Locale.ROOT));
                case "size", "bare", "table", "fine", "percent", "own", "once", "and", "or" ->
                    flags.add(Flag.valueOf(word.toUpperCase(Locale.ROOT)));
                case "beside", "after", "digits", "first", "cut" -> {
                    String next = all.hasMoreTokens() ? all.nextToken() : "";
                    boolean isKey = word.equals("beside") || word.equals("after");
                    if (isKey ? next.isEmpty() : !COUNT.matcher(next).matches()) {
                        return null;
                    }
                    named.put(word, next);
                    mode = word.equals("beside") ? Mode.BESIDE : word.equals("digits") ? Mode.DIGITS : mode;
                    decimals = word.equals("digits") ? Integer.parseInt(next) : decimals;
                }
                case "of" -> {
                    mode = Mode.COUNT;
                    String both = all.hasMoreTokens() ? all.nextToken("").strip() : "";
                    words = List.of(both.split("/", -1));
                    if (words.size() != 2) {
                        return null;
                    }
                }
                default -> {
                    if (!DECIMALS.matcher(word).matches()) {
                        return null;
                    }
                    boolean atMost = word.startsWith("..");
                    mode = atMost ? Mode.TRIMMED : Mode.FIXED;
                    decimals = word.charAt(atMost ? 2 : 0) - '0';
                    inchDecimals = word.charAt(word.length() - 1) - '0';
                }
            }
        } while (all.hasMoreTokens());
        Way way = new Way(mode, decimals, inchDecimals, flags, named, words);
        return way.isWhole() ? way : null;
    }

    /** Only digits, and a quantity as it prints itself, can be without a unit. */
    private boolean isWhole() {
        boolean digits = mode == Mode.FIXED || mode == Mode.TRIMMED || mode == Mode.DIGITS;
        boolean itself = mode == Mode.PLAIN || mode == Mode.GIVEN;
        return digits || !percent() && !bare() && (itself || !once());
    }
}
