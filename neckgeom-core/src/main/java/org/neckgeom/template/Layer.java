package org.neckgeom.template;

import java.util.Arrays;

/** The kind of a line of a template; a layer in CAD, a group in SVG. */
enum Layer {
    /** Edges to cut or carve to. */
    OUTLINE(7, "0.25", ""),
    /** Centrelines and stations to line up on. */
    CENTRE(8, "0.15", "6 1.5 1 1.5"),
    /** Fret lines, from edge to edge. */
    FRETS(5, "0.15", ""),
    /** The middles of the strings. */
    STRINGS(4, "0.1", ""),
    /** The rod's channel and pocket. */
    CHANNEL(1, "0.2", ""),
    /** The scarf's lines. */
    SCARF(6, "0.2", "2 1"),
    /** Room for an outline that is the maker's own. */
    ENVELOPE(3, "0.2", "4 2"),
    /** Bars to measure the print by. */
    CHECK(2, "0.25", ""),
    /** Words. */
    WORDS(7, "0", "");

    private final int colour;
    private final String width;
    private final String dashes;

    Layer(int colour, String width, String dashes) {
        this.colour = colour;
        this.width = width;
        this.dashes = dashes;
    }

    /** Colour number of the CAD layer. */
    int colour() {
        return colour;
    }

    /** Width of its lines on paper in mm. */
    String width() {
        return width;
    }

    double widthMm() {
        return Double.parseDouble(width);
    }

    /** The same lengths as numbers; none for an unbroken line. */
    double[] dashesMm() {
        return dashes.isEmpty()
                ? new double[0]
                : Arrays.stream(dashes.split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
    }

    /** Lengths of dashes and gaps in mm, empty for an unbroken line. */
    String dashes() {
        return dashes;
    }
}
