package org.neckgeom.state;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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

    private static final Set<Law> SUITED = EnumSet.complementOf(EnumSet.of(Law.SAMPLES, Law.BIAS));
    private static final Set<Law> USUAL = EnumSet.of(Law.NORMAL, Law.RECTANGULAR, Law.TRIANGULAR);
    private static final Map<Law, LawTable> GUESSED = new EnumMap<Law, LawTable>(USUAL.stream()
            .collect(Collectors.toMap(law -> law, law -> new LawTable(law, 0.0, Cause.GUESS))));
    private static final int MOST_DEVIATIONS = 4;
    private static final int MOST_TERMS = 150_000;
    private static final int MOST_WAVES = 48;
    /** How far a deviation gets, in its widest standard deviations, but for a chance that does not count. */
    static final double REACH = 6.0;

    private static final double SMALL = 4e-7;
    private static final double NEGLIGIBLE = 1e-8;
    private static final double SHELL = 4e-6;

    private final Group group;
    private final double[] half;
    private final int[] waves;
    private final LawTable[] laws;
    private final double[] terms;
    private final double[][] slopes;
    private final boolean isNormal;

    /** Terms below one step of each axis; the laws whose last axis it is; those with a part in axes to come. */
    private final int[] size;

    private final int[][] closedAt;
    private final int[][] openFrom;

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
        int d = waves.length;
        this.size = new int[d];
        this.closedAt = new int[d][];
        this.openFrom = new int[d][];
        int below = 1;
        for (int j = d - 1; j >= 0; j--) {
            size[j] = below;
            below *= 2 * waves[j] + 1;
            int axis = j;
            closedAt[j] = laws(i -> lastAxis(i) == axis);
            openFrom[j] = laws(i -> lastAxis(i) > axis);
        }
        fill(0, 0, new double[d], new double[laws.length], 1.0);
    }

    private int[] laws(IntPredicate which) {
        return IntStream.range(0, laws.length).filter(which).toArray();
    }

    /** The last axis in which a law has a part. */
    private int lastAxis(int i) {
        int last = slopes[i].length - 1;
        while (last > 0 && slopes[i][last] == 0.0) {
            last--;
        }
        return last;
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
        if (d > MOST_DEVIATIONS || !group.others().stream().allMatch(GroupSeries::suits)) {
            return null;
        }
        LawTable[] laws = tables(group.others());
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
    static LawTable[] tables(List<Group.Other> causes) {
        Map<List<Object>, LawTable> made = new HashMap<>();
        return causes.stream()
                .map(one -> made.computeIfAbsent(
                        List.of(one.law(), one.topOverScale(), one.logDeviation()), key -> table(one)))
                .toArray(LawTable[]::new);
    }

    private static LawTable table(Group.Other one) {
        return one.logDeviation() == Cause.GUESS && USUAL.contains(one.law())
                ? Objects.requireNonNull(GUESSED.get(one.law()))
                : new LawTable(one.law(), one.topOverScale(), one.logDeviation());
    }

    static boolean suits(Group.Other one) {
        return SUITED.contains(one.law());
    }

    private static double reach(Group group, int j) {
        return REACH * Math.sqrt(widest(group.others(), j, group.covariance()[j][j]));
    }

    /** Variance of a deviation, each cause as wide as its mean square, twice over. */
    static double widest(List<Group.Other> causes, int j, double normal) {
        double square = normal;
        for (Group.Other one : causes) {
            double c = one.coefficients()[j] * StrictMath.exp(one.logDeviation() * one.logDeviation());
            square += c * c * one.variance();
        }
        return square;
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

    /**
     * Arguments of each law so far, axis by axis, and the product of the laws that have no part in the axes to come: the
     * innermost loop asks the fewest.
     */
    private void fill(int j, int place, double[] s, double[] arguments, double product) {
        if (j == waves.length - 1) {
            row(place, s, arguments, product);
            return;
        }
        int at = place;
        double[] next = new double[arguments.length];
        for (int k = j == 0 ? 0 : -waves[j]; k <= waves[j]; k++) {
            s[j] = Math.PI * k / half[j];
            for (int i : openFrom[j]) {
                next[i] = arguments[i] + s[j] * slopes[i][j];
            }
            double value = product;
            for (int i : closedAt[j]) {
                value *= laws[i].at(arguments[i] + s[j] * slopes[i][j]);
            }
            if (Math.abs(value) > NEGLIGIBLE) {
                fill(j + 1, at, s, next, value);
            }
            at += size[j];
        }
    }

    private void row(int place, double[] s, double[] arguments, double product) {
        int j = waves.length - 1;
        int first = j == 0 ? 0 : -waves[j];
        int count = waves[j] - first + 1;
        double step = Math.PI / half[j];
        Arrays.fill(terms, place, place + count, product);
        for (int i : closedAt[j]) {
            laws[i].times(terms, place, count, arguments[i] + first * step * slopes[i][j], step * slopes[i][j]);
        }
        if (isNormal) {
            normal(place - first, first, waves[j], s, step);
        }
    }

    /** The normal part along a row: from its top outward each factor is the one before times a ratio that falls evenly. */
    private void normal(int zero, int first, int last, double[] s, double step) {
        int j = s.length - 1;
        double[] covariance = group.covariance()[j];
        double slope = 0.0;
        for (int i = 0; i < j; i++) {
            slope += covariance[i] * s[i];
        }
        double curve = covariance[j] * step * step;
        slope *= step;
        int top = curve == 0.0 ? first : (int) Math.max(first, Math.min(last, Math.rint(-slope / curve)));
        s[j] = top * step;
        double most = StrictMath.exp(-0.5 * quadratic(group, s));
        double falls = StrictMath.exp(-curve);
        terms[zero + top] *= most;
        for (int way : new int[] {1, -1}) {
            double factor = most;
            double ratio = StrictMath.exp(-way * slope - curve * (0.5 + way * top));
            for (int k = top + way; k >= first && k <= last; k += way) {
                factor *= ratio;
                ratio *= falls;
                terms[zero + k] *= factor;
            }
        }
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
        double[][] most = new double[waves.length][];
        for (int j = 0; j < most.length; j++) {
            int from = j == 0 ? 0 : -waves[j];
            most[j] = new double[waves[j] - from + 1];
            for (int k = from; k <= waves[j]; k++) {
                // Terms of a positive and of a negative first wave are one.
                most[j][k - from] = (j == 0 && k > 0 ? 2.0 : 1.0) * (k == 0 ? 1.0 : 1.0 / (Math.PI * Math.abs(k)));
            }
        }
        double[] shells = new double[waves.length];
        shells(0, 0, 1.0, most, shells);
        return shells;
    }

    private double shells(int j, int place, double outer, double[][] most, double[] shells) {
        double[] of = most[j];
        boolean innermost = j == waves.length - 1;
        double sum = 0.0;
        double first = 0.0;
        double last = 0.0;
        for (int k = 0, at = place; k < of.length; k++, at += size[j]) {
            last = innermost ? Math.abs(terms[at]) * outer * of[k] : shells(j + 1, at, outer * of[k], most, shells);
            first = k == 0 ? last : first;
            sum += last;
        }
        shells[j] += j == 0 ? last : first + last;
        return sum;
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
            between(low, high, half[j], waves[j], re[j], im[j]);
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

    /** Waves integrated between limits: sines and cosines of even steps, each turned from the one before. */
    private static void between(double low, double high, double half, int waves, double[] re, double[] im) {
        double step = Math.PI / half;
        double[] top = {StrictMath.cos(step * high), StrictMath.sin(step * high)};
        double[] bottom = {StrictMath.cos(step * low), StrictMath.sin(step * low)};
        double[] upper = top.clone();
        double[] lower = bottom.clone();
        re[waves] = (high - low) / (2.0 * half);
        for (int k = 1; k <= waves; k++) {
            double over = 1.0 / (2.0 * Math.PI * k);
            re[waves + k] = over * (upper[1] - lower[1]);
            re[waves - k] = re[waves + k];
            im[waves + k] = over * (upper[0] - lower[0]);
            im[waves - k] = -im[waves + k];
            turn(upper, top);
            turn(lower, bottom);
        }
    }

    private static void turn(double[] place, double[] by) {
        double cos = place[0] * by[0] - place[1] * by[1];
        place[1] = place[0] * by[1] + place[1] * by[0];
        place[0] = cos;
    }

    private int add(int j, int place, double[][] re, double[][] im, double a, double b, double[] sum) {
        int at = place;
        if (j == waves.length) {
            sum[0] += a * terms[at];
            sum[1] += b * terms[at];
            return at + 1;
        }
        double[] c = re[j];
        double[] s = im[j];
        if (j < waves.length - 1) {
            for (int k = 0; k < c.length; k++) {
                at = add(j + 1, at, re, im, a * c[k] - b * s[k], a * s[k] + b * c[k], sum);
            }
            return at;
        }
        double real = 0.0;
        double imaginary = 0.0;
        for (int k = 0; k < c.length; k++, at++) {
            real += c[k] * terms[at];
            imaginary += s[k] * terms[at];
        }
        sum[0] += a * real - b * imaginary;
        sum[1] += a * imaginary + b * real;
        return at;
    }
}
