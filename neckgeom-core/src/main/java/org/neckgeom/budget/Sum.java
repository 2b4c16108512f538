package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.neckgeom.kernel.RoughSum;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.ShopUnit;

/** Components that add up to a result, each as wide as it is or so many times, some of them correlated. */
record Sum<Q extends Quantity<Q>>(
        String title, ShopUnit<Q> unit, List<UncertaintyComponent> components, List<Correlation> correlations) {

    /** The same sum of independent components. */
    Sum<Q> independent() {
        return correlations.isEmpty()
                ? this
                : new Sum<>(title, unit, new Coefficients(correlations).independent(components, unit), List.of());
    }

    /** The same sum, component i taken factor i times as wide. */
    Sum<Q> scaled(double[] factors) {
        List<UncertaintyComponent> scaled = new ArrayList<>();
        for (int i = 0; i < factors.length; i++) {
            UncertaintyComponent one = components.get(i);
            scaled.add(one.with(one.spread().scaled(factors[i])));
        }
        return new Sum<>(title, unit, scaled, correlations);
    }

    /** The parts of the sum, component i taken factor i times as wide, or as it is. */
    Parts parts(double @Nullable [] factors) {
        if (!correlations.isEmpty()) {
            return (factors == null ? this : scaled(factors)).independent().parts(null);
        }
        Parts.Builder parts = new Parts.Builder();
        int i = 0;
        for (UncertaintyComponent one : components) {
            one.addTo(parts, factors == null ? 1.0 : factors[i++]);
        }
        return parts.build();
    }

    /** Probability of breaking the limits. */
    double outside(Limits<Q> limits, double @Nullable [] factors) {
        Parts parts = parts(factors);
        return ExactLaws.of(parts)
                .outside(
                        Objects.requireNonNull(limits, "limits").libraryLower() - parts.mean,
                        limits.libraryUpper() - parts.mean);
    }

    /** The same sum with the scale of each component as rough as its degrees of freedom leave it. */
    RoughSum rough() {
        RoughSum.Builder sum = RoughSum.builder();
        for (UncertaintyComponent one : components) {
            sum.add(one.spread(), one.sensitivity(), 0.0, false);
        }
        return sum.build();
    }

    /** First order: standard deviation of the logarithm of the sum's standard deviation. */
    double logDeviation() {
        double variance = variance();
        double squares = 0.0;
        for (UncertaintyComponent one : components) {
            double part = one.contribution() > 0.0 ? share(one, variance) * logDeviation(one) : 0.0;
            squares += part * part;
        }
        return Math.sqrt(squares);
    }

    /**
     * How many times as wide each component is where the sum's scale is so many standard deviations of its logarithm off:
     * the likeliest way to come there.
     */
    double[] widened(double deviations) {
        double variance = variance();
        double all = logDeviation();
        return components.stream()
                .mapToDouble(one -> {
                    double own = one.contribution() > 0.0 ? logDeviation(one) : 0.0;
                    return own == 0.0 ? 1.0 : StrictMath.exp(deviations * share(one, variance) * own * own / all);
                })
                .toArray();
    }

    /** The largest components that together make up a share of the variance. */
    List<UncertaintyComponent> mostOfTheVariance(double share) {
        double variance = variance();
        double sum = 0.0;
        List<UncertaintyComponent> most = new ArrayList<>();
        for (UncertaintyComponent one : components.stream()
                .sorted(Comparator.comparingDouble(UncertaintyComponent::contribution)
                        .reversed())
                .toList()) {
            if (sum < share * variance) {
                most.add(one);
                sum += one.contribution() * one.contribution();
            }
        }
        return most;
    }

    /** Variance of the sum. */
    double variance() {
        Coefficients coefficients = new Coefficients(correlations);
        double sum = 0.0;
        for (UncertaintyComponent one : components) {
            sum += coefficients.part(one, components);
        }
        return Math.max(0.0, sum);
    }

    private static double share(UncertaintyComponent one, double variance) {
        return one.contribution() * one.contribution() / variance;
    }

    private static double logDeviation(UncertaintyComponent one) {
        return RoughSum.logDeviation(one.degreesOfFreedom());
    }

    /** How much further out each limit would have to lie for these factors to be kept often enough. */
    double overspent(double[] factors, Limits<Q> limits, double allowedOutside) {
        Parts parts = parts(factors);
        ExactLaw law = ExactLaws.of(parts);
        double low = limits.libraryLower() - parts.mean;
        double high = limits.libraryUpper() - parts.mean;
        double bad = 0.0;
        double good = 1e-6 + law.sd();
        while (law.outside(low - good, high + good) > allowedOutside && good < 1e300) {
            good *= 2.0;
        }
        while (good - bad > 1e-9 * good) {
            double middle = 0.5 * (good + bad);
            if (law.outside(low - middle, high + middle) > allowedOutside) {
                bad = middle;
            } else {
                good = middle;
            }
        }
        return good;
    }
}
