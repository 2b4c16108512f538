package org.neckgeom.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.neckgeom.text.Numbers;

/**
 * Foreign quantities coming in: finds the exact factor of any provider's unit once, and remembers it.
 *
 * <p>A unit is looked up by identity first, then by equals, in a short list that only grows to {@value #MOST_ENTRIES}
 * entries; units past that are converted each time. The list is a cache of constants: which thread fills it, and when,
 * cannot be seen in any result.
 */
final class Border {

    private static final int MOST_ENTRIES = 64;

    /** Converted instead of 1, so that a rational factor comes out as a whole number, and exact. */
    private static final BigInteger MANY = BigInteger.TEN.pow(24).multiply(BigInteger.valueOf(3 * 3 * 3 * 7 * 11 * 13));

    private static final MathContext DIGITS = new MathContext(50);

    private static volatile Entry[] known = new Entry[0];

    private record Entry(Unit<?> unit, ShopUnit<?> house, Factor factor, ShopUnit<?> same) {}

    private Border() {}

    /** House value of a foreign quantity that must be of the given house unit's kind. */
    static double house(Quantity<?> quantity, ShopUnit<?> house, String name) {
        Entry entry = entry(quantity.getUnit(), house);
        if (entry == null) {
            throw new IllegalArgumentException(
                    name + " must be " + house.kindInWords() + ", but was " + inWords(quantity));
        }
        return entry.factor.toHouse(number(quantity));
    }

    static <Q extends Quantity<Q>> Amount<Q> amount(Quantity<Q> quantity, String name) {
        Unit<?> unit = quantity.getUnit();
        for (ShopUnit<?> house : ShopUnit.HOUSE) {
            Entry entry = entry(unit, house);
            if (entry != null) {
                @SuppressWarnings("unchecked") // the unit is convertible, so the kind is Q
                ShopUnit<Q> target = (ShopUnit<Q>) (entry.same == null ? house : entry.same);
                double number = number(quantity);
                return entry.same == null
                        ? Amount.ofHouse(entry.factor.toHouse(number), target)
                        : Amount.of(number, target);
            }
        }
        throw new IllegalArgumentException(name
                + " must be a quantity of a kind known here (length, angle, force, ...), but was " + inWords(quantity));
    }

    /** The shop unit that equals a unit of any provider, or null. */
    static <Q extends Quantity<Q>> ShopUnit<Q> shopUnit(Unit<Q> unit, Class<Q> kind) {
        for (ShopUnit<?> house : ShopUnit.HOUSE) {
            if (house.kind() == kind) {
                Entry entry = entry(unit, house);
                return entry == null || entry.same == null ? null : ShopUnit.sameKind(entry.same, kind);
            }
        }
        return null;
    }

    private static Entry entry(Unit<?> unit, ShopUnit<?> house) {
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

    private static Entry make(Unit<?> unit, ShopUnit<?> house) {
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
        BigDecimal zero = exact(converter.convert((Number) 0));
        BigDecimal factor =
                exact(converter.convert((Number) MANY)).subtract(zero).divide(new BigDecimal(MANY), DIGITS);
        if (factor.signum() == 0) {
            return null;
        }
        return new Entry(unit, house, Factor.affine(factor, zero), sameUnit(unit, house));
    }

    private static ShopUnit<?> sameUnit(Unit<?> unit, ShopUnit<?> house) {
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
        boolean whole = number instanceof Integer || number instanceof Long || number instanceof BigInteger;
        return whole ? new BigDecimal(number.toString()) : BigDecimal.valueOf(number.doubleValue());
    }

    private static double number(Quantity<?> quantity) {
        return quantity.getValue().doubleValue();
    }

    private static String inWords(Quantity<?> quantity) {
        return Numbers.plain(number(quantity)) + " " + quantity.getUnit();
    }
}
