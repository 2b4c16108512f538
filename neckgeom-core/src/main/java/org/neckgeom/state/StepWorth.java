package org.neckgeom.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.kernel.RoughSum;
import org.neckgeom.measure.Chance;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * What half the spread of a step would do for a limit, such as {@code body joint: 98.8 %, with half its spread better than
 * 99.9 %}. Immutable.
 *
 * @param step of work
 * @param outsideNow chance of breaking the limit as it is; in [0, 1]
 * @param outsideThen the same with every spread of the step halved; in [0, 1]
 */
public record StepWorth(String step, double outsideNow, double outsideThen) implements Answer {

    static final Form<StepWorth> FORM = Form.<StepWorth>of("step-worth")
            .fact("step", Kind.NAME, "of work", StepWorth::step)
            .fact("now", Kind.CHANCE, "of keeping the limit", one -> kept(one.outsideNow))
            .fact(
                    "then",
                    Kind.CHANCE,
                    "of keeping it with every spread of the step halved",
                    one -> kept(one.outsideThen))
            .finds("step-worth", "{step}: {now}, with half its spread {then}");

    private static final double HALF = 0.5;

    /**
     * Checks the parts.
     *
     * @param step of work
     * @param outsideNow chance of breaking the limit as it is
     * @param outsideThen the same with every spread of the step halved
     */
    public StepWorth {
        Words.name(step, "a step's name");
        outsideNow = Checked.ratio("chance outside now", outsideNow);
        outsideThen = Checked.ratio("chance outside then", outsideThen);
    }

    private static Chance kept(double outside) {
        return Chance.outside(outside).accurateTo(RoughSum.ACCURACY);
    }

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

    /** Returns such as {@code body joint: 98.8 %, with half its spread better than 99.9 %}. */
    @Override
    public String toString() {
        return text(style());
    }
}
