package org.neckgeom.neck;

import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * The rod or bar that goes into the channel, such as {@code two-way rod, 300 mm x 6 mm x 9 mm, adjusted at the head}.
 * Immutable.
 */
public final class TrussRod extends Noun<TrussRod> {

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

        private String word() {
            return isAdjustable() ? name().toLowerCase(Locale.ROOT).replace('_', '-') : toString();
        }

        private boolean isAdjustable() {
            return this == TWO_WAY || this == SINGLE_ACTION;
        }

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

    /** Its keys. */
    public static final Table<TrussRod> TABLE =
            Table.of("rod", "the rod or bar in the channel", TrussRod::new).printedBy(TrussRod::sentences);

    private static final Key<TrussRod, Kind> KIND = TABLE.needed(
            "kind",
            Types.words(Kind.class, Kind::word),
            "two-way (a pair), single-action (one rod in tension), or a fixed bar");
    private static final Key<TrussRod, Amount<Length>> LENGTH = TABLE.needed("length", Types.SIZE, "from end to end");
    private static final Key<TrussRod, Amount<Length>> WIDTH =
            TABLE.needed("width", Types.SIZE, "across the channel; of a single-action rod its diameter");
    private static final Key<TrussRod, Amount<Length>> HEIGHT =
            TABLE.optional("height", Types.SIZE, "into the channel; a single-action rod has none but its diameter");
    private static final Key<TrussRod, End> ADJUSTED_AT = TABLE.usual(
            "adjusted at",
            Types.words(End.class, End::toString),
            End.HEAD,
            "the end with the adjuster; the head when left out");

    private final double length;
    private final double width;
    private final double height;

    private TrussRod(Values<TrussRod> values) {
        super(values);
        Kind kind = values.at(KIND);
        boolean isRound = kind == Kind.SINGLE_ACTION;
        if (isRound && values.has(HEIGHT)) {
            throw Refusal.because(
                    HEIGHT.name(), "round", "a single-action rod is round: give its diameter as width and no height");
        }
        if (!isRound && !values.has(HEIGHT)) {
            throw Refusal.because(HEIGHT.name(), "missing", "height is missing; a " + kind + " needs it");
        }
        if (!kind.isAdjustable() && values.has(ADJUSTED_AT)) {
            throw Refusal.because(
                    ADJUSTED_AT.name(),
                    "no-adjuster",
                    "a " + kind + " has no adjuster, but one was wanted at the " + values.at(ADJUSTED_AT));
        }
        this.length = values.libraryValue(LENGTH);
        this.width = values.libraryValue(WIDTH);
        this.height = values.libraryValue(isRound ? WIDTH : HEIGHT);
    }

    private static Values<TrussRod> of(Kind kind, Quantity<Length> length) {
        return TABLE.values().with(KIND, kind).amount(LENGTH, length);
    }

    /**
     * Begins a two-way rod, adjusted at the head unless another end is given.
     *
     * @param length from end to end, more than 0; its unit is the one answers are given in
     * @return what needs a section to be a rod
     */
    public static NeedsSection twoWay(Quantity<Length> length) {
        return new NeedsSection(of(Kind.TWO_WAY, length));
    }

    /**
     * {@return a single-action rod, adjusted at the head unless another end is given}
     *
     * @param length from end to end, more than 0
     * @param diameter more than 0
     */
    public static TrussRod singleAction(Quantity<Length> length, Quantity<Length> diameter) {
        return new TrussRod(of(Kind.SINGLE_ACTION, length).amount(WIDTH, diameter));
    }

    /**
     * Begins a fixed steel bar, bonded in.
     *
     * @param length from end to end, more than 0
     * @return what needs a section to be a bar
     */
    public static NeedsSection steelBar(Quantity<Length> length) {
        return new NeedsSection(of(Kind.STEEL_BAR, length));
    }

    /**
     * Begins a fixed carbon-fibre bar, bonded in.
     *
     * @param length from end to end, more than 0
     * @return what needs a section to be a bar
     */
    public static NeedsSection carbonBar(Quantity<Length> length) {
        return new NeedsSection(of(Kind.CARBON_BAR, length));
    }

    /** A rod or bar without its section yet. Immutable. */
    public static final class NeedsSection extends Unfinished<TrussRod> {

        private NeedsSection(Values<TrussRod> values) {
            super(values, values.at(KIND) + ", section not given yet");
        }

        /**
         * Adds the section.
         *
         * @param width across the channel, more than 0
         * @param height into the channel, more than 0
         * @return the rod or bar
         */
        public TrussRod section(Quantity<Length> width, Quantity<Length> height) {
            return new TrussRod(values().amount(WIDTH, width).amount(HEIGHT, height));
        }
    }

    /**
     * {@return this rod with its adjuster at an end}
     *
     * @param end the end
     * @throws IllegalArgumentException for a fixed bar
     */
    public TrussRod adjustedAt(End end) {
        return new TrussRod(values().with(ADJUSTED_AT, end));
    }

    /** {@return the kind} */
    public Kind kind() {
        return values().at(KIND);
    }

    /** {@return whether the rod can be adjusted; false for a fixed bar} */
    public boolean isAdjustable() {
        return kind().isAdjustable();
    }

    /** {@return the end the rod is adjusted at; the end; without meaning for a fixed bar} */
    public End adjustedAt() {
        return values().at(ADJUSTED_AT);
    }

    /** {@return the length in mm; more than 0} */
    public double lengthMm() {
        return length;
    }

    /** {@return the width across the channel in mm; more than 0} */
    public double widthMm() {
        return width;
    }

    /** {@return the height into the channel in mm; more than 0} */
    public double heightMm() {
        return height;
    }

    private static Form<TrussRod> sentences() {
        return TABLE.facts("rod", ADJUSTED_AT)
                .factIfAny(
                        "adjustedAt",
                        org.neckgeom.form.Kind.code(End.class),
                        "the end with the adjuster, where it has one",
                        rod -> rod.isAdjustable() ? Optional.of(rod.adjustedAt()) : Optional.empty())
                .phrase("adjusted", ", adjusted at the {adjustedAt}")
                .phrase("high", "{height}")
                .phrase("high", "{width}")
                .finds("rod", "{kind}, {length} x {width} x {high}{adjusted}");
    }
}
