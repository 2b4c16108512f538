package org.neckgeom.budget;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Rows of chains.csv, and parts written as there: {@code n:0.05 r:0.1 z:0.3/0.1}. */
final class ChainTable {

    record Row(String name, String parts, String quantity, double argument, double value) {}

    private ChainTable() {}

    static List<Row> rows() {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                ChainTable.class.getResourceAsStream("/budget/chains.csv"), StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(";"))
                    .map(r -> new Row(r[0], r[1], r[2], Double.parseDouble(r[3]), Double.parseDouble(r[4])))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Parts parts(String text) {
        Parts.Builder builder = new Parts.Builder();
        for (String word : text.split(" ")) {
            double[] v = Arrays.stream(word.substring(2).split("/"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            switch (word.charAt(0)) {
                case 'n' -> builder.normal(v[0]);
                case 'r' -> builder.rectangle(v[0]);
                case 't' -> builder.triangle(v[0]);
                case 'z' -> builder.trapezoid(v[0], v[1]);
                case 'a' -> builder.arcsine(v[0]);
                case 'b' -> builder.shift(v[0]);
                case 's' -> {
                    double mean = Arrays.stream(v).sum() / v.length;
                    double[] centred =
                            Arrays.stream(v).map(x -> x - mean).sorted().toArray();
                    builder.shift(mean).samples(centred, 1.0);
                }
                default -> throw new IllegalArgumentException(word);
            }
        }
        return builder.build();
    }
}
