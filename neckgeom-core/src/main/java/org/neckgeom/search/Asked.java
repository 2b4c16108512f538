package org.neckgeom.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.neckgeom.fault.Refusal;
import org.neckgeom.sweep.SweepProgress;
import org.neckgeom.units.Amount;

/**
 * Makes and asks designs in batches, each design once. A batch is answered in its own order, however many threads work at
 * it; the caller is asked between batches whether to go on.
 */
final class Asked<D> {

    private final Task<D> task;
    private final SweepProgress progress;
    private final Map<Trial.Key, Trial> trials = new LinkedHashMap<>();
    private int most;
    private boolean stopped;

    Asked(Task<D> task, SweepProgress progress) {
        this.task = task;
        this.progress = progress;
        this.most = task.designs();
    }

    /** Sets how many designs may be asked in all. */
    void upTo(int designs) {
        most = designs;
    }

    int left() {
        return most - trials.size();
    }

    int count() {
        return trials.size();
    }

    boolean isStopped() {
        return stopped;
    }

    Collection<Trial> all() {
        return trials.values();
    }

    Trial one(double[] at) {
        return batch(List.of(at)).get(0);
    }

    /** The trials of some places, in their order. */
    List<Trial> batch(List<double[]> places) {
        List<Trial.Key> keys = places.stream().map(this::fitted).toList();
        List<Trial.Key> fresh =
                keys.stream().filter(key -> !trials.containsKey(key)).distinct().toList();
        int asked = Math.min(fresh.size(), left());
        if (asked > 0) {
            ask(fresh.subList(0, asked));
        }
        if (asked < fresh.size() || stopped) {
            throw new SearchOver();
        }
        return keys.stream().map(key -> Objects.requireNonNull(trials.get(key))).toList();
    }

    private void ask(List<Trial.Key> keys) {
        int first = trials.size();
        IntStream places = IntStream.range(0, keys.size());
        Stream<Trial> made = (task.isParallel() ? places.parallel() : places)
                .mapToObj(i -> ask(first + i, keys.get(i).at()));
        made.toList().forEach(trial -> trials.put(new Trial.Key(trial.at()), trial));
        stopped |= !progress.goesOn(trials.size(), task.designs());
    }

    private Trial.Key fitted(double[] at) {
        double[] fitted = new double[at.length];
        for (int k = 0; k < at.length; k++) {
            fitted[k] = task.variables().get(k).fit(at[k]);
        }
        return new Trial.Key(fitted);
    }

    private Trial ask(int order, double[] at) {
        try {
            D design = design(at);
            double[] aims = task.aims().stream()
                    .mapToDouble(aim -> aim.sign() * finite(aim.name(), aim.of().apply(design)))
                    .toArray();
            List<SearchMargin> margins = margins(design);
            double[] rooms =
                    margins.stream().mapToDouble(SearchMargin::libraryRoom).toArray();
            boolean[] kept = new boolean[rooms.length];
            for (int k = 0; k < kept.length; k++) {
                kept[k] = margins.get(k).isKept();
            }
            return new Trial(order, at, aims, rooms, kept, "");
        } catch (IllegalArgumentException | ArithmeticException refused) {
            String message = refused.getMessage();
            return Trial.refused(
                    order,
                    at,
                    message == null || message.isEmpty() ? refused.getClass().getSimpleName() : message);
        }
    }

    private static double finite(String name, Amount<?> aim) {
        double value = aim.libraryValue();
        if (!Double.isFinite(value)) {
            throw Refusal.of(name, "finite", "be a finite number", aim);
        }
        return value;
    }

    D design(double[] at) {
        D design = task.design();
        for (int k = 0; k < at.length; k++) {
            design = task.variables().get(k).change(design, at[k]);
        }
        return design;
    }

    List<SearchMargin> margins(D design) {
        List<SearchMargin> all = new ArrayList<>();
        task.rules().forEach(rules -> all.addAll(rules.margins().apply(design)));
        return all;
    }

    /** The trial's place, aims and margins as an answer; its design is made again. */
    SearchPoint<D> point(Trial trial) {
        Map<String, Object> settings = new LinkedHashMap<>();
        for (int k = 0; k < trial.at().length; k++) {
            Variable<D> variable = task.variables().get(k);
            settings.put(variable.name(), variable.value(trial.at()[k]));
        }
        D design = design(trial.at());
        Map<String, Amount<?>> aims = new LinkedHashMap<>();
        task.aims().forEach(aim -> aims.put(aim.name(), aim.of().apply(design)));
        return new SearchPoint<>(settings, aims, margins(design), design, task.style());
    }
}
