package org.neckgeom.heel;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * By how much the string's height at the twelfth fret changes, such as {@code -0.218 mm} for 0.1 deg more head back.
 * Positive is higher. Immutable.
 */
public final class ActionChange extends ValueAnswer {

    private static final Form<ActionChange> FORM = Form.<ActionChange>of("action-change")
            .fact("change", Kind.MM, "at the 12th fret; positive: higher", c -> c.mm)
            .fact("cause", Kind.NAME, "what changes it, or where", c -> c.cause)
            .fact("turn", Kind.RAD, "of the neck that causes it; positive: more head back", c -> c.turn)
            .fact("move", Kind.MM, "that causes it, at the place named", c -> c.perMm)
            .phrase("why", c -> c.turn >= 0, "for {turn:size ..4} more head back")
            .phrase("why", "for {turn:size ..4} more head forward")
            .phrase("why", "for {move:brief} {cause}")
            .phrase("why", "{cause}")
            .finds("lower", c -> c.mm < 0, "action {change:size text} lower at the 12th fret {why}")
            .finds("higher", "action {change:size text} higher at the 12th fret {why}");

    private static final int LONGEST_CAUSE = 200;

    private final String cause;
    private final double turn;
    private final double perMm;
    private final double mm;

    private ActionChange(String cause, double turn, double perMm, double mm, LengthStyle style) {
        super(FORM, style);
        this.cause = cause;
        this.turn = turn;
        this.perMm = perMm;
        this.mm = mm + 0.0;
    }

    static ActionChange ofTurn(double rad, double mm, LengthStyle style) {
        return new ActionChange("turn of the neck", rad, Double.NaN, mm, style);
    }

    /** A change for a length at a place, such as 1 mm {@code at the saddle}. */
    static ActionChange per(double perMm, String place, double mm, LengthStyle style) {
        return new ActionChange(place, Double.NaN, perMm, mm, style);
    }

    /**
     * {@return a change with its cause}
     *
     * @param cause in words, such as {@code for 0.1 deg more head back}
     * @param change of the action, positive upward
     */
    public static ActionChange of(String cause, Quantity<Length> change) {
        return new ActionChange(
                Words.line(cause, "a cause", LONGEST_CAUSE),
                Double.NaN,
                Double.NaN,
                LibraryUnits.mm(change, "change of action"),
                LengthStyle.of(change));
    }

    /** {@return the change, positive when the action grows} */
    public Amount<Length> change() {
        return style().amount(mm);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {cause, turn, perMm, mm};
    }
}
