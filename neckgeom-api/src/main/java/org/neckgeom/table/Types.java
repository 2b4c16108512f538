package org.neckgeom.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Json;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Tree;
import org.neckgeom.measure.Reading;
import org.neckgeom.text.Nearest;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LinearDensity;
import org.neckgeom.units.MassDensity;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;
import org.neckgeom.units.Torque;

/** The types of values that keys take. */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Types {

    private static final int LONGEST_TEXT = 200;
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d{1,9}(\\.\\d{1,20})?([eE][+-]?\\d{1,3})?");

    /** Any length. */
    public static final QuantityType<Length> LENGTH = QuantityType.any(
            ShopUnit.MILLIMETRE,
            "a length",
            "44.5 mm or 1 3/4 in",
            "mm",
            "cm",
            "m",
            "inches",
            "inch",
            "in",
            "\"",
            "thou",
            "ft",
            "foot",
            "feet",
            "'");

    /** A length of more than 0, at most 3 m: no neck is longer. */
    public static final QuantityType<Length> SIZE =
            LENGTH.moreThan(ShopUnits.mm(0)).atMost(ShopUnits.mm(3000));

    /** A length of 0 or more, at most 3 m. */
    public static final QuantityType<Length> SIZE_OR_NOTHING =
            LENGTH.atLeast(ShopUnits.mm(0)).atMost(ShopUnits.mm(3000));

    /** A length of either sign, at most 3 m either way. */
    public static final QuantityType<Length> EITHER_WAY =
            LENGTH.atLeast(ShopUnits.mm(-3000)).atMost(ShopUnits.mm(3000));

    /** A radius: more than 0, at most 100 m. */
    public static final QuantityType<Length> RADIUS =
            LENGTH.moreThan(ShopUnits.mm(0)).atMost(ShopUnits.mm(100_000));

    /** Any angle. */
    public static final QuantityType<Angle> ANGLE =
            QuantityType.any(ShopUnit.DEGREE, "an angle", "13 deg", "degrees", "degree", "deg", "\u00b0", "rad");

    /** Any force. */
    public static final QuantityType<Force> FORCE = QuantityType.any(
            ShopUnit.NEWTON,
            "a force",
            "95 N, 21 lb or 9.7 kg",
            "newton",
            "N",
            "lbf",
            "lbs",
            "lb",
            "kgf",
            "kg",
            "ozf",
            "oz");

    /** Any ratio, written in percent. */
    public static final QuantityType<Dimensionless> PERCENT =
            QuantityType.any(ShopUnit.PERCENT, "a ratio in percent", "45 %", "percent", "%");

    /** Any temperature. */
    public static final QuantityType<Temperature> TEMPERATURE = QuantityType.any(
            ShopUnit.CELSIUS,
            "a temperature",
            "21 degC or 70 degF",
            "degC",
            "C",
            "\u00b0C",
            "degF",
            "F",
            "\u00b0F",
            "K");

    /** Any stress or elastic modulus. */
    public static final QuantityType<Pressure> PRESSURE =
            QuantityType.any(ShopUnit.MEGAPASCAL, "a stress or modulus", "11.6 GPa", "MPa", "GPa", "psi");

    /** Any speed, such as a feed. */
    public static final QuantityType<Speed> SPEED = QuantityType.any(
            ShopUnit.MM_PER_SECOND, "a speed", "1800 mm/min or 70 in/min", "mm/s", "mm/min", "in/min", "m/s");

    /** Any speed of turning. */
    public static final QuantityType<Frequency> TURNING =
            QuantityType.any(ShopUnit.RPM, "a speed of turning", "16000 rpm", "rpm", "Hz");

    /** Any tone. */
    public static final QuantityType<Frequency> TONE = QuantityType.any(ShopUnit.HERTZ, "a tone", "219.5 Hz", "Hz");

    /** Any moment. */
    public static final QuantityType<Torque> MOMENT =
            QuantityType.any(ShopUnit.NEWTON_MM, "a moment", "1.2 N.m", "N.mm", "N.m");

    /** Any density. */
    public static final QuantityType<MassDensity> DENSITY =
            QuantityType.any(ShopUnit.KG_PER_M3, "a density", "610 kg/m3", "kg/m3");

    /** Any linear density, of a string. */
    public static final QuantityType<LinearDensity> LINEAR_DENSITY =
            QuantityType.any(ShopUnit.GRAM_PER_METRE, "a linear density", "5.2 g/m", "g/m", "lb/in");

    /** A text of up to 200 characters on one line, such as a name. */
    public static final Type<String> TEXT = line(LONGEST_TEXT);

    /** Yes or no; true or false in JSON. */
    public static final Type<Boolean> YES_OR_NO = new YesOrNo();

    private Types() {}

    /**
     * {@return the type of a text on one line}
     *
     * @param longest most characters
     */
    public static Type<String> line(int longest) {
        refuseUnless(longest > 0, "longest", "be 1 or more", longest);
        String allowed = "a text of at most " + longest + " characters on one line";
        return named(allowed, text -> text, text -> text, longest);
    }

    /**
     * {@return the type of a value that is written as its name, a text of up to 200 characters on one line}
     *
     * @param <V> the value
     * @param reader makes the value of its name, or refuses
     * @param writer gives its name
     */
    public static <V> Type<V> named(Function<String, V> reader, Function<V, String> writer) {
        Objects.requireNonNull(reader, "reader");
        return named(TEXT.allowed(), reader, writer, LONGEST_TEXT);
    }

    private static <V> Type<V> named(
            String allowed, Function<String, V> reader, Function<V, String> writer, int longest) {
        return text(
                allowed,
                text -> {
                    if (text.length() > longest || !Words.isLine(text)) {
                        throw Refusal.because("", "text", "");
                    }
                    return reader.apply(text);
                },
                writer,
                map("type", List.of("string", "number"), "maxLength", longest));
    }

    /**
     * {@return the type of a value that is written as one text}
     *
     * @param <V> the value
     * @param allowed what may be written, such as {@code a pitch such as E2}
     * @param reader makes the value, or refuses; the key then has the rule of the reader
     * @param writer the inverse
     * @param schema the JSON Schema fragment
     */
    public static <V> Type<V> text(
            String allowed, Function<String, V> reader, Function<V, String> writer, Map<String, Object> schema) {
        return new TextType<>(allowed, reader, writer, schema);
    }

    private static final class TextType<V> extends Type<V> {
        private final String allowed;
        private final Function<String, V> reader;
        private final Function<V, String> writer;
        private final Map<String, Object> schema;

        TextType(String allowed, Function<String, V> reader, Function<V, String> writer, Map<String, Object> schema) {
            this.allowed = Objects.requireNonNull(allowed, "allowed");
            this.reader = Objects.requireNonNull(reader, "reader");
            this.writer = Objects.requireNonNull(writer, "writer");
            this.schema = Objects.requireNonNull(schema, "schema");
        }

        @Override
        @Nullable
        V read(Object data, String path, Faults faults) {
            if (!(data instanceof String text)) {
                faults.add(path, "kind", "be " + allowed, data);
                return null;
            }
            try {
                return reader.apply(text);
            } catch (Refusal refused) {
                String own = String.valueOf(refused.getMessage());
                Fault fault = refused.faults().get(0);
                if (own.isEmpty()) {
                    faults.add(path, "text", "be " + allowed, text);
                } else if (!fault.given().isEmpty()) {
                    faults.add(path, fault.rule(), fault.must(), text);
                } else {
                    faults.sentence(path, fault.rule(), path + ": " + own);
                }
                return null;
            }
        }

        @Override
        Object write(V value, Spelling spelling) {
            return writer.apply(value);
        }

        @Override
        Map<String, Object> schema(Spelling spelling) {
            return schema;
        }

        @Override
        public String allowed() {
            return allowed;
        }

        @Override
        void check(V value, String name) {
            try {
                Objects.requireNonNull(reader.apply(writer.apply(value)), name);
            } catch (Refusal refused) {
                String own = String.valueOf(refused.getMessage());
                throw own.isEmpty()
                        ? Refusal.of(name, "text", "be " + allowed, Faults.shown(writer.apply(value)))
                        : refused;
            }
        }
    }

    private static final class YesOrNo extends Type<Boolean> {
        @Override
        @Nullable
        Boolean read(Object data, String path, Faults faults) {
            if (data instanceof Boolean flag) {
                return flag;
            }
            if (data.equals("yes") || data.equals("no")) {
                return data.equals("yes");
            }
            faults.add(path, "word", "be " + allowed(), data);
            return null;
        }

        @Override
        Object write(Boolean value, Spelling spelling) {
            return spelling == Spelling.JSON ? value : value ? "yes" : "no";
        }

        @Override
        Map<String, Object> schema(Spelling spelling) {
            return spelling == Spelling.JSON
                    ? map("type", "boolean")
                    : map("type", "string", "enum", List.of("yes", "no"));
        }

        @Override
        Kind<Boolean> kind() {
            return Kind.FLAG;
        }

        @Override
        public String allowed() {
            return "one of yes, no";
        }
    }

    /**
     * {@return the type of a whole number}
     *
     * @param least the smallest allowed
     * @param most the largest allowed
     */
    public static Type<Integer> whole(int least, int most) {
        refuseUnless(least <= most, "most", "be " + least + " or more, the least", most);
        return new NumberType<>(
                "a whole number from " + least + " to " + most,
                WHOLE,
                number -> number == Math.rint(number) && number >= least && number <= most
                        ? (int) number.doubleValue()
                        : null,
                map("type", "integer", "minimum", least, "maximum", most));
    }

    /**
     * {@return the type of a number without a unit, such as the exponent of a curve}
     *
     * @param least the smallest allowed
     * @param most the largest allowed
     */
    public static Type<Double> number(double least, double most) {
        refuseUnless(Double.isFinite(least), "least", "be finite", Numbers.plain(least));
        refuseUnless(
                Double.isFinite(most) && least <= most,
                "most",
                "be finite and " + Numbers.plain(least) + " or more, the least",
                Numbers.plain(most));
        return new NumberType<>(
                "a number from " + plain(least) + " to " + plain(most) + " without a unit",
                DECIMAL,
                number -> number >= least && number <= most ? number + 0.0 : null,
                map("type", "number", "minimum", new BigDecimal(plain(least)), "maximum", new BigDecimal(plain(most))));
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    private interface Fitting<N> {
        @Nullable
        N of(Double number);
    }

    private static final class NumberType<N extends Number> extends Type<N> {
        private final String allowed;
        private final Pattern pattern;
        private final Fitting<N> fitting;
        private final Map<String, Object> schema;

        NumberType(String allowed, Pattern pattern, Fitting<N> fitting, Map<String, Object> schema) {
            this.allowed = allowed;
            this.pattern = pattern;
            this.fitting = fitting;
            this.schema = schema;
        }

        @Override
        @Nullable
        N read(Object data, String path, Faults faults) {
            Double number = data instanceof Double given
                    ? given
                    : data instanceof String text && pattern.matcher(text).matches()
                            ? Double.valueOf(text)
                            : Double.valueOf(Double.NaN);
            N fits = fitting.of(number);
            if (fits == null) {
                faults.add(path, "number", "be " + allowed, data);
            }
            return fits;
        }

        @Override
        Object write(N value, Spelling spelling) {
            return spelling == Spelling.JSON
                    ? Json.number(value.doubleValue())
                    : Json.number(value.doubleValue()).text();
        }

        @Override
        Kind<N> kind() {
            return pattern == WHOLE ? Kind.WHOLE.of(number -> number) : Kind.RATIO.of(Number::doubleValue);
        }

        @Override
        void check(N value, String name) {
            if (fitting.of(value.doubleValue()) == null) {
                throw Refusal.of(name, "range", "be " + allowed, Numbers.plain(value.doubleValue()));
            }
        }

        @Override
        Map<String, Object> schema(Spelling spelling) {
            return schema;
        }

        @Override
        public String allowed() {
            return allowed;
        }
    }

    /**
     * {@return the type of one of some words, written exactly so}
     *
     * @param <V> type of the meaning of a word
     * @param meanings of each word; listed in the map's order
     */
    public static <V> Type<V> words(Map<String, V> meanings) {
        Objects.requireNonNull(meanings, "meanings").forEach((word, meaning) -> {
            Objects.requireNonNull(word, "word");
            Objects.requireNonNull(meaning, "meaning");
        });
        refuseUnless(!meanings.isEmpty(), "meanings", "be 1 or more", meanings.size());
        return new WordType<>(Collections.unmodifiableMap(new LinkedHashMap<>(meanings)));
    }

    /**
     * {@return the type of an enum whose words are its constants' names in lower case with blanks}
     *
     * @param <E> the enum
     * @param type its class
     * @param word each constant's word
     */
    public static <E extends Enum<E>> Type<E> words(Class<E> type, Function<E, String> word) {
        Objects.requireNonNull(word, "word");
        Map<String, E> meanings = new LinkedHashMap<>();
        for (E constant : Objects.requireNonNull(type, "type").getEnumConstants()) {
            meanings.put(word.apply(constant), constant);
        }
        return words(meanings);
    }

    private static final class WordType<V> extends Type<V> {
        private final Map<String, V> meanings;

        WordType(Map<String, V> meanings) {
            this.meanings = meanings;
        }

        @Override
        @Nullable
        V read(Object data, String path, Faults faults) {
            V meaning = data instanceof String ? meanings.get(data) : null;
            if (meaning == null) {
                String near = data instanceof String text
                        ? Nearest.to(text, meanings.keySet())
                                .map(word -> " (did you mean \"" + word + "\"?)")
                                .orElse("")
                        : "";
                faults.add(path, "word", "be " + allowed() + near, data);
            }
            return meaning;
        }

        @Override
        Object write(V value, Spelling spelling) {
            return word(value).orElseThrow();
        }

        /** A constant may have words of its own for a sentence: a two-way rod, where the key's is two-way. */
        @Override
        Kind<V> kind() {
            return Kind.own(
                    (value, style) ->
                            value instanceof Enum<?> one && !one.toString().equals(one.name())
                                    ? one.toString()
                                    : word(value).orElseThrow(),
                    (value, style) -> word(value).orElseThrow(),
                    schema(Spelling.JSON));
        }

        private Optional<String> word(V value) {
            return meanings.entrySet().stream()
                    .filter(entry -> entry.getValue().equals(value))
                    .map(Map.Entry::getKey)
                    .findFirst();
        }

        @Override
        void check(V value, String name) {
            if (word(value).isEmpty()) {
                throw Refusal.of(name, "word", "be " + allowed(), value);
            }
        }

        @Override
        Map<String, Object> schema(Spelling spelling) {
            return map("type", "string", "enum", List.copyOf(meanings.keySet()));
        }

        @Override
        public String allowed() {
            return meanings.size() == 1
                    ? "the word " + String.join("", meanings.keySet())
                    : "one of " + String.join(", ", meanings.keySet());
        }
    }

    /**
     * {@return the type of a noun: a group of its keys}
     *
     * @param <V> the noun
     * @param table its table
     */
    public static <V> Type<V> group(Table<V> table) {
        return new GroupType<>(table, null);
    }

    /**
     * {@return the type of a noun that prints otherwise than alone, such as without its title in a row of a larger one}
     *
     * @param <V> the noun
     * @param table its table
     * @param form makes the form to print it by; asked when first printed
     */
    public static <V> Type<V> group(Table<V> table, Supplier<Form<V>> form) {
        return new GroupType<>(table, Objects.requireNonNull(form, "form"));
    }

    /**
     * {@return the type of a value that is written as a text or as a group, such as a wood}
     *
     * @param <V> the value
     * @param text read where a text is given, and written where it is enough
     * @param group read where a group is given
     * @param isText whether the text is enough for a value
     * @param allowed both in words
     */
    public static <V> Type<V> textOrGroup(Type<V> text, Table<V> group, Predicate<V> isText, String allowed) {
        return new TextOrGroup<>(
                Objects.requireNonNull(text, "text"),
                Objects.requireNonNull(group, "group"),
                Objects.requireNonNull(isText, "isText"),
                Objects.requireNonNull(allowed, "allowed"));
    }

    private static final class TextOrGroup<V> extends Type<V> {
        private final Type<V> text;
        private final Table<V> group;
        private final Predicate<V> isText;
        private final String allowed;

        TextOrGroup(Type<V> text, Table<V> group, Predicate<V> isText, String allowed) {
            this.text = text;
            this.group = group;
            this.isText = isText;
            this.allowed = allowed;
        }

        @Override
        @Nullable
        V read(Object data, String path, Faults faults) {
            return data instanceof Map ? group.read(data, path, faults) : text.read(data, path, faults);
        }

        @Override
        Object write(V value, Spelling spelling) {
            return isText.test(value) ? text.write(value, spelling) : group.plain(value, spelling);
        }

        @Override
        Map<String, Object> schema(Spelling spelling) {
            return map("oneOf", List.of(text.schema(spelling), group.schema(spelling)));
        }

        /** An answer by its first line. */
        @Override
        Kind<V> kind() {
            return Kind.own(
                    (value, style) -> value instanceof Answer answer
                            ? answer.rendered(style).finding()
                            : value.toString(),
                    (value, style) -> write(value, Spelling.JSON),
                    schema(Spelling.JSON));
        }

        @Override
        public String allowed() {
            return allowed;
        }

        @Override
        Optional<Table<?>> inside() {
            return Optional.of(group);
        }
    }

    /**
     * {@return the type of a list}
     *
     * @param <V> the type of an item
     * @param item the type of each item
     * @param fewest the fewest items allowed
     * @param most the most items allowed
     */
    public static <V> Type<List<V>> list(Type<V> item, int fewest, int most) {
        refuseUnless(fewest >= 0, "fewest", "be 0 or more", fewest);
        refuseUnless(most >= Math.max(1, fewest), "most", "be 1 or more and no less than the fewest", most);
        return new ListType<>(Objects.requireNonNull(item, "item"), fewest, most, false);
    }

    /**
     * {@return the type of one value, or a list of values of the same type: a wall read once, or several times}
     *
     * @param <V> the type of an item
     * @param item the type of each item
     * @param most the most items allowed
     */
    public static <V> Type<List<V>> oneOrMore(Type<V> item, int most) {
        refuseUnless(most >= 1, "most", "be 1 or more", most);
        return new ListType<>(Objects.requireNonNull(item, "item"), 1, most, true);
    }

    /** Holds an argument of a factory to its rule. */
    private static void refuseUnless(boolean isAllowed, String name, String must, Object given) {
        if (!isAllowed) {
            throw Refusal.of(name, "range", must, given);
        }
    }

    /**
     * One of several types that a value may be of.
     *
     * @param <V> the value
     */
    public static final class Case<V> {
        private final Type<? extends V> type;
        private final Predicate<V> isOf;

        private Case(Type<? extends V> type, Predicate<V> isOf) {
            this.type = type;
            this.isOf = isOf;
        }
    }

    /**
     * {@return one of the types of {@link #anyOf}}
     *
     * @param <V> the value
     * @param type the type
     * @param isOf which values are of it
     */
    public static <V> Case<V> caseOf(Type<? extends V> type, Predicate<V> isOf) {
        return new Case<>(Objects.requireNonNull(type, "type"), Objects.requireNonNull(isOf, "isOf"));
    }

    /**
     * {@return the type of a value that is of one of several types: the first that can be read}
     *
     * @param <V> the value
     * @param cases 1 or more
     */
    public static <V> Type<V> anyOf(List<Case<V>> cases) {
        Objects.requireNonNull(cases, "cases").forEach(one -> Objects.requireNonNull(one, "case"));
        refuseUnless(!cases.isEmpty(), "cases", "be 1 or more", cases.size());
        return new AnyOf<>(List.copyOf(cases));
    }

    private static final class AnyOf<V> extends Type<V> {
        private final List<Case<V>> cases;

        AnyOf(List<Case<V>> cases) {
            this.cases = cases;
        }

        @Override
        @Nullable
        V read(Object data, String path, Faults faults) {
            List<Faults> each = new ArrayList<>();
            for (Case<V> one : cases) {
                Faults own = new Faults();
                V value = one.type.read(data, path, own);
                if (value != null) { // whose other keys, not known, are faults all the same
                    own.all().forEach(faults::add);
                    return value;
                }
                each.add(own);
            }
            each.get(0).all().forEach(faults::add);
            return null;
        }

        @SuppressWarnings("unchecked") // its own test has found the value to be of this type
        private Type<V> of(V value) {
            return (Type<V>) cases.stream()
                    .filter(one -> one.isOf.test(value))
                    .findFirst()
                    .orElseThrow()
                    .type;
        }

        @Override
        Object write(V value, Spelling spelling) {
            return of(value).write(value, spelling);
        }

        @Override
        void check(V value, String name) {
            of(value).check(value, name);
        }

        @Override
        V in(V value, LengthStyle style) {
            return of(value).in(value, style);
        }

        @Override
        Optional<LengthStyle> style(V value) {
            return of(value).style(value);
        }

        @Override
        Map<String, Object> schema(Spelling spelling) {
            return map(
                    "anyOf",
                    cases.stream().map(one -> one.type.schema(spelling)).toList());
        }

        @Override
        public String allowed() {
            return cases.get(0).type.allowed();
        }
    }

    /**
     * {@return the type of a reading: one indication, a list of them, or a group of value and standard uncertainty}
     *
     * @param <Q> the kind of quantity
     * @param quantity the type of one indication
     * @param most the most indications allowed
     */
    public static <Q extends Quantity<Q>> Type<Reading<Q>> reading(QuantityType<Q> quantity, int most) {
        return new ReadingType<>(Objects.requireNonNull(quantity, "quantity"), most);
    }

    private static final class ListType<V> extends Type<List<V>> {
        private final Type<V> item;
        private final int fewest;
        private final int most;
        private final boolean orOne;

        ListType(Type<V> item, int fewest, int most, boolean orOne) {
            this.item = item;
            this.fewest = fewest;
            this.most = most;
            this.orOne = orOne;
        }

        @Override
        @Nullable
        List<V> read(Object data, String path, Faults faults) {
            if (!(data instanceof List<?> list)) {
                if (orOne) {
                    V one = item.read(data, path, faults);
                    return one == null ? null : List.of(one);
                }
                faults.add(path, "kind", "be " + allowed(), data);
                return null;
            }
            if (list.size() < fewest || list.size() > most) {
                faults.add(path, "count", "be " + listAllowed(), data);
                return null;
            }
            List<V> read = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                String place = path + "[" + (i + 1) + "]";
                Object one = list.get(i);
                V value = null;
                if (one == null || one.equals("")) {
                    faults.sentence(place, "empty", place + " has no value; give " + item.allowed());
                } else {
                    value = item.read(one, place, faults);
                }
                if (value != null) {
                    read.add(value);
                }
            }
            return read.size() == list.size() ? List.copyOf(read) : null;
        }

        @Override
        Object write(List<V> values, Spelling spelling) {
            List<Object> all =
                    values.stream().map(value -> item.write(value, spelling)).toList();
            return orOne && all.size() == 1 ? all.get(0) : all;
        }

        @Override
        Kind<List<V>> kind() {
            return Kind.list(item.kind());
        }

        @Override
        void check(List<V> values, String name) {
            if (values.size() < fewest || values.size() > most) {
                throw Refusal.of(name, "count", "be " + listAllowed(), Faults.shown(values));
            }
            for (V value : values) {
                item.check(Objects.requireNonNull(value, name), name);
            }
        }

        @Override
        List<V> in(List<V> values, LengthStyle style) {
            return values.stream().map(value -> item.in(value, style)).toList();
        }

        @Override
        Optional<LengthStyle> style(List<V> values) {
            return values.stream().map(item::style).flatMap(Optional::stream).findFirst();
        }

        @Override
        Map<String, Object> schema(Spelling spelling) {
            Map<String, Object> list =
                    map("type", "array", "items", item.schema(spelling), "minItems", fewest, "maxItems", most);
            return orOne ? map("oneOf", List.of(item.schema(spelling), list)) : list;
        }

        @Override
        public String allowed() {
            return orOne ? item.allowed() + ", or a list of such" : listAllowed();
        }

        private String listAllowed() {
            String count = fewest == most ? "" + most : fewest + " to " + most;
            return "a list of " + count + (most == 1 ? " item" : " items") + ", each " + item.allowed();
        }

        @Override
        Optional<Table<?>> inside() {
            return item.inside();
        }
    }

    /**
     * {@return the schema of a quantity as an object, to which {@link Table#fragment} refers as {@code $defs.quantity}}
     */
    public static Tree quantitySchema() {
        return Tree.of(QuantityType.object());
    }

    /** A map of key, value, key, value and so on, in that order. */
    static Map<String, Object> map(Object... keysAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return Collections.unmodifiableMap(map);
    }
}
