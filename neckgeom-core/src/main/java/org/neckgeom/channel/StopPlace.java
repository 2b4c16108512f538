package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * Where one stop block sits along the fence, such as {@code 300 mm from the cutter's centre, 297 from its near edge, 303
 * from its far edge}. Immutable.
 */
public final class StopPlace implements SaysLengths<StopPlace> {

    private final double fromCentreMm;
    private final double radiusMm;
    private final boolean open;
    private final LengthStyle style;

    StopPlace(double fromCentreMm, double radiusMm, boolean open, LengthStyle style) {
        this.fromCentreMm = fromCentreMm;
        this.radiusMm = radiusMm;
        this.open = open;
        this.style = style;
    }

    /**
     * Returns whether there is no stop to set, because the slot runs out of the blank there.
     *
     * @return true for an open end
     */
    public boolean isOpen() {
        return open;
    }

    /**
     * Returns the distance from the cutter's centre to the face of the stop.
     *
     * @return more than 0
     */
    public Amount<Length> fromCentre() {
        return style.amount(fromCentreMm);
    }

    /**
     * Returns the distance from the cutter's centre to the face of the stop, in mm.
     *
     * @return mm, more than 0
     */
    public double fromCentreMm() {
        return fromCentreMm;
    }

    /**
     * Returns the distance from the cutter's edge on the stop's side: a radius less.
     *
     * @return the distance to measure with a rule laid against that edge
     */
    public Amount<Length> fromNearEdge() {
        return style.amount(fromCentreMm - radiusMm);
    }

    /**
     * Returns the distance from the cutter's edge on the other side: a radius more.
     *
     * @return the distance to measure with a rule laid against that edge
     */
    public Amount<Length> fromFarEdge() {
        return style.amount(fromCentreMm + radiusMm);
    }

    @Override
    public StopPlace in(LengthStyle other) {
        return new StopPlace(fromCentreMm, radiusMm, open, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StopPlace that
                && Double.compare(fromCentreMm, that.fromCentreMm) == 0
                && Double.compare(radiusMm, that.radiusMm) == 0
                && open == that.open;
    }

    @Override
    public int hashCode() {
        return Objects.hash(fromCentreMm, radiusMm, open);
    }

    /** How far the distances in words lie off, in mm. */
    double offMarkMm() {
        return Math.max(
                Math.abs(style.offMarkMm(fromCentreMm)),
                Math.max(
                        Math.abs(style.offMarkMm(fromCentreMm - radiusMm)),
                        Math.abs(style.offMarkMm(fromCentreMm + radiusMm))));
    }

    /** Returns the three distances in words, as a rule reads them. */
    @Override
    public String toString() {
        return style.mark(fromCentreMm) + " from the cutter's centre, " + style.mark(fromCentreMm - radiusMm)
                + " from its near edge, " + style.mark(fromCentreMm + radiusMm) + " from its far edge";
    }
}
