package org.neckgeom.stock;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnits;

/**
 * A {@index "neck blank"} ({@index "neck stock"}, plank): the squared piece before shaping, such as
 * {@code blank 640 mm x 61 mm x 20 mm}. Immutable.
 *
 * <p>The length runs along the neck, the thickness from glue face to back; all are more than 0. It is out of parallel by as
 * much as one end is wider than the other. Allowances are wood kept at each end and at each edge, 0 or more. Defaults:
 * parallel edges, the nut line at the head end, no allowance.
 *
 * <pre>{@code
 * println(Blank.ofLength(mm(640)).section(mm(61), mm(20)).outOfParallel(mm(0.06)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * blank 640 mm x 61 mm x 20 mm, edges out of parallel by 0.06 mm, wider at the heel end
 * }</pre>
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Blank extends Noun<Blank> {

    /** Its keys. */
    public static final Table<Blank> TABLE = Table.of("blank", "the squared piece the neck is made from", Blank::new)
            .printedBy(Blank::sentences);

    private static final Key<Blank, Amount<Length>> LENGTH =
            TABLE.needed("length", Types.SIZE, "length along the neck, before the scarf is sawn");
    private static final Key<Blank, Amount<Length>> WIDTH =
            TABLE.needed("width", Types.SIZE, "width at the middle of the length");
    private static final Key<Blank, Amount<Length>> THICKNESS =
            TABLE.needed("thickness", Types.SIZE, "thickness from the glue face to the back");
    private static final Key<Blank, Amount<Length>> OUT_OF_PARALLEL = TABLE.usual(
                    "out of parallel",
                    Types.EITHER_WAY,
                    ShopUnits.mm(0),
                    "width at the heel end minus width at the head end. Default: 0")
            .called("edges out of parallel");
    private static final Key<Blank, Amount<Length>> NUT = TABLE.usual(
                    "nut at",
                    Types.SIZE_OR_NOTHING,
                    ShopUnits.mm(0),
                    "distance from the head end to the nut line. Default: 0")
            .called("nut line's distance from the head end");
    private static final Key<Blank, Amount<Length>> END_ALLOWANCE = TABLE.optional(
                    "end allowance",
                    Types.SIZE_OR_NOTHING,
                    "allowance: wood kept at each end. Default: no cutting list where no allowance is given")
            .called("end allowance");
    private static final Key<Blank, Amount<Length>> EDGE_ALLOWANCE = TABLE.optional(
                    "edge allowance", Types.SIZE_OR_NOTHING, "allowance: wood kept at each edge. Default: 0")
            .called("edge allowance");
    private static final Key<Blank, Amount<Length>> PLANING = TABLE.optional(
                    "planing", Types.SIZE_OR_NOTHING, "thickness planed off each face. Default: 0")
            .called("planing of each face");
    private static final Key<Blank, Amount<Length>> SAW_KERF = TABLE.usual(
                    "saw kerf", Types.SIZE_OR_NOTHING, ShopUnits.mm(0), "width of a saw cut square across. Default: 0")
            .called("saw kerf");

    static {
        TABLE.moved(Moves.none().and("end spare", "end allowance").and("edge spare", "edge allowance"));
    }

    private Blank(Values<Blank> values) {
        super(values);
        if (!(Math.abs(outOfParallelMm()) < widthMm())) {
            throw values.refused(
                    OUT_OF_PARALLEL,
                    "less-than",
                    "be less than " + width() + ", the blank's width, either way",
                    values.at(OUT_OF_PARALLEL));
        }
        if (!(nutFromHeadEndMm() < lengthMm())) {
            throw values.refused(NUT, "less-than", "be less than " + length() + ", the blank's length", values.at(NUT));
        }
    }

    /**
     * Begins a blank with parallel edges.
     *
     * @param length along the neck, more than 0; its unit is the one answers are given in
     * @return a blank that still needs its section
     */
    public static NeedsSection ofLength(Quantity<Length> length) {
        return new NeedsSection(TABLE.values().amount(LENGTH, length));
    }

    /** A blank of a length, whose section is not given yet. Immutable. */
    public static final class NeedsSection extends Unfinished<Blank> {

        private NeedsSection(Values<Blank> values) {
            super(values, "blank that needs its section");
        }

        /**
         * {@return the blank}
         *
         * @param width across the neck, more than 0
         * @param thickness from the glue face to the back, more than 0
         */
        public Blank section(Quantity<Length> width, Quantity<Length> thickness) {
            return new Blank(values().amount(WIDTH, width).amount(THICKNESS, thickness));
        }
    }

    /**
     * {@return this blank with its edges out of parallel}
     *
     * @param widerAtHeelEnd width at the heel end less width at the head end, either sign, smaller than the width
     */
    public Blank outOfParallel(Quantity<Length> widerAtHeelEnd) {
        return new Blank(values().amount(OUT_OF_PARALLEL, widerAtHeelEnd));
    }

    /**
     * {@return this blank with its nut line laid out}
     *
     * @param fromHeadEnd distance from the blank's head end to the nut line, 0 or more, less than the length
     */
    public Blank nutAt(Quantity<Length> fromHeadEnd) {
        return new Blank(values().amount(NUT, fromHeadEnd));
    }

    /**
     * {@return this blank with its allowance at each end}
     *
     * @param each 0 or more
     */
    public Blank endAllowance(Quantity<Length> each) {
        return new Blank(values().amount(END_ALLOWANCE, each));
    }

    /**
     * {@return this blank with its allowance at each edge}
     *
     * @param each 0 or more
     */
    public Blank edgeAllowance(Quantity<Length> each) {
        return new Blank(values().amount(EDGE_ALLOWANCE, each));
    }

    /**
     * {@return this blank with what is planed off each face}
     *
     * @param each 0 or more
     */
    public Blank planing(Quantity<Length> each) {
        return new Blank(values().amount(PLANING, each));
    }

    /**
     * {@return this blank with what a saw cut square across takes}
     *
     * @param cut 0 or more
     */
    public Blank sawKerf(Quantity<Length> cut) {
        return new Blank(values().amount(SAW_KERF, cut));
    }

    /** {@return the length; more than 0} */
    public Amount<Length> length() {
        return style().amount(lengthMm());
    }

    /** {@return the width at the middle of the length; more than 0} */
    public Amount<Length> width() {
        return style().amount(widthMm());
    }

    /** {@return the thickness; more than 0} */
    public Amount<Length> thickness() {
        return style().amount(thicknessMm());
    }

    /** {@return the length in mm; more than 0} */
    public double lengthMm() {
        return values().libraryValue(LENGTH);
    }

    /** {@return the width at the middle of the length in mm; more than 0} */
    public double widthMm() {
        return values().libraryValue(WIDTH);
    }

    /** {@return the thickness in mm; more than 0} */
    public double thicknessMm() {
        return values().libraryValue(THICKNESS);
    }

    /**
     * {@return how much wider the blank is at its heel end than at its head end, in mm; either sign; 0 for parallel
     * edges}
     */
    public double outOfParallelMm() {
        return values().libraryValue(OUT_OF_PARALLEL);
    }

    /** {@return the distance from the blank's head end to the nut line, in mm; 0 or more} */
    public double nutFromHeadEndMm() {
        return values().libraryValue(NUT);
    }

    /**
     * {@return the width at a station: {@code W(x) = W + t (s/L - 1/2)}, s the distance from the head end; the width in
     * mm}
     *
     * @param xMm station along the neck in mm, 0 at the nut line, positive toward the body
     */
    public double widthAtMm(double xMm) {
        return widthMm() + outOfParallelMm() * ((LibraryUnits.stationMm(xMm) + nutFromHeadEndMm()) / lengthMm() - 0.5);
    }

    /**
     * {@return whether anything is to spare or to be planed off: only then is there a cutting list; true where a spare
     * or the planing was given, be it 0}
     */
    public boolean hasSpare() {
        return values().has(END_ALLOWANCE) || values().has(EDGE_ALLOWANCE) || values().has(PLANING);
    }

    /** {@return what the blank shall have to spare at each end, in mm; 0 unless given} */
    public double endAllowanceMm() {
        return values().libraryValue(END_ALLOWANCE, 0);
    }

    /** {@return what the blank shall have to spare at each edge, in mm; 0 unless given} */
    public double edgeAllowanceMm() {
        return values().libraryValue(EDGE_ALLOWANCE, 0);
    }

    /** {@return what is planed off each face, in mm; 0 unless given} */
    public double planingMm() {
        return values().libraryValue(PLANING, 0);
    }

    /** {@return the thickness with both faces planed, in mm; 0 or less where the planing leaves nothing} */
    public double planedThicknessMm() {
        return thicknessMm() - 2 * planingMm();
    }

    /** {@return what a saw cut square across takes, in mm; 0 unless given} */
    public double sawKerfMm() {
        return values().libraryValue(SAW_KERF);
    }

    private static Form<Blank> sentences() {
        return TABLE.facts("blank")
                .phrase("edges", ", edges out of parallel by {outOfParallel:size}")
                .phrase("taper", blank -> blank.outOfParallelMm() > 0, "{edges}, wider at the heel end")
                .phrase("taper", blank -> blank.outOfParallelMm() < 0, "{edges}, wider at the head end")
                .finds("blank", "blank {length} x {width} x {thickness}{taper}");
    }
}
