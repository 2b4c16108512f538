package org.neckgeom.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Cuts a closed run of straight lines by a line: runs of spots on its side, joined along the line two by two. */
final class Cut {

    /** Less than this is no part. */
    private static final double NOTHING_MM2 = 1e-12;

    /** A run of spots from where it comes over the line to where it goes back. */
    private record Run(List<Spot> spots) {
        Spot first() {
            return spots.get(0);
        }

        Spot last() {
            return spots.get(spots.size() - 1);
        }
    }

    private Cut() {}

    static List<List<Spot>> of(List<Spot> outline, ToDoubleFunction<Spot> figure) {
        int n = outline.size();
        int start = 0;
        while (start < n && figure.applyAsDouble(outline.get(start)) >= 0) {
            start++;
        }
        if (start == n) {
            return List.of(outline);
        }
        List<Run> runs = new ArrayList<>();
        List<Spot> open = null;
        for (int i = 0; i < n; i++) {
            Spot a = outline.get((start + i) % n);
            Spot b = outline.get((start + i + 1) % n);
            double atA = figure.applyAsDouble(a);
            double atB = figure.applyAsDouble(b);
            if (atA < 0 && atB >= 0) {
                open = new ArrayList<>(List.of(between(a, b, atA / (atA - atB))));
            }
            if (open != null && atB >= 0) {
                add(open, b);
            }
            if (open != null && atA >= 0 && atB < 0) {
                add(open, between(a, b, atA / (atA - atB)));
                runs.add(new Run(open));
                open = null;
            }
        }
        return joined(runs);
    }

    private static void add(List<Spot> run, Spot spot) {
        if (!run.get(run.size() - 1).equals(spot)) {
            run.add(spot);
        }
    }

    private static Spot between(Spot a, Spot b, double share) {
        return a.plus(share * (b.uMm() - a.uMm()), share * (b.vMm() - a.vMm()));
    }

    /** Along the line inside and outside take turns: each end of a run is joined to its neighbour across the inside. */
    @SuppressWarnings("ReferenceEquality") // ends may lie on each other, and each is one end
    private static List<List<Spot>> joined(List<Run> runs) {
        if (runs.isEmpty()) {
            return List.of();
        }
        Spot origin = runs.get(0).first();
        Spot far = runs.stream()
                .flatMap(run -> List.of(run.first(), run.last()).stream())
                .max(Comparator.comparingDouble(origin::distanceMm))
                .orElseThrow();
        ToDoubleFunction<Spot> along = s -> (s.uMm() - origin.uMm()) * (far.uMm() - origin.uMm())
                + (s.vMm() - origin.vMm()) * (far.vMm() - origin.vMm());
        List<Spot> ends = runs.stream()
                .flatMap(run -> List.of(run.first(), run.last()).stream())
                .sorted(Comparator.comparingDouble(along))
                .toList();
        List<Run> left = new ArrayList<>(runs);
        List<List<Spot>> parts = new ArrayList<>();
        while (!left.isEmpty()) {
            Run first = left.remove(0);
            List<Spot> part = new ArrayList<>(first.spots());
            Spot next = partner(ends, first.last());
            while (next != first.first()) {
                Spot wanted = next;
                Run run = left.stream()
                        .filter(r -> r.first() == wanted)
                        .findFirst()
                        .orElseThrow();
                left.remove(run);
                part.addAll(run.spots());
                next = partner(ends, run.last());
            }
            if (part.size() >= 3 && Math.abs(area(part)) > NOTHING_MM2) {
                parts.add(part);
            }
        }
        return parts;
    }

    private static double area(List<Spot> part) {
        double twice = 0;
        for (int i = 0; i < part.size(); i++) {
            Spot a = part.get(i);
            Spot b = part.get((i + 1) % part.size());
            twice += a.uMm() * b.vMm() - b.uMm() * a.vMm();
        }
        return twice / 2;
    }

    @SuppressWarnings("ReferenceEquality") // ends may lie on each other, and each is one end
    private static Spot partner(List<Spot> ends, Spot end) {
        int at = 0;
        while (ends.get(at) != end) {
            at++;
        }
        return ends.get(at % 2 == 0 ? at + 1 : at - 1);
    }
}
