package org.neckgeom.plan;

import java.util.Locale;

/** What a {@link Repair} does, by the trade's word. Stable: a code is added, never changed. */
public enum RepairCode {
    /** The reading is too near its limit to decide. */
    READ_AGAIN("Read again"),
    /** Live with it. */
    KEEP("Keep it"),
    /** Everything is drawn from the channel as it lies. */
    MOVE_THE_LINES("Move the lines"),
    /** The channel is opened, filled with a strip and cut again. */
    FILL_AND_CUT_AGAIN("Fill and cut again"),
    /** The channel is widened on one wall, and the rod packed on both. */
    WIDEN_AND_PACK("Widen to one side and pack"),
    /** A strip under the rod. */
    STRIP_UNDER_THE_ROD("Strip under the rod"),
    /** A strip glued to a floor that is too thin. */
    STRIP_ON_THE_FLOOR("Strip on the floor"),
    /** The rod stays low, and its fillet is thicker. */
    THICKER_FILLET("Thicker fillet"),
    /** The shaft is carved deeper by as much. */
    DEEPER_SHAFT("Deeper shaft"),
    /** A taller rod. */
    TALLER_ROD("Taller rod"),
    /** Another pass over the cutter, the fence left as it is. */
    ANOTHER_PASS("Another pass"),
    /** A router plane as wide as the slot. */
    ROUTER_PLANE("Router plane"),
    /** Tape, heat-shrink tube or dabs of silicone on the rod. */
    SLEEVE("Sleeve on the rod"),
    /** A veneer on each wall. */
    VENEER_THE_WALLS("Veneer the walls"),
    /** The same off each wall, turned end for end between. */
    WIDEN_BOTH_WALLS("Widen both walls"),
    /** The channel's end is chiselled on. */
    CHISEL_THE_END("Chisel the end"),
    /** A block fills the channel's end. */
    BLOCK_AT_THE_END("Block at the end"),
    /** The slot is cut right through from the back, and a strip glued in. */
    STRIPE_THROUGH("Stripe through the back"),
    /** A patch with sloped ends over the hole. */
    PATCH("Patch"),
    /** Another lamination on the back. */
    BACK_LAMINATION("Back lamination"),
    /** The head's face is planed to its angle. */
    PLANE_THE_FACE("Plane the head's face"),
    /** A wedge on the head's face under its veneer. */
    WEDGE_ON_THE_FACE("Wedge on the head's face"),
    /** The scarf joint is sawn apart and cut again. */
    SAW_APART("Saw the joint apart"),
    /** The step at the scarf's line is planed off the part that stands proud. */
    LEVEL_THE_STEP("Level the step"),
    /** A wing on the narrow side. */
    WING("Wing on that side"),
    /** Both sides drawn narrower. */
    NARROWER_OUTLINE("Narrower outline"),
    /** The outline's middle moved toward the wide side. */
    MOVE_THE_OUTLINE("Move the outline"),
    /** A veneer on the head's back. */
    BACK_VENEER("Back veneer"),
    /** A veneer on the head's face. */
    HEAD_VENEER("Head veneer"),
    /** Tuners with longer bushings. */
    LONGER_BUSHINGS("Longer bushings"),
    /** The neck's sides are trimmed to what lies off. */
    TRIM_THE_NECK("Trim the neck to it"),
    /** Nut and bridge follow the board. */
    MOVE_THE_STRINGS("Move the strings"),
    /** The board is taken off with heat and glued again. */
    TAKE_THE_BOARD_OFF("Take the board off"),
    /** A wedge off the heel's mating face. */
    HEEL_WEDGE("Wedge off the heel"),
    /** Wood off one cheek of the heel. */
    HEEL_CHEEK("Wood off one cheek"),
    /** The saddle, within its seat. */
    OTHER_SADDLE("Another saddle"),
    /** The board is planed from one end to nothing at the other. */
    PLANE_THE_BOARD("Plane the board"),
    /** A thicker board. */
    THICKER_BOARD("Thicker board"),
    /** Stiffening bars in channels beside the rod. */
    BARS_BESIDE_THE_ROD("Bars beside the rod"),
    /** The rod is set, forward or back. */
    SET_THE_ROD("Set the rod"),
    /** The glue face is planed flat, the board not yet on. */
    PLANE_THE_GLUE_FACE("Plane the glue face"),
    /** A flat board is glued on while a caul holds the neck forward of straight. */
    BENT_CAUL("Glue the board in a bent caul"),
    /** The fret slots are sawn wider, so that the tangs push less. */
    WIDER_FRET_SLOTS("Wider fret slots"),
    /** Levelled out of the frets' tops. */
    LEVEL_IT_OUT("Level it out of the frets"),
    /** Heated and clamped past where it shall be. */
    HEAT_AND_CLAMP("Heat and clamp"),
    /** No repair is left: again from the last step that is still good. */
    START_AGAIN("Start again");

    private final String words;

    RepairCode(String words) {
        this.words = words;
    }

    /** {@return its code in data, such as {@code fill-and-cut-again}; lower case with hyphens} */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns it in words, such as {@code Fill and cut again}. */
    @Override
    public String toString() {
        return words;
    }
}
