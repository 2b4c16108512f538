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
     * Shaft and heel from one station to another.
     *
     * @param tolerance greatest distance of a chord from its curve
     */
    static Mesh ofShaft(String name, BackShape back, double from, double to, double tolerance) {
        Curve depth = back.depth();
        double[] knots = depth.knotsIn(from, to);
        double[] ends = new double[knots.length + 2];
        ends[0] = from;
        System.arraycopy(knots, 0, ends, 1, knots.length);
        ends[ends.length - 1] = to;
        int across = across(back, ends, tolerance / 2);
        List<double[][]> rings = new ArrayList<>();
        rings.add(ring(back, from, across));
        for (int i = 0; i + 1 < ends.length; i++) {
            double[][] first = rings.get(rings.size() - 1);
            halved(back, first, ring(back, ends[i + 1], across), tolerance / 2, rings);
        }
        return ofSides(name, rings);
    }

    /** The same at stations, with so many points on each half of a side. */
    static Mesh ofShaft(String name, BackShape back, double[] stations, int across) {
        return ofSides(
                name,
                Arrays.stream(stations).mapToObj(x -> ring(back, x, across)).toList());
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
    private static int across(BackShape back, double[] stations, double tolerance) {
        int n = COARSEST;
        while (n < MOST_ACROSS && !acrossIsFine(back, stations, n, tolerance)) {
            n *= 2;
        }
        return n;
    }

    private static boolean acrossIsFine(BackShape back, double[] stations, int n, double tolerance) {
        for (double x : stations) {
            double[][] coarse = ring(back, x, n);
            double[][] fine = ring(back, x, 2 * n);
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
            BackShape back, double[][] first, double[][] last, double tolerance, List<double[][]> rings) {
        double from = first[0][0];
        double to = last[0][0];
        if (!(to - from > SHORTEST_MM)) {
            rings.add(last);
            return;
        }
        double[][] middle = ring(back, (from + to) / 2, (first.length / 2 - 1) / 2);
        if (isBetween(first, middle, last, tolerance)) {
            rings.add(last);
        } else {
            halved(back, first, middle, tolerance, rings);
            halved(back, middle, last, tolerance, rings);
        }
    }

    private static boolean isBetween(double[][] a, double[][] m, double[][] b, double tolerance) {
        for (int i = 0; i < m.length; i++) {
            double y = (a[i][1] + b[i][1]) / 2 - m[i][1];
            double z = (a[i][2] + b[i][2]) / 2 - m[i][2];
            if (y * y + z * z > tolerance * tolerance) {
                return false;
            }
        }
        return true;
    }

    /** From the bass edge over the ridge to the treble edge, the same count at every station; the ridge has two. */
    private static double[][] ring(BackShape back, double x, int n) {
        BackSection section = back.sectionMm(x);
        double[][] ring = new double[2 * (2 * n + 1)][];
        for (int side = 0; side < 2; side++) {
            boolean onTreble = side == 1;
            double half = section.diagonal(onTreble);
            for (int i = 0; i <= 2 * n; i++) {
                Spot spot = section.at((double) i / n, onTreble, half);
                ring[onTreble ? ring.length - 1 - i : i] = new double[] {x, spot.uMm(), spot.vMm()};
            }
        }
        return ring;
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
        List<int[]> all = new ArrayList<>();
        int[] first = rings.get(0);
        int[] last = rings.get(rings.size() - 1);
        for (int[] t : cap) {
            add(all, first[t[0]], first[t[2]], first[t[1]]);
            add(all, last[t[0]], last[t[1]], last[t[2]]);
        }
        for (int r = 0; r + 1 < rings.size(); r++) {
            int[] here = rings.get(r);
            int[] next = rings.get(r + 1);
            for (int i = 0; i < here.length; i++) {
                int j = (i + 1) % here.length;
                add(all, here[i], here[j], next[i]);
                add(all, here[j], next[j], next[i]);
            }
        }
        double[] xyz = new double[3 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            System.arraycopy(points.get(i), 0, xyz, 3 * i, 3);
        }
        Mesh mesh = Mesh.of(name, xyz, all.stream().flatMapToInt(Arrays::stream).toArray());
        return mesh.volumeMm3() < 0 ? mesh.turned() : mesh;
    }

    private static void add(List<int[]> all, int a, int b, int c) {
        if (a != b && b != c && a != c) {
            all.add(new int[] {a, b, c});
        }
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
