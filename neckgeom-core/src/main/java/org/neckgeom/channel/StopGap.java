package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * The gap between a fence and its stop block that makes a wanted move at the cutter, such as
 * {@code 1.065 mm at the stop block for 0.710 mm at the cutter}. Immutable.
 *
 * <p>A fence that pivots at one end moves by {@code m} at the cutter, a distance C from the pivot, and by
 * {@code m B / C} at a block a distance B from it. Exact for distances measured square to the fence as it stood.
 */
public final class StopGap implements SaysLengths<StopGap> {

    private final double moveMm;
    private final double ratio;
    private final double moveUncertaintyMm;
    private final boolean toward;
    private final LengthStyle style;

    StopGap(double moveMm, double ratio, double moveUncertaintyMm, boolean toward, LengthStyle style) {
        this.moveMm = moveMm;
        this.ratio = ratio;
        this.moveUncertaintyMm = moveUncertaintyMm;
        this.toward = toward;
        this.style = style;
    }

    /**
     * Returns the gap.
     *
     * @return 0 or more
     */
    public Amount<Length> gap() {
        return style.amount(gapMm());
    }

    /**
     * Returns the gap in mm.
     *
     * @return mm, 0 or more
     */
    public double gapMm() {
        return moveMm * ratio;
    }

    /**
     * Returns the standard uncertainty of the gap: that of the move, times the ratio.
     *
     * @return 0 or more
     */
    public Amount<Length> uncertainty() {
        return style.amount(moveUncertaintyMm * ratio);
    }

    /**
     * Returns how far the block moves for each mm at the cutter.
     *
     * @return a ratio, 1 for a fence that slides
     */
    public double ratio() {
        return ratio;
    }

    /**
     * Returns the leaves for the gap, at most {@link FenceMove#USUAL_LEAVES} of them.
     *
     * @param set the leaves at hand
     * @return the nearest stack, at the block; {@link LeafStack#atCutter} is the move that it makes
     */
    public LeafStack leaves(FeelerSet set) {
        return LeafStack.nearest(
                Objects.requireNonNull(set, "set"),
                FenceMove.USUAL_LEAVES,
                gapMm(),
                moveUncertaintyMm * ratio,
                ratio,
                toward,
                style);
    }

    @Override
    public StopGap in(LengthStyle other) {
        return new StopGap(moveMm, ratio, moveUncertaintyMm, toward, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StopGap that
                && Double.compare(moveMm, that.moveMm) == 0
                && Double.compare(ratio, that.ratio) == 0
                && Double.compare(moveUncertaintyMm, that.moveUncertaintyMm) == 0
                && toward == that.toward;
    }

    @Override
    public int hashCode() {
        return Objects.hash(moveMm, ratio, moveUncertaintyMm, toward);
    }

    /** Returns it in words, such as {@code 1.065 mm at the stop block for 0.710 mm at the cutter (1.5 to 1)}. */
    @Override
    public String toString() {
        String gap = style.text(gapMm(), moveUncertaintyMm * ratio) + " at the stop block";
        return ratio == 1
                ? gap + ", the move itself"
                : gap + " for " + style.text(moveMm, moveUncertaintyMm) + " at the cutter (" + Numbers.trimmed(ratio, 3)
                        + " to 1)";
    }
}
