package org.neckgeom.examples.neck;

import java.util.List;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.plan.NeckPlan;

/** The order of work in a neck file: what is done, what this neck does not have, and which orders must be kept. */
final class OrderPart {

    static final Key<List<String>> DONE =
            Key.optional("done", names(), "what has been done already, by the names the plan uses");
    static final Key<List<String>> WITHOUT = Key.optional("without", names(), "what this neck does not have");
    static final Key<String> FIRST = Key.needed("first", Kinds.text(), "what must come before ...");
    static final Key<String> THEN = Key.needed("then", Kinds.text(), "... this");
    static final Key<List<Section>> KEEP = Key.optional(
            "keep",
            Kinds.listOf(Shape.of("an order that must be kept", FIRST, THEN), 1, OrderOfWork.MOST_OPERATIONS),
            "orders that must be kept, whatever is usual");

    static final Shape SHAPE = Shape.of("the order of work", DONE, WITHOUT, KEEP);

    private OrderPart() {}

    private static Kind<List<String>> names() {
        return Kinds.listOf(Kinds.text(), 1, OrderOfWork.MOST_OPERATIONS);
    }

    /** On the order of a plan to which all else has been told: what the neck lacks is no step of it already. */
    static Found<OrderOfWork> of(Section section, NeckPlan plan) {
        return section.make(() -> {
            OrderOfWork work = plan.order();
            for (String name : section.at(WITHOUT).orElse(List.of())) {
                work = work.without(name);
            }
            for (String name : section.at(DONE).orElse(List.of())) {
                work = work.done(name);
            }
            for (Section kept : section.at(KEEP).orElse(List.of())) {
                work = work.keep(kept.at(FIRST).value()).before(kept.at(THEN).value());
            }
            return work;
        });
    }
}
