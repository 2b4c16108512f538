package org.neckgeom.channel;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Caution;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * A slot run twice, the second time with the piece turned end for end so that its other edge rides the fence. It shows
 * the size of the slot offset without a wall being measured, not its side. Immutable.
 *
 * <p>A slot d off the middle by e widens to {@code d + 2 |e|}, so {@code |e| = (second - first)/2}. Exact while the
 * two runs overlap, that is while {@code 2 |e| <= d}. It leaves a widened slot and is a climb cut where the slot was too
 * near the fence, so it is for scrap only: light, in a carrier.
 */
public final class FlippedPass extends ValueAnswer {

    private static final Form<FlippedPass> FORM = Form.<FlippedPass>of("turned-pass")
            .fact("firstWidth", Kind.MM, "of the slot after the first run", p -> p.firstMm)
            .fact("secondWidth", Kind.MM, "of the slot after the turned run", p -> p.secondMm)
            .fact("widening", Kind.MM, "twice the offset; may be read below 0", p -> p.secondMm - p.firstMm)
            .finds("widened", "slot {firstWidth:brief}, turned {secondWidth:brief}: widened by {widening:..4}")
            .line("tooFar", "slot too far from the fence", SecondPass.TURNED_TOO_FAR.toString())
            .line("tooNear", "slot too near it", SecondPass.TURNED_TOO_NEAR.toString())
            .note("scrap-only", "so on scrap only, light, in a carrier; the slot in a neck is not turned as a test")
            .note("feed", Caution.known("CLIMB_FEED").text());

    /** A reading that narrows the slot by more than this many standard uncertainties is refused. */
    private static final double K = 3;

    private final double firstMm;
    private final double secondMm;
    private final double repeatabilityMm;

    private FlippedPass(double firstMm, double secondMm, double repeatabilityMm, LengthStyle style) {
        super(FORM, style);
        this.firstMm = firstMm;
        this.secondMm = secondMm;
        this.repeatabilityMm = repeatabilityMm;
    }

    /**
     * {@return a turned pass from the slot's width after each run; default repeatability {@link
     * BenchUncertainty#USUAL_REPEATABILITY_MM}, changed by {@link #repeatability}}
     *
     * @param first width after the first run, more than 0
     * @param second width after the turned run, at most twice the first: beyond that the two runs leave two slots
     * @throws IllegalArgumentException if a width is out of its range or not finite
     */
    public static FlippedPass widened(Quantity<Length> first, Quantity<Length> second) {
        double d1 = LibraryUnits.mmPositive(first, "first width");
        double d2 = LibraryUnits.mmPositive(second, "second width");
        LengthStyle style = LengthStyle.of(first);
        if (!(d2 <= 2 * d1)) {
            throw LibraryUnits.refused(
                    "second width",
                    "at-most",
                    style.brief(2 * d1) + " or less (twice the first: beyond it the runs leave two slots)",
                    second);
        }
        return new FlippedPass(d1, d2, BenchUncertainty.USUAL_REPEATABILITY_MM, style);
    }

    /**
     * {@return the same pass with the repeatability of its readings}
     *
     * @param uncertainty standard uncertainty of one reading, more than 0
     * @throws IllegalArgumentException if it is not more than 0
     */
    public FlippedPass repeatability(Quantity<Length> uncertainty) {
        return new FlippedPass(firstMm, secondMm, LibraryUnits.mmPositive(uncertainty, "repeatability"), style());
    }

    /**
     * {@return how far off the slot of the first run was; the offset without its side} {@code (second - first)/2} with
     * standard uncertainty {@code u/sqrt(2)}; a second width smaller by no more than the readings' own error counts as
     * no offset.
     *
     * @throws ArithmeticException if the slot narrowed, by its readings, by more than their own error
     */
    public OffsetMagnitude offset() {
        double u = repeatabilityMm / Math.sqrt(2);
        double size = (secondMm - firstMm) / 2;
        if (size < -K * u) {
            throw NoAnswer.because(
                    "turned pass",
                    "narrower",
                    "a turned pass can only widen a slot, but " + style().text(firstMm) + " became "
                            + style().text(secondMm) + ": read both again");
        }
        return new OffsetMagnitude(Math.max(0, size), u, style());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {firstMm, secondMm, repeatabilityMm};
    }
}
