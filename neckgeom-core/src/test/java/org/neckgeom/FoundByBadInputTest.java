package org.neckgeom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.Correlation;
import org.neckgeom.budget.Propagation;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.Conflicts;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.MeasuredNeck;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.solid.BackCurve;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.CuttingList;
import org.neckgeom.state.DatumTree;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Relief;
import org.neckgeom.sweep.Axis;
import org.neckgeom.sweep.Sweep;
import org.neckgeom.template.Template;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** What bad input has found, each in a sentence of its own, so that it stays mended when the search looks at other places. */
class FoundByBadInputTest {

    private static void refused(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isExactlyInstanceOf(Refusal.class).hasMessage(message);
    }

    private static void missing(ThrowingCallable call, String name) {
        assertThatThrownBy(call).isExactlyInstanceOf(NullPointerException.class).hasMessage(name);
    }

    @Test
    void counts_thatWouldFillTheMemoryAreRefused() {
        CuttingList list = CuttingList.from(Blank.ofLength(mm(900)).section(mm(70), mm(20)));

        refused(
                () -> list.pieces(Integer.MAX_VALUE, "wing", mm(80)),
                "count of pieces must be 1 to 1000, but was 2147483647");
        refused(
                () -> BackCurve.of(mm(40), mm(15)).outline(mm(1e-9)),
                "tolerance must be from 0.0001 to 10 mm, but was 1E-9 mm");
    }

    @Test
    void closure_takesNoReadingInPowersOfTenForDigitsSwapped() {
        TrialCut cut = TrialCut.walls(mm(29.84), mm(31.26)).slot(mm(1e-12)).piece(mm(67.1));

        assertThat(Centring.of(cut).closure().toString())
                .startsWith("readings do not close")
                .doesNotContain("E");
    }

    @Test
    void registration_refusesAFeatureThatWouldStandOnItself() {
        refused(
                () -> DatumTree.from("blank", ErrorDistribution.normal(mm(0.1))),
                "features must have different names, but \"blank\" was placed twice across");
    }

    @Test
    void missingArguments_areNamed() {
        Budget<?> budget = Budget.named("slot").with("fence", ErrorDistribution.normal(mm(0.1)));

        missing(() -> Centring.of(null), "trial");
        missing(() -> RodSlot.of(null), "channel");
        missing(() -> Template.of((Neck) null), "design");
        missing(() -> Operation.named(null), "an operation's name");
        missing(() -> Conflicts.of(java.util.Collections.singletonList(null)), "conflict");
        missing(() -> PlanSection.of("frets", "frets", null, List.of(), LengthStyle.MILLIMETRES), "row");
        missing(() -> budget.yield(null), "limits");
        missing(() -> budget.with(null), "component");
        missing(() -> budget.correlated((Correlation[]) null), "correlations");
        missing(() -> budget.correlated((Correlation) null), "correlation");
        missing(() -> MeasuredNeck.none().read(null, Estimate.of(mm(9), mm(0.1))), "feature");
        missing(() -> MeasuredNeck.none().read(NeckFeature.CHANNEL_DEPTH, null), "channel depth");
        missing(() -> MeasuredNeck.none().scarfAngle(null), "scarf angle");
        missing(() -> MeasuredNeck.none().backDepth(mm(20), null), "back depth");
    }

    @Test
    void missingPartsOfASweep_areNamed() {
        Sweep<String> sweep = Sweep.of("neck");

        missing(() -> Axis.of(null), "values");
        missing(() -> Sweep.of(null), "design");
        missing(() -> Sweep.ofEach(null), "designs");
        missing(() -> Sweep.ofEach(Arrays.asList("neck", null)), "design");
        missing(() -> sweep.overEach("wood", null, (design, wood) -> design), "choices");
        missing(() -> sweep.overEach("wood", Arrays.asList("maple", null), (design, wood) -> design), "choice");
        missing(() -> sweep.keeping(null), "will");
        missing(() -> sweep.result(0, null), "question");
        missing(
                () -> sweep.overEach("wood", List.of("maple"), (design, wood) -> null)
                        .result(0, String::length),
                "changed design");
    }

    @Test
    void whatHasNotBeenTold_isNoNumber() {
        Neck neck = Neck.named("bench")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                .back(BackProfile.between(mm(14.5), mm(16.5)));
        Neck turned = neck.back(neck.back().heelTransition(HeelTransition.from(mm(300), mm(25))));

        assertThat(BackShape.of(neck).heelStartMm()).isEmpty();
        assertThat(BackShape.of(turned).heelStartMm()).hasValue(300);
        assertThat(neck.fingerboard().fretHeight()).isEmpty();
        assertThat(neck.fingerboard().fretHeight(mm(1.1)).fretHeight()).contains(mm(1.1));
        assertThat(Heel.of(mm(78), mm(54)).blockLength()).isEmpty();
        assertThat(Heel.of(mm(78), mm(54)).blockLength(mm(62)).blockLength()).contains(mm(62));
        Blank blank = Blank.ofLength(mm(640)).section(mm(60), mm(25));
        assertThat(blank.endAllowanceMm()).isZero();
        assertThat(blank.hasSpare()).isFalse();
        assertThat(blank.planing(mm(0)).hasSpare()).isTrue();
    }

    @Test
    void correlations_areOfNamesThatFitARow() {
        String fence = "how far the fence creeps while it is clamped, both screws";
        String stop = "how far the stop creeps while it is clamped, both screws";
        Budget<?> budget = Budget.named("slot")
                .with(fence, ErrorDistribution.normal(mm(0.1)))
                .with(stop, ErrorDistribution.normal(mm(0.1)));

        refused(
                () -> new Correlation("x".repeat(101), "stop", 0.5),
                "a component's name must be 1 to 100 characters on one line, but was \"" + "x".repeat(100) + "...\"");
        refused(
                () -> new Correlation("fence", " ", 0.5),
                "a component's name must be 1 to 100 characters on one line, but was \" \"");
        // u^2 = 0.1^2 + 0.1^2 + 2 * 0.5 * 0.1 * 0.1, JCGM 100:2008, 5.2.2
        Budget<?> correlated = budget.correlated(new Correlation(fence, stop, 0.5));
        assertThat(correlated.rootSumSquare().libraryUncertainty()).isCloseTo(Math.sqrt(0.03), within(1e-12));
        assertThat(correlated.components().get(0).name()).isEqualTo(fence);
    }

    @Test
    void textsOfWhatDoesNotGoTogether_sayWhy() {
        Neck bare = Neck.named("bare")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                .back(BackProfile.between(mm(14.5), mm(16.5)));
        assertThat(Relief.of(bare))
                .hasToString(
                        "Relief of bare cannot be computed: \"bare\" needs its fingerboard's wood for this, but has none:"
                                + " add .wood(...) to the fingerboard");
        assertThat(Propagation.to("sum", ShopUnit.MILLIMETRE)
                        .input("one", mm(1), ErrorDistribution.normal(mm(0.1)))
                        .through(x -> Double.NaN)
                        .toString())
                .contains("first order  none: sum must be a finite number, but was NaN mm");
    }

    @Test
    void aNutLedgeOfNothing_isNoNegativeNought() {
        assertThat(ScarfJoint.inTheHead(Scarf.of(deg(13), mm(20), mm(15)).nutLedge(mm(1e-9)))
                        .toString())
                .doesNotContain("-0 mm");
    }

    @Test
    void simulations_refuseInTheKindsThatAreMeant() {
        Budget<?> budget = Budget.named("slot").with("fence", ErrorDistribution.normal(mm(0.1)));

        refused(
                () -> budget.simulate(7).trials(100).yield(),
                "the trials of slot need limits for this, but had none: add .withLimits(...)");
        refused(
                () -> budget.simulate(7).withoutQuantiles().trials(100).interval(percent(95)),
                "the trials of slot need their values for this, but kept none: leave out .withoutQuantiles()");
        assertThatThrownBy(() -> Budget.named("empty").shares().largest())
                .isExactlyInstanceOf(NoAnswer.class)
                .hasMessage("empty has no largest share, for it has no component yet");
    }

    @Test
    void factorsPastAnyUse_areRefused() {
        refused(
                () -> Budget.named("slot").worstCase(Double.MAX_VALUE),
                "normal factor must be more than 0 and no more than 1000, but was 1.79769313486E+308");
    }

    @Test
    void names_fitARow() {
        refused(
                () -> Budget.named("x".repeat(101)),
                "a title must be 1 to 100 characters on one line, but was \"" + "x".repeat(100) + "...\"");
        refused(
                () -> Budget.named("slot").with("two\nlines", ErrorDistribution.normal(mm(0.1))),
                "a component's name must be 1 to 100 characters on one line, but was \"two\\u000alines\"");
        refused(
                () -> Sweep.of("neck").over("x".repeat(101), Axis.of(List.of(mm(1))), (design, size) -> design),
                "an axis' name must be 1 to 100 characters on one line, but was \"" + "x".repeat(100) + "...\"");
    }
}
