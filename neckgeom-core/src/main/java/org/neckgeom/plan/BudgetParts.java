package org.neckgeom.plan;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.NeckTree;
import org.neckgeom.budget.VarianceShare;
import org.neckgeom.budget.Yield;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.units.ShopUnits;

/** The part of a plan that adds up the errors of its steps. */
final class BudgetParts {

    static final String TAKE_OFF = "Take off what the heel's corners ask for, a part at a time, and read again.";

    private static final String LINE = "string line at the bridge";
    private static final String LINE_CODE = "string-line";
    private static final double COVERAGE = 0.95;
    private static final String WITHIN = "{coverage:percent 0} within {interval:own}";

    /** The keys of the rows of the four budgets. */
    private static final List<String> KEYS =
            List.of("stringLine", "boardAtBodyJoint", "woodBesideChannel", "projectionHeight");

    private static final double WANTED_YIELD = 0.95;

    /** What the four budgets of {@link NeckPlan#budgets} are about, in a maker's words. */
    private static final List<String> QUESTIONS = List.of(
            LINE,
            "board on the neck at the body joint",
            "wood on each side of the channel",
            "projection height at the bridge");

    private BudgetParts() {}

    static PlanPart of(NeckPlan plan) {
        PlanSection.Draft draft = PlanSection.titled("errors", "How the errors add up", plan.style());
        List<Budget<Length>> budgets = plan.budgets();
        for (int i = 0; i < budgets.size(); i++) {
            Budget<Length> budget = budgets.get(i);
            VarianceShare<Length> largest = budget.shares().largest();
            draft.row(
                    KEYS.get(i),
                    QUESTIONS.get(i),
                    draft.words("budget", WITHIN + "\nmost of it: {largest}, {share:percent 0} of the variance")
                            .with("coverage", Kind.RATIO, COVERAGE)
                            .with("interval", Kind.INTERVAL, usual(budget))
                            .with("largest", Kind.NAME, largest.name())
                            .with("share", Kind.RATIO, largest.fraction()));
        }
        if (!plan.readings().has(NeckFeature.OFFSET_AT_BRIDGE)) {
            draft.row(
                    "fromAnEdge",
                    "had heel and taper been located on an edge",
                    draft.words("from-an-edge", LINE + " " + WITHIN)
                            .with("coverage", Kind.RATIO, COVERAGE)
                            .with("interval", Kind.INTERVAL, fromAnEdge(plan)));
        }
        return PlanPart.of(
                draft.note("common-practice", "how well each step is done is common practice until it is measured"),
                bridge(plan));
    }

    /** What registering from the channel buys: the same line, the other way of working. */
    private static Interval<Length> fromAnEdge(NeckPlan plan) {
        return usual(NeckTree.fromAnEdge(plan.design()).with(plan.workmanship()).stringLineAtBridge());
    }

    private static Interval<Length> usual(Budget<Length> budget) {
        return budget.distribution().interval(ShopUnits.percent(100 * COVERAGE));
    }

    private static PlanCheck bridge(NeckPlan plan) {
        Budget<Length> line = plan.budgets().get(0);
        Limits<Length> limits = Limits.within(plan.bridgeWithin());
        Optional<Estimate<Length>> read = plan.readings().of(NeckFeature.OFFSET_AT_BRIDGE);
        if (read.isPresent()) {
            return asRead(plan, read.get(), limits);
        }
        Yield<Length> yield = line.yield(limits);
        boolean good = yield.probability() >= WANTED_YIELD;
        return PlanCheck.of(
                LINE_CODE,
                LINE,
                good ? Outcome.GOOD : Outcome.OPEN,
                plan.words("yield", "{yield} of such necks keep it")
                        .with("yield", Kind.PROBABILITY, yield.probability()),
                plan.limit(limits),
                good
                        ? plan.words("go-on", "Work as you do.")
                        : plan.words("improve", "Improve this step first: {step}.")
                                .with("step", Kind.NAME, line.shares().largest().name()));
    }

    /** Nothing is left to add up: the line was read where it counts. */
    private static PlanCheck asRead(NeckPlan plan, Estimate<Length> reading, Limits<Length> limits) {
        Outcome outcome = AsMade.outcome(Verdict.of(reading, limits)) == Outcome.GOOD ? Outcome.GOOD : Outcome.OPEN;
        return PlanCheck.of(
                LINE_CODE,
                LINE,
                outcome,
                plan.words("read", "{reading}, read at the bridge").with("reading", Kind.ESTIMATE, reading),
                plan.limit(limits),
                outcome == Outcome.GOOD
                        ? plan.words("leave-the-heel", "Leave the heel's cheeks at that.")
                        : plan.words("take-off-the-heel", TAKE_OFF));
    }
}
