package org.neckgeom.solid;

import java.util.Arrays;
import java.util.Objects;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.kernel.Texts;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * One flat planed along a neck's back, tangent to its curve, with the two lines it is planed down to. Immutable.
 *
 * <p>Marks are given by y from the middle, positive outward on the side asked about, and by z below the glue face,
 * positive. The slope is the flat's angle from the glue face's plane: 0 for the back itself, 90 deg for the side.
 */
public final class FacetLine implements SaysLengths<FacetLine> {

    private final double slope;
    private final double innerY;
    private final double innerZ;
    private final double outerY;
    private final double outerZ;
    private final LengthStyle style;

    private FacetLine(double slope, double innerY, double innerZ, double outerY, double outerZ, LengthStyle style) {
        this.slope = slope;
        this.innerY = innerY;
        this.innerZ = innerZ;
        this.outerY = outerY;
        this.outerZ = outerZ;
        this.style = style;
    }

    static FacetLine ofMm(double slope, double[] inner, double[] outer, LengthStyle style) {
        return new FacetLine(slope, inner[0], inner[1], outer[0], outer[1], style);
    }

    /**
     * Returns the flat's angle from the plane of the glue face.
     *
     * @return between 0 and 90 deg
     */
    public Amount<Angle> slope() {
        return Amount.ofHouse(slope, ShopUnit.DEGREE);
    }

    /**
     * Returns how far from the middle the flat's inner line lies.
     *
     * @return y outward
     */
    public Amount<Length> innerFromMiddle() {
        return style.amount(innerY);
    }

    /**
     * Returns how far below the glue face the flat's inner line lies.
     *
     * @return depth
     */
    public Amount<Length> innerBelowFace() {
        return style.amount(innerZ);
    }

    /**
     * Returns how far from the middle the flat's outer line lies.
     *
     * @return y outward
     */
    public Amount<Length> outerFromMiddle() {
        return style.amount(outerY);
    }

    /**
     * Returns how far below the glue face the flat's outer line lies.
     *
     * @return depth
     */
    public Amount<Length> outerBelowFace() {
        return style.amount(outerZ);
    }

    String row() {
        return Texts.deg(slope) + ": " + style.text(innerY) + " from the middle, " + style.text(innerZ) + " deep to "
                + style.text(outerY) + ", " + style.text(outerZ) + " deep";
    }

    private double[] parts() {
        return new double[] {slope, innerY, innerZ, outerY, outerZ};
    }

    @Override
    public FacetLine in(LengthStyle other) {
        return new FacetLine(slope, innerY, innerZ, outerY, outerZ, Objects.requireNonNull(other, "style"));
    }

    /** True for the same flat. */
    @Override
    public boolean equals(Object other) {
        return other instanceof FacetLine that && Arrays.equals(parts(), that.parts());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(parts());
    }

    /** Returns the flat's slope and its two lines. */
    @Override
    public String toString() {
        return Report.titled("Flat at " + Texts.deg(slope))
                .row(
                        "inner line",
                        style.text(innerY) + " from the middle, " + style.text(innerZ) + " below the glue face")
                .row(
                        "outer line",
                        style.text(outerY) + " from the middle, " + style.text(outerZ) + " below the glue face")
                .toString();
    }
}
