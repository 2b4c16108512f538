package org.neckgeom.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/**
 * The order of work: the operations of a neck, those already done, and the orders that the maker must keep. {@link
 * #plan()} answers with the steps in order, or with the conflicts.
 *
 * <pre>
 * OrderOfWork.forNeck().
 *     keep("glue wings").before("cut rod channel").
 *     plan()
 * </pre>
 *
 * <p>The usual neck is common practice: a scarfed head with wings (ears) and veneer, a stacked heel, a truss rod under
 * the fingerboard, its channel cut face down with an edge along a fence. The order in which the operations are given is
 * the usual order; the plan keeps to it as far as the needs allow.
 *
 * <p>At most {@link #MOST_OPERATIONS} operations. Errors: an unknown or a repeated name, or an order that contradicts
 * work already done, throws {@link org.neckgeom.fault.Refusal} (an {@code IllegalArgumentException}). An order with
 * conflicts is an answer, not an exception. Immutable.
 *
 * @see OrderPlan
 * @see Remedy
 */
public final class OrderOfWork extends ValueAnswer {

    private static final Form<OrderOfWork> FORM = Form.<OrderOfWork>of("order-of-work")
            .fact("count", Kind.WHOLE, "operations left to do", work -> work.operations.size())
            .finds("not-ordered", "Order of work: {count} operations to put in order")
            .fact("operations", Operation.NAMES, "in their usual order", work -> named(work.operations))
            .phrase("names", "{operations}")
            .line("operations", "operations", "{names}")
            .row("done", "done", Operation.NAMES, "in the order done", work -> named(work.done))
            .row("kept", "kept", Kind.shortList(Kind.answer(KeptOrder.FORM)), "by the maker", work -> work.kept)
            .note("ask", "ask for .plan()");

    /** The most operations one order of work can have. */
    public static final int MOST_OPERATIONS = 60;

    private final List<Operation> operations;
    private final List<Operation> dropped;
    private final List<Operation> done;
    private final Set<Condition> start;
    private final List<KeptOrder> kept;

    private OrderOfWork(
            List<Operation> operations,
            List<Operation> dropped,
            List<Operation> done,
            Set<Condition> start,
            List<KeptOrder> kept) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.operations = List.copyOf(operations);
        this.dropped = List.copyOf(dropped);
        this.done = List.copyOf(done);
        // By name, so that it does not matter in which order they were given.
        Set<Condition> byName = new TreeSet<>(Comparator.comparing(Condition::name));
        byName.addAll(start);
        this.start = Collections.unmodifiableSet(byName);
        this.kept = List.copyOf(kept);
    }

    /** {@return the usual neck's operations (common practice); the order of work} */
    public static OrderOfWork forNeck() {
        return new OrderOfWork(UsualNeck.operations(), List.of(), List.of(), Set.of(), List.of());
    }

    /**
     * {@return the usual neck's operations without those that a design has no use for: rod and channel where it has no
     * channel; a locating groove in the place of the channel, a bar glued in in the place of the rod, two bars beside
     * it; strips glued up, slots cut, a string anchor fitted where it has them; scarf and head piece where its head is not angled, veneer and back strap where its head has none; the
     * order of work} A head that is not given is taken as usual.
     *
     * @param design the neck
     */
    public static OrderOfWork forNeck(Neck design) {
        OrderOfWork work = forNeck();
        if (Objects.requireNonNull(design, "design").channel().isEmpty()) {
            work = work.without(Operation.CUT_ROD_CHANNEL).without(Operation.LAY_IN_THE_ROD);
        }
        work = work.reinforced(design);
        if (design.stringAnchor().isPresent()) {
            for (String ofAHead : OF_A_HEAD) {
                work = work.without(ofAHead);
            }
            work = work.before(Operation.SET_UP, UsualNeck.anchor());
            work = work.replacing(UsualNeck.setUpOf(work.operation(Operation.SET_UP)));
        }
        if (!design.strips().isEmpty()) {
            work = work.before(Operation.REST_THE_STOCK, UsualNeck.strips()).replacing(UsualNeck.restOfTheStack());
        }
        if (design.head().filter(Head::hasSlots).isPresent()) {
            work = work.before(Operation.TAPER_THE_SIDES, UsualNeck.headSlots());
        }
        if (design.head().isPresent()) {
            if (design.head().get().angleRad() == 0) {
                work = work.without(Operation.CUT_SCARF).without(Operation.GLUE_HEAD);
            }
            if (design.head().get().veneerMm() == 0) {
                work = work.without(Operation.GLUE_HEAD_VENEER);
            }
            if (design.head().get().backVeneerMm() == 0) {
                work = work.without(Operation.GLUE_BACK_STRAP);
            }
        }
        return work;
    }

    /**
     * {@return an order of work of the maker's own operations only}
     *
     * @param operations in their usual order, names all different
     */
    public static OrderOfWork of(Operation... operations) {
        OrderOfWork work = new OrderOfWork(List.of(), List.of(), List.of(), Set.of(), List.of());
        for (Operation operation : Objects.requireNonNull(operations, "operations")) {
            work = work.with(operation);
        }
        return work;
    }

    /**
     * {@return this order of work with one more operation} Where nothing asks for it earlier it comes last.
     *
     * @param operation its name not yet taken
     */
    public OrderOfWork with(Operation operation) {
        if (exactly(Objects.requireNonNull(operation, "operation").name()).isPresent()
                || done.stream().anyMatch(other -> isNamed(other, operation.name()))) {
            throw Refusal.of("operation", "once", "have a name not yet taken", "\"" + operation.name() + "\"");
        }
        if (operations.size() == MOST_OPERATIONS) {
            throw Refusal.of(
                    "operations",
                    "at-most",
                    "be " + MOST_OPERATIONS + " or fewer",
                    "were",
                    (MOST_OPERATIONS + 1) + " with \"" + operation.name() + "\"");
        }
        List<Operation> more = new ArrayList<>(operations);
        more.add(operation);
        return new OrderOfWork(more, dropped, done, start, kept);
    }

    /**
     * {@return this order of work with another operation in the place of the one of the same name}
     *
     * @param operation its name one of this order of work
     */
    public OrderOfWork replacing(Operation operation) {
        List<Operation> changed = new ArrayList<>(operations);
        changed.set(
                operations.indexOf(
                        operation(Objects.requireNonNull(operation, "operation").name())),
                operation);
        return new OrderOfWork(changed, dropped, done, start, kept);
    }

    /**
     * {@return this order of work without an operation that this neck does not have} What only that operation would
     * have left behind is then no longer asked for by the others. For work that has been done before, see {@link
     * #done}. What is left out already stays left out.
     *
     * @param name one of this order of work, in no kept order
     */
    public OrderOfWork without(String name) {
        if (isDropped(name)) {
            return this;
        }
        Operation gone = operation(name);
        for (KeptOrder order : kept) {
            if (names(order, gone.name())) {
                throw Refusal.of(
                        "operation to leave out",
                        "kept",
                        "be in no kept order",
                        "\"" + gone.name() + "\" with \"" + order + "\" kept");
            }
        }
        List<Operation> fewer = new ArrayList<>(operations);
        fewer.remove(gone);
        List<Operation> more = new ArrayList<>(dropped);
        more.add(gone);
        return new OrderOfWork(fewer, more, done, start, kept);
    }

    /**
     * {@return this order of work with an operation done already: it leaves the plan, and its effects hold from the
     * start} Give several in the order in which they were done. Kept orders are met by it or refused.
     *
     * @param name one of this order of work
     */
    public OrderOfWork done(String name) {
        Operation finished = operation(name);
        List<KeptOrder> open = new ArrayList<>();
        for (KeptOrder order : kept) {
            if (order.then().equals(finished.name())) {
                throw Refusal.of(
                        "operation done",
                        "kept",
                        "keep the orders given",
                        "\"" + finished.name() + "\" with \"" + order + "\" kept and \"" + order.first()
                                + "\" not done");
            }
            if (!order.first().equals(finished.name())) {
                open.add(order);
            }
        }
        List<Operation> fewer = new ArrayList<>(operations);
        fewer.remove(finished);
        List<Operation> more = new ArrayList<>(done);
        more.add(finished);
        Set<Condition> now = new LinkedHashSet<>(start);
        finished.takesAway().forEach(now::remove);
        now.addAll(finished.puts());
        return new OrderOfWork(fewer, dropped, more, now, open);
    }

    /**
     * {@return this order of work with conditions that hold from the start, as of a blank bought flat}
     *
     * @param first a condition
     * @param more others
     */
    public OrderOfWork startingWith(Condition first, Condition... more) {
        Set<Condition> now = new LinkedHashSet<>(start);
        now.add(Objects.requireNonNull(first, "condition"));
        now.addAll(Names.all(more, "condition"));
        return new OrderOfWork(operations, dropped, done, now, kept);
    }

    /**
     * Begins an order that must be kept: {@code keep("glue wings").before("cut rod channel")}.
     *
     * @param name one of this order of work
     * @return the operation, waiting for the other one
     */
    public Kept keep(String name) {
        return new Kept(operation(name).name());
    }

    /** An operation whose place against another is to be given; made by {@link OrderOfWork#keep}. Immutable. */
    public final class Kept {

        private final String name;

        private Kept(String name) {
            this.name = name;
        }

        /**
         * {@return the order of work with this operation kept before another}
         *
         * @param other one of the order of work
         */
        public OrderOfWork before(String other) {
            return keeping(new KeptOrder(name, operation(other).name()));
        }

        /**
         * {@return the order of work with this operation kept after another}
         *
         * @param other one of the order of work
         */
        public OrderOfWork after(String other) {
            return keeping(new KeptOrder(operation(other).name(), name));
        }

        /** Returns such as {@code glue wings, kept before or after what?}. */
        @Override
        public String toString() {
            return name + ", kept before or after what?";
        }
    }

    private OrderOfWork keeping(KeptOrder order) {
        List<KeptOrder> more = new ArrayList<>(new LinkedHashSet<>(kept));
        if (!more.contains(order)) {
            more.add(order);
        }
        return new OrderOfWork(operations, dropped, done, start, more);
    }

    /**
     * {@return an order that breaks nothing, or the conflicts}
     *
     * <p>Exact: of all orders that keep what must be kept it is the one with the fewest conflicts without a remedy, then the
     * fewest with one, then the fewest pairs of operations turned round against the usual order, then the first by the
     * usual order. So it depends on nothing but the input, and an order kept that it already keeps changes nothing.
     *
     * @throws ArithmeticException if the operations leave so many orders open that the search would not end
     */
    public OrderPlan plan() {
        return Planner.plan(left());
    }

    /**
     * Judges an order of the maker's own: its conflicts, without a search for a better order.
     *
     * @param names every operation left to do, once each, the kept orders kept
     * @return the plan with its steps in this order
     */
    public OrderPlan inThisOrder(String... names) {
        List<Operation> ordered = new ArrayList<>();
        for (String name : Objects.requireNonNull(names, "names")) {
            Operation next = operation(name);
            if (ordered.contains(next)) {
                throw Refusal.of(
                        "operations given", "once", "come once each", "", "\"" + next.name() + "\" came twice");
            }
            ordered.add(next);
        }
        for (Operation operation : operations) {
            if (!ordered.contains(operation)) {
                throw Refusal.of(
                        "operations given",
                        "all",
                        "be all " + operations.size(),
                        "",
                        "\"" + operation.name() + "\" was missing");
            }
        }
        for (KeptOrder order : kept) {
            if (ordered.indexOf(operation(order.first())) > ordered.indexOf(operation(order.then()))) {
                throw Refusal.of(
                        "operations given", "kept", "keep the kept orders", "", "\"" + order + "\" was turned round");
            }
        }
        return Planner.judged(
                left(), ordered.stream().mapToInt(operations::indexOf).toArray());
    }

    /** {@return the operations that are left to do, in their usual order} */
    public List<Operation> operations() {
        return operations;
    }

    /**
     * {@return one of the operations left to do}
     *
     * @param name its name
     * @throws IllegalArgumentException if there is none of that name
     */
    public Operation operation(String name) {
        if (isLeftOut(name)) {
            throw Refusal.of(
                    "operation", "unknown", "be one that this neck has", "\"" + name.strip() + "\", which is left out");
        }
        return find(name.strip()).orElseThrow(() -> Names.unknown(name, "operation", named(operations)));
    }

    private boolean isLeftOut(String name) {
        return isDropped(name) && find(name.strip()).isEmpty();
    }

    private boolean isDropped(String name) {
        String stripped = Objects.requireNonNull(name, "name").strip();
        return exactly(stripped).isEmpty() && dropped.stream().anyMatch(other -> isNamed(other, stripped));
    }

    /**
     * {@return the order of work without one of the usual neck's operations, which the neck turns out not to have, nor
     * the orders kept about it} Changes nothing where that operation is not left to do or is the maker's own.
     *
     * @param usual the name of one of the usual neck's operations
     */
    public OrderOfWork lacking(String usual) {
        return usual(usual).map(this::lacking).orElse(this);
    }

    /**
     * {@return the order of work with the head sawn out of a blank thick enough for it, in the place of gluing it on}
     * Changes nothing where the usual gluing is not left to do.
     */
    public OrderOfWork headSawnOut() {
        return usual(Operation.GLUE_HEAD)
                .map(gone -> instead(gone, UsualNeck.onePieceHead()))
                .orElse(this);
    }

    /** The usual neck's steps, and those that a bar or a groove has in their place: the usual name is understood too. */
    private static final Map<String, List<String>> IN_ITS_PLACE = Map.of(
            Operation.CUT_ROD_CHANNEL, List.of(Operation.CUT_BAR_CHANNEL, Operation.CUT_LOCATING_GROOVE),
            Operation.LAY_IN_THE_ROD, List.of(Operation.GLUE_IN_THE_BAR));

    private static final List<String> OF_A_HEAD = List.of(
            Operation.CUT_SCARF,
            Operation.GLUE_HEAD,
            Operation.TRUE_THE_HEAD,
            Operation.GLUE_WINGS,
            Operation.GLUE_HEAD_VENEER,
            Operation.GLUE_BACK_STRAP);

    /** What lies under the fingerboard of a design, in the place of the usual rod. */
    private OrderOfWork reinforced(Neck design) {
        boolean groove = design.channel().filter(Channel::isLocatingGroove).isPresent();
        boolean bar = design.channel().flatMap(Channel::bar).isPresent();
        OrderOfWork work = this;
        if (groove) {
            work = work.instead(work.operation(Operation.CUT_ROD_CHANNEL), UsualNeck.locatingGroove())
                    .without(Operation.LAY_IN_THE_ROD);
        }
        if (bar) {
            work = work.instead(work.operation(Operation.CUT_ROD_CHANNEL), UsualNeck.barChannel())
                    .instead(work.operation(Operation.LAY_IN_THE_ROD), UsualNeck.bar());
        }
        if (design.channel().flatMap(Channel::rod).isEmpty()) {
            work = work.replacing(UsualNeck.fingerboard(false))
                    .replacing(UsualNeck.levelling(false))
                    .replacing(UsualNeck.setUp(false));
        }
        if (bar) {
            work = work.replacing(UsualNeck.overTheBar(work.operation(Operation.GLUE_FINGERBOARD)));
        }
        return design.bars().isPresent() ? work.withBars() : work;
    }

    private OrderOfWork withBars() {
        return before(Operation.CUT_SCARF, UsualNeck.barChannels())
                .before(Operation.GLUE_FINGERBOARD, UsualNeck.bars())
                .replacing(UsualNeck.over(operation(Operation.GLUE_FINGERBOARD)));
    }

    private OrderOfWork before(String name, Operation other) {
        List<Operation> changed = new ArrayList<>(operations);
        changed.add(operations.indexOf(operation(name)), other);
        return new OrderOfWork(changed, dropped, done, start, kept);
    }

    /** The operation, if it is left to do and the usual neck's own. */
    private Optional<Operation> usual(String name) {
        String stripped = Objects.requireNonNull(name, "name").strip();
        Operation own = UsualNeck.operations().stream()
                .filter(operation -> isNamed(operation, stripped))
                .findFirst()
                .orElseThrow(() -> Names.unknown(name, "operation", named(UsualNeck.operations())));
        return Optional.of(own).filter(operations::contains);
    }

    private OrderOfWork lacking(Operation gone) {
        List<KeptOrder> open =
                kept.stream().filter(order -> !names(order, gone.name())).toList();
        return new OrderOfWork(operations, dropped, done, start, open).without(gone.name());
    }

    private OrderOfWork instead(Operation gone, Operation other) {
        List<Operation> changed = new ArrayList<>(operations);
        changed.add(operations.indexOf(gone), other);
        return new OrderOfWork(changed, dropped, done, start, kept).lacking(gone);
    }

    /** {@return the orders that must be kept, in the order given} */
    public List<KeptOrder> keptOrders() {
        return kept;
    }

    /** {@return what holds before the first operation left to do; by name} */
    public List<Condition> start() {
        return List.copyOf(start);
    }

    /** {@return the operations that this neck does not have; in the order in which they were left out} */
    public List<Operation> leftOut() {
        return dropped;
    }

    /** {@return the operations that are done; in the order in which they were done} */
    public List<Operation> finished() {
        return done;
    }

    private WorkLeft left() {
        Set<Condition> notAskedFor = new LinkedHashSet<>();
        dropped.forEach(operation -> notAskedFor.addAll(operation.puts()));
        operations.forEach(operation -> operation.puts().forEach(notAskedFor::remove));
        done.forEach(operation -> operation.puts().forEach(notAskedFor::remove));
        notAskedFor.removeAll(start);
        return new WorkLeft(operations, start, notAskedFor, kept);
    }

    private Optional<Operation> find(String name) {
        return exactly(name)
                .or(() -> IN_ITS_PLACE.getOrDefault(name, List.of()).stream()
                        .flatMap(own -> exactly(own).stream())
                        .findFirst());
    }

    private Optional<Operation> exactly(String name) {
        return operations.stream().filter(operation -> isNamed(operation, name)).findFirst();
    }

    private static boolean isNamed(Operation operation, String name) {
        return operation.name().equals(name);
    }

    private static boolean names(KeptOrder order, String name) {
        return order.first().equals(name) || order.then().equals(name);
    }

    private static List<String> named(List<Operation> operations) {
        return operations.stream().map(Operation::name).toList();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {operations, dropped, done, start, kept};
    }
}
