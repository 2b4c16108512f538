package org.neckgeom.drawing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.neck.End;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Plan;
import org.neckgeom.solid.FloorThickness;

/**
 * The inputs of a drawing beyond the design.
 *
 * @param stockMm width of the blank, of which wings make up what the head is wider; 0 when it is not known
 * @param cutterMm width of the slot that one run of the cutter cuts, which leaves the channel's ends round; 0 when it is not known
 * @param openEnds at which the channel runs out of the work as it is cut; no end of it is round there
 * @param board that shaft and head are sawn from, with its marks, where they are still to be sawn
 * @param offHeel what comes off the heel, where height or centreline were read at the bridge and do not keep their limits
 * @param woodLeft under the channel, as the plan computes it
 * @param done the operations that are done, in their order
 */
public record Settled(
        double stockMm,
        double cutterMm,
        Set<End> openEnds,
        Optional<ScarfBoard> board,
        Optional<HeelCorners> offHeel,
        Optional<FloorThickness> woodLeft,
        List<String> done) {

    public static Settled nothing() {
        return new Settled(0, 0, Set.of(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    public static Settled of(Job job) {
        Plan plan = job.plan();
        List<String> done = plan.work().finished().stream().map(Operation::name).toList();
        return new Settled(
                job.blank().widthMm(),
                job.shop().cutter().slotWidthMm(),
                plan.stops().openEnds(),
                plan.scarfBoard().filter(board -> !done.contains(Operation.CUT_SCARF)),
                plan.heelCorners(),
                Optional.of(plan.floorThickness()),
                done);
    }
}
