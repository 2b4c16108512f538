package org.neckgeom.neck;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
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
 * Threaded inserts in a heel that is bolted on by its flat face, without tenon, such as two of 9 mm outside for 6 mm bolts.
 * Immutable.
 *
 * <p>Depths run from the glue face down the mating face to the middle of each insert, which lies on the heel's centreline.
 * Lengths are more than 0. Common practice: 8 to 10 mm outside, bolts of 6 mm, 30 to 45 mm apart.
 */
public final class HeelInserts extends Noun<HeelInserts> implements HeelJoint {

    private static final int MOST = 4;

    /** Its keys. */
    public static final Table<HeelInserts> TABLE = Table.of(
                    "inserts", "the threaded inserts of a flat bolted heel", HeelInserts::new)
            .printedBy(HeelInserts::sentences);

    private static final Key<HeelInserts, Amount<Length>> DIAMETER = TABLE.usual(
                    "diameter", Types.SIZE, ShopUnits.mm(9), "outer diameter of the inserts. Default: 9 mm")
            .called("insert diameter");
    private static final Key<HeelInserts, Amount<Length>> BOLT = TABLE.usual(
                    "bolt", Types.SIZE, ShopUnits.mm(6), "diameter of the bolts. Default: 6 mm")
            .called("bolt diameter");
    private static final Key<HeelInserts, Amount<Length>> THREAD = TABLE.usual(
                    "thread",
                    Types.SIZE,
                    ShopUnits.mm(12),
                    "length of bolt thread that an insert holds. Default: 12 mm")
            .called("thread in the insert");
    private static final Key<HeelInserts, List<Amount<Length>>> PLACES = TABLE.needed(
                    "at", Types.list(Types.SIZE, 1, MOST), "depth of the inserts' middles below the glue face")
            .called("insert depth");

    private HeelInserts(Values<HeelInserts> values) {
        super(values);
        if (!(boltMm() < diameterMm())) {
            throw values.refused(
                    BOLT, "less-than", "be less than " + values.at(DIAMETER) + ", the insert's own", values.at(BOLT));
        }
        List<Double> depths = depthsMm();
        for (int i = 1; i < depths.size(); i++) {
            if (!(depths.get(i) - depths.get(i - 1) > diameterMm())) {
                throw values.refused(
                        PLACES,
                        "apart",
                        "be more than " + values.at(DIAMETER) + " apart, the diameter of an insert",
                        style().brief(depths.get(i - 1)) + " and " + style().brief(depths.get(i)));
            }
        }
    }

    /**
     * {@return inserts of 9 mm outside for bolts of 6 mm with 12 mm of thread (common practice)}
     *
     * @param depths of their middles below the glue face, 1 to 4, each more than 0
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    public static HeelInserts at(Quantity<Length>... depths) {
        return new HeelInserts(TABLE.values().amounts(PLACES, Arrays.asList(Objects.requireNonNull(depths, "depths"))));
    }

    /**
     * {@return these inserts with another outer diameter}
     *
     * @param outside more than that of the bolts
     */
    public HeelInserts diameter(Quantity<Length> outside) {
        return new HeelInserts(values().amount(DIAMETER, outside));
    }

    /**
     * {@return these inserts with their bolts}
     *
     * @param diameter more than 0, less than that of the inserts
     * @param thread length of bolt thread in an insert, more than 0
     */
    public HeelInserts bolts(Quantity<Length> diameter, Quantity<Length> thread) {
        return new HeelInserts(values().amount(BOLT, diameter).amount(THREAD, thread));
    }

    /** {@return the outer diameter in mm; more than 0} */
    public double diameterMm() {
        return values().libraryValue(DIAMETER);
    }

    /** {@return the diameter of the bolts in mm; more than 0} */
    public double boltMm() {
        return values().libraryValue(BOLT);
    }

    /** {@return the length of bolt thread in an insert, in mm; more than 0} */
    public double threadMm() {
        return values().libraryValue(THREAD);
    }

    /** {@return the depths of their middles below the glue face, in mm, from the top down} */
    public List<Double> depthsMm() {
        return values().at(PLACES).stream().map(Amount::libraryValue).sorted().toList();
    }

    @Override
    public Optional<Amount<Length>> pastShoulder() {
        return Optional.empty();
    }

    @Override
    public Optional<Amount<Length>> below() {
        return values().at(PLACES).stream().max(Comparator.comparingDouble(Amount::libraryValue));
    }

    private static Form<HeelInserts> sentences() {
        return TABLE.facts("heel-inserts")
                .finds(
                        "inserts",
                        "inserts {diameter} outside for bolts of {bolt}, {at:brief first 4} below the glue face");
    }
}
