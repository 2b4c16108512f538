package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.Share;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.PlanSection.Row;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.ShopUnits;

/**
 * A budget and the limits it is held against, if it is held against any, as a sheet shows it.
 *
 * @param title what it is about, in a maker's words
 * @param budget the errors that add up
 * @param limits what is allowed, if that is told
 */
record BudgetPart(String title, Budget<Length> budget, Optional<Limits<Length>> limits) {

    private static final int MOST_SHARES = 10;

    /** What the budgets of a plan are about, in their order. */
    private static final List<String> TITLES = List.of(
            "String line at the bridge",
            "Board on the neck, at the body joint",
            "Wood on each side of the channel",
            "Projection height at the bridge");

    /** The budgets of a plan; the first, the string line at the bridge, has the plan's limit. */
    static List<BudgetPart> of(NeckPlan plan) {
        List<BudgetPart> parts = new ArrayList<>();
        for (Budget<Length> budget : plan.budgets()) {
            String title = parts.size() < TITLES.size() ? TITLES.get(parts.size()) : budget.title();
            Optional<Limits<Length>> limits =
                    parts.isEmpty() ? Optional.of(Limits.within(plan.bridgeWithin())) : Optional.empty();
            parts.add(new BudgetPart(title, budget.in(plan.style().unit()), limits));
        }
        return parts;
    }

    /** Where 95 of 100 results lie, as many below as above. */
    Interval<Length> usual() {
        return budget.distribution().interval(ShopUnits.percent(95));
    }

    /** What is said of it beside its drawings. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        if (!title.equals(budget.title())) {
            rows.add(new Row("what it adds up", budget.title()));
        }
        limits.ifPresent(allowed -> {
            rows.add(new Row("allowed", allowed.toString()));
            rows.add(new Row(
                    "how often kept", Numbers.percent(budget.yield(allowed).probability())));
        });
        rows.add(new Row("95 of 100", usual().toString()));
        rows.add(new Row("worst case", budget.worstCase().range().toString()));
        return rows;
    }

    /** A share as text: {@code 69.4 %}. */
    static String text(Share<Length> share) {
        return Numbers.fixed(100 * share.fraction(), 1) + " %";
    }

    /** The largest shares, those of one step together, at most ten. */
    List<Share<Length>> largest() {
        return budget.sharesByStep().list().stream()
                .filter(share -> share.fraction() > 0)
                .limit(MOST_SHARES)
                .toList();
    }
}
