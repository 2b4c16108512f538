package org.neckgeom.contract;

import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.feet;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.neckgeom.fault.Fault;
import org.neckgeom.form.Form;
import org.neckgeom.form.Json;
import org.neckgeom.form.Kind;
import org.neckgeom.form.RenderedAnswer;
import org.neckgeom.form.Statement;
import org.neckgeom.form.Tree;
import org.neckgeom.measure.Chance;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.GlobalRisk;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Reading;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Bars;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Dome;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.End;
import org.neckgeom.neck.FaceVeneer;
import org.neckgeom.neck.Fan;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelInserts;
import org.neckgeom.neck.HeelJoint;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.OutlinePoint;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.neck.Posts;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.neck.SpanishFoot;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.neck.StringMaterial;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.Strip;
import org.neckgeom.neck.Tenon;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.neck.Volute;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Caution;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.DecisionRule;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TestPiece;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.stock.WoodFigure;
import org.neckgeom.table.Key;
import org.neckgeom.table.Values;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * Values of every type, invented for the tests, in groups: the members of a group are made anew, perhaps another way, and
 * must be equal; members of two groups must not be.
 */
public final class Samples {

    private static final Form<String> FORM = Form.<String>of("word")
            .fact("word", Kind.NAME, "as given", word -> word)
            .finds("given", "it is {word}");
    private static final Form<String> OTHER_FORM = Form.of("other");

    private static final Map<Class<?>, List<Group>> GROUPS = new LinkedHashMap<>();

    static {
        groups(
                Amount.class,
                group(() -> mm(25.4), () -> inch(1), () -> thou(1000)),
                group(() -> mm(0), () -> inch(-0.0)),
                group(() -> newton(25.4)),
                group(() -> deg(25.4)),
                group(() -> celsius(20)),
                group(() -> feet(1), () -> inch(12)));
        groups(ShopUnit.class, group(() -> ShopUnit.INCH), group(() -> ShopUnit.THOU), group(() -> ShopUnit.ONE));
        groups(
                Estimate.class,
                group(() -> Estimate.of(inch(1), mm(0.1)), () -> Estimate.of(mm(25.4), mm(0.1))),
                group(() -> Estimate.of(mm(25.4), mm(0.1), 5)),
                group(() -> Estimate.of(mm(25.4), mm(0.2))),
                group(() -> Estimate.of(mm(25), mm(0.1))),
                group(() -> Estimate.of(newton(25.4), newton(0.1))));
        groups(
                Chance.class,
                group(() -> Chance.outside(0.25), () -> Chance.outside(0.25).atWorst(0.25)),
                group(() -> Chance.outside(0.5)),
                group(() -> Chance.outside(0.25).atWorst(0.5)),
                group(() -> Chance.outside(0.25).accurateTo(0.01)),
                group(() -> Chance.outside(0.25).wellKnown()));
        groups(
                Interval.class,
                group(() -> Interval.of(mm(-1), inch(1)), () -> Interval.of(mm(-1), mm(25.4))),
                group(() -> Interval.of(mm(-2), inch(1))),
                group(() -> Interval.of(mm(-1), inch(2))));
        groups(
                Reading.class,
                group(() -> Reading.of(List.of(mm(25.4))), () -> Reading.of(List.of(inch(1)))),
                group(() -> Reading.of(List.of(mm(25.4), mm(25.4)))),
                group(() -> Reading.of(List.of(mm(50.8)))),
                group(() -> Reading.of(Estimate.of(mm(25.4), mm(0.1)))));
        groups(
                Values.class,
                group(Heel.TABLE::values, () -> Heel.TABLE.values().printedIn(LengthStyle.DECIMAL_INCHES)),
                group(() -> heelOf(mm(25.4)), () -> heelOf(inch(1))),
                group(() -> heelOf(mm(50.8))),
                group(Scale.TABLE::values));
        groups(
                Limits.class,
                group(() -> Limits.within(inch(1)), () -> Limits.between(mm(-25.4), mm(25.4))),
                group(() -> Limits.atMost(mm(25.4))),
                group(() -> Limits.atLeast(mm(25.4))),
                group(() -> Limits.within(newton(25.4))));
        groups(
                Verdict.class,
                group(() -> verdict(0.14), () -> verdict(0.14).guardedBy(2)),
                group(() -> verdict(0.14).guardedBy(1)),
                group(() -> verdict(0.15)));
        groups(
                Statement.class,
                group(() -> statement("{past} too long"), () -> statement("{past} too long")),
                group(() -> statement("{past} too short")),
                group(() -> Statement.of("past", "{past} too long", LengthStyle.MILLIMETRES)));
        groups(
                GlobalRisk.class,
                group(() -> risk(0.02), () -> risk(0.02).guardedBy(0)),
                group(() -> risk(0.02).guardedBy(1)),
                group(() -> risk(0.03)));
        groups(
                ErrorDistribution.class,
                group(
                        () -> ErrorDistribution.normal(mm(25.4)),
                        () -> ErrorDistribution.normal(inch(1)).shifted(mm(0))),
                group(() -> ErrorDistribution.normal(mm(25.4)).shifted(mm(1))),
                group(() -> ErrorDistribution.rectangular(mm(25.4))),
                group(() -> ErrorDistribution.triangular(mm(25.4))),
                group(() -> ErrorDistribution.arcsine(mm(25.4))),
                group(() -> ErrorDistribution.trapezoidal(mm(25.4), mm(1))),
                group(() -> ErrorDistribution.bias(mm(25.4))),
                group(() -> ErrorDistribution.normal(mm(25.4)).degreesOfFreedom(4)),
                group(
                        () -> ErrorDistribution.samples(List.of(mm(1), mm(2))),
                        () -> ErrorDistribution.samples(List.of(mm(2), mm(1)))),
                group(() -> ErrorDistribution.samples(List.of(mm(1), mm(3)))));
        groups(
                Fault.class,
                group(() -> new Fault("frets", "range", "be between 1 and 60", "0")),
                group(() -> new Fault("frets", "range", "be between 1 and 60", "61")));
        groups(Form.class, group(() -> FORM), group(() -> OTHER_FORM));
        groups(
                Tree.class,
                group(() -> Tree.of(List.of(1)), () -> Json.read("[1.0]")),
                group(() -> Tree.of(List.of(2))));
        groups(Kind.class, group(() -> Kind.MM), group(() -> Kind.NAME));
        groups(
                Json.Figure.class,
                group(() -> Json.number(0.5), () -> new Json.Figure("0.5")),
                group(() -> Json.number(1)));
        groups(
                RenderedAnswer.class,
                group(
                        () -> FORM.render("a", LengthStyle.MILLIMETRES),
                        () -> FORM.render("a", LengthStyle.DECIMAL_INCHES)),
                group(() -> FORM.render("b", LengthStyle.MILLIMETRES)));
        groups(
                RenderedAnswer.Row.class,
                group(() -> new RenderedAnswer.Row("wood", "wood", RenderedAnswer.words("ash"))),
                group(() -> new RenderedAnswer.Row("wood", "wood", RenderedAnswer.words("elm"))));
        groups(
                RenderedAnswer.Note.class,
                group(() -> new RenderedAnswer.Note("read-again", "read again")),
                group(() -> new RenderedAnswer.Note("read-again", "read it again")));
        groups(
                Cutter.class,
                group(
                        () -> Cutter.straight(mm(6.35)),
                        () -> Cutter.straight(inch("1/4")).steel()),
                group(() -> Cutter.straight(mm(6.35)).carbide()),
                group(() -> Cutter.straight(mm(6.35)).runout(mm(0.02))),
                group(() -> Cutter.straight(mm(6.35)).flutes(1, mm(20))),
                group(() -> Cutter.straight(mm(6.35)).shank(mm(12.7))),
                group(() -> Cutter.straight(mm(6.35)).stickOut(mm(40))));
        groups(
                Fence.class,
                group(() -> Fence.onePiece(mm(609.6)), () -> Fence.onePiece(feet(2))),
                group(() -> Fence.split(mm(609.6), mm(0))),
                group(() -> Fence.split(mm(609.6), mm(0.1))),
                group(() -> Fence.pivoting(mm(609.6)).fromPivot(mm(300), mm(600))));
        groups(
                Fence.NeedsPivot.class,
                group(() -> Fence.pivoting(mm(609.6)), () -> Fence.pivoting(feet(2))),
                group(() -> Fence.pivoting(mm(600))));
        groups(
                FeelerSet.class,
                group(FeelerSet::metric20, () -> FeelerSet.metric20().halfWidth(mm(0))),
                group(FeelerSet::metric13),
                group(FeelerSet::inch26),
                group(() -> FeelerSet.of(List.of(mm(0.2), mm(0.1))), () -> FeelerSet.of(List.of(mm(0.1), mm(0.2)))),
                group(() -> FeelerSet.metric20().halfWidth(mm(0.005))));
        groups(
                Caution.class,
                group(() -> Caution.known("DUST"), () -> Caution.given("DUST")),
                group(() -> Caution.given("mind the collet")));
        groups(
                TestPiece.class,
                group(() -> TestPiece.measured(Estimate.of(mm(61), mm(0.03)))),
                group(() -> TestPiece.measured(Estimate.of(mm(61), mm(0.03), 4))),
                group(() -> TestPiece.copied(mm(0.03))));
        groups(
                TrialCut.class,
                group(() -> TrialCut.walls(mm(25.4), mm(31)), () -> TrialCut.walls(List.of(inch(1)), List.of(mm(31)))),
                group(() -> TrialCut.walls(mm(25.4), mm(31)).slot(mm(6))),
                group(() -> TrialCut.walls(mm(25.4), mm(31)).piece(mm(62))),
                group(() -> TrialCut.walls(mm(25.4), mm(31)).rippedWithBlank(mm(0.04))),
                group(() -> TrialCut.walls(mm(25.4), mm(31)).repeatability(mm(0.02))),
                group(() -> TrialCut.walls(mm(25.4), mm(31)).wallsCorrelated(0.5)),
                group(() -> TrialCut.walls(List.of(mm(25.4), mm(25.5)), List.of(mm(31), mm(31)))));
        groups(
                BenchUncertainty.class,
                group(
                        BenchUncertainty::withDefaults,
                        () -> BenchUncertainty.withDefaults().resolution(mm(0))),
                group(() -> BenchUncertainty.withDefaults().repeatability(mm(0.02))),
                group(() -> BenchUncertainty.withDefaults().resolution(mm(0.01))),
                group(() -> BenchUncertainty.withDefaults().calliperZero(mm(0.02))),
                group(() -> BenchUncertainty.withDefaults().blankCalliperZero(mm(0.01))),
                group(() -> BenchUncertainty.withDefaults().cutScatter(mm(0.02))),
                group(() -> BenchUncertainty.withDefaults().cutScatter(mm(0.02), 10)),
                group(() -> BenchUncertainty.withDefaults().moveScatter(mm(0.01))));
        groups(
                DecisionRule.class,
                group(
                        DecisionRule::withDefaults,
                        () -> DecisionRule.withDefaults().trialCut(1.8)),
                group(() -> DecisionRule.withDefaults().conformanceProbability(ShopUnits.percent(90))),
                group(() -> DecisionRule.withDefaults().spoiledNeck(300)),
                group(() -> DecisionRule.withDefaults().readingAgain(1)),
                group(() -> DecisionRule.withDefaults().trialCut(3)),
                group(() -> DecisionRule.withDefaults().fenceMove(2)));
        groups(
                Shop.class,
                group(
                        () -> Shop.with(Cutter.straight(mm(6))),
                        () -> Shop.with(Cutter.straight(mm(6))).feelerGauges(FeelerSet.metric20())),
                group(() -> Shop.with(Cutter.straight(mm(6))).fence(Fence.onePiece(mm(700)))),
                group(() -> Shop.with(Cutter.straight(mm(6))).repeatability(mm(0.02))),
                group(() -> Shop.with(Cutter.straight(mm(6)))
                        .decision(DecisionRule.withDefaults().spoiledNeck(300))),
                group(() -> Shop.with(Cutter.straight(inch("1/4"))).passes(mm(2), mm(0.5))));
        groups(
                Blank.class,
                group(
                        () -> Blank.ofLength(mm(640)).section(mm(61), mm(25.4)),
                        () -> Blank.ofLength(mm(640)).section(mm(61), inch(1))),
                group(() -> Blank.ofLength(mm(640)).section(mm(61), mm(25.4)).outOfParallel(mm(0.3))),
                group(() -> Blank.ofLength(mm(640)).section(mm(61), mm(25.4)).planing(mm(0))),
                group(() -> Blank.ofLength(mm(640)).section(mm(61), mm(25.4)).sawKerf(mm(1))),
                group(() -> Blank.ofLength(mm(640)).section(mm(61), mm(25.4)).nutAt(mm(20))));
        groups(
                Blank.NeedsSection.class,
                group(() -> Blank.ofLength(mm(635)), () -> Blank.ofLength(inch(25))),
                group(() -> Blank.ofLength(mm(640))));
        groups(
                Wood.class,
                group(() -> Wood.BLACK_WALNUT, () -> Wood.byName("black walnut")),
                group(() -> Wood.SAPELE),
                group(() -> Wood.named("offcut")));
        groups(
                WoodFigure.class,
                group(() -> Wood.SAPELE.figures().get(0)),
                group(() -> Wood.SAPELE.figures().get(1)));
        groups(
                Scale.class,
                group(() -> Scale.of(mm(647.7)), () -> Scale.of(inch(25.5)).divisions(12)),
                group(() -> Scale.of(mm(647.7)).divisions(19)),
                group(() -> Scale.of(mm(560))));
        groups(
                Head.class,
                group(() -> Head.angled(deg(13)), () -> Head.angled(deg(13)).length(mm(180))),
                group(Head::flat),
                group(() -> Head.angled(deg(13)).length(inch(7))),
                group(() -> Head.angled(deg(13)).width(mm(80))),
                group(() -> Head.angled(deg(13)).thickness(mm(14))),
                group(() -> Head.angled(deg(13)).swung(deg(-2))),
                group(() -> Head.angled(deg(13)).veneer(mm(2), mm(1))),
                group(() -> Head.angled(deg(13)).backVeneer(mm(1))),
                group(() -> Head.angled(deg(13)).tapered(mm(60), mm(75))),
                group(() -> Head.angled(deg(13)).tuners(mm(13), mm(17))),
                group(() -> Head.angled(deg(13)).slots(mm(50), mm(100)).slotWidth(mm(12), mm(18))),
                group(() -> Head.angled(deg(13)).posts(TunerPost.at(mm(60)))),
                group(() -> Head.angled(deg(13)).scarfed(ScarfCut.inTheHead())));
        groups(
                FaceVeneer.class,
                group(() -> FaceVeneer.of(mm(2)), () -> FaceVeneer.of(mm(2)).shortOfNut(mm(0))),
                group(() -> FaceVeneer.of(inch(0.08))),
                group(() -> FaceVeneer.of(mm(2)).shortOfNut(mm(1))));
        groups(
                TunerPost.class,
                group(() -> TunerPost.at(mm(60)), () -> TunerPost.at(mm(60)).aside(mm(0))),
                group(() -> TunerPost.at(inch(2.5))),
                group(() -> TunerPost.at(mm(60)).aside(mm(-20))),
                group(() -> TunerPost.at(mm(60)).above(mm(8))));
        groups(
                Posts.class,
                group(
                        () -> Posts.of(TunerPost.at(mm(60)), TunerPost.at(mm(90))),
                        () -> Posts.of(TunerPost.at(mm(60)).aside(mm(0)), TunerPost.at(mm(90)))),
                group(() -> Posts.of(TunerPost.at(inch(2.5)))),
                group(() -> Posts.of(TunerPost.at(mm(60)).aside(mm(-20)), TunerPost.at(mm(90)))),
                group(() -> Posts.of(
                        TunerPost.at(mm(60)).above(mm(8)), TunerPost.at(mm(90)).above(mm(8)))));
        groups(
                ScarfCut.class,
                group(ScarfCut::inTheHead, () -> ScarfCut.inTheHead().kerf(mm(0))),
                group(ScarfCut::inTheShaft),
                group(() -> ScarfCut.inTheHead().kerf(inch(0.07))),
                group(() -> ScarfCut.inTheHead().cleaning(mm(0.4))));
        groups(
                Dovetail.class,
                group(() -> Dovetail.tapered(deg(3))),
                group(() -> Dovetail.tapered(deg(4))),
                group(() -> Dovetail.tapered(deg(3)).length(inch(0.75))),
                group(() -> Dovetail.tapered(deg(3))
                        .length(mm(19))
                        .widths(mm(40), mm(30))
                        .height(mm(70))));
        groups(
                Tenon.class,
                group(() -> Tenon.of(mm(76), mm(20)).holes(mm(10), mm(0.8)).at(mm(28.5))),
                group(() -> Tenon.of(mm(76), mm(20)).holes(mm(10), mm(0.8)).at(mm(28.5), mm(57.5))),
                group(() -> Tenon.of(inch(3), inch(0.8)).holes(mm(10), mm(0.8)).at(mm(28.5))),
                group(() -> Tenon.of(mm(76), mm(20))
                        .holes(mm(10), mm(0.8))
                        .at(mm(28.5))
                        .width(mm(24))));
        groups(
                Head.NeedsSlotWidth.class,
                group(() -> Head.angled(deg(13)).slots(mm(50), mm(100))),
                group(() -> Head.angled(deg(13)).slots(mm(51), mm(100))));
        groups(Tenon.NeedsHoles.class, group(() -> Tenon.of(mm(76), mm(20))), group(() -> Tenon.of(mm(76), mm(21))));
        groups(
                Tenon.NeedsDepths.class,
                group(() -> Tenon.of(mm(76), mm(20)).holes(mm(10), mm(0.8))),
                group(() -> Tenon.of(mm(76), mm(20)).holes(mm(10), mm(1))));
        groups(
                Dovetail.NeedsHeight.class,
                group(() -> Dovetail.tapered(deg(3)).widths(mm(36), mm(28))),
                group(() -> Dovetail.tapered(deg(3)).widths(mm(36), mm(29))));
        groups(Dome.NeedsPole.class, group(() -> Dome.of(mm(9000))), group(() -> Dome.of(mm(9001))));
        groups(NeckSet.NeedsNut.class, group(() -> NeckSet.saddle(mm(15))), group(() -> NeckSet.saddle(mm(16))));
        groups(
                NeckSet.NeedsAction.class,
                group(() -> NeckSet.saddle(mm(15)).atNut(mm(0.4))),
                group(() -> NeckSet.saddle(mm(15)).atNut(mm(0.5))));
        groups(HeelJoint.Flat.class, group(HeelJoint.Flat::new));
        groups(
                Dome.class,
                group(() -> Dome.of(mm(9000)).pole(mm(240), mm(20))),
                group(() -> Dome.of(inch(360)).pole(inch(9.5), inch(0.75))));
        groups(
                StringHeights.class,
                group(() -> StringHeights.usual(), () -> StringHeights.of(mm(0.4), mm(2))),
                group(() -> StringHeights.of(mm(0.4), mm(1.8))),
                group(() -> StringHeights.of(mm(0.5), mm(2)).treble(mm(0.4), mm(1.6))));
        groups(
                NeckSet.class,
                group(() -> NeckSet.saddle(mm(15))
                        .atNut(mm(0.4))
                        .action(mm(2))
                        .heights(StringHeights.of(mm(0.4), mm(2)).treble(mm(0.3), mm(1.6)))),
                group(
                        () -> NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2)),
                        () -> NeckSet.saddle(mm(15))
                                .atNut(mm(0.4))
                                .action(mm(2))
                                .compensation(mm(0))),
                group(() -> NeckSet.saddle(inch(0.6)).atNut(inch(0.015)).action(inch(0.08))),
                group(() -> NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2)).fretPlane(mm(7))),
                group(() -> NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2)).overstand(mm(1))),
                group(() -> NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2)).compensation(mm(2))),
                group(() -> NeckSet.saddle(mm(15))
                        .atNut(mm(0.4))
                        .action(mm(2))
                        .dome(Dome.of(mm(9000)).pole(mm(240), mm(20)))));
        groups(
                BackProfile.class,
                group(
                        () -> BackProfile.between(mm(14.5), mm(16.5)),
                        () -> BackProfile.between(mm(14.5), mm(16.5)).rounded().atFrets(1, 12)),
                group(() -> BackProfile.between(mm(14.5), mm(16.5)).full()),
                group(() -> BackProfile.between(mm(14.5), mm(16.5)).asymmetric(2, 1.7)),
                group(() -> BackProfile.between(mm(14.5), mm(16.5)).atFrets(0, 10)));
        groups(
                Fingerboard.class,
                group(() -> board(), () -> Fingerboard.tapered(mm(34), mm(46)).thickness(mm(6))),
                group(() -> board().radius(mm(400))),
                group(() -> board().radius(mm(300), mm(400))),
                group(() -> board().farWidthAtFret(12)),
                group(() -> board().thickness(mm(6), mm(5))),
                group(() -> board().wood(Wood.AFRICAN_EBONY)));
        groups(
                TrussRod.class,
                group(() -> rod(), () -> rod().adjuster(End.HEAD)),
                group(() -> rod().adjuster(End.HEEL)),
                group(() -> rod().threadPitch(mm(0.8))),
                group(() -> TrussRod.singleAction(mm(300), mm(6))));
        groups(
                Bar.class,
                group(() -> Bar.steel(mm(300)).section(mm(6), mm(9))),
                group(() -> Bar.carbon(mm(300)).section(mm(6), mm(9))),
                group(() -> Bar.carbon(mm(300)).section(mm(6), mm(10))));
        groups(
                Bars.class,
                group(
                        () -> Bars.of(sideBar(), mm(10)),
                        () -> Bars.of(sideBar(), mm(10)).startingAt(mm(0))),
                group(() -> Bars.of(sideBar(), mm(12))),
                group(() -> Bars.of(sideBar(), mm(10)).fanned(mm(13))),
                group(() -> Bars.of(sideBar(), mm(10)).startingAt(mm(15))),
                group(() -> Bars.of(Bar.steel(mm(330)).section(mm(3.2), mm(12.7)), mm(10))));
        groups(
                Strip.class,
                group(() -> Strip.of(Wood.SUGAR_MAPLE, mm(20))),
                group(() -> Strip.of(Wood.BLACK_WALNUT, mm(20))),
                group(() -> Strip.of(Wood.SUGAR_MAPLE, mm(18))));
        groups(
                HeelInserts.class,
                group(
                        () -> HeelInserts.at(mm(24), mm(62)),
                        () -> HeelInserts.at(mm(24), mm(62)).diameter(mm(9))),
                group(() -> HeelInserts.at(mm(24), mm(60))),
                group(() -> HeelInserts.at(mm(24), mm(62)).diameter(mm(10))),
                group(() -> HeelInserts.at(mm(24), mm(62)).bolts(mm(5), mm(10))));
        groups(
                PlateScrews.class,
                group(
                        () -> PlateScrews.in(mm(76), mm(28.5)),
                        () -> PlateScrews.in(mm(76), mm(28.5)).plate(mm(1.5))),
                group(() -> PlateScrews.in(mm(76), mm(28.5)).plate(mm(0))),
                group(() -> PlateScrews.in(mm(76), mm(28.5)).screws(mm(4.5), mm(45))),
                group(() ->
                        PlateScrews.in(mm(76), mm(28.5)).rows(mm(12), mm(54)).across(mm(42))),
                group(() -> PlateScrews.in(mm(80), mm(28.5))));
        groups(
                SpanishFoot.class,
                group(() -> SpanishFoot.of(mm(32), mm(2.2)).ledge(mm(2.6))),
                group(() -> SpanishFoot.of(mm(32), mm(2.2)).ledge(mm(2.6)).slots(mm(3.5), mm(12))),
                group(() -> SpanishFoot.of(mm(32), mm(2.2)).ledge(mm(2.6)).wedged()),
                group(() -> SpanishFoot.of(mm(30), mm(2.2)).ledge(mm(2.6))));
        groups(
                Channel.class,
                group(() -> Channel.locatingGroove(mm(300), mm(6))),
                group(() -> Channel.forRod(rod()), () -> Channel.forRod(rod()).startingAt(mm(0))),
                group(() -> Channel.forRod(rod()).startingAt(mm(-20))),
                group(() -> Channel.forBar(Bar.steel(mm(300)).section(mm(6), mm(9)))),
                group(() -> Channel.forRod(rod()).endClearance(mm(1))),
                group(() -> Channel.forRod(rod()).sideClearance(mm(0.1))),
                group(() -> Channel.forRod(rod()).fillet(mm(3))),
                group(() -> Channel.forRod(rod()).depthClearance(mm(0.2))),
                group(() -> Channel.forRod(rod()).arch(mm(3))),
                group(() -> Channel.forRod(rod()).adjusterPocket(mm(40)).section(mm(11), mm(12))));
        groups(
                StringSet.class,
                group(() -> strings()
                        .diameters(mm(1.2), mm(0.9), mm(0.4))
                        .materials(StringMaterial.STEEL)
                        .cores(StringMaterial.NICKEL, mm(0.5), mm(0.4), mm(0))),
                group(() -> strings(), () -> StringSet.of(List.of(pitch("G2"), pitch("D3"), pitch("A3")))),
                group(() -> strings().doubled()),
                group(() -> strings().tensions(newton(95))),
                group(() -> strings().diameters(mm(1), mm(0.7), mm(0.4))),
                group(() -> strings().linearDensities(gramPerMetre(4), gramPerMetre(2), gramPerMetre(0.6))));
        groups(
                Heel.class,
                group(() -> Heel.of(mm(78), mm(54))),
                group(() -> Heel.of(mm(78), mm(54)).blocks(mm(20))),
                group(() -> Heel.of(mm(78), mm(54)).blockLength(mm(35))),
                group(() -> Heel.of(mm(78), mm(54)).joint(Dovetail.tapered(deg(3)))),
                group(() -> Heel.of(mm(78), mm(54))
                        .joint(Tenon.of(mm(76), mm(20)).holes(mm(10), mm(0.8)).at(mm(28.5)))),
                group(() -> Heel.of(mm(78), mm(54)).joint(HeelInserts.at(mm(24), mm(62)))),
                group(() -> Heel.of(mm(18), mm(56)).joint(PlateScrews.in(mm(76), mm(28.5)))),
                group(() -> Heel.of(mm(90), mm(62))
                        .joint(SpanishFoot.of(mm(32), mm(2.2)).ledge(mm(2.6)))),
                group(() -> Heel.of(mm(46), mm(56))
                        .joint(Tenon.glued(mm(38), mm(75)).width(mm(40)).pocket(mm(40.2), mm(38.1)))),
                group(() -> Heel.of(mm(70), mm(54))));
        groups(
                Volute.class,
                group(() -> Volute.of(mm(3), mm(30))),
                group(() -> Volute.of(mm(2), mm(30))),
                group(() -> Volute.of(mm(3), mm(40))));
        groups(
                OutlinePoint.class,
                group(
                        () -> OutlinePoint.at(mm(30), mm(28)),
                        () -> OutlinePoint.at(mm(30), mm(28)).treble(mm(28))),
                group(() -> OutlinePoint.at(mm(30), mm(28)).treble(mm(31))),
                group(() -> OutlinePoint.at(mm(30), mm(27))),
                group(() -> OutlinePoint.at(inch(1), mm(28))));
        groups(
                HeelTransition.class,
                group(
                        () -> HeelTransition.from(mm(300), mm(25)),
                        () -> HeelTransition.from(mm(300), mm(25)).slope(deg(65))),
                group(() -> HeelTransition.from(mm(300), mm(25)).slope(deg(70))),
                group(() -> HeelTransition.ofRadius(mm(25))),
                group(() -> HeelTransition.ofRadius(mm(25)).capLength(mm(10))),
                group(() -> HeelTransition.from(mm(290), mm(25))),
                group(() -> HeelTransition.from(mm(300), mm(30))));
        groups(
                Across.class,
                group(
                        () -> across(),
                        () -> across().equalGaps(),
                        () -> across().equalCentres().equalGaps()),
                group(() -> across().equalCentres()),
                group(() -> across().graduated(mm(0.1))),
                group(() -> across().inPair(mm(2))));
        groups(
                Fan.class,
                group(() -> Fan.between(mm(699), mm(673)).perpendicularAt(7)),
                group(() -> Fan.between(mm(699), mm(673)).perpendicularAt(8)),
                group(() -> Fan.between(mm(699), mm(670)).perpendicularAt(7)));
        groups(
                Fan.NeedsSquareFret.class,
                group(() -> Fan.between(mm(699), mm(673))),
                group(() -> Fan.between(mm(699), mm(670))));
        groups(
                TrussRod.NeedsSection.class,
                group(() -> TrussRod.twoWay(mm(300))),
                group(() -> TrussRod.twoWay(mm(301))));
        groups(Bar.NeedsSection.class, group(() -> Bar.carbon(mm(300))), group(() -> Bar.steel(mm(300))));
        groups(
                Channel.NeedsPocketSection.class,
                group(() -> Channel.forRod(rod()).adjusterPocket(mm(20))),
                group(() -> Channel.forRod(rod()).adjusterPocket(mm(21))));
        groups(
                Neck.class,
                group(Samples::neck, () -> neck().bodyAtFret(12), () -> neck().frets(20)),
                group(() -> neck().frets(18)),
                group(() -> neck().bodyAtFret(14)),
                group(() -> neck().wood(Wood.SAPELE)));
    }

    /** Recipes for values that must be equal. */
    public record Group(List<Supplier<?>> members) {}

    private Samples() {}

    /** Its first key is its height. */
    @SuppressWarnings("unchecked")
    private static Values<Heel> heelOf(Amount<javax.measure.quantity.Length> height) {
        var first = (Key<Heel, Amount<javax.measure.quantity.Length>>)
                Heel.TABLE.keys().get(0);
        return Heel.TABLE.values().with(first, height);
    }

    private static Verdict<javax.measure.quantity.Length> verdict(double value) {
        return Verdict.of(Estimate.of(mm(value), mm(0.02)), Limits.within(mm(0.15)));
    }

    private static Statement statement(String words) {
        return Statement.of("past", words, LengthStyle.MILLIMETRES).with("past", Kind.MM, 12.5);
    }

    private static GlobalRisk<javax.measure.quantity.Length> risk(double u) {
        return GlobalRisk.of(Estimate.of(mm(0), mm(0.05)), mm(u), Limits.within(mm(0.15)));
    }

    private static Fingerboard board() {
        return Fingerboard.tapered(mm(34), mm(46));
    }

    private static Bar sideBar() {
        return Bar.carbon(mm(330)).section(mm(3.2), mm(9.5));
    }

    private static TrussRod rod() {
        return TrussRod.twoWay(mm(300)).section(mm(6), mm(9));
    }

    private static Across across() {
        return Across.of(mm(3), mm(52));
    }

    private static StringSet strings() {
        return StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"));
    }

    /** A neck of which everything has been told, in inches, so that its text is about as long as texts get. */
    static Neck neck() {
        TrussRod rod = TrussRod.twoWay(inch(15.37)).section(inch(0.247), inch(0.358));
        return Neck.named("A neck for the bench by the window")
                .scale(inch(25.375))
                .fingerboard(Fingerboard.tapered(inch("1 11/16"), inch("2 3/16"))
                        .radius(inch(9.5), inch(14))
                        .thickness(inch("1/4"), inch("7/32"))
                        .wood(Wood.INDIAN_ROSEWOOD))
                .back(BackProfile.between(inch(0.571), inch(0.653)).asymmetric(2.3, 1.9))
                .wood(Wood.SUGAR_MAPLE)
                .channel(Channel.forRod(rod)
                        .startingAt(inch(-0.375))
                        .endClearance(inch(0.02))
                        .sideClearance(inch(0.003))
                        .fillet(inch(0.125))
                        .arch(inch(0.05))
                        .adjusterPocket(inch(1.55))
                        .section(inch(0.472), inch(0.55)))
                .head(Head.angled(deg(13.5))
                        .length(inch(7.25))
                        .width(inch("3 1/8"))
                        .thickness(inch(0.585))
                        .swung(deg(1.5))
                        .veneer(inch(0.079), inch(0.05))
                        .backVeneer(inch(0.02)))
                .heel(Heel.of(inch(3.1), inch(2.13)).blocks(inch(0.8)))
                .strings(StringSet.of(pitch("E2"), pitch("A2"), pitch("D3"), pitch("G3"), pitch("B3"), pitch("E4"))
                        .doubled()
                        .tensions(newton(82.1), newton(89.2), newton(91.3), newton(88.4), newton(70.5), newton(73.6)));
    }

    private static void groups(Class<?> type, Group... groups) {
        GROUPS.put(type, List.of(groups));
    }

    private static Group group(Supplier<?>... members) {
        return new Group(List.of(members));
    }

    public static Map<Class<?>, List<Group>> all() {
        return GROUPS;
    }

    /** One of each group, or nothing for a type without samples. */
    public static List<Object> of(Class<?> type) {
        List<Object> samples = new ArrayList<>();
        for (Group group : GROUPS.getOrDefault(type, List.of())) {
            samples.add(group.members().get(0).get());
        }
        if (type == Report.class) {
            samples.add(Report.titled("report"));
        }
        return samples;
    }
}
