package org.neckgeom.form;

import java.util.Objects;
import org.neckgeom.units.LengthStyle;

/** An answer that is what its parts are, with the form of its type. Immutable. */
public abstract class ValueAnswer extends KeptAnswer {

    private final Form<?> form;

    /**
     * Takes form and style.
     *
     * @param form of the implementing type, a constant
     * @param style of the first length given
     */
    protected ValueAnswer(Form<?> form, LengthStyle style) {
        super(style);
        this.form = Objects.requireNonNull(form, "form");
    }

    @Override
    final boolean isOwn(Form<?> other) {
        return form == other;
    }

    @Override
    public Form<?> form() {
        return form;
    }
}
