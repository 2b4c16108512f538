package org.neckgeom.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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

    private final List<Spot> spots;
    private final double[] bulges;
    private final boolean closed;

    private Polyline(List<Spot> spots, double[] bulges, boolean closed) {
        this.spots = List.copyOf(spots);
        this.bulges = bulges;
        this.closed = closed;
        if (this.spots.size() < (closed ? 3 : 2) && !(closed && this.spots.size() == 2 && bulges[0] != 0)) {
            throw Refusal.of(
                    "spots of a polyline",
                    "at-least",
                    closed ? "be 3 or more of a closed one" : "be 2 or more",
                    "were",
                    this.spots.size());
        }
    }

    /**
     * {@return straight lines from spot to spot}
     *
     * @param spots two or more
     */
    public static Polyline open(List<Spot> spots) {
        return new Polyline(spots, new double[spots.size()], false);
    }

    /**
     * {@return straight lines from spot to spot and back to the first}
     *
     * @param spots three or more, the first not repeated at the end
     */
    public static Polyline closed(List<Spot> spots) {
        return new Polyline(spots, new double[spots.size()], true);
    }

    /**
     * {@return a circle, counter-clockwise, as two arcs}
     *
     * @param centre its centre
     * @param radiusMm more than 0, in mm
     */
    public static Polyline circle(Spot centre, double radiusMm) {
        if (!(LibraryUnits.finite(radiusMm, "radius", "mm") > 0)) {
            throw Refusal.of("radius", "more-than", "be more than 0 mm", radiusMm + " mm");
        }
        return new Polyline(List.of(centre.plus(-radiusMm, 0), centre.plus(radiusMm, 0)), new double[] {1, 1}, true);
    }

    /**
     * {@return a copy with other bulges}
     *
     * @param bulges one to a spot, each of the line after it, -1e6 to 1e6; the last one is that of the closing line
     */
    public Polyline bulged(double... bulges) {
        if (bulges.length != spots.size()) {
            throw Refusal.of("bulges", "as-many", "be " + spots.size() + ", one to a spot", "were", bulges.length);
        }
        double[] copy = new double[bulges.length];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = LibraryUnits.finite(bulges[i], "bulge", "");
        }
        return new Polyline(spots, copy, closed);
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
            double chord = spots.get(i).distanceMm(after(i));
            sum += bulges[i] == 0 ? chord : radius(i) * Math.abs(angle(i));
        }
        return sum;
    }

    /**
     * {@return the area of a closed one in mm2, positive when it runs counter-clockwise: shoelace, and
     * {@code r^2 (A - sin A) / 2} for each arc}
     */
    public double areaMm2() {
        double twice = 0;
        for (int i = 0; i < edges(); i++) {
            Spot a = spots.get(i);
            Spot b = after(i);
            twice += a.uMm() * b.vMm() - b.uMm() * a.vMm();
            if (bulges[i] != 0) {
                double r = radius(i);
                twice += r * r * (angle(i) - StrictMath.sin(angle(i)));
            }
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
        spots.forEach(s -> widen(box, s));
        for (int i = 0; i < edges(); i++) {
            if (bulges[i] != 0) {
                Spot c = centre(i);
                double r = radius(i);
                for (Spot s : List.of(c.plus(r, 0), c.plus(0, r), c.plus(-r, 0), c.plus(0, -r))) {
                    if (isOnArc(i, s)) {
                        widen(box, s);
                    }
                }
            }
        }
        return box;
    }

    private static void widen(double[] box, Spot s) {
        box[0] = Math.min(box[0], s.uMm());
        box[1] = Math.min(box[1], s.vMm());
        box[2] = Math.max(box[2], s.uMm());
        box[3] = Math.max(box[3], s.vMm());
    }

    /**
     * {@return whether a spot lies inside a closed one}
     *
     * @param spot in the same plane
     */
    public boolean contains(Spot spot) {
        boolean inside = false;
        for (int i = 0; i < edges(); i++) {
            Spot a = spots.get(i);
            Spot b = after(i);
            if (a.vMm() > spot.vMm() != b.vMm() > spot.vMm()) {
                double u = a.uMm() + (spot.vMm() - a.vMm()) * (b.uMm() - a.uMm()) / (b.vMm() - a.vMm());
                inside ^= spot.uMm() < u;
            }
            inside ^= bulges[i] != 0 && isBetweenChordAndArc(i, spot);
        }
        return closed && inside;
    }

    /**
     * {@return the least distance from a spot to its lines and arcs, in mm; 0 or more}
     *
     * @param spot in the same plane
     */
    public double distanceMm(Spot spot) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < edges(); i++) {
            least = Math.min(least, bulges[i] == 0 ? toChord(i, spot) : toArc(i, spot));
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
     * @param toleranceMm the greatest distance of a chord from its arc, in mm, more than 0
     */
    public Polyline straightened(double toleranceMm) {
        if (!(toleranceMm > 0)) {
            throw Refusal.of("tolerance", "more-than", "be more than 0 mm", toleranceMm + " mm");
        }
        List<Spot> all = new ArrayList<>();
        for (int i = 0; i < edges(); i++) {
            all.add(spots.get(i));
            if (bulges[i] != 0) {
                all.addAll(chords(i, toleranceMm));
            }
        }
        if (!closed) {
            all.add(spots.get(spots.size() - 1));
        }
        return new Polyline(all, new double[all.size()], closed);
    }

    private List<Spot> chords(int i, double tolerance) {
        double r = radius(i);
        double whole = angle(i);
        double most = tolerance >= r ? StrictMath.PI : 2 * StrictMath.acos(1 - tolerance / r);
        int n = (int) Math.ceil(Math.abs(whole) / most);
        Spot c = centre(i);
        double start =
                StrictMath.atan2(spots.get(i).vMm() - c.vMm(), spots.get(i).uMm() - c.uMm());
        List<Spot> inner = new ArrayList<>();
        for (int k = 1; k < n; k++) {
            double at = start + whole * k / n;
            inner.add(c.plus(r * StrictMath.cos(at), r * StrictMath.sin(at)));
        }
        return inner;
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

    private int edges() {
        return closed ? spots.size() : spots.size() - 1;
    }

    private Spot after(int i) {
        return spots.get(i + 1 == spots.size() ? 0 : i + 1);
    }

    /** Included angle of an arc in rad, positive counter-clockwise. */
    private double angle(int i) {
        return 4 * StrictMath.atan(bulges[i]);
    }

    private double radius(int i) {
        double b = Math.abs(bulges[i]);
        return spots.get(i).distanceMm(after(i)) * (1 + b * b) / (4 * b);
    }

    private Spot centre(int i) {
        Spot a = spots.get(i);
        Spot b = after(i);
        double t = bulges[i];
        double off = (1 - t * t) / (4 * t);
        return new Spot(
                (a.uMm() + b.uMm()) / 2 - off * (b.vMm() - a.vMm()),
                (a.vMm() + b.vMm()) / 2 + off * (b.uMm() - a.uMm()));
    }

    /** Whether a spot in the direction of the arc from its centre lies on the arc's side of the chord. */
    private boolean isOnArc(int i, Spot spot) {
        Spot a = spots.get(i);
        Spot b = after(i);
        double side = (b.uMm() - a.uMm()) * (spot.vMm() - a.vMm()) - (b.vMm() - a.vMm()) * (spot.uMm() - a.uMm());
        // An arc of positive bulge lies to the right of its chord.
        return side * bulges[i] <= 0;
    }

    private boolean isBetweenChordAndArc(int i, Spot spot) {
        return centre(i).distanceMm(spot) < radius(i) && isOnArc(i, spot);
    }

    private double toChord(int i, Spot spot) {
        Spot a = spots.get(i);
        Spot b = after(i);
        double du = b.uMm() - a.uMm();
        double dv = b.vMm() - a.vMm();
        double square = du * du + dv * dv;
        double share = square > 0 ? ((spot.uMm() - a.uMm()) * du + (spot.vMm() - a.vMm()) * dv) / square : 0;
        double at = Math.min(1, Math.max(0, share));
        return a.plus(at * du, at * dv).distanceMm(spot);
    }

    private double toArc(int i, Spot spot) {
        Spot c = centre(i);
        double r = radius(i);
        double from = c.distanceMm(spot);
        double ends = Math.min(spots.get(i).distanceMm(spot), after(i).distanceMm(spot));
        if (!(from > 0)) {
            return r;
        }
        double out = r / from;
        Spot foot = c.plus((spot.uMm() - c.uMm()) * out, (spot.vMm() - c.vMm()) * out);
        return isOnArc(i, foot) ? Math.abs(r - from) : ends;
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
