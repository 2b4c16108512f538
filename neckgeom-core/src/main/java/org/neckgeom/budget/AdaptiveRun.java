package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The stopping rule of JCGM 101:2008, 7.9.4, over batches of equal size. */
final class AdaptiveRun {

    private static final int LEAST_BATCH = 10_000;

    private final double coverage;
    private final int digits;
    private final int batch;
    private final List<BlockEngine.Tally> tallies = new ArrayList<>();
    /** Sums and sums of squares of each batch's mean, deviation, low and high end, less those of the first batch. */
    private final double[] sums = new double[4];

    private final double[] squares = new double[4];
    private double @Nullable [] first;

    AdaptiveRun(double coverage, int digits) {
        this.coverage = coverage;
        this.digits = digits;
        // 7.9.4 b: J = 100/(1 - p) rounded up, M the larger of J and 10,000.
        this.batch = (int) Math.min(10_000_000.0, Math.max(LEAST_BATCH, Math.ceil(100.0 / (1.0 - coverage) - 1e-9)));
    }

    int batchSize() {
        return batch;
    }

    void add(BlockEngine.Tally tally) {
        tallies.add(tally);
        double[] ends = Simulated.ends(Objects.requireNonNull(tally.values(), "values of a batch"), tally, coverage);
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
        double tolerance = tolerance(Math.sqrt(tally().variance()));
        for (int i = 0; i < sums.length; i++) {
            double ofMean = Math.sqrt(Math.max(0.0, squares[i] - sums[i] * sums[i] / h) / (h * (h - 1.0)));
            if (2.0 * ofMean > tolerance) {
                return false;
            }
        }
        return true;
    }

    /** 7.9.2: u written as c times 10^l with an integer c of so many digits; half of 10^l. */
    double tolerance(double u) {
        if (u == 0.0) {
            return 0.0;
        }
        int exponent = (int) Math.floor(StrictMath.log10(u)) - (digits - 1);
        double c = Math.rint(u / StrictMath.pow(10.0, exponent));
        // 0.0996 to one digit is 1 x 10^-1, not 10 x 10^-2.
        if (c >= StrictMath.pow(10.0, digits)) {
            exponent++;
        }
        return 0.5 * StrictMath.pow(10.0, exponent);
    }

    /** All batches as one. */
    BlockEngine.Tally tally() {
        long n = 0;
        long inside = 0;
        double mean = 0.0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (BlockEngine.Tally one : tallies) {
            n += one.trials();
            inside += one.inside();
            mean += one.mean() / tallies.size();
            least = Math.min(least, one.least());
            most = Math.max(most, one.most());
        }
        double square = 0.0;
        for (BlockEngine.Tally one : tallies) {
            double off = one.mean() - mean;
            square += one.variance() * (batch - 1.0) + off * off * batch;
        }
        return new BlockEngine.Tally(n, mean, square / (n - 1.0), inside, least, most, null);
    }

    /** All batches as one, with their values. */
    BlockEngine.Tally tallyWithValues() {
        double[] values = new double[tallies.size() * batch];
        for (int i = 0; i < tallies.size(); i++) {
            System.arraycopy(Objects.requireNonNull(tallies.get(i).values()), 0, values, i * batch, batch);
        }
        BlockEngine.Tally all = tally();
        return new BlockEngine.Tally(
                all.trials(), all.mean(), all.variance(), all.inside(), all.least(), all.most(), values);
    }
}
