package org.neckgeom.template;

/**
 * The canvas of a page of templates, such as a page of a PDF: full size, in mm from the paper's lower left corner, u
 * to the right and v up. Lines are black on white.
 */
public interface TemplateCanvas {

    /**
     * Lets nothing be drawn outside a window of the paper, until the next one.
     *
     * @param leftMm its left edge
     * @param bottomMm its lower edge
     * @param widthMm more than 0
     * @param heightMm more than 0
     */
    void window(double leftMm, double bottomMm, double widthMm, double heightMm);

    /**
     * Takes another pen for the lines that follow.
     *
     * @param widthMm of its lines, more than 0
     * @param dashesMm lengths of dash, gap, dash and so on; none for an unbroken line
     */
    void pen(double widthMm, double... dashesMm);

    /**
     * Draws straight lines from point to point.
     *
     * @param uvMm u and v of two points or more
     */
    void through(double... uvMm);

    /**
     * Writes words on one line.
     *
     * @param uMm where they start, or their middle
     * @param vMm the line they stand on
     * @param sizeMm height of a capital letter
     * @param centred whether u is their middle
     * @param text the words
     */
    void words(double uMm, double vMm, double sizeMm, boolean centred, String text);
}
