package org.neckgeom.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The usual neck against the sequence general trade texts agree on (common practice, see the file's header). */
class CommonPracticeOrderTest {

    static List<String[]> rows(String kind) throws IOException {
        try (InputStream file = CommonPracticeOrderTest.class.getResourceAsStream("/order/common-practice-order.csv")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.replaceFirst("#.*", "").strip())
                    .filter(line -> line.startsWith(kind + ","))
                    .map(line -> line.split(","))
                    .toList();
        }
    }

    private static OrderOfWork shuffled(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Operation> operations = new ArrayList<>(OrderOfWork.forNeck().operations());
        for (int i = operations.size() - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            Operation kept = operations.get(i);
            operations.set(i, operations.get(j));
            operations.set(j, kept);
        }
        return OrderOfWork.of(operations.toArray(Operation[]::new));
    }

    @Test
    void usualPlan_followsTheCommonSequence() throws IOException {
        Map<String, Integer> steps = new HashMap<>();
        for (String[] row : rows("step")) {
            steps.put(row[2], Integer.parseInt(row[1]));
        }

        OrderPlan plan = OrderOfWork.forNeck().plan();

        List<String> names = plan.names().stream().filter(steps::containsKey).toList();
        assertThat(names).hasSize(25).containsExactlyInAnyOrderElementsOf(steps.keySet());
        assertThat(names.stream().map(steps::get).toList()).isSorted();
        assertThat(plan.conflicts().isEmpty()).isTrue();
    }

    @Tag("long")
    @Test
    void needsAlone_forceTheOrdersThatHaveAReason() throws IOException {
        List<String[]> forced = rows("before");
        assertThat(forced).hasSize(22);
        for (long seed = 0; seed < 100; seed++) {
            // The usual order is scrambled, so that only needs and leavings can bring it back.
            OrderPlan plan = shuffled(seed).plan();

            assertThat(plan.conflicts().isEmpty()).as("seed %d", seed).isTrue();
            for (String[] row : forced) {
                assertThat(plan.names().indexOf(row[1]))
                        .as("seed %d: %s before %s", seed, row[1], row[2])
                        .isLessThan(plan.names().indexOf(row[2]));
            }
        }
    }

    @Test
    void forcedOrdersTurnedRound_haveTheTradesWorkaround() {
        // Common practice: wings, heel, taper or carving before the channel are worked round as follows.
        assertThat(remedies("glue wings", Condition.WINGS)).contains("parallel spacer between shaft and fence");
        assertThat(remedies("glue wings", Condition.WINGS)).contains("plunge router between rails");
        assertThat(remedies("glue heel block", Condition.HEEL_BLOCK)).containsExactly("plunge router between rails");
        assertThat(remedies("taper the sides", Condition.PARALLEL_EDGES)).contains("straight carrier board");
        assertThat(remedies("glue head veneer", Condition.HEAD_VENEER))
                .contains("raised table under the shaft", "shim under the far end");
        assertThat(remedies("rough out the back", Condition.ROUNDED_BACK)).contains("cradle hollowed to the back");
    }

    private static List<String> remedies(String early, Condition condition) {
        OrderPlan plan =
                OrderOfWork.forNeck().keep(early).before("cut rod channel").plan();
        assertThat(plan.works()).as(early).isTrue();
        return plan.conflicts().list().stream()
                .filter(conflict ->
                        conflict.condition().filter(condition::equals).isPresent())
                .filter(conflict -> conflict.operations().get(0).equals("cut rod channel"))
                .flatMap(conflict -> conflict.remedies().stream())
                .map(Remedy::name)
                .toList();
    }
}
