package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Settled;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Bars;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.strength.RodTurned;
import org.neckgeom.strength.StiffnessReadings;

/** The stops a plan prints go to the ends that are there; all figures by hand from the design's own. */
class StopsInThePlanTest {

    private static final ScarfCut IN_THE_HEAD = ScarfCut.inTheHead().kerf(mm(1.8));
    private static final ScarfCut IN_THE_SHAFT = ScarfCut.inTheShaft().kerf(mm(1.8));
    private static final Neck OCTAVE = SampleNecks.octaveMandolin();
    private static final Job PLAN = plan(SampleBench.metricShop(), IN_THE_HEAD);

    private static Job plan(Shop shop, ScarfCut cut) {
        return plan(shop, OCTAVE.head().orElseThrow().scarfed(cut));
    }

    private static Job plan(Shop shop, Head head) {
        return Job.of(
                OCTAVE.channel(OCTAVE.channel().orElseThrow().endClearance(mm(0.5)))
                        .head(head),
                SampleBench.octaveBlank().nutAt(mm(200)),
                shop);
    }

    private static String channel(Job plan) {
        return plan.plan().sections().stream()
                .filter(section -> section.title().equals("Truss rod channel"))
                .map(section -> section.rows().toString())
                .findFirst()
                .orElseThrow();
    }

    private static Job done(Job plan, String... names) {
        OrderOfWork order = plan.plan().work();
        for (String name : names) {
            order = order.done(name);
        }
        return plan.order(order);
    }

    @Test
    void stops_goToTheBlanksEndsBeforeAnythingIsSawn() {
        assertThat(channel(PLAN))
                .contains("front stop  500.5 mm from the cutter's centre")
                .contains("rear stop   434 mm from the cutter's centre")
                .contains("on the blank at 3 mm and 303.5 mm from the nut")
                .containsOnlyOnce("front stop")
                .doesNotContain("heel end leading");
    }

    /** 303.5 - 3 = 300.5, and 185 cos 13 deg = 180.26 to the tip, 185 sin 13 deg = 41.62 above the table. */
    @Test
    void stops_goToTheTipOfAHeadThatIsOn() {
        assertThat(channel(done(PLAN, "cut scarf", "glue head")))
                .contains("front stop  480.758 mm from the cutter's centre")
                .contains("rear stop   434 mm from the cutter's centre")
                .contains("180.258 mm before the nut")
                .contains("41.616 mm above the table")
                .contains("44.616 mm or more");
    }

    @Test
    void stops_goToTheTipWhereTheHeadMustBeOnBeforeTheChannel() {
        assertThat(channel(plan(SampleBench.metricShop(), IN_THE_SHAFT)))
                .contains("front stop  480.758 mm from the cutter's centre");
    }

    /** The slope runs 20 / tan 13 deg = 86.63 before the nut. */
    @Test
    void stops_goToTheThinEndOfASawnScarf() {
        assertThat(channel(done(PLAN, "cut scarf"))).contains("front stop  387.13 mm from the cutter's centre");
    }

    /** The body joint at the 14th fret: 560 (1 - 2^(-14/12)) = 310.55, less 3 and 3. */
    @Test
    void stops_goToTheHeelEndThatIsCut() {
        assertThat(channel(done(PLAN, "cut heel joint"))).contains("rear stop   304.548 mm from the cutter's centre");
    }

    /** A blank that begins at the nut, where the channel of 6 begins too: it runs out there, and its heel end is round by 3. */
    private static Job openAtTheHead() {
        return Job.of(
                OCTAVE.channel(OCTAVE.channel().orElseThrow().startingAt(mm(0)))
                        .head(OCTAVE.head().orElseThrow().scarfed(IN_THE_HEAD)),
                SampleBench.octaveBlank().nutAt(mm(0)),
                SampleBench.metricShop());
    }

    @Test
    void openEnd_isOpenInStopsPathMeshAndDrawings() {
        for (Job job : List.of(openAtTheHead(), done(openAtTheHead(), "cut rod channel", "cut scarf", "glue head"))) {
            Plan plan = job.plan();
            double end = job.neck().channel().orElseThrow().endMm();

            assertThat(plan.stops().openEnds()).containsExactly(End.HEAD);
            assertThat(plan.channelPath().points())
                    .extracting(Point::xMm)
                    .usingElementComparator(StopsInThePlanTest::within1nm)
                    .containsOnly(-3.0, end - 3);
            double[] mesh = plan.solid().meshes(mm(0.01)).stream()
                    .filter(one -> one.name().equals("cut: channel"))
                    .findFirst()
                    .orElseThrow()
                    .xyzMm();
            assertThat(widestAt(mesh, 0)).isEqualTo(3);
            assertThat(widestAt(mesh, end)).isLessThan(0.1);
            assertThat(new NeckShape(job.neck(), Settled.of(job))
                            .channelPlan(job.neck().channel().orElseThrow())
                            .spots())
                    .contains(new Spot(0, -3), new Spot(0, 3))
                    .doesNotContain(new Spot(end, -3), new Spot(end, 3))
                    .anyMatch(spot -> Math.abs(spot.uMm() - (end - 3)) < 1e-9);
        }
    }

    /** A channel to 323 in a shaft that was cut off at its body joint, 310.548: it runs out there, and nothing was planned before. */
    @Test
    void channelPastTheHeelJointThatIsCut_isOpenThere() {
        Job job = Job.of(
                OCTAVE.channel(OCTAVE.channel().orElseThrow().endClearance(mm(20))),
                SampleBench.octaveBlank().nutAt(mm(200)),
                SampleBench.metricShop());
        Plan plan = done(job, "cut heel joint").plan();

        assertThat(plan.stops().openEnds()).containsExactly(End.HEEL);
        assertThat(plan.stops().front().isOpen()).isTrue();
        assertThat(plan.channelPath().points())
                .extracting(Point::xMm)
                .usingElementComparator(StopsInThePlanTest::within1nm)
                .containsOnly(6.0, 323.0 + 3);
    }

    private static double widestAt(double[] mesh, double x) {
        return IntStream.range(0, mesh.length / 3)
                .filter(i -> Math.abs(mesh[3 * i] - x) < 1e-9)
                .mapToDouble(i -> Math.abs(mesh[3 * i + 1]))
                .max()
                .orElseThrow();
    }

    /** A cutter of 5 and 0.02 of runout cuts 5.02: ends round by 2.51, stops 0.01 nearer than without, in all of them. */
    @Test
    void runout_isInStopsPathAndMesh() {
        Job job = plan(Shop.with(thin()).repeatability(mm(0.02)), IN_THE_HEAD);

        assertThat(job.plan().stops().front().fromCentre().libraryValue()).isCloseTo(303.5 - 2.51 + 200, within(1e-9));
        assertThat(job.plan().channelPath().points())
                .extracting(Point::xMm)
                .usingElementComparator(StopsInThePlanTest::within1nm)
                .containsOnly(3 + 2.51, 303.5 - 2.51);
    }

    /** An outline that is 60 at the nut and 76 at the tip: 7.5 proud at the tip only. */
    @Test
    void head_hasItsOwnOutlineAtTheFence() {
        Job plan =
                plan(SampleBench.metricShop(), PLAN.neck().head().orElseThrow().tapered(mm(60), mm(76)));

        assertThat(plan.plan().sections().stream()
                        .flatMap(section -> section.rows().stream())
                        .map(PlanSection.Row::value))
                .anyMatch(row -> row.startsWith("parallel spacer of 8.5 mm"));
    }

    /** 0.2 off one wall would move the middle by 0.1, all that a slot may be off: half of it off each. */
    @Test
    void widening_cutsBothWallsEachAsTheFarOne() {
        Job plan = PLAN.measured(MeasuredNeck.none().read(NeckFeature.CHANNEL_WIDTH, Estimate.of(mm(5.8), mm(0.01))));

        assertThat(plan.plan().checks())
                .filteredOn(check -> check.name().equals("channel wide enough"))
                .singleElement()
                .extracting(PlanCheck::todo)
                .asString()
                .startsWith(
                        "Make it 0.20 mm wider: the fence 0.10 mm away from the cutter, cut, turn end for end, cut, and"
                                + " the middle stays: the far wall is cut, against the cutter's turn.")
                .endsWith("check the arrow on the machine, for a reversed spindle reverses the feed.");
    }

    /**
     * A split fence 0.1 mm out of line, gap 20 mm. With 203 mm past the cutter and 437 mm to come a square blank stands off by
     * 0.096774 mm (slot/cases.csv, row 29); a shaft beside its head has 3 mm past it and touches one half alone. At the
     * channel's other end both stand off as much.
     */
    @Test
    void channel_onASplitFenceRunsByTheShaftWhereTheHeadIsOn() {
        Shop split =
                SampleBench.metricShop().fence(Fence.split(mm(600), mm(0.1)).gap(mm(20)));
        Job square = plan(split, IN_THE_HEAD);
        Job headOn = plan(split, IN_THE_SHAFT);

        assertThat(rise(headOn) - rise(square)).isCloseTo(0.096774, within(1e-6));
        assertThat(rise(plan(SampleBench.metricShop(), IN_THE_SHAFT))).isEqualTo(rise(PLAN));
    }

    /**
     * Passes of at most 1.6 mm with a last one of 0.5 mm: 9.2 mm take 6 of 8.7 / 6 = 1.45 mm and one of 0.5 mm, the pocket's 13 mm 8 of
     * 12.5 / 8 = 1.5625 mm and one of 0.5 mm. A quarter of the cutter's 6 mm is 1.5 mm.
     */
    @Test
    void pocket_isCutByTheSamePassesInPathAndPlan() {
        Plan plan = withPocket(10).plan();

        assertThat(plan.channelPath().passes())
                .filteredOn(pass -> pass.isInPocket())
                .extracting(pass -> pass.depth().libraryValue())
                .usingElementComparator(StopsInThePlanTest::within1nm)
                .containsExactly(1.5625, 3.125, 4.6875, 6.25, 7.8125, 9.375, 10.9375, 12.5, 13.0);
        assertThat(channel(withPocket(10))).contains("8 x 1.5625, 0.5 mm: 9 passes");
    }

    @Test
    void deepestPass_isJudgedInThePocketToo() {
        assertThat(withPocket(10).plan().checks())
                .filteredOn(check -> check.name().equals("depth of a pass"))
                .singleElement()
                .satisfies(check -> {
                    assertThat(check.outcome()).isEqualTo(Outcome.OPEN);
                    assertThat(check.found()).isEqualTo("1.563 mm");
                });
    }

    /**
     * By hand: a pocket from 3 to 27, 10 wide, in a blank from -200 to 440, by a cutter of 6: rear stop 440 - 3 - 3, front stop 27 - 3 +
     * 200; two runs 10 - 6 apart. One of 17 takes runs between them: 11 apart they leave a ridge of 5.
     */
    @Test
    void pocket_hasStopsOfItsOwn() {
        assertThat(channel(withPocket(10)))
                .contains("front stop  224 mm from the cutter's centre")
                .contains("on the blank at 3 mm and 27 mm from the nut")
                .contains("first the fence 2.000 mm toward the cutter from the middle, then 4.000 mm away from it")
                .doesNotContain("ridge");
        assertThat(channel(PLAN)).containsOnlyOnce("rear stop");
        assertThat(channel(withPocket(17))).contains("between them run no more than 6 mm apart, or a ridge stays");
    }

    private static Job withPocket(double wide) {
        return Job.of(
                PLAN.neck()
                        .channel(PLAN.neck()
                                .channel()
                                .orElseThrow()
                                .adjusterPocket(mm(24))
                                .section(mm(wide), mm(13))),
                PLAN.blank(),
                PLAN.shop().passes(mm(1.6), mm(0.5)));
    }

    private static int within1nm(double a, double b) {
        return Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b);
    }

    private static double rise(Job plan) {
        SlotPlace place = plan.plan().rounds().place();
        return place.start().amountMm() - place.end().amountMm();
    }

    /**
     * A channel of 6 mm is to be 0.05 mm wider. A cutter of 6 then runs twice, 0.05 apart; one of 5 and 0.02 of runout runs twice,
     * 6 - 5.02 = 0.98 apart, for the 6 already: 1.03 apart then, the first 0.515 nearer than centred.
     */
    @Test
    void widerChannel_isCutByRunsAsFarApartAsItsCutterAsksFor() {
        assertThat(wider(SampleBench.metricShop()))
                .contains("0.050 mm wider, 6.050 mm")
                .contains("0.025 mm nearer the cutter than centred, a second with it 0.050 mm farther");
        assertThat(wider(Shop.with(thin()).repeatability(mm(0.02))))
                .contains(
                        "0.050 mm wider, 6.050 mm",
                        "0.515 mm nearer the cutter than centred, a second with it 1.030 mm farther");
    }

    private static Cutter thin() {
        return Cutter.straight(mm(5))
                .flutes(2, mm(20))
                .shank(mm(12.7))
                .stickOut(mm(25))
                .carbide()
                .runout(mm(0.02));
    }

    /** No wood comes off a channel that is under its board: the rod was turned, so that the neck is strung. */
    @Test
    void channelUnderTheBoard_isNotToBeCutWider() {
        Job cut = plan(SampleBench.metricShop(), IN_THE_HEAD);
        RodTurned turned = RodTurned.by(0.25, mm(0.30), mm(0.22));
        Job strung = cut.measured(
                MeasuredNeck.none().stiffness(StiffnessReadings.none().rod(turned)));

        assertThat(wider(cut)).contains("wider");
        assertThat(wider(strung))
                .contains("0.043 mm too tight", "Keep the neck from that air")
                .doesNotContain("wide");
    }

    private static String wider(Shop shop) {
        return wider(plan(shop, IN_THE_HEAD));
    }

    private static String wider(Job job) {
        return job.plan().checks().stream()
                .filter(check -> check.code() == CheckCode.ROD_PLAY)
                .map(check -> check.toString())
                .findFirst()
                .orElseThrow();
    }

    /**
     * By hand: bars 9 from the middle at the nut and 12 at the body joint, in a blank 61 wide, are 30.5 - 9 = 21.5 and 30.5 - 12 =
     * 18.5 from the edge at the fence. Both 21.5 from the fence, the edge is on it at the head and 3 off it at the body.
     */
    @Test
    void barsThatFan_haveTheWedgesThinEndTowardTheHead() {
        Bars bars = Bars.of(Bar.carbon(mm(280)).section(mm(3), mm(8)), mm(9));

        assertThat(atTheFence(bars)).contains("middle 21.5", "each bar from its own edge");
        assertThat(atTheFence(bars.fanned(mm(12))))
                .contains("middle 21.5", "at its head end", "thin end toward the head");
        assertThat(atTheFence(bars.fanned(mm(8)))).contains("thick end toward the head");
    }

    private static String atTheFence(Bars bars) {
        Job plan = Job.of(OCTAVE.bars(bars), SampleBench.octaveBlank().nutAt(mm(200)), SampleBench.metricShop());
        return plan.plan().section(SectionCode.BARS).orElseThrow().rows().toString();
    }
}
