package org.neckgeom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.Propagation;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.FlippedPass;
import org.neckgeom.fault.Fault;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.page.Document;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.MeasuredNeck;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.search.Search;
import org.neckgeom.search.SearchResult;
import org.neckgeom.shape.Frame;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TestPiece;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.state.DatumTree;
import org.neckgeom.state.LogEntry;
import org.neckgeom.state.ShopLog;
import org.neckgeom.state.ShopStep;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.BlankBent;
import org.neckgeom.strength.BlankTapped;
import org.neckgeom.sweep.Axis;
import org.neckgeom.sweep.Sweep;
import org.neckgeom.sweep.SweepProgress;
import org.neckgeom.testing.BadInput;
import org.neckgeom.testing.Grown;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** Bad input to every public factory and step of this module: answered with finite numbers or refused in words. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BadInputTest {

    private static final int MIXED = 40;
    private static final Duration HANGS = Duration.ofMinutes(3);
    private static final List<String> TEXTS = List.of("thing", "channel", "blank", "plane the head");

    private final Grown grown = Grown.from(types().toList(), seeds(), formulas(), TEXTS);
    private final BadInput badInput = new BadInput(grown, MIXED);

    static Stream<Class<?>> types() {
        // What is thrown is no value.
        return PublicTypes.beside(Job.class).stream().filter(type -> !Throwable.class.isAssignableFrom(type));
    }

    /** What a maker has, from which the rest grows. */
    private static List<Object> seeds() {
        TrussRod rod = TrussRod.twoWay(mm(300)).section(mm(6), mm(9));
        StringSet strings = StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"))
                .doubled()
                .tensions(newton(95), newton(95), newton(90), newton(90));
        Heel heel = Heel.of(mm(78), mm(54)).capWidth(mm(20));
        NeckSet heights = NeckSet.saddle(mm(15.2)).atNut(mm(0.4)).action(mm(2)).fretPlane(mm(7.1));
        Neck neck = Neck.named("bench")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46))
                        .radius(mm(400))
                        .fallAway(mm(0.3))
                        .wood(Wood.INDIAN_ROSEWOOD))
                .back(BackProfile.between(mm(14.5), mm(16.5)))
                .bodyAtFret(14)
                .wood(Wood.BLACK_WALNUT)
                .channel(Channel.forRod(rod).startingAt(mm(3)))
                .head(Head.angled(deg(13)).width(mm(76)).length(mm(180)).thickness(mm(15)))
                .heel(heel)
                .neckSet(heights)
                .strings(strings);
        Neck bare = Neck.named("bare")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                .back(BackProfile.between(mm(14.5), mm(16.5)));
        Sweep<Neck> depths = Sweep.of(neck)
                .over(
                        "depth",
                        Axis.steps(mm(13), mm(16), mm(1)),
                        (design, depth) -> design.back(BackProfile.between(depth, depth)));
        SearchResult<Neck> shallowest = Search.of(neck)
                .over(
                        "depth",
                        Axis.steps(mm(12), mm(16), mm(1)),
                        (design, depth) -> design.back(BackProfile.between(depth, mm(16))))
                .least("depth", design -> mm(design.back().firstDepthMm()))
                .within(
                        "wood left",
                        design -> FloorThickness.under(design).least().wood(),
                        Limits.atLeast(mm(3)))
                .result();
        return List.of(
                shallowest,
                shallowest.best().orElseThrow(),
                shallowest.prices().get(0),
                shallowest.best().orElseThrow().margins().get(0),
                neck,
                Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop())
                        .measured(MeasuredNeck.none().read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(10), mm(0.02))))
                        .plan()
                        .repairs()
                        .get(0),
                BenchSession.of(Job.of(
                                SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop()))
                        .enter(mm(27.4))
                        .session()
                        .enter(mm(27.6))
                        .session()
                        .enter(mm(6))
                        .session()
                        .enter(mm(61))
                        .changes()
                        .get(0),
                BenchCard.of(
                        Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop()),
                        "cut rod channel"),
                ScarfJoint.inTheShaft(Scarf.of(deg(13), mm(20), mm(15))).board(mm(560), mm(185)),
                ScarfJoint.inTheShaft(Scarf.of(deg(13), mm(20), mm(15)))
                        .board(mm(560), mm(185))
                        .shaftCut(),
                NeckSolid.of(neck.fingerboard(neck.fingerboard().fretHeight(mm(1)))
                        .strings(StringSet.of(pitch("G2"), pitch("E4"))
                                .diameters(mm(1), mm(0.4))
                                .across(Across.of(mm(3), mm(44))))
                        .head(neck.head()
                                .orElseThrow()
                                .posts(
                                        TunerPost.at(mm(60)).aside(mm(-20)),
                                        TunerPost.at(mm(60)).aside(mm(20))))),
                depths,
                depths.result(1, design -> design.back().toString()),
                Sweep.of(bare).result(0, Neck::back),
                depths.keeping(design -> design.back().depthAtMm(0, design.scale()) > 14),
                bare,
                OrderOfWork.forNeck().keep("glue wings"),
                neck.head(Head.flat()),
                heel,
                heights,
                strings,
                rod,
                Bar.carbon(mm(300)).section(mm(6), mm(9)),
                neck.channel(),
                neck.head(),
                Scale.of(mm(560)),
                Scale.of(mm(580)),
                End.HEAD,
                Wood.BLACK_WALNUT,
                Cutter.straight(mm(6)),
                Fence.onePiece(mm(600)),
                Fence.pivoting(mm(600)).fromPivot(mm(300), mm(500)),
                FeelerSet.metric20(),
                FeelerSet.inch26(),
                TestPiece.copied(mm(0.03)),
                TestPiece.measured(Estimate.of(mm(61), mm(0.03))),
                TrialCut.walls(mm(29.84), mm(31.26)).slot(mm(6)).piece(mm(67.1)).repeatability(mm(0.02)),
                TrialCut.walls(inch(1.2), inch(1.21)),
                Shop.with(Cutter.straight(mm(6))).fence(Fence.onePiece(mm(600))),
                Blank.ofLength(mm(840)).section(mm(62), mm(25)).nutAt(mm(220)),
                Estimate.of(mm(61), mm(0.03)),
                Estimate.of(deg(1), deg(0.03)),
                Limits.within(mm(0.1)),
                Limits.within(deg(0.1)),
                ErrorDistribution.normal(mm(0.1)),
                ErrorDistribution.rectangular(deg(0.1)),
                LengthStyle.MILLIMETRES,
                Document.DESIGN,
                ShopUnit.MILLIMETRE,
                ShopUnit.DEGREE,
                Frame.NECK,
                line(),
                ShopLog.of(List.of(line()))
                        .learnt(
                                ShopStep.LOCATING,
                                Workmanship.withDefaults(),
                                BenchUncertainty.withDefaults(),
                                line().date()),
                BlankBent.over(mm(600)).section(mm(70), mm(22)).fall(newton(49), mm(0.28)),
                BlankTapped.of(mm(700)).section(mm(70), mm(25)).rings(newton(8.4), ShopUnits.hertz(219.5)),
                Budget.named("slot")
                        .with("fence", ErrorDistribution.rectangular(mm(0.05)))
                        .with("reading", ErrorDistribution.normal(mm(0.02))),
                Budget.named("slot")
                        .with("fence", ErrorDistribution.rectangular(mm(0.05)))
                        .allowance("fence", Limits.within(mm(0.2)), percent(95)),
                FlippedPass.widened(mm(6), mm(6.1)).offset(),
                DatumTree.from("channel", ErrorDistribution.normal(mm(0.05))),
                Propagation.to("sum", ShopUnit.MILLIMETRE)
                        .input("one", mm(1), ErrorDistribution.normal(mm(0.1)))
                        .through(x -> 2 * x[0]));
    }

    private static LogEntry line() {
        return LogEntry.on("2026-03-02", ShopStep.LOCATING).read(mm(0.04));
    }

    /** Formulas of a maker, the last of each with no answer. */
    private static Map<Class<?>, List<Object>> formulas() {
        Propagation.Formula twice = x -> 2 * x[0];
        Propagation.Formula nothing = x -> Double.NaN;
        Propagation.DualFormula square = x -> x[0].squared();
        Propagation.DualFormula root = x -> x[0].negated().sqrt();
        BiFunction<Object, Object, Object> same = (design, value) -> design;
        BiFunction<Object, Object, Object> noDesign = (design, value) -> null;
        Function<Object, Object> words = Object::toString;
        Function<Object, Object> noAnswer = design -> null;
        Predicate<Object> all = design -> true;
        Predicate<Object> none = design -> false;
        SweepProgress on = (done, size) -> true;
        return Map.of(
                Propagation.Formula.class,
                List.of(twice, nothing),
                Propagation.DualFormula.class,
                List.of(square, root),
                BiFunction.class,
                List.of(same, noDesign),
                Function.class,
                List.of(words, noAnswer),
                Predicate.class,
                List.of(all, none),
                SweepProgress.class,
                List.of(on),
                Fault.class,
                List.of(new Fault("neck angle", "no-angle", "no angle brings it there", "")));
    }

    @AfterAll
    void printTheCount() {
        System.out.println("bad input to the core: " + badInput.count());
    }

    @ParameterizedTest
    @MethodSource("types")
    void badInput_isRefusedInWords(Class<?> type) {
        int before = badInput.calls();

        List<String> faults = assertTimeoutPreemptively(HANGS, () -> badInput.faults(type), badInput::now);

        assertThat(faults.stream().limit(25))
                .as("of %d calls", badInput.calls() - before)
                .isEmpty();
    }

    @Test
    void types_areThoseUsersSee() {
        assertThat(types()).contains(Job.class).hasSizeGreaterThan(130);
    }

    @Test
    void values_areGrownOfEveryTypeThatHasSome() {
        assertThat(types().filter(type -> !type.isInterface() && !type.isEnum() && !PublicTypes.isStaticOnly(type)))
                .allSatisfy(type -> assertThat(grown.of(type)).as("%s", type).isNotEmpty());
    }
}
