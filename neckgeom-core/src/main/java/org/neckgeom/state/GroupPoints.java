package org.neckgeom.state;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.neckgeom.numeric.NormalLaw;

/**
 * Chance that deviations keep their limits together, by points of a lattice.
 *
 * <p>One cause after the other takes a value; the last one of a deviation takes it within what the limits leave, and the
 * chance of that is a factor (A. Genz, J. Comp. Graph. Stat. 1, 1992, 141, for normal causes; A. Genz and K.-S. Kwong, J.
 * Stat. Comput. Simul. 68, 2000, 1, for singular covariances; both from memory). Causes in one deviation alone are summed
 * exactly and come last. The normal part is taken apart by Cholesky's root. Sixteen fixed shifts of one lattice give the
 * error; the points double until it is small.
 */
final class GroupPoints {

    private static final int SHIFTS = 16;
    private static final int FIRST = 1 << 7;
    private static final int MOST = 1 << 15;
    /** Largest error of a chance, but for that of the tables. */
    static final double WANTED = 0.8e-4;

    private static final double SINGULAR = 1e-12;
    private static final double NOTHING = 1e-9;

    /**
     * A cause to take a value.
     *
     * @param law of it
     * @param logDeviation of its own scale, where the law does not count that; 0 where it does
     * @param coefficients in each deviation
     * @param closes deviations of which it is the last cause
     * @param moves deviations with causes still to come
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
    private record Column(ColumnLaw law, double logDeviation, double[] coefficients, int[] closes, int[] moves) {}

    private final Group group;
    private final int size;
    private final double[] sd;
    private final @Nullable SumTable[] last;
    private final List<Column> columns = new ArrayList<>();
    private final int dimension;

    GroupPoints(Group group) {
        this.group = group;
        this.size = group.size();
        this.sd = IntStream.range(0, size).mapToDouble(group::sd).toArray();
        this.last = new SumTable[size];
        List<Group.Other> left = new ArrayList<>(group.others());
        List<double[]> root = root();
        for (int j = 0; j < size; j++) {
            sumUp(j, left, root);
        }
        List<Double> order = new ArrayList<>();
        List<Column> made = new ArrayList<>();
        for (Group.Other one : left) {
            ColumnLaw law = ColumnLaw.of(one);
            double u = Math.sqrt(one.variance());
            double[] c = clean(one.coefficients(), u);
            made.add(new Column(law, law.isAveraged() ? 0.0 : one.logDeviation(), c, new int[0], new int[0]));
            order.add(least(c, u));
        }
        // What lets the bare deviations lean on it most comes last.
        IntStream.range(0, made.size())
                .boxed()
                .sorted(Comparator.comparing(order::get))
                .forEach(i -> columns.add(made.get(i)));
        for (double[] column : root) {
            columns.add(new Column(ColumnLaw.NORMAL, 0.0, clean(column, 1.0), new int[0], new int[0]));
        }
        close();
        int n = 0;
        for (Column one : columns) {
            n += one.logDeviation() > 0.0 ? 2 : 1;
        }
        this.dimension = n;
    }

    private double[] clean(double[] coefficients, double u) {
        return IntStream.range(0, size)
                .mapToDouble(j -> Math.abs(coefficients[j]) * u > NOTHING * sd[j] ? coefficients[j] : 0.0)
                .toArray();
    }

    /** The least part that a cause has in a deviation without a sum of its own. */
    private double least(double[] coefficients, double u) {
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < size; j++) {
            if (last[j] == null && sd[j] > 0.0) {
                least = Math.min(least, Math.abs(coefficients[j]) * u / sd[j]);
            }
        }
        return least;
    }

    /**
     * Columns of Cholesky's root of the normal part, the deviation least likely to keep its limits first (A. Genz and F. Bretz,
     * J. Comp. Graph. Stat. 11, 2002, 950; from memory); none where the deviations before leave nothing.
     */
    private List<double[]> root() {
        List<double[]> root = new ArrayList<>();
        double[] left = new double[size];
        double[] expected = new double[size];
        boolean[] taken = new boolean[size];
        for (int j = 0; j < size; j++) {
            left[j] = group.covariance()[j][j];
        }
        while (true) {
            int next = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int j = 0; j < size; j++) {
                if (!taken[j] && left[j] > SINGULAR * group.covariance()[j][j]) {
                    double inside = inside(j, expected[j], left[j]);
                    if (inside < least) {
                        least = inside;
                        next = j;
                    }
                }
            }
            if (next < 0) {
                return root;
            }
            taken[next] = true;
            double u = Math.sqrt(left[next]);
            double[] column = new double[size];
            column[next] = u;
            double low = (group.low()[next] - expected[next]) / u;
            double high = (group.high()[next] - expected[next]) / u;
            double middle = least > 0.0 ? (NormalLaw.density(low) - NormalLaw.density(high)) / least : 0.0;
            for (int i = 0; i < size; i++) {
                if (!taken[i]) {
                    double sum = group.covariance()[i][next];
                    for (double[] before : root) {
                        sum -= before[i] * before[next];
                    }
                    column[i] = sum / u;
                    left[i] -= column[i] * column[i];
                    expected[i] += column[i] * middle;
                }
            }
            root.add(column);
        }
    }

    private double inside(int j, double expected, double variance) {
        double u = Math.sqrt(variance);
        return NormalLaw.between((group.low()[j] - expected) / u, (group.high()[j] - expected) / u);
    }

    /** Sums up the causes that are in one deviation alone. */
    private void sumUp(int j, List<Group.Other> left, List<double[]> root) {
        List<Group.Other> own = left.stream()
                .filter(one ->
                        GroupSeries.suits(one) && isAlone(clean(one.coefficients(), Math.sqrt(one.variance())), j))
                .toList();
        if (own.isEmpty()) {
            return;
        }
        Optional<double[]> normal =
                root.stream().filter(column -> isAlone(clean(column, 1.0), j)).findFirst();
        last[j] = SumTable.of(own, j, normal.map(column -> column[j]).orElse(0.0));
        if (last[j] != null) {
            left.removeAll(own);
            normal.ifPresent(root::remove);
        }
    }

    private boolean isAlone(double[] coefficients, int j) {
        return IntStream.range(0, size).allMatch(i -> (coefficients[i] != 0.0) == (i == j));
    }

    /** Finds the last cause of each deviation that has no sum of its own. */
    private void close() {
        int[] closedBy = new int[size];
        for (int j = 0; j < size; j++) {
            int deviation = j;
            closedBy[j] = last[j] != null
                    ? columns.size()
                    : IntStream.range(0, columns.size())
                            .filter(k -> columns.get(k).coefficients()[deviation] != 0.0)
                            .max()
                            .orElse(-1);
        }
        for (int k = 0; k < columns.size(); k++) {
            int at = k;
            Column one = columns.get(k);
            columns.set(
                    k,
                    new Column(
                            one.law(),
                            one.logDeviation(),
                            one.coefficients(),
                            IntStream.range(0, size)
                                    .filter(j -> closedBy[j] == at)
                                    .toArray(),
                            IntStream.range(0, size)
                                    .filter(j -> closedBy[j] > at && one.coefficients()[j] != 0.0)
                                    .toArray()));
        }
    }

    /**
     * The chance and its error, three times the standard error of the means.
     *
     * @param wanted largest error, as far as the most points give it
     */
    double[] chance(double wanted) {
        for (int j = 0; j < size; j++) {
            if (sd[j] == 0.0 && !(group.low()[j] <= 0.0 && group.high()[j] >= 0.0)) {
                return new double[] {0.0, 0.0};
            }
        }
        Lattice lattice = new Lattice(dimension, SHIFTS);
        double[] sums = new double[SHIFTS];
        double[] at = new double[size];
        int done = 0;
        double mean = 0.0;
        double error = 1.0;
        for (int points = FIRST; points <= MOST && error > wanted; points *= 2) {
            mean = 0.0;
            double square = 0.0;
            for (int s = 0; s < SHIFTS; s++) {
                for (int p = done; p < points; p++) {
                    sums[s] += point(p + 1, lattice, s, at);
                }
                double one = sums[s] / points;
                mean += one / SHIFTS;
                square += one * one / SHIFTS;
            }
            done = points;
            error = 3.0 * Math.sqrt(Math.max(0.0, square - mean * mean) / (SHIFTS - 1.0));
        }
        return new double[] {Math.max(0.0, Math.min(1.0, mean)), error + GroupSeries.ACCURACY};
    }

    private double point(int p, Lattice lattice, int shift, double[] at) {
        Arrays.fill(at, 0.0);
        double chance = 1.0;
        int c = 0;
        for (int k = 0; k < columns.size(); k++) {
            Column one = columns.get(k);
            double scale = 1.0;
            if (one.logDeviation() > 0.0) {
                scale = StrictMath.exp(one.logDeviation() * NormalLaw.quantile(lattice.at(p, c, shift)));
                c++;
            }
            double place = lattice.at(p, c, shift);
            c++;
            if (one.closes().length > 0) {
                double low = Double.NEGATIVE_INFINITY;
                double high = Double.POSITIVE_INFINITY;
                for (int j : one.closes()) {
                    double by = scale * one.coefficients()[j];
                    double first = (group.low()[j] - at[j]) / by;
                    double second = (group.high()[j] - at[j]) / by;
                    low = Math.max(low, Math.min(first, second));
                    high = Math.min(high, Math.max(first, second));
                }
                if (!(high > low)) {
                    return 0.0;
                }
                double below = one.law().cdf(low);
                double inside = one.law().cdf(high) - below;
                if (!(inside > 0.0)) {
                    return 0.0;
                }
                chance *= inside;
                place = Math.max(1e-15, Math.min(1.0 - 1e-15, below + place * inside));
            }
            if (one.moves().length > 0) {
                double value = scale * one.law().quantile(place);
                for (int j : one.moves()) {
                    at[j] += one.coefficients()[j] * value;
                }
            }
        }
        for (int j = 0; j < size; j++) {
            SumTable sum = last[j];
            if (sum != null) {
                chance *= sum.between(group.low()[j] - at[j], group.high()[j] - at[j]);
            }
        }
        return chance;
    }
}
