package org.neckgeom.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.neckgeom.measure.ErrorDistribution.Law;

/**
 * Deviations that know of each other, with their limits: a normal part that they share and other causes, each with its
 * coefficient in each of them. In mm and about their means.
 *
 * @param low lower limits less the means
 * @param high upper limits less the means
 * @param covariance of the normal part
 * @param others causes of other laws
 */
@SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
record Group(double[] low, double[] high, double[][] covariance, List<Other> others) {

    /**
     * A cause that is not normal.
     *
     * @param cause whose law it has
     * @param factor by which it is wider than given
     * @param coefficients in each deviation
     * @param logDeviation of its own scale
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
    record Other(Cause cause, double factor, double[] coefficients, double logDeviation) {

        Law law() {
            return cause.spread().law();
        }

        double scale() {
            return factor * cause.spread().libraryScale();
        }

        double top() {
            return factor * cause.spread().libraryTopScale();
        }

        double topOverScale() {
            return cause.spread().libraryTopScale() / cause.spread().libraryScale();
        }

        double variance() {
            return factor * factor * cause.spread().libraryVariance();
        }
    }

    int size() {
        return low.length;
    }

    /** Standard deviation of one deviation. */
    double sd(int j) {
        double sum = covariance[j][j];
        for (Other one : others) {
            sum += one.coefficients()[j] * one.coefficients()[j] * one.variance();
        }
        return Math.sqrt(sum);
    }

    /** The same with every limit divided by a factor: the chance if every spread were so many times as wide. */
    Group narrowed(double factor) {
        double[] l = low.clone();
        double[] h = high.clone();
        for (int j = 0; j < l.length; j++) {
            l[j] /= factor;
            h[j] /= factor;
        }
        return new Group(l, h, covariance, others);
    }

    /** Deviations with their limits, split into groups that have no cause in common. */
    static List<Group> of(Knowledge state, Solved solved, double factor, List<Requirement> wanted) {
        int n = wanted.size();
        double[][] roots = new double[n][];
        int[] group = new int[n];
        for (int j = 0; j < n; j++) {
            roots[j] = solved.root(wanted.get(j).of());
            group[j] = j;
        }
        for (int j = 0; j < n; j++) {
            for (int i = 0; i < j; i++) {
                if (group[i] != group[j]
                        && share(solved, wanted.get(i).of(), wanted.get(j).of(), roots[i], roots[j])) {
                    int gone = group[j];
                    for (int k = 0; k < n; k++) {
                        group[k] = group[k] == gone ? group[i] : group[k];
                    }
                }
            }
        }
        List<Group> all = new ArrayList<>();
        for (int g = 0; g < n; g++) {
            List<Integer> members = new ArrayList<>();
            for (int j = 0; j < n; j++) {
                if (group[j] == g) {
                    members.add(j);
                }
            }
            if (!members.isEmpty()) {
                // Most causes first: of a series the innermost axis is asked most often.
                members.sort(Comparator.comparingInt(j -> -wanted.get(j).of().size()));
                all.add(of(state, solved, factor, wanted, roots, members));
            }
        }
        return all;
    }

    private static boolean share(Solved solved, Deviation one, Deviation other, double[] root, double[] itsRoot) {
        for (int i = 0; i < one.size(); i++) {
            if (!solved.isTouched(one.name(i)) && other.coefficient(one.name(i)) != 0.0 && solved.sd(one.name(i)) > 0) {
                return true;
            }
        }
        double both = Math.sqrt(Solved.dot(root, root) * Solved.dot(itsRoot, itsRoot));
        return Math.abs(Solved.dot(root, itsRoot)) > 1e-12 * both;
    }

    private static Group of(
            Knowledge state,
            Solved solved,
            double factor,
            List<Requirement> wanted,
            double[][] roots,
            List<Integer> members) {
        int d = members.size();
        double[] low = new double[d];
        double[] high = new double[d];
        double[][] covariance = new double[d][d];
        List<String> names = new ArrayList<>();
        for (int j = 0; j < d; j++) {
            Requirement one = wanted.get(members.get(j));
            double mean = solved.mean(one.of());
            low[j] = one.limits().libraryLower() - mean;
            high[j] = one.limits().libraryUpper() - mean;
            for (int i = 0; i <= j; i++) {
                covariance[j][i] = Solved.dot(roots[members.get(j)], roots[members.get(i)]);
                covariance[i][j] = covariance[j][i];
            }
            for (String name : one.of().causes()) {
                if (!solved.isTouched(name) && solved.sd(name) > 0.0 && !names.contains(name)) {
                    names.add(name);
                }
            }
        }
        List<Other> others = new ArrayList<>();
        for (String name : names) {
            Cause cause = state.cause(name);
            double[] c = new double[d];
            for (int j = 0; j < d; j++) {
                c[j] = wanted.get(members.get(j)).of().coefficient(name);
            }
            double times = cause.isGuess() ? factor : 1.0;
            double own = cause.ownLogDeviation();
            if (cause.spread().law() == Law.NORMAL && own == 0.0) {
                double variance = times * times * cause.spread().libraryVariance();
                for (int j = 0; j < d; j++) {
                    for (int i = 0; i < d; i++) {
                        covariance[j][i] += c[j] * c[i] * variance;
                    }
                }
            } else {
                others.add(new Other(cause, times, c, own));
            }
        }
        // The widest first: where it is all but 0 the others need not be asked.
        others.sort(Comparator.comparingDouble((Other one) -> -size(one)));
        return new Group(low, high, covariance, others);
    }

    private static double size(Other one) {
        double most = 0.0;
        for (double c : one.coefficients()) {
            most = Math.max(most, Math.abs(c));
        }
        return most * Math.sqrt(one.variance());
    }
}
