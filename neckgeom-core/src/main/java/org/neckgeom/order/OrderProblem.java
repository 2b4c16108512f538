package org.neckgeom.order;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.neckgeom.fault.Refusal;

/**
 * An order of work as bits: operation i is bit i, in usual order; a condition that somebody needs or is blocked by is a bit
 * as well. Built once, read by the search.
 */
final class OrderProblem {

    /** One operation that must come before another in every plan. */
    record Edge(int first, int then, String reason) {}

    final int count;
    final List<Operation> operations;
    final List<Condition> conditions;
    final long start;
    final long[] needs;
    final long[] blocked;
    final long[] takes;
    final long[] puts;
    /** The conditions an operation has a remedy for. */
    final long[] remedied;
    /** For each operation those that are kept before it, directly or through others. */
    final long[] keptBefore;
    /** As {@link #keptBefore}, with what follows from needs and blockers that have no remedy. */
    final long[] mustBefore;

    private final List<Edge> edges = new ArrayList<>();

    OrderProblem(WorkLeft work, List<KeptOrder> kept) {
        operations = work.operations();
        count = operations.size();
        Set<Condition> matter = new LinkedHashSet<>();
        for (Operation operation : operations) {
            matter.addAll(operation.needs());
            matter.addAll(operation.blockers());
        }
        conditions = List.copyOf(matter);
        if (conditions.size() > Long.SIZE) {
            throw Refusal.of(
                    "conditions that are needed or in the way",
                    "at-most",
                    "be " + Long.SIZE + " or fewer",
                    "were",
                    conditions.size());
        }
        start = bits(work.start());
        needs = new long[count];
        blocked = new long[count];
        takes = new long[count];
        puts = new long[count];
        remedied = new long[count];
        long asked = ~bits(work.notAskedFor());
        for (int i = 0; i < count; i++) {
            Operation operation = operations.get(i);
            needs[i] = bits(operation.needs()) & asked;
            blocked[i] = bits(operation.blockers());
            takes[i] = bits(operation.takesAway());
            puts[i] = bits(operation.puts());
            for (int c = 0; c < conditions.size(); c++) {
                if (!operation.remedies(conditions.get(c)).isEmpty()) {
                    remedied[i] |= 1L << c;
                }
            }
        }
        for (KeptOrder order : kept) {
            edges.add(new Edge(index(order.first()), index(order.then()), order.reason()));
        }
        keptBefore = closure();
        addWhatNeedsForce();
        mustBefore = closure();
    }

    private long bits(Iterable<Condition> some) {
        long bits = 0;
        for (Condition condition : some) {
            int at = conditions.indexOf(condition);
            if (at >= 0) {
                bits |= 1L << at;
            }
        }
        return bits;
    }

    int index(String operation) {
        for (int i = 0; i < count; i++) {
            if (operations.get(i).name().equals(operation)) {
                return i;
            }
        }
        throw Refusal.of("operation", "unknown", "be in the order of work", "\"" + operation + "\"");
    }

    /** Returns the conditions that hold after an operation. */
    long after(int operation, long held) {
        return held & ~takes[operation] | puts[operation];
    }

    /** Returns the conditions that trouble an operation: needed and not held, or held and in the way. */
    long troubling(int operation, long held) {
        return needs[operation] & ~held | blocked[operation] & held;
    }

    private void addWhatNeedsForce() {
        for (int i = 0; i < count; i++) {
            for (int c = 0; c < conditions.size(); c++) {
                long bit = 1L << c;
                if ((remedied[i] & bit) == 0) {
                    if ((needs[i] & bit) != 0) {
                        forcedByNeed(i, c, bit);
                    } else if ((blocked[i] & bit) != 0 && without(takes, bit, i) == 0) {
                        for (int r : others(puts, bit, i)) {
                            edges.add(new Edge(
                                    i,
                                    r,
                                    name(r) + " leaves " + conditions.get(c) + ", in the way of " + name(i)
                                            + " for good"));
                        }
                    }
                }
            }
        }
        // A need lost for good may follow from the edges so far, and give new ones: until nothing is new.
        boolean isNew = true;
        while (isNew) {
            long[] before = closure();
            isNew = false;
            for (int i = 0; i < count && !isCyclic(before); i++) {
                isNew |= addLosses(i, before);
            }
        }
    }

    private void forcedByNeed(int i, int c, long bit) {
        List<Integer> putters = others(puts, bit, i);
        if ((start & bit) == 0 && putters.size() == 1) {
            int q = putters.get(0);
            edges.add(new Edge(q, i, name(i) + " needs " + conditions.get(c) + " from " + name(q)));
        }
    }

    private boolean addLosses(int i, long[] before) {
        boolean isNew = false;
        for (int c = 0; c < conditions.size(); c++) {
            long bit = 1L << c;
            if ((needs[i] & ~remedied[i] & bit) != 0) {
                long putters = without(puts, bit, i);
                for (int r : others(takes, bit, i)) {
                    // Everyone who could put it comes before it is taken: afterwards it is gone.
                    if ((putters & ~before[r]) == 0 && (before[r] >> i & 1) == 0) {
                        edges.add(new Edge(
                                i, r, name(r) + " takes " + conditions.get(c) + " away from " + name(i) + " for good"));
                        isNew = true;
                    }
                }
            }
        }
        return isNew;
    }

    private String name(int i) {
        return operations.get(i).name();
    }

    private long without(long[] effects, long bit, int self) {
        long mask = 0;
        for (int r : others(effects, bit, self)) {
            mask |= 1L << r;
        }
        return mask;
    }

    private List<Integer> others(long[] effects, long bit, int self) {
        List<Integer> found = new ArrayList<>();
        for (int r = 0; r < count; r++) {
            if (r != self && (effects[r] & bit) != 0) {
                found.add(r);
            }
        }
        return found;
    }

    private long[] closure() {
        long[] before = new long[count];
        edges.forEach(edge -> before[edge.then()] |= 1L << edge.first());
        for (int k = 0; k < count; k++) {
            for (int i = 0; i < count; i++) {
                if ((before[i] >> k & 1) != 0) {
                    before[i] |= before[k];
                }
            }
        }
        return before;
    }

    private static boolean isCyclic(long[] before) {
        for (int i = 0; i < before.length; i++) {
            if ((before[i] >> i & 1) != 0) {
                return true;
            }
        }
        return false;
    }

    /** Returns one shortest cycle of each knot of operations that must each come before the other; empty if there is none. */
    List<List<Edge>> cycles() {
        List<List<Edge>> cycles = new ArrayList<>();
        long seen = 0;
        for (int i = 0; i < count; i++) {
            if ((mustBefore[i] >> i & 1) != 0 && (seen >> i & 1) == 0) {
                List<Edge> shortest = null;
                for (int j = i; j < count; j++) {
                    boolean isInKnot = (mustBefore[i] >> j & 1) != 0 && (mustBefore[j] >> i & 1) != 0;
                    if (isInKnot) {
                        seen |= 1L << j;
                        List<Edge> cycle = cycleThrough(j);
                        if (shortest == null || cycle.size() < shortest.size()) {
                            shortest = cycle;
                        }
                    }
                }
                cycles.add(shortest);
            }
        }
        return cycles;
    }

    /** Breadth first from an operation along the edges until one leads back to it. */
    private List<Edge> cycleThrough(int home) {
        Edge[] reachedBy = new Edge[count];
        List<Integer> queue = new ArrayList<>(List.of(home));
        for (int next = 0; next < queue.size(); next++) {
            int at = queue.get(next);
            for (Edge edge : edges) {
                if (edge.first() == at && reachedBy[edge.then()] == null) {
                    reachedBy[edge.then()] = edge;
                    queue.add(edge.then());
                    if (edge.then() == home) {
                        return unwound(reachedBy, home);
                    }
                }
            }
        }
        throw new IllegalStateException("no cycle through " + name(home));
    }

    private static List<Edge> unwound(Edge[] reachedBy, int home) {
        List<Edge> cycle = new ArrayList<>();
        int at = home;
        do {
            cycle.add(0, reachedBy[at]);
            at = reachedBy[at].first();
        } while (at != home);
        return cycle;
    }
}
