package org.neckgeom.sweep;

import org.neckgeom.units.Amount;

/** Values of an axis as text. */
final class Shown {

    private static final int MOST_CHARACTERS = 60;

    private Shown() {}

    static String brief(Object value) {
        String text = value instanceof Amount<?> amount ? amount.brief() : value.toString();
        String line = text.lines().findFirst().orElse("");
        return line.length() <= MOST_CHARACTERS ? line : line.substring(0, MOST_CHARACTERS) + "...";
    }
}
