package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The slot offset (off-centre): slot centre minus piece centre, with its standard uncertainty, such as {@code slot
 * 0.710 mm nearer the fence, u 0.014 mm}. Positive when the slot is too far from the fence, negative when it is too
 * near.
 *
 * <p>{@link #amount()} is the quantity for JSR 385 code; {@link #estimate()} is the value with its uncertainty and
 * degrees of freedom. Immutable.
 */
public final class SlotOffset implements Answer {

    private static final double SQRT_2 = Math.sqrt(2);

    private final double mm;
    private final double uncertaintyMm;
    private final Background background;

    /** What few ask an offset for, in an object of its own: an offset then fits 32 bytes, of which many are kept. */
    record Background(double degreesOfFreedom, LengthStyle style) {

        private static final Background MILLIMETRES = new Background(Double.POSITIVE_INFINITY, LengthStyle.MILLIMETRES);
        private static final Background INCHES = new Background(Double.POSITIVE_INFINITY, LengthStyle.DECIMAL_INCHES);

        static Background of(double degreesOfFreedom, LengthStyle style) {
            if (degreesOfFreedom == Double.POSITIVE_INFINITY && style == LengthStyle.MILLIMETRES) {
                return MILLIMETRES;
            }
            return degreesOfFreedom == Double.POSITIVE_INFINITY && style == LengthStyle.DECIMAL_INCHES
                    ? INCHES
                    : new Background(degreesOfFreedom, style);
        }
    }

    /** Takes zeros without a sign. */
    SlotOffset(double mm, double uncertaintyMm, Background background) {
        this.mm = mm;
        this.uncertaintyMm = uncertaintyMm;
        this.background = background;
    }

    /**
     * {@return an offset, printed in the unit of the first length}
     *
     * @param offset signed, positive when the slot lies too far from the fence; finite
     * @param uncertainty its standard uncertainty, 0 or more; 0 when none is stated
     * @throws IllegalArgumentException if a length is out of its range or not finite
     */
    public static SlotOffset of(Quantity<Length> offset, Quantity<Length> uncertainty) {
        return ofMm(
                LibraryUnits.mm(offset, "offset"),
                LibraryUnits.mmNotNegative(uncertainty, "uncertainty"),
                LengthStyle.of(offset));
    }

    /**
     * {@return the offset that two walls show: {@code e = (a - b)/2}, without uncertainty; printed in the unit of the
     * first length} Exact. The shortest way where nothing else was read; {@link Centring} checks the readings as well.
     *
     * @param fenceWall a, wood left on the fence side, more than 0
     * @param farWall b, wood left on the far side, more than 0
     * @throws IllegalArgumentException if a length is out of its range or not finite
     */
    public static SlotOffset fromWalls(Quantity<Length> fenceWall, Quantity<Length> farWall) {
        double a = LibraryUnits.mmPositive(fenceWall, "near wall");
        double b = LibraryUnits.mmPositive(farWall, "far wall");
        return new SlotOffset((a - b) / 2, 0, Background.of(Double.POSITIVE_INFINITY, LengthStyle.of(fenceWall)));
    }

    /**
     * {@return this offset of two walls, both of them read with an uncertainty: {@code u = u_r/sqrt(2)}} Exact.
     *
     * @param eachReading u_r, standard uncertainty of one reading, 0 or more
     */
    public SlotOffset repeatability(Quantity<Length> eachReading) {
        return new SlotOffset(mm, LibraryUnits.mmNotNegative(eachReading, "repeatability") / SQRT_2, background);
    }

    static SlotOffset ofMm(double mm, double uncertaintyMm, LengthStyle style) {
        return ofMm(mm, uncertaintyMm, Double.POSITIVE_INFINITY, style);
    }

    static SlotOffset ofMm(double mm, double uncertaintyMm, double degreesOfFreedom, LengthStyle style) {
        return new SlotOffset(mm + 0.0, uncertaintyMm + 0.0, Background.of(degreesOfFreedom, style));
    }

    /** {@return the offset as an estimate: its value, standard uncertainty and degrees of freedom} */
    public Estimate<Length> estimate() {
        return Estimate.ofLibrary(mm, uncertaintyMm, degreesOfFreedom(), style().unit());
    }

    double degreesOfFreedom() {
        return background.degreesOfFreedom();
    }

    /** {@return the offset, positive when the slot lies too far from the fence} */
    public Amount<Length> amount() {
        return style().amount(mm);
    }

    /** {@return the offset in mm, positive when the slot lies too far from the fence} */
    public double amountMm() {
        return mm;
    }

    /** {@return how far off the slot is, whichever way; 0 or more} */
    public Amount<Length> size() {
        return style().amount(Math.abs(mm));
    }

    /** {@return the standard uncertainty of the offset; 0 when none was stated; 0 or more} */
    public Amount<Length> uncertainty() {
        return style().amount(uncertaintyMm);
    }

    /** {@return the standard uncertainty of the offset in mm; 0 when none was stated; 0 or more} */
    public double uncertaintyMm() {
        return uncertaintyMm;
    }

    /** {@return whether the slot lies too near the fence; true for a negative offset} */
    public boolean isNearerTheFence() {
        return mm < 0;
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<SlotOffset> FORM = Form.<SlotOffset>of("offset")
                .fact(
                        "offset",
                        Kind.ESTIMATE,
                        "how far the slot's middle lies from the middle of the piece; positive: too far from the fence",
                        SlotOffset::estimate)
                .phrase("u", ", u {offset:u}")
                // What rounds to nothing has no side.
                .finds("in-the-middle", (o, style) -> style.isNothing(o.mm, o.uncertaintyMm), "slot in the middle{u}")
                .finds("nearer-the-fence", SlotOffset::isNearerTheFence, "slot {offset:size value} nearer the fence{u}")
                .finds("farther-from-the-fence", "slot {offset:size value} farther from the fence{u}");
    }

    @Override
    public Form<SlotOffset> form() {
        return Sentences.FORM;
    }

    @Override
    public LengthStyle style() {
        return background.style();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SlotOffset that
                && Double.compare(mm, that.mm) == 0
                && Double.compare(uncertaintyMm, that.uncertaintyMm) == 0
                && Double.compare(degreesOfFreedom(), that.degreesOfFreedom()) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(mm, uncertaintyMm, degreesOfFreedom());
    }

    /** Returns it in words, such as {@code slot 0.710 mm nearer the fence, u 0.014 mm}. */
    @Override
    public String toString() {
        return text(style());
    }
}
