package org.neckgeom.drawing;

import java.util.List;
import java.util.Optional;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.solid.FloorThickness;

/**
 * What has been settled of a neck's shape beyond its design, as drawings need it.
 *
 * @param saddleMm station of the saddle on the centreline; used where strings are told
 * @param stockMm width of the blank, of which ears make up what the head is wider; 0 when it is not known
 * @param offHeel what comes off the heel, where height or centreline have been read at the bridge
 * @param woodLeft under the channel, as the plan reckons it
 * @param done the operations that are done, in their order
 */
public record Settled(
        double saddleMm,
        double stockMm,
        Optional<HeelCorners> offHeel,
        Optional<FloorThickness> woodLeft,
        List<String> done) {

    public static Settled nothing() {
        return new Settled(0, 0, Optional.empty(), Optional.empty(), List.of());
    }

    public static Settled of(NeckPlan plan) {
        double saddle = plan.neckSet()
                .map(set -> plan.design().bodyJointMm() + set.reach().libraryValue())
                .orElse(plan.design().scale().lengthMm());
        return new Settled(
                saddle,
                plan.blank().widthMm(),
                plan.heelCorners(),
                Optional.of(plan.woodLeft()),
                plan.order().finished().stream().map(Operation::name).toList());
    }
}
