package org.neckgeom.bench;

import java.util.concurrent.TimeUnit;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.neck.Neck;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.NeckPlan;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The whole plan of the octave mandolin that comes with the examples, warm: its checks and sections, its text, its file. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class PlanBenchmark {

    private static final String FILE = "octave-mandolin.yaml";

    private final NeckPlan plan = NeckFile.read(FILE);

    /** A plan keeps what it has answered: each question goes to one that was asked nothing yet. */
    private NeckPlan unasked() {
        return plan.printIn(plan.style());
    }

    /** Every check and every section of the plan. */
    @Benchmark
    public int plan() {
        NeckPlan plan = unasked();
        return plan.checks().size() + plan.sections().size();
    }

    /** The same as text, line for line. */
    @Benchmark
    public String text() {
        return Sheet.of(unasked()).toText();
    }

    /** The file read and checked, its plan made once for that. */
    @Benchmark
    public Neck file() {
        return NeckFile.read(FILE).design();
    }
}
