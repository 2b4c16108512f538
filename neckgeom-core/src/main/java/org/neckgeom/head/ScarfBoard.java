package org.neckgeom.head;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The board that shaft and head piece of a scarf are sawn from, with the marks for its cuts: one cut behind a square nut,
 * two of opposite hand behind a slanted one. Immutable.
 *
 * <p>Lay the board with the shaft's future glue face up and measure every mark from the shaft's end. The saw leans so that
 * a cut is further from that end on the back than on the face. The head piece lies in the board with its back up: turned
 * over about its length, the board's face becomes the head's back.
 *
 * <p>With X the shaft from its end to the break line, L the head along its face, B the board's thickness (the larger of
 * shaft T and head t), k the kerf and twice the cleaning, a the pitch; behind a square nut, the head piece thinned on its
 * back:
 *
 * <pre>
 * in the head    X + L - T / sin a + B / tan a + k / sin a
 * in the shaft   X + L - t / sin a + B / tan a + k / sin a
 * </pre>
 *
 * and {@code (B - t) / tan a} less when it is thinned on its face.
 *
 * <p>Behind a nut that slants by s the shaft's cut has mitre s and the head piece's has m of the other hand, {@code sin m
 * = cos a sin s}: the turned-over offcut leans the wrong way. With {@code K = cos m / cos s}, k the kerf, c the cleaning
 * of one slope and w the width kept, marks on the centreline and y to the treble side:
 *
 * <pre>
 * shaft, face    M + K c / sin a - y tan s,   M = X in the head, X - K t / sin a in the shaft
 * head, face     M + (K + 1) (k + c) / sin a + e1 + e2 + y tan m, its clean slope
 * on the back    B / tan a more;  B / (K tan a) more for the head
 * e1, e2         (w / 2) (tan |s| + tan |m|),   (B / tan a) (1 - 1 / K)
 * length         the head's line on the back, + L - T / sin a in the head, + L in the shaft
 * </pre>
 *
 * and {@code (B - t) / (K tan a)} less when the head piece is thinned on its face. e1 is a wedge of waste that is nothing
 * at one edge; e2 keeps both cuts apart on the back, as the head's is the steeper along the board. Exact; no allowance for
 * the ends.
 */
public final class ScarfBoard extends ValueAnswer {

    private static final Form<ScarfBoard> FORM = Form.<ScarfBoard>of("scarf-board")
            .fact("place", Kind.code(JointPlace.class), "of the joint", b -> b.layout.place())
            .fact("thickness", Kind.MM, "of the board", b -> b.thickness)
            .fact("thinned", Kind.code(HeadSide.class), "side on which the head piece is thinned", b -> b.thinned)
            .phrase("board", b -> b.thinned == HeadSide.FACE, "the board's back")
            .phrase("board", "the board's face")
            .fact("cuts", Kind.WHOLE, "how many saw cuts", b -> b.isSlanted() ? 2 : 1)
            .finds("board", b -> !b.isSlanted(), "Board for one saw cut, joint {place}")
            .finds("two-cuts", "Board for two saw cuts of opposite hand, joint {place}")
            .fact("length", Kind.MM, "nothing to spare at the ends", b -> b.least)
            .line("length", "least length", "{length:text}, {thickness:brief} thick")
            .fact(
                    "faceMark",
                    Kind.MM,
                    "from the shaft's end",
                    b -> b.shaftCut.faceMark().libraryValue())
            .line("faceMark", "mark on the face", b -> !b.isSlanted(), "{faceMark:text} from the shaft's end")
            .fact(
                    "backMark",
                    Kind.MM,
                    "from the shaft's end",
                    b -> b.shaftCut.backMark().libraryValue())
            .line("backMark", "mark on the back", b -> !b.isSlanted(), "{backMark:text} from the shaft's end")
            .factIfAny("shaftCut", Kind.answer(ScarfSaw.FORM), "behind a slanted nut", b -> b.ifSlanted(b.shaftCut))
            .line("shaftCut", "shaft", "{shaftCut}")
            .factIfAny("headCut", Kind.answer(ScarfSaw.FORM), "behind a slanted nut", b -> b.ifSlanted(b.headCut))
            .line("headCut", "head piece", "{headCut}")
            .fact("headFrom", Kind.MM, "the shaft's end, on the face", b -> b.headFrom)
            .line(
                    "headFrom",
                    "head piece from",
                    b -> !b.isSlanted(),
                    "{headFrom:text} on the face, thinned on its {thinned} ({board})")
            .line("thinned", "thinned", ScarfBoard::isSlanted, "head piece on its {thinned} ({board})")
            .fact("oppositeHands", Kind.MM, "wedge of waste between the cuts", ScarfBoard::oppositeHandsMm)
            .fact("steeperCut", Kind.MM, "so that both cuts are apart on the back", ScarfBoard::steeperCutMm)
            .fact("secondKerf", Kind.MM, "of the head piece's cut, along the board", ScarfBoard::secondKerfMm)
            .line(
                    "extra",
                    "second cut",
                    ScarfBoard::isSlanted,
                    "adds {oppositeHands:text} wedge, {steeperCut:text} lean, {secondKerf:text} kerf")
            .fact("shaftAlone", Kind.MM, "least length of a board for the shaft alone", ScarfBoard::shaftAloneMm)
            .fact("headAlone", Kind.MM, "least length of a board for the head piece alone", ScarfBoard::headAloneMm)
            .line("alone", "two boards", ScarfBoard::isSlanted, "shaft {shaftAlone:text}, head {headAlone:text}")
            .fact("swingAtOneMitre", Kind.RAD, "positive: to the treble side", ScarfBoard::swingAtOneMitreRad)
            .fact("offcutSwing", Kind.RAD, "of a head on the turned-over offcut", ScarfBoard::offcutSwingRad)
            .note(
                    "sawing",
                    b -> !b.isSlanted(),
                    "glue face up; the saw takes the far side of both marks; turn the offcut over")
            .note("no-spare", b -> !b.isSlanted(), "nothing to spare at the ends is counted")
            .note(
                    "sawing-twice",
                    ScarfBoard::isSlanted,
                    "glue face up; marks from the shaft's end; the saw takes the waste between them; no spare counted")
            .note("two-hands", ScarfBoard::isSlanted, "the turned offcut would swing the head {offcutSwing:2}")
            .fitted();

    /**
     * What the board is laid out by: how far the break line has moved along x toward the body and along the head's face
     * toward the tip, the shaft to its end, the head to its tip, and the width kept.
     */
    record Layout(
            Scarf scarf,
            JointPlace place,
            double shift,
            double along,
            double shaftEnd,
            double headLength,
            double width) {

        boolean isInTheHead() {
            return place == JointPlace.IN_THE_HEAD;
        }
    }

    private final Layout layout;
    private final Scarf scarf;
    private final HeadSide thinned;
    private final double boardWidth;
    private final double thickness;
    private final ScarfSaw shaftCut;
    private final ScarfSaw headCut;
    private final double shortFace;
    private final double headFrom;
    private final double least;

    /** The board as wide as what is kept, the head piece thinned in the usual way: on the side that is not glued. */
    static ScarfBoard of(Layout layout) {
        ScarfBoard board = new ScarfBoard(layout, layout.width(), layout.isInTheHead() ? HeadSide.BACK : HeadSide.FACE);
        board.refuseShort();
        return board;
    }

    private ScarfBoard(Layout layout, double boardWidth, HeadSide thinned) {
        super(FORM, layout.scarf().style());
        this.layout = layout;
        this.scarf = layout.scarf();
        this.boardWidth = boardWidth;
        this.thinned = thinned;
        this.thickness = Math.max(scarf.shaftMm(), scarf.headMm());
        double sin = StrictMath.sin(scarf.pitchRad());
        double clean = acrossHead() * scarf.cleaningMm() / sin;
        this.shaftCut = cut(scarf.slantRad(), slopeFrom() + clean, run(thickness), clean);
        double head = layout.headLength() + layout.along();
        this.shortFace = layout.isInTheHead() ? head - ScarfKernel.slope(scarf.shaftMm(), scarf.pitchRad()) : head;
        this.headFrom = isSlanted()
                ? slopeFrom()
                        + (acrossHead() + 1) * (scarf.kerfMm() + scarf.cleaningMm()) / sin
                        + oppositeHandsMm()
                        + steeperCutMm()
                : slopeFrom() + (scarf.kerfMm() + 2 * scarf.cleaningMm()) / sin;
        double cleanHead = scarf.cleaningMm() / sin;
        this.headCut =
                isSlanted() ? cut(-mitreOnHead(), headFrom - cleanHead, headRun(thickness), cleanHead) : shaftCut;
        // Thinning the face lengthens it, so the raw piece may start shorter.
        double thinning = thinned == HeadSide.FACE ? headRun(thickness - scarf.headMm()) : 0;
        this.least = headFrom + (shortFace + headRun(thickness) - thinning);
    }

    private ScarfSaw cut(double mitre, double face, double run, double cleaning) {
        return new ScarfSaw(
                ScarfKernel.dihedral(scarf.pitchRad(), scarf.slantRad()),
                mitre,
                new double[] {face, face + run},
                boardWidth / 2,
                cleaning,
                style());
    }

    private void refuseShort() {
        if (!(shortFace > atEdge(mitreOnHead()))) {
            throw Refusal.of(
                    "head length",
                    "more-than",
                    "be more than " + style().brief(layout.headLength() - shortFace + atEdge(mitreOnHead()))
                            + ", where the joint's line crosses the head",
                    style().brief(layout.headLength()));
        }
        if (!(slopeFrom() > atEdge(scarf.slantRad()))) {
            throw Refusal.of(
                    "shaft end",
                    "more-than",
                    "be more than " + style().brief(inTheShaftMm() + atEdge(scarf.slantRad()))
                            + ", where the joint's line lies",
                    style().brief(layout.shaftEnd()));
        }
    }

    /** How much farther than on the centreline a line at a mitre lies at an edge of what is kept. */
    private double atEdge(double mitre) {
        return layout.width() / 2 * StrictMath.tan(Math.abs(mitre));
    }

    /**
     * {@return this board with its head piece thinned on a side} Default: the side that is not glued to the shaft; the
     * back for the joint in the head, the face for the joint in the shaft.
     *
     * @param side the head's face (the board's back) or the head's back (the board's face), on which the head piece is
     *     brought from the board's thickness to its own before gluing; the side changes the length wanted by
     *     {@code (shaft - head) / tan(pitch)}, a little less behind a slanted nut
     */
    public ScarfBoard thinned(HeadSide side) {
        return new ScarfBoard(layout, boardWidth, Objects.requireNonNull(side, "thinned side"));
    }

    /**
     * {@return this board wider than what is kept, its marks at its own edges; its least length stays} Default: as wide
     * as what is kept.
     *
     * @param across width of the board between its edges, no less than what is kept
     */
    public ScarfBoard edges(Quantity<Length> across) {
        double wide = LibraryUnits.mmPositive(across, "board's width");
        if (!(wide >= layout.width())) {
            throw LibraryUnits.refused(
                    "board's width", "at-least", style().brief(layout.width()) + " or more (what is kept)", across);
        }
        return new ScarfBoard(layout, wide, thinned);
    }

    /** {@return the least length of the board, without anything to spare at its ends; more than 0} */
    public Amount<Length> length() {
        return style().amount(least);
    }

    /** {@return the cut that makes the shaft's slope; the saw takes the far side of its marks, seen from the shaft} */
    public ScarfSaw shaftCut() {
        return shaftCut;
    }

    /**
     * {@return the cut that makes the head piece's slope: behind a slanted nut the saw takes the shaft's side of its
     * marks; behind a square one it is the shaft's own cut}
     */
    public ScarfSaw headCut() {
        return headCut;
    }

    /** {@return where the head piece begins on the board's face once its slope is clean, on the centreline} */
    public Amount<Length> headFrom() {
        return style().amount(headFrom);
    }

    /** {@return the side on which the head piece is thinned before gluing; face or back} */
    public HeadSide thinned() {
        return thinned;
    }

    /** {@return the board's thickness: the larger of shaft and head} */
    public Amount<Length> thickness() {
        return style().amount(thickness);
    }

    /**
     * {@return the waste on the centreline between two cuts of opposite hand, nothing at one edge of what is kept and twice
     * as much at the other; 0 behind a square nut}
     */
    public Amount<Length> oppositeHands() {
        return style().amount(oppositeHandsMm());
    }

    private double oppositeHandsMm() {
        return atEdge(scarf.slantRad()) + atEdge(mitreOnHead());
    }

    /** {@return what keeps both cuts apart on the back, where they come nearest; 0 behind a square nut} */
    public Amount<Length> steeperCut() {
        return style().amount(steeperCutMm());
    }

    private double steeperCutMm() {
        return run(thickness) - headRun(thickness);
    }

    /** {@return what the head piece's own saw cut takes along the board; 0 behind a square nut} */
    public Amount<Length> secondKerf() {
        return style().amount(secondKerfMm());
    }

    private double secondKerfMm() {
        return isSlanted() ? ScarfKernel.slope(scarf.kerfMm(), scarf.pitchRad()) : 0;
    }

    /**
     * {@return the least length of a board for the shaft alone, as thick as the shaft, where the head piece comes from
     * another; from the shaft's end to the farthest saw mark}
     */
    public Amount<Length> shaftAlone() {
        return style().amount(shaftAloneMm());
    }

    private double shaftAloneMm() {
        return shaftCut.faceMark().libraryValue() + run(scarf.shaftMm()) + atEdge(scarf.slantRad());
    }

    /**
     * {@return the least length of a board for the head piece alone, as thick as the head; from the saw mark nearest the
     * shaft to the tip}
     */
    public Amount<Length> headAlone() {
        return style().amount(headAloneMm());
    }

    private double headAloneMm() {
        return atEdge(mitreOnHead()) + headCut.cleaning().libraryValue() + headRun(scarf.headMm()) + shortFace;
    }

    /**
     * {@return how far the head would swing sideways in plan if its piece were cut at the shaft's mitre, of the right hand:
     * positive when the tip swings to the treble side; 0 behind a square nut}
     */
    public Amount<Angle> swingAtOneMitre() {
        return Amount.ofLibrary(swingAtOneMitreRad(), ShopUnit.DEGREE);
    }

    private double swingAtOneMitreRad() {
        double dihedral = ScarfKernel.dihedral(scarf.pitchRad(), scarf.slantRad());
        return -ScarfKernel.foldYaw(dihedral, scarf.slantRad()) + 0.0;
    }

    /**
     * {@return how far the head would have to be laid out askew, in its own face and against the grain, on the offcut of
     * the shaft's cut turned over; 0 behind a square nut}
     */
    public Amount<Angle> offcutSwing() {
        return Amount.ofLibrary(offcutSwingRad(), ShopUnit.DEGREE);
    }

    private double offcutSwingRad() {
        return Math.abs(scarf.slantRad()) + Math.abs(mitreOnHead());
    }

    private boolean isSlanted() {
        return scarf.slantRad() != 0;
    }

    private Optional<ScarfSaw> ifSlanted(ScarfSaw saw) {
        return isSlanted() ? Optional.of(saw) : Optional.empty();
    }

    /** Where the shaft's clean slope begins on its face, on the centreline. */
    private double slopeFrom() {
        double toBreak = layout.shaftEnd() + scarf.ledgeMm() + layout.shift();
        return layout.isInTheHead() ? toBreak : toBreak - inTheShaftMm();
    }

    /** How far behind the break line that is. */
    private double inTheShaftMm() {
        return layout.isInTheHead() ? 0 : ScarfKernel.slope(acrossHead() * scarf.headMm(), scarf.pitchRad());
    }

    /** Run of the shaft's cut along the board through a thickness. */
    private double run(double thick) {
        return ScarfKernel.run(thick, scarf.pitchRad());
    }

    /** Run of the head piece's cut, which is the steeper. */
    private double headRun(double thick) {
        return run(thick) / acrossHead();
    }

    private double mitreOnHead() {
        return ScarfKernel.headMitre(scarf.pitchRad(), scarf.slantRad());
    }

    private double acrossHead() {
        return ScarfKernel.acrossHead(scarf.pitchRad(), scarf.slantRad());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {layout, boardWidth, thinned};
    }
}
