package org.neckgeom.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.BudgetKeys;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.Job;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * A plan, a design or a budget as JSON for other programs, with a unit beside every figure.
 *
 * <p>The JSON is one object (RFC 8259). The input comes first and reads back unchanged, {@link #read}; the results are
 * in {@code answers}, are not read back, and may be left out by a program that writes such a document.
 *
 * <pre>
 * format      "neckgeom plan", "neckgeom design" or "neckgeom budget"
 * version     2; 1 is read too
 * ...         every key of the noun, in camel case, such as those of {@link Job#TABLE}
 * answers     of a plan: status, checks, cautions, sections, order, budgets, fretTable, stations;
 *             of a budget: standardDeviation, low95, high95
 * </pre>
 *
 * <p>A quantity is {@code {"value": 34, "unit": "mm", "ucum": "mm"}}. Where only another unit gives a number back
 * exactly, {@code printedIn} names the unit that answers are printed in. Answers are rounded to twelve digits.
 *
 * <p>Of a budget: the {@code sensitivity} of a component is in library units (mm, rad, N, MPa, ...). A spread is its
 * {@code law}, its size ({@code standardDeviation}, {@code halfWidth}, {@code halfBase} and {@code halfTop}, or samples
 * {@code fromTheirMean}), its {@code shift}, and {@code degreesOfFreedom} where few. A note that a ready-made budget
 * prints under its title is not part of it.
 *
 * <p>Errors: {@link #read} throws {@link org.neckgeom.fault.Refusal} (an {@code IllegalArgumentException}) with every
 * fault and its path. Immutable.
 *
 * @see Sheet
 * @param <T> the type written and read
 */
public final class Document<T> {

    /** A job with the answers of its plan. */
    public static final Document<Job> PLAN = new Document<>("neckgeom plan", Job.TABLE, AnswerMap::of, Version1::job);

    /** A design alone. */
    public static final Document<Neck> DESIGN =
            new Document<>("neckgeom design", Neck.TABLE, design -> Map.of(), Version1::neck);

    /** A budget, with its standard deviation and its 95 % interval. */
    public static final Document<Budget<?>> BUDGET =
            new Document<>("neckgeom budget", BudgetKeys.TABLE, AnswerMap::ofBudget, Version1::budget);

    private static final int VERSION = 2;
    private static final int MARK_DIGITS = 8;
    private static final String FORMAT = "format";
    private static final String VERSION_KEY = "version";
    private static final String ANSWERS = "answers";
    private static final Map<String, Object> TEXT = Map.of("type", "string");

    private final String format;
    private final Table<T> table;
    private final Function<T, Map<String, Object>> answers;
    private final Function<Map<?, ?>, T> version1;

    private Document(
            String format, Table<T> table, Function<T, Map<String, Object>> answers, Function<Map<?, ?>, T> version1) {
        this.format = format;
        this.table = table;
        this.answers = answers;
        this.version1 = version1;
    }

    /**
     * {@return the JSON of what was given, and of what follows from it; the text in UTF-8, ending in a line feed}
     *
     * @param noun the plan, design or budget
     */
    public String json(T noun) {
        Map<String, Object> document = given(table.write(Objects.requireNonNull(noun, "noun"), Spelling.JSON));
        Map<String, Object> answered = answers.apply(noun);
        if (!answered.isEmpty()) {
            document.put(ANSWERS, answered);
        }
        return Json.of(document);
    }

    /**
     * {@return the SHA-256 of a job's JSON without its answers, in millimetres: by it two jobs are known to be given the
     * same; 64 lower-case hexadecimal digits}
     *
     * @param job the job
     */
    public static String hash(Job job) {
        Objects.requireNonNull(job, "job");
        Map<String, Object> given = PLAN.given(PLAN.table.write(job, Spelling.JSON, LengthStyle.MILLIMETRES));
        given.remove("printIn");
        try {
            byte[] bytes = Json.of(given).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new AssertionError(everyPlatformHasIt);
        }
    }

    /**
     * {@return the mark that page and templates of a plan have on them, so that paper can be matched with paper; the
     * first eight digits of its {@link #hash}}
     *
     * @param job the job
     */
    public static String mark(Job job) {
        return hash(job).substring(0, MARK_DIGITS);
    }

    /** Everything but the answers. */
    private Map<String, Object> given(Tree keys) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put(FORMAT, format);
        document.put(VERSION_KEY, VERSION);
        document.putAll(copy(keys.plain()));
        return document;
    }

    /**
     * {@return the value that a JSON text written by {@link #json} holds; equal to the value it was written from, its
     * JSON the same text}
     *
     * <p>A document of version 1 is read too. Figures of it that follow from others must agree with them: a length within
     * 0.02 mm.
     *
     * <p>An unknown version, a key that is not known, a missing part, another type or unit, a value out of range, a key given twice,
     * nesting deeper than 100 levels, a text of more than 100,000 characters, a number beyond a double or of more than 1,000
     * characters and a document of more than 10,000,000 characters are refused in one sentence with the place.
     *
     * @param json the text
     * @throws IllegalArgumentException with the place and the rule, if the text is not JSON or not of this format
     */
    public T read(String json) {
        Object root = Json.read(Objects.requireNonNull(json, "json")).plain();
        if (!(root instanceof Map<?, ?> whole)) {
            throw Refusal.of("JSON", "kind", "be an object", root instanceof List ? "a list" : String.valueOf(root));
        }
        Map<Object, @Nullable Object> keys = new LinkedHashMap<>(whole);
        expect(FORMAT, "\"" + format + "\"", shown(keys.remove(FORMAT)));
        String version = shown(keys.remove(VERSION_KEY));
        keys.remove(ANSWERS);
        if (version.equals("1")) {
            return version1.apply(keys);
        }
        if (!version.equals(String.valueOf(VERSION))) {
            throw Refusal.of(VERSION_KEY, "value", "be 1 or " + VERSION, version);
        }
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

    /** {@return the JSON Schema (draft 2020-12) of all three documents; ending in a line feed} */
    public static String schema() {
        Map<String, Object> defs = new LinkedHashMap<>();
        defs.put("quantity", Types.quantitySchema());
        defs.put(
                "answer",
                object(
                        "an answer by the form it names: facts by key, finding and notes by code, text",
                        Map.of("answer", TEXT),
                        List.of("answer")));
        defs.put(ANSWERS, answersSchema());
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "neckgeom plan, design or budget, version " + VERSION);
        schema.put("oneOf", List.of(PLAN.ownSchema(), DESIGN.ownSchema(), BUDGET.ownSchema()));
        schema.put("$defs", defs);
        return Json.of(Tree.of(schema));
    }

    private static Map<String, Object> answersSchema() {
        Map<String, Object> lists = new LinkedHashMap<>();
        lists.put("status", Map.of("$ref", "#/$defs/answer"));
        for (String name : List.of("checks", "sections", "budgets")) {
            Map<String, Object> list = new LinkedHashMap<>();
            list.put("type", "array");
            list.put("items", Map.of("$ref", "#/$defs/answer"));
            lists.put(name, list);
        }
        return object("results: written, not read back, may be left out", lists, List.of());
    }

    private static Map<String, Object> object(
            String description, Map<String, Object> properties, List<String> required) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("description", description);
        object.put("type", "object");
        object.put("properties", properties);
        object.put("required", required);
        return object;
    }

    private Map<String, Object> ownSchema() {
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

    @SuppressWarnings("unchecked") // a tree's maps have texts as keys
    private static Map<String, Object> copy(@Nullable Object map) {
        return new LinkedHashMap<>((Map<String, Object>) Objects.requireNonNull(map));
    }

    /** Returns which document it is. */
    @Override
    public String toString() {
        return "JSON of format \"" + format + "\", version " + VERSION;
    }
}
