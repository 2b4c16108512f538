package org.neckgeom.plan;

import java.util.Locale;
import java.util.Objects;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.units.LengthStyle;

/**
 * One thing held against its limit, such as {@code wood left under the channel: 5.1 mm, 3 mm or more}. Immutable.
 *
 * @param code what is checked, lower case with hyphens; stable
 * @param named what is checked, in words
 * @param outcome how it stands
 * @param finding what was found
 * @param limit what is allowed
 * @param next what to do next, by its code
 */
public record PlanCheck(String code, Statement named, Outcome outcome, Answer finding, Answer limit, Statement next)
        implements Answer {

    /** How a check stands. */
    public enum Outcome {
        /** It keeps its limit: go on. */
        GOOD,
        /** Not known yet, too near the limit to tell, or broken in a way that what is to do next still puts right. */
        OPEN,
        /** It breaks its limit: do not cut. */
        STOP;

        /** Returns such as {@code good}. */
        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Checks that nothing is missing.
     *
     * @param code what is checked
     * @param named in words
     * @param outcome how it stands
     * @param finding what was found
     * @param limit what is allowed
     * @param next what to do next
     */
    public PlanCheck {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(named, "named");
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(finding, "finding");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(next, "next");
    }

    /** A check whose name has no figure, in words that may name no facts. */
    static PlanCheck of(String code, String name, Outcome outcome, Answer finding, Answer limit, Statement next) {
        return new PlanCheck(code, Statement.of(code, name, next.style()), outcome, finding, limit, next);
    }

    /** {@return what is checked, in words, such as {@code channel centred}} */
    public String name() {
        return named.toString();
    }

    /** {@return what was found, in words, with unit} */
    public String found() {
        return finding.text(style());
    }

    /** {@return what is allowed, in words, with unit} */
    public String allowed() {
        return limit.text(style());
    }

    /** {@return what to do next, in words; one or more sentences} */
    public String todo() {
        return next.toString();
    }

    @Override
    public Form<PlanCheck> form() {
        return Form.<PlanCheck>of(code)
                .fact("outcome", Kind.code(Outcome.class), "good, open or stop", PlanCheck::outcome)
                .fact(
                        "name",
                        Kind.NAME,
                        "what is checked",
                        (PlanCheck check, LengthStyle style) -> check.named.text(style))
                .fact("result", Kind.ANSWER, "what was found", PlanCheck::finding)
                .fact("limit", Kind.ANSWER, "what is allowed", PlanCheck::limit)
                .fact("next", Kind.ANSWER, "what to do next", PlanCheck::next)
                .finds(code, "{outcome}  {name}: {result} (allowed: {limit}). {next}");
    }

    @Override
    public LengthStyle style() {
        return next.style();
    }

    /** Returns one line: outcome, name, what was found, what is allowed, what to do. */
    @Override
    public String toString() {
        return text(style());
    }
}
