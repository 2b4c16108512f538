package org.neckgeom.solid;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * A head in one piece with the shaft, sawn out of a blank thick enough to hold it, such as one angled 13 deg that needs
 * 56.2 mm. Immutable.
 *
 * <p>Its deepest corner gives the thickness the blank must have, its farthest corner the length before the nut line; both are
 * those of the {@linkplain HeadSolid head in space}, swing and slanted nut counted. Behind a square nut, without swing, with a
 * the head angle, L the head along its face and t its wood's thickness:
 *
 * <pre>
 * face at the tip   L cos a before the nut line,             L sin a deep
 * back at the tip   L cos a - t sin a before the nut line,   L sin a + t cos a deep
 * </pre>
 *
 * <p>Exact. Depths are below the glue face. Saw cut and planing are not counted; veneers come on later.
 */
public final class OnePieceHead extends ValueAnswer {

    private static final Form<OnePieceHead> FORM = Form.<OnePieceHead>of("one-piece-head")
            .fact("angle", Kind.RAD, "of the head; 0: flat", p -> p.head.head().angleRad())
            .fact(
                    "thickness",
                    Kind.MM,
                    "of the blank, at least; as deep as the back at the tip",
                    OnePieceHead::thicknessMm)
            .fact("length", Kind.MM, "of the face at the tip before the nut line", OnePieceHead::lengthMm)
            .fact("faceDrop", Kind.MM, "depth of the face at the tip", OnePieceHead::faceDropMm)
            .fact("backLength", Kind.MM, "of the back at the tip before the nut line", OnePieceHead::backLengthMm)
            .phrase("side", p -> p.backLengthMm() < 0, "behind")
            .phrase("side", "before")
            .finds("flat", OnePieceHead::isFlat, "One-piece head, flat: blank {thickness:brief} thick or more")
            .finds("pitched", "One-piece head, angled {angle}: blank {thickness:brief} thick or more")
            .line("tip", "tip", OnePieceHead::isFlat, "{length:brief} before the nut line")
            .line(
                    "faceAtTip",
                    "face at the tip",
                    p -> !p.isFlat(),
                    "{faceDrop:brief} deep, {length:brief} before the nut line")
            .line(
                    "backAtTip",
                    "back at the tip",
                    p -> !p.isFlat(),
                    "{thickness:brief} deep, {backLength:size brief} {side} the nut line")
            .note(
                    "marking",
                    p -> !p.isFlat(),
                    "marked on the blank's side, depths from the glue face; the face line starts at the nut line");

    private final HeadSolid head;

    private OnePieceHead(HeadSolid head) {
        super(FORM, head.style());
        this.head = head;
    }

    /**
     * {@return a head to be sawn from the blank}
     *
     * @param head in space, angled or flat
     */
    public static OnePieceHead of(HeadSolid head) {
        return new OnePieceHead(Objects.requireNonNull(head, "head"));
    }

    /** {@return how thick the blank must be for the head, in mm: the depth of its deepest corner} */
    public double thicknessMm() {
        return head.deepest().libraryValue();
    }

    /** {@return how far before the nut line the head reaches along the blank, in mm: that of its farthest corner} */
    public double lengthMm() {
        return head.farthest().libraryValue();
    }

    /** {@return how deep the head's face lies at its deepest: at the tip; 0 for a flat head} */
    public Amount<Length> faceDrop() {
        return style().amount(faceDropMm());
    }

    private double faceDropMm() {
        return -head.outline().spots().stream()
                        .mapToDouble(s -> head.at(s, 0).zMm())
                        .min()
                        .orElseThrow()
                + 0.0;
    }

    private double backLengthMm() {
        return -head.deepestCorner().xMm() + 0.0;
    }

    private boolean isFlat() {
        return head.head().angleRad() == 0;
    }

    /**
     * {@return where the head's back, carried on straight along the centreline, is as deep as the shaft; station from the nut
     * line, negative in the head}
     *
     * @param shaft depth d of the shaft's back at the nut, more than 0
     * @throws ArithmeticException for a flat head, whose back runs level with the shaft's
     */
    public Amount<Length> backMeets(Quantity<Length> shaft) {
        double deep = LibraryUnits.mmPositive(shaft, "shaft's depth");
        if (isFlat()) {
            throw NoAnswer.because(
                    "back of the head",
                    "level",
                    "a flat head's back does not meet the shaft's: one runs level with the other");
        }
        // On the back's plane with y = 0: n_x x + n_z z = offset, z = -d.
        double x = (head.back().offsetMm() + head.back().normal().z() * deep)
                / head.back().normal().x();
        return style().amount(x);
    }

    /**
     * {@return whether a blank is thick enough; true when the whole head lies in its thickness}
     *
     * @param blank the blank
     */
    public boolean fits(Blank blank) {
        return Objects.requireNonNull(blank, "blank").thicknessMm() >= thicknessMm();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {head};
    }
}
