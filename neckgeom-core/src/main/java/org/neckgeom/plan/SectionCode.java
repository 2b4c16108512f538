package org.neckgeom.plan;

import java.util.Locale;

/** A section of a plan. Stable: a code is added, never changed. */
public enum SectionCode {
    /** What has been read on the neck itself. */
    READINGS("Measured on the neck"),
    /** What is out of its limit, with the ways to put it right. */
    REPAIRS("Repairs"),
    /** Trial cuts, fence moves, where the slot lies and what comes next. */
    CENTRING("Centre the cutter"),
    /** Depths, passes, stops. */
    CHANNEL("Truss rod channel"),
    /** Force, power and chip load of the deepest pass. */
    CUTTER_LOAD("Cutting forces (estimate)"),
    /** What a head that is on does at the fence. */
    HEAD_AT_THE_FENCE("Spacer if the head is glued first"),
    /** Least blank, and what is cut from this one. */
    BLANK_AND_CUTTING_LIST("Neck blank and cutting list"),
    /** Lines and saw cut of the scarf joint. */
    SCARF("Scarf joint"),
    /** A head sawn out of the blank with the shaft. */
    HEAD_IN_ONE_PIECE("Head and shaft in one piece"),
    /** Outline, wings, thickness, each string from nut to post. */
    HEAD("Head and tuner posts"),
    /** Every fret from the nut. */
    FRETS("Fret positions"),
    /** Both ends of fanned frets. */
    FANNED_FRETS("Fanned frets"),
    /** What the crown leaves of the fingerboard's thickness. */
    FINGERBOARD("Fingerboard"),
    /** The strings across nut, saddle and board. */
    STRINGS_ACROSS("String spacing"),
    /** The back of the neck and the facets planed before carving. */
    BACK("Back profile and facets"),
    /** Bars glued in beside the middle. */
    BARS("Stiffening bars"),
    /** The strips of a laminated shaft. */
    LAMINATED("Laminated shaft"),
    /** What holds the strings of a headless neck. */
    STRING_ANCHOR("String anchor"),
    /** What the carved back leaves under the channel. */
    WOOD_LEFT("Wood under the channel"),
    /** The angle of neck to body. */
    NECK_ANGLE("Neck angle"),
    /** Blocks, dovetail or tenon, and corrections. */
    HEEL("Heel and body joint"),
    /** Load, bow and rod force. */
    STRINGS_AND_RELIEF("String tension and relief (estimate)"),
    /** What drier or damper air changes. */
    WEATHER("Humidity and fret ends (estimate)"),
    /** What a change or an error of a round size would ask for. */
    WHAT_IF("What if"),
    /** The budgets, each in one row. */
    ERRORS("Tolerance stack-up"),
    /** The operations that are left, in their order. */
    ORDER_OF_WORK("Order of operations");

    private final String title;

    SectionCode(String title) {
        this.title = title;
    }

    /** {@return its code in data, such as {@code wood-left}; lower case with hyphens} */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns its title, such as {@code Wood under the channel}. */
    @Override
    public String toString() {
        return title;
    }
}
