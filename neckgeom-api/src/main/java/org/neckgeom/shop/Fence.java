package org.neckgeom.shop;

import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * The fence the piece rides along, such as {@code one-piece fence, 600 mm}: one straight piece, split in two halves, or
 * pivoting about one end. Immutable.
 */
public final class Fence implements Answer, SaysLengths<Fence> {

    /** How a fence is built. */
    public enum Build {
        /** One straight piece that moves as a whole; its angle to anything has no say for one round cutter. */
        ONE_PIECE,
        /** Two halves, before and after the cutter, that may be out of line. */
        SPLIT,
        /** Pivoting about one end: the cutter sees only its share of what the free end moves. */
        PIVOTING
    }

    /** Gap between the halves of a split fence, the cutter in its middle; common practice. */
    private static final double USUAL_GAP_MM = 20;

    private static final double USUAL_GAP_IN = 0.75;

    private final Build build;
    private final double length;
    private final double outOfLine;
    private final double gap;
    private final double cutterFromPivot;
    private final double stopFromPivot;
    private final ShopUnit<Length> unit;

    private Fence(
            Build build,
            double length,
            double outOfLine,
            double gap,
            double cutterFromPivot,
            double stopFromPivot,
            ShopUnit<Length> unit) {
        this.build = build;
        this.length = length;
        this.outOfLine = outOfLine;
        this.gap = gap;
        this.cutterFromPivot = cutterFromPivot;
        this.stopFromPivot = stopFromPivot;
        this.unit = unit;
    }

    /**
     * Returns a one-piece fence.
     *
     * @param length more than 0
     * @return the fence
     */
    public static Fence onePiece(Quantity<Length> length) {
        double mm = HouseUnits.mmPositive(length, "fence length");
        return new Fence(
                Build.ONE_PIECE, mm, 0, 0, mm, mm, LengthStyle.of(length).unit());
    }

    /**
     * Returns a split fence.
     *
     * @param length of both halves together, more than 0
     * @param outOfLine how far the outfeed half stands nearer the cutter than the infeed half, either sign
     * @return the fence
     */
    public static Fence split(Quantity<Length> length, Quantity<Length> outOfLine) {
        double mm = HouseUnits.mmPositive(length, "fence length");
        double step = HouseUnits.mm(outOfLine, "halves out of line");
        LengthStyle style = LengthStyle.of(length);
        double usual = style == LengthStyle.MILLIMETRES ? USUAL_GAP_MM : ShopUnit.INCH.toHouse(USUAL_GAP_IN);
        return new Fence(Build.SPLIT, mm, step, Math.min(usual, mm / 2), mm, mm, style.unit());
    }

    /**
     * Returns a fence that pivots about one end.
     *
     * @param length more than 0
     * @param cutterFromPivot distance from the pivot to the cutter along the fence, more than 0, no more than the length
     * @param stopFromPivot distance from the pivot to the block the free end is set against, more than 0
     * @return the fence
     */
    public static Fence pivoting(
            Quantity<Length> length, Quantity<Length> cutterFromPivot, Quantity<Length> stopFromPivot) {
        double mm = HouseUnits.mmPositive(length, "fence length");
        double cutter = HouseUnits.mmPositive(cutterFromPivot, "cutter's distance from the pivot");
        double stop = HouseUnits.mmPositive(stopFromPivot, "stop block's distance from the pivot");
        if (!(cutter <= mm)) {
            throw HouseUnits.refused(
                    "cutter's distance from the pivot",
                    "at-most",
                    "no more than the fence's length of "
                            + Amount.from(length, "fence length").toString(),
                    cutterFromPivot);
        }
        return new Fence(
                Build.PIVOTING, mm, 0, 0, cutter, stop, LengthStyle.of(length).unit());
    }

    /**
     * Returns this split fence with the gap between its halves, the cutter in the middle of it; 20 mm or 3/4 in unless
     * given.
     *
     * @param width of the gap, 0 or more, less than the fence's length
     * @return the fence
     * @throws IllegalArgumentException if the fence is not split
     */
    public Fence gap(Quantity<Length> width) {
        double mm = HouseUnits.mmNotNegative(width, "gap");
        if (build != Build.SPLIT) {
            throw Refusal.of(
                    "gap",
                    "fit",
                    "be of a split fence",
                    "given for a " + build.toString().toLowerCase(Locale.ROOT).replace('_', ' ') + " fence");
        }
        if (!(mm < length)) {
            throw HouseUnits.refused(
                    "gap", "less-than", "less than the fence's length of " + Amount.ofHouse(length, unit), width);
        }
        return new Fence(build, length, outOfLine, mm, cutterFromPivot, stopFromPivot, unit);
    }

    /**
     * Returns the gap between the halves of a split fence in mm.
     *
     * @return 0 unless the fence is split
     */
    public double gapMm() {
        return gap;
    }

    /**
     * Returns how the fence is built.
     *
     * @return the build
     */
    public Build build() {
        return build;
    }

    /**
     * Returns the fence's length in mm.
     *
     * @return more than 0
     */
    public double lengthMm() {
        return length;
    }

    /**
     * Returns how far the outfeed half stands nearer the cutter than the infeed half, in mm.
     *
     * @return 0 unless the fence is split
     */
    public double outOfLineMm() {
        return outOfLine;
    }

    /**
     * Returns how much the stop block's gap changes for a move of 1 at the cutter: {@code B/C}.
     *
     * @return 1 unless the fence pivots
     */
    public double leverage() {
        return build == Build.PIVOTING ? stopFromPivot / cutterFromPivot : 1;
    }

    /**
     * Returns the cutter's distance from the pivot in mm.
     *
     * @return the fence's length where nothing pivots
     */
    public double cutterFromPivotMm() {
        return cutterFromPivot;
    }

    /**
     * Returns the stop block's distance from the pivot in mm.
     *
     * @return the fence's length where nothing pivots
     */
    public double stopFromPivotMm() {
        return stopFromPivot;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    @Override
    public Form<Fence> form() {
        return Sentences.FORM;
    }

    @Override
    public Fence in(LengthStyle other) {
        return new Fence(
                build,
                length,
                outOfLine,
                gap,
                cutterFromPivot,
                stopFromPivot,
                Objects.requireNonNull(other, "style").unit());
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Fence other
                && build == other.build
                && Double.compare(length, other.length) == 0
                && Double.compare(outOfLine, other.outOfLine) == 0
                && Double.compare(gap, other.gap) == 0
                && Double.compare(cutterFromPivot, other.cutterFromPivot) == 0
                && Double.compare(stopFromPivot, other.stopFromPivot) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(build, length, outOfLine, gap, cutterFromPivot, stopFromPivot);
    }

    /** Returns such as {@code one-piece fence, 600 mm}. */
    @Override
    public String toString() {
        return text(style());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<Fence> FORM = Form.<Fence>of("fence")
                .fact("build", Kind.code(Build.class), "one piece, split or pivoting", Fence::build)
                .fact("length", Kind.MM, "of both halves together where it is split", Fence::lengthMm)
                .fact(
                        "outOfLine",
                        Kind.MM,
                        "outfeed half nearer the cutter; either sign",
                        of(Build.SPLIT, Fence::outOfLineMm))
                .fact("gap", Kind.MM, "between the halves", of(Build.SPLIT, Fence::gapMm))
                .fact("cutterFromPivot", Kind.MM, "along the fence", of(Build.PIVOTING, Fence::cutterFromPivotMm))
                .fact(
                        "stopFromPivot",
                        Kind.MM,
                        "to the block the free end is set against",
                        of(Build.PIVOTING, Fence::stopFromPivotMm))
                .finds("split", "split fence, {length}, halves out of line by {outOfLine}, gap {gap}")
                .finds(
                        "pivoting",
                        "pivoting fence, {length}, cutter {cutterFromPivot} and stop {stopFromPivot} from the pivot")
                .finds("one-piece", "one-piece fence, {length}");

        /** A size that only fences of one build have. */
        private static Function<Fence, Double> of(Build build, ToDoubleFunction<Fence> mm) {
            return fence -> fence.build == build ? mm.applyAsDouble(fence) : Double.NaN;
        }
    }
}
