package org.neckgeom.template;

import java.util.List;
import java.util.stream.IntStream;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;

/** One mark of a template: a line with or without arcs, or words; in mm, v upwards. */
sealed interface Mark {

    Layer layer();

    /** The same mark elsewhere. */
    Mark moved(double du, double dv);

    /** Least u and v, then greatest, of all of it: the bellies of arcs and the letters too. */
    double[] box();

    /** Least u and v and most u and v of marks. */
    static double[] box(List<Mark> marks) {
        double[] all = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (Mark mark : marks) {
            double[] box = mark.box();
            all[0] = Math.min(all[0], box[0]);
            all[1] = Math.min(all[1], box[1]);
            all[2] = Math.max(all[2], box[2]);
            all[3] = Math.max(all[3], box[3]);
        }
        return all;
    }

    /** Straight lines and arcs, open or closed. */
    record Stroke(Layer layer, Polyline line) implements Mark {

        /** Straight lines through points, u and v of each in turn. */
        static Stroke through(Layer layer, double... uv) {
            return new Stroke(layer, Polyline.open(spots(uv)));
        }

        /** An outline through points, u and v of each in turn, counter-clockwise whichever way they run. */
        static Stroke round(Layer layer, double... uv) {
            return round(layer, spots(uv));
        }

        static Stroke round(Layer layer, List<Spot> spots) {
            Polyline line = Polyline.closed(spots);
            return new Stroke(layer, line.areaMm2() < 0 ? line.reversed() : line);
        }

        private static List<Spot> spots(double... uv) {
            return IntStream.range(0, uv.length / 2)
                    .mapToObj(i -> new Spot(uv[2 * i], uv[2 * i + 1]))
                    .toList();
        }

        @Override
        public Stroke moved(double du, double dv) {
            return new Stroke(layer, line.plus(du, dv));
        }

        @Override
        public double[] box() {
            return line.extentsMm();
        }
    }

    /** Words on one line, starting or centred at a point, so high. */
    record Words(Layer layer, Spot at, double size, boolean centred, String text) implements Mark {

        /** Width of a letter in heights, on the wide side. */
        private static final double LETTER = 0.7;

        /** How far letters reach below their line, in heights. */
        private static final double BELOW = 0.3;

        Words(Spot at, double size, boolean centred, String text) {
            this(Layer.TEXT, at, size, centred, text);
        }

        @Override
        public Words moved(double du, double dv) {
            return new Words(layer, at.plus(du, dv), size, centred, text);
        }

        @Override
        public double[] box() {
            double wide = LETTER * size * text.length();
            double left = centred ? at.uMm() - wide / 2 : at.uMm();
            return new double[] {left, at.vMm() - BELOW * size, left + wide, at.vMm() + size};
        }
    }
}
