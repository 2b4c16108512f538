package org.neckgeom.sweep;

import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import org.neckgeom.units.LengthStyle;

/** One axis of a sweep: its values, and what a value does to a design. */
final class SweepAxis<D> {

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

    /** The same changes, their values said in a style. */
    SweepAxis<D> in(LengthStyle style) {
        return new SweepAxis<>(name, size, place -> Shown.in(style, values.apply(place)), changes);
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

    /** Such as {@code 9 values, 32 mm to 36 mm}. */
    String values() {
        return size + (size == 1 ? " value, " : " values, ") + brief(0) + (size == 1 ? "" : " to " + brief(size - 1));
    }

    private String brief(int place) {
        return Shown.brief(value(place));
    }
}
