package org.neckgeom.plan;

import java.util.List;
import org.neckgeom.fault.Fault;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;

/**
 * One section of a plan with its checks.
 *
 * @param section what to read
 * @param checks what to keep
 */
record PlanPart(PlanSection section, List<PlanCheck> checks) {

    static PlanPart of(PlanSection.Draft draft, PlanCheck... checks) {
        return new PlanPart(draft.done(), List.of(checks));
    }

    /** Without advice to do what is done. */
    PlanPart after(Stages plan) {
        return new PlanPart(
                section,
                checks.stream()
                        .map(check -> check.outcome() == Outcome.OK
                                        && check.code()
                                                .past()
                                                .filter(plan::isDone)
                                                .isPresent()
                                ? new PlanCheck(
                                        check.code(),
                                        check.finding(),
                                        check.result(),
                                        check.limit(),
                                        plan.words("done", "Nothing: it is done."))
                                : check)
                        .toList());
    }

    /** What has no answer, and why. */
    static PlanPart unanswered(
            Stages plan,
            SectionCode section,
            CheckCode check,
            Finding finding,
            Fault why,
            String wanted,
            Statement action) {
        return of(
                PlanSection.titled(section, plan.style()),
                new PlanCheck(check, finding, why(plan, why), plan.words("wanted", wanted), action));
    }

    /** A sentence for what has no answer. */
    private static Statement why(Stages plan, Fault why) {
        return plan.words("no-answer", "{why}").with("why", Kind.NAME, why.toString());
    }
}
