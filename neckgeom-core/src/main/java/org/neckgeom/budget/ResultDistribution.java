package org.neckgeom.budget;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The exact distribution of a budget's result, computed and not simulated. Immutable, safe to share between threads.
 *
 * <p>Chances are right to {@link #accuracy}, absolute and not relative: 1e-12; 1e-10 where one arcsine part, or nothing but
 * two, stands out; less where several stand out with little to smooth them, as more digits would take seconds.
 *
 * <p>A normal part is taken as normal, however few degrees of freedom its deviation has. Student's law has no place here:
 * its tails reach so far that no bound of this method holds. Its factor for the effective degrees of freedom (Welch and
 * Satterthwaite, JCGM 100:2008, G.4) is in {@link Budget#rootSumSquare}, its draws are in {@link Propagation}.
 *
 * @param <Q> the kind of the result
 */
public final class ResultDistribution<Q extends Quantity<Q>> extends ValueAnswer {

    private static final Form<ResultDistribution<?>> FORM = Form.<ResultDistribution<?>>of("distribution")
            .fact("title", Kind.NAME, "what adds up", law -> law.title)
            .fact("mean", Kind.AMOUNT, "of the result", ResultDistribution::mean)
            .fact("standardDeviation", Kind.AMOUNT, "of the result", ResultDistribution::standardDeviation)
            .fact(
                    "intervals",
                    Kind.table(Coverage.FORM),
                    "as probable below as above",
                    law -> Coverage.all(law::interval, 90, 95, 99, 99.73))
            .factIfAny("ends", Kind.INTERVAL, "that are never passed", ResultDistribution::ends)
            .finds("distribution", "{title}: exact distribution")
            .line("mean", "mean", "{mean:own fine beside standardDeviation}")
            .line("standardDeviation", "standard deviation", "{standardDeviation:own fine digits 2}")
            .each("intervals", "{coverage:percent ..2} within", "{interval:own fine}")
            .line("ends", "never outside", "{ends:own fine}")
            .fitted();

    private static final int SHORTEST_GRID = 64;

    private final String title;
    private final ExactLaw law;
    private final double mean;
    private final ShopUnit<Q> unit;

    ResultDistribution(String title, ExactLaw law, double mean, ShopUnit<Q> unit) {
        super(FORM, LengthStyle.ofUnit(unit));
        this.title = title;
        this.law = law;
        this.mean = mean;
        this.unit = unit;
    }

    /** {@return how far a chance may be off at most; more than 0} */
    public double accuracy() {
        return law.accuracy();
    }

    /** {@return the mean} */
    public Amount<Q> mean() {
        return Amount.ofLibrary(mean, unit);
    }

    /** {@return the standard deviation; 0 or more} */
    public Amount<Q> standardDeviation() {
        return Amount.ofLibrary(law.sd(), unit);
    }

    /**
     * {@return the probability density at a value, per library unit of its kind (per mm for a length); 0 or more;
     * infinite or 0 where samples alone put weight on single values}
     *
     * @param value any value
     */
    public double densityPerLibraryUnit(Quantity<Q> value) {
        return law.density(libraryValue(value));
    }

    /**
     * {@return the chance of a result up to a value; in [0, 1]}
     *
     * @param value any value
     */
    public double probabilityUpTo(Quantity<Q> value) {
        return law.lower(libraryValue(value));
    }

    /**
     * {@return the chance of a result above a value; in [0, 1]}
     *
     * @param value any value
     */
    public double probabilityAbove(Quantity<Q> value) {
        return law.upper(libraryValue(value));
    }

    /**
     * {@return the chance of keeping the limits, both ends included; in [0, 1]}
     *
     * @param limits what is allowed
     */
    public double chance(Limits<Q> limits) {
        return law.between(
                Objects.requireNonNull(limits, "limits").libraryLower() - mean, limits.libraryUpper() - mean);
    }

    /**
     * {@return the value that is not exceeded with a probability}
     *
     * @param probability more than 0 and less than 100 percent
     */
    public Amount<Q> quantile(Quantity<Dimensionless> probability) {
        return Amount.ofLibrary(mean + law.quantile(LibraryUnits.probability(probability, "probability")), unit);
    }

    /**
     * {@return the probabilistically symmetric coverage interval: as much chance below it as above}
     *
     * @param coverage more than 0 and less than 100 percent
     */
    public Interval<Q> interval(Quantity<Dimensionless> coverage) {
        double p = LibraryUnits.probability(coverage, "coverage");
        double tail = 0.5 * (1.0 - p);
        return Interval.ofLibrary(mean + law.quantile(tail), mean + law.quantile(1.0 - tail), unit);
    }

    /**
     * {@return the shortest interval with the given coverage; the interval; of equally short ones the lowest} For a law
     * with one hump and mirror symmetry it is the symmetric one; for a lopsided or hollow one it is shorter.
     *
     * @param coverage more than 0 and less than 100 percent
     */
    public Interval<Q> shortestInterval(Quantity<Dimensionless> coverage) {
        double p = LibraryUnits.probability(coverage, "coverage");
        double most = 1.0 - p;
        double best = 0.5 * most;
        double shortest = length(best, p);
        for (int i = 0; i <= SHORTEST_GRID; i++) {
            double below = most * i / SHORTEST_GRID;
            double length = length(below, p);
            // A gain must be more than rounding, so that a symmetric law gives its symmetric interval.
            if (length < shortest * (1.0 - 1e-9)) {
                shortest = length;
                best = below;
            }
        }
        if (best != 0.5 * most) {
            best = refined(best, most, p);
        }
        return Interval.ofLibrary(mean + end(best), mean + end(best + p), unit);
    }

    private double refined(double about, double most, double p) {
        double low = Math.max(0.0, about - most / SHORTEST_GRID);
        double high = Math.min(most, about + most / SHORTEST_GRID);
        for (int i = 0; i < 60; i++) {
            double third = (high - low) / 3.0;
            if (length(low + third, p) <= length(high - third, p)) {
                high -= third;
            } else {
                low += third;
            }
        }
        double middle = 0.5 * (low + high);
        return length(middle, p) < length(about, p) ? middle : about;
    }

    private double length(double below, double p) {
        return end(below + p) - end(below);
    }

    private double end(double p) {
        if (p <= 0.0) {
            return law.lowest();
        }
        return p >= 1.0 - 1e-15 ? law.highest() : law.quantile(p);
    }

    private double libraryValue(Quantity<Q> value) {
        return Amount.from(value, "value").libraryValue() - mean;
    }

    private Optional<Interval<Q>> ends() {
        return law.highest() < Double.POSITIVE_INFINITY
                ? Optional.of(Interval.ofLibrary(mean + law.lowest(), mean + law.highest(), unit))
                : Optional.empty();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, law, mean, unit.kind()};
    }
}
