package org.neckgeom.plan;

import org.neckgeom.head.HeadLayout;
import org.neckgeom.heel.HeelBlocks;
import org.neckgeom.neck.Head;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;

/**
 * The order of work that a plan's own joints ask for: no step of the usual neck for a part that this one lacks. A maker's
 * own operations stay as they were told.
 */
final class NeckWork {

    private NeckWork() {}

    static OrderOfWork of(NeckPlan plan, OrderOfWork order) {
        OrderOfWork work = order;
        if (plan.isHeadInOnePiece()) {
            work = work.lacking(Operation.CUT_SCARF);
            work = plan.isHeadSawnFromTheBlank() ? work.headSawnOut() : work.lacking(Operation.GLUE_HEAD);
        }
        if (plan.design().head().filter(head -> !hasEars(plan, head)).isPresent()) {
            work = work.lacking(Operation.GLUE_EARS);
        }
        return StockParts.heel(plan)
                        .map(HeelBlocks::count)
                        .filter(count -> count == 0)
                        .isPresent()
                ? work.lacking(Operation.GLUE_HEEL_BLOCK)
                : work;
    }

    private static boolean hasEars(NeckPlan plan, Head head) {
        return HeadLayout.of(head).ears(plan.blank().width()).libraryValue() > 0;
    }
}
