package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.shape.Spot;

/** Cuts a flat outline into triangles by its ears. */
final class Triangles {

    private Triangles() {}

    /** Indices of three spots to a triangle, counter-clockwise for an outline that runs so. */
    static List<int[]> of(List<Spot> outline) {
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            left.add(i);
        }
        List<int[]> all = new ArrayList<>();
        int tried = 0;
        int i = 0;
        while (left.size() > 3 && tried < left.size()) {
            int n = left.size();
            int a = left.get((i + n - 1) % n);
            int b = left.get(i % n);
            int c = left.get((i + 1) % n);
            if (isEar(outline, left, a, b, c)) {
                all.add(new int[] {a, b, c});
                left.remove(i % n);
                tried = 0;
                i = i % n;
            } else {
                i = (i + 1) % n;
                tried++;
            }
        }
        for (int k = 1; k + 1 < left.size(); k++) {
            all.add(new int[] {left.get(0), left.get(k), left.get(k + 1)});
        }
        return all;
    }

    private static boolean isEar(List<Spot> outline, List<Integer> left, int a, int b, int c) {
        Spot p = outline.get(a);
        Spot q = outline.get(b);
        Spot r = outline.get(c);
        if (!(turn(p, q, r) > 0)) {
            return false;
        }
        for (int other : left) {
            Spot s = outline.get(other);
            boolean corner = other == a || other == b || other == c;
            if (!corner && turn(p, q, s) >= 0 && turn(q, r, s) >= 0 && turn(r, p, s) >= 0) {
                return false;
            }
        }
        return true;
    }

    private static double turn(Spot a, Spot b, Spot c) {
        return (b.uMm() - a.uMm()) * (c.vMm() - a.vMm()) - (b.vMm() - a.vMm()) * (c.uMm() - a.uMm());
    }
}
