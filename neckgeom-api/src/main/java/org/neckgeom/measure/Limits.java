package org.neckgeom.measure;

import java.util.Objects;
import javax.measure.Quantity;
import org.neckgeom.fault.Refusal;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The tolerance limits of a quantity, such as {@code within 0.1 mm of 0 mm}: a lower and an upper one, or only one of
 * them. Both belong to what is allowed. Immutable. Terms: JCGM 106:2012.
 *
 * @param <Q> the kind of quantity
 */
public final class Limits<Q extends Quantity<Q>> {

    private final double lower;
    private final double upper;
    private final ShopUnit<Q> unit;

    private Limits(double lower, double upper, ShopUnit<Q> unit) {
        this.lower = lower + 0.0;
        this.upper = upper + 0.0;
        this.unit = unit;
    }

    /**
     * {@return limits the same distance either side of zero}
     *
     * @param <Q> the kind of quantity
     * @param limit the greatest size allowed, more than 0
     */
    public static <Q extends Quantity<Q>> Limits<Q> within(Quantity<Q> limit) {
        Amount<Q> size = Amount.from(limit, "limit");
        if (!(size.libraryValue() > 0)) {
            throw LibraryUnits.refused(
                    "limit", "more-than", "more than 0 " + size.unit().symbol(), size);
        }
        return new Limits<>(-size.libraryValue(), size.libraryValue(), size.unit());
    }

    /**
     * {@return a lower and an upper limit}
     *
     * @param <Q> the kind of quantity
     * @param lower the least value allowed; its unit is the one the limits are read in
     * @param upper the greatest value allowed, more than the lower
     */
    public static <Q extends Quantity<Q>> Limits<Q> between(Quantity<Q> lower, Quantity<Q> upper) {
        Amount<Q> low = Amount.from(lower, "lower limit");
        Amount<Q> high = Amount.from(upper, low.unit(), "upper limit");
        if (!(low.libraryValue() < high.libraryValue())) {
            Refusal refused =
                    LibraryUnits.refused("upper limit", "more-than", "more than " + low + ", the lower one", high);
            throw high.libraryValue() < low.libraryValue()
                    ? Refusal.because("upper limit", "swapped", refused.getMessage() + ": are the two swapped?")
                    : refused;
        }
        return new Limits<>(low.libraryValue(), high.libraryValue(), low.unit());
    }

    /**
     * {@return an upper limit alone}
     *
     * @param <Q> the kind of quantity
     * @param upper the greatest value allowed
     */
    public static <Q extends Quantity<Q>> Limits<Q> atMost(Quantity<Q> upper) {
        Amount<Q> high = Amount.from(upper, "upper limit");
        return new Limits<>(Double.NEGATIVE_INFINITY, high.libraryValue(), high.unit());
    }

    /**
     * {@return a lower limit alone}
     *
     * @param <Q> the kind of quantity
     * @param lower the least value allowed
     */
    public static <Q extends Quantity<Q>> Limits<Q> atLeast(Quantity<Q> lower) {
        Amount<Q> low = Amount.from(lower, "lower limit");
        return new Limits<>(low.libraryValue(), Double.POSITIVE_INFINITY, low.unit());
    }

    /** {@return the lower limit in the library unit; negative infinity where there is none} */
    public double libraryLower() {
        return lower;
    }

    /** {@return the upper limit in the library unit; infinity where there is none} */
    public double libraryUpper() {
        return upper;
    }

    /** {@return the unit the limits are read in} */
    public ShopUnit<Q> unit() {
        return unit;
    }

    /**
     * {@return whether a value keeps the limits, which belong to what is allowed; true when it does}
     *
     * @param value the value
     */
    public boolean allow(Quantity<Q> value) {
        return allowLibrary(LibraryUnits.of(value, unit, "value"));
    }

    /**
     * {@return whether a value in the library unit keeps the limits; true when it does; false for NaN}
     *
     * @param libraryValue the value
     */
    public boolean allowLibrary(double libraryValue) {
        return lower <= libraryValue && libraryValue <= upper;
    }

    /**
     * {@return the same limits read in another unit; limits equal to these}
     *
     * @param other the unit
     */
    public Limits<Q> in(ShopUnit<Q> other) {
        return new Limits<>(lower, upper, Objects.requireNonNull(other, "unit"));
    }

    /**
     * {@return the same printed in a style of length; equal to this}
     *
     * @param other how lengths are printed
     */
    public Limits<Q> in(LengthStyle other) {
        return new Limits<>(lower, upper, Objects.requireNonNull(other, "style").unitFor(unit));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Limits<?> other
                && unit.kind() == (Class<?>) other.unit.kind()
                && Double.compare(lower, other.lower) == 0
                && Double.compare(upper, other.upper) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(unit.kind(), lower, upper);
    }

    /** Returns such as {@code within 0.1 mm}, {@code 3 to 5 mm}, {@code 3 mm or more}, {@code 0.1 mm or less}. */
    @Override
    public String toString() {
        if (isEven()) {
            return "within " + text(upper);
        }
        if (Double.isInfinite(lower)) {
            return text(upper) + " or less";
        }
        if (Double.isInfinite(upper)) {
            return text(lower) + " or more";
        }
        String symbol = unit.symbol().isEmpty() ? "" : " " + shownUnit().symbol();
        String from = text(lower);
        return from.substring(0, from.length() - symbol.length()) + " to " + text(upper);
    }

    /** As far below 0 as above. */
    boolean isEven() {
        return lower == -upper;
    }

    private String text(double libraryValue) {
        return Amount.ofLibrary(libraryValue, shownUnit()).toString();
    }

    private ShopUnit<Q> shownUnit() {
        boolean oneEnd = Double.isInfinite(lower) || Double.isInfinite(upper);
        return unit.sideBySide(
                oneEnd ? Math.min(Math.abs(lower), Math.abs(upper)) : Math.max(Math.abs(lower), Math.abs(upper)));
    }
}
