package org.neckgeom.page;

import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.BudgetCode;
import org.neckgeom.plan.Job;
import org.neckgeom.state.Known;
import org.neckgeom.state.Share;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;

/**
 * What is known of a deviation, with its limits, as a sheet shows it.
 *
 * @param title the deviation's name in a maker's words
 * @param known what is known of it
 * @param limits the tolerance limits
 */
record BudgetPart(String title, Known known, Limits<Length> limits) implements Answer {

    private static final Form<Share> SHARE = Form.<Share>of("share-of-a-step")
            .fact("step", Kind.NAME, "the step", Share::name)
            .fact("fraction", Kind.RATIO, "of the variance; less than 0 where it offsets others", Share::fraction);

    private static final Form<BudgetPart> FORM = Form.<BudgetPart>of("budget-of-the-neck")
            .fact("title", Kind.NAME, "the deviation's name", BudgetPart::title)
            .fact("contents", Kind.NAME, "the deviation", part -> part.known.title())
            .fact("limits", Kind.LIMITS, "tolerance limits", BudgetPart::limits)
            .fact("yield", Kind.CHANCE, "of keeping the limits", part -> part.known.chance(part.limits))
            .fact("interval", Kind.INTERVAL, "95 % coverage interval", BudgetPart::usual)
            .fact(
                    "worstCase",
                    Kind.INTERVAL,
                    "all steps as far off as they can be",
                    part -> part.budget().worstCase().range())
            .fact(
                    "standardDeviation",
                    Kind.AMOUNT,
                    "with the spreads as given",
                    part -> part.known.estimate().standardUncertainty())
            .fact("shares", Kind.table(SHARE), "of each step, the largest first", part -> part.known.shares())
            .finds("budget", "{title}")
            .line("limits", "limit", "{limits}")
            .line("yield", "yield", "{yield}")
            .line("interval", "95 % interval", "{interval}")
            .line("worstCase", "worst case", "{worstCase}");

    private static final int MOST_SHARES = 10;
    /** The deviations of a plan. */
    static List<BudgetPart> of(Job job) {
        return Arrays.stream(BudgetCode.values()).map(code -> of(job, code)).toList();
    }

    private static BudgetPart of(Job job, BudgetCode code) {
        String words = code.toString();
        return new BudgetPart(
                Character.toUpperCase(words.charAt(0)) + words.substring(1),
                job.plan().known(code),
                job.plan().requirement(code).limits());
    }

    Budget<Length> budget() {
        return known.budget();
    }

    /** The 95 % coverage interval about the estimate. */
    Interval<Length> usual() {
        return known.interval(Known.USUAL);
    }

    @Override
    public Form<BudgetPart> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return known.style();
    }

    /** A share as text: {@code 69.4 %}. */
    static String text(Share share) {
        return Numbers.fixed(100 * share.fraction(), 1) + " %";
    }

    /** The largest shares, those of one step together, at most ten. */
    List<Share> largest() {
        return known.shares().stream()
                .filter(share -> share.fraction() > 0)
                .limit(MOST_SHARES)
                .toList();
    }
}
