package org.neckgeom.units;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import tech.units.indriya.quantity.Quantities;

/**
 * A quantity that remembers the unit it was made in, such as {@code 1.75 in}. Immutable, safe to share.
 *
 * <p>It holds the number as it was given and the same in the library unit of its kind, so that a length entered in one
 * unit and read in the other shows no rounding noise. Two amounts are equal when their house values are the same
 * double: {@code inch(1)} equals {@code mm(25.4)}. Quantities of other JSR 385 providers are never equal to it (their
 * own {@code equals} could not agree); {@link #isEquivalentTo} compares with any provider's, and nearness is another
 * word: {@link #isCloseTo}.
 *
 * <p>Sums and multiples keep the unit of the amount they are asked of.
 *
 * @param <Q> the kind of quantity
 */
public final class Amount<Q extends Quantity<Q>> implements Quantity<Q>, Comparable<Amount<Q>> {

    private final double value;
    private final double libraryValue;
    private final ShopUnit<Q> unit;

    private Amount(double value, double libraryValue, ShopUnit<Q> unit) {
        this.value = value;
        this.libraryValue = libraryValue;
        this.unit = unit;
    }

    /**
     * {@return an amount}
     *
     * @param <Q> the kind of quantity
     * @param value in the unit, finite
     * @param unit its unit
     * @throws IllegalArgumentException if the value is NaN, infinite, or too large for the library unit
     */
    public static <Q extends Quantity<Q>> Amount<Q> of(double value, ShopUnit<Q> unit) {
        double libraryValue = Objects.requireNonNull(unit, "unit").toLibrary(value);
        if (!Double.isFinite(libraryValue)) {
            throw Refusal.of("an amount", "finite", "be a finite number", Numbers.plain(value) + " " + unit);
        }
        return new Amount<>(value + 0.0, libraryValue + 0.0, unit);
    }

    /**
     * {@return an amount given in the library unit of its kind, to be read in another unit}
     *
     * @param <Q> the kind of quantity
     * @param libraryValue in the library unit, finite
     * @param unit the unit to read it in
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public static <Q extends Quantity<Q>> Amount<Q> ofLibrary(double libraryValue, ShopUnit<Q> unit) {
        double value = Objects.requireNonNull(unit, "unit").fromLibrary(libraryValue);
        // A house value that is not finite has no finite value in any unit.
        if (!Double.isFinite(value)) {
            throw Refusal.of(
                    "an amount",
                    "finite",
                    "be a finite number",
                    Numbers.plain(libraryValue) + " in the house unit of " + unit);
        }
        return new Amount<>(value + 0.0, libraryValue + 0.0, unit);
    }

    /**
     * {@return any provider's quantity as an amount: itself when it is one, otherwise in the shop unit that is the
     * same, or else in the library unit of its kind}
     *
     * @param <Q> the kind of quantity
     * @param quantity of any JSR 385 provider
     * @param name what it is, for the message
     * @throws IllegalArgumentException if it is not finite or of no kind known here
     */
    public static <Q extends Quantity<Q>> Amount<Q> from(Quantity<Q> quantity, String name) {
        if (quantity instanceof Amount<Q> own) {
            return own;
        }
        return Border.amount(Objects.requireNonNull(quantity, name), name);
    }

    /**
     * {@return any provider's quantity as an amount, after a look at its kind, which a raw type may have lied about; in
     * its own unit}
     *
     * @param <Q> the kind of quantity
     * @param quantity of any JSR 385 provider
     * @param like any unit of the kind wanted
     * @param name what it is, for the message
     * @throws IllegalArgumentException if it is not finite or of another kind
     */
    public static <Q extends Quantity<Q>> Amount<Q> from(Quantity<Q> quantity, ShopUnit<Q> like, String name) {
        if (quantity instanceof Amount<Q> own && own.unit.isLike(Objects.requireNonNull(like, "unit"))) {
            return own;
        }
        LibraryUnits.of(quantity, like, name);
        return from(quantity, name);
    }

    /** {@return the number in this amount's own unit; finite} */
    public double value() {
        return value;
    }

    /** {@return the unit this amount is read in} */
    public ShopUnit<Q> unit() {
        return unit;
    }

    /** {@return the number in the library unit of its kind: mm, rad, N, MPa, degrees Celsius, Hz, mm/s, W; finite} */
    public double libraryValue() {
        return libraryValue;
    }

    /**
     * {@return the number in the library unit, taken as a difference: 1.8 degF are 1 degree Celsius wide, wherever their
     * scale begins; finite; that of {@link #libraryValue} but for temperature scales with a zero of their own}
     */
    public double libraryDifference() {
        return unit.hasOffset() ? libraryValue - unit.toLibrary(0) : libraryValue;
    }

    /**
     * {@return the same amount read in another unit; an amount equal to this one}
     *
     * @param other the unit
     */
    public Amount<Q> in(ShopUnit<Q> other) {
        return other == unit ? this : ofLibrary(libraryValue, other);
    }

    /**
     * {@return the same amount read in the unit of a style; what is no length, and has no unit of the style, stays as
     * it is; an amount equal to this one}
     *
     * @param style how lengths are printed
     */
    public Amount<Q> in(LengthStyle style) {
        return in(Objects.requireNonNull(style, "style").unitFor(unit));
    }

    /**
     * {@return the number in the given unit}
     *
     * @param other the unit
     */
    public double valueIn(ShopUnit<Q> other) {
        return other == unit ? value : Objects.requireNonNull(other, "unit").fromLibrary(libraryValue);
    }

    /**
     * {@return the sum in this amount's unit}
     *
     * @param other of the same kind, any provider's
     * @throws ArithmeticException for temperatures, which do not add
     */
    public Amount<Q> plus(Quantity<Q> other) {
        return sum(other, 1);
    }

    /**
     * {@return the difference in this amount's unit; this less the other}
     *
     * @param other of the same kind, any provider's
     * @throws ArithmeticException for temperatures, which do not subtract
     */
    public Amount<Q> minus(Quantity<Q> other) {
        return sum(other, -1);
    }

    private Amount<Q> sum(Quantity<Q> other, int sign) {
        if (other instanceof Amount<?> own && own.unit == unit) {
            requireProportional(sign > 0 ? "added" : "subtracted");
            return of(value + sign * own.value, unit);
        }
        Amount<Q> right = sameKind(other, "other");
        requireProportional(sign > 0 ? "added" : "subtracted");
        return right.unit == unit
                ? of(value + sign * right.value, unit)
                : ofLibrary(libraryValue + sign * right.libraryValue, unit);
    }

    /**
     * {@return a multiple; this times the factor}
     *
     * @param factor finite
     * @throws ArithmeticException for temperatures, which have no multiples
     */
    public Amount<Q> times(double factor) {
        requireProportional("multiplied");
        return of(value * factor, unit);
    }

    /**
     * {@return a part; this divided by the divisor}
     *
     * @param divisor finite, not 0
     * @throws ArithmeticException if the divisor is 0, or for temperatures
     */
    public Amount<Q> dividedBy(double divisor) {
        requireProportional("divided");
        if (divisor == 0) {
            throw dividedByZero();
        }
        return of(value / divisor, unit);
    }

    /**
     * {@return the ratio of two amounts of a kind; this divided by the other, a number}
     *
     * @param other of the same kind, not 0
     * @throws ArithmeticException if the other is 0, or for temperatures
     */
    public double ratioTo(Quantity<Q> other) {
        requireProportional("divided");
        double divisor = sameKind(other, "other").libraryValue;
        if (divisor == 0) {
            throw dividedByZero();
        }
        double ratio = libraryValue / divisor;
        if (!Double.isFinite(ratio)) {
            throw NoAnswer.because(
                    "ratio", "too-large", "the ratio of " + this + " to " + other + " is too large for a number");
        }
        return ratio;
    }

    /**
     * {@return this amount with the other sign; minus this}
     *
     * @throws ArithmeticException for temperatures, which have no multiples
     */
    public Amount<Q> negated() {
        return times(-1);
    }

    /**
     * {@return this amount without its sign}
     *
     * @throws ArithmeticException for temperatures under 0, which have no multiples
     */
    public Amount<Q> abs() {
        return value < 0 ? negated() : this;
    }

    /**
     * {@return whether two amounts differ by no more than a tolerance; true when {@code |this - other| <= tolerance}}
     *
     * @param other of the same kind
     * @param tolerance 0 or more, inclusive
     * @throws IllegalArgumentException if the tolerance is under 0
     */
    public boolean isCloseTo(Quantity<Q> other, Quantity<Q> tolerance) {
        double most = LibraryUnits.notNegative(tolerance, unit, "tolerance");
        return Math.abs(libraryValue - sameKind(other, "other").libraryValue) <= most;
    }

    private Amount<Q> sameKind(Quantity<Q> other, String name) {
        return from(other, unit, name);
    }

    private ArithmeticException dividedByZero() {
        return NoAnswer.because("quotient", "divided-by-zero", this + " was to be divided by 0");
    }

    private void requireProportional(String verb) {
        if (unit.isOfTemperature()) {
            throw NoAnswer.because(
                    "temperature", "on-a-scale", "temperatures on a scale cannot be " + verb + ": " + this);
        }
    }

    /** {@inheritDoc} The same as {@link #plus}. */
    @Override
    public Amount<Q> add(Quantity<Q> augend) {
        return plus(augend);
    }

    /** {@inheritDoc} The same as {@link #minus}. */
    @Override
    public Amount<Q> subtract(Quantity<Q> subtrahend) {
        return minus(subtrahend);
    }

    /** {@inheritDoc} The same as {@link #dividedBy}. */
    @Override
    public Amount<Q> divide(Number divisor) {
        return dividedBy(Objects.requireNonNull(divisor, "divisor").doubleValue());
    }

    /** {@inheritDoc} The same as {@link #times}. */
    @Override
    public Amount<Q> multiply(Number multiplier) {
        return times(Objects.requireNonNull(multiplier, "multiplier").doubleValue());
    }

    /**
     * {@inheritDoc} The result is of another kind, and Indriya's.
     *
     * @throws ArithmeticException if the divisor is 0
     */
    @Override
    public Quantity<?> divide(Quantity<?> divisor) {
        Quantity<?> read = Border.readable(divisor, "divisor");
        if (read.getValue().doubleValue() == 0) {
            throw dividedByZero();
        }
        return Border.asked(() -> indriya().divide(read), "divisor");
    }

    /** {@inheritDoc} The result is of another kind, and Indriya's. */
    @Override
    public Quantity<?> multiply(Quantity<?> multiplier) {
        Quantity<?> read = Border.readable(multiplier, "multiplier");
        return Border.asked(() -> indriya().multiply(read), "multiplier");
    }

    /**
     * {@inheritDoc} The result is of another kind, and Indriya's.
     *
     * @throws ArithmeticException if this is 0
     */
    @Override
    public Quantity<?> inverse() {
        if (value == 0) {
            throw NoAnswer.because("inverse", "divided-by-zero", "1 was to be divided by " + this);
        }
        return indriya().inverse();
    }

    private Quantity<Q> indriya() {
        return Quantities.getQuantity(value, getUnit());
    }

    /** {@inheritDoc} The same as {@link #negated}. */
    @Override
    public Amount<Q> negate() {
        return negated();
    }

    /**
     * {@inheritDoc} An amount when the unit is one of the shop's, otherwise a quantity of Indriya's in that unit, the
     * double nearest the exact conversion where that is a plain factor.
     */
    @Override
    public Quantity<Q> to(Unit<Q> other) {
        ShopUnit<Q> shop = Border.shopUnit(Objects.requireNonNull(other, "unit"), unit.kind());
        if (shop != null) {
            return in(shop);
        }
        double there = Border.valueIn(value, unit, other);
        return Double.isNaN(there)
                ? Quantities.getQuantity(value, getUnit()).to(other)
                : Quantities.getQuantity(there, other);
    }

    /**
     * {@inheritDoc}
     *
     * @throws ClassCastException if this amount is of another kind
     */
    @Override
    @SuppressWarnings("unchecked") // checked by the kind
    public <T extends Quantity<T>> Quantity<T> asType(Class<T> type) {
        if (Objects.requireNonNull(type, "type") != (Class<?>) unit.kind()) {
            throw new ClassCastException(this + " is " + unit.kindInWords() + ", not of kind " + type.getSimpleName());
        }
        return (Quantity<T>) this;
    }

    /** {@inheritDoc} A {@code Double}, always. */
    @Override
    public Double getValue() {
        return value;
    }

    /** {@inheritDoc} */
    @Override
    public Unit<Q> getUnit() {
        return unit.jsr385();
    }

    /** {@inheritDoc} Always absolute: a temperature is a reading of a thermometer, not a difference. */
    @Override
    public Scale getScale() {
        return Scale.ABSOLUTE;
    }

    /** {@inheritDoc} Compares the exact house values, whichever provider the other comes from; symmetric among amounts. */
    @Override
    public boolean isEquivalentTo(Quantity<Q> that) {
        return Double.compare(libraryValue, sameKind(that, "that").libraryValue) == 0;
    }

    /** Orders by the house value, consistent with equals. */
    @Override
    public int compareTo(Amount<Q> other) {
        return Double.compare(libraryValue, other.libraryValue);
    }

    /** True for an amount of the same kind whose house value is the same double. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Amount<?> that
                && unit.kind() == (Class<?>) that.unit.kind()
                && Double.compare(libraryValue, that.libraryValue) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * unit.kind().hashCode() + Double.hashCode(libraryValue);
    }

    /**
     * {@return number, space, unit with up to twelve digits, for sentences that must tell two near amounts apart, such
     * as {@code 0.236220472441 in} for 6 mm read in inches}
     */
    public String exactly() {
        String number = Numbers.plain(value);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /**
     * {@return the shortest text that {@link ShopUnits#parse} reads back as an amount equal to this, bit by bit: in its
     * own unit where a number of it gives the house value back, and else in the library unit, where one always does; such
     * as {@code 1.75 in}, at most 17 digits} The same on every JDK.
     */
    public String lossless() {
        return Lossless.text(libraryValue, unit);
    }

    /**
     * Returns this as a person reads it, the same everywhere and not to be read back, for which {@link #lossless} is: a length to 3 decimals of a millimetre or 4 of an inch, an
     * angle to 2 of a degree, never to fewer than two digits of what is not 0, anything else to four digits; zeros at the
     * end left off. What is so short that someone may have typed it, such as {@code 0.0254 mm} or {@code 0.015625 in},
     * stays whole. {@link #exactly} has more digits, {@link #lossless} all.
     */
    @Override
    public String toString() {
        return AmountText.of(value, libraryValue, unit);
    }
}
