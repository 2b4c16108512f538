package org.neckgeom.channel;

import java.util.Arrays;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.shop.Fence;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * What the fence does to the slot when a head's side is proud and rides on it: the shaft lies askew between the head and
 * its own far end. Immutable.
 *
 * <p>Where both contacts are on the fence the corner with the greatest {@code p/(L_s + x_h)} governs, p how far it is proud
 * and x_h how far it lies in front of the nut: skew {@code phi = atan(p/(L_s + x_h))}, and the slot lies nearer the
 * fence-side edge by {@code (L_s - x) tan phi} at station x. Where the fence is shorter, its ends are the contacts, and the
 * slot bends: the least concave majorant of all that touches. A split fence's own step is in it. Exact.
 */
public final class HeadSkew implements SaysLengths<HeadSkew> {

    private final double[] side;
    private final double shaftMm;
    private final Fence fence;
    private final LengthStyle style;

    /**
     * The skew of a shaft with a head's side before it.
     *
     * @param side both corners, as {@link HeadContact#side} gives them
     * @param shaftMm the shaft's far end, from the nut
     */
    HeadSkew(double[] side, double shaftMm, Fence fence, LengthStyle style) {
        this.side = side.clone();
        this.shaftMm = shaftMm;
        this.fence = fence;
        this.style = style;
    }

    private double proudMm() {
        return Math.max(0, Math.max(side[HeadContact.NUT_PROUD], side[HeadContact.TIP_PROUD]));
    }

    private Riding riding() {
        double half = fence.lengthMm() / 2;
        double[] proud = proudMm() > 0 ? side : new double[0];
        return new Riding(0, shaftMm, true, half, half, fence.gapMm(), fence.outOfLineMm(), null, proud);
    }

    /**
     * Returns how far the head stands proud at its prouder corner.
     *
     * @return 0 when it stays inside
     */
    public Amount<Length> proud() {
        return style.amount(proudMm());
    }

    /**
     * Returns the angle between shaft and fence while a station is at the cutter.
     *
     * @param station from the nut, positive toward the body
     * @return positive where the head end is held off the fence
     */
    public Amount<Angle> angleAt(Quantity<Length> station) {
        double x = HouseUnits.mm(station, "station");
        return Amount.ofHouse(StrictMath.atan(riding().slopeAt(x)), ShopUnit.DEGREE);
    }

    /**
     * Returns the slot's offset at a station.
     *
     * @param station from the nut, positive toward the body, no farther than the shaft's end
     * @return the offset, negative: nearer the fence
     * @throws IllegalArgumentException if the station lies beyond the shaft
     */
    public Offset at(Quantity<Length> station) {
        double x = HouseUnits.mm(station, "station");
        if (!(x <= shaftMm)) {
            throw HouseUnits.refused(
                    "station", "at-most", "no farther than the shaft's end at " + style.brief(shaftMm), station);
        }
        return offset(x);
    }

    private Offset offset(double x) {
        return Offset.ofMm(-riding().at(x), 0, style);
    }

    @Override
    public HeadSkew in(LengthStyle other) {
        return new HeadSkew(side, shaftMm, fence.in(other), other);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HeadSkew that
                && Arrays.equals(side, that.side)
                && Double.compare(shaftMm, that.shaftMm) == 0
                && fence.equals(that.fence);
    }

    @Override
    public int hashCode() {
        return Objects.hash(Arrays.hashCode(side), shaftMm, fence);
    }

    /** Returns the skew at the nut and the offsets along the shaft. */
    @Override
    public String toString() {
        if (proudMm() == 0) {
            return "no skew: the head stays inside the shaft's edge";
        }
        double angle = StrictMath.atan(riding().slopeAt(0));
        Report report = Report.titled("slot skewed by " + Numbers.fixed(Math.toDegrees(angle), 3)
                + " deg at the nut: the head stands proud by " + style.text(proudMm()));
        for (int i = 0; i <= 4; i++) {
            double x = shaftMm * i / 4;
            report.row(i == 0 ? "at the nut" : "at " + style.brief(x), offset(x));
        }
        double half = fence.lengthMm() / 2;
        if (half < Math.max(shaftMm, -side[HeadContact.TIP_X])) {
            report.note("the fence reaches " + style.brief(half)
                    + " either side of the cutter: the slot bends where a contact runs off its end");
        }
        return report.note("a parallel spacer on the fence side keeps the head clear")
                .toString();
    }
}
