package org.neckgeom.form;

import java.util.List;
import java.util.Objects;
import org.neckgeom.text.Names;
import org.neckgeom.text.Report;

/**
 * An answer in words, in one style of length, ready to be laid out by a console or a page.
 *
 * @param code of the finding, lower case with hyphens; stable
 * @param finding the first line
 * @param rows what belongs to it
 * @param notes sentences after the rows
 */
public record RenderedAnswer(String code, String finding, List<Row> rows, List<Note> notes) {
    private static final int MOST_CHARACTERS = 984;

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
        rows = Names.all(rows, "row");
        notes = Names.all(notes, "note");
    }

    /**
     * {@return words alone; a finding of the code {@code words}}
     *
     * @param text one line or more
     */
    public static RenderedAnswer words(String text) {
        return new RenderedAnswer("words", text, List.of(), List.of());
    }

    /**
     * A row of an answer.
     *
     * @param key of the fact or line, stable; rows of a table share its key
     * @param label the fact's label in words; may be empty
     * @param answer its value with unit, or an answer inside
     */
    public record Row(String key, String label, RenderedAnswer answer) {

        /**
         * Takes what is there.
         *
         * @param key of the row
         * @param label in words
         * @param answer its value
         */
        public Row {
            Objects.requireNonNull(key, "key");
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(answer, "answer");
        }

        /** {@return the value in words; one line or more} */
        public String text() {
            return answer.whole();
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

    Report report() {
        Report report = Report.titled(finding);
        rows.forEach(row -> report.row(row.label(), row.text()));
        notes.forEach(note -> report.note(note.text()));
        return report;
    }

    /** Returns the text, finding, aligned rows and notes, as much of it as JShell prints. */
    @Override
    public String toString() {
        return Report.cut(whole(), MOST_CHARACTERS, "\n  ... rows() and notes() have all");
    }

    /** The text: the finding, aligned rows, notes. */
    String whole() {
        return rows.isEmpty() && notes.isEmpty() ? finding : report().toString();
    }
}
