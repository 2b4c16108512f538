package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.neckgeom.text.Names;
import org.neckgeom.text.Report;

/**
 * One part of a plan: a heading, rows of label and value, and notes under them. Immutable.
 *
 * @param title the heading
 * @param rows what is to be set, cut or known
 * @param notes sentences that belong to it
 */
public record PlanSection(String title, List<Row> rows, List<String> notes) {

    private static final int MOST_CHARACTERS = 950;

    /** Title of the section that lists the steps of the work. */
    public static final String ORDER = "Order of work";

    /** Title of the section that lists the frets. */
    public static final String FRETS = "Frets and stations, from the nut";

    /** Title of the section that lists both ends of fanned frets. */
    public static final String FANNED = "Fanned frets, at the board's edges";

    /**
     * A label and its value.
     *
     * @param label what it is
     * @param value its value with unit, one line or several
     */
    public record Row(String label, String value) {

        /**
         * Checks that nothing is missing.
         *
         * @param label what it is
         * @param value its value with unit, one line or several
         */
        public Row {
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(value, "value");
        }

        /** Returns it as {@code limit: within 0.1 mm}. */
        @Override
        public String toString() {
            return label.isEmpty() ? value : label + ": " + value;
        }
    }

    /**
     * Checks that nothing is missing and copies the lists.
     *
     * @param title the heading
     * @param rows what is to be set, cut or known
     * @param notes sentences that belong to it
     */
    public PlanSection {
        Objects.requireNonNull(title, "title");
        rows = Names.all(rows, "row");
        notes = Names.all(notes, "note");
    }

    /** Returns the heading, then the rows, then the notes, as many of them as JShell prints. */
    @Override
    public String toString() {
        Report report = Report.titled(title);
        rows.forEach(row -> report.row(row.label(), row.value()));
        notes.forEach(report::note);
        String text = report.toString();
        return text.length() <= MOST_CHARACTERS
                ? text
                : text.substring(
                                0,
                                Math.max(
                                        text.lastIndexOf('\n', MOST_CHARACTERS),
                                        Math.min(title.length(), MOST_CHARACTERS)))
                        + "\n  ... rows() and notes() have all";
    }

    static Draft titled(String title) {
        return new Draft(title);
    }

    /** A section being written. */
    static final class Draft {

        private final String title;
        private final List<Row> rows = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();

        private Draft(String title) {
            this.title = title;
        }

        Draft row(String label, Object value) {
            rows.add(new Row(label, String.valueOf(value)));
            return this;
        }

        Draft note(String note) {
            notes.add(note);
            return this;
        }

        PlanSection done() {
            return new PlanSection(title, rows, notes);
        }
    }
}
