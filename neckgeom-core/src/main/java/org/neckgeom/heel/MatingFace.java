package org.neckgeom.heel;

import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;

/**
 * The size of the heel's face that meets the body, such as 78 mm high, 54 mm wide at its top edge and 20 mm at the cap.
 * Immutable.
 */
public final class MatingFace implements Answer {

    private static final Form<MatingFace> FORM = Form.<MatingFace>of("mating-face")
            .fact("height", Kind.MM, "from the top edge to the cap", MatingFace::heightMm)
            .fact("topWidth", Kind.MM, "cheek to cheek at the top edge", MatingFace::topMm)
            .fact("capWidth", Kind.MM, "cheek to cheek at the cap", MatingFace::capMm)
            .finds(
                    "mating-face",
                    "Mating face {height:brief} high, {topWidth:brief} wide at the top, {capWidth:brief} at the cap");

    private final double height;
    private final double top;
    private final double cap;
    private final LengthStyle style;

    private MatingFace(double height, double top, double cap, LengthStyle style) {
        this.height = height;
        this.top = top;
        this.cap = cap;
        this.style = style;
    }

    /**
     * {@return a face as wide at the cap as at its top edge}
     *
     * @param height from the top edge to the cap, more than 0
     * @param width cheek to cheek, more than 0
     */
    public static MatingFace of(Quantity<Length> height, Quantity<Length> width) {
        double w = HouseUnits.mmPositive(width, "heel width");
        return new MatingFace(HouseUnits.mmPositive(height, "heel height"), w, w, LengthStyle.of(height));
    }

    /**
     * {@return a copy with another width at the cap}
     *
     * @param width cheek to cheek at the cap, more than 0
     */
    public MatingFace atCap(Quantity<Length> width) {
        return new MatingFace(height, top, HouseUnits.mmPositive(width, "heel width at the cap"), style);
    }

    double heightMm() {
        return height;
    }

    double topMm() {
        return top;
    }

    double capMm() {
        return cap;
    }

    private double[] parts() {
        return new double[] {height, top, cap};
    }

    @Override
    public Form<MatingFace> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return style;
    }

    /** True for the same sizes. */
    @Override
    public boolean equals(Object other) {
        return other instanceof MatingFace that && Arrays.equals(parts(), that.parts());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(parts());
    }

    /** Returns the sizes in words. */
    @Override
    public String toString() {
        return text(style);
    }
}
