package org.neckgeom.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.order.Conflicts;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.OrderPlan;

/** The part of a plan that lists the operations in their order. */
final class OrderPart {

    private OrderPart() {}

    static PlanPart of(Stages plan) {
        OrderOfWork left = plan.order().left();
        OrderPlan order = plan.order().plan();
        PlanSection.Draft draft = PlanSection.titled(SectionCode.ORDER_OF_WORK, plan.style());
        done(plan, left).ifPresent(done -> draft.row("done", "done", done));
        for (OrderPlan.Step step : order.steps()) {
            draft.row(
                    "step" + step.number(),
                    draft.words("step", "{step}").with("step", Kind.WHOLE, step.number()),
                    draft.words("operation", "{operation}\n{why}")
                            .with("operation", Kind.NAME, step.operation().name())
                            .with("why", Kind.NAME, step.why()));
        }
        Conflicts conflicts = order.conflicts();
        if (!conflicts.isEmpty()) {
            draft.row("conflicts", "conflicts", conflicts);
        }
        return PlanPart.of(draft, check(draft, order, conflicts));
    }

    /** What is done, by its name; what nothing was read on is listed apart. */
    private static Optional<Statement> done(Stages plan, OrderOfWork left) {
        Set<String> taken = plan.order().taken();
        List<String> names = left.finished().stream().map(Operation::name).toList();
        if (names.isEmpty()) {
            return Optional.empty();
        }
        List<String> known =
                names.stream().filter(name -> !taken.contains(name)).toList();
        List<String> before = names.stream().filter(taken::contains).toList();
        return Optional.of(plan.words(
                        "done",
                        "{known}" + (before.isEmpty() ? "" : "\ntaken as done, because they come before: {before}"))
                .with("known", Kind.list(Kind.NAME), known)
                .with("before", Kind.list(Kind.NAME), before));
    }

    private static PlanCheck check(PlanSection.Draft draft, OrderPlan order, Conflicts conflicts) {
        int count = conflicts.list().size();
        Statement found = count == 0
                ? draft.words("steps", "{steps:of operation/operations}, no conflicts")
                        .with("steps", Kind.WHOLE, order.steps().size())
                : draft.words(
                                "conflicts",
                                "{conflicts:of conflict/conflicts}, " + (order.works() ? "with a remedy" : "no remedy"))
                        .with("conflicts", Kind.WHOLE, count);
        Finding finding = new Finding.Conflicting(count, order.works());
        Statement next = switch (finding.outcome()) {
            case OK -> draft.words("keep-to-the-order", "Keep to the order.");
            case OPEN ->
                draft.words(
                        "use-the-remedy", "Use the remedy, and count the error it adds: see the order of operations.");
            case STOP ->
                draft.words("change-the-order", "Change the order that was given: see the order of operations.");
        };
        return new PlanCheck(
                CheckCode.ORDER_OF_WORK,
                finding,
                found,
                draft.words("nothing-missing", "no conflicts between operations"),
                next);
    }
}
