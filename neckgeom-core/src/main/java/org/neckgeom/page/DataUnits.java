package org.neckgeom.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.neckgeom.fault.Refusal;
import org.neckgeom.units.LinearDensity;
import org.neckgeom.units.MassDensity;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.Torque;

/**
 * The units in which a quantity of one kind may stand in JSON, its house unit first.
 *
 * @param <Q> the kind
 * @param units the units a value may be in, one or more
 * @param printed the units it may be printed in, those and others
 */
record DataUnits<Q extends Quantity<Q>>(List<ShopUnit<Q>> units, List<ShopUnit<Q>> printed) {

    static final DataUnits<Length> LENGTH = alsoPrintedIn(
            ShopUnit.INCH_FRACTION,
            ShopUnit.MILLIMETRE,
            ShopUnit.INCH,
            ShopUnit.THOU,
            ShopUnit.FOOT,
            ShopUnit.CENTIMETRE,
            ShopUnit.METRE);
    static final DataUnits<Angle> ANGLE = of(ShopUnit.RADIAN, ShopUnit.DEGREE);
    static final DataUnits<Force> FORCE = of(ShopUnit.NEWTON, ShopUnit.POUND_FORCE, ShopUnit.KILOGRAM_FORCE);
    static final DataUnits<Frequency> FREQUENCY = of(ShopUnit.HERTZ, ShopUnit.RPM);
    static final DataUnits<Speed> SPEED =
            of(ShopUnit.MM_PER_SECOND, ShopUnit.MM_PER_MINUTE, ShopUnit.INCH_PER_MINUTE, ShopUnit.METRE_PER_SECOND);
    static final DataUnits<Dimensionless> RATIO = of(ShopUnit.ONE, ShopUnit.PERCENT);
    static final DataUnits<Temperature> TEMPERATURE = of(ShopUnit.CELSIUS, ShopUnit.FAHRENHEIT, ShopUnit.KELVIN);
    static final DataUnits<LinearDensity> MASS_PER_LENGTH = of(ShopUnit.GRAM_PER_METRE, ShopUnit.POUND_PER_INCH);
    static final DataUnits<Pressure> PRESSURE = of(ShopUnit.MEGAPASCAL, ShopUnit.GIGAPASCAL, ShopUnit.PSI);
    static final DataUnits<Torque> MOMENT = of(ShopUnit.NEWTON_MM, ShopUnit.NEWTON_METRE);
    static final DataUnits<MassDensity> DENSITY = of(ShopUnit.KG_PER_M3);

    /** Every kind there is. */
    static final List<DataUnits<?>> ALL = List.of(
            LENGTH, ANGLE, FORCE, FREQUENCY, SPEED, RATIO, TEMPERATURE, MASS_PER_LENGTH, PRESSURE, MOMENT, DENSITY);

    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    private static <Q extends Quantity<Q>> DataUnits<Q> of(ShopUnit<Q>... units) {
        return new DataUnits<>(List.of(units), List.of(units));
    }

    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    private static <Q extends Quantity<Q>> DataUnits<Q> alsoPrintedIn(ShopUnit<Q> other, ShopUnit<Q>... units) {
        return new DataUnits<>(
                List.of(units),
                Stream.concat(Stream.of(units), Stream.of(other)).toList());
    }

    /** A unit as it is written: its symbol, {@code 1} for the number one; inches printed in fractions have a name apart. */
    static String name(ShopUnit<?> unit) {
        return unit == (ShopUnit<?>) ShopUnit.INCH_FRACTION ? "fractional in" : unit.toString();
    }

    /** The kind that a unit is of. */
    static DataUnits<?> ofUnit(ShopUnit<?> unit) {
        return ALL.stream()
                .filter(kind -> kind.printed.contains(unit))
                .findFirst()
                .orElseThrow(() -> Refusal.of(
                        "JSON",
                        "kind",
                        "have lengths, angles, forces, frequencies, speeds, ratios, temperatures, moments, pressures or densities",
                        "to have " + unit));
    }

    /** The units of a kind of quantity. */
    @SuppressWarnings("unchecked") // the kind of its units is the one asked for
    static <Q extends Quantity<Q>> DataUnits<Q> ofKind(Class<Q> kind) {
        return (DataUnits<Q>) ALL.stream()
                .filter(units -> units.house().kind() == (Class<?>) kind)
                .findFirst()
                .orElseThrow(
                        () -> Refusal.of("kind", "unknown", "be one that JSON is written of", kind.getSimpleName()));
    }

    ShopUnit<Q> house() {
        return units.get(0);
    }

    boolean has(String symbol) {
        return named(units, symbol).isPresent();
    }

    /** The one of some units that is written so. */
    Optional<ShopUnit<Q>> named(List<ShopUnit<Q>> some, String symbol) {
        return some.stream().filter(unit -> name(unit).equals(symbol)).findFirst();
    }

    /** Such as {@code mm, in, thou or ft}. */
    static String symbols(List<? extends ShopUnit<?>> some) {
        return phrase(some.stream().map(DataUnits::name));
    }

    static String phrase(Stream<String> words) {
        List<String> all = words.toList();
        int last = all.size() - 1;
        return last == 0
                ? all.get(0)
                : all.stream().limit(last).collect(Collectors.joining(", ")) + " or " + all.get(last);
    }
}
