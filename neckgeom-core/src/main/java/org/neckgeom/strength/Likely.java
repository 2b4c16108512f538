package org.neckgeom.strength;

import java.util.Objects;
import javax.measure.Quantity;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.ShopUnit;

/**
 * An estimate with the interval it lies in 95 times out of 100, such as {@code 0.31 mm (0.20 to 0.48 mm)}. The interval
 * need not be even to both sides. Immutable.
 *
 * @param <Q> the kind of quantity
 */
public final class Likely<Q extends Quantity<Q>> {

    private final double value;
    private final double low;
    private final double high;
    private final ShopUnit<Q> unit;

    private Likely(double value, double low, double high, ShopUnit<Q> unit) {
        this.value = value + 0.0;
        this.low = low + 0.0;
        this.high = high + 0.0;
        this.unit = unit;
    }

    /**
     * Returns an estimate with its interval.
     *
     * @param <Q> the kind of quantity
     * @param value the estimate, in the unit the others are shown in as well
     * @param low lower end of the interval, not above the estimate
     * @param high upper end of the interval, not below the estimate
     * @return the estimate with its interval
     * @throws IllegalArgumentException if the three are out of order
     */
    public static <Q extends Quantity<Q>> Likely<Q> of(Quantity<Q> value, Quantity<Q> low, Quantity<Q> high) {
        Amount<Q> middle = Amount.from(value, "value");
        ShopUnit<Q> unit = middle.unit();
        double lowest = Amount.from(low, "low end").house();
        double highest = Amount.from(high, "high end").house();
        if (!(lowest <= middle.house())) {
            throw HouseUnits.refused("low end", "no more than the value, " + middle, low);
        }
        if (!(highest >= middle.house())) {
            throw HouseUnits.refused("high end", "no less than the value, " + middle, high);
        }
        return new Likely<>(middle.house(), lowest, highest, unit);
    }

    static <Q extends Quantity<Q>> Likely<Q> ofHouse(double value, double low, double high, ShopUnit<Q> unit) {
        return new Likely<>(value, Math.min(low, high), Math.max(low, high), unit);
    }

    static <Q extends Quantity<Q>> Likely<Q> ofHouse(double[] valueLowHigh, ShopUnit<Q> unit) {
        return ofHouse(valueLowHigh[0], valueLowHigh[1], valueLowHigh[2], unit);
    }

    /**
     * Returns the estimate.
     *
     * @return the one number to use where only one is wanted
     */
    public Amount<Q> value() {
        return Amount.ofHouse(value, unit);
    }

    /**
     * Returns the lower end of the 95 % interval.
     *
     * @return in 2.5 of 100 cases the true value is lower
     */
    public Amount<Q> low() {
        return Amount.ofHouse(low, unit);
    }

    /**
     * Returns the upper end of the 95 % interval.
     *
     * @return in 2.5 of 100 cases the true value is higher
     */
    public Amount<Q> high() {
        return Amount.ofHouse(high, unit);
    }

    /**
     * Says whether a value lies in the interval.
     *
     * @param other of the same kind
     * @return true if it does, the ends belong to it
     */
    public boolean covers(Quantity<Q> other) {
        double house = Amount.from(other, "value").house();
        return house >= low && house <= high;
    }

    double house() {
        return value;
    }

    double lowHouse() {
        return low;
    }

    double highHouse() {
        return high;
    }

    /** Returns this times a number, its interval with it. */
    Likely<Q> times(double factor) {
        return ofHouse(value * factor, low * factor, high * factor, unit);
    }

    Likely<Q> in(ShopUnit<Q> other) {
        return new Likely<>(value, low, high, other);
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Likely<?> other
                && unit.kind() == (Class<?>) other.unit.kind()
                && Double.compare(value, other.value) == 0
                && Double.compare(low, other.low) == 0
                && Double.compare(high, other.high) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(unit.kind(), value, low, high);
    }

    /**
     * Returns the estimate and its interval, rounded so that the interval's half keeps one or two digits.
     *
     * @return such a text as {@code 0.31 mm (0.20 to 0.48 mm)}
     */
    @Override
    public String toString() {
        double quarter = Math.abs(unit.fromHouse(high) - unit.fromHouse(low)) / 4;
        int decimals = Math.max(0, Numbers.decimalsFor(quarter, 4) - 1);
        String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
        return number(value, decimals) + symbol + " (" + number(low, decimals) + " to " + number(high, decimals)
                + symbol + ")";
    }

    private String number(double house, int decimals) {
        return Numbers.fixed(unit.fromHouse(house), decimals);
    }
}
