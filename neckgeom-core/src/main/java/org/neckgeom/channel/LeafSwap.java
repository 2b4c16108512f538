package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Two stacks of feeler gauges whose difference is nearest a wanted move: the stop block is set over the first, the
 * first is taken out and the second put in. Reaches moves thinner than the thinnest leaf.
 *
 * <p>Exact over stacks of one or two leaves each; both may use the same leaf, as they are never in the
 * gap together. Of pairs equally near the fewest leaves win, then the pair found first from thin to
 * thick. Sums are whole picometres, as in {@link LeafSearch}.
 */
final class LeafSwap {

    private static final double PER_MM = 1e9;

    /** Places of the leaves that stand in the gap first and are taken out. */
    final int[] taken;

    /** Places of the leaves put in instead. */
    final int[] put;

    private LeafSwap(int[] taken, int[] put) {
        this.taken = taken;
        this.put = put;
    }

    /**
     * Returns the pair with {@code sum(taken) - sum(put)} nearest the target.
     *
     * @param thicknessesMm the leaves in mm, at least one
     * @param targetMm the wanted difference in mm, 0 or more
     */
    static LeafSwap nearest(double[] thicknessesMm, double targetMm) {
        NavigableMap<Long, int[]> stacks = stacks(thicknessesMm);
        long target = Math.round(targetMm * PER_MM);
        LeafSwap best = null;
        long bestMiss = Long.MAX_VALUE;
        for (Map.Entry<Long, int[]> first : stacks.entrySet()) {
            long wanted = first.getKey() - target;
            for (Map.Entry<Long, int[]> second : neighbours(stacks, wanted)) {
                long miss = Math.abs(second.getKey() - wanted);
                LeafSwap swap = new LeafSwap(first.getValue(), second.getValue());
                if (best == null || miss < bestMiss || miss == bestMiss && swap.count() < best.count()) {
                    best = swap;
                    bestMiss = miss;
                }
            }
        }
        return Objects.requireNonNull(best, "leaves");
    }

    /** The stacks next below and next above a height; both the same where one is as high as that. */
    private static List<Map.Entry<Long, int[]>> neighbours(NavigableMap<Long, int[]> stacks, long height) {
        List<Map.Entry<Long, int[]>> near = new ArrayList<>(2);
        Map.Entry<Long, int[]> below = stacks.floorEntry(height);
        if (below != null) {
            near.add(below);
        }
        Map.Entry<Long, int[]> above = stacks.ceilingEntry(height);
        if (above != null) {
            near.add(above);
        }
        return near;
    }

    private int count() {
        return taken.length + put.length;
    }

    /** Every height of one or two leaves, each with the fewest leaves that make it. */
    private static NavigableMap<Long, int[]> stacks(double[] thicknessesMm) {
        TreeMap<Long, int[]> stacks = new TreeMap<>();
        for (int i = 0; i < thicknessesMm.length; i++) {
            stacks.putIfAbsent(Math.round(thicknessesMm[i] * PER_MM), new int[] {i});
        }
        for (int i = 0; i < thicknessesMm.length; i++) {
            for (int j = i + 1; j < thicknessesMm.length; j++) {
                long sum = Math.round(thicknessesMm[i] * PER_MM) + Math.round(thicknessesMm[j] * PER_MM);
                stacks.putIfAbsent(sum, new int[] {i, j});
            }
        }
        return stacks;
    }
}
