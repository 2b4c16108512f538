package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.design.Channel;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * The floor of a channel along its length, as a template for it is laid out: radius and depths at nine stations, such as
 * {@code floor arched, radius 3612.5 mm}. Immutable.
 *
 * <p>An arched floor is the circle through both ends and the middle: with length L and sagitta s its radius is
 * {@code R = (L^2/4 + s^2)/(2 s)}. Exact. The pocket is not counted.
 */
public final class ChannelFloor implements SaysLengths<ChannelFloor> {

    private static final int PARTS = 8;

    private final Channel channel;
    private final LengthStyle style;

    ChannelFloor(Channel channel, LengthStyle style) {
        this.channel = channel;
        this.style = style;
    }

    /**
     * Returns whether the floor is flat.
     *
     * @return true for a floor without sagitta
     */
    public boolean isFlat() {
        return channel.archMm() == 0;
    }

    /**
     * Returns the radius of an arched floor.
     *
     * @return positive when the middle is deeper than the ends, negative when it is shallower
     * @throws ArithmeticException if the floor is flat
     */
    public Amount<Length> radius() {
        if (isFlat()) {
            throw new ArithmeticException("a flat floor has no radius");
        }
        return style.amount(radiusMm());
    }

    private double radiusMm() {
        double s = channel.archMm();
        double half = channel.lengthMm() / 2;
        return (half * half + s * s) / (2 * s);
    }

    @Override
    public ChannelFloor in(LengthStyle other) {
        return new ChannelFloor(channel, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ChannelFloor that && channel.equals(that.channel);
    }

    @Override
    public int hashCode() {
        return channel.hashCode();
    }

    /** Returns the radius and the depths at nine stations, end to end. */
    @Override
    public String toString() {
        String from = style.brief(channel.startMm()) + " to " + style.brief(channel.endMm());
        if (isFlat()) {
            return "floor flat, " + style.brief(channel.depthMm()) + " deep from " + from;
        }
        String radius = Numbers.trimmed(style.unit().fromHouse(Math.abs(radiusMm())), 1) + " " + style.unit();
        Report report =
                Report.titled("floor arched, radius " + radius + (channel.archMm() > 0 ? "" : ", middle shallow"));
        for (int i = 0; i <= PARTS; i++) {
            // The last station is the end itself, not a sum that might lie beyond it.
            double x = i == PARTS ? channel.endMm() : channel.startMm() + channel.lengthMm() * i / PARTS;
            report.row(style.brief(x) + " from the nut", style.text(channel.floorDepthAtMm(x)) + " deep");
        }
        return report.toString();
    }
}
