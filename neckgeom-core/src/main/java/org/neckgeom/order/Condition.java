package org.neckgeom.order;

import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/**
 * Something that is so or not so about the work, such as {@code straight parallel edges} or {@code wings}: what an
 * operation needs, finds in its way, takes away or leaves behind. Immutable.
 *
 * <p>The constants are those of the usual neck; {@link #named} makes more. Two conditions are equal when their names are.
 */
public final class Condition extends ValueAnswer {

    static final Form<Condition> FORM = Form.<Condition>of("condition")
            .fact("name", Kind.NAME, "of the condition", Condition::name)
            .fact("code", Kind.NAME, "of the condition", Condition::code)
            .finds("condition", "{name}");

    /** The stock has come to rest: dry, and moved as far as it will. */
    public static final Condition RESTED_STOCK = named("rested stock");
    /** The glue face is flat along its length and has no twist. */
    public static final Condition FLAT_FACE = named("flat face");
    /** The blank's edges are straight and parallel, so that a fence sees one width all along. */
    public static final Condition PARALLEL_EDGES = named("straight parallel edges");
    /** The edges stand square to the face, so that one of them can ride a fence. */
    public static final Condition SQUARE_EDGES = named("edges square to the face");
    /** Centreline, nut and body joint are marked on all sides. */
    public static final Condition MARKED_LINES = named("marked lines");
    /** The channel for the rod is cut. */
    public static final Condition ROD_CHANNEL = named("rod channel");
    /** The scarf is sawn and planed. */
    public static final Condition SCARF = named("scarf");
    /** The head piece is glued on. */
    public static final Condition HEAD = named("head");
    /** The head has its thickness, and its faces and sides are true. */
    public static final Condition TRUE_HEAD = named("true head");
    /** The heel block is glued to the back. */
    public static final Condition HEEL_BLOCK = named("heel block");
    /** Tenon, dovetail, pocket or bolt holes are cut. */
    public static final Condition HEEL_JOINT = named("heel joint");
    /** The strips that widen the head are glued on. */
    public static final Condition WINGS = named("wings");
    /** The veneer on the head's face is glued on. */
    public static final Condition HEAD_VENEER = named("head veneer");
    /** The veneer on the head's back is glued on. */
    public static final Condition BACK_STRAP = named("back strap");
    /** The sides are cut to the taper, with or without spare wood. */
    public static final Condition TAPERED_SIDES = named("tapered sides");
    /** The back is roughed out, with spare wood on it. */
    public static final Condition ROUGH_BACK = named("rough back");
    /** The back is no longer flat: roughed out or carved. */
    public static final Condition ROUNDED_BACK = named("rounded back");
    /** The rod has been tested and lies in its channel. */
    public static final Condition ROD_IN = named("rod in its channel");
    /** The fingerboard's own edges are straight and parallel. */
    public static final Condition BOARD_EDGES = named("fingerboard's parallel edges");
    /** The fret slots are sawn. */
    public static final Condition FRET_SLOTS = named("fret slots");
    /** The fingerboard is glued on and covers the face. */
    public static final Condition FINGERBOARD = named("fingerboard on");
    /** The sides are trimmed to the fingerboard. */
    public static final Condition TRIMMED_SIDES = named("sides trimmed to the fingerboard");
    /** The neck is carved to its section. */
    public static final Condition CARVED_NECK = named("carved neck");
    /** The heel closes on the finished body at the right angle. */
    public static final Condition FITTED_HEEL = named("heel fitted to the body");
    /** The frets are in. */
    public static final Condition FRETS = named("frets");
    /** The frets are levelled with the rod at neutral. */
    public static final Condition LEVEL_FRETS = named("level frets");
    /** The nut is in its place. */
    public static final Condition NUT = named("nut");

    private final String name;

    private Condition(String name) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.name = name;
    }

    /**
     * {@return a condition of the maker's own}
     *
     * @param name a noun phrase of 1 to 50 characters, such as {@code inlay in the head}
     */
    public static Condition named(String name) {
        return new Condition(Names.checked(name, "a condition's name"));
    }

    /** {@return the name} */
    public String name() {
        return name;
    }

    /** {@return the name in lower case with hyphens, such as {@code head-veneer}; stable for the usual neck's} */
    public String code() {
        return Names.code(name);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {name};
    }
}
