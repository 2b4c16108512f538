package org.neckgeom.board;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.kernel.FretKernel;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/** One fret's place, such as fret 12 at {@code 280.000 mm} from the nut. Immutable. */
public final class Fret extends LeanAnswer {

    private final int number;
    private final double fromNut;
    private final double fromLast;
    private final double sounding;

    private Fret(int number, double fromNut, double fromLast, double sounding, LengthStyle style) {
        super(style);
        this.number = number;
        this.fromNut = fromNut;
        this.fromLast = fromLast;
        this.sounding = sounding;
    }

    static Fret ofMm(int number, double fromNut, double fromLast, double sounding, LengthStyle style) {
        return new Fret(number, fromNut, fromLast, sounding, style);
    }

    /** {@return the fret's number; 0 for the nut, otherwise 1 or more} */
    public int number() {
        return number;
    }

    /**
     * {@return the distance from the nut's fingerboard side; measure every fret from there, so that no rounding adds
     * up; 0 or more}
     */
    public Amount<Length> fromNut() {
        return style().amount(fromNut);
    }

    /** {@return the same as {@link #fromNut} in mm} */
    public double fromNutMm() {
        return fromNut;
    }

    /** {@return the distance from the fret before it; more than 0; 0 for the nut} */
    public Amount<Length> fromLast() {
        return style().amount(fromLast);
    }

    /** {@return the string's sounding length to the end of the scale, without compensation; more than 0} */
    public Amount<Length> sounding() {
        return style().amount(sounding);
    }

    /**
     * {@return how far off the note is when the fret sits off its place: {@code -1200 log2(1 - error / sounding)};
     * cents, positive sharp} Exact for a string that is only shortened.
     *
     * @param error of the fret's place, positive too far from the nut, less than the sounding length
     */
    public double centsFrom(Quantity<Length> error) {
        double mm = LibraryUnits.mm(error, "fret error");
        if (!(mm < sounding)) {
            throw LibraryUnits.refused(
                    "fret error", "less-than", "less than the sounding length of " + style().brief(sounding), error);
        }
        return FretKernel.cents(sounding, mm) + 0.0;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {number, fromNut, fromLast, sounding};
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<Fret> FORM = Form.<Fret>of("fret")
                .fact("number", Kind.WHOLE, "0 for the nut", Fret::number)
                .fact("fromNut", Kind.MM, "from the nut's fingerboard side", Fret::fromNutMm)
                .fact("fromLast", Kind.MM, "from the fret before it; 0 for the nut", fret -> fret.fromLast)
                .fact("soundingLength", Kind.MM, "to the end of the scale, without compensation", fret -> fret.sounding)
                .finds("fret", "fret {number} at {fromNut:text}");
    }

    @Override
    public Form<Fret> form() {
        return Sentences.FORM;
    }
}
