package org.neckgeom.measure;

import java.util.Objects;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;

/**
 * The chance that limits are kept, with as many nines as it has earned, such as {@code 99.2 %} or {@code better than 99.9 %}.
 * Immutable.
 *
 * <p>It is a predictive chance: an average over what the spreads behind it may be. Where they are guesses, it also has the
 * chance at the pessimistic end, all guesses too small by as much as happens in one case of twenty. What prints:
 *
 * <ul>
 *   <li>one decimal, never 100.0 % or 0.0 %;
 *   <li>{@code better than 99.9 %} where even the pessimistic chance is; one more nine for each more that it keeps, beyond
 *       99.99 % only where nearly all of the variance is known with 30 degrees of freedom;
 *   <li>both, {@code 99.9 %, from 99.8 % as your guesses go}, where they differ by a factor of 2 outside the limits.
 * </ul>
 *
 * <p>Source: the predictive distribution of JCGM 101:2008, 6.4.9, for a scale known by few readings; the rule for printing is
 * this library's own.
 */
public final class Chance {

    private static final double ONE_IN_A_THOUSAND = 1e-3;
    private static final double APART = 2.0;

    private final double outside;
    private final double error;
    private final double pessimistic;
    private final boolean wellKnown;

    private Chance(double outside, double error, double pessimistic, boolean wellKnown) {
        this.outside = ratio("chance outside", outside);
        this.error = ratio("error of a chance", error);
        this.pessimistic = ratio("pessimistic chance outside", pessimistic);
        this.wellKnown = wellKnown;
    }

    private static double ratio(String name, double value) {
        if (!(value >= 0.0 && value <= 1.0)) {
            throw Refusal.of(name, "range", "be in [0, 1]", Numbers.plain(value));
        }
        return value + 0.0;
    }

    /**
     * {@return a chance by its complement, which keeps the digits of a small one}
     *
     * @param outside chance of breaking the limits, in [0, 1]
     * @param error largest numerical error of it, in [0, 1]
     * @param pessimistic the same with all guesses too small by as much as happens in one case of twenty, in [0, 1]
     * @param wellKnown whether causes of 90 % of the variance are known with 30 degrees of freedom each
     * @throws IllegalArgumentException if one of them lies outside [0, 1]
     */
    public static Chance ofOutside(double outside, double error, double pessimistic, boolean wellKnown) {
        return new Chance(outside, error, pessimistic, wellKnown);
    }

    /** {@return the chance of keeping the limits; in [0, 1]} */
    public double probability() {
        return 1.0 - outside;
    }

    /** {@return the chance of breaking the limits, with its own digits where it is small; in [0, 1]} */
    public double outside() {
        return outside;
    }

    /** {@return the largest numerical error of the chance} */
    public double error() {
        return error;
    }

    /** {@return the chance of breaking the limits at the pessimistic end of the guesses; in [0, 1]} */
    public double pessimisticOutside() {
        return pessimistic;
    }

    /** {@return whether causes of 90 % of the variance are known with 30 degrees of freedom each} */
    public boolean isWellKnown() {
        return wellKnown;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Chance that
                && Double.compare(outside, that.outside) == 0
                && Double.compare(error, that.error) == 0
                && Double.compare(pessimistic, that.pessimistic) == 0
                && wellKnown == that.wellKnown;
    }

    @Override
    public int hashCode() {
        return Objects.hash(outside, error, pessimistic, wellKnown);
    }

    /** Returns such as {@code 99.2 %}, {@code better than 99.9 %} or {@code 99.9 %, from 99.8 % as your guesses go}. */
    @Override
    public String toString() {
        double likely = Math.min(1.0, outside + error);
        double worst = Math.max(likely, pessimistic);
        if (worst < ONE_IN_A_THOUSAND) {
            String nines = worst < 1e-5 && wellKnown ? "99.999" : worst < 1e-4 ? "99.99" : "99.9";
            return "better than " + nines + " %";
        }
        boolean far = likely < ONE_IN_A_THOUSAND || worst > APART * likely;
        String text = percent(1.0 - likely);
        String from = percent(1.0 - worst);
        return far && !from.equals(text) ? text + ", from " + from + " as your guesses go" : text;
    }

    /** One decimal; what would read as certain is cut instead of rounded. */
    private static String percent(double kept) {
        String text = Numbers.fixed(100.0 * kept, 1);
        return text.equals("100.0") ? "99.9 %" : text.equals("0.0") ? "below 0.1 %" : text + " %";
    }
}
