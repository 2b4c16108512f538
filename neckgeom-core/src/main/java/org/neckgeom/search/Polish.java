package org.neckgeom.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The search near one design, over its continuous variables: sequential quadratic programming with a box of trust (Han 1977,
 * Powell 1978) on differences of designs, its Hessian by the damped rule of Powell. A step that breaks a limit is corrected
 * by the same gradients (second-order correction: Fletcher 1982). What is kept is the better by {@link View#isBetter}, so a
 * design that keeps its limits stays one.
 */
final class Polish<D> {

    static final int MOST_STEPS = 60;
    private static final double FIRST_BOX = 0.1;
    private static final double LEAST_BOX = 1e-9;
    private static final double[] WHOLE = {1};
    private static final double[] PARTS = {0.4, 0.1};
    private static final double PART_OF_STEEPEST = 1e-3;
    private static final double CALM = 1e-10;

    /** Nearer than this part of each range to a known end, and no better, is on the way to it. */
    private static final double SAME = 1e-3;

    private final Asked<D> asked;
    private final View view;
    private final int[] free;
    private final List<Variable<D>> variables;
    private double[][] hessian = new double[0][];
    private double box = FIRST_BOX;
    private @Nullable Slopes before;
    private double[] multipliers = {};

    Polish(Task<D> task, Asked<D> asked, View view) {
        this.asked = asked;
        this.view = view;
        this.variables = task.variables();
        this.free = IntStream.range(0, variables.size())
                .filter(k -> !variables.get(k).isStepped())
                .toArray();
    }

    /** First derivatives at a trial: of the objective, and of each row that has a figure. */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
    private record Slopes(Trial at, double[] objective, double[][] rows, double[] rooms) {}

    /** The best design that is found from a start. */
    Trial from(Trial start) {
        return from(start, MOST_STEPS, List.of());
    }

    /** The same in so many steps, or until it comes to an end that is known and no better than that. */
    Trial from(Trial start, int most, List<Trial> known) {
        Trial here = start;
        int calm = 0;
        for (int i = 0; i < most && free.length > 0 && !here.isRefused() && box > LEAST_BOX && calm < 2; i++) {
            if (isAtOneOf(known, here)) {
                break;
            }
            Slopes slopes = slopes(here);
            learn(slopes);
            double[] step = step(slopes, new double[slopes.rooms().length]);
            double length = largest(step);
            if (length < LEAST_BOX) {
                break;
            }
            Trial next = along(slopes, step);
            if (view.isBetter(next, here)) {
                double moved = largest(difference(next, here));
                box = moved > 0.9 * box ? 2.5 * box : Math.max(Math.min(box, 2 * moved), 10 * LEAST_BOX);
                boolean still =
                        view.isFeasible(here) && view.objective(here) - view.objective(next) < view.fine(here, CALM);
                calm = still ? calm + 1 : 0;
                here = next;
            } else {
                box = 0.2 * Math.min(box, length);
                before = null;
            }
        }
        return here;
    }

    private boolean isAtOneOf(List<Trial> known, Trial here) {
        return known.stream()
                .anyMatch(
                        end -> !view.isBetter(here, end) && largest(difference(end, here)) < SAME && isLike(end, here));
    }

    private boolean isLike(Trial one, Trial other) {
        return IntStream.range(0, variables.size())
                .allMatch(k -> !variables.get(k).isStepped() || one.at()[k] == other.at()[k]);
    }

    private Slopes slopes(Trial here) {
        double h = Math.max(1e-7, Math.min(1e-5, 0.01 * box));
        List<double[]> places = new ArrayList<>();
        double[] steps = new double[free.length];
        for (int j = 0; j < free.length; j++) {
            double[] place = here.at().clone();
            steps[j] = place[free[j]] + h > 1 ? -h : h;
            place[free[j]] += steps[j];
            places.add(place);
        }
        List<Trial> near = asked.batch(places);
        int[] rows = IntStream.range(0, view.rows())
                .filter(row -> Double.isFinite(view.room(here, row)))
                .toArray();
        double[] objective = new double[free.length];
        double[][] ofRows = new double[rows.length][free.length];
        for (int j = 0; j < free.length; j++) {
            Trial other = near.get(j);
            if (!other.isRefused()) {
                objective[j] = (view.objective(other) - view.objective(here)) / steps[j];
                for (int r = 0; r < rows.length; r++) {
                    double slope = (view.room(other, rows[r]) - view.room(here, rows[r])) / steps[j];
                    ofRows[r][j] = Double.isFinite(slope) ? slope : 0;
                }
            }
        }
        double[] rooms =
                Arrays.stream(rows).mapToDouble(row -> view.room(here, row)).toArray();
        return new Slopes(here, objective, ofRows, rooms);
    }

    /** Updates the Hessian of the Lagrangian by what two neighbouring places show. */
    private void learn(Slopes now) {
        Slopes last = before;
        before = now;
        if (last == null || last.rows().length != now.rows().length) {
            hessian = first(now.objective());
            return;
        }
        double[] moved = difference(now.at(), last.at());
        if (largest(moved) == 0) {
            return;
        }
        double[] bent = new double[free.length];
        for (int j = 0; j < bent.length; j++) {
            bent[j] = now.objective()[j] - last.objective()[j];
            for (int r = 0; r < now.rows().length && r < multipliers.length; r++) {
                bent[j] -= multipliers[r] * (now.rows()[r][j] - last.rows()[r][j]);
            }
        }
        double[] expected = QuadraticStep.times(hessian, moved);
        double curve = QuadraticStep.dot(moved, expected);
        double seen = QuadraticStep.dot(moved, bent);
        double part = seen >= 0.2 * curve ? 1 : 0.8 * curve / (curve - seen);
        for (int j = 0; j < bent.length; j++) {
            bent[j] = part * bent[j] + (1 - part) * expected[j];
        }
        double damped = QuadraticStep.dot(moved, bent);
        if (!(damped > 0 && curve > 0) || !Double.isFinite(damped)) {
            return;
        }
        for (int i = 0; i < bent.length; i++) {
            for (int j = 0; j < bent.length; j++) {
                hessian[i][j] += bent[i] * bent[j] / damped - expected[i] * expected[j] / curve;
            }
        }
    }

    /** By which each variable alone would move by the first box. */
    private double[][] first(double[] slopes) {
        double least = Math.max(1e-12, PART_OF_STEEPEST * largest(slopes));
        double[][] matrix = new double[free.length][free.length];
        for (int j = 0; j < free.length; j++) {
            matrix[j][j] = Math.max(least, Math.abs(slopes[j])) / FIRST_BOX;
        }
        return matrix;
    }

    private static double[][] one(int size) {
        double[][] matrix = new double[size][size];
        for (int j = 0; j < size; j++) {
            matrix[j][j] = 1;
        }
        return matrix;
    }

    private double[] step(Slopes slopes, double[] spare) {
        double[] least = new double[spare.length];
        for (int r = 0; r < least.length; r++) {
            least[r] = spare[r] - slopes.rooms()[r];
        }
        QuadraticStep solved = new QuadraticStep(
                hessian, slopes.objective(), slopes.rows(), least, end(slopes.at(), -1), end(slopes.at(), 1));
        multipliers =
                IntStream.range(0, least.length).mapToDouble(solved::multiplier).toArray();
        return solved.step();
    }

    private double[] end(Trial at, int sign) {
        return Arrays.stream(free)
                .mapToDouble(k -> sign < 0 ? Math.max(-box, -at.at()[k]) : Math.min(box, 1 - at.at()[k]))
                .toArray();
    }

    /** The whole step where it is better, else the best of its parts; what breaks a limit is also put back inside. */
    private Trial along(Slopes slopes, double[] step) {
        Trial whole = best(slopes, step, WHOLE);
        return view.isBetter(whole, slopes.at()) ? whole : best(slopes, step, PARTS);
    }

    private Trial best(Slopes slopes, double[] step, double[] parts) {
        List<Trial> tried = new ArrayList<>(asked.batch(Arrays.stream(parts)
                .mapToObj(part -> place(slopes.at(), step, part))
                .toList()));
        tried.addAll(asked.batch(tried.stream()
                .filter(trial -> !trial.isRefused() && !view.isFeasible(trial))
                .map(trial -> corrected(slopes, trial))
                .toList()));
        return Objects.requireNonNull(view.best(tried));
    }

    /** The shortest way back inside the limits by the slopes at hand, a little farther than they ask. */
    private double[] corrected(Slopes slopes, Trial trial) {
        double[] least = new double[slopes.rooms().length];
        int place = 0;
        for (int row = 0; row < view.rows() && place < least.length; row++) {
            if (Double.isFinite(view.room(slopes.at(), row))) {
                double room = view.room(trial, row);
                least[place] = Double.isFinite(room) ? Math.max(0, -0.05 * room) - room : 0;
                least[place] += room < 0 ? 1e-13 : 0;
                place++;
            }
        }
        QuadraticStep back = new QuadraticStep(
                one(free.length), new double[free.length], slopes.rows(), least, end(trial, -1), end(trial, 1));
        return place(trial, back.step(), 1);
    }

    private double[] place(Trial from, double[] step, double part) {
        double[] place = from.at().clone();
        for (int j = 0; j < free.length; j++) {
            place[free[j]] = Math.min(1, Math.max(0, place[free[j]] + part * step[j]));
        }
        return place;
    }

    private double[] difference(Trial to, Trial from) {
        return Arrays.stream(free).mapToDouble(k -> to.at()[k] - from.at()[k]).toArray();
    }

    private static double largest(double[] step) {
        return Arrays.stream(step).map(Math::abs).max().orElse(0);
    }
}
