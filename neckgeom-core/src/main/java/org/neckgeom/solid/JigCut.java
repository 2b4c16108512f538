package org.neckgeom.solid;

/** The cut that a jig in the channel is for. */
public enum JigCut {
    /** The tapered sides. */
    TAPER("taper jig"),
    /** The back on the centreline, from the side. */
    SIDE_PROFILE("side-profile jig"),
    /** Cheeks, shoulder and tenon of the heel. */
    HEEL("heel jig"),
    /** The scarf's slope, on a sled past the saw. */
    SCARF("scarf sled"),
    /** The glued board, or its frets: a caul hollowed to the board's crown. */
    CAUL("gluing and fretting caul"),
    /** The fret slots. */
    FRETTING("fretting fence"),
    /** Outline and posts of the head. */
    HEAD("head template");

    private final String words;

    JigCut(String words) {
        this.words = words;
    }

    boolean isRouted() {
        return this == TAPER || this == SIDE_PROFILE || this == HEEL || this == HEAD;
    }

    /** Returns it in words, such as {@code taper jig}. */
    @Override
    public String toString() {
        return words;
    }
}
