package org.neckgeom.validation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Rows of the comma-separated tables of both modules, by the names in their headers. */
public final class Rows {

    private Rows() {}

    /** Rows of a table such as {@code /strength/wood-emc.csv}; lines with # are its birth certificate. */
    public static List<Map<String, String>> of(String resource) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Rows.class.getResourceAsStream(resource), resource), StandardCharsets.UTF_8))) {
            List<List<String>> lines = reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(Rows::cells)
                    .toList();
            List<Map<String, String>> rows = new ArrayList<>();
            for (List<String> line : lines.subList(1, lines.size())) {
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < lines.get(0).size(); i++) {
                    row.put(lines.get(0).get(i), i < line.size() ? line.get(i) : "");
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The number in a column. */
    public static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
