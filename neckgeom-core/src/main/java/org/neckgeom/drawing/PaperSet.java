package org.neckgeom.drawing;

/** What sheets of one plan have in common, so that paper can be matched with paper. */
public final class PaperSet {

    private PaperSet() {}

    public static String named(String mark) {
        return "set " + mark;
    }

    public static String belonging(String mark) {
        return "Belongs to " + named(mark) + ".";
    }
}
