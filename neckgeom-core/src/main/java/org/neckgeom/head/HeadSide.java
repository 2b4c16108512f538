package org.neckgeom.head;

/** A side of the head piece. */
public enum HeadSide {

    /** The side the strings run over. */
    FACE("face"),

    /** The side away from the strings. */
    BACK("back");

    private final String word;

    HeadSide(String word) {
        this.word = word;
    }

    /** Returns the side in a word: {@code face}. */
    @Override
    public String toString() {
        return word;
    }
}
