package org.neckgeom.neck;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * Fanned frets ({@index multi-scale}) as designed: two scales and the perpendicular fret, such as
 * {@code 699 mm to 673 mm, perpendicular at fret 7}. Immutable.
 *
 * <p>Both scales are more than 0; the bass scale is the longer one. The perpendicular fret ({@index "neutral fret"}) is
 * square to the centreline, 0 (the nut) to 200. {@code FannedFrets} gives slants and fret positions.
 */
public final class Fan extends Noun<Fan> {

    /** Its keys. */
    public static final Table<Fan> TABLE =
            Table.of("", "frets fanned between two scales", Fan::new).printedBy(Fan::sentences);

    private static final Key<Fan, Amount<Length>> BASS =
            TABLE.needed("bass scale", Types.SIZE, "scale length along the outermost bass string, before compensation");
    private static final Key<Fan, Amount<Length>> TREBLE = TABLE.needed(
            "treble scale", Types.SIZE, "scale length along the outermost treble string, before compensation");
    private static final Key<Fan, Integer> PERPENDICULAR =
            TABLE.needed("perpendicular fret", Types.whole(0, 200), "fret perpendicular to the centreline. 0: the nut");

    static {
        TABLE.moved(Moves.none().and("square at fret", "perpendicular fret"));
    }

    private Fan(Values<Fan> values) {
        super(values);
    }

    /**
     * Begins a fan between two scales.
     *
     * @param bassScale along the outermost bass string, more than 0; its unit is the one answers are given in
     * @param trebleScale along the outermost treble string, more than 0
     * @return what needs its perpendicular fret to be a fan
     */
    public static NeedsSquareFret between(Quantity<Length> bassScale, Quantity<Length> trebleScale) {
        return new NeedsSquareFret(TABLE.values().amount(BASS, bassScale).amount(TREBLE, trebleScale));
    }

    /** Two scales without the fret perpendicular to the centreline yet. Immutable. */
    public static final class NeedsSquareFret extends Unfinished<Fan> {

        private NeedsSquareFret(Values<Fan> values) {
            super(values, "fan, perpendicular fret not given yet");
        }

        /**
         * Adds the fret perpendicular to the centreline.
         *
         * @param fret 0 (the nut) to 200
         * @return the fan
         */
        public Fan perpendicularAt(int fret) {
            return new Fan(values().with(PERPENDICULAR, fret));
        }
    }

    /** {@return the scale along the outermost bass string; more than 0} */
    public Amount<Length> bassScale() {
        return values().at(BASS);
    }

    /** {@return the scale along the outermost treble string; more than 0} */
    public Amount<Length> trebleScale() {
        return values().at(TREBLE);
    }

    /** {@return the fret perpendicular to the centreline; 0 (the nut) to 200} */
    public int perpendicularFret() {
        return values().at(PERPENDICULAR);
    }

    /**
     * {@return the scale on the centreline: half of both outer strings' runs along it, a little less than the mean of
     * both scales; more than 0, in mm}
     *
     * @param spreadAtNutMm between the outer strings' centres at the nut, in mm
     * @param spreadAtSaddleMm the same at the saddle
     */
    public double centrelineScaleMm(double spreadAtNutMm, double spreadAtSaddleMm) {
        double aside = (spreadAtSaddleMm - spreadAtNutMm) / 2;
        return (run(bassScale().libraryValue(), aside) + run(trebleScale().libraryValue(), aside)) / 2;
    }

    private static double run(double scale, double aside) {
        if (!(Math.abs(aside) * 2 < scale)) {
            throw Refusal.of("string spread", "less-than", "grow by less than the scale", "did not", "");
        }
        return StrictMath.sqrt((scale - aside) * (scale + aside));
    }

    private static Form<Fan> sentences() {
        return TABLE.facts("fan")
                .finds("fan", "{bassScale} to {trebleScale}, perpendicular at fret {perpendicularFret}");
    }
}
