package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.strength.ReferenceRows.number;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against Wood Handbook (FPL-GTR-190, 2010) Eq. 4-5 evaluated with 30 digits, and Table 4-2 as printed. */
class EquilibriumMoistureTest {

    static Stream<Map<String, String>> computed() {
        return ReferenceRows.of("wood-emc.csv").filter(row -> row.get("kind").equals("computed"));
    }

    static Stream<Map<String, String>> printed() {
        return ReferenceRows.of("wood-emc.csv").filter(row -> row.get("kind").equals("printed"));
    }

    @ParameterizedTest
    @MethodSource("computed")
    void percent_isTheEquation(Map<String, String> row) {
        double moisture = Climate.moisturePercent(number(row, "humidity_percent") / 100, number(row, "celsius"));

        assertThat(moisture).isCloseTo(number(row, "moisture_percent"), withinPercentage(1e-11));
    }

    @ParameterizedTest
    @MethodSource("printed")
    void percent_isThePrintedTable(Map<String, String> row) {
        double moisture = Climate.moisturePercent(number(row, "humidity_percent") / 100, number(row, "celsius"));

        // One decimal printed, and temperatures that are rounded from Fahrenheit: half a unit and a little more.
        assertThat(moisture).isCloseTo(number(row, "moisture_percent"), within(0.065));
    }

    @Test
    void percent_growsWithHumidity() {
        double before = -1;
        for (int humidity = 0; humidity < 100; humidity++) {
            double moisture = Climate.moisturePercent(humidity / 100.0, 21);
            assertThat(moisture).isGreaterThan(before);
            before = moisture;
        }
    }
}
