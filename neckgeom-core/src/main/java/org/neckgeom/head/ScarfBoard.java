package org.neckgeom.head;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * The board that one saw cut turns into shaft and head piece, with the marks for the cut. Immutable.
 *
 * <p>Lay the board with the future glue face up and measure every mark from the shaft's end. The saw leans so that the
 * cut comes out further from that end on the back than on the face; kerf and cleaning lie on the head's side of the
 * marks. The offcut is then turned over about its length, so that its long face becomes the head's back.
 *
 * <p>With X the shaft from its end to the break line, L the head along its face, B the board's thickness (the larger of
 * shaft T and head t), k the kerf and twice the cleaning, a the pitch; the head piece thinned on its back:
 *
 * <pre>
 * in the head    X + L - T / sin a + B / tan a + k / sin a
 * in the shaft   X + L - t / sin a + B / tan a + k / sin a
 * </pre>
 *
 * and {@code (B - t) / tan a} less when it is thinned on its face. Exact; no allowance for the ends.
 */
public final class ScarfBoard extends ValueAnswer {

    private static final Form<ScarfBoard> FORM = Form.<ScarfBoard>of("scarf-board")
            .fact("place", Kind.code(JointPlace.class), "of the joint", b -> b.place)
            .fact("thickness", Kind.MM, "of the board", b -> b.thickness)
            .fact("thinned", Kind.code(HeadSide.class), "side on which the head piece is thinned", ScarfBoard::thinned)
            .finds("board", "Board for one saw cut, joint {place}")
            .fact("length", Kind.MM, "nothing to spare at the ends", b -> b.least)
            .line("length", "least length", "{length:text}, {thickness:brief} thick")
            .fact("faceMark", Kind.MM, "from the shaft's end", b -> b.faceMark)
            .line("faceMark", "mark on the face", "{faceMark:text} from the shaft's end")
            .fact("backMark", Kind.MM, "from the shaft's end", b -> b.backMark)
            .line("backMark", "mark on the back", "{backMark:text} from the shaft's end")
            .fact("headFrom", Kind.MM, "the shaft's end, on the face", b -> b.headFrom)
            .line("headFrom", "head piece from", "{headFrom:text} on the face, thinned on its {thinned}")
            .note("sawing", "glue face up; the saw takes the far side of both marks; turn the offcut over")
            .note("no-spare", "nothing to spare at the ends is counted");

    private final JointPlace place;
    private final HeadSide thinned;
    private final double thickness;
    private final double faceMark;
    private final double backMark;
    private final double headFrom;
    private final double least;

    /**
     * The board of a scarf whose break line has moved: by {@code shift} along x toward the body, by {@code along} on the
     * head's face toward the tip.
     */
    ScarfBoard(
            Scarf scarf,
            JointPlace place,
            double shift,
            double along,
            Quantity<Length> shaftEnd,
            Quantity<Length> headLength,
            HeadSide thinned) {
        super(FORM, scarf.style());
        double a = scarf.pitchRad();
        this.place = place;
        this.thinned = Objects.requireNonNull(thinned, "thinned side");
        this.thickness = Math.max(scarf.shaftMm(), scarf.headMm());
        double toBreak = LibraryUnits.mmPositive(shaftEnd, "shaft end") + scarf.ledgeMm() + shift;
        double head = LibraryUnits.mmPositive(headLength, "head length") + along;
        boolean inHead = place == JointPlace.IN_THE_HEAD;
        double slopeFrom = inHead ? toBreak : toBreak - ScarfKernel.slope(scarf.headMm(), a);
        double shortFace = inHead ? head - ScarfKernel.slope(scarf.shaftMm(), a) : head;
        if (!(shortFace > 0)) {
            throw Refusal.of(
                    "head length",
                    "more-than",
                    "be more than " + style().brief(LibraryUnits.mm(headLength, "head length") - shortFace)
                            + ", where the joint's line crosses the head",
                    Amount.from(headLength, "head length").toString());
        }
        if (!(slopeFrom > 0)) {
            throw Refusal.of(
                    "shaft end",
                    "more-than",
                    "be more than " + style().brief(ScarfKernel.slope(scarf.headMm(), a))
                            + ", where the joint's line lies",
                    Amount.from(shaftEnd, "shaft end").toString());
        }
        // Thinning the face lengthens it, so the raw piece may start shorter.
        double thinning = thinned == HeadSide.FACE ? ScarfKernel.run(thickness - scarf.headMm(), a) : 0;
        this.faceMark = slopeFrom + scarf.cleaningMm() / StrictMath.sin(a);
        this.backMark = faceMark + ScarfKernel.run(thickness, a);
        this.headFrom = slopeFrom + (scarf.kerfMm() + 2 * scarf.cleaningMm()) / StrictMath.sin(a);
        this.least = headFrom + (shortFace + ScarfKernel.run(thickness, a) - thinning);
    }

    /** {@return the least length of the board, without anything to spare at its ends; more than 0} */
    public Amount<Length> length() {
        return style().amount(least);
    }

    /** {@return the saw mark on the face, from the shaft's end; the saw takes the far side of it} */
    public Amount<Length> faceMark() {
        return style().amount(faceMark);
    }

    /**
     * {@return the saw mark on the back, from the shaft's end; the saw takes the far side of it; the run of the cut
     * more than on the face}
     */
    public Amount<Length> backMark() {
        return style().amount(backMark);
    }

    /** {@return where the head piece begins on the board's face once its slope is clean, from the shaft's end} */
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

    @Override
    protected Object[] parts() {
        return new Object[] {place, thinned, thickness, faceMark, backMark, headFrom, least};
    }
}
