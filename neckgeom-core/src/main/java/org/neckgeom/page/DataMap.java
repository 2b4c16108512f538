package org.neckgeom.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.neckgeom.form.Json;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** A map of answers on its way to JSON, written in the order put. */
final class DataMap {

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

    /** An answer, to twelve digits in the unit of a style. */
    DataMap answer(String key, double mm, LengthStyle style) {
        return answer(key, style.inTables().amount(mm));
    }

    DataMap answer(String key, Amount<?> amount) {
        ShopUnit<?> unit = amount.unit();
        return put(
                key,
                empty().put("value", new Json.Figure(Numbers.plain(amount.value())))
                        .put("unit", unit.toString())
                        .put("ucum", unit.ucum()));
    }

    /** What was put, in that order. */
    Map<String, Object> map() {
        return map;
    }
}
