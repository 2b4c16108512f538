package org.neckgeom.template;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.neckgeom.drawing.Markup;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Stroke;
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
            svg.open("g", attributes(layer));
            own.forEach(mark -> draw(svg, mark, height));
            svg.close();
        }
    }

    private static String[] attributes(Layer layer) {
        List<String> all = new ArrayList<>(List.of("class", layer.name().toLowerCase(Locale.ROOT)));
        all.addAll(List.of("fill", "none", "stroke", "#000000", "stroke-width", layer.width()));
        String dashes = layer.lineType().dashes();
        if (!dashes.isEmpty()) {
            all.addAll(List.of("stroke-dasharray", dashes));
        }
        return all.toArray(String[]::new);
    }

    private static void draw(Markup svg, Mark mark, double height) {
        if (mark instanceof Stroke stroke) {
            draw(svg, stroke.line(), height);
        } else if (mark instanceof Words words) {
            svg.element("text", words.text(), attributes(words, height));
        }
    }

    /** Words are as wide in every font as they were laid out, so that none runs over an edge. */
    private static String[] attributes(Words words, double height) {
        List<String> all = new ArrayList<>(List.of(
                "x",
                n(words.at().uMm()),
                "y",
                n(height - words.at().vMm()),
                "font-size",
                n(words.size() * LetterWidths.FONT),
                "font-family",
                "sans-serif",
                "fill",
                "#000000",
                "stroke",
                "none",
                "text-anchor",
                words.centred() ? "middle" : "start"));
        if (LetterWidths.areKnown(words.text())) {
            all.addAll(List.of(
                    "textLength", n(LetterWidths.mm(words.text(), words.size())), "lengthAdjust", "spacingAndGlyphs"));
        }
        return all.toArray(String[]::new);
    }

    private static void draw(Markup svg, Polyline line, double height) {
        List<Spot> spots = line.spots();
        boolean curved = Arrays.stream(line.bulges()).anyMatch(bulge -> bulge != 0);
        if (curved) {
            svg.empty("path", "d", path(line, height));
        } else if (spots.size() == 2) {
            Spot a = spots.get(0);
            Spot b = spots.get(1);
            svg.empty("line", "x1", n(a.uMm()), "y1", n(height - a.vMm()), "x2", n(b.uMm()), "y2", n(height - b.vMm()));
        } else {
            svg.empty(
                    line.isClosed() ? "polygon" : "polyline",
                    "points",
                    spots.stream()
                            .map(p -> n(p.uMm()) + "," + n(height - p.vMm()))
                            .collect(Collectors.joining(" ")));
        }
    }

    /** Lines and arcs; counter-clockwise with v up is the sweep 0 once v runs down. */
    private static String path(Polyline line, double height) {
        List<Spot> spots = line.spots();
        double[] bulges = line.bulges();
        StringBuilder d = new StringBuilder("M ").append(place(spots.get(0), height));
        int edges = line.isClosed() ? bulges.length : bulges.length - 1;
        for (int i = 0; i < edges; i++) {
            Spot to = spots.get((i + 1) % bulges.length);
            double bulge = bulges[i];
            if (bulge == 0) {
                d.append(" L ");
            } else {
                double square = bulge * bulge;
                double radius = spots.get(i).distanceMm(to) * (1 + square) / (4 * Math.abs(bulge));
                d.append(" A ").append(n(radius)).append(' ').append(n(radius)).append(" 0 ");
                d.append(square > 1 ? 1 : 0).append(bulge > 0 ? " 0 " : " 1 ");
            }
            d.append(place(to, height));
        }
        return line.isClosed() ? d.append(" Z").toString() : d.toString();
    }

    private static String place(Spot spot, double height) {
        return n(spot.uMm()) + " " + n(height - spot.vMm());
    }

    private static String n(double value) {
        return Numbers.trimmed(value, DECIMALS);
    }
}
