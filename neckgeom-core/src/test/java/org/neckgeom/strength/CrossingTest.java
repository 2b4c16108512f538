package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Crossings of functions whose roots are known. */
class CrossingTest {

    @Test
    void findsRootsThatAreKnown() {
        assertThat(Crossing.of(x -> x * x - 2.0, 0.0, 2.0, 1e-13)).isCloseTo(StrictMath.sqrt(2.0), within(1e-12));
        assertThat(Crossing.of(x -> StrictMath.cos(x), 3.0, 1.0, 1e-13)).isCloseTo(Math.PI / 2.0, within(1e-12));
        assertThat(Crossing.of(x -> x * x * x * x * x, -1.0, 1.5, 1e-13)).isCloseTo(0.0, within(1e-2));
        assertThat(Crossing.of(x -> Math.abs(x) < 1.0 ? x : Math.signum(x), -7.0, 4.0, 1e-13))
                .isCloseTo(0.0, within(1e-12));
    }

    @Test
    void anEndThatIsTheRootIsFoundAtOnce() {
        assertThat(Crossing.of(x -> x, -1.0, 0.0, 1e-13)).isEqualTo(0.0);
    }
}
