package org.neckgeom.search;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * The search over the whole range: differential evolution (Storn, Price 1997), its step drawn toward one of the best (Zhang,
 * Sanderson 2009), its choice by domination and crowding so that one aim and several go the same way (GDE3: Kukkonen,
 * Lampinen 2005). It starts from an even set of places (additive recurrence: Roberts 2018; from memory).
 */
final class Generations<D> {

    private static final double PART_OF_THE_BEST = 0.15;
    private static final int KICKS = 3;

    private final Task<D> task;
    private final Asked<D> asked;
    private final SplittableRandom random;
    private final int size;
    private List<Trial> kept = List.of();

    Generations(Task<D> task, Asked<D> asked) {
        this.task = task;
        this.asked = asked;
        this.random = new SplittableRandom(task.options().seed());
        int variables = task.variables().size();
        this.size = task.aims().size() == 1
                ? Math.max(12, Math.min(48, 6 * variables))
                : Math.max(24, Math.min(60, 8 * variables));
    }

    /** Asks a first set: earlier points, then an even set; each time another one. */
    List<Trial> start() {
        List<double[]> places = new ArrayList<>(task.places());
        double[] shift = random.doubles(task.variables().size()).toArray();
        double root = root(shift.length);
        for (int i = 0; i < 2 * size; i++) {
            double[] place = new double[shift.length];
            double step = 1;
            for (int k = 0; k < place.length; k++) {
                step /= root;
                double u = shift[k] + (i + 1) * step;
                place[k] = spread(k, u - Math.floor(u));
            }
            places.add(place);
        }
        kept = asked.batch(places).stream().distinct().toList();
        return kept;
    }

    /** Each step of a stepped variable gets the same part of 0 to 1. */
    private double spread(int k, double u) {
        Variable<D> variable = task.variables().get(k);
        return variable.isStepped() ? Math.floor(u * variable.steps()) : u;
    }

    /** The root of x^(d+1) = x + 1 above 1. */
    private static double root(int dimensions) {
        double x = 2;
        for (int i = 0; i < 60; i++) {
            x = StrictMath.pow(1 + x, 1.0 / (dimensions + 1));
        }
        return x;
    }

    List<Trial> kept() {
        return kept;
    }

    /** Takes in what was found elsewhere. */
    void add(View view, Trial trial) {
        if (!kept.contains(trial)) {
            List<Trial> all = new ArrayList<>(kept);
            all.add(trial);
            kept = Front.best(view, all, size);
        }
    }

    /** One generation: a child of each, asked in one batch. */
    void next(View view) {
        List<Trial> parents = Front.best(view, kept, size);
        List<double[]> places = new ArrayList<>();
        for (Trial parent : parents) {
            places.add(child(parents, parent));
        }
        List<Trial> children = asked.batch(places);
        List<Trial> next = new ArrayList<>();
        for (int i = 0; i < parents.size(); i++) {
            Trial parent = parents.get(i);
            Trial child = children.get(i);
            if (view.dominates(parent, child)) {
                next.add(parent);
            } else {
                if (!view.dominates(child, parent)) {
                    next.add(parent);
                }
                next.add(child);
            }
        }
        kept = Front.best(view, next.stream().distinct().toList(), size);
    }

    /** A place with a few stepped variables elsewhere (iterated local search: Lourenco, Martin, Stuetzle 2003). */
    double[] kicked(Trial trial) {
        int[] stepped = IntStream.range(0, trial.at().length)
                .filter(k -> task.variables().get(k).isStepped())
                .toArray();
        double[] place = trial.at().clone();
        for (int i = 0; i < Math.min(KICKS, stepped.length); i++) {
            int k = stepped[random.nextInt(stepped.length)];
            place[k] = random.nextInt(task.variables().get(k).steps());
        }
        return place;
    }

    private double[] child(List<Trial> parents, Trial parent) {
        int leading = Math.min(parents.size(), Math.max(2, (int) (PART_OF_THE_BEST * parents.size())));
        double[] best = parents.get(random.nextInt(leading)).at();
        double[] one = parents.get(random.nextInt(parents.size())).at();
        double[] other = parents.get(random.nextInt(parents.size())).at();
        double factor = random.nextDouble(0.3, 0.9);
        double crossing = random.nextDouble(0.2, 1.0);
        double[] child = parent.at().clone();
        int always = random.nextInt(child.length);
        for (int k = 0; k < child.length; k++) {
            double luck = random.nextDouble();
            if (k == always || luck < crossing) {
                child[k] = moved(k, child[k], best[k], one[k], other[k], factor);
            }
        }
        return child;
    }

    private double moved(int k, double from, double best, double one, double other, double factor) {
        Variable<D> variable = task.variables().get(k);
        if (variable.isChoice()) {
            double luck = random.nextDouble();
            return luck < 0.4 ? best : luck < 0.8 ? one : random.nextInt(variable.steps());
        }
        double to = from + factor * (best - from) + factor * (one - other);
        if (variable.isStepped()) {
            to += random.nextDouble(-0.5, 0.5);
        }
        return to < 0 ? from / 2 : to > variable.end() ? (from + variable.end()) / 2 : to;
    }
}
