package org.neckgeom.head;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A scarf behind a nut that does not stand square to the centreline: two saw settings, a roll and a swing. Immutable.
 *
 * <p>The head's face holds the slanted nut line and falls by the pitch along the centreline, which stays straight in
 * plan. With a the pitch and s the slant (positive when the nut's treble end lies nearer the body), all exact:
 *
 * <pre>
 * angle between the faces, square to the nut line   d = atan(tan a / cos s)
 * mitre on the shaft                                s
 * mitre on the head piece, in its own face          asin(cos a sin s)
 * roll of the head about its centreline             asin(sin d sin s cos a)
 * blade from square, board on its edge              asin(sin d sin s), with the pitch a as the mitre
 * swing if the head piece is cut at s as well       atan(sin s cos s (1 - cos d) / (sin^2 s + cos^2 s cos d))
 * </pre>
 *
 * <p>The two slopes are of opposite hand: the offcut of the shaft's cut, turned over, leans the wrong way and cannot be
 * used as it is. Each piece needs its own cut.
 */
public final class SlantedScarf extends ValueAnswer {

    private static final Form<SlantedScarf> FORM = Form.<SlantedScarf>of("slanted-scarf")
            .fact("pitch", Kind.RAD, "of the head along the centreline", scarf -> scarf.pitch)
            .fact("slant", Kind.RAD, "of the nut line; positive: treble end nearer the body", scarf -> scarf.slant)
            .fact("bladeFromFace", Kind.RAD, "board flat, square to the saw line", SlantedScarf::dihedral)
            .fact("headMitre", Kind.AMOUNT, "on the head piece's face, from square", SlantedScarf::headMitre)
            .fact("bladeOnEdge", Kind.AMOUNT, "board on edge, from square to the table", SlantedScarf::bladeOnEdge)
            .fact("roll", Kind.AMOUNT, "of the head; positive: treble side low", SlantedScarf::roll)
            .fact("swing", Kind.AMOUNT, "if cut alike; positive: toward the treble side", SlantedScarf::swingIfCutAlike)
            .phrase("low", scarf -> scarf.roll().libraryValue() > 0, ", treble side low")
            .phrase("low", scarf -> scarf.roll().libraryValue() < 0, ", bass side low")
            .phrase("aside", scarf -> scarf.swingIfCutAlike().libraryValue() > 0, " toward the treble side")
            .phrase("aside", scarf -> scarf.swingIfCutAlike().libraryValue() < 0, " toward the bass side")
            .finds("slanted-scarf", "Scarf at {pitch:2} behind a nut slanted {slant:2}")
            .line("boardFlat", "board flat", "blade {bladeFromFace:2} from the face, mitre {slant:2}")
            .line("headPiece", "head piece", "the other hand, mitre {headMitre:2}")
            .line("boardOnEdge", "board on edge", "mitre {pitch:2}, blade {bladeOnEdge:2} from square")
            .line("roll", "head rolls", "{roll:size 2}{low}")
            .line("swing", "swing if cut alike", "{swing:size 2}{aside}")
            .note("two-cuts", "two cuts: the turned-over offcut leans the wrong way");

    private static final double MOST_DEGREES = 30;

    private final double pitch;
    private final double slant;

    private SlantedScarf(double pitch, double slant) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.pitch = pitch;
        this.slant = slant;
    }

    /**
     * {@return the compound scarf}
     *
     * @param pitch of the head along the centreline, [1, 45] deg
     * @param slant of the nut line in plan from square, under 30 deg either way; positive when its treble end lies
     *     nearer the body
     */
    public static SlantedScarf of(Quantity<Angle> pitch, Quantity<Angle> slant) {
        return new SlantedScarf(
                ScarfKernel.pitchRad(pitch), LibraryUnits.radBetween(slant, -MOST_DEGREES, MOST_DEGREES, "nut slant"));
    }

    /**
     * {@return the blade's angle from the board's face for a board that lies flat, measured square to the saw line; the
     * angle between the two faces}
     */
    public Amount<Angle> bladeFromFace() {
        return degrees(dihedral());
    }

    /**
     * {@return the saw line's angle from square on the head piece's face; it leans the other way from the shaft's when
     * both pieces lie face up with their slopes toward each other's place, with the slant's sign, a little smaller}
     */
    public Amount<Angle> headMitre() {
        return degrees(ScarfKernel.headMitre(pitch, slant));
    }

    /**
     * {@return the blade's lean from square to the table for a board that stands on its edge, with the pitch set as the
     * mitre, with the slant's sign}
     */
    public Amount<Angle> bladeOnEdge() {
        return degrees(StrictMath.asin(StrictMath.sin(dihedral()) * StrictMath.sin(slant)));
    }

    /** {@return how far the head is rolled about its own centreline, positive when its treble side is low} */
    public Amount<Angle> roll() {
        return degrees(ScarfKernel.slantRoll(pitch, slant));
    }

    /**
     * {@return how far the head would swing sideways in plan if its piece were cut at the shaft's mitre: positive when
     * the tip swings to the treble side}
     */
    public Amount<Angle> swingIfCutAlike() {
        return degrees(ScarfKernel.foldYaw(dihedral(), slant) * -1);
    }

    private double dihedral() {
        return ScarfKernel.dihedral(pitch, slant);
    }

    private static Amount<Angle> degrees(double rad) {
        return Amount.ofLibrary(rad + 0.0, ShopUnit.DEGREE);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {pitch, slant};
    }
}
