package org.neckgeom.neck;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * The scale length ({@index mensur}, {@index "string length"}): the length that the frets divide, without compensation, such as
 * {@code 560 mm, 12 to the octave}. Immutable.
 *
 * <p>Fret n of d divisions of the octave lies at {@code L (1 - 2^(-n/d))} from the nut. Exact. The length is more than 0.
 * Default: 12 divisions. Source: equal temperament.
 *
 * <pre>{@code
 * println(Scale.of(mm(648)));
 * println(Scale.of(inch("25 1/2")).fretMm(12) + " mm");
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * scale 648 mm, 12 to the octave
 * 323.85 mm
 * }</pre>
 */
public final class Scale extends Noun<Scale> {

    private static final double LN_2 = StrictMath.log(2);

    /** Its keys, which a neck has at its own level. */
    public static final Table<Scale> TABLE =
            Table.of("", "the scale", Scale::new).printedBy(Scale::sentences);

    static final Key<Scale, Amount<Length>> LENGTH =
            TABLE.needed("scale", Types.SIZE, "scale length: nut to saddle, before compensation");
    static final Key<Scale, Integer> DIVISIONS =
            TABLE.usual("frets to the octave", Types.whole(1, 1200), 12, "equal divisions of the octave. Default: 12");

    private final double length;
    private final int divisions;

    private Scale(Values<Scale> values) {
        super(values);
        this.length = values.libraryValue(LENGTH);
        this.divisions = values.at(DIVISIONS);
    }

    /**
     * {@return a scale divided in twelve}
     *
     * @param length more than 0; its unit is the one answers are given in
     */
    public static Scale of(Quantity<Length> length) {
        return new Scale(TABLE.values().amount(LENGTH, length));
    }

    /**
     * {@return this scale with another equal division of the octave}
     *
     * @param toTheOctave 1 to 1200
     */
    public Scale divisions(int toTheOctave) {
        return new Scale(values().with(DIVISIONS, toTheOctave));
    }

    /** {@return the scale length; more than 0} */
    public Amount<Length> length() {
        return values().at(LENGTH);
    }

    /** {@return the scale length in mm; more than 0} */
    public double lengthMm() {
        return length;
    }

    /** {@return the equal divisions of the octave; 1 or more} */
    public int divisions() {
        return divisions;
    }

    /**
     * {@return the distance from nut to fret: {@code x = L (1 - 2^(-n/d))}, d divisions to the octave; x in mm, in [0,
     * L)} Exact (equal temperament).
     *
     * @param fret n, 0 or more; need not be whole
     * @throws IllegalArgumentException if the fret is negative or not finite
     */
    public double fretMm(double fret) {
        if (!(fret >= 0) || Double.isInfinite(fret)) {
            throw Refusal.of("fret", "at-least", "be 0 or more", fret);
        }
        // expm1 keeps the first frets of fine divisions from losing digits in 1 - 2^(-n/d).
        return -length * StrictMath.expm1(-fret / divisions * LN_2) + 0.0;
    }

    private static Form<Scale> sentences() {
        return TABLE.facts("scale").finds("scale", "scale {scale}, {fretsToTheOctave} to the octave");
    }
}
