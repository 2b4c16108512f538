package org.neckgeom.channel;

import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * How far a slot lies from the middle when the side is not known, such as
 * {@code 0.145 mm one way or the other, u 0.014 mm}. Immutable.
 *
 * <p>A slot that is begun is widened about the middle by a cut at its far wall, never by a climb cut: too far from the fence,
 * the work is turned end for end; too near, the same edge stays on the fence and the fence moves away by twice the offset.
 */
public final class OffsetMagnitude extends ValueAnswer {

    private static final Form<OffsetMagnitude> FORM = Form.<OffsetMagnitude>of("unsided-offset")
            .fact("size", Kind.ESTIMATE, "of the offset", o -> Estimate.of(o.size(), o.uncertainty()))
            .fact(
                    "fenceMove",
                    Kind.MM,
                    "away, that widens a slot too near the fence: twice the offset",
                    o -> 2 * o.sizeMm)
            .phrase("u", ", u {size:u}")
            .findsOnly("in-the-middle", o -> o.sizeMm == 0, "{size:value} one way or the other{u}")
            .finds("off-the-middle", "{size:value} one way or the other{u}")
            .line("tooFar", "too far from the fence", "turned end for end, " + SecondPass.TURNED_TOO_FAR)
            .line(
                    "tooNear",
                    "too near it",
                    "turned, " + SecondPass.TURNED_TOO_NEAR
                            + ";\ninstead the same edge, the fence {fenceMove:beside size} away: "
                            + SecondPass.FENCE_AWAY);

    private final double sizeMm;
    private final double uncertaintyMm;

    OffsetMagnitude(double sizeMm, double uncertaintyMm, LengthStyle style) {
        super(FORM, style);
        this.sizeMm = sizeMm + 0.0;
        this.uncertaintyMm = uncertaintyMm + 0.0;
    }

    /** {@return how far off the slot is; 0 or more} */
    public Amount<Length> size() {
        return style().amount(sizeMm);
    }

    /** {@return the standard uncertainty; 0 when none was stated; 0 or more} */
    public Amount<Length> uncertainty() {
        return style().amount(uncertaintyMm);
    }

    /** {@return the offset with its side, once that is known; the slot too near the fence by this size} */
    public SlotOffset nearerTheFence() {
        return SlotOffset.ofMm(-sizeMm, uncertaintyMm, style());
    }

    /** {@return the offset with its side, once that is known; the slot too far from the fence by this size} */
    public SlotOffset fartherFromTheFence() {
        return SlotOffset.ofMm(sizeMm, uncertaintyMm, style());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {sizeMm, uncertaintyMm};
    }
}
