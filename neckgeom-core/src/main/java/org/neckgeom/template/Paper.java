package org.neckgeom.template;

/** The paper templates are printed on, its long side across. */
public enum Paper {
    /** 297 mm x 210 mm (ISO 216). */
    A4(297, 210, "A4"),
    /** 11 in x 8 1/2 in (ANSI/ASME Y14.1 size A). */
    LETTER(279.4, 215.9, "letter");

    private final double across;
    private final double down;
    private final String css;

    Paper(double across, double down, String css) {
        this.across = across;
        this.down = down;
        this.css = css;
    }

    /** {@return the long side, across, in mm} */
    public double acrossMm() {
        return across;
    }

    /** {@return the short side, down, in mm} */
    public double downMm() {
        return down;
    }

    /** What a style sheet calls it. */
    String css() {
        return css;
    }
}
