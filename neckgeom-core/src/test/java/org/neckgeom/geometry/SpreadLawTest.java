package org.neckgeom.geometry;

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
import org.neckgeom.measure.Spread;

class SpreadLawTest {

    @Test
    void above_isTheTailOfCommonsStatistics() {
        check(Spread.normal(mm(0.3)).shifted(mm(0.1)), NormalDistribution.of(0.1, 0.3));
        check(Spread.rectangular(mm(0.3)).shifted(mm(-0.1)), UniformContinuousDistribution.of(-0.4, 0.2));
        check(Spread.triangular(mm(0.3)), TriangularDistribution.of(-0.3, 0, 0.3));
        check(Spread.trapezoidal(mm(0.3), mm(0.1)), TrapezoidalDistribution.of(-0.3, -0.1, 0.1, 0.3));
    }

    @Test
    void above_anArcsineIsThatOfItsSwing() {
        SpreadLaw law = new SpreadLaw(Spread.arcsine(mm(0.2)));

        // P(0.2 sin t > 0.1) for t even over a half turn: a third of it.
        assertThat(law.above(0.1)).isCloseTo(1.0 / 3, offset(1e-15));
        assertThat(law.above(-0.3)).isEqualTo(1);
    }

    @Test
    void nodes_haveTheMomentsOfTheSpread() {
        for (Spread<Length> spread : List.of(
                Spread.normal(mm(0.3)).shifted(mm(0.1)),
                Spread.rectangular(mm(0.3)),
                Spread.triangular(mm(0.3)),
                Spread.trapezoidal(mm(0.3), mm(0.1)),
                Spread.arcsine(mm(0.2)),
                Spread.bias(mm(0.2)),
                Spread.samples(List.of(mm(0.1), mm(-0.2), mm(0.4))))) {
            double[][] nodes = new SpreadLaw(spread).nodes(2);
            double total = 0;
            double mean = 0;
            double variance = 0;
            for (int i = 0; i < nodes[0].length; i++) {
                total += nodes[1][i];
                mean += nodes[1][i] * nodes[0][i];
                variance += nodes[1][i] * Math.pow(nodes[0][i] - spread.meanHouse(), 2);
            }

            assertThat(total).as("%s", spread).isCloseTo(1, offset(1e-14));
            assertThat(mean).as("%s", spread).isCloseTo(spread.meanHouse(), offset(1e-14));
            assertThat(variance).as("%s", spread).isCloseTo(spread.varianceHouse(), offset(1e-10));
        }
    }

    @Test
    void above_countsSamples() {
        SpreadLaw law = new SpreadLaw(Spread.samples(List.of(mm(0.1), mm(-0.2), mm(0.4), mm(0.5))));

        assertThat(law.above(0.2)).isEqualTo(0.5);
    }

    private static void check(Spread<Length> spread, ContinuousDistribution expected) {
        SpreadLaw law = new SpreadLaw(spread);
        for (double x = -1; x <= 1; x += 0.05) {
            assertThat(law.above(x))
                    .as("%s at %s", spread, x)
                    .isCloseTo(expected.survivalProbability(x), offset(1e-14));
        }
    }
}
