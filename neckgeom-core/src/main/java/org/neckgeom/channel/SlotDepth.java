package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.design.Channel;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * How deep a rod slot is, and of what its depth is made, such as {@code 9.2 mm deep: rod 9, clearance 0.2}. Immutable.
 *
 * <p>Depth is rod height + cover strip + clearance, at the ends; an arched floor adds its sagitta in the middle. Exact:
 * the uncertainty comes with the gauge block and the reading, see {@link CreepCheck}.
 */
public final class SlotDepth implements SaysLengths<SlotDepth> {

    private final Channel channel;
    private final LengthStyle style;

    SlotDepth(Channel channel, LengthStyle style) {
        this.channel = channel;
        this.style = style;
    }

    /**
     * Returns the depth at the ends: everywhere, where the floor is flat.
     *
     * @return more than 0
     */
    public Amount<Length> atEnds() {
        return style.amount(channel.depthMm());
    }

    /**
     * Returns the depth in the middle.
     *
     * @return more than 0
     */
    public Amount<Length> inTheMiddle() {
        return style.amount(channel.depthMm() + channel.archMm());
    }

    /**
     * Returns the greatest depth of the slot's floor, the pocket not counted.
     *
     * @return more than 0
     */
    public Amount<Length> deepest() {
        return style.amount(deepestMm());
    }

    /**
     * Returns the greatest depth of the slot's floor in mm, the pocket not counted.
     *
     * @return mm, more than 0
     */
    public double deepestMm() {
        return Math.max(channel.depthMm(), channel.depthMm() + channel.archMm());
    }

    @Override
    public SlotDepth in(LengthStyle other) {
        return new SlotDepth(channel, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SlotDepth that && channel.equals(that.channel);
    }

    @Override
    public int hashCode() {
        return channel.hashCode();
    }

    /** Returns the depth and its parts, such as {@code 9.2 mm deep: rod 9, cover strip 0, clearance 0.2}. */
    @Override
    public String toString() {
        String where = channel.archMm() == 0
                ? " deep"
                : " deep at the ends, " + style.brief(channel.depthMm() + channel.archMm()) + " in the middle";
        String text = style.brief(channel.depthMm()) + where + ": rod "
                + number(channel.rod().heightMm()) + ", cover strip " + number(channel.coverMm()) + ", clearance "
                + number(channel.clearanceMm());
        return channel.hasPocket() ? text + "; pocket " + style.brief(channel.pocketDepthMm()) : text;
    }

    private String number(double mm) {
        return Numbers.trimmed(style.unit().fromHouse(mm), 4);
    }
}
