package org.neckgeom.contract;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mmPerMinute;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;
import static org.neckgeom.units.ShopUnits.rpm;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import javax.measure.quantity.Length;
import org.neckgeom.board.BoardShape;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.FretBend;
import org.neckgeom.board.FretTable;
import org.neckgeom.board.GlueClamps;
import org.neckgeom.board.NutSlot;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.board.SideDots;
import org.neckgeom.board.StringOverhang;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.budget.Allocation;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.Correlation;
import org.neckgeom.budget.Dual;
import org.neckgeom.budget.Propagation;
import org.neckgeom.budget.UncertaintyComponent;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.BlankOnFence;
import org.neckgeom.channel.BowedBlank;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.CentringRound;
import org.neckgeom.channel.CentringRounds;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.Closure;
import org.neckgeom.channel.CutterLoad;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.FenceStep;
import org.neckgeom.channel.FlippedPass;
import org.neckgeom.channel.HeadInterference;
import org.neckgeom.channel.JigPlay;
import org.neckgeom.channel.Passes;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.channel.SlotLine;
import org.neckgeom.channel.SlotOffset;
import org.neckgeom.fault.Fault;
import org.neckgeom.head.BreakAngle;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.head.ScarfRoll;
import org.neckgeom.head.ScarfRun;
import org.neckgeom.heel.ActionChange;
import org.neckgeom.heel.BackSet;
import org.neckgeom.heel.HeelBlocks;
import org.neckgeom.heel.HeelFace;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Dome;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.Tenon;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.neck.Volute;
import org.neckgeom.order.AddedError;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderChanges;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.Remedy;
import org.neckgeom.page.Document;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Finding;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.MeasuredNeck;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.plan.Outcome;
import org.neckgeom.search.Search;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TestPiece;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.solid.BackCurve;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.BlankNeeds;
import org.neckgeom.solid.ChannelJig;
import org.neckgeom.solid.CuttingList;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.HeadSolid;
import org.neckgeom.solid.JigCut;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.solid.OnePieceHead;
import org.neckgeom.solid.ToolPath;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.solid.WoodSpreads;
import org.neckgeom.state.DatumTree;
import org.neckgeom.state.JigError;
import org.neckgeom.state.Known;
import org.neckgeom.state.LogEntry;
import org.neckgeom.state.NeckErrors;
import org.neckgeom.state.PossibleReading;
import org.neckgeom.state.Requirement;
import org.neckgeom.state.ShopLog;
import org.neckgeom.state.ShopStep;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.AirInWood;
import org.neckgeom.strength.Balance;
import org.neckgeom.strength.BlankBent;
import org.neckgeom.strength.BlankTapped;
import org.neckgeom.strength.Creep;
import org.neckgeom.strength.NeckBent;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.RodTurned;
import org.neckgeom.strength.Sections;
import org.neckgeom.strength.StiffnessReadings;
import org.neckgeom.strength.StringLoad;
import org.neckgeom.strength.TangBow;
import org.neckgeom.strength.Weather;
import org.neckgeom.sweep.Axis;
import org.neckgeom.sweep.Sweep;
import org.neckgeom.template.Cards;
import org.neckgeom.template.Paper;
import org.neckgeom.template.Template;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** Answers to begin a walk with, all of lengths made by one function: in millimetres, in inches, very small, very large. */
final class CoreSamples {

    private final DoubleFunction<Amount<Length>> mm;

    CoreSamples(DoubleFunction<Amount<Length>> mm) {
        this.mm = mm;
    }

    List<Supplier<Object>> roots() {
        return List.of(
                () -> Centring.of(trial()),
                () -> Centring.of(trial().slot(mm(6.02)).piece(mm(67.1))),
                () -> Centring.of(trial().slot(mm(6.02)).piece(mm(68.1))),
                () -> Closure.of(trial().slot(mm(6.02)).piece(mm(72.1))).cutBy(Cutter.straight(mm(6))),
                () -> BlankOnFence.of(blank(), neck().channel().orElseThrow(), Fence.onePiece(mm(600))),
                () -> CentringRounds.of(trial()).fenceMoved(FenceMove.away(mm(0.7))),
                () -> CentringRound.of(List.of(CentringStep.moved(FenceMove.away(mm(0.7))), CentringStep.read(trial())))
                        .get(0),
                () -> FenceMove.of(SlotOffset.of(mm(0.213), mm(0.003))),
                () -> FenceMove.of(SlotOffset.of(mm(-7.613), mm(0.003))),
                () -> FenceMove.of(SlotOffset.of(mm(0.0001), mm(0.02))),
                () -> SlotOffset.fromWalls(mm(29.84), mm(31.26)).repeatability(mm(0.02)),
                () -> FenceStep.of(Fence.split(mm(600), mm(0.3)).gap(mm(40)), mm(560)),
                () -> HeadInterference.of(Head.angled(deg(13)).length(mm(185)).width(mm(76)), blank(), fence()),
                () -> HeadInterference.of(head().veneer(mm(6), mm(0)), blank(), fence())
                        .rocking(),
                () -> RodSlot.of(channel()),
                () -> RodSlot.of(Channel.forRod(rod()))
                        .passes(Passes.noDeeperThan(mm(2)))
                        .creepCheck(mm(0.05)),
                () -> SlotLine.of(SlotOffset.of(mm(0.1), mm(0.01)), mm(20), SlotOffset.of(mm(0.2), mm(0.01)), mm(300)),
                () -> FlippedPass.widened(mm(6.02), mm(6.31)),
                () -> CutterLoad.of(cutter(), Wood.BLACK_WALNUT, mmPerMinute(1800), rpm(16000), mm(2)),
                () -> Passes.noDeeperThan(mm(3)).lastPass(mm(0.5)).to(mm(9.2)),
                () -> Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8)).nutLedge(mm(5)),
                () -> ScarfJoint.inTheShaft(Scarf.of(deg(13), mm(20), mm(15))).board(mm(560), mm(185)),
                () -> Passes.noDeeperThan(mm(3)).lastPass(mm(0.5)),
                () -> OuterStrings.of(mm(35), mm(52)),
                () -> BreakAngle.over(deg(13), mm(7.5)),
                Workmanship::withDefaults,
                () -> ScarfRun.of(mm(22.2), mm(63.5)),
                () -> ScarfRoll.of(deg(13), deg(0.5)),
                () -> slantedBoard(),
                () -> slantedBoard().headCut(),
                this::set,
                () -> BackSet.of(
                        Scale.of(mm(560)),
                        14,
                        set().heights().dome(Dome.of(mm(9000)).pole(mm(240), mm(30)))),
                () -> ActionChange.of("for a trial", mm(0.1)),
                () -> Dovetail.tapered(deg(3)),
                () -> Tenon.of(mm(78), mm(20)).holes(mm(10), mm(1)).at(mm(30)),
                () -> HeelFace.at(deg(1.02)),
                () -> set().correction(Heel.of(mm(78), mm(54)).capWidth(mm(20)), mm(1), mm(0.5)),
                () -> HeelBlocks.of(mm(85), mm(20)).overstand(mm(2)),
                () -> FretTable.of(Scale.of(mm(560)), 20),
                () -> FannedFrets.of(Scale.of(mm(686)), Scale.of(mm(648)), OuterStrings.of(mm(35), mm(52)), 7),
                () -> BoardShape.of(neck()),
                () -> BoardShape.of(neck()).at(mm(100)),
                () -> FallAway.of(neck().fingerboard(neck().fingerboard().fallAway(mm(0.3))))
                        .orElseThrow(),
                () -> spacing().equalGaps(),
                () -> StringSpacing.diameters(mm(1), mm(0.7)),
                () -> StringOverhang.of(neck(), spacing().equalGaps(), spacing().equalCentres()),
                () -> SideDots.of(neck()),
                () -> NutSlot.of(Scale.of(mm(560)), mm(0.5), mm(2)).fretHeight(mm(1.1)),
                () -> FretBend.of(neck(), 5, mm(220)),
                () -> GlueClamps.of(neck()).each(newton(1500)).caul(mm(25)),
                () -> BowedBlank.of(blank(), mm(0.5)).table(mm(400)).wood(Wood.BLACK_WALNUT),
                () -> Balance.of("head", newton(4), mm(-100)).with("body", newton(20), mm(500)),
                () -> TangBow.of(neck(), mm(0.05)),
                () -> HeadLayout.of(
                        head().posts(TunerPost.at(mm(60)).aside(mm(5)).above(mm(8)))),
                () -> BreakAngle.over(deg(13), mm(7.5)).post(mm(60), mm(8)).sideways(mm(2)),
                () -> BackCurve.of(mm(40), mm(15)).powers(2, 2.5),
                () -> BackShape.of(neck().back(neck().back()
                        .volute(Volute.of(mm(2), mm(30)))
                        .heelTransition(HeelTransition.from(mm(290), mm(30))))),
                () -> OnePieceHead.of(HeadSolid.of(head())),
                () -> solid(),
                () -> solid().nutForces(newton(95)),
                () -> solid().leastThickness(mm(250)),
                () -> NeckSolid.of(neck().heel(Heel.of(mm(70), mm(52))
                                .joint(Tenon.of(mm(60), mm(20))
                                        .holes(mm(8), mm(6))
                                        .at(mm(20)))))
                        .channelEnd()
                        .orElseThrow(),
                () -> solid().meshes(mm(2)).get(0),
                () -> BlankNeeds.of(Blank.ofLength(mm(600))
                        .section(mm(70), mm(20))
                        .endAllowance(mm(10))
                        .edgeAllowance(mm(2))
                        .planing(mm(1))),
                () -> CuttingList.from(blank())
                        .kerf(mm(2))
                        .piece("shaft", mm(400))
                        .piece("head", mm(200)),
                () -> FloorThickness.under(neck()),
                () -> NeckSolid.of(strung()),
                () -> ToolPath.of(channel(), Cutter.straight(mm(6)), Passes.noDeeperThan(mm(3))),
                () -> WoodAt.of(mm(38), mm(-0.2)),
                () -> WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0.1)))
                        .carving(ErrorDistribution.rectangular(mm(0.3))),
                () -> Relief.of(neck()),
                () -> Relief.of(neck()).rodTurnsFor(mm(0.1), mm(0.8)),
                () -> stiffness(),
                () -> Creep.after(180),
                () -> RodTurned.by(0.25, mm(0.3), mm(0.22)),
                () -> AirInWood.of(mm(20), 10),
                () -> Relief.of(neck()).knowing(stiffness()).stiffness(),
                () -> BlankBent.over(mm(600)),
                () -> BlankBent.over(mm(600)).section(mm(70), mm(22)),
                () -> bentBlank(),
                () -> BlankTapped.of(mm(700)),
                () -> BlankTapped.of(mm(700)).section(mm(70), mm(25)),
                () -> tappedBlank(),
                () -> NeckBent.supported(ShopUnits.newton(78.5), mm(0.137)),
                () -> Relief.of(neck()).addingBars(Bar.carbon(mm(280)).section(mm(3), mm(6)), mm(9)),
                () -> Sections.of(neck()),
                () -> StringLoad.of(neck()),
                () -> Weather.from(percent(45), ShopUnit.CELSIUS.of(21)).to(percent(25), ShopUnit.CELSIUS.of(21)),
                () -> budget(),
                () -> Allocation.of(budget(), Limits.within(mm(2)), percent(95)),
                () -> new UncertaintyComponent("fence", "fence", 1, ErrorDistribution.normal(mm(0.05))),
                () -> new Correlation("fence", "stop", 0.5),
                () -> NeckErrors.of(neck()),
                () -> JigPlay.at(mm(20), mm(270)).play(mm(0.05), mm(0.04)),
                () -> ChannelJig.of(JigCut.TAPER, solid()).guided(mm(16), mm(12)),
                () -> JigError.turnedOver("taper jig", mm(100), mm(0.34)),
                () -> NeckErrors.of(neck()).state(),
                () -> NeckErrors.of(neck()).stringLine(),
                () -> NeckErrors.of(neck()).causes().get(0),
                () -> known(),
                () -> known().shares().get(0),
                () -> requirement(),
                () -> NeckErrors.of(neck()).state().chanceOfAll(List.of(requirement())),
                () -> NeckErrors.of(neck())
                        .state()
                        .worthImproving(requirement())
                        .get(0),
                () -> thread(),
                () -> NeckErrors.of(neck())
                        .state()
                        .worthReading(List.of(thread()), List.of(requirement()))
                        .get(0),
                () -> thread().reads(mm(0.2)),
                () -> line(),
                () -> LogEntry.on("2026-03-02", ShopStep.LOCATING),
                () -> ShopLog.of(List.of(line())),
                () -> ShopLog.of(List.of(line()))
                        .learnt(
                                ShopStep.LOCATING,
                                Workmanship.withDefaults(),
                                BenchUncertainty.withDefaults(),
                                line().date()),
                () -> NeckErrors.of(neck())
                        .state()
                        .read(thread().reads(mm(0.2)))
                        .agreement(),
                () -> NeckErrors.of(neck())
                        .state()
                        .read(thread().reads(mm(0.2)))
                        .agreement()
                        .readings()
                        .get(0),
                () -> DatumTree.from("rod channel", ErrorDistribution.normal(mm(0.05)))
                        .place("heel"),
                () -> DatumTree.from("rod channel", ErrorDistribution.normal(mm(0.05)))
                        .place("heel")
                        .on("rod channel"),
                () -> DatumTree.from("rod channel", ErrorDistribution.normal(mm(0.05)))
                        .place("heel")
                        .on("rod channel")
                        .at(mm(30), mm(290)),
                () -> Propagation.to("area's side", ShopUnit.MILLIMETRE)
                        .input("wide", mm(40), ErrorDistribution.normal(mm(0.1)))
                        .through(x -> x[0] / 3),
                () -> Dual.input(1.0 / 3, 1).sin(),
                () -> sweep().over(
                                "rod",
                                Axis.of(List.of(mm(280), mm(300))),
                                (neck, length) ->
                                        neck.trussRod(TrussRod.twoWay(length).section(mm(6), mm(9)))),
                () -> sweep().result(3, neck -> FloorThickness.under(neck).least()),
                () -> sweep().keeping(neck -> FloorThickness.under(neck).least().woodMm() > 3),
                () -> Axis.steps(mm(32), mm(36), mm(0.5)),
                this::search,
                () -> search().result(),
                () -> search().result().best().orElseThrow().margins().get(0),
                () -> search().result().prices().get(0),
                () -> Document.DESIGN,
                this::readings,
                () -> OrderChanges.to(OrderOfWork.forNeck().without("glue wings")),
                () -> OrderOfWork.forNeck().keep("glue wings"),
                () -> OrderOfWork.forNeck().keep("glue wings").before("cut rod channel"),
                () -> Operation.named("fit purfling"),
                () -> Remedy.named("tape it")
                        .adding("tape", AddedError.Way.ACROSS, ErrorDistribution.rectangular(mm(0.1))));
    }

    /** Whole plans, which only necks of the size of necks can have. */
    List<Supplier<Object>> plans() {
        return List.of(
                this::plan,
                () -> BenchSession.of(plan()),
                () -> BenchCard.of(plan(), "cut rod channel"),
                () -> BenchSession.of(plan()).enter(BenchSession.DONE),
                () -> BenchSession.of(Job.of(neck(), blank(), Shop.with(cutter())))
                        .enter(mm(27.4))
                        .session()
                        .enter(mm(27.6))
                        .session()
                        .enter(mm(6))
                        .session()
                        .enter(mm(61)),
                () -> Job.of(neck(), blank(), Shop.with(cutter()))
                        .trialCut(trial().slot(mm(6.02)).piece(mm(68.1))),
                () -> new Finding.Decided(
                        Job.of(neck(), blank(), Shop.with(cutter())).plan().slot(), Limits.within(mm(0.1))),
                () -> new Finding.Pending(Finding.Missing.SLOT_OFFSET, Optional.empty()),
                () -> plan().measured(readings().read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(8.1), mm(0.02))))
                        .plan()
                        .repairs()
                        .get(0),
                () -> new Finding.Remaining(mm(3)),
                () -> new Finding.Together(List.of(new Finding.Computed(mm(20), Limits.atLeast(mm(19)), Outcome.STOP))),
                () -> new Finding.NoSolution(new Fault("neck angle", "no-angle", "no angle brings it there", "")),
                () -> Sheet.of(plan()),
                () -> Template.of(plan()),
                () -> Cards.of(plan()));
    }

    /** What methods that ask something are asked with. */
    Map<String, List<Object>> arguments() {
        return Map.ofEntries(
                Map.entry("javax.measure.Quantity<javax.measure.quantity.Length>", List.of(mm(40), mm(0.5))),
                Map.entry("javax.measure.Quantity<javax.measure.quantity.Angle>", List.of(deg(0.5))),
                Map.entry("javax.measure.Quantity<javax.measure.quantity.Force>", List.of(newton(200.0 / 3))),
                Map.entry("javax.measure.Quantity<javax.measure.quantity.Dimensionless>", List.of(percent(95))),
                Map.entry(
                        "javax.measure.Quantity<javax.measure.quantity.Speed>",
                        List.of(ShopUnit.MM_PER_MINUTE.of(1800))),
                Map.entry("javax.measure.Quantity<javax.measure.quantity.Frequency>", List.of(ShopUnit.RPM.of(16000))),
                Map.entry(
                        "org.neckgeom.measure.ErrorDistribution<javax.measure.quantity.Length>",
                        List.of(ErrorDistribution.triangular(mm(0.15)))),
                Map.entry(
                        "org.neckgeom.measure.Limits<javax.measure.quantity.Length>", List.of(Limits.within(mm(0.8)))),
                Map.entry("org.neckgeom.measure.Limits<Q>", List.of(Limits.within(mm(0.8)))),
                Map.entry(
                        "org.neckgeom.measure.Estimate<javax.measure.quantity.Length>",
                        List.of(Estimate.of(mm(67), mm(0.02)))),
                Map.entry("org.neckgeom.shop.FeelerSet", List.of(FeelerSet.metric20(), FeelerSet.inch26())),
                Map.entry(
                        "org.neckgeom.shop.Fence",
                        List.of(Fence.pivoting(mm(700)).fromPivot(mm(350), mm(650)))),
                Map.entry("org.neckgeom.shop.Cutter", List.of(cutter())),
                Map.entry("org.neckgeom.shop.TestPiece", List.of(TestPiece.copied(mm(0.05)))),
                Map.entry("org.neckgeom.stock.Blank", List.of(blank())),
                Map.entry("org.neckgeom.stock.Wood", List.of(Wood.BLACK_WALNUT)),
                Map.entry(
                        "org.neckgeom.channel.Passes",
                        List.of(Passes.noDeeperThan(mm(3)).lastPass(mm(0.5)))),
                Map.entry("org.neckgeom.neck.Neck", List.of(neck())),
                Map.entry(
                        "org.neckgeom.solid.WoodSpreads",
                        List.of(WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0.1))))),
                Map.entry("org.neckgeom.template.Paper", List.of(Paper.A4)),
                Map.entry("java.lang.String", List.of("fence")),
                Map.entry("int", List.of(5, 1)),
                Map.entry("long", List.of(1000L)),
                Map.entry("boolean", List.of(true)));
    }

    private Amount<Length> mm(double value) {
        return mm.apply(value);
    }

    private TrialCut trial() {
        return TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02));
    }

    private ScarfBoard slantedBoard() {
        return ScarfJoint.inTheHead(
                        Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8)).nutSlant(deg(6)))
                .keeping(mm(60))
                .board(mm(560), mm(185));
    }

    private Blank blank() {
        return Blank.ofLength(mm(640))
                .section(mm(61), mm(20))
                .outOfParallel(mm(0.06))
                .nutAt(mm(20));
    }

    private Fence fence() {
        return Fence.onePiece(mm(600));
    }

    private Cutter cutter() {
        return Cutter.straight(mm(6))
                .flutes(2, mm(22))
                .shank(mm(12.7))
                .stickOut(mm(30))
                .carbide();
    }

    private TrussRod rod() {
        return TrussRod.twoWay(mm(300)).section(mm(6), mm(9));
    }

    private Search<Neck> search() {
        return Search.of(neck())
                .over(
                        "depth",
                        Axis.steps(mm(12), mm(16), mm(1)),
                        (neck, depth) -> neck.back(BackProfile.between(depth, mm(16))))
                .least("depth", neck -> mm(neck.back().firstDepthMm()))
                .within("wood left", neck -> FloorThickness.under(neck).least().wood(), Limits.atLeast(mm(3)));
    }

    private Sweep<Neck> sweep() {
        return Sweep.of(neck())
                .over("depth", Axis.steps(mm(12), mm(15), mm(1)), (neck, d) -> neck.back(BackProfile.between(d, d)));
    }

    private MeasuredNeck readings() {
        return MeasuredNeck.none()
                .read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(9.31), mm(0.02)))
                .read(NeckFeature.SLOT_OFFSET, Estimate.of(mm(-0.06), mm(0.02), 4))
                .scarfAngle(Estimate.of(deg(13.2), deg(0.1)))
                .backDepth(mm(100), Estimate.of(mm(15.2), mm(0.05)));
    }

    private Channel channel() {
        return Channel.forRod(rod())
                .startingAt(mm(3))
                .depthClearance(mm(0.2))
                .arch(mm(1))
                .adjusterPocket(mm(40))
                .section(mm(11), mm(12));
    }

    private Head head() {
        return Head.angled(deg(13))
                .length(mm(185))
                .width(mm(76))
                .thickness(mm(15))
                .veneer(mm(2), mm(1));
    }

    private TunerPost[] posts() {
        return new TunerPost[] {
            TunerPost.at(mm(60)).aside(mm(20)),
            TunerPost.at(mm(90)).aside(mm(20)),
            TunerPost.at(mm(60)).aside(mm(-20))
        };
    }

    private StringSpacing spacing() {
        return StringSpacing.diameters(mm(1), mm(0.7), mm(0.4)).across(mm(29));
    }

    private BackSet set() {
        return BackSet.of(
                Scale.of(mm(560)),
                14,
                NeckSet.saddle(mm(15.2))
                        .atNut(mm(0.4))
                        .action(mm(2.0))
                        .fretPlane(mm(7.1))
                        .compensation(mm(2.2)));
    }

    private BlankBent bentBlank() {
        return BlankBent.over(mm(600)).section(mm(70), mm(22)).fall(ShopUnits.newton(49), mm(0.28));
    }

    private BlankTapped tappedBlank() {
        return BlankTapped.of(mm(700)).section(mm(70), mm(25)).rings(ShopUnits.newton(8.4), ShopUnits.hertz(219.5));
    }

    private StiffnessReadings stiffness() {
        return StiffnessReadings.none().neckBlank(bentBlank()).neckBlank(tappedBlank());
    }

    private Neck neck() {
        return Neck.named("Walnut neck")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46))
                        .thickness(mm(6))
                        .radius(mm(400))
                        .wood(Wood.INDIAN_ROSEWOOD))
                .back(BackProfile.between(mm(14.5), mm(16.5)).rounded())
                .frets(20)
                .bodyAtFret(14)
                .wood(Wood.BLACK_WALNUT)
                .channel(Channel.forRod(rod()).startingAt(mm(3)).depthClearance(mm(0.2)))
                .head(head())
                .heel(Heel.of(mm(78), mm(54)))
                .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3")).tensions(newton(95)));
    }

    private Neck strung() {
        return neck().fingerboard(neck().fingerboard().fretHeight(mm(1)))
                .head(head().posts(posts()))
                .neckSet(NeckSet.saddle(mm(15.2)).atNut(mm(0.4)).action(mm(2.0)).fretPlane(mm(7.1)))
                .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"))
                        .tensions(newton(95))
                        .diameters(mm(1), mm(0.7), mm(0.4))
                        .across(Across.of(mm(3), mm(44))));
    }

    private Job plan() {
        return Job.of(
                        neck().head(head().scarfed(ScarfCut.inTheHead().kerf(mm(1.8))))
                                .neckSet(NeckSet.saddle(mm(15.2))
                                        .atNut(mm(0.4))
                                        .action(mm(2.0))
                                        .compensation(mm(2.2))
                                        .fretPlane(mm(7.1))),
                        blank(),
                        Shop.with(cutter()))
                .trialCut(trial())
                .fenceMoved(FenceMove.away(mm(0.7)))
                .measured(readings())
                .order(OrderOfWork.forNeck().keep("glue wings").before("cut rod channel"));
    }

    private Budget<Length> budget() {
        return Budget.named("string line")
                .with("fence", ErrorDistribution.normal(mm(0.05)))
                .with("joint", 1.7, ErrorDistribution.rectangular(mm(0.08)));
    }

    /** A neck with head, posts and strings across: everything a shape can have. */
    private NeckSolid solid() {
        return NeckSolid.of(neck().strings(StringSet.of(pitch("G2"), pitch("D3"))
                        .diameters(mm(1), mm(0.7))
                        .across(Across.of(mm(3), mm(50))))
                .head(head().posts(
                                TunerPost.at(mm(60)).aside(mm(-15)).above(mm(8)),
                                TunerPost.at(mm(60)).aside(mm(15)).above(mm(8)))));
    }

    private Known known() {
        return NeckErrors.of(neck())
                .state()
                .known("string line", NeckErrors.of(neck()).stringLine());
    }

    private Requirement requirement() {
        return Requirement.of("string line", NeckErrors.of(neck()).stringLine(), Limits.within(mm(1)))
                .correctedWithin(mm(0.05));
    }

    private PossibleReading thread() {
        return new PossibleReading("thread at the bridge", NeckErrors.of(neck()).stringLine(), mm(0.1));
    }

    private LogEntry line() {
        return LogEntry.on("2026-03-02", ShopStep.LOCATING).read(mm(0.04)).jig("taper jig");
    }
}
