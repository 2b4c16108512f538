package org.neckgeom.search;

import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import org.neckgeom.fault.Refusal;
import org.neckgeom.sweep.Axis;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * What a search may change: its name, its values by a coordinate, and the design with a value. A continuous variable has the
 * coordinates 0 to 1; a stepped one, and a choice, the places 0 to {@code steps - 1}.
 */
record Variable<D>(
        String name,
        int steps,
        boolean isChoice,
        DoubleFunction<?> values,
        ToDoubleFunction<Object> coordinate,
        DoubleFunction<UnaryOperator<D>> changes) {

    static <D, Q extends Quantity<Q>> Variable<D> between(
            String name, Amount<Q> from, Amount<Q> to, BiFunction<D, Amount<Q>, D> change) {
        ShopUnit<Q> unit = from.unit();
        double low = from.value();
        double high = to.valueIn(unit);
        DoubleFunction<Amount<Q>> values =
                u -> u >= 1 ? Amount.of(high, unit) : Amount.of(low + u * (high - low), unit);
        return new Variable<>(
                name,
                0,
                false,
                values,
                value -> (unit.fromLibrary(library(value, unit, name)) - low) / (high - low),
                u -> design -> change.apply(design, values.apply(u)));
    }

    static <D, Q extends Quantity<Q>> Variable<D> steps(String name, Axis<Q> axis, BiFunction<D, Amount<Q>, D> change) {
        return new Variable<>(
                name,
                axis.size(),
                false,
                place -> axis.value((int) place),
                value -> nearest(axis, library(value, axis.value(0).unit(), name)),
                place -> design -> change.apply(design, axis.value((int) place)));
    }

    static <D, T> Variable<D> choice(String name, List<T> choices, BiFunction<D, T, D> change) {
        return new Variable<>(
                name,
                choices.size(),
                true,
                place -> choices.get((int) place),
                value -> Math.max(0, choices.indexOf(value)),
                place -> design -> change.apply(design, choices.get((int) place)));
    }

    private static double library(Object value, ShopUnit<?> unit, String name) {
        if (value instanceof Amount<?> amount && amount.unit().kind() == (Class<?>) unit.kind()) {
            return amount.libraryValue();
        }
        throw Refusal.of("\"" + name + "\" of the earlier search", "kind", "be " + unit.kindInWords(), value);
    }

    private static double nearest(Axis<?> axis, double libraryValue) {
        int best = 0;
        for (int i = 1; i < axis.size(); i++) {
            if (off(axis, i, libraryValue) < off(axis, best, libraryValue)) {
                best = i;
            }
        }
        return best;
    }

    private static double off(Axis<?> axis, int place, double libraryValue) {
        return Math.abs(axis.value(place).libraryValue() - libraryValue);
    }

    boolean isStepped() {
        return steps > 0;
    }

    /** The greatest coordinate; the least is 0. */
    double end() {
        return isStepped() ? steps - 1 : 1;
    }

    /** The coordinate inside the range, on a step where there are steps. */
    double fit(double coordinate) {
        double inside = Math.min(end(), Math.max(0, coordinate));
        return (isStepped() ? Math.rint(inside) : inside) + 0.0;
    }

    Object value(double coordinate) {
        return values.apply(coordinate);
    }

    /** The coordinate of a value of an earlier search, the nearest that there is here. */
    double place(Object value) {
        return fit(coordinate.applyAsDouble(value));
    }

    D change(D design, double coordinate) {
        return Objects.requireNonNull(changes.apply(coordinate).apply(design), "changed design");
    }
}
