package org.neckgeom.head;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A scarf joint in the head or in the shaft, with its lines after planing and gluing. Immutable.
 *
 * <p>Reference: the break line as it now is, where the head's visible face meets the fingerboard's glue face.
 * Distances are positive toward the body ("behind the break line"); on the head they run along its face toward the tip.
 * {@link #breakLineShift} is the distance of the break line from where it was laid out. Exact.
 *
 * <p>With T and t the thicknesses as glued, d planed off the head's face, e off the shaft's face, f off the head's
 * back, v a veneer on the face, planed flush with the glue face, and a the pitch:
 *
 * <pre>
 * break line moves      (d - v) / sin a - e / tan a
 * line on the back      (t - d - f + v) / sin a - (T - e) / tan a
 * line on the front     in the head:  (T - e - v cos a) / sin a along the head's face
 *                       in the shaft: (t - d + v) / sin a behind the break line
 * glue face             in the head:  (t - d - f) / sin a;  in the shaft: (T - e) / sin a
 * </pre>
 *
 * <p>Behind a nut that slants by s every one of these lines slants as the nut line does, and these are the distances on
 * the centreline, with t, d, f and v multiplied by {@code K = cos m / cos s}; T and e stay. m is the nut line's angle
 * from square in the head's face, {@code sin m = cos a sin s}. The head then rolls about its centreline by
 * {@code asin(sin b sin s cos a)}, {@code tan b = tan a / cos s}.
 */
public final class ScarfJoint extends LeanAnswer {

    private final Scarf scarf;
    private final JointPlace place;
    private final double offHeadFace;
    private final double offShaftFace;
    private final double offHeadBack;
    private final double veneer;
    private final double flush;
    private final double backVeneer;
    private final double kept;

    private ScarfJoint(
            Scarf scarf,
            JointPlace place,
            double offHeadFace,
            double offShaftFace,
            double offHeadBack,
            double veneer,
            double flush,
            double backVeneer,
            double kept) {
        super(scarf.style());
        this.scarf = scarf;
        this.place = place;
        this.offHeadFace = offHeadFace;
        this.offShaftFace = offShaftFace;
        this.offHeadBack = offHeadBack;
        this.veneer = veneer;
        this.flush = flush;
        this.backVeneer = backVeneer;
        this.kept = kept;
        if (!(headWoodMm() > 0)) {
            throw Refusal.of(
                    "wood planed off the head",
                    "less-than",
                    "be less than its thickness of " + style().brief(scarf.headMm()),
                    style().brief(offHeadFace + offHeadBack));
        }
        if (!(shaftWoodMm() > 0)) {
            throw Refusal.of(
                    "wood planed off the shaft's face",
                    "less-than",
                    "be less than its thickness of " + style().brief(scarf.shaftMm()),
                    style().brief(offShaftFace));
        }
    }

    /**
     * {@return the joint of a head scarfed onto a blank, its veneers glued on: the shaft is as thick as the blank, the
     * head piece as the head's wood} The face veneer ends at the nut or before it and leaves the break line where it was; {@link
     * #veneered} adds one that is planed flush with the glue face.
     *
     * @param head with its scarf
     * @param blank the piece the shaft is made from
     * @param nutSlant of the nut line in plan, under 30 deg either way; positive when its treble end lies nearer the
     *     body; 0 for a square nut
     * @throws IllegalArgumentException if the head is in one piece with the shaft
     */
    public static ScarfJoint of(Head head, Blank blank, Quantity<Angle> nutSlant) {
        ScarfCut cut = Objects.requireNonNull(head, "head")
                .scarf()
                .orElseThrow(() -> Refusal.because(
                        "scarf",
                        "missing",
                        "the head is in one piece with the shaft; give its scarf with .scarfed(...)"));
        Scarf scarf = Scarf.of(
                        head.angle(),
                        Objects.requireNonNull(blank, "blank").thickness(),
                        head.style().amount(head.thicknessMm()))
                .kerf(cut.kerf())
                .cleaning(cut.cleaning())
                .nutSlant(nutSlant);
        return new ScarfJoint(scarf, cut.place(), 0, 0, 0, head.veneerMm(), 0, head.backVeneerMm(), 0);
    }

    /**
     * {@return the joint whose glued face lies under the head, before any planing or veneer}
     *
     * @param scarf as it is laid out
     */
    public static ScarfJoint inTheHead(Scarf scarf) {
        return new ScarfJoint(Objects.requireNonNull(scarf, "scarf"), JointPlace.IN_THE_HEAD, 0, 0, 0, 0, 0, 0, 0);
    }

    /**
     * {@return the joint whose glued face runs through the shaft, before any planing or veneer}
     *
     * @param scarf as it is laid out
     */
    public static ScarfJoint inTheShaft(Scarf scarf) {
        return new ScarfJoint(Objects.requireNonNull(scarf, "scarf"), JointPlace.IN_THE_SHAFT, 0, 0, 0, 0, 0, 0, 0);
    }

    /**
     * {@return the joint after planing the head's face; the joint; its break line lies {@code depth / sin(pitch)}
     * nearer the body behind a square nut}
     *
     * @param depth planed off, 0 or more, on top of what was planed before
     */
    public ScarfJoint planingHeadFace(Quantity<Length> depth) {
        return more(LibraryUnits.mmNotNegative(depth, "planed off the head's face"), 0, 0, 0, 0);
    }

    /**
     * {@return the joint after planing the shaft's face, where the fingerboard goes; the joint; its break line lies
     * {@code depth / tan(pitch)} nearer the head's tip}
     *
     * @param depth planed off, 0 or more, on top of what was planed before
     */
    public ScarfJoint planingShaftFace(Quantity<Length> depth) {
        return more(0, LibraryUnits.mmNotNegative(depth, "planed off the shaft's face"), 0, 0, 0);
    }

    /**
     * {@return the joint after planing the head's back; the joint; its break line stays}
     *
     * @param depth planed off, 0 or more, on top of what was planed before
     */
    public ScarfJoint planingHeadBack(Quantity<Length> depth) {
        return more(0, 0, LibraryUnits.mmNotNegative(depth, "planed off the head's back"), 0, 0);
    }

    /**
     * {@return the joint with veneer on the head; the joint; veneer on the face, planed flush with the glue face, moves the visible
     * break line {@code thickness / sin(pitch)} toward the tip behind a square nut}
     *
     * @param side the head's face or its back
     * @param thickness 0 or more, on top of veneers glued before
     */
    public ScarfJoint veneered(HeadSide side, Quantity<Length> thickness) {
        double more = LibraryUnits.mmNotNegative(thickness, "head veneer");
        boolean isFace = Objects.requireNonNull(side, "side") == HeadSide.FACE;
        return isFace ? more(0, 0, 0, more, 0) : more(0, 0, 0, 0, more);
    }

    private ScarfJoint more(double headFace, double shaftFace, double headBack, double onFace, double onBack) {
        return new ScarfJoint(
                scarf,
                place,
                offHeadFace + headFace,
                offShaftFace + shaftFace,
                offHeadBack + headBack,
                veneer + onFace,
                flush + onFace,
                backVeneer + onBack,
                kept);
    }

    /**
     * {@return the joint with the width kept, which the board behind a slanted nut depends on; the joint}
     *
     * @param width of the widest thing kept from either piece, wings not counted, more than 0; without meaning behind a
     *     square nut
     */
    public ScarfJoint keeping(Quantity<Length> width) {
        return new ScarfJoint(
                scarf,
                place,
                offHeadFace,
                offShaftFace,
                offHeadBack,
                veneer,
                flush,
                backVeneer,
                LibraryUnits.mmPositive(width, "width kept"));
    }

    /**
     * {@return the board of both pieces: for one saw cut behind a square nut, for two behind a slanted one; the board and
     * its marks}
     *
     * @param shaftEnd x of the shaft's end, from the fingerboard side of the nut, more than 0, farther than the joint's
     *     line there
     * @param headLength of the finished head from the break line along the centreline in its face, longer than the
     *     joint's line there; of a swung head the reach of its farthest corner
     * @throws IllegalArgumentException if the nut slants and no width is {@link #keeping kept}
     */
    public ScarfBoard board(Quantity<Length> shaftEnd, Quantity<Length> headLength) {
        if (isSlanted() && kept == 0) {
            throw Refusal.because(
                    "width",
                    "missing",
                    "behind a slanted nut the board's length depends on the width kept; give .keeping(width)");
        }
        return ScarfBoard.of(new ScarfBoard.Layout(
                scarf,
                place,
                breakLineShiftMm(),
                breakLineAlongHeadMm(),
                LibraryUnits.mmPositive(shaftEnd, "shaft end"),
                LibraryUnits.mmPositive(headLength, "head length"),
                kept));
    }

    /** {@return the joint's place; in the head or in the shaft} */
    public JointPlace place() {
        return place;
    }

    /** {@return the scarf as it was laid out} */
    public Scarf scarf() {
        return scarf;
    }

    /** {@return the length of the glued face along the slope, as much as is left of it; more than 0} */
    public Amount<Length> glueFace() {
        return style().amount(glueFaceMm());
    }

    /** {@return the same as {@link #glueFace} in mm} */
    public double glueFaceMm() {
        return ScarfKernel.slope(isInTheHead() ? acrossHead() * headWoodMm() : shaftWoodMm(), scarf.pitchRad());
    }

    /** {@return the run of the glued face along its piece: {@code glue face cos(pitch)}; more than 0} */
    public Amount<Length> run() {
        return style().amount(runMm());
    }

    private double runMm() {
        return glueFaceMm() * StrictMath.cos(scarf.pitchRad());
    }

    /**
     * {@return the distance of the joint's line on the front from the break line: along the head's face for the joint
     * in the head, under the fingerboard behind the break line for the joint in the shaft}
     */
    public Amount<Length> frontLine() {
        return style().amount(frontLineMm());
    }

    /** {@return the same as {@link #frontLine} in mm} */
    public double frontLineMm() {
        if (isInTheHead()) {
            return (shaftWoodMm() - acrossHead() * flush * StrictMath.cos(scarf.pitchRad()))
                    / StrictMath.sin(scarf.pitchRad());
        }
        return slopeFromMm(0);
    }

    /** Where the shaft's slope meets the glue face, with so much wood still on it. */
    private double slopeFromMm(double stillOn) {
        double above = (isInTheHead() ? 0 : scarf.headMm()) - offHeadFace + flush;
        return ScarfKernel.slope(acrossHead() * (above - stillOn), scarf.pitchRad());
    }

    /**
     * {@return where the saw's side toward the shaft meets the glue face, behind the break line: the shaft's slope with the wood that
     * is planed off after sawing; either sign}
     */
    public Amount<Length> sawnFrom() {
        return style().amount(sawnFromMm());
    }

    /** {@return the same as {@link #sawnFrom} in mm} */
    public double sawnFromMm() {
        return slopeFromMm(scarf.cleaningMm());
    }

    /**
     * {@return where the joint shows on the back, measured along x from the break line: positive toward the body;
     * either sign}
     */
    public Amount<Length> backLine() {
        return style().amount(backLineMm());
    }

    /** {@return the same as {@link #backLine} in mm} */
    public double backLineMm() {
        return ScarfKernel.breakLineShift(acrossHead() * (headWoodMm() + flush), shaftWoodMm(), scarf.pitchRad());
    }

    /** {@return how far the break line has moved from where it was laid out, positive toward the body; either sign} */
    public Amount<Length> breakLineShift() {
        return style().amount(breakLineShiftMm());
    }

    /** {@return the same as {@link #breakLineShift} in mm} */
    public double breakLineShiftMm() {
        return ScarfKernel.breakLineShift(acrossHead() * (offHeadFace - flush), offShaftFace, scarf.pitchRad()) + 0.0;
    }

    /** {@return the head's thickness with its veneers; more than 0} */
    public Amount<Length> headThickness() {
        return style().amount(headThicknessMm());
    }

    private double headThicknessMm() {
        return headWoodMm() + veneer + backVeneer;
    }

    /** {@return the shaft's thickness at the joint, less what has been planed off its face; more than 0} */
    public Amount<Length> shaftThickness() {
        return style().amount(shaftWoodMm());
    }

    /** {@return the thickness of the veneer on the head's face, in mm; 0 or more} */
    public double veneerMm() {
        return veneer;
    }

    /** {@return the thickness of the veneer on the head's back, in mm; 0 or more} */
    public double backVeneerMm() {
        return backVeneer;
    }

    /** {@return how far the head is rolled about its own centreline behind a slanted nut, positive: treble side low} */
    public Amount<Angle> roll() {
        return Amount.ofLibrary(rollRad(), ShopUnit.DEGREE);
    }

    private double rollRad() {
        return ScarfKernel.slantRoll(scarf.pitchRad(), scarf.slantRad()) + 0.0;
    }

    boolean isInTheHead() {
        return place == JointPlace.IN_THE_HEAD;
    }

    boolean isSlanted() {
        return scarf.slantRad() != 0;
    }

    private double acrossHead() {
        return acrossHead(scarf);
    }

    private static double acrossHead(Scarf scarf) {
        return ScarfKernel.acrossHead(scarf.pitchRad(), scarf.slantRad());
    }

    double headWoodMm() {
        return scarf.headMm() - offHeadFace - offHeadBack;
    }

    double shaftWoodMm() {
        return scarf.shaftMm() - offShaftFace;
    }

    /** How far the finished break line lies along the head's face from the laid-out one, positive toward the tip. */
    double breakLineAlongHeadMm() {
        return (offShaftFace - acrossHead() * (offHeadFace - flush) * StrictMath.cos(scarf.pitchRad()))
                / StrictMath.sin(scarf.pitchRad());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        static final Form<ScarfJoint> FORM = Form.<ScarfJoint>of("scarf-joint")
                .fact("place", Kind.code(JointPlace.class), "of the glued face", ScarfJoint::place)
                .fact("angle", Kind.RAD, "between the faces", j -> j.scarf.pitchRad())
                .fact("frontLine", Kind.MM, "from the break line, along the head or behind it", ScarfJoint::frontLineMm)
                .fact("backLine", Kind.MM, "from the break line; positive: toward the body", ScarfJoint::backLineMm)
                .fact("breakLineShift", Kind.MM, "positive: toward the body", ScarfJoint::breakLineShiftMm)
                .fact("breakLine", Kind.MM, "as laid out, negative: before the nut", j -> -j.scarf.ledgeMm() + 0.0)
                .phrase("front", ScarfJoint::isInTheHead, "along the head's face from the break line")
                .phrase("front", "behind the break line, under the fingerboard")
                .phrase("back", j -> j.backLineMm() < 0, "in front of")
                .phrase("back", "behind")
                .phrase("low", j -> j.rollRad() > 0, "treble")
                .phrase("low", "bass")
                .phrase("shifted", j -> j.breakLineShiftMm() > 0, "toward the body")
                .phrase("shifted", "toward the tip")
                .finds("joint", "Scarf joint {place}, {angle:2}")
                .fact("glueFace", Kind.MM, "along the slope", ScarfJoint::glueFaceMm)
                .line("glueFace", "glue face", "{glueFace:text}")
                .fact("run", Kind.MM, "of the glued face along its piece", ScarfJoint::runMm)
                .line("run", "its run", "{run:text}")
                .line("frontLine", "line on the front", "{frontLine:text} {front}")
                .line("backLine", "line on the back", "{backLine:size text} {back} the break line")
                .fact("headThickness", Kind.MM, "of the head", ScarfJoint::headThicknessMm)
                .line("headThickness", "head with veneers", "{headThickness:text}")
                .line(
                        "breakLineShift",
                        "break line moved",
                        j -> j.breakLineShiftMm() != 0,
                        "{breakLineShift:size text} {shifted} from its mark")
                .fact("nutSlant", Kind.RAD, "positive: treble end nearer the body", j -> j.scarf.slantRad())
                .line("nutSlant", "nut slants", ScarfJoint::isSlanted, "{nutSlant:2}; lines slant as the nut does")
                .fact("roll", Kind.RAD, "of the head; positive: treble side low", ScarfJoint::rollRad)
                .line("roll", "head rolls", ScarfJoint::isSlanted, "{roll:size 2}, {low} side low")
                .note(
                        "front-under-veneer",
                        j -> j.veneer > 0 && j.isInTheHead(),
                        "the line on the front lies under the veneer")
                .note("back-under-veneer", j -> j.backVeneer > 0, "the line on the back lies under the veneer")
                .note(
                        "nut-ledge",
                        j -> j.scarf.ledgeMm() > 0,
                        "break line at x = {breakLine:brief}, the far side of the nut ledge");
    }

    @Override
    protected Object[] parts() {
        return new Object[] {scarf, place, offHeadFace, offShaftFace, offHeadBack, veneer, flush, backVeneer, kept};
    }

    @Override
    public Form<ScarfJoint> form() {
        return Sentences.FORM;
    }
}
