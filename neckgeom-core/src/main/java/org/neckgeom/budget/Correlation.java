package org.neckgeom.budget;

import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;

/**
 * The correlation coefficient of two components of a budget, such as {@code "fence" and "stop", coefficient 0.8}: 1
 * when their errors always agree, -1 when they are always opposite, 0 when they are independent. Immutable.
 *
 * @param one a component with a normal spread
 * @param other another one
 * @param coefficient r, from -1 to 1 (JCGM 100:2008, 5.2.2)
 */
public record Correlation(String one, String other, double coefficient) implements Answer {

    static final Form<Correlation> FORM = Form.<Correlation>of("correlation")
            .fact("one", Kind.NAME, "a component", Correlation::one)
            .fact("other", Kind.NAME, "another one", Correlation::other)
            .fact("coefficient", Kind.RATIO, "from -1 to 1", Correlation::coefficient)
            .finds("correlation", "\"{one}\" and \"{other}\", coefficient {coefficient:..4}");

    /**
     * Checks the parts.
     *
     * @param one a component with a normal spread
     * @param other another one
     * @param coefficient r, from -1 to 1
     * @throws IllegalArgumentException if both are the same or the coefficient is out of its range
     */
    public Correlation {
        Words.name(one, "a component's name");
        Words.name(other, "a component's name");
        if (one.equals(other)) {
            throw Refusal.of(
                    "a correlation",
                    "two-components",
                    "be between two components",
                    "between \"" + one + "\" and itself");
        }
        if (!(coefficient >= -1.0 && coefficient <= 1.0)) {
            throw Refusal.of(
                    "correlation of \"" + one + "\" and \"" + other + "\"",
                    "range",
                    "be from -1 to 1",
                    Numbers.plain(coefficient));
        }
        coefficient += 0.0;
    }

    boolean isOf(String name) {
        return one.equals(name) || other.equals(name);
    }

    @Override
    public Form<Correlation> form() {
        return FORM;
    }

    /** Returns such as {@code "fence" and "stop", coefficient 0.8}. */
    @Override
    public String toString() {
        return text(style());
    }
}
