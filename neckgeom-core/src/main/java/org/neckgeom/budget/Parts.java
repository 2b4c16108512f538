package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The independent parts of a sum, sorted by kind, in library units: one normal part, rectangles and arcsines by their
 * half-widths, largest first, and centred samples. Triangles and trapezoids are two rectangles each.
 */
final class Parts {

    final double mean;
    final double normalVariance;
    final double[] rectangles;
    final double[] arcsines;
    final List<double[]> samples;

    private Parts(double mean, double normalVariance, double[] rectangles, double[] arcsines, List<double[]> samples) {
        this.mean = mean;
        this.normalVariance = normalVariance;
        this.rectangles = rectangles;
        this.arcsines = arcsines;
        this.samples = samples;
    }

    double variance() {
        double sum = normalVariance;
        for (double a : rectangles) {
            sum += a * a / 3.0;
        }
        for (double a : arcsines) {
            sum += a * a / 2.0;
        }
        for (double[] set : samples) {
            sum += variance(set);
        }
        return sum;
    }

    /** Fourth cumulant. */
    double fourthCumulant() {
        double sum = 0.0;
        for (double a : rectangles) {
            sum -= 2.0 * a * a * a * a / 15.0;
        }
        for (double a : arcsines) {
            sum -= 3.0 * a * a * a * a / 8.0;
        }
        return sum;
    }

    boolean isSymmetric() {
        return samples.isEmpty();
    }

    /** Whether there is nothing but two arcsines. */
    boolean isArcsinePair() {
        return arcsines.length == 2 && rectangles.length == 0 && samples.isEmpty() && normalVariance == 0.0;
    }

    /** The same sum with its sign turned. */
    Parts mirrored() {
        List<double[]> turned = new ArrayList<>();
        for (double[] set : samples) {
            double[] copy = new double[set.length];
            for (int i = 0; i < set.length; i++) {
                copy[set.length - 1 - i] = -set[i];
            }
            turned.add(copy);
        }
        return new Parts(-mean, normalVariance, rectangles, arcsines, turned);
    }

    Parts withoutLargestArcsine() {
        double[] rest = Arrays.copyOfRange(arcsines, 1, arcsines.length);
        return new Parts(0.0, normalVariance, rectangles, rest, samples);
    }

    /** Largest value less the mean, infinite with a normal part. */
    double highest() {
        return normalVariance > 0.0 ? Double.POSITIVE_INFINITY : bounded();
    }

    /** Largest value of the bounded parts less their mean. */
    double bounded() {
        double sum = 0.0;
        for (double a : rectangles) {
            sum += a;
        }
        for (double a : arcsines) {
            sum += a;
        }
        for (double[] set : samples) {
            sum += set[set.length - 1];
        }
        return sum;
    }

    static double variance(double[] centred) {
        double sum = 0.0;
        for (double x : centred) {
            sum += x * x;
        }
        return sum / centred.length;
    }

    /** Gathers parts; parts without width only move the mean. */
    static final class Builder {

        private double mean;
        private double normalVariance;
        private double[] rectangles = new double[8];
        private int rectangleCount;
        private double[] arcsines = new double[2];
        private int arcsineCount;
        private final List<double[]> samples = new ArrayList<>();

        Builder shift(double by) {
            mean += by;
            return this;
        }

        Builder normal(double sd) {
            normalVariance += sd * sd;
            return this;
        }

        Builder rectangle(double halfWidth) {
            if (halfWidth > 0.0) {
                if (rectangleCount == rectangles.length) {
                    rectangles = Arrays.copyOf(rectangles, 2 * rectangleCount);
                }
                rectangles[rectangleCount++] = halfWidth;
            }
            return this;
        }

        Builder triangle(double halfWidth) {
            return rectangle(0.5 * halfWidth).rectangle(0.5 * halfWidth);
        }

        Builder trapezoid(double halfBase, double halfTop) {
            return rectangle(0.5 * (halfBase + halfTop)).rectangle(0.5 * (halfBase - halfTop));
        }

        Builder arcsine(double halfWidth) {
            if (halfWidth > 0.0) {
                if (arcsineCount == arcsines.length) {
                    arcsines = Arrays.copyOf(arcsines, 2 * arcsineCount);
                }
                arcsines[arcsineCount++] = halfWidth;
            }
            return this;
        }

        /** Adds samples about 0, ascending, each taken times a factor. */
        Builder samples(double[] centred, double factor) {
            double[] scaled = new double[centred.length];
            for (int i = 0; i < scaled.length; i++) {
                scaled[factor < 0.0 ? scaled.length - 1 - i : i] = factor * centred[i] + 0.0;
            }
            if (scaled[scaled.length - 1] > scaled[0]) {
                samples.add(scaled);
            }
            return this;
        }

        Parts build() {
            return new Parts(
                    mean,
                    normalVariance,
                    descending(rectangles, rectangleCount),
                    descending(arcsines, arcsineCount),
                    List.copyOf(samples));
        }

        private static double[] descending(double[] values, int count) {
            double[] sorted = Arrays.copyOf(values, count);
            Arrays.sort(sorted);
            for (int i = 0, j = count - 1; i < j; i++, j--) {
                double swap = sorted[i];
                sorted[i] = sorted[j];
                sorted[j] = swap;
            }
            return sorted;
        }
    }
}
