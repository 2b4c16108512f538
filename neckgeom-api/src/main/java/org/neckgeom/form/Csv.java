package org.neckgeom.form;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Data written as comma-separated values (RFC 4180). */
final class Csv {

    /** The numbers of a quantity that are in its unit. */
    private static final Set<String> IN_UNIT =
            Set.of("value", "standardUncertainty", "lower", "upper", "shift", "standardDeviation");

    private static final Set<Object> NOT_CELLS = Set.of("unit", "ucum", "printedIn");

    private Csv() {}

    /** Puts the cells of one fact under their heads, such as {@code fromNut (mm)}. */
    static void cells(String key, Object data, Map<String, String> cells) {
        if (data instanceof List) {
            return;
        }
        if (!(data instanceof Map<?, ?> map)) {
            cells.put(key, data.toString());
            return;
        }
        if (map.containsKey("answer")) {
            return;
        }
        map.forEach((name, part) -> {
            String inner = name.equals("value") ? key : key + "." + name;
            if (IN_UNIT.contains(name)) {
                cells.put(inner + " (" + map.get("unit") + ")", part.toString());
            } else if (!NOT_CELLS.contains(name)) {
                cells(inner, part, cells);
            }
        });
    }

    static String of(List<Map<String, String>> rows) {
        Set<String> heads = new LinkedHashSet<>();
        rows.forEach(row -> heads.addAll(row.keySet()));
        StringBuilder out = new StringBuilder();
        line(out, List.copyOf(heads));
        for (Map<String, String> row : rows) {
            line(out, heads.stream().map(head -> row.getOrDefault(head, "")).toList());
        }
        return out.toString();
    }

    private static void line(StringBuilder out, List<String> cells) {
        out.append(cells.stream().map(Csv::quoted).collect(Collectors.joining(",")))
                .append("\r\n");
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
    }
}
