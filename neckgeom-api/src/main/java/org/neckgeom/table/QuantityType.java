package org.neckgeom.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * A quantity, always with its unit: {@code 44.5 mm}, {@code 1 3/4 in}, {@code 13 deg}, or an object of value and unit. A
 * number without a unit and a unit of another kind are refused. Immutable.
 *
 * @param <Q> the kind of quantity
 */
public final class QuantityType<Q extends Quantity<Q>> extends Type<Amount<Q>> {

    private static final String NUMBER = "[+-]?(\\d+(\\.\\d+)?([eE][+-]?\\d+)?|\\.\\d+|(\\d+[ -])?\\d+/\\d+)";

    /** A fraction of an inch with the rest in thou, as lengths are printed. */
    private static final String WITH_REMAINDER = NUMBER + " in [+-] \\d+(\\.\\d+)? thou";

    private static final String VALUE = "value";
    private static final String UNIT = "unit";
    private static final String UCUM = "ucum";

    /** Only where the unit it is printed in is not the one that gives the number back, or is inches in fractions. */
    private static final String PRINTED_IN = "printedIn";

    private static final String FRACTIONS = "fractional in";

    /** The schema of a quantity as an object, to which every one in JSON refers. */
    static Map<String, Object> object() {
        return Types.map(
                "description",
                "a quantity: its number, its unit by symbol and by UCUM code, and the unit it is printed in where another",
                "type",
                "object",
                "properties",
                Types.map(
                        VALUE,
                        Types.map("type", "number"),
                        UNIT,
                        Types.map("type", "string"),
                        UCUM,
                        Types.map("type", "string"),
                        PRINTED_IN,
                        Types.map("type", "string")),
                "required",
                List.of(VALUE, UNIT),
                "additionalProperties",
                false);
    }

    private final ShopUnit<Q> like;
    private final String noun;
    private final String examples;
    private final List<String> unitWords;
    private final @Nullable Bound<Q> low;
    private final @Nullable Bound<Q> high;
    private final boolean isStamped;

    /** The least or the most that is allowed, itself allowed or not. */
    private record Bound<Q extends Quantity<Q>>(Amount<Q> at, boolean isExcluded) {}

    private QuantityType(
            ShopUnit<Q> like,
            String noun,
            String examples,
            List<String> unitWords,
            @Nullable Bound<Q> low,
            @Nullable Bound<Q> high,
            boolean isStamped) {
        this.like = like;
        this.noun = noun;
        this.examples = examples;
        this.unitWords = unitWords;
        this.low = low;
        this.high = high;
        this.isStamped = isStamped;
    }

    static <Q extends Quantity<Q>> QuantityType<Q> any(
            ShopUnit<Q> like, String noun, String examples, String... unitWords) {
        return new QuantityType<>(like, noun, examples, List.of(unitWords), null, null, false);
    }

    private QuantityType<Q> from(@Nullable Amount<Q> least, String name, boolean isExcluded) {
        Bound<Q> bound = new Bound<>(Objects.requireNonNull(least, name), isExcluded);
        return new QuantityType<>(like, noun, examples, unitWords, bound, high, isStamped);
    }

    private QuantityType<Q> upTo(@Nullable Amount<Q> most, String name, boolean isExcluded) {
        Bound<Q> bound = new Bound<>(Objects.requireNonNull(most, name), isExcluded);
        return new QuantityType<>(like, noun, examples, unitWords, low, bound, isStamped);
    }

    /**
     * {@return the same type, more than a value}
     *
     * @param excluded the value it must exceed
     */
    public QuantityType<Q> moreThan(Amount<Q> excluded) {
        return from(excluded, "excluded", true);
    }

    /**
     * {@return the same type, a value or more}
     *
     * @param included the least allowed
     */
    public QuantityType<Q> atLeast(Amount<Q> included) {
        return from(included, "included", false);
    }

    /**
     * {@return the same type, a value or less}
     *
     * @param included the most allowed
     */
    public QuantityType<Q> atMost(Amount<Q> included) {
        return upTo(included, "included", false);
    }

    /**
     * {@return the same type, less than a value}
     *
     * @param excluded the value it must stay under
     */
    public QuantityType<Q> lessThan(Amount<Q> excluded) {
        return upTo(excluded, "excluded", true);
    }

    /** A size of the same kind: 0 or more. */
    QuantityType<Q> size() {
        return new QuantityType<>(
                like, noun, examples, unitWords, new Bound<>(Amount.ofLibrary(0, like), false), null, isStamped);
    }

    /**
     * {@return the same type with examples of its own, as where the usual ones lie outside its limits; the type with
     * other examples}
     *
     * @param own such as {@code 0.43 mm or 17 thou}
     */
    public QuantityType<Q> suchAs(String own) {
        return new QuantityType<>(like, noun, Objects.requireNonNull(own, "own"), unitWords, low, high, isStamped);
    }

    /**
     * {@return the same type for what is printed in its own unit wherever it is printed: the leaf that is stamped 0.05 mm;
     * a type whose values have no style}
     */
    public QuantityType<Q> stamped() {
        return new QuantityType<>(like, noun, examples, unitWords, low, high, true);
    }

    @Override
    @Nullable
    Amount<Q> read(Object data, String path, Faults faults) {
        try {
            Amount<Q> amount = data instanceof Map<?, ?> map
                    ? ofObject(map, path)
                    : data instanceof String text ? ofText(text, path) : null;
            if (amount == null) {
                faults.add(path, "kind", "be " + allowed(), data);
                return null;
            }
            check(amount, path);
            return amount;
        } catch (Refusal refused) {
            refused.faults().forEach(faults::add);
            return null;
        }
    }

    private Amount<Q> ofText(String text, String path) {
        Amount<Q> amount;
        try {
            amount = ShopUnits.parse(text, like.kind());
        } catch (Refusal refused) {
            throw Refusal.because(path, refused.faults().get(0).rule(), path + ": " + refused.getMessage());
        }
        if (amount.unit().symbol().isEmpty()) { // a bare ratio: plain to the library, a slip in a file
            throw Refusal.because(
                    path, "no-unit", path + ": " + Faults.shown(text) + " has no unit; give " + allowed());
        }
        return amount;
    }

    private Amount<Q> ofObject(Map<?, ?> map, String path) {
        for (Object key : map.keySet()) {
            if (!List.of(VALUE, UNIT, UCUM, PRINTED_IN).contains(key)) {
                throw Refusal.because(
                        path + "." + key,
                        "unknown",
                        path + "." + Faults.shown(key)
                                + " is not a known key; known here: value, unit, ucum, printedIn");
            }
        }
        if (!(map.get(VALUE) instanceof Double number)) {
            throw Refusal.of(path + ".value", "kind", "be a number", Faults.shown(map.get(VALUE)));
        }
        ShopUnit<Q> unit = unit(map.get(map.containsKey(UNIT) ? UNIT : UCUM), path + ".unit");
        Amount<Q> amount = Amount.of(number, unit);
        return map.containsKey(PRINTED_IN)
                ? Amount.ofLibrary(amount.libraryValue(), unit(map.get(PRINTED_IN), path + ".printedIn"))
                : amount;
    }

    private ShopUnit<Q> unit(@Nullable Object name, String path) {
        String symbol = name instanceof String text ? text : "";
        if (symbol.equals(FRACTIONS) && like.kind() == (Class<?>) Length.class) {
            return LengthStyle.INCH_FRACTIONS.unitFor(like);
        }
        try {
            return ShopUnit.named(symbol, like.kind());
        } catch (Refusal unknown) {
            String offered = String.join(", ", unitWords);
            throw Refusal.of(
                    path, "unit", "be a unit of " + like.kindInWords() + ", one of " + offered, Faults.shown(name));
        }
    }

    @Override
    void check(Amount<Q> value, String name) {
        checked(value, name);
    }

    /**
     * {@return a quantity of any JSR 385 provider as an amount, if this type allows it; in its own unit}
     *
     * @param quantity the value
     * @param name of the quantity, for the message
     * @throws IllegalArgumentException if it is not allowed
     */
    public Amount<Q> checked(Quantity<Q> quantity, String name) {
        double libraryValue = LibraryUnits.of(quantity, like, name);
        Amount<Q> amount = Amount.from(quantity, name);
        if (low != null
                && !(low.isExcluded ? libraryValue > low.at.libraryValue() : libraryValue >= low.at.libraryValue())) {
            throw refused(name, true, amount);
        }
        if (high != null
                && !(high.isExcluded
                        ? libraryValue < high.at.libraryValue()
                        : libraryValue <= high.at.libraryValue())) {
            throw refused(name, false, amount);
        }
        return amount;
    }

    /** States both bounds, but that next to a bound of 0 the other one need not be named. */
    private Refusal refused(String name, boolean isLow, Amount<Q> amount) {
        String symbol = amount.unit().symbol();
        boolean isOver = low != null && low.isExcluded;
        if (low != null && low.at.libraryValue() == 0 && isLow) {
            return isOver
                    ? LibraryUnits.refused(name, "more-than", "more than 0 " + symbol, amount)
                    : LibraryUnits.refused(name, "at-least", "0 " + symbol + " or more", amount);
        }
        String from = low == null ? "" : isOver ? "more than " + low.at : low.at + " or more";
        String to = high == null ? "" : high.isExcluded ? "less than " + high.at : high.at + " or less";
        boolean both = !from.isEmpty() && !to.isEmpty();
        String rule = both ? "range" : isLow ? isOver ? "more-than" : "at-least" : "at-most";
        return LibraryUnits.refused(name, rule, from + (both ? " and " : "") + to, amount);
    }

    @Override
    Object write(Amount<Q> amount, Spelling spelling) {
        return spelling == Spelling.WORDS ? inWords(amount) : data(amount);
    }

    /** As a maker writes it where that reads back equal, and else in all its digits. */
    private String inWords(Amount<Q> amount) {
        String printed = amount.toString();
        try {
            return ShopUnits.parse(printed, like.kind()).libraryValue() == amount.libraryValue()
                    ? printed
                    : amount.lossless();
        } catch (Refusal notRead) {
            return amount.lossless();
        }
    }

    private static Map<String, Object> data(Amount<?> amount) {
        String lossless = amount.lossless();
        int blank = lossless.indexOf(' ');
        ShopUnit<?> unit = amount.unit() == (ShopUnit<?>) ShopUnit.INCH_FRACTION ? ShopUnit.INCH : amount.unit();
        String symbol = blank < 0 ? "" : lossless.substring(blank + 1);
        ShopUnit<?> written = symbol.equals(unit.symbol()) ? unit : ShopUnit.named(symbol);
        Map<String, Object> data = new LinkedHashMap<>();
        data.put(VALUE, new Json.Figure(blank < 0 ? lossless : lossless.substring(0, blank)));
        data.put(UNIT, written.toString());
        data.put(UCUM, written.ucum());
        if (written != amount.unit()) {
            data.put(
                    PRINTED_IN,
                    amount.unit() == (ShopUnit<?>) ShopUnit.INCH_FRACTION
                            ? FRACTIONS
                            : amount.unit().toString());
        }
        return data;
    }

    /** A temperature keeps its own scale, whose degrees differ; all else is read in the unit that makers use. */
    @Override
    Kind<Amount<Q>> kind() {
        Kind<Amount<Q>> shown = like.kind() == (Class<?>) Temperature.class
                ? Kind.AMOUNT.of(amount -> amount)
                : Kind.libraryValue(like).of(Amount::libraryValue);
        return shown.written((amount, style) -> data(amount.in(style.inTables())));
    }

    @Override
    Amount<Q> in(Amount<Q> value, LengthStyle style) {
        return isStamped ? value : value.in(style);
    }

    @Override
    Optional<LengthStyle> style(Amount<Q> value) {
        return like.kind() == (Class<?>) Length.class && !isStamped
                ? Optional.of(LengthStyle.ofUnit(value.unit()))
                : Optional.empty();
    }

    /** The unit of the kind that makers use. */
    ShopUnit<Q> like() {
        return like;
    }

    /** The words for units that may be written. */
    List<String> unitWords() {
        return unitWords;
    }

    @Override
    public String allowed() {
        StringBuilder text = new StringBuilder(noun);
        if (low != null) {
            text.append(low.isExcluded ? " of more than " : " of at least ").append(low.at);
        }
        if (high != null) {
            text.append(low == null ? " of " : " and ")
                    .append(high.isExcluded ? "less than " : "at most ")
                    .append(high.at);
        }
        return text.append(" with its unit, such as ").append(examples).toString();
    }

    @Override
    Map<String, Object> schema(Spelling spelling) {
        return spelling == Spelling.WORDS ? textSchema() : Types.map("title", allowed(), "$ref", "#/$defs/quantity");
    }

    private Map<String, Object> textSchema() {
        String units = unitWords.stream().map(QuantityType::escaped).collect(Collectors.joining("|"));
        String one = NUMBER + " *(" + units + ")";
        String pattern = like.kind() == (Class<?>) Length.class ? "(" + one + "|" + WITH_REMAINDER + ")" : one;
        return Types.map("title", allowed(), "type", "string", "pattern", "^" + pattern + "$");
    }

    /** Escapes what a regular expression of ECMA-262, the one JSON Schema uses, would read as a sign. */
    private static String escaped(String word) {
        return Pattern.compile("[/.*+?^${}()|\\[\\]\\\\]").matcher(word).replaceAll("\\\\$0");
    }
}
