package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Decision;
import org.neckgeom.measure.Verdict;
import org.neckgeom.order.Operation;

/** The repairs of one reading, being collected. */
final class ReadingRepairs {

    private final Stages plan;
    private final Statement reading;
    private final List<Repair.Draft> ways = new ArrayList<>();

    private ReadingRepairs(Stages plan, Statement reading) {
        this.plan = plan;
        this.reading = reading;
    }

    /**
     * None of a reading within its limits; one that is too near a limit is read again.
     *
     * @param reading what was read, in words
     * @param verdict of it
     * @param good the step from which to start again where nothing else is left
     * @param fill adds the ways
     */
    static List<Repair> of(
            Stages plan, String reading, Verdict<?> verdict, String good, Consumer<ReadingRepairs> fill) {
        return of(plan, plan.words("reading", reading), verdict, good, fill);
    }

    static List<Repair> of(
            Stages plan, Statement reading, Verdict<?> verdict, String good, Consumer<ReadingRepairs> fill) {
        ReadingRepairs all = new ReadingRepairs(plan, reading);
        if (verdict.call() == Decision.UNDECIDED) {
            all.way(
                    RepairCode.READ_AGAIN,
                    plan.words("or-better", "Again, or with a better gauge, before anything else."));
        } else if (verdict.call() == Decision.OUTSIDE) {
            fill.accept(all);
        }
        return all.leastHarmFirst(good);
    }

    Repair.Draft way(RepairCode code, Statement how) {
        Repair.Draft draft = new Repair.Draft(plan, code, reading, how);
        ways.add(draft);
        return draft;
    }

    private List<Repair> leastHarmFirst(String good) {
        List<Repair> all = new ArrayList<>(
                ways.stream().map(Repair.Draft::done).sorted(Repair.leastHarm()).toList());
        if (all.isEmpty() || all.stream().anyMatch(Repair::isPossible)) {
            return all;
        }
        Optional<Repair.Draft> covered =
                ways.stream().filter(Repair.Draft::isUnderTheBoard).findFirst();
        if (covered.isPresent()) {
            RepairCode then = covered.get().code();
            all.add(
                    0,
                    new Repair.Draft(
                                    plan,
                                    RepairCode.TAKE_THE_BOARD_OFF,
                                    reading,
                                    plan.words("heat-then", "With heat; then: {then}.")
                                            .with("then", Kind.code(RepairCode.class), then))
                            .undoes(Operation.GLUE_FINGERBOARD, Operation.TRIM_TO_THE_FINGERBOARD)
                            .done());
        } else {
            boolean head = good.equals(Operation.CUT_SCARF);
            all.add(new Repair.Draft(
                            plan,
                            RepairCode.START_AGAIN,
                            reading,
                            plan.words(
                                            head ? "new-head" : "new-shaft",
                                            head
                                                    ? "From \"{step}\", with a new head; shaft, channel and heel block"
                                                            + " stay."
                                                    : "From \"{step}\", with a new shaft; head, heel block and board that"
                                                            + " are not glued on yet stay.")
                                    .with("step", Kind.NAME, good))
                    .done());
        }
        return all;
    }
}
