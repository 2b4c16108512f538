package org.neckgeom.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.order.Conflict.Kind;
import org.neckgeom.testing.Approved;

class OrderPlanTest {

    private static List<Operation> operations(OrderPlan plan) {
        return plan.steps().stream().map(OrderPlan.Step::operation).toList();
    }

    /** The usual neck with some operations left out, some added, and random orders kept. */
    private static OrderOfWork randomNeck(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        OrderOfWork work = OrderOfWork.forNeck();
        for (int k = random.nextInt(3); k > 0; k--) {
            work = work.with(Operation.named("own " + k)
                    .needs(random.nextBoolean() ? Condition.FLAT_FACE : Condition.TRUE_HEAD)
                    .blockedBy(random.nextBoolean() ? Condition.NUT : Condition.CARVED_NECK));
        }
        if (random.nextBoolean()) {
            List<String> early = List.of("glue wings", "glue heel block", "glue head veneer", "taper the sides");
            work = work.keep(early.get(random.nextInt(early.size()))).before("cut rod channel");
        }
        List<Operation> all = work.operations();
        for (int k = random.nextInt(4); k > 0; k--) {
            int first = random.nextInt(all.size());
            int then = random.nextInt(all.size());
            if (first != then) {
                work = work.keep(all.get(first).name()).before(all.get(then).name());
            }
        }
        return work;
    }

    @Tag("long")
    @Test
    void plan_keepsKeptOrdersAndMeetsEveryNeed() {
        int working = 0;
        int withRemedies = 0;
        for (long seed = 0; seed < 300; seed++) {
            OrderOfWork work = randomNeck(seed);

            OrderPlan plan = work.plan();

            if (plan.works()) {
                working++;
                withRemedies += plan.conflicts().isEmpty() ? 0 : 1;
                List<String> names = plan.names();
                assertThat(names)
                        .as("seed %d", seed)
                        .containsExactlyInAnyOrderElementsOf(
                                work.operations().stream().map(Operation::name).toList());
                for (KeptOrder kept : work.keptOrders()) {
                    assertThat(names.indexOf(kept.first()))
                            .as("seed %d %s", seed, kept)
                            .isLessThan(names.indexOf(kept.then()));
                }
                List<BenchSimulator.Trouble> troubles = BenchSimulator.run(work.start(), operations(plan));
                assertThat(troubles).as("seed %d", seed).allMatch(BenchSimulator.Trouble::hasRemedy);
                assertThat(plan.conflicts().list().stream()
                                .map(conflict -> conflict.operations().get(0)
                                        + conflict.condition().orElseThrow())
                                .toList())
                        .as("seed %d", seed)
                        .containsExactlyInAnyOrderElementsOf(troubles.stream()
                                .map(trouble -> trouble.operation() + trouble.condition())
                                .toList());
            }
        }
        assertThat(working).isGreaterThan(60);
        assertThat(withRemedies).isGreaterThan(10);
    }

    @Test
    void plan_isTheSameTwice() {
        for (long seed = 0; seed < 60; seed++) {
            OrderPlan once = randomNeck(seed).plan();
            OrderPlan again = randomNeck(seed).plan();

            assertThat(again).as("seed %d", seed).isEqualTo(once);
            assertThat(again.table()).as("seed %d", seed).isEqualTo(once.table());
        }
    }

    @Tag("long")
    @Test
    void plan_staysTheSame_whenAnOrderItKeepsAnywayIsKept() {
        int tried = 0;
        for (long seed = 0; seed < 250; seed++) {
            OrderOfWork work = seed % 2 == 0 ? randomNeck(seed) : RandomWork.of(seed, 9, 5, 2);
            OrderPlan plan = work.plan();
            if (plan.works()) {
                SplittableRandom random = new SplittableRandom(seed);
                List<String> names = plan.names();
                for (int k = 0; k < 4; k++) {
                    int then = 1 + random.nextInt(names.size() - 1);
                    int first = random.nextInt(then);

                    OrderPlan more =
                            work.keep(names.get(first)).before(names.get(then)).plan();

                    assertThat(more.names()).as("seed %d", seed).isEqualTo(names);
                    tried++;
                }
            }
        }
        assertThat(tried).isGreaterThan(200);
    }

    @Test
    void conflicts_nameEveryCycleOfKeptOrders() {
        int cyclic = 0;
        for (long seed = 0; seed < 400; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int count = 5 + random.nextInt(8);
            OrderOfWork work = OrderOfWork.of();
            for (int i = 0; i < count; i++) {
                work = work.with(Operation.named(RandomWork.name(i)));
            }
            for (int k = 0; k < count; k++) {
                int first = random.nextInt(count);
                int then = random.nextInt(count);
                if (first != then) {
                    work = work.keep(RandomWork.name(first)).before(RandomWork.name(then));
                }
            }

            OrderPlan plan = work.plan();

            boolean isCyclic = leftByPeeling(work) > 0;
            assertThat(plan.works()).as("seed %d", seed).isEqualTo(!isCyclic);
            for (Conflict conflict : plan.conflicts()) {
                cyclic++;
                assertThat(conflict.kind()).isEqualTo(Kind.CYCLE);
                List<String> names = conflict.operations();
                for (int i = 0; i < names.size(); i++) {
                    KeptOrder turn = new KeptOrder(names.get(i), names.get((i + 1) % names.size()));
                    assertThat(work.keptOrders()).as("seed %d", seed).contains(turn);
                    assertThat(conflict.keptOrders()).as("seed %d", seed).contains(turn);
                    assertThat(conflict.reasons().toString()).contains(turn.toString());
                }
                assertThat(names).doesNotHaveDuplicates();
            }
        }
        assertThat(cyclic).isGreaterThan(100);
    }

    /** A. B. Kahn, Topological sorting of large networks, 1962: what is left when sources are taken off is cyclic. */
    private static int leftByPeeling(OrderOfWork work) {
        Map<String, Integer> incoming = new HashMap<>();
        work.operations().forEach(operation -> incoming.put(operation.name(), 0));
        work.keptOrders().forEach(kept -> incoming.merge(kept.then(), 1, Integer::sum));
        List<String> sources = new ArrayList<>();
        incoming.forEach((name, count) -> {
            if (count == 0) {
                sources.add(name);
            }
        });
        for (int next = 0; next < sources.size(); next++) {
            String source = sources.get(next);
            for (KeptOrder kept : work.keptOrders()) {
                if (kept.first().equals(source) && incoming.merge(kept.then(), -1, Integer::sum) == 0) {
                    sources.add(kept.then());
                }
            }
        }
        return incoming.size() - sources.size();
    }

    private static OrderOfWork keepingOnly(OrderOfWork work, List<KeptOrder> orders) {
        OrderOfWork only = OrderOfWork.of(work.operations().toArray(Operation[]::new));
        for (KeptOrder kept : orders) {
            only = only.keep(kept.first()).before(kept.then());
        }
        return only;
    }

    @Tag("long")
    @Test
    void keptOrdersOfAConflict_forceItTogether_andNoneIsIdle() {
        int blamed = 0;
        for (long seed = 0; seed < 300; seed++) {
            OrderOfWork work = randomNeck(seed);
            List<Conflict> conflicts = work.plan().conflicts().list();
            if (conflicts.size() == 1) {
                Conflict conflict = conflicts.get(0);

                Conflicts again =
                        keepingOnly(work, conflict.keptOrders()).plan().conflicts();

                assertThat(again.list()).as("seed %d", seed).hasSize(1);
                assertThat(again.list().get(0).condition()).as("seed %d", seed).isEqualTo(conflict.condition());
                for (KeptOrder idle : conflict.keptOrders()) {
                    List<KeptOrder> fewer = new ArrayList<>(conflict.keptOrders());
                    fewer.remove(idle);
                    assertThat(keepingOnly(work, fewer).plan().conflicts())
                            .as("seed %d without %s", seed, idle)
                            .noneMatch(other -> other.kind() == conflict.kind()
                                    && other.condition().equals(conflict.condition())
                                    && other.operations().equals(conflict.operations()));
                    blamed++;
                }
            }
        }
        assertThat(blamed).isGreaterThan(50);
    }

    @Tag("long")
    @Test
    void toString_staysShort_withEverythingAsked() {
        for (long seed = 0; seed < 200; seed++) {
            OrderPlan plan = randomNeck(seed).plan();

            assertThat(plan.toString()).as("seed %d", seed).hasSizeLessThan(1000);
            assertThat(plan.conflicts().toString()).as("seed %d", seed).hasSizeLessThan(1000);
            plan.conflicts().forEach(conflict -> assertThat(conflict.toString()).hasSizeLessThan(1000));
            plan.steps()
                    .forEach(step ->
                            assertThat(plan.table()).contains(step.toString().substring(0, 3)));
        }
    }

    @Test
    void toString_givesEveryReason_whenThePlanIsShort() {
        OrderPlan plan = OrderOfWork.of(
                        Operation.named("plane").puts(Condition.FLAT_FACE),
                        Operation.named("glue").needs(Condition.FLAT_FACE))
                .plan();

        assertThat(plan.toString()).isEqualTo("""
                Order of work: 2 steps, no conflicts
                  1 plane  flat face for step 2
                  2 glue   needs flat face from step 1""");
    }

    @Test
    void toString_cutsALongPlan_andSaysWhereTheRestIs() {
        OrderOfWork work = OrderOfWork.of();
        for (int i = 10; i < 10 + OrderOfWork.MOST_OPERATIONS; i++) {
            work = work.with(Operation.named("x".repeat(48) + i));
        }

        OrderPlan plan = work.plan();

        assertThat(plan.toString()).hasSizeLessThan(1000).contains("table()");
        assertThat(plan.table()).contains("x69");
    }

    @Test
    void step_isFoundByName() {
        OrderPlan plan = OrderOfWork.forNeck().plan();

        assertThat(plan.step("cut rod channel").number()).isEqualTo(5);
        assertThat(plan.step("cut rod channel").why())
                .contains("needs straight parallel edges and edges square to the face from step 3")
                .contains("before step 9 puts heel block in the way");
        assertThatThrownBy(() -> plan.step("cut rod chanel"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("did you mean \"cut rod channel\"?");
    }

    @Test
    void cautions_beginWithTheMachinesInstructions() {
        OrderPlan plan = OrderOfWork.forNeck()
                .keep("glue wings")
                .before("cut rod channel")
                .plan();

        assertThat(plan.cautions().get(0))
                .startsWith("The machine's own instructions, guards and local rules come first");
        assertThat(plan.cautions())
                .anyMatch(words -> words.startsWith("cut rod channel: Clamp a stop behind and a stop in front"));
        assertThat(plan.cautions()).anyMatch(words -> words.contains("parallel spacer between shaft and fence"));
        assertThat(plan.table()).endsWith(plan.cautions().get(0));
    }

    @Test
    void table_saysWhyEachStepStandsThere_andEveryRemedy() {
        OrderOfWork kept = OrderOfWork.forNeck().keep("glue wings").before("cut rod channel");
        OrderPlan plan = kept.plan();

        Approved.hold(
                "order",
                Map.of(
                        "kept-order.txt",
                        String.join(
                                "\n\n",
                                plan.table(),
                                plan.toString(),
                                plan.conflicts().table(),
                                kept.toString()),
                        "usual-order.txt",
                        OrderOfWork.forNeck().plan().table()));
    }

    @Test
    void plans_areEqualForTheSameWork() {
        OrderOfWork usual = OrderOfWork.forNeck();
        OrderOfWork kept = usual.keep("glue wings").before("cut rod channel");
        OrderOfWork without = usual.without("glue wings");

        assertThat(usual.plan()).isEqualTo(OrderOfWork.forNeck().plan()).hasSameHashCodeAs(usual.plan());
        assertThat(usual.plan())
                .isNotEqualTo(kept.plan())
                .isNotEqualTo(without.plan())
                .isNotEqualTo("plan");
        assertThat(usual.plan().hashCode()).isNotEqualTo(kept.plan().hashCode());
        assertThat(usual.hashCode()).isNotEqualTo(kept.hashCode());
        assertThat(usual).isNotEqualTo(without).isNotEqualTo("work");
        assertThat(without.leftOut()).extracting(Operation::name).containsExactly("glue wings");
        assertThat(kept.plan().conflicts())
                .isNotEqualTo(usual.plan().conflicts())
                .isNotEqualTo("conflicts");
        assertThat(kept.plan().conflicts().hashCode())
                .isNotEqualTo(usual.plan().conflicts().hashCode());
        assertThat(usual.plan().conflicts().isEmpty()).isTrue();
        assertThat(kept.plan().conflicts().isEmpty()).isFalse();
    }

    /** By hand from needs and leavings: b needs a's, c takes away what b needs, d is kept after a, e needs b's and c's. */
    @Test
    void before_givesTheNearestStepsThatHaveToComeFirst() {
        Condition flat = Condition.named("flat");
        Condition glued = Condition.named("glued");
        Condition round = Condition.named("round");
        OrderPlan plan = OrderOfWork.of(
                        Operation.named("a").puts(flat),
                        Operation.named("b").needs(flat).puts(glued),
                        Operation.named("c").takesAway(flat).puts(round),
                        Operation.named("d"),
                        Operation.named("e").needs(glued).needs(round))
                .keep("a")
                .before("d")
                .plan();

        Map<String, List<String>> before = new LinkedHashMap<>();
        plan.steps()
                .forEach(step -> before.put(
                        step.operation().name(),
                        plan.before(step).stream()
                                .map(number -> plan.names().get(number - 1))
                                .toList()));

        assertThat(before)
                .containsEntry("a", List.of())
                .containsEntry("b", List.of("a"))
                .containsEntry("c", List.of("b"))
                .containsEntry("d", List.of("a"))
                .containsEntry("e", List.of("c"));
        OrderPlan other = OrderOfWork.of(Operation.named("z")).plan();
        assertThatThrownBy(() -> plan.before(other.steps().get(0))).hasMessageContaining("\"z\"");
    }

    /** All that has to come first comes first, and a step never names what another of its own steps implies. */
    @Test
    void before_isAGraphWithoutDetours() {
        OrderPlan plan = OrderOfWork.forNeck().plan();
        Map<Integer, Set<Integer>> all = new LinkedHashMap<>();
        for (OrderPlan.Step step : plan.steps()) {
            Set<Integer> reached = new HashSet<>();
            for (int first : plan.before(step)) {
                assertThat(first).isLessThan(step.number());
                reached.addAll(all.get(first));
            }
            assertThat(plan.before(step)).noneMatch(reached::contains);
            reached.addAll(plan.before(step));
            all.put(step.number(), reached);
        }
        assertThat(all.get(plan.step("set up").number())).hasSizeGreaterThan(20);
    }
}
