package org.neckgeom.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole centring sessions on invented machines: is the estimate's error as large as it says it is? */
class CentringSessionsTest {

    private static final int SESSIONS = 10_000;
    private static final double[] LEAVES =
            IntStream.rangeClosed(1, 20).mapToDouble(i -> i * 5 / 100.0).toArray();

    /**
     * Each session: a fence somewhere within 1.5 mm, a calliper and a fence of its own quality, two to
     * five rounds of reading both walls and moving by the nearest leaves. The truth is known to the test
     * alone. 95 % intervals must cover it in 94 to 96 % of sessions (the count's own standard deviation
     * is 0.22 %).
     */
    @ParameterizedTest
    @ValueSource(longs = {20250101, 7, 4242})
    void intervals_coverTheTruthAsOftenAsTheySay(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int covered = 0;
        double squares = 0;
        for (int session = 0; session < SESSIONS; session++) {
            double truth = random.nextDouble(-1.5, 1.5);
            double uRead = random.nextDouble(0.005, 0.05);
            double uFence = random.nextDouble(0.002, 0.04);
            double uOffset = uRead / Math.sqrt(2);
            ScalarFilter filter = ScalarFilter.start(readOffset(random, truth, uRead), uOffset);
            int rounds = random.nextInt(1, 5);
            for (int round = 0; round < rounds; round++) {
                int[] stack = LeafSearch.nearest(LEAVES, Math.abs(filter.mean()), 4);
                double move = Math.copySign(
                        IntStream.of(stack).mapToDouble(i -> LEAVES[i]).sum(), filter.mean());
                truth -= move + uFence * random.nextGaussian();
                filter = filter.moved(move, uFence).read(readOffset(random, truth, uRead), uOffset);
            }
            double error = (filter.mean() - truth) / filter.u();
            squares += error * error;
            if (Math.abs(error) <= 1.959963984540054) {
                covered++;
            }
        }
        double share = 100.0 * covered / SESSIONS;
        assertThat(share).as("covered percent, seed " + seed).isBetween(94.0, 96.0);
        // Mean square of a standard normal is 1, its own standard deviation here sqrt(2/10000) = 0.014.
        assertThat(squares / SESSIONS).as("mean square, seed " + seed).isBetween(0.93, 1.07);
    }

    private static double readOffset(SplittableRandom random, double truth, double uRead) {
        double half = 27.5;
        double zeroError = 0.3;
        double fence = half + truth + zeroError + uRead * random.nextGaussian();
        double far = half - truth + zeroError + uRead * random.nextGaussian();
        return (fence - far) / 2;
    }
}
