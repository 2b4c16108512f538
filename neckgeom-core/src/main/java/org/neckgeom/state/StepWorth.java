package org.neckgeom.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Chance;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * What half the spread of a step would do for a limit, such as {@code body joint: 98.8 %; with half its spread better than
 * 99.9 %}. Immutable.
 *
 * @param step of work
 * @param now chance of keeping the limit as it is
 * @param then the same with every spread of the step halved
 */
public record StepWorth(String step, Chance now, Chance then) implements Answer {

    static final Form<StepWorth> FORM = Form.<StepWorth>of("step-worth")
            .fact("step", Kind.NAME, "of work", StepWorth::step)
            .fact("now", Kind.CHANCE, "of keeping the limit", StepWorth::now)
            .fact("then", Kind.CHANCE, "of keeping it with every spread of the step halved", StepWorth::then)
            .finds("step-worth", "{step}: {now}; with half its spread {then}");

    private static final double HALF = 0.5;

    /**
     * Checks the parts.
     *
     * @param step of work
     * @param now chance of keeping the limit as it is
     * @param then the same with every spread of the step halved
     */
    public StepWorth {
        Words.name(step, "a step's name");
        Objects.requireNonNull(now, "now");
        Objects.requireNonNull(then, "then");
    }

    static List<StepWorth> ranked(Knowledge state, Requirement wanted) {
        Chance now = kept(state, wanted);
        Set<String> steps = new LinkedHashSet<>();
        wanted.of().causes().forEach(name -> steps.add(state.cause(name).step()));
        List<StepWorth> all = new ArrayList<>();
        for (String step : steps) {
            all.add(new StepWorth(step, now, kept(state.scaled(step, HALF), wanted)));
        }
        all.sort(Comparator.comparingDouble((StepWorth one) -> one.then().outside())
                .thenComparing(StepWorth::step));
        return List.copyOf(all);
    }

    private static Chance kept(Knowledge state, Requirement wanted) {
        return new Known(state, wanted.name(), wanted.of()).chance(wanted.limits());
    }

    @Override
    public Form<StepWorth> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.MILLIMETRES;
    }

    /** Returns such as {@code body joint: 98.8 %; with half its spread better than 99.9 %}. */
    @Override
    public String toString() {
        return text(style());
    }
}
