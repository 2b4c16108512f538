package org.neckgeom.strength;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Rows of a reference table under src/test/resources/strength; lines with # are its birth certificate. */
final class ReferenceRows {

    private ReferenceRows() {}

    static Stream<Map<String, String>> of(String file) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                ReferenceRows.class.getResourceAsStream("/strength/" + file), StandardCharsets.UTF_8))) {
            List<String[]> lines = reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
            String[] head = lines.get(0);
            return lines.stream().skip(1).map(cells -> {
                Map<String, String> row = new HashMap<>();
                for (int i = 0; i < head.length; i++) {
                    row.put(head[i], cells[i]);
                }
                return row;
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
