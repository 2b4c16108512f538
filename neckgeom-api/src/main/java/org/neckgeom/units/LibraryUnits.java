package org.neckgeom.units;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;

/**
 * The one border between quantities and plain numbers: reads a quantity of any JSR 385 provider into the library unit
 * of its kind and checks it at the door.
 *
 * <p>Every method returns a finite double, never -0.0, or throws an {@code IllegalArgumentException} whose one sentence
 * names the parameter, the rule, and the value with the unit it was given in: {@code near wall must be more than 0 mm,
 * but was -3 mm}. A null quantity is a {@code NullPointerException} that names the parameter.
 */
public final class LibraryUnits {

    /**
     * Largest size of anything in its library unit, such as 1,000 km: what is more is a slip, and would overflow
     * further on.
     */
    public static final double MOST = 1e9;

    /**
     * Smallest size that is not 0 in its library unit: what is less is a slip too, and would overflow when divided by.
     */
    public static final double LEAST = 1e-30;

    /** The same two as bits: doubles over 0 are ordered as their bits are, and whole numbers are compared three at a time. */
    private static final long MOST_BITS = Double.doubleToRawLongBits(MOST);

    private static final long LEAST_BITS = Double.doubleToRawLongBits(LEAST);

    private LibraryUnits() {}

    /**
     * {@return any quantity in the library unit of its kind; the number in the library unit, finite, 0 or from {@link
     * #LEAST} to {@link #MOST} in size}
     *
     * @param <Q> the kind of quantity
     * @param quantity any provider's
     * @param unit any unit of the wanted kind
     * @param name the parameter, for the message
     * @throws IllegalArgumentException if it is of another kind (through a raw type), not finite, too large or too small
     */
    public static <Q extends Quantity<Q>> double of(Quantity<Q> quantity, ShopUnit<Q> unit, String name) {
        if (quantity instanceof Amount<Q> own
                && (own.unit() == unit || own.unit().isLike(Objects.requireNonNull(unit, "unit")))) {
            return isUsual(Math.abs(own.libraryValue()))
                    ? own.libraryValue()
                    : zero(own.libraryValue(), own.value(), own.unit(), name);
        }
        return foreign(quantity, unit, name);
    }

    /**
     * Tests by one comparison whether a number lies from {@link #LEAST} to {@link #MOST}; no NaN does, nor what is
     * under 0.
     */
    private static boolean isUsual(double size) {
        // Moved so that the least of them is the least long there is.
        return Double.doubleToRawLongBits(size) - LEAST_BITS + Long.MIN_VALUE
                <= MOST_BITS - LEAST_BITS + Long.MIN_VALUE;
    }

    /** Takes an amount's parts and not the amount, which would have to be made in memory to be handed on. */
    private static <Q extends Quantity<Q>> double zero(
            double libraryValue, double value, ShopUnit<Q> unit, String name) {
        return libraryValue == 0 ? libraryValue : inReach(libraryValue, Amount.of(value, unit), unit, name);
    }

    private static <Q extends Quantity<Q>> double foreign(Quantity<Q> quantity, ShopUnit<Q> unit, String name) {
        // The wildcard keeps a raw-typed lie from becoming a ClassCastException before it can be named.
        Quantity<?> any = Objects.requireNonNull(quantity, name);
        ShopUnit<Q> libraryValue = Objects.requireNonNull(unit, "unit").libraryValue();
        if (any instanceof Amount<?> own) {
            throw Refusal.of(name, "kind", "be " + unit.kindInWords(), own);
        }
        return inReach(
                finite(Border.libraryValue(any, libraryValue, name), name, libraryValue.symbol()),
                any,
                libraryValue,
                name);
    }

    private static double inReach(double value, Quantity<?> given, ShopUnit<?> unit, String name) {
        double size = Math.abs(value);
        if (size <= MOST && (size >= LEAST || size == 0)) {
            return value;
        }
        String libraryValue = unit.libraryValue().symbol();
        String rule = size > MOST ? "no more than " + Numbers.plain(MOST) : "0 or at least " + Numbers.plain(LEAST);
        throw refused(
                name, size > MOST ? "at-most" : "at-least", (rule + " " + libraryValue).strip() + " in size", given);
    }

    /**
     * {@return a station in mm that some function is asked about}
     *
     * @param xMm along the neck in mm, {@link #MOST} or less in size
     * @throws IllegalArgumentException if it is no number or too large
     */
    public static double stationMm(double xMm) {
        if (!(Math.abs(xMm) <= MOST)) {
            throw Refusal.of(
                    "station",
                    "at-most",
                    "be no more than " + Numbers.plain(MOST) + " mm in size",
                    Numbers.plain(xMm) + " mm");
        }
        return xMm;
    }

    /**
     * {@return a length in mm}
     *
     * @param length any finite length
     * @param name the parameter, for the message
     */
    public static double mm(Quantity<Length> length, String name) {
        return of(length, ShopUnit.MILLIMETRE, name);
    }

    /**
     * {@return a length in mm that must be more than 0}
     *
     * @param length more than 0
     * @param name the parameter, for the message
     */
    public static double mmPositive(Quantity<Length> length, String name) {
        return positive(length, ShopUnit.MILLIMETRE, name);
    }

    /**
     * {@return a length in mm that must be 0 or more}
     *
     * @param length 0 or more
     * @param name the parameter, for the message
     */
    public static double mmNotNegative(Quantity<Length> length, String name) {
        return notNegative(length, ShopUnit.MILLIMETRE, name);
    }

    /**
     * {@return an angle in rad}
     *
     * @param angle any finite angle
     * @param name the parameter, for the message
     */
    public static double rad(Quantity<Angle> angle, String name) {
        return of(angle, ShopUnit.RADIAN, name);
    }

    /**
     * {@return an angle in rad that must lie between two angles, both excluded}
     *
     * @param angle the angle
     * @param lowDegrees lower end in degrees, excluded
     * @param highDegrees upper end in degrees, excluded
     * @param name the parameter, for the message
     */
    public static double radBetween(Quantity<Angle> angle, double lowDegrees, double highDegrees, String name) {
        double rad = rad(angle, name);
        if (!(rad > ShopUnit.DEGREE.toLibrary(lowDegrees) && rad < ShopUnit.DEGREE.toLibrary(highDegrees))) {
            String rule = "more than " + Numbers.plain(lowDegrees) + " and less than " + Numbers.plain(highDegrees);
            throw refused(name, "range", rule + " deg", angle);
        }
        return rad;
    }

    /**
     * {@return a force in N}
     *
     * @param force any finite force
     * @param name the parameter, for the message
     */
    public static double newton(Quantity<Force> force, String name) {
        return of(force, ShopUnit.NEWTON, name);
    }

    /**
     * {@return a ratio as a plain number: 0.95 for 95 percent}
     *
     * @param ratio any finite ratio
     * @param name the parameter, for the message
     */
    public static double ratio(Quantity<Dimensionless> ratio, String name) {
        return of(ratio, ShopUnit.ONE, name);
    }

    /**
     * {@return a probability as a plain number strictly between 0 and 1}
     *
     * @param probability more than 0 and less than 100 percent
     * @param name the parameter, for the message
     */
    public static double probability(Quantity<Dimensionless> probability, String name) {
        double p = ratio(probability, name);
        if (!(p > 0 && p < 1)) {
            throw refused(name, "range", "more than 0 % and less than 100 %", probability);
        }
        return p;
    }

    /**
     * {@return a temperature in degrees Celsius}
     *
     * @param temperature absolute zero or more
     * @param name the parameter, for the message
     */
    public static double celsius(Quantity<Temperature> temperature, String name) {
        double c = of(temperature, ShopUnit.CELSIUS, name);
        if (!(c >= -273.15)) {
            throw refused(name, "at-least", "-273.15 degC or more", temperature);
        }
        return c;
    }

    /**
     * {@return a quantity in its library unit that must be more than 0; the number in the library unit, more than 0}
     *
     * @param <Q> the kind of quantity
     * @param quantity more than 0
     * @param unit any unit of the wanted kind
     * @param name the parameter, for the message
     */
    public static <Q extends Quantity<Q>> double positive(Quantity<Q> quantity, ShopUnit<Q> unit, String name) {
        if (quantity instanceof Amount<Q> own && own.unit() == unit && isUsual(own.libraryValue())) {
            return own.libraryValue();
        }
        double value = of(quantity, unit, name);
        if (!(value > 0)) {
            throw refused(name, "more-than", "more than 0 " + unitOf(quantity, unit.libraryValue()), quantity);
        }
        return value;
    }

    /**
     * {@return a quantity in its library unit that must be 0 or more; the number in the library unit, 0 or more}
     *
     * @param <Q> the kind of quantity
     * @param quantity 0 or more
     * @param unit any unit of the wanted kind
     * @param name the parameter, for the message
     */
    public static <Q extends Quantity<Q>> double notNegative(Quantity<Q> quantity, ShopUnit<Q> unit, String name) {
        if (quantity instanceof Amount<Q> own && own.unit() == unit && isUsual(own.libraryValue())) {
            return own.libraryValue();
        }
        double value = of(quantity, unit, name);
        if (!(value >= 0)) {
            throw refused(name, "at-least", "0 " + unitOf(quantity, unit.libraryValue()) + " or more", quantity);
        }
        return value;
    }

    /**
     * {@return a number that must be finite, without the sign of a zero}
     *
     * @param value any number
     * @param name the parameter, for the message
     * @param unit its unit as printed, may be empty
     */
    public static double finite(double value, String name, String unit) {
        if (!Double.isFinite(value)) {
            throw Refusal.of(name, "finite", "be a finite number", (Numbers.plain(value) + " " + unit).strip());
        }
        return value + 0.0;
    }

    /**
     * {@return the exception for a quantity that breaks a rule: {@code NAME must be RULE, but was VALUE UNIT}; for the
     * caller to throw}
     *
     * @param name the parameter
     * @param code of the rule, lower case with hyphens, such as {@code more-than}
     * @param rule what is allowed, with unit
     * @param given what was given
     */
    public static Refusal refused(String name, String code, String rule, Quantity<?> given) {
        Objects.requireNonNull(given, "given");
        String value = given instanceof Amount<?> own ? own.toString() : Border.inWords(given);
        if (given instanceof Amount<?> own && rule.contains(value)) {
            value = own.exactly(); // rounded, it would read as what is allowed
        }
        return Refusal.of(name, code, "be " + rule, value);
    }

    private static String unitOf(Quantity<?> given, ShopUnit<?> libraryValue) {
        return given instanceof Amount<?> own ? own.unit().symbol() : Border.symbol(given, libraryValue.symbol());
    }
}
