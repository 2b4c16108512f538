package org.neckgeom.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import javax.measure.quantity.Length;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Limits;

/** Budgets whose answers can be written down: normal parts, samples in a mixture, a rectangle under a normal law. */
class BudgetClosedFormsTest {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final double Z_95 = 1.959963984540054;
    private static final double Z_99 = 2.5758293035489004;

    /** Of four, stretched by sqrt(5/3) for the next error. */
    private static final double[] SAMPLES = DoubleStream.of(-0.25, -0.05, 0.1, 0.2)
            .map(x -> x * Math.sqrt(5.0 / 3))
            .toArray();

    private static ErrorDistribution<Length> samples() {
        return ErrorDistribution.samples(List.of(mm(-0.25), mm(-0.05), mm(0.1), mm(0.2)));
    }

    private static Budget<Length> mixture() {
        return Budget.named("mixture").with("read", samples()).with("set", ErrorDistribution.normal(mm(0.08)));
    }

    private static double below(double x, double scale) {
        double sum = 0;
        for (double sample : SAMPLES) {
            sum += STANDARD.cumulativeProbability((x - scale * sample) / 0.08);
        }
        return sum / SAMPLES.length;
    }

    @Test
    void distribution_ofSamplesUnderANormalLawIsTheMixture() {
        ResultDistribution<Length> law = mixture().distribution();
        ResultDistribution<Length> turned = Budget.named("turned")
                .with("read", -2, samples())
                .with("set", ErrorDistribution.normal(mm(0.08)))
                .distribution();

        for (double x = -0.8; x <= 0.8; x += 0.05) {
            assertThat(law.probabilityUpTo(mm(x))).as("at %s", x).isCloseTo(below(x, 1), within(1e-11));
            assertThat(law.probabilityAbove(mm(x))).as("at %s", x).isCloseTo(1 - below(x, 1), within(1e-11));
            assertThat(turned.probabilityUpTo(mm(x))).as("at %s", x).isCloseTo(below(x, -2), within(1e-11));
        }
        assertThat(law.chance(Limits.between(mm(-0.1), mm(0.2))))
                .isCloseTo(below(0.2, 1) - below(-0.1, 1), within(1e-11));
        assertThat(law.accuracy()).isBetween(1e-18, 1e-9);
        double median = law.quantile(percent(50)).libraryValue();
        assertThat(below(median, 1)).isCloseTo(0.5, within(1e-10));
        assertThat(law.standardDeviation().libraryValue())
                .isCloseTo(Math.sqrt(0.08 * 0.08 + samples().libraryVariance()), within(1e-15));
    }

    @Test
    void distribution_ofSamplesARectangleAndANormalIsTheMixtureToo() {
        ResultDistribution<Length> law =
                mixture().with("fence", ErrorDistribution.rectangular(mm(0.15))).distribution();
        // The integral of the normal law, of which a rectangle takes the mean slope.
        DoubleUnaryOperator integral =
                t -> t * STANDARD.cumulativeProbability(t / 0.08) + 0.08 * STANDARD.density(t / 0.08);

        for (double x = -0.6; x <= 0.6; x += 0.07) {
            double sum = 0;
            for (double sample : SAMPLES) {
                sum += (integral.applyAsDouble(x - sample + 0.15) - integral.applyAsDouble(x - sample - 0.15)) / 0.3;
            }
            assertThat(law.probabilityUpTo(mm(x))).as("at %s", x).isCloseTo(sum / SAMPLES.length, within(1e-10));
        }
    }

    @Test
    void simulate_drawsSamplesAsTheyAre() {
        int trials = 200_000;
        Simulated<Length> drawn = mixture().simulate(7).trials(trials);
        double u = Math.sqrt(0.08 * 0.08 + samples().libraryVariance());

        assertThat(drawn.mean().libraryValue()).isCloseTo(0, within(5 * u / Math.sqrt(trials)));
        assertThat(drawn.standardDeviation().libraryValue()).isCloseTo(u, within(5 * u / Math.sqrt(2.0 * trials)));
        assertThat(drawn.mean().libraryUncertainty())
                .isCloseTo(drawn.standardDeviation().libraryValue() / Math.sqrt(trials), within(1e-15));
        assertThat(drawn.mean().degreesOfFreedom()).isEqualTo(trials - 1);
        assertThat(drawn.yield(Limits.between(mm(-0.1), mm(0.2))).probability())
                .isCloseTo(below(0.2, 1) - below(-0.1, 1), within(5 * 0.5 / Math.sqrt(trials)));
    }

    /** 1.645 standard deviations of a count with one more inside and one more outside; trials without a value at either end. */
    @Test
    void yield_counted_isTheShareWithTheRangeOfACount() {
        Yield<Length> counted = Yield.counted("trials", Limits.within(mm(1)), 900, 50, 1000);
        double least = 901.0 / 1002;
        double most = 951.0 / 1002;
        double z = STANDARD.inverseCumulativeProbability(0.95);

        assertThat(counted.probabilityOutside()).isCloseTo(0.1, within(1e-15));
        assertThat(counted.probability()).isCloseTo(0.9, within(1e-15));
        assertThat(counted.leastProbability())
                .isCloseTo(0.9 - z * Math.sqrt(least * (1 - least) / 1000), within(1e-12));
        assertThat(counted.mostProbability()).isCloseTo(0.95 + z * Math.sqrt(most * (1 - most) / 1000), within(1e-12));
        assertThat(Yield.counted("trials", Limits.within(mm(1)), 1000, 0, 1000).mostProbability())
                .isOne();
    }

    /** sqrt(u1^2 + u2^2 + 2 r u1 u2), of three by all three pairs; JCGM 100:2008, 5.2.2. */
    @Test
    void correlated_addByTheirCoefficients() {
        Budget<Length> pair = Budget.named("pair")
                .with("a", ErrorDistribution.normal(mm(0.3)).degreesOfFreedom(12))
                .with("b", -2, ErrorDistribution.normal(mm(0.1)).degreesOfFreedom(5))
                .with("c", ErrorDistribution.normal(mm(0.2)));

        assertThat(pair.correlated(new Correlation("a", "b", 0.4))
                        .rootSumSquare()
                        .libraryUncertainty())
                .isCloseTo(Math.sqrt(0.09 + 0.04 + 0.04 - 2 * 0.4 * 0.3 * 0.2), within(1e-15));
        Budget<Length> three = pair.correlated(
                new Correlation("a", "b", 0.4), new Correlation("b", "c", -0.3), new Correlation("a", "c", 0.2));
        assertThat(three.rootSumSquare().libraryUncertainty())
                .isCloseTo(
                        Math.sqrt(0.17 - 2 * 0.4 * 0.3 * 0.2 + 2 * 0.3 * 0.2 * 0.2 + 2 * 0.2 * 0.3 * 0.2),
                        within(1e-15));
        assertThat(pair.correlated(new Correlation("a", "b", 1)).rootSumSquare().libraryUncertainty())
                .isCloseTo(Math.sqrt(0.01 + 0.04), within(1e-12));
        assertThatThrownBy(() -> pair.correlated(
                        new Correlation("a", "b", 1), new Correlation("b", "c", 0.5), new Correlation("a", "c", -0.5)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Correlation("a", "b", -1)).isNotEqualTo(new Correlation("a", "b", 1));
        assertThatThrownBy(() -> new Correlation("a", "b", 1.01)).hasMessageContaining("must be from -1 to 1");
    }

    /** f u z = L for the common factor; the least effort of 1/w each makes both parts alike. */
    @Test
    void allocation_ofNormalPartsIsTheClosedForm() {
        double u1 = 0.01;
        double u2 = 0.08;
        double both = Math.hypot(u1, u2);

        Allocation<Length> shared = Allocation.of(
                Budget.named("two")
                        .with("a", ErrorDistribution.normal(mm(u1)))
                        .with("b", ErrorDistribution.normal(mm(u2))),
                Limits.within(mm(0.3)),
                percent(99));

        assertThat(shared.commonFactor()).isCloseTo(0.3 / (Z_99 * both), within(1e-8));
        double alike = both / Math.sqrt(2);
        assertThat(shared.saving()).isCloseTo(1 - 2 / alike / (1 / u1 + 1 / u2), within(1e-8));
        assertThat(shared.leastEffort().components().get(0).contribution())
                .isCloseTo(shared.commonFactor() * alike, within(1e-8));
    }

    /** Eight times the effort: twice the width. */
    @Test
    void allocation_givesDearPartsMoreRoom() {
        Allocation<Length> shared = Allocation.of(
                Budget.named("two")
                        .with("a", ErrorDistribution.normal(mm(0.05)))
                        .with("b", ErrorDistribution.normal(mm(0.05))),
                Limits.within(mm(0.3)),
                percent(99),
                Map.of("a", 8.0));
        List<UncertaintyComponent> least = shared.leastEffort().components();

        assertThat(least.get(0).contribution() / least.get(1).contribution()).isCloseTo(2, within(1e-9));
        assertThat(Math.hypot(least.get(0).contribution(), least.get(1).contribution()))
                .isCloseTo(0.3 / Z_99, within(1e-8));
    }

    /** The rest alone would need limits of z u: 0.196 mm, 0.096 mm more than they are. */
    @Test
    void allowance_saysByHowMuchTheRestOverspends() {
        Budget<Length> two = Budget.named("two")
                .with("a", ErrorDistribution.normal(mm(0.05)))
                .with("b", ErrorDistribution.normal(mm(0.1)));

        assertThat(Z_95 * 0.1 - 0.1).isCloseTo(0.096, within(1e-5));
        assertThatThrownBy(() -> two.allowance("a", Limits.within(mm(0.1)), percent(95)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("no allowance is left for \"a\"")
                .hasMessageContaining("overspend the limits by 0.096");
        Allowance<Length> left = two.allowance("a", Limits.within(mm(0.3)), percent(95));
        double room = Math.sqrt(Math.pow(0.3 / Z_95, 2) - 0.01);
        assertThat(left.factor()).isCloseTo(room / 0.05, within(1e-7));
        assertThat(left.components()).hasSize(1);
        assertThat(left.components().get(0).contribution()).isCloseTo(room, within(1e-8));
    }
}
