package org.neckgeom.plan;

import static org.neckgeom.plan.NeckFeature.FINGERBOARD_OFFSET;
import static org.neckgeom.plan.NeckFeature.HEIGHT_AT_BRIDGE;
import static org.neckgeom.plan.NeckFeature.OFFSET_AT_BRIDGE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.NeckTree;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;

/**
 * The tolerance stack-ups: what was read on the way replaces its guess, what was read at the bridge replaces the whole
 * budget.
 */
final class BudgetStage {

    private final Inputs job;
    private final SlotStage slot;
    private final Supplier<List<Budget<Length>>> budgets = new Once<>(this::stackUps);

    BudgetStage(Inputs job, SlotStage slot) {
        this.job = job;
        this.slot = slot;
    }

    /** As given, else common practice, and the channel's centring as it is known now. */
    Workmanship workmanship() {
        return job.workmanship()
                .centring(ErrorDistribution.of(slot.place().start().estimate()));
    }

    Budget<Length> budget(BudgetCode which) {
        return budgets.get().get(which.ordinal());
    }

    /** The same string line, located on an edge instead of the channel. */
    Budget<Length> stringLineFromAnEdge() {
        return NeckTree.fromAnEdge(job.neck()).with(workmanship()).stringLineAtBridge();
    }

    /** In the order of {@link BudgetCode}. */
    private List<Budget<Length>> stackUps() {
        NeckTree tree = NeckTree.fromTheChannel(job.neck()).with(workmanship());
        MeasuredNeck read = job.measured();
        if (read.has(FINGERBOARD_OFFSET)) {
            tree = tree.measured("fingerboard", read.of(FINGERBOARD_OFFSET).orElseThrow());
        }
        List<Budget<Length>> budgets = new ArrayList<>(tree.budgets());
        int line = BudgetCode.STRING_LINE.ordinal();
        read.of(OFFSET_AT_BRIDGE).ifPresent(aside -> budgets.set(line, asRead(budgets.get(line), aside)));
        int height = BudgetCode.PROJECTION_HEIGHT.ordinal();
        read.of(HEIGHT_AT_BRIDGE).ifPresent(high -> budgets.set(height, asRead(budgets.get(height), high)));
        return List.copyOf(budgets);
    }

    private static Budget<Length> asRead(Budget<Length> guess, Estimate<Length> reading) {
        return Budget.of(guess.title(), guess.unit()).with("reading at the bridge", ErrorDistribution.of(reading));
    }
}
