package org.neckgeom.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import javax.measure.quantity.Length;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TrapezoidalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.ErrorDistribution;

class SpreadLawTest {

    @Test
    void above_isTheTailOfCommonsStatistics() {
        check(ErrorDistribution.normal(mm(0.3)).shifted(mm(0.1)), NormalDistribution.of(0.1, 0.3));
        check(ErrorDistribution.rectangular(mm(0.3)).shifted(mm(-0.1)), UniformContinuousDistribution.of(-0.4, 0.2));
        check(ErrorDistribution.triangular(mm(0.3)), TriangularDistribution.of(-0.3, 0, 0.3));
        check(ErrorDistribution.trapezoidal(mm(0.3), mm(0.1)), TrapezoidalDistribution.of(-0.3, -0.1, 0.1, 0.3));
    }

    @Test
    void above_anArcsineIsThatOfItsSwing() {
        SpreadLaw law = new SpreadLaw(ErrorDistribution.arcsine(mm(0.2)));

        // P(0.2 sin t > 0.1) for t even over a half turn: a third of it.
        assertThat(law.above(0.1)).isCloseTo(1.0 / 3, offset(1e-15));
        assertThat(law.above(-0.3)).isEqualTo(1);
    }

    @Test
    void nodes_haveTheMomentsOfTheSpread() {
        for (ErrorDistribution<Length> spread : List.of(
                ErrorDistribution.normal(mm(0.3)).shifted(mm(0.1)),
                ErrorDistribution.rectangular(mm(0.3)),
                ErrorDistribution.triangular(mm(0.3)),
                ErrorDistribution.trapezoidal(mm(0.3), mm(0.1)),
                ErrorDistribution.arcsine(mm(0.2)),
                ErrorDistribution.bias(mm(0.2)),
                ErrorDistribution.samples(List.of(mm(0.1), mm(-0.2), mm(0.4))))) {
            double[][] nodes = new SpreadLaw(spread).nodes(2);
            double total = 0;
            double mean = 0;
            double variance = 0;
            for (int i = 0; i < nodes[0].length; i++) {
                total += nodes[1][i];
                mean += nodes[1][i] * nodes[0][i];
                variance += nodes[1][i] * Math.pow(nodes[0][i] - spread.libraryMean(), 2);
            }

            assertThat(total).as("%s", spread).isCloseTo(1, offset(1e-14));
            assertThat(mean).as("%s", spread).isCloseTo(spread.libraryMean(), offset(1e-14));
            assertThat(variance).as("%s", spread).isCloseTo(spread.libraryVariance(), offset(1e-10));
        }
    }

    @Test
    void above_countsSamples() {
        SpreadLaw law = new SpreadLaw(ErrorDistribution.samples(List.of(mm(0.1), mm(-0.2), mm(0.4), mm(0.5))));

        assertThat(law.above(0.2)).isEqualTo(0.5);
    }

    private static void check(ErrorDistribution<Length> spread, ContinuousDistribution expected) {
        SpreadLaw law = new SpreadLaw(spread);
        for (double x = -1; x <= 1; x += 0.05) {
            assertThat(law.above(x))
                    .as("%s at %s", spread, x)
                    .isCloseTo(expected.survivalProbability(x), offset(1e-14));
        }
    }

    @Test
    void below_isTheRestOfAbove() {
        for (ErrorDistribution<Length> spread : List.of(
                ErrorDistribution.normal(mm(0.3)).shifted(mm(0.1)),
                ErrorDistribution.rectangular(mm(0.3)).shifted(mm(-0.1)),
                ErrorDistribution.triangular(mm(0.3)),
                ErrorDistribution.trapezoidal(mm(0.3), mm(0.1)),
                ErrorDistribution.arcsine(mm(0.2)))) {
            SpreadLaw law = new SpreadLaw(spread);
            for (double x = -0.5; x < 0.5; x += 0.07) {
                assertThat(law.below(x)).as("%s at %s", spread, x).isCloseTo(1 - law.above(x), offset(1e-14));
            }
        }
    }

    @Test
    void samplesAndBias_countWhatLiesStrictlyBeyond() {
        SpreadLaw samples = new SpreadLaw(ErrorDistribution.samples(List.of(mm(0.25), mm(-0.25), mm(0.5), mm(0.5))));
        SpreadLaw bias = new SpreadLaw(ErrorDistribution.bias(mm(0.2)));

        // Stretched about their mean of 0.25 by sqrt(5/3) for the next error.
        assertThat(samples.above(0.6)).isZero();
        assertThat(samples.above(0.5)).isEqualTo(0.5);
        assertThat(samples.above(0.25)).isEqualTo(0.5);
        assertThat(samples.below(0.25)).isEqualTo(0.25);
        assertThat(samples.below(0.6)).isEqualTo(1);
        assertThat(bias.above(0.2)).isZero();
        assertThat(bias.above(0.1)).isEqualTo(1);
        assertThat(bias.below(0.3)).isEqualTo(1);
        assertThat(bias.isNormal()).isFalse();
    }

    @Test
    void passedWith_isTheInverseOfAbove() {
        SpreadLaw normal = new SpreadLaw(ErrorDistribution.normal(mm(0.3)).shifted(mm(0.1)));

        // 1.959963984540054: the normal quantile of 0.975.
        assertThat(normal.passedWith(0.025)).isCloseTo(0.1 + 0.3 * 1.959963984540054, offset(1e-12));
        assertThat(new SpreadLaw(ErrorDistribution.rectangular(mm(0.3))).passedWith(0.25))
                .isCloseTo(0.15, offset(1e-12));
        assertThat(normal.mean()).isEqualTo(0.1);
        assertThat(normal.variance()).isCloseTo(0.09, offset(1e-15));
        assertThat(normal.isNormal()).isTrue();
        assertThat(new SpreadLaw(ErrorDistribution.normal(mm(0))).isNormal()).isFalse();
        assertThat(new SpreadLaw(ErrorDistribution.rectangular(mm(0.3)).shifted(mm(0.1))).highest())
                .isCloseTo(0.4, offset(1e-15));
        assertThat(new SpreadLaw(ErrorDistribution.rectangular(mm(0.3)).shifted(mm(0.1))).lowest())
                .isCloseTo(-0.2, offset(1e-15));
        assertThat(normal.highest()).isCloseTo(0.1 + 7 * 0.3, offset(0.6));
        assertThat(normal.lowest()).isCloseTo(0.1 - 7 * 0.3, offset(0.6));
    }
}
