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
import org.neckgeom.text.Words;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;

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
            ShopUnit<?> libraryValue,
            Factor factor,
            @Nullable ShopUnit<?> same) {}

    private Border() {}

    /** What a provider answered, each question asked once: it may answer otherwise the next time, or not at all. */
    private record Given(Number value, double number, Unit<?> unit, boolean isDifference) {

        static Given of(Quantity<?> quantity, String name) {
            Number value = Objects.requireNonNull(asked(quantity::getValue, name), () -> name + " without a value");
            Unit<?> unit = Objects.requireNonNull(asked(quantity::getUnit, name), () -> name + " without a unit");
            Quantity.Scale scale = asked(quantity::getScale, name);
            return new Given(value, asked(value::doubleValue, name), unit, scale == Quantity.Scale.RELATIVE);
        }

        String inWords() {
            return Numbers.plain(number) + " " + Words.shown(symbol(unit, String.valueOf(unit)));
        }
    }

    /** Library value of a foreign quantity that must be of the given library unit's kind. */
    static double libraryValue(Quantity<?> quantity, ShopUnit<?> libraryValue, String name) {
        Given given = Given.of(quantity, name);
        Entry entry = asked(() -> entry(given.unit, libraryValue), name);
        if (entry == null) {
            throw Refusal.of(name, "kind", "be " + libraryValue.kindInWords(), asked(given::inWords, name));
        }
        requireReading(given, entry, name);
        return entry.factor.toLibrary(given.number);
    }

    static <Q extends Quantity<Q>> Amount<Q> amount(Quantity<Q> quantity, String name) {
        Given given = Given.of(quantity, name);
        Entry entry = asked(() -> entry(given.unit), name);
        if (entry == null) {
            throw Refusal.of(
                    name,
                    "kind",
                    "be a quantity of a kind known here (length, angle, force, ...)",
                    asked(given::inWords, name));
        }
        requireReading(given, entry, name);
        double number = given.number;
        LibraryUnits.finite(number, name, asked(() -> symbol(entry), name));
        @SuppressWarnings("unchecked") // the unit is convertible, so the kind is Q
        ShopUnit<Q> target = (ShopUnit<Q>) (entry.same == null ? entry.libraryValue : entry.same);
        return entry.same == null
                ? Amount.ofLibrary(entry.factor.toLibrary(number), target)
                : Amount.of(number, target);
    }

    /** A foreign quantity as text, in the shop's symbol where it has one. */
    static String inWords(Quantity<?> quantity) {
        try {
            return Given.of(quantity, "quantity").inWords();
        } catch (RuntimeException changed) {
            // In a message that is being written, which must not be lost for it.
            return "a quantity that can no longer be read";
        }
    }

    /** The shop's symbol for the unit of a foreign quantity, or the other text where the shop has no such unit. */
    static String symbol(Quantity<?> quantity, String otherwise) {
        try {
            return symbol(quantity.getUnit(), otherwise);
        } catch (RuntimeException changed) {
            return otherwise;
        }
    }

    private static String symbol(Unit<?> unit, String otherwise) {
        Entry entry = entry(unit);
        return entry == null || entry.same == null ? otherwise : entry.same.symbol();
    }

    private static String symbol(Entry entry) {
        return entry.same == null ? Words.shown(String.valueOf(entry.unit)) : entry.same.symbol();
    }

    /** A difference of 5 K is no thermometer's reading of 5 K, but -268.15 degrees Celsius is what it would become. */
    private static void requireReading(Given given, Entry entry, String name) {
        if (given.isDifference && entry.libraryValue.kind() == (Class<?>) Temperature.class) {
            throw Refusal.of(
                    name, "kind", "be a temperature, not a difference of temperatures", asked(given::inWords, name));
        }
    }

    /** A value of a shop unit in a unit of any provider, or NaN where that is no plain factor. */
    static <Q extends Quantity<Q>> double valueIn(double value, ShopUnit<Q> unit, Unit<Q> other) {
        Entry entry = entry(other, unit.libraryValue());
        return entry == null ? Double.NaN : unit.factor().valueIn(value, entry.factor);
    }

    /** The shop unit that equals a unit of any provider, or null. */
    static <Q extends Quantity<Q>> @Nullable ShopUnit<Q> shopUnit(Unit<Q> unit, Class<Q> kind) {
        for (ShopUnit<?> libraryValue : ShopUnit.HOUSE) {
            if (libraryValue.kind() == kind) {
                Entry entry = entry(unit, libraryValue);
                return entry == null || entry.same == null ? null : ShopUnit.sameKind(entry.same, kind);
            }
        }
        return null;
    }

    /** The entry of whichever kind the unit is of, or null; a unit converts into the library unit of one kind at most. */
    private static @Nullable Entry entry(Unit<?> unit) {
        for (Entry entry : known) {
            if (isSame(entry.unit, unit)) {
                return entry;
            }
        }
        for (ShopUnit<?> libraryValue : ShopUnit.HOUSE) {
            Entry entry = entry(unit, libraryValue);
            if (entry != null) {
                return entry;
            }
        }
        return null;
    }

    @SuppressWarnings("ReferenceEquality") // the same unit is the usual case, and found without asking its equals
    private static @Nullable Entry entry(Unit<?> unit, ShopUnit<?> libraryValue) {
        Entry[] list = known;
        for (Entry entry : list) {
            if (entry.unit == unit && entry.libraryValue == libraryValue) {
                return entry;
            }
        }
        for (Entry entry : list) {
            if (entry.libraryValue == libraryValue && isSame(entry.unit, unit)) {
                return entry;
            }
        }
        Entry made = make(unit, libraryValue);
        if (made != null) {
            remember(made);
        }
        return made;
    }

    /** Both must agree: a provider's unit that calls itself equal to all must not become what others are read as. */
    private static boolean isSame(Unit<?> known, Unit<?> unit) {
        return known.equals(unit) && unit.equals(known);
    }

    private static synchronized void remember(Entry entry) {
        if (known.length < MOST_ENTRIES) {
            Entry[] longer = Arrays.copyOf(known, known.length + 1);
            longer[known.length] = entry;
            known = longer;
        }
    }

    private static @Nullable Entry make(Unit<?> unit, ShopUnit<?> libraryValue) {
        Unit<?> target = libraryValue.jsr385();
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
            return new Entry(unit, libraryValue, Factor.IDENTITY, libraryValue);
        }
        Factor factor = factor(converter);
        return factor == null ? null : new Entry(unit, libraryValue, factor, sameUnit(unit, libraryValue));
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

    private static @Nullable ShopUnit<?> sameUnit(Unit<?> unit, ShopUnit<?> libraryValue) {
        for (ShopUnit<?> candidate : ShopUnit.ALL) {
            if (candidate.kind() == (Class<?>) libraryValue.kind()
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

    /** A copy of a quantity that has a value and a unit, which answers the same whenever it is asked. */
    static Quantity<?> readable(Quantity<?> quantity, String name) {
        if (Objects.requireNonNull(quantity, name) instanceof Amount<?> own) {
            return own;
        }
        Given given = Given.of(quantity, name);
        Number value = Double.isFinite(given.number) ? exact(given.value) : (Number) given.number;
        Quantity.Scale scale = given.isDifference ? Quantity.Scale.RELATIVE : Quantity.Scale.ABSOLUTE;
        return asked(() -> Quantities.getQuantity(value, given.unit, scale), name);
    }

    static <T extends @Nullable Object> T asked(Supplier<T> provider, String name) {
        try {
            return provider.get();
        } catch (ArithmeticException noAnswer) {
            throw noAnswer;
        } catch (RuntimeException e) {
            throw Refusal.of(
                            name,
                            "readable",
                            "be a quantity that can be read",
                            "its provider threw",
                            Words.shown(String.valueOf(e)))
                    .causedBy(e);
        }
    }
}
