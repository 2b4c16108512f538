package org.neckgeom.state;

import java.util.Objects;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * The share of the variance of a deviation that a step, or a cause of one step, has now. Immutable.
 *
 * <p>Shares of one level add up to 1. One can be negative once readings tie two causes together: it offsets others.
 *
 * @param name of the step or the cause
 * @param level whether it is a step or a cause; a table has one level alone
 * @param fraction of the variance; less than 0 where it offsets others
 */
public record Share(String name, Level level, double fraction) implements Answer {

    /** What a share belongs to. */
    public enum Level {
        /** A step of work: the sum of its causes. */
        STEP,
        /** A cause of error. */
        CAUSE
    }

    static final Form<Share> FORM = Form.<Share>of("share-of-the-variance")
            .fact("name", Kind.NAME, "of the step or the cause", Share::name)
            .fact("level", Kind.code(Level.class), "step or cause", Share::level)
            .fact("fraction", Kind.RATIO, "of the variance; less than 0 where it offsets others", Share::fraction)
            .phrase("share", one -> one.fraction < 0, "offsets others")
            .phrase("share", "{fraction:percent 1}")
            .finds("share", "{name}: {share}");

    /**
     * Checks the parts.
     *
     * @param name of the step or the cause
     * @param level step or cause
     * @param fraction of the variance
     */
    public Share {
        Words.name(name, "a share's name");
        Objects.requireNonNull(level, "level");
        fraction = Checked.finite("fraction", fraction);
    }

    @Override
    public Form<Share> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.MILLIMETRES;
    }

    /** Returns such as {@code body joint: 69.4 %}. */
    @Override
    public String toString() {
        return text(style());
    }
}
