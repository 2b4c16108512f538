package org.neckgeom.design;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * The scale: the string length the frets divide, without compensation, such as {@code 560 mm, 12 to the octave}.
 * Immutable.
 */
public final class Scale implements Answer, SaysLengths<Scale> {

    private final double length;
    private final int divisions;
    private final ShopUnit<Length> unit;

    private Scale(double length, int divisions, ShopUnit<Length> unit) {
        this.length = length;
        this.divisions = divisions;
        this.unit = unit;
    }

    /**
     * Returns a scale divided in twelve.
     *
     * @param length more than 0; its unit is the one answers are given in
     * @return the scale
     */
    public static Scale of(Quantity<Length> length) {
        return new Scale(
                HouseUnits.mmPositive(length, "scale"),
                12,
                LengthStyle.of(length).unit());
    }

    /**
     * Returns this scale with another equal division of the octave.
     *
     * @param toTheOctave 1 or more
     * @return the scale
     */
    public Scale divisions(int toTheOctave) {
        if (toTheOctave < 1) {
            throw Refusal.of("divisions of the octave", "at-least", "be 1 or more", "were", toTheOctave);
        }
        return new Scale(length, toTheOctave, unit);
    }

    /**
     * Returns the scale length.
     *
     * @return more than 0
     */
    public Amount<Length> length() {
        return Amount.ofHouse(length, unit);
    }

    /**
     * Returns the scale length in mm.
     *
     * @return more than 0
     */
    public double lengthMm() {
        return length;
    }

    /**
     * Returns the equal divisions of the octave.
     *
     * @return 1 or more
     */
    public int divisions() {
        return divisions;
    }

    /**
     * Returns the distance from nut to fret: {@code x = L (1 - 2^(-n/d))}, d divisions to the octave. Exact (equal
     * temperament).
     *
     * @param fret n, 0 or more; need not be whole
     * @return x in mm, in [0, L)
     * @throws IllegalArgumentException if the fret is negative or not finite
     */
    public double fretMm(double fret) {
        if (!(fret >= 0) || Double.isInfinite(fret)) {
            throw Refusal.of("fret", "at-least", "be 0 or more", fret);
        }
        // expm1 keeps the first frets of fine divisions from losing digits in 1 - 2^(-n/d).
        return -length * StrictMath.expm1(-fret / divisions * StrictMath.log(2)) + 0.0;
    }

    /**
     * Returns the style answers about this scale are printed in.
     *
     * @return the style
     */
    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    @Override
    public Scale in(LengthStyle other) {
        return new Scale(
                length, divisions, Objects.requireNonNull(other, "style").unit());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<Scale> FORM = form("scale {length}, {divisions} to the octave");

        /** The length alone, for the row of a neck. */
        static final Form<Scale> IN_NECK = form("{length}");

        private static Form<Scale> form(String words) {
            return Form.<Scale>of("scale")
                    .fact("length", Kind.MM, "that the frets divide, without compensation", scale -> scale.length)
                    .fact("divisions", Kind.WHOLE, "equal steps to the octave", scale -> scale.divisions)
                    .finds("scale", words);
        }
    }

    @Override
    public Form<Scale> form() {
        return Sentences.FORM;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Scale other && Double.compare(length, other.length) == 0 && divisions == other.divisions;
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, divisions);
    }

    /** Returns such as {@code scale 560 mm, 12 to the octave}. */
    @Override
    public String toString() {
        return text(style());
    }
}
