package org.neckgeom.measure;

import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * How often a rule for accepting pieces errs over all pieces of a process, before any of them is read, such as
 * {@code 0.07 % accepted though outside, 16.9 % rejected though within}. Immutable.
 *
 * <p>A piece is accepted when its reading keeps the limits drawn in by a guard band of k u. Pieces lie by the normal law about the
 * process's value, readings by the normal law about the piece. The global consumer's risk is the chance that a piece breaks the
 * limits and is accepted, {@code integral outside of f(x) P(accepted | x) dx}; the global producer's risk is the chance that a
 * piece keeps them and is rejected (JCGM 106:2012, 9.5). Exact. The risk of one piece that has been read is
 * {@link Verdict#probability}, taken from 1.
 *
 * @param <Q> the kind of quantity
 */
public final class GlobalRisk<Q extends Quantity<Q>> {

    /** Past so many standard deviations the normal law leaves nothing. */
    private static final double FARTHEST = 9;

    /** Gauss and Legendre's places on one side of the middle of a panel, and their weights. */
    private static final double[] NODES = {
        0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
    };

    private static final double[] WEIGHTS = {
        0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
    };

    private final Estimate<Q> process;
    private final Estimate<Q> reading;
    private final Limits<Q> limits;
    private final double guardFactor;

    private GlobalRisk(Estimate<Q> process, Estimate<Q> reading, Limits<Q> limits, double guardFactor) {
        this.process = process;
        this.reading = reading;
        this.limits = limits;
        this.guardFactor = guardFactor;
    }

    /**
     * {@return the risks of accepting by the reading alone: no guard band}
     *
     * @param <Q> the kind of quantity
     * @param process where pieces lie: their mean, and their standard deviation as its uncertainty
     * @param readingUncertainty u, standard uncertainty of the reading of one piece, 0 or more
     * @param limits what is allowed
     */
    public static <Q extends Quantity<Q>> GlobalRisk<Q> of(
            Estimate<Q> process, Quantity<Q> readingUncertainty, Limits<Q> limits) {
        Objects.requireNonNull(process, "process");
        Objects.requireNonNull(limits, "limits");
        return new GlobalRisk<>(process, Estimate.of(process.value(), readingUncertainty), limits, 0);
    }

    /**
     * {@return the risks of accepting with a guard band}
     *
     * @param factor k, 0 to 10; the band is k u on the safe side of each limit
     */
    public GlobalRisk<Q> guardedBy(double factor) {
        return new GlobalRisk<>(process, reading, limits, Verdict.guardFactor(factor));
    }

    /** {@return the global consumer's risk: the chance that a piece breaks the limits and is accepted; in [0, 1]} */
    public double consumers() {
        double u = reading.libraryUncertainty();
        double high = limits.libraryUpper();
        double low = limits.libraryLower();
        if (u == 0) {
            return 0;
        }
        if (process.libraryUncertainty() == 0) {
            return isWithin() ? 0 : accepted(process.libraryValue(), u);
        }
        return pieces(high, high + FARTHEST * u, x -> accepted(x, u))
                + pieces(low - FARTHEST * u, low, x -> accepted(x, u));
    }

    /** {@return the global producer's risk: the chance that a piece keeps the limits and is rejected; in [0, 1]} */
    public double producers() {
        double u = reading.libraryUncertainty();
        double high = limits.libraryUpper();
        double low = limits.libraryLower();
        if (u == 0) {
            return 0;
        }
        if (process.libraryUncertainty() == 0) {
            return isWithin() ? 1 - accepted(process.libraryValue(), u) : 0;
        }
        if (!(lowest() < highest())) {
            return pieces(low, high, x -> 1);
        }
        return pieces(Math.max(low, highest() - FARTHEST * u), high, x -> NormalLaw.upperTail((highest() - x) / u))
                + pieces(low, Math.min(high, lowest() + FARTHEST * u), x -> NormalLaw.cdf((lowest() - x) / u));
    }

    private boolean isWithin() {
        return limits.allowLibrary(process.libraryValue());
    }

    /** The least reading that is accepted, in the library unit. */
    private double lowest() {
        return limits.libraryLower() + guardFactor * reading.libraryUncertainty();
    }

    private double highest() {
        return limits.libraryUpper() - guardFactor * reading.libraryUncertainty();
    }

    private double accepted(double x, double u) {
        return lowest() < highest() ? NormalLaw.between((lowest() - x) / u, (highest() - x) / u) : 0;
    }

    /** Chance of what happens to a piece between two values, over all pieces. */
    private double pieces(double from, double to, DoubleUnaryOperator happens) {
        double sd = process.libraryUncertainty();
        double mean = process.libraryValue();
        double start = Math.max(from, mean - FARTHEST * sd);
        double end = Math.min(to, mean + FARTHEST * sd);
        if (!(start < end)) {
            return 0;
        }
        int panels = (int) Math.ceil((end - start) / Math.min(sd, reading.libraryUncertainty()));
        double half = (end - start) / (2 * panels);
        double sum = 0;
        for (int panel = 0; panel < panels; panel++) {
            double middle = start + (2 * panel + 1) * half;
            for (int k = 0; k < NODES.length; k++) {
                double right = middle + half * NODES[k];
                double left = middle - half * NODES[k];
                sum += WEIGHTS[k]
                        * (NormalLaw.density((right - mean) / sd) * happens.applyAsDouble(right)
                                + NormalLaw.density((left - mean) / sd) * happens.applyAsDouble(left));
            }
        }
        return Math.min(1, half * sum / sd);
    }

    /**
     * {@return the same printed in a style of length; equal to this}
     *
     * @param other how lengths are printed
     */
    public GlobalRisk<Q> in(LengthStyle other) {
        return new GlobalRisk<>(process.in(other), reading.in(other), limits.in(other), guardFactor);
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof GlobalRisk<?> other
                && process.equals(other.process)
                && reading.equals(other.reading)
                && limits.equals(other.limits)
                && Double.compare(guardFactor, other.guardFactor) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(process, reading, limits, guardFactor);
    }

    /** Returns both risks, then what they rest on. */
    @Override
    public String toString() {
        return Report.titled(Numbers.percent(consumers()) + " accepted though outside, " + Numbers.percent(producers())
                        + " rejected though within")
                .row("pieces", process)
                .row(
                        "reading",
                        "u "
                                + Amount.ofLibrary(
                                        reading.libraryUncertainty(),
                                        reading.unit().forDifferences()))
                .row("allowed", limits)
                .row("guard", Numbers.trimmed(guardFactor, 2) + " u on the safe side")
                .toString();
    }
}
