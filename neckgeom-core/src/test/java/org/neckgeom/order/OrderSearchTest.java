package org.neckgeom.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The search against every order there is, on sets small enough to try them all. */
class OrderSearchTest {

    private static final int PROBLEMS = 600;

    /** The best order by trying all: least trouble, then fewest pairs turned round, then the first. */
    private record Best(int withoutRemedy, int withRemedy, int turned, int[] order) {}

    private static Best best(OrderOfWork work, List<int[]> permutations) {
        Best best = null;
        for (int[] order : permutations) {
            if (keeps(work, order)) {
                List<Operation> operations =
                        Arrays.stream(order).mapToObj(work.operations()::get).toList();
                List<BenchSimulator.Trouble> troubles = BenchSimulator.run(work.start(), operations);
                int stuck = (int) troubles.stream().filter(t -> !t.hasRemedy()).count();
                Best next = new Best(stuck, troubles.size() - stuck, turned(order), order);
                if (best == null || isBetter(next, best)) {
                    best = next;
                }
            }
        }
        return best;
    }

    private static boolean isBetter(Best one, Best other) {
        if (one.withoutRemedy != other.withoutRemedy) {
            return one.withoutRemedy < other.withoutRemedy;
        }
        if (one.withRemedy != other.withRemedy) {
            return one.withRemedy < other.withRemedy;
        }
        return one.turned < other.turned;
    }

    private static boolean keeps(OrderOfWork work, int[] order) {
        List<String> names = Arrays.stream(order)
                .mapToObj(i -> work.operations().get(i).name())
                .toList();
        return work.keptOrders().stream().allMatch(kept -> names.indexOf(kept.first()) < names.indexOf(kept.then()));
    }

    private static int turned(int[] order) {
        int turned = 0;
        for (int i = 0; i < order.length; i++) {
            for (int j = i + 1; j < order.length; j++) {
                turned += order[i] > order[j] ? 1 : 0;
            }
        }
        return turned;
    }

    @Tag("long")
    @Test
    void plan_isTheBestOfAllOrders() {
        List<int[]> permutations = RandomWork.permutations(6);
        int possible = 0;
        int clean = 0;
        int cyclic = 0;
        for (long seed = 0; seed < PROBLEMS; seed++) {
            OrderOfWork work = RandomWork.of(seed, 6, 5, (int) (seed % 4));

            OrderPlan plan = work.plan();

            Best best = best(work, permutations);
            boolean works = best != null && best.withoutRemedy == 0;
            assertThat(plan.works()).as("seed %d works", seed).isEqualTo(works);
            if (works) {
                List<String> expected = Arrays.stream(best.order)
                        .mapToObj(i -> work.operations().get(i).name())
                        .toList();
                assertThat(plan.names()).as("seed %d", seed).isEqualTo(expected);
                assertThat(plan.conflicts().list())
                        .as("seed %d conflicts", seed)
                        .hasSize(best.withRemedy);
                possible++;
                clean += best.withRemedy == 0 ? 1 : 0;
            } else {
                assertThat(plan.steps()).as("seed %d steps", seed).isEmpty();
                boolean isCycle = plan.conflicts().list().stream().allMatch(c -> c.kind() == Conflict.Kind.CYCLE);
                if (isCycle) {
                    cyclic++;
                } else {
                    long stuck = plan.conflicts().list().stream()
                            .filter(conflict -> conflict.remedies().isEmpty())
                            .count();
                    assertThat(stuck)
                            .as("seed %d conflicts without remedy", seed)
                            .isEqualTo(best.withoutRemedy);
                }
            }
        }
        // Every kind of answer must have been met, or the test proves little.
        assertThat(clean).isGreaterThan(20);
        assertThat(possible - clean).isGreaterThan(20);
        assertThat(cyclic).isGreaterThan(20);
        assertThat(PROBLEMS - possible - cyclic).isGreaterThan(20);
    }

    @Test
    void plan_isTheBestOfAllOrders_whenOperationsNeedLittle() {
        List<int[]> permutations = RandomWork.permutations(7);
        int possible = 0;
        for (long seed = 0; seed < 100; seed++) {
            OrderOfWork work = RandomWork.of(5000 + seed, 7, 2, 3);

            OrderPlan plan = work.plan();

            Best best = best(work, permutations);
            boolean works = best != null && best.withoutRemedy == 0;
            assertThat(plan.works()).as("seed %d works", 5000 + seed).isEqualTo(works);
            if (works) {
                possible++;
                List<String> expected = Arrays.stream(best.order)
                        .mapToObj(i -> work.operations().get(i).name())
                        .toList();
                assertThat(plan.names()).as("seed %d", 5000 + seed).isEqualTo(expected);
            }
        }
        assertThat(possible).isGreaterThan(10);
    }

    @Test
    void plan_findsTheWayThrough_whenManyOperationsAreFree() {
        for (long seed = 0; seed < 20; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            OrderOfWork work = OrderOfWork.of();
            for (int i = 0; i < OrderOfWork.MOST_OPERATIONS; i++) {
                work = work.with(Operation.named("piece " + i));
            }
            for (int k = 0; k < 6; k++) {
                int first = 6 + random.nextInt(50);
                work = work.keep("piece " + first).before("piece " + (first - 1 - random.nextInt(6)));
            }

            OrderPlan plan = work.plan();

            assertThat(plan.works() || plan.conflicts().list().get(0).kind() == Conflict.Kind.CYCLE)
                    .as("seed %d", seed)
                    .isTrue();
        }
    }

    @Test
    void plan_saysSo_whenFreeOperationsSurroundAnImpossibleOne() {
        Condition lost = Condition.named("lost");
        OrderOfWork work = OrderOfWork.of(Operation.named("hopeless").needs(lost));
        for (int i = 1; i < OrderOfWork.MOST_OPERATIONS; i++) {
            work = work.with(Operation.named("piece " + i).puts(Condition.named("part " + i)));
        }

        OrderPlan plan = work.plan();

        assertThat(plan.works()).isFalse();
        assertThat(plan.conflicts().list().get(0).kind()).isEqualTo(Conflict.Kind.NEVER);
        assertThat(plan.conflicts().list().get(0).condition()).contains(lost);
    }
}
