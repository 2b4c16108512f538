package org.neckgeom.strength;

import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.Amount;

/**
 * The side clearance (play) of a rod in its channel before and after a change of air, such as {@code 0.11 mm, then 0.05
 * mm}: negative where the rod is too wide. The channel moves as the wood it was cut from; the metal keeps its size.
 * Immutable.
 */
public final class SlotFit extends ValueAnswer {

    /** How the rod fits afterwards. */
    public enum Fit {
        /** The rod has clearance at both ends of the interval. */
        FREE("the rod has clearance"),
        /** The interval reaches on both sides of no clearance at all. */
        MAY_BIND("the rod may bind"),
        /** The channel is too narrow at both ends of the interval. */
        BINDS("the rod binds");

        private final String words;

        Fit(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private static final Form<SlotFit> FORM = Form.<SlotFit>of("slot-fit")
            .fact("fit", Kind.code(Fit.class), "of the rod afterwards", SlotFit::fit)
            .fact(
                    "clearanceBefore",
                    Kind.AMOUNT,
                    "channel less rod; negative: too wide a rod",
                    SlotFit::clearanceBefore)
            .finds("rod-in-channel", "Rod in its channel: {fit}")
            .line("clearanceBefore", "clearance before", "{clearanceBefore:text}")
            .row(
                    "clearanceAfter",
                    "clearance after",
                    Likely.KIND,
                    "channel less rod; negative: too wide a rod",
                    SlotFit::likely)
            .row("channel", "channel", SizeChange.IN_ROW, "change of its width", SlotFit::slot)
            .note("estimate", "Estimate: the channel moves as solid wood, the rod not at all.");

    private final SizeChange slot;
    private final double rod;

    SlotFit(SizeChange slot, double rod) {
        super(FORM, slot.style());
        this.slot = slot;
        this.rod = rod;
    }

    /** {@return the change of the channel's width} */
    public SizeChange slot() {
        return slot;
    }

    /** {@return the side clearance before: width of the channel less width of the rod; negative where the rod is too wide} */
    public Amount<Length> clearanceBefore() {
        return slot.style().amount(slot.before().libraryValue() - rod);
    }

    /** {@return the side clearance after; negative where the rod is too wide} */
    public Amount<Length> clearanceAfter() {
        return slot.style().amount(slot.after().libraryValue() - rod);
    }

    /** {@return the 95 % interval of the side clearance after over pieces} */
    public Interval<Length> interval() {
        return likely().interval();
    }

    Likely<Length> likely() {
        return slot.likely().plus(slot.before().libraryValue() - rod);
    }

    /** {@return how the rod fits afterwards; free, may bind, or binds} */
    public Fit fit() {
        Likely<Length> play = likely();
        if (play.low() > 0) {
            return Fit.FREE;
        }
        return play.high() < 0 ? Fit.BINDS : Fit.MAY_BIND;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {slot, rod};
    }
}
