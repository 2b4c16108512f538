package org.neckgeom.measure;

import java.util.Objects;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;

/**
 * The chance (probability) that something holds, such as limits, with what that figure rests on. It prints no more nines
 * than it has earned: {@code 99.2 %}, {@code better than 99.9 %}, {@code 99.9 %, from 99.8 % as your guesses go}, {@code
 * below 0.1 %}.
 *
 * <p>It is predictive: averaged over what the spreads behind it may be. It rests on four things: the probability
 * <em>outside</em>, that it does not hold; how far off that is at most, as numbers go; the probability outside if the
 * guesses are too small together, at the 95 % end of their common factor; and whether the spreads are well known, by 30
 * degrees of freedom each, as far as they make 90 % of the variance.
 *
 * <p>The better of two ends is printed to {@code 99.9 %}, to {@code 99.99 %} where both ends are under 1 in 10 000 outside,
 * and to {@code 99.999 %} where they are under 1 in 100 000 and the spreads are well known. Never {@code 100.0 %} nor
 * {@code 0.0 %}. Immutable.
 *
 * <pre>{@code
 * println(Chance.outside(3.86e-4).atWorst(1.87e-3));
 * println(Chance.outside(2e-5).atWorst(6e-5));
 * println(Chance.outside(0.034));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 99.9 %, from 99.8 % as your guesses go
 * better than 99.99 %
 * 96.6 %
 * }</pre>
 *
 * @see Limits
 */
public final class Chance {

    /** What one decimal of percent shows at least. */
    private static final double LEAST = 1e-3;

    private final double outside;
    private final double accuracy;
    private final double outsideAtWorst;
    private final boolean isWellKnown;

    private Chance(double outside, double accuracy, double outsideAtWorst, boolean isWellKnown) {
        this.outside = share(outside, "probability outside");
        this.accuracy = share(accuracy, "accuracy of a probability");
        this.outsideAtWorst = share(outsideAtWorst, "probability outside at worst");
        this.isWellKnown = isWellKnown;
    }

    private static double share(double value, String name) {
        if (!(value >= 0 && value <= 1)) {
            throw Refusal.of(name, "range", "be in [0, 1]", Numbers.plain(value));
        }
        return value + 0.0;
    }

    /**
     * {@return the chance that something holds, as exact as its number, with no guess behind it and spreads that are not
     * well known}
     *
     * @param probability that it does not hold, in [0, 1]
     */
    public static Chance outside(double probability) {
        return new Chance(probability, 0, probability, false);
    }

    /**
     * {@return the same chance, of which the number is this far off at most}
     *
     * @param absolute largest error of the probability, in [0, 1]
     */
    public Chance accurateTo(double absolute) {
        return new Chance(outside, absolute, outsideAtWorst, isWellKnown);
    }

    /**
     * {@return the same chance, resting on guesses}
     *
     * @param probability that it does not hold if all guesses are too small: their common factor at 1.645 standard deviations
     *     of its logarithm; in [0, 1]
     */
    public Chance atWorst(double probability) {
        return new Chance(outside, accuracy, probability, isWellKnown);
    }

    /** {@return the same chance, of which 90 % of the variance is known by 30 degrees of freedom for each spread} */
    public Chance wellKnown() {
        return new Chance(outside, accuracy, outsideAtWorst, true);
    }

    /** {@return the probability that it holds; in [0, 1]} */
    public double probability() {
        return 1 - outside;
    }

    /** {@return the probability that it does not hold, with its own digits where it is small; in [0, 1]} */
    public double outside() {
        return outside;
    }

    /** {@return how far off the probability is at most, as a number; in [0, 1]} */
    public double accuracy() {
        return accuracy;
    }

    /** {@return the probability that it does not hold if all guesses are too small; that of the chance without guesses} */
    public double outsideAtWorst() {
        return outsideAtWorst;
    }

    /** {@return whether 90 % of the variance is known by 30 degrees of freedom for each spread} */
    public boolean isWellKnown() {
        return isWellKnown;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Chance other
                && Double.compare(outside, other.outside) == 0
                && Double.compare(accuracy, other.accuracy) == 0
                && Double.compare(outsideAtWorst, other.outsideAtWorst) == 0
                && isWellKnown == other.isWellKnown;
    }

    @Override
    public int hashCode() {
        return Objects.hash(outside, accuracy, outsideAtWorst, isWellKnown);
    }

    /** Returns such as {@code 99.2 %} or {@code better than 99.9 %}. */
    @Override
    public String toString() {
        double likely = Math.min(1, outside + accuracy);
        double worst = Math.max(likely, outsideAtWorst);
        if (worst < LEAST) {
            return "better than " + nines(worst);
        }
        String holds = likely < LEAST ? "99.9 %" : Numbers.percent(1 - likely);
        if (likely >= LEAST && worst <= 2 * likely) {
            return holds;
        }
        String least = atLeast(worst);
        return least.equals(holds) ? holds : holds + ", from " + least + " as your guesses go";
    }

    private String nines(double worst) {
        if (worst < 1e-5 && isWellKnown) {
            return "99.999 %";
        }
        return worst < 1e-4 ? "99.99 %" : "99.9 %";
    }

    /** Percent with one decimal, rounded down. */
    private static String atLeast(double worst) {
        double tenths = Math.floor(1000 * (1 - worst) + 1e-9);
        return Numbers.percent(tenths / 1000);
    }
}
