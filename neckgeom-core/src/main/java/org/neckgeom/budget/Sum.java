package org.neckgeom.budget;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.ShopUnit;

/** Contributors that add up to a result, each as wide as it is or so many times. */
record Sum<Q extends Quantity<Q>>(String title, ShopUnit<Q> unit, List<UncertaintyComponent> contributors) {

    /** The parts of the sum, component i taken factor i times as wide, or as it is. */
    Parts parts(double @Nullable [] factors) {
        Parts.Builder parts = new Parts.Builder();
        int i = 0;
        for (UncertaintyComponent one : contributors) {
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
