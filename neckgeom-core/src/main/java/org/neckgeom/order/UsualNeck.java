package org.neckgeom.order;

import static org.neckgeom.order.Condition.BACK_STRAP;
import static org.neckgeom.order.Condition.BOARD_EDGES;
import static org.neckgeom.order.Condition.CARVED_NECK;
import static org.neckgeom.order.Condition.FINGERBOARD;
import static org.neckgeom.order.Condition.FITTED_HEEL;
import static org.neckgeom.order.Condition.FLAT_FACE;
import static org.neckgeom.order.Condition.FRETS;
import static org.neckgeom.order.Condition.FRET_SLOTS;
import static org.neckgeom.order.Condition.HEAD;
import static org.neckgeom.order.Condition.HEAD_VENEER;
import static org.neckgeom.order.Condition.HEEL_BLOCK;
import static org.neckgeom.order.Condition.HEEL_JOINT;
import static org.neckgeom.order.Condition.LEVEL_FRETS;
import static org.neckgeom.order.Condition.MARKED_LINES;
import static org.neckgeom.order.Condition.NUT;
import static org.neckgeom.order.Condition.PARALLEL_EDGES;
import static org.neckgeom.order.Condition.RESTED_STOCK;
import static org.neckgeom.order.Condition.ROD_CHANNEL;
import static org.neckgeom.order.Condition.ROD_IN;
import static org.neckgeom.order.Condition.ROUGH_BACK;
import static org.neckgeom.order.Condition.ROUNDED_BACK;
import static org.neckgeom.order.Condition.SCARF;
import static org.neckgeom.order.Condition.SQUARE_EDGES;
import static org.neckgeom.order.Condition.TAPERED_SIDES;
import static org.neckgeom.order.Condition.TRIMMED_SIDES;
import static org.neckgeom.order.Condition.TRUE_HEAD;
import static org.neckgeom.order.Condition.WINGS;

import java.util.List;

/**
 * The operations of the usual neck in their usual order: common practice, most frequent sequence. The order below only
 * settles what the needs leave open.
 */
final class UsualNeck {

    private static final Condition BAR_CHANNEL = Condition.named("bar channel");
    private static final Condition BAR_IN = Condition.named("bar in its channel");
    private static final Condition BAR_CHANNELS = Condition.named("bar channels");
    private static final Condition BARS_IN = Condition.named("bars in their channels");
    private static final Condition GLUED_STRIPS = Condition.named("strips glued up");
    private static final Condition STRING_ANCHOR = Condition.named("string anchor");
    private static final Condition STRUNG = Condition.named("strings on");

    /** What never changes is made once: a plan asks for it many times over. */
    private static final List<Operation> OPERATIONS = inOrder();

    private UsualNeck() {}

    static List<Operation> operations() {
        return OPERATIONS;
    }

    private static List<Operation> inOrder() {
        return List.of(
                Operation.named(Operation.REST_THE_STOCK).minding("STICKERS").puts(RESTED_STOCK),
                Operation.named(Operation.FLATTEN_THE_FACE)
                        .minding("PLANER", "DUST")
                        .needs(RESTED_STOCK)
                        .blockedBy(FINGERBOARD)
                        .puts(FLAT_FACE),
                Operation.named(Operation.SQUARE_THE_EDGES)
                        .minding("PLANER", "TABLE_SAW", "DUST")
                        .needs(FLAT_FACE)
                        .puts(PARALLEL_EDGES, SQUARE_EDGES),
                Operation.named(Operation.MARK_THE_LINES)
                        .minding("EDGE_TOOLS")
                        .needs(FLAT_FACE, PARALLEL_EDGES)
                        .because(PARALLEL_EDGES, "the centreline is found from both edges")
                        .puts(MARKED_LINES),
                rodChannel(),
                scarf(),
                Operation.named(Operation.GLUE_HEAD)
                        .minding("SLIDING_JOINT", "EPOXY", "HOT_GLUE")
                        .needs(SCARF)
                        .blockedBy(FINGERBOARD)
                        .because(FINGERBOARD, "it lies over the joint")
                        .puts(HEAD),
                Operation.named(Operation.TRUE_THE_HEAD)
                        .minding("PLANER", "SANDING", "DRILLING", "DUST")
                        .needs(HEAD)
                        .blockedBy(HEAD_VENEER)
                        .because(HEAD_VENEER, "it covers the face that is to be trued")
                        .puts(TRUE_HEAD),
                Operation.named(Operation.GLUE_HEEL_BLOCK)
                        .minding("EPOXY", "HOT_GLUE")
                        .needs(SQUARE_EDGES, MARKED_LINES)
                        .blockedBy(ROUNDED_BACK)
                        .because(ROUNDED_BACK, "the block needs a flat back to be glued to")
                        .puts(HEEL_BLOCK),
                heelJoint(),
                Operation.named(Operation.GLUE_WINGS)
                        .minding("EPOXY", "HOT_GLUE")
                        .needs(TRUE_HEAD)
                        .puts(WINGS),
                Operation.named(Operation.GLUE_HEAD_VENEER)
                        .minding("EPOXY", "HOT_GLUE")
                        .needs(TRUE_HEAD, WINGS, MARKED_LINES)
                        .because(WINGS, "the veneer covers their joint")
                        .because(MARKED_LINES, "its end is laid against the nut line")
                        .puts(HEAD_VENEER),
                Operation.named(Operation.GLUE_BACK_STRAP)
                        .minding("EPOXY", "HOT_GLUE")
                        .needs(TRUE_HEAD, WINGS)
                        .puts(BACK_STRAP),
                Operation.named(Operation.TAPER_THE_SIDES)
                        .minding("BAND_SAW", "SANDING", "DUST")
                        .needs(MARKED_LINES)
                        .takesAway(PARALLEL_EDGES)
                        .puts(TAPERED_SIDES),
                Operation.named(Operation.ROUGH_OUT_THE_BACK)
                        .minding("BAND_SAW", "EDGE_TOOLS", "DUST")
                        .needs(MARKED_LINES)
                        .takesAway(FLAT_FACE, RESTED_STOCK)
                        .puts(ROUGH_BACK, ROUNDED_BACK),
                Operation.named(Operation.REST_AND_FLATTEN_AGAIN)
                        .minding("STICKERS", "PLANER", "DUST")
                        .needs(ROUGH_BACK)
                        .blockedBy(FINGERBOARD)
                        .because(ROUGH_BACK, "roughing out releases stress, and the face moves")
                        .because(FINGERBOARD, "it covers the face")
                        .puts(FLAT_FACE, RESTED_STOCK),
                Operation.named(Operation.SQUARE_THE_FINGERBOARD)
                        .minding("PLANER", "TABLE_SAW", "DUST")
                        .blockedBy(FINGERBOARD)
                        .puts(BOARD_EDGES),
                Operation.named(Operation.SAW_FRET_SLOTS)
                        .minding("TABLE_SAW", "EYES_EARS", "DUST")
                        .needs(BOARD_EDGES)
                        .because(BOARD_EDGES, "the saw is guided square to an edge")
                        .puts(FRET_SLOTS),
                Operation.named(Operation.TAPER_THE_FINGERBOARD)
                        .minding("BAND_SAW", "DUST")
                        .needs(FRET_SLOTS)
                        .takesAway(BOARD_EDGES),
                layRod(),
                fingerboard(true),
                Operation.named(Operation.TRIM_TO_THE_FINGERBOARD)
                        .minding("CLIMB_FEED", "HANDS", "ISOLATE", "EDGE_TOOLS", "DUST")
                        .needs(FINGERBOARD)
                        .takesAway(PARALLEL_EDGES)
                        .puts(TRIMMED_SIDES),
                Operation.named(Operation.CARVE_THE_NECK)
                        .minding("EDGE_TOOLS", "SANDING", "DUST", "FINISH")
                        .needs(TRIMMED_SIDES)
                        .takesAway(SQUARE_EDGES)
                        .puts(CARVED_NECK, ROUNDED_BACK),
                Operation.named(Operation.FIT_HEEL_TO_BODY)
                        .minding("EDGE_TOOLS", "EPOXY", "HOT_GLUE")
                        .needs(HEEL_JOINT, CARVED_NECK)
                        .puts(FITTED_HEEL),
                Operation.named(Operation.FRET_THE_FINGERBOARD)
                        .minding("FRETS", "CYANOACRYLATE")
                        .needs(FRET_SLOTS)
                        .puts(FRETS),
                levelling(true),
                Operation.named(Operation.FIT_THE_NUT)
                        .minding("EDGE_TOOLS", "CYANOACRYLATE", "DUST")
                        .needs(LEVEL_FRETS, HEAD_VENEER)
                        .puts(NUT),
                setUp(true));
    }

    /**
     * Gluing the fingerboard on.
     *
     * @param rod whether there is a rod to keep the glue off
     */
    static Operation fingerboard(boolean rod) {
        Operation glued = Operation.named(Operation.GLUE_FINGERBOARD)
                .minding(rod ? "GLUE_OFF_ROD" : "PIN_THE_BOARD", "EPOXY", "HOT_GLUE")
                .needs(FLAT_FACE, MARKED_LINES, ROD_IN, FRET_SLOTS);
        return (rod ? glued.because(ROD_IN, "the fingerboard closes the channel") : glued).puts(FINGERBOARD);
    }

    /**
     * Levelling the frets.
     *
     * @param rod whether there is a rod to be at neutral
     */
    static Operation levelling(boolean rod) {
        Operation level = Operation.named(Operation.LEVEL_THE_FRETS)
                .minding("EYES_EARS", "DUST")
                .needs(FRETS, FINGERBOARD, ROD_IN);
        return (rod ? level.because(ROD_IN, "they are levelled with the rod at neutral") : level).puts(LEVEL_FRETS);
    }

    /**
     * Setting up.
     *
     * @param rod whether there is a rod to turn
     */
    static Operation setUp(boolean rod) {
        Operation last = Operation.named(Operation.SET_UP);
        return (rod ? last.minding("ROD_AT_PITCH", "ROD_TORQUE", "STRINGS") : last.minding("STRINGS"))
                .needs(NUT, LEVEL_FRETS, FITTED_HEEL)
                .puts(STRUNG);
    }

    /** The locating groove of a neck without rod, cut as its channel would be. */
    static Operation locatingGroove() {
        return Operation.alongFence(Operation.CUT_LOCATING_GROOVE)
                .minding("STOPPED_CUT", "END_OF_CUT", "CUTTER_CREEP", "DUST")
                .puts(Condition.named("locating groove"));
    }

    static Operation barChannel() {
        return Operation.alongFence(Operation.CUT_BAR_CHANNEL)
                .minding("STOPPED_CUT", "END_OF_CUT", "CUTTER_CREEP", "DUST")
                .puts(BAR_CHANNEL);
    }

    /** A bar glued into the channel in the middle. */
    static Operation bar() {
        return Operation.named(Operation.GLUE_IN_THE_BAR)
                .needs(BAR_CHANNEL)
                .blockedBy(FINGERBOARD)
                .because(FINGERBOARD, "it covers the channel")
                .minding("GLUED_BAR", "EPOXY", "CARBON_DUST")
                .puts(BAR_IN);
    }

    /** The board over one bar, which must be in. */
    static Operation overTheBar(Operation board) {
        return board.needs(BAR_IN).because(BAR_IN, "the fingerboard closes its channel");
    }

    static Operation barChannels() {
        return Operation.alongFence(Operation.CUT_BAR_CHANNELS)
                .minding("STOPPED_CUT", "END_OF_CUT", "CUTTER_CREEP", "DUST")
                .puts(BAR_CHANNELS);
    }

    static Operation bars() {
        return Operation.named(Operation.GLUE_IN_THE_BARS)
                .needs(BAR_CHANNELS)
                .blockedBy(FINGERBOARD)
                .because(FINGERBOARD, "it covers the channels")
                .minding("GLUED_BAR", "EPOXY", "CARBON_DUST")
                .puts(BARS_IN);
    }

    /** The board over two bars, which must be in. */
    static Operation over(Operation board) {
        return board.needs(BARS_IN).because(BARS_IN, "the fingerboard closes their channels");
    }

    static Operation strips() {
        return Operation.named(Operation.GLUE_UP_THE_STRIPS)
                .minding("STRIP_JOINTS", "PLANER", "EPOXY", "HOT_GLUE", "DUST")
                .puts(GLUED_STRIPS);
    }

    static Operation restOfTheStack() {
        return Operation.named(Operation.REST_THE_STOCK)
                .minding("STICKERS")
                .needs(GLUED_STRIPS)
                .puts(RESTED_STOCK);
    }

    static Operation headSlots() {
        return Operation.named(Operation.CUT_HEAD_SLOTS)
                .needs(TRUE_HEAD)
                .because(TRUE_HEAD, "the holes are drilled square to its sides")
                .minding("ROLLER_HOLES", "DRILLING", "HANDS", "ISOLATE", "EYES_EARS", "DUST")
                .puts(Condition.named("head slots"));
    }

    static Operation setUpOf(Operation usual) {
        return usual.needs(STRING_ANCHOR);
    }

    static Operation anchor() {
        return Operation.named(Operation.FIT_THE_STRING_ANCHOR)
                .minding("DRILLING")
                .needs(NUT)
                .because(NUT, "it is lined up with the nut's slots")
                .puts(STRING_ANCHOR);
    }

    private static Operation rodChannel() {
        return Operation.alongFence(Operation.CUT_ROD_CHANNEL)
                .minding("STOPPED_CUT", "END_OF_CUT", "CUTTER_CREEP", "DUST")
                .puts(ROD_CHANNEL);
    }

    private static Operation scarf() {
        return Operation.named(Operation.CUT_SCARF)
                .minding("BAND_SAW", "TABLE_SAW", "SLOPES", "PLANER", "DUST")
                .needs(FLAT_FACE, SQUARE_EDGES, MARKED_LINES)
                .blockedBy(ROUNDED_BACK, FINGERBOARD)
                .because(SQUARE_EDGES, "the saw line is squared across from them")
                .because(FINGERBOARD, "it covers the face")
                .puts(SCARF);
    }

    /** In the place of gluing it on, where the head is sawn out of a blank thick enough for it. */
    static Operation onePieceHead() {
        return Operation.named(Operation.SAW_OUT_THE_HEAD)
                .minding("SAW_CLEAR", "BAND_SAW", "DUST")
                .needs(FLAT_FACE, SQUARE_EDGES, MARKED_LINES)
                .because(FLAT_FACE, "the lines of the head are laid out from it")
                .because(SQUARE_EDGES, "the saw line is squared across from them")
                .because(MARKED_LINES, "the head turns back from the nut line")
                .puts(HEAD);
    }

    private static Operation heelJoint() {
        return Operation.named(Operation.CUT_HEEL_JOINT)
                .minding("TABLE_SAW", "DRILLING", "EYES_EARS", "DUST")
                .needs(HEEL_BLOCK, SQUARE_EDGES, PARALLEL_EDGES, MARKED_LINES)
                .because(SQUARE_EDGES, "sawing and drilling start from square faces")
                .because(PARALLEL_EDGES, "sawing and drilling start from square faces")
                .despite(PARALLEL_EDGES, Remedy.carrierBoard())
                .puts(HEEL_JOINT);
    }

    private static Operation layRod() {
        return Operation.named(Operation.LAY_IN_THE_ROD)
                .minding("ROD_TEST")
                .needs(ROD_CHANNEL, TRUE_HEAD)
                .blockedBy(FINGERBOARD)
                .because(TRUE_HEAD, "the pocket's depth is taken from the head's final face")
                .because(FINGERBOARD, "it covers the channel")
                .puts(ROD_IN);
    }
}
