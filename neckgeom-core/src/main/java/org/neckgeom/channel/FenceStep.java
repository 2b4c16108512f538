package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shop.Fence;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * What a split fence does whose halves are out of line by s: where along the piece the slot shifts, and by how much.
 * Immutable.
 *
 * <p>The edge is pressed home at the cutter, in the middle of the gap 2 h. With the outfeed half standing proud, the slot
 * shifts toward the fence by {@code s M/(M + h)} once the leading end is past the gap, M what is still to come or the infeed
 * half's reach, whichever is less; lying back, it shifts away by {@code |s| h/(h + K)}, K what is past or the outfeed half's
 * reach. The first h has no shift, the last h the whole step. Exact for a straight edge. A one-piece fence has no step, and
 * its angle has no say for one round cutter.
 */
public final class FenceStep extends ValueAnswer {

    private static final Kind<SlotOffset> SHIFT = Kind.answer(SlotOffset.Sentences.FORM);

    private static final Form<FenceStep> FORM = Form.<FenceStep>of("fence-step")
            .fact("outOfLine", Kind.MM, "of the halves, positive: outfeed proud", s -> s.fence.outOfLineMm())
            .findsOnly("no-step", s -> s.fence.outOfLineMm() == 0, "no step: the slot runs straight")
            .finds(
                    "outfeed-proud",
                    s -> s.fence.outOfLineMm() > 0,
                    "halves out of line by {outOfLine:size text}, outfeed proud")
            .finds("outfeed-back", "halves out of line by {outOfLine:size text}, outfeed lying back")
            .row("firstEnd", "first end", SHIFT, "at the leading end", s -> s.shift(0))
            .row("then", "then", SHIFT, "half of the gap farther", s -> s.shift(s.pressedMm()))
            .row("middle", "middle", SHIFT, "of the piece", s -> s.shift(s.lengthMm / 2))
            .row("lastEnd", "last end", SHIFT, "of the piece", s -> s.shift(s.lengthMm))
            .fact("pressed", Kind.MM, "length at each end that one half alone carries", FenceStep::pressedMm)
            .note("press", "over the first and last {pressed:brief} press against the half that carries")
            .note(
                    "read-in-the-middle",
                    "read a trial cut in the middle of a piece as long as the neck, or bring the halves into line");

    private final Fence fence;
    private final double lengthMm;

    private FenceStep(Fence fence, double lengthMm, LengthStyle style) {
        super(FORM, style);
        this.fence = fence;
        this.lengthMm = lengthMm;
    }

    /**
     * {@return what a fence's step does to a piece; the shifts along the piece}
     *
     * @param fence with the cutter at the middle of its length
     * @param pieceLength length of the piece, more than the gap between the fence's halves
     * @throws IllegalArgumentException if a length is out of its range
     */
    public static FenceStep of(Fence fence, Quantity<Length> pieceLength) {
        double length = LibraryUnits.mmPositive(pieceLength, "piece length");
        if (!(length > Objects.requireNonNull(fence, "fence").gapMm())) {
            throw LibraryUnits.refused(
                    "piece length",
                    "more-than",
                    "more than the fence's gap of " + fence.style().brief(fence.gapMm()),
                    pieceLength);
        }
        return new FenceStep(fence, length, LengthStyle.of(pieceLength));
    }

    /**
     * {@return how far the slot is shifted at a place of the piece, positive away from the fence}
     *
     * @param fromLeadingEnd distance from the leading end, 0 to the piece's length
     * @throws IllegalArgumentException if the place is not on the piece
     */
    public SlotOffset at(Quantity<Length> fromLeadingEnd) {
        double mm = LibraryUnits.mmNotNegative(fromLeadingEnd, "distance from the leading end");
        if (!(mm <= lengthMm)) {
            throw LibraryUnits.refused(
                    "distance from the leading end",
                    "at-most",
                    "no more than the piece's " + style().brief(lengthMm),
                    fromLeadingEnd);
        }
        return shift(mm);
    }

    private double pressedMm() {
        return Math.min(fence.gapMm() / 2, lengthMm / 2);
    }

    private SlotOffset shift(double alongMm) {
        return SlotOffset.ofMm(-new Riding(0, lengthMm, true, fence, null).at(alongMm), 0, style());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {fence, lengthMm};
    }
}
