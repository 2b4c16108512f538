package org.neckgeom.template;

import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.neckgeom.text.Numbers;

/** How a line is drawn: unbroken, or in dashes; a line type in CAD. */
enum LineType {
    CONTINUOUS("unbroken"),
    CENTER("long and short dashes", 6, 1.5, 1, 1.5),
    DASHED("dashes", 4, 2),
    HIDDEN("short dashes", 2, 1);

    private final String words;
    private final double[] dashes;

    LineType(String words, double... dashes) {
        this.words = words;
        this.dashes = dashes;
    }

    String words() {
        return words;
    }

    /** Lengths of dash, gap, dash and so on; none for an unbroken line. */
    double[] dashesMm() {
        return dashes.clone();
    }

    /** The same for SVG. */
    String dashes() {
        return DoubleStream.of(dashes).mapToObj(mm -> Numbers.trimmed(mm, 2)).collect(Collectors.joining(" "));
    }
}
