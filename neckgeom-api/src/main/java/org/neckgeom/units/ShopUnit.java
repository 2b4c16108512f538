package org.neckgeom.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Words;

/**
 * A unit used in the shop, such as {@code in}: its symbol, its exact factor to the library unit of its kind, and the
 * JSR 385 unit it stands for. Immutable; the constants are the only instances, so they may be compared by identity.
 *
 * <p>Factors are the exact ones of the international inch (25.4 mm, 1959) and pound (0.45359237 kg) and of standard
 * gravity (9.80665 m/s2). The JSR 385 unit is made by Indriya when it is first asked for, and not before.
 *
 * @param <Q> the kind of quantity
 */
public final class ShopUnit<Q extends Quantity<Q>> {

    private static final BigDecimal PI = new BigDecimal("3.14159265358979323846264338327950288419716939937510");
    private static final BigDecimal POUND_IN_NEWTON = new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665"));
    private static final BigDecimal SQUARE_INCH_IN_MM2 = new BigDecimal("645.16");

    /** Millimetre, the library unit of length. */
    public static final ShopUnit<Length> MILLIMETRE =
            libraryValue(Length.class, "mm", "a length", () -> Jsr385.MILLIMETRE);

    /** Centimetre, 10 mm. */
    public static final ShopUnit<Length> CENTIMETRE =
            unit(Length.class, "cm", "a length", Factor.ratio(10, 1), () -> Jsr385.CENTIMETRE);

    /** Metre, 1,000 mm. */
    public static final ShopUnit<Length> METRE =
            unit(Length.class, "m", "a length", Factor.ratio(1000, 1), () -> Jsr385.METRE);

    /** International inch, 25.4 mm exactly. */
    public static final ShopUnit<Length> INCH =
            unit(Length.class, "in", "a length", Factor.ratio(254, 10), () -> Jsr385.INCH);

    /** The international inch of which amounts are said in fractions: {@code 1 3/4 in + 2.0 thou}. */
    public static final ShopUnit<Length> INCH_FRACTION =
            unit(Length.class, "in", "a length", Factor.ratio(254, 10), () -> Jsr385.INCH);

    /** Thousandth of an inch, 0.0254 mm exactly. */
    public static final ShopUnit<Length> THOU =
            unit(Length.class, "thou", "a length", Factor.ratio(254, 10_000), () -> Jsr385.THOU);

    /** International foot, 304.8 mm exactly. */
    public static final ShopUnit<Length> FOOT =
            unit(Length.class, "ft", "a length", Factor.ratio(3048, 10), () -> Jsr385.FOOT);

    /** Radian, the library unit of angle. */
    public static final ShopUnit<Angle> RADIAN = libraryValue(Angle.class, "rad", "an angle", () -> Jsr385.RADIAN);

    /** Degree of arc, pi/180 rad. */
    public static final ShopUnit<Angle> DEGREE = unit(
            Angle.class,
            "deg",
            "an angle",
            Factor.of(PI.divide(BigDecimal.valueOf(180), MathContext.DECIMAL128)),
            () -> Jsr385.DEGREE);

    /** Newton, the library unit of force. */
    public static final ShopUnit<Force> NEWTON = libraryValue(Force.class, "N", "a force", () -> Jsr385.NEWTON);

    /** Pound-force, 4.4482216152605 N exactly. */
    public static final ShopUnit<Force> POUND_FORCE =
            unit(Force.class, "lbf", "a force", Factor.of(POUND_IN_NEWTON), () -> Jsr385.POUND_FORCE);

    /** Kilogram-force, 9.80665 N exactly. */
    public static final ShopUnit<Force> KILOGRAM_FORCE =
            unit(Force.class, "kgf", "a force", Factor.of(new BigDecimal("9.80665")), () -> Jsr385.KILOGRAM_FORCE);

    /** Ounce of force, a sixteenth of a pound of it: 0.27801385... N. */
    public static final ShopUnit<Force> OUNCE_FORCE = unit(
            Force.class,
            "ozf",
            "a force",
            Factor.of(POUND_IN_NEWTON.divide(BigDecimal.valueOf(16))),
            () -> Jsr385.OUNCE_FORCE);

    /** Megapascal, the library unit of pressure, stress and elastic modulus: 1 N/mm2. */
    public static final ShopUnit<Pressure> MEGAPASCAL =
            libraryValue(Pressure.class, "MPa", "a pressure", () -> Jsr385.MEGAPASCAL);

    /** Gigapascal, 1,000 MPa. */
    public static final ShopUnit<Pressure> GIGAPASCAL =
            unit(Pressure.class, "GPa", "a pressure", Factor.ratio(1000, 1), () -> Jsr385.GIGAPASCAL);

    /** Pound-force to the square inch, about 0.00689476 MPa. */
    public static final ShopUnit<Pressure> PSI = unit(
            Pressure.class,
            "psi",
            "a pressure",
            Factor.of(POUND_IN_NEWTON.divide(SQUARE_INCH_IN_MM2, MathContext.DECIMAL128)),
            () -> Jsr385.PSI);

    /** The number one, the library unit of ratios. */
    public static final ShopUnit<Dimensionless> ONE =
            libraryValue(Dimensionless.class, "", "a ratio", () -> Jsr385.ONE);

    /** Percent, one hundredth. */
    public static final ShopUnit<Dimensionless> PERCENT =
            unit(Dimensionless.class, "%", "a ratio", Factor.ratio(1, 100), () -> Jsr385.PERCENT);

    /** Degree Celsius, the library unit of temperature. */
    public static final ShopUnit<Temperature> CELSIUS =
            libraryValue(Temperature.class, "degC", "a temperature", () -> Jsr385.CELSIUS);

    /** Degree Fahrenheit, {@code C = (F - 32) * 5/9}. */
    public static final ShopUnit<Temperature> FAHRENHEIT = unit(
            Temperature.class,
            "degF",
            "a temperature",
            Factor.from(BigDecimal.valueOf(32), ratio(5, 9)),
            () -> Jsr385.FAHRENHEIT);

    /** Kelvin, {@code C = K - 273.15}. */
    public static final ShopUnit<Temperature> KELVIN = unit(
            Temperature.class,
            "K",
            "a temperature",
            Factor.from(new BigDecimal("273.15"), BigDecimal.ONE),
            () -> Jsr385.KELVIN);

    /** Hertz, the library unit of frequency. */
    public static final ShopUnit<Frequency> HERTZ =
            libraryValue(Frequency.class, "Hz", "a frequency", () -> Jsr385.HERTZ);

    /** Revolution per minute, 1/60 Hz. */
    public static final ShopUnit<Frequency> RPM =
            unit(Frequency.class, "rpm", "a speed of rotation", Factor.ratio(1, 60), () -> Jsr385.RPM);

    /** Millimetre per second, the library unit of speed. */
    public static final ShopUnit<Speed> MM_PER_SECOND =
            libraryValue(Speed.class, "mm/s", "a speed", () -> Jsr385.MM_PER_SECOND);

    /** Millimetre per minute, the usual unit of feed. */
    public static final ShopUnit<Speed> MM_PER_MINUTE =
            unit(Speed.class, "mm/min", "a speed", Factor.ratio(1, 60), () -> Jsr385.MM_PER_MINUTE);

    /** Inch per minute, the usual unit of feed where inches are used. */
    public static final ShopUnit<Speed> INCH_PER_MINUTE =
            unit(Speed.class, "in/min", "a speed", Factor.ratio(254, 600), () -> Jsr385.INCH_PER_MINUTE);

    /** Metre per second, the usual unit of a cutter's rim speed. */
    public static final ShopUnit<Speed> METRE_PER_SECOND =
            unit(Speed.class, "m/s", "a speed", Factor.ratio(1000, 1), () -> Jsr385.METRE_PER_SECOND);

    /** Watt, the library unit of power. */
    public static final ShopUnit<Power> WATT = libraryValue(Power.class, "W", "a power", () -> Jsr385.WATT);

    /** Newton metre, the unit of a moment. The library unit is its thousandth, N mm. */
    public static final ShopUnit<Torque> NEWTON_METRE =
            unit(Torque.class, "N.m", "a moment", Factor.ratio(1000, 1), () -> Jsr385.NEWTON_METRE);

    /** Newton millimetre, the library unit of a moment. */
    public static final ShopUnit<Torque> NEWTON_MM =
            libraryValue(Torque.class, "N.mm", "a moment", () -> Jsr385.NEWTON_MM);

    /** Kilogram per cubic metre, the library unit of density. */
    public static final ShopUnit<MassDensity> KG_PER_M3 =
            libraryValue(MassDensity.class, "kg/m3", "a density", () -> Jsr385.KG_PER_M3);

    /** Gram per metre, the library unit of a string's mass per length. */
    public static final ShopUnit<LinearDensity> GRAM_PER_METRE =
            libraryValue(LinearDensity.class, "g/m", "a mass per length", () -> Jsr385.GRAM_PER_METRE);

    /** Pound per inch, the other unit in which strings are weighed: 17,857.967... g/m. */
    public static final ShopUnit<LinearDensity> POUND_PER_INCH = unit(
            LinearDensity.class,
            "lb/in",
            "a mass per length",
            Factor.of(new BigDecimal("453.59237").divide(new BigDecimal("0.0254"), MathContext.DECIMAL128)),
            () -> Jsr385.POUND_PER_INCH);

    /** The library unit of each kind; the place of a kind's first match when a foreign quantity comes in. */
    static final List<ShopUnit<?>> HOUSE = List.of(
            MILLIMETRE,
            RADIAN,
            NEWTON,
            MEGAPASCAL,
            ONE,
            CELSIUS,
            HERTZ,
            MM_PER_SECOND,
            WATT,
            NEWTON_MM,
            KG_PER_M3,
            GRAM_PER_METRE);

    /** Every unit but the one that is another in print, for look-up by symbol or by the JSR 385 unit. */
    static final List<ShopUnit<?>> ALL = List.of(
            MILLIMETRE,
            CENTIMETRE,
            METRE,
            INCH,
            THOU,
            FOOT,
            RADIAN,
            DEGREE,
            NEWTON,
            KILOGRAM_FORCE,
            OUNCE_FORCE,
            POUND_FORCE,
            MEGAPASCAL,
            GIGAPASCAL,
            PSI,
            ONE,
            PERCENT,
            CELSIUS,
            FAHRENHEIT,
            KELVIN,
            HERTZ,
            RPM,
            MM_PER_SECOND,
            MM_PER_MINUTE,
            INCH_PER_MINUTE,
            METRE_PER_SECOND,
            WATT,
            NEWTON_METRE,
            NEWTON_MM,
            KG_PER_M3,
            GRAM_PER_METRE,
            POUND_PER_INCH);

    private final Class<Q> kind;
    private final String symbol;
    private final String kindInWords;
    private final Factor factor;
    private final Supplier<Unit<Q>> jsr385;

    private ShopUnit(Class<Q> kind, String symbol, String kindInWords, Factor factor, Supplier<Unit<Q>> jsr385) {
        this.kind = kind;
        this.symbol = symbol;
        this.kindInWords = kindInWords;
        this.factor = factor;
        this.jsr385 = jsr385;
    }

    private static <Q extends Quantity<Q>> ShopUnit<Q> libraryValue(
            Class<Q> kind, String symbol, String kindInWords, Supplier<Unit<Q>> jsr385) {
        return new ShopUnit<>(kind, symbol, kindInWords, Factor.IDENTITY, jsr385);
    }

    private static <Q extends Quantity<Q>> ShopUnit<Q> unit(
            Class<Q> kind, String symbol, String kindInWords, Factor factor, Supplier<Unit<Q>> jsr385) {
        return new ShopUnit<>(kind, symbol, kindInWords, factor, jsr385);
    }

    private static BigDecimal ratio(long numerator, long denominator) {
        return BigDecimal.valueOf(numerator).divide(BigDecimal.valueOf(denominator), MathContext.DECIMAL128);
    }

    /** {@return the symbol, such as {@code in}; the empty text for the number one; ASCII only} */
    public String symbol() {
        return symbol;
    }

    /**
     * {@return a unit by its symbol or by its code of the Unified Code for Units of Measure, such as {@code in} or
     * {@code [in_i]}; {@code 1} is the number one}
     *
     * @param name symbol or code, case sensitive
     * @throws IllegalArgumentException if no unit has this name
     */
    public static ShopUnit<?> named(String name) {
        ShopUnit<?> unit = UnitWords.unit(Objects.requireNonNull(name, "name"));
        if (unit == null) {
            throw Refusal.of(
                    "unit",
                    "unknown-unit",
                    "be one of "
                            + String.join(
                                    ", ", ALL.stream().map(ShopUnit::toString).toList()),
                    Words.quoted(name));
        }
        return unit;
    }

    /**
     * {@return a unit of a kind by its symbol or by its code of the Unified Code for Units of Measure}
     *
     * @param <Q> the kind of quantity
     * @param name symbol or code, case sensitive
     * @param kind such as {@code Length.class}
     * @throws IllegalArgumentException if no unit of this kind has this name
     */
    public static <Q extends Quantity<Q>> ShopUnit<Q> named(String name, Class<Q> kind) {
        ShopUnit<?> unit = named(name);
        if (unit.kind() != (Class<?>) Objects.requireNonNull(kind, "kind")) {
            throw Refusal.of("unit", "kind", "be of " + UnitWords.kindInWords(kind), unit);
        }
        return sameKind(unit, kind);
    }

    /** {@return the kind of quantity this unit measures; the JSR 385 interface, such as {@code Length.class}} */
    public Class<Q> kind() {
        return kind;
    }

    /** {@return the kind in words with its article, for sentences: {@code a length}; such as {@code an angle}} */
    public String kindInWords() {
        return kindInWords;
    }

    /**
     * {@return a value of this unit in the library unit of its kind; the same in the library unit} Exact: correctly
     * rounded, but for temperature scales, whose zero is taken off in a rounding of its own.
     *
     * @param value in this unit
     */
    public double toLibrary(double value) {
        return factor.toLibrary(value);
    }

    /**
     * {@return a house value in this unit, rounded once; the same in this unit} Exact to half a unit in the last place,
     * or next to it.
     *
     * @param libraryValue in the library unit of this kind
     */
    public double fromLibrary(double libraryValue) {
        return factor.fromLibrary(libraryValue);
    }

    /**
     * {@return whether zero of this unit lies elsewhere than zero of the library unit, as in degrees Fahrenheit; true for
     * such a temperature scale}
     */
    public boolean hasOffset() {
        return factor.hasOffset();
    }

    /**
     * {@return the unit that differences of this unit are read in, such as uncertainties: a difference of temperatures
     * has no zero elsewhere, so degrees Fahrenheit and kelvins give way to degrees Celsius; and a fraction of an inch
     * gives way to thou; this unit, or the library unit of its kind where {@link #hasOffset}, or thou for {@link
     * #INCH_FRACTION}}
     */
    public ShopUnit<Q> forDifferences() {
        if ((ShopUnit<?>) this == INCH_FRACTION) {
            return sameKind(THOU, kind);
        }
        return hasOffset() ? libraryValue() : this;
    }

    /**
     * {@return the unit for numbers that stand side by side, such as the ends of an interval, where fractions would be
     * hard to compare: for {@link #INCH_FRACTION} thou while they are under a tenth of an inch and decimal inches from
     * there on, for any other unit itself; the unit to say them in}
     *
     * @param largest the largest of them in the library unit
     */
    public ShopUnit<Q> sideBySide(double largest) {
        if ((ShopUnit<?>) this != INCH_FRACTION) {
            return this;
        }
        return sameKind(Math.abs(largest) < LengthStyle.SMALL_MM ? THOU : INCH, kind);
    }

    /**
     * {@return the code of the Unified Code for Units of Measure (UCUM), case sensitive, such as {@code [in_i]}; {@code
     * 1} for the number one}
     */
    public String ucum() {
        return UcumCodes.of(this);
    }

    Factor factor() {
        return factor;
    }

    /** Whether it measures the same kind; asked here, as the JVM may not inline a method that gives a {@code Class}. */
    boolean isLike(ShopUnit<?> other) {
        return kind == (Class<?>) other.kind;
    }

    boolean isOfTemperature() {
        return kind == (Class<?>) Temperature.class;
    }

    /** {@return the JSR 385 unit this one stands for, made by Indriya on first use} */
    public Unit<Q> jsr385() {
        return jsr385.get();
    }

    /** {@return the library unit of this unit's kind; this unit where it is the library unit itself} */
    ShopUnit<Q> libraryValue() {
        if (factor == Factor.IDENTITY) {
            return this;
        }
        for (ShopUnit<?> candidate : HOUSE) {
            if (candidate.kind == (Class<?>) kind) {
                return sameKind(candidate, kind);
            }
        }
        throw new AssertionError(symbol + " has no house unit");
    }

    /**
     * {@return an amount in this unit}
     *
     * @param value in this unit, finite
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public Amount<Q> of(double value) {
        return Amount.of(value, this);
    }

    @SuppressWarnings("unchecked") // the kinds are the same interface, so the parameter is too
    static <Q extends Quantity<Q>> ShopUnit<Q> sameKind(ShopUnit<?> unit, Class<Q> kind) {
        if (unit.kind != Objects.requireNonNull(kind, "kind")) {
            throw Refusal.because("unit", "kind", unit.kindInWords + " is no " + kind.getSimpleName());
        }
        return (ShopUnit<Q>) unit;
    }

    /** Returns the symbol, or {@code 1} for the number one. */
    @Override
    public String toString() {
        return symbol.isEmpty() ? "1" : symbol;
    }
}
