package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import org.neckgeom.measure.ErrorDistribution.Law;
import org.neckgeom.measure.Limits;

/**
 * Searches how tight each component must be for the limits to be kept often enough at the least cost, the sum of {@code k_i /
 * t_i}.
 *
 * <p>In {@code v_i = ln t_i}, where the cost is least, {@code k_i / t_i} is in one ratio to the slope {@code w_i} of the
 * probability outside. Each step moves v_i by a third of the logarithm of its ratio, and scales all to the probability again:
 * down the cost along the surface of that probability, as the ratios and their logarithms vary together. Among normal errors,
 * where w_i grows with the square of t_i, one step leads to Lagrange's rule. A spread e of the ratios leaves an excess of the
 * cost of about {@code e^2/6}.
 */
final class LeastEffort {

    /** Spread of the ratios at which a search ends: an excess of 2e-6. */
    private static final double EVEN = 0.003;

    private static final int MOST_STEPS = 60;
    private static final double LONGEST_STEP = 0.7;

    /** Of v, for the slope of a probability that is right to 1e-12. */
    private static final double DIFFERENCE = 1e-3;

    private final Sum<?> sum;
    private final Limits<?> limits;
    private final double allowed;
    private final double[] efforts;
    private final int[] places;

    <Q extends Quantity<Q>> LeastEffort(Sum<Q> sum, Limits<Q> limits, double allowed, double[] efforts) {
        this.sum = sum;
        this.limits = limits;
        this.allowed = allowed;
        this.efforts = efforts;
        List<Integer> moved = new ArrayList<>();
        for (int i = 0; i < efforts.length; i++) {
            if (sum.components().get(i).contribution() > 0.0) {
                moved.add(i);
            }
        }
        this.places = moved.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Factors of the spreads, from Lagrange's and, unless that is exact, from two further starts. */
    double[] from(double[] lagrange, double[] even) {
        double[] best = scaled(lagrange);
        if (sum.correlations().isEmpty()
                && sum.components().stream().allMatch(one -> one.contribution() == 0.0 || isNormal(one))) {
            return best;
        }
        best = searched(best);
        for (double[] start : List.of(even, scaled(atTheLargest()))) {
            double[] other = searched(start);
            best = cost(other) < cost(best) ? other : best;
        }
        return best;
    }

    private static boolean isNormal(UncertaintyComponent one) {
        return one.spread().law() == Law.NORMAL;
    }

    /** As wide as now for the largest component, a fifth of that for the others. */
    private double[] atTheLargest() {
        double[] start = new double[efforts.length];
        int largest = places[0];
        for (int i : places) {
            start[i] = 0.2;
            largest = sum.components().get(i).contribution()
                            > sum.components().get(largest).contribution()
                    ? i
                    : largest;
        }
        start[largest] = 1.0;
        return start;
    }

    private double[] searched(double[] start) {
        double[] now = start;
        double length = 1.0;
        for (int i = 0; i < MOST_STEPS && length > 1e-3; i++) {
            double[] step = step(now);
            if (spread(step) <= EVEN / 3.0) {
                return now;
            }
            double[] next = moved(now, step, length);
            if (cost(next) < cost(now)) {
                now = next;
                length = Math.min(1.0, 2.0 * length);
            } else {
                length *= 0.5;
            }
        }
        return now;
    }

    /** A third of the logarithm of each ratio, less their mean; up where wider does no harm. */
    private double[] step(double[] factors) {
        double[] step = new double[places.length];
        double mean = 0.0;
        int counted = 0;
        for (int n = 0; n < step.length; n++) {
            double slope = slope(factors, places[n]);
            step[n] = slope > 0.0 ? StrictMath.log(cost(factors, places[n]) / slope) / 3.0 : Double.POSITIVE_INFINITY;
            if (slope > 0.0) {
                mean += step[n];
                counted++;
            }
        }
        for (int n = 0; n < step.length; n++) {
            double off = step[n] - mean / Math.max(1, counted);
            step[n] = Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, off));
        }
        return step;
    }

    private static double spread(double[] step) {
        return Arrays.stream(step).max().orElse(0.0) - Arrays.stream(step).min().orElse(0.0);
    }

    private double slope(double[] factors, int place) {
        double[] changed = factors.clone();
        changed[place] = factors[place] * StrictMath.exp(DIFFERENCE);
        double wider = outside(changed);
        changed[place] = factors[place] * StrictMath.exp(-DIFFERENCE);
        return (wider - outside(changed)) / (2.0 * DIFFERENCE);
    }

    private double[] moved(double[] factors, double[] step, double length) {
        double[] moved = factors.clone();
        for (int n = 0; n < step.length; n++) {
            moved[places[n]] *= StrictMath.exp(length * step[n]);
        }
        return scaled(moved);
    }

    /** The same factors times one, so that the limits are kept just often enough. */
    private double[] scaled(double[] factors) {
        return times(factors, Scaling.most(f -> outside(times(factors, f)), allowed));
    }

    private double outside(double[] factors) {
        return outside(sum, factors);
    }

    @SuppressWarnings("unchecked") // the limits are of the sum's own kind
    private <Q extends Quantity<Q>> double outside(Sum<Q> of, double[] factors) {
        return of.outside((Limits<Q>) limits, factors);
    }

    private double cost(double[] factors, int place) {
        return efforts[place]
                / (factors[place]
                        * Math.sqrt(sum.components().get(place).spread().libraryVariance()));
    }

    private double cost(double[] factors) {
        return cost(sum.components(), factors, efforts);
    }

    static double cost(List<UncertaintyComponent> all, double[] factors, double[] efforts) {
        double sum = 0.0;
        for (int i = 0; i < factors.length; i++) {
            if (all.get(i).contribution() > 0.0) {
                sum += efforts[i] / (factors[i] * Math.sqrt(all.get(i).spread().libraryVariance()));
            }
        }
        return sum;
    }

    static double[] times(double[] factors, double f) {
        double[] scaled = factors.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= f;
        }
        return scaled;
    }
}
