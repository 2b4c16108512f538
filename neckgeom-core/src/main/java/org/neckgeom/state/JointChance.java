package org.neckgeom.state;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Chance;
import org.neckgeom.units.LengthStyle;

/**
 * The chance that all of several limits of a neck are kept together. Immutable.
 *
 * <p>It is not the product of the single chances, for limits share causes. Deviations that share none are taken apart; up to
 * four that do are computed by a Fourier series, more by the points of a lattice. Deterministic.
 */
public final class JointChance extends ValueAnswer {

    private static final Form<JointChance> FORM = Form.<JointChance>of("joint-chance")
            .fact("chance", Kind.CHANCE, "that all limits are kept", joint -> joint.chance())
            .fact("error", Kind.RATIO, "largest numerical error of it", JointChance::error)
            .fact("wanted", Kind.table(Requirement.FORM), "what is to be kept", joint -> joint.wanted)
            .fact("count", Kind.WHOLE, "limits", joint -> joint.wanted.size())
            .finds("joint-chance", "all {count:of limit/limits} kept: {chance}")
            .each("wanted", "{name}", "{limits}")
            .fitted();

    private static final int MOST = 12;

    /** Of limits: beyond, nothing is left outside that counts. */
    private static final double FARTHER = 1.6;

    private static final double NOTHING = 1e-6;

    /** Error of the chance at worst, which is printed to 0.1 %. */
    private static final double ROUGH = 5e-4;

    private final Knowledge state;
    private final List<Requirement> wanted;
    private final double probability;
    private final double pessimistic;
    private final double error;

    private JointChance(
            Knowledge state,
            List<Requirement> wanted,
            double probability,
            double pessimistic,
            double error,
            LengthStyle style) {
        super(FORM, style);
        this.state = state;
        this.wanted = wanted;
        this.probability = probability;
        this.pessimistic = pessimistic;
        this.error = error;
    }

    static JointChance of(Knowledge state, List<Requirement> wanted) {
        if (wanted.isEmpty() || wanted.size() > MOST) {
            throw Refusal.of("limits", "count", "be 1 to " + MOST, wanted.size() + " were given");
        }
        wanted.forEach(one -> state.requireKnown(one.of()));
        // By name, so that their order changes no bit.
        List<Requirement> sorted =
                wanted.stream().sorted(Comparator.comparing(Requirement::name)).toList();
        boolean guesses = sorted.stream()
                .flatMap(one -> one.of().causes().stream())
                .anyMatch(name -> state.cause(name).isGuess());
        double[] found;
        if (!guesses) {
            double[] one = chance(state, state.solved(), 1.0, sorted, GroupPoints.WANTED);
            found = new double[] {one[0], one[0], one[1]};
        } else if (state.readings().isEmpty() && onlyGuesses(state, sorted)) {
            found = byNarrowing(state, sorted);
        } else {
            found = overScales(state, sorted);
        }
        return new JointChance(state, List.copyOf(wanted), found[0], found[1], found[2], state.style());
    }

    private static boolean onlyGuesses(Knowledge state, List<Requirement> wanted) {
        return wanted.stream()
                .flatMap(one -> one.of().causes().stream())
                .map(state::cause)
                .allMatch(cause -> cause.isGuess() || cause.sd() == 0.0);
    }

    /** Every spread is so many times as wide together: the same as limits so many times as narrow. */
    private static double[] byNarrowing(Knowledge state, List<Requirement> wanted) {
        Scales scales = Scales.COMMON_BROADLY;
        double[] all = new double[scales.size()];
        Arrays.fill(all, 1.0);
        double pessimistic = 1.0;
        double error = 0.0;
        for (Group group : Group.of(state, state.solved(), 1.0, wanted)) {
            GroupSeries series = GroupSeries.of(group, FARTHER);
            for (int k = 0; k < all.length; k++) {
                if (scales.weights[k] < NOTHING) {
                    continue; // it counts as kept
                }
                double[] one = chance(
                        series,
                        group.narrowed(Scales.factor(scales.z[k])),
                        scales.allowed(scales.weights[k], GroupPoints.WANTED));
                all[k] *= one[0];
                error += scales.weights[k] * one[1];
            }
            pessimistic *= chance(series, group.narrowed(Scales.factor(Known.PESSIMISTIC)), ROUGH)[0];
        }
        return new double[] {Solved.dot(all, scales.weights), pessimistic, error};
    }

    /** The common scale of the guesses, weighed by what the readings say of it. */
    private static double[] overScales(Knowledge state, List<Requirement> wanted) {
        double all = 0.0;
        double error = 0.0;
        for (Known.Scaled scaled : Known.scales(state, Scales.COMMON_BROADLY)) {
            if (scaled.weight() < NOTHING) {
                all += scaled.weight(); // it counts as kept
                continue;
            }
            double allowed = Scales.COMMON_BROADLY.allowed(scaled.weight(), GroupPoints.WANTED);
            double[] one = chance(state, scaled.solved(), scaled.factor(), wanted, allowed);
            all += scaled.weight() * one[0];
            error += scaled.weight() * one[1];
        }
        double worse = Scales.factor(Known.PESSIMISTIC);
        double pessimistic = chance(state, Known.solved(state, worse), worse, wanted, ROUGH)[0];
        return new double[] {all, pessimistic, error};
    }

    private static double[] chance(
            Knowledge state, Solved solved, double factor, List<Requirement> wanted, double allowed) {
        double chance = 1.0;
        double error = 0.0;
        for (Group group : Group.of(state, solved, factor, wanted)) {
            double[] one = chance(GroupSeries.of(group, 1.0), group, allowed);
            chance *= one[0];
            error += one[1];
        }
        return new double[] {chance, error};
    }

    private static double[] chance(@Nullable GroupSeries series, Group group, double allowed) {
        return series == null
                ? new GroupPoints(group).chance(allowed)
                : new double[] {series.chance(group), GroupSeries.ACCURACY};
    }

    /** {@return the probability that all limits are kept, over what the scales of the spreads may be; in [0, 1]} */
    public double probability() {
        return probability;
    }

    /** {@return the largest numerical error of the probability} */
    public double error() {
        return error;
    }

    /** {@return the same as a chance that is printed with no more nines than it has earned} */
    public Chance chance() {
        return Chance.outside(1.0 - probability)
                .accurateTo(Math.min(1.0, error))
                .atWorst(1.0 - pessimistic);
    }

    /** {@return what is to be kept} */
    public List<Requirement> wanted() {
        return wanted;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {state, wanted};
    }
}
