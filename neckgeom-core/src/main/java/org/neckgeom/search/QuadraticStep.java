package org.neckgeom.search;

import java.util.ArrayList;
import java.util.List;

/**
 * The step d that makes g d + d H d / 2 least while every row keeps a d >= b and d stays in its box. Solved in the
 * multipliers of the rows, which are 0 or more, by the active set of Lawson and Hanson 1974. Every row gives way a very
 * little under its multiplier, so that a step exists even where rows contradict each other.
 */
final class QuadraticStep {

    private static final double GIVING_WAY = 1e-11;
    private static final double SMALL = 1e-12;

    private final int n;
    private final double[][] inverse;
    private final double[][] rows;
    private final double[] wanted;
    private final double[][] dual;
    private final double[] multipliers;
    private final double[] step;

    /** Takes H, which is positive definite, g, the rows a and b, and both ends of the box. */
    QuadraticStep(
            double[][] hessian, double[] gradient, double[][] rows, double[] least, double[] lower, double[] upper) {
        this.n = gradient.length;
        this.inverse = inverse(hessian);
        this.rows = new double[rows.length + 2 * n][];
        double[] all = new double[this.rows.length];
        System.arraycopy(rows, 0, this.rows, 0, rows.length);
        System.arraycopy(least, 0, all, 0, rows.length);
        for (int j = 0; j < n; j++) {
            int row = rows.length + 2 * j;
            this.rows[row] = unit(j, 1);
            all[row] = lower[j];
            this.rows[row + 1] = unit(j, -1);
            all[row + 1] = -upper[j];
        }
        double[] free = times(inverse, gradient);
        this.wanted = all;
        for (int r = 0; r < all.length; r++) {
            wanted[r] += dot(this.rows[r], free);
        }
        this.dual = dual();
        this.multipliers = new double[all.length];
        solve();
        this.step = new double[n];
        double[] pull = gradient.clone();
        for (int r = 0; r < all.length; r++) {
            for (int j = 0; j < n; j++) {
                pull[j] -= multipliers[r] * this.rows[r][j];
            }
        }
        double[] back = times(inverse, pull);
        for (int j = 0; j < n; j++) {
            step[j] = Math.min(upper[j], Math.max(lower[j], -back[j]));
        }
    }

    double[] step() {
        return step;
    }

    double multiplier(int row) {
        return multipliers[row];
    }

    private double[] unit(int place, double value) {
        double[] unit = new double[n];
        unit[place] = value;
        return unit;
    }

    private double[][] dual() {
        double[][] matrix = new double[rows.length][rows.length];
        double largest = 0;
        for (int r = 0; r < rows.length; r++) {
            double[] moved = times(inverse, rows[r]);
            for (int s = 0; s < rows.length; s++) {
                matrix[s][r] = dot(rows[s], moved);
            }
            largest = Math.max(largest, matrix[r][r]);
        }
        for (int r = 0; r < rows.length; r++) {
            matrix[r][r] += GIVING_WAY * largest;
        }
        return matrix;
    }

    /** Makes l G l / 2 - l q least over l of 0 or more. */
    private void solve() {
        List<Integer> active = new ArrayList<>();
        for (int i = 0; i < 10 * rows.length; i++) {
            int next = mostWanted(active);
            if (next < 0) {
                return;
            }
            active.add(next);
            while (!active.isEmpty() && !settle(active)) {
                active.removeIf(row -> multipliers[row] <= 0);
            }
        }
    }

    private int mostWanted(List<Integer> active) {
        int most = -1;
        double largest = SMALL;
        for (int r = 0; r < rows.length; r++) {
            double wants = (wanted[r] - dot(dual[r], multipliers)) / Math.sqrt(dual[r][r]);
            if (wants > largest && !active.contains(r)) {
                largest = wants;
                most = r;
            }
        }
        return most;
    }

    /** Goes to the solution of the active rows, or as far toward it as all multipliers stay 0 or more. */
    private boolean settle(List<Integer> active) {
        double[] aim = solved(active);
        double part = 1;
        int first = -1;
        for (int k = 0; k < aim.length; k++) {
            double from = multipliers[active.get(k)];
            if (aim[k] <= 0 && from - aim[k] > 0 && from / (from - aim[k]) < part) {
                part = from / (from - aim[k]);
                first = k;
            } else if (aim[k] <= 0 && from == 0) {
                part = 0;
                first = k;
            }
        }
        for (int k = 0; k < aim.length; k++) {
            int row = active.get(k);
            multipliers[row] += part * (aim[k] - multipliers[row]);
        }
        if (first >= 0) {
            multipliers[active.get(first)] = 0;
        }
        return first < 0;
    }

    private double[] solved(List<Integer> active) {
        int size = active.size();
        double[][] matrix = new double[size][size];
        double[] right = new double[size];
        for (int i = 0; i < size; i++) {
            right[i] = wanted[active.get(i)];
            for (int j = 0; j < size; j++) {
                matrix[i][j] = dual[active.get(i)][active.get(j)];
            }
        }
        return times(inverse(matrix), right);
    }

    static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int j = 0; j < one.length; j++) {
            sum += one[j] * other[j];
        }
        return sum;
    }

    static double[] times(double[][] matrix, double[] vector) {
        double[] result = new double[vector.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = dot(matrix[i], vector);
        }
        return result;
    }

    /** By Gauss and Jordan; the matrix is positive definite, so no row changes place. */
    private static double[][] inverse(double[][] matrix) {
        int n = matrix.length;
        double[][] left = new double[n][];
        double[][] right = new double[n][n];
        for (int i = 0; i < n; i++) {
            left[i] = matrix[i].clone();
            right[i][i] = 1;
        }
        for (int i = 0; i < n; i++) {
            double pivot = left[i][i];
            for (int j = 0; j < n; j++) {
                left[i][j] /= pivot;
                right[i][j] /= pivot;
            }
            for (int k = 0; k < n; k++) {
                double factor = left[k][i];
                if (k != i && factor != 0) {
                    for (int j = 0; j < n; j++) {
                        left[k][j] -= factor * left[i][j];
                        right[k][j] -= factor * right[i][j];
                    }
                }
            }
        }
        return right;
    }
}
