package org.neckgeom.setup;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * What the fence does to the slot when the head's corner stands proud and rides on it: the shaft lies askew between that
 * corner and its own far end. Immutable.
 *
 * <p>Skew {@code phi = atan(p/(L_s + x_h))}, and the slot lies nearer the fence-side edge by {@code (L_s - x) tan phi}
 * at station x. Exact for a fence that reaches from the corner to the far end; where the fence is shorter, its ends are
 * the contacts, and the slot bends.
 */
public final class HeadSkew implements SaysLengths<HeadSkew> {

    private final double proudMm;
    private final double reachMm;
    private final double shaftMm;
    private final double halfFenceMm;
    private final LengthStyle style;

    HeadSkew(double proudMm, double reachMm, double shaftMm, double halfFenceMm, LengthStyle style) {
        this.proudMm = proudMm + 0.0;
        this.reachMm = reachMm;
        this.shaftMm = shaftMm;
        this.halfFenceMm = halfFenceMm;
        this.style = style;
    }

    /**
     * Returns how far the head's corner stands proud.
     *
     * @return 0 when it stays inside
     */
    public Amount<Length> proud() {
        return style.amount(proudMm);
    }

    /**
     * Returns the angle between shaft and fence while a station is at the cutter.
     *
     * @param station from the nut, positive toward the body
     * @return 0 or more
     */
    public Amount<Angle> angleAt(Quantity<Length> station) {
        double x = HouseUnits.mm(station, "station");
        double tangent = HeadContact.tangent(x, proudMm, reachMm, shaftMm, halfFenceMm);
        return Amount.ofHouse(StrictMath.atan(tangent), ShopUnit.DEGREE);
    }

    /**
     * Returns the slot's offset at a station.
     *
     * @param station from the nut, positive toward the body, no farther than the shaft's end
     * @return the offset, negative or 0: nearer the fence
     * @throws IllegalArgumentException if the station lies beyond the shaft
     */
    public Offset at(Quantity<Length> station) {
        double x = HouseUnits.mm(station, "station");
        if (!(x <= shaftMm)) {
            throw HouseUnits.refused(
                    "station", "at-most", "no farther than the shaft's end at " + style.brief(shaftMm), station);
        }
        return Offset.ofMm(-HeadContact.shift(x, proudMm, reachMm, shaftMm, halfFenceMm), 0, style);
    }

    @Override
    public HeadSkew in(LengthStyle other) {
        return new HeadSkew(proudMm, reachMm, shaftMm, halfFenceMm, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HeadSkew that
                && Double.compare(proudMm, that.proudMm) == 0
                && Double.compare(reachMm, that.reachMm) == 0
                && Double.compare(shaftMm, that.shaftMm) == 0
                && Double.compare(halfFenceMm, that.halfFenceMm) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(proudMm, reachMm, shaftMm, halfFenceMm);
    }

    /** Returns the skew at the nut and the offsets along the shaft. */
    @Override
    public String toString() {
        if (proudMm == 0) {
            return "no skew: the head stays inside the shaft's edge";
        }
        double tangent = HeadContact.tangent(0, proudMm, reachMm, shaftMm, halfFenceMm);
        Report report = Report.titled("slot skewed by " + Numbers.fixed(Math.toDegrees(StrictMath.atan(tangent)), 3)
                + " deg at the nut: the head stands proud by " + style.text(proudMm));
        for (int i = 0; i <= 4; i++) {
            double x = shaftMm * i / 4;
            String where = i == 0 ? "at the nut" : "at " + style.brief(x);
            report.row(where, Offset.ofMm(-HeadContact.shift(x, proudMm, reachMm, shaftMm, halfFenceMm), 0, style));
        }
        if (halfFenceMm < Math.max(shaftMm, reachMm)) {
            report.note("the fence reaches " + style.brief(halfFenceMm)
                    + " either side of the cutter: the slot bends where a contact runs off its end");
        }
        return report.note("a parallel spacer on the fence side keeps the head clear")
                .toString();
    }
}
