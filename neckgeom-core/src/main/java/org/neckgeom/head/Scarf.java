package org.neckgeom.head;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A scarf joint ({@index splice}, spliced head): the head (headstock) is cut from the shaft at an angle and glued back, for
 * example 13 deg, shaft 20 mm, head 15 mm.
 *
 * <p>The head angle (pitch, tilt-back) is the angle between head face and glue face, 1 to 45 deg, measured along the
 * centreline, positive with the head tilted back. The thicknesses are more than 0; kerf, cleaning and nut ledge are 0
 * or more, and 0 by default. Without a nut ledge the break line, where head face meets glue face, is at x = 0, the
 * fingerboard side of the nut; with a ledge of length q it is at {@code x = -q}. Behind a slanted nut, as fanned frets
 * have it, the break line slants as the nut does, and all of this is measured along the centreline. Exact.
 *
 * <p>Errors: a value outside its range throws {@link org.neckgeom.fault.Refusal} (an {@code IllegalArgumentException})
 * that names the value and the range. Immutable.
 *
 * <pre>{@code
 * println(Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Scarf at 13.00 deg
 *   shaft, head               20 mm, 15 mm
 *   run of the shaft's slope  86.630 mm
 *   saw kerf                  1.8 mm
 * }</pre>
 *
 * @see ScarfJoint
 * @see ScarfBoard
 */
public final class Scarf extends LeanAnswer {

    private final double pitch;
    private final double shaft;
    private final double head;
    private final double kerf;
    private final double cleaning;
    private final double ledge;
    private final double slant;

    private Scarf(
            double pitch,
            double shaft,
            double head,
            double kerf,
            double cleaning,
            double ledge,
            double slant,
            LengthStyle style) {
        super(style);
        this.pitch = pitch;
        this.shaft = shaft;
        this.head = head;
        this.kerf = kerf;
        this.cleaning = cleaning;
        this.ledge = ledge;
        this.slant = slant;
    }

    /**
     * {@return a scarf behind a square nut, with no saw kerf, no allowance for cleaning the slopes and no nut ledge}
     *
     * @param pitch angle between the head's face and the fingerboard's glue face, [1, 45] deg
     * @param shaft thickness of the shaft's wood at the head end, without the fingerboard, more than 0; its unit is the
     *     one answers are given in
     * @param head thickness of the head piece's wood when it is glued, without veneers, more than 0
     * @throws IllegalArgumentException if one is out of its range
     */
    public static Scarf of(Quantity<Angle> pitch, Quantity<Length> shaft, Quantity<Length> head) {
        return new Scarf(
                ScarfKernel.pitchRad(pitch),
                LibraryUnits.mmPositive(shaft, "shaft thickness"),
                LibraryUnits.mmPositive(head, "head thickness"),
                0,
                0,
                0,
                0,
                LengthStyle.of(shaft));
    }

    /**
     * {@return a copy with the width of the saw cut}
     *
     * @param kerf 0 or more, measured square to the cut
     */
    public Scarf kerf(Quantity<Length> kerf) {
        return new Scarf(
                pitch, shaft, head, LibraryUnits.mmNotNegative(kerf, "saw kerf"), cleaning, ledge, slant, style());
    }

    /**
     * {@return a copy with what is planed off each of the two slopes after sawing}
     *
     * @param perSlope 0 or more, measured square to the slope
     */
    public Scarf cleaning(Quantity<Length> perSlope) {
        return new Scarf(
                pitch,
                shaft,
                head,
                kerf,
                LibraryUnits.mmNotNegative(perSlope, "planing of a slope"),
                ledge,
                slant,
                style());
    }

    /**
     * {@return a copy with a nut ledge: a flat for the nut between the fingerboard and the break line}
     *
     * @param ledge length of that flat along the neck, 0 or more: the break line lies at {@code x = -ledge}
     */
    public Scarf nutLedge(Quantity<Length> ledge) {
        return new Scarf(
                pitch, shaft, head, kerf, cleaning, LibraryUnits.mmNotNegative(ledge, "nut ledge"), slant, style());
    }

    /**
     * {@return a copy behind a slanted nut, as fanned frets have it}
     *
     * @param fromSquare of the nut line in plan, under 30 deg either way; positive when its treble end lies nearer the
     *     body; 0 for a square nut
     */
    public Scarf nutSlant(Quantity<Angle> fromSquare) {
        return new Scarf(pitch, shaft, head, kerf, cleaning, ledge, ScarfKernel.slantRad(fromSquare), style());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        static final Form<Scarf> FORM = Form.<Scarf>of("scarf")
                .fact("angle", Kind.RAD, "between the faces", Scarf::pitchRad)
                .fact("shaft", Kind.MM, "thickness of its wood at the head end", Scarf::shaftMm)
                .fact("head", Kind.MM, "thickness of its wood as glued", Scarf::headMm)
                .finds("scarf", "Scarf at {angle:2}")
                .line("thicknesses", "shaft, head", "{shaft:brief}, {head:brief}")
                .fact("run", Kind.MM, "along the blank", Scarf::runMm)
                .line("run", "run of the shaft's slope", "{run:text}")
                .fact("kerf", Kind.MM, "width of the saw cut", Scarf::kerfMm)
                .line("kerf", "saw kerf", "{kerf:brief}")
                .fact("nutLedge", Kind.MM, "length of the flat the nut is on", Scarf::ledgeMm)
                .line("nutLedge", "nut ledge", s -> s.ledge > 0, "{nutLedge:brief}")
                .fact("nutSlant", Kind.RAD, "from square; positive: treble end nearer the body", Scarf::slantRad)
                .line("nutSlant", "nut slants", s -> s.slant != 0, "{nutSlant:2}");
    }

    @Override
    public Form<Scarf> form() {
        return Sentences.FORM;
    }

    /**
     * {@return how far a slip along the slope in the glue-up lifts one piece's face over the other's: {@code slip
     * sin(pitch)}; with the slip's sign} Exact, and the same for both joints.
     *
     * @param slip along the slope, either way
     */
    public Amount<Length> stepFromSlip(Quantity<Length> slip) {
        return LengthStyle.of(slip).amount(LibraryUnits.mm(slip, "slip") * StrictMath.sin(pitch));
    }

    /** {@return the pitch; angle between the faces} */
    public Amount<Angle> angle() {
        return Amount.ofLibrary(pitch, ShopUnit.DEGREE);
    }

    /**
     * {@return the run of the shaft's slope along the blank: {@code shaft / tan(pitch)}} Exact.
     */
    public Amount<Length> run() {
        return style().amount(runMm());
    }

    private double runMm() {
        return ScarfKernel.run(shaft, pitch);
    }

    double pitchRad() {
        return pitch;
    }

    double slantRad() {
        return slant;
    }

    /** {@return the nut line's angle from square in plan; positive: treble end nearer the body; 0 for a square nut} */
    public Amount<Angle> nutSlant() {
        return Amount.ofLibrary(slant, ShopUnit.DEGREE);
    }

    /** {@return the thickness of the shaft's wood at the head end in mm; more than 0} */
    public double shaftMm() {
        return shaft;
    }

    /** {@return the thickness of the head piece's wood when it is glued, in mm; more than 0} */
    public double headMm() {
        return head;
    }

    /** {@return the width of the saw cut in mm; 0 or more} */
    public double kerfMm() {
        return kerf;
    }

    /** {@return what is planed off each slope after sawing, in mm; 0 or more} */
    public double cleaningMm() {
        return cleaning;
    }

    /**
     * {@return the length of the nut ledge, in mm; 0 or more; 0 where the break line is at the fingerboard side of the
     * nut}
     */
    public double ledgeMm() {
        return ledge;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {pitch, shaft, head, kerf, cleaning, ledge, slant};
    }
}
