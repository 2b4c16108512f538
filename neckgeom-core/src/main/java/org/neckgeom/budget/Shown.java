package org.neckgeom.budget;

import javax.measure.Quantity;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.ShopUnit;

/** Quantities as text, to as many decimals as an uncertainty or their own size leaves sense in. */
final class Shown {

    private Shown() {}

    /** A value rounded to two digits of its deviation; three decimals of the unit where there is none. */
    static <Q extends Quantity<Q>> String value(double house, double deviation, ShopUnit<Q> unit) {
        return Numbers.fixed(unit.fromHouse(house), Numbers.decimalsFor(unit.fromHouse(deviation), 3)) + symbol(unit);
    }

    /** A size to three significant digits or thereabouts. */
    static <Q extends Quantity<Q>> String size(double house, ShopUnit<Q> unit) {
        double shown = unit.fromHouse(house);
        return Numbers.fixed(shown, Numbers.decimalsFor(Math.abs(shown), 3) + (shown == 0.0 ? 0 : 1)) + symbol(unit);
    }

    /** A standard deviation to two significant digits. */
    static <Q extends Quantity<Q>> String deviation(double house, ShopUnit<Q> unit) {
        double shown = unit.fromHouse(house);
        return Numbers.fixed(shown, Numbers.decimalsFor(shown, 3)) + symbol(unit);
    }

    static <Q extends Quantity<Q>> String symbol(ShopUnit<Q> unit) {
        return unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    }

    /** A factor such as {@code 0.73}. */
    static String factor(double factor) {
        if (factor >= 100.0) {
            return Numbers.fixed(factor, 0);
        }
        return Numbers.fixed(factor, factor < 0.1 ? 4 : 3);
    }
}
