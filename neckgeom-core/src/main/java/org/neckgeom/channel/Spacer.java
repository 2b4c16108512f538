package org.neckgeom.channel;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * A spacer (packer): a parallel strip between shaft and fence that keeps the head clear, such as
 * {@code parallel spacer of 8.5 mm or more on the fence side}. Immutable.
 *
 * <p>Its full thickness shifts the slot: a spacer thicker by t puts the slot nearer the fence-side edge by t. Its lack
 * of parallelism delta over a length l skews the slot by {@code atan(delta/l)}. A trial piece run with the same spacer
 * cancels both the thickness and its error.
 */
public final class Spacer extends ValueAnswer {

    private static final Form<Spacer> FORM = Form.<Spacer>of("spacer")
            .fact(
                    "leastThickness",
                    Kind.MM,
                    "proud and clearance; 0 where none is needed",
                    x -> x.leastThickness().libraryValue())
            .fact("proud", Kind.MM, "how far the head is proud of the shaft's edge", spacer -> spacer.proudMm)
            .fact("clearance", Kind.MM, "between head and fence", spacer -> spacer.clearanceMm)
            .fact("shaftLength", Kind.MM, "from the nut to the shaft's far end", spacer -> spacer.lengthMm)
            .findsOnly("not-needed", s -> !s.isNeeded(), "no spacer needed: the head stays inside the shaft's edge")
            .finds("needed", "parallel spacer of {leastThickness:brief} or more on the fence side")
            .line("proud", "head proud", "{proud:brief}")
            .line("clearance", "clearance", "{clearance:brief}")
            .note(
                    "errors",
                    "its full thickness error shifts the slot; out of parallel over {shaftLength:brief}, it skews the slot by as much")
            .note("trial-with-spacer", "run the trial piece with the same spacer: then its thickness cancels");

    private final double proudMm;
    private final double clearanceMm;
    private final double lengthMm;

    Spacer(double proudMm, double clearanceMm, double lengthMm, LengthStyle style) {
        super(FORM, style);
        this.proudMm = proudMm + 0.0;
        this.clearanceMm = clearanceMm;
        this.lengthMm = lengthMm;
    }

    /** {@return whether a spacer is needed at all; false when the head stays inside the shaft's edge} */
    public boolean isNeeded() {
        return proudMm > 0;
    }

    /** {@return the least thickness: how far the head stands proud, plus the clearance; 0 when no spacer is needed} */
    public Amount<Length> leastThickness() {
        return style().amount(isNeeded() ? proudMm + clearanceMm : 0);
    }

    /**
     * {@return the slot's line with a spacer that is not parallel, against the line with both as at the far end}
     *
     * @param thickerAtTheNut thickness at the nut less thickness at the far end of the shaft
     */
    public SlotLine skewFrom(Quantity<Length> thickerAtTheNut) {
        double delta = LibraryUnits.mm(thickerAtTheNut, "lack of parallelism");
        return new SlotLine(-delta, 0, 0, 0, 0, lengthMm, 0, LengthStyle.of(thickerAtTheNut));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {proudMm, clearanceMm, lengthMm};
    }
}
