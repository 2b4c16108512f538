package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** All repairs of a plan, and its section on them. */
final class Repairs {

    private Repairs() {}

    /** Reading by reading, each from the least harm to the most. */
    static List<Repair> of(Stages plan) {
        if (plan.measured().isEmpty()) {
            return List.of();
        }
        List<Repair> all = new ArrayList<>();
        List<Function<Stages, List<Repair>>> kinds = List.of(
                ChannelRepairs::of,
                ChannelSizeRepairs::of,
                HeadRepairs::of,
                BackRepairs::of,
                BowRepairs::of,
                BoardRepairs::of);
        for (Function<Stages, List<Repair>> kind : kinds) {
            // Where a figure that they rest on has no answer, its own check states why.
            Attempt.atAll(() -> Optional.of(kind.apply(plan))).answer().ifPresent(all::addAll);
        }
        return List.copyOf(all);
    }

    /** What is out of its limit and what can be done about it; nothing where all is well. */
    static Optional<PlanPart> section(Stages plan, List<Repair> repairs) {
        if (repairs.isEmpty()) {
            return Optional.empty();
        }
        PlanSection.Draft draft = PlanSection.titled(SectionCode.REPAIRS, plan.style());
        String reading = "";
        int number = 0;
        for (Repair repair : repairs) {
            draft.row(
                    "repair" + ++number,
                    repair.reading().equals(reading) ? plan.words("or", "or") : repair.named(),
                    repair);
            reading = repair.reading();
        }
        return Optional.of(PlanPart.of(draft.note(
                "least-harm", "Of each reading the least harm first: fewest steps undone, then most wood left.")));
    }
}
