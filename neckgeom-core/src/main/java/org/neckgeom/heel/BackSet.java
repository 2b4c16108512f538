package org.neckgeom.heel;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.kernel.FretKernel;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.neck.Dome;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnits;

/**
 * The neck set: place and angle of the neck on the body, such as 560 mm scale, body at fret 14, 2.0 mm action: 1.02
 * deg, head back. Immutable.
 *
 * <p>Reference plane: the plane of the body's top at the joint, level through its rim; over a domed top it lies
 * square to the dome's axis through the top at the joint, the saddle's height counts from the top under the bridge, and
 * the dome's rise between the two, {@code drop(joint) - drop(bridge)} with {@code drop(r) = R - sqrt(R^2 - r^2)}, is
 * added. Heights are square to it and positive toward the strings; those of
 * the strings are their undersides', on the centreline. The fret plane runs through the fret
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
public final class BackSet extends LeanAnswer {

    private static final String FRET_PLANE = "fret plane";
    private static final String OVERSTAND = "overstand";
    private static final double HAIR_MM = 1e-9;

    /** Between the outermost strings: the centreline. */
    private static final double MIDDLE = 0.5;

    private static final Amount<Length> LEVEL = ShopUnits.mm(0);
    private static final int MOST_FRETS = 60;

    private final Scale scale;
    private final int fret;
    private final NeckSet heights;
    private final NeckAngle angle;

    private BackSet(Scale scale, int fret, NeckSet heights, NeckAngle angle) {
        super(angle.style());
        this.scale = scale;
        this.fret = fret;
        this.heights = heights;
        this.angle = angle;
    }

    /**
     * {@return the set of a neck on its body, without the rest of the neck; printed in the unit of the scale}
     *
     * @param scale without compensation, with its divisions
     * @param bodyAtFret fret at which the neck meets the body, from 1 to 60
     * @param heights with the fret plane given; compensation more than minus the joint's distance from the scale's end
     * @throws IllegalArgumentException if the fret plane is not given, or a figure is out of its range
     * @throws ArithmeticException if no angle brings the strings to the saddle
     */
    public static BackSet of(Scale scale, int bodyAtFret, NeckSet heights) {
        LengthStyle style =
                LengthStyle.of(Objects.requireNonNull(scale, "scale").length());
        if (bodyAtFret < 1 || bodyAtFret > MOST_FRETS) {
            throw Refusal.of("fret at the body", "range", "be from 1 to " + MOST_FRETS, bodyAtFret);
        }
        double plane = Objects.requireNonNull(heights, "heights")
                .fretPlane()
                .orElseThrow(() -> Refusal.because(
                        FRET_PLANE, "missing", "either fret plane or the fingerboard's fret height must be given"))
                .libraryValue();
        double toEnd = scale.lengthMm() * (1 - FretKernel.share(bodyAtFret, scale.divisions()));
        double compensation = heights.compensation().libraryValue();
        if (!(compensation > -toEnd)) {
            throw LibraryUnits.refused(
                    "compensation", "more-than", "more than " + style.brief(-toEnd), heights.compensation());
        }
        double string = NeckSetKernel.stringAtSaddle(
                scale.lengthMm(),
                compensation,
                heights.heights().atNutMm(MIDDLE),
                heights.heights().actionMm(MIDDLE));
        double domeRise = heights.dome()
                .map(dome -> drop(dome, dome.poleToJoint()) - drop(dome, dome.poleToBridge()))
                .orElse(0.0);
        NeckAngle angle = new NeckAngle(
                toEnd + compensation,
                string,
                heights.saddle().libraryValue() + domeRise - plane,
                plane,
                domeRise,
                heights.dome().isPresent(),
                style);
        return new BackSet(scale, bodyAtFret, heights, angle);
    }

    private static double drop(Dome dome, Amount<Length> fromPole) {
        return NeckSetKernel.drop(dome.radius().libraryValue(), fromPole.libraryValue());
    }

    /**
     * {@return the neck set of a design: scale, joint and board are the design's own}
     *
     * @param design with scale, fingerboard and neck set
     * @throws IllegalArgumentException if the design has no neck set, if neither fret plane nor fret height is known, or if
     *     the fret tops lie lower than the body's top
     * @throws ArithmeticException if no angle brings the strings to the saddle
     */
    public static BackSet of(Neck design) {
        NeckSet given = given(design);
        overstand(design);
        NeckSet heights = given.fretPlane()
                .or(() -> boardAndFret(design)
                        .map(high -> high.plus(given.overstand().orElse(LEVEL))))
                .map(given::fretPlane)
                .orElse(given);
        return of(design.scale(), design.bodyAtFret(), heights);
    }

    /**
     * {@return the overstand of a design: height of its glue face over the body's top at the joint; as given, or the
     * fret plane's height less board and fret; negative where the board is let into the body}
     *
     * @param design with scale, fingerboard and neck set
     * @throws IllegalArgumentException if the design has no neck set, or its fret tops lie lower than the body's top
     */
    public static Amount<Length> overstand(Neck design) {
        NeckSet given = given(design);
        Optional<Amount<Length>> boardAndFret = boardAndFret(design);
        if (given.fretPlane().isPresent() && boardAndFret.isPresent()) {
            Amount<Length> plane = given.fretPlane().get();
            if (plane.libraryValue() < -HAIR_MM) {
                throw Refusal.of(FRET_PLANE, "at-least", "be 0 or more: fret tops over the body's top", plane);
            }
            double over = plane.libraryValue() - boardAndFret.get().libraryValue();
            return Amount.ofLibrary(Math.abs(over) < HAIR_MM ? 0 : over, plane.unit());
        }
        Amount<Length> over = given.overstand().orElse(LEVEL);
        boolean isUnder = boardAndFret
                .filter(high -> over.libraryValue() < -high.libraryValue() - HAIR_MM)
                .isPresent();
        if (isUnder) {
            throw Refusal.of(
                    OVERSTAND,
                    "at-least",
                    "be " + boardAndFret.get().times(-1) + " or more, which lets board and frets into the body",
                    over);
        }
        return over;
    }

    private static NeckSet given(Neck design) {
        return Objects.requireNonNull(design, "design")
                .neckSet()
                .orElseThrow(() -> Refusal.because(
                        "neck set", "missing", "\"" + design.name() + "\" needs its neck set for this, but has none"));
    }

    private static Optional<Amount<Length>> boardAndFret(Neck design) {
        double board = design.boardThicknessAtMm(design.bodyJointMm());
        return design.fingerboard()
                .fretHeight()
                .map(high -> design.fingerboard().style().amount(board + high.libraryValue()));
    }

    /** {@return the neck's angle and how it reads at the bridge, positive with the head tilted back} */
    public NeckAngle angle() {
        return angle;
    }

    /**
     * {@return how the angle spreads when the measured rise, saddle less fret plane, is off by a spread; the angle's
     * spread}
     *
     * @param rise spread of the difference of the two heights, positive higher at the saddle
     */
    public NeckAngleSpread angleWith(ErrorDistribution<Length> rise) {
        return NeckAngleSpread.of(angle, rise);
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
        double rad = LibraryUnits.radBetween(turn, -10, 10, "turn of the neck");
        return ActionChange.ofTurn(
                rad,
                NeckSetKernel.stringChange(angle.reachMm(), angle.stringMm(), angle.rad(), rad) * shareAtTwelfth(),
                style());
    }

    /**
     * {@return what a change of the saddle's height does to the action, the neck left as it is: {@code change (scale /
     * 2) / ((scale + compensation) cos t)}} Exact.
     *
     * @param change of the saddle's top, positive upward
     */
    public ActionChange actionPerSaddle(Quantity<Length> change) {
        double mm = LibraryUnits.mm(change, "change of the saddle");
        return ActionChange.per(mm, "at the saddle", mm / StrictMath.cos(angle.rad()) * shareAtTwelfth(), style());
    }

    /**
     * {@return what a thicker fingerboard, fret or stand-off does to the action, angle and saddle left as they are; the
     * change in action} Exact, and the opposite of the same change at the saddle.
     *
     * @param change of the fret plane's height at the joint, positive upward
     */
    public ActionChange actionPerThickness(Quantity<Length> change) {
        double mm = LibraryUnits.mm(change, "change of the fret plane");
        return ActionChange.per(mm, "at the fret plane", -mm / StrictMath.cos(angle.rad()) * shareAtTwelfth(), style());
    }

    /**
     * {@return the angle of the heel's wood between its shaft and the face that meets the body, for a body end square
     * to the reference plane: {@code 90 deg - angle}}
     */
    public HeelFace heelFace() {
        // A domed top rises toward its pole at the joint.
        double topSlope = heights.dome()
                .map(dome -> StrictMath.asin(
                        dome.poleToJoint().libraryValue() / dome.radius().libraryValue()))
                .orElse(0.0);
        return HeelFace.of(angle.rad(), Math.PI / 2, topSlope);
    }

    /**
     * {@return what comes off the heel so that the fret plane's projection at the bridge moves by a height; the wedge
     * and where it comes off}
     *
     * @param heelHeight height of the heel's mating face, from its top edge to the cap, more than 0
     * @param change wanted at the bridge, positive upward
     */
    public HeelWedge wedge(Quantity<Length> heelHeight, Quantity<Length> change) {
        return HeelWedge.of(angle, heelHeight, change);
    }

    /**
     * {@return what comes off one cheek so that the centreline comes back to the middle of the bridge; the cut and its
     * cheek}
     *
     * @param heelWidth width of the mating face, cheek to cheek, more than 0
     * @param offset of the neck's centreline at the bridge as it is now, positive toward the treble side
     */
    public HeelCheek cheek(Quantity<Length> heelWidth, Quantity<Length> offset) {
        return HeelCheek.of(angle, heelWidth, offset);
    }

    /**
     * {@return both corrections together, as what comes off at the four corners of the mating face}
     *
     * @param heel size of its mating face, at the top and at the cap
     * @param change wanted in the projection at the bridge, positive upward
     * @param offset of the neck's centreline at the bridge as it is now, positive toward the treble side
     */
    public HeelCorners correction(Heel heel, Quantity<Length> change, Quantity<Length> offset) {
        return HeelCorners.of(angle, heel, change, offset);
    }

    /**
     * {@return the shim for a neck that lies in a pocket; the shim and the end it goes under}
     *
     * @param pocketLength length over which the neck lies in its pocket, more than 0
     * @param change wanted in the projection at the bridge, positive upward
     */
    public NeckPocketShim shim(Quantity<Length> pocketLength, Quantity<Length> change) {
        return NeckPocketShim.of(angle, pocketLength, change);
    }

    /** {@return the distance from the joint to the saddle along the fret plane, S; more than 0} */
    public Amount<Length> reach() {
        return style().amount(angle.reachMm());
    }

    /** {@return the heights at nut, joint and saddle; the fret plane's among them} */
    public NeckSet heights() {
        return heights;
    }

    /** {@return the string's height over the fret plane at the saddle, a_s} */
    public Amount<Length> stringAtSaddle() {
        return style().amount(angle.stringMm());
    }

    private double domeRadiusMm() {
        return heights.dome().map(dome -> dome.radius().libraryValue()).orElse(Double.POSITIVE_INFINITY);
    }

    private double shareAtTwelfth() {
        return scale.lengthMm() / 2 / (scale.lengthMm() + heights.compensation().libraryValue());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {scale, fret, heights};
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        static final Form<BackSet> FORM = Form.<BackSet>of("neck-set")
                .fact("angle", Kind.answer(NeckAngle.Sentences.FORM), "of the neck", BackSet::angle)
                .fact("scale", Kind.MM, "without compensation", s -> s.scale.lengthMm())
                .fact(
                        "compensation",
                        Kind.MM,
                        "of the saddle, from the scale's end",
                        s -> s.heights.compensation().libraryValue())
                .fact("bodyAtFret", Kind.WHOLE, "at which the body begins", s -> s.fret)
                .fact("reach", Kind.MM, "from joint to saddle along the fret plane", s -> s.angle.reachMm())
                .fact("fretPlane", Kind.MM, "at the joint over the body; negative: let in", s -> s.angle.planeMm())
                .fact(
                        "saddle",
                        Kind.MM,
                        "saddle's top over the body",
                        s -> s.heights.saddle().libraryValue())
                .fact(
                        "atNut",
                        Kind.MM,
                        "string over the fret plane",
                        s -> s.heights.heights().atNutMm(MIDDLE))
                .fact(
                        "action",
                        Kind.MM,
                        "string over the fret plane at the 12th fret",
                        s -> s.heights.heights().actionMm(MIDDLE))
                .fact("atSaddle", Kind.MM, "string over the fret plane", s -> s.angle.stringMm())
                .fact("domeRadius", Kind.MM, "of a domed top", BackSet::domeRadiusMm)
                .fact("domeRise", Kind.MM, "from joint to bridge", s -> s.angle.domeRiseMm())
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
}
