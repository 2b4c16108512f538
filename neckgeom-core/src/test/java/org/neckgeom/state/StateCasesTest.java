package org.neckgeom.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.LengthStyle;

/** Held to single cases of {@code state/cases.csv}, {@code more.csv} and {@code default.csv}, computed in numpy and scipy. */
class StateCasesTest {

    private static final Neck OCTAVE = ReferenceStates.neck("octave", 560, 14, 78, 6);

    /** Workmanship of common practice: every scale a guess. */
    private static NeckErrors guessed() {
        return NeckErrors.of(OCTAVE);
    }

    private static NeckErrors given() {
        return NeckErrors.of(OCTAVE).with(ReferenceStates.given());
    }

    private static double row(String table, String topic, String name, String symbol) {
        List<String> found = ReferenceStates.rows(table).stream()
                .filter(row -> row.get(0).equals(topic)
                        && row.get(1).equals(name)
                        && row.get(2).startsWith(symbol))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + topic + ", " + name + ", " + symbol));
        return Double.parseDouble(found.get(3));
    }

    static Stream<List<String>> defaults() {
        return ReferenceStates.rows("default.csv").stream();
    }

    /** The string line of a neck whose every spread is common practice: own and common scale uncertain. */
    @ParameterizedTest
    @MethodSource("defaults")
    void chance_ofGuessesIsPredictive(List<String> row) {
        double limit = Double.parseDouble(row.get(0));
        Known line = guessed().state().known("string line", guessed().stringLine());
        double expected = Double.parseDouble(row.get(2));

        assertThat(line.outside(-limit, limit)).as("predictive").isCloseTo(expected, within(1e-5 * expected));
        Known known = given().state().known("string line", given().stringLine());
        double certain = Double.parseDouble(row.get(1));
        assertThat(known.outside(-limit, limit)).as("scales known").isCloseTo(certain, within(1e-9 + 1e-5 * certain));
        double worse = Double.parseDouble(row.get(3));
        assertThat(line.chance(Limits.within(mm(limit))).outsideAtWorst())
                .as("at z 1.645")
                .isCloseTo(worse, within(1e-4 * worse));
    }

    @Test
    void worthImproving_isTheTables() {
        for (Map.Entry<String, Requirement> wanted : Map.of(
                        "string line at bridge",
                        Requirement.of("line", guessed().stringLine(), Limits.within(mm(1))),
                        "projection at bridge",
                        Requirement.of("projection", guessed().projection(), Limits.within(mm(0.4))))
                .entrySet()) {
            String name = "octave mandolin, from channel: " + wanted.getKey();
            List<StepWorth> ranked = guessed().state().worthImproving(wanted.getValue());
            assertThat(ranked.get(0).step()).isEqualTo("body joint");
            // The table has one scale of its own for each spread, none common: one sum.
            Limits<Length> limits = wanted.getValue().limits();
            Knowledge known = Knowledge.of(guessed().causes(), LengthStyle.MILLIMETRES);
            double now = row("more.csv", "predictive by quantity", name, "chance outside, own");
            double then = row("more.csv", "improve", name, "chance outside with joint halved");
            assertThat(new Known(known, "now", wanted.getValue().of()).outsideByOneSum(limits))
                    .isCloseTo(now, within(1e-5 * now));
            assertThat(new Known(
                                    known.scaled("body joint", 0.5),
                                    "then",
                                    wanted.getValue().of())
                            .outsideByOneSum(limits))
                    .isCloseTo(then, within(1e-3 * then + 1e-9));
            assertThat(ranked.get(0).now())
                    .isEqualTo(
                            guessed().state().known("x", wanted.getValue().of()).chance(limits));
            assertThat(ranked.get(0).then().outside())
                    .isLessThan(ranked.get(0).now().outside());
        }
    }

    /** By kinematics: cheeks with their lever, face gaps by their height and width; an exact turn beside them. */
    @Test
    void joint_turnsTheNeckAsARigidBody() {
        double joint = OCTAVE.bodyJointMm();
        double a = 560 - joint;
        NeckErrors face = given().guidedBy(NeckErrors.Guide.FACE);

        assertThat(-given().stringLine().coefficient("front of the cheeks")).isCloseTo(1 - a / 40, within(1e-12));
        assertThat(given().projection().coefficient("gap at the top of the heel"))
                .isCloseTo(a / 78, within(1e-12));
        assertThat(given().projection().coefficient("height of the seat")).isEqualTo(1.0);
        assertThat(face.stringLine().coefficient("gap at the treble cheek")).isCloseTo(a / 54, within(1e-12));
        assertThat(face.stringLine().coefficient("slip of the joint")).isEqualTo(1.0);
        // The exact turn of cases.csv, for its own joint at 310.548153 mm: 0.2879029 against 0.2878291 to first order.
        double exact = row("cases.csv", "kinematics", "exact turn, scale 560 dt .06 df -.03", "height at bridge");
        assertThat(0.09 * (560 - 310.548153) / 78).isCloseTo(exact, within(1e-4));
    }

    @Test
    void locatedOn_eachEdgeHasTheTablesSpread() {
        for (NeckErrors.Located on : NeckErrors.Located.values()) {
            NeckErrors errors =
                    NeckErrors.of(OCTAVE).with(ReferenceStates.given()).locatedOn(on);
            String way = switch (on) {
                case CHANNEL -> "channel";
                case SAME_EDGE -> "same edge";
                case OPPOSITE_EDGE -> "opposite edge";
            };
            NeckState read = errors.state()
                    .read(new NeckReading("near", errors.width(errors.nearNut()), Estimate.of(mm(0), mm(0.01))))
                    .read(new NeckReading("far", errors.width(errors.nearJoint()), Estimate.of(mm(0), mm(0.01))));
            assertThat(u(errors.state(), errors))
                    .isCloseTo(row("cases.csv", "edge", way, "u string line"), within(1e-8));
            assertThat(u(read, errors))
                    .isCloseTo(
                            row("cases.csv", "edge", way + ", width read at both stations u .01", "u string line"),
                            within(1e-8));
        }
    }

    private static double u(NeckState state, NeckErrors errors) {
        return state.known("line", errors.stringLine()).estimate().libraryUncertainty();
    }

    /** Sign by hand: with the bass edge on the fence a wider blank moves the channel the other way. */
    @Test
    void alongTheBassEdge_turnsTheSign() {
        double treble = given().locatedOn(NeckErrors.Located.SAME_EDGE)
                .channel(mm(300))
                .coefficient("blank width near the body joint");
        double bass = given().locatedOn(NeckErrors.Located.SAME_EDGE)
                .alongTheBassEdge()
                .channel(mm(300))
                .coefficient("blank width near the body joint");

        assertThat(treble).isPositive();
        assertThat(bass).isEqualTo(-treble);
    }

    /** {@code state/more.csv}: reading and bringing the mean to 0; normal laws. */
    @Test
    void worthReading_isWhatTheCorrectionBrings() {
        NeckErrors errors = given();
        Requirement wanted = Requirement.of("projection", errors.projection(), Limits.within(mm(0.3)))
                .correctedWithin(mm(0.0));
        PossibleReading straightedge = new PossibleReading("straightedge", errors.projection(), mm(0.10));
        PossibleReading width = new PossibleReading("width", errors.width(mm(100)), mm(0.02));
        List<ReadingWorth> ranked = errors.state().worthReading(List.of(width, straightedge), List.of(wanted));
        double after = row("more.csv", "value of a reading", "same", "chance outside after reading and bringing");

        assertThat(ranked.get(0).reading()).isEqualTo(straightedge);
        assertThat(ranked.get(0).helps()).isEqualTo("projection");
        double before = errors.state().known("projection", errors.projection()).outside(-0.3, 0.3);
        assertThat(before - ranked.get(0).worth()).isCloseTo(after, within(1e-8));
        assertThat(ranked.get(1).worth()).isZero();
        assertThat(errors.state()
                        .worthReading(
                                List.of(straightedge),
                                List.of(Requirement.of("glued", errors.projection(), Limits.within(mm(0.3)))))
                        .get(0)
                        .helps())
                .as("glued: the reading only tells")
                .isEmpty();
    }

    /** One normal cause with few degrees: Student's law, as scipy has it. */
    @Test
    void outside_ofAScaleOfFewDegreesIsStudents() {
        for (int nu : new int[] {5, 8, 30}) {
            NeckState state = NeckState.of(
                    List.of(Cause.of("e", ErrorDistribution.normal(mm(1)).degreesOfFreedom(nu))));
            double expected = row("cases.csv", "predictive", "one normal, limit 4 u, nu " + nu, "chance outside");
            assertThat(state.known("e", Deviation.of("e")).outside(-4, 4)).isCloseTo(expected, within(1e-8));
        }
    }

    @Test
    void causes_restOnCommonPracticeUntilGiven() {
        assertThat(guessed().causes()).allMatch(cause -> cause.basis() == Basis.COMMON_PRACTICE);
        Workmanship half = Workmanship.withDefaults().gluing(ErrorDistribution.normal(mm(0.04)));
        assertThat(NeckErrors.of(OCTAVE).with(half).causes())
                .filteredOn(cause -> cause.step().equals("fingerboard"))
                .allMatch(cause -> cause.basis() == Basis.GIVEN);
    }

    /**
     * Of one uniform spread the interval is that share of its whole width (JCGM 100:2008, 4.3.7), be it a thousand times as
     * wide as what is added to it: the chords of such a law do not settle by themselves.
     */
    @Test
    void interval_ofAUniformSpreadIsItsShare() {
        for (double half : new double[] {0.08, 8, 80, 8000}) {
            NeckErrors errors = NeckErrors.of(OCTAVE)
                    .with(ReferenceStates.given()
                            .gluing(ErrorDistribution.rectangular(mm(half)))
                            .locating(ErrorDistribution.normal(mm(1e-6 * half))));
            Deviation line = Deviation.of("fingerboard near the nut").plus(Deviation.of("heel near the nut"));
            for (double coverage : new double[] {0.5, 0.95, 0.99}) {
                Interval<Length> interval = errors.state().known("board", line).interval(coverage);

                assertThat(interval.libraryHigh()).isCloseTo(coverage * half, within(1e-4 * half));
                assertThat(interval.libraryLow()).isCloseTo(-coverage * half, within(1e-4 * half));
            }
        }
    }

    /** A neck whose board is glued within 80 mm, a slip for 0.08 mm, still has its intervals. */
    @Test
    void interval_ofASpreadTypedInTheWrongUnitIsThere() {
        NeckErrors errors =
                NeckErrors.of(OCTAVE).with(Workmanship.withDefaults().gluing(ErrorDistribution.rectangular(mm(80))));
        for (Deviation of : List.of(
                errors.stringLine(),
                errors.projection(),
                errors.stringLength(),
                errors.boardOnNeck(mm(280)),
                errors.woodEachSide(mm(14)))) {
            Known known = errors.state().known("it", of);
            Interval<Length> interval = known.interval(0.95);

            assertThat(1 - known.outside(interval.libraryLow(), interval.libraryHigh()))
                    .isCloseTo(0.95, within(1e-4));
        }
    }

    private static Known few(String law, double half, double first, double second, Deviation read, double u, double y) {
        ErrorDistribution<Length> spread = law.equals("rectangular")
                ? ErrorDistribution.rectangular(mm(half))
                : ErrorDistribution.triangular(mm(half));
        NeckState state = NeckState.of(Stream.of("first", "second")
                        .map(name -> new Cause(name, name, spread, Basis.GIVEN))
                        .toList())
                .read(new NeckReading("it", read, Estimate.of(mm(y), mm(u))));
        return state.known(
                "end",
                Deviation.of("first").times(first).plus(Deviation.of("second").times(second)));
    }

    /** The table's weighted trials, four million, beside the lattice's: neither takes a cause that was read as normal. */
    @ParameterizedTest
    @CsvSource({
        "'two rectangular .08, read at near end, y=.06', 0.15",
        "'same, y=.09 (past its edge)', 0.15",
        "'two triangular cheeks, read in their middle, y=.02', 0.3",
        "'two triangular cheeks, read at front, y=.05', 0.3",
        "'string line, thread read u .15, y=0', 0.4",
        "'string line, thread read u .15, y=0.2', 0.4",
        "'string line, thread read u .15, y=0.5', 0.4",
        "'string line, thread read u .15, y=0.9', 0.4"
    })
    void trials_areTheTables(String name, double limit) {
        Deviation first = Deviation.of("first");
        Deviation middle = first.plus(Deviation.of("second")).times(0.5);
        double y = Double.parseDouble(name.substring(name.indexOf("y=") + 2).split(" ")[0]);
        NeckErrors errors = given();
        Known known = name.startsWith("string")
                ? errors.state()
                        .read(new NeckReading("thread", errors.stringLine(), Estimate.of(mm(y), mm(0.15))))
                        .known("line", errors.stringLine())
                : limit == 0.15
                        ? few("rectangular", 0.08, -0.9481, 1.9481, first, 0.02, y)
                        : few("triangular", 0.06, -5.236, 6.236, y == 0.02 ? middle : first, 0.02, y);
        WeightedTrials trials = known.trials();
        double[] outside = trials.outside(-limit, limit);
        double expected = row("cases.csv", "non-Gaussian", name, "chance outside exact");

        assertThat(trials.mean()).isCloseTo(row("cases.csv", "non-Gaussian", name, "mean exact"), within(3e-3));
        assertThat(trials.deviation()).isCloseTo(row("cases.csv", "non-Gaussian", name, "u exact"), within(3e-3));
        assertThat(outside[0]).isCloseTo(expected, within(outside[1] + 1e-3));
        assertThat(outside[1]).isLessThan(0.02);
        assertThat(known.chanceByTrials(Limits.within(mm(limit))).outside()).isEqualTo(outside[0]);
    }
}
