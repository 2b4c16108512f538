package org.neckgeom.solid;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;

/**
 * The minimum neck blank (neck stock, plank) for a neck with its allowances, such as 802 mm by 66 mm by 22 mm.
 * Immutable.
 *
 * <p>Length: the neck and an allowance (spare) at each end. Width: the widest part cut from the blank and an allowance
 * at each edge. Thickness: the shaft's and a planing allowance on each face. Exact sums; choose the allowances: common
 * practice is 25 to 50 mm at each end and 1 to 3 mm at each edge.
 */
public final class BlankNeeds extends ValueAnswer {

    private static final Form<BlankNeeds> FORM = Form.<BlankNeeds>of("blank-needs")
            .fact("length", Kind.MM, "of the blank, with the allowance at both ends", BlankNeeds::lengthMm)
            .fact("width", Kind.MM, "of the blank, with the allowance at both edges", BlankNeeds::widthMm)
            .fact("thickness", Kind.MM, "of the blank, planing of both faces counted", BlankNeeds::thicknessMm)
            .fact("neckLength", Kind.MM, "without allowance", n -> n.neck.lengthMm())
            .fact("endAllowance", Kind.MM, "at each end", n -> n.neck.endAllowanceMm())
            .fact("neckWidth", Kind.MM, "without allowance", n -> n.neck.widthMm())
            .fact("edgeAllowance", Kind.MM, "at each edge", n -> n.neck.edgeAllowanceMm())
            .fact("neckThickness", Kind.MM, "without allowance", n -> n.neck.thicknessMm())
            .fact("planing", Kind.MM, "of each face", n -> n.neck.planingMm())
            .finds("least-blank", "Least blank: {length:brief} x {width:brief} x {thickness:brief}")
            .line("length", "length", "{neckLength:text} and {endAllowance:brief} at each end")
            .line("width", "width", "{neckWidth:text} and {edgeAllowance:brief} at each edge")
            .line("thickness", "thickness", "{neckThickness:text} and {planing:brief} on each face");

    private final Blank neck;

    private BlankNeeds(Blank neck) {
        super(FORM, neck.style());
        this.neck = neck;
    }

    /**
     * {@return the needs of a neck}
     *
     * @param neck the smallest block that holds the neck: its length from the head's tip to the shaft's end along the
     *     blank, or that of the {@link org.neckgeom.head.ScarfBoard board of shaft and head}, its widest and its deepest
     *     part; with its allowances
     */
    public static BlankNeeds of(Blank neck) {
        return new BlankNeeds(Objects.requireNonNull(neck, "neck"));
    }

    /** {@return the least length, with the spares} */
    public Amount<Length> length() {
        return style().amount(lengthMm());
    }

    private double lengthMm() {
        return neck.lengthMm() + 2 * neck.endAllowanceMm();
    }

    /** {@return the least width, with the spares} */
    public Amount<Length> width() {
        return style().amount(widthMm());
    }

    private double widthMm() {
        return neck.widthMm() + 2 * neck.edgeAllowanceMm();
    }

    /** {@return the least thickness, with the planing} */
    public Amount<Length> thickness() {
        return style().amount(thicknessMm());
    }

    private double thicknessMm() {
        return neck.thicknessMm() + 2 * neck.planingMm();
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
    protected Object[] parts() {
        return new Object[] {neck};
    }
}
