package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.neckgeom.numeric.NormalLaw;

/** The stopping rule of JCGM 101:2008, 7.9.4, over batches of equal size. */
final class AdaptiveRun {

    private static final int LEAST_BATCH = 10_000;

    private final double coverage;
    private final int digits;
    private final boolean byEnds;
    private final int batch;
    private final List<BlockEngine.Tally> tallies = new ArrayList<>();
    /** Sums and sums of squares of each batch's mean, deviation, low and high end, less those of the first batch. */
    private final double[] sums = new double[4];

    private final double[] squares = new double[4];
    private double @Nullable [] first;

    /**
     * A run yet to be made.
     *
     * @param byEnds whether the result has no standard deviation, so that the ends of the interval alone can settle
     */
    AdaptiveRun(double coverage, int digits, boolean byEnds) {
        this.coverage = coverage;
        this.digits = digits;
        this.byEnds = byEnds;
        // 7.9.4 b: J = 100/(1 - p) rounded up, M the larger of J and 10,000.
        this.batch = (int) Math.min(10_000_000.0, Math.max(LEAST_BATCH, Math.ceil(100.0 / (1.0 - coverage) - 1e-9)));
    }

    int batchSize() {
        return batch;
    }

    void add(BlockEngine.Tally tally) {
        tallies.add(tally);
        double[] ends = Simulated.ends(tally, coverage);
        double[] now = {tally.mean(), Math.sqrt(tally.variance()), ends[0], ends[1]};
        if (first == null) {
            first = now.clone();
        }
        for (int i = 0; i < now.length; i++) {
            double d = now[i] - first[i];
            sums[i] += d;
            squares[i] += d * d;
        }
    }

    boolean isStable() {
        int h = tallies.size();
        if (h < 2) {
            return false;
        }
        double tolerance = Tolerance.of(byEnds ? width() : Math.sqrt(tally().variance()), digits);
        for (int i = byEnds ? 2 : 0; i < sums.length; i++) {
            double ofMean = Math.sqrt(Math.max(0.0, squares[i] - sums[i] * sums[i] / h) / (h * (h - 1.0)));
            if (2.0 * ofMean > tolerance) {
                return false;
            }
        }
        return true;
    }

    /** In place of a standard deviation: the mean width of the batches' intervals over that of a normal law of deviation 1. */
    private double width() {
        double ends = Objects.requireNonNull(first)[3] - first[2] + (sums[3] - sums[2]) / tallies.size();
        return ends / (2.0 * NormalLaw.coverageFactor(coverage));
    }

    /** All batches as one. */
    BlockEngine.Tally tally() {
        long n = 0;
        long inside = 0;
        long undefined = 0;
        String trouble = null;
        double sum = 0.0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (BlockEngine.Tally one : tallies) {
            n += one.trials();
            inside += one.inside();
            undefined += one.undefined();
            trouble = trouble == null ? one.trouble() : trouble;
            sum += one.mean() * (one.trials() - one.undefined());
            least = Math.min(least, one.least());
            most = Math.max(most, one.most());
        }
        long defined = n - undefined;
        double mean = defined > 0 ? sum / defined : 0.0;
        double square = 0.0;
        for (BlockEngine.Tally one : tallies) {
            double off = one.mean() - mean;
            double its = one.trials() - one.undefined();
            square += one.variance() * Math.max(0.0, its - 1.0) + off * off * its;
        }
        double variance = defined > 1 ? square / (defined - 1.0) : 0.0;
        return new BlockEngine.Tally(n, mean, variance, inside, undefined, trouble, least, most, null);
    }

    /** All batches as one, with their values. */
    BlockEngine.Tally tallyWithValues() {
        double[] values = new double[tallies.size() * batch];
        for (int i = 0; i < tallies.size(); i++) {
            System.arraycopy(Objects.requireNonNull(tallies.get(i).values()), 0, values, i * batch, batch);
        }
        BlockEngine.Tally all = tally();
        return new BlockEngine.Tally(
                all.trials(),
                all.mean(),
                all.variance(),
                all.inside(),
                all.undefined(),
                all.trouble(),
                all.least(),
                all.most(),
                values);
    }
}
