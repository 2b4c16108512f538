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
import org.neckgeom.plan.PlanCheck.Outcome;

/** The part of a plan that says in which order things are done. */
final class OrderPart {

    private OrderPart() {}

    static PlanPart of(NeckPlan plan) {
        OrderOfWork left = plan.order();
        OrderPlan order = left.plan();
        PlanSection.Draft draft = PlanSection.titled(PlanSection.ORDER, "Order of work", plan.style());
        done(plan, left).ifPresent(done -> draft.row("done", "done", done));
        for (OrderPlan.Step step : order.steps()) {
            draft.row(
                    "step" + step.number(),
                    draft.words("step", "{step}").with("step", Kind.WHOLE, step.number()),
                    draft.words("operation", "{operation}\n{why}")
                            .with("operation", Kind.NAME, step.operation().name())
                            .with("why", Kind.NAME, step.why()));
        }
        Conflicts clashes = order.clashes();
        if (!clashes.isEmpty()) {
            draft.row("clashes", "clashes", clashes);
        }
        return PlanPart.of(draft, check(draft, order, clashes));
    }

    /** What is done, by its name; what nothing was read on is said apart. */
    private static Optional<Statement> done(NeckPlan plan, OrderOfWork left) {
        Set<String> taken = plan.doneWork().taken();
        List<String> names = left.finished().stream().map(Operation::name).toList();
        if (names.isEmpty()) {
            return Optional.empty();
        }
        List<String> known =
                names.stream().filter(name -> !taken.contains(name)).toList();
        List<String> before = names.stream().filter(taken::contains).toList();
        return Optional.of(
                plan.words("done", "{known}" + (before.isEmpty() ? "" : "\ntaken as done, standing before: {before}"))
                        .with("known", Kind.list(Kind.NAME), known)
                        .with("before", Kind.list(Kind.NAME), before));
    }

    private static PlanCheck check(PlanSection.Draft draft, OrderPlan order, Conflicts clashes) {
        int count = clashes.list().size();
        Statement found = count == 0
                ? draft.words("steps", "{steps} steps, nothing in the way")
                        .with("steps", Kind.WHOLE, order.steps().size())
                : draft.words(
                                "clashes",
                                "{clashes:grouped} {clashes:of clash/clashes}, "
                                        + (order.works() ? "with a remedy" : "no remedy"))
                        .with("clashes", Kind.WHOLE, count);
        Outcome outcome = count == 0 ? Outcome.GOOD : order.works() ? Outcome.OPEN : Outcome.STOP;
        Statement next = switch (outcome) {
            case GOOD -> draft.words("keep-to-the-order", "Keep to the order.");
            case OPEN ->
                draft.words("use-the-remedy", "Use the remedy, and count what it adds: see the order of work.");
            case STOP -> draft.words("change-the-order", "Change what must be kept: see the order of work.");
        };
        return PlanCheck.of(
                "order-of-work",
                "order of work",
                outcome,
                found,
                draft.words("nothing-missing", "every step finds what it needs"),
                next);
    }
}
