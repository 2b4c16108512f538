package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Limits;
import org.neckgeom.text.Numbers;

/**
 * The allowance of one component, or of all of a step together, with the others unchanged, such as {@code body joint:
 * up to 1.34 times as wide as now}. Immutable.
 *
 * @param <Q> the kind of the result
 */
public final class Allowance<Q extends Quantity<Q>> extends ValueAnswer {

    private static final Form<Allowance<?>> FORM = Shown.withLimits(
                    Shown.withFactor(
                            Form.<Allowance<?>>of("allowance"),
                            "factor",
                            "how many times as wide as now it may be",
                            Allowance::factor),
                    allowance -> allowance.limits)
            .fact("name", Kind.NAME, "of the component or the step", allowance -> allowance.name)
            .fact("probability", Kind.PROBABILITY, "with which the limits are kept", allowance -> allowance.probability)
            .fact("components", Kind.table(UncertaintyComponent.FORM), "at their widest", Allowance::components)
            .finds("allowance", "{name}: up to {times} times as wide as now, to keep {kept} {probability} of the time")
            .each("components", "{name}", "{wide}", 8, "")
            .factIfAny(
                    "leastFactor",
                    Kind.RATIO,
                    "how many times as wide as now it makes the result least uncertain",
                    allowance -> Optional.of(allowance.leastFactor).filter(least -> least > 0))
            .line("leastFactor", "least uncertain", "{leastFactor:3} times as wide as now")
            .fitted();

    private final String name;
    private final double factor;
    private final double leastFactor;
    private final List<UncertaintyComponent> allowed;
    private final Limits<Q> limits;
    private final double probability;

    private Allowance(
            String name,
            double factor,
            double leastFactor,
            List<UncertaintyComponent> allowed,
            Limits<Q> limits,
            double probability) {
        super(FORM, Shown.style(limits.unit(), allowed.stream().map(UncertaintyComponent::spread)));
        this.name = name;
        this.factor = factor;
        this.leastFactor = leastFactor;
        this.allowed = allowed;
        this.limits = limits;
        this.probability = probability;
    }

    static <Q extends Quantity<Q>> Allowance<Q> of(
            Sum<Q> sum, String name, Set<Integer> which, Limits<Q> limits, double p) {
        List<UncertaintyComponent> all = sum.components();
        double own = 0.0;
        for (int i : which) {
            own += all.get(i).contribution();
        }
        if (own == 0.0) {
            throw Refusal.because(
                    name, "no-spread", "\"" + name + "\" has no spread in " + sum.title() + " to be widened");
        }
        double allowedOutside = 1.0 - p;
        double least = leastFactor(sum, which);
        double alone = sum.outside(limits, scaled(all.size(), which, least));
        if (alone > allowedOutside) {
            throw NoAnswer.because(
                    "allowance",
                    "nothing-left",
                    "no allowance is left for \"" + name + "\": the rest alone keep " + Shown.kept(limits) + " "
                            + Numbers.percent(1.0 - alone) + " of the time, " + Numbers.percent(p)
                            + " asked; they overspend the limits by "
                            + Shown.size(
                                    sum.overspent(scaled(all.size(), which, least), limits, allowedOutside),
                                    sum.unit()));
        }
        double factor =
                least + Scaling.most(f -> sum.outside(limits, scaled(all.size(), which, least + f)), allowedOutside);
        if (factor == Double.POSITIVE_INFINITY) {
            throw NoAnswer.because(
                    "allowance",
                    "never-breaks",
                    "\"" + name + "\" never breaks " + limits + ", however wide it is: there is nothing to allow");
        }
        List<UncertaintyComponent> allowed = new ArrayList<>();
        for (int i : which) {
            allowed.add(all.get(i).with(all.get(i).spread().scaled(factor)));
        }
        return new Allowance<>(name, factor, least, List.copyOf(allowed), limits, p);
    }

    /**
     * How many times as wide it makes the sum's variance {@code a f^2 + b f + c} least: more than 0 where its error offsets one
     * that it is correlated with.
     */
    private static double leastFactor(Sum<?> sum, Set<Integer> which) {
        if (sum.correlations().isEmpty()) {
            return 0.0;
        }
        int size = sum.components().size();
        double none = sum.scaled(scaled(size, which, 0.0)).variance();
        double once = sum.scaled(scaled(size, which, 1.0)).variance() - none;
        double twice = sum.scaled(scaled(size, which, 2.0)).variance() - none;
        double a = 0.5 * (twice - 2.0 * once);
        double b = once - a;
        return a > 0.0 ? Math.max(0.0, -0.5 * b / a) : 0.0;
    }

    private static double[] scaled(int size, Set<Integer> which, double factor) {
        double[] factors = new double[size];
        for (int i = 0; i < size; i++) {
            factors[i] = which.contains(i) ? factor : 1.0;
        }
        return factors;
    }

    /** {@return how many times as wide as now it may be; under 1 it must become tighter; 0 or more} */
    public double factor() {
        return factor;
    }

    /**
     * {@return how many times as wide as now it makes the result least uncertain: 0, or more where its error offsets one that
     * it is correlated with}
     */
    public double leastFactor() {
        return leastFactor;
    }

    /** {@return the widest spread allowed; the spread of the component, or of the first of the step} */
    public ErrorDistribution<?> spread() {
        return allowed.get(0).spread();
    }

    /** {@return the components at their widest; one, or all of the step} */
    public List<UncertaintyComponent> components() {
        return allowed;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {name, factor, leastFactor, allowed, limits, probability};
    }
}
