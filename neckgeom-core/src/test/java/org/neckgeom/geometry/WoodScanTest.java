package org.neckgeom.geometry;

import static org.assertj.core.api.Assertions.assertThat;
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
}
