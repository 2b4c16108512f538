package org.neckgeom.examples.neck;

import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;

/**
 * One round of centring: how the fence was moved, then the readings of a trial cut. Immutable.
 *
 * @param moveTowardCutter how far the fence was moved since the round before, positive toward the cutter; nothing in the
 *     first round
 * @param trial the readings
 */
public record TrialRound(Optional<Amount<Length>> moveTowardCutter, TrialCut trial) {

    /**
     * Checks that nothing is missing.
     *
     * @param moveTowardCutter how far the fence was moved since the round before, positive toward the cutter; nothing
     *     in the first round
     * @param trial the readings
     */
    public TrialRound {
        Objects.requireNonNull(moveTowardCutter, "moveTowardCutter");
        Objects.requireNonNull(trial, "trial");
    }

    /** The plan with the fence moved as before this round, if it was, and the readings of this round. */
    NeckPlan addedTo(NeckPlan plan) {
        NeckPlan moved = moveTowardCutter.map(plan::fenceMoved).orElse(plan);
        return moved.trialCut(trial);
    }
}
