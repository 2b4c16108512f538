package org.neckgeom.examples.neck;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * The limits a maker holds a neck to, such as slot offset within 0.1 mm, wood left 3 mm or more. Immutable.
 *
 * @param slotOffset how far off the middle the slot may lie, either way
 * @param woodLeft how much wood must be left between channel and back
 * @param stringLine how far off the middle of the bridge the strings may run, either way
 */
public record NeckLimits(Limits<Length> slotOffset, Limits<Length> woodLeft, Limits<Length> stringLine) {

    private static final double USUAL_OFFSET_MM = 0.10;
    private static final double USUAL_WOOD_LEFT_MM = 3;
    private static final double USUAL_STRING_LINE_MM = 1;

    /**
     * Checks that nothing is missing.
     *
     * @param slotOffset how far off the middle the slot may lie, either way
     * @param woodLeft how much wood must be left between channel and back
     * @param stringLine how far off the middle of the bridge the strings may run, either way
     */
    public NeckLimits {
        Objects.requireNonNull(slotOffset, "slotOffset");
        Objects.requireNonNull(woodLeft, "woodLeft");
        Objects.requireNonNull(stringLine, "stringLine");
    }

    /**
     * Returns the limits that hold unless told: slot offset within 0.1 mm, wood left 3 mm or more, strings within 1 mm of
     * the bridge's middle. Common practice, to be set by the maker.
     *
     * @return the limits
     */
    public static NeckLimits withDefaults() {
        return new NeckLimits(
                Limits.within(ShopUnits.mm(USUAL_OFFSET_MM)),
                Limits.atLeast(ShopUnits.mm(USUAL_WOOD_LEFT_MM)),
                Limits.within(ShopUnits.mm(USUAL_STRING_LINE_MM)));
    }

    /**
     * Returns these limits with another for the slot's offset.
     *
     * @param eitherWay more than 0
     * @return the limits
     */
    public NeckLimits slotOffset(Quantity<Length> eitherWay) {
        return new NeckLimits(Limits.within(eitherWay), woodLeft, stringLine);
    }

    /**
     * Returns these limits with another for the wood left.
     *
     * @param least the least to leave
     * @return the limits
     */
    public NeckLimits woodLeft(Quantity<Length> least) {
        return new NeckLimits(slotOffset, Limits.atLeast(least), stringLine);
    }

    /**
     * Returns these limits with another for the line of the strings at the bridge.
     *
     * @param eitherWay more than 0
     * @return the limits
     */
    public NeckLimits stringLine(Quantity<Length> eitherWay) {
        return new NeckLimits(slotOffset, woodLeft, Limits.within(eitherWay));
    }

    /** The plan held to these limits. */
    NeckPlan heldBy(NeckPlan plan) {
        return plan.centredWithin(Amount.ofHouse(slotOffset.upperHouse(), slotOffset.unit()))
                .woodLeftAtLeast(Amount.ofHouse(woodLeft.lowerHouse(), woodLeft.unit()))
                .bridgeWithin(Amount.ofHouse(stringLine.upperHouse(), stringLine.unit()));
    }

    /** Returns the limits in words. */
    @Override
    public String toString() {
        return "slot offset " + slotOffset + "; wood left " + woodLeft + "; strings at the bridge " + stringLine;
    }
}
