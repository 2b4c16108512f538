package org.neckgeom.examples;

import java.util.ArrayList;
import java.util.List;

/** A neck file in which a block that was commented out counts. */
public final class Uncommented {

    private Uncommented() {}

    /**
     * Returns the text with a block of it uncommented, as a maker would: its key and the lines below it.
     *
     * @param text of a neck file
     * @param key of the block, at the start of a line
     * @return the same text if no such block is commented out
     */
    public static String block(String text, String key) {
        List<String> lines = new ArrayList<>();
        boolean inside = false;
        for (String line : text.split("\n", -1)) {
            inside = line.startsWith("# " + key + ":") || inside && line.startsWith("#  ");
            lines.add(inside ? line.substring(2) : line);
        }
        return String.join("\n", lines);
    }
}
