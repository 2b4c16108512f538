package org.neckgeom.budget;

import java.util.Arrays;

/** Exact order statistics of many values without sorting them all: a histogram, then only the bins that are hit. */
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
        double[] found = new double[ranks.length];
        find(values, least, most, ranks, found);
        return found;
    }

    private static void find(double[] values, double least, double most, int[] ranks, double[] found) {
        double scale = BINS / (most - least);
        if (values.length <= SORT_BELOW || !(scale < Double.POSITIVE_INFINITY)) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            for (int i = 0; i < ranks.length; i++) {
                found[i] = sorted[ranks[i]];
            }
            return;
        }
        int[] counts = new int[BINS];
        for (double x : values) {
            counts[bin(x, least, scale)]++;
        }
        int[] bins = new int[ranks.length];
        int[] before = new int[ranks.length];
        for (int i = 0; i < ranks.length; i++) {
            int sum = 0;
            int bin = 0;
            while (sum + counts[bin] <= ranks[i]) {
                sum += counts[bin++];
            }
            bins[i] = bin;
            before[i] = sum;
        }
        for (int i = 0; i < ranks.length; i++) {
            found[i] = within(values, least, scale, bins[i], counts[bins[i]], ranks[i] - before[i]);
        }
    }

    private static double within(double[] values, double least, double scale, int bin, int count, int rank) {
        double[] some = new double[count];
        int n = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double x : values) {
            if (bin(x, least, scale) == bin) {
                some[n++] = x;
                low = Math.min(low, x);
                high = Math.max(high, x);
            }
        }
        double[] found = new double[1];
        // All values in one bin again means a few far outliers: narrow the histogram to where the bulk is.
        find(some, low, high, new int[] {rank}, found);
        return found[0];
    }

    private static int bin(double x, double least, double scale) {
        return Math.min(BINS - 1, (int) ((x - least) * scale));
    }
}
