package org.neckgeom.testing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;

/** Rows of a comma-separated file among the test resources, by the names in its header. */
public final class ReferenceTable {

    private ReferenceTable() {}

    /** Rows as maps from the header's names; lines that begin with {@code #} are the file's birth certificate. */
    public static List<Map<String, String>> rows(String resource) {
        List<String> lines = lines(resource);
        List<String> header = cells(lines.get(0));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = cells(line);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < header.size(); i++) {
                row.put(header.get(i), i < cells.size() ? cells.get(i) : "");
            }
            rows.add(row);
        }
        return rows;
    }

    /** The one row whose column has the value. */
    public static Map<String, String> row(String resource, String column, String value) {
        return rows(resource).stream()
                .filter(row -> row.get(column).equals(value))
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException(resource + " has no row with " + column + " = " + value));
    }

    private static List<String> lines(String resource) {
        InputStream stream = Objects.requireNonNull(ReferenceTable.class.getResourceAsStream(resource), resource);
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
