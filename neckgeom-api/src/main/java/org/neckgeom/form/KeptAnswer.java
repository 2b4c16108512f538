package org.neckgeom.form;

import org.jspecify.annotations.Nullable;
import org.neckgeom.units.LengthStyle;

/**
 * An answer that keeps its words in its own style once they have been asked for: text, data and page of a plan write the
 * same answer several times, and inside others. The words follow from the parts, so whichever thread writes them first
 * writes the same.
 */
abstract class KeptAnswer extends LeanAnswer {

    private @Nullable RenderedAnswer kept;

    KeptAnswer(LengthStyle style) {
        super(style);
    }

    /** Whether a form is its own: words of another form are not kept. */
    abstract boolean isOwn(Form<?> form);

    @Nullable
    RenderedAnswer kept() {
        return kept;
    }

    void keep(RenderedAnswer words) {
        kept = words;
    }
}
