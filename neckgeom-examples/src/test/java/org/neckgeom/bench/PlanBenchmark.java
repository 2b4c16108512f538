package org.neckgeom.bench;

import java.util.concurrent.TimeUnit;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.neck.Neck;
import org.neckgeom.page.Document;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.BudgetCode;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Plan;
import org.neckgeom.plan.SectionCode;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The whole plan of the octave mandolin that comes with the examples, warm: its checks and sections; then what is asked of
 * it: another question, its text, its data, its page; its file.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class PlanBenchmark {

    private static final String FILE = "octave-mandolin.yaml";

    private final Job plan = NeckFile.read(FILE);
    private final Job worked = worked();

    private static Job worked() {
        Job job = NeckFile.read(FILE);
        job.plan().checks();
        return job;
    }

    /** A plan keeps what it has answered: each question goes to one that was asked nothing yet. */
    private Job unasked() {
        return plan.printIn(plan.style());
    }

    /** Every check and every section of the plan. */
    @Benchmark
    public int plan() {
        Job plan = unasked();
        return plan.plan().checks().size() + plan.plan().sections().size();
    }

    /** The same and its text, line for line. */
    @Benchmark
    public String planAndText() {
        return Sheet.of(unasked()).toText();
    }

    /** A plan that was asked for its checks and sections, and for nothing else yet. */
    @State(Scope.Thread)
    public static class Asked {

        private Job job;

        /** Asks; its time does not count. */
        @Setup(Level.Invocation)
        public void ask() {
            Job read = NeckFile.read(FILE);
            job = read.printIn(read.style());
            job.plan().checks();
            job.plan().sections();
        }
    }

    /** Its text. */
    @Benchmark
    public String text(Asked asked) {
        return Sheet.of(asked.job).toText();
    }

    /** Its data, in which each answer has its words too. */
    @Benchmark
    public String json(Asked asked) {
        return Document.PLAN.json(asked.job);
    }

    /** Its page with all drawings. */
    @Benchmark
    public String page(Asked asked) {
        return Sheet.of(asked.job).toHtml();
    }

    /** One question more of a plan that has been worked out: a check, a section, the chance of a limit. */
    @Benchmark
    public boolean question() {
        Plan made = worked.plan();
        return made.check(CheckCode.WOOD_LEFT).isPresent()
                && made.section(SectionCode.CHANNEL).isPresent()
                && made.known(BudgetCode.STRING_LINE).estimate().libraryUncertainty() > 0;
    }

    /** The file read and checked, its plan made once for that. */
    @Benchmark
    public Neck file() {
        return NeckFile.read(FILE).neck();
    }
}
