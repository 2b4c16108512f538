package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.budget.Budget;
import org.neckgeom.channel.Centring;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.measure.Limits;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.page.Document;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.strength.Relief;

/** Ten thousand tasks ask the same values at once, and have the bits that one thread has, asking values of its own. */
class SharedValuesTest {

    private static final int TASKS = 10_000;
    private static final int THREADS = 8;
    private static final long SEED = 20_260_901L;

    /** The questions, to values made once. Slow ones, such as whole sheets, are asked more seldom. */
    private static final class Shared {
        private final Budget<Length> budget = SharedValues.budget();
        private final Job plan = SharedValues.plan();
        private final Sheet sheet = Sheet.of(plan);
        private final Relief relief = Relief.of(SampleNecks.guitar());
        private final List<Object> all = SharedValues.all();

        String answer(int question, int which) {
            double x = 0.05 * (which % 20 + 1);
            return switch (question) {
                case 0 ->
                    bits(budget.distribution()
                            .quantile(percent(4.5 * (which % 20 + 1)))
                            .libraryValue());
                case 1 -> bits(budget.yield(Limits.within(mm(x))).probabilityOutside());
                case 2 -> bits(NormalLaw.cdf(x));
                case 5 -> relief.underStrings().hashCode() + " " + relief.underStrings();
                case 3 ->
                    Centring.of(SampleBench.offCentre())
                            .move()
                            .leaves(SampleBench.metricShop().feelerGauges())
                            .toString();
                case 4 ->
                    String.valueOf(plan.neck().hashCode()
                            == SampleNecks.octaveMandolin().hashCode());
                case 6 -> all.get(which % all.size()).toString();
                case 7 ->
                    bits(budget.simulate(which % 20)
                            .withThreads(1)
                            .trials(500)
                            .mean()
                            .libraryValue());
                case 8 -> String.valueOf(plan.plan().checks());
                case 9 -> sheet.toText();
                case 10 -> Document.hash(plan);
                default -> throw new AssertionError(question);
            };
        }

        private static String bits(double value) {
            return Long.toHexString(Double.doubleToLongBits(value));
        }
    }

    private record Asked(int question, int which) {}

    private static List<Asked> questions() {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Asked> asked = new ArrayList<>();
        for (int i = 0; i < TASKS; i++) {
            boolean slow = i % 50 == 0;
            asked.add(new Asked(slow ? 5 + random.nextInt(6) : random.nextInt(5), random.nextInt(20)));
        }
        return asked;
    }

    @Test
    void answers_haveTheBitsOfASingleThread() throws Exception {
        List<Asked> questions = questions();
        Shared own = new Shared();
        java.util.Map<Asked, String> expected = questions.stream()
                .distinct()
                .collect(Collectors.toMap(asked -> asked, asked -> own.answer(asked.question, asked.which)));

        Shared shared = new Shared();
        CountDownLatch start = new CountDownLatch(1);
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        List<String> differing = new ArrayList<>();
        try {
            List<Future<String>> answers = new ArrayList<>();
            for (Asked asked : questions) {
                Callable<String> task = () -> {
                    start.await();
                    return shared.answer(asked.question, asked.which);
                };
                answers.add(pool.submit(task));
            }
            start.countDown();
            for (int i = 0; i < TASKS; i++) {
                if (!answers.get(i).get().equals(expected.get(questions.get(i)))) {
                    differing.add(questions.get(i).toString());
                }
            }
        } finally {
            pool.shutdownNow();
        }

        assertThat(differing).as("answers that differ, seed " + SEED).isEmpty();
        assertThat(expected.keySet().stream().map(Asked::question).distinct()).hasSize(11);
    }
}
