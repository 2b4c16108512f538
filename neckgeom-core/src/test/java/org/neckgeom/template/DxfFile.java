package org.neckgeom.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a drawing exchange file back by the rules of its release 12: pairs of a group code line and a value line, sections
 * between SECTION and ENDSEC, an entity from one code 0 to the next. Written for the tests, apart from the writer.
 */
final class DxfFile {

    record Group(int code, String value) {}

    /** An entity: its kind, its layer and its numbers by group code. */
    record Entity(String kind, String layer, Map<Integer, String> groups) {

        double number(int code) {
            return Double.parseDouble(groups.get(code));
        }

        double length() {
            return Math.hypot(number(11) - number(10), number(21) - number(20));
        }

        boolean isHorizontal() {
            return number(20) == number(21);
        }
    }

    final List<Group> groups = new ArrayList<>();
    final List<Entity> entities = new ArrayList<>();
    final List<String> layers = new ArrayList<>();

    DxfFile(String text) {
        String[] lines = text.split("\n", -1);
        assertEquals("", lines[lines.length - 1], "ends in a line feed");
        assertEquals(1, lines.length % 2, "pairs of lines");
        for (int i = 0; i + 1 < lines.length; i += 2) {
            groups.add(new Group(Integer.parseInt(lines[i].strip()), lines[i + 1]));
        }
        assertTrue(text.chars().allMatch(c -> c == '\n' || c >= 0x20 && c < 0x7F), "ASCII only");
        String section = "";
        String table = "";
        for (int i = 0; i < groups.size(); i++) {
            Group group = groups.get(i);
            if (group.code() != 0) {
                continue;
            }
            switch (group.value()) {
                case "SECTION" -> section = groups.get(i + 1).value();
                case "ENDSEC" -> section = "";
                case "TABLE" -> table = groups.get(i + 1).value();
                case "LAYER" -> {
                    assertEquals("LAYER", table);
                    layers.add(groups.get(i + 1).value());
                }
                default -> {
                    if (section.equals("ENTITIES")) {
                        entities.add(entity(i));
                    }
                }
            }
        }
    }

    private Entity entity(int at) {
        Map<Integer, String> own = new HashMap<>();
        for (int i = at + 1; groups.get(i).code() != 0; i++) {
            own.put(groups.get(i).code(), groups.get(i).value());
        }
        return new Entity(groups.get(at).value(), own.get(8), own);
    }

    List<Entity> all(String kind, Layer layer) {
        return entities.stream()
                .filter(e -> e.kind().equals(kind) && e.layer().equals(layer.name()))
                .toList();
    }

    Group last() {
        return groups.get(groups.size() - 1);
    }
}
