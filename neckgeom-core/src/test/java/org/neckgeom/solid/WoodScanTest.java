package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

class WoodScanTest {

    @Test
    void least_closesInBetweenStations() {
        double[] stations = WoodScan.stations(3, 303);

        double x = WoodScan.least(s -> 5 + 1e-4 * (s - 137.7) * (s - 137.7), stations);

        assertThat(x).isCloseTo(137.7, offset(2e-3));
    }

    @Test
    void least_seesAShortPocketBetweenStations() {
        double[] stations = WoodScan.stations(0, 400, 100.3, 100.9);

        double x = WoodScan.least(s -> s > 100.3 && s < 100.9 ? 3 : 5, stations);

        assertThat(x).isBetween(100.3, 100.9);
    }

    @Test
    void least_staysAtTheEndWhereTheWoodIsThinnest() {
        double[] stations = WoodScan.stations(3, 303);

        assertThat(WoodScan.least(s -> s, stations)).isEqualTo(3);
        assertThat(WoodScan.least(s -> -s, stations)).isEqualTo(303);
    }

    @Test
    void stations_areEvenWithAHairToEachSideOfAJump() {
        double[] plain = WoodScan.stations(0, 400);
        double[] jumps = WoodScan.stations(0, 400, 100.3, 0, 400, -5, 500);

        assertThat(plain[0]).isZero();
        assertThat(plain[plain.length - 1]).isEqualTo(400);
        for (int i = 1; i < plain.length; i++) {
            assertThat(plain[i] - plain[i - 1]).isCloseTo(400.0 / (plain.length - 1), offset(1e-9));
        }
        // Only 100.3 lies inside.
        assertThat(jumps).hasSize(plain.length + 2).isSorted();
        assertThat(jumps).contains(plain);
        assertThat(java.util.Arrays.stream(jumps).filter(x -> Math.abs(x - 100.3) < 1e-6))
                .satisfiesExactly(
                        before -> assertThat(before).isCloseTo(100.3 - 4e-7, offset(1e-12)),
                        after -> assertThat(after).isCloseTo(100.3 + 4e-7, offset(1e-12)));
    }

    @Test
    void evenly_takesTwoOrMore() {
        assertThat(WoodScan.evenly(3, 303, 2)).containsExactly(3, 303);
        assertThat(WoodScan.evenly(3, 303, 4)).containsExactly(3, 103, 203, 303);
        assertThatThrownBy(() -> WoodScan.evenly(3, 303, 1)).hasMessageContaining("but were 1");
    }
}
