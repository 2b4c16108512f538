package org.neckgeom.channel;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Channel;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The depth of a rod slot and its parts, such as {@code 9.2 mm deep: rod 9, clearance 0.2}. Immutable.
 *
 * <p>Depth is rod height + fillet + clearance, at the ends; an arched floor adds its sagitta in the middle. Exact:
 * the uncertainty comes with the gauge block and the reading, see {@link CreepCheck}.
 */
public final class SlotDepth extends ValueAnswer {

    static final Form<SlotDepth> FORM = Form.<SlotDepth>of("slot-depth")
            .fact("atEnds", Kind.MM, "depth at the ends, everywhere where the floor is flat", d -> d.channel.depthMm())
            .fact("inTheMiddle", Kind.MM, "depth in the middle", SlotDepth::middleMm)
            .fact(
                    "rodHeight",
                    Kind.MM,
                    "of the rod",
                    d -> d.channel.reinforcement().heightMm())
            .fact("fillet", Kind.MM, "thickness of the strip over the rod", d -> d.channel.filletMm())
            .fact("clearance", Kind.MM, "left over the rod", d -> d.channel.depthClearanceMm())
            .factIfAny("pocketDepth", Kind.MM, "of the pocket for the adjuster", SlotDepth::pocketMm)
            .phrase("where", d -> d.channel.archMm() == 0, "deep")
            .phrase("where", "deep at the ends, {inTheMiddle:brief} in the middle")
            .phrase("inside", d -> d.channel.bar().isPresent(), "bar")
            .phrase("inside", "rod")
            .phrase("pocket", "; pocket {pocketDepth:brief}")
            .finds(
                    "depth",
                    "{atEnds:brief} {where}: {inside} {rodHeight:..4 bare}, fillet {fillet:..4 bare}, clearance"
                            + " {clearance:..4 bare}{pocket}");

    private final Channel channel;

    SlotDepth(Channel channel, LengthStyle style) {
        super(FORM, style);
        this.channel = channel;
    }

    /** {@return the depth at the ends: everywhere, where the floor is flat; more than 0} */
    public Amount<Length> atEnds() {
        return style().amount(channel.depthMm());
    }

    /** {@return the depth in the middle; more than 0} */
    public Amount<Length> inTheMiddle() {
        return style().amount(middleMm());
    }

    /** {@return the greatest depth of the slot's floor, the pocket not counted; more than 0} */
    public Amount<Length> deepest() {
        return style().amount(deepestMm());
    }

    double deepestMm() {
        return Math.max(channel.depthMm(), middleMm());
    }

    private double middleMm() {
        return channel.depthMm() + channel.archMm();
    }

    private Optional<Double> pocketMm() {
        return channel.hasAdjusterPocket() ? Optional.of(channel.adjusterPocketDepthMm()) : Optional.empty();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {channel};
    }
}
