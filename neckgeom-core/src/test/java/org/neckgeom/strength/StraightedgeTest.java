package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;

/** Relief under a straightedge and the rod's force for it: closed forms, dense scans, and the forces put back in. */
class StraightedgeTest {

    private static final StringPull PULL =
            StringPull.NONE.plus(760, new Line(new Point(0, 0, 7.5), new Point(562, 0, 9.9)));

    private static Straightedge twoWay() {
        BeamScan scan = BeamScan.of(NeckBeamTest.mandolin(339), PULL, new RodPull.Couple(3, 303, 4.5), 120);
        return new Straightedge(scan.strings(), scan.rod(), 31, 339);
    }

    private static Straightedge single() {
        Channel channel = Channel.forRod(TrussRod.singleAction(mm(300), mm(5)))
                .startingAt(mm(3))
                .depthClearance(mm(1))
                .arch(mm(4.5));
        NeckBeam plain = NeckBeamTest.mandolin(339);
        NeckBeam arched = new NeckBeam(339, plain.board(), plain.back(), channel, 0, plain.bars());
        BeamScan scan = BeamScan.of(arched, PULL, new RodPull.Tendon(channel), 120);
        return new Straightedge(scan.strings(), scan.rod(), 31, 339);
    }

    @Test
    void relief_isTheGreatestGapOfADenseScan() {
        Straightedge edge = twoWay();
        for (double force : new double[] {0, 300, 1500, 3000}) {
            Bend bend = edge.strings().plus(edge.rod(), force);
            double deepest = 0;
            double highest = 0;
            for (int i = 0; i <= 20_000; i++) {
                double gap = bend.gapAt(31 + (339 - 31) * i / 20_000.0, 31, 339);
                deepest = Math.max(deepest, gap);
                highest = Math.max(highest, -gap);
            }
            assertThat(edge.relief(force)).as("%s N", force).isCloseTo(deepest, within(1e-8));
            assertThat(edge.hump(force)).as("%s N", force).isCloseTo(highest, within(1e-8));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.3, 0.2, 0.1, 0.02, 0, -0.05, -0.2})
    void forceFor_leavesTheWantedRelief(double wanted) {
        for (Straightedge edge : new Straightedge[] {twoWay(), single()}) {
            double force = edge.forceFor(wanted);

            assertThat(edge.relief(force) - edge.hump(force)).isCloseTo(wanted, within(1e-9));
        }
    }

    @Test
    void forceFor_growsAsLessReliefIsWanted() {
        Straightedge edge = single();
        double before = Double.NEGATIVE_INFINITY;
        for (double wanted = 0.4; wanted > -0.2; wanted -= 0.01) {
            double force = edge.forceFor(wanted);
            assertThat(force).isGreaterThan(before);
            before = force;
        }
    }

    @Test
    void forceFor_leavesNoHumpUnderAnOrdinaryRelief() {
        Straightedge edge = twoWay();
        double force = edge.forceFor(0.2);

        assertThat(edge.relief(force)).isCloseTo(0.2, within(1e-9));
        assertThat(edge.hump(force)).isEqualTo(0);
    }

    @Test
    void forceFor_isNoneForTheReliefThatIsThere() {
        Straightedge edge = twoWay();

        assertThat(edge.forceFor(edge.relief(0))).isCloseTo(0, within(1e-6));
    }

    @Test
    void forceFor_isNaNWhenTheRodPullsTheWrongWay() {
        // A channel so shallow that the rod lies above the neutral axis all along.
        Channel channel = Channel.forRod(TrussRod.singleAction(mm(300), mm(4))).startingAt(mm(3));
        NeckBeam plain = NeckBeamTest.mandolin(339);
        NeckBeam shallow = new NeckBeam(339, plain.board(), plain.back(), channel, 0, plain.bars());
        BeamScan scan = BeamScan.of(shallow, PULL, new RodPull.Tendon(channel), 120);

        assertThat(new Straightedge(scan.strings(), scan.rod(), 31, 339).forceFor(0.05))
                .isNaN();
    }

    @Tag("long")
    @Test
    void interval_holdsNinetyFivePercentOfSimulatedNecks() {
        long seed = 20260218;
        SplittableRandom random = new SplittableRandom(seed);
        NeckBeam beam = NeckBeamTest.mandolin(339);
        DoubleBinaryOperator relief = (back, board) -> {
            NeckBeam other = beam.stiffer(back, board);
            BeamScan scan = BeamScan.of(other, PULL, null, 24);
            return new Straightedge(scan.strings(), null, 31, 339).relief(0);
        };
        double[] interval = ModulusSpread.of(0.22, 0.22).interval(relief);
        double s = Math.sqrt(Math.log(1 + 0.22 * 0.22));
        int trials = 20_000;
        int under = 0;
        int over = 0;
        for (int i = 0; i < trials; i++) {
            double sample = relief.applyAsDouble(
                    Math.exp(s * random.nextGaussian() - s * s / 2), Math.exp(s * random.nextGaussian() - s * s / 2));
            under += sample < interval[1] ? 1 : 0;
            over += sample > interval[2] ? 1 : 0;
        }

        // 2.5 % at each end, give or take 0.35 %: three standard deviations of the count.
        assertThat(100.0 * under / trials).as("seed %s, under", seed).isCloseTo(2.5, within(0.35));
        assertThat(100.0 * over / trials).as("seed %s, over", seed).isCloseTo(2.5, within(0.35));
        assertThat(interval[0]).isBetween(interval[1], interval[2]);
    }

    @Test
    void interval_isTheQuantileOfAPower() {
        // An answer 1/E of one wood: quantiles of a log-normal law, exactly.
        double[] interval = ModulusSpread.of(0.2, 0.3).interval((back, board) -> 5 / back);
        double s = Math.sqrt(Math.log(1.04));

        assertThat(interval[0]).isEqualTo(5);
        assertThat(interval[1]).isCloseTo(5 * Math.exp(s * s / 2 - ModulusSpread.K95 * s), withinPercentage(1e-9));
        assertThat(interval[2]).isCloseTo(5 * Math.exp(s * s / 2 + ModulusSpread.K95 * s), withinPercentage(1e-9));
    }
}
