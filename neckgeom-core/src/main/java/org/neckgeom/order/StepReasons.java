package org.neckgeom.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.neckgeom.order.Conflict.Kind;
import org.neckgeom.order.OrderPlan.Step;
import org.neckgeom.text.Names;

/**
 * Goes through an order step by step and lists for each the steps it builds on, those it must precede or follow, and
 * the conflicts.
 */
final class StepReasons {

    private final WorkLeft work;
    private final OrderProblem problem;
    private final int[] order;
    /** What holds before each step. */
    private final long[] held;

    StepReasons(WorkLeft work, OrderProblem problem, int[] order) {
        this.work = work;
        this.problem = problem;
        this.order = order;
        this.held = new long[order.length];
        long now = problem.start;
        for (int k = 0; k < order.length; k++) {
            held[k] = now;
            now = problem.after(order[k], now);
        }
    }

    List<Conflict> conflicts(List<KeptOrder> blamed) {
        List<Conflict> conflicts = new ArrayList<>();
        for (int k = 0; k < order.length; k++) {
            for (int c = 0; c < problem.conditions.size(); c++) {
                if ((problem.troubling(order[k], held[k]) >> c & 1) != 0) {
                    conflicts.add(conflict(k, c, blamed));
                }
            }
        }
        return conflicts;
    }

    private Conflict conflict(int k, int c, List<KeptOrder> blamed) {
        Operation operation = operation(k);
        Condition condition = problem.conditions.get(c);
        boolean isBlocked = (held[k] >> c & 1) != 0;
        int before = lastBefore(k, isBlocked ? problem.puts : problem.takes, c);
        int later = isBlocked ? -1 : firstAfter(k, problem.puts, c);
        Kind kind = Kind.NEVER;
        int other = -1;
        if (isBlocked) {
            kind = Kind.IN_THE_WAY;
            other = before;
        } else if (wasHeldBefore(k, c)) {
            kind = Kind.GONE;
            other = before;
        } else if (later >= 0) {
            kind = Kind.NOT_YET;
            other = later;
        }
        List<KeptOrder> forcing =
                kind == Kind.NEVER || blamed.isEmpty() ? List.of() : OrderSearch.forcing(work, blamed, order[k], c);
        Optional<String> name =
                other < 0 ? Optional.empty() : Optional.of(operation(other).name());
        return Conflict.of(
                kind, operation.name(), name, condition, operation.reason(condition), forcing, remedies(k, c));
    }

    /** Returns the remedies for a condition, that one first which is taken at this step. */
    private List<Remedy> remedies(int k, int c) {
        List<Remedy> all = operation(k).remedies(problem.conditions.get(c));
        Set<Remedy> sorted = new LinkedHashSet<>(taken(k));
        sorted.retainAll(all);
        sorted.addAll(all);
        return List.copyOf(sorted);
    }

    /**
     * Returns the remedies taken at a step: as few as it needs, since two set-ups for one cut seldom go together. Again and
     * again the one that helps against the most of the rest, of equals the one given first.
     */
    private Set<Remedy> taken(int k) {
        List<List<Remedy>> open = new ArrayList<>();
        for (int c = 0; c < problem.conditions.size(); c++) {
            if ((problem.troubling(order[k], held[k]) >> c & 1) != 0) {
                open.add(operation(k).remedies(problem.conditions.get(c)));
            }
        }
        open.removeIf(List::isEmpty);
        Set<Remedy> taken = new LinkedHashSet<>();
        while (!open.isEmpty()) {
            Remedy best = null;
            long most = 0;
            for (List<Remedy> remedies : open) {
                for (Remedy remedy : remedies) {
                    long helps = open.stream()
                            .filter(other -> other.contains(remedy))
                            .count();
                    if (helps > most) {
                        best = remedy;
                        most = helps;
                    }
                }
            }
            Remedy next = best;
            taken.add(next);
            open.removeIf(remedies -> remedies.contains(next));
        }
        return taken;
    }

    private boolean wasHeldBefore(int k, int c) {
        for (int j = 0; j <= k; j++) {
            if ((held[j] >> c & 1) != 0) {
                return true;
            }
        }
        return false;
    }

    List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        for (int k = 0; k < order.length; k++) {
            Set<Remedy> remedies = taken(k);
            steps.add(new Step(k + 1, operation(k), why(k, remedies), List.copyOf(remedies)));
        }
        return steps;
    }

    /** For each step those directly before it: needed, spoilt by it or kept before it; not those that others imply. */
    List<List<Integer>> before() {
        List<BitSet> all = new ArrayList<>();
        List<List<Integer>> direct = new ArrayList<>();
        for (int k = 0; k < order.length; k++) {
            BitSet asked = asked(k);
            BitSet implied = new BitSet();
            asked.stream().forEach(j -> implied.or(all.get(j)));
            BitSet last = (BitSet) asked.clone();
            last.andNot(implied);
            asked.or(implied);
            all.add(asked);
            direct.add(last.stream().mapToObj(j -> j + 1).toList());
        }
        return direct;
    }

    private BitSet asked(int k) {
        BitSet asked = new BitSet();
        for (int c = 0; c < problem.conditions.size(); c++) {
            boolean isMet = ((problem.needs[order[k]] & held[k]) >> c & 1) != 0;
            int source = isMet ? lastBefore(k, problem.puts, c) : -1;
            if (source >= 0) {
                asked.set(source);
            }
        }
        for (int j = 0; j < k; j++) {
            long spoilt = problem.takes[order[k]] & problem.needs[order[j]]
                    | problem.puts[order[k]] & problem.blocked[order[j]];
            boolean isKept = (problem.keptBefore[order[k]] >> order[j] & 1) != 0;
            if (spoilt != 0 || isKept) {
                asked.set(j);
            }
        }
        return asked;
    }

    private String why(int k, Set<Remedy> remedies) {
        List<String> parts = new ArrayList<>();
        remedies.forEach(remedy -> parts.add("with " + remedy.name()));
        work.kept()
                .forEach(
                        order -> order.asksOf(operation(k).name(), this::number).ifPresent(parts::add));
        Map<Integer, List<String>> needs = new TreeMap<>();
        TreeMap<Integer, List<String>> losses = new TreeMap<>();
        TreeMap<Integer, List<String>> ruins = new TreeMap<>();
        for (int c = 0; c < problem.conditions.size(); c++) {
            String condition = problem.conditions.get(c).name();
            boolean isNeeded = (problem.needs[order[k]] >> c & 1) != 0;
            boolean isBlocked = (problem.blocked[order[k]] >> c & 1) != 0;
            boolean isHeld = (held[k] >> c & 1) != 0;
            if (isNeeded && isHeld) {
                int source = lastBefore(k, problem.puts, c);
                put(needs, source + 1, condition);
            }
            if (isNeeded && isHeld || isBlocked && !isHeld) {
                int loss = firstAfter(k, isNeeded ? problem.takes : problem.puts, c);
                if (loss >= 0) {
                    put(losses, loss + 1, isNeeded ? "takes " + condition : "puts " + condition + " in the way");
                }
            }
            int user = lastUserBefore(k, c);
            if (user >= 0) {
                boolean isTaken = (problem.takes[order[k]] >> c & 1) != 0;
                put(ruins, user + 1, isTaken ? "needs " + condition : "wants no " + condition);
            }
        }
        needs.forEach((source, what) ->
                parts.add("needs " + Names.phrase(what) + (source == 0 ? " from the start" : " from step " + source)));
        // The nearest step bites; those behind it would too, and need no mention.
        if (!losses.isEmpty()) {
            Map.Entry<Integer, List<String>> loss = losses.firstEntry();
            parts.add("before step " + loss.getKey() + " " + Names.phrase(loss.getValue()));
        }
        if (!ruins.isEmpty()) {
            Map.Entry<Integer, List<String>> user = ruins.lastEntry();
            parts.add("after step " + user.getKey() + ", which " + Names.phrase(user.getValue()));
        }
        return parts.isEmpty() ? uses(k) : String.join("; ", parts);
    }

    /** Returns the later steps that use the result of a step without needs. */
    private String uses(int k) {
        Map<Integer, List<String>> uses = new TreeMap<>();
        for (int c = 0; c < problem.conditions.size(); c++) {
            int user = firstAfter(k, problem.needs, c);
            if ((problem.puts[order[k]] >> c & 1) != 0 && user >= 0) {
                put(uses, user + 1, problem.conditions.get(c).name());
            }
        }
        List<String> parts = new ArrayList<>();
        uses.forEach((user, what) -> parts.add(Names.phrase(what) + " for step " + user));
        return parts.isEmpty() ? "at its usual place, free to move" : String.join("; ", parts);
    }

    private static void put(Map<Integer, List<String>> map, int key, String value) {
        map.computeIfAbsent(key, unused -> new ArrayList<>()).add(value);
    }

    private int number(String operation) {
        int k = 0;
        while (order[k] != problem.index(operation)) {
            k++;
        }
        return k + 1;
    }

    /** Returns the last step before that needs what this one takes away, or would have this one's leavings in its way. */
    private int lastUserBefore(int k, int c) {
        boolean takes = (problem.takes[order[k]] >> c & 1) != 0;
        boolean puts = (problem.puts[order[k]] >> c & 1) != 0;
        return takes ? lastBefore(k, problem.needs, c) : puts ? lastBefore(k, problem.blocked, c) : -1;
    }

    private int lastBefore(int k, long[] effects, int c) {
        for (int j = k - 1; j >= 0; j--) {
            if ((effects[order[j]] >> c & 1) != 0) {
                return j;
            }
        }
        return -1;
    }

    private int firstAfter(int k, long[] effects, int c) {
        for (int j = k + 1; j < order.length; j++) {
            if ((effects[order[j]] >> c & 1) != 0) {
                return j;
            }
        }
        return -1;
    }

    private Operation operation(int k) {
        return problem.operations.get(order[k]);
    }
}
