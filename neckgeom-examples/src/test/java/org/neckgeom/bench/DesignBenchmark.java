package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.concurrent.TimeUnit;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.stock.Blank;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One step of a description: a copy of a noun with one thing changed. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
@State(Scope.Benchmark)
public class DesignBenchmark {

    private final Head head = Head.angled(deg(13));
    private final Blank blank = Blank.ofLength(mm(640)).section(mm(61), mm(20));
    private final Neck neck = SampleNecks.guitar();

    @Benchmark
    public Head head() {
        return head.length(mm(185));
    }

    @Benchmark
    public Blank blank() {
        return blank.endAllowance(mm(10));
    }

    @Benchmark
    public Neck neck() {
        return neck.bodyAtFret(14);
    }
}
