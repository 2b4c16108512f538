package org.neckgeom.measure;

import java.util.Objects;
import javax.measure.Quantity;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * An interval of a quantity from a lower to an upper end, both included, such as {@code -0.69 to 0.72 mm}: a
 * {@index "coverage interval"} ({@index "95 % interval"}), or a range. Immutable.
 *
 * @param <Q> the kind of quantity
 */
public final class Interval<Q extends Quantity<Q>> {

    private static final int DIGITS_OF_WIDTH = 3;

    private final double low;
    private final double high;
    private final ShopUnit<Q> unit;

    private Interval(double low, double high, ShopUnit<Q> unit) {
        this.low = low;
        this.high = high;
        this.unit = unit;
    }

    /**
     * {@return the interval between two quantities}
     *
     * @param <Q> the kind of quantity
     * @param low the lower end; its unit is the one the interval is read in
     * @param high the upper end, not under the lower
     * @throws IllegalArgumentException if the upper end lies under the lower
     */
    public static <Q extends Quantity<Q>> Interval<Q> of(Quantity<Q> low, Quantity<Q> high) {
        Amount<Q> from = Amount.from(low, "low");
        Amount<Q> to = Amount.from(high, from.unit(), "high");
        if (!(from.libraryValue() <= to.libraryValue())) {
            throw LibraryUnits.refused("high", "range", from + " or more", to);
        }
        return new Interval<>(from.libraryValue(), to.libraryValue(), from.unit());
    }

    /**
     * {@return the interval between two numbers in the library unit}
     *
     * @param <Q> the kind of quantity
     * @param low the lower end, finite
     * @param high the upper end, finite, not under the lower
     * @param unit the unit the interval is read in
     * @throws IllegalArgumentException if an end is not finite, or the upper end lies under the lower
     */
    public static <Q extends Quantity<Q>> Interval<Q> ofLibrary(double low, double high, ShopUnit<Q> unit) {
        return of(Amount.ofLibrary(low, unit), Amount.ofLibrary(high, unit));
    }

    /** {@return the lower end; included} */
    public Amount<Q> low() {
        return Amount.ofLibrary(low, unit);
    }

    /** {@return the upper end; included} */
    public Amount<Q> high() {
        return Amount.ofLibrary(high, unit);
    }

    /** {@return the lower end as a number in the library unit} */
    public double libraryLow() {
        return low;
    }

    /** {@return the upper end as a number in the library unit} */
    public double libraryHigh() {
        return high;
    }

    /**
     * {@return whether a quantity lies in the interval, ends included; true when low &lt;= quantity &lt;= high}
     *
     * @param quantity the quantity
     */
    public boolean contains(Quantity<Q> quantity) {
        double value = LibraryUnits.of(quantity, unit, "quantity");
        return low <= value && value <= high;
    }

    /**
     * {@return the same printed in a style of length; equal to this}
     *
     * @param other how lengths are printed
     */
    public Interval<Q> in(LengthStyle other) {
        return new Interval<>(low, high, Objects.requireNonNull(other, "style").unitFor(unit));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Interval<?> other
                && unit.kind() == (Class<?>) other.unit.kind()
                && Double.compare(low, other.low) == 0
                && Double.compare(high, other.high) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(unit.kind(), low, high);
    }

    /** Returns such as {@code -0.691 to 0.722 mm}, to three digits of the half-width. */
    @Override
    public String toString() {
        ShopUnit<Q> shown = unit.sideBySide(Math.max(Math.abs(low), Math.abs(high)));
        double from = shown.fromLibrary(low);
        double to = shown.fromLibrary(high);
        int places = Numbers.decimalsFor((to - from) / 2, DIGITS_OF_WIDTH) + 1;
        String text = Numbers.fixed(from, places) + " to " + Numbers.fixed(to, places);
        return shown.symbol().isEmpty() ? text : text + " " + shown.symbol();
    }
}
