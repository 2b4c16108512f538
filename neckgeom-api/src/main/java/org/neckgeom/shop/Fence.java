package org.neckgeom.shop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The fence: the guide that the workpiece rides along, in one piece, split in two halves, or pivoting about one end.
 * Immutable.
 *
 * <p>The length is more than 0. Out of line is positive with the outfeed half nearer the cutter.
 *
 * <pre>{@code
 * println(Fence.onePiece(mm(600)));
 * println(Fence.pivoting(mm(600)).fromPivot(mm(300), mm(450)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * one-piece fence, 600 mm
 * pivoting fence, 600 mm, cutter 300 mm and stop 450 mm from the pivot
 * }</pre>
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Fence extends Noun<Fence> {

    /** How a fence is built. */
    public enum Build {
        /** One straight piece that moves as a whole; its angle to anything does not matter to one round cutter. */
        ONE_PIECE,
        /** Two halves, before and after the cutter, that may be out of line. */
        SPLIT,
        /** Pivoting about one end: the cutter sees only its share of what the free end moves. */
        PIVOTING
    }

    /** Its keys. */
    public static final Table<Fence> TABLE =
            Table.of("fence", "the fence", Fence::new).printedBy(Fence::sentences);

    /** Gap between the halves of a split fence, the cutter in its middle; common practice. */
    private static final double USUAL_GAP_MM = 20;

    private static final double USUAL_GAP_IN = 0.75;

    private static final Key<Fence, Build> KIND = TABLE.needed(
            "kind", builds(), "build of the fence: one straight piece, two halves, or pivoting at one end");
    private static final Key<Fence, Amount<Length>> LENGTH = TABLE.needed("length", Types.SIZE, "length of the face");
    private static final Key<Fence, Amount<Length>> OUT_OF_LINE = TABLE.optional(
                    "out of line",
                    Types.EITHER_WAY,
                    "split fence: distance of the outfeed half before the infeed half, toward the cutter")
            .called("halves out of line");
    private static final Key<Fence, Amount<Length>> GAP = TABLE.optional(
                    "gap",
                    Types.SIZE_OR_NOTHING,
                    "split fence: gap between the halves, cutter in the middle. Default: 20 mm or 3/4 in")
            .called("gap");
    private static final Key<Fence, Amount<Length>> CUTTER_FROM_PIVOT = TABLE.optional(
                    "cutter from pivot", Types.SIZE, "pivoting fence: distance from the pivot to the cutter")
            .called("cutter's distance from the pivot");
    private static final Key<Fence, Amount<Length>> STOP_FROM_PIVOT = TABLE.optional(
                    "stop from pivot", Types.SIZE, "pivoting fence: distance from the pivot to the stop block")
            .called("stop block's distance from the pivot");

    private Fence(Values<Fence> values) {
        super(withGap(values));
        switch (build()) {
            case SPLIT -> only("a split fence", List.of(OUT_OF_LINE), List.of(CUTTER_FROM_PIVOT, STOP_FROM_PIVOT));
            case PIVOTING ->
                only("a pivoting fence", List.of(CUTTER_FROM_PIVOT, STOP_FROM_PIVOT), List.of(OUT_OF_LINE, GAP));
            case ONE_PIECE ->
                only("a fence in one piece", List.of(), List.of(OUT_OF_LINE, GAP, CUTTER_FROM_PIVOT, STOP_FROM_PIVOT));
        }
        if (!(gapMm() < lengthMm())) {
            throw values.refused(
                    GAP, "less-than", "be less than " + values.at(LENGTH) + ", the fence's length", values.at(GAP));
        }
        if (!(cutterFromPivotMm() <= lengthMm())) {
            throw values.refused(
                    CUTTER_FROM_PIVOT,
                    "at-most",
                    "be " + values.at(LENGTH) + " or less, the fence's length",
                    values.at(CUTTER_FROM_PIVOT));
        }
    }

    private static Type<Build> builds() {
        Map<String, Build> words = new LinkedHashMap<>();
        words.put("one piece", Build.ONE_PIECE);
        words.put("split", Build.SPLIT);
        words.put("pivoting", Build.PIVOTING);
        return Types.words(words);
    }

    /** The usual gap is that of the unit the fence was given in, in whichever unit it is printed later: so it is kept. */
    private static Values<Fence> withGap(Values<Fence> values) {
        if (values.find(KIND).orElse(Build.ONE_PIECE) != Build.SPLIT || values.has(GAP) || !values.has(LENGTH)) {
            return values;
        }
        LengthStyle style = values.style();
        double usual = style == LengthStyle.MILLIMETRES ? USUAL_GAP_MM : ShopUnit.INCH.toLibrary(USUAL_GAP_IN);
        return values.with(GAP, style.amount(Math.min(usual, values.libraryValue(LENGTH) / 2)));
    }

    private void only(String what, List<Key<Fence, ?>> needed, List<Key<Fence, ?>> foreign) {
        for (Key<Fence, ?> key : needed) {
            if (!values().has(key)) {
                throw Refusal.because(key.name(), "missing", key.name() + " is missing; " + what + " needs it");
            }
        }
        for (Key<Fence, ?> key : foreign) {
            if (values().has(key)) {
                throw Refusal.because(key.name(), "foreign", key.name() + " is given, but " + what + " has none");
            }
        }
    }

    private static Values<Fence> of(Build build, Quantity<Length> length) {
        return TABLE.values().with(KIND, build).amount(LENGTH, length);
    }

    /**
     * {@return a one-piece fence}
     *
     * @param length more than 0
     */
    public static Fence onePiece(Quantity<Length> length) {
        return new Fence(of(Build.ONE_PIECE, length));
    }

    /**
     * {@return a split fence}
     *
     * @param length of both halves together, more than 0
     * @param outOfLine by how much the outfeed half is nearer the cutter than the infeed half, either sign
     */
    public static Fence split(Quantity<Length> length, Quantity<Length> outOfLine) {
        return new Fence(of(Build.SPLIT, length).amount(OUT_OF_LINE, outOfLine));
    }

    /**
     * Begins a fence that pivots about one end.
     *
     * @param length more than 0
     * @return a fence that still needs its distances from the pivot
     */
    public static NeedsPivot pivoting(Quantity<Length> length) {
        return new NeedsPivot(of(Build.PIVOTING, length));
    }

    /** A pivoting fence whose distances from the pivot are not given yet. Immutable. */
    public static final class NeedsPivot extends Unfinished<Fence> {

        private NeedsPivot(Values<Fence> values) {
            super(values, "pivoting fence that needs its distances from the pivot");
        }

        /**
         * {@return the fence with what lies along it, measured from the pivot}
         *
         * @param cutter distance from the pivot to the cutter, more than 0, no more than the fence's length
         * @param stop distance from the pivot to the block the free end is set against, more than 0
         */
        public Fence fromPivot(Quantity<Length> cutter, Quantity<Length> stop) {
            return new Fence(values().amount(CUTTER_FROM_PIVOT, cutter).amount(STOP_FROM_PIVOT, stop));
        }
    }

    /**
     * {@return this split fence with the gap between its halves, the cutter in the middle of it; 20 mm or 3/4 in unless
     * given}
     *
     * @param width of the gap, 0 or more, less than the fence's length
     * @throws IllegalArgumentException if the fence is not split
     */
    public Fence gap(Quantity<Length> width) {
        return new Fence(values().amount(GAP, width));
    }

    /** {@return the gap between the halves of a split fence in mm; 0 unless the fence is split} */
    public double gapMm() {
        return values().libraryValue(GAP, 0);
    }

    /** {@return how the fence is built} */
    public Build build() {
        return values().at(KIND);
    }

    /** {@return the fence's length in mm; more than 0} */
    public double lengthMm() {
        return values().libraryValue(LENGTH);
    }

    /**
     * {@return by how much the outfeed half is nearer the cutter than the infeed half, in mm; 0 unless the fence is
     * split}
     */
    public double outOfLineMm() {
        return values().libraryValue(OUT_OF_LINE, 0);
    }

    /**
     * {@return how much the stop block's gap changes for a move of 1 at the cutter: {@code B/C}; 1 unless the fence
     * pivots}
     */
    public double leverage() {
        return stopFromPivotMm() / cutterFromPivotMm();
    }

    /** {@return the cutter's distance from the pivot in mm; the fence's length where nothing pivots} */
    public double cutterFromPivotMm() {
        return values().libraryValue(CUTTER_FROM_PIVOT, lengthMm());
    }

    /** {@return the stop block's distance from the pivot in mm; the fence's length where nothing pivots} */
    public double stopFromPivotMm() {
        return values().libraryValue(STOP_FROM_PIVOT, lengthMm());
    }

    private static Form<Fence> sentences() {
        return TABLE.facts("fence")
                .finds("split", "split fence, {length}, halves out of line by {outOfLine}, gap {gap}")
                .finds(
                        "pivoting",
                        "pivoting fence, {length}, cutter {cutterFromPivot} and stop {stopFromPivot} from the pivot")
                .finds("one-piece", "one-piece fence, {length}");
    }
}
