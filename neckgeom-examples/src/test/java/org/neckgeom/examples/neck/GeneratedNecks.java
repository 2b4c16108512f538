package org.neckgeom.examples.neck;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.neckgeom.form.Json;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Whole neck files by the table of keys: a shipped neck changed key by key. Keys are left out and put in, sections are
 * taken from other necks, quantities scaled a little or a lot, said in other units, set to the edges that the table
 * allows and beyond. One source of chance makes one file.
 */
public final class GeneratedNecks {

    private static final Pattern QUANTITY = Pattern.compile("(-?[0-9./ ]*[0-9]) (\\S+)");
    private static final Pattern EDGE =
            Pattern.compile("(?:more than|at least|at most) (-?[0-9./ ]*[0-9] \\S+?)(?= |,|$)");
    private static final List<String> LENGTHS = List.of("mm", "in", "thou", "cm");
    private static final Map<String, Double> MM =
            Map.of("mm", 1.0, "in", 25.4, "thou", 0.0254, "cm", 10.0, "m", 1000.0, "ft", 304.8);
    private static final List<String> TEXTS = List.of(
            "é <&> \"quoted\" ]]>",
            "x".repeat(200),
            "x".repeat(201),
            "0",
            "null",
            "no. 7: a - b",
            "日本",
            "A#4",
            "C1",
            "E4");
    private static final double[] FACTORS = {0, 1e-6, 0.01, 0.1, 0.5, 2, 10, 100, 1e6, -1};
    private static final int[] COUNTS = {0, 1, 2, 3, 7, 12, 100, 101, 200, 1_000_000_000};

    private static final List<Map<String, Object>> WHOLE = Stream.concat(
                    ShippedNecks.names().stream().map(ShippedNecks::text),
                    KindNecks.names().stream().map(KindNecks::text))
            .map(GeneratedNecks::tree)
            .toList();
    private static final Map<String, List<Object>> KNOWN = known();

    private final IntUnaryOperator chance;

    private static final Map<String, Object> SCHEMA =
            map(Json.read(NeckFile.schema()).plain());

    /** A key of a section that is there, with what the schema has of it. */
    private record Place(
            Map<String, Object> section, String name, Map<String, Object> key, boolean needed, String path) {}

    private GeneratedNecks(IntUnaryOperator chance) {
        this.chance = chance;
    }

    /**
     * A neck file.
     *
     * @param chance gives a whole number from 0 to under the one it is handed
     * @return its text
     */
    public static String of(IntUnaryOperator chance) {
        return new GeneratedNecks(chance).text();
    }

    /** Every key that files are made with, as a path of names. */
    static Set<String> keys() {
        return KNOWN.keySet();
    }

    @SuppressWarnings("unchecked") // a neck file is a group of keys at its top
    private static Map<String, Object> tree(String yaml) {
        return (Map<String, Object>) new Load(LoadSettings.builder().build()).loadFromString(yaml);
    }

    private static Map<String, List<Object>> known() {
        Map<String, List<Object>> known = new HashMap<>();
        WHOLE.forEach(neck -> collect(neck, "", known));
        try (InputStream more = GeneratedNecks.class.getResourceAsStream("/fuzz/more-keys.yaml")) {
            collect(tree(new String(more.readAllBytes(), StandardCharsets.UTF_8)), "", known);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return known;
    }

    private static void collect(Object value, String path, Map<String, List<Object>> known) {
        if (value instanceof List<?> items) {
            items.forEach(item -> collect(item, path, known));
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((name, inner) -> {
                String full = path.isEmpty() ? name.toString() : path + "." + name;
                known.computeIfAbsent(full, none -> new ArrayList<>()).add(inner);
                collect(inner, full, known);
            });
        }
    }

    private String text() {
        Map<String, Object> neck = copyOf(pick(WHOLE));
        int steps = chance(4) == 0 ? 2 + chance(11) : 1 + chance(3);
        for (int i = 0; i < steps; i++) {
            List<Place> places = new ArrayList<>();
            walk(neck, SCHEMA, "", places);
            change(pick(places));
        }
        return Json.of(neck);
    }

    private int chance(int under) {
        return chance.applyAsInt(under);
    }

    private <T> T pick(List<T> list) {
        return list.get(chance(list.size()));
    }

    @SuppressWarnings("unchecked") // what is copied is as it was
    private static <T> T copyOf(T value) {
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>();
            map.forEach((name, inner) -> copy.put(name, copyOf(inner)));
            return (T) copy;
        }
        if (value instanceof List<?> list) {
            List<Object> copy = new ArrayList<>();
            list.forEach(item -> copy.add(copyOf(item)));
            return (T) copy;
        }
        return value;
    }

    /** Each key of each section that is there, whether the key is there or not. */
    private static void walk(Object value, Map<String, Object> schema, String path, List<Place> places) {
        if (value instanceof List<?> items) {
            items.forEach(item -> walk(item, schema, path, places));
        } else if (value instanceof Map<?, ?> map) {
            Map<String, Object> group = group(schema);
            List<?> required = (List<?>) group.getOrDefault("required", List.of());
            map(group.getOrDefault("properties", Map.of())).forEach((name, property) -> {
                String full = path.isEmpty() ? name : path + "." + name;
                places.add(new Place(map(map), name, map(property), required.contains(name), full));
                walk(map.get(name), map(property), full, places);
            });
        }
    }

    /** The schema of a group itself, through lists and alternatives. */
    static Map<String, Object> group(Map<String, Object> schema) {
        if (schema.containsKey("properties")) {
            return schema;
        }
        if (schema.containsKey("items")) {
            return group(map(schema.get("items")));
        }
        return ((List<?>) schema.getOrDefault("oneOf", List.of()))
                .stream()
                        .map(one -> group(map(one)))
                        .filter(one -> one.containsKey("properties"))
                        .findFirst()
                        .orElse(Map.of());
    }

    @SuppressWarnings("unchecked") // names are texts in a schema and in a neck
    static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    private void change(Place place) {
        String name = place.name();
        Object value = place.section().get(name);
        int way = chance(10);
        if (value == null || way < 2) {
            place.section().put(name, copyOf(pick(known(place))));
        } else if (way < 4 && (!place.needed() || chance(6) == 0)) {
            place.section().remove(name);
        } else {
            place.section().put(name, changed(value, place.key()));
        }
    }

    /** Every key has a value somewhere, which a test holds; the file says which where one is lacking. */
    private static List<Object> known(Place place) {
        return Objects.requireNonNull(KNOWN.get(place.path()), place.path());
    }

    private Object changed(Object value, Map<String, Object> key) {
        if (value instanceof Map<?, ?> map && !map.isEmpty()) {
            Map<Object, Object> copy = new LinkedHashMap<>(map);
            Object name = pick(List.copyOf(map.keySet().stream().sorted().toList()));
            copy.put(name, changed(map.get(name), key));
            return copy;
        }
        if (value instanceof List<?> list && !list.isEmpty()) {
            return changed(list, key);
        }
        List<?> words = (List<?>) key.getOrDefault("enum", List.of());
        if (!words.isEmpty()) {
            return pick(words);
        }
        Matcher quantity = QUANTITY.matcher(value.toString());
        if (quantity.matches()) {
            return quantity(number(quantity.group(1)), quantity.group(2), key);
        }
        return value instanceof Number number ? count(number.doubleValue(), key) : pick(TEXTS);
    }

    private List<Object> changed(List<?> list, Map<String, Object> key) {
        List<Object> copy = new ArrayList<>(list);
        int at = chance(list.size());
        switch (chance(6)) {
            case 0 -> copy.remove(at);
            case 1 -> copy.add(at, copyOf(list.get(at)));
            case 2 -> copy.add(copy.remove(at));
            default -> copy.set(at, changed(list.get(at), key));
        }
        return copy;
    }

    private Object count(double number, Map<String, Object> key) {
        return switch (chance(4)) {
            case 0 -> key.getOrDefault("minimum", number);
            case 1 -> key.getOrDefault("maximum", number);
            case 2 -> COUNTS[chance(COUNTS.length)];
            default -> number == Math.rint(number) ? (Object) (int) (number - 2 + chance(5)) : (Object) (number * 0.9);
        };
    }

    private String quantity(double number, String unit, Map<String, Object> key) {
        return switch (chance(10)) {
            case 0 -> written(number * FACTORS[chance(FACTORS.length)]) + " " + unit;
            case 1 -> edge(key).orElseGet(() -> written(number) + " " + unit);
            case 2, 3 -> inAnotherUnit(number, unit);
            case 4 -> written(number * (0.3 + chance(200) / 100.0)) + " " + unit;
            default -> written(number * (0.9 + chance(201) / 1000.0)) + " " + unit;
        };
    }

    private static String title(Map<String, Object> key) {
        if (key.containsKey("title")) {
            return key.get("title").toString();
        }
        Object inner = key.containsKey("items") ? key.get("items") : key.getOrDefault("oneOf", List.of());
        if (inner instanceof List<?> several) {
            return several.isEmpty() ? "" : title(map(several.get(0)));
        }
        return title(map(inner));
    }

    /** A bound that the table states, or a hair to either side of it. */
    private Optional<String> edge(Map<String, Object> key) {
        List<String> edges = EDGE.matcher(title(key))
                .results()
                .map(result -> result.group(1))
                .toList();
        if (edges.isEmpty()) {
            return Optional.empty();
        }
        Matcher edge = QUANTITY.matcher(pick(edges));
        if (!edge.matches()) {
            return Optional.empty();
        }
        double hair = new double[] {0, 1e-9, -1e-9, 1e-3}[chance(4)];
        return Optional.of(written(number(edge.group(1)) + hair) + " " + edge.group(2));
    }

    private String inAnotherUnit(double number, String unit) {
        if (!MM.containsKey(unit)) {
            return written(number) + " " + unit;
        }
        double mm = number * MM.get(unit);
        if (chance(3) == 0) {
            long sixtyFourths = Math.round(mm / 25.4 * 64);
            return sixtyFourths / 64 + " " + Math.abs(sixtyFourths % 64) + "/64 in";
        }
        String other = pick(LENGTHS);
        return written(mm / MM.get(other)) + " " + other;
    }

    /** With a maker's few digits, or with all a double has. */
    private String written(double number) {
        return chance(3) > 0 && Math.abs(number) < 1e9
                ? String.format(Locale.ROOT, "%.3f", number)
                : Double.toString(number).replace("E", "e");
    }

    private static double number(String text) {
        double sum = 0;
        boolean negative = text.startsWith("-");
        for (String part : text.replace("-", "").strip().split(" ")) {
            String[] over = part.split("/");
            sum += over.length == 1
                    ? Double.parseDouble(over[0])
                    : Double.parseDouble(over[0]) / Double.parseDouble(over[1]);
        }
        return negative ? -sum : sum;
    }
}
