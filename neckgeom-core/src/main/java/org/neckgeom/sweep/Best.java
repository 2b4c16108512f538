package org.neckgeom.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collector;
import org.neckgeom.fault.Refusal;

/**
 * Keeps the best few results of a sweep in the memory of a few: {@code results.collect(Best.smallest(10, Relief::mm))}.
 *
 * <p>Refused designs and figures that are not a number are left out; of equal figures the one that comes first in the
 * sweep is the better one, so that a parallel stream keeps the same ones.
 */
public final class Best {

    private Best() {}

    /**
     * {@return a collector of the results with the smallest figures; gives an unmodifiable list, the smallest first}
     *
     * @param <D> the kind of design
     * @param <R> the kind of answer
     * @param count how many to keep, 1 or more
     * @param figure of an answer
     */
    public static <D, R> Collector<SweepResult<D, R>, ?, List<SweepResult<D, R>>> smallest(
            int count, ToDoubleFunction<? super R> figure) {
        return best(count, figure, 1);
    }

    /**
     * {@return a collector of the results with the greatest figures; gives an unmodifiable list, the greatest first}
     *
     * @param <D> the kind of design
     * @param <R> the kind of answer
     * @param count how many to keep, 1 or more
     * @param figure of an answer
     */
    public static <D, R> Collector<SweepResult<D, R>, ?, List<SweepResult<D, R>>> greatest(
            int count, ToDoubleFunction<? super R> figure) {
        return best(count, figure, -1);
    }

    private static <D, R> Collector<SweepResult<D, R>, ?, List<SweepResult<D, R>>> best(
            int count, ToDoubleFunction<? super R> figure, int sign) {
        if (count < 1) {
            throw Refusal.of("results to keep", "at-least", "be 1 or more", "were", count);
        }
        return Collector.of(
                () -> new Few<D, R>(count),
                (few, result) -> result.answer()
                        .map(answer -> sign * figure.applyAsDouble(answer))
                        .filter(cost -> !cost.isNaN())
                        .ifPresent(cost -> few.add(new Ranked<>(cost, result))),
                Few::with,
                Few::sorted);
    }

    private record Ranked<D, R>(double cost, SweepResult<D, R> result) {}

    /** The best so far, the worst of them on top. */
    private static final class Few<D, R> {

        private static final Comparator<Ranked<?, ?>> BEST_FIRST = Comparator.<Ranked<?, ?>>comparingDouble(
                        Ranked::cost)
                .thenComparingLong(ranked -> ranked.result().index());

        private final int count;
        private final PriorityQueue<Ranked<D, R>> kept = new PriorityQueue<>(BEST_FIRST.reversed());

        Few(int count) {
            this.count = count;
        }

        void add(Ranked<D, R> ranked) {
            kept.add(ranked);
            if (kept.size() > count) {
                kept.remove();
            }
        }

        Few<D, R> with(Few<D, R> other) {
            other.kept.forEach(this::add);
            return this;
        }

        List<SweepResult<D, R>> sorted() {
            List<Ranked<D, R>> all = new ArrayList<>(kept);
            all.sort(BEST_FIRST);
            return all.stream().map(Ranked::result).toList();
        }
    }
}
