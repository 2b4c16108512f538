package org.neckgeom.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.units.LengthStyle;

/**
 * One thing held against its limit, such as {@code wood under the channel: 5.1 mm, limit: 3 mm or more}. Immutable.
 *
 * @param code what is checked
 * @param finding what was found, as data; the outcome follows from it
 * @param result what was found, in words with its facts
 * @param limit what is allowed, in words with its facts
 * @param action what to do next, by its code, with its facts
 */
public record PlanCheck(CheckCode code, Finding finding, Answer result, Answer limit, Statement action)
        implements Answer {

    /**
     * Checks that nothing is missing.
     *
     * @param code what is checked
     * @param finding what was found, as data
     * @param result what was found
     * @param limit what is allowed
     * @param action what to do next
     */
    public PlanCheck {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(finding, "finding");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(action, "action");
    }

    /** {@return how it is decided} */
    public Outcome outcome() {
        return finding.outcome();
    }

    /** {@return what is checked, in words, such as {@code channel centred}} */
    public String name() {
        return code.toString();
    }

    /** {@return what was found, in words, with unit} */
    public String found() {
        return result.text(style());
    }

    /** {@return what is allowed, in words, with unit} */
    public String allowed() {
        return limit.text(style());
    }

    /** {@return what to do next, in words; one or more sentences} */
    public String todo() {
        return action.toString();
    }

    @Override
    public Form<PlanCheck> form() {
        return Forms.OF_CODE.get(code);
    }

    /** A form for each code, once one is printed. */
    private static final class Forms {
        static final Map<CheckCode, Form<PlanCheck>> OF_CODE = new EnumMap<>(CheckCode.class);

        static {
            for (CheckCode code : CheckCode.values()) {
                OF_CODE.put(code, of(code));
            }
        }

        private static Form<PlanCheck> of(CheckCode code) {
            return Form.<PlanCheck>of(code.code())
                    .fact("outcome", Kind.code(Outcome.class), "ok, open or stop", PlanCheck::outcome)
                    .fact("name", Kind.NAME, "what is checked", PlanCheck::name)
                    .factIfAny("value", Kind.AMOUNT, "what was found", check -> check.finding.value())
                    .factIfAny("limits", Kind.LIMITS, "what is allowed", check -> check.finding.limits())
                    .factIfAny(
                            "verdict", Kind.VERDICT, "measured value against limits", check -> check.finding.verdict())
                    .fact(
                            "conformanceProbability",
                            Kind.PROBABILITY,
                            "that the limits are kept; nothing where not known",
                            check -> check.finding.conformanceProbability().orElse(Double.NaN))
                    .fact("result", Kind.ANSWER, "what was found, with its facts", PlanCheck::result)
                    .fact("limit", Kind.ANSWER, "what is allowed, with its facts", PlanCheck::limit)
                    .fact("action", Kind.ANSWER, "what to do next", PlanCheck::action)
                    .phrase("mark", check -> check.outcome() == Outcome.OK, "OK")
                    .phrase("mark", "{outcome}")
                    .finds(code.code(), "{mark}  {name}: {result}, limit: {limit}. {action}");
        }
    }

    @Override
    public LengthStyle style() {
        return action.style();
    }

    /** Returns one line: outcome, what is checked, what was found, its limit, what to do. */
    @Override
    public String toString() {
        return text(style());
    }
}
