package org.neckgeom.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/** The turn of the back into the heel, such as {@code turn into the heel from 270 mm, radius 40 mm}. Immutable. */
public final class HeelTurn extends Noun<HeelTurn> {

    /** Its keys. */
    public static final Table<HeelTurn> TABLE = Table.of(
                    "heel transition", "the transition from the back to the heel", HeelTurn::new)
            .printedBy(HeelTurn::sentences);

    private static final Key<HeelTurn, Amount<Length>> START =
            TABLE.needed("starts at", Types.SIZE, "distance from the nut to the start of the transition");
    private static final Key<HeelTurn, Amount<Length>> RADIUS =
            TABLE.needed("turn radius", Types.SIZE, "radius of the quarter circle into the heel");

    private HeelTurn(Values<HeelTurn> values) {
        super(values);
    }

    /**
     * {@return a turn: a quarter circle, tangent to the back where it starts}
     *
     * @param start from the nut to where the wood gets deeper, more than 0; its unit is the one answers are given in
     * @param radius of the turn, more than 0
     */
    public static HeelTurn from(Quantity<Length> start, Quantity<Length> radius) {
        return new HeelTurn(TABLE.values().amount(START, start).amount(RADIUS, radius));
    }

    /** {@return the station at which the back begins to turn down, in mm; more than 0} */
    public double startMm() {
        return values().house(START);
    }

    /** {@return the radius of the turn in mm; more than 0} */
    public double radiusMm() {
        return values().house(RADIUS);
    }

    private static Form<HeelTurn> sentences() {
        return TABLE.facts("heel-turn").finds("heel-turn", "turn into the heel from {startsAt}, radius {turnRadius}");
    }
}
