package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The rule a slot's passes follow: none deeper than so much, and maybe a light last one, such as
 * {@code no pass deeper than 3 mm, last pass 0.5 mm}. Immutable.
 */
public final class Passes extends ValueAnswer {

    private static final Form<Passes> FORM = Form.<Passes>of("passes-rule")
            .fact("deepestPass", Kind.MM, "that the rule allows", rule -> rule.mostMm)
            .factIfAny("lastPass", Kind.MM, "a light one, if there is to be one", Passes::light)
            .finds("light-last", "no pass deeper than {deepestPass:brief}, last pass {lastPass:brief}")
            .finds("equal", "no pass deeper than {deepestPass:brief}");

    /** A depth that is a whole number of steps on paper must not gain a pass from rounding noise. */
    private static final double SLACK = 1e-9;

    private final double mostMm;
    private final double lastMm;

    private Passes(double mostMm, double lastMm, LengthStyle style) {
        super(FORM, style);
        this.mostMm = mostMm;
        this.lastMm = lastMm;
    }

    /**
     * {@return the rule that no pass may be deeper than so much; without a light last pass}
     *
     * @param most deepest pass, more than 0
     * @throws IllegalArgumentException if it is not more than 0
     */
    public static Passes noDeeperThan(Quantity<Length> most) {
        return new Passes(LibraryUnits.mmPositive(most, "deepest pass"), 0, LengthStyle.of(most));
    }

    /**
     * {@return the same rule with a light last pass, which leaves the floor clean and shows a cutter that has crept}
     *
     * @param last what the last pass takes off, more than 0 and no more than the deepest pass
     * @throws IllegalArgumentException if it is out of its range
     */
    public Passes lastPass(Quantity<Length> last) {
        double mm = LibraryUnits.mmPositive(last, "last pass");
        if (!(mm <= mostMm)) {
            throw LibraryUnits.refused(
                    "last pass", "at-most", style().brief(mostMm) + " or less (the deepest pass)", last);
        }
        return new Passes(mostMm, mm, style());
    }

    /**
     * {@return the passes for a depth: the fewest equal ones in the rule, then the light one, if any; exact}
     *
     * @param depth of the finished slot, more than the last pass
     * @throws IllegalArgumentException if the depth is not more than the last pass
     */
    public PassPlan to(Quantity<Length> depth) {
        double depthMm = LibraryUnits.mmPositive(depth, "slot depth");
        LengthStyle shown = LengthStyle.of(depth);
        if (!(depthMm > lastMm)) {
            throw LibraryUnits.refused(
                    "slot depth",
                    "more-than",
                    "more than the last pass of " + shown.brief(lastMm),
                    shown.amount(depthMm));
        }
        if (!(depthMm / mostMm <= PassPlan.MOST_PASSES)) {
            throw LibraryUnits.refused(
                    "deepest pass",
                    "at-least",
                    shown.brief(depthMm / PassPlan.MOST_PASSES) + " or more (" + PassPlan.MOST_PASSES + " passes)",
                    shown.amount(mostMm));
        }
        double[] steps = steps(depthMm, mostMm, lastMm);
        List<Pass> passes = new ArrayList<>();
        double height = 0;
        for (int i = 0; i < steps.length; i++) {
            // The last height is the depth itself, not a sum of rounded steps.
            height = i == steps.length - 1 ? depthMm : height + steps[i];
            passes.add(new Pass(i + 1, steps[i], height, shown));
        }
        return new PassPlan(passes, lastMm > 0, shown);
    }

    /**
     * Returns the depth of each pass in order: the fewest equal passes of at most {@code most}, then
     * the last pass if it is more than 0.
     *
     * @param depth the whole depth in mm, more than 0
     * @param most the deepest pass allowed in mm, more than 0
     * @param last the light last pass in mm, 0 for none, below depth
     */
    static double[] steps(double depth, double most, double last) {
        double rough = depth - last;
        int equal = Math.max(1, (int) Math.ceil(rough / most * (1 - SLACK)));
        double[] steps = new double[last > 0 ? equal + 1 : equal];
        Arrays.fill(steps, 0, equal, rough / equal);
        if (last > 0) {
            steps[equal] = last;
        }
        return steps;
    }

    /** {@return the deepest pass the rule allows; more than 0} */
    public Amount<Length> deepest() {
        return style().amount(mostMm);
    }

    private Optional<Double> light() {
        return lastMm > 0 ? Optional.of(lastMm) : Optional.empty();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {mostMm, lastMm};
    }
}
