package org.neckgeom.search;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The search near one design as a whole: its continuous variables by {@link Polish}, its stepped ones by a step each way and
 * its choices by every other choice, alone and in pairs (neighbourhood task), until nothing near is better.
 */
final class Nearby<D> {

    /** With more stepped neighbours than this, their continuous variables are not polished. */
    private static final int MOST_POLISHED = 12;

    private static final int MOST_PAIRED = 24;
    private static final int SHORT = 8;

    private final Task<D> task;
    private final Asked<D> asked;
    private final View view;
    private final boolean mixed;

    Nearby(Task<D> task, Asked<D> asked, View view) {
        this.task = task;
        this.asked = asked;
        this.view = view;
        this.mixed = task.hasSteps() && !task.hasOnlySteps();
    }

    Trial from(Trial start) {
        return from(start, List.of());
    }

    /** The same, given up where it comes to an end that is known. */
    Trial from(Trial start, List<Trial> known) {
        Trial here = polish().from(start, Polish.MOST_STEPS, known);
        while (!known.contains(here)) {
            Trial better = better(here);
            if (better == null) {
                return here;
            }
            here = polish().from(better, Polish.MOST_STEPS, known);
        }
        return here;
    }

    private Polish<D> polish() {
        return new Polish<>(task, asked, view);
    }

    private @Nullable Trial better(Trial here) {
        List<double[]> near = neighbours(task, here);
        Trial best = betterOf(near, here);
        if (best != null) {
            return best;
        }
        if (mixed && near.size() <= MOST_POLISHED) {
            for (Trial trial : asked.batch(near)) {
                Trial polished = polish().from(trial, SHORT, List.of());
                if (view.isBetter(polished, here)) {
                    return polished;
                }
            }
        }
        return near.size() <= MOST_PAIRED ? betterOf(pairs(here, near), here) : null;
    }

    private @Nullable Trial betterOf(List<double[]> places, Trial here) {
        Trial best = view.best(asked.batch(places));
        return best != null && view.isBetter(best, here) ? best : null;
    }

    /** Places one step away in one stepped variable, or with another choice. */
    static <D> List<double[]> neighbours(Task<D> task, Trial here) {
        List<double[]> places = new ArrayList<>();
        for (int k = 0; k < here.at().length; k++) {
            Variable<D> variable = task.variables().get(k);
            if (variable.isChoice()) {
                for (int choice = 0; choice < variable.steps(); choice++) {
                    add(places, here.at(), k, choice, variable);
                }
            } else if (variable.isStepped()) {
                add(places, here.at(), k, here.at()[k] - 1, variable);
                add(places, here.at(), k, here.at()[k] + 1, variable);
            }
        }
        return places;
    }

    private static void add(List<double[]> places, double[] here, int k, double to, Variable<?> variable) {
        if (to >= 0 && to <= variable.end() && to != here[k]) {
            double[] place = here.clone();
            place[k] = to;
            places.add(place);
        }
    }

    /** Neighbours, and where they are few two of their steps at once. */
    static <D> List<double[]> wider(Task<D> task, Trial here) {
        List<double[]> near = new ArrayList<>(neighbours(task, here));
        if (near.size() <= MOST_PAIRED) {
            near.addAll(pairs(here, List.copyOf(near)));
        }
        return near;
    }

    /** Two neighbours' steps at once. */
    private static List<double[]> pairs(Trial here, List<double[]> near) {
        List<double[]> places = new ArrayList<>();
        for (int a = 0; a < near.size(); a++) {
            for (int b = 0; b < a; b++) {
                double[] place = here.at().clone();
                for (int k = 0; k < place.length; k++) {
                    place[k] = near.get(a)[k] + near.get(b)[k] - place[k];
                }
                places.add(place);
            }
        }
        return places;
    }
}
