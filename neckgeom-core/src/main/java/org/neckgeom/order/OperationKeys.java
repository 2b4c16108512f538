package org.neckgeom.order;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.order.AddedError.Way;
import org.neckgeom.shop.Caution;
import org.neckgeom.table.Key;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;

/** The keys of a maker's own operation: its needs, its obstacles and the conditions it leaves. */
final class OperationKeys {

    private static final int MOST = OrderOfWork.MOST_OPERATIONS;

    /** A reason for a condition, or remedies where it is broken. */
    private record Because(Condition condition, String reason) {}

    private record Despite(Condition condition, List<Remedy> remedies) {}

    private static final Type<Condition> CONDITION = Types.named(Condition::named, Condition::name);
    private static final Type<List<Condition>> CONDITIONS = Types.list(CONDITION, 1, MOST);

    private static final Type<Caution> CAUTION = Types.named(Caution::given, Caution::written);

    private static final Table<Remedy> REMEDY =
            Table.of("", "a way round a broken condition", OperationKeys::remedy, OperationKeys::values);
    private static final Key<Remedy, String> REMEDY_NAME = REMEDY.needed("name", Types.TEXT, "of the remedy");
    private static final Key<Remedy, String> HOW = REMEDY.optional("how", Types.TEXT, "it is done");
    private static final Key<Remedy, String> ERROR =
            REMEDY.optional("adds", Types.TEXT, "what the error it adds is of; none when left out");
    private static final Key<Remedy, Way> WAY =
            REMEDY.optional("way", Types.words(Way.class, Way::toString), "that error works in");
    private static final Key<Remedy, ErrorDistribution<Length>> SPREAD =
            REMEDY.optional("spread", Types.group(Workmanship.STEP), "of that error");

    static {
        REMEDY.together(ERROR, WAY, SPREAD);
    }

    private static final Table<Because> BECAUSE = Table.of(
            "",
            "the reason for a condition",
            given -> new Because(given.at(OperationKeys.REASON_OF), given.at(OperationKeys.REASON)),
            because -> OperationKeys.BECAUSE
                    .values()
                    .with(OperationKeys.REASON_OF, because.condition())
                    .with(OperationKeys.REASON, because.reason()));
    private static final Key<Because, Condition> REASON_OF = BECAUSE.needed("condition", CONDITION, "which");
    private static final Key<Because, String> REASON = BECAUSE.needed("reason", Types.TEXT, "why it matters");

    private static final Table<Despite> DESPITE = Table.of(
            "",
            "remedies where a condition is broken",
            given -> new Despite(given.at(OperationKeys.REMEDY_OF), given.at(OperationKeys.REMEDIES)),
            despite -> OperationKeys.DESPITE
                    .values()
                    .with(OperationKeys.REMEDY_OF, despite.condition())
                    .with(OperationKeys.REMEDIES, despite.remedies()));
    private static final Key<Despite, Condition> REMEDY_OF = DESPITE.needed("condition", CONDITION, "which");
    private static final Key<Despite, List<Remedy>> REMEDIES =
            DESPITE.needed("remedies", Types.list(Types.group(REMEDY), 1, MOST), "the best one first");

    static final Table<Operation> OPERATION =
            Table.of("", "an operation", OperationKeys::operation, OperationKeys::values);
    private static final Key<Operation, String> NAME = OPERATION.needed("name", Types.TEXT, "of the operation");
    private static final Key<Operation, List<Condition>> NEEDS =
            OPERATION.optional("needs", CONDITIONS, "what must hold before it");
    private static final Key<Operation, List<Condition>> BLOCKED_BY =
            OPERATION.optional("blocked by", CONDITIONS, "what must not hold before it");
    private static final Key<Operation, List<Condition>> TAKES_AWAY =
            OPERATION.optional("takes away", CONDITIONS, "what no longer holds after it");
    private static final Key<Operation, List<Condition>> PUTS =
            OPERATION.optional("puts", CONDITIONS, "what holds after it");
    private static final Key<Operation, List<Because>> REASONS =
            OPERATION.optional("because", Types.list(Types.group(BECAUSE), 1, MOST), "reasons for its conditions");
    private static final Key<Operation, List<Despite>> DESPITES = OPERATION.optional(
            "despite", Types.list(Types.group(DESPITE), 1, MOST), "remedies where a condition is broken");
    private static final Key<Operation, List<Caution>> CAUTIONS = OPERATION.optional(
            "cautions", Types.list(CAUTION, 1, MOST), "before it is done: codes such as BAND_SAW, or sentences");

    static {
        BECAUSE.moved(OrderNames.of("condition"));
        DESPITE.moved(OrderNames.of("condition"));
        OPERATION.moved(OrderNames.of("name")
                .then(OrderNames.items("needs"))
                .then(OrderNames.items("blocked by"))
                .then(OrderNames.items("takes away"))
                .then(OrderNames.items("puts")));
    }

    private OperationKeys() {}

    private static Remedy remedy(Values<Remedy> given) {
        Remedy named = Remedy.named(given.at(REMEDY_NAME));
        Remedy remedy = given.has(HOW) ? named.how(given.at(HOW)) : named;
        return given.has(ERROR) ? remedy.adding(given.at(ERROR), given.at(WAY), given.at(SPREAD)) : remedy;
    }

    private static Values<Remedy> values(Remedy remedy) {
        Values<Remedy> values = REMEDY.values().with(REMEDY_NAME, remedy.name());
        if (!remedy.how().isEmpty()) {
            values = values.with(HOW, remedy.how());
        }
        Optional<AddedError> error = remedy.addsTo("any");
        return error.isEmpty()
                ? values
                : values.with(ERROR, error.get().name())
                        .with(WAY, error.get().way())
                        .with(SPREAD, error.get().spread());
    }

    private static Operation operation(Values<Operation> given) {
        Operation named = Operation.named(given.at(NAME));
        Operation needing = each(named, given, NEEDS, (operation, need) -> operation.needs(need));
        Operation blocked = each(needing, given, BLOCKED_BY, (operation, blocker) -> operation.blockedBy(blocker));
        Operation taking = each(blocked, given, TAKES_AWAY, (operation, gone) -> operation.takesAway(gone));
        Operation leaving = each(taking, given, PUTS, (operation, left) -> operation.puts(left));
        Operation reasoned =
                each(leaving, given, REASONS, (operation, one) -> operation.because(one.condition, one.reason));
        Operation remedied = each(reasoned, given, DESPITES, OperationKeys::despite);
        return each(remedied, given, CAUTIONS, (operation, caution) -> operation.caution(caution));
    }

    private static <V> Operation each(
            Operation start,
            Values<Operation> given,
            Key<Operation, List<V>> key,
            BiFunction<Operation, V, Operation> with) {
        Operation operation = start;
        for (V one : given.find(key).orElse(List.of())) {
            operation = with.apply(operation, one);
        }
        return operation;
    }

    private static Operation despite(Operation operation, Despite despite) {
        List<Remedy> all = despite.remedies();
        Remedy[] others = all.subList(1, all.size()).toArray(Remedy[]::new);
        return operation.despite(despite.condition(), all.get(0), others);
    }

    private static Values<Operation> values(Operation operation) {
        Set<Condition> both = new LinkedHashSet<>(operation.needs());
        both.addAll(operation.blockers());
        List<Because> reasons = new ArrayList<>();
        List<Despite> despites = new ArrayList<>();
        for (Condition condition : both) {
            if (!operation.reason(condition).isEmpty()) {
                reasons.add(new Because(condition, operation.reason(condition)));
            }
            if (!operation.remedies(condition).isEmpty()) {
                despites.add(new Despite(condition, operation.remedies(condition)));
            }
        }
        Values<Operation> values = OPERATION.values().with(NAME, operation.name());
        values = ifAny(values, NEEDS, operation.needs());
        values = ifAny(values, BLOCKED_BY, operation.blockers());
        values = ifAny(values, TAKES_AWAY, operation.takesAway());
        values = ifAny(values, PUTS, operation.puts());
        values = ifAny(values, REASONS, reasons);
        values = ifAny(values, DESPITES, despites);
        return ifAny(values, CAUTIONS, operation.cautions());
    }

    private static <V> Values<Operation> ifAny(Values<Operation> values, Key<Operation, List<V>> key, List<V> list) {
        return list.isEmpty() ? values : values.with(key, list);
    }
}
