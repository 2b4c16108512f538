package org.neckgeom.channel;

import java.util.Objects;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Words;

/**
 * Something that can hurt the maker or spoil the neck: a code to know it by, what to do, and why. Immutable.
 *
 * <p>Cautions are common practice, not rules of law. The machine's own instructions come first, then local rules and
 * licensed practice.
 *
 * @param code short and stable, such as {@code STOPPED_CUT}
 * @param text what to do, one sentence
 * @param why what happens otherwise
 */
public record Caution(String code, String text, String why) implements Answer {

    static final Form<Caution> FORM = Form.<Caution>of("caution")
            .fact("code", Kind.NAME, "which caution", Caution::code)
            .fact("sentence", Kind.NAME, "the instruction", caution -> caution.text())
            .fact("why", Kind.NAME, "the danger", Caution::why)
            .finds("caution", "{sentence} ({why})");

    /**
     * Checks that nothing is missing.
     *
     * @param code not blank
     * @param text not blank
     * @param why not blank
     */
    public Caution {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(why, "why");
        boolean isOneLine = Words.isLine(code) && Words.isLine(text) && Words.isLine(why);
        if (!isOneLine || code.isBlank() || text.isBlank() || why.isBlank()) {
            throw Refusal.of(
                    "a caution",
                    "name",
                    "have a code, a text and a reason",
                    Words.quoted(code) + ", " + Words.quoted(text) + ", " + Words.quoted(why));
        }
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
