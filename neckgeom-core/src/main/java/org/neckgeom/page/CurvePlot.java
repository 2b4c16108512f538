package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.neckgeom.shape.Spot;

/**
 * Curves over one axis: each with its name at its own place, limits dashed, figures at both axes. Plots of the same range lie
 * under each other point by point. Not shared between threads.
 */
final class CurvePlot {

    private static final double LEFT = 68;
    private static final double RIGHT = 10;
    private static final double TOP = 14;
    private static final double HEIGHT = 120;
    private static final double FLOOR = TOP + HEIGHT;
    private static final double BELOW = 38;
    private static final int MOST_TICKS = 4;
    private static final double NONE = 1e-9;
    /** Less than this shows as a line along the axis. */
    private static final double FLAT_MM = 0.02;

    private static final double[] STEPS = {1, 2, 5};

    /** A curve or a limit. */
    private record Run(String look, String name, double namedAt, List<Spot> points) {}

    /** A place of the axis. */
    private record Place(double at, String words) {}

    private final String title;
    private final double low;
    private final double high;
    private final List<Run> runs = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();

    CurvePlot(String title, double low, double high) {
        this.title = title;
        this.low = low;
        this.high = high;
    }

    /** Adds a curve; its name is written over it at a share of its way. */
    CurvePlot curve(String name, double namedAt, List<Spot> points) {
        runs.add(new Run("reading", name, namedAt, List.copyOf(points)));
        return this;
    }

    /** Adds a value that is kept all along. */
    CurvePlot limit(String name, double namedAt, double value) {
        runs.add(new Run("limit", name, namedAt, List.of(new Spot(low, value), new Spot(high, value))));
        return this;
    }

    /** Names a place of the axis. */
    CurvePlot place(double at, String words) {
        places.add(new Place(at, words));
        return this;
    }

    /**
     * Draws it.
     *
     * @param unit of the values, in library units
     * @param tick how a value is written
     */
    Drawing drawn(String words, double unit, DoubleFunction<String> tick) {
        double least = 0;
        double most = FLAT_MM;
        for (Run run : runs) {
            for (Spot point : run.points()) {
                least = Math.min(least, point.vMm());
                most = Math.max(most, point.vMm());
            }
        }
        double step = unit * step((most - least) / unit);
        double top = StrictMath.ceil(most / step - NONE) * step;
        double bottom = StrictMath.floor(least / step + NONE) * step;
        Drawing drawing = new Drawing(title, words, FLOOR + BELOW);
        for (long i = Math.round(bottom / step); i <= Math.round(top / step); i++) {
            double v = v(i * step, bottom, top);
            drawing.line(i == 0 ? "axis" : "grid", LEFT, v, Drawing.WIDTH - RIGHT, v);
            drawing.label("words", "end", LEFT - 5, v + 4, tick.apply(i * step));
        }
        for (Place place : places) {
            double u = u(place.at());
            drawing.line("leader", u, FLOOR, u, FLOOR + 5);
            drawing.label("words", anchor(u), u, FLOOR + 20, place.words());
        }
        for (Run run : runs) {
            List<Spot> line = run.points().stream()
                    .map(p -> new Spot(u(p.uMm()), v(p.vMm(), bottom, top)))
                    .toList();
            drawing.through(run.look(), line);
            Spot at = line.get((int) Math.round((line.size() - 1) * run.namedAt()));
            drawing.label("words halo", anchor(at.uMm()), at.uMm(), at.vMm() - 6, run.name());
        }
        return drawing;
    }

    private static String anchor(double u) {
        return u < Drawing.WIDTH / 3 ? "start" : u > 2 * Drawing.WIDTH / 3 ? "end" : "middle";
    }

    private double u(double x) {
        return LEFT + (Drawing.WIDTH - LEFT - RIGHT) * (x - low) / (high - low);
    }

    private static double v(double value, double bottom, double top) {
        return FLOOR - HEIGHT * (value - bottom) / (top - bottom);
    }

    /** 1, 2 or 5 times a power of ten, the smallest that needs no more ticks than there is room for. */
    private static double step(double range) {
        double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(range / MOST_TICKS)));
        for (double step : STEPS) {
            if (range / (step * power) <= MOST_TICKS) {
                return step * power;
            }
        }
        return 10 * power;
    }
}
