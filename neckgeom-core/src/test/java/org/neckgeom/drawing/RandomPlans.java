package org.neckgeom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Dome;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.End;
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
import org.neckgeom.order.Condition;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.Remedy;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.MeasuredNeck;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.plan.NeckLimits;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.Weather;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** Invented plans, each part told or left out by lot, figures with all the digits a double has, metric and in inches. */
public final class RandomPlans {

    private final SplittableRandom random;
    private final ShopUnit<Length> unit;

    private RandomPlans(long seed) {
        this.random = new SplittableRandom(seed);
        this.unit = LengthStyle.values()[random.nextInt(3)].unit();
    }

    public static Job of(long seed) {
        return new RandomPlans(seed).plan();
    }

    /** Between two figures in mm, in the unit of this plan: computed in mm, or typed with few digits, by lot. */
    private Amount<Length> length(double from, double to) {
        double mm = from + (to - from) * random.nextDouble();
        return switch (random.nextInt(3)) {
            case 0 -> Amount.ofLibrary(mm, unit);
            case 1 -> Amount.of(unit.fromLibrary(mm), unit);
            default -> unit.of(Math.rint(unit.fromLibrary(mm) * 1024) / 1024);
        };
    }

    private boolean lot() {
        return random.nextInt(3) > 0;
    }

    private Job plan() {
        Neck design = design();
        Blank blank = Blank.ofLength(length(790, 820))
                .section(length(72, 80), length(26, 28))
                .nutAt(length(290, 300));
        blank = lot() ? blank.outOfParallel(length(-0.2, 0.2)) : blank;
        blank = lot()
                ? blank.endAllowance(length(0, 5))
                        .edgeAllowance(length(0, 1))
                        .planing(length(0, 0.5))
                        .sawKerf(length(1, 2))
                : blank;
        Job plan = Job.of(design, blank, shop())
                .limits(NeckLimits.withDefaults()
                        .slotOffset(length(0.05, 0.2))
                        .floorThickness(length(2, 4))
                        .bridgeOffset(length(0.5, 2)))
                .relief(length(0, 0.3));
        for (int i = random.nextInt(3); i > 0; i--) {
            plan = plan.trialCut(cut());
            plan = lot() ? plan.fenceMoved(move()) : plan;
        }
        plan = lot()
                ? plan.weather(Weather.from(ShopUnits.percent(between(30, 60)), ShopUnits.celsius(between(15, 25)))
                        .to(ShopUnits.percent(between(10, 90)), ShopUnits.celsius(between(-5, 35))))
                : plan;
        plan = lot() ? plan.order(order(design)) : plan;
        plan = lot() ? plan.workmanship(work()) : plan;
        return lot() ? plan.measured(readings()) : plan;
    }

    private double between(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    private Neck design() {
        Channel plain = lot()
                ? Channel.forRod(TrussRod.twoWay(length(290, 300))
                        .section(length(5.5, 6.5), length(8, 9))
                        .adjuster(End.HEEL))
                : Channel.forBar(Bar.carbon(length(290, 300)).section(length(5.5, 6.5), length(8, 9)));
        Channel channel = plain.startingAt(length(1, 5))
                .endClearance(length(0, 1))
                .sideClearance(length(0, 0.2))
                .fillet(length(0, 1))
                .depthClearance(length(0, 0.3))
                .arch(length(0, 0.4));
        channel = plain.rod().isPresent() && lot()
                ? channel.adjusterPocket(length(15, 20)).section(length(8, 9), length(11, 12))
                : channel;
        Fingerboard board = Fingerboard.tapered(length(38, 42), length(50, 54)).thickness(length(5, 7), length(5, 7));
        board = lot() ? board.radius(length(200, 300), length(300, 500)).farWidthAtFret(17) : board;
        board = lot() ? board.wood(Wood.EAST_INDIAN_EBONY) : board;
        board = lot() ? board.fretHeight(length(0.9, 1.2)) : board;
        board = lot() ? board.fallAway(length(0, 0.5)) : board;
        BackProfile back = BackProfile.between(length(20, 21), length(21, 22)).asymmetric(between(2, 3), between(2, 3));
        back = lot() ? back.volute(Volute.of(length(1, 3), length(20, 30))) : back;
        back = lot() ? back.heelTransition(HeelTransition.from(length(290, 310), length(20, 30))) : back;
        Neck design = Neck.named("No. " + random.nextInt(1000) + " \"\u00e9\" <&>")
                .scale(Scale.of(length(600, 620)).divisions(random.nextInt(12, 20)))
                .fingerboard(board)
                .back(back)
                .frets(20)
                .bodyAtFret(14)
                .channel(channel)
                .head(head());
        design = lot() ? design.wood(wood()) : design;
        design = lot() ? design.heel(heel()) : design;
        design = lot() ? design.neckSet(neckSet()) : design;
        design = lot() ? design.strings(strings()) : design;
        if (!lot()) {
            return design;
        }
        Head head = design.head().orElseThrow();
        Fingerboard fretted = design.fingerboard().fretHeight(length(0.9, 1.2));
        return design.fingerboard(fretted).head(head.posts(posts(count(design))));
    }

    private Wood wood() {
        return lot()
                ? Wood.SUGAR_MAPLE
                : Wood.named("own")
                        .shrinkage(ShopUnits.percent(between(3, 5)), ShopUnits.percent(between(6, 9)))
                        .modulus(Amount.of(between(9, 14), ShopUnit.GIGAPASCAL))
                        .density(ShopUnits.kgPerM3(between(500, 800)));
    }

    private StringSet strings() {
        List<Amount<Frequency>> pitches = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            pitches.add(ShopUnit.HERTZ.of(between(80, 400)));
        }
        StringSet strings = StringSet.of(pitches).tensions(ShopUnits.newton(between(60, 90)));
        strings = lot() ? strings.doubled() : strings;
        if (!lot()) {
            return strings;
        }
        strings = strings.diameters(length(1, 1.2), length(0.7, 0.9), length(0.4, 0.6), length(0.2, 0.3));
        Across across = Across.of(length(2, 4), length(50, 60)).inPair(length(2, 3));
        across = switch (random.nextInt(3)) {
            case 0 -> across;
            case 1 -> across.equalCentres();
            default -> across.graduated(length(0, 0.1));
        };
        return lot() ? strings.across(across) : strings;
    }

    private Shop shop() {
        Shop shop = Shop.with(Cutter.straight(length(5, 5.5))
                        .flutes(1 + random.nextInt(2), length(20, 22))
                        .shank(length(6, 13))
                        .stickOut(length(23, 30))
                        .runout(length(0, 0.03)))
                .repeatability(length(0.01, 0.05))
                .passes(length(1, 2), length(0, 0.5));
        shop = switch (random.nextInt(3)) {
            case 0 -> shop.fence(Fence.split(length(500, 700), length(-0.1, 0.1)));
            case 1 -> shop.fence(Fence.pivoting(length(600, 700)).fromPivot(length(300, 400), length(500, 600)));
            default -> shop.fence(Fence.onePiece(length(500, 700)));
        };
        shop = lot()
                ? shop.feelerGauges(FeelerSet.of(List.of(length(0.1, 0.2), length(0.2, 0.3), length(0.3, 0.5)))
                        .halfWidth(length(0, 0.01)))
                : shop;
        return lot()
                ? shop.feed(ShopUnit.MM_PER_MINUTE.of(between(1000, 2000)), ShopUnit.RPM.of(between(10_000, 20_000)))
                : shop;
    }

    private FenceMove move() {
        Amount<Length> size = length(0, 0.5);
        return lot() ? FenceMove.toward(size) : FenceMove.away(size);
    }

    private TrialCut cut() {
        TrialCut cut = lot()
                ? TrialCut.walls(length(35, 36), length(35, 36))
                : TrialCut.walls(List.of(length(35, 35.1), length(35, 35.1)), List.of(length(35, 35.1)));
        cut = lot() ? cut.slot(length(5, 6)).piece(length(75, 77)) : cut;
        cut = lot() ? cut.repeatability(length(0.01, 0.05)) : cut;
        return lot() ? cut.wallsCorrelated(between(-1, 1)) : cut;
    }

    private Head head() {
        Head head = Head.angled(ShopUnits.deg(between(5, 15)))
                .length(length(250, 260))
                .width(length(60, 70))
                .thickness(length(13, 16))
                .swung(ShopUnits.deg(between(-2, 2)));
        head = lot() ? head.veneer(length(0.1, 1), length(1, 4)) : head;
        head = lot() ? head.backVeneer(length(0.1, 1)) : head;
        head = lot() ? head.tapered(length(50, 55), length(60, 66)) : head;
        head = lot() ? head.tuners(length(12, 13), length(16, 17)) : head;
        // A flatter joint would be longer than the head.
        return lot() && head.angleRad() > Math.toRadians(8) ? head.scarfed(scarf()) : head;
    }

    private ScarfCut scarf() {
        return (lot() ? ScarfCut.inTheHead() : ScarfCut.inTheShaft())
                .kerf(length(1, 2))
                .cleaning(length(0, 0.4));
    }

    private Heel heel() {
        Heel heel = Heel.of(length(70, 90), length(50, 60));
        heel = lot() ? heel.blockLength(length(35, 45)) : heel;
        return switch (random.nextInt(4)) {
            case 0 -> heel.joint(Dovetail.tapered(ShopUnits.deg(between(2, 4))));
            case 1 ->
                heel.joint(Dovetail.tapered(ShopUnits.deg(between(2, 4)))
                        .length(length(15, 20))
                        .widths(length(36, 40), length(28, 32))
                        .height(length(50, 60)));
            case 2 ->
                heel.joint(Tenon.of(length(50, 60), length(18, 20))
                        .holes(length(6, 8), length(1, 2))
                        .at(length(15, 18), length(35, 38)));
            default -> heel;
        };
    }

    private NeckSet neckSet() {
        NeckSet set = NeckSet.saddle(length(14, 16))
                .atNut(length(0.3, 0.5))
                .action(length(1.5, 2.5))
                .compensation(length(1, 3))
                .fretPlane(length(8.5, 9.5));
        return lot() ? set.dome(Dome.of(length(4000, 5000)).pole(length(200, 300), length(5, 10))) : set;
    }

    private static int count(Neck design) {
        return design.strings().isPresent()
                ? design.strings().get().courses() * design.strings().get().inCourse()
                : 2;
    }

    private OrderOfWork order(Neck design) {
        Remedy remedy = Remedy.named("own remedy");
        OrderOfWork work = OrderOfWork.forNeck(design)
                .with(Operation.named("inlay the head")
                        .needs(Condition.named("b"), Condition.named("a"))
                        .blockedBy(Condition.NUT)
                        .because(Condition.NUT, "it is in the way")
                        .despite(Condition.NUT, remedy.how("by hand").adding("slip", AddedError.Way.ALONG, spread()))
                        .despite(Condition.named("a"), remedy)
                        .caution("Mind the \"edge\"."))
                .startingWith(Condition.named("b"), Condition.named("a"));
        work = lot() ? work.without("glue wings") : work;
        work = lot() ? work.done("rest the stock").done("flatten the face") : work;
        return lot() ? work.keep("cut scarf").before("cut rod channel") : work;
    }

    private ErrorDistribution<Length> spread() {
        ErrorDistribution<Length> spread = switch (random.nextInt(7)) {
            case 0 -> ErrorDistribution.normal(length(0.01, 0.1));
            case 1 -> ErrorDistribution.rectangular(length(0.01, 0.1));
            case 2 -> ErrorDistribution.triangular(length(0.01, 0.1));
            case 3 -> ErrorDistribution.arcsine(length(0.01, 0.1));
            case 4 -> ErrorDistribution.trapezoidal(length(0.1, 0.2), length(0.01, 0.1));
            case 5 -> ErrorDistribution.bias(length(-0.1, 0.1));
            default -> ErrorDistribution.samples(List.of(length(-0.1, 0.1), length(-0.1, 0.1), length(-0.1, 0.1)));
        };
        spread = lot() ? spread.shifted(length(-0.1, 0.1)) : spread;
        return lot() ? spread.degreesOfFreedom(between(1, 20)) : spread;
    }

    private Workmanship work() {
        return Workmanship.withDefaults()
                .edge(spread())
                .locating(spread())
                .cutting(spread())
                .gluing(spread())
                .fitting(spread())
                .stopping(spread());
    }

    private TunerPost[] posts(int count) {
        TunerPost[] posts = new TunerPost[count];
        for (int i = 0; i < count; i++) {
            posts[i] = TunerPost.at(length(50, 140)).aside(length(-20, 20)).above(length(0, 9));
        }
        return posts;
    }

    private MeasuredNeck readings() {
        MeasuredNeck readings = MeasuredNeck.none();
        if (lot()) {
            readings = readings.read(NeckFeature.CHANNEL_DEPTH, read(10, 10.5))
                    .read(NeckFeature.SLOT_OFFSET, read(-0.1, 0.1));
        }
        if (lot()) {
            readings =
                    readings.scarfAngle(Estimate.of(ShopUnits.deg(between(9, 14)), ShopUnits.deg(between(0.1, 0.3))));
        }
        if (lot()) {
            readings = readings.backDepth(length(50, 60), read(20, 21)).backDepth(length(200, 210), read(21, 22));
        }
        return lot() ? readings.read(NeckFeature.OFFSET_AT_BRIDGE, read(-1, 1)) : readings;
    }

    private Estimate<Length> read(double from, double to) {
        return lot()
                ? Estimate.of(length(from, to), length(0.01, 0.1))
                : Estimate.of(length(from, to), length(0.01, 0.1), between(1, 9));
    }
}
