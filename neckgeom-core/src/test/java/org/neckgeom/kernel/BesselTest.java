package org.neckgeom.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.BesselJ;
import org.junit.jupiter.api.Test;

/** J0 by a general library, from next to nothing to far out, across the place where the formulas change. */
class BesselTest {

    @Test
    void j0_isThatOfHipparchus() {
        for (double x = 0; x < 60; x += 0.173) {
            assertThat(Bessel.j0(x)).as("at %s", x).isCloseTo(BesselJ.value(0, x), within(1e-14));
            assertThat(Bessel.j0(-x)).as("at %s", -x).isEqualTo(Bessel.j0(x));
        }
        for (double x : new double[] {1e-9, 1e-8, 1e-7, 1e-3, 24.999999, 25, 25.000001, 1e3, 1e4}) {
            assertThat(Bessel.j0(x)).as("at %s", x).isCloseTo(BesselJ.value(0, x), within(1e-14));
        }
    }
}
