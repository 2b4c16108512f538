package org.neckgeom.design;

import static org.neckgeom.form.Kind.MM;
import static org.neckgeom.form.Kind.code;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * The rod or bar that goes into the channel, such as {@code two-way rod, 300 mm x 6 mm x 9 mm, adjusted at the head}.
 * Immutable.
 */
public final class Rod implements Answer, SaysLengths<Rod> {

    /** What the rod can do. */
    public enum Kind {
        /** A self-contained pair that bends the neck both ways by a moment of its own; not bonded. */
        TWO_WAY,
        /** One rod in tension that compresses the neck along a curved or sloping channel; not bonded. */
        SINGLE_ACTION,
        /** A fixed bar of steel, bonded. */
        STEEL_BAR,
        /** A fixed bar of carbon fibre, bonded. */
        CARBON_BAR;

        /** Returns such as {@code two-way rod}. */
        @Override
        public String toString() {
            return switch (this) {
                case TWO_WAY -> "two-way rod";
                case SINGLE_ACTION -> "single-action rod";
                default -> name().toLowerCase(Locale.ROOT).replace('_', ' ');
            };
        }
    }

    private final Kind kind;
    private final double length;
    private final double width;
    private final double height;
    private final End adjustedAt;
    private final ShopUnit<Length> unit;

    private Rod(Kind kind, double length, double width, double height, End adjustedAt, ShopUnit<Length> unit) {
        this.kind = kind;
        this.length = length;
        this.width = width;
        this.height = height;
        this.adjustedAt = adjustedAt;
        this.unit = unit;
    }

    private static Rod of(Kind kind, Quantity<Length> length, Quantity<Length> width, Quantity<Length> height) {
        return new Rod(
                kind,
                HouseUnits.mmPositive(length, "rod length"),
                HouseUnits.mmPositive(width, "rod width"),
                HouseUnits.mmPositive(height, "rod height"),
                End.HEAD,
                LengthStyle.of(length).unit());
    }

    /**
     * Returns a two-way rod, adjusted at the head unless told.
     *
     * @param length from end to end, more than 0; its unit is the one answers are given in
     * @param width across the channel, more than 0
     * @param height into the channel, more than 0
     * @return the rod
     */
    public static Rod twoWay(Quantity<Length> length, Quantity<Length> width, Quantity<Length> height) {
        return of(Kind.TWO_WAY, length, width, height);
    }

    /**
     * Returns a single-action rod, adjusted at the head unless told.
     *
     * @param length from end to end, more than 0
     * @param diameter more than 0
     * @return the rod
     */
    public static Rod singleAction(Quantity<Length> length, Quantity<Length> diameter) {
        return of(Kind.SINGLE_ACTION, length, diameter, diameter);
    }

    /**
     * Returns a fixed steel bar, bonded in.
     *
     * @param length from end to end, more than 0
     * @param width across the channel, more than 0
     * @param height into the channel, more than 0
     * @return the bar
     */
    public static Rod steelBar(Quantity<Length> length, Quantity<Length> width, Quantity<Length> height) {
        return of(Kind.STEEL_BAR, length, width, height);
    }

    /**
     * Returns a fixed carbon-fibre bar, bonded in.
     *
     * @param length from end to end, more than 0
     * @param width across the channel, more than 0
     * @param height into the channel, more than 0
     * @return the bar
     */
    public static Rod carbonBar(Quantity<Length> length, Quantity<Length> width, Quantity<Length> height) {
        return of(Kind.CARBON_BAR, length, width, height);
    }

    /**
     * Returns this rod with its adjuster at an end.
     *
     * @param end the end
     * @return the rod
     * @throws IllegalArgumentException for a fixed bar
     */
    public Rod adjustedAt(End end) {
        Objects.requireNonNull(end, "end");
        if (!isAdjustable()) {
            throw Refusal.because(
                    "adjuster", "no-adjuster", "a " + kind + " has no adjuster, but one was wanted at the " + end);
        }
        return new Rod(kind, length, width, height, end, unit);
    }

    /**
     * Returns the kind.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Says whether the rod can be adjusted.
     *
     * @return false for a fixed bar
     */
    public boolean isAdjustable() {
        return kind == Kind.TWO_WAY || kind == Kind.SINGLE_ACTION;
    }

    /**
     * Returns the end the rod is adjusted at.
     *
     * @return the end; without meaning for a fixed bar
     */
    public End adjustedAt() {
        return adjustedAt;
    }

    /**
     * Returns the length in mm.
     *
     * @return more than 0
     */
    public double lengthMm() {
        return length;
    }

    /**
     * Returns the width across the channel in mm.
     *
     * @return more than 0
     */
    public double widthMm() {
        return width;
    }

    /**
     * Returns the height into the channel in mm.
     *
     * @return more than 0
     */
    public double heightMm() {
        return height;
    }

    /**
     * Returns the style answers about this rod are printed in.
     *
     * @return the style
     */
    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    /**
     * Returns the same rod, printed in another style.
     *
     * @param style how to print lengths
     * @return an equal rod
     */
    @Override
    public Rod in(LengthStyle style) {
        boolean already = Objects.requireNonNull(style, "style").unit() == style().unit();
        return already ? this : new Rod(kind, length, width, height, adjustedAt, style.unit());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<Rod> FORM = Form.<Rod>of("rod")
                .fact("kind", code(Kind.class), "what it can do", Rod::kind)
                .fact("length", MM, "from end to end", Rod::lengthMm)
                .fact("width", MM, "across the channel", Rod::widthMm)
                .fact("height", MM, "into the channel", Rod::heightMm)
                .factIfAny(
                        "adjuster",
                        code(End.class),
                        "the end it is adjusted at",
                        rod -> rod.isAdjustable() ? Optional.of(rod.adjustedAt) : Optional.empty())
                .phrase("adjusted", ", adjusted at the {adjuster}")
                .finds("rod", "{kind}, {length} x {width} x {height}{adjusted}");
    }

    @Override
    public Form<Rod> form() {
        return Sentences.FORM;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Rod other
                && kind == other.kind
                && Double.compare(length, other.length) == 0
                && Double.compare(width, other.width) == 0
                && Double.compare(height, other.height) == 0
                && adjustedAt == other.adjustedAt;
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, length, width, height, adjustedAt);
    }

    /** Returns such as {@code two-way rod, 300 mm x 6 mm x 9 mm, adjusted at the head}. */
    @Override
    public String toString() {
        return text(style());
    }
}
