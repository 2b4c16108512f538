package org.neckgeom.solid;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.kernel.SpreadLaw;
import org.neckgeom.measure.Spread;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * How channel and back may come out, each by a spread of its own: the channel's depth (positive deeper), its offset
 * (positive toward the treble side) and the carving (positive where more is taken off, square to the back). Immutable.
 *
 * <p>Whatever is not told is exact. The three are taken as independent, and alike along the whole channel.
 */
public final class WoodSpreads implements SaysLengths<WoodSpreads> {

    private static final WoodSpreads EXACT = new WoodSpreads(zero(), zero(), zero());

    private final Spread<Length> depth;
    private final Spread<Length> offset;
    private final Spread<Length> carving;

    private WoodSpreads(Spread<Length> depth, Spread<Length> offset, Spread<Length> carving) {
        this.depth = depth;
        this.offset = offset;
        this.carving = carving;
    }

    /**
     * Returns spreads of which the channel's depth is told.
     *
     * @param spread of the depth, positive deeper
     * @return the spreads
     */
    public static WoodSpreads ofDepth(Spread<Length> spread) {
        return EXACT.depth(spread);
    }

    /**
     * Returns a copy with the spread of the channel's depth.
     *
     * @param spread positive deeper
     * @return the spreads
     */
    public WoodSpreads depth(Spread<Length> spread) {
        return new WoodSpreads(Objects.requireNonNull(spread, "depth spread"), offset, carving);
    }

    /**
     * Returns a copy with the spread of the channel's offset.
     *
     * @param spread positive toward the treble side
     * @return the spreads
     */
    public WoodSpreads offset(Spread<Length> spread) {
        return new WoodSpreads(depth, Objects.requireNonNull(spread, "offset spread"), carving);
    }

    /**
     * Returns a copy with the spread of the carving.
     *
     * @param spread positive where more is taken off
     * @return the spreads
     */
    public WoodSpreads carving(Spread<Length> spread) {
        return new WoodSpreads(depth, offset, Objects.requireNonNull(spread, "carving spread"));
    }

    SpreadLaw depthLaw() {
        return new SpreadLaw(depth);
    }

    SpreadLaw offsetLaw() {
        return new SpreadLaw(offset);
    }

    SpreadLaw carvingLaw() {
        return new SpreadLaw(carving);
    }

    private static Spread<Length> zero() {
        Quantity<Length> none = Amount.ofHouse(0, ShopUnit.MILLIMETRE);
        return Spread.bias(none);
    }

    @Override
    public WoodSpreads in(LengthStyle other) {
        return new WoodSpreads(depth.in(other), offset.in(other), carving.in(other));
    }

    /** True for equal spreads. */
    @Override
    public boolean equals(Object other) {
        return other instanceof WoodSpreads that
                && depth.equals(that.depth)
                && offset.equals(that.offset)
                && carving.equals(that.carving);
    }

    @Override
    public int hashCode() {
        return Objects.hash(depth, offset, carving);
    }

    /** Returns the three spreads. */
    @Override
    public String toString() {
        return Report.titled("Spreads of channel and back")
                .row("depth", text(depth))
                .row("offset", text(offset))
                .row("carving", text(carving))
                .toString();
    }

    private static Object text(Spread<Length> spread) {
        return spread.equals(zero()) ? "exact" : spread;
    }
}
