package org.neckgeom.plan;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.neckgeom.order.Operation;

/** What a plan checks. Stable: a code is added, never changed. */
public enum CheckCode {
    /** No two readings contradict each other. */
    READINGS_AGREE("readings agree"),
    /** The slot lies in the middle of the blank along the whole channel. */
    CHANNEL_CENTRED("channel centred"),
    /** No pass is too deep for the cutter and the wood. */
    DEPTH_OF_A_PASS("depth of a pass"),
    /** The channel ends before the body joint. */
    CHANNEL_ENDS_IN_THE_NECK("channel ends within the neck", Operation.CUT_ROD_CHANNEL),
    /** The channel as cut is deep enough for the rod or the bar. */
    CHANNEL_DEEP_ENOUGH("channel deep enough"),
    /** The channel as cut is wide enough for the rod or the bar. */
    CHANNEL_WIDE_ENOUGH("channel wide enough"),
    /** The channel as cut is long enough for the rod or the bar. */
    CHANNEL_LONG_ENOUGH("channel long enough"),
    /** The channel that is cut has been measured for the rod. */
    CHANNEL_TAKES_THE_ROD("channel takes the rod"),
    /** The blank holds the neck and its allowances in length, width and thickness. */
    BLANK_LARGE_ENOUGH("blank large enough", Operation.CUT_ROD_CHANNEL),
    /** Neck and heel blocks come from the blank's length. */
    ALL_PIECES_FROM_THE_BLANK("all pieces from the blank", Operation.CARVE_THE_NECK),
    /** The blank is long enough for shaft and head. */
    BLANK_REACHES("blank long enough for shaft and head", Operation.CUT_ROD_CHANNEL),
    /** The blank is thick enough for a head in one piece with the shaft. */
    BLANK_THICK_ENOUGH("blank thick enough for the head", Operation.CUT_ROD_CHANNEL),
    /** The nut line leaves room for head, saw cut and shaft. */
    NUT_LINE_LEAVES_ROOM("nut line leaves room", Operation.CUT_ROD_CHANNEL),
    /** Wood and veneers of the head suit the tuners. */
    HEAD_FITS_THE_TUNERS("head fits the tuners", Operation.FIT_THE_NUT),
    /** Every string bends enough over the nut. */
    STRINGS_PRESS_ON_THE_NUT("strings press on the nut", Operation.FIT_THE_NUT),
    /** Every post's washer lies on the head's wood. */
    POSTS_ON_THE_WOOD("posts on the wood", Operation.FIT_THE_NUT),
    /** The posts' washers do not meet. */
    POSTS_APART("posts apart", Operation.FIT_THE_NUT),
    /** No string touches another string's post. */
    STRINGS_CLEAR_OF_POSTS("strings clear of posts", Operation.FIT_THE_NUT),
    /** No two strings cross over the head. */
    STRINGS_DO_NOT_CROSS("strings do not cross", Operation.FIT_THE_NUT),
    /** The frets reach the body joint. */
    FRETS_REACH_THE_BODY("frets reach the body", Operation.FRET_THE_FINGERBOARD),
    /** The outer strings stay over the fingerboard. */
    OUTER_STRINGS_OVER_THE_BOARD("outer strings over the board", Operation.FIT_THE_NUT),
    /** Enough wood is left between channel and back. */
    WOOD_LEFT("wood under the channel"),
    /** Enough wood is left between the channels of two bars and the back. */
    BARS_INSIDE_THE_BACK("bars inside the back"),
    /** The deepest place of an arched floor lies where the neck bends most. */
    ARCH_IN_THE_MIDDLE("middle of the arch", Operation.CUT_ROD_CHANNEL),
    /** The strips of a laminated shaft are as wide together as the blank. */
    STRIPS_ADD_UP("strips make up the blank", Operation.CUT_ROD_CHANNEL),
    /** The channel lies inside one strip, or its middle on a joint. */
    CHANNEL_INSIDE_A_STRIP("channel inside a strip", Operation.CUT_ROD_CHANNEL),
    /** The walls of a slotted head are thick enough. */
    SLOT_WALLS("outer walls of the slotted head", Operation.FIT_THE_NUT),
    /** The web of a slotted head is thick enough. */
    SLOT_WEB("middle web of the slotted head", Operation.FIT_THE_NUT),
    /** The rollers end in the web, clear of each other. */
    ROLLERS_END_IN_THE_WEB("rollers end in the web", Operation.FIT_THE_NUT),
    /** The grain of a head sawn out of the blank does not run out too steeply. */
    GRAIN_OF_THE_HEAD("grain of the head", Operation.FIT_THE_NUT),
    /** A zero fret is as high as the others, or little higher. */
    ZERO_FRET("height of the zero fret", Operation.FIT_THE_NUT),
    /** Inserts leave wood to the cheeks. */
    INSERTS_CLEAR_OF_THE_CHEEKS("inserts clear of the cheeks", Operation.FIT_HEEL_TO_BODY),
    /** The bolts have enough thread in the inserts. */
    THREAD_HOLDS("thread in the inserts", Operation.FIT_HEEL_TO_BODY),
    /** The screws of a neck plate reach far enough, and not too far. */
    SCREWS_REACH("reach of the screws", Operation.FIT_HEEL_TO_BODY),
    /** The screws of a neck plate leave wood to the channel. */
    SCREWS_CLEAR_OF_THE_CHANNEL("screws clear of the channel", Operation.FIT_HEEL_TO_BODY),
    /** The sides fit their slots in a Spanish foot. */
    SIDES_FIT_THEIR_SLOTS("sides fit their slots", Operation.FIT_HEEL_TO_BODY),
    /** The side slots are as deep as usual. */
    SIDE_SLOTS_DEEP_ENOUGH("depth of the side slots", Operation.FIT_HEEL_TO_BODY),
    /** A glued tenon has room for glue at its sides. */
    TENON_FITS_ITS_POCKET("tenon fits its pocket", Operation.FIT_HEEL_TO_BODY),
    /** A glued tenon does not stand on the floor of its pocket. */
    TENON_SHORT_OF_THE_FLOOR("tenon short of the pocket's floor", Operation.FIT_HEEL_TO_BODY),
    /** The back's turn comes down to the heel's cap by the body joint. */
    BACK_REACHES_THE_HEEL("back reaches the heel", Operation.CARVE_THE_NECK),
    /** The dovetail is smaller than the heel. */
    DOVETAIL_INSIDE_THE_HEEL("dovetail inside the heel", Operation.FIT_HEEL_TO_BODY),
    /** Wood is left around every bolt's hole. */
    BOLTS_INSIDE("bolts inside tenon and heel", Operation.FIT_HEEL_TO_BODY),
    /** The channel leaves wood to the joint's walls and holes. */
    CHANNEL_CLEAR_OF_THE_JOINT("channel clear of the heel's joint", Operation.CUT_ROD_CHANNEL),
    /** The strings do not lie lower at half the scale than at the nut. */
    ACTION_ABOVE_THE_NUT("action above the height at the nut", Operation.FIT_THE_NUT),
    /** The fret plane meets the bridge at its height. */
    PROJECTION_HEIGHT("projection height at the bridge"),
    /** The rod can set the relief that is wanted. */
    RELIEF("relief"),
    /** The rod has clearance in the worst air. */
    ROD_PLAY("rod clearance in the worst air"),
    /** The string line meets the middle of the bridge. */
    STRING_LINE("string line at the bridge"),
    /** Every operation finds its conditions met when its turn comes. */
    ORDER_OF_WORK("order of operations"),
    /** Every part of the shape can be computed. */
    SHAPE("shape of the neck"),
    /** The neck set has an angle. */
    NECK_ANGLE("neck angle"),
    /** Load and air on this wood can be computed. */
    STRENGTH("strings and weather");

    private final String words;
    private final @Nullable String past;

    CheckCode(String words) {
        this(words, null);
    }

    /** With the operation of the usual neck after which all is done that a check found good. */
    CheckCode(String words, @Nullable String past) {
        this.words = words;
        this.past = past;
    }

    Optional<String> past() {
        return Optional.ofNullable(past);
    }

    /** {@return its code in data, such as {@code channel-centred}; lower case with hyphens} */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns it in words, such as {@code channel centred}. */
    @Override
    public String toString() {
        return words;
    }
}
