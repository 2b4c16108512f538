package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.NeckTree;
import org.neckgeom.budget.Share;
import org.neckgeom.budget.Yield;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.ShopUnits;

/** The part of a plan that adds up the errors of its steps. */
final class BudgetParts {

    private static final String LINE = "string line at the bridge";
    private static final double WANTED_YIELD = 0.95;

    /** What the four budgets of {@link NeckPlan#budgets} are about, in a maker's words. */
    private static final List<String> QUESTIONS = List.of(
            LINE,
            "board on the neck at the body joint",
            "wood on each side of the channel",
            "projection height at the bridge");

    private BudgetParts() {}

    static PlanPart of(NeckPlan plan) {
        PlanSection.Draft draft = PlanSection.titled("How the errors add up");
        List<Budget<Length>> budgets = plan.budgets();
        for (int i = 0; i < budgets.size(); i++) {
            Budget<Length> budget = budgets.get(i);
            Share<Length> largest = budget.shares().largest();
            draft.row(
                    QUESTIONS.get(i),
                    "95 % within " + budget.distribution().interval(ShopUnits.percent(95)) + "\nmost of it: "
                            + largest.name() + ", " + Numbers.fixed(100 * largest.fraction(), 0)
                            + " % of the variance");
        }
        if (!plan.readings().has(NeckFeature.OFFSET_AT_BRIDGE)) {
            draft.row("had heel and taper been located on an edge", fromAnEdge(plan));
        }
        List<PlanCheck> checks = new ArrayList<>();
        checks.add(bridge(plan));
        return new PlanPart(
                draft.note("how well each step is done is common practice until it is measured")
                        .done(),
                checks);
    }

    /** What registering from the channel buys: the same line, the other way of working. */
    private static String fromAnEdge(NeckPlan plan) {
        Budget<Length> other =
                NeckTree.fromAnEdge(plan.design()).with(plan.workmanship()).stringLineAtBridge();
        return "string line at the bridge 95 % within " + other.distribution().interval(ShopUnits.percent(95));
    }

    private static PlanCheck bridge(NeckPlan plan) {
        Budget<Length> line = plan.budgets().get(0);
        Limits<Length> limits = Limits.within(plan.bridgeWithin());
        Optional<Estimate<Length>> read = plan.readings().of(NeckFeature.OFFSET_AT_BRIDGE);
        if (read.isPresent()) {
            return asRead(read.get(), limits);
        }
        Yield<Length> yield = line.yield(limits);
        boolean good = yield.probability() >= WANTED_YIELD;
        return new PlanCheck(
                LINE,
                good ? Outcome.GOOD : Outcome.OPEN,
                Numbers.percent(yield.probability()) + " of such necks keep it",
                limits.toString(),
                good
                        ? "Work as you do."
                        : "Improve this step first: " + line.shares().largest().name() + ".");
    }

    /** Nothing is left to add up: the line was read where it counts. */
    private static PlanCheck asRead(Estimate<Length> reading, Limits<Length> limits) {
        Outcome outcome = AsMade.outcome(Verdict.of(reading, limits)) == Outcome.GOOD ? Outcome.GOOD : Outcome.OPEN;
        return new PlanCheck(
                LINE,
                outcome,
                reading + ", read at the bridge",
                limits.toString(),
                outcome == Outcome.GOOD
                        ? "Leave the heel's cheeks at that."
                        : "Take off what the heel's corners ask for, a part at a time, and read again.");
    }
}
