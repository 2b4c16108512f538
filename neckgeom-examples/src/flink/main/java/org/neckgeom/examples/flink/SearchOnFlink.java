package org.neckgeom.examples.flink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;
import org.apache.flink.api.common.RuntimeExecutionMode;
import org.apache.flink.api.common.functions.MapFunction;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.util.CloseableIterator;
import org.neckgeom.examples.DesignSearch;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;
import org.neckgeom.search.Search;
import org.neckgeom.stock.Wood;

/** Hands the woods of the design search to Apache Flink in its local mode: a search each, with its own seed and threads. */
public final class SearchOnFlink {

    private SearchOnFlink() {}

    /** Prints the answer in each wood. */
    public static void main(String[] arguments) throws Exception {
        String job = Document.PLAN.json(NeckFile.read("octave-mandolin.yaml"));
        answers(job, Search.DEFAULT_DESIGNS, 2).forEach(answer -> System.out.println(answer.text));
    }

    /** The answers in the order of the woods; an engine gives them as they are ready. */
    @SuppressWarnings("try") // the iterator's close may be interrupted, and then so are we
    static List<Found> answers(String planAsJson, int designs, int parallelism) throws Exception {
        StreamExecutionEnvironment engine = StreamExecutionEnvironment.createLocalEnvironment(parallelism);
        engine.setRuntimeMode(RuntimeExecutionMode.BATCH);
        Long[] woods = LongStream.range(0, DesignSearch.WOODS.size()).boxed().toArray(Long[]::new);
        List<Found> answers = new ArrayList<>();
        try (CloseableIterator<Found> found = engine.fromData(woods)
                .rebalance()
                .map(new Searched(planAsJson, designs))
                .executeAndCollect("flattest head, thinnest blank")) {
            found.forEachRemaining(answers::add);
        }
        answers.sort(Comparator.comparingLong(answer -> answer.wood));
        return answers;
    }

    /** What comes back from the engine: a plain value that it can send and sort. */
    public static class Found {

        /** Place among the woods. */
        public long wood;

        /** The result as text. */
        public String text = "";

        /** Made by the engine, which fills the fields. */
        public Found() {}
    }

    /** Carries text to where the work is done, and makes the search of it there. */
    static final class Searched implements MapFunction<Long, Found> {

        private static final long serialVersionUID = 1L;

        private final String planAsJson;
        private final int designs;

        Searched(String planAsJson, int designs) {
            this.planAsJson = planAsJson;
            this.designs = designs;
        }

        @Override
        public Found map(Long wood) {
            Job job = Document.PLAN.read(planAsJson);
            Found found = new Found();
            found.wood = wood;
            Wood made = DesignSearch.WOODS.get(wood.intValue());
            found.text = made.name() + ": "
                    + DesignSearch.search(job, made).designs(designs).result();
            return found;
        }
    }
}
