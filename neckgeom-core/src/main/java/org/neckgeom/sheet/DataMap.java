package org.neckgeom.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * A map of named data on its way to or from JSON: written in the order told; read with a sentence that names what is
 * missing or of the wrong kind. A quantity is a map of value and unit.
 */
final class DataMap {

    private static final String VALUE = "value";
    private static final String UNIT = "unit";

    private final String name;
    private final Map<String, Object> map;

    private DataMap(String name, Map<String, Object> map) {
        this.name = name;
        this.map = map;
    }

    static DataMap empty() {
        return new DataMap("", new LinkedHashMap<>());
    }

    /** Reads what should be a map. */
    static DataMap of(Object value, String name) {
        if (!(value instanceof Map<?, ?> given)) {
            throw new IllegalArgumentException(name + " must be an object, but was " + value);
        }
        Map<String, Object> map = new LinkedHashMap<>();
        given.forEach((key, part) -> map.put(key.toString(), part));
        return new DataMap(name, map);
    }

    DataMap put(String key, Object value) {
        map.put(key, value instanceof DataMap inner ? inner.map : value);
        return this;
    }

    DataMap putAll(String key, List<DataMap> values) {
        map.put(key, values.stream().map(value -> value.map).toList());
        return this;
    }

    /** A length in a style's unit, or in mm where only that says it in few figures. */
    DataMap length(String key, double mm, LengthStyle style) {
        boolean inMm = !isExact(Numbers.plain(style.unit().fromHouse(mm)), mm, style.unit())
                && isExact(Numbers.plain(mm), mm, ShopUnit.MILLIMETRE);
        return put(key, quantity(mm, inMm ? ShopUnit.MILLIMETRE : style.unit()));
    }

    /** A quantity in the shortest figures of a unit that give back the same number in its house unit. */
    static DataMap quantity(double house, ShopUnit<?> unit) {
        double value = unit.fromHouse(house);
        String text = Numbers.plain(value);
        // A last digit may be lost on the way to the unit and back; a neighbour then gives it back.
        double[] candidates = {value, Math.nextUp(value), Math.nextDown(value)};
        for (int i = 0; i < candidates.length && !isExact(text, house, unit); i++) {
            text = Double.toString(candidates[i]);
        }
        return empty().put(VALUE, new Json.Figure(text)).put(UNIT, unit.symbol());
    }

    private static boolean isExact(String text, double house, ShopUnit<?> unit) {
        return unit.toHouse(Double.parseDouble(text)) == house;
    }

    boolean has(String key) {
        return map.containsKey(key);
    }

    DataMap inner(String key) {
        return of(told(key), path(key));
    }

    List<?> list(String key) {
        if (told(key) instanceof List<?> list) {
            return list;
        }
        throw new IllegalArgumentException(path(key) + " must be a list, but was " + map.get(key));
    }

    String text(String key) {
        if (told(key) instanceof String text) {
            return text;
        }
        throw new IllegalArgumentException(path(key) + " must be a text, but was " + map.get(key));
    }

    double number(String key) {
        if (told(key) instanceof Double number) {
            return number;
        }
        throw new IllegalArgumentException(path(key) + " must be a number, but was " + map.get(key));
    }

    int count(String key) {
        double number = number(key);
        if (number != Math.rint(number) || Math.abs(number) > 1e6) {
            throw new IllegalArgumentException(path(key) + " must be a whole number, but was " + Numbers.plain(number));
        }
        return (int) number;
    }

    Amount<Length> length(String key) {
        DataMap part = inner(key);
        return part.quantityIn(
                part.has(UNIT) && part.text(UNIT).equals(ShopUnit.INCH.symbol()) ? ShopUnit.INCH : ShopUnit.MILLIMETRE);
    }

    <Q extends Quantity<Q>> Amount<Q> quantity(String key, ShopUnit<Q> unit) {
        return inner(key).quantityIn(unit);
    }

    <Q extends Quantity<Q>> Amount<Q> quantityIn(ShopUnit<Q> unit) {
        if (!text(UNIT).equals(unit.symbol())) {
            throw new IllegalArgumentException(
                    path(UNIT) + " must be \"" + unit.symbol() + "\", but was \"" + text(UNIT) + "\"");
        }
        return Amount.of(number(VALUE), unit);
    }

    private Object told(String key) {
        if (!map.containsKey(key)) {
            throw new IllegalArgumentException(path(key) + " must be told, but is missing");
        }
        return map.get(key);
    }

    private String path(String key) {
        return name.isEmpty() ? key : name + "." + key;
    }

    String toJson() {
        return Json.of(map);
    }
}
