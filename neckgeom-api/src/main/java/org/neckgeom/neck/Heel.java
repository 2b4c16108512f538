package org.neckgeom.neck;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * The heel: the deep end of the neck at the body, such as {@code heel 78 mm high, 54 mm wide at the top}. Immutable.
 *
 * <p>The height runs from the glue face down to the cap; width is that of the mating face. Lengths are more than 0. Heel
 * blocks (stacked heel) are glued on before carving. Defaults: as wide at the cap as at the top, blocks as thick as
 * the blank, a flat joint.
 *
 * <pre>{@code
 * println(Heel.of(mm(78), mm(54)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * heel 78 mm high, 54 mm wide at the top
 * }</pre>
 */
public final class Heel extends Noun<Heel> {

    /** Its keys. */
    public static final Table<Heel> TABLE =
            Table.of("heel", "the heel", Heel::new).printedBy(Heel::sentences);

    private static final Key<Heel, Amount<Length>> HEIGHT =
            TABLE.needed("height", Types.SIZE, "height of the mating face, from glue face to cap");
    private static final Key<Heel, Amount<Length>> WIDTH =
            TABLE.needed("width", Types.SIZE, "width of the mating face at the top, cheek to cheek");
    private static final Key<Heel, Amount<Length>> CAP_WIDTH = TABLE.optional(
            "cap width",
            Types.SIZE,
            "width of the mating face at the cap, cheek to cheek. Default: the width at the top");
    private static final Key<Heel, Amount<Length>> BLOCKS = TABLE.optional(
                    "blocks", Types.SIZE, "thickness of a heel block. Default: thickness of the planed blank")
            .called("heel block thickness");
    private static final Key<Heel, Amount<Length>> BLOCK_LENGTH = TABLE.optional(
            "block length",
            Types.SIZE,
            "length of a heel block along the grain. Default: no blocks in the cutting list");
    private static final Key<Heel, Dovetail> DOVETAIL = TABLE.optional(
            "dovetail", Types.group(Dovetail.TABLE), "dovetail that joins the heel to the body. Default: none");
    private static final Key<Heel, Tenon> TENON = TABLE.optional(
            "tenon", Types.group(Tenon.TABLE), "bolted or glued tenon, instead of a dovetail. Default: none");
    private static final Key<Heel, HeelInserts> INSERTS = TABLE.optional(
            "inserts",
            Types.group(HeelInserts.TABLE),
            "threaded inserts of a heel bolted on by its flat face, instead of a dovetail. Default: none");
    private static final Key<Heel, PlateScrews> PLATE_SCREWS = TABLE.optional(
            "plate screws",
            Types.group(PlateScrews.TABLE),
            "screws of a flat heel with a neck plate, instead of a dovetail. Default: none");
    private static final Key<Heel, SpanishFoot> FOOT = TABLE.optional(
            "foot",
            Types.group(SpanishFoot.TABLE),
            "Spanish foot with side slots, instead of a dovetail. Default: none");

    static {
        TABLE.atMostOne(DOVETAIL, TENON, INSERTS, PLATE_SCREWS, FOOT);
    }

    private Heel(Values<Heel> values) {
        super(values);
        joint().below().filter(deep -> !(deep.libraryValue() <= heightMm())).ifPresent(deep -> {
            throw Refusal.of(
                    values.has(INSERTS) ? INSERTS + ".at" : (values.has(DOVETAIL) ? DOVETAIL : TENON) + ".height",
                    "joint-in-heel",
                    "be " + style().brief(heightMm()) + " or less, the heel's own height",
                    deep);
        });
        tenon().flatMap(Tenon::width)
                .filter(wide -> !(wide.libraryValue() <= widthMm()))
                .ifPresent(wide -> {
                    throw Refusal.of(
                            TENON + ".width",
                            "joint-in-heel",
                            "be " + style().brief(widthMm()) + " or less, the heel's own width",
                            wide);
                });
        refuseSlotsThatMeet(values);
    }

    /** The side slots leave wood between them. */
    private void refuseSlotsThatMeet(Values<Heel> values) {
        values.find(FOOT).filter(foot -> !(2 * foot.slotDepthMm() < widthMm())).ifPresent(foot -> {
            throw Refusal.of(
                    FOOT + ".slot depth",
                    "less-than",
                    "be less than " + style().brief(widthMm() / 2) + ", where both slots meet",
                    style().brief(foot.slotDepthMm()));
        });
        values.find(PLATE_SCREWS)
                .filter(screws -> !(screws.acrossMm() + screws.diameterMm() < widthMm()))
                .ifPresent(screws -> {
                    throw Refusal.of(
                            PLATE_SCREWS + ".across",
                            "joint-in-heel",
                            "be less than " + style().brief(widthMm() - screws.diameterMm())
                                    + ", the heel's own width less a screw",
                            style().brief(screws.acrossMm()));
                });
    }

    /**
     * {@return a heel}
     *
     * @param height from the glue face to the cap, more than 0; its unit is the one answers are given in
     * @param width of the mating face at its top, more than 0
     */
    public static Heel of(Quantity<Length> height, Quantity<Length> width) {
        return new Heel(TABLE.values().amount(HEIGHT, height).amount(WIDTH, width));
    }

    /**
     * {@return this heel with another width at the cap}
     *
     * @param width of the mating face at the cap, more than 0
     */
    public Heel capWidth(Quantity<Length> width) {
        return new Heel(values().amount(CAP_WIDTH, width));
    }

    /**
     * {@return this heel stacked from blocks of a thickness}
     *
     * @param thickness of each block, more than 0
     */
    public Heel blocks(Quantity<Length> thickness) {
        return new Heel(values().amount(BLOCKS, thickness));
    }

    /**
     * {@return this heel with the length of its blocks}
     *
     * @param alongGrain of each block, more than 0
     */
    public Heel blockLength(Quantity<Length> alongGrain) {
        return new Heel(values().amount(BLOCK_LENGTH, alongGrain));
    }

    /**
     * {@return this heel with what holds it in the body, instead of what held it before}
     *
     * @param joint a flat face, a dovetail, a tenon, inserts, plate screws or a Spanish foot, no deeper or wider than the heel
     */
    public Heel joint(HeelJoint joint) {
        Values<Heel> flat = values();
        for (Key<Heel, ?> key : List.of(DOVETAIL, TENON, INSERTS, PLATE_SCREWS, FOOT)) {
            flat = flat.without(key);
        }
        if (Objects.requireNonNull(joint, "joint") instanceof Dovetail dovetail) {
            return new Heel(flat.with(DOVETAIL, dovetail));
        }
        if (joint instanceof HeelInserts inserts) {
            return new Heel(flat.with(INSERTS, inserts));
        }
        if (joint instanceof PlateScrews screws) {
            return new Heel(flat.with(PLATE_SCREWS, screws));
        }
        if (joint instanceof SpanishFoot foot) {
            return new Heel(flat.with(FOOT, foot));
        }
        return new Heel(joint instanceof Tenon tenon ? flat.with(TENON, tenon) : flat);
    }

    /** {@return the height in mm; more than 0} */
    public double heightMm() {
        return values().libraryValue(HEIGHT);
    }

    /** {@return the width at the top in mm; more than 0} */
    public double widthMm() {
        return values().libraryValue(WIDTH);
    }

    /** {@return the width at the cap in mm; as at the top unless given} */
    public double capWidthMm() {
        return values().libraryValue(CAP_WIDTH, widthMm());
    }

    /**
     * {@return the thickness of each block in mm; more than 0}
     *
     * @param shaftThicknessMm the default thickness of the shaft under the heel block
     */
    public double blockThicknessMm(double shaftThicknessMm) {
        if (!(shaftThicknessMm > 0 && shaftThicknessMm <= LibraryUnits.MOST)) {
            throw Refusal.of(
                    "shaft's thickness",
                    "range",
                    "be more than 0 and no more than " + Numbers.plain(LibraryUnits.MOST) + " mm",
                    Numbers.plain(shaftThicknessMm) + " mm");
        }
        return values().libraryValue(BLOCKS, shaftThicknessMm);
    }

    /** {@return the length of each block along the grain; nothing when not given} */
    public Optional<Amount<Length>> blockLength() {
        return values().find(BLOCK_LENGTH);
    }

    /** {@return what holds it in the body; a flat face unless given} */
    public HeelJoint joint() {
        return values().find(DOVETAIL)
                .<HeelJoint>map(dovetail -> dovetail)
                .or(() -> values().find(TENON))
                .or(() -> values().find(INSERTS))
                .or(() -> values().find(PLATE_SCREWS))
                .or(() -> values().find(FOOT))
                .orElseGet(HeelJoint.Flat::new);
    }

    /**
     * {@return whether wood comes off its mating face to set the neck: not of a Spanish foot, about which the body is built, nor
     * of a flat heel with a neck plate, whose angle a shim sets}
     */
    public boolean isFittedByItsFace() {
        return !values().has(FOOT) && !values().has(PLATE_SCREWS);
    }

    /** {@return the dovetail that holds it; nothing for a heel of another joint} */
    public Optional<Dovetail> dovetail() {
        return values().find(DOVETAIL);
    }

    /** {@return the tenon that holds it; nothing for a heel of another joint} */
    public Optional<Tenon> tenon() {
        return values().find(TENON);
    }

    private static Form<Heel> sentences() {
        return sentences("heel ");
    }

    /** With a title before them, or none for the row of a neck. */
    static Form<Heel> sentences(String title) {
        return TABLE.facts("heel")
                .phrase("narrowing", ", {capWidth} at the cap")
                .phrase("stacked", ", blocks of {blocks}")
                .finds("heel", title + "{height} high, {width} wide at the top{narrowing}{stacked}");
    }
}
