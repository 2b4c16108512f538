package org.neckgeom.budget;

import java.util.Arrays;

/**
 * Exact order statistics of many values without sorting them all: a histogram, then one more look at the values for the
 * bins that are hit, and only those are sorted.
 */
final class OrderStatistics {

    private static final int BINS = 4096;
    private static final int SORT_BELOW = 1024;

    private OrderStatistics() {}

    /** Returns the values of the given ranks, counted from 0, ascending or not; the values stay as they are. */
    static double[] of(double[] values, int... ranks) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double x : values) {
            least = Math.min(least, x);
            most = Math.max(most, x);
        }
        return of(values, least, most, ranks);
    }

    /** The same of values whose least and most are known; NaN for both where there is a NaN among them. */
    static double[] of(double[] values, double least, double most, int... ranks) {
        double scale = BINS / (most - least);
        if (values.length <= SORT_BELOW || !(scale < Double.POSITIVE_INFINITY)) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            return picked(sorted, ranks);
        }
        int[] counts = new int[BINS];
        for (double x : values) {
            counts[bin(x, least, scale)]++;
        }
        int[] bins = new int[ranks.length];
        int[] before = new int[ranks.length];
        double[][] hit = new double[BINS][];
        for (int i = 0; i < ranks.length; i++) {
            int sum = 0;
            int bin = 0;
            while (sum + counts[bin] <= ranks[i]) {
                sum += counts[bin++];
            }
            bins[i] = bin;
            before[i] = sum;
            hit[bin] = hit[bin] == null ? new double[counts[bin]] : hit[bin];
        }
        fill(hit, values, least, scale);
        double[] found = new double[ranks.length];
        for (int i = 0; i < ranks.length; i++) {
            // All values in one bin again means a few far outliers: narrow the histogram to where the bulk is.
            found[i] = of(hit[bins[i]], ranks[i] - before[i])[0];
        }
        return found;
    }

    /** Puts the values of each bin that is hit into its array, in their order. */
    private static void fill(double[][] hit, double[] values, double least, double scale) {
        int[] next = new int[BINS];
        for (double x : values) {
            int bin = bin(x, least, scale);
            double[] some = hit[bin];
            if (some != null) {
                some[next[bin]++] = x;
            }
        }
    }

    private static double[] picked(double[] sorted, int[] ranks) {
        double[] found = new double[ranks.length];
        for (int i = 0; i < ranks.length; i++) {
            found[i] = sorted[ranks[i]];
        }
        return found;
    }

    private static int bin(double x, double least, double scale) {
        return Math.min(BINS - 1, (int) ((x - least) * scale));
    }
}
