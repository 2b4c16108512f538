package org.neckgeom.neck;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The locating groove under the fingerboard of a neck without rod: nothing lies in it, all is located on it. Immutable. */
final class LocatingGroove extends Noun<LocatingGroove> implements Reinforcement {

    static final Table<LocatingGroove> TABLE = Table.of("locating groove", "a locating groove", LocatingGroove::new)
            .printedBy(LocatingGroove::sentences);

    private static final Key<LocatingGroove, Amount<Length>> LENGTH =
            TABLE.needed("length", Types.SIZE, "length of the groove").called("length of the groove");
    private static final Key<LocatingGroove, Amount<Length>> WIDTH = TABLE.needed(
                    "width", Types.SIZE, "width of the groove, that of the cutter or more")
            .called("width of the groove");
    private static final Key<LocatingGroove, Amount<Length>> DEPTH = TABLE.usual(
                    "depth", Types.SIZE, ShopUnits.mm(3), "depth of the groove below the glue face. Default: 3 mm")
            .called("depth of the groove");

    private LocatingGroove(Values<LocatingGroove> values) {
        super(values);
    }

    static LocatingGroove of(Quantity<Length> length, Quantity<Length> width) {
        return new LocatingGroove(TABLE.values().amount(LENGTH, length).amount(WIDTH, width));
    }

    @Override
    public double lengthMm() {
        return values().libraryValue(LENGTH);
    }

    @Override
    public double widthMm() {
        return values().libraryValue(WIDTH);
    }

    @Override
    public double heightMm() {
        return values().libraryValue(DEPTH);
    }

    private static Form<LocatingGroove> sentences() {
        return TABLE.facts("locating-groove").finds("locating-groove", "locating groove, {length} x {width} x {depth}");
    }
}
