package org.neckgeom.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The shape of a printed answer: a title with its verdict, then aligned rows of label and value, then notes.
 *
 * <pre>
 * Slot offset: UNDECIDED
 *   offset          0.140 mm
 *   limit           within 0.150 mm
 *   note: read again, or read better
 * </pre>
 *
 * <p>A builder for one {@code toString}; not shared between threads.
 */
public final class Report {

    private static final int MOST = 999;

    private final String title;
    private final List<String[]> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private Report(String title) {
        this.title = Objects.requireNonNull(title, "title");
    }

    /**
     * {@return a report with the given first line}
     *
     * @param title such as {@code Slot offset}
     */
    public static Report titled(String title) {
        return new Report(title);
    }

    /**
     * Adds a row.
     *
     * @param label the row's label
     * @param value its value with unit
     * @return this report
     */
    public Report row(String label, Object value) {
        Objects.requireNonNull(label, "label");
        rows.add(new String[] {label, Objects.requireNonNull(value, "value").toString()});
        return this;
    }

    /**
     * Adds a note under the rows.
     *
     * @param note a sentence
     * @return this report
     */
    public Report note(String note) {
        notes.add(Objects.requireNonNull(note, "note"));
        return this;
    }

    /**
     * {@return the lines as {@link #toString}, cut at the end of a line where JShell would cut a longer text in its
     * middle; at most {@value #MOST} characters}
     */
    public String fitted() {
        return cut(toString(), MOST, "\n  ...");
    }

    /**
     * {@return a text, or as many of its lines as there is room for and an ending; cut at the end of a line where one
     * ends early enough}
     *
     * @param text of one line or more
     * @param most characters, the ending among them
     * @param ending after the last line shown
     */
    public static String cut(String text, int most, String ending) {
        if (text.length() <= most) {
            return text;
        }
        int room = most - ending.length();
        int end = text.lastIndexOf('\n', room);
        return text.substring(0, end > 0 ? end : room) + ending;
    }

    /** Returns the lines, parted by line feeds, without one at the end. */
    @Override
    public String toString() {
        int width = 0;
        for (String[] row : rows) {
            width = Math.max(width, row[0].length());
        }
        StringBuilder out = new StringBuilder(title);
        for (String[] row : rows) {
            out.append("\n  ").append(row[0]).append(" ".repeat(width - row[0].length() + 2));
            out.append(row[1].replace("\n", "\n  " + " ".repeat(width + 2)));
        }
        for (String note : notes) {
            out.append("\n  ").append(note);
        }
        return out.toString();
    }
}
