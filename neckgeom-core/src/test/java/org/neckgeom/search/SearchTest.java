package org.neckgeom.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.search.KnownProblems.one;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.form.Form;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.sweep.Axis;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

class SearchTest {

    /** A board of which length and width are looked for. */
    private record Board(Amount<Length> length, Amount<Length> width, String wood) {

        Amount<Length> around() {
            return length.plus(width).times(2);
        }

        /** The area as the side of a square. */
        Amount<Length> side() {
            return mm(Math.sqrt(length.libraryValue() * width.libraryValue()));
        }
    }

    /** The least edge of a board whose area is that of a square of 100 mm: that square, 400 mm around. */
    private static Search<Board> square() {
        return Search.of(new Board(mm(1), mm(1), "maple"))
                .between("length", mm(10), mm(1000), (board, l) -> new Board(l, board.width, board.wood))
                .between("width", mm(10), mm(1000), (board, w) -> new Board(board.length, w, board.wood))
                .least("around", Board::around)
                .within("side", Board::side, Limits.atLeast(mm(100)));
    }

    @Test
    void result_isTheSameInAnyNumberOfThreads() throws Exception {
        for (Search<double[]> search : List.of(
                KnownProblems.vessel(),
                KnownProblems.knapsack(200),
                KnownProblems.binhKorn().designs(800))) {
            SearchResult<double[]> alone = search.result();
            for (int threads : new int[] {1, 4}) {
                ForkJoinPool pool = new ForkJoinPool(threads);
                try {
                    SearchResult<double[]> parallel =
                            pool.submit(() -> search.parallel().result()).get();
                    assertThat(bits(parallel)).isEqualTo(bits(alone));
                } finally {
                    pool.shutdown();
                }
            }
        }
    }

    /** All figures to the last bit. */
    private static List<Object> bits(SearchResult<double[]> result) {
        List<Object> bits = new ArrayList<>(List.of(result.asked(), result.refused(), result.brokenBy()));
        result.front().forEach(point -> {
            bits.add(point.settings());
            bits.add(point.aims());
            bits.add(point.margins());
        });
        bits.addAll(result.prices());
        return bits;
    }

    @Test
    void result_isTheSameForASeed() {
        assertThat(bits(KnownProblems.vessel().seed(7).result()))
                .isEqualTo(bits(KnownProblems.vessel().seed(7).result()));
        assertThat(bits(KnownProblems.waves().seed(7).result()))
                .isNotEqualTo(bits(KnownProblems.waves().seed(8).result()));
    }

    @Test
    void result_hasSettingsAimsMarginsAndPrice() {
        SearchResult<Board> result = square().result();

        SearchPoint<Board> best = result.best().orElseThrow();
        assertThat(best.design().around().libraryValue()).isCloseTo(400, within(1e-4));
        assertThat(best.settings()).containsOnlyKeys("length", "width");
        assertThat(best.aims().get("around")).isEqualTo(best.design().around());
        assertThat(best.margins()).singleElement().satisfies(margin -> {
            assertThat(margin.limit()).isEqualTo("side");
            assertThat(margin.isKept()).isTrue();
            assertThat(margin.limits()).contains(Limits.atLeast(mm(100)));
            assertThat(margin.room().orElseThrow().libraryValue()).isBetween(0.0, 1e-6);
        });
        // A square of 99 mm has 4 mm less around it.
        assertThat(result.prices()).hasSize(1);
        assertThat(result.prices().get(0).gains().get("around").libraryValue()).isCloseTo(4, within(1e-4));
        assertThat(result.nearest()).isEmpty();
        assertThat(result.front()).containsExactly(best);
        assertThat(result.toString())
                .startsWith("around 400 mm after ")
                .contains("binds   side eased by 1 mm: around 4 mm better");
        assertThat(result.text(LengthStyle.DECIMAL_INCHES))
                .startsWith("around 15.748 in after ")
                .doesNotContain("mm");
        assertThat(square()).hasToString("""
                Search over at most 2000 designs
                  variables  length, width
                  aims       around
                  limits     side""");
    }

    /** By hand: of 16 boards those of 40,000 mm2 that are not longer and wider than another. */
    @Test
    void front_hasTheDesignsThatNoneBeats() {
        Axis<Length> hundreds = Axis.steps(mm(100), mm(400), mm(100));
        SearchResult<Board> result = Search.of(new Board(mm(1), mm(1), "maple"))
                .over("length", hundreds, (board, l) -> new Board(l, board.width, board.wood))
                .over("width", hundreds, (board, w) -> new Board(board.length, w, board.wood))
                .least("length", Board::length)
                .least("width", Board::width)
                .within("side", Board::side, Limits.atLeast(mm(200)))
                .result();

        assertThat(result.asked()).isEqualTo(16);
        assertThat(result.front())
                .extracting(SearchPoint::design)
                .containsExactly(
                        new Board(mm(100), mm(400), "maple"),
                        new Board(mm(200), mm(200), "maple"),
                        new Board(mm(400), mm(100), "maple"));
        assertThat(result.best().orElseThrow()).isEqualTo(result.front().get(1));
        assertThat(result.brokenBy()).containsEntry("side", 5L);
        assertThat(result).hasToString("""
                front of 3 designs after 16 designs
                  compromise  length 200 mm, width 200 mm
                  length      200 mm
                  width       200 mm
                  front       length 100 mm, width 400 mm
                  front       length 200 mm, width 200 mm
                  front       length 400 mm, width 100 mm""");
    }

    /** Of two designs with the same aims the one that keeps the limits counts, whichever is asked first. */
    @Test
    void front_isNotBarredByADesignThatBreaksALimit() {
        SearchResult<Board> result = Search.of(new Board(mm(1), mm(1), ""))
                .over("length", Axis.steps(mm(1), mm(2), mm(1)), (board, l) -> new Board(l, board.width, board.wood))
                .overEach("wood", List.of("bad", "good"), (board, w) -> new Board(board.length, board.width, w))
                .least("length", Board::length)
                .greatest("width", Board::width)
                .within("wood", board -> mm(board.wood.length()), Limits.atLeast(mm(4)))
                .result();

        assertThat(result.front()).singleElement().satisfies(point -> {
            assertThat(point.design()).isEqualTo(new Board(mm(1), mm(1), "good"));
            assertThat(point.keepsAll()).isTrue();
        });
    }

    @Test
    void result_isDataByItsForm() {
        assertThat(Form.dataOf(square().result()))
                .containsKeys("answer", "asked", "best", "prices", "broken", "front")
                .containsEntry("stopped", false);
    }

    @Test
    void unitsOfAVariable_areThoseOfItsFirstValue() {
        SearchResult<Board> result = Search.of(new Board(mm(1), mm(100), "maple"))
                .between("length", inch(1), mm(254), (board, l) -> new Board(l, board.width, board.wood))
                .least("around", Board::around)
                .within("side", Board::side, Limits.atLeast(mm(100)))
                .result();

        assertThat(result.best().orElseThrow().settings().get("length").toString())
                .isEqualTo("3.937 in");
    }

    @Test
    void choices_areTriedLikeSteps() {
        SearchResult<Board> result = Search.of(new Board(mm(1), mm(1), ""))
                .overEach(
                        "wood",
                        List.of("maple", "walnut", "cedar"),
                        (board, w) -> new Board(board.length, board.width, w))
                .between("length", mm(1), mm(9), (board, l) -> new Board(l, board.width, board.wood))
                .least("length", board -> board.length.times(board.wood.equals("walnut") ? 1 : 2))
                .result();

        assertThat(result.best().orElseThrow().design()).isEqualTo(new Board(mm(1), mm(1), "walnut"));
    }

    @Test
    void progress_isAskedBetweenBatchesAndStops() {
        List<Long> seen = new ArrayList<>();
        SearchResult<Board> stopped = square().result((asked, most) -> {
            assertThat(most).isEqualTo(Search.DEFAULT_DESIGNS);
            seen.add(asked);
            return asked < 100;
        });

        assertThat(stopped.isStopped()).isTrue();
        assertThat(stopped.toString()).endsWith("stopped before its end");
        assertThat(seen).isSorted().doesNotHaveDuplicates();
        assertThat(stopped.asked())
                .isEqualTo(seen.get(seen.size() - 1).intValue())
                .isBetween(100, 200);
        // The best so far: no worse than what a search with as many designs gives.
        assertThat(stopped.best().orElseThrow().design().around().libraryValue())
                .isBetween(400.0, 700.0);
        assertThat(square().result().isStopped()).isFalse();
    }

    @Test
    void progress_thatStopsAtOnce_givesTheBestOfTheFirstBatch() {
        SearchResult<Board> first = square().result((asked, most) -> false);

        assertThat(first.isStopped()).isTrue();
        assertThat(first.asked()).isPositive();
        assertThat(first.best().or(first::nearest)).isPresent();
        assertThat(first.prices()).isEmpty();
    }

    @Test
    void designs_areNeverMoreThanMayBeAsked() {
        for (int most : new int[] {1, 2, 13, 60, 137}) {
            AtomicInteger made = new AtomicInteger();
            SearchResult<Board> result = Search.of(new Board(mm(1), mm(1), ""))
                    .between("length", mm(10), mm(1000), (board, l) -> {
                        made.incrementAndGet();
                        return new Board(l, board.width, "");
                    })
                    .least("around", Board::around)
                    .designs(most)
                    .result();

            assertThat(result.asked()).isLessThanOrEqualTo(most);
            // Answer and prices make their few designs again.
            assertThat(made.get()).isBetween(result.asked(), result.asked() + 5);
            assertThat(result.best()).isPresent();
        }
    }

    @Test
    void warmStart_isNeverWorse() {
        for (Search<double[]> search :
                List.of(KnownProblems.vessel(), KnownProblems.knapsack(265), KnownProblems.waves())) {
            SearchResult<double[]> earlier = search.designs(600).seed(3).result();
            for (int designs : new int[] {1, 50, 400}) {
                SearchResult<double[]> warm =
                        search.designs(designs).seed(4).from(earlier).result();

                assertThat(sign(search) * value(warm)).isLessThanOrEqualTo(sign(search) * value(earlier));
            }
        }
    }

    private static int sign(Search<double[]> search) {
        return search.task().aims().get(0).sign();
    }

    private static double value(SearchResult<double[]> result) {
        return result.best().orElseThrow().aims().values().iterator().next().value();
    }

    @Test
    void warmStart_readsSettingsOfOtherUnitsAndRanges() {
        SearchResult<Board> earlier = square().result();

        Search<Board> other = Search.of(new Board(mm(1), mm(1), "maple"))
                .over("width", Axis.steps(mm(50), mm(200), mm(7)), (board, w) -> new Board(board.length, w, board.wood))
                .between("length", inch(1), inch(3), (board, l) -> new Board(l, board.width, board.wood))
                .least("around", Board::around)
                .within("side", Board::side, Limits.atLeast(mm(100)));

        double[] place = other.from(earlier).task().places().get(0);
        assertThat(place).containsExactly(7, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> other.between("height", mm(1), mm(2), (board, h) -> board)
                        .from(earlier))
                .withMessage("earlier search must have a variable \"height\", but had length, width");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Search.of(1.0)
                        .between("length", deg(1), deg(2), (one, angle) -> one)
                        .from(earlier))
                .withMessageStartingWith("\"length\" of the earlier search must be an angle, but was 100");
    }

    @Test
    void nothingFeasible_saysWhatMissedAndByHowMuch() {
        SearchResult<Board> result =
                square().within("length", Board::length, Limits.atMost(mm(5))).result();

        assertThat(result.best()).isEmpty();
        assertThat(result.front()).isEmpty();
        assertThat(result.prices()).isEmpty();
        SearchPoint<Board> nearest = result.nearest().orElseThrow();
        assertThat(nearest.keepsAll()).isFalse();
        assertThat(nearest.design().length().libraryValue()).isCloseTo(10, within(1e-6));
        assertThat(result.brokenBy().get("length")).isEqualTo(result.asked());
        assertThat(result.toString())
                .startsWith("none of " + result.asked() + " designs keeps every limit")
                .contains("missed  length: 10 mm, limit 5 mm or less, room -5 mm")
                .contains("broken  ");
    }

    @Test
    void nothingMade_saysWhy() {
        SearchResult<Board> result = square().within(
                        "none",
                        board -> {
                            throw new ArithmeticException("no figure for this board");
                        },
                        Limits.atMost(mm(5)))
                .result();

        assertThat(result.best()).isEmpty();
        assertThat(result.nearest()).isEmpty();
        assertThat(result.refused()).isEqualTo(result.asked());
        assertThat(result.toString())
                .startsWith("none of " + result.asked() + " designs could be made or asked")
                .endsWith("the first: no figure for this board");
    }

    @Test
    void figuresThatAreNoNumber_areRefused() {
        SearchResult<double[]> result = KnownProblems.problem(x -> x[0] < 0.5 ? Double.NaN : x[0], new double[] {0, 1})
                .result();

        assertThat(result.best().orElseThrow().aims().get("f").value()).isCloseTo(0.5, within(1e-3));
        assertThat(result.refused()).isPositive();
    }

    @Test
    void otherExceptions_endTheSearch() {
        assertThatThrownBy(() -> square().least("x", board -> {
                            throw new IllegalStateException("a mistake");
                        })
                        .result())
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("a mistake");
    }

    @Test
    void planWithoutACheck_isRefusedByName() {
        SearchResult<Job> result = Search.of(
                        Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop()))
                .over("relief", Axis.of(List.of(mm(0.1), mm(0.2))), Job::relief)
                .least("relief", Job::relief)
                .keeping(Job::plan, CheckCode.ZERO_FRET)
                .result();

        assertThat(result.refused()).isEqualTo(2);
        assertThat(result.toString()).contains("the plan of this neck has no check \"zero-fret\"");
    }

    @Test
    void badInput_isRefusedInOneSentence() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square().between("length", mm(1), mm(2), (board, l) -> board))
                .withMessage("variables must have different names, but \"length\" was given twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square().greatest("around", Board::around))
                .withMessage("aims must have different names, but \"around\" was given twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square().within("side", Board::side, Limits.atMost(mm(1))))
                .withMessage("limits must have different names, but \"side\" was given twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square().between("height", mm(2), mm(2), (board, l) -> board))
                .withMessage("to must be more than 2 mm, but was 2 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square().overEach("wood", List.of(), (board, w) -> board))
                .withMessage("choices of \"wood\" must be 1 or more, but there were none");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square().designs(0))
                .withMessage("designs must be a whole number from 1 to 1000000, but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square().frontSize(1))
                .withMessage("designs of a front must be a whole number from 2 to 1000, but was 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Search.of(1).result())
                .withMessage("variables of a search must be 1 or more, but there were none");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        Search.of(1).between("x", one(0), one(1), (d, x) -> d).result())
                .withMessage("aims of a search must be 1 or more, but there were none");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Search.of(1).keeping(d -> null))
                .withMessage("checks to keep must be 1 or more, but there were none");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Search.of(1).keeping(d -> null, CheckCode.RELIEF, CheckCode.RELIEF))
                .withMessage("limits must have different names, but \"relief\" was given twice");
        assertThatNullPointerException()
                .isThrownBy(() -> square().overEach("wood", Arrays.asList("maple", null), (board, w) -> board))
                .withMessage("choice");
        assertThatNullPointerException().isThrownBy(() -> square().from(null)).withMessage("result");
    }
}
