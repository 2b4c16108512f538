package org.neckgeom.page;

import java.util.Arrays;
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
import org.neckgeom.plan.BudgetCode;
import org.neckgeom.plan.Job;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/**
 * A budget with its limits, if it has limits, as a sheet shows it.
 *
 * @param title the result's name in a maker's words
 * @param budget the errors that add up
 * @param limits the tolerance limits, if given
 */
record BudgetPart(String title, Budget<Length> budget, Optional<Limits<Length>> limits) implements Answer {

    private static final Form<VarianceShare<?>> SHARE = Form.<VarianceShare<?>>of("share-of-a-step")
            .fact("step", Kind.NAME, "the step", VarianceShare::name)
            .fact("fraction", Kind.RATIO, "of the variance", VarianceShare::fraction);

    private static final Form<BudgetPart> FORM = Form.<BudgetPart>of("budget-of-the-neck")
            .fact("title", Kind.NAME, "the result's name", BudgetPart::title)
            .fact("contents", Kind.NAME, "the sum of the errors", part -> part.budget.title())
            .factIfAny("limits", Kind.LIMITS, "tolerance limits", BudgetPart::limits)
            .factIfAny(
                    "yield",
                    Kind.PROBABILITY,
                    "of keeping the limits",
                    part -> part.limits.map(
                            allowed -> part.budget.yield(allowed).probability()))
            .fact("interval", Kind.INTERVAL, "95 % coverage interval of the results", BudgetPart::usual)
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
            .line("contents", "result", part -> !part.title.equals(part.budget.title()), "{contents}")
            .line("limits", "limit", "{limits}")
            .line("yield", "yield", "{yield}")
            .line("interval", "95 % interval", "{interval}")
            .line("worstCase", "worst case", "{worstCase}");

    private static final int MOST_SHARES = 10;

    /** The budgets of a plan; the string line at the bridge has the job's limit. */
    static List<BudgetPart> of(Job job) {
        return Arrays.stream(BudgetCode.values()).map(code -> of(job, code)).toList();
    }

    private static BudgetPart of(Job job, BudgetCode code) {
        String words = code.toString();
        return new BudgetPart(
                Character.toUpperCase(words.charAt(0)) + words.substring(1),
                job.plan().budget(code).in(job.style().unit()),
                code == BudgetCode.STRING_LINE ? Optional.of(Limits.within(job.bridgeLimit())) : Optional.empty());
    }

    /** The 95 % coverage interval, as many results below as above. */
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
