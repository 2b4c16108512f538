package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against commons-statistics at random places. */
class LawTableTest {

    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1, 2, 3, 4, 4.7, 6.25, 9, 15, 29.9, 30.1, 64, 300, 5000, Double.POSITIVE_INFINITY})
    void table_isTheLaw(double nu) {
        LawTable table = LawTable.of(nu);
        ContinuousDistribution law = Double.isInfinite(nu) ? NormalDistribution.of(0, 1) : TDistribution.of(nu);
        // Under two degrees of freedom the density in s grows without bound at the ends.
        double near = nu < 2 ? 2e-6 : 5e-9;
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 2000; i++) {
            double z = i % 4 == 0 ? random.nextDouble(-60, 60) : random.nextDouble(-5, 5);

            assertThat(table.cdf(z)).as("z " + z).isCloseTo(law.cumulativeProbability(z), within(near));
            assertThat(table.density(z)).as("z " + z).isCloseTo(law.density(z), within(20 * near));
        }
        assertThat(table.upperQuantile(0.01)).isCloseTo(law.inverseCumulativeProbability(0.99), within(1e-3));
        assertThat(table.cdf(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(table.cdf(Double.NEGATIVE_INFINITY)).isZero();
    }
}
