package org.neckgeom.sheet;

import java.util.List;
import org.neckgeom.plan.PlanSection.Row;

/** What a sheet says of a budget beside its drawings. */
final class Budgets {

    private Budgets() {}

    static List<Row> rows(BudgetPart part) {
        return List.of(
                new Row("allowed", part.limits().toString()),
                new Row("how often kept", part.budget().yield(part.limits()).toString()),
                new Row("worst case", part.budget().worstCase().toString()),
                new Row("root of squares", part.budget().rootSumSquare().toString()));
    }
}
