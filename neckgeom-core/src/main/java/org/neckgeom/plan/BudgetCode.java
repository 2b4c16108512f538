package org.neckgeom.plan;

/** A tolerance stack-up (uncertainty budget) of a plan, by its result. Stable. */
public enum BudgetCode {
    /** Offset of the string line at the bridge, positive toward the treble side. */
    STRING_LINE("stringLine", "string line at the bridge"),
    /** Offset of the fingerboard on the neck at the body joint. */
    BOARD_AT_BODY_JOINT("boardAtBodyJoint", "board on the neck at the body joint"),
    /** Wood on each side of the channel. */
    WOOD_BESIDE_CHANNEL("woodBesideChannel", "wood on each side of the channel"),
    /** Height of the fret plane at the bridge. */
    PROJECTION_HEIGHT("projectionHeight", "projection height at the bridge"),
    /** Length of the strings from nut to bridge. */
    STRING_LENGTH("stringLength", "string length from nut to bridge");

    private final String key;
    private final String words;

    BudgetCode(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** {@return its key in data, such as {@code stringLine}} */
    public String key() {
        return key;
    }

    /** Returns it in words, such as {@code string line at the bridge}. */
    @Override
    public String toString() {
        return words;
    }
}
