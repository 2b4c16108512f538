package org.neckgeom.neck;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * The heights of the strings over the fret tops, such as {@code 0.4 mm at the nut, action 2 mm}; the height at half the
 * scale (the 12th fret) is the action (string height). Immutable.
 *
 * <p>Each height is that of a string's underside, as a rule or feeler gauge reads it. Without heights of the treble side all
 * strings have the same; with them, each string's heights follow its place across, straight from the outermost bass string to the
 * outermost treble string. All are 0 or more.
 *
 * <pre>{@code
 * println(StringHeights.of(mm(0.4), mm(2)).treble(mm(0.3), mm(1.6)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 0.4 mm at the nut, action 2 mm; on the treble side 0.3 mm and 1.6 mm
 * }</pre>
 */
public final class StringHeights extends Noun<StringHeights> {

    /** Its keys. */
    public static final Table<StringHeights> TABLE =
            Table.of("", "the heights of the strings", StringHeights::new).printedBy(StringHeights::sentences);

    private static final Key<StringHeights, Amount<Length>> AT_NUT = TABLE.needed(
                    "at nut", Types.SIZE_OR_NOTHING, "height of the strings' undersides over the fret tops at the nut")
            .called("string at the nut");
    private static final Key<StringHeights, Amount<Length>> ACTION = TABLE.needed(
            "action",
            Types.SIZE_OR_NOTHING,
            "height of the strings' undersides over the fret tops at half the scale; no fall-away counted");
    private static final Key<StringHeights, Amount<Length>> TREBLE_AT_NUT = TABLE.optional(
            "treble at nut", Types.SIZE_OR_NOTHING, "same at the outermost treble string. Default: as at the nut");
    private static final Key<StringHeights, Amount<Length>> TREBLE_ACTION = TABLE.optional(
            "treble action", Types.SIZE_OR_NOTHING, "action of the outermost treble string. Default: as the action");

    private static final StringHeights USUAL = of(ShopUnits.mm(0.4), ShopUnits.mm(2));

    private StringHeights(Values<StringHeights> values) {
        super(values);
    }

    /**
     * {@return heights, the same for all strings}
     *
     * @param atNut of the undersides over the fret tops at the nut, 0 or more
     * @param action of the undersides over the fret tops at half the scale, no fall-away counted, 0 or more
     */
    public static StringHeights of(Quantity<Length> atNut, Quantity<Length> action) {
        return new StringHeights(TABLE.values().amount(AT_NUT, atNut).amount(ACTION, action));
    }

    /** {@return the usual heights, common practice: 0.4 mm at the nut, action 2 mm} */
    public static StringHeights usual() {
        return USUAL;
    }

    /**
     * {@return these heights with others on the treble side; those before are then the outermost bass string's}
     *
     * @param atNut of the outermost treble string at the nut, 0 or more
     * @param action of the outermost treble string at half the scale, 0 or more
     */
    public StringHeights treble(Quantity<Length> atNut, Quantity<Length> action) {
        return new StringHeights(values().amount(TREBLE_AT_NUT, atNut).amount(TREBLE_ACTION, action));
    }

    /** {@return the height at the nut; of the outermost bass string where the treble side has its own; 0 or more} */
    public Amount<Length> atNut() {
        return values().at(AT_NUT);
    }

    /** {@return the action; of the outermost bass string where the treble side has its own; 0 or more} */
    public Amount<Length> action() {
        return values().at(ACTION);
    }

    /** {@return the height of the outermost treble string at the nut; 0 or more} */
    public Amount<Length> trebleAtNut() {
        return values().find(TREBLE_AT_NUT).orElse(atNut());
    }

    /** {@return the action of the outermost treble string; 0 or more} */
    public Amount<Length> trebleAction() {
        return values().find(TREBLE_ACTION).orElse(action());
    }

    /**
     * {@return the height at the nut of a string between the outermost ones, in mm}
     *
     * @param across 0 for the outermost bass string, 1 for the outermost treble string, 0.5 for the middle
     * @throws IllegalArgumentException if it is not between 0 and 1
     */
    public double atNutMm(double across) {
        return between(atNut(), trebleAtNut(), across);
    }

    /**
     * {@return the action of a string between the outermost ones, in mm}
     *
     * @param across 0 for the outermost bass string, 1 for the outermost treble string, 0.5 for the middle
     * @throws IllegalArgumentException if it is not between 0 and 1
     */
    public double actionMm(double across) {
        return between(action(), trebleAction(), across);
    }

    private static double between(Amount<Length> bass, Amount<Length> treble, double across) {
        if (!(across >= 0 && across <= 1)) {
            throw Refusal.of("place across", "range", "be between 0 and 1", across);
        }
        return bass.libraryValue() + across * (treble.libraryValue() - bass.libraryValue());
    }

    boolean isSloped() {
        return values().has(TREBLE_AT_NUT) || values().has(TREBLE_ACTION);
    }

    private static Form<StringHeights> sentences() {
        return TABLE.facts("string-heights")
                .phrase("treble", heights -> !heights.isSloped(), "")
                .phrase("treble", "; on the treble side {trebleAtNut} and {trebleAction}")
                .finds("string-heights", "{atNut} at the nut, action {action}{treble}");
    }
}
