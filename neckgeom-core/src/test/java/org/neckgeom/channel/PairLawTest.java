package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The law of pairs against its formula. */
class PairLawTest {

    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1, 2, 4.7, 30, 5000, 9e6, 2e7, Double.POSITIVE_INFINITY})
    void beyond_isTheFormula(double nu) {
        PairLaw law = new PairLaw(nu);
        for (double r = 0; r < 12; r += 0.37) {
            double exact = nu > 1e9 ? StrictMath.exp(-r * r / 2) : StrictMath.pow(1 + r * r / nu, -nu / 2);

            assertThat(law.beyond(r * r)).as("r " + r).isCloseTo(exact, within(1e-7));
        }
        double far = law.reach(1e-4);
        assertThat(law.beyond(far * far)).isCloseTo(1e-4, within(1e-9));
    }
}
