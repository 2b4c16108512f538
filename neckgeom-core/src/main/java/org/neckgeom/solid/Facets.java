package org.neckgeom.solid;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The facets ({@index flats}, {@index chamfers}) that precede the carving of a back at one station: one tangent facet to each
 * side first, then one to each side of it, then round. Immutable.
 *
 * <p>A flat whose outward normal lies at phi from the side touches the curve {@code |y/a|^p + |z/b|^p = 1} along
 * {@code y cos phi + z sin phi = h}, {@code h = ((a cos phi)^q + (b sin phi)^q)^(1/q)}, {@code 1/p + 1/q = 1}; where
 * two such lines cross, or cross the blank's back z = b or side y = a, are the marks. Exact. No flat cuts into the
 * finished back. By default the first facet runs parallel to the line from the finished edge to the middle of the back.
 */
public final class Facets extends ValueAnswer {

    private static final Form<Facets> FORM = Form.<Facets>of("facets")
            .fact("width", Kind.MM, "of the back", f -> 2 * f.a)
            .fact("depth", Kind.MM, "of the back", f -> f.b)
            .finds("flats", "Facets of a back {width:brief} wide, {depth:brief} deep")
            .row("first", "first", Kind.answer(FacetLine.ROW), "flat to plane", Facets::first)
            .row(
                    "inner",
                    "then",
                    Kind.answer(FacetLine.ROW),
                    "flat toward the middle",
                    f -> f.second().get(0))
            .row(
                    "outer",
                    "and",
                    Kind.answer(FacetLine.ROW),
                    "flat toward the edge",
                    f -> f.second().get(1))
            .note("outside", "depths below the glue face; the curve lies inside every facet");

    private static final double HALF_TURN = StrictMath.PI / 2;

    private final SuperellipseArc arc;
    private final double a;
    private final double b;
    private final double first;

    private Facets(SuperellipseArc arc, double a, double b, double first, LengthStyle style) {
        super(FORM, style);
        this.arc = arc;
        this.a = a;
        this.b = b;
        this.first = first;
    }

    static Facets ofMm(SuperellipseArc arc, double a, double b, LengthStyle style) {
        return new Facets(arc, a, b, StrictMath.atan2(a, b), style);
    }

    /**
     * {@return a copy whose first facet has a slope of its own}
     *
     * @param slope from the plane of the glue face, between 5 and 85 deg
     */
    public Facets firstAt(Quantity<Angle> slope) {
        // The slope from the glue face and the normal's angle from the side add up to a right angle.
        return new Facets(arc, a, b, HALF_TURN - LibraryUnits.radBetween(slope, 5, 85, "first facet's slope"), style());
    }

    /** {@return the first facet, planed from back to side of the blank} */
    public FacetLine first() {
        return line(HALF_TURN, first, 0);
    }

    /**
     * {@return the second set: the facet between back and first facet, and the one between first facet and side; two
     * facets, the inner one first} Their normals halve the angles.
     */
    public List<FacetLine> second() {
        return List.of(line(HALF_TURN, (HALF_TURN + first) / 2, first), line(first, first / 2, 0));
    }

    private FacetLine line(double inner, double phi, double outer) {
        return new FacetLine(HALF_TURN - phi, cross(inner, phi), cross(phi, outer), style());
    }

    /** Where the tangents of two normal directions cross. */
    private double[] cross(double one, double other) {
        double h1 = arc.support(one, a, b);
        double h2 = arc.support(other, a, b);
        double det = StrictMath.sin(one - other);
        return new double[] {
            (h2 * StrictMath.sin(one) - h1 * StrictMath.sin(other)) / det,
            (h1 * StrictMath.cos(other) - h2 * StrictMath.cos(one)) / det
        };
    }

    @Override
    protected Object[] parts() {
        return new Object[] {arc.exponent(), a, b, first};
    }
}
