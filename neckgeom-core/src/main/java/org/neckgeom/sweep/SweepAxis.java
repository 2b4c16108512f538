package org.neckgeom.sweep;

import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;

/** One axis of a sweep: its values, and what a value does to a design. */
final class SweepAxis<D> {

    static final Form<SweepAxis<?>> FORM = Form.<SweepAxis<?>>of("sweep-axis")
            .fact("name", Kind.NAME, "of the axis", SweepAxis::name)
            .fact("count", Kind.WHOLE, "how many values", SweepAxis::size)
            .fact("first", Kind.ANY, "the first of them", x -> x.value(0))
            .fact("last", Kind.ANY, "the last of them", x -> x.value(x.size - 1))
            .phrase("values", x -> x.size == 1, "1 value, {first:cut 60}")
            .phrase("values", "{count} values, {first:cut 60} to {last:cut 60}");

    private final String name;
    private final int size;
    private final IntFunction<?> values;
    private final IntFunction<UnaryOperator<D>> changes;

    private SweepAxis(String name, int size, IntFunction<?> values, IntFunction<UnaryOperator<D>> changes) {
        this.name = name;
        this.size = size;
        this.values = values;
        this.changes = changes;
    }

    static <D, T> SweepAxis<D> of(
            String name, int size, IntFunction<? extends T> values, BiFunction<D, ? super T, D> change) {
        return new SweepAxis<>(name, size, values, place -> design -> change.apply(design, values.apply(place)));
    }

    String name() {
        return name;
    }

    int size() {
        return size;
    }

    Object value(int place) {
        return values.apply(place);
    }

    UnaryOperator<D> change(int place) {
        return changes.apply(place);
    }
}
