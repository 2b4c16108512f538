package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
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
import org.neckgeom.order.Condition;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.BlankBent;
import org.neckgeom.strength.NeckBent;
import org.neckgeom.strength.RodTurned;
import org.neckgeom.strength.StiffnessReadings;

/**
 * Readings of stiffness show which operations are done, as those of lengths do. What is done is written down by hand, from what
 * must be there for the reading to be taken; the plan is held to that of the same job with these operations given as done.
 */
class StiffnessProofsTest {

    private static final Neck NECK = Neck.named("Strung")
            .scale(mm(600))
            .fingerboard(Fingerboard.tapered(mm(42), mm(52)).thickness(mm(6)))
            .back(BackProfile.between(mm(16), mm(18)).rounded())
            .frets(20)
            .bodyAtFret(12)
            .channel(Channel.forRod(
                            TrussRod.twoWay(mm(280)).section(mm(6), mm(9)).threadPitch(mm(0.8)))
                    .startingAt(mm(5))
                    .depthClearance(mm(0.3)))
            .strings(StringSet.of(pitch("D3"), pitch("A3"), pitch("D4"), pitch("A4"))
                    .tensions(newton(80)))
            .wood(Wood.BLACK_WALNUT)
            .head(Head.angled(deg(12))
                    .length(mm(170))
                    .width(mm(58))
                    .thickness(mm(15))
                    .scarfed(ScarfCut.inTheHead()))
            .heel(Heel.of(mm(80), mm(54)))
            .neckSet(NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2)).fretPlane(mm(7)));

    private static final Job JOB = Job.of(
            NECK,
            Blank.ofLength(mm(640)).section(mm(58), mm(20)).nutAt(mm(200)),
            Shop.with(Cutter.straight(mm(6))).repeatability(mm(0.02)));

    private static final StiffnessReadings NONE = StiffnessReadings.none();
    private static final StiffnessReadings AT_PITCH = NONE.relief(mm(0.02), mm(0.17));
    private static final StiffnessReadings TURNED = NONE.rod(RodTurned.by(0.25, mm(0.2), mm(0.15)));

    /** The last operation that each reading shows, in the order of this neck. */
    static Stream<Arguments> readings() {
        return Stream.of(
                Arguments.of("strings at pitch", AT_PITCH, Operation.FIT_THE_NUT),
                Arguments.of("rod turned at pitch", TURNED, Operation.FIT_THE_NUT),
                Arguments.of("neck with frets", NONE.neck(weighed()), Operation.FRET_THE_FINGERBOARD),
                Arguments.of("neck, slots open", NONE.neck(weighed().slotsOpen()), Operation.CARVE_THE_NECK),
                Arguments.of("shaft without its board", NONE.shaft(weighed()), Operation.ROUGH_OUT_THE_BACK));
    }

    private static NeckBent weighed() {
        return NeckBent.supported(newton(50), mm(0.1));
    }

    private static Job read(StiffnessReadings readings) {
        return JOB.measured(MeasuredNeck.none().stiffness(readings));
    }

    private static List<String> left(Job job) {
        return job.plan().order().names();
    }

    private static Job doneUpTo(String last) {
        OrderOfWork work = JOB.plan().work();
        List<String> all = left(JOB);
        for (String name : all.subList(0, all.indexOf(last) + 1)) {
            work = work.done(name);
        }
        return JOB.order(work);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("readings")
    void reading_showsWhatIsDone(String what, StiffnessReadings readings, String last) {
        Job read = read(readings);
        Job given = doneUpTo(last);

        assertThat(left(read)).as(what).isEqualTo(left(given));
        assertThat(read.plan().repairs()).isEmpty();
        assertThat(read.plan().check(CheckCode.READINGS_AGREE).orElseThrow().outcome())
                .isEqualTo(Outcome.OK);
        assertThat(read.plan().check(CheckCode.READINGS_AGREE).orElseThrow().found())
                .isEqualTo("1 reading");
        for (SectionCode section :
                List.of(SectionCode.CHANNEL, SectionCode.HEAD, SectionCode.BACK, SectionCode.SCARF)) {
            assertThat(read.plan().section(section).map(PlanSection::toString))
                    .isEqualTo(given.plan().section(section).map(PlanSection::toString));
        }
        assertThat(read.plan().cautions()).isEqualTo(given.plan().cautions());
    }

    /** A strung neck has its set-up left to do, with much of it still unread: at the bench no trial cut is asked for. */
    @Test
    void strungNeck_isBeingSetUp() {
        for (StiffnessReadings strung : List.of(AT_PITCH, TURNED)) {
            Job job = read(strung);
            BenchSession session = BenchSession.of(job);

            assertThat(left(job)).containsExactly(Operation.SET_UP);
            assertThat(session.operation().map(Operation::name)).contains(Operation.SET_UP);
            assertThat(session.before()).isEmpty();
            assertThat(session.questions()).isEmpty();
            assertThat(session.enter("done").session().operation()).isEqualTo(Optional.empty());
        }
        MeasuredNeck depth = MeasuredNeck.none()
                .read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(9.3), mm(0.02)))
                .backDepth(mm(100), Estimate.of(mm(16.5), mm(0.05)));
        assertThat(BenchSession.of(JOB.measured(depth.stiffness(AT_PITCH)))
                        .operation()
                        .map(Operation::name))
                .as("its channel and its back, both half read, are not at hand any more")
                .contains(Operation.SET_UP);
    }

    /** Under a glued board nothing is read, widened or tried any more, and a back that was not read has no depths to see. */
    @Test
    void strungNeck_isAskedForNothingUnderItsBoard() {
        MeasuredNeck slot = MeasuredNeck.none()
                .read(NeckFeature.SLOT_OFFSET, Estimate.of(mm(0.08), mm(0.04)))
                .read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(9.03), mm(0.02)))
                .read(NeckFeature.CHANNEL_WIDTH, Estimate.of(mm(6.2), mm(0.02)));
        for (MeasuredNeck read : List.of(MeasuredNeck.none(), slot)) {
            Plan plan = JOB.measured(read.stiffness(AT_PITCH)).plan();

            assertThat(plan.checks())
                    .filteredOn(check -> check.name().startsWith("channel "))
                    .hasSizeBetween(2, 3)
                    .allSatisfy(check ->
                            assertThat(check.todo()).isEqualTo("The board is on over it. Go on with what is left."));
            assertThat(plan.section(SectionCode.BACK).orElseThrow().toString())
                    .contains("carved; no depth of it has been read");
        }
        assertThat(JOB.measured(slot).plan().checks())
                .as("before the board is on")
                .extracting(PlanCheck::todo)
                .contains(
                        "Not sure: read again, or read better.",
                        "Not sure: try the rod in it, or read better.",
                        "Try the rod in it, then lay it in.");
        MeasuredNeck shallow = MeasuredNeck.none().read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(8.5), mm(0.02)));
        assertThat(JOB.measured(shallow.stiffness(AT_PITCH))
                        .plan()
                        .check(CheckCode.CHANNEL_DEEP_ENOUGH)
                        .orElseThrow()
                        .todo())
                .startsWith("The board is on over a channel that is 0.50 mm too small");
    }

    /** What the maker does of their own between nut and set-up is done before the strings are on. */
    @Test
    void ownOperations_beforeTheSetUpAreDone() {
        OrderOfWork own = JOB.plan()
                .work()
                .with(Operation.named("dye the edges").needs(Condition.NUT))
                .keep("dye the edges")
                .before(Operation.SET_UP);
        MeasuredNeck strung = MeasuredNeck.none().stiffness(AT_PITCH);

        assertThat(left(JOB.order(own))).endsWith("dye the edges", Operation.SET_UP);
        assertThat(left(JOB.order(own).measured(strung))).containsExactly(Operation.SET_UP);
        assertThat(left(JOB.order(JOB.plan().work().done(Operation.SET_UP)).measured(strung)))
                .as("the nut and what comes before it are done where the set-up is")
                .doesNotContain(Operation.FIT_THE_NUT, Operation.CUT_ROD_CHANNEL);
    }

    /** A blank shows nothing but that its strips, where it has some, are glued up. */
    @Test
    void blanks_showNothingDone_butTheirStrips() {
        StiffnessReadings bent =
                NONE.neckBlank(BlankBent.over(mm(600)).section(mm(58), mm(20)).fall(newton(49), mm(0.5)));

        assertThat(left(read(bent))).isEqualTo(left(JOB));
        assertThat(bent.operations()).containsExactly(Operation.GLUE_UP_THE_STRIPS);
        assertThat(NONE.operations()).isEmpty();
        assertThat(NONE.boardBlank(
                                BlankBent.over(mm(400)).section(mm(60), mm(7)).fall(newton(20), mm(1.1)))
                        .operations())
                .isEmpty();
    }

    /** A rod turned is a reading like the others. */
    @Test
    void rodTurned_isCounted() {
        MeasuredNeck turned = MeasuredNeck.none().stiffness(TURNED);

        assertThat(turned.isEmpty()).isFalse();
        assertThat(turned).hasToString("Read on the neck: 1 reading");
        assertThat(JOB.measured(turned).toString()).contains("1 reading on the neck");
    }

    /** What a check found good and is done is no task: on the strung neck nothing is sawn, planed, drilled or cut any more. */
    @Test
    void checksOfWhatIsDone_askForNothing() {
        MeasuredNeck depth = MeasuredNeck.none().read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(9.3), mm(0.02)));
        MeasuredNeck pitch = MeasuredNeck.none().stiffness(TURNED);
        Job octave = Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());

        assertThat(next(octave, CheckCode.BLANK_REACHES)).isEqualTo("Square it and mark the nut line.");
        assertThat(next(octave.measured(depth), CheckCode.BLANK_REACHES)).isEqualTo("Nothing: it is done.");
        assertThat(next(octave.measured(depth), CheckCode.WOOD_LEFT)).isEqualTo("Carve to the drawing.");
        assertThat(Stream.of(octave, JOB).flatMap(job -> job.measured(pitch).plan().checks().stream()))
                .filteredOn(check -> check.outcome() == Outcome.OK)
                .hasSizeGreaterThan(8)
                .allSatisfy(check -> assertThat(check.action().toString())
                        .as(check.toString())
                        .doesNotContainPattern("(?i)\\b(square|saw|plane|drill|cut|glue|leave the posts)\\b"));
    }

    private static String next(Job job, CheckCode code) {
        return job.plan().check(code).orElseThrow().action().toString();
    }
}
