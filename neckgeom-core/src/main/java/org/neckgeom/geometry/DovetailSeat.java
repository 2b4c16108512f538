package org.neckgeom.geometry;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * A dovetail whose two sides come together by a taper, such as 3 deg a side: 0.1 mm of shim lifts it 1.9 mm. Immutable.
 *
 * <p>Shims are measured square to the dovetail's sides, alike on both; the taper is each side's angle from the
 * direction in which the neck goes home. {@code rise = shim / sin(taper)}. Exact. Wood planed off a side lowers the
 * seat by as much.
 */
public final class DovetailSeat implements SaysLengths<DovetailSeat> {

    private static final Amount<Length> METRIC_SHIM = Amount.of(0.1, ShopUnit.MILLIMETRE);
    private static final Amount<Length> INCH_SHIM = Amount.of(4, ShopUnit.THOU);

    private final double taper;
    private final LengthStyle style;

    private DovetailSeat(double taper, LengthStyle style) {
        this.taper = taper;
        this.style = style;
    }

    /**
     * Returns a dovetail.
     *
     * @param perSide taper of each side, more than 0 and less than 45 deg
     * @return the dovetail
     */
    public static DovetailSeat tapered(Quantity<Angle> perSide) {
        return new DovetailSeat(HouseUnits.radBetween(perSide, 0, 45, "dovetail taper"), LengthStyle.MILLIMETRES);
    }

    @Override
    public DovetailSeat in(LengthStyle other) {
        return new DovetailSeat(taper, Objects.requireNonNull(other, "style"));
    }

    /**
     * Returns how much higher the neck seats with a shim on each side.
     *
     * @param perSide thickness of each shim; negative for wood taken off
     * @return the rise, with the shim's sign
     */
    public Amount<Length> riseFrom(Quantity<Length> perSide) {
        return LengthStyle.of(perSide).amount(HouseUnits.mm(perSide, "shim") / StrictMath.sin(taper));
    }

    /**
     * Returns the shim on each side that lifts the seat by a height.
     *
     * @param rise wanted; negative to let the neck down
     * @return the shim, negative for wood to take off
     */
    public Amount<Length> shimFor(Quantity<Length> rise) {
        return LengthStyle.of(rise).amount(HouseUnits.mm(rise, "rise") * StrictMath.sin(taper));
    }

    /**
     * Returns the taper of each side.
     *
     * @return the angle
     */
    public Amount<Angle> taper() {
        return Amount.ofHouse(taper, ShopUnit.DEGREE);
    }

    /** True for the same taper. */
    @Override
    public boolean equals(Object other) {
        return other instanceof DovetailSeat that && Double.compare(taper, that.taper) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(taper);
    }

    /** Returns the taper and what a thin shim does: 0.1 mm, or 4 thou. */
    @Override
    public String toString() {
        Amount<Length> shim = style == LengthStyle.MILLIMETRES ? METRIC_SHIM : INCH_SHIM;
        return Report.titled("Dovetail, " + Texts.deg(taper) + " a side")
                .row(shim + " each side", "lifts the neck " + style.text(shim.house() / StrictMath.sin(taper)))
                .toString();
    }
}
