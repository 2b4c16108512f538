package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.neckgeom.shape.Curve;
import org.neckgeom.shape.Frame;
import org.neckgeom.shape.Mesh;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;

/**
 * Makes closed meshes of the neck's pieces: rings of equal count at stations, joined by quads split the same way, closed by
 * caps. Points of a ring that coincide are one, so no edge stays open.
 */
final class SolidMesh {

    /** Points nearer than this would fall together in 32-bit floats. */
    private static final double SAME_MM = 1e-3;

    private static final int COARSEST = 2;
    private static final int MOST_ACROSS = 1024;
    private static final double SHORTEST_MM = 0.05;

    private final List<double[]> points = new ArrayList<>();
    private final List<int[]> rings = new ArrayList<>();

    private SolidMesh() {}

    /**
     * Shaft and heel from one station to a face that leans.
     *
     * @param to where the face meets the glue face
     * @param lean how far the face comes nearer the nut per mm below the glue face
     * @param tolerance greatest distance of a chord from its curve
     */
    static Mesh ofShaft(String name, BackShape back, double from, double to, double lean, double tolerance) {
        Curve depth = back.depth();
        double[] knots = depth.knotsIn(from, to);
        double[] ends = new double[knots.length + 2];
        ends[0] = from;
        System.arraycopy(knots, 0, ends, 1, knots.length);
        ends[ends.length - 1] = to;
        UnitRing unit = across(back, ends, tolerance / 2).leaning(back, from, to, lean);
        List<double[][]> rings = new ArrayList<>();
        rings.add(unit.at(back, from));
        for (int i = 0; i + 1 < ends.length; i++) {
            double[][] first = rings.get(rings.size() - 1);
            halved(back, unit, first, unit.at(back, ends[i + 1]), tolerance / 2, rings);
        }
        return ofSides(name, rings);
    }

    /** The same at stations, with so many points on each half of a side. */
    static Mesh ofShaft(String name, BackShape back, double[] stations, int across) {
        UnitRing unit = new UnitRing(back, across);
        return ofSides(
                name, Arrays.stream(stations).mapToObj(x -> unit.at(back, x)).toList());
    }

    /** Rings of two sides of equal count, from one edge to the other: their caps are strips between the sides. */
    private static Mesh ofSides(String name, List<double[][]> rings) {
        SolidMesh mesh = new SolidMesh();
        rings.forEach(mesh::ring);
        int count = rings.get(0).length;
        List<int[]> cap = new ArrayList<>();
        for (int i = 0; i + 1 < count / 2; i++) {
            cap.add(new int[] {i, i + 1, count - 1 - i});
            cap.add(new int[] {i + 1, count - 2 - i, count - 1 - i});
        }
        return mesh.closed(name, cap);
    }

    /** Enough points across that the section's chords keep the tolerance at every knot. */
    private static UnitRing across(BackShape back, double[] stations, double tolerance) {
        int n = COARSEST;
        UnitRing coarse = new UnitRing(back, n);
        UnitRing fine = new UnitRing(back, 2 * n);
        while (n < MOST_ACROSS && !acrossIsFine(back, stations, coarse, fine, tolerance)) {
            n *= 2;
            coarse = fine;
            fine = new UnitRing(back, 2 * n);
        }
        return coarse;
    }

    private static boolean acrossIsFine(
            BackShape back, double[] stations, UnitRing ofCoarse, UnitRing ofFine, double tolerance) {
        for (double x : stations) {
            double[][] coarse = ofCoarse.at(back, x);
            double[][] fine = ofFine.at(back, x);
            for (int i = 0; i + 1 < coarse.length; i++) {
                double[] a = coarse[i];
                double[] b = coarse[i + 1];
                if (distance(fine[2 * i + 1], a, b) > tolerance) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Adds the rings after the first up to the last, as many as the tolerance needs. */
    private static void halved(
            BackShape back,
            UnitRing unit,
            double[][] first,
            double[][] last,
            double tolerance,
            List<double[][]> rings) {
        // The ends of a ring lie on the glue face, where no lean moves them.
        double from = first[0][0];
        double to = last[0][0];
        if (!(to - from > SHORTEST_MM)) {
            rings.add(last);
            return;
        }
        double[][] middle = unit.at(back, (from + to) / 2);
        if (isBetween(first, middle, last, tolerance)) {
            rings.add(last);
        } else {
            halved(back, unit, first, middle, tolerance, rings);
            halved(back, unit, middle, last, tolerance, rings);
        }
    }

    private static boolean isBetween(double[][] a, double[][] m, double[][] b, double tolerance) {
        for (int i = 0; i < m.length; i++) {
            double x = (a[i][0] + b[i][0]) / 2 - m[i][0];
            double y = (a[i][1] + b[i][1]) / 2 - m[i][1];
            double z = (a[i][2] + b[i][2]) / 2 - m[i][2];
            if (x * x + y * y + z * z > tolerance * tolerance) {
                return false;
            }
        }
        return true;
    }

    /**
     * The unit curves of both sides at the places of a ring, from the bass edge over the ridge to the treble edge; the ridge has
     * two. They have all the powers, and are the same at every station.
     */
    private static final class UnitRing {

        private final double[] y;
        private final double[] z;
        private Lean lean = Lean.NONE;

        UnitRing(BackShape back, int n) {
            BackSection section = back.sectionMm(0);
            this.y = new double[2 * (2 * n + 1)];
            this.z = new double[y.length];
            for (int side = 0; side < 2; side++) {
                boolean onTreble = side == 1;
                double half = section.diagonal(onTreble);
                for (int i = 0; i <= 2 * n; i++) {
                    int at = onTreble ? y.length - 1 - i : i;
                    z[at] = section.unitDepth((double) i / n, onTreble, half);
                    y[at] = section.unitWidth((double) i / n, onTreble, half);
                }
            }
        }

        /** The same whose rings lean more and more toward a face. */
        UnitRing leaning(BackShape back, double from, double to, double perMm) {
            lean = perMm == 0 ? Lean.NONE : Lean.toward(back, from, to, perMm);
            return this;
        }

        double[][] at(BackShape back, double x) {
            BackSection section = back.sectionMm(x);
            double[][] ring = new double[y.length][];
            for (int i = 0; i < ring.length; i++) {
                double there = lean.at(back, x, z[i]);
                BackSection its = there == x ? section : back.sectionMm(there);
                double across = its.across(y[i], z[i]);
                ring[i] =
                        new double[] {there, (2 * i < ring.length ? -across : across) + 0.0, 0.0 - its.depth() * z[i]};
            }
            return ring;
        }
    }

    /** How rings lean: none up to a station, from there on more and more, the last as the face. */
    private record Lean(double from, double to, double perMm) {

        static final Lean NONE = new Lean(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0);

        private static final double SHARE_OF_REACH = 4;
        private static final int ROUNDS = 100;
        private static final double STILL_MM = 1e-12;

        /** From the turn into the heel on, or from a few times as far before the face as it leans. */
        static Lean toward(BackShape back, double start, double to, double perMm) {
            double reach = SHARE_OF_REACH * Math.abs(perMm) * back.depth().valueAt(to);
            return new Lean(Math.max(start, Math.min(back.heelStartMm().orElse(to), to - reach)), to, perMm);
        }

        /** Where the ring of a station lies at a share of the depth: {@code x = from + t (to - lean z b(x) - from)}. */
        double at(BackShape back, double station, double z) {
            if (!(station > from) || z == 0) {
                return station;
            }
            double t = (station - from) / (to - from);
            double lo = Math.min(station, station - t * perMm * z * back.depth().valueAt(station));
            double hi = Math.max(
                    station, to + Math.max(0, -perMm) * z * back.depth().valueAt(to));
            double x = station;
            for (int i = 0; i < ROUNDS; i++) {
                double miss = x - from - t * (to - perMm * z * back.depth().valueAt(x) - from);
                if (Math.abs(miss) < STILL_MM * to) {
                    break;
                }
                if (miss > 0) {
                    hi = x;
                } else {
                    lo = x;
                }
                double next = x - miss / (1 + t * perMm * z * back.depth().slopeAt(x));
                x = next > lo && next < hi ? next : (lo + hi) / 2;
            }
            return x;
        }
    }

    /** A prism between two heights of a frame over a closed outline that runs counter-clockwise. */
    static Mesh ofPrism(String name, Frame frame, Polyline outline, double from, double to, double tolerance) {
        List<Spot> spots = outline.straightened(tolerance).spots();
        SolidMesh mesh = new SolidMesh();
        for (double w : new double[] {from, to}) {
            mesh.ring(spots.stream()
                    .map(s -> frame.toNeck(new Point(s.uMm(), s.vMm(), w)).toMm())
                    .toArray(double[][]::new));
        }
        return mesh.closed(name, Triangles.of(spots));
    }

    /** Rings given as points, of equal count, each round the piece once. */
    static Mesh ofRings(String name, List<double[][]> rings) {
        SolidMesh mesh = new SolidMesh();
        rings.forEach(mesh::ring);
        return mesh.closed(name);
    }

    /** Adds a ring; a point that falls on the one before it is that one. */
    private void ring(double[][] around) {
        int[] ring = new int[around.length];
        int first = points.size();
        for (int i = 0; i < around.length; i++) {
            boolean same = i > 0 && square(around[i], points.get(points.size() - 1)) < SAME_MM * SAME_MM;
            if (!same) {
                points.add(around[i]);
            }
            ring[i] = points.size() - 1;
        }
        if (points.size() - 1 > first && square(points.get(points.size() - 1), points.get(first)) < SAME_MM * SAME_MM) {
            int last = points.size() - 1;
            points.remove(last);
            Arrays.setAll(ring, i -> ring[i] == last ? first : ring[i]);
        }
        rings.add(ring);
    }

    /** Closed by fans from their last point, which must see the whole ring and lie on no line of three others. */
    private Mesh closed(String name) {
        int count = rings.get(0).length;
        int[][] fan = new int[count - 2][];
        Arrays.setAll(fan, i -> new int[] {count - 1, i, i + 1});
        return closed(name, List.of(fan));
    }

    private Mesh closed(String name, List<int[]> cap) {
        int count = rings.get(0).length;
        int[] all = new int[6 * cap.size() + 6 * count * (rings.size() - 1)];
        int size = 0;
        int[] first = rings.get(0);
        int[] last = rings.get(rings.size() - 1);
        for (int[] t : cap) {
            size = add(all, size, first[t[0]], first[t[2]], first[t[1]]);
            size = add(all, size, last[t[0]], last[t[1]], last[t[2]]);
        }
        for (int r = 0; r + 1 < rings.size(); r++) {
            int[] here = rings.get(r);
            int[] next = rings.get(r + 1);
            for (int i = 0; i < count; i++) {
                int j = (i + 1) % count;
                size = add(all, size, here[i], here[j], next[i]);
                size = add(all, size, here[j], next[j], next[i]);
            }
        }
        double[] xyz = new double[3 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            System.arraycopy(points.get(i), 0, xyz, 3 * i, 3);
        }
        Mesh mesh = Mesh.of(name, xyz, Arrays.copyOf(all, size));
        return mesh.volumeMm3() < 0 ? mesh.turned() : mesh;
    }

    /** Adds a triangle unless two of its corners are one; returns how many corners there are then. */
    private static int add(int[] all, int size, int a, int b, int c) {
        if (a == b || b == c || a == c) {
            return size;
        }
        all[size] = a;
        all[size + 1] = b;
        all[size + 2] = c;
        return size + 3;
    }

    private static double square(double[] a, double[] b) {
        double x = a[0] - b[0];
        double y = a[1] - b[1];
        double z = a[2] - b[2];
        return x * x + y * y + z * z;
    }

    private static double distance(double[] p, double[] a, double[] b) {
        double run = square(a, b);
        double share = run > 0 ? ((p[1] - a[1]) * (b[1] - a[1]) + (p[2] - a[2]) * (b[2] - a[2])) / run : 0;
        double at = Math.min(1, Math.max(0, share));
        double[] foot = {a[0], a[1] + at * (b[1] - a[1]), a[2] + at * (b[2] - a[2])};
        return Math.sqrt(square(p, foot));
    }
}
