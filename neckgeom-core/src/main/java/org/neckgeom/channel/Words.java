package org.neckgeom.channel;

import org.neckgeom.units.LengthStyle;

/** Small pieces of text that several answers share. */
final class Words {

    private Words() {}

    /** Returns {@code , u 0.014 mm}, or nothing where no uncertainty is stated. */
    static String uncertainty(double mm, LengthStyle style) {
        return mm > 0 ? ", u " + style.small(mm) : "";
    }

    /** Returns {@code 3 passes} or {@code 1 pass}. */
    static String count(int number, String one, String several) {
        return number + " " + (number == 1 ? one : several);
    }
}
