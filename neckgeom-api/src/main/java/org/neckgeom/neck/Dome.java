package org.neckgeom.neck;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * A dome ({@index "arched top"}, top radius): the curved body top under the saddle, such as
 * {@code dome of radius 9 m, joint 240 mm and bridge 20 mm from its pole}. Immutable.
 *
 * <p>The top is part of a sphere. Its pole is the highest place. The radius is more than 0; distances run along the
 * centreline from the pole to joint and saddle, 0 or more.
 */
public final class Dome extends Noun<Dome> {

    /** Its keys. */
    public static final Table<Dome> TABLE =
            Table.of("dome", "a domed top", Dome::new).printedBy(Dome::sentences);

    private static final Key<Dome, Amount<Length>> RADIUS = TABLE.needed("radius", Types.RADIUS, "radius of the dome");
    private static final Key<Dome, Amount<Length>> POLE_TO_JOINT = TABLE.needed(
                    "pole to joint", Types.SIZE_OR_NOTHING, "distance from the dome's highest point to the joint")
            .called("distance from pole to joint");
    private static final Key<Dome, Amount<Length>> POLE_TO_BRIDGE = TABLE.needed(
                    "pole to bridge", Types.SIZE_OR_NOTHING, "distance from the dome's highest point to the saddle")
            .called("distance from pole to bridge");

    private Dome(Values<Dome> values) {
        super(values);
        double farther = Math.max(values.libraryValue(POLE_TO_JOINT), values.libraryValue(POLE_TO_BRIDGE));
        if (!(values.libraryValue(RADIUS) > farther)) {
            throw values.refused(
                    RADIUS,
                    "more-than",
                    "be more than " + style().brief(farther) + ", the distance from the pole",
                    values.at(RADIUS));
        }
    }

    /**
     * Begins a dome with its radius.
     *
     * @param radius more than 0
     * @return the radius, to be followed by {@code pole}
     */
    public static NeedsPole of(Quantity<Length> radius) {
        return new NeedsPole(TABLE.values().amount(RADIUS, radius));
    }

    /** A dome whose highest point has no place yet. Immutable. */
    public static final class NeedsPole extends Unfinished<Dome> {

        private NeedsPole(Values<Dome> values) {
            super(values, "Dome, place of its pole not given yet");
        }

        /**
         * Adds how far the dome's highest point is away.
         *
         * @param toJoint 0 or more, less than the radius
         * @param toBridge to the saddle, 0 or more, less than the radius
         * @return the dome
         */
        public Dome pole(Quantity<Length> toJoint, Quantity<Length> toBridge) {
            return new Dome(values().amount(POLE_TO_JOINT, toJoint).amount(POLE_TO_BRIDGE, toBridge));
        }
    }

    /** {@return the radius; more than both distances} */
    public Amount<Length> radius() {
        return values().at(RADIUS);
    }

    /** {@return the distance from the dome's highest point to the joint; 0 or more} */
    public Amount<Length> poleToJoint() {
        return values().at(POLE_TO_JOINT);
    }

    /** {@return the distance from the dome's highest point to the saddle; 0 or more} */
    public Amount<Length> poleToBridge() {
        return values().at(POLE_TO_BRIDGE);
    }

    private static Form<Dome> sentences() {
        return TABLE.facts("dome")
                .finds("dome", "dome of radius {radius}, joint {poleToJoint} and saddle {poleToBridge} from its pole");
    }
}
