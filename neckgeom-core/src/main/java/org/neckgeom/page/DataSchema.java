package org.neckgeom.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.table.Types;

/** The JSON Schema of all documents, read off the tables of keys; of answers it states that each names its form. */
final class DataSchema {

    private static final Map<String, Object> TEXT = Map.of("type", "string");
    private static final Map<String, Object> ANSWER = object(
            "an answer by the form it names: facts by key, finding and notes by code, text",
            Map.of("answer", TEXT),
            List.of("answer"));

    private DataSchema() {}

    static String text(List<Document<?>> documents) {
        Map<String, Object> defs = new LinkedHashMap<>();
        defs.put("quantity", Types.quantitySchema());
        defs.put("answer", ANSWER);
        defs.put("answers", answers());
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "neckgeom plan, design or budget, version " + Document.VERSION);
        schema.put("oneOf", documents.stream().map(Document::schema).toList());
        schema.put("$defs", defs);
        return Json.of(Tree.of(schema));
    }

    /** What follows from the rest: written, not read back, may be left out. */
    private static Map<String, Object> answers() {
        Map<String, Object> lists = new LinkedHashMap<>();
        lists.put("standing", TEXT);
        for (String name : List.of("checks", "sections", "budgets")) {
            Map<String, Object> list = new LinkedHashMap<>();
            list.put("type", "array");
            list.put("items", Map.of("$ref", "#/$defs/answer"));
            lists.put(name, list);
        }
        return object("what follows from the rest: written, not read back, may be left out", lists, List.of());
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
}
