package org.neckgeom.setup;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.shop.Fence;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * What a split fence does whose halves are out of line by s: where along the piece the slot shifts, and by how much.
 * Immutable.
 *
 * <p>The edge is pressed home at the cutter, in the middle of the gap 2 g. With the outfeed half standing proud, the slot
 * shifts toward the fence by {@code s r/(g + r)} once the leading end is past the gap, r what is still to come; lying
 * back, it shifts away by {@code |s| g/(g + l)}, l what is past. While an end is in the gap the piece rides one half
 * alone. Exact for a straight edge. A one-piece fence has no step, and its angle has no say for one round cutter.
 */
public final class FenceStep implements SaysLengths<FenceStep> {

    private final double stepMm;
    private final double lengthMm;
    private final double halfGapMm;
    private final LengthStyle style;

    private FenceStep(double stepMm, double lengthMm, double halfGapMm, LengthStyle style) {
        this.stepMm = stepMm;
        this.lengthMm = lengthMm;
        this.halfGapMm = halfGapMm;
        this.style = style;
    }

    /**
     * Returns what a fence's step does to a piece.
     *
     * @param fence the fence
     * @param pieceLength length of the piece, more than the gap
     * @param gap between the fence's halves, the cutter in its middle, more than 0
     * @return the shifts along the piece
     * @throws IllegalArgumentException if a length is out of its range
     */
    public static FenceStep of(Fence fence, Quantity<Length> pieceLength, Quantity<Length> gap) {
        double length = HouseUnits.mmPositive(pieceLength, "piece length");
        double g = HouseUnits.mmPositive(gap, "gap between the fence's halves");
        if (!(length > g)) {
            throw HouseUnits.refused(
                    "piece length",
                    "more-than",
                    "more than the gap of " + Amount.from(gap, "gap").toString(),
                    pieceLength);
        }
        return new FenceStep(
                Objects.requireNonNull(fence, "fence").outOfLineMm(), length, g / 2, LengthStyle.of(pieceLength));
    }

    /**
     * Returns how far the slot is shifted at a place of the piece.
     *
     * @param fromLeadingEnd distance from the leading end, 0 to the piece's length
     * @return the shift, positive away from the fence
     * @throws IllegalArgumentException if the place is not on the piece
     */
    public Offset at(Quantity<Length> fromLeadingEnd) {
        double mm = HouseUnits.mmNotNegative(fromLeadingEnd, "distance from the leading end");
        if (!(mm <= lengthMm)) {
            throw HouseUnits.refused(
                    "distance from the leading end",
                    "at-most",
                    "no more than the piece's " + style.brief(lengthMm),
                    fromLeadingEnd);
        }
        return shift(mm);
    }

    private Offset shift(double alongMm) {
        return Offset.ofMm(SplitFence.shift(alongMm, lengthMm, halfGapMm, stepMm), 0, style);
    }

    @Override
    public FenceStep in(LengthStyle other) {
        return new FenceStep(stepMm, lengthMm, halfGapMm, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FenceStep that
                && Double.compare(stepMm, that.stepMm) == 0
                && Double.compare(lengthMm, that.lengthMm) == 0
                && Double.compare(halfGapMm, that.halfGapMm) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(stepMm, lengthMm, halfGapMm);
    }

    /** Returns the shifts at the ends and in the middle, and where to read a trial cut. */
    @Override
    public String toString() {
        if (stepMm == 0) {
            return "no step: the slot runs straight";
        }
        double in = Math.min(halfGapMm, lengthMm / 2);
        return Report.titled("halves out of line by " + style.text(Math.abs(stepMm)) + ", outfeed "
                        + (stepMm > 0 ? "proud" : "lying back"))
                .row("first end", shift(0))
                .row("then", shift(in))
                .row("middle", shift(lengthMm / 2))
                .row("last end", shift(lengthMm))
                .note("read a trial cut in the middle of a piece as long as the neck, or bring the halves into line")
                .toString();
    }
}
