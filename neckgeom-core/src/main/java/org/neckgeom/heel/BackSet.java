package org.neckgeom.heel;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.NeckSet;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.kernel.FretKernel;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.measure.Spread;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/**
 * How the neck stands to the body, such as 560 mm scale, body at fret 14, 2.0 mm action: 1.02 deg, head back.
 * Immutable.
 *
 * <p>Reference plane: the plane of the body's top at the joint, level through its rim; over a domed top see
 * {@link #overDome}. Heights are square to it and positive toward the strings. The fret plane runs through the fret
 * tops and is taken straight: relief is not counted. The neck's angle lies between fret plane and reference plane,
 * positive with the head tilted back.
 *
 * <pre>
 * S   = scale 2^(-fret / divisions) + compensation            along the fret plane, joint to saddle
 * a_s = a_0 + (a_12 - a_0) (scale + compensation) / (scale / 2)
 * H   = saddle - fret plane at the joint (+ the dome's rise)
 * angle = asin(H / sqrt(S^2 + a_s^2)) - atan2(a_s, S)
 * </pre>
 *
 * Exact.
 */
public final class BackSet implements Answer {

    private static final String FRET_PLANE = "fret plane";
    private static final double HAIR_MM = 1e-9;
    private static final Amount<Length> LEVEL = ShopUnits.mm(0);

    private final double scale;
    private final double fret;
    private final double divisions;
    private final double plane;
    private final double saddle;
    private final double atNut;
    private final double action;
    private final double compensation;
    private final double domeRadius;
    private final double poleToJoint;
    private final double poleToBridge;
    private final LengthStyle style;

    private BackSet(Parts parts) {
        this.scale = parts.scale;
        this.fret = parts.fret;
        this.divisions = parts.divisions;
        this.plane = parts.plane;
        this.saddle = parts.saddle;
        this.atNut = parts.atNut;
        this.action = parts.action;
        this.compensation = parts.compensation;
        this.domeRadius = parts.domeRadius;
        this.poleToJoint = parts.poleToJoint;
        this.poleToBridge = parts.poleToBridge;
        this.style = parts.style;
        if (!(Math.abs(riseMm()) < StrictMath.hypot(reachMm(), stringAtSaddleMm()))) {
            throw NoAnswer.because(
                    "neck angle",
                    "out-of-reach",
                    "no neck angle brings the strings to the saddle: it stands " + style.brief(riseMm())
                            + " over the fret plane at the joint and only " + style.brief(reachMm()) + " away");
        }
    }

    /**
     * Begins with the scale.
     *
     * @param scale nut to twice the octave fret, without compensation, more than 0
     * @return the scale, to be followed by {@code bodyAtFret}
     */
    public static BackSetSteps.OfScale scale(Quantity<Length> scale) {
        return new BackSetSteps.OfScale(HouseUnits.mmPositive(scale, "scale"), LengthStyle.of(scale));
    }

    /**
     * {@return how a design's neck stands to the body: scale, joint and board are the design's own}
     *
     * @param design with scale, fingerboard and neck set
     * @throws IllegalArgumentException if the design has no neck set, if neither fret plane nor fret height is known, or if
     *     the fret plane lies lower than board and fret are high
     * @throws ArithmeticException if no angle brings the strings to the saddle
     */
    public static BackSet of(NeckDesign design) {
        NeckSet given = given(design);
        Amount<Length> plane = given.fretPlane()
                .or(() -> boardAndFret(design)
                        .map(high -> high.plus(given.overstand().orElse(LEVEL))))
                .orElseThrow(() -> Refusal.because(
                        FRET_PLANE, "missing", "either fret plane or the fingerboard's fret height must be given"));
        overstand(design);
        BackSet set = scale(design.scale().length())
                .bodyAtFret(design.bodyAtFret(), design.scale().divisions())
                .fretPlane(plane)
                .saddle(given.saddle())
                .atNut(given.atNut())
                .action(given.action())
                .compensation(given.compensation());
        return given.dome()
                .map(dome -> set.overDome(dome.radius(), dome.poleToJoint(), dome.poleToBridge()))
                .orElse(set);
    }

    /**
     * {@return how high the glue face of a design stands over the body's top at the joint: as given, or what is left of
     * the fret plane's height under board and fret; 0 or more}
     *
     * @param design with scale, fingerboard and neck set
     * @throws IllegalArgumentException if the design has no neck set, or the fret plane lies lower than board and fret are
     *     high
     */
    public static Amount<Length> overstand(NeckDesign design) {
        NeckSet given = given(design);
        Optional<Amount<Length>> boardAndFret = boardAndFret(design);
        if (given.fretPlane().isEmpty() || boardAndFret.isEmpty()) {
            return given.overstand().orElse(LEVEL);
        }
        Amount<Length> plane = given.fretPlane().get();
        double under = plane.house() - boardAndFret.get().house();
        if (under < -HAIR_MM) {
            throw Refusal.of(
                    FRET_PLANE,
                    "at-least",
                    "be " + boardAndFret.get() + " or more, the height of board and fret",
                    plane);
        }
        return Amount.ofHouse(Math.max(0, under), plane.unit());
    }

    private static NeckSet given(NeckDesign design) {
        return Objects.requireNonNull(design, "design")
                .neckSet()
                .orElseThrow(() -> Refusal.because(
                        "neck set", "missing", "\"" + design.name() + "\" needs its neck set for this, but has none"));
    }

    private static Optional<Amount<Length>> boardAndFret(NeckDesign design) {
        double board = design.boardThicknessAtMm(design.bodyJointMm());
        return design.fingerboard()
                .fretHeight()
                .map(high -> design.fingerboard().style().amount(board + high.house()));
    }

    static BackSet ofMm(
            BackSetSteps.AtJoint joint, double plane, double saddle, double atNut, double action, LengthStyle style) {
        Parts parts = new Parts(style);
        parts.scale = joint.scale;
        parts.fret = joint.fret;
        parts.divisions = joint.divisions;
        parts.plane = plane;
        parts.saddle = saddle;
        parts.atNut = atNut;
        parts.action = action;
        return new BackSet(parts);
    }

    /** The parts on their way from one neck set to the next; never leaves this class. */
    private static final class Parts {
        private double scale;
        private double fret;
        private double divisions;
        private double plane;
        private double saddle;
        private double atNut;
        private double action;
        private double compensation;
        private double domeRadius = Double.POSITIVE_INFINITY;
        private double poleToJoint;
        private double poleToBridge;
        private final LengthStyle style;

        private Parts(LengthStyle style) {
            this.style = style;
        }
    }

    private BackSet with(Consumer<Parts> change) {
        Parts parts = new Parts(style);
        parts.scale = scale;
        parts.fret = fret;
        parts.divisions = divisions;
        parts.plane = plane;
        parts.saddle = saddle;
        parts.atNut = atNut;
        parts.action = action;
        parts.compensation = compensation;
        parts.domeRadius = domeRadius;
        parts.poleToJoint = poleToJoint;
        parts.poleToBridge = poleToBridge;
        change.accept(parts);
        return new BackSet(parts);
    }

    /**
     * {@return a copy whose saddle stands back from the scale's end}
     *
     * @param compensation added to the scale at the saddle, more than minus the joint's distance from the scale's end
     */
    public BackSet compensation(Quantity<Length> compensation) {
        double mm = HouseUnits.mm(compensation, "compensation");
        double toEnd = scale * (1 - FretKernel.share(fret, divisions));
        if (!(mm > -toEnd)) {
            throw HouseUnits.refused("compensation", "more-than", "more than " + style.brief(-toEnd), compensation);
        }
        return with(parts -> parts.compensation = mm);
    }

    /**
     * {@return a copy over a domed top} The saddle's height is then counted from the top under the bridge, and the
     * reference plane lies square to the dome's axis through the top at the joint. The dome's rise between the two,
     * {@code drop(joint) - drop(bridge)} with {@code drop(r) = R - sqrt(R^2 - r^2)}, is added.
     *
     * @param radius R of the dome, more than both distances
     * @param poleToJoint distance from the dome's highest point to the joint, 0 or more
     * @param poleToBridge distance from the dome's highest point to the saddle, 0 or more
     */
    public BackSet overDome(Quantity<Length> radius, Quantity<Length> poleToJoint, Quantity<Length> poleToBridge) {
        double toJoint = HouseUnits.mmNotNegative(poleToJoint, "distance from pole to joint");
        double toBridge = HouseUnits.mmNotNegative(poleToBridge, "distance from pole to bridge");
        double r = HouseUnits.mmPositive(radius, "dome radius");
        if (!(r > Math.max(toJoint, toBridge))) {
            throw HouseUnits.refused(
                    "dome radius", "more-than", "more than " + style.brief(Math.max(toJoint, toBridge)), radius);
        }
        return with(parts -> {
            parts.domeRadius = r;
            parts.poleToJoint = toJoint;
            parts.poleToBridge = toBridge;
        });
    }

    /**
     * {@return a copy with another action}
     *
     * @param height over the fret plane at half the scale, 0 or more
     */
    public BackSet withAction(Quantity<Length> height) {
        double mm = HouseUnits.mmNotNegative(height, "action");
        return with(parts -> parts.action = mm);
    }

    /** {@return the neck's angle and how it reads at the bridge, positive with the head tilted back} */
    public NeckAngle angle() {
        return NeckAngle.of(this);
    }

    /**
     * {@return how the angle spreads when the measured rise, saddle less fret plane, is off by a spread; the angle's
     * spread}
     *
     * @param rise spread of the difference of the two heights, positive higher at the saddle
     */
    public NeckAngleSpread angleWith(Spread<Length> rise) {
        return NeckAngleSpread.of(this, rise);
    }

    /**
     * {@return what a turn of the neck about the joint does to the action, saddle and nut left as they are; the change
     * in action}
     *
     * <p>{@code a_s = (H - S sin t) / cos t}; the twelfth fret has its share of it. Exact.
     *
     * @param turn of the neck, positive with the head further back
     */
    public ActionChange actionPer(Quantity<Angle> turn) {
        double rad = HouseUnits.radBetween(turn, -10, 10, "turn of the neck");
        return ActionChange.ofTurn(
                rad,
                NeckSetKernel.stringChange(reachMm(), stringAtSaddleMm(), angleRad(), rad) * shareAtTwelfth(),
                style);
    }

    /**
     * {@return what a change of the saddle's height does to the action, the neck left as it is: {@code change (scale /
     * 2) / ((scale + compensation) cos t)}} Exact.
     *
     * @param change of the strings' top at the saddle, positive upward
     */
    public ActionChange actionPerSaddle(Quantity<Length> change) {
        double mm = HouseUnits.mm(change, "change of the saddle");
        return ActionChange.per(mm, "at the saddle", mm / StrictMath.cos(angleRad()) * shareAtTwelfth(), style);
    }

    /**
     * {@return what a thicker fingerboard, fret or stand-off does to the action, angle and saddle left as they are; the
     * change in action} Exact, and the opposite of the same change at the saddle.
     *
     * @param change of the fret plane's height at the joint, positive upward
     */
    public ActionChange actionPerThickness(Quantity<Length> change) {
        double mm = HouseUnits.mm(change, "change of the fret plane");
        return ActionChange.per(mm, "at the fret plane", -mm / StrictMath.cos(angleRad()) * shareAtTwelfth(), style);
    }

    /**
     * {@return the angle of the heel's wood between its shaft and the face that meets the body, for a body end square
     * to the reference plane: {@code 90 deg - angle}}
     */
    public HeelFace heelFace() {
        return HeelFace.of(angleRad(), Math.PI / 2, topSlopeAtJointRad());
    }

    /**
     * {@return what comes off the heel so that the fret plane's projection at the bridge moves by a height; the wedge
     * and where it comes off}
     *
     * @param heelHeight height of the heel's mating face, from its top edge to the cap, more than 0
     * @param change wanted at the bridge, positive upward
     */
    public HeelWedge wedge(Quantity<Length> heelHeight, Quantity<Length> change) {
        return HeelWedge.of(this, heelHeight, change);
    }

    /**
     * {@return what comes off one cheek so that the centreline comes back to the middle of the bridge; the cut and its
     * cheek}
     *
     * @param heelWidth width of the mating face, cheek to cheek, more than 0
     * @param offset of the neck's centreline at the bridge as it is now, positive toward the treble side
     */
    public HeelCheek cheek(Quantity<Length> heelWidth, Quantity<Length> offset) {
        return HeelCheek.of(this, heelWidth, offset);
    }

    /**
     * {@return both corrections together, as what comes off at the four corners of the mating face}
     *
     * @param face size of the mating face
     * @param change wanted in the projection at the bridge, positive upward
     * @param offset of the neck's centreline at the bridge as it is now, positive toward the treble side
     */
    public HeelCorners correction(MatingFace face, Quantity<Length> change, Quantity<Length> offset) {
        return HeelCorners.of(this, face, change, offset);
    }

    /**
     * {@return the shim for a neck that lies in a pocket; the shim and the end it goes under}
     *
     * @param pocketLength length over which the neck lies in its pocket, more than 0
     * @param change wanted in the projection at the bridge, positive upward
     */
    public PocketShim shim(Quantity<Length> pocketLength, Quantity<Length> change) {
        return PocketShim.of(this, pocketLength, change);
    }

    /** {@return the distance from the joint to the saddle along the fret plane, S; more than 0} */
    public Amount<Length> reach() {
        return style.amount(reachMm());
    }

    /** {@return the string's height over the fret plane at the nut, a_0} */
    public Amount<Length> atNut() {
        return style.amount(atNut);
    }

    /** {@return the string's height over the fret plane at the twelfth fret, a_12} */
    public Amount<Length> action() {
        return style.amount(action);
    }

    /** {@return the string's height over the fret plane at the saddle, a_s} */
    public Amount<Length> stringAtSaddle() {
        return style.amount(stringAtSaddleMm());
    }

    double reachMm() {
        return scale * (1 - FretKernel.share(fret, divisions)) + compensation;
    }

    double stringAtSaddleMm() {
        return NeckSetKernel.stringAtSaddle(scale, compensation, atNut, action);
    }

    /** H: how far the saddle stands over the fret plane's point at the joint. */
    double riseMm() {
        return saddle + domeRiseMm() - plane;
    }

    double domeRiseMm() {
        return NeckSetKernel.drop(domeRadius, poleToJoint) - NeckSetKernel.drop(domeRadius, poleToBridge);
    }

    /** Slope of the domed top at the joint, rising toward the pole. */
    double topSlopeAtJointRad() {
        return StrictMath.asin(poleToJoint / domeRadius);
    }

    double angleRad() {
        return NeckSetKernel.angle(riseMm(), reachMm(), stringAtSaddleMm());
    }

    /** Angle when the measured rise is off by some mm. */
    double angleRad(double riseErrorMm) {
        return NeckSetKernel.angle(riseMm() + riseErrorMm, reachMm(), stringAtSaddleMm());
    }

    double planeMm() {
        return plane;
    }

    boolean isDomed() {
        return !Double.isInfinite(domeRadius);
    }

    @Override
    public LengthStyle style() {
        return style;
    }

    private double shareAtTwelfth() {
        return scale / 2 / (scale + compensation);
    }

    private double[] figures() {
        return new double[] {
            scale, fret, divisions, plane, saddle, atNut, action, compensation, domeRadius, poleToJoint, poleToBridge
        };
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        static final Form<BackSet> FORM = Form.<BackSet>of("neck-set")
                .fact("angle", Kind.answer(NeckAngle.Sentences.FORM), "of the neck", BackSet::angle)
                .fact("scale", Kind.MM, "without compensation", s -> s.scale)
                .fact("compensation", Kind.MM, "of the saddle, from the scale's end", s -> s.compensation)
                .fact("bodyAtFret", Kind.WHOLE, "at which the body begins", s -> (int) s.fret)
                .fact("reach", Kind.MM, "from joint to saddle along the fret plane", BackSet::reachMm)
                .fact("fretPlane", Kind.MM, "at the joint over the body; negative: let in", BackSet::planeMm)
                .fact("saddle", Kind.MM, "strings' top over the body", s -> s.saddle)
                .fact("atNut", Kind.MM, "string over the fret plane", s -> s.atNut)
                .fact("action", Kind.MM, "string over the fret plane at the 12th fret", s -> s.action)
                .fact("atSaddle", Kind.MM, "string over the fret plane", BackSet::stringAtSaddleMm)
                .fact("domeRadius", Kind.MM, "of a domed top", s -> s.domeRadius)
                .fact("domeRise", Kind.MM, "from joint to bridge", BackSet::domeRiseMm)
                .finds("neck-set", "Neck set: {angle:finding}")
                .line("scale", "scale", "{scale:brief} and {compensation:brief} at the saddle")
                .line("joint", "joint", "fret {bodyAtFret}, {reach:text} to the saddle")
                .line("heights", "fret plane, saddle", "{fretPlane:brief}, {saddle:brief} over the body")
                .line(
                        "string",
                        "string",
                        "{atNut:brief} at the nut, {action:brief} at the 12th, {atSaddle:text} at the saddle")
                .line("dome", "dome", "radius {domeRadius:brief}, rises {domeRise:text}")
                .note("plane", "angle against the body's plane at the joint; relief not counted");
    }

    @Override
    public Form<BackSet> form() {
        return Sentences.FORM;
    }

    /** True for the same figures, in whatever style they print. */
    @Override
    public boolean equals(Object other) {
        return other instanceof BackSet that && Arrays.equals(figures(), that.figures());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(figures());
    }

    /** Returns the angle and the figures it comes from. */
    @Override
    public String toString() {
        return text(style());
    }
}
