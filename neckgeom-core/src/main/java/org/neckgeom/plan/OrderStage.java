package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.neckgeom.heel.HeelBlocks;
import org.neckgeom.kernel.Once;
import org.neckgeom.neck.Channel;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.OrderPlan;

/**
 * The order of work that this neck asks for: no step of the usual neck for a part that this one lacks, what was read is
 * done, and what comes before it in the order is taken as done. A maker's own operations stay as given.
 */
final class OrderStage {

    private final Inputs job;
    private final ShapeStage shape;
    private final Supplier<Done> done = new Once<>(this::doneSoFar);
    private final Supplier<OrderPlan> plan = new Once<>(() -> left().plan());

    /** What is left to do, and what is taken as done although nothing was read on it. */
    private record Done(OrderOfWork left, Set<String> taken) {}

    OrderStage(Inputs job, ShapeStage shape) {
        this.job = job;
        this.shape = shape;
    }

    /** The order of work of what is left. */
    OrderOfWork left() {
        return done.get().left();
    }

    /** What is left, each operation in its place. */
    OrderPlan plan() {
        return plan.get();
    }

    /** The operations taken as done although nothing was read on them. */
    Set<String> taken() {
        return done.get().taken();
    }

    /** True for an operation that was given or read as done, and for what comes before one that was read. */
    boolean isDone(String operation) {
        String own = ownName(operation);
        return left().finished().stream().anyMatch(done -> done.name().equals(own));
    }

    /** True for an operation that is done before the channel is cut: before it was, where it is cut already. */
    boolean isDoneAtTheChannel(String operation) {
        String own = ownName(operation);
        return left().finished().stream()
                .takeWhile(done -> !done.cutsTheChannel())
                .anyMatch(done -> done.name().equals(own));
    }

    /** What the usual neck's channel and rod are called on a neck with a locating groove or a bar. */
    private String ownName(String usual) {
        Channel channel = job.channel();
        if (usual.equals(Operation.CUT_ROD_CHANNEL) && channel.isLocatingGroove()) {
            return Operation.CUT_LOCATING_GROOVE;
        }
        if (channel.bar().isEmpty()) {
            return usual;
        }
        return switch (usual) {
            case Operation.CUT_ROD_CHANNEL -> Operation.CUT_BAR_CHANNEL;
            case Operation.LAY_IN_THE_ROD -> Operation.GLUE_IN_THE_BAR;
            default -> usual;
        };
    }

    private OrderOfWork whole() {
        OrderOfWork usual = forThisNeck(OrderOfWork.forNeck(job.neck()));
        return job.order().map(changes -> forThisNeck(changes.changed(usual))).orElse(usual);
    }

    private OrderOfWork forThisNeck(OrderOfWork some) {
        OrderOfWork order = some;
        if (shape.isHeadInOnePiece()) {
            order = order.lacking(Operation.CUT_SCARF);
            order = shape.isHeadSawnFromTheBlank() ? order.headSawnOut() : order.lacking(Operation.GLUE_HEAD);
        }
        if (job.neck().head().isPresent() && !shape.hasEars()) {
            order = order.lacking(Operation.GLUE_WINGS);
        }
        if (shape.heelBlocks()
                .map(HeelBlocks::count)
                .filter(count -> count == 0)
                .isPresent()) {
            order = order.lacking(Operation.GLUE_HEEL_BLOCK);
        }
        List<String> names = order.operations().stream().map(Operation::name).toList();
        String channel = ownName(Operation.CUT_ROD_CHANNEL);
        for (String first : shape.beforeTheChannel()) {
            if (names.containsAll(List.of(first, channel))) {
                order = order.keep(first).before(channel);
            }
        }
        return order;
    }

    private Done doneSoFar() {
        OrderOfWork work = whole();
        if (job.measured().isEmpty()) {
            return new Done(work, Set.of());
        }
        Set<String> proofs = job.measured().proofs().stream().map(this::ownName).collect(Collectors.toSet());
        // None where no order is possible as given: then nothing is taken as done.
        List<String> steps = work.plan().steps().stream()
                .map(step -> step.operation().name())
                .toList();
        // A strung neck is being set up: what comes before is done, the set-up is not.
        int last = job.measured().stiffness().isStrung() ? Math.max(-1, steps.indexOf(Operation.SET_UP) - 1) : -1;
        for (int i = 0; i < steps.size(); i++) {
            last = proofs.contains(steps.get(i)) ? Math.max(last, i) : last;
        }
        OrderOfWork left = work;
        List<String> taken = new ArrayList<>();
        for (String name : steps.subList(0, last + 1)) {
            left = left.done(name);
            if (!proofs.contains(name)) {
                taken.add(name);
            }
        }
        return new Done(left, Set.copyOf(taken));
    }
}
