package org.neckgeom.plan;

import java.util.Locale;
import java.util.Objects;

/**
 * One thing held against its limit, such as {@code wood left under the channel: 5.1 mm, 3 mm or more}. Immutable.
 *
 * @param name what is checked
 * @param outcome how it stands
 * @param found what was found, with unit
 * @param allowed what is allowed, with unit
 * @param todo what to do next, in one sentence
 */
public record PlanCheck(String name, Outcome outcome, String found, String allowed, String todo) {

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
     * @param name what is checked
     * @param outcome how it stands
     * @param found what was found, with unit
     * @param allowed what is allowed, with unit
     * @param todo what to do next, in one sentence
     */
    public PlanCheck {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(allowed, "allowed");
        Objects.requireNonNull(todo, "todo");
    }

    /** Returns one line: outcome, name, what was found, what is allowed, what to do. */
    @Override
    public String toString() {
        return outcome + "  " + name + ": " + found + " (allowed: " + allowed + "). " + todo;
    }
}
