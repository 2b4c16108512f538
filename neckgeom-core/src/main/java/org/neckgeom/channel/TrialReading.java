package org.neckgeom.channel;

/** One of the four readings on a trial cut, named as the maker names them. */
public enum TrialReading {
    /** The wood left between the slot and the edge that rode the fence. */
    NEAR_WALL("near wall"),
    /** The wood left between the slot and the other edge. */
    FAR_WALL("far wall"),
    /** The width of the slot. */
    SLOT("slot"),
    /** The width of the piece. */
    PIECE("piece");

    private final String text;

    TrialReading(String text) {
        this.text = text;
    }

    /** Returns the name as the maker uses it, such as {@code near wall}. */
    @Override
    public String toString() {
        return text;
    }
}
