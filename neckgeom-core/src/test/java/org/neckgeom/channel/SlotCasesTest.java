package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.DecisionRule;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The slot's place and the one decision against {@code slot/cases.csv}: computed apart from the library by {@code make.py}
 * with numpy and scipy.
 */
class SlotCasesTest {

    private static final double TOLERANCE = 1e-6;

    record Row(int id, String topic, String input, String quantity, String expected) {

        double value() {
            return Double.parseDouble(expected);
        }
    }

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(SlotCasesTest.class.getResourceAsStream("/channel/slot/cases.csv")),
                StandardCharsets.UTF_8))) {
            in.lines()
                    .skip(2)
                    .map(SlotCasesTest::fields)
                    .forEach(
                            f -> rows.add(new Row(Integer.parseInt(f.get(0)), f.get(1), f.get(2), f.get(3), f.get(4))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        Matcher field = Pattern.compile("\"((?:[^\"]|\"\")*)\"|([^,]*)(?:,|$)").matcher(line);
        int at = 0;
        while (at < line.length() && field.find(at)) {
            fields.add(field.group(1) != null ? field.group(1) : field.group(2));
            at = field.end();
            if (field.group(1) != null && at < line.length()) {
                at++;
            }
        }
        return fields;
    }

    private static Stream<Row> topic(String topic) {
        return rows().stream().filter(row -> row.topic.equals(topic));
    }

    private static double expected(String topic, String quantity, String inputPart) {
        return topic(topic)
                .filter(r -> r.quantity.startsWith(quantity) && r.input.contains(inputPart))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static final Channel CHANNEL = Channel.forRod(
                    TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
            .startingAt(mm(3))
            .endClearance(mm(0.5))
            .depthClearance(mm(0.2));

    private static Blank blank(double w1, double w2) {
        double perMm = (w2 - w1) / 300.5;
        return Blank.ofLength(mm(640))
                .section(mm(w1 + perMm * (120 - 3)), mm(20))
                .outOfParallel(mm(perMm * 640))
                .nutAt(mm(200));
    }

    private static BlankOnFence run(Blank blank, Fence fence) {
        return BlankOnFence.of(blank, CHANNEL, fence);
    }

    @Test
    void place_taperIsThatOfTheReferenceAtEveryStation() {
        for (Row row : topic("taper").filter(r -> r.input.contains("; x ")).toList()) {
            double wider = Double.parseDouble(row.input.replaceAll(".*x 120; ([0-9.]+) wider.*", "$1"));
            double x = Double.parseDouble(row.input.replaceAll(".*; x ([0-9.]+)$", "$1"));
            Blank blank = Blank.ofLength(mm(640))
                    .section(mm(61), mm(20))
                    .outOfParallel(mm(wider))
                    .nutAt(mm(200));
            SlotPlace place = run(blank, Fence.onePiece(mm(600))).place(30.5, 0, 0, 1, LengthStyle.MILLIMETRES);

            assertThat(place.offsetMmAt(x)).as(row.input).isCloseTo(row.value(), within(TOLERANCE));
        }
        Blank tapered = Blank.ofLength(mm(640))
                .section(mm(61), mm(20))
                .outOfParallel(mm(1.5))
                .nutAt(mm(200));
        BlankOnFence run = run(tapered, Fence.onePiece(mm(600)));
        assertThat(30.5 - run.centredSettingMm()).isCloseTo(expected("taper", "best move", ""), within(TOLERANCE));
        assertThat(Math.abs(run.centred().offsetMmAt(3)))
                .isCloseTo(expected("taper", "|e| at both ends", ""), within(TOLERANCE));
    }

    @Test
    void riding_onACurvedEdgeIsTheConcaveMajorant() {
        for (Row row : topic("bowed edge").toList()) {
            double q = row.input.contains("crowned") ? 0.2 : -0.2;
            double x = Double.parseDouble(row.input.replaceAll(".*; x ([0-9.]+)$", "$1"));
            DoubleUnaryOperator edge = z -> q * (1 - ((z - 120) / 320) * ((z - 120) / 320));

            // 400 places in a half of the fence against the reference's 20,000: the parabola's sag between them is
            // 1e-7.
            assertThat(new Riding(-200, 440, true, Fence.onePiece(mm(600)), edge).at(x))
                    .as(row.input)
                    .isCloseTo(row.value(), within(3e-6));
        }
    }

    @Test
    void fenceStep_isTheClosedForm() {
        int seen = 0;
        for (Row row : topic("split fence")
                .filter(r -> r.input.contains("still to come"))
                .toList()) {
            double s = number(row.input, "proud by (-?[0-9.]+)");
            double past = number(row.input, "([0-9.]+) past the cutter");
            double left = number(row.input, "([0-9.]+) still to come");
            FenceStep step = FenceStep.of(Fence.split(mm(600), mm(s)).gap(mm(20)), mm(past + left));

            assertThat(step.at(mm(past)).amountMm()).as(row.input).isCloseTo(row.value(), within(TOLERANCE));
            seen++;
        }
        assertThat(seen).isEqualTo(18);
    }

    private static final Head SWUNG =
            Head.angled(deg(13)).length(mm(180)).width(mm(76)).swung(deg(2));

    private static HeadInterference head(Head head, double fence) {
        return HeadInterference.of(head, Blank.ofLength(mm(440)).section(mm(58), mm(20)), Fence.onePiece(mm(fence)));
    }

    @Test
    void head_cornersAreThoseOfTheReference() {
        double[] toward = HeadContact.side(SWUNG, 76, SWUNG.swingRad(), 29);
        double[] away = HeadContact.side(SWUNG, 76, -SWUNG.swingRad(), 29);

        assertThat(toward[HeadContact.TIP_PROUD])
                .isCloseTo(expected("head", "tip corner proud", "toward"), within(TOLERANCE));
        assertThat(-toward[HeadContact.TIP_X])
                .isCloseTo(expected("head", "tip corner beyond", "same"), within(TOLERANCE));
        assertThat(-HeadContact.tipX(SWUNG)).isCloseTo(expected("head", "far tip corner", "same"), within(TOLERANCE));
        assertThat(away[HeadContact.TIP_PROUD])
                .isCloseTo(expected("head", "tip corner proud", "away"), within(TOLERANCE));
        assertThat(toward[HeadContact.NUT_PROUD])
                .isCloseTo(expected("head", "corner by the nut", "toward"), within(TOLERANCE));
        assertThat(head(SWUNG, 2000).proud().libraryValue()).isEqualTo(toward[HeadContact.TIP_PROUD]);
        // Away from its swing the corner by the nut is the prouder one.
        assertThat(head(SWUNG, 2000).fenceOnTheOtherSide().proud().libraryValue())
                .isCloseTo(expected("head", "corner by the nut", "toward"), within(TOLERANCE));
    }

    @Test
    void head_skewIsThatOfTheReference() {
        for (Row row : topic("head").filter(r -> r.input.contains("fence 1000")).toList()) {
            double x = number(row.input, "; x ([0-9.]+)$");

            assertThat(head(SWUNG, 2000).skew().at(mm(x)).amountMm())
                    .as(row.input)
                    .isCloseTo(row.value(), within(TOLERANCE));
        }
        assertThat(head(SWUNG.swung(deg(0)), 2000).skew().at(mm(220)).amountMm())
                .isCloseTo(expected("head", "e changes by -r", "not swung"), within(TOLERANCE));
        // On a fence of 300 each way: slot-verdict reference, two decimals.
        HeadSkew onShort = head(SWUNG, 600).skew();
        assertThat(onShort.at(mm(3)).amountMm()).isCloseTo(-9.50, within(0.005));
        assertThat(onShort.at(mm(220)).amountMm()).isCloseTo(-5.00, within(0.005));
        assertThat(onShort.at(mm(303.5)).amountMm()).isZero();
        BlankOnFence run = run(Blank.ofLength(mm(640)).section(mm(58), mm(20)).nutAt(mm(200)), Fence.onePiece(mm(2000)))
                .headOn(SWUNG);
        assertThat(run.shiftMm(220))
                .as("one rule for both")
                .isEqualTo(-head(SWUNG, 2000).skew().at(mm(220)).amountMm());
    }

    @Test
    void stops_whereTheHeadIsOnAreThoseOfTheReference() {
        Head straight = SWUNG.swung(deg(0));
        StopBlocks bare = RodSlot.of(CHANNEL).stops(Cutter.straight(mm(6)), blank(61, 61));
        StopBlocks stops = bare.headOn(straight);

        assertThat(stops.rear().fromCentre().libraryValue())
                .isCloseTo(expected("stops", "rear stop", ""), within(TOLERANCE));
        assertThat(stops.front().fromCentre().libraryValue())
                .isCloseTo(expected("stops", "front stop", "same"), within(TOLERANCE));
        assertThat(bare.turned().headOn(straight)).isEqualTo(stops.turned());
        assertThat(stops.turned().rear()).isEqualTo(stops.front());
        assertThat(stops.tipHeight().libraryValue())
                .isCloseTo(expected("stops", "tip over the table", ""), within(TOLERANCE));
        assertThat(bare.headOn(SWUNG).front().fromCentre().libraryValue())
                .isCloseTo(expected("stops", "front stop", "swung 2 deg"), within(TOLERANCE));
        assertThat(-HeadContact.meetsFaceX(straight, 30))
                .isCloseTo(expected("stops", "where its top meets the face", "30 high"), within(TOLERANCE));
        assertThat(stops.block(mm(43.5))).isEqualTo(stops);
        assertThatThrownBy(() -> stops.block(mm(30)))
                .hasMessage(
                        "stop block height must be 43.491 mm or more (the head's tip is 40.491 mm above the table; a lower"
                                + " one meets the head's face 129.944 mm before the nut and lifts it), but was 30 mm");
    }

    @Test
    void secondPass_isThatOfTheReference() {
        Map<String, SecondPass> passes = Map.of(
                "fence toward the cutter, same edge",
                SecondPass.FENCE_TOWARD,
                "fence away from the cutter, same edge",
                SecondPass.FENCE_AWAY,
                "fence as it stands, turned end for end, e > 0",
                SecondPass.turned(SlotOffset.of(mm(0.1), mm(0))),
                "fence as it stands, turned end for end, e < 0",
                SecondPass.turned(SlotOffset.of(mm(-0.1), mm(0))));
        List<Row> rows = topic("feed").toList();
        assertThat(rows).hasSize(4);
        for (Row row : rows) {
            boolean climb = row.expected.equals("wall at the fence cut: climb");
            SecondPass pass = Objects.requireNonNull(passes.get(row.input), row.input);

            assertThat(pass.isClimb()).as(row.input).isEqualTo(climb);
            assertThat(pass.toString())
                    .as(row.input)
                    .startsWith(climb ? "the wall at the fence is cut" : "the far wall is cut")
                    .contains(climb ? "climb" : "against the cutter's turn");
        }
    }

    @Test
    void place_onASplitFenceTakesOutWhatTheTrialPieceSaw() {
        for (double s : new double[] {0.1, -0.1, 1}) {
            BlankOnFence run = run(blank(61, 61), Fence.split(mm(600), mm(s)).gap(mm(20)));
            SlotPlace place = run.place(30.5, 0, 0, 1, LengthStyle.MILLIMETRES);
            String name = "s " + s;
            List<Row> rows = topic("split fence")
                    .filter(r -> r.quantity.equals("e of the neck") && r.input.contains(name + ";"))
                    .toList();

            assertThat(place.offsetMmAt(3)).as(name).isCloseTo(rows.get(0).value(), within(TOLERANCE));
            assertThat(place.offsetMmAt(303.5)).as(name).isCloseTo(rows.get(1).value(), within(TOLERANCE));
        }
    }

    @Test
    void place_onAStripOutOfParallel() {
        BlankOnFence run = run(blank(61, 61), Fence.onePiece(mm(600)));
        SlotPlace with = run.stripMm(5, 435, 9.00, 9.06, true).place(30.5, 0, 0, 1, LengthStyle.MILLIMETRES);

        assertThat(with.offsetMmAt(3)).isCloseTo(expected("strip", "e", "read at x 220"), within(TOLERANCE));
        assertThat(with.offsetMmAt(303.5)).isCloseTo(-0.011651, within(TOLERANCE));
        assertThat(Math.toDegrees(-with.skew().libraryValue()))
                .isCloseTo(expected("strip", "skew", ""), within(TOLERANCE));
        BlankOnFence without = run.strip(Estimate.of(mm(9), mm(0.05))).trialWithoutStrip();
        assertThat(without.place(40, 0, 0, 1, LengthStyle.MILLIMETRES).offsetMmAt(100))
                .isCloseTo(expected("strip", "e", "trial without it"), within(TOLERANCE));
        assertThat(without.stripVariance()).isCloseTo(0.0025, within(1e-12));
        assertThat(run.strip(Estimate.of(mm(9), mm(0.05))).stripVariance()).isZero();
    }

    @Test
    void chance_isThatOfTheReference() {
        List<Double> expected = expectedChances();
        double[] ours = chances();
        assertThat(expected).hasSize(ours.length);
        for (int i = 0; i < ours.length; i++) {
            assertThat(ours[i]).as("chance " + i).isCloseTo(expected.get(i), within(TOLERANCE));
        }
    }

    static List<Double> expectedChances() {
        return topic("chance").map(Row::value).toList();
    }

    /** Our chances, in the order of the reference's rows. */
    static double[] chances() {
        double inf = Double.POSITIVE_INFINITY;
        double[] none = {0, 0};
        double[] ends = {0, 1};
        double[] parts = {0, 0.02, 0.5, 0.98, 1};
        double[] shifts = {0.1, 0.096, 0.0909, 0.0968, 0.0968};
        return new double[] {
            new SlotChance(0.05, ends, none, inf).keeps(0, 0, 0.0004, 0, 0),
            new SlotChance(0.05, ends, none, inf).keeps(0.03, 0.03, 0.0004, 0, 0),
            new SlotChance(0.1, ends, none, inf).keeps(0.05, -0.05, 0.0004, 0, 0),
            new SlotChance(0.1, ends, none, inf).keeps(0.05, -0.05, 0.0004, 0.01, 0.01),
            new SlotChance(0.1, ends, none, inf).keeps(0.01, -0.02, 0.0004, 0.01, 0.03),
            new SlotChance(0.1, ends, none, 5).keeps(0.01, -0.02, 0.0004, 0.01, 0.03),
            new SlotChance(0.05, ends, none, 4).keeps(0, 0, 0.0004, 0, 0),
            new SlotChance(0.05, ends, none, 9).keeps(0, 0, 0.0004, 0, 0),
            new SlotChance(0.1, parts, shifts, inf).keeps(0.09, 0.09, 0.0009, 0, 0),
            new SlotChance(0.1, parts, shifts, inf).keeps(0.09, 0.09, 0.0009, 0.01, 0.01),
            new SlotChance(0.1, parts, shifts, 6).keeps(0.09, 0.09, 0.0009, 0.01, 0.01),
            new SlotChance(0.1, ends, none, inf).keeps(0.3, 0.3, 0.035 * 0.035, 0, 0)
        };
    }

    /** The rows of one session: its first row and those "case above" that follow. */
    record Case(String input, Map<String, String> expected) {

        @Override
        public String toString() {
            return input.replaceAll(";.*", "");
        }
    }

    static List<Case> sessions() {
        List<Case> cases = new ArrayList<>();
        for (Row row : topic("session").toList()) {
            if (!row.input.equals("case above")) {
                cases.add(new Case(row.input, new HashMap<>()));
            }
            cases.get(cases.size() - 1).expected.put(row.quantity.replaceAll("[ ,:].*", ""), row.expected);
        }
        return Collections.unmodifiableList(cases);
    }

    @Test
    void sessions_areAllThere() {
        assertThat(sessions()).hasSize(32);
    }

    @ParameterizedTest
    @MethodSource("sessions")
    void decision_isThatOfTheReference(Case given) {
        Scenario scenario = new Scenario(given.input);
        SlotChoice choice = scenario.choice();
        SlotChoice.Chosen chosen = choice.choose();
        double[] costs = choice.costs(chosen);
        SlotStep step = scenario.rounds.evidence.step(chosen.step());

        assertThat(step).isEqualTo(step(given.expected.get("decision")));
        boolean zerosApart = given.input.startsWith("copied piece, slot read only");
        for (Map.Entry<String, String> figure : given.expected.entrySet()) {
            switch (figure.getKey()) {
                case "chance" -> assertThat(chosen.chance()).isCloseTo(value(figure), within(TOLERANCE));
                case "best" -> assertThat(chosen.move()).isCloseTo(value(figure), within(TOLERANCE));
                // The reference has the callipers' zeros in the readings of this one; the text that goes with it does
                // not.
                case "reach" ->
                    assertThat(chosen.reach()).isCloseTo(zerosApart ? 0.999624 : value(figure), within(TOLERANCE));
                case "expected" -> costs(figure.getValue(), chosen.move(), costs, zerosApart);
                default -> assertThat(figure.getKey()).isEqualTo("decision");
            }
        }
    }

    private static void costs(String expected, double move, double[] costs, boolean zerosApart) {
        List<String> names = List.of("CUT", "READ", "MOVE", "TRIAL");
        String[] words = expected.split(" ");
        for (int i = 0; i < words.length; i += 2) {
            double ours = costs[names.indexOf(words[i])];
            boolean noMove = words[i].equals("MOVE") && Math.abs(move) < 1e-9;
            if (noMove) {
                // Nothing to move: the reference gives its cost and never takes it.
                assertThat(ours).isNaN();
            } else if (!zerosApart || words[i].equals("CUT")) {
                assertThat(ours).as(words[i]).isCloseTo(Double.parseDouble(words[i + 1]), within(TOLERANCE));
            }
        }
        assertThat(Arrays.stream(costs).filter(c -> !Double.isNaN(c)).count())
                .isBetween(words.length / 2 - 1L, (long) words.length / 2);
    }

    private static double value(Map.Entry<String, String> figure) {
        return Double.parseDouble(figure.getValue());
    }

    private static SlotStep step(String reference) {
        return switch (reference) {
            case "READ" -> SlotStep.READ_AGAIN;
            case "TRIAL" -> SlotStep.TRIAL_CUT;
            case "SQUARE" -> SlotStep.SQUARE_EDGES;
            case "STRIP" -> SlotStep.TAPERED_STRIP;
            default -> SlotStep.valueOf(reference);
        };
    }

    static double number(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(pattern + " in " + text).isTrue();
        return Double.parseDouble(found.group(1));
    }

    /** A session of the reference as rounds, with the facts that only the reference can give put in their place. */
    private static final class Scenario {

        private final String input;
        private final CentringRounds rounds;

        Scenario(String input) {
            this.input = input;
            double ur = number(input, "u_r ([0-9.]+)");
            BlankOnFence run = run(blank(width(3), width(303.5)), Fence.onePiece(mm(600)));
            CentringRounds all = CentringRounds.on(input.contains("may not be planed") ? run.edgesStay() : run)
                    .bench(BenchUncertainty.withDefaults()
                            .repeatability(mm(ur))
                            .calliperZero(mm(0.01))
                            .cutScatter(mm(number(input, "u_c ([0-9.]+)")))
                            .moveScatter(mm(number(input, "u_m ([0-9.]+)"))))
                    .decision(DecisionRule.withDefaults()
                            .conformanceProbability(percent(input.startsWith("chance 0.90") ? 90 : 95)));
            for (String step : input.split("; ")) {
                if (step.startsWith("cut a")) {
                    all = all.trialCut(cut(step));
                } else if (step.startsWith("moved ") && !step.contains("not")) {
                    double by = number(step, "moved ([-+0-9.]+)");
                    all = all.fenceMoved(by < 0 ? FenceMove.away(mm(-by)) : FenceMove.toward(mm(by)));
                }
            }
            rounds = all;
        }

        /** The width at an end of the channel as the reference has it; printed are four decimals of it. */
        private double width(double x) {
            double printed = number(input, x < 100 ? "blank ([0-9.]+) [0-9.]+ at" : "blank [0-9.]+ ([0-9.]+) at");
            if (input.startsWith("strip")) {
                return 61 + 0.06 * (x - 120) / 640 + 2 * (9 + 0.06 * (x - 5) / 430 - 9.03);
            }
            return Arrays.stream(new double[] {0.06, 1.5, 8})
                    .map(wider -> 61 + wider * (x - 120) / 640)
                    .filter(exact -> Math.abs(exact - printed) < 6e-5)
                    .findFirst()
                    .orElse(printed);
        }

        private static TrialCut cut(String step) {
            int times = step.contains(" x") ? (int) number(step, " x([0-9]+)") : 1;
            TrialCut cut = TrialCut.walls(readings(step, times, "a"), readings(step, times, "b"))
                    .slot(readings(step, times, "d"));
            return step.contains(" W ") ? cut.piece(readings(step, times, "W")) : cut;
        }

        private static List<Amount<Length>> readings(String step, int times, String of) {
            return Collections.nCopies(times, mm(number(step, of + " ([0-9.]+)")));
        }

        SlotChoice choice() {
            SlotChoice.Facts f = rounds.facts();
            double uw = number(input, "u_w ([0-9.]+)");
            double bias = input.contains("u_b") ? Math.pow(number(input, "u_b ([0-9.]+)"), 2) : f.biasVariance();
            SlotChoice.Facts facts = new SlotChoice.Facts(
                    f.state(),
                    f.before(),
                    f.isRead(),
                    f.readings(),
                    f.cuts(),
                    f.isWarned(),
                    f.readingVariance(),
                    f.cutVariance(),
                    bias,
                    f.moveVariance(),
                    width(3),
                    width(303.5),
                    uw,
                    f.mayBePlaned(),
                    f.stripUncertainty());
            double nu = input.contains("; nu ") ? number(input, "; nu ([0-9.]+)") : Double.POSITIVE_INFINITY;
            double[] stations = {3, 303.5};
            double[] shifts = {0, 0};
            if (input.contains("fence knots")) {
                // The reference's own stations; the printed shifts have six decimals.
                stations = new double[] {3, 5, 50, 150, 290, 303.5};
                BlankOnFence split = run(blank(61, 61), Fence.split(mm(600), mm(number(input, "s ([-+0-9.]+)"))));
                shifts = Arrays.stream(stations).map(split::shiftMm).toArray();
            }
            double[] parts = Arrays.stream(stations).map(x -> (x - 3) / 300.5).toArray();
            double limit = number(input.toLowerCase(Locale.ROOT), " l ([0-9.]+) u_c");
            DecisionRule rule = DecisionRule.withDefaults()
                    .conformanceProbability(percent(input.startsWith("chance 0.90") ? 90 : 95));
            return new SlotChoice(facts, new SlotChance(limit, parts, shifts, nu), rule, wanted -> wanted);
        }
    }
}
