package org.neckgeom.plan;

import org.neckgeom.plan.PlanCheck.Outcome;

/** The part of a plan that says in which order things are done. */
final class OrderPart {

    private OrderPart() {}

    static PlanPart of(NeckPlan plan) {
        OrderPlan order = plan.order().plan();
        PlanSection.Draft draft = PlanSection.titled(PlanSection.ORDER);
        for (OrderPlan.Step step : order.steps()) {
            draft.row(Integer.toString(step.number()), step.operation().name() + "\n" + step.why());
        }
        Clashes clashes = order.clashes();
        if (!clashes.isEmpty()) {
            draft.row("clashes", clashes);
        }
        return PlanPart.of(draft, check(order, clashes));
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
