package org.neckgeom.neck;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * The heel transition (heel curve): the curve of the back into the heel, such as
 * {@code turn into the heel of radius 25 mm, then 65 deg steep}. Immutable.
 *
 * <p>The back leaves its profile on an arc, runs on straight once it is as steep as the slope, and is level along the
 * heel's cap. Either the station of its start is given, or the length of the cap before the body joint; the other
 * follows from the heel's height. Lengths are more than 0; the slope is 10 to 85 deg from the glue face. Defaults: slope
 * 65 deg, cap 12 mm long.
 */
public final class HeelTransition extends Noun<HeelTransition> {

    /** Its keys. */
    public static final Table<HeelTransition> TABLE = Table.of(
                    "heel transition", "the transition from the back to the heel", HeelTransition::new)
            .printedBy(HeelTransition::sentences);

    private static final Key<HeelTransition, Amount<Length>> START = TABLE.optional(
            "starts at",
            Types.SIZE,
            "distance from the nut to the start of the transition. Default: follows from the cap length");
    private static final Key<HeelTransition, Amount<Length>> RADIUS =
            TABLE.needed("turn radius", Types.SIZE, "radius of the arc that turns the back into the heel");
    private static final Key<HeelTransition, Amount<Angle>> SLOPE = TABLE.usual(
            "slope",
            Types.ANGLE.atLeast(ShopUnits.deg(10)).atMost(ShopUnits.deg(85)),
            ShopUnits.deg(65),
            "angle of the back past the arc, from the glue face");
    private static final Key<HeelTransition, Amount<Length>> CAP_LENGTH = TABLE.optional(
            "cap length",
            Types.SIZE,
            "length of the heel's cap before the body joint, instead of the start. Default: 12 mm, without a start");

    private static final double USUAL_CAP_MM = 12;

    static {
        TABLE.atMostOne(START, CAP_LENGTH);
    }

    private HeelTransition(Values<HeelTransition> values) {
        super(values);
    }

    /**
     * {@return a turn tangent to the back where it starts}
     *
     * @param start from the nut to where the wood gets deeper, more than 0; its unit is the one answers are given in
     * @param radius of the turn, more than 0
     */
    public static HeelTransition from(Quantity<Length> start, Quantity<Length> radius) {
        return new HeelTransition(TABLE.values().amount(START, start).amount(RADIUS, radius));
    }

    /**
     * {@return a turn that ends at the heel's cap; where it starts follows}
     *
     * @param radius of the turn, more than 0; its unit is the one answers are given in
     */
    public static HeelTransition ofRadius(Quantity<Length> radius) {
        return new HeelTransition(TABLE.values().amount(RADIUS, radius));
    }

    /**
     * {@return this transition with another slope past the arc}
     *
     * @param fromGlueFace 10 to 85 deg
     */
    public HeelTransition slope(Quantity<Angle> fromGlueFace) {
        return new HeelTransition(values().amount(SLOPE, fromGlueFace));
    }

    /**
     * {@return this transition with the length of the heel's cap, instead of its start}
     *
     * @param beforeBodyJoint along the neck, more than 0
     */
    public HeelTransition capLength(Quantity<Length> beforeBodyJoint) {
        return new HeelTransition(values().without(START).amount(CAP_LENGTH, beforeBodyJoint));
    }

    /** {@return the station at which the back begins to turn down, more than 0; nothing where it follows from the cap} */
    public Optional<Amount<Length>> start() {
        return values().find(START);
    }

    /** {@return the radius of the turn in mm; more than 0} */
    public double radiusMm() {
        return values().libraryValue(RADIUS);
    }

    /** {@return the angle of the back past the arc, from the glue face, in rad; 10 to 85 deg} */
    public double slopeRad() {
        return values().libraryValue(SLOPE);
    }

    /** {@return the length of the heel's cap before the body joint, in mm; more than 0; not used where the start is given} */
    public double capLengthMm() {
        return values().libraryValue(CAP_LENGTH, USUAL_CAP_MM);
    }

    private static Form<HeelTransition> sentences() {
        return TABLE.facts("heel-turn")
                .phrase("begins", "from {startsAt}, ")
                .phrase("begins", "")
                .finds("heel-turn", "turn into the heel {begins}radius {turnRadius}, then {slope} steep");
    }
}
