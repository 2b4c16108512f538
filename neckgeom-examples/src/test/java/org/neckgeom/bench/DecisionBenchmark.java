package org.neckgeom.bench;

import java.util.concurrent.TimeUnit;
import org.neckgeom.channel.BlankOnFence;
import org.neckgeom.channel.CentringRounds;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A whole decision on five cuts and two moves in a tapered blank, beside the plain formulas for what they leave of the offset. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class DecisionBenchmark {

    private static final Amount<javax.measure.quantity.Length> LIMIT = ShopUnits.mm(0.1);
    private static final double[] READ = {30.5 - 0.41, 30.5 - 0.06, 30.5 - 0.02, 30.5 + 0.03, 30.5 - 0.01};
    private static final double[] MOVED = {-0.35, -0.05, 0, 0, 0};

    private final CentringRounds known = rounds(
            BenchUncertainty.withDefaults().repeatability(ShopUnits.mm(0.02)).cutScatter(ShopUnits.mm(0.02)));
    private final CentringRounds guessed =
            rounds(BenchUncertainty.withDefaults().repeatability(ShopUnits.mm(0.02)));

    private static CentringRounds rounds(BenchUncertainty bench) {
        BlankOnFence run = BlankOnFence.of(
                Blank.ofLength(ShopUnits.mm(640))
                        .section(ShopUnits.mm(61), ShopUnits.mm(20))
                        .outOfParallel(ShopUnits.mm(0.06))
                        .nutAt(ShopUnits.mm(200)),
                Channel.forRod(TrussRod.twoWay(ShopUnits.mm(300)).section(ShopUnits.mm(6), ShopUnits.mm(9)))
                        .startingAt(ShopUnits.mm(3)),
                Fence.onePiece(ShopUnits.mm(600)));
        CentringRounds rounds = CentringRounds.on(run).bench(bench);
        for (int i = 0; i < READ.length; i++) {
            rounds = rounds.trialCut(TrialCut.walls(ShopUnits.mm(READ[i] - 3.01), ShopUnits.mm(61 - READ[i] - 3.01))
                    .slot(ShopUnits.mm(6.02))
                    .piece(ShopUnits.mm(61)));
            if (MOVED[i] != 0) {
                rounds = rounds.fenceMoved(FenceMove.away(ShopUnits.mm(-MOVED[i])));
            }
        }
        return rounds;
    }

    /** Readings to decision, the scatter of cuts well known. */
    @Benchmark
    public SlotVerdict decision() {
        return known.next(LIMIT);
    }

    /** The same, the scatter of cuts a guess: Student's law. */
    @Benchmark
    public SlotVerdict decisionOnAGuess() {
        return guessed.next(LIMIT);
    }

    /** The recursion and one chance of the normal law, in plain doubles. */
    @Benchmark
    public double plainFormulas() {
        double m = READ[0];
        double p = 0.0007;
        for (int i = 1; i < READ.length; i++) {
            m -= MOVED[i - 1];
            p += MOVED[i - 1] == 0 ? 0 : 0.0004;
            double gain = p / (p + 0.0007);
            m += gain * (READ[i] - m);
            p *= 1 - gain;
        }
        double u = Math.sqrt(p + 0.0005);
        double e = m - 30.5;
        return phi((0.1 - e) / u) - phi((-0.1 - e) / u);
    }

    /** Abramowitz and Stegun 7.1.26. */
    private static double phi(double z) {
        double x = Math.abs(z) / Math.sqrt(2);
        double t = 1 / (1 + 0.3275911 * x);
        double tail = t
                * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))))
                * Math.exp(-x * x)
                / 2;
        return z > 0 ? 1 - tail : tail;
    }
}
