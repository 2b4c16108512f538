package org.neckgeom.heel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * By how much the string's height at the twelfth fret changes, such as {@code -0.218 mm} for 0.1 deg more head back.
 * Positive is higher. Immutable.
 */
public final class ActionChange implements SaysLengths<ActionChange> {

    private static final int LONGEST_CAUSE = 200;

    private final String cause;
    private final double perMm;
    private final double mm;
    private final LengthStyle style;

    private ActionChange(String cause, double perMm, double mm, LengthStyle style) {
        this.cause = cause;
        this.perMm = perMm;
        this.mm = mm + 0.0;
        this.style = style;
    }

    static ActionChange of(String cause, double mm, LengthStyle style) {
        return new ActionChange(cause, Double.NaN, mm, style);
    }

    /** A change for a length at a place, such as 1 mm {@code at the saddle}. */
    static ActionChange per(double perMm, String place, double mm, LengthStyle style) {
        return new ActionChange(place, perMm, mm, style);
    }

    /**
     * Returns a change with its cause.
     *
     * @param cause in words, such as {@code for 0.1 deg more head back}
     * @param change of the action, positive upward
     * @return the change
     */
    public static ActionChange of(String cause, Quantity<Length> change) {
        return new ActionChange(
                Words.line(cause, "a cause", LONGEST_CAUSE),
                Double.NaN,
                HouseUnits.mm(change, "change of action"),
                LengthStyle.of(change));
    }

    /**
     * Returns the change.
     *
     * @return positive when the action grows
     */
    public Amount<Length> change() {
        return style.amount(mm);
    }

    /**
     * Returns the same as {@link #change} in mm.
     *
     * @return mm
     */
    public double changeMm() {
        return mm;
    }

    @Override
    public ActionChange in(LengthStyle other) {
        return new ActionChange(cause, perMm, mm, Objects.requireNonNull(other, "style"));
    }

    /** True for the same change of the same cause. */
    @Override
    public boolean equals(Object other) {
        return other instanceof ActionChange that
                && Double.compare(mm, that.mm) == 0
                && Double.compare(perMm, that.perMm) == 0
                && cause.equals(that.cause);
    }

    @Override
    public int hashCode() {
        return Objects.hash(cause, mm);
    }

    /** Returns the change in words: {@code action 0.218 mm lower at the 12th fret for 0.1 deg more head back}. */
    @Override
    public String toString() {
        return "action " + style.text(Math.abs(mm)) + (mm < 0 ? " lower" : " higher") + " at the 12th fret "
                + (Double.isNaN(perMm) ? cause : "for " + style.brief(perMm) + " " + cause);
    }
}
