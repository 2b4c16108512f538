package org.neckgeom.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * A JSON document of one noun: its format and version, then the noun's keys, then what it answers, which is not read back.
 *
 * @param <T> the noun
 * @param format such as {@code neckgeom plan}
 * @param table the noun's keys
 */
record Document<T>(String format, Table<T> table) {

    /** The version written and read: the keys of a neck file in camel case. */
    static final int VERSION = 2;

    private static final String FORMAT = "format";
    private static final String VERSION_KEY = "version";
    private static final String ANSWERS = "answers";

    /** Everything but the answers. */
    Map<String, Object> of(T noun) {
        return with(table.write(noun, Spelling.JSON));
    }

    /** The same with every length in one style. */
    Map<String, Object> of(T noun, LengthStyle style) {
        return with(table.write(noun, Spelling.JSON, style));
    }

    private Map<String, Object> with(Tree keys) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put(FORMAT, format);
        document.put(VERSION_KEY, VERSION);
        ((Map<?, ?>) Objects.requireNonNull(keys.plain())).forEach((key, value) -> document.put(key.toString(), value));
        return document;
    }

    /** The JSON Schema of such a document. */
    Map<String, Object> schema() {
        Map<String, Object> schema = copy(table.fragment(Spelling.JSON).plain());
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put(FORMAT, Map.of("const", format));
        properties.put(VERSION_KEY, Map.of("const", VERSION));
        properties.putAll(copy(schema.get("properties")));
        properties.put(ANSWERS, Map.of("$ref", "#/$defs/answers"));
        List<Object> required = new ArrayList<>(List.of(FORMAT, VERSION_KEY));
        required.addAll((List<?>) schema.getOrDefault("required", List.of()));
        schema.put("properties", properties);
        schema.put("required", required);
        return schema;
    }

    private static Map<String, Object> copy(@Nullable Object map) {
        Map<String, Object> copy = new LinkedHashMap<>();
        ((Map<?, ?>) Objects.requireNonNull(map)).forEach((key, value) -> copy.put(key.toString(), value));
        return copy;
    }

    String json(T noun, Map<String, Object> answers) {
        Map<String, Object> document = of(noun);
        document.put(ANSWERS, answers);
        return Json.of(document);
    }

    T read(String json) {
        Object root = Json.read(Objects.requireNonNull(json, "json")).plain();
        if (!(root instanceof Map<?, ?> whole)) {
            throw Refusal.of("JSON", "kind", "be an object", root instanceof List ? "a list" : String.valueOf(root));
        }
        Map<Object, @Nullable Object> keys = new LinkedHashMap<>(whole);
        expect(FORMAT, "\"" + format + "\"", shown(keys.remove(FORMAT)));
        expect(VERSION_KEY, String.valueOf(VERSION), shown(keys.remove(VERSION_KEY)));
        keys.remove(ANSWERS);
        return table.read(Tree.of(keys));
    }

    private static void expect(String key, String wanted, String found) {
        if (!found.equals(wanted)) {
            throw Refusal.of(key, "value", "be " + wanted, found);
        }
    }

    private static String shown(@Nullable Object value) {
        if (value instanceof Double number) {
            return Numbers.plain(number);
        }
        return value instanceof String text ? Words.quoted(text) : value == null ? "missing" : "of another type";
    }
}
