package org.neckgeom.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.numeric.NormalLaw;

/**
 * A sum of independent errors whose scales are known only roughly, on plain doubles: how probably it leaves its limits, the
 * scales averaged over what they may be. Immutable, but for a table that is kept for the next question.
 *
 * <p>An error of its own log deviation tau has its scale times {@code exp(tau x)}, x standard normal. A normal error of few
 * degrees of freedom has Student's law; another error of few degrees the log deviation {@code sqrt(trigamma(n/2))/2}
 * besides. Guessed errors share one common factor of their scales.
 *
 * <p>The errors are independent, so each is averaged over its own scale by itself, in its characteristic function; one
 * inversion by the midpoint rule follows (R. B. Davies, Biometrika 60 (1973) 415; from memory). The midpoint rule of step h
 * mistakes only what passes {@code 2 pi/h}; Student's tails, which do, are put back one by one.
 *
 * <p>Absolute accuracy {@link #ACCURACY} where an error is normal, or rectangular with a rough scale, or where there are four;
 * of two or three others what {@link #accuracy} gives; of one error 1e-12. Where every scale is known an exact law has more
 * digits.
 */
public final class RoughSum {

    /** Largest error of a probability where the characteristic function falls soon enough. */
    public static final double ACCURACY = 3e-10;

    /** Standard deviation of the logarithm of a guess's own scale: half the variance of a guess that is uncertain by a quarter. */
    public static final double GUESS = GuessedWaves.GUESS;

    /** The same with the half that all guesses share. */
    public static final double WHOLE_GUESS = GuessedWaves.WHOLE_GUESS;

    private static final double LONE_ACCURACY = 1e-12;

    /** Standard deviations of the common factor's logarithm that are summed over. */
    private static final double COMMON_REACH = 7.0;

    /**
     * The table is made for factors from here to {@link #MOST_COMMON}; those beyond are so rare that what is left out of
     * their laws does not count.
     */
    private static final double LEAST_COMMON = -4.0;

    private static final double MOST_COMMON = 5.0;
    private static final double LEAST_STEP = 0.125;

    private final double shift;
    private final boolean isFixed;
    private final RoughParts scaled;
    private final RoughParts rest;
    private final double least;
    private final double most;
    private volatile @Nullable RoughTable table;

    private RoughSum(double shift, List<RoughPart> known, List<RoughPart> guessed, double least, double most) {
        this.shift = shift;
        this.least = least;
        this.most = most;
        this.isFixed = guessed.isEmpty();
        this.scaled = RoughParts.of(isFixed ? known : guessed);
        this.rest = RoughParts.of(isFixed ? guessed : known);
    }

    /** {@return a sum of no errors yet} */
    public static Builder builder() {
        return new Builder();
    }

    /** Gathers the errors of a sum. */
    public static final class Builder {

        private final List<RoughPart> known = new ArrayList<>();
        private final List<RoughPart> guessed = new ArrayList<>();
        private double shift;
        private double knownVariance;
        private double guessedVariance;
        private double least = 1.0;
        private double most = 1.0;

        private Builder() {}

        /**
         * {@return this builder}
         *
         * @param by a known shift of the sum
         */
        public Builder shift(double by) {
            shift += by;
            return this;
        }

        /**
         * {@return this builder}
         *
         * @param sd standard deviation of a normal error of known scale
         */
        public Builder normal(double sd) {
            knownVariance += sd * sd;
            return this;
        }

        /**
         * {@return this builder}
         *
         * @param spread an error; its mean shifts the sum, its degrees of freedom make its scale rough
         * @param coefficient how often it counts, either sign
         * @param ownLogDeviation standard deviation of the logarithm of its own scale, 0 or more
         * @param isGuess whether its scale has the common factor
         */
        public Builder add(ErrorDistribution<?> spread, double coefficient, double ownLogDeviation, boolean isGuess) {
            shift += coefficient * spread.libraryMean();
            RoughPart part = RoughPart.of(spread, coefficient, ownLogDeviation);
            if (part.isNothing()) {
                return this;
            }
            if (!part.isRough() && spread.law() == ErrorDistribution.Law.NORMAL) {
                knownVariance += isGuess ? 0.0 : part.variance();
                guessedVariance += isGuess ? part.variance() : 0.0;
            } else {
                (isGuess ? guessed : known).add(part);
            }
            return this;
        }

        /**
         * {@return this builder} One table then serves every factor from the least to the most, instead of one for each.
         *
         * @param leastFactor least common factor of the guessed scales that will be asked for, more than 0
         * @param mostFactor the most
         */
        public Builder factors(double leastFactor, double mostFactor) {
            least = leastFactor;
            most = mostFactor;
            return this;
        }

        /** {@return the sum of the errors given so far} */
        public RoughSum build() {
            return new RoughSum(
                    shift, withNormal(known, knownVariance), withNormal(guessed, guessedVariance), least, most);
        }

        private static List<RoughPart> withNormal(List<RoughPart> parts, double variance) {
            Stream<RoughPart> normal =
                    variance > 0.0 ? Stream.of(RoughPart.normal(Math.sqrt(variance))) : Stream.empty();
            return Stream.concat(normal, parts.stream()).toList();
        }
    }

    /** {@return the standard deviation of the logarithm of a scale that is known by so many degrees of freedom} */
    public static double logDeviation(double degreesOfFreedom) {
        return Double.isInfinite(degreesOfFreedom) ? 0.0 : LogScales.deviation(degreesOfFreedom);
    }

    /** {@return the probability of a sum under low or above high, the common factor 1} */
    public double outside(double low, double high) {
        return outsideAt(low, high, 1.0);
    }

    /** {@return the same at a common factor of the guessed scales; more than 0} */
    public double outsideAt(double low, double high, double factor) {
        return at(table(Math.min(least, factor), Math.max(most, factor)), low, high, factor);
    }

    /**
     * {@return the same averaged over the common factor's logarithm}
     *
     * @param commonLogDeviation its standard deviation, 0 or more
     */
    public double outside(double low, double high, double commonLogDeviation) {
        if (commonLogDeviation == 0.0 || isFixed) {
            return outside(low, high);
        }
        RoughTable all = table(
                StrictMath.exp(LEAST_COMMON * commonLogDeviation), StrictMath.exp(MOST_COMMON * commonLogDeviation));
        double step = 1.0;
        double sum = weighted(all, low, high, commonLogDeviation, 0.0, step);
        double before;
        do {
            before = sum;
            sum = 0.5 * (sum + weighted(all, low, high, commonLogDeviation, 0.5 * step, step));
            step *= 0.5;
        } while (Math.abs(sum - before) > ACCURACY && step > LEAST_STEP);
        return sum;
    }

    /** The trapezium rule over the common factor's logarithm, at {@code first + i step}. */
    private double weighted(
            RoughTable from, double low, double high, double commonLogDeviation, double first, double step) {
        int reach = (int) (COMMON_REACH / step);
        double sum = 0.0;
        for (int i = -reach; i <= reach; i++) {
            double z = first + i * step;
            sum += step * NormalLaw.density(z) * at(from, low, high, StrictMath.exp(z * commonLogDeviation));
        }
        return sum;
    }

    /** {@return how far off a probability may be at most, the common factor 1} */
    public double accuracy() {
        return rest.isNothing() && scaled.isLone()
                ? LONE_ACCURACY
                : Math.max(ACCURACY, table(1.0, 1.0).law(1.0).left());
    }

    private double at(RoughTable from, double low, double high, double factor) {
        double f = isFixed ? 1.0 : factor;
        if (rest.isNothing() && scaled.isLone()) {
            return scaled.lone((low - shift) / f, (high - shift) / f);
        }
        return from.law(f).outside((low - shift) / f, (high - shift) / f);
    }

    /** The guessed errors' characteristic function, kept for the next question about a factor in its range. */
    private RoughTable table(double least, double most) {
        RoughTable now = table;
        if (now == null || !now.serves(least, most)) {
            now = RoughTable.of(scaled, rest, least, most);
            table = now;
        }
        return now;
    }
}
