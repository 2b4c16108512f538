package org.neckgeom.form;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;

/** A sentence with facts in braces, read once while its class loads. */
final class Template {

    /**
     * The part in braces.
     *
     * @param index of the fact; less than 0 of a phrase, and of {@link Form#MORE}
     * @param beside index of the fact that rounds it; less than 0 where there is none
     * @param after index of the fact that it is written after; less than 0 where there is none
     */
    record Ref(String name, Way way, int index, int beside, int after) {}

    private final List<Object> parts;

    private Template(List<Object> parts) {
        this.parts = parts;
    }

    /**
     * Reads a sentence.
     *
     * @throws IllegalArgumentException if a brace is open, names nothing known, or asks for a way there is not
     */
    static Template of(Form<?> form, String words) {
        List<Object> parts = new ArrayList<>();
        int at = 0;
        while (at < words.length()) {
            int open = words.indexOf('{', at);
            if (open < 0) {
                parts.add(words.substring(at));
                break;
            }
            if (open > at) {
                parts.add(words.substring(at, open));
            }
            int close = words.indexOf('}', open);
            if (close < 0) {
                throw wrong(form, words, "close each brace");
            }
            parts.add(ref(form, words.substring(open + 1, close)));
            at = close + 1;
        }
        return new Template(List.copyOf(parts));
    }

    private static Ref ref(Form<?> form, String inside) {
        int colon = inside.indexOf(':');
        String name = colon < 0 ? inside : inside.substring(0, colon);
        Way way = colon < 0 ? Way.PLAIN : Way.parsed(inside.substring(colon + 1));
        Kind<?> kind = form.kindOf(name);
        if (kind == null) {
            throw wrong(form, "{" + inside + "}", "name only its own facts in braces");
        }
        int beside = way == null || way.beside() == null ? -1 : form.indexOf(way.beside());
        int after = way == null || way.after() == null ? -1 : form.indexOf(way.after());
        if (way == null || !kind.takes(way) || way.beside() != null && beside < 0 || way.after() != null && after < 0) {
            throw wrong(form, "{" + inside + "}", "print a fact in a way of its kind");
        }
        return new Ref(name, way, form.indexOf(name), beside, after);
    }

    private static IllegalArgumentException wrong(Form<?> form, String words, String rule) {
        return Refusal.of("form of \"" + form.name() + "\"", "brace", rule, words);
    }

    /** Returns the answer that the sentence is, or null where it is not just one brace of an answer. */
    @Nullable
    RenderedAnswer answer(Facts<?> facts) {
        return parts.size() == 1 && parts.get(0) instanceof Ref ref ? facts.rendered(ref) : null;
    }

    /** Returns the sentence, or null where a fact that it names is not there. */
    @Nullable
    String fill(Facts<?> facts) {
        StringBuilder out = new StringBuilder();
        for (Object part : parts) {
            if (part instanceof Ref ref) {
                String text = facts.text(ref);
                if (text == null) {
                    return null;
                }
                out.append(text);
            } else {
                out.append(part);
            }
        }
        return out.toString();
    }
}
