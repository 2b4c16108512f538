package org.neckgeom.order;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Invented orders of work: operations a, b, c ... over conditions 0, 1, 2 ..., with kept orders. */
final class RandomWork {

    private RandomWork() {}

    static OrderOfWork of(long seed, int operations, int conditions, int kept) {
        SplittableRandom random = new SplittableRandom(seed);
        OrderOfWork work = OrderOfWork.of();
        for (int i = 0; i < operations; i++) {
            work = work.with(operation(random, name(i), conditions));
        }
        for (int c = 0; c < conditions; c++) {
            if (random.nextInt(3) == 0) {
                work = work.startingWith(condition(c));
            }
        }
        for (int k = 0; k < kept; k++) {
            int first = random.nextInt(operations);
            int then = random.nextInt(operations);
            if (first != then) {
                work = work.keep(name(first)).before(name(then));
            }
        }
        return work;
    }

    private static Operation operation(SplittableRandom random, String name, int conditions) {
        Operation operation = Operation.named(name);
        for (int c = 0; c < conditions; c++) {
            Condition condition = condition(c);
            int use = random.nextInt(10);
            if (use < 2) {
                operation = operation.needs(condition);
            } else if (use == 2) {
                operation = operation.blockedBy(condition);
            }
            if (use < 3 && random.nextInt(4) == 0) {
                operation = operation.despite(condition, Remedy.named("remedy for " + c));
            }
            int effect = random.nextInt(10);
            if (effect < 2) {
                operation = operation.puts(condition);
            } else if (effect == 2) {
                operation = operation.takesAway(condition);
            }
        }
        return operation;
    }

    static String name(int i) {
        return "operation " + (char) ('a' + i);
    }

    static Condition condition(int c) {
        return Condition.named("condition " + c);
    }

    /** Returns all orders of 0 to count - 1, the first by lexicographic order first. */
    static List<int[]> permutations(int count) {
        List<int[]> all = new ArrayList<>();
        permute(new int[count], 0, 0, all);
        return all;
    }

    private static void permute(int[] order, int depth, int used, List<int[]> all) {
        if (depth == order.length) {
            all.add(order.clone());
            return;
        }
        for (int i = 0; i < order.length; i++) {
            if ((used >> i & 1) == 0) {
                order[depth] = i;
                permute(order, depth + 1, used | 1 << i, all);
            }
        }
    }
}
