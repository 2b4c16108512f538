package org.neckgeom.plan;

import java.util.Optional;
import org.neckgeom.design.Head;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.heel.HeelBlocks;

/**
 * The order of work that a plan's own joints ask for: no step of the usual neck for a part that this one lacks. A maker's
 * own operations stay as they were told.
 */
final class NeckWork {

    private NeckWork() {}

    static OrderOfWork of(NeckPlan plan) {
        OrderOfWork work = plan.orderAsTold();
        if (plan.isHeadInOnePiece()) {
            work = lacking(work, "cut scarf");
            work = plan.isHeadSawnFromTheBlank() ? sawn(work) : lacking(work, "glue head");
        }
        if (plan.design().head().filter(head -> !hasEars(plan, head)).isPresent()) {
            work = lacking(work, "glue ears");
        }
        return StockParts.heel(plan)
                        .map(HeelBlocks::count)
                        .filter(count -> count == 0)
                        .isPresent()
                ? lacking(work, "glue heel block")
                : work;
    }

    private static boolean hasEars(NeckPlan plan, Head head) {
        HeadLayout layout =
                plan.details().headLayout().map(drawn -> drawn.on(head)).orElse(HeadLayout.of(head));
        return layout.ears(plan.blank().width()).house() > 0;
    }

    private static OrderOfWork sawn(OrderOfWork work) {
        return usual(work, "glue head")
                .map(gone -> work.instead(gone, UsualNeck.onePieceHead()))
                .orElse(work);
    }

    private static OrderOfWork lacking(OrderOfWork work, String name) {
        return usual(work, name).map(work::lacking).orElse(work);
    }

    /** The operation, if it is left to do and the usual neck's own. */
    private static Optional<Operation> usual(OrderOfWork work, String name) {
        return UsualNeck.operations().stream()
                .filter(operation -> operation.name().equals(name))
                .filter(operation -> work.operations().contains(operation))
                .findFirst();
    }
}
