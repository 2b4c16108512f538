package org.neckgeom.solid;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;

/**
 * The least blank a neck comes out of, such as 802 mm by 66 mm by 22 mm with its allowances. Immutable.
 *
 * <p>Length: what the neck wants and a spare at each end. Width: the widest part cut from the blank and a spare at each
 * edge. Thickness: the shaft's and a planing allowance on each face. Exact sums; the spares are yours to choose, common
 * practice is 25 to 50 mm at each end and 1 to 3 mm at each edge.
 */
public final class BlankNeeds extends ValueAnswer {

    private static final Form<BlankNeeds> FORM = Form.<BlankNeeds>of("blank-needs")
            .fact("length", Kind.MM, "of the blank, spare at both ends counted", BlankNeeds::lengthMm)
            .fact("width", Kind.MM, "of the blank, spare at both edges counted", BlankNeeds::widthMm)
            .fact("thickness", Kind.MM, "of the blank, planing of both faces counted", BlankNeeds::thicknessMm)
            .fact("neckLength", Kind.MM, "nothing to spare", n -> n.length)
            .fact("endSpare", Kind.MM, "at each end", n -> n.endSpare)
            .fact("neckWidth", Kind.MM, "nothing to spare", n -> n.width)
            .fact("edgeSpare", Kind.MM, "at each edge", n -> n.edgeSpare)
            .fact("neckThickness", Kind.MM, "nothing to spare", n -> n.thickness)
            .fact("planing", Kind.MM, "of each face", n -> n.planing)
            .finds("least-blank", "Least blank: {length:brief} x {width:brief} x {thickness:brief}")
            .line("length", "length", "{neckLength:text} and {endSpare:brief} at each end")
            .line("width", "width", "{neckWidth:text} and {edgeSpare:brief} at each edge")
            .line("thickness", "thickness", "{neckThickness:text} and {planing:brief} on each face");

    private final double length;
    private final double width;
    private final double thickness;
    private final double endSpare;
    private final double edgeSpare;
    private final double planing;

    private BlankNeeds(double[] p, LengthStyle style) {
        super(style);
        this.length = p[0];
        this.width = p[1];
        this.thickness = p[2];
        this.endSpare = p[3];
        this.edgeSpare = p[4];
        this.planing = p[5];
    }

    /**
     * {@return the needs of a scarfed neck, both pieces from one board; without any spare}
     *
     * @param board length and thickness for the one saw cut
     * @param widest width of the widest part that is cut from the board; the head counts only without ears
     */
    public static BlankNeeds of(ScarfBoard board, Quantity<Length> widest) {
        return new BlankNeeds(
                new double[] {
                    Objects.requireNonNull(board, "board").lengthMm(),
                    HouseUnits.mmPositive(widest, "widest part"),
                    board.thickness().house(),
                    0,
                    0,
                    0
                },
                LengthStyle.of(board.length()));
    }

    /**
     * {@return the needs of a neck from one piece, finished sizes told; without any spare}
     *
     * @param length from the head's tip to the shaft's end along the blank, more than 0
     * @param widest width of the widest part cut from it, more than 0
     * @param thickness of the deepest part cut from it, more than 0
     */
    public static BlankNeeds onePiece(Quantity<Length> length, Quantity<Length> widest, Quantity<Length> thickness) {
        return new BlankNeeds(
                new double[] {
                    HouseUnits.mmPositive(length, "length"),
                    HouseUnits.mmPositive(widest, "widest part"),
                    HouseUnits.mmPositive(thickness, "thickness"),
                    0,
                    0,
                    0
                },
                LengthStyle.of(length));
    }

    /**
     * {@return a copy with something to spare}
     *
     * @param eachEnd 0 or more
     * @param eachEdge 0 or more
     * @param eachFace planed off each face, 0 or more
     */
    public BlankNeeds spare(Quantity<Length> eachEnd, Quantity<Length> eachEdge, Quantity<Length> eachFace) {
        return new BlankNeeds(
                new double[] {
                    length,
                    width,
                    thickness,
                    HouseUnits.mmNotNegative(eachEnd, "spare at each end"),
                    HouseUnits.mmNotNegative(eachEdge, "spare at each edge"),
                    HouseUnits.mmNotNegative(eachFace, "planing of each face")
                },
                style());
    }

    /** {@return the least length, with the spares} */
    public Amount<Length> length() {
        return style().amount(lengthMm());
    }

    private double lengthMm() {
        return length + 2 * endSpare;
    }

    /** {@return the least width, with the spares} */
    public Amount<Length> width() {
        return style().amount(widthMm());
    }

    private double widthMm() {
        return width + 2 * edgeSpare;
    }

    /** {@return the least thickness, with the planing} */
    public Amount<Length> thickness() {
        return style().amount(thicknessMm());
    }

    private double thicknessMm() {
        return thickness + 2 * planing;
    }

    /**
     * {@return whether the neck comes from a blank: whether it is large enough every way}
     *
     * @param blank the blank
     */
    public boolean fits(Blank blank) {
        return Objects.requireNonNull(blank, "blank").lengthMm() >= lengthMm()
                && blank.widthMm() >= widthMm()
                && blank.thicknessMm() >= thicknessMm();
    }

    @Override
    public Form<BlankNeeds> form() {
        return FORM;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {length, width, thickness, endSpare, edgeSpare, planing};
    }
}
