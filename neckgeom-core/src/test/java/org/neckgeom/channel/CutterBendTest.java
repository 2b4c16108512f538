package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CutterBendTest {

    // Stepped cantilever by superposition, 40 digits: HSS-like 210 GPa, shank 8 x 15 mm, cutting part
    // 6 x 25 mm, 20 N; carbide-like 600 GPa, shank 6.35 x 12 mm, cutting part 4.8 x 16 mm, 15 N.
    @Test
    void bend_isTheSteppedCantilever() {
        double i8 = CutterLoad.roundSecondMoment(8);
        double i6 = CutterLoad.roundSecondMoment(6);

        assertThat(i8).isCloseTo(201.061929829747, within(1e-11));
        assertThat(i6).isCloseTo(63.6172512351933, within(1e-12));
        assertThat(CutterLoad.bend(20, 210e3, 25, i6, 15, i8)).isCloseTo(0.015435142593882112598, within(1e-15));
        assertThat(CutterLoad.bend(
                        15, 600e3, 16, CutterLoad.roundSecondMoment(4.8), 12, CutterLoad.roundSecondMoment(6.35)))
                .isCloseTo(0.0031743130933029875679, within(1e-16));
    }

    // Cantilever 28 ft, 1 kip, benchmark case 2 of the AISC 360 commentary at no axial load: 0.901 in as
    // published, 0.900851524650898 from P L^3 / (3 E I) with E = 29,000 ksi, I = 484 in^4.
    @Test
    void bend_ofAnEvenCantileverIsThePublishedOne() {
        assertThat(CutterLoad.bend(1, 29000, 200, 484, 136, 484)).isCloseTo(0.901, within(5e-4));
        assertThat(CutterLoad.bend(1, 29000, 200, 484, 136, 484)).isCloseTo(0.900851524650898, within(1e-12));
    }
}
