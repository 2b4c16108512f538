package org.neckgeom.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.neckgeom.fault.NoAnswer;

/**
 * Finds the order with the least trouble and, among those, the one nearest to the usual order.
 *
 * <p>Twice the same method: depth first under a bound that grows to the next value met (iterative deepening with a lower
 * bound on what is still to come), with a table of states that led nowhere. The state is which operations are done and
 * which conditions hold: with operations that take away what others put, the first does not settle the second.
 *
 * <p>The first search counts conflicts only. It cuts the tree by doing at once, without another try, any operation that
 * can be done without trouble and whose doing now can harm no later operation. The second counts pairs turned round
 * against the usual order, under the least trouble found, and tries operations in usual order, so that its first
 * success is the first of the best.
 */
final class OrderSearch {

    /** The trouble of one conflict without a remedy; with one it is 1. More needs than this an order of work cannot have. */
    static final int NO_REMEDY = 10_000;

    private static final int MOST_STATES = 200_000;

    /** What has been done, what holds, and the trouble spent on the way. */
    private record State(long done, long held, int spent) {}

    private final OrderProblem problem;
    private final int count;
    private final long all;
    private final int[] order;
    private final Map<State, Integer> failed = new HashMap<>();
    private long[] before = {};
    private long[] after = {};
    private int bound;
    private int nextBound;
    private int mostTrouble;
    private int states;

    OrderSearch(OrderProblem problem) {
        this.problem = problem;
        this.count = problem.count;
        this.all = count == 0 ? 0 : -1L >>> (Long.SIZE - count);
        this.order = new int[count];
    }

    /**
     * Returns the least trouble any order has that keeps the kept orders, which must have no cycle.
     *
     * @throws ArithmeticException if too many states had to be looked at
     */
    int leastTrouble() {
        before = problem.keptBefore;
        deepen(stillTroubled(0, problem.start), () -> calm(0, problem.start, 0, 0));
        return bound;
    }

    /** Returns the order nearest to the usual one among those with at most the given trouble; call after leastTrouble. */
    int[] nearest(int trouble) {
        before = trouble < NO_REMEDY ? problem.mustBefore : problem.keptBefore;
        after = turnedRound(before);
        mostTrouble = trouble;
        deepen(forcedTurns(0), () -> near(0, problem.start, 0, 0, 0));
        return order.clone();
    }

    /** Searches under a bound that grows to the next value met. */
    private void deepen(int least, BooleanSupplier search) {
        states = 0;
        nextBound = least;
        do {
            failed.clear();
            bound = nextBound;
            nextBound = Integer.MAX_VALUE;
        } while (!search.getAsBoolean());
    }

    /** Returns for each operation those that it must come before. */
    private static long[] turnedRound(long[] before) {
        long[] after = new long[before.length];
        for (int i = 0; i < before.length; i++) {
            for (int j = 0; j < before.length; j++) {
                after[j] |= (before[i] >> j & 1) << i;
            }
        }
        return after;
    }

    private boolean calm(long done, long held, int spent, int depth) {
        if (done == all) {
            return true;
        }
        int least = spent + stillTroubled(done, held);
        if (least > bound) {
            nextBound = Math.min(nextBound, least);
            return false;
        }
        State state = new State(done, held, 0);
        Integer failedAt = failed.get(state);
        if (failedAt != null && failedAt <= spent) {
            return false;
        }
        count("whether these orders can be kept");
        int harmless = harmless(done, held);
        for (int i = 0; i < count; i++) {
            if (isOpen(i, done) && (harmless < 0 || harmless == i)) {
                order[depth] = i;
                int then = spent + trouble(i, held);
                if (calm(done | 1L << i, problem.after(i, held), then, depth + 1)) {
                    return true;
                }
            }
        }
        failed.put(state, spent);
        return false;
    }

    private boolean near(long done, long held, int spent, int turns, int depth) {
        if (done == all) {
            return true;
        }
        if (spent + stillTroubled(done, held) > mostTrouble) {
            return false;
        }
        int least = turns + forcedTurns(done);
        if (least > bound) {
            nextBound = Math.min(nextBound, least);
            return false;
        }
        State state = new State(done, held, spent);
        Integer failedAt = failed.get(state);
        if (failedAt != null && failedAt <= turns) {
            return false;
        }
        count("which order is nearest to the usual one");
        for (int i = 0; i < count; i++) {
            if (isOpen(i, done)) {
                order[depth] = i;
                int turned = Long.bitCount(~done & (1L << i) - 1);
                int then = spent + trouble(i, held);
                if (near(done | 1L << i, problem.after(i, held), then, turns + turned, depth + 1)) {
                    return true;
                }
            }
        }
        failed.put(state, turns);
        return false;
    }

    private void count(String question) {
        if (++states > MOST_STATES) {
            throw NoAnswer.because(
                    "orders",
                    "too-many",
                    "too many orders are open to find out " + question
                            + ": keep a few more orders, or leave operations out that do not matter here");
        }
    }

    private boolean isOpen(int i, long done) {
        return (done >> i & 1) == 0 && (before[i] & ~done) == 0;
    }

    private int trouble(int i, long held) {
        return weight(i, problem.troubling(i, held));
    }

    private int weight(int i, long troubling) {
        return Long.bitCount(troubling & problem.remedied[i])
                + NO_REMEDY * Long.bitCount(troubling & ~problem.remedied[i]);
    }

    /** Returns the trouble that no order of the operations not yet done can avoid, counted from their effects alone. */
    private int stillTroubled(long done, long held) {
        long putOnce = 0;
        long putTwice = 0;
        long takenOnce = 0;
        long takenTwice = 0;
        for (int i = 0; i < count; i++) {
            if ((done >> i & 1) == 0) {
                putTwice |= putOnce & problem.puts[i];
                putOnce |= problem.puts[i];
                takenTwice |= takenOnce & problem.takes[i];
                takenOnce |= problem.takes[i];
            }
        }
        int sum = 0;
        for (int i = 0; i < count; i++) {
            if ((done >> i & 1) == 0) {
                long comes = putTwice | putOnce & ~problem.puts[i];
                long goes = takenTwice | takenOnce & ~problem.takes[i];
                sum += weight(i, problem.needs[i] & ~held & ~comes | problem.blocked[i] & held & ~goes);
            }
        }
        return sum;
    }

    /**
     * Returns an operation that may be done now without a second thought, or -1. Any order from here can be changed so
     * that it comes first, at no more trouble: it takes nothing that others need, puts nothing in their way, and no
     * operation undoes its effects in a way that affects another.
     */
    private int harmless(long done, long held) {
        for (int i = 0; i < count; i++) {
            if (isOpen(i, done) && problem.troubling(i, held) == 0 && isHarmless(i, done)) {
                return i;
            }
        }
        return -1;
    }

    private boolean isHarmless(int i, long done) {
        long needed = 0;
        long blocked = 0;
        long put = 0;
        long taken = 0;
        for (int j = 0; j < count; j++) {
            if (j != i && (done >> j & 1) == 0) {
                needed |= problem.needs[j];
                blocked |= problem.blocked[j];
                put |= problem.puts[j];
                taken |= problem.takes[j];
            }
        }
        long puts = problem.puts[i];
        long takes = problem.takes[i];
        return (takes & needed) == 0
                && (puts & blocked) == 0
                && (puts & taken & needed) == 0
                && (takes & put & blocked) == 0;
    }

    /**
     * Returns turns that no order of what is not done can avoid. First the pairs that must come the other way round than
     * usual. Then, of such a pair j before i, everything that usually lies between them: it is turned round with one of
     * the two. Stretches from i to j that do not overlap have no pair in common, so these add up.
     */
    private int forcedTurns(long done) {
        int turns = 0;
        for (int i = 0; i < count; i++) {
            if ((done >> i & 1) == 0) {
                turns += Long.bitCount(before[i] & ~done & ~((2L << i) - 1));
            }
        }
        int end = 0;
        for (int j = 0; j < count; j++) {
            long below = ~done & (1L << j) - 1;
            long pulled = (done >> j & 1) != 0 ? 0 : after[j] & below & ~((1L << end) - 1);
            if (pulled != 0) {
                int i = Long.numberOfTrailingZeros(pulled);
                turns += Long.bitCount(below & ~((2L << i) - 1) & ~before[i] & ~after[j]);
                end = j;
            }
        }
        return turns;
    }

    /** Returns the kept orders, of those to blame, without which an operation need not meet a condition. */
    static List<KeptOrder> forcing(WorkLeft work, List<KeptOrder> blamed, int operation, int condition) {
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
