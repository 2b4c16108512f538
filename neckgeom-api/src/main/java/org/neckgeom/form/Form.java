package org.neckgeom.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * The form of an answer: its facts, and the sentences that name them. Immutable; made once for a type, in a constant.
 *
 * <p>A fact has a key, a {@link Kind}, a meaning and a getter. A sentence names facts in braces, each in a way to print it:
 * <code>{thickness}</code> as {@code toString()} has it, <code>{thickness:brief}</code> as {@link LengthStyle#brief} does;
 * the other ways are words such as {@code text}, {@code small}, {@code mark}, {@code 2}, {@code ..4}, {@code size},
 * {@code table}, {@code of pass/passes}. A brace that names no fact is refused while the class loads.
 *
 * <p>A sentence is written when its condition holds and every fact it names is there: an empty {@code Optional} and a
 * number that is not finite are facts that are not there. The first finding to be written is the first line of the text.
 *
 * @param <T> the type of the answer
 */
public final class Form<T> {

    /** The key under which data names its form. */
    public static final String ANSWER = "answer";

    /** What a brace names that counts the items a text leaves out. */
    static final String MORE = "more";

    private static final int LONGEST_KEY = 40;
    private static final Set<String> TAKEN = Set.of("answer", "finding", "notes", "text", MORE);

    record Fact<T>(String key, Kind<?> kind, String meaning, BiFunction<T, LengthStyle, Object> from) {}

    /** A sentence with its code; a phrase of another sentence has a name. */
    private record Sentence<T>(String code, BiPredicate<T, LengthStyle> when, Template words, boolean alone) {

        @Nullable
        String fill(Facts<T> facts) {
            return holds(facts) ? words.fill(facts) : null;
        }

        boolean holds(Facts<T> facts) {
            return when.test(facts.answer(), facts.style());
        }
    }

    /** What is written under the finding, with the codes of the notes it may write. */
    private record Part<T>(List<String> noteCodes, Writer<T> writer) {}

    /** Writes one row, one row for each item of a list, or one note for each. */
    private interface Writer<T> {
        void write(Facts<T> facts, boolean whole, List<RenderedAnswer.Row> rows, List<RenderedAnswer.Note> notes);
    }

    private final String name;
    private final List<Fact<T>> facts;
    private final List<Sentence<T>> phrases;
    private final List<Sentence<T>> findings;
    private final List<Part<T>> parts;
    private final boolean fits;
    private final @Nullable BiFunction<? super T, LengthStyle, String> layout;

    private Form(
            String name,
            List<Fact<T>> facts,
            List<Sentence<T>> phrases,
            List<Sentence<T>> findings,
            List<Part<T>> parts,
            boolean fits,
            @Nullable BiFunction<? super T, LengthStyle, String> layout) {
        this.name = name;
        this.facts = facts;
        this.phrases = phrases;
        this.findings = findings;
        this.parts = parts;
        this.fits = fits;
        this.layout = layout;
    }

    /**
     * {@return a form without facts}
     *
     * @param <T> the type of the answer
     * @param name of the answer in data, lower case with hyphens, such as {@code slot-depth}
     */
    public static <T> Form<T> of(String name) {
        return of(checked(name, "name of a form", Form::isCode), List.of());
    }

    private static <T> Form<T> of(String name, List<Fact<T>> facts) {
        return new Form<>(name, facts, List.of(), List.of(), List.of(), false, null);
    }

    /** Returns the form of one finding, in words that name all of the facts there are. */
    static <T> Form<T> of(String name, List<Fact<T>> facts, String words) {
        return of(name, facts).finds(name, words);
    }

    /** Returns a code that is fit to be one. */
    static String code(String code) {
        return checked(code, "code", Form::isCode);
    }

    /** Returns a key that is fit to be one and not given yet. */
    static String key(String key, boolean isGiven) {
        checked(key, "key", Form::isKey);
        if (TAKEN.contains(key) || isGiven) {
            throw Refusal.of(
                    "key of a fact",
                    "once",
                    "be given once and not be " + TAKEN.stream().sorted().toList(),
                    key);
        }
        return key;
    }

    private static boolean isCode(String code) {
        boolean fits = !code.isEmpty() && code.charAt(0) >= 'a' && code.charAt(code.length() - 1) != '-';
        for (int i = 0; i < code.length() && fits; i++) {
            char c = code.charAt(i);
            fits = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-' && code.charAt(i - 1) != '-';
        }
        return fits;
    }

    private static boolean isKey(String key) {
        boolean fits = !key.isEmpty() && key.length() <= LONGEST_KEY && key.charAt(0) >= 'a';
        for (int i = 0; i < key.length() && fits; i++) {
            char c = key.charAt(i);
            fits = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
        }
        return fits;
    }

    private static String checked(String word, String what, Predicate<String> fits) {
        if (!fits.test(Objects.requireNonNull(word, what))) {
            throw Refusal.of(what, "code", "be like two-words, or like twoWords for a key", Words.quoted(word));
        }
        return word;
    }

    /**
     * {@return the form with a fact}
     *
     * @param <V> the type of the value
     * @param key in data and in braces, such as {@code leastThickness}
     * @param kind how it is written
     * @param meaning for schema and documentation
     * @param from reads it off an answer; an {@code Optional} has its own method
     */
    public <V> Form<T> fact(String key, Kind<V> kind, String meaning, Function<? super T, ? extends V> from) {
        Objects.requireNonNull(from, "from");
        return fact(key, kind, meaning, (T answer, LengthStyle style) -> from.apply(answer));
    }

    /**
     * {@return the form with a fact that need not be there}
     *
     * @param <V> the type of the value
     * @param key in data and in braces
     * @param kind how it is written
     * @param meaning for schema and documentation
     * @param from reads it off an answer
     */
    public <V> Form<T> factIfAny(
            String key, Kind<V> kind, String meaning, Function<? super T, ? extends Optional<? extends V>> from) {
        Objects.requireNonNull(from, "from");
        return add(key, kind, meaning, (answer, style) -> from.apply(answer));
    }

    /**
     * {@return the form with a fact that is another in each style, such as a round number to quote a rate by}
     *
     * @param <V> the type of the value
     * @param key in data and in braces
     * @param kind how it is written
     * @param meaning for schema and documentation
     * @param from reads it off an answer in a style
     */
    public <V> Form<T> fact(
            String key, Kind<V> kind, String meaning, BiFunction<? super T, LengthStyle, ? extends V> from) {
        Objects.requireNonNull(from, "from");
        return add(key, kind, meaning, from::apply);
    }

    private Form<T> add(String key, Kind<?> kind, String meaning, BiFunction<T, LengthStyle, Object> from) {
        key(key, indexOf(key) >= 0);
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(meaning, "meaning");
        return new Form<>(
                name, and(facts, new Fact<>(key, kind, meaning, from)), phrases, findings, parts, fits, layout);
    }

    /**
     * {@return the form with a fact that has a row of its own in the text}
     *
     * @param <V> the type of the value
     * @param key in data and in braces
     * @param label of the row, in words
     * @param kind how it is written
     * @param meaning for schema and documentation
     * @param from reads it off an answer
     */
    public <V> Form<T> row(
            String key, String label, Kind<V> kind, String meaning, Function<? super T, ? extends V> from) {
        return fact(key, kind, meaning, from).line(key, label, "{" + key + "}");
    }

    /**
     * {@return the form with words that other sentences can name in braces}
     *
     * <p>Of several with one name the first whose condition holds is taken; where there is none, the brace is empty.
     *
     * @param name in braces
     * @param when its condition
     * @param words with facts in braces
     */
    public Form<T> phrase(String name, Predicate<? super T> when, String words) {
        Objects.requireNonNull(when, "condition");
        checked(name, "key", Form::isKey);
        if (indexOf(name) >= 0 || TAKEN.contains(name)) {
            throw Refusal.of("name of a phrase", "once", "be no key of a fact", name);
        }
        Sentence<T> sentence = sentence(name, (answer, style) -> when.test(answer), words, false);
        return new Form<>(this.name, facts, and(phrases, sentence), findings, parts, fits, layout);
    }

    /**
     * {@return the form with words that other sentences can name in braces, written wherever their facts are there}
     *
     * @param name in braces
     * @param words with facts in braces
     */
    public Form<T> phrase(String name, String words) {
        return phrase(name, answer -> true, words);
    }

    /**
     * {@return the form with a finding; the first whose condition holds is the first line of the text}
     *
     * @param code lower case with hyphens; stable
     * @param when its condition
     * @param words with facts in braces
     */
    public Form<T> finds(String code, Predicate<? super T> when, String words) {
        Objects.requireNonNull(when, "condition");
        return finds(code, (T answer, LengthStyle style) -> when.test(answer), words);
    }

    /**
     * {@return the form with a finding, by a condition that knows the style}
     *
     * @param code lower case with hyphens; stable
     * @param when its condition
     * @param words with facts in braces
     */
    public Form<T> finds(String code, BiPredicate<? super T, LengthStyle> when, String words) {
        return finding(code, when, words, false);
    }

    /**
     * {@return the form with a finding that is taken when no other is before it}
     *
     * @param code lower case with hyphens; stable
     * @param words with facts in braces
     */
    public Form<T> finds(String code, String words) {
        return finding(code, Form::always, words, false);
    }

    /**
     * {@return the form with a finding after which no rows or notes are written}
     *
     * @param code lower case with hyphens; stable
     * @param when its condition
     * @param words with facts in braces
     */
    public Form<T> findsOnly(String code, Predicate<? super T> when, String words) {
        Objects.requireNonNull(when, "condition");
        return finding(code, (T answer, LengthStyle style) -> when.test(answer), words, true);
    }

    private Form<T> finding(String code, BiPredicate<? super T, LengthStyle> when, String words, boolean alone) {
        code(code);
        return new Form<>(name, facts, phrases, and(findings, sentence(code, when, words, alone)), parts, fits, layout);
    }

    /**
     * {@return the form with a row made of words}
     *
     * @param key of the row
     * @param label of the row, in words; may name facts
     * @param words with facts in braces
     */
    public Form<T> line(String key, String label, String words) {
        return line(key, label, Form::always, words);
    }

    /**
     * {@return the form with a row made of words, written under a condition}
     *
     * @param key of the row
     * @param label of the row, in words; may name facts
     * @param when its condition
     * @param words with facts in braces
     */
    public Form<T> line(String key, String label, Predicate<? super T> when, String words) {
        Objects.requireNonNull(when, "condition");
        return line(key, label, (T answer, LengthStyle style) -> when.test(answer), words);
    }

    private Form<T> line(String key, String label, BiPredicate<? super T, LengthStyle> when, String words) {
        checked(key, "key", Form::isKey);
        Template labels = template(Objects.requireNonNull(label, "label"));
        Sentence<T> sentence = sentence(key, when, words, false);
        return part(List.of(), (known, whole, rows, notes) -> {
            if (sentence.holds(known)) {
                addRow(key, labels, sentence.words(), known, rows);
            }
        });
    }

    /** Adds a row of words, or of the answer that they are; none where a fact they name is not there. */
    private static void addRow(
            String key, Template label, Template words, Facts<?> known, List<RenderedAnswer.Row> rows) {
        RenderedAnswer inside = words.answer(known);
        String text = inside == null ? words.fill(known) : null;
        RenderedAnswer answer = text == null ? inside : RenderedAnswer.words(text);
        String shown = answer == null ? null : label.fill(known);
        if (answer != null && shown != null) {
            rows.add(new RenderedAnswer.Row(key, shown, answer));
        }
    }

    /**
     * {@return the form with a row for each item of a table}
     *
     * @param key of the fact, of a kind made by {@link Kind#table}
     * @param label of a row, with facts of the item in braces
     * @param words with facts of the item in braces
     */
    public Form<T> each(String key, String label, String words) {
        return each(key, label, words, Integer.MAX_VALUE, "");
    }

    /**
     * {@return the form with a row for each of the first items of a table, and a note for the rest} {@link #whole}
     * writes them all.
     *
     * @param key of the fact, of a kind made by {@link Kind#table}
     * @param label of a row, with facts of the item in braces
     * @param words with facts of the item in braces
     * @param most 1 or more rows at most
     * @param rest a note on the items left out, with <code>{more}</code> for how many they are; empty for none
     */
    public Form<T> each(String key, String label, String words, int most, String rest) {
        return each(key, label, words, atMost(most, "most rows"), rest);
    }

    private static <T> ToIntFunction<T> atMost(int most, String what) {
        if (!(most >= 1)) {
            throw Refusal.of(what, "at-least", "be 1 or more", "were", most);
        }
        return answer -> most;
    }

    /**
     * {@return the form with a row for each of the first items of a table, as many as the answer leaves room for, and a
     * note for the rest} {@link #whole} writes them all.
     *
     * @param key of the fact, of a kind made by {@link Kind#table}
     * @param label of a row, with facts of the item in braces
     * @param words with facts of the item in braces
     * @param most 0 or more rows at most, for an answer
     * @param rest a note on the items left out, with <code>{more}</code> for how many they are; empty for none
     */
    public Form<T> each(String key, String label, String words, ToIntFunction<? super T> most, String rest) {
        return items(key, label, words, most, rest, false);
    }

    private Form<T> items(
            String key, String label, String words, ToIntFunction<? super T> most, String rest, boolean asNotes) {
        Objects.requireNonNull(most, "most");
        Template end = template(Objects.requireNonNull(rest, "rest"));
        Each<T, ?> each = new Each<>(this, key, form -> form.template(label), form -> form.template(words));
        List<String> codes = new ArrayList<>(asNotes ? List.of(key) : List.of());
        if (!rest.isEmpty()) {
            codes.add(MORE);
        }
        return part(codes, (known, whole, rows, notes) -> {
            List<Object> items = each.items(known);
            int shown = whole ? items.size() : Math.min(most.applyAsInt(known.answer()), items.size());
            List<RenderedAnswer.Row> written = asNotes ? new ArrayList<>() : rows;
            for (Object item : items.subList(0, shown)) {
                each.row(item, known.style(), written);
            }
            if (asNotes) {
                written.forEach(row -> notes.add(new RenderedAnswer.Note(key, row.text())));
            }
            String left = items.size() > shown ? end.fill(known.more(items.size() - shown)) : null;
            if (left != null && !left.isEmpty()) {
                notes.add(new RenderedAnswer.Note(MORE, left));
            }
        });
    }

    /**
     * {@return the form with a note for each item of a table}
     *
     * @param key of the fact, of a kind made by {@link Kind#table}
     * @param words with facts of the item in braces
     */
    public Form<T> noteEach(String key, String words) {
        return noteEach(key, words, Integer.MAX_VALUE, "");
    }

    /**
     * {@return the form with a note for each of the first items of a table, and one for the rest} {@link #whole} writes
     * them all.
     *
     * @param key of the fact, of a kind made by {@link Kind#table}
     * @param words with facts of the item in braces
     * @param most 1 or more notes at most
     * @param rest a note on the items left out, with <code>{more}</code> for how many they are; empty for none
     */
    public Form<T> noteEach(String key, String words, int most, String rest) {
        return items(key, "", words, atMost(most, "most notes"), rest, true);
    }

    /**
     * {@return the form with a sentence after the rows}
     *
     * @param code lower case with hyphens; stable
     * @param when its condition
     * @param words with facts in braces
     */
    public Form<T> note(String code, Predicate<? super T> when, String words) {
        Objects.requireNonNull(when, "condition");
        return note(code, (T answer, LengthStyle style) -> when.test(answer), words);
    }

    /**
     * {@return the form with a sentence after the rows, by a condition that knows the style}
     *
     * @param code lower case with hyphens; stable
     * @param when its condition
     * @param words with facts in braces
     */
    public Form<T> note(String code, BiPredicate<? super T, LengthStyle> when, String words) {
        code(code);
        Sentence<T> sentence = sentence(code, when, words, false);
        return part(List.of(code), (known, whole, rows, notes) -> {
            String text = sentence.fill(known);
            if (text != null) {
                notes.add(new RenderedAnswer.Note(code, text));
            }
        });
    }

    /**
     * {@return the form with a sentence after the rows, written wherever its facts are there}
     *
     * @param code lower case with hyphens; stable
     * @param words with facts in braces
     */
    public Form<T> note(String code, String words) {
        return note(code, Form::always, words);
    }

    /**
     * {@return the form of an answer whose text is cut at the end of a line where a shell would cut it in its middle}
     */
    public Form<T> fitted() {
        return new Form<>(name, facts, phrases, findings, parts, true, null);
    }

    /**
     * {@return the form of an answer whose text has a layout of its own}
     *
     * @param text writes the whole text of an answer in a style
     */
    public Form<T> laidOut(BiFunction<? super T, LengthStyle, String> text) {
        return new Form<>(name, facts, phrases, findings, parts, false, Objects.requireNonNull(text, "text"));
    }

    private List<String> noteCodes() {
        return parts.stream()
                .flatMap(part -> part.noteCodes.stream())
                .distinct()
                .toList();
    }

    /** Whether its findings state more than its name does. */
    private boolean findsMore() {
        return findings.size() > 1 || !findings.get(0).code().equals(name);
    }

    private static boolean always(Object answer, LengthStyle style) {
        return true;
    }

    private Form<T> part(List<String> noteCodes, Writer<T> writer) {
        return new Form<>(name, facts, phrases, findings, and(parts, new Part<>(noteCodes, writer)), fits, layout);
    }

    private Sentence<T> sentence(String code, BiPredicate<? super T, LengthStyle> when, String words, boolean alone) {
        Objects.requireNonNull(when, "condition");
        return new Sentence<>(code, when::test, template(Objects.requireNonNull(words, "words")), alone);
    }

    private Template template(String words) {
        return Template.of(this, words);
    }

    /** The kind of a fact or phrase; null where there is none of that name. */
    @Nullable
    Kind<?> kindOf(String key) {
        int index = indexOf(key);
        if (index >= 0) {
            return facts.get(index).kind();
        }
        if (key.equals(MORE)) {
            return Kind.WHOLE;
        }
        return phrases.stream().anyMatch(phrase -> phrase.code().equals(key)) ? Kind.NAME : null;
    }

    private static <E> List<E> and(List<E> list, E one) {
        List<E> all = new ArrayList<>(list);
        all.add(one);
        return List.copyOf(all);
    }

    /** The items of a table with their form and what is written of each. */
    private static final class Each<T, R> {
        private final int index;
        private final Form<R> form;
        private final Template label;
        private final Template words;
        private final String key;

        @SuppressWarnings("unchecked") // a table holds what its form is of
        Each(Form<T> outer, String key, Function<Form<R>, Template> label, Function<Form<R>, Template> words) {
            this.index = outer.indexOf(Objects.requireNonNull(key, "key"));
            List<Form<?>> inside =
                    index < 0 ? List.of() : outer.facts.get(index).kind().inside();
            if (inside.isEmpty()) {
                throw Refusal.of(
                        "form of \"" + outer.name + "\"",
                        "table",
                        "write rows of a table",
                        "to write them of " + Words.quoted(key));
            }
            this.key = key;
            this.form = (Form<R>) inside.get(0);
            this.label = label.apply(form);
            this.words = words.apply(form);
        }

        @SuppressWarnings("unchecked") // as above
        List<Object> items(Facts<T> facts) {
            Object items = facts.value(index);
            return items == null ? List.of() : (List<Object>) items;
        }

        @SuppressWarnings("unchecked") // as above
        void row(Object item, LengthStyle style, List<RenderedAnswer.Row> rows) {
            addRow(key, label, words, new Facts<>(form, (R) item, style), rows);
        }
    }

    List<Fact<T>> facts() {
        return facts;
    }

    int indexOf(String key) {
        for (int i = 0; i < facts.size(); i++) {
            if (facts.get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    /** The phrase of a name that holds; empty where none does. */
    String phrase(String phrase, Facts<T> known) {
        for (Sentence<T> candidate : phrases) {
            String text = candidate.code().equals(phrase) ? candidate.fill(known) : null;
            if (text != null) {
                return text;
            }
        }
        return "";
    }

    /** {@return the name of the answer in data; lower case with hyphens} */
    public String name() {
        return name;
    }

    /**
     * {@return an answer in words; rows and notes}
     *
     * @param answer of the type of this form
     * @param style how lengths are printed
     */
    public RenderedAnswer render(T answer, LengthStyle style) {
        return render(answer, style, false);
    }

    private RenderedAnswer render(T answer, LengthStyle style, boolean whole) {
        Facts<T> known =
                new Facts<>(this, Objects.requireNonNull(answer, "answer"), Objects.requireNonNull(style, "style"));
        return whole ? written(known, true) : render(known);
    }

    /** The words of an answer that keeps those in its own style. */
    private RenderedAnswer render(Facts<T> known) {
        if (!(known.answer() instanceof KeptAnswer answer && answer.isOwn(this) && answer.style() == known.style())) {
            return written(known, false);
        }
        RenderedAnswer kept = answer.kept();
        if (kept == null) {
            kept = written(known, false);
            answer.keep(kept);
        }
        return kept;
    }

    private RenderedAnswer written(Facts<T> known, boolean whole) {
        List<RenderedAnswer.Row> rows = new ArrayList<>();
        List<RenderedAnswer.Note> notes = new ArrayList<>();
        for (Sentence<T> finding : findings) {
            boolean canBeWhole = (finding.alone() || parts.isEmpty()) && finding.holds(known);
            RenderedAnswer inside = canBeWhole ? finding.words().answer(known) : null;
            if (inside != null) {
                return new RenderedAnswer(finding.code(), inside.finding(), inside.rows(), inside.notes());
            }
            String text = finding.fill(known);
            if (text != null) {
                if (!finding.alone()) {
                    parts.forEach(part -> part.writer.write(known, whole, rows, notes));
                }
                return new RenderedAnswer(finding.code(), text, rows, notes);
            }
        }
        throw Refusal.of("answer", "unknown", "be one that form \"" + name + "\" has a finding for", "none of them");
    }

    /**
     * {@return an answer as text; rows, notes; lines end in line feeds, the last has none}
     *
     * @param answer of the type of this form
     * @param style how lengths are printed
     */
    public String text(T answer, LengthStyle style) {
        return laidOut(answer, style, render(answer, style));
    }

    private String laidOut(T answer, LengthStyle style, RenderedAnswer rendered) {
        if (layout != null) {
            return layout.apply(answer, style);
        }
        return fits ? rendered.report().fitted() : rendered.whole();
    }

    /**
     * {@return an answer as text with every row of its tables, however many; the text; may be long}
     *
     * @param answer of the type of this form
     * @param style how lengths are printed
     */
    public String whole(T answer, LengthStyle style) {
        return render(answer, style, true).whole();
    }

    @SuppressWarnings("unchecked") // an answer gives the form of its own type
    private static <T> Form<T> formOf(Answer answer) {
        return (Form<T>) Objects.requireNonNull(answer, "answer").form();
    }

    static String textOf(Answer answer, LengthStyle style) {
        return Form.<Answer>formOf(answer).text(answer, style);
    }

    /**
     * {@return any answer as data: maps, lists, texts, numbers and booleans, in the order of its form; its facts by
     * key, its finding and notes by code, and its text}
     *
     * @param answer any
     */
    public static Map<String, Object> dataOf(Answer answer) {
        return dataOf(answer, Objects.requireNonNull(answer, "answer").style());
    }

    static Map<String, Object> dataOf(Answer answer, LengthStyle style) {
        return Form.<Answer>formOf(answer).data(answer, style);
    }

    static String wholeOf(Answer answer, LengthStyle style) {
        return Form.<Answer>formOf(answer).whole(answer, style);
    }

    static RenderedAnswer renderedOf(Answer answer, LengthStyle style) {
        return Form.<Answer>formOf(answer).render(answer, style);
    }

    static @Nullable RenderedAnswer insideOf(Answer answer, LengthStyle style, boolean whole) {
        return Form.<Answer>formOf(answer).inside(answer, style, whole);
    }

    /** The answer for a row of another; null where its text has a layout of its own. */
    @Nullable
    RenderedAnswer inside(T answer, LengthStyle style, boolean whole) {
        return whole || layout == null ? render(answer, style, whole) : null;
    }

    /**
     * {@return an answer as data: maps, lists, texts, numbers and booleans, in the order of this form; its facts by
     * key, its finding and notes by code, and its text}
     *
     * @param answer of the type of this form
     * @param style whose unit lengths are written in, millimetres or inches
     */
    public Map<String, Object> data(T answer, LengthStyle style) {
        Facts<T> known =
                new Facts<>(this, Objects.requireNonNull(answer, "answer"), Objects.requireNonNull(style, "style"));
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("answer", name);
        for (int i = 0; i < facts.size(); i++) {
            Object value = known.value(i);
            if (value != null) {
                data.put(facts.get(i).key(), facts.get(i).kind().dataOf(value, style));
            }
        }
        if (!findings.isEmpty()) {
            RenderedAnswer rendered = render(known);
            if (findsMore()) {
                data.put("finding", rendered.code());
            }
            if (!noteCodes().isEmpty()) {
                data.put(
                        "notes",
                        rendered.notes().stream()
                                .map(RenderedAnswer.Note::code)
                                .distinct()
                                .toList());
            }
            data.put("text", laidOut(answer, style, rendered));
        }
        return data;
    }

    /**
     * {@return answers as comma-separated values (RFC 4180): a line of keys with units, then a line for each answer;
     * the lines, each ending in CR LF} Lists and answers inside are left to JSON.
     *
     * @param answers of the type of this form
     * @param style whose unit lengths are written in, millimetres or inches
     */
    public String csv(List<? extends T> answers, LengthStyle style) {
        Objects.requireNonNull(style, "style");
        List<Map<String, String>> rows = new ArrayList<>();
        for (T answer : Objects.requireNonNull(answers, "answers")) {
            Facts<T> known = new Facts<>(this, Objects.requireNonNull(answer, "answer"), style);
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < facts.size(); i++) {
                Object value = known.value(i);
                if (value != null) {
                    Csv.cells(facts.get(i).key(), facts.get(i).kind().dataOf(value, style), cells);
                }
            }
            rows.add(cells);
        }
        return Csv.of(rows);
    }

    /** {@return the JSON Schema (2020-12) of this answer's data; as maps and lists, for {@link Json#of}} */
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.putAll(object());
        Map<String, Object> definitions = Kind.definitions();
        inside(new LinkedHashSet<>()).forEach(form -> definitions.put(form.name, form.object()));
        schema.put("$defs", definitions);
        return schema;
    }

    private Set<Form<?>> inside(Set<Form<?>> all) {
        for (Fact<T> fact : facts) {
            for (Form<?> form : fact.kind().inside()) {
                if (all.add(form)) {
                    form.inside(all);
                }
            }
        }
        return all;
    }

    private Map<String, Object> object() {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("answer", Map.of("const", name));
        for (Fact<T> fact : facts) {
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("description", fact.meaning());
            line.putAll(fact.kind().schemaLine());
            properties.put(fact.key(), line);
        }
        List<String> needed = new ArrayList<>(List.of("answer"));
        if (!findings.isEmpty()) {
            if (findsMore()) {
                properties.put(
                        "finding",
                        Map.of(
                                "enum",
                                findings.stream().map(Sentence::code).distinct().toList()));
                needed.add("finding");
            }
            List<String> codes = noteCodes();
            if (!codes.isEmpty()) {
                properties.put("notes", Map.of("type", "array", "items", Map.of("enum", codes)));
                needed.add("notes");
            }
            properties.put("text", Map.of("type", "string"));
            needed.add("text");
        }
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("type", "object");
        object.put("properties", properties);
        object.put("required", needed);
        object.put("additionalProperties", false);
        return object;
    }

    /** Returns the name and the keys of the facts. */
    @Override
    public String toString() {
        return "form of " + name + ": "
                + String.join(", ", facts.stream().map(Fact::key).toList());
    }
}
