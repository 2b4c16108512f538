package org.neckgeom.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Ranks by domination and keeps distance along a front: sorting and crowding of NSGA-II (Deb, Pratap, Agarwal, Meyarivan 2002). */
final class Front {

    private Front() {}

    /** Those of some trials that no other dominates, in the order of the first aim; of equal aims the better one. */
    static List<Trial> of(View view, Collection<Trial> trials) {
        List<Trial> front = new ArrayList<>();
        for (Trial trial : trials) {
            if (front.stream().noneMatch(other -> isInstead(view, other, trial))) {
                front.removeIf(other -> isInstead(view, trial, other));
                front.add(trial);
            }
        }
        front.sort(Comparator.<Trial>comparingDouble(trial -> trial.isRefused() ? 0 : trial.aims()[0])
                .thenComparing(View.byOrder()));
        return front;
    }

    private static boolean isInstead(View view, Trial trial, Trial standing) {
        return view.dominates(trial, standing)
                || isEqual(trial, standing) && !view.dominates(standing, trial) && !view.isBetter(standing, trial);
    }

    private static boolean isEqual(Trial one, Trial other) {
        return Arrays.equals(one.aims(), other.aims());
    }

    /** The best of some trials: front by front, of the last the least crowded. */
    static List<Trial> best(View view, Collection<Trial> trials, int count) {
        List<Trial> rest = new ArrayList<>(trials);
        List<Trial> best = new ArrayList<>();
        while (best.size() < count && !rest.isEmpty()) {
            List<Trial> front = undominated(view, rest);
            rest.removeAll(front);
            best.addAll(thinned(front, count - best.size()));
        }
        return best;
    }

    private static List<Trial> undominated(View view, List<Trial> trials) {
        return trials.stream()
                .filter(trial -> trials.stream().noneMatch(other -> view.dominates(other, trial)))
                .toList();
    }

    /** A front without its most crowded trials, taken away one by one. */
    static List<Trial> thinned(List<Trial> front, int count) {
        List<Trial> left = new ArrayList<>(front);
        if (left.isEmpty() || left.get(0).isRefused()) {
            return left.subList(0, Math.min(count, left.size()));
        }
        while (left.size() > count) {
            double[] distances = crowding(left);
            int closest = IntStream.range(0, distances.length)
                    .boxed()
                    .min(Comparator.comparingDouble(i -> distances[i]))
                    .orElseThrow();
            left.remove(closest);
        }
        return left;
    }

    /** The gap between the neighbours of each trial along each aim, as part of that aim's range; infinite at the ends. */
    private static double[] crowding(List<Trial> front) {
        double[] distances = new double[front.size()];
        for (int k = 0; k < front.get(0).aims().length; k++) {
            int aim = k;
            List<Integer> order = IntStream.range(0, front.size())
                    .boxed()
                    .sorted(Comparator.comparingDouble(i -> front.get(i).aims()[aim]))
                    .toList();
            double low = front.get(order.get(0)).aims()[aim];
            double range = front.get(order.get(order.size() - 1)).aims()[aim] - low;
            for (int i = 0; i < order.size(); i++) {
                boolean end = i == 0 || i == order.size() - 1;
                distances[order.get(i)] += end
                        ? Double.POSITIVE_INFINITY
                        : range > 0
                                ? (front.get(order.get(i + 1)).aims()[aim]
                                                - front.get(order.get(i - 1)).aims()[aim])
                                        / range
                                : 0;
            }
        }
        return distances;
    }
}
