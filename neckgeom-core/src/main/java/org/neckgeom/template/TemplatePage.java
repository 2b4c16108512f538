package org.neckgeom.template;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;

/**
 * One sheet of paper of the templates, such as page A2 of the plan: a window on its part's drawing, at full size, with
 * crosses to join it to its neighbours by. Immutable.
 */
public final class TemplatePage {

    /** Edge that printers leave white. */
    static final double MARGIN = 10;

    /** Room for the lines that frame the window. */
    private static final double EDGE = 0.2;

    private static final double HEADING = 2.6;
    private static final double HEADING_BELOW_EDGE = 6.5;

    /** How far the chords of an arc may leave it. */
    private static final double SAGITTA = 0.002;

    private final Paper paper;
    private final boolean upright;
    private final String heading;
    private final List<Mark> marks;
    private final double left;
    private final double bottom;

    /**
     * A window on a drawing.
     *
     * @param marks what is drawn, v upwards
     * @param left the window's left edge in the drawing
     * @param bottom its lower edge
     */
    TemplatePage(Paper paper, String heading, List<Mark> marks, double left, double bottom) {
        this(paper, false, heading, marks, left, bottom);
    }

    TemplatePage(Paper paper, boolean upright, String heading, List<Mark> marks, double left, double bottom) {
        this.paper = paper;
        this.upright = upright;
        this.heading = heading;
        this.marks = List.copyOf(marks);
        this.left = left;
        this.bottom = bottom;
    }

    /** {@return the paper} */
    public Paper paper() {
        return paper;
    }

    /** {@return whether its long side is upright, not across} */
    public boolean isUpright() {
        return upright;
    }

    /** {@return the side of the paper that lies across, in mm} */
    public double acrossMm() {
        return upright ? paper.downMm() : paper.acrossMm();
    }

    /** {@return the side of the paper that runs down, in mm} */
    public double downMm() {
        return upright ? paper.acrossMm() : paper.downMm();
    }

    /** {@return the heading of the page, such as {@code Octave mandolin: plan, page A2 of 4}} */
    public String heading() {
        return heading;
    }

    List<Mark> marks() {
        return marks;
    }

    double left() {
        return left;
    }

    double bottom() {
        return bottom;
    }

    /** Returns what the white edges leave of a side of the paper. */
    static double window(double side) {
        return side - 2 * MARGIN;
    }

    static double windowAcross(Paper paper) {
        return window(paper.acrossMm());
    }

    static double windowDown(Paper paper) {
        return window(paper.downMm());
    }

    /**
     * Draws the page at full size. Arcs come as chords that leave them by less than 0.002 mm.
     *
     * @param canvas a sheet of {@link #acrossMm} by {@link #downMm}
     */
    public void drawOn(TemplateCanvas canvas) {
        Objects.requireNonNull(canvas, "canvas");
        canvas.window(MARGIN - EDGE, MARGIN - EDGE, window(acrossMm()) + 2 * EDGE, window(downMm()) + 2 * EDGE);
        for (Layer layer : Layer.values()) {
            List<Mark> own =
                    marks.stream().filter(mark -> mark.layer() == layer).toList();
            if (own.stream().anyMatch(Stroke.class::isInstance)) {
                canvas.pen(layer.widthMm(), layer.lineType().dashesMm());
            }
            own.forEach(mark -> draw(canvas, mark.moved(MARGIN - left, MARGIN - bottom)));
        }
        canvas.window(0, 0, acrossMm(), downMm());
        canvas.words(MARGIN, downMm() - HEADING_BELOW_EDGE, HEADING, false, heading);
    }

    private static void draw(TemplateCanvas canvas, Mark mark) {
        if (mark instanceof Stroke stroke) {
            double[] uv = stroke.line().straightened(SAGITTA).toMm();
            if (stroke.line().isClosed()) {
                uv = Arrays.copyOf(uv, uv.length + 2);
                uv[uv.length - 2] = uv[0];
                uv[uv.length - 1] = uv[1];
            }
            canvas.through(uv);
        } else if (mark instanceof Words words) {
            canvas.words(words.at().uMm(), words.at().vMm(), words.size(), words.centred(), words.text());
        }
    }

    /** True for the same drawing in the same window of the same paper. */
    @Override
    public boolean equals(Object other) {
        return other instanceof TemplatePage that
                && paper == that.paper
                && upright == that.upright
                && heading.equals(that.heading)
                && marks.equals(that.marks)
                && Double.compare(left, that.left) == 0
                && Double.compare(bottom, that.bottom) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(paper, upright, heading, marks, left, bottom);
    }

    /** Returns the heading and the paper. */
    @Override
    public String toString() {
        return heading + ", on " + paper.css();
    }
}
