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
 * The heel transition (heel curve): the curve of the back into the heel, such as
 * {@code turn into the heel from 270 mm, radius 40 mm}. Immutable.
 *
 * <p>The station of its start counts from the nut line, positive toward the body; start and radius are more than 0.
 */
public final class HeelTransition extends Noun<HeelTransition> {

    /** Its keys. */
    public static final Table<HeelTransition> TABLE = Table.of(
                    "heel transition", "the transition from the back to the heel", HeelTransition::new)
            .printedBy(HeelTransition::sentences);

    private static final Key<HeelTransition, Amount<Length>> START =
            TABLE.needed("starts at", Types.SIZE, "distance from the nut to the start of the transition");
    private static final Key<HeelTransition, Amount<Length>> RADIUS =
            TABLE.needed("turn radius", Types.SIZE, "radius of the quarter circle into the heel");

    private HeelTransition(Values<HeelTransition> values) {
        super(values);
    }

    /**
     * {@return a turn: a quarter circle, tangent to the back where it starts}
     *
     * @param start from the nut to where the wood gets deeper, more than 0; its unit is the one answers are given in
     * @param radius of the turn, more than 0
     */
    public static HeelTransition from(Quantity<Length> start, Quantity<Length> radius) {
        return new HeelTransition(TABLE.values().amount(START, start).amount(RADIUS, radius));
    }

    /** {@return the station at which the back begins to turn down, in mm; more than 0} */
    public double startMm() {
        return values().libraryValue(START);
    }

    /** {@return the radius of the turn in mm; more than 0} */
    public double radiusMm() {
        return values().libraryValue(RADIUS);
    }

    private static Form<HeelTransition> sentences() {
        return TABLE.facts("heel-turn").finds("heel-turn", "turn into the heel from {startsAt}, radius {turnRadius}");
    }
}
