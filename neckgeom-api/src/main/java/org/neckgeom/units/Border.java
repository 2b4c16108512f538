package org.neckgeom.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Objects;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import tech.units.indriya.function.RationalNumber;

/**
 * Foreign quantities coming in: finds the exact factor of any provider's unit once, and remembers it.
 *
 * <p>A unit is looked up by identity first, then by equals, in a short list that only grows to {@value #MOST_ENTRIES}
 * entries; units past that are converted each time. The list is a cache of constants: which thread fills it, and when,
 * cannot be seen in any result.
 */
final class Border {

    private static final int MOST_ENTRIES = 64;

    /**
     * Converted instead of 1, so that a rational factor comes out as a whole number, and exact. Small enough for its
     * multiples to stay under 2^63, past which Indriya 2.2.4 wraps around in composed conversions.
     */
    private static final BigDecimal MANY = BigDecimal.TEN.pow(12).multiply(BigDecimal.valueOf(3 * 3 * 3 * 7 * 11 * 13));

    private static final MathContext DIGITS = new MathContext(50);
    private static final BigDecimal STRAIGHT = new BigDecimal("1e-12");

    private static volatile Entry[] known = new Entry[0];

    private record Entry(
            Unit<?> unit,
            ShopUnit<?> house,
            Factor factor,
            @Nullable ShopUnit<?> same) {}

    private Border() {}

    /** House value of a foreign quantity that must be of the given house unit's kind. */
    static double house(Quantity<?> quantity, ShopUnit<?> house, String name) {
        double number = number(quantity, name);
        Entry entry = entry(unit(quantity, name), house);
        if (entry == null) {
            throw Refusal.of(name, "kind", "be " + house.kindInWords(), inWords(quantity));
        }
        requireReading(quantity, entry, name);
        return entry.factor.toHouse(number);
    }

    static <Q extends Quantity<Q>> Amount<Q> amount(Quantity<Q> quantity, String name) {
        double number = number(quantity, name);
        Entry entry = entry(unit(quantity, name));
        if (entry == null) {
            throw Refusal.of(
                    name, "kind", "be a quantity of a kind known here (length, angle, force, ...)", inWords(quantity));
        }
        requireReading(quantity, entry, name);
        HouseUnits.finite(number, name, symbol(entry));
        @SuppressWarnings("unchecked") // the unit is convertible, so the kind is Q
        ShopUnit<Q> target = (ShopUnit<Q>) (entry.same == null ? entry.house : entry.same);
        return entry.same == null ? Amount.ofHouse(entry.factor.toHouse(number), target) : Amount.of(number, target);
    }

    /** A foreign quantity as text, in the shop's symbol where it has one. */
    static String inWords(Quantity<?> quantity) {
        return Numbers.plain(quantity.getValue().doubleValue()) + " "
                + symbol(quantity, quantity.getUnit().toString());
    }

    /** The shop's symbol for the unit of a foreign quantity, or the other text where the shop has no such unit. */
    static String symbol(Quantity<?> quantity, String otherwise) {
        Entry entry = entry(quantity.getUnit());
        return entry == null || entry.same == null ? otherwise : entry.same.symbol();
    }

    private static String symbol(Entry entry) {
        return entry.same == null ? entry.unit.toString() : entry.same.symbol();
    }

    /** A difference of 5 K is no thermometer's reading of 5 K, but -268.15 degrees Celsius is what it would become. */
    private static void requireReading(Quantity<?> quantity, Entry entry, String name) {
        boolean difference = quantity.getScale() == Quantity.Scale.RELATIVE;
        if (difference && entry.house.kind() == (Class<?>) Temperature.class) {
            throw Refusal.of(name, "kind", "be a temperature, not a difference of temperatures", inWords(quantity));
        }
    }

    /** A value of a shop unit in a unit of any provider, or NaN where that is no plain factor. */
    static <Q extends Quantity<Q>> double valueIn(double value, ShopUnit<Q> unit, Unit<Q> other) {
        Entry entry = entry(other, unit.house());
        return entry == null ? Double.NaN : unit.factor().valueIn(value, entry.factor);
    }

    /** The shop unit that equals a unit of any provider, or null. */
    static <Q extends Quantity<Q>> @Nullable ShopUnit<Q> shopUnit(Unit<Q> unit, Class<Q> kind) {
        for (ShopUnit<?> house : ShopUnit.HOUSE) {
            if (house.kind() == kind) {
                Entry entry = entry(unit, house);
                return entry == null || entry.same == null ? null : ShopUnit.sameKind(entry.same, kind);
            }
        }
        return null;
    }

    /** The entry of whichever kind the unit is of, or null; a unit converts into the house unit of one kind at most. */
    private static @Nullable Entry entry(Unit<?> unit) {
        for (Entry entry : known) {
            if (entry.unit.equals(unit)) {
                return entry;
            }
        }
        for (ShopUnit<?> house : ShopUnit.HOUSE) {
            Entry entry = entry(unit, house);
            if (entry != null) {
                return entry;
            }
        }
        return null;
    }

    @SuppressWarnings("ReferenceEquality") // the same unit is the usual case, and found without asking its equals
    private static @Nullable Entry entry(Unit<?> unit, ShopUnit<?> house) {
        Entry[] list = known;
        for (Entry entry : list) {
            if (entry.unit == unit && entry.house == house) {
                return entry;
            }
        }
        for (Entry entry : list) {
            if (entry.house == house && entry.unit.equals(unit)) {
                return entry;
            }
        }
        Entry made = make(unit, house);
        if (made != null) {
            remember(made);
        }
        return made;
    }

    private static synchronized void remember(Entry entry) {
        if (known.length < MOST_ENTRIES) {
            Entry[] longer = Arrays.copyOf(known, known.length + 1);
            longer[known.length] = entry;
            known = longer;
        }
    }

    private static @Nullable Entry make(Unit<?> unit, ShopUnit<?> house) {
        Unit<?> target = house.jsr385();
        if (!unit.isCompatible(target) || isPlainRatio(unit) != isPlainRatio(target)) {
            return null;
        }
        UnitConverter converter;
        try {
            converter = unit.getConverterToAny(target);
        } catch (javax.measure.IncommensurableException | javax.measure.UnconvertibleException e) {
            return null;
        }
        if (converter.isIdentity()) {
            return new Entry(unit, house, Factor.IDENTITY, house);
        }
        Factor factor = factor(converter);
        return factor == null ? null : new Entry(unit, house, factor, sameUnit(unit, house));
    }

    /** The conversion as a zero and a factor, or null where it is no straight line, as for decibels. */
    private static @Nullable Factor factor(UnitConverter converter) {
        try {
            BigDecimal zero = exact(converter.inverse().convert((Number) 0));
            BigDecimal once = exact(converter.convert((Number) zero.add(MANY)));
            BigDecimal twice = exact(converter.convert((Number) zero.add(MANY).add(MANY)));
            BigDecimal bend = twice.subtract(once).subtract(once).abs();
            if (once.signum() == 0 || bend.compareTo(once.abs().multiply(STRAIGHT)) > 0) {
                return null;
            }
            return Factor.from(zero, once.divide(MANY, DIGITS));
        } catch (ArithmeticException | NumberFormatException e) {
            return null; // a logarithm of 0, or another conversion that has no such points
        }
    }

    private static @Nullable ShopUnit<?> sameUnit(Unit<?> unit, ShopUnit<?> house) {
        for (ShopUnit<?> candidate : ShopUnit.ALL) {
            if (candidate.kind() == (Class<?>) house.kind()
                    && candidate.jsr385().equals(unit)) {
                return candidate;
            }
        }
        return null;
    }

    /** JSR 385 lets an angle and a ratio convert into each other; a maker does not. */
    private static boolean isPlainRatio(Unit<?> unit) {
        return unit.getSystemUnit().equals(ShopUnit.ONE.jsr385());
    }

    private static BigDecimal exact(Number number) {
        if (number instanceof BigDecimal decimal) {
            return decimal;
        }
        if (number instanceof RationalNumber ratio) {
            return new BigDecimal(ratio.getDividend()).divide(new BigDecimal(ratio.getDivisor()), DIGITS);
        }
        boolean whole = number instanceof Integer || number instanceof Long || number instanceof BigInteger;
        return whole ? new BigDecimal(number.toString()) : BigDecimal.valueOf(number.doubleValue());
    }

    private static double number(Quantity<?> quantity, String name) {
        Number value = asked(quantity::getValue, name);
        return Objects.requireNonNull(value, () -> name + " without a value").doubleValue();
    }

    private static Unit<?> unit(Quantity<?> quantity, String name) {
        return Objects.requireNonNull(asked(quantity::getUnit, name), () -> name + " without a unit");
    }

    /** Refuses a quantity that has no value or no unit, or cannot say them. */
    static Number readable(Quantity<?> quantity, String name) {
        unit(Objects.requireNonNull(quantity, name), name);
        number(quantity, name);
        return quantity.getValue();
    }

    private static <T> T asked(Supplier<T> provider, String name) {
        try {
            return provider.get();
        } catch (RuntimeException e) {
            throw Refusal.of(name, "readable", "be a quantity that can be read", "its provider threw", e)
                    .causedBy(e);
        }
    }
}
