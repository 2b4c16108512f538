package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.mmPerMinute;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.rpm;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.page.Necks;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.state.NeckErrors;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Weather;
import org.neckgeom.testing.Approved;
import org.neckgeom.units.LengthStyle;

/** Whole plans of sample necks: what they say, hand back and refuse. */
class JobTest {

    private static final Neck OCTAVE = SampleNecks.octaveMandolin();
    private static final Neck SCARFED = Necks.scarfed(OCTAVE);
    private static final Neck SET = OCTAVE.neckSet(Necks.octaveSet());
    private static final Weather DRY = Weather.from(percent(45), celsius(21)).to(percent(30), celsius(21));

    private static final Job PLAIN = Job.of(OCTAVE, SampleBench.octaveBlank(), SampleBench.metricShop());

    private static Job asGiven() {
        return of(Necks.octave(), SampleBench.octaveBlank())
                .trialCut(SampleBench.offCentre())
                .fenceMoved(FenceMove.away(mm(0.7)))
                .trialCut(SampleBench.nearlyCentred())
                .weather(DRY)
                .relief(mm(0.2))
                .limits(NeckLimits.withDefaults()
                        .bridgeOffset(mm(1))
                        .slotOffset(mm(0.1))
                        .floorThickness(mm(4)))
                .workmanship(Workmanship.withDefaults().cutting(ErrorDistribution.normal(mm(0.1))));
    }

    private static Job inInches() {
        return Job.of(
                        SampleNecks.shortScaleBass(),
                        SampleBench.bassBlank(),
                        SampleBench.inchShop()
                                .fence(Fence.pivoting(inch(24)).fromPivot(inch(12), inch(18)))
                                .feed(mmPerMinute(1500), rpm(16_000)))
                .trialCut(TrialCut.walls(inch(1.2), inch(1.3)));
    }

    private static Job readAndConflicting() {
        return asGiven()
                .measured(MeasuredNeck.none()
                        .read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(9.05), mm(0.02)))
                        .backDepth(mm(100), Estimate.of(mm(14.6), mm(0.05))))
                .order(OrderOfWork.forNeck().keep("glue wings").before("cut rod channel"));
    }

    private static Job toStopFor() {
        return Job.of(
                        OCTAVE.back(BackProfile.between(mm(11), mm(11.5))),
                        Blank.ofLength(mm(640)).section(mm(61), mm(20)),
                        Shop.with(Cutter.straight(mm(5)).flutes(2, mm(6))).passes(mm(4), mm(0)))
                .trialCut(
                        TrialCut.walls(mm(27), mm(28)).slot(mm(6)).piece(mm(63)).repeatability(mm(0.02)));
    }

    /** Plans of every state: nothing given, much given, inches, read on the neck, to stop for. */
    static List<Job> samples() {
        return List.of(PLAIN, asGiven(), inInches(), readAndConflicting(), toStopFor());
    }

    private static String whole(Job plan) {
        Stream<Object> order = Stream.of(
                plan.plan().work(),
                plan.plan().work().plan(),
                plan.plan().work().plan().conflicts());
        return Stream.of(
                        Stream.of(plan, plan.plan().status().toString(), plan.measured()),
                        plan.plan().checks().stream(),
                        plan.plan().sections().stream(),
                        plan.plan().budgets().stream(),
                        plan.steps().stream(),
                        plan.plan().work().plan().steps().stream(),
                        order)
                .flatMap(all -> all)
                .map(Object::toString)
                .collect(Collectors.joining("\n\n"));
    }

    /** What an accessor answers is what the check of the same thing holds, and the status counts every check. */
    @ParameterizedTest
    @MethodSource("samples")
    void answers_agreeWithTheirChecks(Job job) {
        Plan plan = job.plan();
        PlanStatus status = plan.status();
        PlanCheck wood = plan.check(CheckCode.WOOD_LEFT).orElseThrow();
        PlanCheck centred = plan.check(CheckCode.CHANNEL_CENTRED).orElseThrow();

        assertThat(status.ok() + status.open() + status.stop())
                .isEqualTo(plan.checks().size());
        assertThat(status.outcome())
                .isEqualTo(plan.checks().stream()
                        .map(PlanCheck::outcome)
                        .max(Outcome::compareTo)
                        .orElseThrow());
        assertThat(wood.finding().value().orElseThrow().libraryValue())
                .isEqualTo(plan.floorThickness().least().woodMm());
        if (centred.finding() instanceof Finding.Decided decided) {
            assertThat(decided.by()).isEqualTo(plan.slot());
            assertThat(centred.outcome() == Outcome.OK).isEqualTo(plan.slot().mayCut());
        }
        for (BudgetCode code : BudgetCode.values()) {
            assertThat(plan.budget(code))
                    .isEqualTo(plan.budgets().get(List.of(BudgetCode.values()).indexOf(code)));
        }
        if (job.measured().isEmpty()) {
            NeckErrors usual = NeckErrors.of(job.neck());
            NeckErrors errors = job.steps().isEmpty()
                    ? usual.with(plan.workmanship())
                    : usual.with(job.workmanship()).slotSet(plan.slotPlace(), job.blank());
            assertThat(plan.state()).isEqualTo(errors.state());
            assertThat(plan.known(BudgetCode.STRING_LINE).of()).isEqualTo(errors.stringLine());
            assertThat(plan.known(BudgetCode.PROJECTION_HEIGHT).of()).isEqualTo(errors.projection());
        }
    }

    /** Limits of common practice, as {@link NeckLimits} states them: 0.5 mm is no 20 thou because the plan is printed in inches. */
    @ParameterizedTest
    @MethodSource("samples")
    void limits_areThoseOfTheNeckHoweverItIsPrinted(Job job) {
        for (BudgetCode code : BudgetCode.values()) {
            double asDesigned = job.plan().requirement(code).limits().libraryUpper();
            for (LengthStyle style : LengthStyle.values()) {
                assertThat(job.printIn(style).plan().requirement(code).limits().libraryUpper())
                        .isCloseTo(asDesigned, within(1e-12));
            }
        }
        Plan inInches = PLAIN.printIn(LengthStyle.DECIMAL_INCHES).plan();
        assertThat(Stream.of(BudgetCode.values())
                        .map(code -> inInches.requirement(code).limits().libraryUpper()))
                .usingElementComparator(Comparator.comparingLong(mm -> Math.round(mm * 1e9)))
                .containsExactly(1.0, 0.3, 0.2, 0.5, 0.5);
    }

    @Test
    void texts_areTheApprovedOnes() {
        Approved.hold(
                "plan",
                Map.of(
                        "plain.txt", whole(PLAIN),
                        "given.txt", whole(asGiven()),
                        "inches.txt", whole(inInches()),
                        "read.txt", whole(readAndConflicting()),
                        "stop.txt", whole(toStopFor())));
    }

    @Test
    void parts_areHandedBackAsTold() {
        Job plan = asGiven();

        assertThat(plan.neck()).isEqualTo(Necks.octave());
        assertThat(plan.blank()).isEqualTo(SampleBench.octaveBlank());
        assertThat(plan.shop()).isEqualTo(SampleBench.metricShop());
        assertThat(plan.plan().scarf())
                .contains(ScarfJoint.inTheHead(Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8))));
        assertThat(plan.plan().neckSet())
                .contains(BackSet.of(
                        Scale.of(mm(560)),
                        14,
                        NeckSet.saddle(mm(15.2))
                                .atNut(mm(0.4))
                                .action(mm(2.0))
                                .fretPlane(mm(7.1))
                                .compensation(mm(2.2))));
        assertThat(plan.weather()).isEqualTo(DRY);
        assertThat(plan.relief()).isEqualTo(mm(0.2));
        assertThat(plan.bridgeLimit()).isEqualTo(mm(1));
        assertThat(plan.slotLimit()).isEqualTo(mm(0.1));
        assertThat(plan.floorLimit()).isEqualTo(mm(4));
        assertThat(plan.workmanship().cutting()).isEqualTo(ErrorDistribution.normal(mm(0.1)));
        assertThat(plan.steps()).hasSize(3);
        assertThat(plan.plan().cautions().get(0).code()).isEqualTo("MACHINE_FIRST");
        assertThat(PLAIN.plan().scarf()).isEmpty();
        assertThat(PLAIN.plan().neckSet()).isEmpty();
        assertThat(PLAIN.steps()).isEmpty();
    }

    @Test
    void plans_areEqualWhenTheyWereToldTheSame() {
        List<Job> unlike = List.of(
                PLAIN,
                asGiven(),
                PLAIN.relief(mm(0.21)),
                of(SCARFED, SampleBench.octaveBlank()),
                of(SET, SampleBench.octaveBlank()),
                PLAIN.weather(DRY),
                PLAIN.trialCut(SampleBench.offCentre()),
                PLAIN.limits(NeckLimits.withDefaults().slotOffset(mm(0.123))),
                inInches(),
                readAndConflicting());

        assertThat(unlike).doesNotHaveDuplicates();
        assertThat(unlike.stream().map(Object::hashCode)).doesNotHaveDuplicates();
        assertThat(asGiven()).isEqualTo(asGiven()).hasSameHashCodeAs(asGiven()).isNotEqualTo("a plan");
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    private static Job of(Neck design, Blank blank) {
        return Job.of(design, blank, SampleBench.metricShop());
    }

    /** Widths and depths of the sample: 34 to 46 mm wide, a channel 6 mm wide. */
    @Test
    void of_refusesABlankTheNeckOrItsChannelDoNotFit() {
        Channel channel = OCTAVE.channel().orElseThrow();
        double joint = OCTAVE.bodyJointMm();
        double widest = 2 * OCTAVE.halfWidthAtMm(joint);

        assertThat(of(OCTAVE, Blank.ofLength(mm(640)).section(mm(widest), mm(20)))
                        .blank()
                        .widthMm())
                .isEqualTo(widest);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(OCTAVE, Blank.ofLength(mm(640)).section(mm(widest - 0.01), mm(20))))
                .withMessageContaining("blank.width must be")
                .withMessageContaining("or more: the fingerboard at its widest comes from it");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(OCTAVE, Blank.ofLength(mm(640)).section(mm(61), mm(10))))
                .withMessageContaining("blank.thickness must be");
        // A head that is scarfed on may come from another board.
        assertThat(of(
                                SCARFED,
                                Blank.ofLength(mm(Math.max(joint, channel.endMm())))
                                        .section(mm(61), mm(20)))
                        .plan()
                        .status()
                        .toString())
                .startsWith("Plan of");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(OCTAVE, Blank.ofLength(mm(joint - 0.01)).section(mm(61), mm(20))))
                .withMessageContaining("blank.length must be");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(
                        OCTAVE, Blank.ofLength(mm(640)).section(mm(61), mm(20)).nutAt(mm(640 - joint + 0.01))))
                .withMessageContaining("blank.length must be");
    }

    /** By hand: from 100 m at the nut to 0.4 m at the last fret is less than nothing a fret past it, where the board ends. */
    @Test
    void of_refusesABoardWithoutACrownAtItsEnd() {
        Fingerboard steep = Fingerboard.tapered(mm(34), mm(44))
                .farWidthAtFret(OCTAVE.frets())
                .thickness(mm(6))
                .radius(mm(100_000), mm(400));

        refused(
                () -> of(OCTAVE.fingerboard(steep), SampleBench.octaveBlank()),
                "the crown's radius must be more than half the width at 393.511 mm from the nut, but was -2170.403 mm");
    }

    @Test
    void of_refusesAChannelThatLeavesTheBlank() {
        Channel early =
                Channel.forRod(TrussRod.twoWay(mm(280)).section(mm(6), mm(9))).startingAt(mm(-5));

        assertThat(of(OCTAVE.channel(early), SampleBench.octaveBlank().nutAt(mm(5)))
                        .steps())
                .isEmpty();
        refused(
                () -> of(OCTAVE.channel(early), SampleBench.octaveBlank().nutAt(mm(4))),
                "channel.starts at must be -4 mm or more, where the blank begins, but was -5 mm");
        refused(
                () -> Job.of(
                        OCTAVE.channel(early),
                        SampleBench.octaveBlank().nutAt(mm(5)),
                        Shop.with(Cutter.straight(mm(6.1)))),
                "shop.cutter.diameter must be 6 mm or less, the channel's width: a thinner cutter, or a channel with 0.1 mm of"
                        + " side clearance, but was 6.1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(
                        Neck.named("bare")
                                .scale(mm(560))
                                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                                .back(BackProfile.between(mm(14), mm(16))),
                        SampleBench.octaveBlank()))
                .withMessageContaining("rod is missing; give ");
        refused(
                () -> PLAIN.fenceMoved(FenceMove.toward(mm(1))),
                "a fence move must follow a trial cut, but fence moved 1 mm toward the cutter came first");
    }
}
