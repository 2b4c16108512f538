package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.validation.Rows;

/** How often closure catches a wrong reading, and blames right ones: {@code slot/closure-power.csv} was simulated with numpy. */
@Tag("long")
class ClosurePowerTest {

    private static final int TRIALS = 40_000;
    private static final int TRIALS_OF_TABLE = 400_000;

    /** Both shares are of a simulation; the table has four decimals. */
    static double fourErrors(double share, int trials, int trialsOfTable) {
        return 4 * Math.sqrt(share * (1 - share) * (1.0 / trials + 1.0 / trialsOfTable)) + 1e-4;
    }

    @Test
    void power_isThatOfTheTable() {
        int rows = 0;
        for (Map<String, String> row : Rows.of("/channel/slot/closure-power.csv")) {
            if (!row.get("rule").equals("new")) {
                continue;
            }
            rows++;
            int m = Integer.parseInt(row.get("m"));
            double freedom = row.get("nu").equals("inf") ? Double.POSITIVE_INFINITY : Rows.number(row, "nu");
            ClosurePower.Rates rates = ClosurePower.of(m, freedom, Rows.number(row, "wrong_by"), TRIALS, 100 + rows);
            double warned = Rows.number(row, "warn");
            double refused = Rows.number(row, "refuse");

            assertThat(rates.warned())
                    .as("warned, " + row)
                    .isCloseTo(warned, within(fourErrors(warned, TRIALS, TRIALS_OF_TABLE)));
            assertThat(rates.refused())
                    .as("refused, " + row)
                    .isCloseTo(refused, within(fourErrors(refused, TRIALS, TRIALS_OF_TABLE)));
        }
        assertThat(rows).isEqualTo(32);
    }

    /** At most 1 % of honest sessions warn and 0.1 % are refused, however many cuts and readings they have. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void honestSessions_rarelyWarn(int readings) {
        int sessions = 12_000;
        for (int cuts = 1; cuts <= 5; cuts++) {
            ClosurePower.Rates rates = ClosurePower.falseAlarms(cuts, readings, true, sessions, 7L * cuts + readings);
            String which = cuts + " cuts, " + readings + " readings " + rates;
            assertThat(rates.warned()).as(which).isLessThanOrEqualTo(0.01 + 4 * Math.sqrt(0.01 / sessions));
            assertThat(rates.refused()).as(which).isLessThanOrEqualTo(0.001 + 4 * Math.sqrt(0.001 / sessions));
        }
    }

    /**
     * Readings with their own scatter alone to go by: from three each on as rarely; with two each Welch-Satterthwaite (GUM G.4) rests on
     * single degrees of freedom, and is known to promise too much.
     */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5})
    void honestSessions_rarelyWarnByTheirOwnScatter(int readings) {
        int sessions = 12_000;
        double warned = readings == 2 ? 0.016 : 0.01;
        double refused = readings == 2 ? 0.005 : 0.0015;
        for (int cuts = 1; cuts <= 5; cuts++) {
            ClosurePower.Rates rates = ClosurePower.falseAlarms(cuts, readings, false, sessions, 70L * cuts + readings);
            String which = cuts + " cuts, " + readings + " readings " + rates;

            assertThat(rates.warned()).as(which).isLessThanOrEqualTo(warned + 4 * Math.sqrt(warned / sessions));
            assertThat(rates.refused()).as(which).isLessThanOrEqualTo(refused + 4 * Math.sqrt(refused / sessions));
        }
    }
}
