package org.neckgeom.page;

import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.BudgetKeys;
import org.neckgeom.budget.Distribution;
import org.neckgeom.measure.Interval;
import org.neckgeom.text.Report;
import org.neckgeom.units.ShopUnits;

/**
 * A budget as data for other programs: JSON with a unit beside every figure. Immutable.
 *
 * <pre>
 * format        "neckgeom budget"
 * version       1
 * title         what adds up
 * unit          the unit the result is read in
 * contributors  name, step, sensitivity (in house units: mm, rad, N, MPa, ...), and spread with its unit
 * answers       standardDeviation, low95, high95; not read back, may be left out
 * </pre>
 *
 * <p>A spread is its {@code law}, its size ({@code standardDeviation}, {@code halfWidth}, {@code halfBase} and
 * {@code halfTop}, or samples {@code fromTheirMean}), its {@code shift}, and {@code degreesOfFreedom} where few. Quantities
 * and refusals are those of {@link PlanData}. A note that a ready-made budget prints under its title is not part of it.
 */
public final class BudgetData {

    static final Document<Budget<?>> DOCUMENT = new Document<>("neckgeom budget", BudgetKeys.TABLE);

    private final Budget<?> budget;

    private BudgetData(Budget<?> budget) {
        this.budget = budget;
    }

    /**
     * {@return the data of a budget}
     *
     * @param budget the budget
     */
    public static BudgetData of(Budget<?> budget) {
        return new BudgetData(Objects.requireNonNull(budget, "budget"));
    }

    /**
     * {@return the budget that a JSON text written by {@link #toJson} holds; a budget equal to the one it was written
     * from, whose JSON is the same text}
     *
     * @param <Q> the kind of the result
     * @param json the text
     * @param kind the kind of the result, such as {@code Length.class}
     * @throws IllegalArgumentException with the place and the rule, if the text is not JSON, not of this format, or of a
     *     result of another kind
     */
    public static <Q extends Quantity<Q>> Budget<Q> budgetFrom(String json, Class<Q> kind) {
        return DOCUMENT.read(json).ofKind(kind);
    }

    /** {@return the budget as JSON; the text in UTF-8, ending in a line feed} */
    public String toJson() {
        return DOCUMENT.json(budget, answers(budget));
    }

    private static <Q extends Quantity<Q>> Map<String, Object> answers(Budget<Q> budget) {
        Distribution<Q> law = budget.distribution();
        Interval<Q> usual = law.interval(ShopUnits.percent(95));
        return DataMap.empty()
                .answer("standardDeviation", law.standardDeviation())
                .answer("low95", usual.low())
                .answer("high95", usual.high())
                .map();
    }

    /** True for the data of an equal budget. */
    @Override
    public boolean equals(Object other) {
        return other instanceof BudgetData that && budget.equals(that.budget);
    }

    @Override
    public int hashCode() {
        return budget.hashCode();
    }

    /** Returns whose data it is and how to have it. */
    @Override
    public String toString() {
        return Report.titled("Data of the budget: " + budget.title())
                .note("toJson() for the whole of it")
                .toString();
    }
}
