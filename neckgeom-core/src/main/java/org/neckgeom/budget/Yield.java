package org.neckgeom.budget;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.RoughSum;
import org.neckgeom.measure.Chance;
import org.neckgeom.measure.ErrorDistribution.Law;
import org.neckgeom.measure.Limits;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.units.LengthStyle;

/**
 * The yield: the share of results that keep their limits, such as {@code 97.3 % within 1 mm}, with the range it may be in.
 * Immutable.
 *
 * <p>The share is predictive: where spreads are known by few degrees of freedom it is the mean over what they may be. A normal
 * error then has Student's law, and another error a rough scale. The 90 % range is that of the share itself: with the spreads
 * as wide, and as narrow, as their degrees of freedom leave open together. It comes from spreads known by few readings, or
 * from counting trials; it is nothing where every spread is taken as known and the distribution is exact.
 *
 * @param <Q> the kind of the result
 */
public final class Yield<Q extends Quantity<Q>> extends ValueAnswer {

    private static final Form<Yield<?>> FORM = Shown.withLimits(Form.<Yield<?>>of("yield"), Yield::limits)
            .fact("title", Kind.NAME, "name of the result", yield -> yield.title)
            .fact("yield", Kind.PROBABILITY, "of keeping the limits", Yield::probability)
            .fact("outside", Kind.PROBABILITY, "of breaking the limits", Yield::probabilityOutside)
            .fact("chance", Kind.CHANCE, "of keeping the limits, with its grounds", Yield::chance)
            .factIfAny("oneIn", Kind.RATIO, "of how many results one breaks the limits", Yield::oneIn)
            .fact("least", Kind.PROBABILITY, "low end of the 90 % range of the yield", Yield::leastProbability)
            .fact("most", Kind.PROBABILITY, "high end of the 90 % range of the yield", Yield::mostProbability)
            .phrase("fails", "1 in {oneIn:0}")
            .phrase("fails", "{outside}")
            .phrase("source", yield -> yield.counted, "the number of trials")
            .phrase("source", "spreads known by few readings")
            .finds("yield", "{title}: {chance} {kept}")
            .line("outside", "outside", "{fails}")
            .line(
                    "range",
                    "90 % range",
                    yield -> yield.mostOutside > yield.leastOutside,
                    "{least} to {most}, from {source}");

    /** No count of results is stated beyond 1 in 1000. */
    private static final double RAREST = 1e-3;

    /** Standard deviations of a logarithm at the ends of its 90 % range. */
    private static final double END = NormalLaw.quantile(0.95);

    /** The causes of so much of the variance make a yield well known, each by so many degrees of freedom. */
    private static final double MOST_OF_IT = 0.9;

    private static final double MANY_DEGREES = 30.0;

    private final String title;
    private final Limits<Q> limits;
    private final Chance chance;
    private final double leastOutside;
    private final double mostOutside;
    private final boolean counted;

    private Yield(
            String title, Limits<Q> limits, Chance chance, double leastOutside, double mostOutside, boolean counted) {
        super(FORM, LengthStyle.ofUnit(limits.unit()));
        this.title = title;
        this.limits = limits;
        this.chance = chance;
        this.leastOutside = leastOutside;
        this.mostOutside = mostOutside;
        this.counted = counted;
    }

    static <Q extends Quantity<Q>> Yield<Q> of(Sum<Q> sum, Limits<Q> limits) {
        Objects.requireNonNull(limits, "limits");
        if (sum.logDeviation() == 0.0) {
            double outside = sum.outside(limits, null);
            return new Yield<>(sum.title(), limits, earned(Chance.outside(outside), sum), outside, outside, false);
        }
        RoughSum rough = sum.rough();
        Chance chance = Chance.outside(rough.outside(limits.libraryLower(), limits.libraryUpper()))
                .accurateTo(rough.accuracy());
        double narrow = sum.outside(limits, sum.widened(-END));
        double wide = sum.outside(limits, sum.widened(END));
        return new Yield<>(
                sum.title(), limits, earned(chance, sum), Math.min(narrow, wide), Math.max(narrow, wide), false);
    }

    /**
     * Samples alone show nothing rarer than one more than they are. Nines rest on spreads of which it was given by how many
     * degrees of freedom they are known; one given without is not known to be no guess.
     */
    private static Chance earned(Chance chance, Sum<?> sum) {
        List<UncertaintyComponent> most = sum.mostOfTheVariance(MOST_OF_IT);
        double shown = most.stream()
                .filter(one -> one.spread().law() == Law.SAMPLES)
                .mapToDouble(one -> 1.0 / (one.spread().libraryCentredSamples().length + 1.0))
                .max()
                .orElse(0.0);
        Chance known = most.stream()
                        .mapToDouble(UncertaintyComponent::degreesOfFreedom)
                        .allMatch(degrees -> degrees >= MANY_DEGREES && Double.isFinite(degrees))
                ? chance.wellKnown()
                : chance;
        return shown > chance.outside() + chance.accuracy() ? known.accurateTo(shown - chance.outside()) : known;
    }

    /**
     * As counted in trials, those without a value taken as breaking the limits; the range is that of a count, and its high end
     * takes them as keeping the limits.
     */
    static <Q extends Quantity<Q>> Yield<Q> counted(
            String title, Limits<Q> limits, long inside, long undefined, long trials) {
        double outside = (double) (trials - inside) / trials;
        double most = outside + countError(inside, trials);
        double least = (double) (trials - inside - undefined) / trials - countError(inside + undefined, trials);
        return new Yield<>(
                title,
                limits,
                Chance.outside(outside).accurateTo(Math.min(1.0, most) - outside),
                Math.max(0.0, least),
                Math.min(1.0, most),
                true);
    }

    /** Laplace's rule keeps the uncertainty above 0 when none, or all, were inside. */
    private static double countError(long inside, long trials) {
        double smooth = (inside + 1.0) / (trials + 2.0);
        return END * Math.sqrt(smooth * (1.0 - smooth) / trials);
    }

    /** {@return the probability of keeping the limits; in [0, 1]} */
    public double probability() {
        return chance.probability();
    }

    /** {@return the probability of breaking the limits, with its own digits where it is small; in [0, 1]} */
    public double probabilityOutside() {
        return chance.outside();
    }

    /** {@return the probability of keeping the limits, with its grounds} */
    public Chance chance() {
        return chance;
    }

    /** {@return the low end of the 90 % range of the yield; in [0, 1]} */
    public double leastProbability() {
        return 1.0 - mostOutside;
    }

    /** {@return the high end of the 90 % range of the yield; in [0, 1]} */
    public double mostProbability() {
        return 1.0 - leastOutside;
    }

    /** {@return the limits; what is allowed} */
    public Limits<Q> limits() {
        return limits;
    }

    private Optional<Double> oneIn() {
        double outside = chance.outside();
        return outside >= RAREST && outside < 0.5 ? Optional.of(1 / outside) : Optional.empty();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, limits, chance, leastOutside, mostOutside};
    }
}
