package org.neckgeom.form;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Way.Mode;
import org.neckgeom.measure.Chance;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.GlobalRisk;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Reading;
import org.neckgeom.measure.Verdict;
import org.neckgeom.text.Names;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The kind of a fact: how it is written as text, as data, and what a schema states of it. Immutable.
 *
 * <p>Fast answers keep doubles: {@link #MM}, {@link #RAD} and {@link #libraryValue} take a double in the library unit. A
 * number that is not finite is a fact that is not there.
 *
 * @param <V> the type of the value
 */
public final class Kind<V> {

    private static final Set<Mode> DIGITS = EnumSet.of(Mode.PLAIN, Mode.FIXED, Mode.TRIMMED, Mode.DIGITS);
    private static final Set<Mode> LENGTHS = EnumSet.of(
            Mode.PLAIN,
            Mode.FIXED,
            Mode.TRIMMED,
            Mode.DIGITS,
            Mode.TEXT,
            Mode.BRIEF,
            Mode.SMALL,
            Mode.MARK,
            Mode.GIVEN,
            Mode.BESIDE);
    private static final Set<Mode> QUANTITIES =
            EnumSet.of(Mode.PLAIN, Mode.FIXED, Mode.TRIMMED, Mode.DIGITS, Mode.GIVEN, Mode.BESIDE);

    /** A length as a double in mm. */
    public static final Kind<Double> MM = libraryValue(ShopUnit.MILLIMETRE);

    /** An angle as a double in rad, printed in degrees. */
    public static final Kind<Double> RAD = libraryValue(ShopUnit.DEGREE);

    /** Any quantity as an amount, a length among them. */
    public static final Kind<Amount<?>> AMOUNT =
            new Kind<Amount<?>>("quantity", LENGTHS, Kind::amountText, Kind::amountData).amount(Optional::of);

    /** A value with its standard uncertainty. */
    public static final Kind<Estimate<?>> ESTIMATE = new Kind<Estimate<?>>(
                    "estimate",
                    EnumSet.complementOf(
                            EnumSet.of(Mode.GROUPED, Mode.COUNT, Mode.FINDING, Mode.CAPITAL, Mode.WHOLE, Mode.BESIDE)),
                    Kind::estimateText,
                    Kind::estimateData)
            .amount(estimate -> Optional.of(estimate.standardUncertainty()));

    /** Limits, or one limit. */
    public static final Kind<Limits<?>> LIMITS = styled(
            "limits",
            (limits, way, style) -> shown(limits, way, style),
            (limits, style) -> ends(
                    limits.libraryLower(),
                    limits.libraryUpper(),
                    limits.in(style.inTables()).unit(),
                    style));

    /** An interval, such as one of 95 %. */
    public static final Kind<Interval<?>> INTERVAL = styled(
            "limits",
            (interval, way, style) -> shown(interval, way, style),
            (interval, style) -> ends(
                    interval.libraryLow(),
                    interval.libraryHigh(),
                    interval.low().unit(),
                    style));

    /** How a value scatters, in words and by its standard deviation. */
    public static final Kind<ErrorDistribution<?>> SPREAD =
            styled("spread", (spread, way, style) -> spread.in(style), Kind::spreadData);

    /** An estimate held against limits. */
    public static final Kind<Verdict<?>> VERDICT =
            styled("verdict", (verdict, way, style) -> verdict.in(style), Kind::verdictData);

    /** A whole number. */
    public static final Kind<Number> WHOLE = new Kind<>(
            "whole",
            EnumSet.of(Mode.PLAIN, Mode.GROUPED, Mode.COUNT),
            (value, way, style, beside) -> whole(value.longValue(), way),
            (value, style) -> value.longValue());

    /** A plain number, such as a ratio. */
    public static final Kind<Double> RATIO = new Kind<>(
            "number", DIGITS, (value, way, style, beside) -> number(value, way), (value, style) -> Json.number(value));

    /** A probability from 0 to 1, printed as percent; a small one also in its significant digits. */
    public static final Kind<Double> PROBABILITY = new Kind<>(
            "probability",
            EnumSet.of(Mode.PLAIN, Mode.DIGITS),
            (value, way, style, beside) -> way.mode() == Mode.PLAIN ? Numbers.percent(value) : number(value, way),
            (value, style) -> Json.number(value));

    /** A chance, printed as percent with no more nines than are earned. */
    public static final Kind<Chance> CHANCE = new Kind<>(
            "chance",
            EnumSet.of(Mode.PLAIN),
            (value, way, style, beside) -> value.toString(),
            (value, style) -> chanceData(value));

    /** A name that the user gave, or another word that is no code. */
    public static final Kind<String> NAME = new Kind<>(
            "text", EnumSet.of(Mode.PLAIN), (value, way, style, beside) -> way.cut(value), (value, style) -> value);

    /** Yes or no. */
    public static final Kind<Boolean> FLAG = new Kind<>(
            "flag",
            EnumSet.of(Mode.PLAIN),
            (value, way, style, beside) -> value ? "yes" : "no",
            (value, style) -> value);

    /** Any answer of any form: as data an object that names its form. */
    public static final Kind<Answer> ANSWER = new Kind<Answer>(
                    "answer",
                    EnumSet.of(Mode.PLAIN, Mode.FINDING, Mode.CAPITAL, Mode.WHOLE),
                    (value, way, style, beside) -> switch (way.mode()) {
                        case FINDING -> Form.renderedOf(value, style).finding();
                        case CAPITAL ->
                            Names.capital(Form.renderedOf(value, style).finding());
                        case WHOLE -> Form.wholeOf(value, style);
                        default -> value.text(style);
                    },
                    Form::dataOf)
            .rendered((value, way, style) -> Form.insideOf(value, style, way.mode() == Mode.WHOLE));

    /** A value of any type, such as an answer: its first line as text; its own form as data, or else that line. */
    public static final Kind<Object> ANY = new Kind<Object>(
                    "any",
                    EnumSet.of(Mode.PLAIN),
                    (value, way, style, beside) -> way.cut(firstLine(value, style)),
                    Kind::anyData)
            .line(Map.of());

    /** Writes text. */
    private interface Text<V> {
        @Nullable
        String of(V value, Way way, LengthStyle style, double libraryBeside);
    }

    /** Puts a value in the unit that a way asks for. */
    private interface Shown<V> {
        Object of(V value, Way way, LengthStyle style);
    }

    /** Renders a value that is an answer. */
    private interface Rendered<V> {
        @Nullable
        RenderedAnswer of(V value, Way way, LengthStyle style);
    }

    /** Reads a value as an amount, where it is one; an estimate as its uncertainty, which rounds others. */
    private interface AsAmount<V> {
        Optional<Amount<?>> of(V value);
    }

    private final String schema;
    private final Set<Mode> modes;
    private final Text<V> text;
    private final BiFunction<V, LengthStyle, Object> data;
    private final AsAmount<V> amount;
    private final List<Form<?>> inside;
    private final Map<String, Object> line;
    private final Rendered<V> rendered;

    /** A kind that is no amount and no answer, of a schema of its name. */
    private Kind(String schema, Set<Mode> modes, Text<V> text, BiFunction<V, LengthStyle, Object> data) {
        this(schema, modes, text, data, value -> Optional.empty(), List.of(), ref(schema), (value, way, style) -> null);
    }

    private Kind(
            String schema,
            Set<Mode> modes,
            Text<V> text,
            BiFunction<V, LengthStyle, Object> data,
            AsAmount<V> amount,
            List<Form<?>> inside,
            Map<String, Object> line,
            Rendered<V> rendered) {
        this.schema = schema;
        this.modes = modes;
        this.text = text;
        this.data = data;
        this.amount = amount;
        this.inside = inside;
        this.line = line;
        this.rendered = rendered;
    }

    private Kind<V> amount(AsAmount<V> by) {
        return new Kind<>(schema, modes, text, data, by, inside, line, rendered);
    }

    private Kind<V> inside(List<Form<?>> forms) {
        return new Kind<>(schema, modes, text, data, amount, forms, line, rendered);
    }

    private Kind<V> line(Map<String, Object> stated) {
        return new Kind<>(schema, modes, text, data, amount, inside, stated, rendered);
    }

    private Kind<V> rendered(Rendered<V> by) {
        return new Kind<>(schema, modes, text, data, amount, inside, line, by);
    }

    /**
     * {@return the kind of a value that is written as something read off it is}
     *
     * @param <W> the type of the value
     * @param part what is written of it
     */
    public <W> Kind<W> of(Function<? super W, ? extends V> part) {
        Objects.requireNonNull(part, "part");
        return new Kind<>(
                schema,
                modes,
                (value, way, style, beside) -> text.of(part.apply(value), way, style, beside),
                (value, style) -> data.apply(part.apply(value), style),
                value -> amount.of(part.apply(value)),
                inside,
                line,
                (value, way, style) -> rendered.of(part.apply(value), way, style));
    }

    /**
     * {@return this kind with data of its own; what a schema states of it stays}
     *
     * @param own writes it as maps, lists, texts, numbers and booleans
     */
    public Kind<V> written(BiFunction<? super V, LengthStyle, ?> own) {
        Objects.requireNonNull(own, "own");
        return new Kind<>(schema, modes, text, own::apply, amount, inside, line, rendered);
    }

    private static Map<String, Object> ref(String name) {
        return Map.of("$ref", "#/$defs/" + name);
    }

    /**
     * {@return the kind of a quantity that is kept as a double in the library unit}
     *
     * @param <Q> the kind of quantity
     * @param shown the unit it is printed in; for a length and a feed the style's own
     */
    public static <Q extends Quantity<Q>> Kind<Double> libraryValue(ShopUnit<Q> shown) {
        boolean length = Objects.requireNonNull(shown, "unit").kind() == (Class<?>) Length.class;
        return new Kind<Double>(
                        "quantity",
                        length ? LENGTHS : QUANTITIES,
                        (value, way, style, beside) -> amountText(Amount.ofLibrary(value, shown), way, style, beside),
                        (value, style) -> amountData(Amount.ofLibrary(value, shown), style))
                .amount(value -> Optional.of(Amount.ofLibrary(value, shown)));
    }

    /**
     * {@return the kind of a code: printed as the constant's own words, or its name in lower case; as data its name
     * with hyphens}
     *
     * @param <E> the enum
     * @param type its class
     */
    public static <E extends Enum<E>> Kind<E> code(Class<E> type) {
        if (!Objects.requireNonNull(type, "type").isEnum()) {
            throw Refusal.of("type of a code", "enum", "be an enum", type.getSimpleName());
        }
        List<String> codes =
                Arrays.stream(type.getEnumConstants()).map(Kind::codeOf).toList();
        return new Kind<E>(
                        "code",
                        EnumSet.of(Mode.PLAIN),
                        (value, way, style, beside) -> value.toString().equals(value.name())
                                ? codeOf(value).replace('-', ' ')
                                : value.toString(),
                        (value, style) -> codeOf(value))
                .line(Map.of("enum", codes));
    }

    /** Such as {@code two-way} for {@code TWO_WAY}. */
    static String codeOf(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * {@return the kind of an answer inside an answer}
     *
     * @param <A> the type of the answer inside
     * @param form its form
     */
    public static <A> Kind<A> answer(Form<A> form) {
        Objects.requireNonNull(form, "form");
        return new Kind<A>(
                        form.name(),
                        EnumSet.of(Mode.PLAIN, Mode.FINDING),
                        (value, way, style, beside) -> way.mode() == Mode.FINDING
                                ? form.render(value, style).finding()
                                : form.text(value, style),
                        form::data)
                .inside(List.of(form))
                .rendered((value, way, style) -> form.inside(value, style, false));
    }

    /**
     * {@return the kind of a list, printed with commas between}
     *
     * @param <V> the type of one
     * @param one the kind of one
     */
    public static <V> Kind<List<V>> list(Kind<V> one) {
        Objects.requireNonNull(one, "kind");
        return new Kind<List<V>>(
                        one.schema,
                        one.modes,
                        (list, way, style, beside) -> {
                            Way each = way.once() ? way.withoutUnit() : way;
                            List<String> texts = list.stream()
                                    .limit(way.first())
                                    .map(value -> one.text.of(value, each, style, beside))
                                    .filter(Objects::nonNull)
                                    .toList();
                            return joined(texts, way.last()) + (way.once() ? one.unitAndRest(list, way, style) : "");
                        },
                        (list, style) -> list.stream()
                                .map(value -> one.data.apply(value, style))
                                .toList())
                .inside(one.inside)
                .line(Map.of("type", "array", "items", one.line));
    }

    /**
     * {@return the kind of a list that is printed on one line: as many as it takes, and how many more there are} A
     * sentence that names an empty one is left out.
     *
     * @param <V> the type of one
     * @param one the kind of one
     */
    public static <V> Kind<List<V>> shortList(Kind<V> one) {
        Kind<List<V>> whole = list(one);
        return new Kind<List<V>>(
                        one.schema,
                        EnumSet.of(Mode.PLAIN),
                        (list, way, style, beside) -> list.isEmpty()
                                ? null
                                : Names.shortList(list.stream()
                                        .map(value -> one.text.of(value, way, style, beside))
                                        .filter(Objects::nonNull)
                                        .toList()),
                        whole.data)
                .inside(one.inside)
                .line(whole.line);
    }

    /**
     * {@return the kind of a table: a list of answers whose keys are its columns, written as rows by {@link Form#each}}
     *
     * @param <R> the type of a row
     * @param row the form of a row
     */
    public static <R> Kind<List<R>> table(Form<R> row) {
        return list(answer(row));
    }

    /**
     * {@return a kind of one's own, for a value whose text follows rules that no other kind has}
     *
     * @param <V> the type of the value
     * @param text writes it for people in a style
     * @param data writes it as maps, lists, texts, numbers and booleans
     * @param schema what JSON Schema states of that data
     */
    public static <V> Kind<V> own(
            BiFunction<? super V, LengthStyle, String> text,
            BiFunction<? super V, LengthStyle, ?> data,
            Map<String, ?> schema) {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(data, "data");
        return new Kind<V>(
                        "own",
                        EnumSet.of(Mode.PLAIN),
                        (value, way, style, beside) -> text.apply(value, style),
                        data::apply)
                .line(new LinkedHashMap<>(Objects.requireNonNull(schema, "schema")));
    }

    private static String joined(List<String> texts, String last) {
        int end = texts.size() - 1;
        return end < 1 ? String.join("", texts) : String.join(", ", texts.subList(0, end)) + last + texts.get(end);
    }

    /** The unit of a list's numbers, and how many of them are left out. */
    private String unitAndRest(List<V> list, Way way, LengthStyle style) {
        LengthStyle shown = way.table() ? style.inTables() : style;
        String unit = list.stream()
                .findFirst()
                .flatMap(amount::of)
                .map(one -> symbol(way.mode() == Mode.GIVEN ? one.unit() : unit(one.unit(), way, shown)))
                .orElse("");
        return unit + (list.size() > way.first() ? " and " + (list.size() - way.first()) + " more" : "");
    }

    private static <V> Kind<V> styled(String schema, Shown<V> shown, BiFunction<V, LengthStyle, Object> data) {
        return new Kind<>(
                schema,
                EnumSet.of(Mode.PLAIN),
                (value, way, style, beside) -> shown.of(value, way, way.table() ? style.inTables() : style)
                        .toString(),
                data);
    }

    boolean takes(Way way) {
        return modes.contains(way.mode());
    }

    /** Writes a value that the form has from its answer, and so is of this kind; null where there is nothing to write. */
    @SuppressWarnings("unchecked")
    @Nullable
    String write(Object value, Way way, LengthStyle style, double libraryBeside) {
        return text.of((V) value, way, style, libraryBeside);
    }

    /** Renders a value, as above, that is one whole answer; null where it is none or only its first line is asked for. */
    @SuppressWarnings("unchecked")
    @Nullable
    RenderedAnswer render(Object value, Way way, LengthStyle style) {
        return way.mode() == Mode.PLAIN || way.mode() == Mode.WHOLE ? rendered.of((V) value, way, style) : null;
    }

    @SuppressWarnings("unchecked") // as above
    Object dataOf(Object value, LengthStyle style) {
        return data.apply((V) value, style);
    }

    @SuppressWarnings("unchecked") // as above
    Optional<Amount<?>> amountOf(Object value) {
        return amount.of((V) value);
    }

    Map<String, Object> schemaLine() {
        return line;
    }

    List<Form<?>> inside() {
        return inside;
    }

    private static String amountText(Amount<?> amount, Way way, LengthStyle style, double libraryBeside) {
        return quantityText(amount, way, way.table() ? style.inTables() : style, libraryBeside);
    }

    private static <Q extends Quantity<Q>> String quantityText(
            Amount<Q> given, Way way, LengthStyle style, double libraryBeside) {
        Amount<Q> amount = way.size() ? given.abs() : given;
        ShopUnit<Q> unit = unit(amount.unit(), way, style);
        double value = amount.valueIn(unit);
        double mm = amount.libraryValue();
        return switch (way.mode()) {
            case TEXT -> style.text(mm);
            case BRIEF -> style.brief(mm);
            case SMALL -> style.small(mm);
            case MARK -> style.mark(mm);
            case GIVEN -> itself(amount, way);
            case BESIDE ->
                isLength(amount.unit()) && !way.fine() && !way.own()
                        ? style.text(mm, libraryBeside)
                        : Numbers.fixed(value, Numbers.decimalsFor(unit.fromLibrary(libraryBeside), 3)) + symbol(unit);
            case FIXED, TRIMMED, DIGITS ->
                digits(value, way, style != LengthStyle.MILLIMETRES) + (way.bare() ? "" : symbol(unit));
            default -> itself(amount.in(unit), way);
        };
    }

    private static String itself(Amount<?> amount, Way way) {
        String text = amount.toString();
        boolean cut = way.bare() && !amount.unit().symbol().isEmpty();
        return cut ? text.substring(0, text.lastIndexOf(' ')) : text;
    }

    private static boolean isLength(ShopUnit<?> unit) {
        return unit.kind() == (Class<?>) Length.class;
    }

    private static <Q extends Quantity<Q>> ShopUnit<Q> unit(ShopUnit<Q> given, Way way, LengthStyle style) {
        if (way.own() && isLength(given) && LengthStyle.ofUnit(given) == style && style != LengthStyle.INCH_FRACTIONS) {
            return given;
        }
        return way.fine() ? style.fineUnitFor(given) : style.unitFor(given);
    }

    private static <Q extends Quantity<Q>> Limits<Q> shown(Limits<Q> limits, Way way, LengthStyle style) {
        return limits.in(unit(limits.unit(), way, style));
    }

    private static <Q extends Quantity<Q>> Interval<Q> shown(Interval<Q> interval, Way way, LengthStyle style) {
        ShopUnit<Q> unit = unit(interval.low().unit(), way, style);
        return Interval.ofLibrary(interval.libraryLow(), interval.libraryHigh(), unit);
    }

    private static <Q extends Quantity<Q>> Estimate<Q> shown(Estimate<Q> estimate, Way way, LengthStyle style) {
        return estimate.in(unit(estimate.unit(), way, style));
    }

    private static @Nullable String estimateText(
            Estimate<?> estimate, Way way, LengthStyle style, double libraryBeside) {
        LengthStyle shown = way.table() ? style.inTables() : style;
        double u = estimate.libraryUncertainty();
        Amount<?> deviation = estimate.standardUncertainty();
        return switch (way.mode()) {
            case PLAIN -> shown(estimate, way, shown).toString();
            case VALUE -> quantityText(estimate.value(), way.as(Mode.BESIDE), shown, u);
            case U -> {
                if (u == 0) {
                    yield null;
                }
                yield isLength(estimate.unit()) && !way.fine() && !way.own()
                        ? shown.small(u)
                        : quantityText(deviation, way.as(Mode.DIGITS), shown, 0);
            }
            case DEVIATION -> quantityText(deviation, way.as(Mode.DIGITS), shown, 0);
            default -> quantityText(estimate.value(), way, shown, 0);
        };
    }

    private static String symbol(ShopUnit<?> unit) {
        return unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    }

    private static String digits(double value, Way way, boolean inches) {
        return switch (way.mode()) {
            case FIXED -> Numbers.fixed(value, inches ? way.inchDecimals() : way.decimals());
            case TRIMMED -> Numbers.trimmed(value, inches ? way.inchDecimals() : way.decimals());
            default -> {
                int two = Numbers.decimalsFor(Math.abs(value), 3);
                yield Numbers.fixed(value, value == 0 ? two : two + way.decimals() - 2);
            }
        };
    }

    private static String number(double value, Way way) {
        double sized = way.size() ? Math.abs(value) : value;
        double shown = way.percent() ? 100.0 * sized : sized;
        String text = way.mode() == Mode.PLAIN ? Numbers.plain(shown) : digits(shown, way, false);
        return way.percent() && !way.bare() ? text + " %" : text;
    }

    private static String whole(long value, Way way) {
        return switch (way.mode()) {
            case COUNT -> value + " " + way.words().get(value == 1 ? 0 : 1);
            case GROUPED -> {
                StringBuilder digits = new StringBuilder(Long.toString(value));
                for (int at = digits.length() - 3; at > (value < 0 ? 1 : 0); at -= 3) {
                    digits.insert(at, ',');
                }
                yield digits.toString();
            }
            default -> Long.toString(value);
        };
    }

    /** The same for equal amounts, in whichever digits each was given in: to twelve of them where those give it back. */
    private static double valueOf(double libraryValue, ShopUnit<?> unit) {
        double value = unit.fromLibrary(libraryValue);
        double rounded = Double.parseDouble(Numbers.plain(value));
        return unit.toLibrary(rounded) == libraryValue ? rounded : value;
    }

    private static Map<String, Object> amountData(Amount<?> amount, LengthStyle style) {
        Amount<?> shown = amount.in(style.inTables());
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("value", Json.number(valueOf(shown.libraryValue(), shown.unit())));
        return unit(data, shown.unit());
    }

    private static Map<String, Object> unit(Map<String, Object> data, ShopUnit<?> unit) {
        data.put("unit", unit.toString());
        data.put("ucum", unit.ucum());
        return data;
    }

    private static Object estimateData(Estimate<?> estimate, LengthStyle style) {
        return estimateMap(estimate.in(style.inTables()));
    }

    private static Map<String, Object> estimateMap(Estimate<?> shown) {
        ShopUnit<?> unit = shown.unit();
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("value", Json.number(unit.fromLibrary(shown.libraryValue())));
        double u = unit.fromLibrary(shown.libraryUncertainty());
        // A difference of temperatures has no zero elsewhere, and taking it off costs the last digits.
        data.put(
                "standardUncertainty",
                unit.hasOffset() ? new Json.Figure(Numbers.plain(u - unit.fromLibrary(0))) : Json.number(u));
        unit(data, unit);
        if (Double.isFinite(shown.degreesOfFreedom())) {
            data.put("degreesOfFreedom", Json.number(shown.degreesOfFreedom()));
        }
        return data;
    }

    private static String firstLine(Object value, LengthStyle style) {
        String text = value instanceof Answer answer
                ? answer.text(style)
                : printedIn(value, style).toString();
        return text.lines().findFirst().orElse("");
    }

    /**
     * {@return an amount or a value of {@code measure} that prints in a style; anything else as it is}
     *
     * @param value of any type
     * @param style how lengths are printed
     */
    public static Object printedIn(Object value, LengthStyle style) {
        if (value instanceof Amount<?> amount) {
            return amount.in(style);
        }
        if (value instanceof Estimate<?> estimate) {
            return estimate.in(style);
        }
        if (value instanceof Limits<?> limits) {
            return limits.in(style);
        }
        if (value instanceof Interval<?> interval) {
            return interval.in(style);
        }
        if (value instanceof ErrorDistribution<?> spread) {
            return spread.in(style);
        }
        if (value instanceof Reading<?> reading) {
            return reading.in(style);
        }
        if (value instanceof GlobalRisk<?> risk) {
            return risk.in(style);
        }
        return value instanceof Verdict<?> verdict ? verdict.in(style) : Objects.requireNonNull(value, "value");
    }

    private static Object anyData(Object value, LengthStyle style) {
        if (value instanceof Answer answer) {
            return Form.dataOf(answer, style);
        }
        if (value instanceof Amount<?> amount) {
            return amountData(amount, style);
        }
        if (value instanceof Double number && Double.isFinite(number)) {
            return Json.number(number);
        }
        boolean plain = value instanceof Integer || value instanceof Long || value instanceof Boolean;
        return plain || value instanceof String ? value : firstLine(value, style);
    }

    private static <Q extends Quantity<Q>> Map<String, Object> ends(
            double lower, double upper, ShopUnit<Q> unit, LengthStyle style) {
        ShopUnit<Q> shown = style.inTables().unitFor(unit);
        Map<String, Object> data = new LinkedHashMap<>();
        if (Double.isFinite(lower)) {
            data.put("lower", Json.number(shown.fromLibrary(lower)));
        }
        if (Double.isFinite(upper)) {
            data.put("upper", Json.number(shown.fromLibrary(upper)));
        }
        return unit(data, shown);
    }

    private static Object verdictData(Verdict<?> verdict, LengthStyle style) {
        Verdict<?> shown = verdict.in(style.inTables());
        Map<String, Object> data = estimateMap(shown.estimate());
        data.put("limits", LIMITS.dataOf(shown.limits(), style));
        data.put("conformanceProbability", Json.number(shown.probability()));
        data.put("verdict", codeOf(shown.call()));
        return data;
    }

    private static Object chanceData(Chance chance) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("probability", Json.number(chance.probability()));
        data.put("outside", Json.number(chance.outside()));
        data.put("accuracy", Json.number(chance.accuracy()));
        data.put("outsideAtWorst", Json.number(chance.outsideAtWorst()));
        data.put("wellKnown", chance.isWellKnown());
        return data;
    }

    private static Object spreadData(ErrorDistribution<?> spread, LengthStyle style) {
        ErrorDistribution<?> shown = spread.in(style.inTables());
        ShopUnit<?> unit = shown.unit();
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("law", codeOf(shown.law()));
        data.put("shift", Json.number(unit.fromLibrary(shown.libraryMean())));
        data.put("standardDeviation", Json.number(unit.fromLibrary(Math.sqrt(shown.libraryVariance()))));
        return unit(data, unit);
    }

    /** What a schema states of each kind that is more than a line. */
    static Map<String, Object> definitions() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("quantity", object(List.of("value"), List.of(), Map.of("printedIn", Map.of("type", "string"))));
        all.put("estimate", object(List.of("value", "standardUncertainty"), List.of("degreesOfFreedom")));
        all.put("limits", object(List.of(), List.of("lower", "upper")));
        Map<String, Object> held = new LinkedHashMap<>();
        held.put("limits", ref("limits"));
        held.put("verdict", Map.of("enum", List.of("within", "undecided", "outside")));
        all.put(
                "verdict",
                object(
                        List.of("value", "standardUncertainty", "conformanceProbability"),
                        List.of("degreesOfFreedom"),
                        held));
        all.put(
                "spread",
                object(List.of("shift", "standardDeviation"), List.of(), Map.of("law", Map.of("type", "string"))));
        all.put(
                "answer",
                Map.of(
                        "type", "object",
                        "properties", Map.of("answer", Map.of("type", "string")),
                        "required", List.of("answer")));
        all.put("whole", Map.of("type", "integer"));
        all.put("number", Map.of("type", "number"));
        Map<String, Object> probability = new LinkedHashMap<>();
        probability.put("type", "number");
        probability.put("minimum", 0);
        probability.put("maximum", 1);
        all.put("probability", probability);
        Map<String, Object> chance = new LinkedHashMap<>();
        List.of("probability", "outside", "accuracy", "outsideAtWorst")
                .forEach(key -> chance.put(key, ref("probability")));
        chance.put("wellKnown", Map.of("type", "boolean"));
        all.put("chance", closed(chance, List.copyOf(chance.keySet())));
        all.put("text", Map.of("type", "string"));
        all.put("flag", Map.of("type", "boolean"));
        return all;
    }

    private static Map<String, Object> object(List<String> needed, List<String> others) {
        return object(needed, others, Map.of());
    }

    private static Map<String, Object> object(List<String> needed, List<String> others, Map<String, Object> more) {
        Map<String, Object> properties = new LinkedHashMap<>();
        needed.forEach(key -> properties.put(key, Map.of("type", "number")));
        others.forEach(key -> properties.put(key, Map.of("type", "number")));
        properties.putAll(more);
        properties.put("unit", Map.of("type", "string"));
        properties.put("ucum", Map.of("type", "string"));
        return closed(
                properties,
                Stream.concat(needed.stream(), Stream.of("unit", "ucum")).toList());
    }

    private static Map<String, Object> closed(Map<String, Object> properties, List<String> needed) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("type", "object");
        object.put("properties", properties);
        object.put("required", needed);
        object.put("additionalProperties", false);
        return object;
    }

    /** Returns the name of the kind as a schema has it. */
    @Override
    public String toString() {
        return schema;
    }
}
