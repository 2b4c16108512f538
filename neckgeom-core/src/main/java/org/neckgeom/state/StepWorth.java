package org.neckgeom.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.LengthStyle;

/**
 * What half the spread of a step would do for a limit, such as {@code body joint: 1.2 % outside, 0.043 % with half its
 * spread}. Immutable.
 *
 * @param step of work
 * @param outsideNow chance of breaking the limit as it is; in [0, 1]
 * @param outsideThen the same with every spread of the step halved; in [0, 1]
 */
public record StepWorth(String step, double outsideNow, double outsideThen) implements Answer {

    static final Form<StepWorth> FORM = Form.<StepWorth>of("step-worth")
            .fact("step", Kind.NAME, "of work", StepWorth::step)
            .fact("outsideNow", Kind.PROBABILITY, "of breaking the limit", StepWorth::outsideNow)
            .fact(
                    "outsideThen",
                    Kind.PROBABILITY,
                    "of breaking the limit with every spread of the step halved",
                    StepWorth::outsideThen)
            .finds("step-worth", "{step}: {outsideNow} outside, {outsideThen} with half its spread");

    private static final double HALF = 0.5;

    static List<StepWorth> ranked(Knowledge state, Requirement wanted) {
        double now = outside(state, wanted);
        Set<String> steps = new LinkedHashSet<>();
        wanted.of().causes().forEach(name -> steps.add(state.cause(name).step()));
        List<StepWorth> all = new ArrayList<>();
        for (String step : steps) {
            all.add(new StepWorth(step, now, outside(state.scaled(step, HALF), wanted)));
        }
        all.sort(Comparator.comparingDouble(StepWorth::outsideThen).thenComparing(StepWorth::step));
        return List.copyOf(all);
    }

    private static double outside(Knowledge state, Requirement wanted) {
        return new Known(state, wanted.name(), wanted.of()).outsideByOneSum(wanted.limits());
    }

    @Override
    public Form<StepWorth> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.MILLIMETRES;
    }

    /** Returns such as {@code body joint: 1.2 % outside, 0.043 % with half its spread}. */
    @Override
    public String toString() {
        return text(style());
    }
}
