package org.neckgeom.sweep;

import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Answer;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/** Values, designs and answers as they are printed: in a line, or in another style. */
final class Shown {

    private static final int MOST_CHARACTERS = 60;

    private Shown() {}

    /** The same in a style, where it says lengths and its copy is of its own type. */
    @SuppressWarnings("unchecked") // of the same class as what was given
    static <T> T in(LengthStyle style, T value) {
        if (value instanceof SaysLengths<?> speaker) {
            Object copy = speaker.in(style);
            return copy.getClass() == value.getClass() ? (T) copy : value;
        }
        return value;
    }

    /** An answer in a style, or in its own where none is asked for. */
    static String text(Object value, @Nullable LengthStyle style) {
        return style != null && value instanceof Answer answer ? answer.text(style) : value.toString();
    }

    /** Of a choice such as a wood, its first line. */
    static String brief(Object value) {
        String line = value.toString().lines().findFirst().orElse("");
        return line.length() <= MOST_CHARACTERS ? line : line.substring(0, MOST_CHARACTERS) + "...";
    }
}
