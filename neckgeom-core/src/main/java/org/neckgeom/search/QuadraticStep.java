package org.neckgeom.search;

/**
 * The step d that makes g d + d H d / 2 least while every row keeps a d >= b and d stays in its box. Solved in the
 * multipliers of the rows by coordinates (Hildreth 1957); a multiplier that reaches its cap gives its row up, so that a step
 * exists even where rows contradict each other.
 */
final class QuadraticStep {

    private static final double CAP = 1e5;
    private static final int SWEEPS = 600;
    private static final double SMALL = 1e-13;

    private final int n;
    private final double[][] inverse;
    private final double[][] rows;
    private final double[] least;
    private final double[] multipliers;
    private final double[] step;

    /**
     * @param hessian H, positive definite
     * @param gradient g
     * @param rows a of each row
     * @param least b of each row
     * @param lower end of the box
     * @param upper end of the box
     */
    QuadraticStep(
            double[][] hessian, double[] gradient, double[][] rows, double[] least, double[] lower, double[] upper) {
        this.n = gradient.length;
        this.inverse = inverse(hessian);
        int given = rows.length;
        this.rows = new double[given + 2 * n][];
        this.least = new double[this.rows.length];
        System.arraycopy(rows, 0, this.rows, 0, given);
        System.arraycopy(least, 0, this.least, 0, given);
        for (int j = 0; j < n; j++) {
            this.rows[given + 2 * j] = unit(j, 1);
            this.least[given + 2 * j] = lower[j];
            this.rows[given + 2 * j + 1] = unit(j, -1);
            this.least[given + 2 * j + 1] = -upper[j];
        }
        this.multipliers = new double[this.rows.length];
        this.step = times(inverse, gradient);
        for (int j = 0; j < n; j++) {
            step[j] = -step[j];
        }
        solve(given);
        for (int j = 0; j < n; j++) {
            step[j] = Math.min(upper[j], Math.max(lower[j], step[j]));
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

    private void solve(int given) {
        double[][] moves = new double[rows.length][];
        double[] widths = new double[rows.length];
        for (int r = 0; r < rows.length; r++) {
            moves[r] = times(inverse, rows[r]);
            widths[r] = dot(rows[r], moves[r]);
        }
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double largest = 0;
            for (int r = 0; r < rows.length; r++) {
                if (!(widths[r] > 0)) {
                    continue;
                }
                double cap = r < given ? CAP : Double.POSITIVE_INFINITY;
                double wanted = multipliers[r] + (least[r] - dot(rows[r], step)) / widths[r];
                double change = Math.min(cap, Math.max(0, wanted)) - multipliers[r];
                multipliers[r] += change;
                for (int j = 0; j < n; j++) {
                    step[j] += change * moves[r][j];
                }
                largest = Math.max(largest, Math.abs(change) * Math.sqrt(widths[r]));
            }
            if (largest < SMALL) {
                return;
            }
        }
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

    /** By Gauss and Jordan; H is positive definite, so no row changes place. */
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
