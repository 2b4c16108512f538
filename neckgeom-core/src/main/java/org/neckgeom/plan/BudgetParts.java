package org.neckgeom.plan;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.VarianceShare;
import org.neckgeom.budget.Yield;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.units.ShopUnits;

/** The part of a plan that adds up the errors of its steps. */
final class BudgetParts {

    static final String TAKE_OFF = "Take off what the heel's corners ask for, a part at a time, and read again.";

    private static final double COVERAGE = 0.95;
    private static final String WITHIN = "{coverage:percent 0} interval {interval:own}";

    private static final double WANTED_YIELD = 0.95;

    private BudgetParts() {}

    static PlanPart of(Stages plan) {
        PlanSection.Draft draft = PlanSection.titled(SectionCode.ERRORS, plan.style());
        for (BudgetCode code : BudgetCode.values()) {
            Budget<Length> budget = plan.budgets().budget(code);
            VarianceShare<Length> largest = budget.shares().largest();
            draft.row(
                    code.key(),
                    code.toString(),
                    draft.words("budget", WITHIN + "\nlargest share: {largest}, {share:percent 0} of the variance")
                            .with("coverage", Kind.RATIO, COVERAGE)
                            .with("interval", Kind.INTERVAL, usual(budget))
                            .with("largest", Kind.NAME, largest.name())
                            .with("share", Kind.RATIO, largest.fraction()));
        }
        if (!plan.measured().has(NeckFeature.OFFSET_AT_BRIDGE)) {
            draft.row(
                    "fromAnEdge",
                    "if heel and taper were located from the edge",
                    draft.words("from-an-edge", BudgetCode.STRING_LINE + " " + WITHIN)
                            .with("coverage", Kind.RATIO, COVERAGE)
                            .with("interval", Kind.INTERVAL, fromAnEdge(plan)));
        }
        return PlanPart.of(
                draft.note("common-practice", "Workmanship is common practice until it is measured."), bridge(plan));
    }

    /** What registering from the channel buys: the same line, the other way of working. */
    private static Interval<Length> fromAnEdge(Stages plan) {
        return usual(plan.budgets().stringLineFromAnEdge());
    }

    private static Interval<Length> usual(Budget<Length> budget) {
        return budget.distribution().interval(ShopUnits.percent(100 * COVERAGE));
    }

    private static PlanCheck bridge(Stages plan) {
        Budget<Length> line = plan.budgets().budget(BudgetCode.STRING_LINE);
        Limits<Length> limits = Limits.within(plan.job().bridgeLimit());
        Optional<Estimate<Length>> read = plan.measured().of(NeckFeature.OFFSET_AT_BRIDGE);
        if (read.isPresent()) {
            return asRead(plan, read.get(), limits);
        }
        Yield<Length> yield = line.yield(limits);
        boolean good = yield.probability() >= WANTED_YIELD;
        return new PlanCheck(
                CheckCode.STRING_LINE,
                new Finding.Likely(line.distribution().mean(), limits, yield.probability(), WANTED_YIELD, Outcome.OPEN),
                plan.words("yield", "yield {yield}").with("yield", Kind.PROBABILITY, yield.probability()),
                plan.limit(limits),
                good
                        ? plan.words("go-on", "No change needed.")
                        : plan.words("improve", "Improve this step first: {step}.")
                                .with("step", Kind.NAME, line.shares().largest().name()));
    }

    /** Nothing is left to add up: the line was read where it counts. */
    private static PlanCheck asRead(Stages plan, Estimate<Length> reading, Limits<Length> limits) {
        Finding finding = new Finding.Measured(Verdict.of(reading, limits), Outcome.OPEN);
        return new PlanCheck(
                CheckCode.STRING_LINE,
                finding,
                plan.words("read", "{reading}, read at the bridge").with("reading", Kind.ESTIMATE, reading),
                plan.limit(limits),
                finding.outcome() == Outcome.OK
                        ? plan.words("leave-the-heel", "Leave the heel's cheeks at that.")
                        : plan.words("take-off-the-heel", TAKE_OFF));
    }
}
