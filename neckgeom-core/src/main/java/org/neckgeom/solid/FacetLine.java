package org.neckgeom.solid;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * One flat planed along a neck's back, tangent to its curve, with the two lines it is planed down to. Immutable.
 *
 * <p>Marks are given by y from the middle, positive outward on the side asked about, and by z below the glue face,
 * positive. The slope is the flat's angle from the glue face's plane: 0 for the back itself, 90 deg for the side.
 */
public final class FacetLine extends ValueAnswer {

    /** The same in one line. */
    static final Form<FacetLine> ROW = facts("facet-row")
            .finds(
                    "flat",
                    "{slope:2}: {innerFromMiddle:text} from the middle, {innerBelowFace:text} deep to {outerFromMiddle:text}, {outerBelowFace:text} deep");

    private static final Form<FacetLine> FORM = facts("facet-line")
            .finds("flat", "Flat at {slope:2}")
            .line(
                    "inner",
                    "inner line",
                    "{innerFromMiddle:text} from the middle, {innerBelowFace:text} below the glue face")
            .line(
                    "outer",
                    "outer line",
                    "{outerFromMiddle:text} from the middle, {outerBelowFace:text} below the glue face");

    private final double slope;
    private final double innerY;
    private final double innerZ;
    private final double outerY;
    private final double outerZ;

    FacetLine(double slope, double[] inner, double[] outer, LengthStyle style) {
        super(FORM, style);
        this.slope = slope;
        this.innerY = inner[0];
        this.innerZ = inner[1];
        this.outerY = outer[0];
        this.outerZ = outer[1];
    }

    private static Form<FacetLine> facts(String name) {
        return Form.<FacetLine>of(name)
                .fact("slope", Kind.RAD, "from the glue face", l -> l.slope)
                .fact("innerFromMiddle", Kind.MM, "of the line nearer the middle", l -> l.innerY)
                .fact("innerBelowFace", Kind.MM, "of that line", l -> l.innerZ)
                .fact("outerFromMiddle", Kind.MM, "of the line nearer the edge", l -> l.outerY)
                .fact("outerBelowFace", Kind.MM, "of that line", l -> l.outerZ);
    }

    /** {@return the flat's angle from the plane of the glue face; between 0 and 90 deg} */
    public Amount<Angle> slope() {
        return Amount.ofLibrary(slope, ShopUnit.DEGREE);
    }

    /** {@return how far from the middle the flat's inner line lies; y outward} */
    public Amount<Length> innerFromMiddle() {
        return style().amount(innerY);
    }

    /** {@return how far below the glue face the flat's inner line lies; depth} */
    public Amount<Length> innerBelowFace() {
        return style().amount(innerZ);
    }

    /** {@return how far from the middle the flat's outer line lies; y outward} */
    public Amount<Length> outerFromMiddle() {
        return style().amount(outerY);
    }

    /** {@return how far below the glue face the flat's outer line lies; depth} */
    public Amount<Length> outerBelowFace() {
        return style().amount(outerZ);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {slope, innerY, innerZ, outerY, outerZ};
    }
}
