package org.neckgeom.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.neckgeom.sweep.SweepProgress;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** The course of one search: a small grid as a whole, else by generations and polish; then what each limit costs. */
final class Course<D> {

    private static final int BATCH = 256;
    private static final int GENERATIONS = 5;
    private static final int CALM_ROUNDS = 3;
    private static final int CALM_KICKS = 16;
    private static final double CALM = 1e-8;

    /** Places nearer than this part of each range are one and the same to start from. */
    private static final double APART = 0.03;

    /** So much of the designs is for the search itself, the rest for what the limits cost. */
    private static final double OWN_PART = 0.75;

    /** Of a search for a front so much is by generations, the rest by polish. */
    private static final double FRONT_PART = 0.45;

    /** A gain below this part of an aim is none. */
    private static final double SMALL_GAIN = 1e-6;

    private static final int MOST_REPEATS = 3;

    private final Task<D> task;
    private final Asked<D> asked;
    private final boolean whole;

    /** Of several aims over continuous variables: what has been polished to the front. */
    private final List<Trial> finished = new ArrayList<>();

    private View view = View.of(new Scales(new double[0], new double[0]));

    Course(Task<D> task, SweepProgress progress) {
        this.task = task;
        this.asked = new Asked<>(task, progress);
        this.whole = grid() <= task.designs();
    }

    /** How many designs a search over steps alone has; infinite with a continuous variable. */
    private double grid() {
        double count = 1;
        for (Variable<D> variable : task.variables()) {
            count *= variable.isStepped() ? variable.steps() : Double.POSITIVE_INFINITY;
        }
        return count;
    }

    SearchResult<D> result() {
        List<SearchPrice> prices = new ArrayList<>();
        try {
            find();
            asked.upTo(task.designs());
            price(prices);
        } catch (SearchOver over) {
            // What was asked by now is the result.
        }
        return summary(prices);
    }

    private void find() {
        try {
            if (whole) {
                askAll();
            } else {
                asked.upTo((int) Math.ceil(OWN_PART * task.designs()));
                Generations<D> generations = new Generations<>(task, asked);
                scaled(generations.start());
                if (task.aims().size() == 1) {
                    least(generations);
                } else {
                    front(generations);
                }
            }
        } catch (SearchOver over) {
            if (asked.isStopped()) {
                throw over;
            }
        } finally {
            if (view.rows() == 0) {
                scaled(List.copyOf(asked.all()));
            }
        }
    }

    private void scaled(List<Trial> first) {
        int rooms =
                task.rules().stream().mapToInt(rules -> rules.names().size()).sum();
        view = View.of(Scales.of(first, task.aims().size(), rooms));
    }

    private void askAll() {
        double[] place = new double[task.variables().size()];
        List<double[]> batch = new ArrayList<>();
        for (double i = 0, count = grid(); i < count; i++) {
            batch.add(place.clone());
            if (batch.size() == BATCH || i == count - 1) {
                asked.batch(batch);
                batch.clear();
            }
            for (int k = place.length - 1;
                    k >= 0 && place[k]++ == task.variables().get(k).end();
                    k--) {
                place[k] = 0;
            }
        }
        scaled(List.copyOf(asked.all()));
    }

    /** One aim: generations, and the best that is not yet polished polished, until rounds bring nothing. */
    private void least(Generations<D> generations) {
        List<Trial> polished = new ArrayList<>();
        int calm = 0;
        while (calm < (task.hasOnlySteps() ? CALM_KICKS : CALM_ROUNDS)) {
            Trial before = best();
            for (int i = 0; i < GENERATIONS; i++) {
                generations.next(view);
            }
            Trial start = unpolished(generations.kept(), polished);
            Trial best = best();
            if (start == null && best != null && view.isFeasible(best) && task.hasSteps()) {
                start = asked.one(generations.kicked(best));
            }
            if (start == null) {
                generations.start();
            } else {
                Trial found = new Nearby<>(task, asked, view).from(start, polished);
                polished.add(start);
                polished.add(found);
                generations.add(view, found);
            }
            calm = isGain(before, best()) ? 0 : calm + 1;
        }
    }

    private @Nullable Trial unpolished(List<Trial> kept, List<Trial> polished) {
        List<Trial> fresh = kept.stream()
                .filter(trial -> polished.stream().allMatch(other -> isApart(trial, other)))
                .toList();
        return view.best(fresh);
    }

    private boolean isApart(Trial one, Trial other) {
        for (int k = 0; k < one.at().length; k++) {
            Variable<D> variable = task.variables().get(k);
            double apart = variable.isStepped() ? 0.5 : APART;
            if (Math.abs(one.at()[k] - other.at()[k]) > apart) {
                return true;
            }
        }
        return false;
    }

    private boolean isGain(@Nullable Trial before, @Nullable Trial after) {
        if (before == null || after == null) {
            return after != null;
        }
        double less = view.violation(before) - view.violation(after);
        return view.isFeasible(before)
                ? view.objective(before) - view.objective(after) > view.fine(before, CALM)
                : less > CALM * view.violation(before);
    }

    /** Several aims: generations; then the ends of the front, aim by aim, and every trial of it polished. */
    private void front(Generations<D> generations) {
        int own = asked.left();
        while (asked.left() > (1 - FRONT_PART) * own) {
            generations.next(view);
        }
        for (int k = 0; k < task.aims().size(); k++) {
            end(k);
        }
        if (task.hasOnlySteps()) {
            steps();
            rounds(generations);
        } else if (task.aims().size() == 2) {
            between(0, task.options().frontSize() - 1);
        } else {
            thinned().forEach(this::polish);
        }
    }

    /** Every neighbour of the front, until it has no new ones (Pareto local search: Paquete, Chiarandini, Stuetzle 2004). */
    private void steps() {
        int before;
        do {
            before = asked.count();
            for (Trial trial : Front.of(view, asked.all())) {
                asked.batch(Nearby.wider(task, trial));
            }
        } while (asked.count() > before);
    }

    /** Over steps alone: fronts of neighbours and more generations in turn, until rounds change no design of the front. */
    private void rounds(Generations<D> generations) {
        int calm = 0;
        while (calm < CALM_ROUNDS) {
            List<Trial> before = Front.of(view, asked.all());
            before.forEach(trial -> generations.add(view, trial));
            for (int i = 0; i < GENERATIONS; i++) {
                generations.next(view);
            }
            steps();
            calm = Front.of(view, asked.all()).equals(before) ? calm + 1 : 0;
        }
    }

    private List<Trial> thinned() {
        List<Trial> from = finished.isEmpty() ? List.copyOf(asked.all()) : finished;
        return Front.thinned(Front.of(view, from), task.options().frontSize());
    }

    /** The same aims at least, and one better. */
    private void polish(Trial trial) {
        if (view.isFeasible(trial)) {
            finish(new Nearby<>(task, asked, view.noWorseThan(trial)).from(trial));
        }
    }

    private void finish(Trial trial) {
        if (!task.hasOnlySteps() && view.isFeasible(trial)) {
            finished.add(trial);
        }
    }

    /** The least of one aim, and then of the others with it. */
    private void end(int aim) {
        View alone = view.aim(aim);
        Trial start = alone.best(asked.all());
        if (start != null) {
            Trial end = new Nearby<>(task, asked, alone).from(start);
            if (view.isFeasible(end)) {
                finish(new Nearby<>(task, asked, view.atMost(aim, end.aims()[aim])).from(end));
            }
        }
    }

    /** Between two places on the front of two aims: the least of the first with a bound on the second, halves first. */
    private void between(int from, int to) {
        Deque<int[]> parts = new ArrayDeque<>(List.of(new int[] {from, to}));
        while (!parts.isEmpty()) {
            int[] part = parts.remove();
            int middle = (part[0] + part[1]) / 2;
            if (middle > part[0]) {
                bounded((double) middle / to);
                parts.add(new int[] {part[0], middle});
                parts.add(new int[] {middle, part[1]});
            }
        }
    }

    private void bounded(double part) {
        List<Trial> front = thinned();
        if (front.size() < 2 || finished.isEmpty()) {
            return;
        }
        double high = front.get(0).aims()[1];
        double low = front.get(front.size() - 1).aims()[1];
        View bounded = view.aim(0).atMost(1, high + part * (low - high));
        finish(new Nearby<>(task, asked, bounded).from(Objects.requireNonNull(bounded.best(asked.all()))));
    }

    private @Nullable Trial best() {
        return task.aims().size() == 1 ? view.best(asked.all()) : compromise();
    }

    /** Of a front the trial nearest to the least of every aim, each in its range along the front. */
    private @Nullable Trial compromise() {
        List<Trial> front = thinned();
        if (front.isEmpty() || front.get(0).isRefused()) {
            return front.isEmpty() ? null : front.get(0);
        }
        int aims = task.aims().size();
        double[] least = new double[aims];
        double[] range = new double[aims];
        for (int k = 0; k < aims; k++) {
            int aim = k;
            least[k] =
                    front.stream().mapToDouble(trial -> trial.aims()[aim]).min().orElse(0);
            range[k] =
                    front.stream().mapToDouble(trial -> trial.aims()[aim]).max().orElse(0) - least[k];
        }
        Trial best = front.get(0);
        double nearest = Double.POSITIVE_INFINITY;
        for (Trial trial : front) {
            double sum = 0;
            for (int k = 0; k < aims; k++) {
                double part = range[k] > 0 ? (trial.aims()[k] - least[k]) / range[k] : 0;
                sum += part * part;
            }
            if (sum < nearest) {
                nearest = sum;
                best = trial;
            }
        }
        return best;
    }

    /** What a gain would be with one limit eased by one of its units, or left out: the search near the best run again. */
    private void price(List<SearchPrice> prices) {
        for (int repeat = 0; repeat <= MOST_REPEATS; repeat++) {
            Trial best = best();
            if (best == null || !view.isFeasible(best)) {
                return;
            }
            prices.clear();
            List<SearchMargin> margins = asked.margins(asked.design(best.at()));
            for (int rule = 0; rule < margins.size(); rule++) {
                price(best, rule, margins.get(rule)).ifPresent(prices::add);
            }
            if (!isGain(best, best())) {
                return;
            }
        }
    }

    private Optional<SearchPrice> price(Trial best, int rule, SearchMargin margin) {
        double by = margin.oneUnit();
        View base = task.aims().size() == 1 ? view : view.noWorseThan(best);
        View eased = base.eased(rule, by);
        Trial start = Objects.requireNonNull(eased.best(asked.all()));
        Trial near = whole ? best : new Nearby<>(task, asked, eased).from(best);
        Trial gained =
                !eased.isBetter(start, near) ? near : whole ? start : new Nearby<>(task, asked, eased).from(start);
        double gain = eased.objective(best) - eased.objective(gained);
        if (view.isFeasible(gained) || !eased.isFeasible(gained) || !(gain > eased.fine(best, SMALL_GAIN))) {
            return Optional.empty();
        }
        Map<String, Amount<?>> gains = new LinkedHashMap<>();
        for (int k = 0; k < task.aims().size(); k++) {
            Aim<D> aim = task.aims().get(k);
            ShopUnit<?> unit = aim.of().apply(asked.design(best.at())).unit();
            gains.put(aim.name(), SearchMargin.difference(best.aims()[k] - gained.aims()[k], unit));
        }
        return Optional.of(new SearchPrice(margin.limit(), margin.easedBy(), gains, task.style()));
    }

    private SearchResult<D> summary(List<SearchPrice> prices) {
        List<Trial> all = List.copyOf(asked.all());
        Trial best = best();
        boolean feasible = best != null && view.isFeasible(best);
        List<Trial> front =
                !feasible ? List.of() : task.aims().size() == 1 ? List.of(Objects.requireNonNull(best)) : thinned();
        List<String> names = task.limitNames();
        Map<String, Long> broken = new LinkedHashMap<>();
        for (int k = 0; k < names.size(); k++) {
            int rule = k;
            broken.put(
                    names.get(k),
                    all.stream()
                            .filter(trial -> !trial.isRefused() && !trial.kept()[rule])
                            .count());
        }
        List<String> refusals =
                all.stream().map(Trial::refusal).filter(why -> !why.isEmpty()).toList();
        return new SearchResult<>(
                new SearchResult.Counts(
                        all.size(),
                        refusals.size(),
                        refusals.isEmpty() ? "" : refusals.get(0),
                        whole,
                        asked.isStopped()),
                best == null || best.isRefused() ? Optional.empty() : Optional.of(asked.point(best)),
                front.stream().map(asked::point).toList(),
                prices,
                broken,
                task.style());
    }
}
