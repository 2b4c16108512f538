package org.neckgeom.template;

/** The meaning of a line of a template; a layer in CAD, a group in SVG. */
enum Layer {
    /** Edges to cut to. */
    OUTLINE(7, "0.25", LineType.CONTINUOUS),
    /** The neck's back, to carve to. */
    BACK(30, "0.25", LineType.CONTINUOUS),
    /** Fret lines, from edge to edge. */
    FRETS(5, "0.15", LineType.CONTINUOUS),
    /** The middles of the strings. */
    STRINGS(4, "0.1", LineType.CONTINUOUS),
    /** Where the strings leave their posts. */
    POSTS(40, "0.15", LineType.CONTINUOUS),
    /** The rod's channel and pocket. */
    CHANNEL(1, "0.2", LineType.CONTINUOUS),
    /** Centrelines and stations to line up on. */
    CENTRE(8, "0.15", LineType.CENTER),
    /** Lines to saw or trim to: the scarf, the end of a veneer. */
    CUT(6, "0.2", LineType.HIDDEN),
    /** Room for an outline that is the maker's own, seams of wings, hidden edges. */
    ENVELOPE(3, "0.2", LineType.DASHED),
    /** Words. */
    TEXT(7, "0", LineType.CONTINUOUS),
    /** Bars to measure the print by, and their lengths. */
    SCALE(2, "0.25", LineType.CONTINUOUS);

    private final int colour;
    private final String width;
    private final LineType lineType;

    Layer(int colour, String width, LineType lineType) {
        this.colour = colour;
        this.width = width;
        this.lineType = lineType;
    }

    /** Colour number of the CAD layer. */
    int colour() {
        return colour;
    }

    LineType lineType() {
        return lineType;
    }

    /** Width of its lines on paper in mm. */
    String width() {
        return width;
    }

    double widthMm() {
        return Double.parseDouble(width);
    }
}
