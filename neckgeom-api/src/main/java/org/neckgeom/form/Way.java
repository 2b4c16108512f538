package org.neckgeom.form;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How a fact in braces is printed, such as {@code size beside u} in <code>{offset:size beside u}</code>. Words, in any
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
record Way(
        Mode mode,
        int decimals,
        int inchDecimals,
        boolean size,
        boolean bare,
        boolean table,
        boolean fine,
        boolean percent,
        boolean own,
        boolean once,
        int first,
        int cut,
        @Nullable String beside,
        @Nullable String after,
        String last,
        List<String> words) {

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

    static final Way PLAIN = new Draft().done();

    /** The same flags in another mode, with two digits where digits are asked for. */
    Way as(Mode other) {
        return new Way(
                other, 2, 2, size, bare, table, fine, percent, own, once, first, cut, beside, after, last, words);
    }

    /** The text, or its first letters where it is longer than this way lets it be. */
    String cut(String text) {
        return text.length() <= cut ? text : text.substring(0, cut) + "...";
    }

    /** The same without the unit. */
    Way withoutUnit() {
        return new Way(
                mode,
                decimals,
                inchDecimals,
                size,
                true,
                table,
                fine,
                percent,
                own,
                once,
                first,
                cut,
                beside,
                after,
                last,
                words);
    }

    /** Returns the way that some words ask for; null where they ask for none. */
    static @Nullable Way parsed(String words) {
        Draft draft = new Draft();
        String[] all = words.strip().split(" +");
        int i = 0;
        while (i < all.length) {
            String word = all[i++];
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
                        "deviation" -> draft.mode = Mode.valueOf(word.toUpperCase(Locale.ROOT));
                case "size" -> draft.size = true;
                case "bare" -> draft.bare = true;
                case "table" -> draft.table = true;
                case "fine" -> draft.fine = true;
                case "percent" -> draft.percent = true;
                case "own" -> draft.own = true;
                case "once" -> draft.once = true;
                case "and", "or" -> draft.last = " " + word + " ";
                case "beside", "after", "digits", "first", "cut" -> {
                    if (i == all.length || !draft.takes(word, all[i++])) {
                        return null;
                    }
                }
                case "of" -> {
                    draft.mode = Mode.COUNT;
                    draft.words = List.of(String.join(" ", List.of(all).subList(i, all.length))
                            .split("/", -1));
                    i = all.length;
                    if (draft.words.size() != 2) {
                        return null;
                    }
                }
                default -> {
                    if (!draft.decimals(word)) {
                        return null;
                    }
                }
            }
        }
        return draft.isWhole() ? draft.done() : null;
    }

    /** A way while its words are read. */
    private static final class Draft {
        private Mode mode = Mode.PLAIN;
        private int decimals;
        private int inchDecimals;
        private boolean size;
        private boolean bare;
        private boolean table;
        private boolean fine;
        private boolean percent;
        private boolean own;
        private boolean once;
        private int first = Integer.MAX_VALUE;
        private int cut = Integer.MAX_VALUE;
        private @Nullable String beside;
        private @Nullable String after;
        private String last = ", ";
        private List<String> words = List.of();

        private boolean takes(String word, String next) {
            if (word.equals("beside")) {
                mode = Mode.BESIDE;
                beside = next;
                return true;
            }
            if (word.equals("after")) {
                after = next;
                return true;
            }
            if (!next.matches("[1-9]\\d{0,2}")) {
                return false;
            }
            if (word.equals("digits")) {
                mode = Mode.DIGITS;
                decimals = Integer.parseInt(next);
            } else if (word.equals("cut")) {
                cut = Integer.parseInt(next);
            } else {
                first = Integer.parseInt(next);
            }
            return true;
        }

        private boolean decimals(String word) {
            if (!word.matches("(\\.\\.)?\\d(\\|\\d)?")) {
                return false;
            }
            mode = word.startsWith("..") ? Mode.TRIMMED : Mode.FIXED;
            decimals = word.charAt(word.startsWith("..") ? 2 : 0) - '0';
            inchDecimals = word.charAt(word.length() - 1) - '0';
            return true;
        }

        /** Only digits, and a quantity as it prints itself, can be without a unit. */
        private boolean isWhole() {
            boolean digits = mode == Mode.FIXED || mode == Mode.TRIMMED || mode == Mode.DIGITS;
            boolean itself = mode == Mode.PLAIN || mode == Mode.GIVEN;
            return digits || !percent && !bare && (itself || !once);
        }

        private Way done() {
            return new Way(
                    mode,
                    decimals,
                    inchDecimals,
                    size,
                    bare,
                    table,
                    fine,
                    percent,
                    own,
                    once,
                    first,
                    cut,
                    beside,
                    after,
                    last,
                    Objects.requireNonNull(words));
        }
    }
}
