package org.neckgeom.solid;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.BackProfile;
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
            .fact("width", Kind.MM, "at the glue face", c -> 2 * c.a)
            .fact("depth", Kind.MM, "on the centreline below the glue face", c -> c.b)
            .fact("bassDepth", Kind.MM, "half way out on the bass side", c -> c.depthMm(-c.a / 2))
            .fact("trebleDepth", Kind.MM, "half way out on the treble side", c -> c.depthMm(c.a / 2))
            .finds("back", "Back at {station:text} from the nut")
            .line("size", "wide, deep", "{width:text}, {depth:text}")
            .line("halfWayOut", "deep half way out", "bass {bassDepth:text}, treble {trebleDepth:text}");

    private static final int MOST_POINTS = 100_000;

    private final double station;
    private final SuperellipseArc bass;
    private final SuperellipseArc treble;
    private final double a;
    private final double b;

    BackCurve(double station, SuperellipseArc bass, SuperellipseArc treble, double a, double b, LengthStyle style) {
        super(FORM, style);
        this.station = station;
        this.bass = bass;
        this.treble = treble;
        this.a = a;
        this.b = b;
    }

    /**
     * {@return a rounded curve by its width and depth, at station 0; half an ellipse}
     *
     * @param width of the glue face, more than 0
     * @param depth on the centreline, more than 0
     */
    public static BackCurve of(Quantity<Length> width, Quantity<Length> depth) {
        SuperellipseArc half = new SuperellipseArc(BackProfile.ROUNDED);
        return new BackCurve(
                0,
                half,
                half,
                LibraryUnits.mmPositive(width, "width") / 2,
                LibraryUnits.mmPositive(depth, "depth"),
                LengthStyle.of(width));
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
                new SuperellipseArc(checked(bassPower)),
                new SuperellipseArc(checked(treblePower)),
                a,
                b,
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
        return Facets.ofMm(onTreble ? treble : bass, a, b, style());
    }

    /** {@return the station; x from the nut} */
    public Amount<Length> station() {
        return style().amount(station);
    }

    /** {@return the width of the glue face; more than 0} */
    public Amount<Length> width() {
        return style().amount(2 * a);
    }

    /** {@return the depth on the centreline; more than 0} */
    public Amount<Length> depth() {
        return style().amount(b);
    }

    /**
     * {@return the depth of the back off the centreline; 0 at the edges and beyond}
     *
     * @param y from the centreline, positive toward the treble side
     */
    public Amount<Length> depthAt(Quantity<Length> y) {
        return style().amount(depthMm(LibraryUnits.mm(y, "distance from the centreline")));
    }

    /**
     * {@return how far the back reaches to the treble side at a depth; 0 at the full depth and below}
     *
     * @param depth below the glue face, 0 or more
     */
    public Amount<Length> trebleAt(Quantity<Length> depth) {
        return style().amount(treble.halfWidthAt(LibraryUnits.mmNotNegative(depth, "depth"), a, b));
    }

    /**
     * {@return how far the back reaches to the bass side at a depth, as a positive length; 0 at the full depth and
     * below}
     *
     * @param depth below the glue face, 0 or more
     */
    public Amount<Length> bassAt(Quantity<Length> depth) {
        return style().amount(bass.halfWidthAt(LibraryUnits.mmNotNegative(depth, "depth"), a, b));
    }

    /**
     * {@return points of the curve for a template, from the bass edge over the middle to the treble edge: closer
     * together where it bends; fresh pairs of y and depth in mm, {@code 2 toASide + 1} of them}
     *
     * @param toASide points to each side of the middle, 2 to 100,000
     */
    public double[][] templateMm(int toASide) {
        if (toASide < 2 || toASide > MOST_POINTS) {
            throw Refusal.of("points to a side", "range", "be 2 to " + MOST_POINTS, "were", toASide);
        }
        double[][] points = new double[2 * toASide + 1][2];
        for (int i = 0; i <= toASide; i++) {
            double t = StrictMath.PI / 2 * i / toASide;
            double sin = i == toASide ? 1 : StrictMath.sin(t);
            double cos = i == toASide ? 0 : StrictMath.cos(t);
            points[toASide - i] = new double[] {
                -a * StrictMath.pow(sin, 2 / bass.exponent()) + 0.0, b * StrictMath.pow(cos, 2 / bass.exponent())
            };
            points[toASide + i] = new double[] {
                a * StrictMath.pow(sin, 2 / treble.exponent()), b * StrictMath.pow(cos, 2 / treble.exponent())
            };
        }
        return points;
    }

    private double depthMm(double y) {
        return y >= 0 ? treble.depthAt(y, a, b) : bass.depthAt(-y, a, b);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {station, bass.exponent(), treble.exponent(), a, b};
    }
}
