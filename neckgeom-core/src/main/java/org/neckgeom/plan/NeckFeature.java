package org.neckgeom.plan;

import java.util.Locale;
import org.neckgeom.order.Operation;

/** A length that can be read on a neck once it is made, with the sign it is read with. */
public enum NeckFeature {

    /** The channel's depth as cut, at its ends where the floor is arched; more than 0. */
    CHANNEL_DEPTH(Operation.CUT_ROD_CHANNEL, true),
    /** Where the channel begins, from the nut, positive toward the body. */
    CHANNEL_START(Operation.CUT_ROD_CHANNEL, false),
    /** Where the channel ends, from the nut, positive toward the body. */
    CHANNEL_END(Operation.CUT_ROD_CHANNEL, false),
    /** The channel's width as cut, its pocket not counted; more than 0. */
    CHANNEL_WIDTH(Operation.CUT_ROD_CHANNEL, true),
    /** How far the slot lies off the middle of the neck at its head end, positive too far from the fence's edge. */
    SLOT_OFFSET(Operation.CUT_ROD_CHANNEL, false),
    /** The same at its heel end; where it is not read the slot is taken as askew as the blank's edges made it. */
    SLOT_OFFSET_AT_HEEL(Operation.CUT_ROD_CHANNEL, false),
    /** The thickness of the head's wood, veneers not counted; more than 0. */
    HEAD_THICKNESS(Operation.TRUE_THE_HEAD, true),
    /** How far the glued fingerboard's middle lies off the channel's, positive toward the treble side. */
    FINGERBOARD_OFFSET(Operation.GLUE_FINGERBOARD, false),
    /** How far the line of the frets meets the bridge too high, while the heel is being fitted; negative too low. */
    HEIGHT_AT_BRIDGE(Operation.CUT_HEEL_JOINT, false),
    /** How far the neck's centreline meets the bridge off its middle, positive toward the treble side. */
    OFFSET_AT_BRIDGE(Operation.CUT_HEEL_JOINT, false);

    private final String operation;
    private final boolean isSize;

    NeckFeature(String operation, boolean isSize) {
        this.operation = operation;
        this.isSize = isSize;
    }

    /**
     * Returns the operation of the usual neck that must have been done before this can be read.
     *
     * @return its name
     */
    public String operation() {
        return operation;
    }

    /** True where only more than 0 makes sense. */
    boolean isSize() {
        return isSize;
    }

    /** Returns such as {@code channel depth}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * Returns its key in data.
     *
     * @return such as {@code channelDepth}
     */
    public String key() {
        StringBuilder key = new StringBuilder();
        for (String word : toString().split(" ", -1)) {
            key.append(key.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return key.toString();
    }
}
