package org.neckgeom.plan;

import java.util.Optional;
import java.util.function.Supplier;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;

/**
 * An answer, or why good inputs have none.
 *
 * @param answer empty where there is none, or none was asked for
 * @param why empty where there is an answer, or none was asked for
 */
record Attempt<T>(Optional<T> answer, Optional<Fault> why) {

    /** The rule of a figure of the wood that is not known. */
    static final String NO_FIGURE = "no-figure";

    /** What a question answers; a figure of the wood that is not known leaves it without an answer, as {@link NoAnswer} does. */
    static <T> Attempt<T> at(Supplier<Optional<T>> question) {
        return at(question, NO_FIGURE);
    }

    /** The same; any refusal leaves it without an answer. */
    static <T> Attempt<T> atAll(Supplier<Optional<T>> question) {
        return at(question, "");
    }

    private static <T> Attempt<T> at(Supplier<Optional<T>> question, String rule) {
        try {
            return new Attempt<>(question.get(), Optional.empty());
        } catch (NoAnswer none) {
            return new Attempt<>(Optional.empty(), Optional.of(none.fault()));
        } catch (Refusal refusal) {
            Fault fault = refusal.faults().get(0);
            if (!fault.rule().startsWith(rule)) {
                throw refusal;
            }
            return new Attempt<>(Optional.empty(), Optional.of(fault));
        }
    }
}
