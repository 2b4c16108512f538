package org.neckgeom.examples.neck;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.ShopUnits;

/**
 * The limits a maker holds a neck to, such as slot offset within 0.1 mm, wood left 3 mm or more. Immutable.
 *
 * @param slotOffset how far off the middle the slot may lie, either way
 * @param woodLeft how much wood must be left between channel and back
 */
public record NeckLimits(Limits<Length> slotOffset, Limits<Length> woodLeft) {

    private static final double USUAL_OFFSET_MM = 0.10;
    private static final double USUAL_WOOD_LEFT_MM = 3;

    /**
     * Returns the limits that hold unless told: slot offset within 0.1 mm, wood left 3 mm or more. Common practice, to be
     * set by the maker.
     *
     * @return the limits
     */
    public static NeckLimits withDefaults() {
        return new NeckLimits(
                Limits.within(ShopUnits.mm(USUAL_OFFSET_MM)), Limits.atLeast(ShopUnits.mm(USUAL_WOOD_LEFT_MM)));
    }

    /**
     * Returns these limits with another for the slot's offset.
     *
     * @param eitherWay more than 0
     * @return the limits
     */
    public NeckLimits slotOffset(Quantity<Length> eitherWay) {
        return new NeckLimits(Limits.within(eitherWay), woodLeft);
    }

    /**
     * Returns these limits with another for the wood left.
     *
     * @param least the least to leave
     * @return the limits
     */
    public NeckLimits woodLeft(Quantity<Length> least) {
        return new NeckLimits(slotOffset, Limits.atLeast(least));
    }

    /** Returns both limits in words. */
    @Override
    public String toString() {
        return "slot offset " + slotOffset + "; wood left " + woodLeft;
    }
}
