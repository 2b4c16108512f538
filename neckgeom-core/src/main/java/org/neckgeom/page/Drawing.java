package org.neckgeom.page;

import java.util.List;
import java.util.stream.Collectors;
import org.neckgeom.drawing.Markup;
import org.neckgeom.shape.Spot;
import org.neckgeom.text.Numbers;

/**
 * One drawing of the page, in its own units with v downwards: shapes, lines and labels with a name of their look, which
 * the page's style sheet knows. Its width is that of a phone, so that labels keep their size there. Not shared between
 * threads.
 */
final class Drawing {

    /** Width of every drawing: a phone's 360 pixels less the page's edges. */
    static final double WIDTH = 336;

    private final Markup body = new Markup();
    private final String title;
    private final String description;
    private final double height;

    Drawing(String title, String description, double height) {
        this.title = title;
        this.description = description;
        this.height = height;
    }

    String title() {
        return title;
    }

    Drawing line(String look, double u1, double v1, double u2, double v2) {
        body.empty("line", "class", look, "x1", n(u1), "y1", n(v1), "x2", n(u2), "y2", n(v2));
        return this;
    }

    /** Draws an open line through points. */
    Drawing through(String look, List<Spot> points) {
        body.empty("polyline", "class", look, "points", coordinates(points));
        return this;
    }

    /** Draws a closed shape. */
    Drawing shape(String look, List<Spot> points) {
        body.empty("polygon", "class", look, "points", coordinates(points));
        return this;
    }

    Drawing dot(Spot at) {
        body.empty("circle", "class", "dot", "cx", n(at.uMm()), "cy", n(at.vMm()), "r", "2");
        return this;
    }

    /** A post, seen from above. */
    Drawing ring(Spot at) {
        body.empty("circle", "class", "post", "cx", n(at.uMm()), "cy", n(at.vMm()), "r", "3");
        return this;
    }

    /** Writes a label; the look gives its anchor: {@code start}, {@code middle} or {@code end}. */
    Drawing label(String look, String anchor, double u, double v, String text) {
        body.element("text", text, "class", look, "text-anchor", anchor, "x", n(u), "y", n(v));
        return this;
    }

    /** Returns the picture with its text alternative, which takes its ids from the key given. */
    String toSvg(String key) {
        Markup svg = new Markup();
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "role",
                "img",
                "aria-labelledby",
                key + "-title " + key + "-desc",
                "viewBox",
                "0 0 " + n(WIDTH) + " " + n(height));
        svg.element("title", title, "id", key + "-title").element("desc", description, "id", key + "-desc");
        return svg.append("\n").append(body.toString()).append("\n").close().toString();
    }

    private static String coordinates(List<Spot> points) {
        return points.stream().map(p -> n(p.uMm()) + "," + n(p.vMm())).collect(Collectors.joining(" "));
    }

    private static String n(double value) {
        return Numbers.trimmed(value, 2);
    }
}
