package org.neckgeom.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Does the work of an order step by step on a set of conditions, with nothing of the planner's but the operations. */
final class BenchSimulator {

    /** Something that went wrong at a step. */
    record Trouble(String operation, Condition condition, boolean hasRemedy) {}

    private BenchSimulator() {}

    static List<Trouble> run(List<Condition> start, List<Operation> order) {
        Set<Condition> bench = new HashSet<>(start);
        List<Trouble> troubles = new ArrayList<>();
        for (Operation operation : order) {
            for (Condition need : operation.needs()) {
                if (!bench.contains(need)) {
                    troubles.add(trouble(operation, need));
                }
            }
            for (Condition blocker : operation.blockers()) {
                if (bench.contains(blocker)) {
                    troubles.add(trouble(operation, blocker));
                }
            }
            bench.removeAll(operation.takesAway());
            bench.addAll(operation.puts());
        }
        return troubles;
    }

    private static Trouble trouble(Operation operation, Condition condition) {
        return new Trouble(
                operation.name(), condition, !operation.remedies(condition).isEmpty());
    }
}
