package org.neckgeom.budget;

import static org.neckgeom.units.ShopUnits.mm;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import javax.measure.quantity.Length;
import org.neckgeom.measure.ErrorDistribution;

/** Opens the kernels of this package to the benchmarks: twelve mixed components, cold chains, bare draws, trials. */
public final class BudgetKernels {

    private static final double[] NORMALS = {0.05, 0.03, 0.02, 0.04, 0.01};
    private static final double[] RECTANGLES = {0.08, 0.05, 0.1, 0.03};
    private static final double[] TRIANGLES = {0.06, 0.09, 0.04};

    private final ExactLaw law = ExactLaws.of(twelve());
    private final BlockEngine.Tally million;

    /** Keeps a million trials for the percentiles. */
    public BudgetKernels() {
        this.million = new BlockEngine(() -> BudgetKernels::fill, 1, 2).run(1_000_000, -0.1, 0.1, true);
    }

    private static Parts twelve() {
        Parts.Builder parts = new Parts.Builder();
        for (double x : NORMALS) {
            parts.normal(x);
        }
        for (double x : RECTANGLES) {
            parts.rectangle(x);
        }
        for (double x : TRIANGLES) {
            parts.triangle(x);
        }
        return parts.build();
    }

    /** The whole cold job: build, two quantiles, chance inside. */
    public double cold() {
        ExactLaw fresh = ExactLaws.of(twelve());
        return fresh.quantile(0.025) + fresh.quantile(0.975) + fresh.between(-0.2, 0.2);
    }

    /** One value of the distribution, built before. */
    public double cdf(double y) {
        return law.lower(y);
    }

    /** One quantile, built before. */
    public double quantile(double p) {
        return law.quantile(p);
    }

    private static void fill(Draws draws, double[] out, int n) {
        Arrays.fill(out, 0, n, 0.0);
        for (double x : NORMALS) {
            draws.addNormal(out, n, x);
        }
        for (double x : RECTANGLES) {
            draws.addRectangle(out, n, x);
        }
        for (double x : TRIANGLES) {
            draws.addRectangle(out, n, 0.5 * x);
            draws.addRectangle(out, n, 0.5 * x);
        }
    }

    /** The same draws into a scratch block and nothing else: no blocks of their own seed, no sums. */
    public double bareDraws(int trials) {
        Draws draws = new Draws(1, 0);
        double[] out = new double[BlockEngine.BLOCK];
        for (int start = 0; start < trials; start += out.length) {
            fill(draws, out, Math.min(out.length, trials - start));
        }
        return out[0];
    }

    /** Trials for mean, deviation and yield. */
    public double trials(int count, int threads) {
        return new BlockEngine(() -> BudgetKernels::fill, 1, threads)
                .run(count, -0.2, 0.2, false)
                .variance();
    }

    /** Trials for mean, deviation, yield and both ends of the 95 % interval. */
    public double fullJob(int count, int threads) {
        BlockEngine.Tally tally = new BlockEngine(() -> BudgetKernels::fill, 1, threads).run(count, -0.2, 0.2, true);
        return tally.variance() + Simulated.ends(tally, 0.95)[1];
    }

    /** Two exact percentiles of a million values. */
    public double percentiles() {
        return Simulated.ends(million, 0.95)[1];
    }

    /** The million values themselves. */
    public double[] million() {
        return million.values();
    }

    /** The same by sorting a copy. */
    public double percentilesBySorting() {
        double[] sorted = million.values().clone();
        Arrays.sort(sorted);
        return sorted[974_999];
    }

    /** Scale, compensation, bridge and saddle over the body, board and stand-off, string over nut and twelfth fret. */
    public static double neckAngle(double[] v) {
        double reach = 0.5 * v[0] + v[1];
        double rise = v[2] + v[3] - (v[4] + v[5]);
        double action = v[6] + (v[7] - v[6]) * (v[0] + v[1]) / (0.5 * v[0]);
        return StrictMath.asin(rise / Math.sqrt(reach * reach + action * action)) - StrictMath.atan2(action, reach);
    }

    /** The same budget as a user writes it. */
    public static Budget<Length> budget() {
        Budget<Length> budget = Budget.named("twelve");
        for (double x : NORMALS) {
            budget = budget.with("normal " + x, ErrorDistribution.normal(mm(x)));
        }
        for (double x : RECTANGLES) {
            budget = budget.with("rectangle " + x, ErrorDistribution.rectangular(mm(x)));
        }
        for (double x : TRIANGLES) {
            budget = budget.with("triangle " + x, ErrorDistribution.triangular(mm(x)));
        }
        return budget;
    }

    /** One trial of the twelve, triangles from one draw each by the inverse of their distribution. */
    public static double rowByInverse(DoubleSupplier normal, DoubleSupplier unit) {
        double sum = 0.0;
        for (double x : NORMALS) {
            sum += x * normal.getAsDouble();
        }
        for (double x : RECTANGLES) {
            sum += x * (2.0 * unit.getAsDouble() - 1.0);
        }
        for (double x : TRIANGLES) {
            double p = unit.getAsDouble();
            sum += p < 0.5 ? x * (Math.sqrt(2.0 * p) - 1.0) : x * (1.0 - Math.sqrt(2.0 * (1.0 - p)));
        }
        return sum;
    }

    /** One trial of the twelve, triangles from two draws each: the quickest that the row-by-row peers can do. */
    public static double row(DoubleSupplier normal, DoubleSupplier unit) {
        double sum = 0.0;
        for (double x : NORMALS) {
            sum += x * normal.getAsDouble();
        }
        for (double x : RECTANGLES) {
            sum += x * (2.0 * unit.getAsDouble() - 1.0);
        }
        for (double x : TRIANGLES) {
            sum += x * (unit.getAsDouble() - unit.getAsDouble());
        }
        return sum;
    }

    /** A random chain of 1 to 12 components over four decades. */
    public static RandomChain randomChain(SplittableRandom random) {
        Parts.Builder builder = new Parts.Builder();
        int count = 1 + random.nextInt(12);
        for (int n = 0; n < count; n++) {
            double size = StrictMath.pow(10.0, 4.0 * random.nextDouble() - 3.0);
            switch (random.nextInt(4)) {
                case 0 -> builder.normal(size);
                case 1 -> builder.triangle(size);
                default -> builder.rectangle(size);
            }
        }
        return new RandomChain(builder.build());
    }

    /** A chain and its whole cold job. */
    public static final class RandomChain {

        private final Parts parts;

        private RandomChain(Parts parts) {
            this.parts = parts;
        }

        /** Builds it, asks two quantiles and a chance; returns how far the quantiles miss their probabilities. */
        public double residual() {
            ExactLaw law = ExactLaws.of(parts);
            double low = law.quantile(0.025);
            double high = law.quantile(0.975);
            if (!(law.between(-law.sd(), law.sd()) > 0.0)) {
                throw new AssertionError("no chance within a standard deviation");
            }
            return Math.max(Math.abs(law.lower(low) - 0.025), Math.abs(law.upper(high) - 0.025));
        }
    }
}
