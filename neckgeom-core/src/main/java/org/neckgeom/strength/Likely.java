package org.neckgeom.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Interval;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * A number with the ends of its 95 % interval, in the house unit of its kind, to be read in a shop unit. An end may be NaN
 * where there is no answer.
 *
 * @param <Q> the kind of quantity
 */
record Likely<Q extends Quantity<Q>>(double value, double low, double high, ShopUnit<Q> unit) {

    Likely {
        double least = Math.min(low, high) + 0.0;
        high = Math.max(low, high) + 0.0;
        low = least;
        value += 0.0;
    }

    static <Q extends Quantity<Q>> Likely<Q> of(double[] valueLowHigh, ShopUnit<Q> unit) {
        return new Likely<>(valueLowHigh[0], valueLowHigh[1], valueLowHigh[2], unit);
    }

    Amount<Q> amount() {
        return Amount.ofHouse(value, unit);
    }

    boolean isWhole() {
        return Double.isFinite(value) && Double.isFinite(low) && Double.isFinite(high);
    }

    Interval<Q> interval() {
        return Interval.ofHouse(low, high, unit);
    }

    /** This times a number, its interval with it. */
    Likely<Q> times(double factor) {
        return new Likely<>(value * factor, low * factor, high * factor, unit);
    }

    Likely<Q> in(ShopUnit<Q> other) {
        return new Likely<>(value, low, high, other);
    }

    Likely<Q> plus(double house) {
        return new Likely<>(value + house, low + house, high + house, unit);
    }

    /** Returns {@code 0.31 mm (95 %: 0.20 to 0.48 mm)}, rounded so that the interval's half keeps one or two digits. */
    @Override
    public String toString() {
        if (!isWhole()) {
            return number(unit, value, 3) + symbol(unit);
        }
        // Small parts of an inch are thou to a maker.
        boolean inches = (ShopUnit<?>) unit == ShopUnit.INCH || (ShopUnit<?>) unit == ShopUnit.INCH_FRACTION;
        boolean small = inches && Math.max(Math.abs(low), Math.abs(high)) < 2.54;
        return small ? text(ShopUnit.THOU) : text(unit);
    }

    private String text(ShopUnit<?> shown) {
        double quarter = Math.abs(shown.fromHouse(high) - shown.fromHouse(low)) / 4;
        // A hundredth of a millimetre is what a feeler tells apart.
        int least = shown == ShopUnit.MILLIMETRE ? 2 : 0;
        int decimals = Math.max(least, Numbers.decimalsFor(quarter, 4) - 1);
        return number(shown, value, decimals) + symbol(shown) + " (95 %: " + number(shown, low, decimals) + " to "
                + number(shown, high, decimals) + symbol(shown) + ")";
    }

    private static String symbol(ShopUnit<?> shown) {
        return shown.symbol().isEmpty() ? "" : " " + shown.symbol();
    }

    private static String number(ShopUnit<?> shown, double house, int decimals) {
        return Numbers.fixed(shown.fromHouse(house), decimals);
    }

    /** A place along the neck, to a millimetre or a tenth of an inch. */
    static String place(LengthStyle style, double mm) {
        ShopUnit<Length> unit = style.unit();
        return Numbers.fixed(unit.fromHouse(mm), style == LengthStyle.MILLIMETRES ? 0 : 1) + " " + unit.symbol();
    }
}
