package org.neckgeom.channel;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads the reference tables of the set-up tests: comment lines with #, a header, then rows. */
final class Reference {

    private Reference() {}

    static List<String[]> rows(String name) {
        try (InputStream in = Reference.class.getResourceAsStream("/channel/" + name);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            List<String[]> rows = new ArrayList<>();
            reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .skip(1)
                    .forEach(line -> rows.add(line.split(",", -1)));
            if (rows.isEmpty()) {
                throw new IllegalStateException("no rows in " + name);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double[] numbers(String[] row) {
        double[] numbers = new double[row.length];
        for (int i = 0; i < row.length; i++) {
            numbers[i] = Double.parseDouble(row[i]);
        }
        return numbers;
    }
}
