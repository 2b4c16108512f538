package org.neckgeom.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.state.ReferenceStates.Reference;

/** Held to {@code state/*.csv}: three necks computed by an independent script in numpy and scipy (Joseph's form there). */
class NeckStateTest {

    private static Stream<Reference> necks() {
        return ReferenceStates.all().stream();
    }

    @ParameterizedTest
    @MethodSource("necks")
    void deviations_haveTheTablesCoefficients(Reference neck) {
        Map<String, Requirement> quantities = neck.quantities();
        List<List<String>> rows = rows("coefficients.csv", neck);

        assertThat(rows).hasSizeGreaterThan(20);
        for (List<String> row : rows) {
            double expected = Double.parseDouble(row.get(3));
            assertThat(quantities.get(row.get(1)).of().coefficient(ReferenceStates.cause(row.get(2))))
                    .as(row.toString())
                    .isCloseTo(expected, within(1e-11 * Math.max(1.0, Math.abs(expected))));
        }
        quantities.forEach((name, one) -> assertThat(one.of().causes()).as(name).hasSize((int)
                rows.stream().filter(row -> row.get(1).equals(name)).count()));
    }

    @ParameterizedTest
    @MethodSource("necks")
    void known_hasTheTablesEstimateAndChance(Reference neck) {
        Map<String, Requirement> quantities = neck.quantities();
        List<List<String>> rows = rows("necks.csv", neck);

        assertThat(rows).hasSizeGreaterThan(60);
        for (List<String> row : rows) {
            NeckState state = neck.state(Integer.parseInt(row.get(1)));
            double expected = Double.parseDouble(row.get(4));
            switch (row.get(3)) {
                case "mean" ->
                    assertThat(known(state, quantities, row).estimate().libraryValue())
                            .as(row.toString())
                            .isCloseTo(expected, within(2e-9 + 1e-8 * Math.abs(expected)));
                case "u" ->
                    assertThat(known(state, quantities, row).estimate().libraryUncertainty())
                            .as(row.toString())
                            .isCloseTo(expected, within(1e-8 * expected));
                case "chi-square" ->
                    assertThat(state.agreement().chiSquare())
                            .as(row.toString())
                            .isCloseTo(expected, within(1e-7 * Math.max(1.0, expected)));
                case "chance all hold" -> {
                    JointChance joint = state.chanceOfAll(List.copyOf(quantities.values()));
                    assertThat(joint.probability()).as(row.toString()).isCloseTo(expected, within(2e-4));
                    assertThat(joint.error()).as(row.toString()).isLessThan(1e-4);
                }
                case "standard error of it" -> assertThat(expected).isLessThan(1e-4);
                default -> {
                    Limits<javax.measure.quantity.Length> limits =
                            quantities.get(row.get(2)).limits();
                    assertThat(known(state, quantities, row).outside(limits.libraryLower(), limits.libraryUpper()))
                            .as(row.toString())
                            .isCloseTo(expected, within(2e-9));
                }
            }
        }
    }

    private static Known known(NeckState state, Map<String, Requirement> quantities, List<String> row) {
        return state.known(row.get(2), quantities.get(row.get(2)).of());
    }

    @ParameterizedTest
    @MethodSource("necks")
    void shares_areTheTables(Reference neck) {
        List<List<String>> rows = rows("shares.csv", neck);

        assertThat(rows).hasSizeGreaterThan(30);
        for (List<String> row : rows) {
            String step = switch (row.get(3)) {
                case "taper" -> "side taper";
                case "board", "board height" -> "fingerboard";
                case "joint" -> "body joint";
                case "blank" -> "blank's edges";
                case "centring" -> "rod channel";
                default -> row.get(3);
            };
            Known known = neck.state(Integer.parseInt(row.get(1)))
                    .known(row.get(2), neck.quantities().get(row.get(2)).of());
            assertThat(known.shares().stream()
                            .filter(share -> share.name().equals(step))
                            .mapToDouble(Share::fraction)
                            .sum())
                    .as(row.toString())
                    .isCloseTo(Double.parseDouble(row.get(4)), within(2e-8));
            assertThat(known.shares().stream().mapToDouble(Share::fraction).sum())
                    .isCloseTo(1.0, within(1e-12));
            assertThat(known.sharesIn(step).stream()
                            .mapToDouble(Share::fraction)
                            .sum())
                    .as("the causes of a step add up to it")
                    .isCloseTo(Double.parseDouble(row.get(4)), within(2e-8));
        }
    }

    /** The reading that lowers the variance most, and by how much. */
    @ParameterizedTest
    @MethodSource("necks")
    void read_lowersTheVarianceAsTheTableSays(Reference neck) {
        List<List<String>> rows = rows("next-reading.csv", neck);

        assertThat(rows).hasSizeGreaterThan(10);
        for (List<String> row : rows) {
            NeckState before = neck.state(Integer.parseInt(row.get(1)));
            Deviation of = neck.quantities().get(row.get(2)).of();
            NeckReading next = neck.readings().stream()
                    .filter(one -> one.name().equals(row.get(3)))
                    .findFirst()
                    .orElseThrow();
            double left = before.read(next).known("left", of).estimate().libraryUncertainty();
            assertThat(left).as(row.toString()).isCloseTo(Double.parseDouble(row.get(5)), within(1e-8));
        }
    }

    private static List<List<String>> rows(String table, Reference neck) {
        return ReferenceStates.rows(table).stream()
                .filter(row -> row.get(0).equals(neck.name()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("necks")
    void read_inAnyOrderGivesTheSameBits(Reference neck) {
        List<NeckReading> order = new ArrayList<>(neck.readings());
        NeckState one = neck.state(12);
        Random random = new Random(21);
        for (int i = 0; i < 20; i++) {
            Collections.shuffle(order, random);
            NeckState other = neck.errors().state();
            for (NeckReading reading : order) {
                other = other.read(reading);
            }
            assertThat(other).as("seed 21").isEqualTo(one);
            for (Requirement wanted : neck.quantities().values()) {
                assertThat(other.known("x", wanted.of()).estimate())
                        .isEqualTo(one.known("x", wanted.of()).estimate());
            }
        }
    }

    /** By hand, topic lever and form of {@code cases.csv}: two readings by one calliper never beat its zero. */
    @Test
    void read_oftenByOneCalliperNeverBeatsItsZero() {
        Reference neck = ReferenceStates.all().get(0);
        Deviation board = neck.board(0.9 * neck.joint()).minus(neck.channel(0.9 * neck.joint()));
        for (Map.Entry<Integer, Double> row : Map.of(
                        1, 0.01990584155, 2, 0.01610174393, 10, 0.01142088126, 1000, 0.009766506961)
                .entrySet()) {
            NeckState state = neck.errors().state();
            for (int i = 0; i < row.getKey(); i++) {
                state = state.read(new NeckReading(
                        "reading " + i, board.plus(neck.errors().calliperZero()), Estimate.of(mm(0.0), mm(0.02))));
            }
            assertThat(state.known("board", board).estimate().libraryUncertainty())
                    .as("read %s times", row.getKey())
                    .isCloseTo(row.getValue(), within(1e-10));
        }
    }

    /** {@code cases.csv}, topic form: the same place read 0.06 then 0.16 with u 0.02 is 4.06 standard deviations off. */
    @Test
    void agreement_seesTwoReadingsThatContradictEachOther() {
        Reference neck = ReferenceStates.all().get(0);
        Deviation board = neck.board(0.9 * neck.joint()).minus(neck.channel(0.9 * neck.joint()));
        NeckState once = neck.errors().state().read(new NeckReading("first", board, Estimate.of(mm(0.06), mm(0.02))));
        NeckState twice = once.read(new NeckReading("second", board, Estimate.of(mm(0.16), mm(0.02))));

        assertThat(once.agreement().isContradiction()).isFalse();
        assertThat(once.agreement().suspect()).isEmpty();
        assertThat(twice.agreement().isContradiction()).isTrue();
        assertThat(twice.agreement().readings())
                .filteredOn(one -> one.reading().name().equals("second"))
                .allSatisfy(one -> assertThat(one.probability()).isLessThan(1e-3));
        assertThat(twice.withdraw("second").agreement().isContradiction()).isFalse();
        assertThat(twice.withdraw("second")).isEqualTo(once);
    }

    /** Abramowitz and Stegun, table 26.8 (from memory): the upper 5 % points of chi-square. */
    @Test
    void chiSquareTail_isTheHandbooks() {
        double[] points = {3.841459, 5.991465, 7.814728, 9.487729, 11.070498, 12.591587};
        for (int nu = 1; nu <= 6; nu++) {
            assertThat(Agreement.chiSquareTail(points[nu - 1], nu))
                    .as("nu %d", nu)
                    .isCloseTo(0.05, within(1e-7));
        }
    }

    @Test
    void read_refusesWhatCannotBe() {
        Reference neck = ReferenceStates.all().get(0);
        NeckState state = neck.state(1);

        assertThatThrownBy(() -> state.read(neck.readings().get(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"board to channel at 0.9 xj\" was given twice");
        assertThatThrownBy(() -> state.known("x", Deviation.of("height of the seats")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("did you mean \"height of the seat\"?");
        assertThatThrownBy(() -> state.withdraw("nothing")).hasMessageContaining("no reading \"nothing\" to withdraw");
    }

    @Test
    void agreement_refusesReadingsThatExcludeEachOther() {
        NeckState state = NeckState.of(List.of(Cause.of("a", ErrorDistribution.normal(mm(0.1)))))
                .read(new NeckReading("one", Deviation.of("a"), Estimate.of(mm(0.1), mm(0))))
                .read(new NeckReading("two", Deviation.of("a"), Estimate.of(mm(0.2), mm(0))));

        assertThatThrownBy(state::agreement)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"two\" is 0.1 mm off what the other readings make it, and no uncertainty is given:"
                        + " give each reading its uncertainty, or take one back");
    }

    /** A sum that was read without uncertainty has none left: by what rounding leaves of it no step has a share. */
    @Test
    void read_withoutUncertaintyLeavesNoVarianceToShare() {
        List<Cause> causes = new ArrayList<>();
        Deviation sum = Deviation.none();
        for (int i = 0; i < 7; i++) {
            causes.add(Cause.of("cause " + i, ErrorDistribution.normal(mm(0.1 + i / 30.0))));
            sum = sum.plus(Deviation.of("cause " + i).times(1 + i / 7.0));
        }

        Known known = NeckState.of(causes)
                .read(new NeckReading("sum", sum, Estimate.of(mm(-0.3), mm(0))))
                .known("sum", sum);

        assertThat(known.estimate().libraryValue()).isCloseTo(-0.3, within(1e-14));
        assertThat(known.estimate().libraryUncertainty()).isZero();
        assertThat(known.shares()).extracting(Share::fraction).containsOnly(0.0);
        assertThat(known.interval(0.95).libraryHigh())
                .isEqualTo(known.interval(0.95).libraryLow());
    }
}
