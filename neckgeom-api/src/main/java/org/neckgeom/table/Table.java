package org.neckgeom.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/**
 * The keys of one noun, each written once beside it, in the order in which they are best written. A neck file, JSON, a
 * schema and help are read off it; {@link #read} and every fluent call end in the same maker, the noun's constructor.
 *
 * <p>Keys are added while the class of the noun loads; once values are made or read, a further one is refused.
 *
 * @param <T> the noun
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Table<T> {

    private final String name;
    private final String about;
    private final Function<Values<T>, ? extends T> maker;
    private final Function<T, Values<T>> split;
    final List<Key<T, ?>> keys = new ArrayList<>();
    private final List<Key<T, ?>> needed = new ArrayList<>();
    private final List<List<Key<T, ?>>> rivals = new ArrayList<>();
    private final List<List<Key<T, ?>>> together = new ArrayList<>();
    private final Map<Integer, Set<Key<?, ?>>> here = new HashMap<>();
    private final Map<Key<T, ?>, List<Key<T, ?>>> instead = new HashMap<>();
    private @Nullable Supplier<Form<T>> sentences;
    private @Nullable Form<T> form;
    private Moves moves = Moves.none();
    private @Nullable Moves allMoves;
    private boolean isUsed;

    private Table(String name, String about, Function<Values<T>, ? extends T> maker, Function<T, Values<T>> split) {
        this.name = Objects.requireNonNull(name, "name");
        this.about = Objects.requireNonNull(about, "about");
        this.maker = Objects.requireNonNull(maker, "maker");
        this.split = Objects.requireNonNull(split, "split");
    }

    /**
     * {@return a table without keys for a {@link Noun}}
     *
     * @param <T> the noun
     * @param name of the noun, such as {@code head}, for the messages of fluent calls; may be empty
     * @param about the noun that the table describes, in one line
     * @param maker its constructor
     */
    public static <T extends Noun<T>> Table<T> of(String name, String about, Function<Values<T>, T> maker) {
        return new Table<>(name, about, maker, noun -> ((Noun<T>) noun).values());
    }

    /**
     * {@return a table without keys for a value of any other type}
     *
     * @param <T> the noun
     * @param name of the noun, such as {@code head}, for the messages of fluent calls; may be empty
     * @param about the noun that the table describes, in one line
     * @param maker makes the noun of values, or refuses
     * @param split gives a noun's values
     */
    public static <T> Table<T> of(
            String name, String about, Function<Values<T>, ? extends T> maker, Function<T, Values<T>> split) {
        return new Table<>(name, about, maker, split);
    }

    /**
     * {@return this table, whose noun prints by a form of its keys}
     *
     * @param form makes it of the {@link #facts}; asked once, when the first noun is printed
     */
    public Table<T> printedBy(Supplier<Form<T>> form) {
        refuseIfUsed();
        sentences = Objects.requireNonNull(form, "form");
        return this;
    }

    /**
     * Adds a key that must be given.
     *
     * @param <V> the type of its value
     * @param key in words, lower case
     * @param type of its value
     * @param meaning in one line
     * @return the key
     */
    public <V> Key<T, V> needed(String key, Type<V> type, String meaning) {
        return add(key, type, null, true, false, meaning);
    }

    /**
     * Adds a key that may be left out.
     *
     * @param <V> the type of its value
     * @param key in words, lower case
     * @param type of its value
     * @param meaning in one line, with what holds when it is left out
     * @return the key
     */
    public <V> Key<T, V> optional(String key, Type<V> type, String meaning) {
        return add(key, type, null, false, false, meaning);
    }

    /**
     * Adds a key of another table as one that must be given.
     *
     * @param <V> the type of its value
     * @param like the other key, whose name, type and meaning it has
     * @return the key
     */
    public <V> Key<T, V> neededLike(Key<?, V> like) {
        return add(Objects.requireNonNull(like, "like").name(), like.type, null, true, false, like.about());
    }

    /**
     * Adds a key of another table as one that may be left out.
     *
     * @param <V> the type of its value
     * @param like the other key, whose name, type, default and meaning it has
     * @return the key
     */
    public <V> Key<T, V> optionalLike(Key<?, V> like) {
        return add(Objects.requireNonNull(like, "like").name(), like.type, like.usual, false, false, like.about());
    }

    /**
     * Adds a key with a default.
     *
     * @param <V> the type of its value
     * @param key in words, lower case
     * @param type of its value
     * @param usual holds when it is left out
     * @param meaning in one line, with the default in words
     * @return the key
     */
    public <V> Key<T, V> usual(String key, Type<V> type, V usual, String meaning) {
        return add(key, type, Objects.requireNonNull(usual, "usual"), false, false, meaning);
    }

    /**
     * Adds all keys of another table at the same level; their noun must be there.
     *
     * @param <V> the other noun
     * @param inner its table
     * @param whole keys of it that must be given here, though the noun could be without them elsewhere
     * @return the key of the whole
     */
    public <V> Key<T, V> inline(Table<V> inner, List<Key<V, ?>> whole) {
        Objects.requireNonNull(whole, "whole").forEach(each -> Objects.requireNonNull(each, "key"));
        Key<T, V> key = add(inner, null, true);
        here.put(key.index, Set.copyOf(whole));
        return key;
    }

    /**
     * Adds all keys of another table at the same level; there is a default where none of them is given.
     *
     * @param <V> the other noun
     * @param inner its table
     * @param usual holds when none of its keys is given
     * @return the key of the whole
     */
    public <V> Key<T, V> inline(Table<V> inner, V usual) {
        return add(inner, Objects.requireNonNull(usual, "usual"), false);
    }

    /**
     * Adds all keys of another table at the same level; the noun is absent where none of them is given.
     *
     * @param <V> the other noun
     * @param inner its table
     * @return the key of the whole
     */
    public <V> Key<T, V> inlineOptional(Table<V> inner) {
        return add(inner, null, false);
    }

    private <V> Key<T, V> add(Table<V> inner, @Nullable V usual, boolean isNeeded) {
        Objects.requireNonNull(inner, "inner");
        return add(inner.name, Types.group(inner), usual, isNeeded, true, inner.about);
    }

    private <V> Key<T, V> add(
            String key, Type<V> type, @Nullable V usual, boolean isNeeded, boolean isInline, String meaning) {
        refuseIfUsed();
        String words = (name + " " + key).strip();
        String label = words.isEmpty() ? meaning : words;
        Key<T, V> added = new Key<>(this, keys.size(), key, type, usual, isNeeded, isInline, meaning, label);
        keys.add(added);
        if (isNeeded) {
            needed.add(added);
        }
        return added;
    }

    private void refuseIfUsed() {
        if (isUsed) {
            throw Refusal.because(
                    name.isEmpty() ? "table" : name,
                    "used",
                    "the keys of " + about + " are fixed once it is read or made");
        }
    }

    <V> Key<T, V> replaced(Key<T, V> key) {
        refuseIfUsed();
        keys.set(key.index, key);
        return key;
    }

    /**
     * States that at most one of some keys may be given.
     *
     * @param some of this table's keys
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    public final void atMostOne(Key<T, ?>... some) {
        refuseIfUsed();
        rivals.add(rule(some));
    }

    /**
     * States that some keys are given together or not at all.
     *
     * @param some of this table's keys
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    public final void together(Key<T, ?>... some) {
        refuseIfUsed();
        together.add(rule(some));
    }

    private static <T> List<Key<T, ?>> rule(Key<T, ?>[] some) {
        for (Key<T, ?> key : Objects.requireNonNull(some, "some")) {
            Objects.requireNonNull(key, "key");
        }
        return List.of(some);
    }

    /**
     * States that a needed key is not missed where one of others is given.
     *
     * @param key of this table, needed
     * @param others of this table, one or more
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    public final void unless(Key<T, ?> key, Key<T, ?>... others) {
        instead.put(key, rule(others));
    }

    /**
     * States where keys of earlier versions have gone.
     *
     * @param list for every group of this table
     */
    public void moved(Moves list) {
        refuseIfUsed();
        moves = Objects.requireNonNull(list, "list");
    }

    /** {@return where keys of earlier versions have gone} */
    public Moves moves() {
        return moves;
    }

    /** {@return the noun that this table describes; one line} */
    public String about() {
        return about;
    }

    /** {@return the keys; in the order in which they are best written} */
    public List<Key<T, ?>> keys() {
        return List.copyOf(keys);
    }

    /** {@return no values, to begin with; nothing given} */
    public Values<T> values() {
        isUsed = true;
        return new Values<>(this, new Object[keys.size()]);
    }

    // ---------------------------------------------------------------- reading

    /**
     * Reads a noun: a neck file's tree, JSON, or the maps of any parser. Keys may be written in words or in camel case,
     * quantities as texts or as objects.
     *
     * @param tree the plain data
     * @return the noun
     * @throws IllegalArgumentException with all faults at once, each with its path
     */
    public T read(Tree tree) {
        return read(tree, Moves.none());
    }

    /**
     * Reads a noun from a document of an earlier version.
     *
     * @param tree the plain data
     * @param before moves of the whole document, before those of its groups
     * @return the noun
     * @throws IllegalArgumentException with all faults at once, each with its path in the document as written
     */
    public T read(Tree tree, Moves before) {
        Object plain = Objects.requireNonNull(tree, "tree").plain();
        Moves all = Objects.requireNonNull(before, "before").then(allMoves());
        Faults faults = Faults.of(plain);
        T read = read(plain, "", faults, all);
        faults.refuseIfAny();
        return Objects.requireNonNull(read, "noun");
    }

    @Nullable
    T read(@Nullable Object data, String path, Faults faults) {
        return read(data, path, faults, allMoves());
    }

    private @Nullable T read(@Nullable Object data, String path, Faults faults, Moves all) {
        if (!(data instanceof Map<?, ?> map)) {
            faults.add(path.isEmpty() ? "the whole" : path, "kind", "be " + allowed(), Faults.orEmpty(data));
            return null;
        }
        if (all.isNone()) {
            return readMoved(map, path, faults);
        }
        Faults own = faults.none();
        T read = null;
        Branch branch = Branch.of(map, path);
        try {
            branch = all.moved(branch);
            read = readMoved(branch.plain(), path, own);
        } catch (Refusal twice) {
            own.under("", twice);
        }
        for (Fault fault : own.all()) {
            faults.add(branch.asWritten(fault, path));
        }
        return read;
    }

    /** The moves of this table and of those whose keys are at the same level. */
    private Moves allMoves() {
        if (allMoves == null) {
            Moves all = moves;
            for (Key<T, ?> key : keys) {
                all = key.isInline ? all.then(key.type.inside().orElseThrow().allMoves()) : all;
            }
            allMoves = all;
        }
        return allMoves;
    }

    private @Nullable T readMoved(Map<?, ?> map, String path, Faults faults) {
        Source source = new Source(map, path, faults);
        boolean isAnswer = hasForm() && form().name().equals(map.get(Form.ANSWER));
        if (!isAnswer) { // which has what follows from its keys beside them
            source.noteUnknown(names(Spelling.WORDS), names(Spelling.JSON));
        }
        return read(source, Set.of());
    }

    private @Nullable T read(Source source, Set<Key<?, ?>> needed) {
        isUsed = true;
        int before = source.faults().count();
        @Nullable Object[] values = new Object[keys.size()];
        for (Key<T, ?> key : keys) {
            values[key.index] = read(key, source, key.isNeeded || needed.contains(key));
        }
        if (source.faults().count() > before) {
            return null;
        }
        try {
            return maker.apply(new Values<>(this, values));
        } catch (Refusal | NoAnswer refused) {
            source.faults().under(source.path(), refused);
            return null;
        }
    }

    private <V> @Nullable Object read(Key<T, V> key, Source source, boolean isNeeded) {
        if (key.isInline) {
            Table<?> inner = key.type.inside().orElseThrow();
            boolean isThere = isNeeded || inner.isAnyIn(source);
            return isThere ? inner.read(source, whole(key)) : null;
        }
        String path = source.path(key);
        if (!source.has(key)) {
            if (isNeeded && instead(key).stream().noneMatch(source::has)) {
                source.faults().sentence(path, "missing", missing(path, key));
            }
            return null;
        }
        Object value = source.value(key);
        if (value == null || value.equals("")) {
            source.faults().sentence(path, "empty", path + " has no value; give " + key.type.allowed());
            return null;
        }
        return key.type.read(value, path, source.faults());
    }

    private Set<Key<?, ?>> whole(Key<T, ?> key) {
        return here.getOrDefault(key.index, Set.of());
    }

    private boolean isAnyIn(Source source) {
        return keys.stream()
                .anyMatch(key -> key.isInline ? key.type.inside().orElseThrow().isAnyIn(source) : source.has(key));
    }

    // ---------------------------------------------------------------- facts

    /**
     * {@return a form with a fact for each key, there where it is given or has a default; no sentences yet}
     *
     * <p>A default is left out where a rule holds its key and others together, or apart: what the form writes is what
     * {@link #read} takes.
     *
     * @param answer name of the form, lower case with hyphens
     * @param others keys that are no facts of it, for the noun prints them otherwise
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    public final Form<T> facts(String answer, Key<T, ?>... others) {
        return facts(Form.of(answer), noun -> Optional.of(split.apply(noun)), rule(others));
    }

    private <A> Form<A> facts(Form<A> start, Function<A, Optional<Values<T>>> from, List<Key<T, ?>> others) {
        Form<A> facts = start;
        for (Key<T, ?> key : keys) {
            facts = others.contains(key) ? facts : fact(facts, key, from);
        }
        return facts;
    }

    private <A, V> Form<A> fact(Form<A> facts, Key<T, V> key, Function<A, Optional<Values<T>>> from) {
        boolean isRuled = Stream.of(rivals, together).flatMap(List::stream).anyMatch(rule -> rule.contains(key));
        Function<A, Optional<V>> value = noun ->
                from.apply(noun).filter(values -> !isRuled || values.has(key)).flatMap(values -> values.find(key));
        if (key.isInline) {
            Table<V> inner = ((GroupType<V>) key.type).table();
            return inner.facts(facts, noun -> value.apply(noun).map(inner::split), List.of());
        }
        return facts.factIfAny(key.name(Spelling.JSON), key.type.kind(), key.about(), value);
    }

    /** Whether its noun prints by a form made of its keys. */
    boolean hasForm() {
        return sentences != null;
    }

    /**
     * {@return the form by which the noun prints}
     *
     * @throws NullPointerException if {@link #printedBy} has named none
     */
    public Form<T> form() {
        if (form == null) {
            form = Objects.requireNonNull(sentences, "sentences").get();
        }
        return form;
    }

    static String missing(String where, Key<?, ?> key) {
        return where + " is missing; give " + key.type.allowed() + key.table.orInstead(key) + " (" + key.about() + ")";
    }

    private List<Key<T, ?>> instead(Key<T, ?> key) {
        return instead.getOrDefault(key, List.of());
    }

    private String orInstead(Key<?, ?> key) {
        return instead.containsKey(key)
                ? ", or " + instead.get(key).stream().map(Key::name).collect(Collectors.joining(" or ")) + " instead"
                : "";
    }

    /** Tests first, for every step comes by here: what is wrong is named only where something is. */
    void refuseLacking(Values<T> values) {
        boolean isWhole = here.isEmpty();
        for (int i = 0; i < needed.size(); i++) {
            isWhole &= !isMissed(needed.get(i), values);
        }
        List<Fault> lacking = isWhole ? List.of() : lacking(values);
        if (!lacking.isEmpty()) {
            throw Refusal.of(lacking);
        }
    }

    private boolean isMissed(Key<T, ?> key, Values<T> values) {
        return key.isNeeded && !values.has(key) && instead(key).stream().noneMatch(values::has);
    }

    private List<Fault> lacking(Values<T> values) {
        List<Fault> lacking = new ArrayList<>();
        for (Key<T, ?> key : keys) {
            if (isMissed(key, values)) {
                lacking.add(new Fault(key.name(), "missing", missing(key.label(), key), ""));
            } else if (here.containsKey(key.index)) {
                lackingIn(key, values, lacking);
            }
        }
        return lacking;
    }

    private <V> void lackingIn(Key<T, V> key, Values<T> values, List<Fault> lacking) {
        Table<V> inner = ((GroupType<V>) key.type).table();
        Values<V> given = inner.split(values.at(key));
        for (Key<V, ?> each : inner.keys) {
            if (whole(key).contains(each) && given.isLacking(each)) {
                lacking.addAll(missing(each));
            }
        }
    }

    private static List<Fault> missing(Key<?, ?> key) {
        return key.isInline
                ? key.type.inside().orElseThrow().keys.stream()
                        .filter(each -> each.isNeeded)
                        .flatMap(each -> missing(each).stream())
                        .toList()
                : List.of(new Fault(key.name(), "missing", missing(key.name(), key), ""));
    }

    void refuseRivals(Values<T> values) {
        for (int i = 0; i < rivals.size(); i++) {
            if (given(rivals.get(i), values) > 1) {
                List<Key<T, ?>> both =
                        rivals.get(i).stream().filter(values::has).toList();
                Key<T, ?> last = both.get(both.size() - 1);
                throw Refusal.because(
                        last.name(),
                        "one-of",
                        last.name() + " is given, and " + both.get(0).name() + " too; keep one of them");
            }
        }
        for (int i = 0; i < together.size(); i++) {
            List<Key<T, ?>> some = together.get(i);
            int given = given(some, values);
            if (given > 0 && given < some.size()) {
                List<Key<T, ?>> lacking =
                        some.stream().filter(key -> !values.has(key)).toList();
                throw Refusal.because(
                        lacking.get(0).name(),
                        "together",
                        phrase(some) + " must be given together, but " + phrase(lacking) + " "
                                + (lacking.size() == 1 ? "is" : "are") + " missing");
            }
        }
    }

    private int given(List<Key<T, ?>> some, Values<T> values) {
        int given = 0;
        for (int i = 0; i < some.size(); i++) {
            given += values.has(some.get(i)) ? 1 : 0;
        }
        return given;
    }

    private String phrase(List<Key<T, ?>> some) {
        return Names.phrase(some.stream().map(Key::name).toList());
    }

    // ---------------------------------------------------------------- writing

    /**
     * Writes a noun as plain data: only what was given, so that it reads back equal.
     *
     * @param noun the noun
     * @param spelling of keys and quantities
     * @return the tree
     */
    public Tree write(T noun, Spelling spelling) {
        return Tree.of(plain(noun, Objects.requireNonNull(spelling, "spelling")));
    }

    /**
     * Writes a noun as plain data with its lengths in one style, instead of the units given.
     *
     * @param noun the noun
     * @param spelling of keys and quantities
     * @param style of every length
     * @return the tree
     */
    public Tree write(T noun, Spelling spelling, LengthStyle style) {
        return Tree.of(plain(split.apply(noun).printedIn(Objects.requireNonNull(style, "style")), spelling));
    }

    Map<String, Object> plain(T noun, Spelling spelling) {
        return plain(split.apply(Objects.requireNonNull(noun, "noun")), spelling);
    }

    Map<String, Object> plain(Values<T> values, Spelling spelling) {
        Map<String, Object> map = new LinkedHashMap<>();
        write(values, Set.of(), spelling, map);
        return map;
    }

    private void write(Values<T> values, Set<Key<?, ?>> needed, Spelling spelling, Map<String, Object> map) {
        for (Key<T, ?> key : keys) {
            write(key, values, needed.contains(key), spelling, map);
        }
    }

    private <V> void write(
            Key<T, V> key, Values<T> values, boolean isNeeded, Spelling spelling, Map<String, Object> map) {
        if (!values.has(key) && !(isNeeded && key.usual != null)) {
            return;
        }
        V value = values.at(key);
        if (key.isInline) {
            Table<V> inner = ((GroupType<V>) key.type).table();
            inner.write(inner.split.apply(value), whole(key), spelling, map);
        } else {
            map.put(key.name(spelling), key.type.write(value, spelling));
        }
    }

    T make(Values<T> values) {
        return maker.apply(values);
    }

    T in(T noun, LengthStyle style) {
        return make(split.apply(noun).printedIn(style));
    }

    Values<T> split(T noun) {
        return split.apply(noun);
    }

    // ---------------------------------------------------------------- description

    String allowed() {
        return "a group with the keys " + String.join(", ", names(Spelling.WORDS));
    }

    private List<String> names(Spelling spelling) {
        List<String> all = new ArrayList<>();
        for (Key<T, ?> key : keys) {
            if (key.isInline) {
                all.addAll(key.type.inside().orElseThrow().names(spelling));
            } else {
                all.add(key.name(spelling));
            }
        }
        return all;
    }

    Map<String, Object> schema(Spelling spelling) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        describe(spelling, true, Set.of(), properties, required);
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("description", about);
        schema.put("properties", properties);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        schema.put("additionalProperties", false);
        return schema;
    }

    private void describe(
            Spelling spelling,
            boolean isNeeded,
            Set<Key<?, ?>> needed,
            Map<String, Object> properties,
            List<String> required) {
        for (Key<T, ?> key : keys) {
            if (key.isInline) {
                key.type
                        .inside()
                        .orElseThrow()
                        .describe(
                                spelling,
                                isNeeded && (key.isNeeded || needed.contains(key)),
                                whole(key),
                                properties,
                                required);
                continue;
            }
            Map<String, Object> property = new LinkedHashMap<>();
            property.put("description", key.about());
            property.putAll(key.type.schema(spelling));
            property.put("description", key.about());
            properties.put(key.name(spelling), property);
            if (isNeeded && (key.isNeeded || needed.contains(key)) && !instead.containsKey(key)) {
                required.add(key.name(spelling));
            }
        }
    }

    /**
     * {@return the whole JSON Schema (draft 2020-12) of what {@link #read} takes in a spelling; JSON text, ending in a
     * line feed}
     *
     * @param title what such a document is called
     * @param spelling of keys and quantities
     */
    public String schema(String title, Spelling spelling) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", Objects.requireNonNull(title, "title"));
        schema.putAll(schema(Objects.requireNonNull(spelling, "spelling")));
        if (spelling == Spelling.JSON) {
            schema.put("$defs", Map.of("quantity", QuantityType.object()));
        }
        return Json.of(schema);
    }

    /**
     * {@return the schema of this noun as a part of a larger one, which has {@code $defs.quantity} from {@link
     * #schema}}
     *
     * @param spelling of keys and quantities
     */
    public Tree fragment(Spelling spelling) {
        return Tree.of(schema(Objects.requireNonNull(spelling, "spelling")));
    }

    /**
     * {@return every key on a line of its own, in the order in which it is best written, with its meaning; the lines;
     * a key that must be there is marked with a star, one level down is indented by two blanks}
     */
    public String help() {
        StringBuilder lines = new StringBuilder();
        help(lines, "", true, Set.of());
        return lines.toString();
    }

    private void help(StringBuilder lines, String indent, boolean isNeeded, Set<Key<?, ?>> needed) {
        for (Key<T, ?> key : keys) {
            if (key.isInline) {
                key.type
                        .inside()
                        .orElseThrow()
                        .help(lines, indent, isNeeded && (key.isNeeded || needed.contains(key)), whole(key));
                continue;
            }
            String start =
                    indent + (isNeeded && (key.isNeeded || needed.contains(key)) ? "* " : "  ") + key.name() + ":";
            lines.append(String.format(Locale.ROOT, "%-30s %s", start, key.about())
                            .stripTrailing())
                    .append('\n');
            key.type.inside().ifPresent(inner -> inner.help(lines, indent + "  ", true, Set.of()));
        }
    }

    /** The name of the noun. */
    @Override
    public String toString() {
        return name;
    }
}
