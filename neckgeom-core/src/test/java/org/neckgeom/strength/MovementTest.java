package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** What the handbook's equation must keep; its figures are in the validation report's checks. */
class MovementTest {

    @Test
    void change_comesBack() {
        double there = 1 + SizeChange.changeOf(0.078, 5.3, 12.1);
        double back = 1 + SizeChange.changeOf(0.078, 12.1, 5.3);

        assertThat(there * back).isCloseTo(1, within(1e-15));
    }

    @Test
    void change_standsStillAboveFibreSaturation() {
        assertThat(SizeChange.changeOf(0.078, 30, 45)).isZero();
        assertThat(SizeChange.changeOf(0.078, 45, 20)).isEqualTo(SizeChange.changeOf(0.078, 30, 20));
    }

    @Test
    void shrinkageAcross_goesFromTangentialToRadial() {
        assertThat(SizeChange.shrinkageAcross(0.055, 0.078, 0)).isEqualTo(0.078);
        assertThat(SizeChange.shrinkageAcross(0.055, 0.078, Math.PI / 2)).isCloseTo(0.055, withinPercentage(1e-12));
        assertThat(SizeChange.shrinkageAcross(0.055, 0.078, Math.PI / 4)).isCloseTo(0.0665, withinPercentage(1e-12));
    }
}
