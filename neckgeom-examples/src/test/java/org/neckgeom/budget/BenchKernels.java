package org.neckgeom.budget;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Opens the kernels of this package to the benchmarks: twelve mixed contributors, cold chains, bare draws, trials. */
public final class BenchKernels {

    private static final double[] NORMALS = {0.05, 0.03, 0.02, 0.04, 0.01};
    private static final double[] RECTANGLES = {0.08, 0.05, 0.1, 0.03};
    private static final double[] TRIANGLES = {0.06, 0.09, 0.04};

    private final ExactLaw law = ExactLaw.of(twelve());
    private final BlockEngine.Tally million;

    /** Keeps a million trials for the percentiles. */
    public BenchKernels() {
        this.million = new BlockEngine(() -> BenchKernels::fill, 1, 2).run(1_000_000, -0.1, 0.1, true);
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
        ExactLaw fresh = ExactLaw.of(twelve());
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
        return new BlockEngine(() -> BenchKernels::fill, 1, threads)
                .run(count, -0.2, 0.2, false)
                .variance();
    }

    /** Trials for mean, deviation, yield and both ends of the 95 % interval. */
    public double fullJob(int count, int threads) {
        BlockEngine.Tally tally = new BlockEngine(() -> BenchKernels::fill, 1, threads).run(count, -0.2, 0.2, true);
        return tally.variance() + Simulated.ends(tally.values(), tally, 0.95)[1];
    }

    /** Two exact percentiles of a million values. */
    public double percentiles() {
        return Simulated.ends(million.values(), million, 0.95)[1];
    }

    /** The same by sorting a copy. */
    public double percentilesBySorting() {
        double[] sorted = million.values().clone();
        Arrays.sort(sorted);
        return sorted[974_999];
    }

    /** Microseconds of the cold job on random chains over four decades, the best of five each; prints the percentiles. */
    public static void main(String[] args) {
        SplittableRandom random = new SplittableRandom(20_260_101L);
        Parts[] all = new Parts[5_000];
        for (int i = 0; i < all.length; i++) {
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
            all[i] = builder.build();
        }
        double[] best = new double[all.length];
        Arrays.fill(best, Double.POSITIVE_INFINITY);
        double residual = 0.0;
        double sink = 0.0;
        for (int round = 0; round < 8; round++) {
            for (int i = 0; i < all.length; i++) {
                long start = System.nanoTime();
                ExactLaw law = ExactLaw.of(all[i]);
                double low = law.quantile(0.025);
                double high = law.quantile(0.975);
                sink += law.between(-law.sd(), law.sd());
                double micros = (System.nanoTime() - start) / 1000.0;
                best[i] = Math.min(best[i], micros);
                residual = Math.max(residual, Math.abs(law.lower(low) - 0.025));
                residual = Math.max(residual, Math.abs(law.lower(high) - 0.975));
            }
        }
        Arrays.sort(best);
        System.out.printf(
                "median %.1f us, 99 %% %.1f us, worst %.1f us, residual %.1e (%.3f)%n",
                best[2_500], best[4_950], best[4_999], residual, sink);
    }
}
