package org.neckgeom.channel;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * How far the fence is to be moved and which way, such as {@code fence away from the cutter by 0.710 mm}. Immutable.
 *
 * <p>A slot too far from the fence (positive offset) wants the fence toward the cutter, by the offset itself. When the
 * readings contradict each other there is no advice: the move prints why, and asking it for a number throws.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class FenceMove extends LeanAnswer {

    private final double offsetMm;
    private final double uncertaintyMm;
    private final double settingUncertaintyMm;
    private final @Nullable Closure contradiction;

    private FenceMove(
            double offsetMm,
            double uncertaintyMm,
            double settingUncertaintyMm,
            @Nullable Closure contradiction,
            LengthStyle style) {
        super(style);
        this.offsetMm = offsetMm;
        this.uncertaintyMm = uncertaintyMm;
        this.settingUncertaintyMm = settingUncertaintyMm;
        this.contradiction = contradiction;
    }

    /**
     * {@return the move that takes an offset away; the move, as uncertain as the offset}
     *
     * @param offset of the slot
     */
    public static FenceMove of(SlotOffset offset) {
        return new FenceMove(
                Objects.requireNonNull(offset, "offset").amountMm(), offset.uncertaintyMm(), 0, null, offset.style());
    }

    static FenceMove refused(SlotOffset offset, Closure contradiction) {
        return new FenceMove(offset.amountMm(), offset.uncertaintyMm(), 0, contradiction, offset.style());
    }

    /**
     * {@return a move toward the cutter, as it was made or is to be made}
     *
     * @param size of the move at the cutter, 0 or more
     * @throws IllegalArgumentException if the size is below 0
     */
    public static FenceMove toward(Quantity<Length> size) {
        return made(LibraryUnits.mmNotNegative(size, "fence move"), LengthStyle.of(size));
    }

    /**
     * {@return a move away from the cutter, as it was made or is to be made}
     *
     * @param size of the move at the cutter, 0 or more
     * @throws IllegalArgumentException if the size is below 0
     */
    public static FenceMove away(Quantity<Length> size) {
        return made(-LibraryUnits.mmNotNegative(size, "fence move"), LengthStyle.of(size));
    }

    /**
     * {@return the move at the cutter that a stack of leaves makes: its height for a fence that slides, the cutter's share
     * of it where the stack is set at the stop block of a pivoting fence; with the gauges' uncertainty}
     *
     * @param stack as it is set
     */
    public static FenceMove by(FeelerStack stack) {
        return new FenceMove(
                Objects.requireNonNull(stack, "stack").towardMm() + 0.0,
                0,
                stack.uncertaintyAtCutterMm(),
                null,
                stack.style());
    }

    private static FenceMove made(double towardMm, LengthStyle style) {
        return new FenceMove(towardMm + 0.0, 0, 0, null, style);
    }

    /**
     * {@return this move with what it was set by, such as feeler gauges, known only so well} How well a fence repeats
     * by hand is the bench's, and is not counted here.
     *
     * @param atTheCutter standard uncertainty of the move at the cutter, 0 or more
     */
    public FenceMove settingUncertainty(Quantity<Length> atTheCutter) {
        double u = LibraryUnits.mmNotNegative(atTheCutter, "setting uncertainty");
        return new FenceMove(offsetMm, uncertaintyMm, u, contradiction, style());
    }

    /**
     * {@return how far the fence goes toward the cutter, in mm, positive toward the cutter, negative away from it}
     *
     * @throws ArithmeticException if no move is advised
     */
    public double towardMm() {
        requireAdvice();
        return offsetMm;
    }

    /** {@return the standard uncertainty of what the move was set by, in mm at the cutter; 0 where none was given} */
    public double settingUncertaintyMm() {
        return settingUncertaintyMm;
    }

    /** {@return whether a move is advised at all; false when the readings contradict each other} */
    public boolean isAdvised() {
        return contradiction == null;
    }

    /**
     * {@return the size of the move; 0 or more}
     *
     * @throws ArithmeticException if no move is advised
     */
    public Amount<Length> amount() {
        return style().amount(amountMm());
    }

    /**
     * {@return the size of the move in mm; 0 or more}
     *
     * @throws ArithmeticException if no move is advised
     */
    public double amountMm() {
        requireAdvice();
        return Math.abs(offsetMm);
    }

    /** {@return the standard uncertainty of the move that is needed; 0 or more} */
    public Amount<Length> uncertainty() {
        return style().amount(uncertaintyMm);
    }

    /**
     * {@return which way the fence goes; true toward the cutter, false away from it}
     *
     * @throws ArithmeticException if no move is advised
     */
    public boolean isTowardTheCutter() {
        requireAdvice();
        return offsetMm > 0;
    }

    /**
     * {@return the leaves for the move, at most {@link FeelerStack#USUAL_LEAVES} of them}
     *
     * @param set the leaves at hand
     * @throws ArithmeticException if no move is advised
     */
    public FeelerStack leaves(FeelerSet set) {
        return leaves(set, FeelerStack.USUAL_LEAVES);
    }

    /**
     * {@return the leaves for the move}
     *
     * @param set the leaves at hand
     * @param most the most leaves in the stack, 1 to 6
     * @throws ArithmeticException if no move is advised
     * @throws IllegalArgumentException if most is out of its range
     */
    public FeelerStack leaves(FeelerSet set, int most) {
        return new FeelerStack(
                Objects.requireNonNull(set, "set"), most, amountMm(), uncertaintyMm, 1, offsetMm > 0, style());
    }

    /**
     * {@return how leaves and a stop block behind the fence make the move} Common practice.
     *
     * @throws ArithmeticException if no move is advised
     */
    public String handling() {
        return isTowardTheCutter()
                ? "clamp a block against the fence's back, draw the fence off it, put the leaves between, push it back"
                        + " onto them"
                : "put the leaves behind the fence and clamp a block over them, take them out, push the fence back onto"
                        + " the block";
    }

    /**
     * {@return the gap at the stop block: the move itself, or its share where the fence pivots at one end}
     *
     * @param fence the fence
     * @throws ArithmeticException if no move is advised
     */
    public StopGap at(Fence fence) {
        return new StopGap(
                amountMm(), Objects.requireNonNull(fence, "fence").leverage(), uncertaintyMm, offsetMm > 0, style());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<FenceMove> FORM = Form.<FenceMove>of("fence-move")
                .factIfAny("move", Kind.ESTIMATE, "at the cutter, positive toward it", FenceMove::estimate)
                .factIfAny(
                        "contradiction",
                        Kind.answer(Closure.Sentences.OBJECTION),
                        "why no move is advised",
                        move -> Optional.ofNullable(move.contradiction))
                .phrase("lost", move -> Math.abs(move.offsetMm) < move.uncertaintyMm, ", less than its own uncertainty")
                .finds("not-advised", "no move advised: {contradiction}")
                .finds("stays", m -> m.offsetMm == 0, "fence stays where it is")
                .finds("toward-the-cutter", m -> m.offsetMm > 0, "fence toward the cutter by {move:size value}{lost}")
                .finds("away-from-the-cutter", "fence away from the cutter by {move:size value}{lost}");
    }

    @Override
    public Form<FenceMove> form() {
        return Sentences.FORM;
    }

    private Optional<Estimate<Length>> estimate() {
        return isAdvised()
                ? Optional.of(Estimate.of(style().amount(offsetMm), style().amount(uncertaintyMm)))
                : Optional.empty();
    }

    private void requireAdvice() {
        if (contradiction != null) {
            throw NoAnswer.because("move", "not-advised", contradiction.objection(style()));
        }
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {offsetMm, uncertaintyMm, settingUncertaintyMm, contradiction};
    }
}
