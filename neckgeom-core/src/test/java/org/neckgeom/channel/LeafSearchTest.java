package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LeafSearchTest {

    private static final double[] METRIC_20 =
            IntStream.rangeClosed(1, 20).mapToDouble(i -> i * 5 / 100.0).toArray();

    /** Every subset of at most {@code most} leaves, in whole micrometres: the honest, slow way. */
    private static long[] exhaustive(long[] leaves, long target, int most) {
        long bestMiss = Math.abs(target);
        int bestCount = 0;
        for (int mask = 1; mask < 1 << leaves.length; mask++) {
            int count = Integer.bitCount(mask);
            if (count > most) {
                continue;
            }
            long sum = 0;
            for (int i = 0; i < leaves.length; i++) {
                if ((mask >> i & 1) == 1) {
                    sum += leaves[i];
                }
            }
            long miss = Math.abs(sum - target);
            if (miss < bestMiss || miss == bestMiss && count < bestCount) {
                bestMiss = miss;
                bestCount = count;
            }
        }
        return new long[] {bestMiss, bestCount};
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void nearest_agreesWithEverySubset(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 60; trial++) {
            int n = random.nextInt(1, 14);
            int most = random.nextInt(1, 7);
            int coarse = random.nextBoolean() ? 50 : 1;
            long[] micrometres =
                    random.longs(n, 1, 1000 / coarse + 1).map(v -> v * coarse).toArray();
            double[] leaves =
                    Arrays.stream(micrometres).mapToDouble(v -> v / 1000.0).toArray();
            long target = random.nextLong(0, 3000);

            int[] places = LeafSearch.nearest(leaves, target / 1000.0, most);

            long sum = Arrays.stream(places).mapToLong(i -> micrometres[i]).sum();
            String where = "seed " + seed + " trial " + trial + " leaves " + Arrays.toString(micrometres) + " target "
                    + target + " most " + most;
            assertThat(Arrays.stream(places).distinct().count()).as(where).isEqualTo(places.length);
            assertThat(new long[] {Math.abs(sum - target), places.length})
                    .as(where)
                    .isEqualTo(exhaustive(micrometres, target, most));
        }
    }

    // Fewest leaves by exhaustive search of common practice sets.
    @ParameterizedTest
    @CsvSource({"1.35, 2", "1.85, 2", "0.70, 1", "2.40, 3", "3.70, 4", "0.02, 0", "0.03, 1"})
    void nearest_takesTheFewestLeaves(double target, int leaves) {
        assertThat(LeafSearch.nearest(METRIC_20, target, 4)).hasSize(leaves);
    }

    @Test
    void nearest_prefersStackWithoutThinLeaves() {
        int[] places = LeafSearch.nearest(METRIC_20, 1.35, 4);

        assertThat(Arrays.stream(places).mapToDouble(i -> METRIC_20[i])).containsExactlyInAnyOrder(0.65, 0.70);
    }

    @Test
    void nearest_ofTwoEquallyNearTakesTheShorter() {
        int[] places = LeafSearch.nearest(new double[] {0.10, 0.20}, 0.15, 1);

        assertThat(places).containsExactly(0);
    }

    @Test
    void nearest_staysInsideTheLimitOfLeaves() {
        int[] places = LeafSearch.nearest(METRIC_20, 100, 4);

        assertThat(Arrays.stream(places).mapToDouble(i -> METRIC_20[i]).sum()).isEqualTo(1.0 + 0.95 + 0.9 + 0.85);
    }

    // Gauge-block stacks: the inch ones as printed in makers' use-and-care notes for the 81-piece set
    // (ASME B89.1.9 divisions), the metric ones by arithmetic from the 88-piece set (ISO 3650 style).
    @ParameterizedTest
    @CsvSource({
        "inch, 3.9762, 4",
        "inch, 5.0073, 4",
        "inch, 5.4373, 5",
        "metric, 41.125, 4",
        "metric, 24.192, 4",
        "metric, 36.3785, 5"
    })
    void nearest_meetsPublishedGaugeBlockStacks(String set, double target, int most) {
        double[] blocks = set.equals("inch") ? inchBlocks() : metricBlocks();

        int[] places = LeafSearch.nearest(blocks, target, most);

        assertThat(Arrays.stream(places)
                        .mapToLong(i -> Math.round(blocks[i] * 1e6))
                        .sum())
                .isEqualTo(Math.round(target * 1e6));
        assertThat(places.length).isLessThanOrEqualTo(most);
    }

    @Test
    void search_growsWithTheSquareAndCubeOfTheSetNotWithAllSubsets() {
        SplittableRandom random = new SplittableRandom(44);
        double[] forty = random.doubles(40, 0.03, 1.0).toArray();

        long steps = LeafSearch.search(forty, 1.2345678, 4).steps();

        // C(40, 4) is 91,390 stacks of four; pairs times a walk is at most C(40, 2) * 39 / 2 or so.
        assertThat(steps).isPositive().isLessThan(16_000);
    }

    static double[] inchBlocks() {
        return IntStream.concat(
                        IntStream.concat(
                                IntStream.rangeClosed(1001, 1009),
                                IntStream.rangeClosed(101, 149).map(i -> i * 10)),
                        IntStream.concat(
                                IntStream.rangeClosed(1, 19).map(i -> i * 500),
                                IntStream.rangeClosed(1, 4).map(i -> i * 10000)))
                .mapToDouble(i -> i / 10000.0)
                .toArray();
    }

    static double[] metricBlocks() {
        return IntStream.concat(
                        IntStream.concat(
                                IntStream.concat(
                                        IntStream.of(10005),
                                        IntStream.rangeClosed(1001, 1009).map(i -> i * 10)),
                                IntStream.rangeClosed(101, 149).map(i -> i * 100)),
                        IntStream.concat(
                                IntStream.rangeClosed(1, 19).map(i -> i * 5000),
                                IntStream.rangeClosed(1, 10).map(i -> i * 100000)))
                .mapToDouble(i -> i / 10000.0)
                .toArray();
    }
}
