package org.neckgeom.neck;

import java.util.List;
import java.util.Optional;
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
 * Wood screws that hold a flat heel in a pocket of the body, through the body and a neck plate, such as 4.2 mm x 45 mm, four
 * at 38 mm x 51 mm. Immutable.
 *
 * <p>Four screws: two rows across, the nearer one {@code fromJoint} past the body joint. The heel's height is its wood over the
 * floor of the pocket. Lengths are more than 0. Common practice: hole in the body 4.5 mm, pilot hole in the neck 3.0 to 3.2 mm.
 */
public final class PlateScrews extends Noun<PlateScrews> implements HeelJoint {

    /** Its keys. */
    public static final Table<PlateScrews> TABLE = Table.of(
                    "plate screws", "the screws of a flat heel with a neck plate", PlateScrews::new)
            .printedBy(PlateScrews::sentences);

    private static final Key<PlateScrews, Amount<Length>> POCKET = TABLE.needed(
                    "pocket length", Types.SIZE, "length of the heel in the body's pocket, from the body joint")
            .called("pocket length");
    private static final Key<PlateScrews, Amount<Length>> FLOOR = TABLE.needed(
            "body floor", Types.SIZE, "thickness of the body under the pocket, which the screws go through");
    private static final Key<PlateScrews, Amount<Length>> DIAMETER = TABLE.usual(
                    "diameter", Types.SIZE, ShopUnits.mm(4.2), "diameter of the screws. Default: 4.2 mm")
            .called("screw diameter");
    private static final Key<PlateScrews, Amount<Length>> LENGTH = TABLE.usual(
                    "length", Types.SIZE, ShopUnits.mm(45), "length of the screws under their heads. Default: 45 mm")
            .called("screw length");
    private static final Key<PlateScrews, Amount<Length>> PLATE = TABLE.usual(
                    "plate",
                    Types.SIZE_OR_NOTHING,
                    ShopUnits.mm(1.5),
                    "thickness of the neck plate. 0 for ferrules let in. Default: 1.5 mm")
            .called("neck plate");
    private static final Key<PlateScrews, Amount<Length>> ACROSS = TABLE.usual(
            "across",
            Types.SIZE,
            ShopUnits.mm(38),
            "distance between two screws across the neck, centre to centre. Default: 38 mm");
    private static final Key<PlateScrews, Amount<Length>> ALONG = TABLE.usual(
            "along",
            Types.SIZE,
            ShopUnits.mm(51),
            "distance between the two rows along the neck, centre to centre. Default: 51 mm");
    private static final Key<PlateScrews, Amount<Length>> FROM_JOINT = TABLE.usual(
            "from joint",
            Types.SIZE,
            ShopUnits.mm(12),
            "distance from the body joint to the nearer row. Default: 12 mm");

    private PlateScrews(Values<PlateScrews> values) {
        super(values);
        if (!(rowsMm().get(1) < values.libraryValue(POCKET))) {
            throw values.refused(
                    POCKET,
                    "more-than",
                    "be more than " + style().brief(rowsMm().get(1)) + ", where the farther row is",
                    values.at(POCKET));
        }
    }

    /**
     * {@return four screws of 4.2 mm x 45 mm at 38 mm x 51 mm through a plate of 1.5 mm (common practice)}
     *
     * @param pocketLength from the body joint to the end of the heel, past the farther row
     * @param bodyFloor thickness of the body under the pocket, more than 0
     */
    public static PlateScrews in(Quantity<Length> pocketLength, Quantity<Length> bodyFloor) {
        return new PlateScrews(TABLE.values().amount(POCKET, pocketLength).amount(FLOOR, bodyFloor));
    }

    /**
     * {@return the same of other screws}
     *
     * @param diameter of each, more than 0
     * @param length of each under its head, more than 0
     */
    public PlateScrews screws(Quantity<Length> diameter, Quantity<Length> length) {
        return new PlateScrews(values().amount(DIAMETER, diameter).amount(LENGTH, length));
    }

    /**
     * {@return the same with another plate}
     *
     * @param thickness 0 for ferrules let in
     */
    public PlateScrews plate(Quantity<Length> thickness) {
        return new PlateScrews(values().amount(PLATE, thickness));
    }

    /**
     * {@return the same screws with their rows in other places}
     *
     * @param fromJoint from the body joint to the nearer row, more than 0
     * @param along between the two rows, more than 0, the farther one in the pocket
     */
    public PlateScrews rows(Quantity<Length> fromJoint, Quantity<Length> along) {
        return new PlateScrews(values().amount(FROM_JOINT, fromJoint).amount(ALONG, along));
    }

    /**
     * {@return the same screws farther apart or nearer to each other}
     *
     * @param distance between two screws across the neck, more than 0
     */
    public PlateScrews across(Quantity<Length> distance) {
        return new PlateScrews(values().amount(ACROSS, distance));
    }

    /** {@return the diameter of the screws in mm; more than 0} */
    public double diameterMm() {
        return values().libraryValue(DIAMETER);
    }

    /** {@return the distance between two screws across the neck in mm; more than 0} */
    public double acrossMm() {
        return values().libraryValue(ACROSS);
    }

    /** {@return the distances of the two rows from the body joint in mm, the nearer one first} */
    public List<Double> rowsMm() {
        double near = values().libraryValue(FROM_JOINT);
        return List.of(near, near + values().libraryValue(ALONG));
    }

    /** {@return how far the screws reach into the heel, in mm: length less the body's floor and the plate; negative: not at all} */
    public double reachMm() {
        return values().libraryValue(LENGTH) - values().libraryValue(FLOOR) - values().libraryValue(PLATE);
    }

    /** {@return the thickness of the body under the pocket and of the plate, in mm} */
    public double underHeelMm() {
        return values().libraryValue(FLOOR) + values().libraryValue(PLATE);
    }

    @Override
    public Optional<Amount<Length>> pastShoulder() {
        return values().find(POCKET);
    }

    @Override
    public Optional<Amount<Length>> below() {
        return Optional.empty();
    }

    private static Form<PlateScrews> sentences() {
        return TABLE.facts("plate-screws")
                .finds("plate-screws", "four screws {diameter} x {length}, {across} across and {along} along");
    }
}
