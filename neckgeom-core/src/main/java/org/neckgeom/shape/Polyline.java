package org.neckgeom.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.neckgeom.fault.Refusal;
import org.neckgeom.units.LibraryUnits;

/**
 * A run of straight lines and arcs through spots of a plane, open or closed. Immutable.
 *
 * <p>The line after a spot is straight, or an arc by its bulge: {@code bulge = tan(angle / 4)} of the included angle,
 * positive counter-clockwise, so 1 is half a circle; the sagitta is {@code bulge * chord / 2}. Closed outlines run
 * counter-clockwise, holes clockwise. Exact, but for {@link #straightened}.
 */
public final class Polyline {

    /** Arcs of a greater bulge are all but whole circles, of a smaller one straight: a chord of 1 m rises 5e-10 mm. */
    private static final double MOST_BULGE = 1e6;

    private static final double LEAST_BULGE = 1e-12;
    private static final double LEAST_TOLERANCE_MM = 1e-6;

    private final List<Spot> spots;
    private final double[] bulges;
    private final boolean closed;

    private Polyline(List<Spot> spots, double[] bulges, boolean closed) {
        spots.forEach(spot -> Objects.requireNonNull(spot, "spot"));
        this.spots = List.copyOf(spots);
        this.bulges = bulges;
        this.closed = closed;
        if (this.spots.size() < (closed && isStraight(bulges) ? 3 : 2)) {
            throw Refusal.of(
                    "spots of a polyline",
                    "at-least",
                    closed ? "be 3 or more of a closed one, or 2 with an arc" : "be 2 or more",
                    "were",
                    this.spots.size());
        }
    }

    private static boolean isStraight(double[] bulges) {
        for (double bulge : bulges) {
            if (bulge != 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * {@return straight lines from spot to spot}
     *
     * @param spots two or more
     */
    public static Polyline open(List<Spot> spots) {
        return new Polyline(
                spots, new double[Objects.requireNonNull(spots, "spots").size()], false);
    }

    /**
     * {@return straight lines from spot to spot and back to the first}
     *
     * @param spots three or more, the first not repeated at the end
     */
    public static Polyline closed(List<Spot> spots) {
        return new Polyline(
                spots, new double[Objects.requireNonNull(spots, "spots").size()], true);
    }

    /**
     * {@return straight lines and arcs from spot to spot and back to the first}
     *
     * @param spots two or more, the first not repeated at the end
     * @param bulges as {@link #bulged} takes them
     */
    public static Polyline closed(List<Spot> spots, double... bulges) {
        return new Polyline(
                spots, checked(bulges, Objects.requireNonNull(spots, "spots").size()), true);
    }

    /**
     * {@return a circle, counter-clockwise, as two arcs}
     *
     * @param centre its centre
     * @param radiusMm more than 0, in mm
     */
    public static Polyline circle(Spot centre, double radiusMm) {
        Objects.requireNonNull(centre, "centre");
        if (!(Spot.mm(radiusMm, "radius") > 0)) {
            throw Refusal.of("radius", "more-than", "be more than 0 mm", radiusMm + " mm");
        }
        return closed(List.of(centre.plus(-radiusMm, 0), centre.plus(radiusMm, 0)), 1, 1);
    }

    /**
     * {@return a copy with other bulges}
     *
     * @param bulges one to a spot, each of the line after it, -1e6 to 1e6; under 1e-12 either way the line is straight.
     *     The last one is that of the closing line
     */
    public Polyline bulged(double... bulges) {
        return new Polyline(spots, checked(bulges, spots.size()), closed);
    }

    private static double[] checked(double[] bulges, int spots) {
        if (Objects.requireNonNull(bulges, "bulges").length != spots) {
            throw Refusal.of("bulges", "as-many", "be " + spots + ", one to a spot", "were", bulges.length);
        }
        double[] copy = new double[bulges.length];
        for (int i = 0; i < copy.length; i++) {
            double bulge = LibraryUnits.finite(bulges[i], "bulge", "");
            if (Math.abs(bulge) > MOST_BULGE) {
                throw Refusal.of("bulge", "range", "be -1e6 to 1e6", bulge);
            }
            copy[i] = Math.abs(bulge) < LEAST_BULGE ? 0 : bulge;
        }
        return copy;
    }

    /** {@return the spots; two or more} */
    public List<Spot> spots() {
        return spots;
    }

    /** {@return the bulge after each spot; a fresh array, 0 for a straight line} */
    public double[] bulges() {
        return bulges.clone();
    }

    /** {@return whether the last spot is joined to the first} */
    public boolean isClosed() {
        return closed;
    }

    /** {@return u and v of every spot in turn, in mm; a fresh array} */
    public double[] toMm() {
        return spots.stream().flatMapToDouble(s -> Arrays.stream(s.toMm())).toArray();
    }

    /** {@return its length along lines and arcs, in mm} */
    public double lengthMm() {
        double sum = 0;
        for (int i = 0; i < edges(); i++) {
            sum += edge(i).lengthMm();
        }
        return sum;
    }

    /**
     * {@return the area of a closed one in mm2, positive when it runs counter-clockwise: shoelace, and
     * {@code r^2 (A - sin A) / 2} for each arc}
     *
     * @throws IllegalArgumentException if it is open
     */
    public double areaMm2() {
        if (!closed) {
            throw Refusal.of("polyline", "closed", "be closed to have an area", "was", "open");
        }
        Spot o = spots.get(0);
        double twice = 0;
        for (int i = 0; i < edges(); i++) {
            Edge edge = edge(i);
            Spot a = edge.from();
            Spot b = edge.to();
            twice += (a.uMm() - o.uMm()) * (b.vMm() - o.vMm()) - (b.uMm() - o.uMm()) * (a.vMm() - o.vMm());
            twice += edge.twiceSegment();
        }
        return twice / 2;
    }

    /**
     * {@return the least u and v, then the greatest u and v, in mm; the bellies of arcs counted}
     */
    public double[] extentsMm() {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (int i = 0; i < edges(); i++) {
            edge(i).widen(box);
        }
        return box;
    }

    /**
     * {@return whether a spot lies inside a closed one; false of an open one}
     *
     * @param spot in the same plane
     */
    public boolean contains(Spot spot) {
        Objects.requireNonNull(spot, "spot");
        boolean inside = false;
        for (int i = 0; i < edges(); i++) {
            inside ^= edge(i).isCrossed(spot);
        }
        return closed && inside;
    }

    /**
     * {@return the least distance from a spot to its lines and arcs, in mm; 0 or more}
     *
     * @param spot in the same plane
     */
    public double distanceMm(Spot spot) {
        Objects.requireNonNull(spot, "spot");
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < edges(); i++) {
            least = Math.min(least, edge(i).distanceMm(spot));
        }
        return least;
    }

    /**
     * {@return how far inside a closed one a spot lies, in mm; negative outside}
     *
     * @param spot in the same plane
     */
    public double insetMm(Spot spot) {
        return contains(spot) ? distanceMm(spot) : -distanceMm(spot);
    }

    /**
     * {@return straight lines instead of the arcs: {@code ceil(A / (2 acos(1 - tolerance / r)))} chords each}
     *
     * @param toleranceMm the greatest distance of a chord from its arc, in mm, 1e-6 or more
     */
    public Polyline straightened(double toleranceMm) {
        if (!(toleranceMm >= LEAST_TOLERANCE_MM)) {
            throw Refusal.of("tolerance", "at-least", "be 1e-6 mm or more", toleranceMm + " mm");
        }
        List<Spot> all = chords(toleranceMm);
        // A circle smaller than the tolerance is still no line.
        for (double finer = toleranceMm / 2; closed && all.size() < 3; finer /= 2) {
            all = chords(finer);
        }
        return new Polyline(all, new double[all.size()], closed);
    }

    private List<Spot> chords(double toleranceMm) {
        List<Spot> all = new ArrayList<>();
        for (int i = 0; i < edges(); i++) {
            all.add(spots.get(i));
            all.addAll(edge(i).between(toleranceMm));
        }
        if (!closed) {
            all.add(spots.get(spots.size() - 1));
        }
        return all;
    }

    /**
     * {@return the same run moved by a step}
     *
     * @param du along the first axis in mm
     * @param dv along the second axis in mm
     */
    public Polyline plus(double du, double dv) {
        return new Polyline(spots.stream().map(s -> s.plus(du, dv)).toList(), bulges, closed);
    }

    /**
     * {@return the same run made larger or smaller about the origin}
     *
     * @param factor more than 0
     */
    public Polyline scaled(double factor) {
        if (!(LibraryUnits.finite(factor, "factor", "") > 0)) {
            throw Refusal.of("factor", "more-than", "be more than 0", factor);
        }
        return new Polyline(
                spots.stream()
                        .map(s -> new Spot(factor * s.uMm(), factor * s.vMm()))
                        .toList(),
                bulges,
                closed);
    }

    /** {@return the same run the other way round: a hole of an outline} */
    public Polyline reversed() {
        List<Spot> back = new ArrayList<>(spots);
        Collections.reverse(back);
        int last = edges() - 1;
        double[] turned = IntStream.range(0, spots.size())
                .mapToDouble(i -> {
                    // The line before the closing one is, turned round, the first.
                    int edge = closed ? (i == last ? last : last - 1 - i) : last - i;
                    return edge < 0 ? 0 : 0.0 - bulges[edge];
                })
                .toArray();
        return new Polyline(back, turned, closed);
    }

    /**
     * {@return the parts of a closed run of straight lines where a figure that is linear in the plane is 0 or more; none where
     * it is less everywhere} Each has the same sense of turning as this.
     *
     * @param figure such as the distance over a line, finite
     * @throws IllegalArgumentException if this is open or has arcs: straighten it first
     */
    public List<Polyline> parts(ToDoubleFunction<Spot> figure) {
        Objects.requireNonNull(figure, "figure");
        if (!closed || !isStraight(bulges)) {
            throw Refusal.of(
                    "polyline", "closed-straight", "be closed, of straight lines, to be cut", "was", this.toString());
        }
        return Cut.of(spots, figure).stream().map(Polyline::closed).toList();
    }

    private int edges() {
        return closed ? spots.size() : spots.size() - 1;
    }

    private Edge edge(int i) {
        return new Edge(spots.get(i), spots.get(i + 1 == spots.size() ? 0 : i + 1), bulges[i]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Polyline that
                && closed == that.closed
                && spots.equals(that.spots)
                && Arrays.equals(bulges, that.bulges);
    }

    @Override
    public int hashCode() {
        return 31 * spots.hashCode() + Arrays.hashCode(bulges) + (closed ? 1 : 0);
    }

    /** {@return such as {@code closed polyline through 4 spots}} */
    @Override
    public String toString() {
        return (closed ? "closed" : "open") + " polyline through " + spots.size() + " spots";
    }
}
