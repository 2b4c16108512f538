package org.neckgeom.examples.shell;

import java.util.List;
import java.util.Optional;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Kind;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Plan;
import org.neckgeom.units.LengthStyle;

/** Answers in the style that a shell prints in. */
public final class Spoken {

    private Spoken() {}

    /**
     * {@return an answer in a style; several, one by one; its lengths in the style}
     *
     * @param answer anything
     * @param style how its lengths are printed; null for the answer's own
     */
    public static Object in(LengthStyle style, Object answer) {
        if (style == null) {
            return answer;
        }
        if (answer instanceof Answer speaker) {
            return speaker.text(style);
        }
        if (answer instanceof Job job) {
            return job.printIn(style);
        }
        if (answer instanceof Plan plan) {
            return plan.text(style);
        }
        if (answer instanceof Optional<?> perhaps) {
            return perhaps.map(inside -> in(style, inside));
        }
        return answer instanceof List<?> several
                ? several.stream().map(one -> in(style, one)).toList()
                : Kind.printedIn(answer, style);
    }
}
