package org.neckgeom.channel;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.inchPerMinute;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.rpm;

import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.dfp.Dfp;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Numerics;
import org.neckgeom.validation.PracticeFigures;
import org.neckgeom.validation.Rows;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** The set-up against what was published, computed elsewhere, or is said by the trade. */
public final class SetupChecks {

    private SetupChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        centring(checks.topic("Setting up"));
        closure(checks);
        rounds(checks);
        decision(checks);
        leaves(checks);
        channel(checks);
        cutter(checks);
        heads(checks);
        bowed(checks);
    }

    private static void bowed(Checks checks) {
        BowedBlank bowed =
                BowedBlank.of(Blank.ofLength(mm(640)).section(mm(62), mm(21)).nutAt(mm(0)), mm(0.5));
        checks.check("lift of a bowed blank", Source.SCRIPT, "practice-2-figures.csv", Status.EXACT, "mm")
                .relative(
                        PracticeFigures.of("Q12"),
                        bowed.table(mm(400)).liftAt(mm(320)).libraryValue(),
                        1e-8)
                .relative(PracticeFigures.of("Q12b"), bowed.liftAt(mm(160)).libraryValue(), 1e-8)
                .of("BowedBlank.liftAt");
        checks.check("push that closes its hollow", Source.SCRIPT, "practice-2-figures.csv", Status.EXACT, "N")
                .relative(
                        PracticeFigures.of("Q13"),
                        bowed.wood(Wood.BLACK_WALNUT.modulus(gigapascal(11.5)))
                                .push()
                                .orElseThrow()
                                .libraryValue(),
                        1e-8)
                .of("BowedBlank.push");
    }

    private static void centring(Checks checks) {
        Check half = checks.check(
                "fence move for walls 0.4 mm apart: half of it", Source.TRADE, "trial cut", Status.PRACTICE, "mm");
        half.of("Centring.offset", "Centring.move", "SlotOffset.amount", "FenceMove.amount");
        half.figure(
                0.2,
                Centring.of(TrialCut.walls(mm(30.4), mm(30)).repeatability(mm(0.02)))
                        .move()
                        .amountMm(),
                1e-12);
        Check share = checks.check(
                "uncertainty of a move from two readings of u: 0.7 u", Source.TRADE, "trial cut", Status.PRACTICE, "u");
        share.of("SlotOffset.uncertainty");
        share.figure(0.7, SlotOffset.of(mm(0.1), mm(1)).uncertaintyMm() / Math.sqrt(2), 0.01);
        Check chance = checks.check(
                "conformance probability of an offset from two walls",
                Source.MPMATH,
                "channel/conformity.csv",
                Status.EXACT,
                "");
        chance.of("Centring.offset", "Centring.verdict");
        for (Map<String, String> row : Rows.of("/channel/conformity.csv")) {
            double offset = Rows.number(row, "y");
            TrialCut trial = TrialCut.walls(mm(100 + offset), mm(100 - offset))
                    .repeatability(mm(Rows.number(row, "u") * Math.sqrt(2)));
            chance.figure(
                    Rows.number(row, "probability"),
                    Verdict.of(
                                    Centring.of(trial).offset().estimate(),
                                    Limits.between(mm(Rows.number(row, "lower")), mm(Rows.number(row, "upper"))))
                            .probability(),
                    1e-11);
        }
    }

    /** How often a reading that is wrong is caught, and readings that are right are not. */
    private static void closure(Checks checks) {
        int trials = 20_000;
        for (String stage : new String[] {"warn", "refuse"}) {
            for (String m : new String[] {"1", "4"}) {
                for (String wrongBy : new String[] {"0", "0.05", "0.1", "0.15", "0.2", "0.5"}) {
                    Map<String, String> row = Rows.of("/channel/slot/closure-power.csv").stream()
                            .filter(r ->
                                    r.get("rule").equals("new") && r.get("nu").equals("inf"))
                            .filter(r ->
                                    r.get("m").equals(m) && r.get("wrong_by").equals(wrongBy))
                            .findFirst()
                            .orElseThrow();
                    ClosurePower.Rates rates = ClosurePower.of(
                            Integer.parseInt(m), Double.POSITIVE_INFINITY, Double.parseDouble(wrongBy), trials, 5);
                    double share = Rows.number(row, stage);
                    Check power = checks.check(
                            "closure, " + m + (m.equals("1") ? " cut" : " cuts") + ", one reading wrong by " + wrongBy
                                    + " mm: share " + (stage.equals("warn") ? "warned of" : "refused"),
                            Source.NUMPY,
                            "setup/slot/closure-power.csv",
                            Status.SIMULATED,
                            "");
                    power.of("Closure.allowed");
                    power.figure(
                            share,
                            stage.equals("warn") ? rates.warned() : rates.refused(),
                            ClosurePowerTest.fourErrors(share, trials, 400_000));
                }
            }
        }
    }

    /** Three cuts without a move between them, as one weighted least-squares problem. */
    private static void rounds(Checks checks) {
        Check least = checks.check(
                "offset of three cuts, and its uncertainty",
                Source.HIPPARCHUS,
                "QRDecomposition",
                Status.LIBRARY,
                "mm");
        least.of("CentringRounds.estimate", "SlotOffset.amount", "SlotOffset.uncertainty");
        SplittableRandom random = new SplittableRandom(32);
        for (int i = 0; i < 20; i++) {
            double[][] design = new double[3][1];
            double[] seen = new double[3];
            CentringRounds rounds = null;
            for (int n = 0; n < 3; n++) {
                double u = random.nextDouble(0.01, 0.04);
                double offset = random.nextDouble(0.09, 0.11);
                // Two walls of uncertainty u each leave u / sqrt(2).
                design[n][0] = Math.sqrt(2) / u;
                seen[n] = offset * Math.sqrt(2) / u;
                TrialCut cut = TrialCut.walls(mm(30 + offset), mm(30 - offset)).repeatability(mm(u));
                rounds = rounds == null
                        ? CentringRounds.of(cut)
                                .bench(BenchUncertainty.withDefaults().cutScatter(mm(0)))
                        : rounds.trialCut(cut);
            }
            RealMatrix matrix = new Array2DRowRealMatrix(design);
            double fitted = new QRDecomposition(matrix)
                    .getSolver()
                    .solve(new ArrayRealVector(seen))
                    .getEntry(0);
            double deviation = 1 / matrix.getFrobeniusNorm();
            least.figure(fitted, rounds.estimate().amountMm(), 1e-13)
                    .figure(deviation, rounds.estimate().uncertaintyMm(), 1e-13);
        }
    }

    private static void decision(Checks checks) {
        Check chances = checks.check(
                "conformance probability: the slot keeps its limit along the channel",
                Source.SCIPY,
                "setup/slot/cases.csv",
                Status.LIBRARY,
                "");
        chances.of("SlotPlace.conformanceProbability");
        double[] ours = SlotCasesTest.chances();
        for (int i = 0; i < ours.length; i++) {
            chances.figure(SlotCasesTest.expectedChances().get(i), ours[i], 1e-6);
        }
        double[][] known = {{0, 0.02, 0.1}, {0.02, 0.02, 0.1}, {0.03, 0.02, 0.1}, {0.05, 0.02, 0.15}};
        double[][] assumed = {{0, 0.01, 0.1}, {0.02, 0.01, 0.1}, {0.03, 0.01, 0.1}, {0, 0.04, 0.1}, {0.02, 0.04, 0.1}};
        for (double[] row : known) {
            coverage(checks, "the scatters known", row, 0.01);
        }
        for (double[] row : assumed) {
            coverage(checks, "moves assumed to scatter by 0.02 mm scatter by " + row[1] + " mm", row, 0.05);
        }
    }

    /** The share of good necks among those that a decision let be cut, against the chance it claimed of them. */
    private static void coverage(Checks checks, String what, double[] row, double allowed) {
        SlotCoverageTest.Sessions seen = SlotCoverageTest.sessions(row[0], row[1], row[2]);
        checks.check(
                        "share of necks within " + row[2] + " mm of those let be cut, cuts scatter by " + row[0]
                                + " mm, " + what,
                        Source.SESSIONS,
                        "30,000 sessions, SlotCoverageTest",
                        Status.SIMULATED,
                        "")
                .of("CentringRounds.next", "SlotPlace.conformanceProbability")
                .figure(seen.share(), seen.claim(), allowed);
    }

    private static void leaves(Checks checks) {
        for (String status : new String[] {"published", "computed"}) {
            Check stacks = checks.check(
                    "height of the nearest stack for a wanted height",
                    Source.GAUGE_BLOCKS,
                    "gauge-block-stacks.csv",
                    Status.ofTable(status),
                    "");
            stacks.of("FenceMove.leaves", "FeelerStack.height", "FeelerStack.residual");
            for (Map<String, String> row : Rows.of("/channel/gauge-block-stacks.csv")) {
                if (row.get("status").equals(status)) {
                    double[] blocks =
                            row.get("set").equals("inch") ? LeafSearchTest.inchBlocks() : LeafSearchTest.metricBlocks();
                    int[] places =
                            LeafSearch.nearest(blocks, Rows.number(row, "height"), (int) Rows.number(row, "blocks"));
                    stacks.figure(
                            Rows.number(row, "height"),
                            Arrays.stream(places).mapToDouble(i -> blocks[i]).sum(),
                            1e-9);
                }
            }
        }
    }

    private static void channel(Checks checks) {
        Check arch = checks.check("depth of an arched floor", Source.MPMATH, "arched-floor.csv", Status.EXACT, "mm");
        arch.of("RodSlot.depthAt", "Channel.floorDepthAt", "SlotDepth.inTheMiddle", "SlotDepth.atEnds");
        for (Map<String, String> row : Rows.of("/channel/arched-floor.csv")) {
            RodSlot slot = slot(
                    Rows.number(row, "length"),
                    Rows.number(row, "end_depth"),
                    Rows.number(row, "middle_depth") - Rows.number(row, "end_depth"));
            arch.figure(
                    Rows.number(row, "depth"),
                    slot.depthAt(mm(Rows.number(row, "from_start"))).libraryValue(),
                    1e-12);
        }
        Check pass = checks.check(
                "deepest usual pass of a 1/4 in cutter in hardwood: 1/16 in", Source.TRADE, "", Status.PRACTICE, "mm");
        pass.of("Passes.deepest");
        pass.figure(1.5875, Shop.with(Cutter.straight(inch(0.25))).deepestPass().libraryValue(), 1e-12);

        SplittableRandom random = new SplittableRandom(31);
        Numerics.worst(checks, "depth of an arched floor", "L 100 to 900, arch 1e-6 to 10 mm", 1e-9, 10_000)
                .points(() -> {
                    double length = random.nextDouble(100, 900);
                    double end = random.nextDouble(6, 12);
                    double s = Math.pow(10, random.nextDouble(-6, 1));
                    double x = length * random.nextDouble();
                    Dfp half = Numerics.of(length).divide(2);
                    Dfp arched = Numerics.of(s);
                    Dfp radius =
                            half.multiply(half).add(arched.multiply(arched)).divide(arched.multiply(2));
                    Dfp u = Numerics.of(x).subtract(half);
                    Dfp drop = radius.subtract(
                            radius.multiply(radius).subtract(u.multiply(u)).sqrt());
                    Channel channel = Channel.forRod(TrussRod.singleAction(mm(length), mm(5)))
                            .depthClearance(mm(end - 5))
                            .arch(mm(s));
                    // The end depth is a sum of its own: what is compared is the floor from there on.
                    return new Numerics.Point(
                            Numerics.of(channel.depthMm()).add(arched).subtract(drop), channel.floorDepthAtMm(x));
                })
                .of("RodSlot.depthAt", "Channel.floorDepthAt");
        Numerics.worst(checks, "radius of an arched floor", "L 100 to 900, arch 1e-6 to 10 mm", 1e-9, 10_000)
                .points(() -> {
                    double length = random.nextDouble(100, 900);
                    double s = Math.pow(10, random.nextDouble(-6, 1));
                    Dfp half = Numerics.of(length).divide(2);
                    Dfp arched = Numerics.of(s);
                    return new Numerics.Point(
                            half.multiply(half).add(arched.multiply(arched)).divide(arched.multiply(2)),
                            slot(length, 9, s).floor().radius().libraryValue());
                })
                .of("ChannelFloor.radius");
    }

    private static RodSlot slot(double length, double endDepth, double arch) {
        return RodSlot.of(Channel.forRod(TrussRod.singleAction(mm(length), mm(5)))
                .depthClearance(mm(endDepth - 5))
                .arch(mm(arch)));
    }

    private static void cutter(Checks checks) {
        CutterLoad load = CutterLoad.of(
                Cutter.straight(inch(0.25)), Wood.SUGAR_MAPLE, inchPerMinute(100), rpm(18_000), inch(0.1));
        double feetPerMinute = load.rimSpeed().valueIn(ShopUnit.METRE_PER_SECOND) * 60 / 0.3048;
        checks.check("rim speed: v = 0.262 d n, ft/min", Source.SHOP_FORMULAS, "surface speed", Status.PUBLISHED, "")
                .figure(0.262 * 0.25 * 18_000, feetPerMinute, 1)
                .of("CutterLoad.rimSpeed");
        checks.check("speed: n = 3.82 v/d, rpm", Source.SHOP_FORMULAS, "spindle speed", Status.PUBLISHED, "")
                .figure(18_000, 3.82 * feetPerMinute / 0.25, 2)
                .of("CutterLoad.rimSpeed");
        checks.check(
                        "feed: n times chip load times edges, in/min",
                        Source.SHOP_FORMULAS,
                        "feed rate",
                        Status.PUBLISHED,
                        "")
                .figure(100, 18_000 * load.chipLoad().valueIn(ShopUnit.INCH) * 2, 1e-9)
                .of("CutterLoad.chipLoad");
        checks.check("rim speed of 6.35 mm at 18,000 rpm", Source.MPMATH, "pi d n", Status.EXACT, "m/min")
                .relative(359.084040305313367, load.rimSpeed().valueIn(ShopUnit.METRE_PER_SECOND) * 60, 1e-12)
                .of("CutterLoad.rimSpeed");
        Check bend =
                checks.check("bend of a stepped cutter", Source.MPMATH, "stepped-cantilever.csv", Status.EXACT, "mm");
        bend.of("CutterLoad.bend");
        for (Map<String, String> row : Rows.of("/channel/stepped-cantilever.csv")) {
            bend.relative(
                    Rows.number(row, "bend"),
                    CutterLoad.bend(
                            Rows.number(row, "force"),
                            Rows.number(row, "modulus"),
                            Rows.number(row, "free"),
                            CutterLoad.roundSecondMoment(Rows.number(row, "free_diameter")),
                            Rows.number(row, "root"),
                            CutterLoad.roundSecondMoment(Rows.number(row, "root_diameter"))),
                    1e-12);
        }
        checks.check(
                        "bend of an even cantilever",
                        Source.AISC_360,
                        "benchmark case 2, no thrust",
                        Status.PUBLISHED,
                        "in")
                .figure(0.901, CutterLoad.bend(1, 29_000, 200, 484, 136, 484), 5e-4)
                .of("CutterLoad.bend");
    }

    private static void heads(Checks checks) {
        Check proud = checks.check("corner of a swung head", Source.MPMATH, "swung-head.csv", Status.EXACT, "mm");
        Check skew = checks.check("skew it causes", Source.MPMATH, "swung-head.csv", Status.EXACT, "deg");
        Check shift = checks.check("slot moved by it", Source.MPMATH, "swung-head.csv", Status.EXACT, "mm");
        proud.of("HeadInterference.proud", "HeadSkew.proud");
        skew.of("HeadSkew.angleAt");
        shift.of("HeadSkew.at");
        for (Map<String, String> row : Rows.of("/channel/swung-head.csv")) {
            double pitch = Rows.number(row, "pitch");
            Head head = (pitch == 0 ? Head.flat() : Head.angled(deg(pitch)))
                    .length(mm(Rows.number(row, "head_length")))
                    .width(mm(Rows.number(row, "tip_width")))
                    .swung(deg(Rows.number(row, "swing")));
            Blank blank = Blank.ofLength(mm(Rows.number(row, "shaft_length")))
                    .section(mm(Rows.number(row, "shaft_width")), mm(20));
            HeadSkew found = HeadInterference.of(head, blank, Fence.onePiece(mm(3000)))
                    .outline(blank.width(), mm(Rows.number(row, "tip_width")))
                    .skew();
            proud.relative(Rows.number(row, "proud"), found.proud().libraryValue(), 1e-11);
            skew.relative(Rows.number(row, "skew"), found.angleAt(mm(0)).valueIn(ShopUnit.DEGREE), 1e-11);
            shift.relative(
                    -Rows.number(row, "shift"),
                    found.at(mm(Rows.number(row, "station"))).amountMm(),
                    1e-11);
        }
    }
}
