package org.neckgeom.budget;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.LengthStyle;

/**
 * How often a result keeps its limits, such as {@code 97.3 % within 1 mm}, with the uncertainty of that figure.
 * Immutable.
 *
 * <p>The uncertainty says how far the figure may be off because spreads are known from few readings only, or because it
 * was counted in trials. It is 0 where every spread is taken as known and the distribution is exact.
 *
 * @param <Q> the kind of the result
 */
public final class Yield<Q extends Quantity<Q>> extends ValueAnswer {

    private static final Form<Yield<?>> FORM = Shown.withLimits(Form.<Yield<?>>of("yield"), Yield::limits)
            .fact("title", Kind.NAME, "what adds up", yield -> yield.title)
            .fact("yield", Kind.PROBABILITY, "of keeping the limits", Yield::probability)
            .fact("outside", Kind.PROBABILITY, "of breaking the limits", Yield::probabilityOutside)
            .factIfAny("oneIn", Kind.RATIO, "of how many results one breaks the limits", Yield::oneIn)
            .fact("standardUncertainty", Kind.RATIO, "of the yield, 0 to 1", Yield::standardUncertainty)
            .phrase("fails", "1 in {oneIn:0}")
            .phrase("fails", "{outside}")
            .phrase("source", yield -> yield.counted, "the number of trials")
            .phrase("source", "spreads known by few readings")
            .finds("yield", "{title}: {yield} {kept}")
            .line("outside", "outside", "{fails}")
            .line(
                    "standardUncertainty",
                    "u of the yield",
                    yield -> yield.uncertainty > 0,
                    "{standardUncertainty:percent digits 2} from {source}");

    private static final double STEP = 0.01;

    private final String title;
    private final Limits<Q> limits;
    private final double outside;
    private final double uncertainty;
    private final boolean counted;

    private Yield(String title, Limits<Q> limits, double outside, double uncertainty, boolean counted) {
        super(FORM, LengthStyle.ofUnit(limits.unit()));
        this.title = title;
        this.limits = Objects.requireNonNull(limits, "limits");
        this.outside = outside + 0.0;
        this.uncertainty = uncertainty;
        this.counted = counted;
    }

    /**
     * First order: a deviation known by nu degrees of freedom has the relative uncertainty {@code 1/sqrt(2 nu)} (JCGM
     * 100:2008, E.4.3), and the mean of n samples {@code s/sqrt(n)}; what each does to the yield, in squares.
     */
    static <Q extends Quantity<Q>> Yield<Q> of(Sum<Q> sum, Limits<Q> limits) {
        List<UncertaintyComponent> contributors = sum.contributors();
        double outside = sum.outside(limits, null);
        double variance = 0.0;
        for (int i = 0; i < contributors.size(); i++) {
            UncertaintyComponent one = contributors.get(i);
            double degrees = one.degreesOfFreedom();
            if (degrees == Double.POSITIVE_INFINITY || one.contribution() == 0.0) {
                continue;
            }
            double[] factors = new double[contributors.size()];
            Arrays.fill(factors, 1.0);
            factors[i] = 1.0 + STEP;
            double wider = sum.outside(limits, factors);
            factors[i] = 1.0 - STEP;
            double slope = (wider - sum.outside(limits, factors)) / (2.0 * STEP);
            variance += slope * slope / (2.0 * degrees);
            int samples = one.spread().libraryCentredSamples().length;
            if (samples > 1) {
                Parts parts = sum.parts(null);
                ExactLaw law = ExactLaws.of(parts);
                double shift = one.contribution() / Math.sqrt(samples);
                double low = limits.libraryLower() - parts.mean;
                double high = limits.libraryUpper() - parts.mean;
                double moved = 0.5 * (law.outside(low - shift, high - shift) - law.outside(low + shift, high + shift));
                variance += moved * moved;
            }
        }
        return new Yield<>(sum.title(), limits, outside, Math.sqrt(variance), false);
    }

    /** As counted in trials, with the deviation of a count. */
    static <Q extends Quantity<Q>> Yield<Q> counted(String title, Limits<Q> limits, long inside, long trials) {
        // Laplace's rule keeps the uncertainty above 0 when none, or all, were inside.
        double smooth = (inside + 1.0) / (trials + 2.0);
        return new Yield<>(
                title, limits, (double) (trials - inside) / trials, Math.sqrt(smooth * (1.0 - smooth) / trials), true);
    }

    /** {@return the chance of keeping the limits; in [0, 1]} */
    public double probability() {
        return 1.0 - outside;
    }

    /** {@return the chance of breaking the limits, with its own digits where it is small; in [0, 1]} */
    public double probabilityOutside() {
        return outside;
    }

    /** {@return the standard uncertainty of the probability; 0 or more} */
    public double standardUncertainty() {
        return uncertainty;
    }

    /** {@return the limits; what is allowed} */
    public Limits<Q> limits() {
        return limits;
    }

    private Optional<Double> oneIn() {
        return outside > 0 && outside < 0.5 ? Optional.of(1 / outside) : Optional.empty();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, limits, outside, uncertainty};
    }
}
