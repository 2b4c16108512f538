package org.neckgeom.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Batches put together and held to the tolerance of JCGM 101:2008, 7.9, with made-up batches. */
class AdaptiveRunTest {

    private static final int BATCH = 10_000;

    /** A batch of standard deviation 2, to its quantiles, moved. */
    private static double[] values(double moved) {
        NormalDistribution law = NormalDistribution.of(0, 2);
        double[] values = new double[BATCH];
        Arrays.setAll(values, i -> moved + law.inverseCumulativeProbability((i + 0.5) / BATCH));
        return values;
    }

    private static BlockEngine.Tally tally(double[] values) {
        double mean = DoubleStream.of(values).average().orElseThrow();
        double square =
                DoubleStream.of(values).map(x -> (x - mean) * (x - mean)).sum();
        long inside = DoubleStream.of(values).filter(x -> Math.abs(x) <= 1).count();
        return new BlockEngine.Tally(
                values.length,
                mean,
                square / (values.length - 1),
                inside,
                0,
                null,
                DoubleStream.of(values).min().orElseThrow(),
                DoubleStream.of(values).max().orElseThrow(),
                values);
    }

    private static AdaptiveRun run(double... moves) {
        AdaptiveRun run = new AdaptiveRun(0.95, 2, false);
        for (double moved : moves) {
            run.add(tally(values(moved)));
        }
        return run;
    }

    @Test
    void tally_isThatOfAllValues() {
        double[] all = DoubleStream.concat(
                        DoubleStream.concat(DoubleStream.of(values(0.3)), DoubleStream.of(values(-1))),
                        DoubleStream.of(values(5)))
                .toArray();
        BlockEngine.Tally expected = tally(all);

        BlockEngine.Tally one = run(0.3, -1, 5).tally();

        assertThat(one.trials()).isEqualTo(30_000);
        assertThat(one.inside()).isEqualTo(expected.inside());
        assertThat(one.mean()).isCloseTo(expected.mean(), within(1e-12));
        assertThat(one.variance()).isCloseTo(expected.variance(), within(1e-9));
        assertThat(one.least()).isEqualTo(expected.least());
        assertThat(one.most()).isEqualTo(expected.most());
        assertThat(run(0.3, -1, 5).tallyWithValues().values()).containsExactly(all);
        assertThat(run().batchSize()).isEqualTo(BATCH);
    }

    /** By hand: of two batches d apart the mean's deviation is d/2, twice that d; two digits of 2.0 are known to 0.05. */
    @Test
    void isStable_whenTwiceTheDeviationsKeepTheTolerance() {
        assertThat(run(0).isStable()).isFalse();
        assertThat(run(0, 0.0499).isStable()).isTrue();
        assertThat(run(0, 0.0501).isStable()).isFalse();
        assertThat(run(0.0501, 0).isStable()).isFalse();
        // Of three batches at 0, 0 and d: the deviation of the mean is d/3, twice that 0.05 at d = 0.075.
        assertThat(run(0, 0, 0.0749).isStable()).isTrue();
        assertThat(run(0, 0, 0.0751).isStable()).isFalse();
        assertThat(run(7, 7, 7.0749).isStable()).isTrue();
        assertThat(run(7, 7, 7.0751).isStable()).isFalse();
    }

    @Test
    void isStable_asksForEachOfTheFourFigures() {
        AdaptiveRun run = new AdaptiveRun(0.95, 2, false);
        run.add(tally(values(0)));
        // As wide again: the mean stays, deviation and ends do not.
        run.add(tally(DoubleStream.of(values(0)).map(x -> 2 * x).toArray()));

        assertThat(run.isStable()).isFalse();
    }

    /** Two batches with the same ends and another deviation: where there is none, the ends alone are asked. */
    @Test
    void isStable_withoutADeviationAsksForTheEndsAlone() {
        for (boolean byEnds : new boolean[] {false, true}) {
            AdaptiveRun run = new AdaptiveRun(0.95, 2, byEnds);
            run.add(tally(values(0)));
            double[] far = values(0);
            Arrays.sort(far);
            far[far.length - 1] = 1e6;
            run.add(tally(far));

            assertThat(run.isStable()).isEqualTo(byEnds);
        }
    }
}
