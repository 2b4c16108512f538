package org.neckgeom.units;

import java.math.BigDecimal;
import javax.measure.MetricPrefix;
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
import tech.units.indriya.unit.Units;

/**
 * The JSR 385 units behind {@link ShopUnit}, made by Indriya. Apart from it, so that a program that never meets a
 * foreign quantity never loads Indriya.
 *
 * <p>The units are derived by the JSR 385 methods alone. They have no symbols of their own (that would change the label
 * tables that all users of Indriya in a JVM share); amounts print the symbols of {@link ShopUnit}.
 */
final class Jsr385 {

    private static final BigDecimal PI = new BigDecimal("3.14159265358979323846264338327950288419716939937510");

    static final Unit<Length> METRE = Units.METRE;
    static final Unit<Length> MILLIMETRE = MetricPrefix.MILLI(METRE);
    static final Unit<Length> CENTIMETRE = MetricPrefix.CENTI(METRE);
    static final Unit<Length> INCH = METRE.multiply(254).divide(10_000);
    static final Unit<Length> THOU = METRE.multiply(254).divide(10_000_000);
    static final Unit<Length> FOOT = METRE.multiply(3048).divide(10_000);

    static final Unit<Angle> RADIAN = Units.RADIAN;
    static final Unit<Angle> DEGREE = RADIAN.multiply(PI).divide(180);

    static final Unit<Force> NEWTON = Units.NEWTON;
    static final Unit<Force> KILOGRAM_FORCE = NEWTON.multiply(980_665).divide(100_000);
    static final Unit<Force> POUND_FORCE = NEWTON.multiply(44_482_216_152_605L).divide(10_000_000_000_000L);
    static final Unit<Force> OUNCE_FORCE = POUND_FORCE.divide(16);

    static final Unit<Pressure> MEGAPASCAL = MetricPrefix.MEGA(Units.PASCAL);
    static final Unit<Pressure> GIGAPASCAL = MetricPrefix.GIGA(Units.PASCAL);
    // 4.4482216152605 N on 0.00064516 m2
    static final Unit<Pressure> PSI = Units.PASCAL.multiply(44_482_216_152_605L).divide(6_451_600_000L);

    static final Unit<Dimensionless> ONE = Units.PERCENT.getSystemUnit();
    static final Unit<Dimensionless> PERCENT = Units.PERCENT;

    static final Unit<Temperature> KELVIN = Units.KELVIN;
    static final Unit<Temperature> CELSIUS = Units.CELSIUS;
    static final Unit<Temperature> FAHRENHEIT = KELVIN.multiply(5).divide(9).shift(new BigDecimal("459.67"));

    static final Unit<Frequency> HERTZ = Units.HERTZ;
    static final Unit<Frequency> RPM = HERTZ.divide(60);

    static final Unit<Speed> METRE_PER_SECOND = Units.METRE_PER_SECOND;
    static final Unit<Speed> MM_PER_SECOND = MILLIMETRE.divide(Units.SECOND).asType(Speed.class);
    static final Unit<Speed> MM_PER_MINUTE = MILLIMETRE.divide(Units.MINUTE).asType(Speed.class);
    static final Unit<Speed> INCH_PER_MINUTE = INCH.divide(Units.MINUTE).asType(Speed.class);

    static final Unit<Power> WATT = Units.WATT;

    static final Unit<Torque> NEWTON_METRE = newtonTimes(METRE);
    static final Unit<Torque> NEWTON_MM = newtonTimes(MILLIMETRE);
    static final Unit<MassDensity> KG_PER_M3 = as(Units.KILOGRAM.divide(Units.CUBIC_METRE));
    static final Unit<LinearDensity> GRAM_PER_METRE = as(Units.GRAM.divide(METRE));
    static final Unit<LinearDensity> POUND_PER_INCH =
            as(Units.KILOGRAM.multiply(45_359_237).divide(100_000_000).divide(INCH));

    private Jsr385() {}

    private static Unit<Torque> newtonTimes(Unit<Length> arm) {
        return as(NEWTON.multiply(arm));
    }

    @SuppressWarnings("unchecked") // JSR 385 has no interface for these kinds, so asType would refuse them
    private static <Q extends Quantity<Q>> Unit<Q> as(Unit<?> unit) {
        return (Unit<Q>) unit;
    }
}
