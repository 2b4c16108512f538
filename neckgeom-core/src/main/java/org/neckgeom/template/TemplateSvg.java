package org.neckgeom.template;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.neckgeom.drawing.Markup;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Arc;
import org.neckgeom.template.Mark.Run;
import org.neckgeom.template.Mark.Words;
import org.neckgeom.text.Numbers;

/** Marks as a drawing at full size: black on white, one unit of its own is a millimetre. */
final class TemplateSvg {

    private static final int DECIMALS = 4;

    private TemplateSvg() {}

    /** The whole sheet as a file of its own. */
    static String of(List<Mark> marks, double width, double height, String title, String description) {
        Markup svg = new Markup();
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "width",
                n(width) + "mm",
                "height",
                n(height) + "mm",
                "viewBox",
                "0 0 " + n(width) + " " + n(height),
                "role",
                "img",
                "aria-labelledby",
                "template-title template-desc");
        svg.element("title", title, "id", "template-title").element("desc", description, "id", "template-desc");
        svg.empty("rect", "width", n(width), "height", n(height), "fill", "#ffffff");
        draw(svg, marks, height);
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg.close() + "\n";
    }

    /** Draws the marks, a group to a layer, turned so that v runs down from the given height. */
    static void draw(Markup svg, List<Mark> marks, double height) {
        for (Layer layer : Layer.values()) {
            List<Mark> own = marks.stream().filter(m -> m.layer() == layer).toList();
            if (own.isEmpty()) {
                continue;
            }
            if (layer == Layer.WORDS) {
                svg.open("g", "class", "words", "fill", "#000000", "font-family", "sans-serif");
            } else if (layer.dashes().isEmpty()) {
                svg.open("g", "class", name(layer), "fill", "none", "stroke", "#000000", "stroke-width", layer.width());
            } else {
                svg.open(
                        "g",
                        "class",
                        name(layer),
                        "fill",
                        "none",
                        "stroke",
                        "#000000",
                        "stroke-width",
                        layer.width(),
                        "stroke-dasharray",
                        layer.dashes());
            }
            own.forEach(mark -> draw(svg, mark, height));
            svg.close();
        }
    }

    private static String name(Layer layer) {
        return layer.name().toLowerCase(Locale.ROOT);
    }

    private static void draw(Markup svg, Mark mark, double height) {
        if (mark instanceof Run run && run.points().size() == 2) {
            Spot a = run.points().get(0);
            Spot b = run.points().get(1);
            svg.empty("line", "x1", n(a.uMm()), "y1", n(height - a.vMm()), "x2", n(b.uMm()), "y2", n(height - b.vMm()));
        } else if (mark instanceof Run run) {
            svg.empty(
                    "polyline",
                    "points",
                    run.points().stream()
                            .map(p -> n(p.uMm()) + "," + n(height - p.vMm()))
                            .collect(Collectors.joining(" ")));
        } else if (mark instanceof Arc arc) {
            // Counter-clockwise with v up is the sweep 0 once v runs down; always less than half a circle.
            String r = n(arc.radius());
            svg.empty(
                    "path",
                    "d",
                    "M " + n(arc.start().uMm()) + " " + n(height - arc.start().vMm()) + " A " + r + " " + r + " 0 0 0 "
                            + n(arc.end().uMm()) + " " + n(height - arc.end().vMm()));
        } else if (mark instanceof Words words) {
            svg.element(
                    "text",
                    words.text(),
                    "x",
                    n(words.at().uMm()),
                    "y",
                    n(height - words.at().vMm()),
                    "font-size",
                    n(words.size() * 1.3),
                    "text-anchor",
                    words.centred() ? "middle" : "start");
        }
    }

    private static String n(double value) {
        return Numbers.trimmed(value, DECIMALS);
    }
}
