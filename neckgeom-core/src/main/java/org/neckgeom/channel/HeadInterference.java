package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Head;
import org.neckgeom.shop.Fence;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * A neck at the fence whose head is already on and in the way: what has to stand between shaft and fence, what happens
 * without it, and what a veneer on the head does to the depth. Immutable.
 *
 * <p>A head of length L_h, seen in plan {@code L = L_h cos(pitch)}, of width W_h at its tip, swung by tau toward the
 * fence, stands proud of the shaft's edge by {@code p = L sin tau + (W_h/2) cos tau - W_s/2} at its tip's corner, which
 * lies {@code L cos tau - (W_h/2) sin tau} in front of the nut, and by {@code (W_0/2) cos tau - W_s/2} at its corner by the
 * nut, W_0 its width there. It is as wide there as at its widest until {@link #outline} gives both widths. Exact for a side
 * that is straight between its corners. The fence is taken to be on the side the head is swung to until
 * {@link #fenceOnTheOtherSide}.
 */
public final class HeadInterference extends ValueAnswer {

    private static final Form<HeadInterference> FORM = Form.<HeadInterference>of("head-at-fence")
            .fact("proud", Kind.AMOUNT, "of the shaft's edge; 0 where the head stays inside", HeadInterference::proud)
            .finds("proud", at -> at.proudMm() > 0, "Head stands proud of the shaft by {proud:text}")
            .finds("inside", "Head stays inside the shaft's edge")
            .row("head", "head", Kind.ANSWER, "wings and all", at -> at.head)
            .row("blank", "blank", Kind.ANSWER, "the shaft, from the nut line to its heel end", at -> at.blank)
            .row("fence", "fence", Kind.ANSWER, "the cutter at the middle of its length", at -> at.fence);

    private final Head head;
    private final double atNut;
    private final Blank blank;
    private final Fence fence;
    private final boolean otherSide;

    private HeadInterference(Head head, double atNut, Blank blank, Fence fence, boolean otherSide, LengthStyle style) {
        super(FORM, style);
        this.head = head;
        this.atNut = atNut;
        this.blank = blank;
        this.fence = fence;
        this.otherSide = otherSide;
    }

    /**
     * {@return a neck at the fence}
     *
     * @param head the head, wings and all
     * @param blank the shaft, from the nut line to its heel end
     * @param fence with the cutter at the middle of its length
     */
    public static HeadInterference of(Head head, Blank blank, Fence fence) {
        return new HeadInterference(
                Objects.requireNonNull(head, "head"),
                head.widthMm(),
                Objects.requireNonNull(blank, "blank"),
                Objects.requireNonNull(fence, "fence"),
                false,
                blank.style());
    }

    /**
     * {@return the same with the head's own outline, straight from its width at the nut line to that at its tip}
     *
     * @param atNutLine width there, more than 0
     * @param atTip width there, more than 0
     */
    public HeadInterference outline(Quantity<Length> atNutLine, Quantity<Length> atTip) {
        double nut = LibraryUnits.mmPositive(atNutLine, "head width at the nut line");
        double tip = LibraryUnits.mmPositive(atTip, "head width at the tip");
        return new HeadInterference(head.width(head.style().amount(tip)), nut, blank, fence, otherSide, style());
    }

    /** {@return the same with the fence on the side the head is swung away from; the neck at the fence} */
    public HeadInterference fenceOnTheOtherSide() {
        return new HeadInterference(head, atNut, blank, fence, !otherSide, style());
    }

    /** {@return how far the head stands proud of the shaft's edge on the fence side; 0 or more} */
    public Amount<Length> proud() {
        return style().amount(Math.max(0, proudMm()));
    }

    private double proudMm() {
        double[] side = side();
        return Math.max(side[HeadContact.NUT_PROUD], side[HeadContact.TIP_PROUD]);
    }

    private double swing() {
        double size = Math.abs(head.swingRad());
        return otherSide ? -size : size;
    }

    private double[] side() {
        return HeadContact.side(head, atNut, swing(), blank.widthMm() / 2);
    }

    private double shaftLength() {
        return blank.lengthMm() - blank.nutFromHeadEndMm();
    }

    /**
     * {@return the parallel spacer that keeps the head off the fence}
     *
     * @param clearance between head and fence, more than 0
     * @throws IllegalArgumentException if the clearance is not more than 0
     */
    public Spacer spacer(Quantity<Length> clearance) {
        double mm = LibraryUnits.mmPositive(clearance, "clearance");
        double proud = Math.max(0, proudMm());
        return new Spacer(proud, mm, shaftLength(), style());
    }

    /** {@return the slot's skew and offsets without a spacer: the neck rides on the head's corner and its shaft} */
    public HeadSkew skew() {
        return new HeadSkew(side(), shaftLength(), fence, style());
    }

    /** {@return what the veneer on the head's face does to the depth of the slot: how the neck rocks} */
    public TableRocking rocking() {
        double thickness = head.veneerMm();
        double shortOfNut = head.veneerShortOfNutMm();
        return new TableRocking(
                HeadContact.veneerHeight(thickness, head.angleRad(), shortOfNut),
                HeadContact.veneerReach(thickness, head.angleRad(), shortOfNut),
                shaftLength(),
                style());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {head, atNut, blank, fence, otherSide};
    }
}
