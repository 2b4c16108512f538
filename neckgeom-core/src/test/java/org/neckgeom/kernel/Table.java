package org.neckgeom.kernel;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reads the reference tables beside the tests: comment lines with #, one header line, then rows, a cell with commas in
 * quotes. */
public final class Table {

    private Table() {}

    public static List<String[]> rows(String name) {
        try (InputStream in = Table.class.getResourceAsStream("/" + name);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            List<String[]> rows = new ArrayList<>();
            boolean header = true;
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (line.startsWith("#") || line.isBlank()) {
                    continue;
                }
                if (header) {
                    header = false;
                    continue;
                }
                rows.add(cells(line));
            }
            if (rows.isEmpty()) {
                throw new IllegalStateException("no rows in " + name);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String[] cells(String line) {
        String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
        return Arrays.stream(cells).map(cell -> cell.replace("\"", "")).toArray(String[]::new);
    }
}
