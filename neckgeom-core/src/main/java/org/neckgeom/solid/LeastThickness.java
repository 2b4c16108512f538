package org.neckgeom.solid;

import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The least thickness of the wood a neck comes from, and the place that decides it. Immutable.
 *
 * <p>The greatest of the back's depth up to the heel blocks and, for a head in one piece with the shaft, of the depth of its
 * deepest corner. Finished wood, planing not counted. Exact.
 */
public final class LeastThickness extends ValueAnswer {

    private static final Form<LeastThickness> FORM = Form.<LeastThickness>of("least-thickness")
            .fact("thickness", Kind.MM, "of the finished wood", LeastThickness::mm)
            .fact("back", Kind.MM, "greatest depth up to the heel blocks", t -> t.back)
            .fact("station", Kind.MM, "of that depth, from the nut", t -> t.station)
            .fact("head", Kind.MM, "depth of the head's deepest corner; 0 for a head of its own wood", t -> t.head)
            .phrase("place", t -> t.head > t.back, "the head's deepest corner")
            .phrase("place", "the back at {station:brief} from the nut")
            .finds("thickness", "Least thickness {thickness:brief}: {place}");

    private final double station;
    private final double back;
    private final double head;

    LeastThickness(double station, double back, double head, LengthStyle style) {
        super(FORM, style);
        this.station = station;
        this.back = back;
        this.head = head;
    }

    /** {@return the least thickness; more than 0} */
    public Amount<Length> thickness() {
        return style().amount(mm());
    }

    double mm() {
        return Math.max(back, head);
    }

    /** {@return whether the head decides it; else the back} */
    public boolean isDecidedByHead() {
        return head > back;
    }

    /** {@return the station of the back's greatest depth up to the heel blocks; 0 or more} */
    public Amount<Length> station() {
        return style().amount(station);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {station, back, head};
    }
}
