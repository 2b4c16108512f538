package org.neckgeom.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.search.KnownProblems.one;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** Optimum and front of problems from the literature (quoted from memory), and of one that a loop over all loads solves. */
class KnownOptimumTest {

    private static final int SEEDS = 3;

    static Stream<Arguments> problems() {
        return Stream.of(
                        Arguments.of("Hock, Schittkowski 43", KnownProblems.rosenSuzuki(), -44.0),
                        Arguments.of("Hock, Schittkowski 100 (g09)", KnownProblems.seven(), 680.6300573),
                        Arguments.of("g06", KnownProblems.sliver(), -6961.81387558),
                        Arguments.of("g08", KnownProblems.waves(), -0.0958250414180),
                        Arguments.of("pressure vessel, mixed", KnownProblems.vessel(), 6059.714335))
                .flatMap(one -> IntStream.rangeClosed(1, SEEDS)
                        .mapToObj(seed -> Arguments.of(one.get()[0], seed, one.get()[1], one.get()[2])));
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @MethodSource("problems")
    void best_isTheKnownOptimum(String name, int seed, Search<double[]> search, double optimum) {
        SearchResult<double[]> result = search.seed(seed).result();

        SearchPoint<double[]> best = result.best().orElseThrow();
        assertThat(best.keepsAll()).isTrue();
        assertThat(value(best)).isCloseTo(optimum, within(1e-6 * Math.abs(optimum)));
        assertThat(result.asked()).isLessThanOrEqualTo(Search.DEFAULT_DESIGNS);
    }

    private static double value(SearchPoint<double[]> point) {
        return point.aims().values().iterator().next().value();
    }

    @ParameterizedTest
    @ValueSource(ints = {150, 200, 320})
    void best_ofSteps_isThatOfAllLoads(int load) {
        for (int seed = 1; seed <= SEEDS; seed++) {
            SearchResult<double[]> result =
                    KnownProblems.knapsack(load).seed(seed).result();

            assertThat(value(result.best().orElseThrow())).as("seed %d", seed).isEqualTo(KnownProblems.bestWorth(load));
        }
    }

    @Test
    void best_ofASmallGrid_isExactAndAsksEachDesignOnce() {
        SearchResult<double[]> result =
                KnownProblems.knapsack(265).designs(65_536).result();

        assertThat(result.asked()).isEqualTo(65_536);
        assertThat(value(result.best().orElseThrow())).isEqualTo(KnownProblems.bestWorth(265));
        // Easing by one unit of weight is the next load's best.
        int load = IntStream.iterate(300, next -> next + 1)
                .filter(next -> KnownProblems.bestWorth(next + 1) > KnownProblems.bestWorth(next))
                .findFirst()
                .orElseThrow();
        List<SearchPrice> prices =
                KnownProblems.knapsack(load).designs(65_536).result().prices();
        assertThat(prices)
                .singleElement()
                .satisfies(price -> assertThat(price.gains().get("worth").value())
                        .isEqualTo(KnownProblems.bestWorth(load + 1) - KnownProblems.bestWorth(load)));
    }

    /** By the conditions of Karush, Kuhn and Tucker at (0, 1, 2, -1): multipliers 1 of g1 and 2 of g3, worked out by hand. */
    @Test
    void prices_areTheMultipliersForASmallUnit() {
        Search<double[]> search = KnownProblems.rosenSuzuki(3, Limits.atMost(ShopUnits.percent(0)));

        List<SearchPrice> prices = search.result().prices();

        assertThat(prices).extracting(SearchPrice::limit).containsExactly("g1", "g3");
        // Convex: the gain is a little under multiplier times 0.01.
        assertThat(gain(prices.get(0))).isBetween(0.0095, 0.0100001);
        assertThat(gain(prices.get(1))).isBetween(0.0195, 0.0200001);
        assertThat(prices.get(0).easedBy().map(Amount::toString)).contains("1 %");
    }

    private static double gain(SearchPrice price) {
        return price.gains().get("f").value();
    }

    /** Zitzler, Deb, Thiele 2000: f2 = 1 - sqrt(f1). */
    @Test
    void front_ofThirtyVariables_isTheKnownCurve() {
        List<double[]> front =
                KnownProblems.aims(KnownProblems.zdt1().designs(8_000).result());

        assertThat(front).hasSizeGreaterThan(12);
        front.forEach(f -> assertThat(f[1]).isCloseTo(1 - Math.sqrt(f[0]), within(1e-6)));
        assertThat(widestGap(front)).isLessThan(0.25);
    }

    /** Binh, Korn 1997: x1 = x2 = t up to 3, then x2 = 3; so f2 = 2 (t - 5)^2 at f1 = 8 t^2, then (t - 5)^2 + 4 at 4 t^2 + 36. */
    @Test
    void front_underLimits_isTheKnownCurve() {
        for (int seed = 1; seed <= 3; seed++) {
            List<double[]> front =
                    KnownProblems.aims(KnownProblems.binhKorn().seed(seed).result());

            assertThat(front).hasSize(20);
            for (double[] f : front) {
                double t = f[0] <= 72 ? Math.sqrt(f[0] / 8) : Math.sqrt((f[0] - 36) / 4);
                double wanted = f[0] <= 72 ? 2 * (t - 5) * (t - 5) : (t - 5) * (t - 5) + 4;
                assertThat(f[1]).as("seed %d, f1 %s", seed, f[0]).isCloseTo(wanted, within(1e-5 * 50));
            }
            assertThat(front.get(0)[1]).isCloseTo(50, within(1e-4));
            assertThat(front.get(19)[1]).isCloseTo(4, within(1e-4));
        }
    }

    /** The widest step along the second aim, as part of its range. */
    private static double widestGap(List<double[]> front) {
        double range = front.get(0)[1] - front.get(front.size() - 1)[1];
        return IntStream.range(1, front.size())
                .mapToDouble(i -> (front.get(i - 1)[1] - front.get(i)[1]) / range)
                .max()
                .orElseThrow();
    }
}
