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
import org.neckgeom.kernel.Vec;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.Volute;
import org.neckgeom.shape.Curve;
import org.neckgeom.units.LengthStyle;

class FloorThicknessTest {

    private static final long SEED = 20;
    private static final Scale SCALE = Scale.of(mm(560));
    private static final TrussRod ROD = TrussRod.twoWay(mm(300)).section(mm(6), mm(9));
    private static final Channel CHANNEL = Channel.forRod(ROD).startingAt(mm(3)).depthClearance(mm(0.2));
    private static final BackProfile EVEN = BackProfile.between(mm(20), mm(20)).rounded();

    @Test
    void least_underAHalfCircleIsItsRadiusLessTheCornersDistance() {
        FloorThickness wood = FloorThickness.under(CHANNEL, BackShape.of(EVEN, SCALE, Curve.level(20)));

        assertThat(wood.least().woodMm()).isCloseTo(20 - Math.hypot(3, 9.2), offset(1e-12));
        assertThat(wood.least().straightDown().libraryValue()).isCloseTo(10.8, offset(1e-12));
    }

    @Test
    void under_aWholeDesignIsTheSameAsItsParts() {
        Neck neck = neck().channel(CHANNEL);
        FloorThickness parts = FloorThickness.under(
                CHANNEL,
                BackShape.of(neck.back(), neck.scale(), BackShape.of(neck).halfWidth()));

        assertThat(FloorThickness.under(neck).alongMm(50)).isEqualTo(parts.alongMm(50));
        assertThat(FloorThickness.under(neck))
                .isEqualTo(FloorThickness.under(neck))
                .hasSameHashCodeAs(FloorThickness.under(neck));
    }

    @Test
    void at_agreesWithTheSixtyDigitTableWhereTheSectionIsOneOfItsRows() {
        // Source: superellipse-distance.csv, first row: p 2, half-width 17, depth 15, corner at 3 and 9.2.
        FloorThickness wood = FloorThickness.under(
                CHANNEL, BackShape.of(BackProfile.between(mm(15), mm(15)), SCALE, Curve.level(17)));

        assertThat(wood.at(mm(100)).woodMm()).isCloseTo(5.468299771200038650087646, offset(1e-11));
    }

    @Test
    void least_isTheDistanceInSpaceToAHundredthOfAMillimetre() {
        Neck neck = neck().channel(CHANNEL);
        FloorThickness wood = FloorThickness.under(neck);
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
        Neck neck = neck().channel(CHANNEL.adjusterPocket(mm(20)).section(mm(10), mm(10.5)));

        WoodAt least = FloorThickness.under(neck).least();

        assertThat(least.stationMm()).isBetween(3.0, 23.0);
        assertThat(least.woodMm())
                .isLessThan(
                        FloorThickness.under(neck().channel(CHANNEL)).least().woodMm() - 1);
        assertThat(FloorThickness.under(neck().channel(Channel.forRod(ROD.adjuster(End.HEEL))
                                .adjusterPocket(mm(20))
                                .section(mm(10), mm(12))))
                        .least()
                        .stationMm())
                .isBetween(280.0, 300.0);
    }

    @Test
    void least_ofAnArchedChannelLiesUnderItsDeepMiddle() {
        Neck neck = neck().channel(CHANNEL.arch(mm(4)));

        assertThat(FloorThickness.under(neck).least().stationMm()).isBetween(100.0, 160.0);
    }

    @Test
    void offCentre_losesWoodWhicheverWay() {
        FloorThickness centred = FloorThickness.under(neck().channel(CHANNEL));
        FloorThickness treble = centred.offCentre(mm(0.8));
        FloorThickness bass = centred.offCentre(mm(-0.8));

        assertThat(treble.least().woodMm())
                .isEqualTo(bass.least().woodMm())
                .isLessThan(centred.least().woodMm());
        assertThat(treble.least().isTowardTreble()).isTrue();
        assertThat(bass.least().isTowardTreble()).isFalse();
        assertThat(centred.offCentre(mm(0))).isEqualTo(centred);
    }

    @Test
    void skewed_movesTheFarEndByTheRun() {
        FloorThickness centred = FloorThickness.under(CHANNEL, BackShape.of(EVEN, SCALE, Curve.level(20)));
        double aside = 300 * Math.tan(Math.toRadians(0.3));

        assertThat(centred.skewed(deg(0.3)).at(mm(303)).woodMm())
                .isCloseTo(20 - Math.hypot(3 + aside, 9.2), offset(1e-11));
        assertThat(centred.skewed(deg(0.3)).least().stationMm()).isCloseTo(303, offset(1e-9));
    }

    @Test
    void roundedFloor_leavesMoreWoodAtTheCornersButNotInThePocket() {
        FloorThickness square = FloorThickness.under(CHANNEL, BackShape.of(EVEN, SCALE, Curve.level(20)));
        FloorThickness pocketed = FloorThickness.under(
                CHANNEL.adjusterPocket(mm(20)).section(mm(10), mm(10.5)), BackShape.of(EVEN, SCALE, Curve.level(20)));

        // Half circle: from the rounding's centre at 1 and 7.2, less its radius of 2.
        assertThat(square.roundedFloor(mm(2)).least().woodMm()).isCloseTo(20 - Math.hypot(1, 7.2) - 2, offset(1e-12));
        assertThat(pocketed.roundedFloor(mm(2)).least()).isEqualTo(pocketed.least());
        assertThatThrownBy(() -> square.roundedFloor(mm(3.1)))
                .hasMessage("floor's rounding must be no more than 3 mm, but was 3.1 mm");
    }

    @Test
    void asymmetric_isThinnerOnThePointedSide() {
        FloorThickness wood = FloorThickness.under(
                CHANNEL,
                BackShape.of(BackProfile.between(mm(16), mm(16)).asymmetric(2.5, 1.6), SCALE, Curve.level(20)));

        assertThat(wood.least().isTowardTreble()).isTrue();
    }

    @Test
    void transitions_leaveWoodOnAtBothEnds() {
        Neck neck = neck().channel(CHANNEL);
        FloorThickness plain = FloorThickness.under(neck);
        FloorThickness whole = FloorThickness.under(neck.back(
                neck.back().volute(Volute.of(mm(3), mm(30))).heelTransition(HeelTransition.from(mm(270), mm(40)))));

        assertThat(whole.at(mm(3)).straightDown().libraryValue()
                        - plain.at(mm(3)).straightDown().libraryValue())
                .isCloseTo(3 * 0.5 * (1 + Math.cos(Math.PI * 0.1)), offset(1e-12));
        // By hand: an arc of radius 40 tangent to the back's slope k, 33 mm past its start, less the straight back.
        double k = whole.back().depth().slopeAt(200);
        double tilt = Math.atan(k);
        double past = 33 + 40 * Math.sin(tilt);
        double arc = 40 * Math.cos(tilt) - Math.sqrt(40 * 40 - past * past) - 33 * k;
        assertThat(whole.at(mm(303)).straightDown().libraryValue()
                        - plain.at(mm(303)).straightDown().libraryValue())
                .isCloseTo(arc, offset(1e-9));
        assertThat(whole.at(mm(100))).isEqualTo(plain.at(mm(100)));
    }

    @Test
    void at_inTheHeadEndsAtTheHeadsBack() {
        Channel intoHead = Channel.forRod(ROD).startingAt(mm(-30));
        Neck neck = neck().channel(intoHead).head(Head.angled(deg(13)).thickness(mm(9.5)));
        double a = Math.toRadians(13);
        // The head's back plane by vectors: 9.5 below the face, along the face's normal, seen at x = -2.
        Vec normal = Vec.Z.turned(Vec.Y, -a);
        double depth = -Vec.meet(normal, -9.5, Vec.X, -2).z();

        assertThat(FloorThickness.under(neck).at(mm(-2)).straightDown().libraryValue())
                .isCloseTo(depth - 9, offset(1e-9));
    }

    @Test
    void chanceBelow_oneNormalSpreadIsThatOfCommonsStatistics() {
        FloorThickness wood = FloorThickness.under(neck().channel(CHANNEL));
        double least = wood.least().woodMm();

        double chance = wood.probabilityBelow(mm(4.4), ErrorDistribution.normal(mm(0.3)))
                .probability();

        assertThat(chance).isCloseTo(NormalDistribution.of(least, 0.3).cumulativeProbability(4.4), offset(1e-13));
    }

    @Test
    void chanceBelow_threeSpreadsAgreesWithDrawingThem() {
        FloorThickness wood = FloorThickness.under(neck().channel(CHANNEL));
        WoodSpreads spreads = WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0.15)))
                .offset(ErrorDistribution.rectangular(mm(0.9)))
                .carving(ErrorDistribution.triangular(mm(0.6)));
        double limit = wood.least().woodMm() - 0.35;
        SplittableRandom random = new SplittableRandom(SEED);
        int trials = 60_000;
        int below = 0;
        for (int i = 0; i < trials; i++) {
            double d = 0.15 * random.nextGaussian();
            double e = 0.9 * (2 * random.nextDouble() - 1);
            double c = 0.6 * (random.nextDouble() - random.nextDouble());
            // The thinnest station stays at the head end of this channel whatever the errors.
            if (wood.inSection(3, d, e) - c < limit) {
                below++;
            }
        }

        double chance = wood.probabilityBelow(mm(limit), spreads).probability();

        double drawn = (double) below / trials;
        assertThat(Math.abs(chance - drawn))
                .as("seed %d: %s against %s", SEED, chance, drawn)
                .isLessThan(4 * Math.sqrt(drawn * (1 - drawn) / trials) + 1e-3 * drawn);
    }

    @Test
    void chanceBelow_theWiderSpreadMayBeEitherOne() {
        // Straight down under a nearly flat back depth and carving are the same loss, so their spreads may be swapped.
        FloorThickness flat = FloorThickness.under(
                CHANNEL, BackShape.of(BackProfile.between(mm(15), mm(15)).power(20), SCALE, Curve.level(24)));
        ErrorDistribution<javax.measure.quantity.Length> wide = ErrorDistribution.normal(mm(0.4));
        ErrorDistribution<javax.measure.quantity.Length> narrow = ErrorDistribution.rectangular(mm(0.2));

        double one = flat.probabilityBelow(mm(5), WoodSpreads.ofDepth(wide).carving(narrow))
                .probability();
        double other = flat.probabilityBelow(mm(5), WoodSpreads.ofDepth(narrow).carving(wide))
                .probability();

        assertThat(one).isBetween(0.01, 0.2);
        assertThat(one).isCloseTo(other, offset(1e-6));
    }

    @Test
    void chanceBelow_keepsItsDigitsInTheTail() {
        // Straight down under a nearly flat back the loss is depth and carving together: their sum's tail by a fine
        // midpoint sum over the carving against the normal tail of commons-statistics.
        FloorThickness flat = FloorThickness.under(
                CHANNEL, BackShape.of(BackProfile.between(mm(15), mm(15)).power(20), SCALE, Curve.level(24)));
        NormalDistribution depth = NormalDistribution.of(0, 0.1);
        for (double margin : new double[] {0.2, 0.5, 0.8, 0.95}) {
            double expected = 0;
            int cells = 200_000;
            for (int i = 0; i < cells; i++) {
                double c = -0.6 + 1.2 * (i + 0.5) / cells;
                expected += 1.2 / cells * (0.6 - Math.abs(c)) / 0.36 * depth.survivalProbability(margin - c);
            }

            double chance = flat.probabilityBelow(
                            mm(flat.least().woodMm() - margin),
                            WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0.1)))
                                    .carving(ErrorDistribution.triangular(mm(0.6))))
                    .probability();

            assertThat(chance / expected).as("margin %s: %s", margin, chance).isCloseTo(1, offset(1e-3));
        }
    }

    @Test
    void chanceBelow_twoBoundedSpreadsAddUpToTheirTrapezoid() {
        // Two rectangular losses add up to a trapezoid: commons-statistics has its tail in closed form.
        FloorThickness flat = FloorThickness.under(
                CHANNEL, BackShape.of(BackProfile.between(mm(15), mm(15)).power(20), SCALE, Curve.level(24)));
        TrapezoidalDistribution sum = TrapezoidalDistribution.of(-0.6, -0.2, 0.2, 0.6);
        for (double margin : new double[] {0.1, 0.3, 0.45, 0.55}) {
            double chance = flat.probabilityBelow(
                            mm(flat.least().woodMm() - margin),
                            WoodSpreads.ofDepth(ErrorDistribution.rectangular(mm(0.4)))
                                    .carving(ErrorDistribution.rectangular(mm(0.2))))
                    .probability();

            assertThat(chance).as("margin %s", margin).isCloseTo(sum.survivalProbability(margin), offset(1e-3));
        }
        assertThat(flat.probabilityBelow(
                                mm(flat.least().woodMm() - 0.61),
                                WoodSpreads.ofDepth(ErrorDistribution.rectangular(mm(0.4)))
                                        .carving(ErrorDistribution.rectangular(mm(0.2))))
                        .probability())
                .isZero();
    }

    @Test
    void chanceBelow_isCertainOrNothingWithoutAnySpread() {
        FloorThickness wood = FloorThickness.under(neck().channel(CHANNEL));
        double least = wood.least().woodMm();
        WoodSpreads exact = WoodSpreads.ofDepth(ErrorDistribution.bias(mm(0)));

        assertThat(wood.probabilityBelow(mm(least - 0.01), exact).probability()).isZero();
        assertThat(wood.probabilityBelow(mm(least + 0.01), exact).probability()).isEqualTo(1);
    }

    @Test
    void along_isTheSameAsItsPlainNumbers() {
        FloorThickness wood = FloorThickness.under(neck().channel(CHANNEL));
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
        FloorThickness wood = FloorThickness.under(neck().channel(CHANNEL));

        assertThatThrownBy(() -> wood.at(mm(303.1)))
                .hasMessage("station must be inside the channel, from 3 mm to 303 mm, but was 303.1 mm");
        assertThatThrownBy(() -> FloorThickness.under(neck()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("needs its rod for the wood left");
    }

    @Test
    void at_saysSoWhenTheNeckHasNoSection() {
        FloorThickness wood = FloorThickness.under(CHANNEL, BackShape.of(EVEN, SCALE, Curve.level(0)));

        assertThatThrownBy(() -> wood.at(mm(100)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("the neck has no section at 100 mm from the nut: half-width 0 mm, depth 20 mm");
    }

    /** 1 in = 25.4 mm by definition: the place and the sizes without a section follow the style. */
    @Test
    void toString_namesThePlaceWithoutASectionInTheStyleAskedFor() {
        FloorThickness wood = FloorThickness.under(CHANNEL, BackShape.of(EVEN, SCALE, Curve.level(0)));

        assertThat(wood)
                .hasToString(
                        "Wood left: none, the neck has no section at 3 mm from the nut: half-width 0 mm, depth 20 mm");
        assertThat(wood.text(LengthStyle.DECIMAL_INCHES))
                .isEqualTo("Wood left: none, the neck has no section at 0.1181 in from the nut: half-width 0 in, depth"
                        + " 0.7874 in");
    }

    @Test
    void toString_namesTheWorstPlaceAndSaysWhenThrough() {
        FloorThickness wood = FloorThickness.under(CHANNEL, BackShape.of(EVEN, SCALE, Curve.level(20)));
        FloorThickness through =
                FloorThickness.under(CHANNEL, BackShape.of(BackProfile.between(mm(9), mm(12)), SCALE, Curve.level(20)));

        assertThat(wood.at(mm(38)).toString()).startsWith("Wood left: 10.323 mm at 38.0 mm from the nut");
        assertThat(through.least().toString()).startsWith("Wood left: none, the channel is through by ");
        assertThat(through.least().woodMm()).isNegative();
        assertThat(wood.probabilityBelow(mm(3), ErrorDistribution.normal(mm(0.3)))
                        .toString())
                .startsWith("Probability of less than 3 mm: ");
    }

    @Test
    void units_doNotChangeTheAnswer() {
        Channel inches = Channel.forRod(TrussRod.twoWay(inch(12)).section(inch(0.25), inch(0.375)));
        Channel millimetres = Channel.forRod(TrussRod.twoWay(mm(304.8)).section(mm(6.35), mm(9.525)));
        BackProfile back = BackProfile.between(mm(15), mm(17));

        assertThat(FloorThickness.under(inches, BackShape.of(back, SCALE, Curve.level(20)))
                        .alongMm(40))
                .isEqualTo(FloorThickness.under(millimetres, BackShape.of(back, SCALE, Curve.level(20)))
                        .alongMm(40));
    }

    private static Neck neck() {
        return Neck.named("octave mandolin")
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

        assertThat(FloorThickness.under(CHANNEL, BackShape.of(inInches, SCALE, Curve.level(20)))
                        .toString())
                .contains("0.2362 in wide")
                .doesNotContain(" mm");
        assertThat(WoodSpreads.ofDepth(ErrorDistribution.normal(inch(0.002))).toString())
                .contains("exact")
                .doesNotContain("mm");
    }

    @Test
    void words_sayWhereTheChannelIsThrough() {
        assertThat(WoodAt.of(mm(-5), mm(-0.5)))
                .hasToString("Wood left: none, the channel is through by 0.500 mm at 5.0 mm before the nut");
        assertThat(WoodAt.of(mm(5), mm(0)).toString())
                .startsWith("Wood left: none, the channel is through by 0.000 mm at 5.0 mm from the nut");
        assertThat(WoodAt.of(inch(-0.5), inch(0.2)).toString())
                .startsWith("Wood left: 0.2000 in at 0.50 in before the nut");
    }

    /** By hand, of a half circle: less than 20 - |(3, 9.2 + d)| is left where the depth is more than d too deep. */
    @Test
    void chanceBelow_ofAWideMarginIsTheNormalTailAndSaid() {
        FloorThickness left = FloorThickness.under(CHANNEL, BackShape.of(EVEN, SCALE, Curve.level(20)));

        FloorProbability rare = left.probabilityBelow(
                mm(20 - Math.hypot(3, 9.2 + 0.35)), WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0.1))));
        FloorProbability never = left.probabilityBelow(
                mm(20 - Math.hypot(3, 9.2 + 0.6)), WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0.1))));
        FloorProbability likely = left.probabilityBelow(
                mm(20 - Math.hypot(3, 9.2 + 0.1)), WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0.1))));

        assertThat(rare.probability()).isCloseTo(NormalDistribution.of(0, 1).survivalProbability(3.5), offset(1e-9));
        assertThat(rare.toString()).contains(": below 0.1 %");
        assertThat(never.toString()).contains(": below 0.1 %");
        assertThat(likely.toString()).contains(": 15.9 %");
        assertThat(rare.margin().libraryValue()).isCloseTo(Math.hypot(3, 9.55) - Math.hypot(3, 9.2), offset(1e-9));
    }

    /** By hand, of a half circle: a bounded error either reaches the limit or cannot. */
    @Test
    void chanceBelow_ofABoundedSpreadIsNoneBeyondItsEnds() {
        FloorThickness left = FloorThickness.under(CHANNEL, BackShape.of(EVEN, SCALE, Curve.level(20)));
        WoodSpreads deeper = WoodSpreads.ofDepth(ErrorDistribution.rectangular(mm(0.2)));
        WoodSpreads carvedOff =
                WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0))).carving(ErrorDistribution.rectangular(mm(0.2)));

        assertThat(left.probabilityBelow(mm(20 - Math.hypot(3, 9.41)), deeper).probability())
                .isZero();
        assertThat(left.probabilityBelow(mm(20 - Math.hypot(3, 8.99)), deeper).probability())
                .isEqualTo(1);
        assertThat(left.probabilityBelow(mm(20 - Math.hypot(3, 9.3)), deeper).probability())
                .isCloseTo(0.25, offset(1e-8));
        double wood = 20 - Math.hypot(3, 9.2);
        assertThat(left.probabilityBelow(mm(wood - 0.21), carvedOff).probability())
                .isZero();
        assertThat(left.probabilityBelow(mm(wood - 0.1), carvedOff).probability())
                .isCloseTo(0.25, offset(1e-8));
        assertThat(left.probabilityBelow(mm(wood + 0.21), carvedOff).probability())
                .isCloseTo(1, offset(1e-12));
    }
}
