package org.neckgeom.plan;

import static org.neckgeom.units.ShopUnits.mm;

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
 * The limits of a neck: slot offset, floor thickness (wood under the channel), bridge offset of the string line, board offset,
 * wood beside the channel, bridge height and string length. Immutable. Defaults (common practice): 0.1, 3, 1, 0.3, 0.2, 0.5 and
 * 0.5 mm; for a neck in inches 4 thou, 1/8 in, 40, 12, 8, 20 and 20 thou.
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

    private static final Key<NeckLimits, Amount<Length>> BOARD_OFFSET = TABLE.optional(
            "board offset",
            Types.SIZE,
            "greatest offset of the fingerboard on the neck at the body joint, either way. Default: 0.3 mm or 12 thou");
    private static final Key<NeckLimits, Amount<Length>> WOOD_BESIDE_CHANNEL = TABLE.optional(
            "wood beside channel",
            Types.SIZE,
            "greatest difference of the wood beside the channel from the drawing. Default: 0.2 mm or 8 thou");
    private static final Key<NeckLimits, Amount<Length>> BRIDGE_HEIGHT = TABLE.optional(
            "bridge height",
            Types.SIZE,
            "greatest error of the fret plane's height at the bridge, either way. Default: 0.5 mm or 20 thou");
    private static final Key<NeckLimits, Amount<Length>> STRING_LENGTH = TABLE.optional(
            "string length",
            Types.SIZE,
            "greatest error of the string length from nut to bridge, either way. Default: 0.5 mm or 20 thou");

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

    /**
     * {@return these limits with another offset of the fingerboard on the neck}
     *
     * @param eitherWay greatest offset at the body joint, more than 0
     */
    public NeckLimits boardOffset(Quantity<Length> eitherWay) {
        return new NeckLimits(values().amount(BOARD_OFFSET, eitherWay));
    }

    /**
     * {@return these limits with another difference of the wood beside the channel}
     *
     * @param eitherWay greatest difference from the drawing, more than 0
     */
    public NeckLimits woodBesideChannel(Quantity<Length> eitherWay) {
        return new NeckLimits(values().amount(WOOD_BESIDE_CHANNEL, eitherWay));
    }

    /**
     * {@return these limits with another height at the bridge}
     *
     * @param eitherWay greatest error of the fret plane's height, more than 0
     */
    public NeckLimits bridgeHeight(Quantity<Length> eitherWay) {
        return new NeckLimits(values().amount(BRIDGE_HEIGHT, eitherWay));
    }

    /**
     * {@return these limits with another string length}
     *
     * @param eitherWay greatest error from nut to bridge, more than 0
     */
    public NeckLimits stringLength(Quantity<Length> eitherWay) {
        return new NeckLimits(values().amount(STRING_LENGTH, eitherWay));
    }

    /** With those not given, for a neck designed in a style: printed in another it has the same limits. */
    NeckLimits ofNeck(LengthStyle designed) {
        return new NeckLimits(values().with(SLOT_OFFSET, slotOffset(designed))
                .with(FLOOR_THICKNESS, floorThickness(designed))
                .with(BRIDGE_OFFSET, bridgeOffset(designed))
                .with(BOARD_OFFSET, eitherWay(BudgetCode.BOARD_AT_BODY_JOINT, designed))
                .with(WOOD_BESIDE_CHANNEL, eitherWay(BudgetCode.WOOD_BESIDE_CHANNEL, designed))
                .with(BRIDGE_HEIGHT, eitherWay(BudgetCode.PROJECTION_HEIGHT, designed))
                .with(STRING_LENGTH, eitherWay(BudgetCode.STRING_LENGTH, designed)));
    }

    /** How far a deviation may go, either way; for a neck in a style. */
    Amount<Length> eitherWay(BudgetCode which, LengthStyle neck) {
        return switch (which) {
            case STRING_LINE -> bridgeOffset(neck);
            case BOARD_AT_BODY_JOINT -> or(values().find(BOARD_OFFSET), neck, mm(0.3), ShopUnit.THOU.of(12));
            case WOOD_BESIDE_CHANNEL -> or(values().find(WOOD_BESIDE_CHANNEL), neck, mm(0.2), ShopUnit.THOU.of(8));
            case PROJECTION_HEIGHT -> or(values().find(BRIDGE_HEIGHT), neck, mm(0.5), ShopUnit.THOU.of(20));
            case STRING_LENGTH -> or(values().find(STRING_LENGTH), neck, mm(0.5), ShopUnit.THOU.of(20));
        };
    }

    /** How far off the middle the slot may lie; for a neck in a style. */
    Amount<Length> slotOffset(LengthStyle neck) {
        return or(values().find(SLOT_OFFSET), neck, mm(0.1), ShopUnit.THOU.of(4));
    }

    /** The least wood between channel and back. */
    Amount<Length> floorThickness(LengthStyle neck) {
        return or(values().find(FLOOR_THICKNESS), neck, mm(3), ShopUnit.INCH.of(0.125));
    }

    /** How far off the bridge's middle the strings may run. */
    Amount<Length> bridgeOffset(LengthStyle neck) {
        return or(values().find(BRIDGE_OFFSET), neck, mm(1), ShopUnit.THOU.of(40));
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
                .line("bridgeOffset", "bridge offset", "{bridgeOffset}")
                .line("boardOffset", "board offset", "{boardOffset}")
                .line("woodBesideChannel", "wood beside channel", "{woodBesideChannel}")
                .line("bridgeHeight", "bridge height", "{bridgeHeight}")
                .line("stringLength", "string length", "{stringLength}");
    }
}
