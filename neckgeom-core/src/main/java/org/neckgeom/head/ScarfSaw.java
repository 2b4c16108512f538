package org.neckgeom.head;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * One saw cut of a scarf's board: its settings for the board flat and on edge, and its marks at both edges. Immutable.
 *
 * <p>The board lies with the shaft's glue face up; marks are measured from the shaft's end. A mitre is the saw line's
 * angle from square, positive when its treble end lies nearer the shaft's end. With d the angle between cut and face and
 * s the mitre, all exact:
 *
 * <pre>
 * board flat      blade d from the face, measured square to the saw line; mitre s from square
 * board on edge   mitre atan(tan d cos s) from the board's length, blade asin(sin d sin s) from square to the table
 * </pre>
 */
public final class ScarfSaw extends ValueAnswer {

    static final Form<ScarfSaw> FORM = Form.<ScarfSaw>of("scarf-saw")
            .fact("blade", Kind.RAD, "from the face, board flat, square to the saw line", saw -> saw.blade)
            .fact("mitre", Kind.RAD, "board flat; positive: treble end nearer the shaft's end", saw -> saw.mitre)
            .fact("mitreOnEdge", Kind.RAD, "from the board's length, board on edge", ScarfSaw::mitreOnEdgeRad)
            .fact("bladeOnEdge", Kind.RAD, "from square to the table, sign of the mitre", ScarfSaw::bladeOnEdgeRad)
            .finds("cut", "Blade {blade:2} from the face, mitre {mitre:size 2}")
            .line("onEdge", "on edge", "mitre {mitreOnEdge:2}, blade {bladeOnEdge:size 2} from square")
            .fact("faceMark", Kind.MM, "on the centreline, from the shaft's end", saw -> saw.face)
            .fact("bassFace", Kind.MM, "at the bass edge of the face", saw -> saw.face + saw.aside())
            .fact("trebleFace", Kind.MM, "at the treble edge of the face", saw -> saw.face - saw.aside())
            .line("face", "face", "bass edge {bassFace:text}, treble edge {trebleFace:text}")
            .fact("backMark", Kind.MM, "on the centreline, from the shaft's end", saw -> saw.back)
            .fact("bassBack", Kind.MM, "at the bass edge of the back", saw -> saw.back + saw.aside())
            .fact("trebleBack", Kind.MM, "at the treble edge of the back", saw -> saw.back - saw.aside())
            .line("back", "back", "bass edge {bassBack:text}, treble edge {trebleBack:text}")
            .fact("cleaning", Kind.MM, "along the board, from the saw mark to the clean slope", saw -> saw.cleaning);

    private final double blade;
    private final double mitre;
    private final double face;
    private final double back;
    private final double halfWidth;
    private final double cleaning;

    /** Marks on the centreline, measured from the shaft's end; the board's half width; planing along the board. */
    ScarfSaw(double blade, double mitre, double[] marks, double halfWidth, double cleaning, LengthStyle style) {
        super(FORM, style);
        this.blade = blade;
        this.mitre = mitre + 0.0;
        this.face = marks[0];
        this.back = marks[1];
        this.halfWidth = halfWidth;
        this.cleaning = cleaning;
    }

    /** {@return the blade's angle from the face for a board that lies flat, measured square to the saw line} */
    public Amount<Angle> blade() {
        return degrees(blade);
    }

    /** {@return the saw line's angle from square on the face; positive: treble end nearer the shaft's end} */
    public Amount<Angle> mitre() {
        return degrees(mitre);
    }

    /** {@return the saw line's angle from the board's length, on the edge of a board that is on its edge; more than 0} */
    public Amount<Angle> mitreOnEdge() {
        return degrees(mitreOnEdgeRad());
    }

    private double mitreOnEdgeRad() {
        return StrictMath.atan(StrictMath.tan(blade) * StrictMath.cos(mitre));
    }

    /** {@return the blade's lean from square to the table for a board on its edge, with the mitre's sign} */
    public Amount<Angle> bladeOnEdge() {
        return degrees(bladeOnEdgeRad());
    }

    private double bladeOnEdgeRad() {
        return StrictMath.asin(StrictMath.sin(blade) * StrictMath.sin(mitre)) + 0.0;
    }

    /** {@return the saw mark on the centreline of the face, from the shaft's end} */
    public Amount<Length> faceMark() {
        return style().amount(face);
    }

    /** {@return the saw mark on the centreline of the back, from the shaft's end} */
    public Amount<Length> backMark() {
        return style().amount(back);
    }

    /** {@return the saw mark at the bass edge of the face, from the shaft's end} */
    public Amount<Length> bassFace() {
        return style().amount(face + aside());
    }

    /** {@return the saw mark at the treble edge of the face, from the shaft's end} */
    public Amount<Length> trebleFace() {
        return style().amount(face - aside());
    }

    /** {@return the saw mark at the bass edge of the back, from the shaft's end} */
    public Amount<Length> bassBack() {
        return style().amount(back + aside());
    }

    /** {@return the saw mark at the treble edge of the back, from the shaft's end} */
    public Amount<Length> trebleBack() {
        return style().amount(back - aside());
    }

    /** {@return how far along the board the clean slope lies from each saw mark, on the side of its piece; 0 or more} */
    public Amount<Length> cleaning() {
        return style().amount(cleaning);
    }

    private double aside() {
        return halfWidth * StrictMath.tan(mitre);
    }

    private static Amount<Angle> degrees(double rad) {
        return Amount.ofLibrary(rad, ShopUnit.DEGREE);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {blade, mitre, face, back, halfWidth, cleaning};
    }
}
