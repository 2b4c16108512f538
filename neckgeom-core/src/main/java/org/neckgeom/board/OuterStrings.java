package org.neckgeom.board;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * How far apart the centres of the two outermost strings lie, such as 36 mm at the nut and 54 mm at the saddle.
 * Immutable.
 *
 * <p>Measured square to the centreline, half to each side of it; straight between nut and saddle.
 */
public final class OuterStrings extends ValueAnswer {

    private static final Form<OuterStrings> FORM = Form.<OuterStrings>of("outer-strings")
            .fact("spreadAtNut", Kind.MM, "centre to centre", OuterStrings::atNutMm)
            .fact("spreadAtSaddle", Kind.MM, "centre to centre", OuterStrings::atSaddleMm)
            .finds(
                    "spread",
                    "outer strings {spreadAtNut:brief} apart at the nut, {spreadAtSaddle:brief} at the saddle");

    private final double atNut;
    private final double atSaddle;

    private OuterStrings(double atNut, double atSaddle, LengthStyle style) {
        super(FORM, style);
        this.atNut = atNut;
        this.atSaddle = atSaddle;
    }

    /**
     * {@return a spread}
     *
     * @param atNut centre to centre, more than 0
     * @param atSaddle centre to centre, more than 0
     */
    public static OuterStrings of(Quantity<Length> atNut, Quantity<Length> atSaddle) {
        return new OuterStrings(
                LibraryUnits.mmPositive(atNut, "string spread at the nut"),
                LibraryUnits.mmPositive(atSaddle, "string spread at the saddle"),
                LengthStyle.of(atNut));
    }

    /**
     * {@return the spread at a share of the way from nut to saddle; centre to centre}
     *
     * @param share 0 at the nut, 1 at the saddle, finite
     */
    public Amount<Length> at(double share) {
        return style().amount(LibraryUnits.finite(atNut + (atSaddle - atNut) * share, "spread", "mm"));
    }

    /** {@return the spread at the nut in mm} */
    public double atNutMm() {
        return atNut;
    }

    /** {@return the spread at the saddle in mm} */
    public double atSaddleMm() {
        return atSaddle;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {atNut, atSaddle};
    }
}
