package org.neckgeom.channel;

import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The place of a stop block along the fence, such as {@code 300 mm from the cutter's centre, 297 from its near edge,
 * 303 from its far edge}. Immutable.
 */
public final class StopPlace extends ValueAnswer {

    static final Form<StopPlace> FORM = Form.<StopPlace>of("stop-place")
            .fact("fromCentre", Kind.MM, "from the cutter's centre to the stop's face", p -> p.fromCentreMm)
            .fact("fromNearEdge", Kind.MM, "from the edge on the stop's side", p -> p.fromCentreMm - p.radiusMm)
            .fact("fromFarEdge", Kind.MM, "from the cutter's edge on the other side", p -> p.fromCentreMm + p.radiusMm)
            .finds(
                    "place",
                    "{fromCentre:mark} from the cutter's centre, {fromNearEdge:mark} from its near edge, {fromFarEdge:mark} from its far edge");

    private final double fromCentreMm;
    private final double radiusMm;
    private final boolean open;

    StopPlace(double fromCentreMm, double radiusMm, boolean open, LengthStyle style) {
        super(FORM, style);
        this.fromCentreMm = fromCentreMm;
        this.radiusMm = radiusMm;
        this.open = open;
    }

    /** {@return whether there is no stop to set, because the slot runs out of the blank there; true for an open end} */
    public boolean isOpen() {
        return open;
    }

    /** {@return the distance from the cutter's centre to the face of the stop; more than 0} */
    public Amount<Length> fromCentre() {
        return style().amount(fromCentreMm);
    }

    /** {@return the distance from the cutter's edge on the stop's side, for a rule laid against it: a radius less} */
    public Amount<Length> fromNearEdge() {
        return style().amount(fromCentreMm - radiusMm);
    }

    /** {@return the distance from the cutter's edge on the other side: a radius more} */
    public Amount<Length> fromFarEdge() {
        return style().amount(fromCentreMm + radiusMm);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {fromCentreMm, radiusMm, open};
    }

    /** How far the distances in words lie off, in mm. */
    double offMarkMm(LengthStyle shown) {
        return Math.max(
                Math.abs(shown.offMarkMm(fromCentreMm)),
                Math.max(
                        Math.abs(shown.offMarkMm(fromCentreMm - radiusMm)),
                        Math.abs(shown.offMarkMm(fromCentreMm + radiusMm))));
    }
}
