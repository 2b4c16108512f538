package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TrapezoidalDistribution;
import org.junit.jupiter.api.Test;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.End;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.Head;
import org.neckgeom.design.HeelTurn;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Rod;
import org.neckgeom.design.Scale;
import org.neckgeom.design.Volute;
import org.neckgeom.kernel.Vec;
import org.neckgeom.measure.Spread;
import org.neckgeom.units.LengthStyle;

class WoodLeftTest {

    private static final long SEED = 20;
    private static final Scale SCALE = Scale.of(mm(560));
    private static final Rod ROD = Rod.twoWay(mm(300)).section(mm(6), mm(9));
    private static final Channel CHANNEL = Channel.forRod(ROD).startingAt(mm(3)).depthClearance(mm(0.2));
    private static final BackProfile EVEN = BackProfile.between(mm(20), mm(20)).rounded();

    @Test
    void least_underAHalfCircleIsItsRadiusLessTheCornersDistance() {
        WoodLeft wood = WoodLeft.under(CHANNEL, BackShape.of(EVEN, SCALE, x -> 20));

        assertThat(wood.least().woodMm()).isCloseTo(20 - Math.hypot(3, 9.2), offset(1e-12));
        assertThat(wood.least().straightDown().house()).isCloseTo(10.8, offset(1e-12));
    }

    @Test
    void under_aWholeDesignIsTheSameAsItsParts() {
        NeckDesign neck = neck().channel(CHANNEL);
        WoodLeft parts = WoodLeft.under(CHANNEL, BackShape.of(neck.back(), neck.scale(), neck::halfWidthAtMm));

        assertThat(WoodLeft.under(neck).alongMm(50)).isEqualTo(parts.alongMm(50));
        assertThat(WoodLeft.under(neck)).isEqualTo(WoodLeft.under(neck)).hasSameHashCodeAs(WoodLeft.under(neck));
    }

    @Test
    void at_agreesWithTheSixtyDigitTableWhereTheSectionIsOneOfItsRows() {
        // Source: superellipse-distance.csv, first row: p 2, half-width 17, depth 15, corner at 3 and 9.2.
        WoodLeft wood = WoodLeft.under(CHANNEL, BackShape.of(BackProfile.between(mm(15), mm(15)), SCALE, x -> 17));

        assertThat(wood.at(mm(100)).woodMm()).isCloseTo(5.468299771200038650087646, offset(1e-11));
    }

    @Test
    void least_isTheDistanceInSpaceToAHundredthOfAMillimetre() {
        NeckDesign neck = neck().channel(CHANNEL);
        WoodLeft wood = WoodLeft.under(neck);
        for (double x : new double[] {20, 120, 250}) {
            // Brute force in space: from the corner at x to the carved surface around it.
            double best = Double.POSITIVE_INFINITY;
            for (double s = x - 8; s <= x + 8; s += 0.05) {
                double a = neck.halfWidthAtMm(s);
                double b = neck.backDepthAtMm(s);
                for (double y = 2; y <= 7; y += 0.02) {
                    double z = b * Math.sqrt(1 - y * y / (a * a));
                    best = Math.min(best, Math.sqrt((s - x) * (s - x) + (y - 3) * (y - 3) + (z - 9.2) * (z - 9.2)));
                }
            }

            assertThat(wood.at(mm(x)).woodMm()).as("at %s", x).isCloseTo(best, offset(0.01));
        }
    }

    @Test
    void least_seesThePocket() {
        NeckDesign neck = neck().channel(CHANNEL.adjusterPocket(mm(20)).section(mm(10), mm(10.5)));

        WoodAt least = WoodLeft.under(neck).least();

        assertThat(least.stationMm()).isBetween(3.0, 23.0);
        assertThat(least.woodMm())
                .isLessThan(WoodLeft.under(neck().channel(CHANNEL)).least().woodMm() - 1);
        assertThat(WoodLeft.under(neck().channel(Channel.forRod(ROD.adjuster(End.HEEL))
                                .adjusterPocket(mm(20))
                                .section(mm(10), mm(12))))
                        .least()
                        .stationMm())
                .isBetween(280.0, 300.0);
    }

    @Test
    void least_ofAnArchedChannelLiesUnderItsDeepMiddle() {
        NeckDesign neck = neck().channel(CHANNEL.arch(mm(4)));

        assertThat(WoodLeft.under(neck).least().stationMm()).isBetween(100.0, 160.0);
    }

    @Test
    void offCentre_losesWoodWhicheverWay() {
        WoodLeft centred = WoodLeft.under(neck().channel(CHANNEL));
        WoodLeft treble = centred.offCentre(mm(0.8));
        WoodLeft bass = centred.offCentre(mm(-0.8));

        assertThat(treble.least().woodMm())
                .isEqualTo(bass.least().woodMm())
                .isLessThan(centred.least().woodMm());
        assertThat(treble.least().isTowardTreble()).isTrue();
        assertThat(bass.least().isTowardTreble()).isFalse();
        assertThat(centred.offCentre(mm(0))).isEqualTo(centred);
    }

    @Test
    void skewed_movesTheFarEndByTheRun() {
        WoodLeft centred = WoodLeft.under(CHANNEL, BackShape.of(EVEN, SCALE, x -> 20));
        double aside = 300 * Math.tan(Math.toRadians(0.3));

        assertThat(centred.skewed(deg(0.3)).at(mm(303)).woodMm())
                .isCloseTo(20 - Math.hypot(3 + aside, 9.2), offset(1e-11));
        assertThat(centred.skewed(deg(0.3)).least().stationMm()).isCloseTo(303, offset(1e-9));
    }

    @Test
    void roundedFloor_leavesMoreWoodAtTheCornersButNotInThePocket() {
        WoodLeft square = WoodLeft.under(CHANNEL, BackShape.of(EVEN, SCALE, x -> 20));
        WoodLeft pocketed = WoodLeft.under(
                CHANNEL.adjusterPocket(mm(20)).section(mm(10), mm(10.5)), BackShape.of(EVEN, SCALE, x -> 20));

        // Half circle: from the rounding's centre at 1 and 7.2, less its radius of 2.
        assertThat(square.roundedFloor(mm(2)).least().woodMm()).isCloseTo(20 - Math.hypot(1, 7.2) - 2, offset(1e-12));
        assertThat(pocketed.roundedFloor(mm(2)).least()).isEqualTo(pocketed.least());
        assertThatThrownBy(() -> square.roundedFloor(mm(3.1)))
                .hasMessage("floor's rounding must be no more than 3 mm, but was 3.1 mm");
    }

    @Test
    void asymmetric_isThinnerOnThePointedSide() {
        WoodLeft wood = WoodLeft.under(
                CHANNEL, BackShape.of(BackProfile.between(mm(16), mm(16)).asymmetric(2.5, 1.6), SCALE, x -> 20));

        assertThat(wood.least().isTowardTreble()).isTrue();
    }

    @Test
    void transitions_leaveWoodOnAtBothEnds() {
        NeckDesign neck = neck().channel(CHANNEL);
        WoodLeft plain = WoodLeft.under(neck);
        WoodLeft whole = WoodLeft.under(
                neck.back(neck.back().volute(Volute.of(mm(3), mm(30))).heelTransition(HeelTurn.from(mm(270), mm(40)))));

        assertThat(whole.at(mm(3)).straightDown().house()
                        - plain.at(mm(3)).straightDown().house())
                .isCloseTo(3 * 0.5 * (1 + Math.cos(Math.PI * 0.1)), offset(1e-12));
        assertThat(whole.at(mm(303)).straightDown().house()
                        - plain.at(mm(303)).straightDown().house())
                .isCloseTo(40 - Math.sqrt(40 * 40 - 33 * 33), offset(1e-12));
        assertThat(whole.at(mm(100))).isEqualTo(plain.at(mm(100)));
    }

    @Test
    void at_inTheHeadEndsAtTheHeadsBack() {
        Channel intoHead = Channel.forRod(ROD).startingAt(mm(-30));
        NeckDesign neck = neck().channel(intoHead).head(Head.angled(deg(13)).thickness(mm(9.5)));
        double a = Math.toRadians(13);
        // The head's back plane by vectors: 9.5 below the face, along the face's normal, seen at x = -2.
        Vec normal = Vec.Z.turned(Vec.Y, -a);
        double depth = -Vec.meet(normal, -9.5, Vec.X, -2).z();

        assertThat(WoodLeft.under(neck).at(mm(-2)).straightDown().house()).isCloseTo(depth - 9, offset(1e-9));
    }

    @Test
    void chanceBelow_oneNormalSpreadIsThatOfCommonsStatistics() {
        WoodLeft wood = WoodLeft.under(neck().channel(CHANNEL));
        double least = wood.least().woodMm();

        double chance = wood.chanceBelow(mm(4.4), Spread.normal(mm(0.3))).probability();

        assertThat(chance).isCloseTo(NormalDistribution.of(least, 0.3).cumulativeProbability(4.4), offset(1e-13));
    }

    @Test
    void chanceBelow_threeSpreadsAgreesWithDrawingThem() {
        WoodLeft wood = WoodLeft.under(neck().channel(CHANNEL));
        WoodSpreads spreads = WoodSpreads.ofDepth(Spread.normal(mm(0.15)))
                .offset(Spread.rectangular(mm(0.9)))
                .carving(Spread.triangular(mm(0.6)));
        double limit = wood.least().woodMm() - 0.35;
        SplittableRandom random = new SplittableRandom(SEED);
        int trials = 60_000;
        int below = 0;
        for (int i = 0; i < trials; i++) {
            double d = 0.15 * random.nextGaussian();
            double e = 0.9 * (2 * random.nextDouble() - 1);
            double c = 0.6 * (random.nextDouble() - random.nextDouble());
            // The thinnest station stays at the head end of this channel whatever the errors.
            if (wood.woodMm(3, d, e) - c < limit) {
                below++;
            }
        }

        double chance = wood.chanceBelow(mm(limit), spreads).probability();

        double drawn = (double) below / trials;
        assertThat(Math.abs(chance - drawn))
                .as("seed %d: %s against %s", SEED, chance, drawn)
                .isLessThan(4 * Math.sqrt(drawn * (1 - drawn) / trials) + 1e-3 * drawn);
    }

    @Test
    void chanceBelow_theWiderSpreadMayBeEitherOne() {
        // Straight down under a nearly flat back depth and carving are the same loss, so their spreads may be swapped.
        WoodLeft flat = WoodLeft.under(
                CHANNEL, BackShape.of(BackProfile.between(mm(15), mm(15)).power(20), SCALE, x -> 24));
        Spread<javax.measure.quantity.Length> wide = Spread.normal(mm(0.4));
        Spread<javax.measure.quantity.Length> narrow = Spread.rectangular(mm(0.2));

        double one = flat.chanceBelow(mm(5), WoodSpreads.ofDepth(wide).carving(narrow))
                .probability();
        double other = flat.chanceBelow(mm(5), WoodSpreads.ofDepth(narrow).carving(wide))
                .probability();

        assertThat(one).isBetween(0.01, 0.2);
        assertThat(one).isCloseTo(other, offset(1e-6));
    }

    @Test
    void chanceBelow_keepsItsDigitsInTheTail() {
        // Straight down under a nearly flat back the loss is depth and carving together: their sum's tail by a fine
        // midpoint sum over the carving against the normal tail of commons-statistics.
        WoodLeft flat = WoodLeft.under(
                CHANNEL, BackShape.of(BackProfile.between(mm(15), mm(15)).power(20), SCALE, x -> 24));
        NormalDistribution depth = NormalDistribution.of(0, 0.1);
        for (double margin : new double[] {0.2, 0.5, 0.8, 0.95}) {
            double expected = 0;
            int cells = 200_000;
            for (int i = 0; i < cells; i++) {
                double c = -0.6 + 1.2 * (i + 0.5) / cells;
                expected += 1.2 / cells * (0.6 - Math.abs(c)) / 0.36 * depth.survivalProbability(margin - c);
            }

            double chance = flat.chanceBelow(
                            mm(flat.least().woodMm() - margin),
                            WoodSpreads.ofDepth(Spread.normal(mm(0.1))).carving(Spread.triangular(mm(0.6))))
                    .probability();

            assertThat(chance / expected).as("margin %s: %s", margin, chance).isCloseTo(1, offset(1e-3));
        }
    }

    @Test
    void chanceBelow_twoBoundedSpreadsAddUpToTheirTrapezoid() {
        // Two rectangular losses add up to a trapezoid: commons-statistics has its tail in closed form.
        WoodLeft flat = WoodLeft.under(
                CHANNEL, BackShape.of(BackProfile.between(mm(15), mm(15)).power(20), SCALE, x -> 24));
        TrapezoidalDistribution sum = TrapezoidalDistribution.of(-0.6, -0.2, 0.2, 0.6);
        for (double margin : new double[] {0.1, 0.3, 0.45, 0.55}) {
            double chance = flat.chanceBelow(
                            mm(flat.least().woodMm() - margin),
                            WoodSpreads.ofDepth(Spread.rectangular(mm(0.4))).carving(Spread.rectangular(mm(0.2))))
                    .probability();

            assertThat(chance).as("margin %s", margin).isCloseTo(sum.survivalProbability(margin), offset(1e-3));
        }
        assertThat(flat.chanceBelow(
                                mm(flat.least().woodMm() - 0.61),
                                WoodSpreads.ofDepth(Spread.rectangular(mm(0.4))).carving(Spread.rectangular(mm(0.2))))
                        .probability())
                .isZero();
    }

    @Test
    void chanceBelow_isCertainOrNothingWithoutAnySpread() {
        WoodLeft wood = WoodLeft.under(neck().channel(CHANNEL));
        double least = wood.least().woodMm();
        WoodSpreads exact = WoodSpreads.ofDepth(Spread.bias(mm(0)));

        assertThat(wood.chanceBelow(mm(least - 0.01), exact).probability()).isZero();
        assertThat(wood.chanceBelow(mm(least + 0.01), exact).probability()).isEqualTo(1);
    }

    @Test
    void along_isTheSameAsItsPlainNumbers() {
        WoodLeft wood = WoodLeft.under(neck().channel(CHANNEL));
        double[] plain = wood.alongMm(7);

        assertThat(wood.along(7)).hasSize(7);
        for (int i = 0; i < 7; i++) {
            assertThat(wood.along(7).get(i).woodMm()).isEqualTo(plain[i]);
        }
        assertThat(wood.along(7).get(6).stationMm()).isEqualTo(303);
        assertThatThrownBy(() -> wood.along(1)).hasMessage("stations must be 2 to 100000, but were 1");
    }

    @Test
    void at_rejectsAStationOutsideTheChannel() {
        WoodLeft wood = WoodLeft.under(neck().channel(CHANNEL));

        assertThatThrownBy(() -> wood.at(mm(303.1)))
                .hasMessage("station must be within the channel, from 3 mm to 303 mm, but was 303.1 mm");
        assertThatThrownBy(() -> WoodLeft.under(neck()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("needs its rod for the wood left");
    }

    @Test
    void at_saysSoWhenTheNeckHasNoSection() {
        WoodLeft wood = WoodLeft.under(CHANNEL, BackShape.of(EVEN, SCALE, x -> 0));

        assertThatThrownBy(() -> wood.at(mm(100)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("the neck has no section at 100 mm from the nut: half-width 0 mm, depth 20 mm");
    }

    /** 1 in = 25.4 mm by definition: the place and the sizes without a section follow the style. */
    @Test
    void toString_namesThePlaceWithoutASectionInTheStyleAskedFor() {
        WoodLeft wood = WoodLeft.under(CHANNEL, BackShape.of(EVEN, SCALE, x -> 0));

        assertThat(wood)
                .hasToString(
                        "Wood left: none, the neck has no section at 3 mm from the nut: half-width 0 mm, depth 20 mm");
        assertThat(wood.text(LengthStyle.DECIMAL_INCHES))
                .isEqualTo("Wood left: none, the neck has no section at 0.1181 in from the nut: half-width 0 in, depth"
                        + " 0.7874 in");
    }

    @Test
    void toString_namesTheWorstPlaceAndSaysWhenThrough() {
        WoodLeft wood = WoodLeft.under(CHANNEL, BackShape.of(EVEN, SCALE, x -> 20));
        WoodLeft through = WoodLeft.under(CHANNEL, BackShape.of(BackProfile.between(mm(9), mm(12)), SCALE, x -> 20));

        assertThat(wood.at(mm(38)).toString()).startsWith("Wood left: 10.323 mm at 38.0 mm from the nut");
        assertThat(through.least().toString()).startsWith("Wood left: none, the channel is through by ");
        assertThat(through.least().woodMm()).isNegative();
        assertThat(wood.chanceBelow(mm(3), Spread.normal(mm(0.3))).toString()).startsWith("Chance of less than 3 mm: ");
    }

    @Test
    void units_doNotChangeTheAnswer() {
        Channel inches = Channel.forRod(Rod.twoWay(inch(12)).section(inch(0.25), inch(0.375)));
        Channel millimetres = Channel.forRod(Rod.twoWay(mm(304.8)).section(mm(6.35), mm(9.525)));
        BackProfile back = BackProfile.between(mm(15), mm(17));

        assertThat(WoodLeft.under(inches, BackShape.of(back, SCALE, x -> 20)).alongMm(40))
                .isEqualTo(WoodLeft.under(millimetres, BackShape.of(back, SCALE, x -> 20))
                        .alongMm(40));
    }

    private static NeckDesign neck() {
        return NeckDesign.named("octave mandolin")
                .scale(mm(560))
                .fingerboard(
                        Fingerboard.tapered(mm(34), mm(46)).thickness(mm(6)).radius(mm(400)))
                .back(BackProfile.between(mm(14.5), mm(16.5)).rounded())
                .frets(20)
                .bodyAtFret(14);
    }

    @Test
    void toString_keepsTheStyleOfTheBackThroughout() {
        BackProfile inInches = BackProfile.between(inch(0.8), inch(0.8)).rounded();

        assertThat(WoodLeft.under(CHANNEL, BackShape.of(inInches, SCALE, x -> 20))
                        .toString())
                .contains("0.2362 in wide")
                .doesNotContain(" mm");
        assertThat(WoodSpreads.ofDepth(Spread.normal(inch(0.002))).toString())
                .contains("exact")
                .doesNotContain("mm");
    }

    @Test
    void words_sayWhereTheChannelIsThrough() {
        assertThat(WoodAt.of(mm(-5), mm(-0.5)))
                .hasToString("Wood left: none, the channel is through by 0.500 mm at 5.0 mm into the head");
        assertThat(WoodAt.of(mm(5), mm(0)).toString())
                .startsWith("Wood left: none, the channel is through by 0.000 mm at 5.0 mm from the nut");
        assertThat(WoodAt.of(inch(-0.5), inch(0.2)).toString())
                .startsWith("Wood left: 0.2000 in at 0.50 in into the head");
    }

    /** By hand, of a half circle: less than 20 - |(3, 9.2 + d)| is left where the depth is more than d too deep. */
    @Test
    void chanceBelow_ofAWideMarginIsTheNormalTailAndSaid() {
        WoodLeft left = WoodLeft.under(CHANNEL, BackShape.of(EVEN, SCALE, x -> 20));

        WoodChance rare =
                left.chanceBelow(mm(20 - Math.hypot(3, 9.2 + 0.35)), WoodSpreads.ofDepth(Spread.normal(mm(0.1))));
        WoodChance never =
                left.chanceBelow(mm(20 - Math.hypot(3, 9.2 + 0.6)), WoodSpreads.ofDepth(Spread.normal(mm(0.1))));
        WoodChance likely =
                left.chanceBelow(mm(20 - Math.hypot(3, 9.2 + 0.1)), WoodSpreads.ofDepth(Spread.normal(mm(0.1))));

        assertThat(rare.probability()).isCloseTo(NormalDistribution.of(0, 1).survivalProbability(3.5), offset(1e-9));
        assertThat(rare.toString()).contains(": 0.023 %");
        assertThat(never.toString()).contains(": under 0.0001 %");
        assertThat(likely.toString()).contains(": 15.9 %");
        assertThat(rare.margin().house()).isCloseTo(Math.hypot(3, 9.55) - Math.hypot(3, 9.2), offset(1e-9));
    }

    /** By hand, of a half circle: a bounded error either reaches the limit or cannot. */
    @Test
    void chanceBelow_ofABoundedSpreadIsNoneBeyondItsEnds() {
        WoodLeft left = WoodLeft.under(CHANNEL, BackShape.of(EVEN, SCALE, x -> 20));
        WoodSpreads deeper = WoodSpreads.ofDepth(Spread.rectangular(mm(0.2)));
        WoodSpreads carvedOff = WoodSpreads.ofDepth(Spread.normal(mm(0))).carving(Spread.rectangular(mm(0.2)));

        assertThat(left.chanceBelow(mm(20 - Math.hypot(3, 9.41)), deeper).probability())
                .isZero();
        assertThat(left.chanceBelow(mm(20 - Math.hypot(3, 8.99)), deeper).probability())
                .isEqualTo(1);
        assertThat(left.chanceBelow(mm(20 - Math.hypot(3, 9.3)), deeper).probability())
                .isCloseTo(0.25, offset(1e-8));
        double wood = 20 - Math.hypot(3, 9.2);
        assertThat(left.chanceBelow(mm(wood - 0.21), carvedOff).probability()).isZero();
        assertThat(left.chanceBelow(mm(wood - 0.1), carvedOff).probability()).isCloseTo(0.25, offset(1e-8));
        assertThat(left.chanceBelow(mm(wood + 0.21), carvedOff).probability()).isCloseTo(1, offset(1e-12));
    }
}
