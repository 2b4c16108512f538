package org.neckgeom.drawing;

/** The mark that the sheets of one plan share, so that paper can be matched with paper. */
public final class PaperSet {

    private PaperSet() {}

    public static String named(String mark) {
        return "set " + mark;
    }

    public static String belonging(String mark) {
        return "Belongs to " + named(mark) + ".";
    }
}
