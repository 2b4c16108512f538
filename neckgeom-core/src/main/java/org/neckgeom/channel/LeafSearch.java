package org.neckgeom.channel;

import java.util.Arrays;

/**
 * Exact search for the stack of leaves nearest a wanted thickness, each leaf at most once.
 *
 * <p>Thicknesses are whole picometres inside, so that sums which are equal on paper are equal here
 * and the fewest leaves win honestly. For each number of leaves all but two are chosen in rising
 * order, and the last two by one walk from both ends of what is left: about n^(k-1)/(k-1)! steps,
 * less what the bounds cut off.
 */
final class LeafSearch {

    /** The most leaves a stack may have; more than four bind and spring in practice. */
    static final int MOST_LEAVES = 6;

    private static final double PER_MM = 1e9;

    private final long[] thickness;
    private final int[] place;
    private final long target;
    private final int[] chosen = new int[MOST_LEAVES];
    private int[] best = new int[0];
    private long bestSum;
    private long bestMiss;
    private long steps;

    private LeafSearch(double[] thicknessesMm, double targetMm) {
        int n = thicknessesMm.length;
        Integer[] rising = new Integer[n];
        Arrays.setAll(rising, i -> i);
        Arrays.sort(rising, (i, j) -> Double.compare(thicknessesMm[i], thicknessesMm[j]));
        thickness = new long[n];
        place = new int[n];
        for (int i = 0; i < n; i++) {
            place[i] = rising[i];
            thickness[i] = Math.round(thicknessesMm[rising[i]] * PER_MM);
        }
        target = Math.round(targetMm * PER_MM);
        bestMiss = Math.abs(target);
    }

    /**
     * Returns the places, in the given array, of the leaves whose sum is nearest the target; empty
     * when no leaf at all is nearest. Of stacks equally near the fewest leaves win, then the shorter
     * sum, then the stack whose thinnest leaf is thickest, as thin leaves buckle.
     *
     * @param thicknessesMm the leaves in mm, each more than 0
     * @param targetMm the wanted sum in mm, 0 or more
     * @param most the most leaves to use, 1 to 6
     */
    static int[] nearest(double[] thicknessesMm, double targetMm, int most) {
        return search(thicknessesMm, targetMm, most).places();
    }

    static LeafSearch search(double[] thicknessesMm, double targetMm, int most) {
        LeafSearch search = new LeafSearch(thicknessesMm, targetMm);
        int limit = Math.min(Math.min(most, MOST_LEAVES), thicknessesMm.length);
        for (int count = 1; count <= limit && search.bestMiss > 0; count++) {
            search.exactly(count, 0, 0, 0L);
        }
        return search;
    }

    /** The number of stacks weighed, for the growth law. */
    long steps() {
        return steps;
    }

    private int[] places() {
        int[] places = new int[best.length];
        for (int i = 0; i < best.length; i++) {
            places[i] = place[best[i]];
        }
        return places;
    }

    private void exactly(int count, int depth, int from, long sum) {
        int open = count - depth;
        if (open == 1) {
            for (int i = from; i < thickness.length; i++) {
                chosen[depth] = i;
                weigh(count, sum + thickness[i]);
            }
        } else if (open == 2) {
            walkFromBothEnds(count, depth, from, sum);
        } else {
            for (int i = from; i <= thickness.length - open; i++) {
                long least = sum + run(i, open);
                if (least > target + allowance(count)) {
                    break;
                }
                long greatest = sum + thickness[i] + run(thickness.length - open + 1, open - 1);
                if (greatest >= target - allowance(count)) {
                    chosen[depth] = i;
                    exactly(count, depth + 1, i + 1, sum + thickness[i]);
                }
            }
        }
    }

    private void walkFromBothEnds(int count, int depth, int from, long sum) {
        int low = from;
        int high = thickness.length - 1;
        while (low < high) {
            long total = sum + thickness[low] + thickness[high];
            chosen[depth] = low;
            chosen[depth + 1] = high;
            weigh(count, total);
            if (total > target) {
                high--;
            } else {
                low++;
            }
        }
    }

    /** A stack of more leaves must be nearer; one of as many may be as near. */
    private long allowance(int count) {
        return best.length < count ? bestMiss - 1 : bestMiss;
    }

    private long run(int from, int length) {
        long sum = 0;
        for (int i = from; i < from + length; i++) {
            sum += thickness[i];
        }
        return sum;
    }

    private void weigh(int count, long sum) {
        steps++;
        long miss = Math.abs(sum - target);
        if (miss > allowance(count)) {
            return;
        }
        // Candidates come in rising order of their thinnest leaf, so the later of two equals wins.
        boolean shorterKept = miss == bestMiss && best.length == count && bestSum < sum;
        if (!shorterKept) {
            best = Arrays.copyOf(chosen, count);
            bestSum = sum;
            bestMiss = miss;
        }
    }
}
