package org.neckgeom.measure;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.fault.Refusal;
import org.neckgeom.numeric.StudentLaw;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * An estimate ({@index "measured value"}): a value with its standard uncertainty and degrees of freedom, such as
 * {@code 0.710 mm, u 0.014 mm}.
 *
 * <p>The standard uncertainty u is one standard deviation, 0 or more (GUM 2.3.1); it is never a half-width or an
 * expanded uncertainty. Degrees of freedom are more than 0; they are infinite when the uncertainty is taken as known.
 * The estimate keeps the unit of its value. An estimate has no order: of two estimates neither is surely the greater.
 *
 * <p>{@link #of} takes u as known. {@link #repeated} evaluates it from readings: {@code u = s / sqrt(n)} with n - 1
 * degrees of freedom (GUM 4.2, Type A). {@link #uniform} takes a uniform distribution: {@code u = a / sqrt(3)}
 * (GUM 4.3.7, Type B). Errors: a value or an uncertainty that is not finite, a negative uncertainty, or fewer than two
 * readings throw {@link org.neckgeom.fault.Refusal} (an {@code IllegalArgumentException}). Immutable.
 *
 * @see Verdict
 * @see #interval coverage interval
 * @param <Q> the kind of quantity
 */
public final class Estimate<Q extends Quantity<Q>> {

    private final double value;
    private final double uncertainty;
    private final double degreesOfFreedom;
    private final ShopUnit<Q> unit;

    private Estimate(double value, double uncertainty, double degreesOfFreedom, ShopUnit<Q> unit) {
        this.value = LibraryUnits.finite(value, "value", unit.symbol());
        this.uncertainty = LibraryUnits.finite(uncertainty, "standard uncertainty", unit.symbol());
        LibraryUnits.finite(unit.fromLibrary(value), "value", unit.symbol());
        LibraryUnits.finite(unit.fromLibrary(uncertainty), "standard uncertainty", unit.symbol());
        if (!(uncertainty >= 0)) {
            throw Refusal.of(
                    "standard uncertainty",
                    "at-least",
                    "be 0 " + unit.forDifferences().symbol() + " or more",
                    Amount.ofLibrary(uncertainty, unit.forDifferences()));
        }
        if (!(degreesOfFreedom > 0)) {
            throw Refusal.of(
                    "degrees of freedom", "more-than", "be more than 0", "were", Numbers.plain(degreesOfFreedom));
        }
        this.degreesOfFreedom = degreesOfFreedom;
        this.unit = unit;
    }

    /**
     * {@return an estimate with a known standard uncertainty, such as one reading with an instrument's repeatability,
     * with infinite degrees of freedom}
     *
     * @param <Q> the kind of quantity
     * @param value the best value; the estimate keeps its unit
     * @param standardUncertainty one standard deviation, 0 or more; for a temperature, a difference
     */
    public static <Q extends Quantity<Q>> Estimate<Q> of(Quantity<Q> value, Quantity<Q> standardUncertainty) {
        return of(value, standardUncertainty, Double.POSITIVE_INFINITY);
    }

    /**
     * {@return an estimate whose standard uncertainty is itself known from few data}
     *
     * @param <Q> the kind of quantity
     * @param value the best value; the estimate keeps its unit
     * @param standardUncertainty one standard deviation, 0 or more; for a temperature, a difference
     * @param degreesOfFreedom more than 0, infinity allowed
     */
    public static <Q extends Quantity<Q>> Estimate<Q> of(
            Quantity<Q> value, Quantity<Q> standardUncertainty, double degreesOfFreedom) {
        Amount<Q> best = Amount.from(value, "value");
        double u = size(standardUncertainty, best.unit(), "standard uncertainty");
        return new Estimate<>(best.libraryValue(), u, degreesOfFreedom, best.unit());
    }

    /**
     * {@return an estimate from numbers in the library unit}
     *
     * @param <Q> the kind of quantity
     * @param value in the library unit, finite
     * @param standardUncertainty in the library unit, 0 or more
     * @param degreesOfFreedom more than 0, infinity allowed
     * @param unit the unit the estimate is read in
     */
    public static <Q extends Quantity<Q>> Estimate<Q> ofLibrary(
            double value, double standardUncertainty, double degreesOfFreedom, ShopUnit<Q> unit) {
        return new Estimate<>(value, standardUncertainty, degreesOfFreedom, Objects.requireNonNull(unit, "unit"));
    }

    /**
     * {@return the mean of repeated readings with its Type A standard uncertainty {@code s/sqrt(n)} and n - 1 degrees
     * of freedom, s the experimental standard deviation} Source: GUM 4.2.3, 4.2.6.
     *
     * @param <Q> the kind of quantity
     * @param readings two or more; the first one's unit is the one the estimate is read in
     * @throws IllegalArgumentException if there are fewer than two readings
     */
    public static <Q extends Quantity<Q>> Estimate<Q> repeated(List<? extends Quantity<Q>> readings) {
        int n = Objects.requireNonNull(readings, "readings").size();
        if (n < 2) {
            throw Refusal.of("readings", "at-least", "be 2 or more", "were", n);
        }
        ShopUnit<Q> unit = Amount.from(readings.get(0), "reading").unit();
        double[] values = new double[n];
        double first = Amount.from(readings.get(0), "reading").libraryValue();
        double sum = 0;
        for (int i = 0; i < n; i++) {
            // From the first reading on, so that large readings close together lose no digits.
            values[i] = LibraryUnits.of(readings.get(i), unit, "reading") - first;
            sum += values[i];
        }
        double mean = sum / n;
        double squares = 0;
        double rest = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
            rest += value - mean;
        }
        double variance = (squares - rest * rest / n) / (n - 1);
        return new Estimate<>(first + mean, Math.sqrt(Math.max(0, variance) / n), n - 1, unit);
    }

    /**
     * {@return an estimate of which only the bounds are known: a uniform distribution about the given value (GUM
     * 4.3.7); infinite degrees of freedom} {@code u = a/sqrt(3)}. Source: GUM 4.3.7.
     *
     * @param <Q> the kind of quantity
     * @param value the middle; its unit is the one the estimate is read in
     * @param halfWidth a, 0 or more
     */
    public static <Q extends Quantity<Q>> Estimate<Q> uniform(Quantity<Q> value, Quantity<Q> halfWidth) {
        Amount<Q> best = Amount.from(value, "value");
        double a = size(halfWidth, best.unit(), "half-width");
        return new Estimate<>(best.libraryValue(), a / Math.sqrt(3), Double.POSITIVE_INFINITY, best.unit());
    }

    private static <Q extends Quantity<Q>> double size(Quantity<Q> size, ShopUnit<Q> like, String name) {
        Amount<Q> amount = Amount.from(size, like, name);
        if (!(amount.libraryDifference() >= 0)) {
            throw LibraryUnits.refused(name, "at-least", "0 " + amount.unit().symbol() + " or more", amount);
        }
        return amount.libraryDifference();
    }

    /** {@return the best value} */
    public Amount<Q> value() {
        return Amount.ofLibrary(value, unit);
    }

    /**
     * {@return the standard uncertainty, one standard deviation; u, 0 or more; that of a temperature in degrees
     * Celsius}
     */
    public Amount<Q> standardUncertainty() {
        return Amount.ofLibrary(uncertainty, unit.forDifferences());
    }

    /** {@return the degrees of freedom of the standard uncertainty; more than 0, infinite when u is taken as known} */
    public double degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** {@return the value as a number in the library unit} */
    public double libraryValue() {
        return value;
    }

    /** {@return the standard uncertainty as a number in the library unit; u, 0 or more} */
    public double libraryUncertainty() {
        return uncertainty;
    }

    /** {@return the unit the estimate is read in} */
    public ShopUnit<Q> unit() {
        return unit;
    }

    /**
     * {@return the same estimate read in another unit}
     *
     * @param other the unit
     */
    public Estimate<Q> in(ShopUnit<Q> other) {
        return new Estimate<>(value, uncertainty, degreesOfFreedom, Objects.requireNonNull(other, "unit"));
    }

    /**
     * {@return the expanded uncertainty {@code U = t_p(nu) * u} for a coverage probability; 0 or more; that of a
     * temperature in degrees Celsius} Source: GUM G.3, Table G.2.
     *
     * @param coverage more than 0 and less than 100 percent
     */
    public Amount<Q> expanded(Quantity<Dimensionless> coverage) {
        double p = LibraryUnits.probability(coverage, "coverage");
        double factor = StudentLaw.coverageFactor(p, degreesOfFreedom);
        return Amount.ofLibrary(factor * uncertainty, unit.forDifferences());
    }

    /**
     * {@return the coverage interval {@code value - U} to {@code value + U}}
     *
     * @param coverage more than 0 and less than 100 percent
     */
    public Interval<Q> interval(Quantity<Dimensionless> coverage) {
        double half = expanded(coverage).libraryValue();
        return Interval.ofLibrary(value - half, value + half, unit);
    }

    /**
     * {@return the same printed in a style of length; equal to this}
     *
     * @param other how lengths are printed
     */
    public Estimate<Q> in(LengthStyle other) {
        return in(Objects.requireNonNull(other, "style").unitFor(unit));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Estimate<?> other
                && unit.kind() == (Class<?>) other.unit.kind()
                && Double.compare(value, other.value) == 0
                && Double.compare(uncertainty, other.uncertainty) == 0
                && Double.compare(degreesOfFreedom, other.degreesOfFreedom) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(unit.kind(), value, uncertainty, degreesOfFreedom);
    }

    /** Returns such as {@code 0.710 mm, u 0.014 mm}, rounded to two digits of the uncertainty. */
    @Override
    public String toString() {
        if ((ShopUnit<?>) unit == ShopUnit.INCH_FRACTION && uncertainty > 0) {
            LengthStyle style = LengthStyle.INCH_FRACTIONS;
            return withDegrees(style.text(value, uncertainty) + ", u " + style.small(uncertainty));
        }
        String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
        if (uncertainty == 0) {
            return value() + ", u 0" + symbol;
        }
        double u = unit.fromLibrary(uncertainty) - unit.fromLibrary(0);
        int places = Numbers.decimalsFor(u, 0);
        String text =
                Numbers.fixed(unit.fromLibrary(value), places) + symbol + ", u " + Numbers.fixed(u, places) + symbol;
        return withDegrees(text);
    }

    private String withDegrees(String text) {
        return Double.isInfinite(degreesOfFreedom)
                ? text
                : text + ", " + Numbers.trimmed(degreesOfFreedom, 1) + " degrees of freedom";
    }
}
