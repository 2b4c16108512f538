package org.neckgeom.plan;

import java.util.List;

/**
 * One part of a plan with what it holds against limits.
 *
 * @param section what to read
 * @param checks what to keep
 */
record PlanPart(PlanSection section, List<PlanCheck> checks) {

    static PlanPart of(PlanSection.Draft draft, PlanCheck... checks) {
        return new PlanPart(draft.done(), List.of(checks));
    }
}
