package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;
import org.neckgeom.strength.RodTurned;
import org.neckgeom.strength.StiffnessReadings;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/** What a card says of a set-up is what the plan says of it; all figures by hand from the design's own. */
class BenchCardTest {

    private static final Neck OCTAVE = SampleNecks.octaveMandolin();
    private static final Channel CHANNEL = OCTAVE.channel().orElseThrow();
    private static final Job PLAIN = plan(OCTAVE);

    private static Job plan(Neck design) {
        return Job.of(
                design,
                SampleBench.octaveBlank().nutAt(mm(200)),
                SampleBench.metricShop().passes(mm(1.6), mm(0.5)));
    }

    private static Optional<String> setting(Job job, String operation, String key) {
        return BenchCard.of(job, operation).settings().stream()
                .flatMap(section -> section.rows().stream())
                .filter(row -> row.key().equals(key))
                .map(PlanSection.Row::value)
                .reduce((first, last) -> last);
    }

    private static Optional<String> cut(Job job, String key) {
        return setting(job, Operation.CUT_ROD_CHANNEL, key);
    }

    @Test
    void channel_isAsDeepInTheMiddleAsItsArch() {
        assertThat(cut(PLAIN, "channel")).hasValue("9.2 mm deep, 6 mm wide, 3 mm to 303 mm from the nut");
        assertThat(cut(plan(OCTAVE.channel(CHANNEL.arch(mm(2)))), "channel"))
                .hasValue("9.2 mm deep at its ends, 11.2 mm in the middle, 6 mm wide, 3 mm to 303 mm from the nut");
    }

    /** 13 mm: 8 passes of 12.5 / 8 = 1.5625 mm and one of 0.5 mm. The adjuster is at the head: 3 to 27 mm. */
    @Test
    void pocket_isOnTheCardOfTheChannel() {
        Job pocket = plan(OCTAVE.channel(CHANNEL.adjusterPocket(mm(24)).section(mm(10), mm(13))));

        assertThat(cut(pocket, "pocket")).hasValue("13 mm deep, 10 mm wide, 3 mm to 27 mm");
        assertThat(cut(pocket, "pocketDepths")).hasValue("1.56, 3.13, 4.69, 6.25, 7.81, 9.38, 10.94, 12.5, 13 mm");
        assertThat(cut(pocket, "rearStop")).hasValue("434 mm from the cutter's centre, beyond the fence");
        assertThat(cut(pocket, "pocketRearStop")).as("stays where it is").isEmpty();
        assertThat(cut(pocket, "pocketFrontStop")).hasValue("224 mm from the cutter's centre");
        assertThat(cut(pocket, "pocketRuns")).hasValue("fence 2.000 mm toward the cutter, then 4.000 mm away");
        assertThat(cut(PLAIN, "pocketFrontStop")).isEmpty();
        assertThat(cut(PLAIN, "pocket")).isEmpty();
        assertThat(cut(PLAIN, "pocketDepths")).isEmpty();
    }

    /** A channel of 6 mm by a cutter of 4 mm that runs out by 0.02 mm: its two runs are 1.98 mm apart. */
    @Test
    void channelWiderThanItsCutter_takesTwoRuns() {
        Job thin =
                Job.of(OCTAVE, PLAIN.blank(), Shop.with(Cutter.straight(mm(4)).runout(mm(0.02))));

        assertThat(cut(thin, "runs")).hasValue("fence 0.990 mm toward the cutter, then 1.980 mm away");
        assertThat(cut(PLAIN, "runs")).isEmpty();
    }

    /** What must be left is rounded up to what a rule shows: 3.04 mm to 3.1 mm, 3 mm to 1/8 in, which is 3.175 mm. */
    @Test
    void woodThatMustBeLeft_isRoundedUp() {
        assertThat(setting(
                        PLAIN.limits(NeckLimits.withDefaults().floorThickness(mm(3.04))),
                        Operation.CARVE_THE_NECK,
                        "allowed"))
                .hasValue("3.1 mm at least");
        assertThat(setting(PLAIN, Operation.CARVE_THE_NECK, "allowed")).hasValue("3 mm at least");
        assertThat(setting(PLAIN.printIn(LengthStyle.INCH_FRACTIONS), Operation.CARVE_THE_NECK, "allowed"))
                .hasValue("1/8 in at least");
    }

    /** A head 76 mm wide on a blank of 61 mm is 7.5 mm proud, and a spacer keeps it 1 mm clear; each wall is (61 - 6) / 2. */
    @Test
    void fence_isSetByTheSpacersFaceWhereTheHeadIsOn() {
        Job headOn = plan(OCTAVE.head(
                OCTAVE.head().orElseThrow().scarfed(ScarfCut.inTheShaft().kerf(mm(1.8)))));

        assertThat(cut(headOn, "spacer")).hasValue("8.5 mm or more, between fence and work");
        assertThat(setting(headOn, Operation.CUT_ROD_CHANNEL, "fence"))
                .hasValue("the spacer's face 27.5 mm from the cutter's near edge, by a rule");
        assertThat(cut(PLAIN, "spacer")).isEmpty();
        assertThat(cut(PLAIN, "fence")).hasValue("27.5 mm from the cutter's near edge, by a rule");
    }

    /** A saddle as high as the strings over the frets lie there needs no angle back: it is set forward where it is lower. */
    @Test
    void neckAngle_saysWhichWayAsThePlanDoes() {
        Job forward = plan(OCTAVE.neckSet(
                NeckSet.saddle(mm(6)).atNut(mm(0.4)).action(mm(2)).fretPlane(mm(7))));
        Job back = plan(OCTAVE.neckSet(
                NeckSet.saddle(mm(25)).atNut(mm(0.4)).action(mm(2)).fretPlane(mm(7))));

        assertThat(setting(forward, Operation.FIT_HEEL_TO_BODY, "neckAngle").orElseThrow())
                .endsWith("head forward")
                .doesNotStartWith("-");
        assertThat(setting(back, Operation.FIT_HEEL_TO_BODY, "neckAngle").orElseThrow())
                .endsWith("head back");
    }

    /** The treble string's own heights, as given; without them one height is for all. */
    @Test
    void nutAndSetUp_haveTheTrebleStringsOwnHeights() {
        NeckSet level = NeckSet.saddle(mm(16)).atNut(mm(0.5)).action(mm(2.4)).fretPlane(mm(7));
        Job both = plan(OCTAVE.neckSet(level.heights(level.heights().treble(mm(0.4), mm(1.9)))));

        for (String operation : List.of(Operation.FIT_THE_NUT, Operation.SET_UP)) {
            assertThat(setting(both, operation, "atNut")).hasValue("0.5 mm");
            assertThat(setting(both, operation, "atNutTreble")).hasValue("0.4 mm");
            assertThat(setting(both, operation, "action")).hasValue("2.4 mm");
            assertThat(setting(both, operation, "actionTreble")).hasValue("1.9 mm");
            assertThat(setting(plan(OCTAVE.neckSet(level)), operation, "actionTreble"))
                    .isEmpty();
        }
    }

    /** 560 (1 - 2^(-14/12)) = 310.5 mm from the nut to the joint; the blank of 640 mm with its nut at 200 mm ends 440 mm from it. */
    @Test
    void marksOfTheScarf_countFromAnEndThatIsNotTheBlanks() {
        assertThat(setting(scarfed(SCARFED), Operation.CUT_SCARF, "shaftEnd"))
                .hasValue("310.5 mm from the nut line toward the body");
        assertThat(scarfed(SCARFED)
                        .plan()
                        .section(SectionCode.SCARF)
                        .orElseThrow()
                        .toString())
                .contains("The shaft ends 310.548 mm from the nut line, at the body joint");
    }

    private static final Neck SCARFED = OCTAVE.head(OCTAVE.head()
            .orElseThrow()
            .veneer(mm(2), mm(5))
            .scarfed(ScarfCut.inTheShaft().kerf(mm(1.8))));

    private static Job scarfed(Neck neck) {
        return Job.of(neck, SampleBench.octaveBlank().nutAt(mm(200)), SampleBench.metricShop());
    }

    private static Job sawnAt9() {
        return scarfed(SCARFED)
                .measured(MeasuredNeck.none().scarfAngle(Estimate.of(ShopUnits.deg(9), ShopUnits.deg(0.1))));
    }

    /**
     * By hand: a quarter turn took 0.08 mm, of 0.30 mm 0.10 is to go: 0.25 x 0.10 / 0.08 = 0.3125 turns, known to a factor of
     * exp(1.96 x 0.005 x sqrt 2 / 0.08) = 1.189 either way (95 %).
     */
    @Test
    void rod_isTurnedAsItsReadingShows() {
        Job threaded = plan(OCTAVE.channel(
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)).threadPitch(mm(0.8)))
                        .startingAt(mm(3))
                        .depthClearance(mm(0.2))));
        Job read = threaded.measured(
                MeasuredNeck.none().stiffness(StiffnessReadings.none().rod(RodTurned.by(0.25, mm(0.30), mm(0.22)))));

        assertThat(setting(read, Operation.SET_UP, "rod"))
                .hasValue("from where it bites 0.26 to 0.37 turns, tighten: against the strings");
        assertThat(setting(threaded, Operation.SET_UP, "rod"))
                .hasValueSatisfying(turns -> assertThat(turns).endsWith("turn half, read the relief, and plan again"));
        assertThat(setting(threaded, Operation.FIT_THE_NUT, "rod")).isEmpty();
        assertThat(setting(PLAIN, Operation.SET_UP, "rod")).isEmpty();
    }

    /** Drawn 13 deg, sawn and read 9: the head is glued and trued at 9, and the saw's own card keeps what was to be sawn. */
    @Test
    void headAngle_isTheOneRead_onTheCardsAfterTheSaw() {
        for (String later : List.of("glue head", "true the head")) {
            assertThat(setting(sawnAt9(), later, "angle")).hasValue("9.0 deg, as read; drawn 13.0 deg");
            assertThat(setting(scarfed(SCARFED), later, "angle")).hasValue("13.0 deg");
        }
        assertThat(setting(sawnAt9(), "cut scarf", "angle")).hasValue("13.0 deg");
    }

    /** The head on before the channel stands at the fence as one drawn with the angle read does. */
    @Test
    void headAtTheFence_isTheOneThatWasSawn() {
        Job drawn = scarfed(SCARFED.head(SCARFED.head().orElseThrow().angle(ShopUnits.deg(9))));

        assertThat(atTheFence(sawnAt9())).isEqualTo(atTheFence(drawn)).isNotEqualTo(atTheFence(scarfed(SCARFED)));
    }

    private static String atTheFence(Job job) {
        return job.plan()
                .section(SectionCode.HEAD_AT_THE_FENCE)
                .orElseThrow()
                .rows()
                .toString();
    }
}
