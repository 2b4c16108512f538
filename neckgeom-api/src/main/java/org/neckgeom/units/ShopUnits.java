package org.neckgeom.units;

import java.util.List;
import java.util.Objects;
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
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;

/**
 * The units a maker types, as functions: {@code mm(29.84)}, {@code inch("1 3/4")}, {@code deg(13)}, {@code length("44.5
 * mm")}. For static import.
 *
 * <p>Each function takes a finite number, negative or 0 allowed, and returns an {@link Amount} in that unit. Texts have
 * a decimal point, never a comma. Fractions and mixed numbers are read as on a shop drawing: {@code 25 1/4 in}. The
 * result does not depend on the locale.
 *
 * <p>Errors: a number that is not finite, or a text that is not a quantity of the kind, throws {@link
 * org.neckgeom.fault.Refusal} (an {@code IllegalArgumentException}) that quotes the value.
 *
 * @see Amount
 * @see LengthStyle
 */
public final class ShopUnits {

    private ShopUnits() {}

    /**
     * {@return a length in millimetres}
     *
     * @param value in mm, finite
     */
    public static Amount<Length> mm(double value) {
        return ShopUnit.MILLIMETRE.of(value);
    }

    /**
     * {@return a length in inches of 25.4 mm exactly}
     *
     * @param value in inches, finite
     */
    public static Amount<Length> inch(double value) {
        return ShopUnit.INCH.of(value);
    }

    /**
     * {@return a length in whole inches} 0 is refused: in Java {@code 3 / 8} is 0, and so is the length of {@code
     * inch(3 / 8)}.
     *
     * @param whole inches, not 0; {@code inch(0.0)} is no length at all
     * @throws IllegalArgumentException if it is 0
     */
    public static Amount<Length> inch(int whole) {
        if (whole == 0) {
            throw Refusal.because(
                    "inches",
                    "whole-division",
                    "inch(0) is refused, for inch(3 / 8) is inch(0) in Java: write inch(3, 8) or inch(\"3/8\"),"
                            + " and inch(0.0) for no length at all");
        }
        return inch((double) whole);
    }

    /**
     * {@return a length of a fraction of an inch, such as {@code inch(3, 8)}: the double nearest to it}
     *
     * @param numerator of either sign
     * @param denominator 1 or more
     * @throws IllegalArgumentException if the denominator is less than 1
     */
    public static Amount<Length> inch(int numerator, int denominator) {
        if (denominator < 1) {
            throw Refusal.of("denominator", "at-least", "be 1 or more", denominator);
        }
        return inch((double) numerator / denominator);
    }

    /**
     * {@return a length of inches and a fraction, such as {@code inch(1, 3, 4)} for 1 3/4 in: the double nearest to it}
     *
     * @param whole inches, of either sign: {@code inch(-1, 3, 4)} is -1 3/4 in
     * @param numerator 0 or more, and less than the denominator
     * @param denominator 1 or more
     * @throws IllegalArgumentException if the fraction is less than 0, or 1 or more
     */
    public static Amount<Length> inch(int whole, int numerator, int denominator) {
        if (denominator < 1) {
            throw Refusal.of("denominator", "at-least", "be 1 or more", denominator);
        }
        if (numerator < 0 || numerator >= denominator) {
            throw Refusal.of(
                    "numerator", "range", "be 0 or more and less than the denominator, " + denominator, numerator);
        }
        double size = (Math.abs((double) whole) * denominator + numerator) / denominator;
        return inch(whole < 0 ? -size : size);
    }

    /**
     * {@return a length in inches from a number as written on a drawing}
     *
     * @param text such as {@code 1 3/4}, {@code 3/8}, {@code 1.75}; without a unit
     * @throws IllegalArgumentException if it is no such number
     */
    public static Amount<Length> inch(String text) {
        Scanner scanner = new Scanner(Objects.requireNonNull(text, "text"));
        double value = scanner.number();
        if (!Double.isFinite(value) || !scanner.rest().isEmpty()) {
            String plain = Typed.plain(text);
            if (!plain.equals(text)) {
                return inch(plain);
            }
            throw unreadable(text, "a number of inches", "\"1 3/4\", \"3/8\" or \"1.75\"");
        }
        return inch(value);
    }

    /**
     * {@return a length in thousandths of an inch}
     *
     * @param value in thou, finite
     */
    public static Amount<Length> thou(double value) {
        return ShopUnit.THOU.of(value);
    }

    /**
     * {@return a length in feet, for the radius of a dome}
     *
     * @param value in feet of 304.8 mm, finite
     */
    public static Amount<Length> feet(double value) {
        return ShopUnit.FOOT.of(value);
    }

    /**
     * {@return an angle in degrees}
     *
     * @param value in degrees, finite
     */
    public static Amount<Angle> deg(double value) {
        return ShopUnit.DEGREE.of(value);
    }

    /**
     * {@return a force in newtons}
     *
     * @param value in N, finite
     */
    public static Amount<Force> newton(double value) {
        return ShopUnit.NEWTON.of(value);
    }

    /**
     * {@return a force in pounds-force}
     *
     * @param value in lbf, finite
     */
    public static Amount<Force> poundForce(double value) {
        return ShopUnit.POUND_FORCE.of(value);
    }

    /**
     * {@return an elastic modulus or a stress in gigapascals}
     *
     * @param value in GPa, finite
     */
    public static Amount<Pressure> gigapascal(double value) {
        return ShopUnit.GIGAPASCAL.of(value);
    }

    /**
     * {@return a ratio in percent}
     *
     * @param value in percent, finite
     */
    public static Amount<Dimensionless> percent(double value) {
        return ShopUnit.PERCENT.of(value);
    }

    /**
     * {@return a temperature in degrees Celsius}
     *
     * @param value in degrees Celsius, finite
     */
    public static Amount<Temperature> celsius(double value) {
        return ShopUnit.CELSIUS.of(value);
    }

    /**
     * {@return a temperature in degrees Fahrenheit}
     *
     * @param value in degrees Fahrenheit, finite
     */
    public static Amount<Temperature> fahrenheit(double value) {
        return ShopUnit.FAHRENHEIT.of(value);
    }

    /**
     * {@return a frequency in hertz}
     *
     * @param value in Hz, finite
     */
    public static Amount<Frequency> hertz(double value) {
        return ShopUnit.HERTZ.of(value);
    }

    /**
     * {@return a cutter's speed of rotation}
     *
     * @param value in revolutions per minute, finite
     */
    public static Amount<Frequency> rpm(double value) {
        return ShopUnit.RPM.of(value);
    }

    /**
     * {@return a feed}
     *
     * @param value in mm per minute, finite
     */
    public static Amount<Speed> mmPerMinute(double value) {
        return ShopUnit.MM_PER_MINUTE.of(value);
    }

    /**
     * {@return a feed}
     *
     * @param value in inches per minute, finite
     */
    public static Amount<Speed> inchPerMinute(double value) {
        return ShopUnit.INCH_PER_MINUTE.of(value);
    }

    /**
     * {@return a mass per length, for strings}
     *
     * @param value in grams per metre, finite
     */
    public static Amount<LinearDensity> gramPerMetre(double value) {
        return ShopUnit.GRAM_PER_METRE.of(value);
    }

    /**
     * {@return a density}
     *
     * @param value in kg/m3, finite
     */
    public static Amount<MassDensity> kgPerM3(double value) {
        return ShopUnit.KG_PER_M3.of(value);
    }

    /**
     * {@return the frequency of a note in equal temperament with A4 = 440 Hz: {@code 440 * 2^((n - 69)/12)}, n counted
     * in semitones with A4 = 69} Source: ISO 16 (standard tuning frequency). Exact to a unit in the last place or two.
     *
     * @param note letter, optional {@code #} or {@code b}, octave: {@code A3}, {@code F#2}, {@code Bb1}, {@code C-1}
     * @throws IllegalArgumentException if it is no such note
     */
    public static Amount<Frequency> pitch(String note) {
        return Pitches.frequency(note);
    }

    /**
     * {@return a length from text with its unit; remembering its unit}
     *
     * @param text such as {@code 1 3/4 in}, {@code 44.5 mm}, {@code 3/8"}, {@code 12 thou}, {@code 25 ft},
     *     {@code 1 3/4 in + 2.0 thou}, {@code -(1 3/4 in + 2.0 thou)}; spaces, minus signs and primes may be those of a
     *     word processor, and a unit in capitals
     * @throws IllegalArgumentException if it cannot be read: the text is quoted, and a good one shown
     */
    public static Amount<Length> length(String text) {
        int remainder = Objects.requireNonNull(text, "text").indexOf(" in ");
        return remainder < 0 ? parse(text, Length.class, "44.5 mm", "1 3/4 in") : withRemainder(text, remainder);
    }

    /** A fraction of an inch with its remainder in thou. */
    private static Amount<Length> withRemainder(String text, int atUnit) {
        String plain = Typed.plain(text);
        if (!plain.equals(text)) {
            return length(plain);
        }
        if (text.startsWith("-(") && text.endsWith(")")) {
            return length(text.substring(2, text.length() - 1)).negated();
        }
        String rest = text.substring(atUnit + " in ".length());
        if (!rest.startsWith("+ ") && !rest.startsWith("- ")) {
            return parse(text, Length.class, "44.5 mm", "1 3/4 in");
        }
        Amount<Length> inches = length(text.substring(0, atUnit + " in".length()));
        Amount<Length> thou = length(rest.substring(2));
        return rest.startsWith("+") ? inches.plus(thou) : inches.minus(thou);
    }

    /**
     * {@return an angle from text with its unit; remembering its unit}
     *
     * @param text such as {@code 13 deg} or {@code 0.02 rad}
     * @throws IllegalArgumentException if it cannot be read
     */
    public static Amount<Angle> angle(String text) {
        return parse(text, Angle.class, "13 deg", "0.02 rad");
    }

    /**
     * {@return a quantity of the given kind from text with its unit: what {@link Amount#toString} writes is read back;
     * remembering its unit}
     *
     * @param <Q> the kind of quantity
     * @param text number, then unit; a ratio may go without
     * @param kind such as {@code Force.class}
     * @throws IllegalArgumentException if it cannot be read, lacks its unit, or has one of another kind
     */
    public static <Q extends Quantity<Q>> Amount<Q> parse(String text, Class<Q> kind) {
        if (kind == (Class<?>) Length.class
                && Objects.requireNonNull(text, "text").contains(" in ")) {
            return (Amount<Q>) length(text).asType(kind);
        }
        List<String> examples = UnitWords.symbols(Objects.requireNonNull(kind, "kind"));
        String first = "12.5 " + examples.get(0);
        return parse(text, kind, first.strip(), ("3 " + examples.get(examples.size() - 1)).strip());
    }

    private static <Q extends Quantity<Q>> Amount<Q> parse(String text, Class<Q> kind, String example, String other) {
        Scanner scanner = new Scanner(Objects.requireNonNull(text, "text"));
        double value = scanner.number();
        String word = scanner.rest();
        String inWords = UnitWords.kindInWords(kind);
        if (!Double.isFinite(value)) {
            String plain = Typed.plain(text);
            if (!plain.equals(text)) {
                return parse(plain, kind);
            }
            throw unreadable(text, inWords, "\"" + example + "\" or \"" + other + "\"");
        }
        // A ratio needs no unit: 0.95 is 95 %.
        @Nullable
        ShopUnit<?> unit =
                word.isEmpty() && kind == (Class<?>) Dimensionless.class ? ShopUnit.ONE : UnitWords.unit(word);
        if (unit == null) {
            String plain = Typed.plain(text);
            if (!plain.equals(text)) {
                return parse(plain, kind);
            }
            unit = UnitWords.unitInAnyCase(word);
        }
        if (unit == null || unit.kind() != (Class<?>) kind) {
            throw wrongUnit(text, value, word, unit, kind, inWords);
        }
        return Amount.of(value, ShopUnit.sameKind(unit, kind));
    }

    private static IllegalArgumentException wrongUnit(
            String text, double value, String word, @Nullable ShopUnit<?> unit, Class<?> kind, String inWords) {
        String allowed = "use " + String.join(", ", UnitWords.offered(kind));
        String quoted = Words.quoted(text);
        if (word.isEmpty()) {
            return Refusal.because(
                    "text",
                    "no-unit",
                    quoted + " has no unit; " + inWords + " is wanted: " + allowed + ", such as \""
                            + Numbers.plain(value) + " "
                            + UnitWords.offered(kind).get(0) + "\""
                            + (kind == (Class<?>) Length.class ? " or " + Words.quoted(text.strip() + " in") : ""));
        }
        if (unit != null) {
            return Refusal.because(
                    "text", "kind", quoted + " is " + unit.kindInWords() + "; " + inWords + " is wanted: " + allowed);
        }
        if (word.startsWith(",")) {
            return Refusal.because("text", "comma", quoted + " has a comma; write a decimal point");
        }
        return Refusal.because(
                "text",
                "unknown-unit",
                quoted + " cannot be read: the unit " + Words.quoted(word) + " is not known; " + allowed);
    }

    private static IllegalArgumentException unreadable(String text, String wanted, String examples) {
        String comma = text.indexOf(',') >= 0 ? "; write a decimal point, not a comma" : "";
        return Refusal.because(
                "text",
                "unreadable",
                Words.quoted(text) + " cannot be read as " + wanted + comma + "; write it like " + examples);
    }
}
