package org.neckgeom.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Time and memory against size: the exponent that fits, and a drawing on logarithmic scales. */
final class GrowthTable {

    private static final int WIDTH = 340;
    private static final int HEIGHT = 260;
    private static final int LEFT = 62;
    private static final int BOTTOM = 40;
    private static final int TOP = 34;

    private record Point(double size, double micros, double bytes) {}

    /** The subject whose time grows fastest beside what n log n would fit over the same sizes. */
    record Steepest(String subject, double exponent, double ofLogLinear) {}

    private final Map<String, List<Point>> subjects = new LinkedHashMap<>();

    GrowthTable(List<String> lines) {
        for (String line : lines) {
            String[] cells = line.split(";");
            subjects.computeIfAbsent(cells[0], subject -> new ArrayList<>())
                    .add(new Point(
                            Double.parseDouble(cells[1]), Double.parseDouble(cells[2]), Double.parseDouble(cells[3])));
        }
    }

    /** As a table: the range, what the largest takes, and the exponents over its last decade and a half. */
    String toMarkdown() {
        StringBuilder out =
                new StringBuilder("| what | from .. to | the largest takes | time grows as | memory as | n log n is |\n"
                        + "| --- | --- | --- | --- | --- | --- |\n");
        subjects.forEach((subject, points) -> {
            Point last = points.get(points.size() - 1);
            out.append(String.format(
                    Locale.ROOT,
                    "| %s | %,.0f .. %,.0f | %s, %s | n^%.2f | n^%.2f | n^%.2f |%n",
                    subject,
                    points.get(0).size,
                    last.size,
                    Scores.time(last.micros * 1000),
                    Scores.size(last.bytes),
                    exponent(points, true),
                    exponent(points, false),
                    logLinear(points)));
        });
        return out.toString();
    }

    /** As the inside of a JSON object. */
    String toJson() {
        StringBuilder out = new StringBuilder();
        subjects.forEach((subject, points) -> {
            out.append(out.length() == 0 ? "" : ",\n")
                    .append(String.format(
                            Locale.ROOT,
                            "    \"%s\": {\"time exponent\": %.3f, \"memory exponent\": %.3f, \"points\": [",
                            subject,
                            exponent(points, true),
                            exponent(points, false)));
            for (int i = 0; i < points.size(); i++) {
                Point point = points.get(i);
                out.append(String.format(
                        Locale.ROOT,
                        "%s[%.0f, %.3f, %.0f]",
                        i == 0 ? "" : ", ",
                        point.size,
                        point.micros,
                        point.bytes));
            }
            out.append("]}");
        });
        return out.toString();
    }

    Steepest steepest() {
        return subjects.entrySet().stream()
                .map(one -> new Steepest(one.getKey(), exponent(one.getValue(), true), logLinear(one.getValue())))
                .max(Comparator.comparingDouble(one -> one.exponent() - one.ofLogLinear()))
                .orElseThrow();
    }

    /** The exponent that n log n itself would be given over these sizes. */
    private static double logLinear(List<Point> points) {
        return exponent(
                points.stream()
                        .map(point -> new Point(point.size, point.size * Math.log(point.size), 1))
                        .toList(),
                true);
    }

    /** Slope of the straight line nearest the logarithms, over sizes from a thirtieth of the largest on. */
    private static double exponent(List<Point> points, boolean time) {
        double from = points.get(points.size() - 1).size / 30;
        double n = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (Point point : points) {
            if (point.size >= from) {
                double x = Math.log(point.size);
                double y = Math.log(time ? point.micros : Math.max(1, point.bytes));
                n++;
                sx += x;
                sy += y;
                sxx += x * x;
                sxy += x * y;
            }
        }
        return (n * sxy - sx * sy) / (n * sxx - sx * sx);
    }

    /** One drawing of all subjects: a row each, time on the left, memory on the right. */
    String toSvg() {
        StringBuilder out = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" font-family=\"sans-serif\""
                        + " font-size=\"11\">%n<rect width=\"100%%\" height=\"100%%\" fill=\"white\"/>%n",
                2 * WIDTH,
                subjects.size() * HEIGHT));
        int row = 0;
        for (Map.Entry<String, List<Point>> subject : subjects.entrySet()) {
            panel(out, subject.getKey() + ": microseconds", subject.getValue(), true, 0, row * HEIGHT);
            panel(out, "bytes", subject.getValue(), false, WIDTH, row * HEIGHT);
            row++;
        }
        return out.append("</svg>\n").toString();
    }

    private static void panel(StringBuilder out, String title, List<Point> points, boolean time, int x0, int y0) {
        double[] xs = points.stream().mapToDouble(Point::size).toArray();
        double[] ys = points.stream()
                .mapToDouble(point -> time ? point.micros : Math.max(1, point.bytes))
                .toArray();
        double left = Math.floor(Math.log10(xs[0]));
        double right = Math.ceil(Math.log10(xs[xs.length - 1]));
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double y : ys) {
            low = Math.min(low, Math.floor(Math.log10(y)));
            high = Math.max(high, Math.ceil(Math.log10(y)));
        }
        high = Math.max(high, low + 1);
        double stepX = (WIDTH - LEFT - 12) / (right - left);
        double stepY = (HEIGHT - TOP - BOTTOM) / (high - low);
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%d\" y=\"%d\">%s, n^%.2f</text>%n",
                x0 + 8,
                y0 + 18,
                title,
                exponent(points, time)));
        for (double power = left; power <= right; power++) {
            double x = x0 + LEFT + (power - left) * stepX;
            line(out, x, y0 + TOP, x, y0 + HEIGHT - BOTTOM);
            label(out, x, y0 + HEIGHT - BOTTOM + 16, "middle", power);
        }
        for (double power = low; power <= high; power++) {
            double y = y0 + HEIGHT - BOTTOM - (power - low) * stepY;
            line(out, x0 + LEFT, y, x0 + WIDTH - 12, y);
            label(out, x0 + LEFT - 6, y + 4, "end", power);
        }
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < xs.length; i++) {
            double x = x0 + LEFT + (Math.log10(xs[i]) - left) * stepX;
            double y = y0 + HEIGHT - BOTTOM - (Math.log10(ys[i]) - low) * stepY;
            path.append(String.format(Locale.ROOT, "%s%.1f %.1f", i == 0 ? "M" : " L", x, y));
            out.append(String.format(Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"2.5\"/>%n", x, y));
        }
        out.append("<path d=\"").append(path).append("\" fill=\"none\" stroke=\"black\"/>\n");
    }

    private static void line(StringBuilder out, double x1, double y1, double x2, double y2) {
        out.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#ccc\"/>%n",
                x1,
                y1,
                x2,
                y2));
    }

    private static void label(StringBuilder out, double x, double y, String anchor, double power) {
        out.append(String.format(
                Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">1e%.0f</text>%n", x, y, anchor, power));
    }
}
