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

/**
 * A volute ({@index diamond}, dart): the thickening behind the nut, such as
 * {@code volute 3 mm deeper at the nut, run out 30 mm from it}. Immutable.
 *
 * <p>Both lengths are more than 0; the length runs from the nut line to each end of the volute.
 */
public final class Volute extends Noun<Volute> {

    /** Its keys. */
    public static final Table<Volute> TABLE =
            Table.of("volute", "a volute behind the nut", Volute::new).printedBy(Volute::sentences);

    private static final Key<Volute, Amount<Length>> EXTRA_DEPTH =
            TABLE.needed("extra depth", Types.SIZE, "depth that the volute adds at the nut");
    private static final Key<Volute, Amount<Length>> LENGTH =
            TABLE.needed("length", Types.SIZE, "distance from the nut to each end of the volute");

    private Volute(Values<Volute> values) {
        super(values);
    }

    /**
     * {@return a volute: extra depth that is greatest at the nut and runs out smoothly both ways, {@code extra (1 +
     * cos(pi x / length)) / 2}}
     *
     * @param extraDepth at the nut, more than 0; its unit is the one answers are given in
     * @param length from the nut to where it has run out, more than 0
     */
    public static Volute of(Quantity<Length> extraDepth, Quantity<Length> length) {
        return new Volute(TABLE.values().amount(EXTRA_DEPTH, extraDepth).amount(LENGTH, length));
    }

    /** {@return how much deeper the neck is at the nut, in mm; more than 0} */
    public double extraDepthMm() {
        return values().libraryValue(EXTRA_DEPTH);
    }

    /** {@return how far from the nut it has run out, in mm; more than 0} */
    public double lengthMm() {
        return values().libraryValue(LENGTH);
    }

    private static Form<Volute> sentences() {
        return TABLE.facts("volute").finds("volute", "volute {extraDepth} deeper at the nut, run out {length} from it");
    }
}
