package org.neckgeom.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.commons.statistics.distribution.FDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.shop.BenchUncertainty;

/** Held to the pooling cases of {@code state/cases.csv} and to figures by hand. */
class ShopLogTest {

    private static final String DAY = "2026-03-02";
    private static final LocalDate AS_OF = LocalDate.parse(DAY);
    private static final Workmanship BEFORE = Workmanship.withDefaults().locating(ErrorDistribution.normal(mm(0.06)));

    /** Residuals of either sign with the sum of squares asked for. */
    private static List<LogEntry> residuals(int count, double squares) {
        List<LogEntry> all = new ArrayList<>();
        double r = Math.sqrt(squares / (count - count % 2));
        for (int i = 0; i < count; i++) {
            double value = i == count - 1 && count % 2 == 1 ? 0.0 : i % 2 == 0 ? r : -r;
            all.add(LogEntry.on(DAY, ShopStep.LOCATING).read(mm(value)));
        }
        return all;
    }

    private static Learnt learnt(List<LogEntry> entries, LocalDate day) {
        return ShopLog.of(entries).learnt(ShopStep.LOCATING, BEFORE, BenchUncertainty.withDefaults(), day);
    }

    @ParameterizedTest
    @CsvSource({"5, 0.0125, 0.05636420031, 13", "20, 0.05, 0.05304984179, 28", "60, 0.15, 0.05127779017, 68"})
    void learnt_poolsThePriorAndTheReadings(int count, double squares, double s, double degrees) {
        Learnt learnt = learnt(residuals(count, squares), AS_OF);

        assertThat(learnt.standardDeviation().libraryValue()).isCloseTo(s, within(1e-10));
        assertThat(learnt.degrees()).isCloseTo(degrees, within(1e-12));
        assertThat(learnt.count()).isEqualTo(count);
        assertThat(learnt.bias()).isEmpty();
        assertThat(learnt.spread().degreesOfFreedom()).isCloseTo(degrees, within(1e-12));
    }

    @Test
    void learnt_ofNothingIsWhatWasGiven() {
        Learnt learnt = learnt(List.of(), AS_OF);

        assertThat(learnt.standardDeviation()).isEqualTo(mm(0.06));
        assertThat(learnt.degrees()).isEqualTo(8.0);
        assertThat(learnt).hasToString("locating: nothing read yet, 0.060 mm is common practice or as given");
    }

    /** By hand: a fiftieth less a week, half in 34 weeks. */
    @Test
    void learnt_forgetsHalfIn34Weeks() {
        Learnt now = learnt(residuals(20, 0.05), AS_OF);
        Learnt later = learnt(residuals(20, 0.05), AS_OF.plusWeeks(34));

        assertThat(later.standardDeviation()).isEqualTo(now.standardDeviation());
        assertThat(later.degrees() - 8.0).isCloseTo(20.0 * Math.pow(0.98, 34), within(1e-9));
        assertThat((later.degrees() - 8.0) / 20.0).isCloseTo(0.5, within(0.01));
    }

    @Test
    void learnt_findsABiasFirst() {
        List<LogEntry> off = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            off.add(LogEntry.on(DAY, ShopStep.LOCATING).read(mm(0.08 + (i % 2 == 0 ? 0.01 : -0.01))));
        }
        Learnt learnt = learnt(off, AS_OF);

        // Ten residuals of 0.08 on average and one of 0 that stands for the prior.
        assertThat(learnt.bias().orElseThrow().libraryValue()).isCloseTo(0.8 / 11.0, within(1e-12));
        assertThat(learnt.toString()).contains("off on average: put that right first");
        assertThat(learnt.spread().libraryMean()).isCloseTo(0.8 / 11.0, within(1e-12));
    }

    /**
     * The spread of what is always off by about the same is that about the bias: expected values by NumPy, of the conjugate
     * distribution of mean and variance, {@code nu s^2 = nu0 s0^2 + sum (r - mean)^2 + n/(n + 1) mean^2}, the next error by it
     * {@code sqrt(1 + 1/(n + 1))} wider. At the bench no bias is kept, and the whole counts.
     */
    @Test
    void learnt_countsABiasOnce() {
        double[] off = {0.24, 0.26, 0.22, 0.25, 0.23, 0.25};
        List<LogEntry> lines = new ArrayList<>();
        List<LogEntry> moves = new ArrayList<>();
        for (double one : off) {
            lines.add(LogEntry.on(DAY, ShopStep.LOCATING).read(mm(one)));
            moves.add(LogEntry.on(DAY, ShopStep.FENCE_MOVE).read(mm(1 + one)).meant(mm(1)));
        }
        Learnt learnt = learnt(lines, AS_OF);
        double moved =
                ShopLog.of(moves).bench(BenchUncertainty.withDefaults(), AS_OF).moveScatterMm();

        assertThat(learnt.bias().orElseThrow().libraryValue()).isCloseTo(0.20714285714, within(1e-10));
        assertThat(learnt.standardDeviation().libraryValue()).isCloseTo(0.07556589232, within(1e-10));
        assertThat(learnt.degrees()).isCloseTo(14, within(1e-12));
        assertThat(Math.sqrt(learnt.spread().libraryVariance())).isCloseTo(0.08078333691, within(1e-10));
        assertThat(moved).isGreaterThan(0.2);
    }

    /** Glued 0.2 mm toward one side all along, the board carries the strings over by 0.2 mm, and is no higher. */
    @Test
    void workmanship_hasABoardsBiasSidewaysAlone() {
        List<LogEntry> lines = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            lines.add(LogEntry.on(DAY, ShopStep.GLUING).read(mm(0.21 + (i % 2 == 0 ? 0.01 : -0.01))));
        }
        Workmanship learnt = ShopLog.of(lines).workmanship(BEFORE, AS_OF);
        NeckErrors errors =
                NeckErrors.of(ReferenceStates.neck("x", 560, 14, 78, 6)).with(learnt);
        NeckState state = errors.state();

        assertThat(learnt.gluing().libraryMean()).isCloseTo(0.2, within(1e-12));
        assertThat(state.known("line", errors.stringLine()).estimate().libraryValue())
                .isCloseTo(0.2, within(1e-9));
        assertThat(state.known("height", errors.projection()).estimate().libraryValue())
                .isCloseTo(0, within(1e-12));
    }

    /** One setting read five times is one draw, and a zero shared by a day is no error of the step. */
    @Test
    void learnt_countsSettingsAndTakesASharedZeroOut() {
        List<LogEntry> once = List.of(LogEntry.on(DAY, ShopStep.LOCATING).read(mm(0.05)));
        List<LogEntry> fiveTimes = new ArrayList<>();
        List<LogEntry> shifted = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            fiveTimes.add(LogEntry.on(DAY, ShopStep.LOCATING).read(mm(0.05)).setting("stop 1"));
            shifted.add(LogEntry.on(DAY, ShopStep.LOCATING)
                    .read(mm(0.3 + 0.01 * (i - 2)))
                    .zero("calliper"));
        }
        Learnt zero = learnt(shifted, AS_OF);

        assertThat(learnt(fiveTimes, AS_OF)).isEqualTo(learnt(once, AS_OF));
        assertThat(zero.degrees()).as("8 + 5 - 1").isCloseTo(12.0, within(1e-12));
        assertThat(zero.standardDeviation().libraryValue())
                .isCloseTo(Math.sqrt((8 * 0.0036 + 10 * 0.0001) / 12), within(1e-12));
    }

    @Test
    void learnt_takesTheReadingsOwnVarianceOff() {
        List<LogEntry> noisy = new ArrayList<>();
        for (LogEntry one : residuals(20, 20 * 0.06 * 0.06)) {
            noisy.add(one.standardUncertainty(mm(0.06)));
        }
        Learnt learnt = learnt(noisy, AS_OF);

        // By hand: u as large as s, so 20 residuals are worth 20/(1 + 1)^2; nothing of their squares is left.
        assertThat(learnt.degrees()).isCloseTo(8 + 5, within(1e-12));
        assertThat(learnt.standardDeviation().libraryValue()).isCloseTo(Math.sqrt(8 * 0.0036 / 13), within(1e-12));
    }

    @Test
    void learnt_keepsJigsApartThatAreUnlike() {
        List<LogEntry> both = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            int sign = i % 2 == 0 ? 1 : -1;
            both.add(LogEntry.on(DAY, ShopStep.LOCATING).read(mm(sign * 0.01)).jig("new jig"));
            both.add(LogEntry.on(DAY, ShopStep.LOCATING).read(mm(sign * 0.10)).jig("old jig"));
        }
        assertThat(learnt(both, AS_OF).unlike()).isEqualTo("new jig and old jig");
        assertThat(learnt(both.subList(0, 1), AS_OF).unlike()).isEmpty();
    }

    @Test
    void fTail_isThatOfCommonsStatistics() {
        for (double[] one : new double[][] {{2.5, 10, 12}, {4.0, 5, 7}, {1.0, 3, 3}, {6.0, 30, 20}}) {
            assertThat(ShopLog.fTail(one[0], one[1], one[2]))
                    .isCloseTo(FDistribution.of(one[1], one[2]).survivalProbability(one[0]), within(2e-5));
        }
    }

    @Test
    void of_doesNotKnowTheOrderOfItsLines() {
        List<LogEntry> lines = new ArrayList<>(residuals(20, 0.05));
        lines.add(LogEntry.on("2026-01-05", ShopStep.LOCATING).read(mm(0.2)));
        ShopLog one = ShopLog.of(lines);
        Collections.shuffle(lines, new Random(5));

        assertThat(ShopLog.of(lines)).as("seed 5").isEqualTo(one);
    }

    @Test
    void workmanship_hasTheShopsFiguresWithTheirDegrees() {
        ShopLog log = ShopLog.of(residuals(20, 0.05));
        Workmanship learnt = log.workmanship(BEFORE, AS_OF);

        assertThat(learnt.locating().degreesOfFreedom()).isCloseTo(28.0, within(1e-12));
        assertThat(learnt.cutting()).isEqualTo(BEFORE.cutting());
        assertThat(NeckErrors.of(ReferenceStates.neck("x", 560, 14, 78, 6))
                        .with(learnt)
                        .causes())
                .filteredOn(cause -> cause.name().equals("heel near the nut"))
                .allMatch(cause -> cause.basis() == Basis.READINGS);
    }

    /** Ten cuts at one setting without touching the fence, and moves against a gauge. */
    @Test
    void bench_hasTheShopsFigures() {
        List<LogEntry> lines = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            double sign = i % 2 == 0 ? 1 : -1;
            lines.add(LogEntry.on(DAY, ShopStep.CUT_SCATTER).read(mm(sign * 0.01)));
            lines.add(LogEntry.on(DAY, ShopStep.FENCE_MOVE)
                    .read(mm(0.5 + sign * 0.03))
                    .meant(mm(0.5)));
        }
        BenchUncertainty bench = ShopLog.of(lines).bench(BenchUncertainty.withDefaults(), AS_OF);

        assertThat(bench.cutScatterMm()).isCloseTo(Math.sqrt((8 * 0.0004 + 10 * 0.0001) / 18), within(1e-12));
        assertThat(bench.cutScatterCuts()).contains(19);
        assertThat(bench.moveScatterMm()).isCloseTo(Math.sqrt((8 * 0.0004 + 10 * 0.0009) / 18), within(1e-12));
        assertThat(bench.repeatabilityMm()).isEqualTo(BenchUncertainty.USUAL_REPEATABILITY_MM);
    }

    @Test
    void on_refusesWhatIsNoDate() {
        assertThatThrownBy(() -> LogEntry.on("2. March", ShopStep.GLUING))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("date must be a date such as 2026-03-02, but was \"2. March\"");
    }

    @Test
    void jsonLines_areReadBack() {
        List<LogEntry> lines = residuals(3, 0.02);
        lines.add(LogEntry.on("2026-01-05", ShopStep.FENCE_MOVE)
                .read(mm(0.52))
                .meant(mm(0.5))
                .standardUncertainty(mm(0.02))
                .zero("calliper")
                .setting("one")
                .jig("saw")
                .of("parlour \"two\"", "trial cut 2"));
        ShopLog log = ShopLog.of(lines);

        assertThat(ShopLog.read(log.jsonLines() + "\n\n")).isEqualTo(log);
        assertThat(log.jsonLines().lines()).hasSize(4);
        assertThat(log.with(log)).as("no line twice but those that were").isEqualTo(log);
    }

    @Test
    void read_refusesEveryBadLineAtOnce() {
        String good = ShopLog.of(residuals(1, 0)).jsonLines();
        assertThatThrownBy(() ->
                        ShopLog.read(good + "{\"date\": \"2026-02-30\", \"step\": \"gluing\", \"read\": 1}\nno json\n"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("line 2")
                .hasMessageContaining("line 3");
    }
}
