package org.neckgeom.neck;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.stock.Wood;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * A strip (lamination) of a laminated shaft: one of the woods glued side by side that the neck is cut from, such as
 * {@code sugar maple, 20 mm wide}. Immutable.
 *
 * <p>Strips are listed from the bass side to the treble side, and are as long and as thick as the blank. Width more than 0.
 */
public final class Strip extends Noun<Strip> {

    /** Its keys. */
    public static final Table<Strip> TABLE =
            Table.of("strip", "a strip of a laminated shaft", Strip::new).printedBy(Strip::sentences);

    private static final Key<Strip, Wood> WOOD = TABLE.needed("wood", Wood.TYPE, "wood of the strip");
    private static final Key<Strip, Amount<Length>> WIDTH =
            TABLE.needed("width", Types.SIZE, "width of the strip across the neck");

    private Strip(Values<Strip> values) {
        super(values);
    }

    /**
     * {@return a strip}
     *
     * @param wood of the strip
     * @param width across the neck, more than 0; its unit is the one answers are given in
     */
    public static Strip of(Wood wood, Quantity<Length> width) {
        return new Strip(TABLE.values().with(WOOD, wood).amount(WIDTH, width));
    }

    /** {@return the wood} */
    public Wood wood() {
        return values().at(WOOD);
    }

    /** {@return the width across the neck, in mm; more than 0} */
    public double widthMm() {
        return values().libraryValue(WIDTH);
    }

    private static Form<Strip> sentences() {
        return TABLE.facts("strip")
                .fact(
                        "named",
                        Kind.NAME,
                        "the wood's name",
                        strip -> strip.wood().name())
                .finds("strip", "{named}, {width} wide");
    }
}
