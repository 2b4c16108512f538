package org.neckgeom.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.neckgeom.shape.Spot;

/**
 * A column of labels in the margin of a drawing, each with a leader to its point. Labels are as near to their points as
 * possible without touching each other: the least sum of squared shifts, found by pooling neighbours.
 */
final class LabelColumn {

    private static final double LINE = 14;
    private static final double HEIGHT = 2 * LINE + 5;
    private static final double LEADER_FOOT = 6;

    /** A number, its label, and the point it belongs to. */
    private record Entry(Spot target, String number, String words) {}

    private final List<Entry> entries = new ArrayList<>();
    private final boolean left;
    private final double edge;

    private LabelColumn(boolean left, double edge) {
        this.left = left;
        this.edge = edge;
    }

    /** Returns a column whose labels end at the given place. */
    static LabelColumn leftOf(double edge) {
        return new LabelColumn(true, edge);
    }

    /** Returns a column whose labels start at the given place. */
    static LabelColumn rightOf(double edge) {
        return new LabelColumn(false, edge);
    }

    LabelColumn add(Spot target, String number, String words) {
        entries.add(new Entry(target, number, words));
        return this;
    }

    /** Draws the labels and their leaders between two heights, or below the lower one if there is no room. */
    void drawOn(Drawing drawing, double top, double bottom) {
        List<Entry> sorted = new ArrayList<>(entries);
        sorted.sort(Comparator.comparingDouble(entry -> entry.target().vMm()));
        double[] heights = sorted.stream().mapToDouble(entry -> HEIGHT).toArray();
        double[] wanted =
                sorted.stream().mapToDouble(entry -> entry.target().vMm()).toArray();
        double[] middles = spread(wanted, heights, top, bottom);
        String anchor = left ? "end" : "start";
        for (int i = 0; i < middles.length; i++) {
            Entry entry = sorted.get(i);
            double foot = left ? edge + LEADER_FOOT : edge - LEADER_FOOT;
            double start = left ? edge + 2 : edge - 2;
            drawing.line("leader", start, middles[i], foot, middles[i]);
            drawing.line(
                    "leader",
                    foot,
                    middles[i],
                    entry.target().uMm(),
                    entry.target().vMm());
            drawing.dot(entry.target());
            double baseline = middles[i] - 2;
            drawing.label("number", anchor, edge, baseline, entry.number());
            drawing.label("words", anchor, edge, baseline + LINE, entry.words());
        }
    }

    /**
     * Returns the middles of blocks in a column, in the order given, none overlapping the next, the sum of squared
     * shifts least, then pushed inside the ends. Pooling of neighbours that touch, as in isotonic regression.
     */
    static double[] spread(double[] wanted, double[] heights, double top, double bottom) {
        int n = wanted.length;
        double[] offset = new double[n];
        double below = 0;
        for (int i = 0; i < n; i++) {
            offset[i] = below + heights[i] / 2;
            below += heights[i];
        }
        double highest = top;
        double lowest = Math.max(top, bottom - below);
        List<double[]> pools = new ArrayList<>(); // mean of the starts, count
        for (int i = 0; i < n; i++) {
            double[] pool = {wanted[i] - offset[i], 1};
            while (!pools.isEmpty() && pools.get(pools.size() - 1)[0] >= pool[0]) {
                double[] last = pools.remove(pools.size() - 1);
                double count = last[1] + pool[1];
                pool = new double[] {(last[0] * last[1] + pool[0] * pool[1]) / count, count};
            }
            pools.add(pool);
        }
        double[] middles = new double[n];
        int i = 0;
        for (double[] pool : pools) {
            double start = Math.min(lowest, Math.max(highest, pool[0]));
            for (int k = 0; k < pool[1]; k++, i++) {
                middles[i] = start + offset[i];
            }
        }
        return middles;
    }
}
