package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of a value that came laid out for a fixed-width terminal, taken apart so that it can be laid out anew: how far
 * it was indented, the label before its first run of spaces, and the rest.
 *
 * @param indent leading spaces
 * @param label text before the first run of two or more spaces, may be empty
 * @param text the rest, runs of spaces made one
 * @param gap spaces between the two
 */
record ValueLine(int indent, String label, String text, int gap) {

    /** Returns the lines of a value, one or more. */
    static List<ValueLine> of(String value) {
        List<ValueLine> lines = new ArrayList<>();
        for (String line : value.split("\n", -1)) {
            String body = line.strip();
            int indent = body.isEmpty() ? 0 : line.indexOf(body.charAt(0));
            int run = body.indexOf("  ");
            if (run < 0) {
                lines.add(new ValueLine(indent, "", body, 0));
            } else {
                String rest = body.substring(run).strip();
                int gap = body.indexOf(rest, run) - run;
                lines.add(new ValueLine(indent, body.substring(0, run), rest.replaceAll("\\s{2,}", " "), gap));
            }
        }
        return lines;
    }
}
