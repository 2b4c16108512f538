package org.neckgeom.examples.file;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LinearDensity;
import org.neckgeom.units.MassDensity;
import org.neckgeom.units.ShopUnits;

/**
 * A quantity written the way a maker writes it, always with its unit: {@code 44.5 mm}, {@code 1 3/4 in}, {@code 13
 * deg}. A number without a unit and a unit of another kind are refused. Immutable.
 *
 * @param <Q> the kind of quantity
 */
public final class QuantityKind<Q extends Quantity<Q>> implements Kind<Amount<Q>> {

    private static final String NUMBER = "[+-]?(\\d+(\\.\\d+)?([eE][+-]?\\d+)?|\\.\\d+|(\\d+[ -])?\\d+/\\d+)";

    /** A fraction of an inch with the rest in thou, as lengths are printed. */
    private static final String WITH_REMAINDER = NUMBER + " in [+-] \\d+(\\.\\d+)? thou";

    private final Class<Q> kind;
    private final String noun;
    private final String examples;
    private final List<String> unitWords;
    private final Amount<Q> least;
    private final boolean leastExcluded;
    private final Amount<Q> most;

    private QuantityKind(
            Class<Q> kind,
            String noun,
            String examples,
            List<String> unitWords,
            Amount<Q> least,
            boolean leastExcluded,
            Amount<Q> most) {
        this.kind = kind;
        this.noun = noun;
        this.examples = examples;
        this.unitWords = unitWords;
        this.least = least;
        this.leastExcluded = leastExcluded;
        this.most = most;
    }

    private static <Q extends Quantity<Q>> QuantityKind<Q> any(
            Class<Q> kind, String noun, String examples, String... unitWords) {
        return new QuantityKind<>(kind, noun, examples, List.of(unitWords), null, false, null);
    }

    /**
     * Any length.
     *
     * @return the kind
     */
    public static QuantityKind<Length> length() {
        return any(
                Length.class,
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
    }

    /**
     * Any angle.
     *
     * @return the kind
     */
    public static QuantityKind<Angle> angle() {
        return any(Angle.class, "an angle", "13 deg", "degrees", "degree", "deg", "\u00b0", "rad");
    }

    /**
     * Any force.
     *
     * @return the kind
     */
    public static QuantityKind<Force> force() {
        return any(
                Force.class,
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
    }

    /**
     * Any ratio, written in percent.
     *
     * @return the kind
     */
    public static QuantityKind<Dimensionless> percent() {
        return any(Dimensionless.class, "a ratio in percent", "45 %", "percent", "%");
    }

    /**
     * Any temperature.
     *
     * @return the kind
     */
    public static QuantityKind<Temperature> temperature() {
        return any(
                Temperature.class,
                "a temperature",
                "21 degC or 70 degF",
                "degC",
                "C",
                "\u00b0C",
                "degF",
                "F",
                "\u00b0F",
                "K");
    }

    /**
     * Any stress or elastic modulus.
     *
     * @return the kind
     */
    public static QuantityKind<Pressure> pressure() {
        return any(Pressure.class, "a stress or stiffness", "11.6 GPa", "MPa", "GPa", "psi");
    }

    /**
     * Any speed, such as a feed.
     *
     * @return the kind
     */
    public static QuantityKind<Speed> speed() {
        return any(Speed.class, "a speed", "1800 mm/min or 70 in/min", "mm/s", "mm/min", "in/min", "m/s");
    }

    /**
     * Any speed of turning.
     *
     * @return the kind
     */
    public static QuantityKind<Frequency> turning() {
        return any(Frequency.class, "a speed of turning", "16000 rpm", "rpm", "Hz");
    }

    /**
     * Any density.
     *
     * @return the kind
     */
    public static QuantityKind<MassDensity> density() {
        return any(MassDensity.class, "a density", "610 kg/m3", "kg/m3");
    }

    /**
     * Any mass per length, of a string.
     *
     * @return the kind
     */
    public static QuantityKind<LinearDensity> massPerLength() {
        return any(LinearDensity.class, "a mass per length", "5.2 g/m", "g/m", "lb/in");
    }

    /**
     * The same kind, more than a value.
     *
     * @param excluded the value it must exceed
     * @return a narrower kind
     */
    public QuantityKind<Q> moreThan(Amount<Q> excluded) {
        return new QuantityKind<>(kind, noun, examples, unitWords, excluded, true, most);
    }

    /**
     * The same kind, a value or more.
     *
     * @param included the least allowed
     * @return a narrower kind
     */
    public QuantityKind<Q> atLeast(Amount<Q> included) {
        return new QuantityKind<>(kind, noun, examples, unitWords, included, false, most);
    }

    /**
     * The same kind, a value or less.
     *
     * @param included the most allowed
     * @return a narrower kind
     */
    public QuantityKind<Q> atMost(Amount<Q> included) {
        return new QuantityKind<>(
                kind, noun, examples, unitWords, least, leastExcluded, Objects.requireNonNull(included));
    }

    /**
     * The same kind with examples of its own, as where the usual ones lie outside its limits.
     *
     * @param own such as {@code 0.43 mm or 17 thou}
     * @return the kind, said otherwise
     */
    public QuantityKind<Q> suchAs(String own) {
        return new QuantityKind<>(kind, noun, Objects.requireNonNull(own), unitWords, least, leastExcluded, most);
    }

    @Override
    public Found<Amount<Q>> read(Node node, Problems problems) {
        String path = node.place().path();
        if (!(node instanceof Node.Text text)) {
            problems.add(node.place(), path + " is " + node.found() + ", but must be " + allowed());
            return Found.unusable();
        }
        Amount<Q> amount;
        try {
            amount = ShopUnits.parse(text.text(), kind);
        } catch (IllegalArgumentException refused) {
            problems.add(node.place(), path + ": " + refused.getMessage());
            return Found.unusable();
        }
        if (amount.unit().symbol().isEmpty()) { // a bare ratio: plain to the library, a slip in a file
            problems.add(node.place(), path + ": " + node.found() + " has no unit; give " + allowed());
            return Found.unusable();
        }
        try {
            HouseUnits.of(amount, amount.unit(), path);
        } catch (IllegalArgumentException outOfReach) {
            problems.add(node.place(), outOfReach.getMessage());
            return Found.unusable();
        }
        boolean low = least != null && (leastExcluded ? amount.compareTo(least) <= 0 : amount.compareTo(least) < 0);
        if (low || (most != null && amount.compareTo(most) > 0)) {
            problems.add(node.place(), path + " is " + node.found() + ", but must be " + allowed());
            return Found.unusable();
        }
        return Found.of(amount);
    }

    @Override
    public String allowed() {
        StringBuilder text = new StringBuilder(noun);
        if (least != null) {
            text.append(leastExcluded ? " of more than " : " of at least ").append(least);
        }
        if (most != null) {
            text.append(least == null ? " of at most " : " and at most ").append(most);
        }
        return text.append(" with its unit, such as ").append(examples).toString();
    }

    /** The words for units this kind takes in a file. */
    List<String> unitWords() {
        return unitWords;
    }

    @Override
    public Map<String, Object> schema() {
        String units = unitWords.stream().map(QuantityKind::escaped).collect(Collectors.joining("|"));
        String one = NUMBER + " *(" + units + ")";
        String pattern = kind == (Class<?>) Length.class ? "(" + one + "|" + WITH_REMAINDER + ")" : one;
        return Fragment.of("type", "string", "pattern", "^" + pattern + "$");
    }

    /** Escapes what a regular expression of ECMA-262, the one JSON Schema uses, would read as a sign. */
    private static String escaped(String word) {
        return Pattern.compile("[/.*+?^${}()|\\[\\]\\\\]").matcher(word).replaceAll("\\\\$0");
    }
}
