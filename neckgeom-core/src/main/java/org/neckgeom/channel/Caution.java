package org.neckgeom.channel;

import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Words;

/**
 * Something that can hurt the maker or spoil the neck: a code to know it by, what to do, why, and its source. Immutable.
 *
 * <p>Cautions are not rules of law. The machine's own instructions come first, then local rules and licensed practice.
 *
 * @param code short and stable, such as {@code STOPPED_CUT}
 * @param text what to do, one sentence
 * @param why what happens otherwise
 * @param source the guidance it is in, or {@code common practice}
 */
public record Caution(String code, String text, String why, String source) implements Answer {

    private static final int LONGEST = 300;
    private static final String OWN = "OWN";

    static final Form<Caution> FORM = Form.<Caution>of("caution")
            .fact("code", Kind.NAME, "which caution", Caution::code)
            .fact("sentence", Kind.NAME, "the instruction", caution -> caution.text())
            .fact("why", Kind.NAME, "the danger", Caution::why)
            .fact("source", Kind.NAME, "guidance it is in, or common practice", Caution::source)
            .finds("caution", "{sentence} ({why})");

    /**
     * Checks that nothing is missing.
     *
     * @param code not blank
     * @param text not blank
     * @param why not blank
     * @param source not blank
     */
    public Caution {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(source, "source");
        if (!Stream.of(code, text, why, source).allMatch(part -> Words.isLine(part) && !part.isBlank())) {
            throw Refusal.of(
                    "a caution",
                    "name",
                    "have a code, a text, a reason and a source",
                    Stream.of(code, text, why, source).map(Words::quoted).collect(Collectors.joining(", ")));
        }
    }

    /**
     * {@return a caution by its code}
     *
     * @param code such as {@code STOPPED_CUT}
     * @throws IllegalArgumentException if there is none of that code
     */
    public static Caution known(String code) {
        return KnownCautions.at(Objects.requireNonNull(code, "code"));
    }

    /**
     * {@return a caution as the maker writes it: one by its code, else a sentence of the maker's own, whose code is {@code OWN}}
     *
     * @param words a code, such as {@code STOPPED_CUT}, or what to do, 1 to 300 characters on one line
     */
    public static Caution given(String words) {
        String line = Words.line(words, "a caution", LONGEST);
        return KnownCautions.has(line) ? known(line) : new Caution(OWN, line, "the maker's own rule", "the maker");
    }

    /** {@return what {@link #given} makes this caution of: its code, or the sentence of the maker's own} */
    public String written() {
        return code.equals(OWN) ? text : code;
    }

    @Override
    public Form<Caution> form() {
        return FORM;
    }

    /** Returns the sentence and the reason, such as {@code Extract the dust (it harms the lungs)} */
    @Override
    public String toString() {
        return text(style());
    }
}
