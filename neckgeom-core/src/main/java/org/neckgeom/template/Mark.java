package org.neckgeom.template;

import java.util.List;
import org.neckgeom.drawing.Point;

/** One mark of a template: a run of straight lines, an arc, or words; in mm, v upwards. */
sealed interface Mark {

    Layer layer();

    /** The same mark elsewhere. */
    Mark moved(double du, double dv);

    /** Points that bound it. */
    List<Point> reach();

    /** Straight lines through points. */
    record Run(Layer layer, List<Point> points) implements Mark {

        public Run {
            points = List.copyOf(points);
        }

        static Run line(Layer layer, double u1, double v1, double u2, double v2) {
            return new Run(layer, List.of(new Point(u1, v1), new Point(u2, v2)));
        }

        @Override
        public Run moved(double du, double dv) {
            return new Run(layer, points.stream().map(p -> p.plus(du, dv)).toList());
        }

        @Override
        public List<Point> reach() {
            return points;
        }
    }

    /** An arc of less than half a circle, counter-clockwise from one angle to the other, in rad. */
    record Arc(Layer layer, Point centre, double radius, double from, double to) implements Mark {

        Point start() {
            return on(from);
        }

        Point end() {
            return on(to);
        }

        private Point on(double angle) {
            return centre.plus(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
        }

        @Override
        public Arc moved(double du, double dv) {
            return new Arc(layer, centre.plus(du, dv), radius, from, to);
        }

        @Override
        public List<Point> reach() {
            return List.of(start(), on((from + to) / 2), end());
        }
    }

    /** Words on one line, starting or centred at a point, so high. */
    record Words(Point at, double size, boolean centred, String text) implements Mark {

        /** Width of a letter in heights, on the wide side. */
        private static final double LETTER = 0.7;

        @Override
        public Layer layer() {
            return Layer.WORDS;
        }

        @Override
        public Words moved(double du, double dv) {
            return new Words(at.plus(du, dv), size, centred, text);
        }

        @Override
        public List<Point> reach() {
            double wide = LETTER * size * text.length();
            Point start = centred ? at.plus(-wide / 2, 0) : at;
            return List.of(start.plus(0, -0.3 * size), start.plus(wide, size));
        }
    }
}
