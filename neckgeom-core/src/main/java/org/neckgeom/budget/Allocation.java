package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Limits;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LibraryUnits;

/**
 * A tolerance allocation: how tight each component must be for a wanted yield, in two ways: all spreads scaled by one
 * factor, and with the least effort. Immutable.
 *
 * <p>Least effort: where holding component i to the standard deviation t costs {@code k/t}, the sum of the costs is
 * least, for a given root sum of squares, at {@code t_i ~ (k_i / c_i^2)^(1/3)} (Lagrange's rule). That is the answer for normal
 * errors, and a start for others, whose costs are brought down by the exact distribution to within 0.1 % of the least that
 * was found from three starts. Both ways keep the limits with just the asked probability. Shapes and shifts stay.
 *
 * @param <Q> the kind of the result
 */
public final class Allocation<Q extends Quantity<Q>> extends ValueAnswer {

    /** A component the one way and the other. */
    private record Row(UncertaintyComponent common, UncertaintyComponent least) {

        private static final Form<Row> FORM = Shown.withSpread(
                        Form.<Row>of("allocation-row"), row -> row.common().spread())
                .fact("name", Kind.NAME, "of the component", row -> row.common().name())
                .fact(
                        "leastEffort",
                        Kind.AMOUNT,
                        "size of the spread of least effort",
                        row -> Shown.size(row.least().spread()));
    }

    private static final Form<Allocation<?>> FORM = Shown.withLimits(
                    Shown.withFactor(
                            Form.<Allocation<?>>of("allocation"),
                            "commonFactor",
                            "by which every spread is scaled in the first way",
                            Allocation::commonFactor),
                    allocation -> allocation.limits)
            .fact("title", Kind.NAME, "name of the result", allocation -> allocation.title)
            .fact("probability", Kind.PROBABILITY, "with which the limits are kept", a -> a.probability)
            .fact("saving", Kind.RATIO, "of the effort by the second way, 0 to 1", Allocation::saving)
            .fact(
                    "components",
                    Kind.table(Row.FORM),
                    "by one common factor, and with the least effort",
                    Allocation::rows)
            .finds("allocation", "{title}: all {times} times as wide as now keep {kept} {probability} of the time")
            .line("head", "", "equal scaling; least effort")
            .each(
                    "components",
                    "{name}",
                    "{wide}; {leastEffort:fine digits 3}",
                    8,
                    "and {more} more, in commonScale() and leastEffort()")
            .note("saving", "least effort saves {saving:percent 0} where 1/width is the effort")
            .fitted();

    private final String title;
    private final Budget<Q> commonScale;
    private final Budget<Q> leastEffort;
    private final double commonFactor;
    private final double saving;
    private final Limits<Q> limits;
    private final double probability;

    private Allocation(
            String title,
            Budget<Q> commonScale,
            Budget<Q> leastEffort,
            double commonFactor,
            double saving,
            Limits<Q> limits,
            double probability) {
        super(FORM, Shown.style(limits.unit(), commonScale.components().stream().map(UncertaintyComponent::spread)));
        this.title = title;
        this.commonScale = commonScale;
        this.leastEffort = leastEffort;
        this.commonFactor = commonFactor;
        this.saving = saving;
        this.limits = limits;
        this.probability = probability;
    }

    /**
     * {@return how tight each component must be, two ways: all scaled by one factor, and with the least effort where holding
     * a component to a deviation t costs 1/t, the same for each}
     *
     * @param <Q> the kind of the result
     * @param budget the budget
     * @param limits what is allowed
     * @param probability how often the limits are to be kept
     * @throws ArithmeticException if the shifts alone already break the limits
     */
    public static <Q extends Quantity<Q>> Allocation<Q> of(
            Budget<Q> budget, Limits<Q> limits, Quantity<Dimensionless> probability) {
        return of(budget, limits, probability, Map.of());
    }

    /**
     * {@return how tight each component must be, with efforts of one's own: holding component i to a deviation t costs
     * {@code k_i / t}}
     *
     * @param <Q> the kind of the result
     * @param budget the budget
     * @param limits what is allowed
     * @param probability how often the limits are to be kept
     * @param efforts k by the name of a component or step, each more than 0; 1 where none is given
     * @throws IllegalArgumentException if nothing is called so, or an effort is not more than 0
     * @throws ArithmeticException if the shifts alone already break the limits
     */
    public static <Q extends Quantity<Q>> Allocation<Q> of(
            Budget<Q> budget, Limits<Q> limits, Quantity<Dimensionless> probability, Map<String, Double> efforts) {
        List<UncertaintyComponent> all =
                Objects.requireNonNull(budget, "budget").components();
        double p = LibraryUnits.probability(probability, "probability");
        double[] k = new double[all.size()];
        Arrays.fill(k, 1.0);
        Objects.requireNonNull(efforts, "efforts").forEach((name, effort) -> {
            Objects.requireNonNull(effort, "effort");
            if (!(effort > 0.0 && effort < Double.POSITIVE_INFINITY)) {
                throw Refusal.of("effort of " + name, "more-than", "be more than 0", Numbers.plain(effort));
            }
            budget.find(name).forEach(i -> k[i] = effort);
        });
        return of(budget, limits, p, k);
    }

    private static <Q extends Quantity<Q>> Allocation<Q> of(Budget<Q> budget, Limits<Q> limits, double p, double[] k) {
        List<UncertaintyComponent> all = budget.components();
        int n = all.size();
        double allowed = 1.0 - p;
        Sum<Q> sum = budget.sum();
        double[] none = new double[n];
        if (sum.outside(limits, none) > allowed) {
            throw NoAnswer.because(
                    "allocation",
                    "shifts-alone",
                    "no spread however small would keep " + Shown.kept(limits) + ": the shifts alone overspend it by "
                            + Shown.size(sum.overspent(none, limits, allowed), budget.unit()));
        }
        double[] equal = new double[n];
        double[] shape = new double[n];
        for (int i = 0; i < n; i++) {
            equal[i] = 1.0;
            UncertaintyComponent one = all.get(i);
            if (one.contribution() > 0.0) {
                double square = one.sensitivity() * one.sensitivity();
                shape[i] =
                        StrictMath.cbrt(k[i] / square) / Math.sqrt(one.spread().libraryVariance());
            }
        }
        double common = Scaling.most(f -> sum.outside(limits, LeastEffort.times(equal, f)), allowed);
        if (common == Double.POSITIVE_INFINITY) {
            throw NoAnswer.because(
                    "allocation",
                    "never-breaks",
                    budget.title() + " never breaks " + limits + ": there is nothing to share out");
        }
        double[] even = LeastEffort.times(equal, common);
        double[] least = new LeastEffort(sum, limits, allowed, k).from(normalized(shape, all), even);
        double saving = 1.0 - LeastEffort.cost(all, least, k) / LeastEffort.cost(all, even, k);
        return new Allocation<>(
                budget.title(), scaled(budget, even), scaled(budget, least), common, Math.max(0.0, saving), limits, p);
    }

    /** The shape scaled to the root sum of squares the budget has now, so that the search starts near 1. */
    private static double[] normalized(double[] shape, List<UncertaintyComponent> all) {
        double now = 0.0;
        double then = 0.0;
        for (int i = 0; i < shape.length; i++) {
            double c = all.get(i).contribution();
            now += c * c;
            then += c * c * shape[i] * shape[i];
        }
        return then > 0.0 ? LeastEffort.times(shape, Math.sqrt(now / then)) : shape;
    }

    private static <Q extends Quantity<Q>> Budget<Q> scaled(Budget<Q> budget, double[] factors) {
        List<UncertaintyComponent> all = new ArrayList<>();
        for (int i = 0; i < factors.length; i++) {
            UncertaintyComponent one = budget.components().get(i);
            all.add(one.with(one.spread().scaled(factors[i])));
        }
        return budget.withAll(all);
    }

    /** {@return the factor that scales every spread in the first way; under 1 where the budget must become tighter} */
    public double commonFactor() {
        return commonFactor;
    }

    /** {@return the budget with all spreads scaled by that factor; keeps the limits with just the asked probability} */
    public Budget<Q> commonScale() {
        return commonScale;
    }

    /** {@return the budget of least effort; the budget, which keeps the limits with just the asked probability} */
    public Budget<Q> leastEffort() {
        return leastEffort;
    }

    /** {@return the part of the effort of the first way that the second saves; in [0, 1)} */
    public double saving() {
        return saving;
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < commonScale.components().size(); i++) {
            rows.add(new Row(
                    commonScale.components().get(i), leastEffort.components().get(i)));
        }
        return rows;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {commonScale, leastEffort, limits, probability};
    }
}
