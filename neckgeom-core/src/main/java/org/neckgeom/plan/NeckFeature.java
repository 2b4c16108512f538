package org.neckgeom.plan;

import java.util.Locale;
import org.neckgeom.order.Operation;

/** A length that can be read on a neck once it is made, with the sign it is read with. */
public enum NeckFeature {

    /** The channel's depth as cut, at its ends where the floor is arched; more than 0. */
    CHANNEL_DEPTH(Operation.CUT_ROD_CHANNEL, true, "depth of the channel as cut. Arched floor: depth at the ends"),
    /** Where the channel begins, from the nut, positive toward the body. */
    CHANNEL_START(Operation.CUT_ROD_CHANNEL, false, "distance from the nut line to the head end of the channel as cut"),
    /** Where the channel ends, from the nut, positive toward the body. */
    CHANNEL_END(Operation.CUT_ROD_CHANNEL, false, "distance from the nut line to the heel end of the channel as cut"),
    /** The channel's width as cut, its pocket not counted; more than 0. */
    CHANNEL_WIDTH(Operation.CUT_ROD_CHANNEL, true, "width of the channel as cut, adjuster pocket not included"),
    /** How far the slot lies off the middle of the neck at its head end, positive too far from the fence's edge. */
    SLOT_OFFSET(
            Operation.CUT_ROD_CHANNEL,
            false,
            "offset of the slot from the neck's middle at the head end. Positive: away from the fence"),
    /** The same at its heel end; where it is not read the slot is taken as askew as the blank's edges made it. */
    SLOT_OFFSET_AT_HEEL(
            Operation.CUT_ROD_CHANNEL,
            false,
            "offset of the slot from the neck's middle at the heel end. Positive: away from the fence"),
    /** The thickness of the head's wood, veneers not counted; more than 0. */
    HEAD_THICKNESS(Operation.TRUE_THE_HEAD, true, "thickness of the head, veneers not included"),
    /** How far the shaft stands proud of the head at the glued scarf's line, square to the face; negative: the head does. */
    SCARF_STEP(
            Operation.GLUE_HEAD,
            false,
            "step at the glued scarf joint, square to the face. Positive: the shaft stands proud"),
    /** From the channel's middle to the head's bass edge, at its widest; more than 0. */
    HEAD_WIDTH_BASS(
            Operation.TRUE_THE_HEAD, true, "distance from the channel's middle to the head's bass edge at its widest"),
    /** From the channel's middle to the head's treble edge, at its widest; more than 0. */
    HEAD_WIDTH_TREBLE(
            Operation.TRUE_THE_HEAD,
            true,
            "distance from the channel's middle to the head's treble edge at its widest"),
    /** How far the middle stands proud of its ends, strings and rod off, on the glue face or the board; negative: hollow. */
    BACK_BOW(
            Operation.CARVE_THE_NECK,
            false,
            "back-bow of the carved neck, strings off, rod slack. Positive: the middle stands proud"),
    /** How far one corner lies off the plane of the other three, across the width at the body joint, either sign. */
    TWIST(
            Operation.CARVE_THE_NECK,
            false,
            "twist of the carved neck from nut to body joint, as a height across its width at the joint"),
    /** How far the glued fingerboard's middle lies off the channel's at the body joint, positive toward the treble side. */
    FINGERBOARD_OFFSET(
            Operation.GLUE_FINGERBOARD,
            false,
            "offset of the glued fingerboard from the channel at the body joint. Positive: toward the treble side"),
    /** How far the line of the frets meets the bridge too high, while the heel is being fitted; negative too low. */
    HEIGHT_AT_BRIDGE(Operation.CUT_HEEL_JOINT, false, "height of the fret line above the bridge top. Negative: below"),
    /** How far the neck's centreline meets the bridge off its middle, positive toward the treble side. */
    OFFSET_AT_BRIDGE(
            Operation.CUT_HEEL_JOINT,
            false,
            "offset of the centreline from the bridge's middle. Positive: toward the treble side");

    private final String operation;
    private final boolean isSize;
    private final String about;

    NeckFeature(String operation, boolean isSize, String about) {
        this.operation = operation;
        this.isSize = isSize;
        this.about = about;
    }

    /** Its meaning, in one line. */
    String about() {
        return about;
    }

    /** {@return the operation of the usual neck that must have been done before this can be read} */
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

    /** {@return its key in data, such as {@code channelDepth}} */
    public String key() {
        StringBuilder key = new StringBuilder();
        for (String word : toString().split(" ", -1)) {
            key.append(key.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return key.toString();
    }
}
