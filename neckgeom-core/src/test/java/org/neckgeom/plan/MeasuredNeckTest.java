package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.plan.NeckFeature.CHANNEL_DEPTH;
import static org.neckgeom.plan.NeckFeature.CHANNEL_END;
import static org.neckgeom.plan.NeckFeature.CHANNEL_START;
import static org.neckgeom.plan.NeckFeature.CHANNEL_WIDTH;
import static org.neckgeom.plan.NeckFeature.FINGERBOARD_OFFSET;
import static org.neckgeom.plan.NeckFeature.HEAD_THICKNESS;
import static org.neckgeom.plan.NeckFeature.HEIGHT_AT_BRIDGE;
import static org.neckgeom.plan.NeckFeature.OFFSET_AT_BRIDGE;
import static org.neckgeom.plan.NeckFeature.SLOT_OFFSET;
import static org.neckgeom.plan.NeckFeature.SLOT_OFFSET_AT_HEEL;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.form.Statement;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.order.Operation;
import org.neckgeom.page.Sheet;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.StiffnessReadings;
import org.neckgeom.units.LengthStyle;

/**
 * An invented neck, read on while it is made: each reading takes the place of what was assumed, and the rest is judged on
 * it. What comes out is held to sums by hand and to plain sampling, not to the code that computes it.
 */
class MeasuredNeckTest {

    private static final Head HEAD =
            Head.angled(deg(12)).length(mm(170)).width(mm(58)).thickness(mm(15)).scarfed(ScarfCut.inTheHead());

    private static final Neck NECK = Neck.named("Read on")
            .scale(mm(600))
            .fingerboard(Fingerboard.tapered(mm(42), mm(52)).thickness(mm(6)))
            .back(BackProfile.between(mm(16), mm(18)).rounded())
            .frets(20)
            .bodyAtFret(12)
            .channel(Channel.forRod(TrussRod.twoWay(mm(280)).section(mm(6), mm(9)))
                    .startingAt(mm(5))
                    .depthClearance(mm(0.3)))
            .strings(StringSet.of(pitch("D3"), pitch("A3")).tensions(newton(80)))
            .wood(Wood.BLACK_WALNUT)
            .head(HEAD)
            .heel(Heel.of(mm(80), mm(54)))
            .neckSet(NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2)).fretPlane(mm(7)));

    private static final Job PLAN = Job.of(
            NECK,
            Blank.ofLength(mm(640)).section(mm(58), mm(20)).nutAt(mm(200)),
            Shop.with(Cutter.straight(mm(6))).repeatability(mm(0.02)));

    private static Estimate<Length> read(double value, double u) {
        return Estimate.of(mm(value), mm(u));
    }

    private static Job with(NeckFeature feature, double value, double u) {
        return PLAN.measured(PLAN.measured().read(feature, read(value, u)));
    }

    private static PlanCheck check(Job plan, String name) {
        return plan.plan().checks().stream()
                .filter(check -> check.name().equals(name))
                .findFirst()
                .orElseThrow(() ->
                        new AssertionError(name + " is not among " + plan.plan().checks()));
    }

    private static PlanSection section(Job plan, String title) {
        return plan.plan().sections().stream()
                .filter(section -> section.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private static boolean hasRow(PlanSection section, String label) {
        return section.rows().stream().anyMatch(row -> row.label().equals(label));
    }

    /** 0.1 in is 2.54 mm, and a plan in inches says in inches what was read in millimetres at the machine and on the neck. */
    @Test
    void plan_saysReadingsStepsAndWorkmanshipInItsOwnStyle() {
        Job read = with(CHANNEL_DEPTH, 9.398, 0.0254)
                .trialCut(TrialCut.walls(mm(25.4), mm(27.94)))
                .fenceMoved(FenceMove.away(mm(1.27)))
                .workmanship(Workmanship.withDefaults().cutting(ErrorDistribution.normal(mm(0.0508))));

        Job inches = read.printIn(LengthStyle.DECIMAL_INCHES);

        assertThat(inches).isEqualTo(read).hasSameHashCodeAs(read);
        assertThat(inches.measured().toString()).contains("0.3700 in").doesNotContain(" mm");
        assertThat(inches.steps().get(0).toString())
                .contains("1.0000 in", "1.1000 in")
                .doesNotContain(" mm");
        assertThat(inches.steps().get(1)).hasToString("fence moved 0.05 in away from the cutter");
        assertThat(inches.workmanship().text(inches.style())).contains("2 thou").doesNotContain(" mm");
        assertThat(inches.printIn(LengthStyle.MILLIMETRES).measured())
                .hasToString(read.measured().toString());
    }

    @Test
    void readings_areNoneAtFirst_andChangeNothing() {
        assertThat(PLAN.measured().isEmpty()).isTrue();
        assertThat(PLAN.measured(MeasuredNeck.none())).isEqualTo(PLAN);
        assertThat(PLAN.measured(MeasuredNeck.none()).plan().work())
                .isEqualTo(PLAN.plan().work());
    }

    @ParameterizedTest
    @CsvSource({
        "CHANNEL_DEPTH, 9.05, 0.02, channel deep enough, OK",
        "CHANNEL_DEPTH, 9.03, 0.02, channel deep enough, OPEN",
        "CHANNEL_DEPTH, 8.9, 0.02, channel deep enough, STOP",
        "CHANNEL_WIDTH, 6.05, 0.02, channel wide enough, OK",
        "CHANNEL_WIDTH, 5.9, 0.02, channel wide enough, STOP",
        "CHANNEL_END, 285.2, 0.05, channel long enough, OK",
        "CHANNEL_END, 284.5, 0.05, channel long enough, STOP",
        "CHANNEL_START, 5.5, 0.05, channel long enough, STOP"
    })
    void channelRead_isHeldToItsRod(NeckFeature feature, double value, double u, String name, Outcome outcome) {
        assertThat(check(with(feature, value, u), name).outcome()).isEqualTo(outcome);
    }

    @Test
    void channelRead_isDone_andItsSettingsAreNoLongerAsked() {
        Job cut = with(CHANNEL_DEPTH, 9.3, 0.02);
        PlanSection channel = section(cut, "Truss rod channel");

        assertThat(hasRow(section(PLAN, "Truss rod channel"), "passes")).isTrue();
        assertThat(hasRow(channel, "passes")).isFalse();
        assertThat(hasRow(channel, "stops")).isFalse();
        assertThat(channel.rows().get(0).label()).isEqualTo("done");
        assertThat(channel.notes())
                .extracting(Statement::toString)
                .containsExactly("not read, taken as drawn: channel width, channel start, channel end");
        assertThat(cut.plan().checks()).noneMatch(check -> check.name().equals("depth of a pass"));
        assertThat(cut.plan().work().finished())
                .extracting(Operation::name)
                .contains("mark the lines", "cut rod channel");
        assertThat(cut.plan().work().plan().names())
                .doesNotContain("cut rod channel")
                .contains("carve the neck");
        assertThat(section(cut, "Order of operations").rows().get(0).value())
                .startsWith("cut rod channel\ntaken as done, because they come before: rest the stock");
    }

    /** The wood left under a flat channel with a half ellipse below, by sampling stations and the curve. */
    @Tag("long")
    @ParameterizedTest
    @CsvSource({"9.3, 0", "9.9, 0", "9.3, 0.6", "8.7, -0.4"})
    void woodLeft_isThatOfTheChannelAsCut(double depth, double offset) {
        Job cut = PLAN.measured(
                MeasuredNeck.none().read(CHANNEL_DEPTH, read(depth, 0.02)).read(SLOT_OFFSET, read(offset, 0.02)));

        assertThat(millimetres(check(cut, "wood under the channel").found()))
                .isCloseTo(
                        sampledWood(depth, offset, x -> 16 + (18 - 16) * (x - fret(1)) / (fret(12) - fret(1))),
                        within(0.001));
    }

    private interface Depth {
        double at(double x);
    }

    private static double fret(int n) {
        return 600 * (1 - Math.pow(2, -n / 12.0));
    }

    private static double sampledWood(double depth, double offset, Depth back) {
        double least = Double.POSITIVE_INFINITY;
        for (double x = 5; x <= 285; x += 5) {
            double a = (42 + 10 * x / fret(12)) / 2;
            double b = back.at(x);
            for (double corner : new double[] {offset - 3, offset + 3}) {
                for (double t = 0; t <= Math.PI; t += 1e-4) {
                    least = Math.min(least, Math.hypot(a * Math.cos(t) - corner, b * Math.sin(t) - depth));
                }
            }
        }
        return least;
    }

    private static double millimetres(String found) {
        return Double.parseDouble(found.substring(0, found.indexOf(' ')));
    }

    @Test
    void backRead_isWhatTheWoodLeftIsMeasuredTo() {
        Job carved = PLAN.measured(MeasuredNeck.none()
                .read(CHANNEL_DEPTH, read(9.3, 0.02))
                .backDepth(mm(0), read(15, 0.05))
                .backDepth(mm(300), read(18, 0.05)));
        double drawnAtNut = 16 - 2 * fret(1) / (fret(12) - fret(1));
        double drawnAtEnd = 16 + 2 * (300 - fret(1)) / (fret(12) - fret(1));
        double wood = sampledWood(
                9.3,
                0,
                x -> 16
                        + 2 * (x - fret(1)) / (fret(12) - fret(1))
                        + (15 - drawnAtNut) * (300 - x) / 300
                        + (18 - drawnAtEnd) * x / 300);

        assertThat(millimetres(check(carved, "wood under the channel").found())).isCloseTo(wood, within(0.001));
        assertThat(hasRow(section(carved, "Back profile and facets"), "done")).isTrue();
        assertThat(carved.plan().work().plan().names()).doesNotContain("carve the neck", "rough out the back");
    }

    /** Depth and carving as uncertain as their readings: the chance by drawing both, and the wood of each draw. */
    @Test
    void chanceOfLess_isThatOfTheReadings() {
        double limit = 6;
        Job carved = PLAN.limits(NeckLimits.withDefaults().floorThickness(mm(limit)))
                .measured(MeasuredNeck.none()
                        .read(CHANNEL_DEPTH, read(9.3, 0.2))
                        .backDepth(mm(0), read(15.5, 0.15))
                        .backDepth(mm(300), read(18, 0.15)));
        String row = section(carved, "Wood under the channel").rows().stream()
                .filter(one -> one.label().equals("probability of less"))
                .findFirst()
                .orElseThrow()
                .value();
        double chance = Double.parseDouble(row.substring(0, row.indexOf(' '))) / 100;
        double wood = millimetres(check(carved, "wood under the channel").found());
        // Under the middle of a wide back the wood loses nearly the whole of what the channel is deeper; a corner,
        // less.
        double corner = 3;
        double a = (42 + 10 * 5 / fret(12)) / 2;
        double b = wood + 9.3;
        double slope = slopeOfWood(a, b, corner);
        SplittableRandom random = new SplittableRandom(5);
        int below = 0;
        for (int i = 0; i < 200_000; i++) {
            double left = wood - slope * 0.2 * gauss(random) - 0.15 * gauss(random);
            below += left < limit ? 1 : 0;
        }

        assertThat(row).contains("carved depth as read, u 0.15 mm");
        assertThat(chance).as("seed 5").isCloseTo(below / 200_000.0, within(0.02));
    }

    /** How much wood a corner loses for each mm of depth: the nearest point's direction, by sampling. */
    private static double slopeOfWood(double a, double b, double corner) {
        double best = Double.POSITIVE_INFINITY;
        double slope = 0;
        for (double t = 0; t <= Math.PI; t += 1e-4) {
            double dz = b * Math.sin(t) - 9.3;
            double d = Math.hypot(a * Math.cos(t) - corner, dz);
            if (d < best) {
                best = d;
                slope = dz / d;
            }
        }
        return slope;
    }

    /** Box and Muller. */
    private static double gauss(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    /** Conditional mean and variance by hand: read at the joint, the board's two ends still have their lever at the bridge. */
    @Test
    void boardRead_keepsTheLeverOfTheStringLine() {
        Estimate<Length> line = with(FINGERBOARD_OFFSET, 0.11, 0.03)
                .plan()
                .known(BudgetCode.STRING_LINE)
                .estimate();
        double joint = fret(12);
        double near = 0.05 * joint;
        double far = 0.95 * joint;
        double heel = lever(near, far) * 0.05 * 0.05 / 3 + 0.06 * 0.06;
        double cheeks = lever(joint, joint + 40) * 0.06 * 0.06 / 6;
        double s = 0.08 * 0.08 / 3;
        double[] h = {(far - joint) / (far - near), (joint - near) / (far - near)};
        double[] g = {(far - 600) / (far - near), (600 - near) / (far - near)};
        double both = s * (g[0] * h[0] + g[1] * h[1]);
        double read = s * (h[0] * h[0] + h[1] * h[1]) + 0.03 * 0.03;
        double board = s * (g[0] * g[0] + g[1] * g[1]) - both * both / read;

        assertThat(line.libraryUncertainty()).isCloseTo(Math.sqrt(heel + cheeks + board), within(1e-9));
        assertThat(line.libraryValue()).isCloseTo(0.11 * both / read, within(1e-9));
        assertThat(PLAN.plan().known(BudgetCode.STRING_LINE).estimate().libraryValue())
                .isZero();
    }

    /** Read at two stations the board is all but known at the bridge: the nearer it is read, the more it is worth. */
    @Test
    void offsets_countWhereTheyWereRead() {
        Estimate<Length> unread = PLAN.plan().known(BudgetCode.STRING_LINE).estimate();
        MeasuredNeck once =
                MeasuredNeck.none().offset(MeasuredNeck.Located.FINGERBOARD, mm(20), Estimate.of(mm(0), mm(0.01)));
        MeasuredNeck twice = once.offset(MeasuredNeck.Located.FINGERBOARD, mm(280), Estimate.of(mm(0), mm(0.01)));
        double one = u(once);
        double two = u(twice);

        assertThat(one).isLessThan(unread.libraryUncertainty());
        assertThat(two).isLessThan(one);
        assertThat(twice.offset(MeasuredNeck.Located.FINGERBOARD, mm(280), Estimate.of(mm(0), mm(0.01))))
                .as("the same place again takes the earlier one's place")
                .isEqualTo(twice);
        assertThat(PLAN.measured(twice).plan().state().readings())
                .extracting(reading -> reading.name())
                .containsExactly("fingerboard at 20 mm", "fingerboard at 280 mm");
    }

    private static double u(MeasuredNeck read) {
        return PLAN.measured(read)
                .plan()
                .known(BudgetCode.STRING_LINE)
                .estimate()
                .libraryUncertainty();
    }

    /** Sum of the squared sensitivities at the bridge of the errors at two stations. */
    private static double lever(double x1, double x2) {
        double c1 = (x2 - 600) / (x2 - x1);
        double c2 = (600 - x1) / (x2 - x1);
        return c1 * c1 + c2 * c2;
    }

    @Test
    void bridgeRead_leavesNothingToAddUp() {
        Job fitted = with(OFFSET_AT_BRIDGE, -0.4, 0.1);

        Estimate<Length> known = fitted.plan().known(BudgetCode.STRING_LINE).estimate();
        // A heel as cut may lie anywhere within some millimetres: the reading is all but all that is known.
        assertThat(known.libraryValue()).isCloseTo(-0.4, within(0.004));
        assertThat(known.libraryUncertainty()).isCloseTo(0.1, within(0.001));
        assertThat(check(fitted, "string line at the bridge").outcome()).isEqualTo(Outcome.OK);
        assertThat(check(with(OFFSET_AT_BRIDGE, -1.4, 0.1), "string line at the bridge")
                        .outcome())
                .isEqualTo(Outcome.OPEN);
        assertThat(check(with(HEIGHT_AT_BRIDGE, 0.1, 0.1), "projection height at the bridge")
                        .outcome())
                .isEqualTo(Outcome.OK);
        assertThat(check(with(HEIGHT_AT_BRIDGE, -1.2, 0.1), "projection height at the bridge")
                        .outcome())
                .isEqualTo(Outcome.OPEN);
    }

    /** The lever rule by hand: 1.2 mm too low over a reach of 300 mm tips a face of 80 mm by 0.32 mm. */
    @Test
    void heelCorners_tipTheFaceByTheLever() {
        Job low = with(HEIGHT_AT_BRIDGE, -1.2, 0.1);
        HeelCorners corners = low.plan().heelCorners().orElseThrow();

        assertThat(PLAN.plan().heelCorners()).isEmpty();
        assertThat(corners.capBass().libraryValue() - corners.topBass().libraryValue())
                .isCloseTo(1.2 * 80 / 300, within(0.002));
        assertThat(corners.topBass().libraryValue()).isZero();
        HeelCorners aside =
                with(OFFSET_AT_BRIDGE, 1.5, 0.1).plan().heelCorners().orElseThrow();
        assertThat(aside.topTreble().libraryValue() - aside.topBass().libraryValue())
                .isCloseTo(1.5 * 54 / 300, within(0.003));
        assertThat(hasRow(section(low, "Heel and body joint"), "take off")).isTrue();
    }

    /** Read strings-on alone it is not sent back to the first cut, on no page. */
    @Test
    void reliefAtPitch_leavesNoCutToBeMade() {
        Job strung = PLAN.measured(
                MeasuredNeck.none().stiffness(StiffnessReadings.none().relief(mm(0.02), mm(0.2))));

        assertThat(Sheet.of(strung).toText()).contains("set up").doesNotContain("trial cut in a test piece");
    }

    /** What its check leaves is left: of 0.6 too low and 0.9 aside, within 0.5 and 1, the height alone is put right. */
    @Test
    void heelCorners_leaveWhatKeepsItsLimits() {
        MeasuredNeck low = MeasuredNeck.none().read(HEIGHT_AT_BRIDGE, Estimate.of(mm(-0.6), mm(0.02)));
        MeasuredNeck both = low.read(OFFSET_AT_BRIDGE, Estimate.of(mm(0.9), mm(0.02)));

        assertThat(check(PLAN.measured(both), "string line at the bridge").outcome())
                .isEqualTo(Outcome.OK);
        assertThat(check(PLAN.measured(both), "projection height at the bridge").outcome())
                .isEqualTo(Outcome.OPEN);
        HeelCorners corners = PLAN.measured(both).plan().heelCorners().orElseThrow();
        assertThat(corners.capBass()).isEqualTo(corners.capTreble());
        assertThat(corners.capBass().libraryValue()).isCloseTo(0.6 * 80 / 300, within(0.002));
        assertThat(with(OFFSET_AT_BRIDGE, 0.5, 0.1).plan().heelCorners()).isEmpty();
    }

    @Test
    void slotRead_isJudgedByWhatItLeavesOfTheBlank() {
        assertThat(check(with(SLOT_OFFSET, 0.05, 0.02), "channel centred").outcome())
                .isEqualTo(Outcome.OK);
        assertThat(check(with(SLOT_OFFSET, 0.09, 0.02), "channel centred").outcome())
                .isEqualTo(Outcome.OPEN);
        PlanCheck off = check(with(SLOT_OFFSET, 1, 0.02), "channel centred");
        assertThat(off.outcome()).isEqualTo(Outcome.OPEN);
        // Half of 58 less half of the heel's 54 at the body joint, less the millimetre.
        assertThat(off.todo()).contains("has 1 mm to spare on its thin side");
        PlanCheck lost = check(with(SLOT_OFFSET, -3.5, 0.02), "channel centred");
        assertThat(lost.outcome()).isEqualTo(Outcome.STOP);
        assertThat(lost.todo()).contains("by 1.5 mm");
    }

    @Test
    void slotReadAtBothEnds_isAskewByItsOwnReadings() {
        Job askew = PLAN.measured(
                MeasuredNeck.none().read(SLOT_OFFSET, read(0, 0.02)).read(SLOT_OFFSET_AT_HEEL, read(2.8, 0.02)));

        assertThat(askew.plan().slotPlace().skew().libraryValue()).isCloseTo(Math.atan(0.01), within(1e-12));
        assertThat(askew.plan().slotPlace().offsetMmAt(145)).isCloseTo(1.4, within(1e-9));
        // 280 mm tan 10 deg = 49.3716 mm.
        MeasuredNeck head = MeasuredNeck.none().read(SLOT_OFFSET, read(0, 0.02));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PLAN.measured(head.read(SLOT_OFFSET_AT_HEEL, read(-49.4, 0.02))))
                .withMessage(
                        "measured.slot offset at heel must lie less than 49.372 mm from that at the head end: a slot is askew"
                                + " by less than 10 deg, but was -49.4 mm");
    }

    @Test
    void headRead_isHeldToItsTuners() {
        Job told = Job.of(NECK.head(HEAD.tuners(mm(13), mm(15.1))), PLAN.blank(), PLAN.shop());
        MeasuredNeck thick = MeasuredNeck.none().read(HEAD_THICKNESS, read(15.08, 0.02));

        assertThat(check(told, "head fits the tuners").outcome()).isEqualTo(Outcome.OK);
        assertThat(check(told.measured(thick), "head fits the tuners").outcome())
                .isEqualTo(Outcome.OPEN);
        assertThat(check(told.measured(thick.read(HEAD_THICKNESS, read(15.3, 0.02))), "head fits the tuners")
                        .outcome())
                .isEqualTo(Outcome.STOP);
        assertThat(told.measured(thick).plan().work().finished())
                .extracting(Operation::name)
                .contains("true the head");
    }

    /** The line on the front of a joint in the head: shaft over the sine of the angle that was read. */
    @Test
    void scarfRead_movesItsLines() {
        Job sawn = PLAN.measured(MeasuredNeck.none().scarfAngle(Estimate.of(deg(12.5), deg(0.1))));

        assertThat(sawn.stages().made().scarf().orElseThrow().frontLineMm())
                .isCloseTo(20 / Math.sin(Math.toRadians(12.5)), within(1e-9));
        assertThat(hasRow(section(sawn, "Scarf joint"), "done")).isTrue();
        assertThat(sawn.plan().checks()).noneMatch(check -> check.name().startsWith("blank long enough"));
    }

    @Test
    void readings_thatContradictEachOther_getASentence() {
        assertThat(check(with(CHANNEL_DEPTH, 9.3, 0.02), "readings agree").outcome())
                .isEqualTo(Outcome.OK);
        assertQuarrel(
                MeasuredNeck.none().backDepth(mm(100), read(17, 0.05)),
                "the back has been read as carved, of the channel under it nothing");
        assertQuarrel(
                MeasuredNeck.none().read(FINGERBOARD_OFFSET, read(0, 0.05)),
                "the board has been read as glued, of the channel under it nothing");
        assertQuarrel(
                MeasuredNeck.none().read(CHANNEL_DEPTH, read(93, 0.02)),
                "the channel reads 93 mm deep in a blank 20 mm thick");
        assertQuarrel(
                MeasuredNeck.none().read(CHANNEL_DEPTH, read(9.3, 0.02)).backDepth(mm(100), read(8.5, 0.05)),
                "carved through to the rod");
        assertQuarrel(
                MeasuredNeck.none().read(CHANNEL_DEPTH, read(9.3, 0.02)).backDepth(mm(100), read(21, 0.05)),
                "the back reads 21 mm deep at 100 mm, in a blank 20 mm thick");
        assertQuarrel(
                MeasuredNeck.none().scarfAngle(Estimate.of(deg(21), deg(0.1))), "the scarf reads 9.0 deg steeper");
    }

    private static void assertQuarrel(MeasuredNeck readings, String words) {
        PlanCheck check = check(PLAN.measured(readings), "readings agree");
        assertThat(check.outcome()).isEqualTo(Outcome.OPEN);
        assertThat(check.found() + check.todo()).contains(words);
    }

    @Test
    void slotRead_farFromItsTrialCut_getsASentence() {
        Job tried = PLAN.trialCut(TrialCut.walls(mm(26), mm(26)).repeatability(mm(0.02)));

        assertThat(check(tried.measured(MeasuredNeck.none().read(SLOT_OFFSET, read(0.05, 0.02))), "readings agree")
                        .outcome())
                .isEqualTo(Outcome.OK);
        assertThat(check(tried.measured(MeasuredNeck.none().read(SLOT_OFFSET, read(0.3, 0.02))), "readings agree")
                        .found())
                .startsWith("the slot lies 0.30 mm from where the trial cuts put it");
    }

    @Test
    void boardOnOverAChannelTooShallow_isToldAsSuch() {
        Job closed = PLAN.measured(
                MeasuredNeck.none().read(CHANNEL_DEPTH, read(8.5, 0.02)).read(FINGERBOARD_OFFSET, read(0.1, 0.02)));

        assertThat(check(closed, "channel deep enough").todo())
                .startsWith("The board is on over a channel that is 0.50 mm too small");
    }

    /** What the maker keeps goes on being kept: read as carved, the channel that was to come after it is left to do. */
    @Test
    void order_ofWhatIsLeft_conflictsWhereTheMakerKeptItSo() {
        Job carvedFirst = PLAN.order(
                        PLAN.plan().work().keep("rough out the back").before("cut rod channel"))
                .measured(MeasuredNeck.none().scarfAngle(Estimate.of(deg(12), deg(0.1))));

        assertThat(carvedFirst.plan().work().plan().names().indexOf("rough out the back"))
                .isLessThan(carvedFirst.plan().work().plan().names().indexOf("cut rod channel"));
        assertThat(check(carvedFirst, "order of operations").outcome()).isNotEqualTo(Outcome.OK);
    }

    @Test
    void read_refusesWhatNoNeckCanBe() {
        MeasuredNeck none = MeasuredNeck.none();

        assertThatIllegalArgumentException()
                .isThrownBy(() -> none.read(CHANNEL_DEPTH, read(-1, 0.1)))
                .withMessage("channel depth as read must be more than 0 mm, but was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> none.read(CHANNEL_START, read(10, 0.1)).read(CHANNEL_END, read(8, 0.1)))
                .withMessage("channel end as read must be more than its start at 10 mm, but was 8 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> none.read(SLOT_OFFSET_AT_HEEL, read(0.1, 0.1)))
                .withMessageStartingWith("slot offset must be read at its head end before its heel end");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> none.scarfAngle(Estimate.of(deg(60), deg(1))))
                .withMessage("scarf angle as read must be 1 deg or more and 45 deg or less, but was 60 deg");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> none.backDepth(mm(-80), read(15, 0.1)))
                .withMessage("station must be 0 mm or more, but was -80 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PLAN.measured(none.backDepth(mm(480), read(15, 0.1))))
                .withMessageStartingWith("measured.back must have its stations on the neck, from the nut to ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PLAN.measured(none.read(CHANNEL_START, read(400, 0.1))))
                .withMessage("measured: channel end must be more than its start at 400 mm, but was 285 mm");
    }

    @Test
    void toString_namesEveryReading() {
        MeasuredNeck readings = MeasuredNeck.none()
                .read(CHANNEL_WIDTH, read(6.02, 0.02))
                .scarfAngle(Estimate.of(deg(12), deg(0.1)))
                .backDepth(mm(100), read(17, 0.05));

        assertThat(readings.toString().lines().toList()).hasSize(4);
        assertThat(List.of(readings, MeasuredNeck.none()))
                .allSatisfy(one -> assertThat(one.toString().length()).isLessThan(1000));
    }

    @Test
    void readings_areEqualForTheSameFigures() {
        MeasuredNeck one = MeasuredNeck.none().read(CHANNEL_WIDTH, read(6.02, 0.02));
        MeasuredNeck angled = one.scarfAngle(Estimate.of(deg(12), deg(0.1)));
        MeasuredNeck deep = one.backDepth(mm(100), read(17, 0.05));
        List<MeasuredNeck> unlike =
                List.of(MeasuredNeck.none(), one, angled, deep, one.backDepth(mm(100), read(17.1, 0.05)));

        assertThat(unlike).doesNotHaveDuplicates();
        assertThat(unlike.stream().map(Object::hashCode)).doesNotHaveDuplicates();
        assertThat(one)
                .isEqualTo(MeasuredNeck.none().read(CHANNEL_WIDTH, read(6.02, 0.02)))
                .isNotEqualTo("read");
        assertThat(angled.count()).isEqualTo(2);
        assertThat(deep.backDepth(mm(120), read(17, 0.05)).count()).isEqualTo(3);
        assertThat(deep.backDepth(mm(100), read(16, 0.05)).count()).isEqualTo(2);
        assertThat(deep.text(LengthStyle.DECIMAL_INCHES))
                .contains("back at 3.937 in")
                .doesNotContain(" mm");
    }

    @Test
    void toString_countsAndLeavesOutWhatDoesNotFit() {
        MeasuredNeck readings = MeasuredNeck.none().read(CHANNEL_WIDTH, read(6.02, 0.02));

        assertThat(readings).hasToString("Read on the neck: 1 reading\n  channel width  6.020 mm, u 0.020 mm");
        for (int i = 0; i < 20; i++) {
            readings = readings.backDepth(mm(10 * i), read(17, 0.05));
        }
        assertThat(readings.toString().lines()).hasSize(15);
        assertThat(readings.toString()).startsWith("Read on the neck: 21 readings");
    }

    @Test
    void limits_belongToWhatCanBeRead() {
        MeasuredNeck none = MeasuredNeck.none();

        assertThat(none.scarfAngle(Estimate.of(deg(1), deg(0.1))).isEmpty()).isFalse();
        assertThat(none.scarfAngle(Estimate.of(deg(44.9999), deg(0.1))).isEmpty())
                .isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> none.scarfAngle(Estimate.of(deg(0.99), deg(0.1))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> none.read(CHANNEL_DEPTH, read(0, 0.1)))
                .withMessageEndingWith("must be more than 0 mm, but was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> none.backDepth(mm(100), read(0, 0.1)))
                .withMessage("back depth as read must be more than 0 mm, but was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> none.read(CHANNEL_START, read(10, 0.1)).read(CHANNEL_END, read(10, 0.1)))
                .withMessageContaining("more than its start at 10 mm");
    }
}
