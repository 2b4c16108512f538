package org.neckgeom.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.neckgeom.fault.Refusal;
import org.neckgeom.order.AddedError;
import org.neckgeom.order.Condition;
import org.neckgeom.order.KeptOrder;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.Remedy;
import org.neckgeom.units.LengthStyle;

/** An order of work as data and back, every operation in full: it stands without the library's usual neck. */
final class OrderMap {

    private OrderMap() {}

    static DataMap of(OrderOfWork work, LengthStyle style) {
        return DataMap.empty()
                .putAll("operations", work.operations(), operation -> operation(operation, style))
                .putAll("leftOut", work.leftOut(), operation -> operation(operation, style))
                .putAll("done", work.finished(), operation -> operation(operation, style))
                .put("start", names(work.start()))
                .putAll(
                        "kept",
                        work.keptOrders(),
                        order -> DataMap.empty().put("first", order.first()).put("then", order.then()));
    }

    /** Told again in the order in which it can have come about: left out, done, left to do, kept. */
    static OrderOfWork from(DataSource data) {
        OrderOfWork work = OrderOfWork.of();
        for (Operation operation : data.all("leftOut", OrderMap::operationFrom)) {
            work = work.with(operation).without(operation.name());
        }
        for (Operation operation : data.all("done", OrderMap::operationFrom)) {
            work = work.with(operation).done(operation.name());
        }
        for (Operation operation : data.all("operations", OrderMap::operationFrom)) {
            work = work.with(operation);
        }
        for (String condition : data.texts("start")) {
            work = work.startingWith(Condition.named(condition));
        }
        for (KeptOrder order : data.all("kept", kept -> new KeptOrder(kept.text("first"), kept.text("then")))) {
            work = work.keep(order.first()).before(order.then());
        }
        return work;
    }

    private static DataMap operation(Operation operation, LengthStyle style) {
        Set<Condition> told = new LinkedHashSet<>(operation.needs());
        told.addAll(operation.blockers());
        List<DataMap> because = new ArrayList<>();
        for (Condition condition : told) {
            if (!operation.reason(condition).isEmpty()) {
                because.add(
                        DataMap.empty().put("condition", condition.name()).put("reason", operation.reason(condition)));
            }
        }
        List<DataMap> despite = new ArrayList<>();
        for (Condition condition : told) {
            if (!operation.remedies(condition).isEmpty()) {
                despite.add(DataMap.empty()
                        .put("condition", condition.name())
                        .putAll(
                                "remedies",
                                operation.remedies(condition),
                                remedy -> remedy(remedy, operation.name(), style)));
            }
        }
        return DataMap.empty()
                .put("name", operation.name())
                .put("needs", names(operation.needs()))
                .put("blockedBy", names(operation.blockers()))
                .put("takesAway", names(operation.takesAway()))
                .put("puts", names(operation.puts()))
                .putAll("because", because)
                .putAll("despite", despite)
                .put("cautions", operation.cautions());
    }

    private static List<String> names(List<Condition> conditions) {
        return conditions.stream().map(Condition::name).toList();
    }

    private static Operation operationFrom(DataSource data) {
        Operation operation = Operation.named(data.text("name"));
        for (Condition need : conditions(data, "needs")) {
            operation = operation.needs(need);
        }
        for (Condition blocker : conditions(data, "blockedBy")) {
            operation = operation.blockedBy(blocker);
        }
        for (Condition gone : conditions(data, "takesAway")) {
            operation = operation.takesAway(gone);
        }
        for (Condition left : conditions(data, "puts")) {
            operation = operation.puts(left);
        }
        for (String[] because : data.all("because", one -> new String[] {one.text("condition"), one.text("reason")})) {
            operation = operation.because(Condition.named(because[0]), because[1]);
        }
        for (Despite despite : data.all("despite", OrderMap::despiteFrom)) {
            operation = operation.despite(despite.condition(), despite.best(), despite.others());
        }
        for (String caution : data.texts("cautions")) {
            operation = operation.caution(caution);
        }
        return operation;
    }

    private record Despite(Condition condition, List<Remedy> remedies) {

        Remedy best() {
            return remedies.get(0);
        }

        Remedy[] others() {
            return remedies.subList(1, remedies.size()).toArray(Remedy[]::new);
        }
    }

    private static Despite despiteFrom(DataSource data) {
        List<Remedy> remedies = data.all("remedies", OrderMap::remedyFrom);
        if (remedies.isEmpty()) {
            throw Refusal.of("remedies", "at-least", "be 1 or more", "there were none", "");
        }
        return new Despite(Condition.named(data.text("condition")), remedies);
    }

    private static List<Condition> conditions(DataSource data, String key) {
        return data.texts(key).stream().map(Condition::named).toList();
    }

    private static DataMap remedy(Remedy remedy, String operation, LengthStyle style) {
        DataMap data = DataMap.empty().put("name", remedy.name()).put("how", remedy.how());
        remedy.addsTo(operation)
                .ifPresent(error -> data.put(
                        "adds",
                        DataMap.empty()
                                .put("name", error.name())
                                .put("way", DataSource.word(error.way()))
                                .put("spread", SpreadMap.of(error.spread().in(style)))));
        return data;
    }

    private static Remedy remedyFrom(DataSource data) {
        Remedy named = Remedy.named(data.text("name"));
        String how = data.text("how");
        Remedy remedy = how.isEmpty() ? named : named.how(how);
        return data.oneIfTold(
                        "adds",
                        error -> remedy.adding(
                                error.text("name"),
                                error.word("way", AddedError.Way.values()),
                                error.one("spread", SpreadMap::ofLength)))
                .orElse(remedy);
    }
}
