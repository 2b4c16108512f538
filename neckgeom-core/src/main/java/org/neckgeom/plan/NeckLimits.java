package org.neckgeom.plan;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The limits of a neck: slot offset, floor thickness (wood under the channel), bridge offset of the string line. Immutable. Defaults (common
 * practice): 0.1 mm, 3 mm and 1 mm; for a neck in inches 4 thou, 1/8 in and 40 thou.
 */
public final class NeckLimits extends Noun<NeckLimits> {

    /** Its keys. */
    public static final Table<NeckLimits> TABLE =
            Table.of("limit", "the limits to keep", NeckLimits::new).printedBy(NeckLimits::sentences);

    private static final Key<NeckLimits, Amount<Length>> SLOT_OFFSET =
            TABLE.optional("slot offset", Types.SIZE, "greatest slot offset, either way. Default: 0.1 mm or 4 thou");
    private static final Key<NeckLimits, Amount<Length>> FLOOR_THICKNESS = TABLE.optional(
            "floor thickness", Types.SIZE, "least wood under the channel, channel to back. Default: 3 mm or 1/8 in");
    private static final Key<NeckLimits, Amount<Length>> BRIDGE_OFFSET = TABLE.optional(
            "bridge offset",
            Types.SIZE,
            "greatest offset of the string line at the bridge, either way. Default: 1 mm or 40 thou");

    static {
        TABLE.moved(Moves.none().and("wood left", "floor thickness").and("strings at bridge", "bridge offset"));
    }

    private NeckLimits(Values<NeckLimits> values) {
        super(values);
    }

    /** {@return the limits of common practice; none given} */
    public static NeckLimits withDefaults() {
        return new NeckLimits(TABLE.values());
    }

    /**
     * {@return these limits with another slot offset}
     *
     * @param eitherWay greatest slot offset, more than 0
     */
    public NeckLimits slotOffset(Quantity<Length> eitherWay) {
        return new NeckLimits(values().amount(SLOT_OFFSET, eitherWay));
    }

    /**
     * {@return these limits with another floor thickness}
     *
     * @param least between channel and back, more than 0
     */
    public NeckLimits floorThickness(Quantity<Length> least) {
        return new NeckLimits(values().amount(FLOOR_THICKNESS, least));
    }

    /**
     * {@return these limits with another bridge offset}
     *
     * @param eitherWay greatest offset of the string line at the bridge, more than 0
     */
    public NeckLimits bridgeOffset(Quantity<Length> eitherWay) {
        return new NeckLimits(values().amount(BRIDGE_OFFSET, eitherWay));
    }

    /** How far off the middle the slot may lie; for a neck in a style. */
    Amount<Length> slotOffset(LengthStyle neck) {
        return or(values().find(SLOT_OFFSET), neck, ShopUnit.MILLIMETRE.of(0.1), ShopUnit.THOU.of(4));
    }

    /** The least wood between channel and back. */
    Amount<Length> floorThickness(LengthStyle neck) {
        return or(values().find(FLOOR_THICKNESS), neck, ShopUnit.MILLIMETRE.of(3), ShopUnit.INCH.of(0.125));
    }

    /** How far off the bridge's middle the strings may run. */
    Amount<Length> bridgeOffset(LengthStyle neck) {
        return or(values().find(BRIDGE_OFFSET), neck, ShopUnit.MILLIMETRE.of(1), ShopUnit.THOU.of(40));
    }

    private static Amount<Length> or(
            Optional<Amount<Length>> given, LengthStyle neck, Amount<Length> metric, Amount<Length> inches) {
        return given.orElse(neck == LengthStyle.MILLIMETRES ? metric : inches);
    }

    private static Form<NeckLimits> sentences() {
        return TABLE.facts("neck-limits")
                .finds("limits", "Limits")
                .line("slotOffset", "slot offset", "{slotOffset}")
                .line("floorThickness", "floor thickness", "{floorThickness}")
                .line("bridgeOffset", "bridge offset", "{bridgeOffset}");
    }
}
