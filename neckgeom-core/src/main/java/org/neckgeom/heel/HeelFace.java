package org.neckgeom.heel;

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
 * The angle of the heel's wood between the neck's glue face (toward the head) and the face that meets the body, such as
 * 88.98 deg. Immutable.
 *
 * <p>{@code heel = 180 deg - body end - neck angle}, with the body end's own wood angle measured from the reference
 * plane (toward the bridge) down to its end; for a square end {@code 90 deg - neck angle}. Exact.
 */
public final class HeelFace extends ValueAnswer {

    private static final Form<HeelFace> FORM = Form.<HeelFace>of("heel-face")
            .fact("angle", Kind.RAD, "of the heel's wood, from the glue face toward the head", HeelFace::rad)
            .fact("bodyEnd", Kind.RAD, "of the body's wood, from its reference plane", face -> face.bodyEnd)
            .finds("heel-face", "Heel face: {angle:2}")
            .line("between", "between", "glue face toward the head, and the face that meets the body")
            .line("bodyEnd", "body end", "{bodyEnd:2} to its reference plane");

    private final double angle;
    private final double bodyEnd;
    private final double topSlope;

    private HeelFace(double angle, double bodyEnd, double topSlope) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.angle = angle;
        this.bodyEnd = bodyEnd;
        this.topSlope = topSlope;
    }

    static HeelFace of(double angle, double bodyEnd, double topSlope) {
        return new HeelFace(angle, bodyEnd, topSlope);
    }

    /**
     * {@return the face for a neck angle and a body end square to the reference plane}
     *
     * @param neckAngle positive with the head back, under 20 deg either way
     */
    public static HeelFace at(Quantity<Angle> neckAngle) {
        return new HeelFace(LibraryUnits.radBetween(neckAngle, -20, 20, "neck angle"), Math.PI / 2, 0);
    }

    /**
     * {@return the face for a body end that is not square to the reference plane}
     *
     * @param bodyEnd the body's wood angle between reference plane and end, between 45 and 135 deg
     */
    public HeelFace bodyEnd(Quantity<Angle> bodyEnd) {
        return new HeelFace(angle, LibraryUnits.radBetween(bodyEnd, 45, 135, "body end"), topSlope);
    }

    /**
     * {@return the face for a body end square to the domed top where it meets the neck: the end then leans by the top's
     * slope there, {@code asin(distance from the pole / radius)}} On a flat top the same face.
     */
    public HeelFace squareToTheTop() {
        return new HeelFace(angle, Math.PI / 2 - topSlope, topSlope);
    }

    /** {@return the angle of the heel's wood} */
    public Amount<Angle> angle() {
        return Amount.ofLibrary(rad(), ShopUnit.DEGREE);
    }

    private double rad() {
        return Math.PI - bodyEnd - angle;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {angle, bodyEnd, topSlope};
    }
}
