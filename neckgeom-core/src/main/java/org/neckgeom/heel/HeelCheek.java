package org.neckgeom.heel;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * What comes off one cheek of the heel to bring the centreline back to the middle of the bridge, such as 0.172 mm off
 * the treble cheek. Immutable.
 *
 * <p>{@code cut = heel width |offset| / S} at that cheek, running out to nothing at the other. Wood off a cheek swings
 * the head to that side and the line at the bridge to the other, so a centreline that lies too far to the treble side
 * wants wood off the treble cheek. Estimate: the lever rule for small turns.
 */
public final class HeelCheek extends ValueAnswer {

    private static final Form<HeelCheek> FORM = Form.<HeelCheek>of("heel-cheek")
            .fact(
                    "cut",
                    Kind.MM,
                    "at the cheek, 0 or more",
                    cheek -> cheek.cut().libraryValue())
            .fact("offset", Kind.MM, "at the bridge; positive: toward the treble side", c -> c.offset)
            .phrase("side", HeelCheek::isOnTreble, "treble")
            .phrase("side", "bass")
            .phrase("other", HeelCheek::isOnTreble, "bass")
            .phrase("other", "treble")
            .findsOnly("nothing", c -> c.offset == 0, "Heel cheek: nothing to take off")
            .finds("treble-cheek", HeelCheek::isOnTreble, "Heel cheek: {cut:text} off the treble cheek")
            .finds("bass-cheek", "Heel cheek: {cut:text} off the bass cheek")
            .line("runOut", "runs out to nothing", "at the {other} cheek")
            .line("offset", "centreline at the bridge", "{offset:size brief} toward the {side} side now")
            .note("estimate", "estimate: lever rule for a small turn");

    private final double width;
    private final double offset;
    private final double reach;

    private HeelCheek(double width, double offset, double reach, LengthStyle style) {
        super(FORM, style);
        this.width = width;
        this.offset = offset;
        this.reach = reach;
    }

    static HeelCheek of(NeckAngle angle, Quantity<Length> heelWidth, Quantity<Length> offset) {
        return new HeelCheek(
                LibraryUnits.mmPositive(heelWidth, "heel width"),
                LibraryUnits.mm(offset, "centreline at the bridge"),
                angle.reachMm(),
                angle.style());
    }

    /** {@return the cut at the cheek; 0 or more} */
    public Amount<Length> cut() {
        return style().amount(width * Math.abs(offset) / reach);
    }

    /**
     * {@return whether the wood comes off the treble cheek; otherwise off the bass cheek; true for the treble cheek}
     */
    public boolean isOnTreble() {
        return offset > 0;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {width, offset, reach};
    }
}
