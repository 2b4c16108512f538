package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Length;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.sweep.Axis;
import org.neckgeom.sweep.Sweep;
import org.neckgeom.sweep.SweepResult;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A quick question, the length of a scarf's glue face, of a million designs; time and memory of one design. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(SweepBenchmark.SIDE * SweepBenchmark.SIDE)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class SweepBenchmark {

    static final int SIDE = 1000;

    private final Scarf scarf = Scarf.of(deg(13), mm(20), mm(15));
    private final Axis<Length> kerfs = Axis.steps(mm(0.5), mm(2.498), mm(0.002));
    private final Axis<Length> cleanings = Axis.steps(mm(0.1), mm(0.5995), mm(0.0005));
    private final Sweep<Scarf> sweep =
            Sweep.of(scarf).over("kerf", kerfs, Scarf::kerf).over("cleaning", cleanings, Scarf::cleaning);

    private static double glueFace(SweepResult<Scarf, ScarfJoint> result) {
        return result.answer().orElseThrow().glueFaceMm();
    }

    /** The stream of results, one after the other. */
    @Benchmark
    public double sweep() {
        return sweep.results(ScarfJoint::inTheHead)
                .mapToDouble(SweepBenchmark::glueFace)
                .sum();
    }

    /** The same stream on every processor there is. */
    @Benchmark
    public double sweepInParallel() {
        return sweep.results(ScarfJoint::inTheHead)
                .parallel()
                .mapToDouble(SweepBenchmark::glueFace)
                .sum();
    }

    /** The baseline: two loops over the same designs and the same question. */
    @Benchmark
    public double loops() {
        double sum = 0;
        for (int i = 0; i < SIDE; i++) {
            Scarf sawn = scarf.kerf(kerfs.value(i));
            for (int n = 0; n < SIDE; n++) {
                sum += ScarfJoint.inTheHead(sawn.cleaning(cleanings.value(n))).glueFaceMm();
            }
        }
        return sum;
    }
}
