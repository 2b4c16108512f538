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

    private static final String STOPPED_CUT =
            "Stopped cut: clamp stop blocks; at the end switch off and let the cutter stop before lifting.";
    private static final String GLUED_BAR =
            "Roughen and clean the bar, glue it with epoxy along all three faces, its top flush with the face.";

    /** What never changes is made once: a plan asks for it many times over. */
    private static final List<Operation> OPERATIONS = inOrder();

    private UsualNeck() {}

    static List<Operation> operations() {
        return OPERATIONS;
    }

    private static List<Operation> inOrder() {
        return List.of(
                Operation.named(Operation.REST_THE_STOCK).puts(RESTED_STOCK),
                Operation.named(Operation.FLATTEN_THE_FACE)
                        .needs(RESTED_STOCK)
                        .blockedBy(FINGERBOARD)
                        .puts(FLAT_FACE),
                Operation.named(Operation.SQUARE_THE_EDGES).needs(FLAT_FACE).puts(PARALLEL_EDGES, SQUARE_EDGES),
                Operation.named(Operation.MARK_THE_LINES)
                        .needs(FLAT_FACE, PARALLEL_EDGES)
                        .because(PARALLEL_EDGES, "the centreline is found from both edges")
                        .puts(MARKED_LINES),
                rodChannel(),
                scarf(),
                Operation.named(Operation.GLUE_HEAD)
                        .needs(SCARF)
                        .blockedBy(FINGERBOARD)
                        .because(FINGERBOARD, "it lies over the joint")
                        .caution("Glue lets a sloped joint slide under the clamp: stop both ends before clamping down.")
                        .puts(HEAD),
                Operation.named(Operation.TRUE_THE_HEAD)
                        .needs(HEAD)
                        .blockedBy(HEAD_VENEER)
                        .because(HEAD_VENEER, "it covers the face that is to be trued")
                        .puts(TRUE_HEAD),
                Operation.named(Operation.GLUE_HEEL_BLOCK)
                        .needs(SQUARE_EDGES, MARKED_LINES)
                        .blockedBy(ROUNDED_BACK)
                        .because(ROUNDED_BACK, "the block needs a flat back to be glued to")
                        .puts(HEEL_BLOCK),
                heelJoint(),
                Operation.named(Operation.GLUE_WINGS).needs(TRUE_HEAD).puts(WINGS),
                Operation.named(Operation.GLUE_HEAD_VENEER)
                        .needs(TRUE_HEAD, WINGS, MARKED_LINES)
                        .because(WINGS, "the veneer covers their joint")
                        .because(MARKED_LINES, "its end is laid against the nut line")
                        .puts(HEAD_VENEER),
                Operation.named(Operation.GLUE_BACK_STRAP)
                        .needs(TRUE_HEAD, WINGS)
                        .puts(BACK_STRAP),
                Operation.named(Operation.TAPER_THE_SIDES)
                        .needs(MARKED_LINES)
                        .takesAway(PARALLEL_EDGES)
                        .puts(TAPERED_SIDES),
                Operation.named(Operation.ROUGH_OUT_THE_BACK)
                        .needs(MARKED_LINES)
                        .takesAway(FLAT_FACE, RESTED_STOCK)
                        .puts(ROUGH_BACK, ROUNDED_BACK),
                Operation.named(Operation.REST_AND_FLATTEN_AGAIN)
                        .needs(ROUGH_BACK)
                        .blockedBy(FINGERBOARD)
                        .because(ROUGH_BACK, "roughing out releases stress, and the face moves")
                        .because(FINGERBOARD, "it covers the face")
                        .puts(FLAT_FACE, RESTED_STOCK),
                Operation.named(Operation.SQUARE_THE_FINGERBOARD)
                        .blockedBy(FINGERBOARD)
                        .puts(BOARD_EDGES),
                Operation.named(Operation.SAW_FRET_SLOTS)
                        .needs(BOARD_EDGES)
                        .because(BOARD_EDGES, "the saw is guided square to an edge")
                        .puts(FRET_SLOTS),
                Operation.named(Operation.TAPER_THE_FINGERBOARD)
                        .needs(FRET_SLOTS)
                        .takesAway(BOARD_EDGES),
                layRod(),
                fingerboard(true),
                Operation.named(Operation.TRIM_TO_THE_FINGERBOARD)
                        .needs(FINGERBOARD)
                        .takesAway(PARALLEL_EDGES)
                        .puts(TRIMMED_SIDES),
                Operation.named(Operation.CARVE_THE_NECK)
                        .needs(TRIMMED_SIDES)
                        .takesAway(SQUARE_EDGES)
                        .puts(CARVED_NECK, ROUNDED_BACK),
                Operation.named(Operation.FIT_HEEL_TO_BODY)
                        .needs(HEEL_JOINT, CARVED_NECK)
                        .puts(FITTED_HEEL),
                Operation.named(Operation.FRET_THE_FINGERBOARD)
                        .needs(FRET_SLOTS)
                        .puts(FRETS),
                levelling(true),
                Operation.named(Operation.FIT_THE_NUT)
                        .needs(LEVEL_FRETS, HEAD_VENEER)
                        .puts(NUT),
                Operation.named(Operation.SET_UP)
                        .needs(NUT, LEVEL_FRETS, FITTED_HEEL)
                        .puts(STRUNG));
    }

    /**
     * Gluing the fingerboard on.
     *
     * @param rod whether there is a rod to keep the glue off
     */
    static Operation fingerboard(boolean rod) {
        Operation glued =
                Operation.named(Operation.GLUE_FINGERBOARD).needs(FLAT_FACE, MARKED_LINES, ROD_IN, FRET_SLOTS);
        return (rod ? glued.because(ROD_IN, "the fingerboard closes the channel") : glued)
                .caution(
                        rod
                                ? "Keep glue off the rod, and pin the fingerboard so that it cannot slide."
                                : "Pin the fingerboard so that it cannot slide.")
                .puts(FINGERBOARD);
    }

    /**
     * Levelling the frets.
     *
     * @param rod whether there is a rod to be at neutral
     */
    static Operation levelling(boolean rod) {
        Operation level = Operation.named(Operation.LEVEL_THE_FRETS).needs(FRETS, FINGERBOARD, ROD_IN);
        return (rod ? level.because(ROD_IN, "they are levelled with the rod at neutral") : level).puts(LEVEL_FRETS);
    }

    /** The locating groove of a neck without rod, cut as its channel would be. */
    static Operation locatingGroove() {
        return Operation.alongFence(Operation.CUT_LOCATING_GROOVE)
                .caution(STOPPED_CUT)
                .puts(Condition.named("locating groove"));
    }

    static Operation barChannel() {
        return Operation.alongFence(Operation.CUT_BAR_CHANNEL)
                .caution(STOPPED_CUT)
                .puts(BAR_CHANNEL);
    }

    /** A bar glued into the channel in the middle. */
    static Operation bar() {
        return Operation.named(Operation.GLUE_IN_THE_BAR)
                .needs(BAR_CHANNEL)
                .blockedBy(FINGERBOARD)
                .because(FINGERBOARD, "it covers the channel")
                .caution(GLUED_BAR)
                .puts(BAR_IN);
    }

    /** The board over one bar, which must be in. */
    static Operation overTheBar(Operation board) {
        return board.needs(BAR_IN).because(BAR_IN, "the fingerboard closes its channel");
    }

    static Operation barChannels() {
        return Operation.alongFence(Operation.CUT_BAR_CHANNELS)
                .caution(STOPPED_CUT)
                .puts(BAR_CHANNELS);
    }

    static Operation bars() {
        return Operation.named(Operation.GLUE_IN_THE_BARS)
                .needs(BAR_CHANNELS)
                .blockedBy(FINGERBOARD)
                .because(FINGERBOARD, "it covers the channels")
                .caution(GLUED_BAR)
                .puts(BARS_IN);
    }

    /** The board over two bars, which must be in. */
    static Operation over(Operation board) {
        return board.needs(BARS_IN).because(BARS_IN, "the fingerboard closes their channels");
    }

    static Operation strips() {
        return Operation.named(Operation.GLUE_UP_THE_STRIPS)
                .caution(
                        "Plane each joint just before gluing; alternate the rings, so that one strip's movement meets another's.")
                .puts(GLUED_STRIPS);
    }

    static Operation restOfTheStack() {
        return Operation.named(Operation.REST_THE_STOCK).needs(GLUED_STRIPS).puts(RESTED_STOCK);
    }

    static Operation headSlots() {
        return Operation.named(Operation.CUT_HEAD_SLOTS)
                .needs(TRUE_HEAD)
                .because(TRUE_HEAD, "the holes are drilled square to its sides")
                .caution("Drill for the rollers from both sides first, then rout the slots, while the head is square.")
                .puts(Condition.named("head slots"));
    }

    static Operation setUpOf(Operation usual) {
        return usual.needs(STRING_ANCHOR);
    }

    static Operation anchor() {
        return Operation.named(Operation.FIT_THE_STRING_ANCHOR)
                .needs(NUT)
                .because(NUT, "it is lined up with the nut's slots")
                .puts(STRING_ANCHOR);
    }

    private static Operation rodChannel() {
        return Operation.alongFence(Operation.CUT_ROD_CHANNEL)
                .caution(STOPPED_CUT)
                .puts(ROD_CHANNEL);
    }

    private static Operation scarf() {
        return Operation.named(Operation.CUT_SCARF)
                .needs(FLAT_FACE, SQUARE_EDGES, MARKED_LINES)
                .blockedBy(ROUNDED_BACK, FINGERBOARD)
                .because(SQUARE_EDGES, "the saw line is squared across from them")
                .because(FINGERBOARD, "it covers the face")
                .puts(SCARF);
    }

    /** In the place of gluing it on, where the head is sawn out of a blank thick enough for it. */
    static Operation onePieceHead() {
        return Operation.named(Operation.SAW_OUT_THE_HEAD)
                .needs(FLAT_FACE, SQUARE_EDGES, MARKED_LINES)
                .because(FLAT_FACE, "the lines of the head are laid out from it")
                .because(SQUARE_EDGES, "the saw line is squared across from them")
                .because(MARKED_LINES, "the head turns back from the nut line")
                .caution("Saw clear of the lines: wood cut away below the face of the head cannot be put back.")
                .puts(HEAD);
    }

    private static Operation heelJoint() {
        return Operation.named(Operation.CUT_HEEL_JOINT)
                .needs(HEEL_BLOCK, SQUARE_EDGES, PARALLEL_EDGES, MARKED_LINES)
                .because(SQUARE_EDGES, "sawing and drilling start from square faces")
                .because(PARALLEL_EDGES, "sawing and drilling start from square faces")
                .despite(PARALLEL_EDGES, Remedy.carrierBoard())
                .puts(HEEL_JOINT);
    }

    private static Operation layRod() {
        return Operation.named(Operation.LAY_IN_THE_ROD)
                .needs(ROD_CHANNEL, TRUE_HEAD)
                .blockedBy(FINGERBOARD)
                .because(TRUE_HEAD, "the pocket's depth is taken from the head's final face")
                .because(FINGERBOARD, "it covers the channel")
                .caution("Test the rod both ways before it goes in.")
                .puts(ROD_IN);
    }
}
