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
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

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

    private static final Key<HeelInserts, Amount<Length>> DIAMETER = TABLE.needed(
                    "diameter", Types.SIZE, "outer diameter of the inserts")
            .called("insert diameter");
    private static final Key<HeelInserts, Amount<Length>> BOLT =
            TABLE.needed("bolt", Types.SIZE, "diameter of the bolts").called("bolt diameter");
    private static final Key<HeelInserts, Amount<Length>> THREAD = TABLE.needed(
                    "thread", Types.SIZE, "length of bolt thread that an insert holds")
            .called("thread in the insert");
    private static final Key<HeelInserts, List<Amount<Length>>> PLACES = TABLE.needed(
                    "at", Types.list(Types.SIZE, 1, MOST), "depth of the inserts' middles below the glue face")
            .called("insert depth");

    private HeelInserts(Values<HeelInserts> values) {
        super(values);
        if (values.has(DIAMETER) && !(boltMm() < diameterMm())) {
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
     * Begins inserts with their bolts.
     *
     * @param diameter of the inserts outside, more than 0
     * @param bolt diameter of the bolts, less
     * @param thread length of bolt thread in an insert, more than 0
     * @return inserts whose places are still to be given
     */
    public static NeedsDepths of(Quantity<Length> diameter, Quantity<Length> bolt, Quantity<Length> thread) {
        return new NeedsDepths(
                TABLE.values().amount(DIAMETER, diameter).amount(BOLT, bolt).amount(THREAD, thread));
    }

    /** Inserts that have no place yet. Immutable. */
    public static final class NeedsDepths extends Unfinished<HeelInserts> {

        private NeedsDepths(Values<HeelInserts> values) {
            super(values, "inserts, depths not given yet");
        }

        /**
         * Adds where the inserts are.
         *
         * @param depths of their middles below the glue face, 1 to 4, each more than 0
         * @return the inserts
         */
        @SafeVarargs
        @SuppressWarnings("varargs") // only read
        public final HeelInserts at(Quantity<Length>... depths) {
            return new HeelInserts(values().amounts(PLACES, Arrays.asList(Objects.requireNonNull(depths, "depths"))));
        }
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
