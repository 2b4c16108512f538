package org.neckgeom.text;

import java.util.Locale;
import java.util.Objects;
import org.neckgeom.fault.Refusal;

/**
 * Names and other words of a maker: checked, and quoted no longer than a sentence bears. What comes from outside can't
 * forge a line, turn the reading direction or steer a terminal: a name with such letters is refused, and anything else is
 * shown with them written out.
 */
public final class Words {

    private static final int LONGEST = 100;

    private Words() {}

    /**
     * {@return the text in quotes, cut after 100 characters, on one line, such as {@code "1 3/4 in"}}
     *
     * @param text what was written
     */
    public static String quoted(String text) {
        return quoted(text, LONGEST);
    }

    private static String quoted(String text, int longest) {
        return "\"" + shown(text.length() <= longest ? text : text.substring(0, longest) + "...") + "\"";
    }

    /**
     * {@return the text on one line of printable letters; others are written out; the same where it is printable;
     * {@code \}{@code u001b} for an escape character}
     *
     * @param text any text
     */
    public static String shown(String text) {
        if (isLine(text)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (isPrintable(c)) {
                shown.appendCodePoint(c);
            } else {
                shown.append(String.format(Locale.ROOT, "\\u%04x", c));
            }
        });
        return shown.toString();
    }

    /**
     * {@return whether a text is one line of printable letters; true also for an empty one}
     *
     * @param text any text
     */
    public static boolean isLine(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < 0x20 || text.charAt(i) >= 0x7F) {
                return text.codePoints().allMatch(Words::isPrintable);
            }
        }
        return true;
    }

    /**
     * {@return whether a letter can be shown to people as it is: not a control character, not one that ends a line,
     * turns the reading direction or shows nothing, no half of a pair and nothing that is no letter for good (The
     * Unicode Standard, 23.1 to 23.8); true for what prints, and for spaces}
     *
     * @param c a code point
     */
    public static boolean isPrintable(int c) {
        boolean isControl = c < 0x20 || c >= 0x7F && c < 0xA0;
        boolean endsALine = c == 0x2028 || c == 0x2029;
        boolean turns =
                c == 0x061C || c == 0x200E || c == 0x200F || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
        boolean showsNothing =
                c == 0x200B || c == 0x2060 || c == 0xFEFF || c >= 0xFFF9 && c <= 0xFFFB || c >= 0xE0000 && c <= 0xE007F;
        boolean isNoLetter = c >= 0xD800 && c <= 0xDFFF || c >= 0xFDD0 && c <= 0xFDEF || (c & 0xFFFE) == 0xFFFE;
        return !(isControl || endsALine || turns || showsNothing || isNoLetter);
    }

    /**
     * {@return a name that fits into a row of a report}
     *
     * @param name 1 to 100 printable characters on one line
     * @param what whose name it is, for the message
     * @throws IllegalArgumentException if it does not fit
     */
    public static String name(String name, String what) {
        return line(name, what, LONGEST);
    }

    /**
     * {@return words of no more than a length}
     *
     * @param text printable characters on one line, not blank
     * @param what what they are, for the message
     * @param longest the most characters
     * @throws IllegalArgumentException if they do not fit
     */
    public static String line(String text, String what, int longest) {
        if (!fits(Objects.requireNonNull(text, what), longest)) {
            throw Refusal.of(what, "range", "be 1 to " + longest + " characters on one line", quoted(text, longest));
        }
        return text;
    }

    /**
     * {@return whether a name fits into a row of a report; true for 1 to 100 printable characters on one line}
     *
     * @param name what was written
     */
    public static boolean fits(String name) {
        return fits(name, LONGEST);
    }

    private static boolean fits(String text, int longest) {
        return !text.isBlank() && text.length() <= longest && isLine(text);
    }
}
