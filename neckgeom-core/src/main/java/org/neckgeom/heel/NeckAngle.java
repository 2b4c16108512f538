package org.neckgeom.heel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The neck's angle, such as {@code 1.02 deg, head back}, with the heights at which small shops read it at the bridge.
 * Immutable.
 *
 * <p>The angle lies between the fret plane and the body's reference plane, positive with the head tilted back (builders
 * of nylon-strung instruments often count the other way). The heights are read where the string meets the saddle,
 * square to the reference plane, over the top there. Exact.
 */
public final class NeckAngle implements Answer {

    private final BackSet set;

    private NeckAngle(BackSet set) {
        this.set = set;
    }

    /**
     * {@return the angle of a neck set}
     *
     * @param set the neck set
     */
    public static NeckAngle of(BackSet set) {
        return new NeckAngle(Objects.requireNonNull(set, "set"));
    }

    private static boolean isInLine(double rad) {
        return Math.toDegrees(Math.abs(rad)) < 0.005;
    }

    /** {@return the angle against the reference plane, the one the heel is cut by, positive with the head back} */
    public Amount<Angle> angle() {
        return Amount.ofHouse(set.angleRad(), ShopUnit.DEGREE);
    }

    /** {@return the angle in degrees, positive with the head back} */
    public double degrees() {
        return Math.toDegrees(set.angleRad());
    }

    /**
     * {@return the angle against the straight line from the top at the joint to the top under the saddle, as a
     * straightedge on the top shows it, positive with the head back} On a flat top the same as {@link #angle}.
     */
    public Amount<Angle> againstTop() {
        return Amount.ofHouse(againstTopRad(), ShopUnit.DEGREE);
    }

    private double againstTopRad() {
        return set.angleRad() - StrictMath.atan2(set.domeRiseMm(), levelReachMm());
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
        return style().amount(overFretsMm() - HouseUnits.mmNotNegative(bridge, "bridge height"));
    }

    /**
     * {@return the height of the bare glue face over the top at the saddle: what a straightedge on the neck's face
     * reads there before the fingerboard is glued; negative when the neck's face runs into the top} {@code over frets -
     * (fingerboard + fret) / cos(angle)}.
     *
     * @param boardAndFret thickness of the fingerboard with its fret, 0 or more
     */
    public Amount<Length> overBareFace(Quantity<Length> boardAndFret) {
        double thickness = HouseUnits.mmNotNegative(boardAndFret, "fingerboard and fret");
        return style().amount(overFretsMm() - thickness / StrictMath.cos(set.angleRad()));
    }

    /**
     * {@return both readings small shops take at the bridge instead of an angle}
     *
     * @param bridge height of the bridge over the top, without its saddle, 0 or more
     * @param boardAndFret thickness of the fingerboard with its fret, 0 or more
     */
    public BridgeReadings atBridge(Quantity<Length> bridge, Quantity<Length> boardAndFret) {
        return BridgeReadings.ofMm(
                airOverBridge(bridge).house(), overBareFace(boardAndFret).house(), style());
    }

    private double overFretsMm() {
        return set.planeMm() + levelReachMm() * StrictMath.tan(set.angleRad()) - set.domeRiseMm();
    }

    /** Distance from joint to the string's point on the saddle, level with the reference plane. */
    private double levelReachMm() {
        double t = set.angleRad();
        return set.reachMm() * StrictMath.cos(t) - set.stringAtSaddleMm() * StrictMath.sin(t);
    }

    @Override
    public LengthStyle style() {
        return set.style();
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<NeckAngle> FORM = Form.<NeckAngle>of("neck-angle")
                .fact("angle", Kind.RAD, "against the body's plane; positive: head back", a -> a.set.angleRad())
                .fact(
                        "againstTop",
                        Kind.RAD,
                        "against the domed top; positive: head back",
                        a -> a.set.isDomed() ? a.againstTopRad() : Double.NaN)
                .phrase("top", a -> isInLine(a.againstTopRad()), "{againstTop:size 2}, in line with the body")
                .phrase("top", a -> a.againstTopRad() > 0, "{againstTop:size 2}, head back")
                .phrase("top", "{againstTop:size 2}, head forward")
                .finds("in-line", a -> isInLine(a.set.angleRad()), "{angle:size 2}, in line with the body")
                .finds("head-back", a -> a.set.angleRad() > 0, "{angle:size 2}, head back")
                .finds("head-forward", "{angle:size 2}, head forward")
                .fact("overFrets", Kind.MM, "over the top at the saddle", NeckAngle::overFretsMm)
                .line("overFrets", "straightedge on the frets", "{overFrets:text} over the top at the saddle")
                .line("againstTop", "against the domed top", a -> a.set.isDomed(), "{top}")
                .note("plane-of-the-rim", a -> a.set.isDomed(), "angle against the plane of the rim at the joint")
                .note("body-top", a -> !a.set.isDomed(), "angle between fret plane and body top at the joint");
    }

    @Override
    public Form<NeckAngle> form() {
        return Sentences.FORM;
    }

    /** True for the angle of an equal neck set. */
    @Override
    public boolean equals(Object other) {
        return other instanceof NeckAngle that && set.equals(that.set);
    }

    @Override
    public int hashCode() {
        return set.hashCode();
    }

    /** Returns the angle, its reference, and the reading at the bridge. */
    @Override
    public String toString() {
        return text(style());
    }
}
