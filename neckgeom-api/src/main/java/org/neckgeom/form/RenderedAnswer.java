package org.neckgeom.form;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * An answer in words, in one style of length, ready to be laid out by a console or a page.
 *
 * @param code of the finding, lower case with hyphens; stable
 * @param finding the first line
 * @param rows what belongs to it
 * @param notes sentences after the rows
 */
public record RenderedAnswer(String code, String finding, List<Row> rows, List<Note> notes) {

    /**
     * Takes copies of the lists.
     *
     * @param code of the finding
     * @param finding the first line
     * @param rows of label and text
     * @param notes sentences
     */
    public RenderedAnswer {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(finding, "finding");
        rows = all(Objects.requireNonNull(rows, "rows"), "row");
        notes = all(Objects.requireNonNull(notes, "notes"), "note");
    }

    private static <E> List<E> all(List<E> list, String one) {
        list.forEach(element -> Objects.requireNonNull(element, one));
        return List.copyOf(list);
    }

    /**
     * A row of an answer.
     *
     * @param key of the fact or line, stable; rows of a table share its key
     * @param label what it is, in words; may be empty
     * @param text its value with unit
     * @param answer the answer that the value is, where it is one whole answer; its text is that of the row
     */
    public record Row(String key, String label, String text, Optional<RenderedAnswer> answer) {

        /**
         * Takes what is there.
         *
         * @param key of the row
         * @param label in words
         * @param text in words
         * @param answer that the text is of, if it is of one
         */
        public Row {
            Objects.requireNonNull(key, "key");
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(answer, "answer");
        }

        /**
         * {@return a row of words}
         *
         * @param key of the row
         * @param label in words
         * @param text in words
         */
        public static Row of(String key, String label, String text) {
            return new Row(key, label, text, Optional.empty());
        }

        /**
         * {@return a row that is an answer}
         *
         * @param key of the row
         * @param label in words
         * @param answer its value
         */
        public static Row of(String key, String label, RenderedAnswer answer) {
            return new Row(key, label, Objects.requireNonNull(answer, "answer").toString(), Optional.of(answer));
        }
    }

    /**
     * A sentence after the rows.
     *
     * @param code lower case with hyphens; stable
     * @param text the sentence
     */
    public record Note(String code, String text) {

        /**
         * Takes what is there.
         *
         * @param code of the note
         * @param text in words
         */
        public Note {
            Objects.requireNonNull(code, "code");
            Objects.requireNonNull(text, "text");
        }
    }

    /** Returns the text: the finding, aligned rows, notes. */
    @Override
    public String toString() {
        return Form.layout(this).toString();
    }
}
