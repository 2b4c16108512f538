package org.neckgeom.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.measure.Quantity;
import org.neckgeom.form.Json;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * A map of named data on its way to JSON, written in the order told. A quantity is a map of value and unit, written so that
 * it reads back as the same number in its house unit and prints in the same unit.
 */
final class DataMap {

    static final String VALUE = "value";
    static final String UNIT = "unit";

    /** Only where the unit it is printed in is not the one that gives the number back, or is inches in fractions. */
    static final String PRINTED_IN = "printedIn";

    private final Map<String, Object> map = new LinkedHashMap<>();

    private DataMap() {}

    static DataMap empty() {
        return new DataMap();
    }

    DataMap put(String key, Object value) {
        map.put(key, value instanceof DataMap inner ? inner.map : value);
        return this;
    }

    DataMap putAll(String key, List<DataMap> values) {
        map.put(key, values.stream().map(value -> value.map).toList());
        return this;
    }

    <T> DataMap putAll(String key, List<T> values, Function<T, DataMap> one) {
        return putAll(key, values.stream().map(one).toList());
    }

    /** A noun by its own table of keys. */
    <T> DataMap noun(String key, Table<T> table, T noun) {
        return put(key, table.write(noun, Spelling.JSON));
    }

    /** The keys of a noun's own table at this level. */
    <T> DataMap inline(Table<T> table, T noun) {
        ((Map<?, ?>) table.write(noun, Spelling.JSON).plain()).forEach((key, value) -> map.put((String) key, value));
        return this;
    }

    /** A number to twelve digits where that gives it back, and else in all its digits. */
    DataMap number(String key, double value) {
        return put(key, Json.number(value));
    }

    DataMap length(String key, double mm, LengthStyle style) {
        return put(key, quantity(style.amount(mm)));
    }

    /** An answer, to twelve digits in the unit of a style. */
    DataMap answer(String key, double mm, LengthStyle style) {
        return answer(key, style.inTables().amount(mm));
    }

    DataMap answer(String key, Amount<?> amount) {
        return put(key, written(Numbers.plain(amount.value()), amount.unit(), amount.unit()));
    }

    <Q extends Quantity<Q>> DataMap quantity(String key, Amount<Q> amount) {
        return put(key, quantity(amount));
    }

    static <Q extends Quantity<Q>> DataMap quantity(Amount<Q> amount) {
        return quantity(amount.house(), amount.unit());
    }

    /**
     * In the unit it is printed in where that gives the number back, and else in the house unit, which always does; in the
     * house unit as well where only that says it in few figures.
     */
    static <Q extends Quantity<Q>> DataMap quantity(double house, ShopUnit<Q> unit) {
        String plain = Numbers.plain(unit.fromHouse(house));
        if (isExact(plain, house, unit)) {
            return written(plain, unit, unit);
        }
        ShopUnit<?> base = DataUnits.ofUnit(unit).house();
        String inHouse = Json.number(house).text();
        String inUnit = shortest(house, unit);
        boolean isFew = base != unit && Numbers.plain(house).equals(inHouse);
        return isFew || !isExact(inUnit, house, unit) ? written(inHouse, base, unit) : written(inUnit, unit, unit);
    }

    private static DataMap written(String value, ShopUnit<?> in, ShopUnit<?> printedIn) {
        ShopUnit<?> unit = in == (ShopUnit<?>) ShopUnit.INCH_FRACTION ? ShopUnit.INCH : in;
        DataMap data = empty().put(VALUE, new Json.Figure(value)).put(UNIT, DataUnits.name(unit));
        return unit == printedIn ? data : data.put(PRINTED_IN, DataUnits.name(printedIn));
    }

    /** The digits of a unit that give the number back; a last digit may be lost on the way, and a neighbour has it. */
    private static String shortest(double house, ShopUnit<?> unit) {
        double value = unit.fromHouse(house);
        String text = Double.toString(value);
        double[] neighbours = {Math.nextUp(value), Math.nextDown(value)};
        for (int i = 0; i < neighbours.length && !isExact(text, house, unit); i++) {
            text = Double.toString(neighbours[i]);
        }
        return text;
    }

    private static boolean isExact(String text, double house, ShopUnit<?> unit) {
        return unit.toHouse(Double.parseDouble(text)) == house;
    }

    String toJson() {
        return Json.of(map);
    }
}
