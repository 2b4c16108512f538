package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.form.RenderedAnswer;
import org.neckgeom.form.Statement;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/** One part of a plan: a heading, rows that are answers or statements, and notes under them. Immutable. */
public final class PlanSection extends LeanAnswer {

    private final String code;
    private final String title;
    private final List<Row> rows;
    private final List<Statement> notes;

    private PlanSection(String code, String title, List<Row> rows, List<Statement> notes, LengthStyle style) {
        super(style);
        this.code = Objects.requireNonNull(code, "code");
        this.title = Objects.requireNonNull(title, "title");
        this.rows = Names.all(rows, "row");
        this.notes = Names.all(notes, "note");
    }

    /**
     * {@return a section}
     *
     * @param code lower case with hyphens; stable
     * @param title the heading, in words
     * @param rows what is to be set, cut or known
     * @param notes sentences that belong to it
     * @param style how lengths are printed
     */
    public static PlanSection of(String code, String title, List<Row> rows, List<Statement> notes, LengthStyle style) {
        PlanSection section = new PlanSection(code, title, rows, notes, style);
        // Its form refuses a code or key that cannot be one, and a key that is given twice.
        section.form();
        return section;
    }

    /**
     * A row: its label, and the answer.
     *
     * @param key in data, such as {@code afterEachPass}; stable
     * @param named its label, in words
     * @param answer its facts
     */
    public record Row(String key, Statement named, Answer answer) {

        /**
         * Checks that nothing is missing.
         *
         * @param key in data
         * @param named its label
         * @param answer its facts
         */
        public Row {
            Objects.requireNonNull(key, "key");
            Objects.requireNonNull(named, "named");
            Objects.requireNonNull(answer, "answer");
        }

        /** {@return the label, such as {@code passes}; may be empty} */
        public String label() {
            return named.toString();
        }

        /** {@return the answer in words; its value with unit, one line or several} */
        public String value() {
            return answer.text(named.style());
        }

        /** {@return the figure that the answer begins with, such as {@code 27.5 mm}; else nothing} */
        public Optional<String> figure() {
            return answer instanceof Statement statement ? statement.lead().map(Statement::toString) : Optional.empty();
        }

        /** Returns it as {@code limit: within 0.1 mm}. */
        @Override
        public String toString() {
            return label().isEmpty() ? value() : label() + ": " + value();
        }
    }

    /** {@return what the section is about; lower case with hyphens; stable} */
    public String code() {
        return code;
    }

    /** {@return the heading; in words} */
    public String title() {
        return title;
    }

    /** {@return what is to be set, cut or known} */
    public List<Row> rows() {
        return rows;
    }

    /** {@return sentences that belong to it} */
    public List<Statement> notes() {
        return notes;
    }

    /**
     * {@return this section without rows of some kinds}
     *
     * @param codes of the statements to leave out, such as {@code fret}
     */
    public PlanSection without(Set<String> codes) {
        Objects.requireNonNull(codes, "codes");
        List<Row> left = rows.stream()
                .filter(row -> !(row.answer() instanceof Statement statement && codes.contains(statement.code())))
                .toList();
        return new PlanSection(code, title, left, notes, style());
    }

    @Override
    public Form<PlanSection> form() {
        Form<PlanSection> form = Form.of(code);
        for (int i = 0; i < rows.size(); i++) {
            int index = i;
            Row row = rows.get(i);
            String label = row.label();
            if (row.named().hasFacts()) {
                String key = row.key() + "Of";
                form = form.fact(
                        key,
                        Kind.ANSWER,
                        "what the row is about",
                        its -> its.rows.get(index).named());
                label = "{" + key + "}";
            }
            form = form.fact(
                            row.key(),
                            Kind.ANSWER,
                            row.label(),
                            its -> its.rows.get(index).answer())
                    .line(row.key(), label, "{" + row.key() + "}");
        }
        for (int i = 0; i < notes.size(); i++) {
            int index = i;
            form = form.fact("note" + (i + 1), Kind.ANSWER, "a note", section -> section.notes.get(index))
                    .note(notes.get(i).code(), "{note" + (i + 1) + "}");
        }
        return form.finds(code, title);
    }

    /** What the form writes, without a form made for it. */
    @Override
    public RenderedAnswer rendered(LengthStyle style) {
        return new RenderedAnswer(
                code,
                title,
                rows.stream()
                        .map(row -> new RenderedAnswer.Row(
                                row.key(), row.named().text(style), row.answer().inside(style)))
                        .toList(),
                notes.stream()
                        .map(note -> new RenderedAnswer.Note(note.code(), note.text(style)))
                        .toList());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {code, title, rows, notes};
    }

    /** Returns the heading, then the rows, then the notes, as many of them as JShell prints. */
    @Override
    public String toString() {
        return rendered(style()).toString();
    }

    static Draft titled(SectionCode code, LengthStyle style) {
        return titled(code.code(), code.toString(), style);
    }

    static Draft titled(String code, String title, LengthStyle style) {
        return new Draft(code, title, style);
    }

    /** The same under a title of its own, for what its usual title does not fit. */
    static Draft titled(SectionCode code, String title, LengthStyle style) {
        return new Draft(code.code(), title, style);
    }

    /** A section being written. */
    static final class Draft {
        private final String code;
        private final String title;
        private final LengthStyle style;
        private final List<Row> rows = new ArrayList<>();
        private final List<Statement> notes = new ArrayList<>();

        private Draft(String code, String title, LengthStyle style) {
            this.code = code;
            this.title = title;
            this.style = style;
        }

        Draft row(String key, String label, Answer answer) {
            return row(key, Statement.of("label", label, style), answer);
        }

        Draft row(String key, Statement named, Answer answer) {
            rows.add(new Row(key, named, answer));
            return this;
        }

        /** A row of one value. */
        <V> Draft row(String key, String label, Kind<V> kind, V value) {
            return row(key, label, words("value", "{value}").with("value", kind, value));
        }

        Draft note(String code, String words) {
            return note(words(code, words));
        }

        Draft note(Statement note) {
            notes.add(note);
            return this;
        }

        Statement words(String code, String words) {
            return Statement.of(code, words, style);
        }

        PlanSection done() {
            return new PlanSection(code, title, rows, notes, style);
        }
    }
}
