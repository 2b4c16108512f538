package org.neckgeom.plan;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The limits a neck shall keep: slot offset, wood under the channel, strings at the bridge. Immutable. Defaults (common
 * practice): 0.1 mm, 3 mm and 1 mm; for a neck in inches 4 thou, 1/8 in and 40 thou.
 */
public final class NeckLimits extends Noun<NeckLimits> {

    /** Its keys. */
    public static final Table<NeckLimits> TABLE =
            Table.of("limit", "the limits to keep", NeckLimits::new).printedBy(NeckLimits::sentences);

    private static final Key<NeckLimits, Amount<Length>> SLOT_OFFSET = TABLE.optional(
            "slot offset", Types.SIZE, "how far off the middle the slot may lie, either way; 0.1 mm or 4 thou");
    private static final Key<NeckLimits, Amount<Length>> WOOD_LEFT =
            TABLE.optional("wood left", Types.SIZE, "the least wood to leave between channel and back; 3 mm or 1/8 in");
    private static final Key<NeckLimits, Amount<Length>> AT_BRIDGE = TABLE.optional(
            "strings at bridge",
            Types.SIZE,
            "how far off the middle of the bridge they may run, either way; 1 mm or 40 thou");

    private NeckLimits(Values<NeckLimits> values) {
        super(values);
    }

    /** {@return the limits of common practice; none given} */
    public static NeckLimits withDefaults() {
        return new NeckLimits(TABLE.values());
    }

    /**
     * {@return these limits with another of the slot's offset}
     *
     * @param eitherWay how far off the middle, more than 0
     */
    public NeckLimits slotOffset(Quantity<Length> eitherWay) {
        return new NeckLimits(values().amount(SLOT_OFFSET, eitherWay));
    }

    /**
     * {@return these limits with another of the wood under the channel}
     *
     * @param least between channel and back, more than 0
     */
    public NeckLimits woodLeft(Quantity<Length> least) {
        return new NeckLimits(values().amount(WOOD_LEFT, least));
    }

    /**
     * {@return these limits with another of the strings at the bridge}
     *
     * @param eitherWay how far off its middle, more than 0
     */
    public NeckLimits stringsAtBridge(Quantity<Length> eitherWay) {
        return new NeckLimits(values().amount(AT_BRIDGE, eitherWay));
    }

    /** How far off the middle the slot may lie; for a neck in a style. */
    Amount<Length> slotOffset(LengthStyle neck) {
        return or(values().find(SLOT_OFFSET), neck, ShopUnit.MILLIMETRE.of(0.1), ShopUnit.THOU.of(4));
    }

    /** The least wood between channel and back. */
    Amount<Length> woodLeft(LengthStyle neck) {
        return or(values().find(WOOD_LEFT), neck, ShopUnit.MILLIMETRE.of(3), ShopUnit.INCH.of(0.125));
    }

    /** How far off the bridge's middle the strings may run. */
    Amount<Length> stringsAtBridge(LengthStyle neck) {
        return or(values().find(AT_BRIDGE), neck, ShopUnit.MILLIMETRE.of(1), ShopUnit.THOU.of(40));
    }

    private static Amount<Length> or(
            Optional<Amount<Length>> given, LengthStyle neck, Amount<Length> metric, Amount<Length> inches) {
        return given.orElse(neck == LengthStyle.MILLIMETRES ? metric : inches);
    }

    private static Form<NeckLimits> sentences() {
        return TABLE.facts("neck-limits")
                .finds("limits", "Limits")
                .line("slotOffset", "slot offset", "{slotOffset}")
                .line("woodLeft", "wood left", "{woodLeft}")
                .line("stringsAtBridge", "strings at the bridge", "{stringsAtBridge}");
    }
}
