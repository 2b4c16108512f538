package org.neckgeom.template;

import java.util.List;
import java.util.stream.IntStream;
import org.neckgeom.shape.Spot;

/** One mark of a template: a run of straight lines, an arc, or words; in mm, v upwards. */
sealed interface Mark {

    Layer layer();

    /** The same mark elsewhere. */
    Mark moved(double du, double dv);

    /** Points that bound it. */
    List<Spot> reach();

    /** Least u and v and most u and v of marks. */
    static double[] box(List<Mark> marks) {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (Mark mark : marks) {
            for (Spot p : mark.reach()) {
                box[0] = Math.min(box[0], p.uMm());
                box[1] = Math.min(box[1], p.vMm());
                box[2] = Math.max(box[2], p.uMm());
                box[3] = Math.max(box[3], p.vMm());
            }
        }
        return box;
    }

    /** Straight lines through points. */
    record Run(Layer layer, List<Spot> points) implements Mark {

        public Run {
            points = List.copyOf(points);
        }

        /** Through points, u and v of each in turn. */
        static Run through(Layer layer, double... uv) {
            return new Run(
                    layer,
                    IntStream.range(0, uv.length / 2)
                            .mapToObj(i -> new Spot(uv[2 * i], uv[2 * i + 1]))
                            .toList());
        }

        @Override
        public Run moved(double du, double dv) {
            return new Run(layer, points.stream().map(p -> p.plus(du, dv)).toList());
        }

        @Override
        public List<Spot> reach() {
            return points;
        }
    }

    /** An arc of less than half a circle, counter-clockwise from one angle to the other, in rad. */
    record Arc(Layer layer, Spot centre, double radius, double from, double to) implements Mark {

        Spot start() {
            return on(from);
        }

        Spot end() {
            return on(to);
        }

        private Spot on(double angle) {
            return centre.plus(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
        }

        @Override
        public Arc moved(double du, double dv) {
            return new Arc(layer, centre.plus(du, dv), radius, from, to);
        }

        @Override
        public List<Spot> reach() {
            return List.of(start(), on((from + to) / 2), end());
        }
    }

    /** Words on one line, starting or centred at a point, so high. */
    record Words(Spot at, double size, boolean centred, String text) implements Mark {

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
        public List<Spot> reach() {
            double wide = LETTER * size * text.length();
            Spot start = centred ? at.plus(-wide / 2, 0) : at;
            return List.of(start.plus(0, -0.3 * size), start.plus(wide, size));
        }
    }
}
