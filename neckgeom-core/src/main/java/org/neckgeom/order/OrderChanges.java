package org.neckgeom.order;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/**
 * The changes of one neck's order of work from the usual one: operations left out, operations done, orders to keep.
 * Immutable.
 */
public final class OrderChanges extends Noun<OrderChanges> {

    private static final int MOST = OrderOfWork.MOST_OPERATIONS;
    private static final Type<List<String>> NAMES = Types.list(Types.TEXT, 1, MOST);

    /** Its keys. */
    public static final Table<OrderChanges> TABLE =
            Table.of("", "the order of work", OrderChanges::new).printedBy(OrderChanges::sentences);

    private static final Table<KeptOrder> KEPT = Table.of(
            "",
            "an order that must be kept",
            given -> new KeptOrder(given.at(OrderChanges.FIRST), given.at(OrderChanges.THEN)),
            kept -> OrderChanges.KEPT
                    .values()
                    .with(OrderChanges.FIRST, kept.first())
                    .with(OrderChanges.THEN, kept.then()));
    private static final Key<KeptOrder, String> FIRST = KEPT.needed("first", Types.TEXT, "operation that comes first");
    private static final Key<KeptOrder, String> THEN = KEPT.needed("then", Types.TEXT, "operation that comes after it");

    private static final Key<OrderChanges, List<String>> DONE =
            TABLE.optional("done", NAMES, "operations done so far, by the names in the plan");
    private static final Key<OrderChanges, List<String>> WITHOUT =
            TABLE.optional("without", NAMES, "operations that this neck does not need");
    private static final Key<OrderChanges, List<KeptOrder>> KEEP = TABLE.optional(
            "before",
            Types.list(Types.group(KEPT), 1, MOST * MOST),
            "precedence constraints, even against the usual order");
    private static final Key<OrderChanges, List<Operation>> OPERATIONS = TABLE.optional(
            "operations",
            Types.list(Types.group(OperationKeys.OPERATION), 1, 10 * MOST),
            "all operations of this neck, instead of the usual ones");
    private static final Key<OrderChanges, List<String>> START =
            TABLE.optional("start", Types.list(Types.TEXT, 1, MOST * MOST), "conditions that hold from the start");

    static {
        TABLE.moved(Moves.none()
                .and("keep", "before")
                .then(OrderNames.items("done"))
                .then(OrderNames.items("without"))
                .then(OrderNames.items("start")));
        KEPT.moved(OrderNames.of("first").then(OrderNames.of("then")));
    }

    private OrderChanges(Values<OrderChanges> values) {
        super(values);
    }

    /** {@return no changes} */
    public static OrderChanges none() {
        return new OrderChanges(TABLE.values());
    }

    /**
     * {@return what makes an order of work, even against the usual one; what gives it back}
     *
     * @param whole the order
     */
    public static OrderChanges to(OrderOfWork whole) {
        List<Operation> all =
                new ArrayList<>(Objects.requireNonNull(whole, "order").leftOut());
        all.addAll(whole.finished());
        all.addAll(whole.operations());
        Values<OrderChanges> values = TABLE.values();
        values = all.isEmpty() ? values : values.with(OPERATIONS, List.copyOf(all));
        values = names(values, WITHOUT, whole.leftOut());
        values = names(values, DONE, whole.finished());
        List<String> start = whole.start().stream().map(Condition::name).toList();
        values = start.isEmpty() ? values : values.with(START, start);
        List<KeptOrder> kept = whole.keptOrders();
        return new OrderChanges(kept.isEmpty() ? values : values.with(KEEP, kept));
    }

    private static Values<OrderChanges> names(
            Values<OrderChanges> values, Key<OrderChanges, List<String>> key, List<Operation> operations) {
        return operations.isEmpty()
                ? values
                : values.with(key, operations.stream().map(Operation::name).toList());
    }

    /** {@return the operations given as done, by their names; in the order given} */
    public List<String> done() {
        return values().find(DONE).orElse(List.of());
    }

    /**
     * {@return these changes with operations done, after those done so far}
     *
     * @param names of the operations, in the order done; those done already are passed over
     */
    public OrderChanges done(List<String> names) {
        Set<String> all = new LinkedHashSet<>(done());
        all.addAll(Names.all(names, "operation"));
        return all.isEmpty() ? this : new OrderChanges(values().with(DONE, List.copyOf(all)));
    }

    /**
     * {@return these changes with an operation not done}
     *
     * @param name of the operation; one that is not given as done changes nothing
     */
    public OrderChanges undone(String name) {
        List<String> left = new ArrayList<>(done());
        boolean isGone = left.remove(Objects.requireNonNull(name, "name"));
        if (!isGone) {
            return this;
        }
        return new OrderChanges(left.isEmpty() ? values().without(DONE) : values().with(DONE, List.copyOf(left)));
    }

    /**
     * {@return an order of work with these changes}
     *
     * @param usual what holds without them
     * @throws IllegalArgumentException if an operation is named that there is not, or orders contradict each other
     */
    public OrderOfWork changed(OrderOfWork usual) {
        OrderOfWork work = values().has(OPERATIONS) ? OrderOfWork.of() : Objects.requireNonNull(usual, "order");
        List<String> without = values().find(WITHOUT).orElse(List.of());
        List<String> done = values().find(DONE).orElse(List.of());
        for (Operation operation : values().find(OPERATIONS).orElse(List.of())) {
            work = work.with(operation);
            // At once, so that no more are waiting at a time than there may be.
            work = without.contains(operation.name()) ? work.without(operation.name()) : work;
            work = done.contains(operation.name()) ? work.done(operation.name()) : work;
        }
        for (String name : without) {
            work = work.without(name);
        }
        for (String condition : values().find(START).orElse(List.of())) {
            work = work.startingWith(Condition.named(condition));
        }
        if (values().has(OPERATIONS)) {
            return keeping(work);
        }
        // First what is kept: an operation that is done is none that an order could name.
        work = keeping(work);
        for (String name : done) {
            work = work.done(name);
        }
        return work;
    }

    private OrderOfWork keeping(OrderOfWork some) {
        OrderOfWork work = some;
        for (KeptOrder kept : values().find(KEEP).orElse(List.of())) {
            work = work.keep(kept.first()).before(kept.then());
        }
        return work;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.MILLIMETRES;
    }

    private static Form<OrderChanges> sentences() {
        return TABLE.facts("order-changes", DONE, WITHOUT)
                .factIfAny(
                        "done",
                        Operation.NAMES,
                        DONE.about(),
                        changes -> changes.values().find(DONE))
                .factIfAny(
                        "without",
                        Operation.NAMES,
                        WITHOUT.about(),
                        changes -> changes.values().find(WITHOUT))
                .finds("order-changes", "Changes of the order of work")
                .line("done", "done", "{done}")
                .line("without", "without", "{without}");
    }
}
