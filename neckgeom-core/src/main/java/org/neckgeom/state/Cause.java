package org.neckgeom.state;

import java.util.Objects;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.kernel.RoughSum;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * A cause of error in a neck, such as {@code fingerboard at 15.5 mm}: independent of every other cause. What two errors
 * share is one cause that both contain. Immutable.
 *
 * @param name of the cause; no two causes of a neck share it
 * @param step of work that it comes from, which several causes may share
 * @param spread of the error, in its own kind of quantity
 * @param basis what the spread rests on
 */
public record Cause(String name, String step, ErrorDistribution<?> spread, Basis basis) implements Answer {

    static final Form<Cause> FORM = Form.<Cause>of("cause")
            .fact("name", Kind.NAME, "of the cause", Cause::name)
            .fact("step", Kind.NAME, "of work that it comes from", Cause::step)
            .fact("spread", Kind.SPREAD, "of the error", Cause::spread)
            .fact("basis", Kind.code(Basis.class), "what the spread rests on", Cause::basis)
            .finds("cause", "{name}: {spread}, {basis}");

    /** Log of a guess's scale: uncertain by a quarter, half of the variance common to all guesses of one maker. */
    static final double GUESS = RoughSum.GUESS;

    /**
     * Checks the parts.
     *
     * @param name of the cause
     * @param step of work that it comes from
     * @param spread of the error
     * @param basis what the spread rests on
     * @throws IllegalArgumentException if a name is blank
     */
    public Cause {
        Words.name(name, "a cause's name");
        Words.name(step, "a step's name");
        Objects.requireNonNull(spread, "spread");
        Objects.requireNonNull(basis, "basis");
    }

    /**
     * {@return a cause that is a step of its own, its spread as given}
     *
     * @param name of the cause and its step
     * @param spread of the error
     */
    public static Cause of(String name, ErrorDistribution<?> spread) {
        return new Cause(name, name, spread, Basis.GIVEN);
    }

    /** True where the size of the spread is a guess, so that one maker's optimism is in all of them. */
    boolean isGuess() {
        return basis == Basis.COMMON_PRACTICE;
    }

    double sd() {
        return Math.sqrt(spread.libraryVariance());
    }

    /** Standard deviation of the log of the scale that is this cause's own, as far as it is a guess. */
    double guessLogDeviation() {
        return isGuess() ? GUESS : 0.0;
    }

    /** The same with what is common to all guesses. */
    double wholeGuessLogDeviation() {
        return isGuess() ? RoughSum.WHOLE_GUESS : 0.0;
    }

    /** Standard deviation of the log of the scale that is this cause's own: as a guess, and by its degrees of freedom. */
    double ownLogDeviation() {
        double known = RoughSum.logDeviation(spread.degreesOfFreedom());
        return Math.sqrt(known * known + guessLogDeviation() * guessLogDeviation());
    }

    @Override
    public Form<Cause> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(spread.unit());
    }

    /** Returns such as {@code fingerboard at 15.5 mm: rectangular, half-width 0.08 mm, common practice}. */
    @Override
    public String toString() {
        return text(style());
    }
}
