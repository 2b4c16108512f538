package org.neckgeom.form;

import org.neckgeom.units.LengthStyle;

/**
 * An answer: facts that a {@link Form} names, written as text in any style of length, as JSON, or as rows of a table.
 *
 * <p>{@code toString()} of an answer is {@code text(style())}. The style is that of the first length the question was
 * asked with; it is no part of {@code equals}.
 */
public interface Answer {

    /** {@return the form of this answer: its facts and its sentences; the form of the implementing type} */
    Form<?> form();

    /**
     * {@return the style in which {@code toString()} prints lengths; that of the first length given, millimetres where
     * there is none}
     */
    default LengthStyle style() {
        return LengthStyle.MILLIMETRES;
    }

    /**
     * {@return this answer as text; then rows, then notes; lines end in line feeds, the last has none}
     *
     * @param style how lengths are printed
     */
    default String text(LengthStyle style) {
        return Form.textOf(this, style);
    }

    /**
     * {@return this answer in words, ready to be laid out; rows and notes}
     *
     * @param style how lengths are printed
     */
    default RenderedAnswer rendered(LengthStyle style) {
        return Form.renderedOf(this, style);
    }

    /**
     * {@return this answer as a row of another has it; words alone where its text has a layout of its own}
     *
     * @param style how lengths are printed
     */
    default RenderedAnswer inside(LengthStyle style) {
        RenderedAnswer inside = Form.insideOf(this, style, false);
        return inside == null ? RenderedAnswer.words(text(style)) : inside;
    }
}
