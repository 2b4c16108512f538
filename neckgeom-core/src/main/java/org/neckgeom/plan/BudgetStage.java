package org.neckgeom.plan;

import static org.neckgeom.plan.NeckFeature.FINGERBOARD_OFFSET;
import static org.neckgeom.plan.NeckFeature.HEIGHT_AT_BRIDGE;
import static org.neckgeom.plan.NeckFeature.OFFSET_AT_BRIDGE;

import java.util.EnumMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
    private final Supplier<Map<BudgetCode, Budget<Length>>> budgets = new Once<>(this::stackUps);

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
        return Objects.requireNonNull(budgets.get().get(which));
    }

    /** The same string line, located on an edge instead of the channel. */
    Budget<Length> stringLineFromAnEdge() {
        return NeckTree.fromAnEdge(job.neck()).with(workmanship()).stringLineAtBridge();
    }

    private Map<BudgetCode, Budget<Length>> stackUps() {
        NeckTree tree = NeckTree.fromTheChannel(job.neck()).with(workmanship());
        MeasuredNeck read = job.measured();
        if (read.has(FINGERBOARD_OFFSET)) {
            tree = tree.measured("fingerboard", read.of(FINGERBOARD_OFFSET).orElseThrow());
        }
        Map<BudgetCode, Budget<Length>> budgets = new EnumMap<>(BudgetCode.class);
        Iterator<Budget<Length>> four = tree.budgets().iterator();
        for (BudgetCode code : BudgetCode.values()) {
            Budget<Length> guess = four.next();
            Optional<Estimate<Length>> reading = switch (code) {
                case STRING_LINE -> read.of(OFFSET_AT_BRIDGE);
                case PROJECTION_HEIGHT -> read.of(HEIGHT_AT_BRIDGE);
                default -> Optional.empty();
            };
            budgets.put(code, reading.map(seen -> asRead(guess, seen)).orElse(guess));
        }
        return budgets;
    }

    private static Budget<Length> asRead(Budget<Length> guess, Estimate<Length> reading) {
        return Budget.of(guess.title(), guess.unit()).with("reading at the bridge", ErrorDistribution.of(reading));
    }
}
