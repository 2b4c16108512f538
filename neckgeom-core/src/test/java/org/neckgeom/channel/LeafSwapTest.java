package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LeafSwapTest {

    private static long[] heights(long[] leaves) {
        long[] all = new long[leaves.length * (leaves.length + 1) / 2];
        int next = 0;
        for (int i = 0; i < leaves.length; i++) {
            for (int j = i; j < leaves.length; j++) {
                all[next++] = i == j ? leaves[i] : leaves[i] + leaves[j];
            }
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void nearest_agreesWithEveryPairOfStacks(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 100; trial++) {
            long[] micrometres = random.longs(random.nextInt(1, 12), 30, 1000).toArray();
            long target = random.nextLong(0, 200);
            long least = Long.MAX_VALUE;
            for (long taken : heights(micrometres)) {
                for (long put : heights(micrometres)) {
                    least = Math.min(least, Math.abs(taken - put - target));
                }
            }

            LeafSwap swap = LeafSwap.nearest(
                    Arrays.stream(micrometres).mapToDouble(v -> v / 1000.0).toArray(), target / 1000.0);

            long net = Arrays.stream(swap.taken).mapToLong(i -> micrometres[i]).sum()
                    - Arrays.stream(swap.put).mapToLong(i -> micrometres[i]).sum();
            assertThat(Math.abs(net - target))
                    .as("seed " + seed + " trial " + trial + " leaves " + Arrays.toString(micrometres) + " target "
                            + target)
                    .isEqualTo(least);
        }
    }
}
