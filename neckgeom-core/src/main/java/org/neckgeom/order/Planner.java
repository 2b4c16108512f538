package org.neckgeom.order;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.order.OrderPlan.Step;
import org.neckgeom.order.OrderProblem.Edge;

/** From an order of work to its plan: cycles first, then the search, then what conflicts and who is to blame. */
final class Planner {

    private Planner() {}

    static OrderPlan plan(WorkLeft work) {
        OrderProblem problem = new OrderProblem(work, work.kept());
        List<List<Edge>> cycles = problem.cycles();
        if (!cycles.isEmpty()) {
            List<Conflict> conflicts =
                    cycles.stream().map(cycle -> conflict(work, problem, cycle)).toList();
            return new OrderPlan(work, List.of(), List.of(), Conflicts.of(conflicts));
        }
        OrderSearch search = new OrderSearch(problem);
        int trouble = search.leastTrouble();
        int[] order = search.nearest(trouble);
        List<KeptOrder> blamed = trouble == 0 ? List.of() : blamed(work, trouble);
        return judged(work, problem, order, blamed);
    }

    static OrderPlan judged(WorkLeft work, int[] order) {
        return judged(work, new OrderProblem(work, List.of()), order, List.of());
    }

    private static OrderPlan judged(WorkLeft work, OrderProblem problem, int[] order, List<KeptOrder> blamed) {
        StepReasons reasons = new StepReasons(work, problem, order);
        Conflicts all = Conflicts.of(reasons.conflicts(blamed));
        List<Step> steps = all.haveRemedies() ? reasons.steps() : List.of();
        return new OrderPlan(work, steps, reasons.before(), all);
    }

    private static Conflict conflict(WorkLeft work, OrderProblem problem, List<Edge> cycle) {
        List<String> operations = cycle.stream()
                .map(edge -> problem.operations.get(edge.first()).name())
                .toList();
        List<KeptOrder> kept = work.kept().stream()
                .filter(order -> cycle.stream()
                        .anyMatch(edge -> edge.first() == problem.index(order.first())
                                && edge.then() == problem.index(order.then())))
                .toList();
        return Conflict.ofCycle(operations, cycle.stream().map(Edge::reason).toList(), kept);
    }

    /** Returns a smallest set of kept orders that has the same least trouble: each of them has a part in it. */
    private static List<KeptOrder> blamed(WorkLeft work, int trouble) {
        List<KeptOrder> blamed = new ArrayList<>(work.kept());
        for (KeptOrder order : work.kept()) {
            List<KeptOrder> fewer = new ArrayList<>(blamed);
            fewer.remove(order);
            if (new OrderSearch(new OrderProblem(work, fewer)).leastTrouble() == trouble) {
                blamed = fewer;
            }
        }
        return blamed;
    }
}
