package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The gap between a fence and its stop block that makes a wanted move at the cutter, such as
 * {@code 1.065 mm at the stop block for 0.710 mm at the cutter}. Immutable.
 *
 * <p>A fence that pivots at one end moves by {@code m} at the cutter, a distance C from the pivot, and by
 * {@code m B / C} at a block a distance B from it. Exact for distances measured square to the fence as it stood.
 */
public final class StopGap extends ValueAnswer {

    static final Form<StopGap> FORM = Form.<StopGap>of("stop-gap")
            .fact("gap", Kind.ESTIMATE, "between fence and stop block", stop -> stop.estimate(stop.ratio))
            .fact("move", Kind.ESTIMATE, "at the cutter", stop -> stop.estimate(1))
            .fact("ratio", Kind.RATIO, "of the gap to the move", StopGap::ratio)
            .finds("move-itself", stop -> stop.ratio == 1, "{gap:value} at the stop block, the move itself")
            .finds("by-the-pivot", "{gap:value} at the stop block for {move:value} at the cutter ({ratio:..3} to 1)");

    private final double moveMm;
    private final double ratio;
    private final double moveUncertaintyMm;
    private final boolean toward;

    StopGap(double moveMm, double ratio, double moveUncertaintyMm, boolean toward, LengthStyle style) {
        super(FORM, style);
        this.moveMm = moveMm;
        this.ratio = ratio;
        this.moveUncertaintyMm = moveUncertaintyMm;
        this.toward = toward;
    }

    /** {@return the gap; 0 or more} */
    public Amount<Length> gap() {
        return style().amount(moveMm * ratio);
    }

    /** {@return the standard uncertainty of the gap: that of the move, times the ratio; 0 or more} */
    public Amount<Length> uncertainty() {
        return style().amount(moveUncertaintyMm * ratio);
    }

    private Estimate<Length> estimate(double times) {
        return Estimate.of(style().amount(moveMm * times), style().amount(moveUncertaintyMm * times));
    }

    /** {@return how far the block moves for each mm at the cutter; 1 for a fence that slides} */
    public double ratio() {
        return ratio;
    }

    /**
     * {@return the leaves for the gap, at most four of them; {@link FenceMove#by} is the move that they make}
     *
     * @param set the leaves at hand
     */
    public FeelerStack leaves(FeelerSet set) {
        return new FeelerStack(
                Objects.requireNonNull(set, "set"),
                FeelerStack.USUAL_LEAVES,
                moveMm * ratio,
                moveUncertaintyMm * ratio,
                ratio,
                toward,
                style());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {moveMm, ratio, moveUncertaintyMm, toward};
    }
}
