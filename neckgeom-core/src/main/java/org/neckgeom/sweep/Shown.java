package org.neckgeom.sweep;

/** Values of an axis in a line: of a choice such as a wood, its first. */
final class Shown {

    private static final int MOST_CHARACTERS = 60;

    private Shown() {}

    static String brief(Object value) {
        String line = value.toString().lines().findFirst().orElse("");
        return line.length() <= MOST_CHARACTERS ? line : line.substring(0, MOST_CHARACTERS) + "...";
    }
}
