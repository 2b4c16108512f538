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
 * A head veneer ({@index headplate}, face veneer, overlay) on the face of the head, such as
 * {@code veneer 2 mm thick, up to the nut line}. Immutable.
 *
 * <p>The thickness is more than 0. {@code shortOfNut} is the distance from the end of the veneer to the nut line along the
 * head's face, 0 or more.
 */
public final class FaceVeneer extends Noun<FaceVeneer> {

    /** Its keys. */
    public static final Table<FaceVeneer> TABLE = Table.of(
                    "head veneer", "a veneer on the head's face", FaceVeneer::new)
            .printedBy(FaceVeneer::sentences);

    private static final Key<FaceVeneer, Amount<Length>> THICKNESS =
            TABLE.needed("thickness", Types.SIZE, "thickness of the veneer").called("head veneer");
    private static final Key<FaceVeneer, Amount<Length>> SHORT_OF_NUT = TABLE.usual(
                    "short of nut",
                    Types.SIZE_OR_NOTHING,
                    ShopUnits.mm(0),
                    "distance from the veneer end to the nut line. Default: 0")
            .called("veneer's distance from the nut line");

    private FaceVeneer(Values<FaceVeneer> values) {
        super(values);
    }

    /**
     * {@return a veneer that reaches the nut line}
     *
     * @param thickness more than 0; its unit is the one answers are given in
     */
    public static FaceVeneer of(Quantity<Length> thickness) {
        return new FaceVeneer(TABLE.values().amount(THICKNESS, thickness));
    }

    /**
     * {@return this veneer ending before the nut line}
     *
     * @param alongFace from its end to the nut line, 0 or more
     */
    public FaceVeneer shortOfNut(Quantity<Length> alongFace) {
        return new FaceVeneer(values().amount(SHORT_OF_NUT, alongFace));
    }

    /** {@return the thickness in mm; more than 0} */
    public double thicknessMm() {
        return values().libraryValue(THICKNESS);
    }

    /** {@return how far before the nut line it stops, in mm along the head's face; 0 or more} */
    public double shortOfNutMm() {
        return values().libraryValue(SHORT_OF_NUT);
    }

    private static Form<FaceVeneer> sentences() {
        return TABLE.facts("face-veneer")
                .phrase("end", veneer -> veneer.shortOfNutMm() > 0, "{shortOfNut} short of the nut line")
                .phrase("end", "up to the nut line")
                .finds("veneer", "veneer {thickness} thick, {end}");
    }
}
