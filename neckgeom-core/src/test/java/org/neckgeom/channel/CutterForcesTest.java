package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CutterForcesTest {

    private static final double EXACT = 1e-9;

    // pi d n, exact arithmetic: 6.35 mm at 18,000 rpm is 359.084040305313367 m/min.
    @Test
    void rimSpeed_ofASmallCutter() {
        assertThat(CutterForces.rimSpeed(6.35, 300) * 60 / 1000).isCloseTo(359.084040305313367, within(1e-9));
    }

    // Feed = rpm * chip load * edges (shop formula): 18,000 rpm, 2 edges, 0.10 mm is 3,600 mm/min;
    // and 100 in/min at 18,000 rpm with two edges is 0.07055555556 mm.
    @Test
    void chipLoad_turnsTheShopFormulaRound() {
        assertThat(CutterForces.chipLoad(3600 / 60.0, 300, 2)).isCloseTo(0.10, within(EXACT));
        assertThat(CutterForces.chipLoad(2540 / 60.0, 300, 2)).isCloseTo(0.00277777777777778 * 25.4, within(EXACT));
    }

    // Stepped cantilever by superposition, 40 digits: HSS-like 210 GPa, shank 8 x 15 mm, cutting part
    // 6 x 25 mm, 20 N; carbide-like 600 GPa, shank 6.35 x 12 mm, cutting part 4.8 x 16 mm, 15 N.
    @Test
    void bend_isTheSteppedCantilever() {
        double i8 = CutterForces.roundSecondMoment(8);
        double i6 = CutterForces.roundSecondMoment(6);

        assertThat(i8).isCloseTo(201.061929829747, within(1e-11));
        assertThat(i6).isCloseTo(63.6172512351933, within(1e-12));
        assertThat(CutterForces.bend(20, 210e3, 25, i6, 15, i8)).isCloseTo(0.015435142593882112598, within(1e-15));
        assertThat(CutterForces.bend(
                        15, 600e3, 16, CutterForces.roundSecondMoment(4.8), 12, CutterForces.roundSecondMoment(6.35)))
                .isCloseTo(0.0031743130933029875679, within(1e-16));
    }

    // Cantilever 28 ft, 1 kip, benchmark case 2 of the AISC 360 commentary at no axial load: 0.901 in as
    // published, 0.900851524650898 from P L^3 / (3 E I) with E = 29,000 ksi, I = 484 in^4.
    @Test
    void bend_ofAnEvenCantileverIsThePublishedOne() {
        assertThat(CutterForces.bend(1, 29000, 200, 484, 136, 484)).isCloseTo(0.901, within(5e-4));
        assertThat(CutterForces.bend(1, 29000, 200, 484, 136, 484)).isCloseTo(0.900851524650898, within(1e-12));
    }

    @Test
    void power_isForceTimesRimSpeed() {
        // One edge always in the cut: mean of k a f_z sin over half a turn is 2 k a f_z / pi.
        double power = CutterForces.power(33, 2.9, 6, 30);
        double chip = CutterForces.chipLoad(30, 16000 / 60.0, 2);

        double force = power / CutterForces.rimSpeed(6, 16000 / 60.0);

        assertThat(force).isCloseTo(33 * 2.9 * chip * 2 / Math.PI, within(1e-12));
    }
}
