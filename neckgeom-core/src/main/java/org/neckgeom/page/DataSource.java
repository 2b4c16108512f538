package org.neckgeom.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.table.Table;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * One object of a JSON document while it is read. What is missing, of another type, of another unit, out of range or not
 * known is refused in a sentence that begins with its place, such as {@code design.scale.length}.
 */
final class DataSource {

    private static final int LONGEST_ECHO = 40;

    private final String place;
    private final Map<?, ?> map;
    private final Set<String> known = new LinkedHashSet<>();

    private DataSource(String place, Map<?, ?> map) {
        this.place = place;
        this.map = map;
    }

    /** A refusal that has its place already, on its way out. */
    private static final class Placed extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final Refusal refusal;

        Placed(Refusal refusal) {
            super(refusal);
            this.refusal = refusal;
        }
    }

    /** Reads a whole document of a format and version. */
    static <T> T read(String json, String format, int version, Function<DataSource, T> reader) {
        Object whole = Json.read(json).plain();
        try {
            return readWhole(whole, format, version, reader);
        } catch (Placed placed) {
            throw placed.refusal;
        }
    }

    private static <T> T readWhole(@Nullable Object whole, String format, int version, Function<DataSource, T> reader) {
        return within("", whole, source -> {
            source.expect("format", format, source.text("format"));
            if (source.number("version") != version) {
                throw source.refused(
                        "version", version + ", the only one known here", Numbers.plain(source.number("version")));
            }
            return reader.apply(source);
        });
    }

    private void expect(String key, String wanted, String found) {
        if (!found.equals(wanted)) {
            throw refused(key, shown(wanted), shown(found));
        }
    }

    private static <T> T within(String place, @Nullable Object value, Function<DataSource, T> reader) {
        if (!(value instanceof Map<?, ?> map)) {
            throw new Placed(Refusal.of(place.isEmpty() ? "JSON" : place, "kind", "be an object", shown(value)));
        }
        DataSource source = new DataSource(place, map);
        try {
            T read = reader.apply(source);
            source.refuseUnknown();
            return read;
        } catch (Refusal wrong) {
            throw new Placed(place.isEmpty() ? wrong : wrong.at(place));
        } catch (NoAnswer none) {
            String at = place.isEmpty() ? "" : place + ": ";
            throw new Placed(Refusal.because(place, none.fault().rule(), at + none.getMessage()));
        }
    }

    private void refuseUnknown() {
        for (Object key : map.keySet()) {
            if (!known.contains(key.toString())) {
                String path = path(echo(key.toString()));
                throw new Placed(Refusal.because(
                        path,
                        "unknown",
                        path + " is not known; what can stand there is " + DataUnits.phrase(known.stream())));
            }
        }
    }

    boolean has(String key) {
        known.add(key);
        return map.containsKey(key);
    }

    <T> T one(String key, Function<DataSource, T> reader) {
        return within(path(key), told(key), reader);
    }

    <T> Optional<T> oneIfTold(String key, Function<DataSource, T> reader) {
        return has(key) ? Optional.of(one(key, reader)) : Optional.empty();
    }

    /** A noun by its own table of keys. */
    <T> T noun(String key, Table<T> table) {
        try {
            return table.read(Tree.of(told(key)), path(key));
        } catch (Refusal refusal) {
            throw new Placed(refusal);
        }
    }

    <T> Optional<T> nounIfTold(String key, Table<T> table) {
        return has(key) ? Optional.of(noun(key, table)) : Optional.empty();
    }

    /** A noun whose table's keys are some of those at this level. */
    <T> Optional<T> inlineIfTold(Table<T> table, String... keys) {
        Map<String, Object> some = new LinkedHashMap<>();
        for (String key : keys) {
            if (has(key)) {
                some.put(key, map.get(key));
            }
        }
        try {
            return some.isEmpty() ? Optional.empty() : Optional.of(table.read(Tree.of(some), place));
        } catch (Refusal refusal) {
            throw new Placed(refusal);
        }
    }

    <T> List<T> all(String key, Function<DataSource, T> reader) {
        List<?> list = list(key);
        List<T> all = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            all.add(within(path(key) + "[" + i + "]", list.get(i), reader));
        }
        return List.copyOf(all);
    }

    List<String> texts(String key) {
        List<String> all = new ArrayList<>();
        for (Object one : list(key)) {
            all.add(typed(path(key) + "[" + all.size() + "]", one, String.class, "a text"));
        }
        return List.copyOf(all);
    }

    private List<?> list(String key) {
        return typed(path(key), told(key), List.class, "a list");
    }

    String text(String key) {
        return typed(path(key), told(key), String.class, "a text");
    }

    double number(String key) {
        return typed(path(key), told(key), Double.class, "a number");
    }

    boolean flag(String key) {
        return typed(path(key), told(key), Boolean.class, "true or false");
    }

    int count(String key) {
        double number = number(key);
        if (number != Math.rint(number) || Math.abs(number) > 1e6) {
            throw refused(key, "a whole number up to 1000000", Numbers.plain(number));
        }
        return (int) number;
    }

    /** One of the words that an enum's names are written as. */
    <E extends Enum<E>> E word(String key, E[] values) {
        String text = text(key);
        return Arrays.stream(values)
                .filter(value -> word(value).equals(text))
                .findFirst()
                .orElseThrow(() ->
                        refused(key, DataUnits.phrase(Arrays.stream(values).map(DataSource::word)), shown(text)));
    }

    /** Such as {@code two-way} for {@code TWO_WAY}. */
    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Amount<Length> length(String key) {
        return quantity(key, DataUnits.LENGTH);
    }

    Amount<Angle> angle(String key) {
        return quantity(key, DataUnits.ANGLE);
    }

    <Q extends Quantity<Q>> Amount<Q> quantity(String key, DataUnits<Q> units) {
        return one(key, source -> source.amount(units));
    }

    <Q extends Quantity<Q>> List<Amount<Q>> quantities(String key, DataUnits<Q> units) {
        return all(key, source -> source.amount(units));
    }

    /** A list, or a single quantity in its place: what was read once used to be written alone. */
    <Q extends Quantity<Q>> List<Amount<Q>> oneOrMore(String key, DataUnits<Q> units) {
        return told(key) instanceof List<?> ? quantities(key, units) : List.of(quantity(key, units));
    }

    private <Q extends Quantity<Q>> Amount<Q> amount(DataUnits<Q> units) {
        Amount<Q> amount = Amount.of(number(DataMap.VALUE), unit(DataMap.UNIT, units, units.units()));
        return has(DataMap.PRINTED_IN)
                ? Amount.ofHouse(amount.house(), unit(DataMap.PRINTED_IN, units, units.printed()))
                : amount;
    }

    /** The kind of a quantity, by its unit. */
    DataUnits<?> kindOf(String key) {
        return one(key, quantity -> {
            quantity.skip(DataMap.VALUE, DataMap.PRINTED_IN);
            String symbol = quantity.text(DataMap.UNIT);
            return DataUnits.ALL.stream()
                    .filter(units -> units.has(symbol))
                    .findFirst()
                    .orElseThrow(() -> quantity.refused(DataMap.UNIT, "a known unit", shown(symbol)));
        });
    }

    /** Leaves parts unread that may stand here; says whether one does. */
    boolean skip(String... keys) {
        return Arrays.stream(keys).filter(this::has).count() > 0;
    }

    /** A unit by its symbol, one of some of a kind. */
    <Q extends Quantity<Q>> ShopUnit<Q> unit(String key, DataUnits<Q> kind, List<ShopUnit<Q>> some) {
        String symbol = text(key);
        return kind.named(some, symbol).orElseThrow(() -> refused(key, DataUnits.symbols(some), shown(symbol)));
    }

    private @Nullable Object told(String key) {
        if (!has(key)) {
            throw new Placed(Refusal.because(path(key), "missing", path(key) + " must be told, but is missing"));
        }
        return map.get(key);
    }

    private static <T> T typed(String place, @Nullable Object value, Class<T> type, String words) {
        if (!type.isInstance(value)) {
            throw new Placed(Refusal.of(place, "kind", "be " + words, shown(value)));
        }
        return type.cast(value);
    }

    /** The refusal of a part for the reason of a fault. */
    RuntimeException refused(String key, Fault fault) {
        String at = path(key);
        return new Placed(
                fault.given().isEmpty()
                        ? Refusal.because(at, fault.rule(), at + ": " + fault.must())
                        : Refusal.of(at, fault.rule(), fault.must(), fault.given()));
    }

    private Placed refused(String key, String wanted, String found) {
        return new Placed(Refusal.of(path(key), "value", "be " + wanted, found));
    }

    private static String shown(@Nullable Object value) {
        if (value instanceof Map) {
            return "an object";
        }
        if (value instanceof List) {
            return "a list";
        }
        if (value instanceof Double number) {
            return Numbers.plain(number);
        }
        return value instanceof String text ? "\"" + echo(text) + "\"" : String.valueOf(value);
    }

    private static String echo(String text) {
        return Words.shown(text.length() <= LONGEST_ECHO ? text : text.substring(0, LONGEST_ECHO) + "...");
    }

    private String path(String key) {
        return place.isEmpty() ? key : place + "." + key;
    }
}
