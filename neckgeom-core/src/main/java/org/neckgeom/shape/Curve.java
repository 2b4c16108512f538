package org.neckgeom.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.units.LibraryUnits;

/**
 * A curve over x in pieces, such as the neck's depth: straight, with the cosine of a volute, or the arc of a turn.
 * Immutable.
 *
 * <p>A knot is an x at which slope or curvature jumps; between two knots the curve is smooth. The first and the last
 * piece run on without end. Exact: a greatest value is sought among ends, knots and roots of the slope, not among
 * samples.
 */
public final class Curve {

    private static final int HALVINGS = 100;

    /** A slope that jumps by no more than this jumps by rounding alone. */
    private static final double SMOOTH = 1e-9;

    private final double[] knots;
    private final CurvePiece[] pieces;

    private Curve(double[] knots, CurvePiece[] pieces) {
        this.knots = knots;
        this.pieces = pieces;
    }

    /**
     * {@return the straight line of one value and one slope}
     *
     * @param xMm where it has the value
     * @param valueMm the value there
     * @param slope its growth per mm
     */
    public static Curve straight(double xMm, double valueMm, double slope) {
        return new Curve(new double[0], new CurvePiece[] {
            CurvePiece.straight(Spot.mm(xMm, "x"), Spot.mm(valueMm, "value"), Spot.mm(slope, "slope"))
        });
    }

    /**
     * {@return a curve of one value}
     *
     * @param valueMm the value at every x, in mm
     */
    public static Curve level(double valueMm) {
        return straight(0, valueMm, 0);
    }

    /**
     * {@return a copy with a cosine added, {@code height (1 + cos(pi (x - middle) / reach)) / 2}}
     *
     * @param heightMm at the middle, in mm
     * @param middleMm where it is highest; the curve must be straight there, as far as the cosine reaches
     * @param reachMm from the middle to where it has run out on each side, more than 0
     */
    public Curve raised(double heightMm, double middleMm, double reachMm) {
        Spot.mm(heightMm, "height of a cosine");
        Spot.mm(middleMm, "middle of a cosine");
        if (!(Spot.mm(reachMm, "reach of a curve") > 0)) {
            throw Refusal.of("reach of a curve", "more-than", "be more than 0 mm", reachMm + " mm");
        }
        Curve split = split(middleMm - reachMm, middleMm + reachMm);
        CurvePiece[] more = split.pieces.clone();
        for (int i = 0; i < more.length; i++) {
            double x = split.inside(i);
            if (Math.abs(x - middleMm) < reachMm) {
                if (!more[i].isStraight()) {
                    throw Refusal.of(
                            "cosine of a curve", "straight", "be added where the curve is straight", "is", this);
                }
                more[i] = more[i].waved(heightMm, middleMm, reachMm);
            }
        }
        return new Curve(split.knots, more);
    }

    /**
     * {@return a copy that leaves this curve at a station on an arc tangent to it, upward, and runs on straight once it is
     * steep enough}
     *
     * @param fromMm the station, where the curve is straight
     * @param radiusMm of the arc, more than 0
     * @param steepRad slope angle at which the arc ends, between the curve's own there and a right angle
     */
    public Curve turned(double fromMm, double radiusMm, double steepRad) {
        double first = StrictMath.atan(slopeAt(fromMm));
        if (!(Spot.mm(radiusMm, "radius") > 0) || !(steepRad > first) || !(steepRad < StrictMath.PI / 2)) {
            throw Refusal.of(
                    "turn of a curve",
                    "range",
                    "have a radius of more than 0 mm and end between the curve's own slope and 90 deg",
                    "has",
                    radiusMm + " mm and " + Math.toDegrees(steepRad) + " deg");
        }
        double centre = fromMm - radiusMm * StrictMath.sin(first);
        double level = valueAt(fromMm) + radiusMm * StrictMath.cos(first);
        double end = centre + radiusMm * StrictMath.sin(steepRad);
        Curve split = split(fromMm, end);
        List<Double> at = new ArrayList<>();
        List<CurvePiece> parts = new ArrayList<>();
        for (int i = 0; i < split.pieces.length && split.inside(i) < fromMm; i++) {
            parts.add(split.pieces[i]);
            if (i < split.knots.length && split.knots[i] <= fromMm) {
                at.add(split.knots[i]);
            }
        }
        parts.add(CurvePiece.arc(level, -1, radiusMm, centre));
        at.add(end);
        parts.add(CurvePiece.straight(end, level - radiusMm * StrictMath.cos(steepRad), StrictMath.tan(steepRad)));
        return new Curve(at.stream().mapToDouble(x -> x).toArray(), parts.toArray(CurvePiece[]::new));
    }

    /**
     * {@return a copy that stays level from a station on}
     *
     * @param fromMm the station
     */
    public Curve levelFrom(double fromMm) {
        Curve split = split(Spot.mm(fromMm, "station"));
        int kept = (int) DoubleStream.of(split.knots).filter(x -> x <= fromMm).count();
        CurvePiece[] parts = Arrays.copyOf(split.pieces, kept + 1);
        parts[kept] = CurvePiece.straight(fromMm, valueAt(fromMm), 0);
        return new Curve(Arrays.copyOf(split.knots, kept), parts);
    }

    /**
     * {@return a copy with straight corrections added: at each station its own, straight between them, beyond the first
     * and the last as there}
     *
     * @param stations ascending, at least one, in mm
     * @param more what is added at each, in mm
     */
    public Curve plus(double[] stations, double[] more) {
        if (Objects.requireNonNull(stations, "stations").length == 0
                || Objects.requireNonNull(more, "more").length != stations.length
                || !isAscending(stations)) {
            throw Refusal.of(
                    "stations",
                    "ascending",
                    "be one or more in ascending order, each with its correction",
                    "were",
                    stations.length + " with " + more.length + " corrections");
        }
        for (double correction : more) {
            Spot.mm(correction, "correction");
        }
        Curve split = split(stations);
        CurvePiece[] parts = split.pieces.clone();
        for (int i = 0; i < parts.length; i++) {
            double x = split.inside(i);
            int next = (int) DoubleStream.of(stations).filter(s -> s <= x).count();
            double slope = next == 0 || next == stations.length
                    ? 0
                    : (more[next] - more[next - 1]) / (stations[next] - stations[next - 1]);
            int base = Math.max(0, next - 1);
            parts[i] = parts[i].plus(stations[base], more[base], slope);
        }
        return new Curve(split.knots, parts);
    }

    private static boolean isAscending(double[] stations) {
        for (int i = 1; i < stations.length; i++) {
            if (!(stations[i] > stations[i - 1])) {
                return false;
            }
        }
        return stations[0] >= -LibraryUnits.MOST && stations[stations.length - 1] <= LibraryUnits.MOST;
    }

    /**
     * {@return the lesser of two curves at each x of a stretch, this curve outside it; a knot where they cross}
     *
     * @param other the other curve, of straight pieces only
     * @param fromMm from where on the other curve counts, in mm
     * @param toMm up to where it counts, in mm; outside, this curve goes on
     */
    public Curve least(Curve other, double fromMm, double toMm) {
        if (!(Spot.mm(toMm, "station") >= Spot.mm(fromMm, "station"))) {
            throw notAscending(fromMm, toMm);
        }
        Curve both = split(Objects.requireNonNull(other, "other").knots).split(fromMm, toMm);
        Curve there = other.split(both.knots);
        Set<Double> crossings = new TreeSet<>();
        for (int i = 0; i + 1 < both.knots.length; i++) {
            if (both.knots[i] >= fromMm && both.knots[i + 1] <= toMm) {
                crossings(both.pieces[i + 1].minus(there.pieces[i + 1]), both.knots[i], both.knots[i + 1], crossings);
            }
        }
        double[] at = crossings.stream().mapToDouble(x -> x).toArray();
        Curve mine = both.split(at);
        Curve its = there.split(at);
        CurvePiece[] lesser = new CurvePiece[mine.pieces.length];
        for (int i = 0; i < lesser.length; i++) {
            double x = mine.inside(i);
            boolean counts = x > fromMm && x < toMm;
            lesser[i] = counts && its.pieces[i].valueAt(x) < mine.pieces[i].valueAt(x) ? its.pieces[i] : mine.pieces[i];
        }
        return new Curve(mine.knots, lesser).joined();
    }

    /** Where a piece is 0 between two x, its roots of slope apart. */
    private static void crossings(CurvePiece gap, double from, double to, Set<Double> found) {
        double[] stops = DoubleStream.concat(DoubleStream.of(from, to), DoubleStream.of(gap.levelIn(from, to)))
                .sorted()
                .toArray();
        for (int i = 0; i + 1 < stops.length; i++) {
            if (gap.valueAt(stops[i]) > 0 != gap.valueAt(stops[i + 1]) > 0) {
                found.add(root(gap, stops[i], stops[i + 1]));
            }
        }
    }

    private static double root(CurvePiece gap, double from, double to) {
        double lo = from;
        double hi = to;
        boolean positive = gap.valueAt(from) > 0;
        for (int i = 0; i < HALVINGS && hi - lo > Math.ulp(lo); i++) {
            double middle = (lo + hi) / 2;
            if (gap.valueAt(middle) > 0 == positive) {
                lo = middle;
            } else {
                hi = middle;
            }
        }
        return (lo + hi) / 2;
    }

    /** The same with knots between equal pieces left out. */
    private Curve joined() {
        List<Double> at = new ArrayList<>();
        List<CurvePiece> parts = new ArrayList<>(List.of(pieces[0]));
        for (int i = 0; i < knots.length; i++) {
            if (!pieces[i + 1].equals(parts.get(parts.size() - 1))) {
                at.add(knots[i]);
                parts.add(pieces[i + 1]);
            }
        }
        return new Curve(at.stream().mapToDouble(x -> x).toArray(), parts.toArray(CurvePiece[]::new));
    }

    /**
     * {@return the value at a station, in mm}
     *
     * @param xMm the station
     */
    public double valueAt(double xMm) {
        return pieces[piece(Spot.mm(xMm, "station"))].valueAt(xMm);
    }

    /**
     * {@return the slope at a station: what the value grows by per mm; at a knot that after it}
     *
     * @param xMm the station
     */
    public double slopeAt(double xMm) {
        return pieces[piece(Spot.mm(xMm, "station"))].slopeAt(xMm);
    }

    /**
     * {@return the curve's curvature at a station, in 1/mm, positive where it bends upward; at a knot that after it}
     *
     * @param xMm the station
     */
    public double curvatureAt(double xMm) {
        double slope = slopeAt(xMm);
        double one = Math.sqrt(1 + slope * slope);
        return pieces[piece(xMm)].bendAt(xMm) / (one * one * one);
    }

    /** {@return the knots, ascending, in mm; a fresh array} */
    public double[] knots() {
        return knots.clone();
    }

    /** {@return the corners, those of the knots at which the slope jumps, ascending, in mm; a fresh array} */
    public double[] corners() {
        return IntStream.range(0, knots.length)
                .filter(i -> {
                    double before = pieces[i].slopeAt(knots[i]);
                    double after = pieces[i + 1].slopeAt(knots[i]);
                    return Math.abs(after - before) > SMOOTH * (1 + Math.abs(before));
                })
                .mapToDouble(i -> knots[i])
                .toArray();
    }

    /**
     * {@return the knots between two stations, both left out, in mm}
     *
     * @param fromMm the first station
     * @param toMm the second station
     */
    public double[] knotsIn(double fromMm, double toMm) {
        return DoubleStream.of(knots).filter(x -> x > fromMm && x < toMm).toArray();
    }

    /**
     * {@return the station of the greatest value between two stations, in mm; the first of several}
     *
     * @param fromMm the first station
     * @param toMm the second station, no less than the first
     */
    public double greatestIn(double fromMm, double toMm) {
        return best(fromMm, toMm, 1);
    }

    /**
     * {@return the station of the least value between two stations, in mm; the first of several}
     *
     * @param fromMm the first station
     * @param toMm the second station, no less than the first
     */
    public double leastIn(double fromMm, double toMm) {
        return best(fromMm, toMm, -1);
    }

    private static Refusal notAscending(double from, double to) {
        return Refusal.of("stations", "ascending", "be in ascending order", "were", from + " mm, " + to + " mm");
    }

    private double best(double from, double to, int sign) {
        if (!(Spot.mm(to, "station") >= Spot.mm(from, "station"))) {
            throw notAscending(from, to);
        }
        double best = from;
        double value = sign * valueAt(from);
        int last = piece(to);
        for (int i = piece(from); i <= last; i++) {
            double lo = i == 0 ? from : Math.max(from, knots[i - 1]);
            double hi = i == knots.length ? to : Math.min(to, knots[i]);
            for (double x : pieces[i].levelIn(lo, hi)) {
                if (sign * pieces[i].valueAt(x) > value) {
                    value = sign * pieces[i].valueAt(x);
                    best = x;
                }
            }
            if (sign * pieces[i].valueAt(hi) > value) {
                value = sign * pieces[i].valueAt(hi);
                best = hi;
            }
        }
        return best;
    }

    /**
     * {@return the first station from one to another at which the curve has risen to a value, in mm}
     *
     * @param valueMm the value, no less than that at the first station
     * @param fromMm the first station
     * @param toMm the second station, between which the curve does not fall
     * @throws org.neckgeom.fault.NoAnswer if it has not risen so far at the second station
     */
    public double risesTo(double valueMm, double fromMm, double toMm) {
        Spot.mm(valueMm, "value");
        if (!(valueAt(fromMm) <= valueMm && valueAt(toMm) >= valueMm)) {
            throw NoAnswer.because(
                    "curve", "not-reached", "the curve does not reach " + Spot.text(valueMm) + " mm there");
        }
        double lo = fromMm;
        double hi = toMm;
        for (int i = 0; i < HALVINGS && hi - lo > Math.ulp(lo); i++) {
            double middle = (lo + hi) / 2;
            if (valueAt(middle) >= valueMm) {
                hi = middle;
            } else {
                lo = middle;
            }
        }
        return hi;
    }

    /**
     * {@return the greatest slope and the greatest second derivative between two stations, either way, as upper bounds}
     *
     * @param fromMm the first station
     * @param toMm the second station
     */
    public double[] boundsIn(double fromMm, double toMm) {
        if (!(Spot.mm(toMm, "station") >= Spot.mm(fromMm, "station"))) {
            throw notAscending(fromMm, toMm);
        }
        double slope = 0;
        double bend = 0;
        int last = piece(toMm);
        for (int i = piece(fromMm); i <= last; i++) {
            double lo = i == 0 ? fromMm : Math.max(fromMm, knots[i - 1]);
            double hi = i == knots.length ? toMm : Math.min(toMm, knots[i]);
            slope = Math.max(slope, pieces[i].steepest(lo, hi));
            bend = Math.max(bend, pieces[i].mostBent(lo, hi));
        }
        return new double[] {slope, bend};
    }

    /**
     * {@return spots of the curve between two stations, so near each other that no chord leaves it by more than a tolerance; u is x,
     * v the value}
     *
     * @param fromMm the first station
     * @param toMm the second station, more than the first
     * @param toleranceMm more than 0, in mm
     */
    public List<Spot> chords(double fromMm, double toMm, double toleranceMm) {
        if (!(toMm > fromMm) || !(toleranceMm > 0)) {
            throw Refusal.of(
                    "chords of a curve",
                    "range",
                    "run from one station to a greater one within a tolerance of more than 0 mm",
                    "run",
                    fromMm + " mm to " + toMm + " mm within " + toleranceMm + " mm");
        }
        double[] ends = DoubleStream.concat(DoubleStream.of(fromMm, toMm), DoubleStream.of(knotsIn(fromMm, toMm)))
                .sorted()
                .toArray();
        List<Spot> spots = new ArrayList<>(List.of(new Spot(fromMm, valueAt(fromMm))));
        for (int i = 0; i + 1 < ends.length; i++) {
            double run = ends[i + 1] - ends[i];
            CurvePiece piece = pieces[piece((ends[i] + ends[i + 1]) / 2)];
            // A chord over a run h leaves a curve of second derivative b by b h^2 / 8 at most.
            int n = (int) Math.max(
                    1, Math.ceil(run * Math.sqrt(piece.mostBent(ends[i], ends[i + 1]) / (8 * toleranceMm))));
            for (int k = 1; k <= n; k++) {
                double x = k == n ? ends[i + 1] : ends[i] + run * k / n;
                spots.add(new Spot(x, piece.valueAt(x)));
            }
        }
        return List.copyOf(spots);
    }

    private int piece(double x) {
        int i = 0;
        while (i < knots.length && x >= knots[i]) {
            i++;
        }
        return i;
    }

    /** An x inside a piece. */
    private double inside(int i) {
        if (knots.length == 0) {
            return 0;
        }
        if (i == 0) {
            return knots[0] - 1;
        }
        return i == knots.length ? knots[i - 1] + 1 : (knots[i - 1] + knots[i]) / 2;
    }

    /** The same curve with more knots. */
    private Curve split(double... more) {
        double[] all = DoubleStream.concat(DoubleStream.of(knots), DoubleStream.of(more))
                .sorted()
                .distinct()
                .toArray();
        CurvePiece[] parts = new CurvePiece[all.length + 1];
        for (int i = 0; i < parts.length; i++) {
            double x = i == 0 ? (all.length == 0 ? 0 : all[0] - 1) : all[i - 1];
            parts[i] = pieces[piece(x)];
        }
        return new Curve(all, parts);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Curve that && Arrays.equals(knots, that.knots) && Arrays.equals(pieces, that.pieces);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(knots) + Arrays.hashCode(pieces);
    }

    /** {@return such as {@code curve of 3 pieces}} */
    @Override
    public String toString() {
        return pieces.length == 1 ? "curve of 1 piece" : "curve of " + pieces.length + " pieces";
    }
}
