package org.neckgeom.text;

import java.util.Objects;
import org.neckgeom.fault.Refusal;

/** Names and other words of a maker: checked, and quoted no longer than a sentence bears. */
public final class Words {

    private static final int LONGEST = 100;

    private Words() {}

    /**
     * Returns the text in quotes, cut after 100 characters.
     *
     * @param text what was written
     * @return such as {@code "1 3/4 in"}
     */
    public static String quoted(String text) {
        return "\"" + (text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...") + "\"";
    }

    /**
     * Returns a name that fits into a row of a report.
     *
     * @param name 1 to 100 characters on one line
     * @param what whose name it is, for the message
     * @return the name
     * @throws IllegalArgumentException if it does not fit
     */
    public static String name(String name, String what) {
        if (!fits(Objects.requireNonNull(name, what))) {
            throw Refusal.of(what, "range", "be 1 to " + LONGEST + " characters on one line", quoted(name));
        }
        return name;
    }

    /**
     * Says whether a name fits into a row of a report.
     *
     * @param name what was written
     * @return true for 1 to 100 characters on one line
     */
    public static boolean fits(String name) {
        return !name.isBlank() && name.length() <= LONGEST && name.chars().noneMatch(Character::isISOControl);
    }
}
