package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Collections;
import java.util.List;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.GlobalRisk;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;

/** The topics centre, u, rounds and risk of {@code slot/cases.csv}, by the number of their rows. */
class SlotFiguresTest {

    private static final double INF = Double.POSITIVE_INFINITY;
    private static final BenchUncertainty BENCH = BenchUncertainty.withDefaults()
            .repeatability(mm(0.02))
            .cutScatter(mm(0))
            .moveScatter(mm(0.02));

    private static double row(int id) {
        return SlotCasesTest.rows().stream()
                .filter(row -> row.id() == id)
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static void holds(double ours, int id) {
        assertThat(ours).as("row " + id).isCloseTo(row(id), within(1e-6));
    }

    private static CentringRounds on(double width, TrialCut cut) {
        Channel channel =
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))).startingAt(mm(3));
        Blank blank = Blank.ofLength(mm(640)).section(mm(width), mm(20)).nutAt(mm(200));
        return CentringRounds.on(BlankOnFence.of(blank, channel, Fence.onePiece(mm(600))))
                .bench(BENCH)
                .trialCut(cut);
    }

    private static TrialCut cut(double near, double far) {
        return TrialCut.walls(mm(near), mm(far));
    }

    private static double offset(CentringRounds rounds) {
        return rounds.place().offsetMmAt(100);
    }

    @Test
    void centre_isCarriedFromThePieceToTheBlank() {
        CentringRounds wider = on(61, cut(27.79, 27.79).piece(mm(61.60)));

        holds(offset(wider) + 30.5, 1);
        holds(offset(on(61, cut(27.79, 27.79).slot(mm(6.02)))) + 30.5, 2);
        holds(offset(wider), 3);
        holds(offset(on(61, cut(30.50, 30.52).slot(mm(6.02)).piece(mm(67.04)))), 4);
        holds(offset(on(67.2, cut(29.84, 31.26).piece(mm(67.12)))), 5);
        holds(offset(on(61, cut(24.00, 24.10).piece(mm(54.10)))), 6);
    }

    @Test
    void uncertainty_dependsOnWhatWasRead() {
        holds(Centring.of(cut(30, 30).repeatability(mm(0.02))).offset().uncertaintyMm(), 70);
        holds(on(61, cut(27.5, 27.5).piece(mm(61))).place().start().uncertaintyMm(), 71);
        holds(
                on(61, cut(27.5, 27.5).piece(mm(61)))
                        .bench(BENCH.calliperZero(mm(0.05)))
                        .place()
                        .start()
                        .uncertaintyMm(),
                72);
        BenchUncertainty two = BENCH.calliperZero(mm(0.02)).blankCalliperZero(mm(0.02));
        holds(on(61, cut(27.5, 27.5).piece(mm(61))).bench(two).place().start().uncertaintyMm(), 73);
        // By hand: the wall, half of the slot and of the blank as read; all of the zero outside, half of that inside,
        // half
        // of the blank's.
        assertThat(on(61, cut(27.5, 27.5).slot(mm(6)))
                        .bench(two.blankCalliperZero(mm(0.03)))
                        .place()
                        .start()
                        .uncertaintyMm())
                .isCloseTo(Math.sqrt(0.0006 + 0.0004 + 0.0001 + 0.000225), within(1e-12));
        holds(
                on(61, cut(27.5, 27.5).slot(mm(6)))
                        .bench(BENCH.calliperZero(mm(0.02)))
                        .place()
                        .start()
                        .uncertaintyMm(),
                74);
        holds(ofMean(4, 0.01), 75);
        holds(ofMean(100, 0.05), 76);
    }

    /** Both walls read so many times: half of the variance of a mean is the offset's. */
    private static double ofMean(int times, double division) {
        TrialCut cut = TrialCut.walls(Collections.nCopies(times, mm(30)), Collections.nCopies(times, mm(30)));
        CentringRounds rounds = CentringRounds.of(cut).bench(BENCH.resolution(mm(division)));
        return Math.sqrt(2) * rounds.estimate().uncertaintyMm();
    }

    @Test
    void rounds_areTheRecursionOfTheReference() {
        SettingState first = SettingState.first(0.12, 0.0004, 0.0009, INF);
        SettingState moved = first.movedTowardCutter(0.12, 0.0004);
        SettingState second = moved.cut(0.03, 0.0004, 0.0009, INF);

        holds(first.variance(), 80);
        holds(Math.sqrt(first.variance() + 0.0009), 81);
        holds(second.mean(), 82);
        holds(Math.sqrt(second.variance()), 83);
        holds((0.03 - moved.mean()) / Math.sqrt(moved.variance() + 0.0013), 84);
        holds(Math.sqrt(second.variance() + 0.0009), 85);
        holds((0.20 - second.mean()) / Math.sqrt(second.variance() + 0.0013), 86);
    }

    @Test
    void risk_ofAcceptingOneReadingIsTheVerdicts() {
        Limits<Length> limits = Limits.within(mm(0.1));
        double variance = 0.0025 * 0.0004 / 0.0029;

        holds(1 - Verdict.of(Estimate.of(mm(0.06), mm(0.02)), limits).probability(), 123);
        holds(
                1
                        - Verdict.of(Estimate.of(mm(0.06 * 0.0025 / 0.0029), mm(Math.sqrt(variance))), limits)
                                .probability(),
                124);
    }

    /** Student's quantile at the chance of a guard factor: 1.6449 for 95 % on one side, 2 for 97.725 %. */
    @Test
    void guardBands_areThoseOfTheReference() {
        List<SlotCasesTest.Row> rows = SlotCasesTest.rows().stream()
                .filter(row -> row.topic().equals("guard"))
                .toList();
        assertThat(rows).hasSize(10);
        for (SlotCasesTest.Row row : rows) {
            double nu = row.input().contains("inf") ? INF : SlotCasesTest.number(row.input(), "nu ([0-9]+)");
            double factor = row.input().contains("k = 2") ? 2 : 1.6448536269514722;
            Verdict<Length> verdict = Verdict.of(Estimate.of(mm(0), mm(1), nu), Limits.within(mm(10)))
                    .guardedBy(factor);

            holds(verdict.guardBand().libraryValue(), row.id());
        }
    }

    /** JCGM 106:2012, 9.5, by the reference's own integration. */
    @Test
    void globalRisks_areThoseOfTheReference() {
        int id = 111;
        for (double process : new double[] {0.05, 0.1}) {
            for (double guard : new double[] {0, 1.65, 2}) {
                GlobalRisk<Length> risk = GlobalRisk.of(
                                Estimate.of(mm(0), mm(process)), mm(0.02), Limits.within(mm(0.1)))
                        .guardedBy(guard);

                holds(risk.consumers(), id++);
                holds(risk.producers(), id++);
            }
        }
    }
}
