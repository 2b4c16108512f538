package org.neckgeom.measure;

import java.util.Objects;
import javax.measure.Quantity;
import org.neckgeom.fault.Refusal;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.numeric.StudentLaw;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * A verdict ({@index conformity}, in tolerance): whether an estimate keeps its tolerance limits, with the conformance
 * probability.
 *
 * <p>The conformance probability is {@code p = F((U - e)/u) - F((L - e)/u)}, in [0, 1]. F is the normal law, or
 * Student's law when the uncertainty has few degrees of freedom (JCGM 106:2012, 7).
 *
 * <p>The call keeps a guard band of k u on the safe side of each limit; k = 2 by default. It is WITHIN when the
 * estimate keeps the limits drawn in by k u, OUTSIDE when it breaks the limits pushed out by k u, and UNDECIDED
 * otherwise (ISO 14253-1:2013, rules for proving conformity and non-conformity; the edition of 2017 has 1.65 u where
 * the limits are far apart: {@code guardedBy(1.65)}; both from memory). With few degrees of freedom the guard band is
 * wider and leaves the same risk: its factor is Student's quantile for the normal law's probability at k.
 *
 * <p>Two other decision rules: {@link #acceptedSimply} uses the value alone; {@link #acceptedUnlessProvenOutside} gives
 * the benefit of the doubt. Errors: a guard factor outside [0, 10] throws {@link org.neckgeom.fault.Refusal} (an {@code
 * IllegalArgumentException}). Immutable.
 *
 * <p>An estimate of 0.06 mm with u 0.014 mm and limits within 0.1 mm: WITHIN, conformance probability 99.8 %.
 *
 * @see Decision
 * @see GlobalRisk
 * @param <Q> the kind of quantity
 */
public final class Verdict<Q extends Quantity<Q>> {

    /** The usual guard factor k of ISO 14253-1: a guard band of twice the standard uncertainty. */
    public static final double USUAL_GUARD_FACTOR = 2;

    /** Past it the normal law leaves less than any instrument can show. */
    private static final double MOST_GUARD_FACTOR = 10;

    private final Estimate<Q> estimate;
    private final Limits<Q> limits;
    private final double guardFactor;

    private Verdict(Estimate<Q> estimate, Limits<Q> limits, double guardFactor) {
        this.estimate = Objects.requireNonNull(estimate, "estimate");
        this.limits = Objects.requireNonNull(limits, "limits");
        this.guardFactor = guardFactor;
    }

    /**
     * {@return the verdict on an estimate, with the usual guard factor of 2}
     *
     * @param <Q> the kind of quantity
     * @param estimate the measured value with its standard uncertainty
     * @param limits the tolerance limits
     */
    public static <Q extends Quantity<Q>> Verdict<Q> of(Estimate<Q> estimate, Limits<Q> limits) {
        return new Verdict<>(estimate, limits, USUAL_GUARD_FACTOR);
    }

    /**
     * {@return the same verdict with another guard band}
     *
     * @param factor k, 0 to 10; 0 makes it the value alone
     */
    public Verdict<Q> guardedBy(double factor) {
        return new Verdict<>(estimate, limits, guardFactor(factor));
    }

    static double guardFactor(double factor) {
        if (!(factor >= 0 && factor <= MOST_GUARD_FACTOR)) {
            throw Refusal.of(
                    "guard factor", "fit", "be 0 to " + Numbers.plain(MOST_GUARD_FACTOR), Numbers.plain(factor));
        }
        return factor + 0.0;
    }

    /** {@return the call; WITHIN, OUTSIDE or UNDECIDED} */
    public Decision call() {
        double guard = libraryGuard();
        double value = estimate.libraryValue();
        if (value - guard >= limits.libraryLower() && value + guard <= limits.libraryUpper()) {
            return Decision.WITHIN;
        }
        boolean below = value + guard < limits.libraryLower();
        boolean above = value - guard > limits.libraryUpper();
        return below || above ? Decision.OUTSIDE : Decision.UNDECIDED;
    }

    /** {@return the conformance probability: that the true value keeps the limits, given the estimate; in [0, 1]} */
    public double probability() {
        double u = estimate.libraryUncertainty();
        double value = estimate.libraryValue();
        if (u == 0) {
            return limits.allowLibrary(value) ? 1 : 0;
        }
        double low = (limits.libraryLower() - value) / u;
        double high = (limits.libraryUpper() - value) / u;
        double nu = estimate.degreesOfFreedom();
        // From the nearer tail, so that a small probability keeps its digits.
        return low > 0
                ? StudentLaw.upperTail(low, nu) - StudentLaw.upperTail(high, nu)
                : StudentLaw.cdf(high, nu) - StudentLaw.cdf(low, nu);
    }

    /**
     * {@return whether the value alone keeps the limits, its uncertainty not counted (simple acceptance); true when it
     * does}
     */
    public boolean acceptedSimply() {
        return limits.allowLibrary(estimate.libraryValue());
    }

    /**
     * {@return whether the estimate is not proven outside (guarded rejection: the benefit of the doubt); true unless
     * the call is OUTSIDE}
     */
    public boolean acceptedUnlessProvenOutside() {
        return call() != Decision.OUTSIDE;
    }

    /**
     * {@return whether any value at all could be called WITHIN with this uncertainty: the guard bands must leave room;
     * false when the limits are narrower than the two guard bands; read better then}
     */
    public boolean isReachable() {
        return limits.libraryUpper() - limits.libraryLower() >= 2 * libraryGuard();
    }

    /** {@return the estimate that was judged} */
    public Estimate<Q> estimate() {
        return estimate;
    }

    /** {@return the limits of the verdict} */
    public Limits<Q> limits() {
        return limits;
    }

    /** {@return the guard band on the safe side of each limit; k u, 0 or more; wider for few degrees of freedom} */
    public Amount<Q> guardBand() {
        return Amount.ofLibrary(libraryGuard(), estimate.unit().forDifferences());
    }

    private double libraryGuard() {
        return factor() * estimate.libraryUncertainty();
    }

    private double factor() {
        double nu = estimate.degreesOfFreedom();
        return guardFactor == 0 || Double.isInfinite(nu)
                ? guardFactor
                : -StudentLaw.quantile(NormalLaw.upperTail(guardFactor), nu);
    }

    /**
     * {@return the same printed in a style of length; equal to this}
     *
     * @param other how lengths are printed
     */
    public Verdict<Q> in(LengthStyle other) {
        return new Verdict<>(estimate.in(other), limits.in(other), guardFactor);
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Verdict<?> other
                && estimate.equals(other.estimate)
                && limits.equals(other.limits)
                && Double.compare(guardFactor, other.guardFactor) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(estimate, limits, guardFactor);
    }

    /** Returns the call and the conformance probability, then the estimate, the limits and the guard band. */
    @Override
    public String toString() {
        Decision call = call();
        Report report = Report.titled(
                        call + ": conformance probability " + Numbers.percent(probability()) + " (" + limits + ")")
                .row("estimate", estimate)
                .row("limit", limits)
                .row("guard", Numbers.trimmed(factor(), 2) + " u on the safe side" + fewDegrees());
        if (!isReachable()) {
            report.note("the limits are narrower than the guard bands: measure better or widen the limits");
        } else if (call == Decision.UNDECIDED) {
            report.note("read again, or use a finer instrument");
        }
        return report.toString();
    }

    private String fewDegrees() {
        double nu = estimate.degreesOfFreedom();
        return Double.isInfinite(nu) || guardFactor == 0
                ? ""
                : ", " + Numbers.trimmed(guardFactor, 2) + " u but for " + Numbers.trimmed(nu, 1)
                        + " degrees of freedom";
    }
}
