package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.neckgeom.order.OrderOfWork;

/**
 * An order of work after something has been read on the neck: what was read on is done, and what stands before it in the
 * order is taken as done.
 */
final class DoneWork {

    private final OrderOfWork left;
    private final List<String> taken;

    private DoneWork(OrderOfWork left, List<String> taken) {
        this.left = left;
        this.taken = taken;
    }

    static DoneWork of(OrderOfWork work, MeasuredNeck readings) {
        if (readings.isEmpty()) {
            return new DoneWork(work, List.of());
        }
        Map<String, String> proofs = readings.proofs();
        List<String> steps = steps(work);
        int last = -1;
        for (int i = 0; i < steps.size(); i++) {
            last = proofs.containsKey(steps.get(i)) ? i : last;
        }
        OrderOfWork left = work;
        List<String> taken = new ArrayList<>();
        for (String name : steps.subList(0, last + 1)) {
            left = left.done(name);
            if (!proofs.containsKey(name)) {
                taken.add(name);
            }
        }
        return new DoneWork(left, List.copyOf(taken));
    }

    /** In the order of the plan; none where no order is possible as told: then nothing is taken as done. */
    private static List<String> steps(OrderOfWork work) {
        return work.plan().steps().stream().map(step -> step.operation().name()).toList();
    }

    /** The order of work of what is left. */
    OrderOfWork left() {
        return left;
    }

    /** The operations taken as done although nothing was read on them. */
    Set<String> taken() {
        return Set.copyOf(taken);
    }
}
