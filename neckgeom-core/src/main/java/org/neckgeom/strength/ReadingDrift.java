package org.neckgeom.strength;

import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.Amount;

/**
 * Test piece read on one day, blank cut on another: how far the slot comes to lie off the middle, such as
 * {@code 0.12 mm too near the fence}. Immutable.
 *
 * <p>A fence set to the middle of a piece of width Wt puts the slot of a blank of width W at {@code (Wt - W)/2}: positive
 * too far from the fence. So it is half the change of width, with the other sign. Estimate, as the change is.
 */
public final class ReadingDrift extends ValueAnswer {

    private static final Form<ReadingDrift> FORM = Form.<ReadingDrift>of("reading-drift")
            .finds("too-far", drift -> drift.likely().value() > 0, "Read one day, cut another: too far from the fence")
            .finds("too-near", drift -> drift.likely().value() < 0, "Read one day, cut another: too near the fence")
            .finds("in-the-middle", "Read one day, cut another: in the middle")
            .row("offset", "offset", Likely.KIND, "positive: too far from the fence", ReadingDrift::likely)
            .row("width", "width", SizeChange.IN_ROW, "change between the days", ReadingDrift::width)
            .row("rings", "rings", SizeChange.RINGS, "how the growth rings lie", ReadingDrift::width)
            .note("same-day", "Read the piece on the day the blank is cut, and there is nothing to add.");

    private final SizeChange width;

    ReadingDrift(SizeChange width) {
        super(FORM, width.style());
        this.width = width;
    }

    /** {@return the same for a quartersawn piece and blank, with the rings known} */
    public ReadingDrift quartersawn() {
        return new ReadingDrift(width.quartersawn());
    }

    /** {@return the same for a flatsawn piece and blank, with the rings known} */
    public ReadingDrift flatsawn() {
        return new ReadingDrift(width.flatsawn());
    }

    /** {@return the change of width between the days} */
    public SizeChange width() {
        return width;
    }

    /** {@return where the slot comes to lie; its offset from the middle, positive too far from the fence} */
    public Amount<Length> offset() {
        return likely().amount();
    }

    /** {@return the 95 % interval of the slot's place over pieces} */
    public Interval<Length> interval() {
        return likely().interval();
    }

    private Likely<Length> likely() {
        return width.likely().times(-0.5);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {width};
    }
}
