package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;

/** Closure against the rows of {@code slot/cases.csv}: computed apart from the library by {@code make.py} with scipy. */
class ClosureCasesTest {

    private static final double TOLERANCE = 1e-6;

    static Stream<SlotCasesTest.Row> rows() {
        return SlotCasesTest.rows().stream().filter(row -> row.topic().equals("closure"));
    }

    @Test
    void rows_areAllThere() {
        assertThat(rows()).hasSize(24);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void closure_isThatOfTheReference(SlotCasesTest.Row row) {
        assertThat(row.quantity().startsWith("u of") ? uncertainty(row.input()) : factor(row.input(), row.quantity()))
                .isCloseTo(row.value(), within(TOLERANCE));
    }

    private static double uncertainty(String input) {
        TrialCut cut =
                TrialCut.walls(mm(27.5), mm(27.5)).slot(mm(6)).piece(mm(61)).repeatability(mm(0.02));
        if (input.contains("zero 0.01 outside, 0.01 inside")) {
            return Closure.of(cut)
                    .bench(BenchUncertainty.withDefaults().calliperZero(mm(0.01)))
                    .uncertaintyMm();
        }
        Closure closure = Closure.of(cut.wallsCorrelated(number(input, "rho ([0-9.]+)")));
        return (input.contains("rho_d") ? closure.slotBySameZero() : closure).uncertaintyMm();
    }

    /** Four widths read n times with a scatter of their own have 4 (n - 1) degrees of freedom together. */
    private static double factor(String input, String quantity) {
        TrialCut cut = TrialCut.walls(mm(27.5), mm(27.5)).slot(mm(6)).piece(mm(61));
        if (!input.contains("nu inf")) {
            int n = (int) number(input, "nu ([0-9]+)") / 4 + 1;
            cut = TrialCut.walls(scattered(300, n), scattered(300, n))
                    .slot(scattered(60, n))
                    .piece(scattered(660, n));
        }
        Closure closure = Closure.of(cut).inSession((int) number(input, "([0-9]+) cuts"));
        return (quantity.startsWith("warn") ? closure.allowedMm() : closure.refusedAboveMm()) / closure.uncertaintyMm();
    }

    /** So far apart that the calliper's step is as nothing beside it. */
    private static List<Amount<Length>> scattered(double mean, int n) {
        List<Amount<Length>> readings = new ArrayList<>();
        DoubleStream.iterate(0, i -> i + 1).limit(n).forEach(i -> readings.add(mm(mean + 20 * (i % 2 == 0 ? 1 : -1))));
        return readings;
    }

    private static double number(String text, String pattern) {
        return SlotCasesTest.number(text, pattern);
    }
}
