package org.neckgeom.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.neckgeom.order.Clashes;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.plan.PlanCheck.Outcome;

/** The part of a plan that says in which order things are done. */
final class OrderPart {

    private OrderPart() {}

    static PlanPart of(NeckPlan plan) {
        OrderOfWork left = plan.order();
        OrderPlan order = left.plan();
        PlanSection.Draft draft = PlanSection.titled(PlanSection.ORDER);
        done(plan, left).ifPresent(done -> draft.row("done", done));
        for (OrderPlan.Step step : order.steps()) {
            draft.row(Integer.toString(step.number()), step.operation().name() + "\n" + step.why());
        }
        Clashes clashes = order.clashes();
        if (!clashes.isEmpty()) {
            draft.row("clashes", clashes.text(plan.style()));
        }
        return PlanPart.of(draft, check(order, clashes));
    }

    /** What is done, by its name; what nothing was read on is said apart. */
    private static Optional<String> done(NeckPlan plan, OrderOfWork left) {
        Set<String> taken = DoneWork.of(plan.orderToldWhole(), plan.readings()).taken();
        List<String> names = left.finished().stream().map(Operation::name).toList();
        if (names.isEmpty()) {
            return Optional.empty();
        }
        String known = String.join(
                ", ", names.stream().filter(name -> !taken.contains(name)).toList());
        String before = String.join(", ", names.stream().filter(taken::contains).toList());
        return Optional.of(before.isEmpty() ? known : known + "\ntaken as done, standing before: " + before);
    }

    private static PlanCheck check(OrderPlan order, Clashes clashes) {
        int count = clashes.list().size();
        String found = count == 0
                ? order.steps().size() + " steps, nothing in the way"
                : count + (count == 1 ? " clash" : " clashes") + (order.works() ? ", with a remedy" : ", no remedy");
        Outcome outcome = count == 0 ? Outcome.GOOD : order.works() ? Outcome.OPEN : Outcome.STOP;
        String todo = switch (outcome) {
            case GOOD -> "Keep to the order.";
            case OPEN -> "Use the remedy, and count what it adds: see the order of work.";
            case STOP -> "Change what must be kept: see the order of work.";
        };
        return new PlanCheck("order of work", outcome, found, "every step finds what it needs", todo);
    }
}
