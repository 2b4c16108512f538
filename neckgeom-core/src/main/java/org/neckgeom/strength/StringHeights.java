package org.neckgeom.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * How high the strings lie, such as {@code frets 1.1 mm, strings 0.4 mm over them at the nut, 2 mm at the 12th fret}: what
 * makes their pull a moment. Immutable.
 *
 * <p>{@link #usual()} is common practice: frets 1.1 mm, 0.4 mm at the nut, 2 mm over the middle of the scale.
 */
public final class StringHeights extends ValueAnswer {

    static final Form<StringHeights> FORM = Form.<StringHeights>of("string-heights")
            .fact("fretHeight", Kind.MM, "over the fingerboard", heights -> heights.frets)
            .fact("atNut", Kind.MM, "strings over the fret tops at the nut", heights -> heights.atNut)
            .fact("action", Kind.MM, "strings over the fret tops at the middle of the scale", heights -> heights.action)
            .finds(
                    "string-heights",
                    "frets {fretHeight:brief}, strings {atNut:brief} over them at the nut, {action:brief} at the 12th fret");

    private static final StringHeights USUAL = new StringHeights(1.1, 0.4, 2, LengthStyle.MILLIMETRES);

    private final double frets;
    private final double atNut;
    private final double action;

    private StringHeights(double frets, double atNut, double action, LengthStyle style) {
        super(FORM, style);
        this.frets = frets;
        this.atNut = atNut;
        this.action = action;
    }

    /** {@return the usual heights, common practice: frets 1.1 mm, strings 0.4 mm at the nut, 2 mm at the 12th fret} */
    public static StringHeights usual() {
        return USUAL;
    }

    /**
     * {@return these heights with frets of another height}
     *
     * @param height of the fret tops over the fingerboard, 0 or more
     */
    public StringHeights frets(Quantity<Length> height) {
        double mm = LibraryUnits.mmNotNegative(height, "fret height");
        return new StringHeights(mm, atNut, action, LengthStyle.of(height));
    }

    /**
     * {@return these heights with another height at the nut}
     *
     * @param height of the strings over the fret tops at the nut, 0 or more
     */
    public StringHeights atNut(Quantity<Length> height) {
        double mm = LibraryUnits.mmNotNegative(height, "string height at the nut");
        return new StringHeights(frets, mm, action, LengthStyle.of(height));
    }

    /**
     * {@return these heights with another action}
     *
     * @param height of the strings over the fret tops at the middle of the scale (the 12th fret), 0 or more
     */
    public StringHeights action(Quantity<Length> height) {
        double mm = LibraryUnits.mmNotNegative(height, "action");
        return new StringHeights(frets, atNut, mm, LengthStyle.of(height));
    }

    /** {@return the height of the frets; over the fingerboard} */
    public Amount<Length> frets() {
        return style().amount(frets);
    }

    /** {@return the height of the strings over the fret tops at the nut} */
    public Amount<Length> atNut() {
        return style().amount(atNut);
    }

    /** {@return the height of the strings over the fret tops at the middle of the scale} */
    public Amount<Length> action() {
        return style().amount(action);
    }

    double overBoardAtNutMm() {
        return frets + atNut;
    }

    double overBoardAtMiddleMm() {
        return frets + action;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {frets, atNut, action};
    }
}
