package org.neckgeom.form;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** The facts of one answer while it is written: each is asked for once, and only if it is named. */
final class Facts<T> {

    private static final Object NOT_ASKED = new Object();

    private final Form<T> form;
    private final T answer;
    private final LengthStyle style;
    private final Object[] known;
    private final int more;

    Facts(Form<T> form, T answer, LengthStyle style) {
        this(form, answer, style, new Object[form.facts().size()], 0);
        Arrays.fill(known, NOT_ASKED);
    }

    private Facts(Form<T> form, T answer, LengthStyle style, Object[] known, int more) {
        this.form = form;
        this.answer = answer;
        this.style = style;
        this.known = known;
        this.more = more;
    }

    /** The same with how many items of a list are left out. */
    Facts<T> more(int count) {
        return new Facts<>(form, answer, style, known, count);
    }

    T answer() {
        return answer;
    }

    LengthStyle style() {
        return style;
    }

    /** The value of a fact, or null where it is not there. */
    @Nullable
    Object value(int index) {
        if (known[index] == NOT_ASKED) {
            Object value = form.facts().get(index).from().apply(answer, style);
            Object inside = value instanceof Optional<?> maybe ? maybe.orElse(null) : value;
            known[index] = inside instanceof Double number && !Double.isFinite(number) ? null : inside;
        }
        return known[index];
    }

    /** The text in place of a brace, or null where the fact is not there. */
    @Nullable
    String text(Template.Ref ref) {
        if (ref.name().equals(Form.MORE)) {
            return Kind.WHOLE.write((Integer) more, ref.way(), style, 0);
        }
        if (ref.index() < 0) {
            return form.phrase(ref.name(), this);
        }
        String text = text(ref.index(), ref);
        String before = text == null || ref.after() < 0 ? null : text(ref.after(), ref);
        if (text == null || before == null) {
            return text;
        }
        int unit = text.lastIndexOf(' ');
        return unit >= 0 && before.endsWith(text.substring(unit)) ? text.substring(0, unit) : text;
    }

    /** The answer in place of a brace, or null where the fact is none or is not there. */
    @Nullable
    RenderedAnswer rendered(Template.Ref ref) {
        Object value = ref.index() < 0 ? null : value(ref.index());
        return value == null ? null : form.facts().get(ref.index()).kind().render(value, ref.way(), style);
    }

    private @Nullable String text(int index, Template.Ref ref) {
        Object value = value(index);
        return value == null ? null : form.facts().get(index).kind().write(value, ref.way(), style, beside(ref));
    }

    /** The uncertainty that rounds a fact, in the library unit; 0 where there is none. */
    private double beside(Template.Ref ref) {
        Object value = ref.beside() < 0 ? null : value(ref.beside());
        return value == null
                ? 0
                : form.facts()
                        .get(ref.beside())
                        .kind()
                        .amountOf(value)
                        .map(Amount::libraryValue)
                        .orElse(0.0);
    }
}
