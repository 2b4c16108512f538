package org.neckgeom.head;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The roll of a scarf joint from a saw line out of square, such as half a degree at 13 deg: a roll of 0.12 deg.
 * Immutable.
 *
 * <p>{@code roll = atan(tan(pitch) sin(out of square))}, the slope of the sawn face across the neck. Exact. Positive
 * for a saw line whose treble end lies nearer the body: the shaft's slope is then low on its treble side. The offcut of
 * the same cut, turned over, is high there by as much, so the two faces that should lie in one plane differ by twice
 * the roll until both slopes are planed true together.
 */
public final class ScarfRoll extends ValueAnswer {

    private static final Form<ScarfRoll> FORM = Form.<ScarfRoll>of("scarf-roll")
            .fact("angle", Kind.RAD, "of the head", cut -> cut.pitch)
            .fact("outOfSquare", Kind.RAD, "saw line; positive: treble end nearer the body", cut -> cut.outOfSquare)
            .fact("roll", Kind.RAD, "of the shaft's sawn face; positive: treble side low", ScarfRoll::rollRad)
            .fact("mismatch", Kind.AMOUNT, "between both slopes if not trued", ScarfRoll::mismatch)
            .fact("pitchAlong", Kind.AMOUNT, "the cut has along the centreline", ScarfRoll::pitchAlong)
            .phrase("low", cut -> cut.rollRad() > 0, ", treble side low")
            .phrase("low", cut -> cut.rollRad() < 0, ", bass side low")
            .finds("roll", "Roll from a saw line {outOfSquare:size 2} out of square")
            .line("roll", "shaft's slope", "{roll:size 2}{low}")
            .line("mismatch", "offcut turned over", "as much the other way: {mismatch:size 2} between them")
            .line("pitchAlong", "head angle along the neck", "{pitchAlong:2}")
            .note("plane-together", "plane both slopes together, edges aligned, before gluing");

    private static final double MOST_DEGREES = 20;

    private final double pitch;
    private final double outOfSquare;

    private ScarfRoll(double pitch, double outOfSquare) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.pitch = pitch;
        this.outOfSquare = outOfSquare;
    }

    /**
     * {@return the roll of a scarf sawn out of square}
     *
     * @param pitch of the head, [1, 45] deg
     * @param outOfSquare angle of the saw line on the face from square, under 20 deg either way; positive when its
     *     treble end lies nearer the body
     */
    public static ScarfRoll of(Quantity<Angle> pitch, Quantity<Angle> outOfSquare) {
        return new ScarfRoll(
                ScarfKernel.pitchRad(pitch),
                LibraryUnits.radBetween(outOfSquare, -MOST_DEGREES, MOST_DEGREES, "saw line out of square"));
    }

    /** {@return the slope of the shaft's sawn face across the neck, positive when its treble side is low} */
    public Amount<Angle> roll() {
        return Amount.ofLibrary(rollRad(), ShopUnit.DEGREE);
    }

    /**
     * {@return the angle between the two faces that should lie in one plane, when both slopes come from one cut and are
     * not trued; twice the roll}
     */
    public Amount<Angle> mismatch() {
        return Amount.ofLibrary(2 * rollRad(), ShopUnit.DEGREE);
    }

    /**
     * {@return the pitch the cut has along the centreline: {@code atan(tan(pitch) cos(out of square))}; a little less
     * than intended} Exact.
     */
    public Amount<Angle> pitchAlong() {
        return Amount.ofLibrary(ScarfKernel.pitchAlong(pitch, outOfSquare), ShopUnit.DEGREE);
    }

    /**
     * {@return how much one edge of the head lies over the other: {@code width tan(roll)}; with the roll's sign}
     *
     * @param width across the head, more than 0
     */
    public Amount<Length> across(Quantity<Length> width) {
        return LengthStyle.of(width).amount(LibraryUnits.mmPositive(width, "width") * StrictMath.tan(rollRad()));
    }

    private double rollRad() {
        return ScarfKernel.roll(pitch, outOfSquare) + 0.0;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {pitch, outOfSquare};
    }
}
