package org.neckgeom.examples.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.neckgeom.text.Nearest;

/** What a section of a file may hold: its keys, in the order in which they are best written. Immutable. */
public final class Shape implements Kind<Section> {

    private final Map<String, Key<?>> keys;
    private final String about;

    private Shape(String about, Map<String, Key<?>> keys) {
        this.about = about;
        this.keys = keys;
    }

    /**
     * A shape.
     *
     * @param about what the section describes, in one line
     * @param keys its keys, each name once
     * @return the shape
     */
    public static Shape of(String about, Key<?>... keys) {
        Map<String, Key<?>> byName = new LinkedHashMap<>();
        for (Key<?> key : keys) {
            if (byName.put(key.name(), key) != null) {
                throw new IllegalArgumentException("keys must have each name once, but " + key.name() + " is twice");
            }
        }
        return new Shape(Objects.requireNonNull(about, "about"), byName);
    }

    /**
     * The keys.
     *
     * @return in the order in which they are best written
     */
    public List<Key<?>> keys() {
        return List.copyOf(keys.values());
    }

    /**
     * What the section describes.
     *
     * @return one line
     */
    public String about() {
        return about;
    }

    @Override
    public Found<Section> read(Node node, Problems problems) {
        if (!(node instanceof Node.Entries entries)) {
            String where =
                    node.place().path().isEmpty() ? "the file" : node.place().path();
            problems.add(node.place(), where + " is " + node.found() + ", but must be " + allowed());
            return Found.unusable();
        }
        noteUnknown(entries, problems);
        Map<String, Found<?>> values = new LinkedHashMap<>();
        for (Key<?> key : keys.values()) {
            values.put(key.name(), read(key, entries, problems));
        }
        Map<String, Place> places = new LinkedHashMap<>();
        entries.entries().forEach((name, value) -> places.put(name, value.place()));
        return Found.of(new Section(this, entries.place(), values, places, problems));
    }

    private void noteUnknown(Node.Entries entries, Problems problems) {
        entries.entries().forEach((name, value) -> {
            if (!keys.containsKey(name)) {
                String slip = Nearest.question(name, keys.keySet());
                String full = value.place().path();
                problems.add(
                        value.place(),
                        full + " is not a known key" + slip + (slip.isEmpty() ? "; known" : " Known") + " here: "
                                + String.join(", ", keys.keySet()));
            }
        });
    }

    private static Found<?> read(Key<?> key, Node.Entries entries, Problems problems) {
        Node value = entries.entries().get(key.name());
        Place place = entries.place();
        String full = place.key(key.name(), Math.max(1, place.line())).path();
        if (value == null) {
            if (key.isRequired()) {
                problems.add(place, full + " is missing; give " + key.kind().allowed() + " (" + key.about() + ")");
                return Found.unusable();
            }
            return Found.absent();
        }
        if (value instanceof Node.Text text && text.text().isEmpty()) {
            problems.add(
                    text.place(), full + " has no value; give " + key.kind().allowed());
            return Found.unusable();
        }
        return key.kind().read(value, problems);
    }

    @Override
    public String allowed() {
        return "a group with the keys " + String.join(", ", keys.keySet());
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (Key<?> key : keys.values()) {
            Map<String, Object> property = new LinkedHashMap<>();
            property.put("description", key.about());
            property.putAll(key.kind().schema());
            property.put("description", key.about());
            properties.put(key.name(), property);
            if (key.isRequired()) {
                required.add(key.name());
            }
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("description", about);
        schema.put("properties", properties);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        schema.put("additionalProperties", false);
        return schema;
    }

    /**
     * The whole JSON Schema of files of this shape.
     *
     * @param title what such a file is called
     * @return JSON text, ending in a line feed
     */
    public String schemaText(String title) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", title);
        schema.putAll(schema());
        return JsonText.of(schema);
    }

    /**
     * Every key on a line of its own, in the order in which it is best written, with what it means.
     *
     * @return the lines; a key that must be there is marked with a star, one level down is indented by two blanks
     */
    public String outline() {
        StringBuilder lines = new StringBuilder();
        outline(lines, "");
        return lines.toString();
    }

    private void outline(StringBuilder lines, String indent) {
        for (Key<?> key : keys.values()) {
            String start = indent + (key.isRequired() ? "* " : "  ") + key.name() + ":";
            lines.append(String.format(Locale.ROOT, "%-30s %s", start, key.about())
                            .stripTrailing())
                    .append('\n');
            key.kind().inside().ifPresent(shape -> shape.outline(lines, indent + "  "));
            key.kind()
                    .help()
                    .lines()
                    .forEach(line ->
                            lines.append((indent + "  " + line).stripTrailing()).append('\n'));
        }
    }

    @Override
    public Optional<Shape> inside() {
        return Optional.of(this);
    }
}
