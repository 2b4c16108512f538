package org.neckgeom.examples.flink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.flink.api.common.RuntimeExecutionMode;
import org.apache.flink.api.common.functions.OpenContext;
import org.apache.flink.api.common.functions.RichMapFunction;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.util.CloseableIterator;
import org.neckgeom.neck.Neck;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;
import org.neckgeom.sweep.Sweep;
import org.neckgeom.sweep.SweepResult;

/** Hands the places of a sweep to Apache Flink in its local mode, and prints the necks with the most wood left. */
public final class SweepOnFlink {

    private SweepOnFlink() {}

    /** Runs the sample neck's sweep. */
    public static void main(String[] arguments) throws Exception {
        Job plan = Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());
        List<Answer> answers = answers(Document.PLAN.json(plan), 2);
        Sweep<Neck> sweep = LeastWood.sweep(plan.neck());
        answers.stream()
                .filter(answer -> answer.refusal.isEmpty())
                .sorted(Comparator.comparingDouble((Answer answer) -> -answer.woodMm))
                .limit(3)
                .forEach(answer -> System.out.println(sweep.result(answer.index, LeastWood::leastMm)));
    }

    /** The answers in the order of the sweep; an engine gives them as they are ready. */
    @SuppressWarnings("try") // the iterator's close may be interrupted, and then so are we
    static List<Answer> answers(String planAsJson, int parallelism) throws Exception {
        StreamExecutionEnvironment engine = StreamExecutionEnvironment.createLocalEnvironment(parallelism);
        engine.setRuntimeMode(RuntimeExecutionMode.BATCH);
        long size = LeastWood.sweep(planAsJson).size();
        List<Answer> answers = new ArrayList<>();
        try (CloseableIterator<Answer> found = engine.fromSequence(0, size - 1)
                .map(new Asked(planAsJson))
                .executeAndCollect("least wood left")) {
            found.forEachRemaining(answers::add);
        }
        answers.sort(Comparator.comparingLong(answer -> answer.index));
        return answers;
    }

    /** Carries text to where the work is done, and makes the sweep of it there, once a worker. */
    static final class Asked extends RichMapFunction<Long, Answer> {

        private static final long serialVersionUID = 1L;

        private final String planAsJson;
        private transient Sweep<Neck> sweep;

        Asked(String planAsJson) {
            this.planAsJson = planAsJson;
        }

        @Override
        public void open(OpenContext context) {
            sweep = LeastWood.sweep(planAsJson);
        }

        @Override
        public Answer map(Long index) {
            SweepResult<Neck, Double> result = sweep.result(index, LeastWood::leastMm);
            return new Answer(index, result.answer().orElse(0.0), result.refusal());
        }
    }
}
