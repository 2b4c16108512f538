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

/**
 * The scarf joint of a head as designed: its place, the saw kerf and the cleaning, such as
 * {@code scarf in the head, kerf 1.8 mm}. Immutable.
 *
 * <p>Head angle, thicknesses and veneers come from head and blank. Kerf and cleaning are 0 or more. {@code Scarf} and
 * {@code ScarfJoint} give the lengths.
 */
public final class ScarfCut extends Noun<ScarfCut> {

    /** Its keys. */
    public static final Table<ScarfCut> TABLE =
            Table.of("scarf", "the scarf joint of the head", ScarfCut::new).printedBy(ScarfCut::sentences);

    private static final Key<ScarfCut, JointPlace> PLACE =
            TABLE.needed("joint", Types.words(JointPlace.class, JointPlace::toString), "place of the glue line");
    private static final Key<ScarfCut, Amount<Length>> KERF = TABLE.usual(
                    "kerf", Types.SIZE_OR_NOTHING, ShopUnits.mm(0), "width of the saw cut. Default: 0")
            .called("saw kerf");
    private static final Key<ScarfCut, Amount<Length>> CLEANING = TABLE.usual(
                    "cleaning",
                    Types.SIZE_OR_NOTHING,
                    ShopUnits.mm(0),
                    "thickness planed off each slope after sawing. Default: 0")
            .called("planing of a slope");

    private ScarfCut(Values<ScarfCut> values) {
        super(values);
    }

    /** {@return a scarf whose glued face lies under the head, with no kerf and nothing planed off} */
    public static ScarfCut inTheHead() {
        return at(JointPlace.IN_THE_HEAD);
    }

    /** {@return a scarf whose glued face runs through the shaft, with no kerf and nothing planed off} */
    public static ScarfCut inTheShaft() {
        return at(JointPlace.IN_THE_SHAFT);
    }

    private static ScarfCut at(JointPlace place) {
        return new ScarfCut(TABLE.values().with(PLACE, place));
    }

    /**
     * {@return this scarf with the width of the saw cut}
     *
     * @param width 0 or more, measured square to the cut
     */
    public ScarfCut kerf(Quantity<Length> width) {
        return new ScarfCut(values().amount(KERF, width));
    }

    /**
     * {@return this scarf with what is planed off each of the two slopes after sawing}
     *
     * @param perSlope 0 or more, measured square to the slope
     */
    public ScarfCut cleaning(Quantity<Length> perSlope) {
        return new ScarfCut(values().amount(CLEANING, perSlope));
    }

    /** {@return the joint's place; in the head or in the shaft} */
    public JointPlace place() {
        return values().at(PLACE);
    }

    /** {@return the width of the saw cut; 0 or more} */
    public Amount<Length> kerf() {
        return values().at(KERF);
    }

    /** {@return what is planed off each slope after sawing; 0 or more} */
    public Amount<Length> cleaning() {
        return values().at(CLEANING);
    }

    private static Form<ScarfCut> sentences() {
        return TABLE.facts("scarf-cut")
                .phrase("planed", cut -> cut.cleaning().libraryValue() > 0, ", {cleaning} planed off each slope")
                .finds("scarf", "scarf {joint}, kerf {kerf}{planed}");
    }
}
