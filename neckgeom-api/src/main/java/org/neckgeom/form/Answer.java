package org.neckgeom.form;

import org.neckgeom.units.LengthStyle;

/**
 * An answer: facts that a {@link Form} names, written as text in any style of length, as JSON, or as rows of a table.
 *
 * <p>{@code toString()} of an answer is {@code text(style())}. The style is that of the first length the question was
 * asked with; it is no part of {@code equals}.
 */
public interface Answer {

    /**
     * Returns the form of this answer: its facts and its sentences.
     *
     * @return the form of the implementing type
     */
    Form<?> form();

    /**
     * Returns the style in which {@code toString()} prints lengths.
     *
     * @return the style of the first length given
     */
    LengthStyle style();

    /**
     * Returns this answer as text.
     *
     * @param style how lengths are printed
     * @return the finding, then rows, then notes; lines end in line feeds, the last has none
     */
    default String text(LengthStyle style) {
        return Form.textOf(this, style);
    }

    /**
     * Returns this answer in words, ready to be laid out.
     *
     * @param style how lengths are printed
     * @return the finding, rows and notes
     */
    default RenderedAnswer rendered(LengthStyle style) {
        return Form.renderedOf(this, style);
    }
}
