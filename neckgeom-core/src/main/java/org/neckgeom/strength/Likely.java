package org.neckgeom.strength;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import org.neckgeom.form.Json;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Interval;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * A number with the ends of its 95 % interval, in the library unit of its kind, to be read in a shop unit. An end may be NaN
 * where there is no answer.
 *
 * @param <Q> the kind of quantity
 */
record Likely<Q extends Quantity<Q>>(double value, double low, double high, ShopUnit<Q> unit) {

    /** What JSON Schema states of {@link #data}. */
    static final Map<String, Object> SCHEMA = Map.of(
            "type",
            "object",
            "properties",
            Map.of(
                    "value", Map.of("type", "number"),
                    "lower", Map.of("type", "number"),
                    "upper", Map.of("type", "number"),
                    "coverage", Map.of("const", 0.95),
                    "unit", Map.of("type", "string"),
                    "ucum", Map.of("type", "string")),
            "required",
            List.of("value", "coverage", "unit", "ucum"),
            "additionalProperties",
            false);

    static final Kind<Likely<?>> KIND = Kind.own(Likely::text, Likely::data, SCHEMA);

    /** Printed without its sign, for which there is a word beside it. */
    static final Kind<Likely<?>> SIZE =
            Kind.own((likely, style) -> likely.size().text(style), Likely::data, SCHEMA);

    Likely {
        double least = Math.min(low, high) + 0.0;
        high = Math.max(low, high) + 0.0;
        low = least;
        value += 0.0;
    }

    static <Q extends Quantity<Q>> Likely<Q> of(double[] valueLowHigh, ShopUnit<Q> unit) {
        return new Likely<>(valueLowHigh[0], valueLowHigh[1], valueLowHigh[2], unit);
    }

    Amount<Q> amount() {
        return Amount.ofLibrary(value, unit);
    }

    boolean isWhole() {
        return Double.isFinite(value) && Double.isFinite(low) && Double.isFinite(high);
    }

    Interval<Q> interval() {
        return Interval.ofLibrary(low, high, unit);
    }

    /** This times a number, its interval with it. */
    Likely<Q> times(double factor) {
        return new Likely<>(value * factor, low * factor, high * factor, unit);
    }

    Likely<Q> in(ShopUnit<Q> other) {
        return new Likely<>(value, low, high, other);
    }

    private Likely<Q> size() {
        return value < 0 ? times(-1) : this;
    }

    private String text(LengthStyle style) {
        return in(style.unitFor(unit)).toString();
    }

    private Map<String, Object> data(LengthStyle style) {
        ShopUnit<Q> shown = style.inTables().unitFor(unit);
        return data(
                shown.fromLibrary(value),
                shown.fromLibrary(low),
                shown.fromLibrary(high),
                shown.toString(),
                shown.ucum());
    }

    /** An end that is not there is left out. */
    static Map<String, Object> data(double value, double low, double high, String unit, String ucum) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("value", Json.number(value));
        if (Double.isFinite(low)) {
            data.put("lower", Json.number(low));
        }
        if (Double.isFinite(high)) {
            data.put("upper", Json.number(high));
        }
        data.put("coverage", 0.95);
        data.put("unit", unit);
        data.put("ucum", ucum);
        return data;
    }

    Likely<Q> plus(double libraryValue) {
        return new Likely<>(value + libraryValue, low + libraryValue, high + libraryValue, unit);
    }

    /** Returns {@code 0.31 mm (95 %: 0.20 to 0.48 mm)}, rounded so that the interval's half keeps one or two digits. */
    @Override
    public String toString() {
        if (!isWhole()) {
            return number(unit, value, 3) + symbol(unit);
        }
        // Small parts of an inch are thou to a maker.
        boolean inches = (ShopUnit<?>) unit == ShopUnit.INCH || (ShopUnit<?>) unit == ShopUnit.INCH_FRACTION;
        boolean small = inches && Math.max(Math.abs(low), Math.abs(high)) < 2.54;
        return small ? text(ShopUnit.THOU) : text(unit);
    }

    private String text(ShopUnit<?> shown) {
        double quarter = Math.abs(shown.fromLibrary(high) - shown.fromLibrary(low)) / 4;
        // A hundredth of a millimetre is what a feeler tells apart.
        int least = shown == ShopUnit.MILLIMETRE ? 2 : 0;
        int decimals = Math.max(least, Numbers.decimalsFor(quarter, 4) - 1);
        return number(shown, value, decimals) + symbol(shown) + " (95 %: " + number(shown, low, decimals) + " to "
                + number(shown, high, decimals) + symbol(shown) + ")";
    }

    private static String symbol(ShopUnit<?> shown) {
        return shown.symbol().isEmpty() ? "" : " " + shown.symbol();
    }

    private static String number(ShopUnit<?> shown, double libraryValue, int decimals) {
        return Numbers.fixed(shown.fromLibrary(libraryValue), decimals);
    }
}
