package org.neckgeom.sweep;

import java.util.Collection;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** An axis of a sweep: its values, and the change of a design by a value. */
record SweepAxis<D>(String name, int size, IntFunction<?> values, IntFunction<UnaryOperator<D>> changes) {

    static final Form<SweepAxis<?>> FORM = Form.<SweepAxis<?>>of("sweep-axis")
            .fact("name", Kind.NAME, "of the axis", SweepAxis::name)
            .fact("count", Kind.WHOLE, "how many values", SweepAxis::size)
            .fact("first", Kind.ANY, "the first of them", x -> x.value(0))
            .fact("last", Kind.ANY, "the last of them", x -> x.value(x.size - 1))
            .phrase("values", x -> x.size == 1, "1 value, {first:cut 60}")
            .phrase("values", "{count} values, {first:cut 60} to {last:cut 60}");

    static <D, T> SweepAxis<D> of(
            String name, int size, IntFunction<? extends T> values, BiFunction<D, ? super T, D> change) {
        return new SweepAxis<>(name, size, values, place -> design -> change.apply(design, values.apply(place)));
    }

    Object value(int place) {
        return values.apply(place);
    }

    UnaryOperator<D> change(int place) {
        return changes.apply(place);
    }

    /** The style of the first of some values that has one, else that of the last; millimetres where none has. */
    static LengthStyle styleOf(Collection<?> values, @Nullable Object last) {
        for (Object value : values) {
            if (value instanceof Answer answer) {
                return answer.style();
            }
            if (value instanceof Amount<?> amount && amount.unit().kind() == (Class<?>) Length.class) {
                return LengthStyle.ofUnit(amount.unit());
            }
        }
        return last == null ? LengthStyle.MILLIMETRES : styleOf(List.of(last), null);
    }
}
