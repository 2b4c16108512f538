package org.neckgeom.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Spliterator;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.stream.LongStream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Neck;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

class SweepTest {

    /** A design of three numbers, so that the expected grid can be written as three loops. */
    private record Point(double a, double b, int c) {}

    private static final Sweep<Point> GRID = Sweep.of(new Point(0, 0, 0))
            .over("a", Axis.steps(mm(1), mm(3), mm(1)), (point, a) -> new Point(a.value(), point.b, point.c))
            .overEach("c", List.of(7, 8), (point, c) -> new Point(point.a, point.b, c))
            .over("b", Axis.steps(mm(0), mm(1), mm(0.25)), (point, b) -> new Point(point.a, b.value(), point.c));

    private static final Function<Point, Double> QUESTION = point -> point.a * 100 + point.c * 10 + point.b;

    private static List<Double> byLoops() {
        List<Double> all = new ArrayList<>();
        for (int a = 1; a <= 3; a++) {
            for (int c = 7; c <= 8; c++) {
                for (int b = 0; b <= 4; b++) {
                    all.add(a * 100 + c * 10 + 0.25 * b);
                }
            }
        }
        return all;
    }

    @Test
    void results_areThoseOfNestedLoops() {
        assertThat(GRID.size()).isEqualTo(30);
        assertThat(GRID.results(QUESTION).map(result -> result.answer().orElseThrow()))
                .isEqualTo(byLoops());
        assertThat(GRID.results(QUESTION).map(SweepResult::index))
                .isEqualTo(LongStream.range(0, 30).boxed().toList());
        assertThat(GRID.results(QUESTION).skip(6).findFirst().orElseThrow().settings())
                .containsExactly(
                        java.util.Map.entry("a", mm(1)),
                        java.util.Map.entry("c", 8),
                        java.util.Map.entry("b", mm(0.25)));
    }

    @Test
    void results_areTheSameInParallel() {
        for (int run = 0; run < 20; run++) {
            assertThat(GRID.results(QUESTION).parallel().toList())
                    .isEqualTo(GRID.results(QUESTION).toList());
        }
    }

    @Test
    void result_isTheOneOfTheStream() {
        List<SweepResult<Point, Double>> all = GRID.results(QUESTION).toList();
        for (int i = 0; i < all.size(); i++) {
            assertThat(GRID.result(i, QUESTION)).isEqualTo(all.get(i)).hasSameHashCodeAs(all.get(i));
        }
    }

    @Test
    void text_inAnotherStyle_hasTheSettingsInIt() {
        SweepResult<Point, Amount<Length>> result = GRID.result(7, point -> inch(point.a));

        assertThat(GRID.text(LengthStyle.DECIMAL_INCHES))
                .contains("0.0394 in to 0.1181 in")
                .doesNotContain("mm");
        assertThat(result.text(LengthStyle.DECIMAL_INCHES)).startsWith("design 7: 1 in\n  a  0.0394 in\n");
        assertThat(result).hasToString("design 7: 25.4 mm\n  a  1 mm\n  c  8\n  b  0.5 mm");
        assertThat(Axis.steps(mm(25.4), mm(50.8), mm(25.4)).text(LengthStyle.DECIMAL_INCHES))
                .isEqualTo("2 values from 1 in to 2 in");
        assertThat(Axis.steps(mm(5), mm(5), mm(1))).hasToString("1 value, 5 mm");
    }

    @Test
    void text_withoutLengthOnAnAxis_isInTheStyleOfTheAnswer() {
        Sweep<Point> one = Sweep.of(new Point(0, 0, 0));

        assertThat(one.result(0, point -> inch(2))).hasToString("design 0: 2 in");
        assertThat(one.result(0, point -> Axis.of(List.of(inch(2))))).hasToString("design 0: 1 value, 2 in");
        assertThat(one.result(0, point -> thou(2))).hasToString("design 0: 0.002 in");
    }

    @Test
    void spliterator_splitsIntoExactSizesInOrder() {
        List<SweepResult<Point, Double>> found = new ArrayList<>();
        pieces(GRID.results(QUESTION).spliterator(), found);

        assertThat(found).isEqualTo(GRID.results(QUESTION).toList());
    }

    /** Splits to the last, each time holding the sizes against each other. */
    private static void pieces(Spliterator<SweepResult<Point, Double>> rest, List<SweepResult<Point, Double>> found) {
        long before = rest.getExactSizeIfKnown();
        Spliterator<SweepResult<Point, Double>> front = rest.trySplit();
        if (front == null) {
            assertThat(before).isLessThanOrEqualTo(1);
            rest.forEachRemaining(found::add);
            return;
        }
        assertThat(front.getExactSizeIfKnown() + rest.getExactSizeIfKnown()).isEqualTo(before);
        assertThat(front.getExactSizeIfKnown()).isPositive();
        pieces(front, found);
        pieces(rest, found);
    }

    @Test
    void results_areMadeOnlyWhenRead() {
        AtomicLong asked = new AtomicLong();
        Sweep<Point> vast = GRID.over("x", Axis.steps(mm(0), mm(1e6), mm(0.01)), (point, x) -> point)
                .over("y", Axis.steps(mm(0), mm(1e6), mm(0.01)), (point, y) -> point);

        var stream = vast.results(point -> asked.incrementAndGet());
        assertThat(asked).hasValue(0);
        assertThat(stream.limit(3)).hasSize(3);

        assertThat(asked).hasValue(3);
        assertThat(vast.size()).isEqualTo(30L * 100_000_001L * 100_000_001L);
        assertThat(vast.result(vast.size() - 1, point -> point).settings()).containsEntry("y", mm(1e6));
    }

    @Test
    void over_refusesMoreThanCanBeCounted() {
        Sweep<Point> vast = GRID.over("x", Axis.steps(mm(0), mm(3e8), mm(1)), (point, x) -> point)
                .over("y", Axis.steps(mm(0), mm(3e8), mm(1)), (point, y) -> point);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> vast.over("z", Axis.steps(mm(0), mm(3e8), mm(1)), (point, z) -> point))
                .withMessageContaining("axis \"z\" makes them more");
    }

    @Test
    void design_thatMakesNoSense_saysSoAndTheSweepGoesOn() {
        Sweep<Neck> sweep = Sweep.of(SampleNecks.octaveMandolin())
                .over(
                        "depth",
                        Axis.steps(mm(-1), mm(1), mm(1)),
                        (neck, depth) -> neck.back(BackProfile.between(depth, mm(15))))
                .overEach("frets", List.of(19, 0, 21), Neck::frets);

        List<SweepResult<Neck, Integer>> all = sweep.results(Neck::frets).toList();

        assertThat(all).hasSize(9);
        assertThat(all.get(0).refusal()).contains("must be more than 0 mm, but was -1 mm");
        assertThat(all.subList(0, 6)).allMatch(result -> result.design().isEmpty());
        assertThat(all.get(6).answer()).contains(19);
        assertThat(all.get(7).refusal()).contains("frets must be a whole number from 1 to 200, but was 0");
        assertThat(all.get(8).answer()).contains(21);
    }

    @Test
    void question_thatRefuses_isAnAnswerAndAnotherExceptionIsNot() {
        SweepResult<Point, Double> refused = GRID.result(3, point -> {
            throw new ArithmeticException("no answer");
        });

        assertThat(refused.design()).isPresent();
        assertThat(refused.refusal()).isEqualTo("no answer");
        assertThatThrownBy(() -> GRID.results(point -> {
                            throw new IllegalStateException("a mistake");
                        })
                        .toList())
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("a mistake");
    }

    @Test
    void progress_isToldEachResult() {
        List<Long> told = new ArrayList<>();

        GRID.results(QUESTION, (done, size) -> told.add(done) && size == 30).toList();

        assertThat(told).isEqualTo(LongStream.rangeClosed(1, 30).boxed().toList());
    }

    @Test
    void progress_cancels() {
        assertThatThrownBy(
                        () -> GRID.results(QUESTION, (done, size) -> done < 12).toList())
                .isInstanceOf(CancellationException.class)
                .hasMessage("the sweep was cancelled after 12 of 30 designs");
    }

    @Test
    void progress_cancelsAllThreads() {
        AtomicLong asked = new AtomicLong();
        Sweep<Point> many = GRID.over("x", Axis.steps(mm(0), mm(1e6), mm(1)), (point, x) -> point);

        assertThatThrownBy(() -> many.results(point -> asked.incrementAndGet(), (done, size) -> done < 100)
                        .parallel()
                        .forEach(result -> {}))
                .isInstanceOf(CancellationException.class);
        // Each thread may have one under way when the hundredth is counted.
        assertThat(asked.get()).isBetween(100L, 100L + Runtime.getRuntime().availableProcessors() + 1);
    }

    @Test
    void ofEach_takesDesignsOneByOne() {
        Sweep<Neck> sweep = Sweep.ofEach(List.of(SampleNecks.octaveMandolin(), SampleNecks.guitar()))
                .overEach("frets", List.of(20, 22), Neck::frets);

        assertThat(sweep.results(neck -> neck.name() + neck.frets())
                        .map(result -> result.answer().orElseThrow()))
                .containsExactly(
                        "Octave mandolin, walnut20", "Octave mandolin, walnut22", "Guitar, maple20", "Guitar, maple22");
    }

    @Test
    void best_areThoseOfSortingAll() {
        Function<Point, Double> wavy = point -> Math.rint(Math.sin(37 * (point.a + point.b) + point.c) * 4);
        List<Long> sorted = GRID.results(wavy).toList().stream()
                .sorted(Comparator.comparing((SweepResult<Point, Double> result) ->
                                result.answer().orElseThrow())
                        .thenComparing(SweepResult::index))
                .limit(7)
                .map(SweepResult::index)
                .toList();

        assertThat(GRID.results(wavy).collect(Best.smallest(7, Double::doubleValue)))
                .extracting(SweepResult::index)
                .isEqualTo(sorted);
        assertThat(GRID.results(wavy).parallel().collect(Best.smallest(7, Double::doubleValue)))
                .extracting(SweepResult::index)
                .isEqualTo(sorted);
        assertThat(GRID.results(wavy)
                        .collect(Best.greatest(1, Double::doubleValue))
                        .get(0)
                        .answer())
                .contains(4.0);
    }

    @Test
    void best_leavesOutRefusalsAndWhatIsNoNumber() {
        Function<Point, Double> gaps = point -> {
            if (point.c == 7) {
                throw new ArithmeticException("no answer");
            }
            return point.a == 1 ? Double.NaN : point.b;
        };

        assertThat(GRID.results(gaps).collect(Best.smallest(100, Double::doubleValue)))
                .hasSize(10);
    }

    @Test
    void keeping_saysHowManyAndBetweenWhichValues() {
        SweepSummary<Point> summary = GRID.keeping(point -> point.c == 8 && point.b >= 0.25 && point.b < 1);

        assertThat(summary.kept()).isEqualTo(9);
        assertThat(summary.asked()).isEqualTo(30);
        assertThat(summary.first().orElseThrow().index()).isEqualTo(6);
        assertThat(summary).hasToString("""
                        9 of 30 designs will do
                          a  1 mm to 3 mm
                          c  8
                          b  0.25 mm to 0.75 mm""");
        assertThat(GRID.keeping(point -> false)).hasToString("0 of 30 designs will do");
    }

    @Test
    void axis_countsItsStepsWithoutAddingThemUp() {
        assertThat(Axis.steps(mm(0), mm(1), mm(0.1)).size()).isEqualTo(11);
        assertThat(Axis.steps(mm(0), mm(1), mm(0.3)).size()).isEqualTo(4);
        assertThat(Axis.steps(mm(5), mm(5), mm(1)).size()).isEqualTo(1);
        assertThat(Axis.steps(inch(1), inch(2), thou(250)).value(3)).isEqualTo(inch(1.75));
        assertThat(Axis.of(List.of(inch(1), mm(50.8)))).hasToString("2 values from 1 in to 2 in");
        assertThat(Axis.steps(mm(0), mm(1000), mm(0.001)).value(1_000_000)).isEqualTo(mm(1000));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Axis.steps(mm(0), mm(1), mm(0)))
                .withMessage("step must be more than 0 mm, but was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Axis.steps(mm(2), mm(1), mm(1)))
                .withMessage("to must be 2 mm or more, but was 1 mm");
    }

    @Test
    void texts_areShort() {
        Sweep<Neck> woods = Sweep.of(SampleNecks.octaveMandolin()).overEach("wood", Wood.listed(), Neck::wood);

        assertThat(GRID).hasToString("""
                Sweep of 30 designs
                  a  3 values, 1 mm to 3 mm
                  c  2 values, 7 to 8
                  b  5 values, 0 mm to 1 mm""");
        assertThat(woods.toString()).hasSizeLessThan(300);
        assertThat(woods.result(0, neck -> neck).toString()).hasSizeLessThan(1000);
        assertThat(woods.keeping(neck -> true).toString()).hasSizeLessThan(1000).contains(" more");
    }

    @Test
    void keeping_inParallel_saysTheSame() {
        Sweep<Point> larger = GRID.over("x", Axis.steps(mm(0), mm(99), mm(1)), (point, x) -> {
            if (x.value() == 50) {
                throw new IllegalArgumentException("50 will not do");
            }
            return point;
        });

        SweepSummary<Point> inParallel =
                larger.results(point -> point.a > 1).parallel().collect(SweepSummary.collector());

        assertThat(inParallel).isEqualTo(larger.keeping(point -> point.a > 1));
        assertThat(inParallel.asked()).isEqualTo(3000);
        assertThat(inParallel.refused()).isEqualTo(30);
        assertThat(inParallel.kept()).isEqualTo(1980);
        assertThat(inParallel.first().orElseThrow().index()).isEqualTo(1000);
    }

    @Test
    void keeping_countsWhatWasRefusedAndSaysTheFirstReason() {
        String lengthy = "a reason ".repeat(100);

        SweepSummary<Point> summary = GRID.keeping(point -> {
            if (point.c == 7) {
                throw new ArithmeticException("no answer for " + point.a + " and " + point.b);
            }
            return true;
        });
        SweepSummary<Point> wordy = GRID.keeping(point -> {
            throw new ArithmeticException(lengthy);
        });

        assertThat(summary.refused()).isEqualTo(15);
        assertThat(summary.kept()).isEqualTo(15);
        assertThat(summary.toString()).endsWith("15, the first: no answer for 1.0 and 0.0");
        assertThat(wordy.refused()).isEqualTo(30);
        assertThat(wordy.first()).isEmpty();
        assertThat(wordy.toString()).endsWith("...").hasSizeLessThan(600);
    }

    @Test
    void summary_inAnotherStyle_isSaidInInches() {
        SweepSummary<Point> summary = GRID.keeping(point -> point.a > 1);

        assertThat(summary.text(LengthStyle.DECIMAL_INCHES)).isEqualTo("""
                        20 of 30 designs will do
                          a  0.0787 in to 0.1181 in
                          c  7, 8
                          b  0 in to 0.0394 in""");
    }

    @Test
    void summaries_areEqualWhenTheirCountsRangesAndFirstDesignAre() {
        SweepSummary<Point> summary = GRID.keeping(point -> point.a > 1);

        assertThat(summary)
                .isEqualTo(GRID.keeping(point -> point.a >= 2))
                .hasSameHashCodeAs(GRID.keeping(point -> point.a >= 2));
        assertThat(summary)
                .isNotEqualTo(GRID.keeping(point -> point.a < 3))
                .isNotEqualTo(GRID.keeping(point -> point.a > 0))
                .isNotEqualTo("20 of 30 designs will do");
        assertThat(summary.hashCode())
                .isNotEqualTo(GRID.keeping(point -> point.a < 3).hashCode());
    }

    @Test
    void keeping_ofChoices_namesThreeAndCountsTheRest() {
        Sweep<Point> four = Sweep.of(new Point(0, 0, 0))
                .overEach("c", List.of(1, 2, 3, 4), (point, c) -> new Point(point.a, point.b, c));

        assertThat(four.keeping(point -> point.c < 4).toString()).endsWith("c  1, 2, 3");
        assertThat(four.keeping(point -> true).toString()).endsWith("c  1, 2, 3 and 1 more");
    }

    @Test
    void results_areEqualOnlyForTheSamePlaceAndAnswer() {
        SweepResult<Point, Double> result = GRID.result(3, QUESTION);

        assertThat(result)
                .isNotEqualTo(GRID.result(4, QUESTION))
                .isNotEqualTo(GRID.result(3, point -> 1.0))
                .isNotEqualTo("design 3");
        assertThat(result.hashCode()).isNotEqualTo(GRID.result(4, QUESTION).hashCode());
    }

    @Test
    void result_printsItsAnswerAndSettings() {
        assertThat(GRID.result(6, QUESTION)).hasToString("""
                design 6: 180.25
                  a  1 mm
                  c  8
                  b  0.25 mm""");
        assertThat(GRID.<Double>result(0, point -> {
                    throw new ArithmeticException("no answer");
                }))
                .hasToString("""
                design 0: refused: no answer
                  a  1 mm
                  c  7
                  b  0 mm""");
        assertThat(GRID.result(0, point -> "x".repeat(300)).toString()).doesNotContain("...");
        assertThat(GRID.result(0, point -> "x".repeat(301)).toString()).contains("x".repeat(300) + "...\n");
    }

    @Test
    void result_refusesAPlaceOutsideTheSweep() {
        assertThat(GRID.result(29, QUESTION).index()).isEqualTo(29);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GRID.result(30, QUESTION))
                .withMessage("index of a design must be between 0 and 29, but was 30");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GRID.result(-1, QUESTION))
                .withMessage("index of a design must be between 0 and 29, but was -1");
    }

    @Test
    void lists_nameTheMemberThatIsLeftOut() {
        assertThatNullPointerException()
                .isThrownBy(() -> Sweep.ofEach(java.util.Arrays.asList(SampleNecks.guitar(), null)))
                .withMessage("design");
        assertThatNullPointerException()
                .isThrownBy(() -> GRID.overEach("d", java.util.Arrays.asList(1, null), (point, d) -> point))
                .withMessage("choice");
    }

    @Test
    void over_refusesANameGivenTwice() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GRID.over("a", Axis.steps(mm(0), mm(1), mm(1)), (point, a) -> point))
                .withMessage("axes must have different names, but \"a\" was given twice");
    }

    @Test
    void axis_takesAThousandMillionValuesAndNoMore() {
        Axis<Length> most = Axis.steps(mm(0), mm(499_999_999.5), mm(0.5));

        assertThat(most.size()).isEqualTo(1_000_000_000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Axis.steps(mm(0), mm(500_000_000), mm(0.5)))
                .withMessage("values on an axis must be 1000000000 or fewer, but were 1000000001");
    }

    @Test
    void axis_ofTemperatures_stepsByDifferences() {
        Axis<Temperature> inFahrenheit = Axis.steps(
                Amount.of(50, ShopUnit.FAHRENHEIT), Amount.of(77, ShopUnit.FAHRENHEIT), Amount.of(5, ShopUnit.CELSIUS));

        assertThat(inFahrenheit.size()).isEqualTo(4);
        assertThat(inFahrenheit.value(1).value()).isCloseTo(59, within(1e-9));
        assertThat(inFahrenheit.value(3).value()).isCloseTo(77, within(1e-9));
    }

    @Test
    void axis_refusesAPlaceOutsideIt() {
        Axis<Length> axis = Axis.steps(mm(0), mm(4), mm(1));

        assertThat(axis.value(4)).isEqualTo(mm(4));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> axis.value(5))
                .withMessage("index of a value must be between 0 and 4, but was 5");
        assertThatIllegalArgumentException().isThrownBy(() -> axis.value(-1)).withMessageContaining("but was -1");
    }

    @Test
    void axes_areEqualOnlyForTheSameValues() {
        Axis<Length> axis = Axis.steps(mm(0), mm(4), mm(1));

        assertThat(axis)
                .isEqualTo(Axis.steps(mm(0), mm(4), mm(1)))
                .isNotEqualTo(Axis.steps(mm(0), mm(5), mm(1)))
                .isNotEqualTo(Axis.of(List.of(mm(0), mm(1), mm(2), mm(3), mm(4))))
                .isNotEqualTo("5 values from 0 mm to 4 mm");
        assertThat(axis.hashCode()).isNotEqualTo(Axis.steps(mm(0), mm(5), mm(1)).hashCode());
    }
}
