package org.neckgeom.validation;

import java.util.Map;

/** Figures of src/test/resources/practice/practice-2-figures.csv, computed by the script beside it, by their ids. */
public final class PracticeFigures {

    private PracticeFigures() {}

    /** The value of a figure such as {@code Q6bass}. */
    public static double of(String id) {
        for (Map<String, String> row : Rows.of("/practice/practice-2-figures.csv")) {
            if (row.get("id").equals(id)) {
                return Rows.number(row, "value");
            }
        }
        throw new AssertionError("no figure " + id);
    }
}
