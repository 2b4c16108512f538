package org.neckgeom.examples.neck;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.units.Amount;

/**
 * The limits a maker holds a neck to, such as slot offset within 0.1 mm, wood left 3 mm or more. Immutable.
 *
 * @param slotOffset how far off the middle the slot may lie, either way
 * @param woodLeft how much wood must be left between channel and back
 * @param stringLine how far off the middle of the bridge the strings may run, either way
 */
public record NeckLimits(Limits<Length> slotOffset, Limits<Length> woodLeft, Limits<Length> stringLine) {

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
     * Returns the limits that a plan holds its neck to.
     *
     * @param plan the plan; those of one that was told no limits are common practice, in the units of its scale
     * @return the limits
     */
    public static NeckLimits of(NeckPlan plan) {
        return new NeckLimits(
                Limits.within(plan.centredWithin()),
                Limits.atLeast(plan.woodLeftAtLeast()),
                Limits.within(plan.bridgeWithin()));
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
