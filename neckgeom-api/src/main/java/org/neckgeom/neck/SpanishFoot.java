package org.neckgeom.neck;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * A Spanish foot with side slots: the heel's end inside the body, and the slots into which the sides are let, such as slots
 * 2.4 mm wide and 13 mm deep for sides of 2.2 mm. Immutable.
 *
 * <p>The body is built about the neck, so the neck does not come off. Lengths are more than 0. Common practice: slots 12 to
 * 15 mm into the heel, 0.1 to 0.3 mm wider than the side or wedged; foot 25 to 40 mm long; ledge as deep as the top is thick.
 */
public final class SpanishFoot extends Noun<SpanishFoot> implements HeelJoint {

    /** Its keys. */
    public static final Table<SpanishFoot> TABLE =
            Table.of("foot", "a Spanish foot with side slots", SpanishFoot::new).printedBy(SpanishFoot::sentences);

    private static final Key<SpanishFoot, Amount<Length>> LENGTH = TABLE.needed(
                    "length", Types.SIZE, "length of the foot past the body joint, inside the body")
            .called("foot length");
    private static final Key<SpanishFoot, Amount<Length>> SIDE =
            TABLE.needed("side", Types.SIZE, "thickness of the body's sides").called("thickness of the sides");
    private static final Key<SpanishFoot, Amount<Length>> SLOT_WIDTH = TABLE.optional(
                    "slot width",
                    Types.SIZE,
                    "width of each side slot along the neck. Default: 0.2 mm wider than the sides")
            .called("side slot width");
    private static final Key<SpanishFoot, Amount<Length>> SLOT_DEPTH = TABLE.usual(
                    "slot depth", Types.SIZE, ShopUnits.mm(13), "depth of each side slot into the heel. Default: 13 mm")
            .called("side slot depth");
    private static final Key<SpanishFoot, Boolean> WEDGED =
            TABLE.usual("wedged", Types.YES_OR_NO, false, "whether wedges hold the sides in wider slots. Default: no");
    private static final Key<SpanishFoot, Amount<Length>> LEDGE = TABLE.usual(
            "ledge",
            Types.SIZE,
            ShopUnits.mm(2.5),
            "depth of the ledge under the fingerboard that takes the top: the top's thickness. Default: 2.5 mm");

    private static final double USUAL_ROOM_MM = 0.2;

    private SpanishFoot(Values<SpanishFoot> values) {
        super(values);
        if (values.has(SLOT_WIDTH) && !(slotWidthMm() > sideMm())) {
            throw values.refused(
                    SLOT_WIDTH,
                    "more-than",
                    "be more than " + values.at(SIDE) + ", the thickness of the sides",
                    values.at(SLOT_WIDTH));
        }
    }

    /**
     * {@return a foot with side slots 13 mm deep and 0.2 mm wider than the sides, and a ledge 2.5 mm deep (common practice)}
     *
     * @param length past the body joint, more than 0
     * @param side thickness of the body's sides, more than 0
     */
    public static SpanishFoot of(Quantity<Length> length, Quantity<Length> side) {
        return new SpanishFoot(TABLE.values().amount(LENGTH, length).amount(SIDE, side));
    }

    /**
     * {@return this foot with another ledge}
     *
     * @param depth the thickness of the top, more than 0
     */
    public SpanishFoot ledge(Quantity<Length> depth) {
        return new SpanishFoot(values().amount(LEDGE, depth));
    }

    /**
     * {@return this foot with other side slots}
     *
     * @param width along the neck, more than the side
     * @param depth into the heel, more than 0
     */
    public SpanishFoot slots(Quantity<Length> width, Quantity<Length> depth) {
        return new SpanishFoot(values().amount(SLOT_WIDTH, width).amount(SLOT_DEPTH, depth));
    }

    /** {@return this foot with wedges that hold the sides in their slots} */
    public SpanishFoot wedged() {
        return new SpanishFoot(values().with(WEDGED, true));
    }

    /** {@return whether wedges hold the sides in their slots} */
    public boolean isWedged() {
        return values().at(WEDGED);
    }

    /** {@return the length past the body joint in mm; more than 0} */
    public double lengthMm() {
        return values().libraryValue(LENGTH);
    }

    /** {@return the thickness of the body's sides in mm; more than 0} */
    public double sideMm() {
        return values().libraryValue(SIDE);
    }

    /** {@return the width of each side slot in mm; more than the side} */
    public double slotWidthMm() {
        return values().libraryValue(SLOT_WIDTH, sideMm() + USUAL_ROOM_MM);
    }

    /** {@return the depth of each side slot into the heel in mm; more than 0} */
    public double slotDepthMm() {
        return values().libraryValue(SLOT_DEPTH);
    }

    /** {@return the depth of the ledge for the top in mm; more than 0} */
    public double ledgeMm() {
        return values().libraryValue(LEDGE);
    }

    @Override
    public Optional<Amount<Length>> pastShoulder() {
        return values().find(LENGTH);
    }

    @Override
    public Optional<Amount<Length>> below() {
        return Optional.empty();
    }

    private static Form<SpanishFoot> sentences() {
        return TABLE.facts("spanish-foot")
                .fact("wide", Kind.MM, "width of each side slot", SpanishFoot::slotWidthMm)
                .finds(
                        "foot",
                        "Spanish foot {length} long, side slots {wide} wide and {slotDepth} deep, ledge {ledge}");
    }
}
