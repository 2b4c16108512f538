package org.neckgeom.neck;

/**
 * The place of a scarf joint: in the head or in the shaft.
 */
public enum JointPlace {

    /**
     * The head piece's slope is glued to the flat back of the shaft; the shaft's own slope is the first part of the
     * head's face. The nut rests on shaft wood.
     */
    IN_THE_HEAD("in the head"),

    /**
     * The head piece's flat back is glued to the shaft's slope; the head piece's own slope comes level with the shaft's
     * face, under the fingerboard. The nut rests on head wood.
     */
    IN_THE_SHAFT("in the shaft");

    private final String words;

    JointPlace(String words) {
        this.words = words;
    }

    /** Returns the place in words: {@code in the head}. */
    @Override
    public String toString() {
        return words;
    }
}
