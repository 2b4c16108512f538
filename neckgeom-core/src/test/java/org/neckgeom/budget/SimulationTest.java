package org.neckgeom.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.Arrays;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.kernel.Mix;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.numeric.StudentLaw;
import org.neckgeom.units.ShopUnit;

class SimulationTest {

    private static final Budget<Length> MIXED = Budget.named("mixed")
            .with("n", ErrorDistribution.normal(mm(0.05)))
            .with("r", ErrorDistribution.rectangular(mm(0.1)))
            .with("t", -0.5, ErrorDistribution.triangular(mm(0.2)))
            .with("z", ErrorDistribution.trapezoidal(mm(0.1), mm(0.03)))
            .with("a", ErrorDistribution.arcsine(mm(0.05)));

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 8})
    void trials_haveTheSameBitsForAnyNumberOfThreads(int threads) {
        // Not a whole number of blocks, and more than one wave of them.
        long count = 1_100_003;
        Simulation<Length> question = MIXED.simulate(99).withLimits(Limits.within(mm(0.2)));

        BlockEngine.Tally one = tally(question.withThreads(1), count);
        BlockEngine.Tally many = tally(question.withThreads(threads), count);

        assertThat(many.mean()).isEqualTo(one.mean());
        assertThat(many.variance()).isEqualTo(one.variance());
        assertThat(many.inside()).isEqualTo(one.inside());
        assertThat(Arrays.equals(many.values(), one.values())).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {4095, 4096, 9_001})
    void trials_knowTheirLeastAndMost_andCountThoseWithoutAValue(int count) {
        SplittableRandom random = new SplittableRandom(count);
        double[] given = random.doubles(count, -1, 1).toArray();
        BlockEngine.FillerSource source = () -> new BlockEngine.Filler() {
            private int next;

            @Override
            public void fill(Draws draws, double[] out, int n) {
                System.arraycopy(given, next, out, 0, n);
                next += n;
            }
        };

        BlockEngine.Tally all = new BlockEngine(source, 1, 1).run(count, -0.5, 0.5, true);
        given[count / 2] = Double.NaN;
        BlockEngine.Tally spoilt = new BlockEngine(source, 1, 1).run(count, -0.5, 0.5, true);

        assertThat(all.least())
                .as("seed %s", count)
                .isEqualTo(Arrays.stream(all.values()).min().orElseThrow());
        assertThat(all.most())
                .as("seed %s", count)
                .isEqualTo(Arrays.stream(all.values()).max().orElseThrow());
        assertThat(all.undefined()).isZero();
        assertThat(spoilt.undefined()).isOne();
        double[] others =
                Arrays.stream(spoilt.values()).filter(x -> !Double.isNaN(x)).toArray();
        assertThat(others).as("seed %s", count).hasSize(count - 1);
        assertThat(spoilt.least()).isEqualTo(Arrays.stream(others).min().orElseThrow());
        assertThat(spoilt.most()).isEqualTo(Arrays.stream(others).max().orElseThrow());
        assertThat(spoilt.mean()).isCloseTo(Arrays.stream(others).average().orElseThrow(), within(1e-15));
    }

    private static BlockEngine.Tally tally(Simulation<Length> question, long count) {
        return question.tally(99, count);
    }

    @Test
    void trials_withoutQuantilesCountTheSame() {
        Simulation<Length> question = MIXED.simulate(5).withLimits(Limits.within(mm(0.15)));

        Simulated<Length> kept = question.trials(500_000);
        Simulated<Length> counted = question.withoutQuantiles().trials(500_000);

        assertThat(counted.mean()).isEqualTo(kept.mean());
        assertThat(counted.standardDeviation()).isEqualTo(kept.standardDeviation());
        assertThat(counted.yield()).isEqualTo(kept.yield()).isEqualTo(kept.yield(Limits.within(mm(0.15))));
        assertThatThrownBy(() -> counted.interval(percent(95))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void trials_differWithTheSeed() {
        assertThat(MIXED.simulate(1).trials(10_000).mean())
                .isNotEqualTo(MIXED.simulate(2).trials(10_000).mean());
    }

    @Test
    void interval_agreesWithTheExactDistribution() {
        Simulated<Length> trials = MIXED.simulate(2026).trials(1_000_000);
        ResultDistribution<Length> law = MIXED.distribution();

        for (double p : new double[] {50.0, 90.0, 95.0, 99.0}) {
            Interval<Length> seen = trials.interval(percent(p));
            Interval<Length> exact = law.interval(percent(p));
            double tail = 0.5 - p / 200.0;
            double allowed = 5.0 * Math.sqrt(tail * (1.0 - tail) / 1e6) / law.densityPerLibraryUnit(exact.high());
            assertThat(seen.libraryHigh()).as("%s %%", p).isCloseTo(exact.libraryHigh(), within(allowed));
            assertThat(seen.libraryLow()).as("%s %%", p).isCloseTo(exact.libraryLow(), within(allowed));
            Interval<Length> shortest = trials.shortestInterval(percent(p));
            assertThat(shortest.libraryHigh() - shortest.libraryLow())
                    .isLessThanOrEqualTo(seen.libraryHigh() - seen.libraryLow());
        }
    }

    /** JCGM 101:2008, 7.7: of 10 values and 80 %, q = 8, r = 1: the second is y(1), the ends y(1) and y(9). */
    @Test
    void ends_followTheRanksOfSupplement1() {
        double[] values = {5, 3, 9, 1, 7, 2, 8, 10, 4, 6};

        BlockEngine.Tally tally = new BlockEngine.Tally(10, 5.5, 0.0, 10, 0, null, 1.0, 10.0, values);

        assertThat(Simulated.ends(tally, 0.8)).containsExactly(1.0, 9.0);
    }

    @Test
    void orderStatistics_areThoseOfASort() {
        SplittableRandom random = new SplittableRandom(8L);
        for (int i = 0; i < 30; i++) {
            double[] values = new double[1 + random.nextInt(30_000)];
            for (int n = 0; n < values.length; n++) {
                double x = random.nextGaussian();
                // Ties, and a few far outliers that crowd the rest into one bin.
                values[n] = i % 3 == 0 ? Math.rint(4.0 * x) : random.nextInt(5_000) == 0 ? 1e9 * x : x;
            }
            int[] ranks = {0, values.length / 40, values.length / 2, values.length - 1};
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            double[] found = OrderStatistics.of(values, ranks);
            for (int n = 0; n < ranks.length; n++) {
                assertThat(found[n])
                        .as("seed 8, array %s, rank %s", i, ranks[n])
                        .isEqualTo(sorted[ranks[n]]);
            }
        }
    }

    /** JCGM 101:2008, 9.2.2 and 9.2.3: the adaptive procedure settles on 2.0, and ends within its tolerance of the exact. */
    @Test
    void adaptive_settlesOnTheAdditiveModel() {
        Budget<Length> normal = Budget.named("four normals");
        Budget<Length> equal = Budget.named("four rectangles");
        for (int i = 0; i < 4; i++) {
            normal = normal.with("n" + i, ErrorDistribution.normal(mm(1.0)));
            equal = equal.with("r" + i, ErrorDistribution.rectangular(mm(Math.sqrt(3.0))));
        }

        Simulated<Length> one = normal.simulate(1).adaptive(percent(95), 2);
        Simulated<Length> two = equal.simulate(1).adaptive(percent(95), 2);

        assertThat(one.standardDeviation().libraryValue()).isCloseTo(2.0, within(0.05));
        assertThat(one.interval(percent(95)).libraryHigh()).isCloseTo(3.91992796908010847, within(0.1));
        assertThat(two.interval(percent(95)).libraryHigh()).isCloseTo(3.87940674134782, within(0.1));
        assertThat(one.trials()).isGreaterThanOrEqualTo(20_000).isLessThan(1_000_000);
        assertThat(one.toString()).contains("settled to 2 digits of the deviation after");
    }

    @Test
    void adaptive_hasTheSameBitsForAnyNumberOfThreads() {
        Simulated<Length> one = MIXED.simulate(4).withThreads(1).adaptive(percent(95), 1);
        Simulated<Length> three = MIXED.simulate(4).withThreads(3).adaptive(percent(95), 1);

        assertThat(three.mean()).isEqualTo(one.mean());
        assertThat(three.interval(percent(95))).isEqualTo(one.interval(percent(95)));
        assertThat(three.trials()).isEqualTo(one.trials());
    }

    /** 7.9.2: tolerances of u = 0.00035 to two digits, and of values that round up to a power of ten. */
    @Test
    void tolerance_followsSupplement1() {
        assertThat(Tolerance.of(0.00035, 2)).isCloseTo(0.5e-5, within(1e-18));
        assertThat(Tolerance.of(0.00035, 1)).isCloseTo(0.5e-4, within(1e-17));
        assertThat(Tolerance.of(35.0, 2)).isCloseTo(0.5, within(1e-14));
        assertThat(Tolerance.of(0.0996, 1)).isCloseTo(0.05, within(1e-15));
        assertThat(new AdaptiveRun(0.95, 1, false).batchSize()).isEqualTo(10_000);
        assertThat(new AdaptiveRun(0.999, 1, false).batchSize()).isEqualTo(100_000);
    }

    /** One stream of commons-rng's SplitMix64 seeds commons-rng's xoshiro256++ of all blocks, four words to each. */
    @Test
    void draws_haveStatesThatShareNoWord() {
        SplitMix64 words = new SplitMix64(Mix.of(42));
        for (int block = 0; block < 100; block++) {
            long[] state = {words.next(), words.next(), words.next(), words.next()};
            XoShiRo256PlusPlus wanted = new XoShiRo256PlusPlus(state);
            Draws draws = new Draws(42, block);

            for (int i = 0; i < 20; i++) {
                assertThat(draws.next()).as("block %d, draw %d", block, i).isEqualTo(wanted.nextLong());
            }
        }
    }

    /** The ziggurat against the normal law: chi-square over 200 bins of equal chance; 199 degrees of freedom, 5 sigma. */
    @Test
    void normalDraws_fillTheNormalLaw() {
        int bins = 200;
        int count = 2_000_000;
        int[] seen = new int[bins];
        double[] out = new double[BlockEngine.BLOCK];
        int deep = 0;
        for (int block = 0; block * BlockEngine.BLOCK < count; block++) {
            Arrays.fill(out, 0.0);
            new Draws(123, block).addNormal(out, out.length, 1.0);
            for (double x : out) {
                seen[(int) Math.min(bins - 1, bins * NormalLaw.cdf(x))]++;
                deep += Math.abs(x) > 4.0 ? 1 : 0;
            }
        }
        int all = Arrays.stream(seen).sum();
        double chi = 0.0;
        for (int n : seen) {
            double expected = (double) all / bins;
            chi += (n - expected) * (n - expected) / expected;
        }
        assertThat(chi).as("seed 123").isBetween(199.0 - 5.0 * Math.sqrt(398.0), 199.0 + 5.0 * Math.sqrt(398.0));
        double expected = all * 2.0 * NormalLaw.upperTail(4.0);
        assertThat((double) deep).as("seed 123, beyond 4").isCloseTo(expected, within(5.0 * Math.sqrt(expected)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1.0, 3.0, 24.0})
    void studentDraws_fillStudentsLaw(double n) {
        double[] out = new double[BlockEngine.BLOCK];
        int[] under = new int[5];
        double[] at = {-3.0, -1.0, 0.0, 0.5, 2.0};
        int all = 0;
        for (int block = 0; block < 40; block++) {
            Arrays.fill(out, 0.0);
            new Draws(77, block).addStudent(out, out.length, 1.0, n);
            for (double x : out) {
                all++;
                for (int i = 0; i < at.length; i++) {
                    under[i] += x <= at[i] ? 1 : 0;
                }
            }
        }
        for (int i = 0; i < at.length; i++) {
            double p = StudentLaw.cdf(at[i], n);
            assertThat((double) under[i] / all)
                    .as("seed 77, %s degrees of freedom, at %s", n, at[i])
                    .isCloseTo(p, within(5.0 * Math.sqrt(p * (1.0 - p) / all)));
        }
    }

    @Test
    void trials_rejectSillyCounts() {
        assertThatThrownBy(() -> MIXED.simulate(1).trials(1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("trials must be 2 or more, but were 1");
        assertThatThrownBy(() -> MIXED.simulate(1).trials(200_000_000))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("withoutQuantiles() takes any number");
        assertThatThrownBy(() -> MIXED.simulate(1).withThreads(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MIXED.simulate(1).adaptive(percent(95), 3))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(MIXED.in(ShopUnit.INCH).simulate(1).trials(10_000).toString())
                .contains(" in");
    }
}
