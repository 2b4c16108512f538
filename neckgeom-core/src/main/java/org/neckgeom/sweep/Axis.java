package org.neckgeom.sweep;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The values a quantity takes in a {@link Sweep}, such as {@code 32 mm to 36 mm by 0.5 mm}: evenly spaced, or named one by
 * one. Immutable.
 *
 * <p>Value i of an even axis is {@code from + i * step}, in the unit of {@code from} and not added up, so that the last
 * is as true as the first.
 *
 * @param <Q> the kind of quantity
 */
public final class Axis<Q extends Quantity<Q>> extends ValueAnswer {

    private static final Form<Axis<?>> FORM = Form.<Axis<?>>of("axis")
            .fact("count", Kind.WHOLE, "how many values", x -> x.size)
            .fact("first", Kind.AMOUNT, "the first of them", x -> x.value(0))
            .fact("last", Kind.AMOUNT, "the last of them", x -> x.value(x.size - 1))
            .finds("one-value", x -> x.size == 1, "1 value, {first}")
            .finds("values", "{count} values from {first} to {last}");

    /** Most values on an axis. */
    public static final int MOST_VALUES = 1_000_000_000;

    /** A last value short of the end by rounding alone still counts: so much of a step. */
    private static final double SLACK = 1e-9;

    private final double from;
    private final double step;
    private final double[] listed;
    private final int size;

    private final ShopUnit<Q> unit;

    private Axis(double from, double step, double[] listed, int size, ShopUnit<Q> unit) {
        super(FORM, LengthStyle.ofUnit(unit));
        this.from = from;
        this.step = step;
        this.listed = listed;
        this.size = size;
        this.unit = unit;
    }

    /**
     * {@return evenly spaced values}
     *
     * @param <Q> the kind of quantity
     * @param from the first value; its unit is that of all
     * @param to where they end, not less than from; itself a value only when a whole number of steps leads there
     * @param step from one to the next, more than 0
     */
    public static <Q extends Quantity<Q>> Axis<Q> steps(Quantity<Q> from, Quantity<Q> to, Quantity<Q> step) {
        Amount<Q> first = Amount.from(from, "from");
        ShopUnit<Q> unit = first.unit();
        Amount<Q> last = Amount.from(to, unit, "to");
        double inLibrary = Amount.from(step, unit, "step").libraryDifference();
        if (!(inLibrary > 0)) {
            throw LibraryUnits.refused(
                    "step", "more-than", "more than 0 " + unit.forDifferences().symbol(), step);
        }
        if (!(last.libraryValue() >= first.libraryValue())) {
            throw LibraryUnits.refused("to", "at-least", first + " or more", to);
        }
        double count = Math.floor((last.libraryValue() - first.libraryValue()) / inLibrary + SLACK) + 1;
        if (count > MOST_VALUES) {
            throw Refusal.of(
                    "values on an axis",
                    "at-most",
                    "be " + MOST_VALUES + " or fewer",
                    "were",
                    String.format(java.util.Locale.ROOT, "%.0f", count));
        }
        double inUnit = unit.forDifferences().equals(unit)
                ? Amount.ofLibrary(inLibrary, unit).value()
                : unit.fromLibrary(inLibrary) - unit.fromLibrary(0);
        return new Axis<>(first.value(), inUnit, new double[0], (int) count, unit);
    }

    /**
     * {@return values named one by one}
     *
     * @param <Q> the kind of quantity
     * @param values one or more, in the order they shall be tried; the unit of the first is that of all
     */
    public static <Q extends Quantity<Q>> Axis<Q> of(List<? extends Quantity<Q>> values) {
        if (Objects.requireNonNull(values, "values").isEmpty()) {
            throw Refusal.of("values on an axis", "at-least", "be 1 or more", "there were none", "");
        }
        ShopUnit<Q> unit = Amount.from(values.get(0), "value").unit();
        double[] listed = values.stream()
                .mapToDouble(value -> Amount.from(value, unit, "value").valueIn(unit))
                .toArray();
        return new Axis<>(0, 0, listed, listed.length, unit);
    }

    /** {@return how many values there are; 1 or more} */
    public int size() {
        return size;
    }

    /**
     * {@return a value}
     *
     * @param index 0 for the first
     */
    public Amount<Q> value(int index) {
        if (index < 0 || index >= size) {
            throw Refusal.of("index of a value", "range", "be between 0 and " + (size - 1), index);
        }
        return Amount.of(listed.length > 0 ? listed[index] : from + index * step, unit);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {from, step, listed, size, unit};
    }
}
