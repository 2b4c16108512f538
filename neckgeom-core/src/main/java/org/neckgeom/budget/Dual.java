package org.neckgeom.budget;

import java.util.Arrays;
import java.util.Objects;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LibraryUnits;

/**
 * A number with its derivatives by up to any number of inputs, carried through arithmetic (forward mode). Immutable.
 *
 * <p>The first eight derivatives lie in fields of their own, which is what makes it fast; more go into an array. Write a
 * formula with {@link #plus}, {@link #times}, {@link #sin} and so on, and its value comes with its exact gradient.
 *
 * <p>A value is always finite: a step without one, such as the square root of -1, is refused by an
 * {@code ArithmeticException}. So is the question for a derivative that there is none of, such as a square root's at 0.
 */
public final class Dual {

    private static final double[] NONE = {};
    private static final int FIELDS = 8;

    /** Past this many inputs, each with its row of derivatives, they would fill the memory. */
    private static final int MOST_INPUTS = 10_000;

    private static final double[] SEED = {0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0};

    private final double value;
    private final double d0;
    private final double d1;
    private final double d2;
    private final double d3;
    private final double d4;
    private final double d5;
    private final double d6;
    private final double d7;
    private final double[] more;

    private Dual(
            double value,
            double d0,
            double d1,
            double d2,
            double d3,
            double d4,
            double d5,
            double d6,
            double d7,
            double[] more) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw NoAnswer.because(
                    "formula", "infinite", "a step of the formula has no finite value: it is " + Numbers.plain(value));
        }
        this.value = value;
        this.d0 = d0;
        this.d1 = d1;
        this.d2 = d2;
        this.d3 = d3;
        this.d4 = d4;
        this.d5 = d5;
        this.d6 = d6;
        this.d7 = d7;
        this.more = more;
    }

    /**
     * {@return a number that depends on nothing}
     *
     * @param value the number, finite
     * @throws IllegalArgumentException if it is not finite
     */
    public static Dual constant(double value) {
        return new Dual(LibraryUnits.finite(value, "value", ""), 0, 0, 0, 0, 0, 0, 0, 0, NONE);
    }

    /**
     * {@return an input: its derivative by itself is 1}
     *
     * @param value its value, finite
     * @param index which input it is, from 0 and less than 10,000
     * @throws IllegalArgumentException if the value is not finite, or there is no such input
     */
    public static Dual input(double value, int index) {
        LibraryUnits.finite(value, "value", "");
        checkIndex(index);
        if (index >= MOST_INPUTS) {
            throw Refusal.of("index", "less-than", "be less than " + MOST_INPUTS, index);
        }
        if (index >= FIELDS) {
            double[] more = new double[index - FIELDS + 1];
            more[index - FIELDS] = 1.0;
            return new Dual(value, 0, 0, 0, 0, 0, 0, 0, 0, more);
        }
        // A row of zeros with a one in it, read from where the one falls on the input's own field.
        int from = FIELDS - 1 - index;
        return new Dual(
                value,
                SEED[from],
                SEED[from + 1],
                SEED[from + 2],
                SEED[from + 3],
                SEED[from + 4],
                SEED[from + 5],
                SEED[from + 6],
                SEED[from + 7],
                NONE);
    }

    /** {@return the value} */
    public double value() {
        return value;
    }

    /**
     * {@return the derivative by an input; 0 by an input it does not depend on}
     *
     * @param index which input, from 0
     * @throws IllegalArgumentException if the index is under 0
     * @throws ArithmeticException if there is none, as of a square root at 0
     */
    public double derivative(int index) {
        checkIndex(index);
        double slope = slope(index);
        if (!Double.isFinite(slope)) {
            throw NoAnswer.because(
                    "derivative",
                    "no-derivative",
                    "the formula has no derivative by input " + index + " at this value");
        }
        return slope;
    }

    private static void checkIndex(int index) {
        if (index < 0) {
            throw Refusal.of("index", "at-least", "be 0 or more", index);
        }
    }

    /** The derivative; infinite or NaN where there is none. */
    double slope(int index) {
        return switch (index) {
            case 0 -> d0;
            case 1 -> d1;
            case 2 -> d2;
            case 3 -> d3;
            case 4 -> d4;
            case 5 -> d5;
            case 6 -> d6;
            case 7 -> d7;
            default -> index - FIELDS < more.length ? more[index - FIELDS] : 0.0;
        };
    }

    /** A function of this with the given value and slope. */
    private Dual chain(double to, double slope) {
        if (Double.isInfinite(slope)) {
            return steep(to, slope);
        }
        return new Dual(
                to,
                slope * d0,
                slope * d1,
                slope * d2,
                slope * d3,
                slope * d4,
                slope * d5,
                slope * d6,
                slope * d7,
                more == NONE ? NONE : times(more, slope));
    }

    /** The same where the slope is infinite: by what it does not depend on the derivative stays 0. */
    private Dual steep(double to, double slope) {
        double[] all = new double[more.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = times(slope, more[i]);
        }
        return new Dual(
                to,
                times(slope, d0),
                times(slope, d1),
                times(slope, d2),
                times(slope, d3),
                times(slope, d4),
                times(slope, d5),
                times(slope, d6),
                times(slope, d7),
                more == NONE ? NONE : all);
    }

    /** A function of two with the given value and slopes. */
    private Dual chain(double to, double slope, Dual y, double slopeY) {
        return new Dual(
                to,
                slope * d0 + slopeY * y.d0,
                slope * d1 + slopeY * y.d1,
                slope * d2 + slopeY * y.d2,
                slope * d3 + slopeY * y.d3,
                slope * d4 + slopeY * y.d4,
                slope * d5 + slopeY * y.d5,
                slope * d6 + slopeY * y.d6,
                slope * d7 + slopeY * y.d7,
                more == NONE && y.more == NONE ? NONE : sum(more, slope, y.more, slopeY));
    }

    private static double times(double slope, double derivative) {
        return derivative == 0 ? 0 : slope * derivative;
    }

    private static double[] times(double[] x, double slope) {
        double[] all = x.clone();
        for (int i = 0; i < all.length; i++) {
            all[i] *= slope;
        }
        return all;
    }

    private static double[] sum(double[] x, double slope, double[] y, double slopeY) {
        double[] all = Arrays.copyOf(x, Math.max(x.length, y.length));
        for (int i = 0; i < all.length; i++) {
            all[i] = slope * all[i] + (i < y.length ? slopeY * y[i] : 0.0);
        }
        return all;
    }

    /**
     * {@return the sum; this + y}
     *
     * @param y the other
     */
    public Dual plus(Dual y) {
        Objects.requireNonNull(y, "y");
        return chain(value + y.value, 1.0, y, 1.0);
    }

    /**
     * {@return the sum with a constant; this + y}
     *
     * @param y the constant
     */
    public Dual plus(double y) {
        return new Dual(value + y, d0, d1, d2, d3, d4, d5, d6, d7, more);
    }

    /**
     * {@return the difference}
     *
     * @param y the other
     */
    public Dual minus(Dual y) {
        Objects.requireNonNull(y, "y");
        return chain(value - y.value, 1.0, y, -1.0);
    }

    /**
     * {@return the difference from a constant}
     *
     * @param y the constant
     */
    public Dual minus(double y) {
        return new Dual(value - y, d0, d1, d2, d3, d4, d5, d6, d7, more);
    }

    /**
     * {@return the product}
     *
     * @param y the other
     */
    public Dual times(Dual y) {
        Objects.requireNonNull(y, "y");
        return chain(value * y.value, y.value, y, value);
    }

    /**
     * {@return the product with a constant}
     *
     * @param y the constant
     */
    public Dual times(double y) {
        return chain(value * y, y);
    }

    /**
     * {@return the quotient; this / y}
     *
     * @param y the other
     * @throws ArithmeticException if the other is 0
     */
    public Dual dividedBy(Dual y) {
        Objects.requireNonNull(y, "y");
        double over = 1.0 / y.value;
        double quotient = value / y.value;
        return chain(quotient, over, y, -quotient * over);
    }

    /**
     * {@return the quotient by a constant; this / y}
     *
     * @param y the constant
     */
    public Dual dividedBy(double y) {
        return chain(value / y, 1.0 / y);
    }

    /** {@return this with the other sign; -this} */
    public Dual negated() {
        return chain(-value, -1.0);
    }

    /** {@return the square} */
    public Dual squared() {
        return chain(value * value, 2.0 * value);
    }

    /**
     * {@return the square root; the root; it has no derivatives at 0}
     *
     * @throws ArithmeticException if this is less than 0
     */
    public Dual sqrt() {
        if (value < 0) {
            throw noAnswer("square root of ", "0 or more");
        }
        double root = Math.sqrt(value);
        return chain(root, 0.5 / root);
    }

    /**
     * {@return a power with a constant exponent}
     *
     * @param exponent the exponent
     */
    public Dual power(double exponent) {
        return chain(StrictMath.pow(value, exponent), exponent * StrictMath.pow(value, exponent - 1.0));
    }

    /** {@return the natural exponential; e to this} */
    public Dual exp() {
        double to = StrictMath.exp(value);
        return chain(to, to);
    }

    /**
     * {@return the natural logarithm}
     *
     * @throws ArithmeticException if this is 0 or less
     */
    public Dual log() {
        if (value <= 0) {
            throw noAnswer("logarithm of ", "more than 0");
        }
        return chain(StrictMath.log(value), 1.0 / value);
    }

    /** {@return the sine of this angle in radians} */
    public Dual sin() {
        return chain(StrictMath.sin(value), StrictMath.cos(value));
    }

    /** {@return the cosine of this angle in radians} */
    public Dual cos() {
        return chain(StrictMath.cos(value), -StrictMath.sin(value));
    }

    /** {@return the tangent of this angle in radians} */
    public Dual tan() {
        double to = StrictMath.tan(value);
        return chain(to, 1.0 + to * to);
    }

    /**
     * {@return the angle of this sine; radians in [-pi/2, pi/2]}
     *
     * @throws ArithmeticException if this is more than 1 in size
     */
    public Dual asin() {
        if (Math.abs(value) > 1) {
            throw noAnswer("angle of the sine ", "from -1 to 1");
        }
        return chain(StrictMath.asin(value), 1.0 / Math.sqrt((1.0 - value) * (1.0 + value)));
    }

    /**
     * {@return the angle of this cosine; radians in [0, pi]}
     *
     * @throws ArithmeticException if this is more than 1 in size
     */
    public Dual acos() {
        if (Math.abs(value) > 1) {
            throw noAnswer("angle of the cosine ", "from -1 to 1");
        }
        return chain(StrictMath.acos(value), -1.0 / Math.sqrt((1.0 - value) * (1.0 + value)));
    }

    /** {@return the angle of this tangent; radians in [-pi/2, pi/2]} */
    public Dual atan() {
        return chain(StrictMath.atan(value), 1.0 / (1.0 + value * value));
    }

    /**
     * {@return the angle of the point (x, this) from the x axis; radians in [-pi, pi]}
     *
     * @param x the other coordinate
     */
    public Dual atan2(Dual x) {
        Objects.requireNonNull(x, "x");
        double square = value * value + x.value * x.value;
        return chain(StrictMath.atan2(value, x.value), x.value / square, x, -value / square);
    }

    private NoAnswer noAnswer(String question, String rule) {
        return NoAnswer.because(
                "formula", "out-of-domain", question + Numbers.plain(value) + " has no answer: it must be " + rule);
    }

    @Override
    public boolean equals(Object obj) {
        if (!(obj instanceof Dual other) || Double.compare(value, other.value) != 0) {
            return false;
        }
        int count = FIELDS + Math.max(more.length, other.more.length);
        for (int i = 0; i < count; i++) {
            if (Double.compare(slope(i) + 0.0, other.slope(i) + 0.0) != 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(value);
    }

    /** Returns the value and the derivatives that are not 0. */
    @Override
    public String toString() {
        StringBuilder out = new StringBuilder(Numbers.plain(value));
        for (int i = 0; i < FIELDS + more.length && out.length() < 800; i++) {
            if (slope(i) != 0.0) {
                out.append(", by input ").append(i).append(' ');
                out.append(!Double.isFinite(slope(i)) ? "none" : Numbers.plain(slope(i)));
            }
        }
        return out.toString();
    }
}
