package org.neckgeom.heel;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The neck angle ({@index back-set}, {@index "neck pitch"}), such as {@code 1.02 deg, head back}, with the heights at which
 * small shops read it at the bridge. Immutable.
 *
 * <p>The angle lies between the fret plane and the body's reference plane, positive with the head tilted back (builders
 * of nylon-strung instruments often count the other way). The heights are read where the string meets the saddle,
 * square to the reference plane, over the top there. Exact.
 */
public final class NeckAngle extends LeanAnswer {

    private final double reach;
    private final double string;
    private final double rise;
    private final double plane;
    private final double domeRise;
    private final boolean domed;

    /**
     * From the joint to the saddle, in mm: the reach along the fret plane, the string over it there, the saddle over the
     * fret plane's point at the joint, that point over the body, and the dome's rise.
     */
    NeckAngle(
            double reach, double string, double rise, double plane, double domeRise, boolean domed, LengthStyle style) {
        super(style);
        this.reach = reach;
        this.string = string;
        this.rise = rise;
        this.plane = plane;
        this.domeRise = domeRise;
        this.domed = domed;
        if (!(Math.abs(rise) < StrictMath.hypot(reach, string))) {
            throw NoAnswer.because(
                    "neck angle",
                    "out-of-reach",
                    "no neck angle brings the strings to the saddle: it is " + style.brief(rise)
                            + " over the fret plane at the joint and only " + style.brief(reach) + " away");
        }
    }

    private static boolean isInLine(double rad) {
        return Math.toDegrees(Math.abs(rad)) < 0.005;
    }

    /** {@return the angle against the reference plane, the one the heel is cut by, positive with the head back} */
    public Amount<Angle> angle() {
        return Amount.ofLibrary(rad(), ShopUnit.DEGREE);
    }

    /** {@return the angle in degrees, positive with the head back} */
    public double degrees() {
        return Math.toDegrees(rad());
    }

    /**
     * {@return the angle against the straight line from the top at the joint to the top under the saddle, as a
     * straightedge on the top shows it, positive with the head back} On a flat top the same as {@link #angle}.
     */
    public Amount<Angle> againstTop() {
        return Amount.ofLibrary(againstTopRad(), ShopUnit.DEGREE);
    }

    private double againstTopRad() {
        return rad() - StrictMath.atan2(domeRise, levelReachMm());
    }

    /**
     * {@return the height of the fret plane over the top at the saddle: what a straightedge on the frets reads there}
     */
    public Amount<Length> overFrets() {
        return style().amount(overFretsMm());
    }

    /**
     * {@return the air between a straightedge on the frets and the bridge's top, without its saddle; negative when the
     * straightedge strikes the bridge}
     *
     * @param bridge height of the bridge over the top, 0 or more
     */
    public Amount<Length> airOverBridge(Quantity<Length> bridge) {
        return style().amount(overFretsMm() - LibraryUnits.mmNotNegative(bridge, "bridge height"));
    }

    /**
     * {@return the height of the bare glue face over the top at the saddle: what a straightedge on the neck's face
     * reads there before the fingerboard is glued; negative when the neck's face runs into the top} {@code over frets -
     * (fingerboard + fret) / cos(angle)}.
     *
     * @param boardAndFret thickness of the fingerboard with its fret, 0 or more
     */
    public Amount<Length> overBareFace(Quantity<Length> boardAndFret) {
        double thickness = LibraryUnits.mmNotNegative(boardAndFret, "fingerboard and fret");
        return style().amount(overFretsMm() - thickness / StrictMath.cos(rad()));
    }

    /**
     * {@return both readings small shops take at the bridge instead of an angle}
     *
     * @param bridge height of the bridge over the top, without its saddle, 0 or more
     * @param boardAndFret thickness of the fingerboard with its fret, 0 or more
     */
    public BridgeReadings atBridge(Quantity<Length> bridge, Quantity<Length> boardAndFret) {
        return BridgeReadings.ofMm(
                airOverBridge(bridge).libraryValue(), overBareFace(boardAndFret).libraryValue(), style());
    }

    private double overFretsMm() {
        return plane + levelReachMm() * StrictMath.tan(rad()) - domeRise;
    }

    /**
     * How much the fret plane's height at the saddle changes for one radian of a small turn about a point under its point at the
     * joint: {@code S/cos t - a_s sin t/cos^2 t + p tan t}, p the fret plane over that point. S alone is 1 % off at 2 deg, 4 % at
     * 5 deg.
     */
    double leverMm(double pivotUnderTopMm) {
        double slope = StrictMath.tan(rad());
        double cos = StrictMath.cos(rad());
        return levelReachMm() / (cos * cos) + (plane + pivotUnderTopMm) * slope;
    }

    /** Distance from joint to the string's point on the saddle, level with the reference plane. */
    private double levelReachMm() {
        double t = rad();
        return reach * StrictMath.cos(t) - string * StrictMath.sin(t);
    }

    double rad() {
        return rad(0);
    }

    /** The angle when the measured rise is off by some mm. */
    double rad(double riseErrorMm) {
        return NeckSetKernel.angle(rise + riseErrorMm, reach, string);
    }

    double reachMm() {
        return reach;
    }

    /** The string over the fret plane at the saddle. */
    double stringMm() {
        return string;
    }

    double planeMm() {
        return plane;
    }

    double domeRiseMm() {
        return domeRise;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {reach, string, rise, plane, domeRise, domed};
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<NeckAngle> FORM = Form.<NeckAngle>of("neck-angle")
                .fact("angle", Kind.RAD, "against the body's plane; positive: head back", a -> a.rad())
                .fact(
                        "againstTop",
                        Kind.RAD,
                        "against the domed top; positive: head back",
                        a -> a.domed ? a.againstTopRad() : Double.NaN)
                .phrase("top", a -> isInLine(a.againstTopRad()), "{againstTop:size 2}, in line with the body")
                .phrase("top", a -> a.againstTopRad() > 0, "{againstTop:size 2}, head back")
                .phrase("top", "{againstTop:size 2}, head forward")
                .finds("in-line", a -> isInLine(a.rad()), "{angle:size 2}, in line with the body")
                .finds("head-back", a -> a.rad() > 0, "{angle:size 2}, head back")
                .finds("head-forward", "{angle:size 2}, head forward")
                .fact("overFrets", Kind.MM, "over the top at the saddle", NeckAngle::overFretsMm)
                .line("overFrets", "straightedge on the frets", "{overFrets:text} over the top at the saddle")
                .line("againstTop", "against the domed top", a -> a.domed, "{top}")
                .note("plane-of-the-rim", a -> a.domed, "angle against the plane of the rim at the joint")
                .note("body-top", a -> !a.domed, "angle between fret plane and body top at the joint");
    }

    @Override
    public Form<NeckAngle> form() {
        return Sentences.FORM;
    }
}
