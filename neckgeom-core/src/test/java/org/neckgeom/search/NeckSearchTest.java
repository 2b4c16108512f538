package org.neckgeom.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.CheckValues;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.Plan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.stock.Blank;
import org.neckgeom.sweep.Axis;
import org.neckgeom.sweep.Sweep;
import org.neckgeom.units.Amount;

/** Searches over necks, held against exhaustive sweeps and against what follows by hand. */
class NeckSearchTest {

    private static final Axis<Length> DEPTHS = Axis.steps(mm(11), mm(17), mm(0.25));
    private static final Axis<Length> RODS = Axis.steps(mm(6), mm(11), mm(0.25));
    private static final Axis<Angle> ANGLES = Axis.steps(deg(4), deg(12), deg(0.5));
    private static final Axis<Length> STARTS = Axis.steps(mm(1), mm(8), mm(1));

    private static Channel channel(Neck neck) {
        return neck.channel().orElseThrow();
    }

    private static Neck depth(Neck neck, Amount<Length> depth) {
        return neck.back(BackProfile.between(depth, depth.plus(mm(2))).rounded());
    }

    private static Neck rod(Neck neck, Amount<Length> height) {
        double start = channel(neck).startMm();
        return neck.channel(
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), height)).startingAt(mm(start)));
    }

    private static Neck start(Neck neck, Amount<Length> start) {
        return neck.channel(channel(neck).startingAt(start));
    }

    private static Amount<Length> woodLeft(Neck neck) {
        return mm(FloorThickness.under(neck).least().woodMm());
    }

    private static Amount<Length> depthOf(Neck neck) {
        return mm(neck.back().firstDepthMm());
    }

    private static Amount<Length> rodOf(Neck neck) {
        return mm(channel(neck).rod().orElseThrow().heightMm());
    }

    /** The front of a coarse problem, a deep rod in a shallow neck, is that of the whole grid of 4,200 necks. */
    @Tag("long")
    @Test
    void front_isThatOfAnExhaustiveSweep() {
        Neck neck = SampleNecks.octaveMandolin();
        List<double[]> all = Sweep.of(neck)
                .over("depth", DEPTHS, NeckSearchTest::depth)
                .over("rod", RODS, NeckSearchTest::rod)
                .over("start", STARTS, NeckSearchTest::start)
                .results(one -> new double[] {
                    depthOf(one).libraryValue(),
                    rodOf(one).libraryValue(),
                    woodLeft(one).libraryValue()
                })
                .flatMap(result -> result.answer().stream())
                .filter(figures -> figures[2] >= 3)
                .toList();
        TreeSet<String> exhaustive = new TreeSet<>();
        for (double[] one : all) {
            if (all.stream()
                    .noneMatch(other ->
                            other[0] <= one[0] && other[1] >= one[1] && (other[0] < one[0] || other[1] > one[1]))) {
                exhaustive.add(mm(one[0]) + " " + mm(one[1]));
            }
        }
        for (int seed = 1; seed <= 2; seed++) {
            SearchResult<Neck> result = Search.of(neck)
                    .over("depth", DEPTHS, NeckSearchTest::depth)
                    .over("rod", RODS, NeckSearchTest::rod)
                    .over("start", STARTS, NeckSearchTest::start)
                    .least("depth", NeckSearchTest::depthOf)
                    .greatest("rod", NeckSearchTest::rodOf)
                    .within("wood left", NeckSearchTest::woodLeft, Limits.atLeast(mm(3)))
                    .designs(2_000)
                    .frontSize(60)
                    .seed(seed)
                    .result();

            TreeSet<String> found = new TreeSet<>();
            result.front()
                    .forEach(point -> found.add(
                            point.aims().get("depth") + " " + point.aims().get("rod")));
            assertThat(found).as("seed %d", seed).isEqualTo(exhaustive).hasSizeGreaterThan(10);
            assertThat(result.asked()).isLessThan(2_001);
        }
    }

    /** By hand: rod 9 mm, fillet at least 2 mm, 0.2 mm clear: 11.2 mm; one millimetre less of fillet is one less of depth. */
    @Test
    void leastDepthOfAChannel_isRodFilletAndClearance() {
        Neck neck = SampleNecks.octaveMandolin();

        SearchResult<Neck> result = Search.of(neck)
                .between(
                        "fillet",
                        mm(0),
                        mm(5),
                        (one, fillet) -> one.channel(channel(one).fillet(fillet)))
                .between(
                        "clearance",
                        mm(0),
                        mm(1),
                        (one, clear) -> one.channel(channel(one).depthClearance(clear)))
                .least("channel depth", one -> mm(channel(one).depthMm()))
                .within("cover", one -> mm(channel(one).filletMm()), Limits.atLeast(mm(2)))
                .within("clearance", one -> mm(channel(one).depthClearanceMm()), Limits.between(mm(0.2), mm(0.4)))
                .result();

        SearchPoint<Neck> best = result.best().orElseThrow();
        assertThat(channel(best.design()).depthMm()).isCloseTo(11.2, within(1e-9));
        assertThat(result.prices()).extracting(SearchPrice::limit).containsExactly("cover", "clearance");
        assertThat(result.prices().get(0).gains().get("channel depth").toString())
                .isEqualTo("1 mm");
        // The clearance cannot go below 0, where its own range ends.
        assertThat(result.prices().get(1).gains().get("channel depth").toString())
                .isEqualTo("0.2 mm");
    }

    /** Whole plans: a head is as flat as the break angle allows, and so much flatter where it may be a degree less. */
    @Test
    void flattestHead_isTheLeastWhoseCheckIsOk() {
        double least = leastAngle(5);

        SearchResult<Neck> result = Search.of(headed(SampleNecks.octaveMandolin()))
                .over("angle", ANGLES, NeckSearchTest::angled)
                .least("angle", neck -> neck.head().orElseThrow().angle())
                .keeping(NeckSearchTest::plan, CheckCode.STRINGS_PRESS_ON_THE_NUT, CheckCode.WOOD_LEFT)
                .result();

        SearchPoint<Neck> best = result.best().orElseThrow();
        assertThat(best.design().head().orElseThrow().angleRad()).isEqualTo(least);
        assertThat(result.prices()).singleElement().satisfies(price -> {
            assertThat(price.limit()).isEqualTo("strings-press-on-the-nut");
            assertThat(price.easedBy()).contains(deg(1));
            assertThat(price.gains().get("angle").libraryValue())
                    .isPositive()
                    .isCloseTo(least - leastAngle(4), within(1e-12));
        });
    }

    /** By every angle: the least in rad whose break angle is at least so many degrees, the check's limit being 5. */
    private static double leastAngle(double degrees) {
        return Sweep.of(headed(SampleNecks.octaveMandolin()))
                .over("angle", ANGLES, NeckSearchTest::angled)
                .results(neck -> breakAngle(neck) >= deg(degrees).libraryValue()
                        ? neck.head().orElseThrow().angleRad()
                        : 9)
                .mapToDouble(result -> result.answer().orElse(9.0))
                .min()
                .orElseThrow();
    }

    private static double breakAngle(Neck neck) {
        return CheckValues.valueOf(plan(neck), CheckCode.STRINGS_PRESS_ON_THE_NUT);
    }

    private static Neck headed(Neck neck) {
        return neck.fingerboard(neck.fingerboard().fretHeight(mm(1.1)))
                .strings(neck.strings()
                        .orElseThrow()
                        .diameters(mm(0.5))
                        .across(Across.of(mm(3), mm(44)).inPair(mm(2.6))))
                .head(neck.head()
                        .orElseThrow()
                        .posts(Stream.of(-1, 1)
                                .flatMap(side -> Stream.of(40, 75, 110, 145)
                                        .map(along -> TunerPost.at(mm(along))
                                                .aside(mm(22 * side))
                                                .above(mm(8))))
                                .sorted(Comparator.comparingDouble(TunerPost::asideMm))
                                .toArray(TunerPost[]::new)));
    }

    private static Neck angled(Neck neck, Amount<Angle> angle) {
        return neck.head(neck.head().orElseThrow().angle(angle));
    }

    private static Plan plan(Neck neck) {
        return Job.of(neck, SampleBench.octaveBlank(), SampleBench.metricShop()).plan();
    }

    /** A margin is kept where the check is OK, and its room has the sign of that; for every check of the sample plans. */
    @Test
    void margins_agreeWithTheChecks() {
        List<String> seen = new ArrayList<>();
        for (Neck neck : List.of(SampleNecks.octaveMandolin(), headed(SampleNecks.octaveMandolin()))) {
            for (double depth = 10; depth <= 18; depth += 0.5) {
                Plan plan = Job.of(
                                depth(neck, mm(depth)),
                                Blank.ofLength(mm(1200)).section(mm(90), mm(30)),
                                SampleBench.metricShop())
                        .plan();
                for (PlanCheck check : plan.checks()) {
                    if (plan.check(check.code()).orElseThrow() != check) {
                        continue; // the first of a code is the one that is asked
                    }
                    SearchMargin margin = CheckMargin.<Plan>rules(one -> one, List.of(check.code()))
                            .margins()
                            .apply(plan)
                            .get(0);
                    assertThat(margin.isKept()).as(check.toString()).isEqualTo(check.outcome() == Outcome.OK);
                    margin.room().ifPresent(room -> {
                        assertThat(room.libraryValue() >= 0)
                                .as(check.toString())
                                .isEqualTo(margin.isKept());
                        seen.add(check.code().code());
                    });
                }
            }
        }
        assertThat(seen).contains("wood-left", "depth-of-a-pass", "string-line", "strings-press-on-the-nut");
    }
}
