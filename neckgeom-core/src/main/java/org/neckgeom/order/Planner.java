package org.neckgeom.order;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.order.OrderPlan.Step;
import org.neckgeom.order.OrderProblem.Edge;

/** From an order of work to its plan: cycles first, then the search, then what clashes and who is to blame. */
final class Planner {

    private Planner() {}

    static OrderPlan plan(OrderOfWork work) {
        OrderProblem problem = new OrderProblem(work, work.keptOrders());
        List<List<Edge>> cycles = problem.cycles();
        if (!cycles.isEmpty()) {
            List<Clash> clashes =
                    cycles.stream().map(cycle -> clash(work, problem, cycle)).toList();
            return new OrderPlan(work, List.of(), Clashes.of(clashes));
        }
        OrderSearch search = new OrderSearch(problem);
        int trouble = search.leastTrouble();
        int[] order = search.nearest(trouble);
        List<KeptOrder> blamed = trouble == 0 ? List.of() : blamed(work, trouble);
        return judged(work, problem, order, blamed);
    }

    static OrderPlan judged(OrderOfWork work, int[] order) {
        return judged(work, new OrderProblem(work, List.of()), order, List.of());
    }

    private static OrderPlan judged(OrderOfWork work, OrderProblem problem, int[] order, List<KeptOrder> blamed) {
        StepReasons reasons = new StepReasons(work, problem, order);
        Clashes all = Clashes.of(reasons.clashes(blamed));
        List<Step> steps = all.haveRemedies() ? reasons.steps() : List.of();
        return new OrderPlan(work, steps, all);
    }

    private static Clash clash(OrderOfWork work, OrderProblem problem, List<Edge> cycle) {
        List<String> operations = cycle.stream()
                .map(edge -> problem.operations.get(edge.first()).name())
                .toList();
        List<KeptOrder> kept = work.keptOrders().stream()
                .filter(order -> cycle.stream()
                        .anyMatch(edge -> edge.first() == problem.index(order.first())
                                && edge.then() == problem.index(order.then())))
                .toList();
        return Clash.ofCycle(operations, cycle.stream().map(Edge::reason).toList(), kept);
    }

    /** Returns a smallest set of kept orders that has the same least trouble: each of them has a part in it. */
    private static List<KeptOrder> blamed(OrderOfWork work, int trouble) {
        List<KeptOrder> blamed = new ArrayList<>(work.keptOrders());
        for (KeptOrder order : work.keptOrders()) {
            List<KeptOrder> fewer = new ArrayList<>(blamed);
            fewer.remove(order);
            if (new OrderSearch(new OrderProblem(work, fewer)).leastTrouble() == trouble) {
                blamed = fewer;
            }
        }
        return blamed;
    }

    /** Returns the kept orders, of those to blame, without which an operation need not meet a condition. */
    static List<KeptOrder> forcing(OrderOfWork work, List<KeptOrder> blamed, int operation, int condition) {
        List<KeptOrder> forcing = new ArrayList<>();
        for (KeptOrder order : blamed) {
            List<KeptOrder> fewer = new ArrayList<>(blamed);
            fewer.remove(order);
            OrderProblem problem = new OrderProblem(work, fewer);
            OrderSearch search = new OrderSearch(problem);
            if (!meets(problem, search.nearest(search.leastTrouble()), operation, condition)) {
                forcing.add(order);
            }
        }
        return forcing.isEmpty() ? blamed : forcing;
    }

    private static boolean meets(OrderProblem problem, int[] order, int operation, int condition) {
        long held = problem.start;
        for (int i : order) {
            if (i == operation) {
                return (problem.troubling(i, held) >> condition & 1) != 0;
            }
            held = problem.after(i, held);
        }
        return false;
    }
}
