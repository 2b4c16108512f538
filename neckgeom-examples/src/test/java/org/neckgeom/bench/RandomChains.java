package org.neckgeom.bench;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.neckgeom.budget.BudgetKernels;
import org.neckgeom.budget.BudgetKernels.RandomChain;

/** A fixed set of 5,000 random chains: the whole cold job on each, best of several rounds, after a round of warming up. */
final class RandomChains {

    private static final int COUNT = 5_000;
    private static final int ROUNDS = 12;

    private RandomChains() {}

    /**
     * Prints median, 99 % and worst microseconds and the largest miss of a probability, each on a line.
     *
     * @param args none
     */
    public static void main(String[] args) {
        SplittableRandom random = new SplittableRandom(20_260_101L);
        RandomChain[] chains = Stream.generate(() -> BudgetKernels.randomChain(random))
                .limit(COUNT)
                .toArray(RandomChain[]::new);
        double[] best = new double[COUNT];
        Arrays.fill(best, Double.POSITIVE_INFINITY);
        double residual = 0;
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < COUNT; i++) {
                long start = System.nanoTime();
                double miss = chains[i].residual();
                best[i] = Math.min(best[i], (System.nanoTime() - start) * 1e-3);
                residual = Math.max(residual, miss);
            }
        }
        Arrays.sort(best);
        System.out.println(best[COUNT / 2]);
        System.out.println(best[COUNT * 99 / 100]);
        System.out.println(best[COUNT - 1]);
        System.out.println(residual);
    }
}
