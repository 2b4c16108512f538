package org.neckgeom.state;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.neckgeom.measure.ErrorDistribution.Law;

/**
 * Chance that a few deviations keep their limits together, by a Fourier series in each: {@code P = sum over k of phi(pi k/B)
 * product of c(k)}, phi the joint characteristic function, c the coefficients of each limit's indicator with period 2B.
 *
 * <p>Exact but for what lies beyond the period and what the series leaves out, each held under {@link #ACCURACY}. The terms
 * do not depend on the limits, so that the chances for many limits cost little more than one.
 */
final class GroupSeries {

    /** Largest error of a chance. */
    static final double ACCURACY = 1e-5;

    private static final Set<Law> SUITED = EnumSet.of(Law.NORMAL, Law.RECTANGULAR, Law.TRIANGULAR);
    private static final Map<Law, LawTable> GUESSED = new EnumMap<Law, LawTable>(SUITED.stream()
            .collect(Collectors.toMap(law -> law, law -> new LawTable(law, Cause.GUESS))));
    private static final int MOST_DEVIATIONS = 4;
    private static final int MOST_TERMS = 150_000;
    private static final int MOST_WAVES = 48;
    private static final double REACH = 6.0;
    private static final double SMALL = 1e-6;
    private static final double NEGLIGIBLE = 1e-8;
    private static final double SHELL = 4e-6;

    private final Group group;
    private final double[] half;
    private final int[] waves;
    private final LawTable[] laws;
    private final double[] terms;
    private final double[][] slopes;
    private final boolean isNormal;

    private GroupSeries(Group group, LawTable[] laws, double[] half, int[] waves) {
        this.group = group;
        this.laws = laws;
        this.half = half;
        this.waves = waves;
        this.terms = new double[count(waves)];
        this.slopes = new double[laws.length][];
        for (int i = 0; i < laws.length; i++) {
            double scale = group.others().get(i).scale();
            slopes[i] = Arrays.stream(group.others().get(i).coefficients())
                    .map(c -> c * scale)
                    .toArray();
        }
        this.isNormal = Arrays.stream(group.covariance())
                .flatMapToDouble(Arrays::stream)
                .anyMatch(x -> x != 0.0);
        fill(0, 0, new double[group.size()], new double[laws.length]);
    }

    private static int count(int[] waves) {
        double count = waves[0] + 1.0;
        for (int j = 1; j < waves.length; j++) {
            count *= 2.0 * waves[j] + 1.0;
        }
        return (int) Math.min(count, Integer.MAX_VALUE);
    }

    /** The series of a group whose limits lie up to so many times as far out, or null where it would be too long. */
    static @Nullable GroupSeries of(Group group, double farther) {
        int d = group.size();
        if (d > MOST_DEVIATIONS || group.others().stream().anyMatch(one -> !SUITED.contains(one.law()))) {
            return null;
        }
        LawTable[] laws = tables(group);
        double[] half = new double[d];
        int[] waves = new int[d];
        for (int j = 0; j < d; j++) {
            double reach = reach(group, j);
            double limit = farther * Math.max(Math.abs(group.low()[j]), Math.abs(group.high()[j]));
            half[j] = 0.5 * (Math.min(limit, reach) + reach);
            if (!(half[j] > 0.0)) {
                return null;
            }
            waves[j] = waves(group, laws, j, half[j]);
        }
        while (count(waves) <= MOST_TERMS) {
            GroupSeries series = new GroupSeries(group, laws, half, waves.clone());
            double[] shells = series.shells();
            boolean enough = true;
            for (int j = 0; j < d; j++) {
                if (shells[j] > SHELL) {
                    enough = false;
                    waves[j] = waves[j] + Math.max(2, waves[j] / 3);
                }
            }
            if (enough) {
                return series;
            }
        }
        return null;
    }

    /** One table for each law and scale of a kind. */
    private static LawTable[] tables(Group group) {
        Map<List<Object>, LawTable> made = new HashMap<>();
        return group.others().stream()
                .map(one -> made.computeIfAbsent(
                        List.of(one.law(), one.logDeviation()), key -> table(one.law(), one.logDeviation())))
                .toArray(LawTable[]::new);
    }

    private static LawTable table(Law law, double logDeviation) {
        return logDeviation == Cause.GUESS ? GUESSED.get(law) : new LawTable(law, logDeviation);
    }

    /** How far a deviation gets but for a chance that does not count. */
    private static double reach(Group group, int j) {
        double square = group.covariance()[j][j];
        for (Group.Other one : group.others()) {
            double c = one.coefficients()[j] * StrictMath.exp(one.logDeviation() * one.logDeviation());
            square += c * c * one.variance();
        }
        return REACH * Math.sqrt(square);
    }

    /** Waves along one axis until what is left is small. */
    private static int waves(Group group, LawTable[] laws, int j, double half) {
        int small = 0;
        int k = 1;
        while (k < MOST_WAVES && small < 2) {
            small = Math.abs(characteristic(group, laws, j, Math.PI * k / half)) < SMALL ? small + 1 : 0;
            k++;
        }
        return k;
    }

    /** The characteristic function of one deviation about its mean, which is real where every law has mirror symmetry. */
    private static double characteristic(Group group, LawTable[] laws, int j, double s) {
        double value = StrictMath.exp(-0.5 * s * s * group.covariance()[j][j]);
        for (int i = 0; i < laws.length; i++) {
            Group.Other one = group.others().get(i);
            value *= laws[i].at(s * one.coefficients()[j] * one.scale());
        }
        return value;
    }

    /** Arguments of each law so far, and the normal part's exponent, axis by axis: the innermost loop only adds. */
    private int fill(int j, int place, double[] s, double[] arguments) {
        int d = waves.length;
        int at = place;
        double[] next = new double[arguments.length];
        for (int k = j == 0 ? 0 : -waves[j]; k <= waves[j]; k++) {
            s[j] = Math.PI * k / half[j];
            for (int i = 0; i < next.length; i++) {
                next[i] = arguments[i] + s[j] * slopes[i][j];
            }
            if (j < d - 1) {
                at = fill(j + 1, at, s, next);
            } else {
                terms[at++] = product(s, next);
            }
        }
        return at;
    }

    private double product(double[] s, double[] arguments) {
        double value = isNormal ? StrictMath.exp(-0.5 * quadratic(group, s)) : 1.0;
        for (int i = 0; i < arguments.length && Math.abs(value) > NEGLIGIBLE; i++) {
            value *= laws[i].at(arguments[i]);
        }
        return value;
    }

    private static double quadratic(Group group, double[] s) {
        double sum = 0.0;
        for (int i = 0; i < s.length; i++) {
            for (int j = 0; j < s.length; j++) {
                sum += s[i] * group.covariance()[i][j] * s[j];
            }
        }
        return sum;
    }

    /** What the outermost terms along each axis add up to at most. */
    private double[] shells() {
        double[] shells = new double[waves.length];
        int[] k = new int[waves.length];
        for (int j = 1; j < k.length; j++) {
            k[j] = -waves[j];
        }
        for (double term : terms) {
            double most = Math.abs(term) * (k[0] == 0 ? 1.0 : 2.0);
            for (int value : k) {
                most *= value == 0 ? 1.0 : Math.min(1.0, 1.0 / (Math.PI * Math.abs(value)));
            }
            for (int j = 0; j < k.length; j++) {
                shells[j] += Math.abs(k[j]) == waves[j] ? most : 0.0;
            }
            int j = k.length - 1;
            while (j >= 0 && ++k[j] > waves[j]) {
                k[j] = j == 0 ? 0 : -waves[j];
                j--;
            }
        }
        return shells;
    }

    /** Chance of keeping all limits, those of the group or others no farther out than was allowed for. */
    double chance(Group limits) {
        int d = waves.length;
        double[][] re = new double[d][];
        double[][] im = new double[d][];
        for (int j = 0; j < d; j++) {
            double out = 2.0 * half[j] - reach(group, j);
            double low = Math.max(limits.low()[j], -Math.max(out, 0.0));
            double high = Math.min(limits.high()[j], Math.max(out, 0.0));
            if (!(high >= low)) {
                return 0.0;
            }
            re[j] = new double[2 * waves[j] + 1];
            im[j] = new double[2 * waves[j] + 1];
            for (int k = -waves[j]; k <= waves[j]; k++) {
                int at = k + waves[j];
                if (k == 0) {
                    re[j][at] = (high - low) / (2.0 * half[j]);
                } else {
                    double w = Math.PI * k / half[j];
                    double over = 1.0 / (2.0 * Math.PI * k);
                    re[j][at] = over * (StrictMath.sin(w * high) - StrictMath.sin(w * low));
                    im[j][at] = over * (StrictMath.cos(w * high) - StrictMath.cos(w * low));
                }
            }
        }
        int place = 0;
        double[] sum = new double[2];
        double all = 0.0;
        for (int k = 0; k <= waves[0]; k++) {
            sum[0] = 0.0;
            sum[1] = 0.0;
            place = add(1, place, re, im, 1.0, 0.0, sum);
            double real = re[0][k + waves[0]] * sum[0] - im[0][k + waves[0]] * sum[1];
            all += k == 0 ? real : 2.0 * real;
        }
        return Math.max(0.0, Math.min(1.0, all));
    }

    private int add(int j, int place, double[][] re, double[][] im, double a, double b, double[] sum) {
        if (j == waves.length) {
            sum[0] += a * terms[place];
            sum[1] += b * terms[place];
            return place + 1;
        }
        double[] c = re[j];
        double[] s = im[j];
        int at = place;
        for (int k = 0; k < c.length; k++) {
            at = add(j + 1, at, re, im, a * c[k] - b * s[k], a * s[k] + b * c[k], sum);
        }
        return at;
    }
}
