package org.neckgeom.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.neckgeom.fault.Refusal;
import org.neckgeom.units.LengthStyle;

/**
 * A sentence with the facts it names, such as <code>{past} past the body joint</code> with {@code past} of 12 mm: what an
 * answer puts together as it goes, where a form of its own would be used once. Immutable.
 */
public final class Statement extends KeptAnswer {

    private record Given<V>(String key, Kind<V> kind, V value) {

        Form.Fact<Statement> fact(int index) {
            return new Form.Fact<>(
                    key,
                    kind,
                    inWords(key),
                    (statement, style) -> statement.facts.get(index).value());
        }

        private static String inWords(String key) {
            StringBuilder words = new StringBuilder();
            for (int i = 0; i < key.length(); i++) {
                char c = key.charAt(i);
                words.append(Character.isUpperCase(c) ? " " : "").append(Character.toLowerCase(c));
            }
            return words.toString();
        }
    }

    private final String code;
    private final String words;
    private final List<Given<?>> facts;

    private Statement(String code, String words, List<Given<?>> facts, LengthStyle style) {
        super(style);
        this.code = code;
        this.words = Objects.requireNonNull(words, "words");
        this.facts = facts;
    }

    /**
     * {@return a statement whose facts are still to come}
     *
     * @param code lower case with hyphens; stable
     * @param words with facts in braces, as of a {@link Form}; printed as they are while a fact is not there
     * @param style in which {@code toString()} prints lengths
     * @throws IllegalArgumentException if the code is no such code
     */
    public static Statement of(String code, String words, LengthStyle style) {
        return new Statement(Form.code(code), words, List.of(), style);
    }

    /**
     * {@return this statement with a fact}
     *
     * @param <V> the type of the value
     * @param key in data and in braces
     * @param kind how it is written
     * @param value the fact
     * @throws IllegalArgumentException if there is a fact of this key, or the key is no such key
     */
    public <V> Statement with(String key, Kind<V> kind, V value) {
        List<Given<?>> all = new ArrayList<>(facts);
        all.add(new Given<>(
                Form.key(key, facts.stream().anyMatch(fact -> fact.key().equals(key))),
                Objects.requireNonNull(kind, "kind"),
                Objects.requireNonNull(value, "value")));
        return new Statement(code, words, List.copyOf(all), style());
    }

    /** {@return what kind of statement it is; lower case with hyphens} */
    public String code() {
        return code;
    }

    /** {@return whether it has facts, or is words alone; true where there is one or more} */
    public boolean hasFacts() {
        return !facts.isEmpty();
    }

    /**
     * {@return the fact that the words begin with, as a statement of its own, such as 27.5 mm of {@code 27.5 mm from the fence};
     * nothing where the words begin with another word}
     */
    public Optional<Statement> lead() {
        int end = words.indexOf('}');
        return words.startsWith("{") && end > 0
                ? Optional.of(new Statement(code, words.substring(0, end + 1), facts, style()))
                : Optional.empty();
    }

    /** {@return the words after {@link #lead}; nothing where there are none} */
    public Optional<Statement> afterLead() {
        int after = lead().isPresent() ? words.indexOf('}') + 1 : 0;
        String rest = words.substring(words.startsWith(", ", after) ? after + 2 : after)
                .strip();
        return rest.isEmpty() ? Optional.empty() : Optional.of(new Statement(code, rest, facts, style()));
    }

    /** Its form is made of itself each time. */
    @Override
    boolean isOwn(Form<?> other) {
        return true;
    }

    @Override
    public Form<Statement> form() {
        List<Form.Fact<Statement>> named = new ArrayList<>();
        for (int i = 0; i < facts.size(); i++) {
            named.add(facts.get(i).fact(i));
        }
        try {
            return Form.of(code, named, words);
        } catch (Refusal wanting) {
            return Form.<Statement>of(code)
                    .fact("words", Kind.NAME, "a fact that they name is not there", statement -> statement.words)
                    .finds(code, "{words}");
        }
    }

    @Override
    protected Object[] parts() {
        return new Object[] {code, words, facts};
    }
}
