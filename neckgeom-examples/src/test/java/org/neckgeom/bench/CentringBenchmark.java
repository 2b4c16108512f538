package org.neckgeom.bench;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Length;
import org.neckgeom.setup.Centring;
import org.neckgeom.setup.Offset;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Offset and uncertainty from two walls, a thousand times: plain doubles, quantities in and a value out, the whole check. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(CentringBenchmark.COUNT)
@Fork(jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class CentringBenchmark {

    static final int COUNT = 1000;

    private final PlainWalls[] plain = new PlainWalls[COUNT];
    private final Walls[] walls = new Walls[COUNT];
    private final TrialCut[] trials = new TrialCut[COUNT];
    private Amount<Length> u;

    private record PlainWalls(double fence, double far, double u) {}

    private record PlainOffset(double offset, double uncertainty) {}

    private record Walls(Amount<Length> fence, Amount<Length> far) {}

    /** Fills the readings. */
    @Setup
    public void readings() {
        SplittableRandom random = new SplittableRandom(1);
        u = ShopUnits.mm(0.02);
        for (int i = 0; i < COUNT; i++) {
            double a = random.nextDouble(29, 31);
            double b = random.nextDouble(29, 31);
            plain[i] = new PlainWalls(a, b, 0.02);
            walls[i] = new Walls(ShopUnits.mm(a), ShopUnits.mm(b));
            trials[i] = TrialCut.walls(walls[i].fence(), walls[i].far())
                    .slot(ShopUnits.mm(6))
                    .piece(ShopUnits.mm(a + b + 6))
                    .readWithin(u);
        }
    }

    /** The baseline: records of doubles in and out. */
    @Benchmark
    public double plainDoubles() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            PlainWalls in = plain[i];
            PlainOffset out = new PlainOffset((in.fence() - in.far()) / 2, Math.sqrt(2 * in.u() * in.u()) / 2);
            sum += out.offset() + out.uncertainty();
        }
        return sum;
    }

    /** Quantities in, an offset out. */
    @Benchmark
    public double offsetFromWalls() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            Offset offset = Offset.fromWalls(walls[i].fence(), walls[i].far(), u);
            sum += offset.amountMm() + offset.uncertaintyMm();
        }
        return sum;
    }

    /** A trial cut in, all four readings at hand, the offset out. */
    @Benchmark
    public double centring() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            Offset offset = Centring.of(trials[i]).offset();
            sum += offset.amountMm() + offset.uncertaintyMm();
        }
        return sum;
    }

    /** The same with the check of the readings and the move. */
    @Benchmark
    public double centringCheckedMove() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += Centring.of(trials[i]).move().amountMm();
        }
        return sum;
    }
}
