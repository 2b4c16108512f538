package org.neckgeom.numeric;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Rows of a reference table beside the tests; lines that begin with # are its birth certificate. */
final class LawTable {

    private LawTable() {}

    static List<String[]> rows(String file) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                LawTable.class.getResourceAsStream("/numeric/" + file), StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(","))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double dof(String text) {
        return text.equals("inf") || text.equals("infinity") ? Double.POSITIVE_INFINITY : Double.parseDouble(text);
    }

    static double relative(double actual, double expected) {
        return expected == 0.0 ? Math.abs(actual) : Math.abs(actual / expected - 1.0);
    }
}
