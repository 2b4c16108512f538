package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Against Wood Handbook (FPL-GTR-190, 2010) Eq. 13-3 worked with exact numbers, and the table coefficients. */
class MovementTest {

    @Test
    void factor_isEquation13_3() {
        // 70 mm flatsawn sugar maple, S = 9.9 %, from 8 to 11 % moisture: 0.747250377399181 mm.
        assertThat(70 * (Movement.factor(0.099, 8, 11) - 1)).isCloseTo(0.747250377399181, withinPercentage(1e-11));
        // 57 mm true mahogany, 8 to 11 %: radial S = 3.0 % 0.174846625766871, tangential S = 4.1 % 0.240944394803767.
        assertThat(57 * (Movement.factor(0.030, 8, 11) - 1)).isCloseTo(0.174846625766871, withinPercentage(1e-11));
        assertThat(57 * (Movement.factor(0.041, 8, 11) - 1)).isCloseTo(0.240944394803767, withinPercentage(1e-11));
    }

    @Test
    void factor_isCloseToTheCoefficientOfTable13_5() {
        // The same maple by Eq. 13-2 with C = 0.00353: 0.7413 mm, one percent less.
        assertThat(70 * (Movement.factor(0.099, 8, 11) - 1)).isCloseTo(0.7413, withinPercentage(1));
    }

    @Test
    void factor_comesBackToOne() {
        assertThat(Movement.factor(0.078, 5.3, 12.1) * Movement.factor(0.078, 12.1, 5.3))
                .isCloseTo(1, within(1e-15));
    }

    @Test
    void factor_standsStillAboveFibreSaturation() {
        assertThat(Movement.factor(0.078, 30, 45)).isEqualTo(1);
    }

    @Test
    void shrinkageAcross_goesFromTangentialToRadial() {
        assertThat(Movement.shrinkageAcross(0.055, 0.078, 0)).isEqualTo(0.078);
        assertThat(Movement.shrinkageAcross(0.055, 0.078, Math.PI / 2)).isCloseTo(0.055, withinPercentage(1e-12));
        assertThat(Movement.shrinkageAcross(0.055, 0.078, Math.PI / 4)).isCloseTo(0.0665, withinPercentage(1e-12));
    }
}
