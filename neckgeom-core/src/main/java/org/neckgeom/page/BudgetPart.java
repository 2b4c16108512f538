package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.VarianceShare;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/**
 * A budget and the limits it is held against, if it is held against any, as a sheet shows it.
 *
 * @param title what it is about, in a maker's words
 * @param budget the errors that add up
 * @param limits what is allowed, if that is told
 */
record BudgetPart(String title, Budget<Length> budget, Optional<Limits<Length>> limits) implements Answer {

    private static final Form<VarianceShare<?>> SHARE = Form.<VarianceShare<?>>of("share-of-a-step")
            .fact("step", Kind.NAME, "what is done", VarianceShare::name)
            .fact("fraction", Kind.RATIO, "of the variance", VarianceShare::fraction);

    private static final Form<BudgetPart> FORM = Form.<BudgetPart>of("budget-of-the-neck")
            .fact("title", Kind.NAME, "what it is about", BudgetPart::title)
            .fact("contents", Kind.NAME, "what it adds up", part -> part.budget.title())
            .factIfAny("limits", Kind.LIMITS, "what is allowed", BudgetPart::limits)
            .factIfAny(
                    "yield",
                    Kind.PROBABILITY,
                    "of keeping the limits",
                    part -> part.limits.map(
                            allowed -> part.budget.yield(allowed).probability()))
            .fact("interval", Kind.INTERVAL, "where 95 of 100 results lie", BudgetPart::usual)
            .fact(
                    "worstCase",
                    Kind.INTERVAL,
                    "all steps as far off as they can be",
                    part -> part.budget.worstCase().range())
            .fact(
                    "standardDeviation",
                    Kind.AMOUNT,
                    "of the results",
                    part -> part.budget.distribution().standardDeviation())
            .fact(
                    "shares",
                    Kind.table(SHARE),
                    "of each step, the largest first",
                    part -> List.copyOf(part.budget.sharesByStep().list()))
            .finds("budget", "{title}")
            .line("contents", "what it adds up", part -> !part.title.equals(part.budget.title()), "{contents}")
            .line("limits", "allowed", "{limits}")
            .line("yield", "how often kept", "{yield}")
            .line("interval", "95 of 100", "{interval}")
            .line("worstCase", "worst case", "{worstCase}");

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

    @Override
    public Form<BudgetPart> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(budget.unit());
    }

    /** A share as text: {@code 69.4 %}. */
    static String text(VarianceShare<Length> share) {
        return Numbers.fixed(100 * share.fraction(), 1) + " %";
    }

    /** The largest shares, those of one step together, at most ten. */
    List<VarianceShare<Length>> largest() {
        return budget.sharesByStep().list().stream()
                .filter(share -> share.fraction() > 0)
                .limit(MOST_SHARES)
                .toList();
    }
}
