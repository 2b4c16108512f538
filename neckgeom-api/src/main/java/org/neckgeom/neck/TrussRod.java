package org.neckgeom.neck;

import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * A truss rod ({@index "neck rod"}): the adjustable steel rod that controls the bow of the neck, such as
 * {@code two-way rod, 300 mm x 6 mm x 9 mm, adjusted at the head}. Immutable.
 *
 * <p>A two-way ({@index double-action}) rod bends the neck either way; a single-action (compression) rod works in tension.
 * Length, width and height are more than 0. Default: the adjuster (truss rod nut) is at the head.
 *
 * <pre>{@code
 * println(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * two-way rod, 300 mm x 6 mm x 9 mm, adjusted at the head
 * }</pre>
 */
public final class TrussRod extends Noun<TrussRod> implements Reinforcement {

    /** How the rod works. */
    public enum Kind {
        /** Two-way (double-action): a self-contained pair that bends the neck either way by its own moment; not bonded. */
        TWO_WAY,
        /** Single-action (compression rod): one rod in tension in a curved or sloping channel; not bonded. */
        SINGLE_ACTION;

        private String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Returns such as {@code two-way rod}. */
        @Override
        public String toString() {
            return word() + " rod";
        }
    }

    /** Its keys. */
    public static final Table<TrussRod> TABLE =
            Table.of("truss rod", "the truss rod", TrussRod::new).printedBy(TrussRod::sentences);

    private static final Key<TrussRod, Kind> KIND = TABLE.needed(
            "kind",
            Types.words(Kind.class, Kind::word),
            "kind of rod. two-way: a pair that bends the neck either way. single-action: one rod in tension");
    private static final Key<TrussRod, Amount<Length>> LENGTH = TABLE.needed("length", Types.SIZE, "length of the rod");
    private static final Key<TrussRod, Amount<Length>> WIDTH = TABLE.needed(
            "width", Types.SIZE, "width of the rod across the channel. Single-action: diameter of the rod");
    private static final Key<TrussRod, Amount<Length>> HEIGHT =
            TABLE.optional("height", Types.SIZE, "height of a two-way rod in the channel. Single-action: leave out");
    private static final Key<TrussRod, End> ADJUSTER = TABLE.usual(
            "adjuster", Types.words(End.class, End::toString), End.HEAD, "end with the adjuster. Default: head");

    private static final Key<TrussRod, Amount<Length>> THREAD_PITCH = TABLE.optional(
            "thread pitch",
            Types.SIZE,
            "pitch of the rod's thread, twice it for left-and-right threads: shows the turns. Default: not known");

    static {
        TABLE.moved(Moves.none().and("adjusted at", "adjuster"));
    }

    private final double length;
    private final double width;
    private final double height;

    private TrussRod(Values<TrussRod> values) {
        super(values);
        boolean isRound = values.at(KIND) == Kind.SINGLE_ACTION;
        if (isRound && values.has(HEIGHT)) {
            throw Refusal.because(
                    HEIGHT.name(), "round", "a single-action rod is round: give its diameter as width and no height");
        }
        if (!isRound && !values.has(HEIGHT)) {
            throw Refusal.because(HEIGHT.name(), "missing", "height is missing; a " + values.at(KIND) + " needs it");
        }
        this.length = values.libraryValue(LENGTH);
        this.width = values.libraryValue(WIDTH);
        this.height = values.libraryValue(isRound ? WIDTH : HEIGHT);
    }

    private static Values<TrussRod> of(Kind kind, Quantity<Length> length) {
        return TABLE.values().with(KIND, kind).amount(LENGTH, length);
    }

    /**
     * Begins a two-way rod.
     *
     * @param length from end to end, more than 0; its unit is the one answers are given in
     * @return what needs a section to be a rod
     */
    public static NeedsSection twoWay(Quantity<Length> length) {
        return new NeedsSection(of(Kind.TWO_WAY, length));
    }

    /**
     * {@return a single-action rod}
     *
     * @param length from end to end, more than 0
     * @param diameter more than 0
     */
    public static TrussRod singleAction(Quantity<Length> length, Quantity<Length> diameter) {
        return new TrussRod(of(Kind.SINGLE_ACTION, length).amount(WIDTH, diameter));
    }

    /** A rod without its section yet. Immutable. */
    public static final class NeedsSection extends Unfinished<TrussRod> {

        private NeedsSection(Values<TrussRod> values) {
            super(values, values.at(KIND) + ", section not given yet");
        }

        /**
         * Adds the section.
         *
         * @param width across the channel, more than 0
         * @param height in the channel, more than 0
         * @return the rod
         */
        public TrussRod section(Quantity<Length> width, Quantity<Length> height) {
            return new TrussRod(values().amount(WIDTH, width).amount(HEIGHT, height));
        }
    }

    /**
     * {@return this rod with its adjuster at an end}
     *
     * @param end the end
     */
    public TrussRod adjuster(End end) {
        return new TrussRod(values().with(ADJUSTER, end));
    }

    /**
     * {@return this rod with the pitch of its thread, from which its turns follow}
     *
     * @param pitch more than 0; twice it for left-and-right threads
     */
    public TrussRod threadPitch(Quantity<Length> pitch) {
        return new TrussRod(values().amount(THREAD_PITCH, pitch));
    }

    /** {@return the pitch of the rod's thread; nothing where it was not given} */
    public Optional<Amount<Length>> threadPitch() {
        return values().find(THREAD_PITCH);
    }

    /** {@return the kind} */
    public Kind kind() {
        return values().at(KIND);
    }

    /** {@return the end with the adjuster} */
    public End adjuster() {
        return values().at(ADJUSTER);
    }

    @Override
    public double lengthMm() {
        return length;
    }

    @Override
    public double widthMm() {
        return width;
    }

    @Override
    public double heightMm() {
        return height;
    }

    private static Form<TrussRod> sentences() {
        return TABLE.facts("rod")
                .phrase("high", "{height}")
                .phrase("high", "{width}")
                .finds("rod", "{kind}, {length} x {width} x {high}, adjusted at the {adjuster}");
    }
}
