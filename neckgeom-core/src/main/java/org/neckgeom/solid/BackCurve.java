package org.neckgeom.solid;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.shape.Polyline;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The curve of the neck's back at one station, such as 40 mm wide and 15.5 mm deep, rounded. Immutable.
 *
 * <p>Each side follows {@code |y/a|^p + |z/b|^p = 1}, a the half-width, b the depth below the glue face, p its own
 * exponent; the two meet on the centreline at the full depth. Depths are those of the wood, the fingerboard not
 * counted, positive below the glue face. Exact.
 */
public final class BackCurve extends ValueAnswer {

    private static final Form<BackCurve> FORM = Form.<BackCurve>of("back-curve")
            .fact("station", Kind.MM, "from the nut", c -> c.station)
            .fact("width", Kind.MM, "at the glue face", c -> 2 * c.section.halfWidth())
            .fact("depth", Kind.MM, "on the centreline below the glue face", c -> c.section.depth())
            .fact(
                    "bassDepth",
                    Kind.MM,
                    "half way out on the bass side",
                    c -> c.section.depthAt(-c.section.halfWidth() / 2))
            .fact(
                    "trebleDepth",
                    Kind.MM,
                    "half way out on the treble side",
                    c -> c.section.depthAt(c.section.halfWidth() / 2))
            .finds("back", "Back at {station:text} from the nut")
            .line("size", "wide, deep", "{width:text}, {depth:text}")
            .line("halfWayOut", "deep half way out", "bass {bassDepth:text}, treble {trebleDepth:text}");

    private static final double FINEST_MM = 1e-4;
    private static final double COARSEST_MM = 10;

    private final double station;
    private final BackSection section;

    BackCurve(double station, BackSection section, LengthStyle style) {
        super(FORM, style);
        this.station = station;
        this.section = section;
    }

    /**
     * {@return a rounded curve by its width and depth, at station 0; half an ellipse}
     *
     * @param width of the glue face, more than 0
     * @param depth on the centreline, more than 0
     */
    public static BackCurve of(Quantity<Length> width, Quantity<Length> depth) {
        SuperellipseArc half = new SuperellipseArc(BackProfile.ROUNDED);
        BackSection section = BackSection.ofShaft(
                half, half, LibraryUnits.mmPositive(width, "width") / 2, LibraryUnits.mmPositive(depth, "depth"));
        return new BackCurve(0, section, LengthStyle.of(width));
    }

    /**
     * {@return a copy with other exponents}
     *
     * @param bassPower on the bass side, in [1, 20]
     * @param treblePower on the treble side, in [1, 20]
     */
    public BackCurve powers(double bassPower, double treblePower) {
        return new BackCurve(
                station,
                section.curved(new SuperellipseArc(checked(bassPower)), new SuperellipseArc(checked(treblePower))),
                style());
    }

    private static double checked(double power) {
        if (!(power >= SuperellipseArc.LEAST_EXPONENT && power <= SuperellipseArc.GREATEST_EXPONENT)) {
            throw Refusal.of("exponent of the back", "range", "be from 1 to 20", Numbers.plain(power));
        }
        return power;
    }

    /**
     * {@return the facets to carve one side by}
     *
     * @param onTreble true for the treble side
     */
    public Facets facets(boolean onTreble) {
        return Facets.ofMm(onTreble ? section.treble() : section.bass(), section.halfWidth(), section.depth(), style());
    }

    /** {@return the station; x from the nut} */
    public Amount<Length> station() {
        return style().amount(station);
    }

    /** {@return the width of the glue face; more than 0} */
    public Amount<Length> width() {
        return style().amount(2 * section.halfWidth());
    }

    /** {@return the depth on the centreline; more than 0} */
    public Amount<Length> depth() {
        return style().amount(section.depth());
    }

    /**
     * {@return the depth of the back off the centreline; 0 at the edges and beyond}
     *
     * @param y from the centreline, positive toward the treble side
     */
    public Amount<Length> depthAt(Quantity<Length> y) {
        return style().amount(section.depthAt(LibraryUnits.mm(y, "distance from the centreline")));
    }

    /**
     * {@return how far the back reaches to the treble side at a depth; 0 at the full depth and below}
     *
     * @param depth below the glue face, 0 or more
     */
    public Amount<Length> trebleAt(Quantity<Length> depth) {
        return style().amount(section.halfWidthAt(LibraryUnits.mmNotNegative(depth, "depth"), true));
    }

    /**
     * {@return how far the back reaches to the bass side at a depth, as a positive length; 0 at the full depth and
     * below}
     *
     * @param depth below the glue face, 0 or more
     */
    public Amount<Length> bassAt(Quantity<Length> depth) {
        return style().amount(section.halfWidthAt(LibraryUnits.mmNotNegative(depth, "depth"), false));
    }

    private static double checked(Quantity<Length> tolerance) {
        double mm = LibraryUnits.mmPositive(tolerance, "tolerance");
        if (!(mm >= FINEST_MM && mm <= COARSEST_MM)) {
            throw LibraryUnits.refused("tolerance", "range", "from 0.0001 to 10 mm", tolerance);
        }
        return mm;
    }

    /** {@return the area of the section below the glue face, in mm2; more than 0} */
    public double areaMm2() {
        return section.area();
    }

    /**
     * {@return the curve for a template, from the bass edge over the middle to the treble edge, as chords; u across, positive
     * to the treble side, v upward}
     *
     * @param tolerance greatest distance of a chord from the curve, 0.0001 to 10 mm
     */
    public Polyline outline(Quantity<Length> tolerance) {
        return Polyline.open(section.outline(checked(tolerance)));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {station, section};
    }
}
