package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Settled;
import org.neckgeom.drawing.Shown;
import org.neckgeom.drawing.Stations;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.Plan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.shop.Caution;
import org.neckgeom.units.LengthStyle;

/**
 * The contents of a sheet in their order; both the text and the page are written from them.
 *
 * @param design the neck
 * @param settled what of its shape the design does not say
 * @param style how lengths print
 * @param scarf the joint, if the head is angled
 * @param neckSet neck angle, if given
 * @param checks the checks with their outcomes
 * @param cautions what can hurt
 * @param sections settings in order of work
 * @param order the order of work, if the plan has one
 * @param budgets errors that add up, each with its limits
 * @param mark by which its paper is known, made when it is asked for
 * @param job whose plan it is, for the step at hand and for curves; nothing for a sheet of parts
 */
record Contents(
        Neck design,
        Settled settled,
        LengthStyle style,
        Optional<ScarfJoint> scarf,
        Optional<BackSet> neckSet,
        List<PlanCheck> checks,
        List<Caution> cautions,
        List<PlanSection> sections,
        Optional<OrderPlan> order,
        List<BudgetPart> budgets,
        Supplier<String> mark,
        Optional<Job> job) {

    static final List<Outcome> WORST_FIRST = List.of(Outcome.STOP, Outcome.OPEN, Outcome.OK);

    Contents {
        checks = List.copyOf(checks);
        cautions = List.copyOf(cautions);
        sections = List.copyOf(sections);
        budgets = List.copyOf(budgets);
    }

    /** The places of the frets stand in a table of the sheet's own; what is noted about them stays. */
    private static PlanSection withoutTable(PlanSection section) {
        return section.without(Set.of("fret", "fanned-fret"));
    }

    static Contents of(Job job) {
        Plan plan = job.plan();
        return new Contents(
                job.neck(),
                Settled.of(job),
                job.style(),
                plan.scarf(),
                plan.neckSet(),
                plan.checks(),
                plan.cautions(),
                plan.sections().stream()
                        .filter(section -> !section.code().equals(SectionCode.ORDER_OF_WORK.code()))
                        .map(Contents::withoutTable)
                        .toList(),
                Optional.of(plan.order()),
                BudgetPart.of(job),
                () -> Document.mark(job),
                Optional.of(job));
    }

    /** Checks to stop for first, then open ones, then good ones, each kind as the plan has them. */
    List<PlanCheck> worstFirst() {
        List<PlanCheck> sorted = new ArrayList<>();
        for (Outcome outcome : WORST_FIRST) {
            checks.stream().filter(check -> check.outcome() == outcome).forEach(sorted::add);
        }
        return sorted;
    }

    long count(Outcome outcome) {
        return checks.stream().filter(check -> check.outcome() == outcome).count();
    }

    /** Such as {@code 560 mm scale, 20 frets, body at fret 14}. */
    String inOneLine() {
        return shown().length(design.scale().lengthMm()) + " scale, " + design.frets() + " frets, body at fret "
                + design.bodyAtFret();
    }

    Shown shown() {
        return new Shown(style);
    }

    NeckShape shape() {
        return new NeckShape(design, settled);
    }

    Stations stations() {
        return Stations.of(design, settled.woodLeft());
    }
}
