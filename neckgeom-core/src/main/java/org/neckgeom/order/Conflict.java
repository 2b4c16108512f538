package org.neckgeom.order;

import static org.neckgeom.form.Kind.NAME;
import static org.neckgeom.form.Kind.WHOLE;
import static org.neckgeom.form.Kind.answer;
import static org.neckgeom.form.Kind.code;
import static org.neckgeom.form.Kind.table;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/**
 * A conflict of two operations in an order of work, such as {@code cut rod channel with wings on}: which operations,
 * why, the remedy, and what the remedy adds to the budget. Immutable.
 */
public final class Conflict extends ValueAnswer {

    /** How things conflict. */
    public enum Kind {
        /** Something is in the way of an operation. */
        IN_THE_WAY("in the way"),
        /** Something an operation needs has been taken away. */
        GONE("gone"),
        /** Something an operation needs is left behind only by a later one. */
        NOT_YET("not yet there"),
        /** Something an operation needs is left behind by none. */
        NEVER("never there"),
        /** Operations that must each come before the other. */
        CYCLE("each before the other");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** Returns such as {@code in the way}. */
        @Override
        public String toString() {
            return words;
        }
    }

    /** A reason as a row. */
    private record Reason(String words) {

        private static final Form<Reason> FORM =
                Form.<Reason>of("reason").fact("words", NAME, "of the reason", Reason::words);
    }

    private static final int MOST_REASON_CHARACTERS = 580;
    private static final int ROW_CHARACTERS = 12;
    private static final int MOST_KEPT = 2;

    static final Form<Conflict> FORM = Form.<Conflict>of("conflict")
            .fact("kind", code(Kind.class), "how things conflict", Conflict::kind)
            .fact("operation", NAME, "that cannot be done as it should", conflict -> conflict.operations.get(0))
            .factIfAny("by", NAME, "operation that causes it", Conflict::by)
            .fact("operations", Operation.NAMES, "all that are in conflict", Conflict::operations)
            .factIfAny(
                    "condition",
                    NAME,
                    "missing or in the way",
                    conflict -> conflict.condition().map(Condition::name))
            .fact("reasons", table(Reason.FORM), "why, kept orders first", Conflict::keptFirst)
            .factIfAny("reasonsLeftOut", WHOLE, "how many the text leaves out", Conflict::reasonsLeftOut)
            .fact("kept", table(KeptOrder.FORM), "orders that force the conflict together", Conflict::keptOrders)
            .factIfAny("remedy", NAME, "to take", conflict -> conflict.remedy().map(Remedy::name))
            .factIfAny(
                    "how",
                    NAME,
                    "the remedy is done",
                    conflict -> conflict.remedy().flatMap(Remedy::howIfAny))
            .factIfAny("adds", answer(AddedError.FORM), "the error that the remedy adds to the budget", Conflict::adds)
            .fact("otherRemedies", Operation.NAMES, "the better first", Conflict::others)
            .phrase("blamed", "{by}")
            .phrase("since", " since \"{by}\"")
            .phrase("from", "from \"{by}\"")
            .phrase("from", "there from the start")
            .phrase("wayOut", conflict -> conflict.kept.size() == 1, "give up the kept order")
            .phrase("wayOut", conflict -> !conflict.kept.isEmpty(), "give up one of the kept orders")
            .phrase("wayOut", is(Kind.NEVER), "add an operation that puts it, or .startingWith(...) it")
            .phrase("wayOut", is(Kind.CYCLE), "change what one of them needs or leaves")
            .phrase("wayOut", "change what the operations need or leave")
            .finds("in-the-way", is(Kind.IN_THE_WAY), "{operation}: {condition} in the way, {from}")
            .finds("gone", is(Kind.GONE), "{operation}: {condition} gone{since}")
            .finds(
                    "not-yet",
                    is(Kind.NOT_YET),
                    "{operation}: {condition} not yet there, left only later by \"{blamed}\"")
            .finds("never", is(Kind.NEVER), "{operation}: {condition} never there, no operation leaves it")
            .finds("cycle", "{operations}: each must come before the next and the last before the first")
            .each("reasons", "why", "{words}", Conflict::reasonsShown, "")
            .line("reasonsLeftOut", "", "and {reasonsLeftOut} more: reasons()")
            .each("kept", "kept", "{first} before {then}", conflict -> conflict.kind == Kind.CYCLE ? 0 : MOST_KEPT, "")
            .line("remedy", "remedy", "{remedy}")
            .line("remedy", "remedy", Conflict::isStuck, "none: {wayOut}")
            .line("how", "how", "{how}")
            .line("adds", "adds", "{adds}")
            .line(
                    "adds",
                    "adds",
                    conflict -> !conflict.isStuck() && conflict.adds().isEmpty(),
                    "error not given")
            .line("otherRemedies", "or", "{otherRemedies}");

    private final Kind kind;
    private final List<String> operations;
    private final @Nullable Condition condition;
    private final List<String> reasons;
    private final List<KeptOrder> kept;
    private final List<Remedy> remedies;

    private Conflict(
            Kind kind,
            List<String> operations,
            @Nullable Condition condition,
            List<String> reasons,
            List<KeptOrder> kept,
            List<Remedy> remedies) {
        super(
                FORM,
                Names.all(remedies, "remedy").stream()
                        .findFirst()
                        .map(Remedy::style)
                        .orElse(LengthStyle.MILLIMETRES));
        this.kind = Objects.requireNonNull(kind, "kind");
        this.operations = Names.all(operations, "operation");
        this.condition = condition;
        this.reasons = Names.all(reasons, "reason");
        this.kept = Names.all(kept, "kept order");
        this.remedies = List.copyOf(remedies);
        this.operations.forEach(name -> Names.checked(name, "an operation's name"));
    }

    /**
     * {@return a conflict of an operation with a condition}
     *
     * @param kind any but {@link Kind#CYCLE}
     * @param operation the operation that cannot be done as it should
     * @param other the operation that put the condition, took it away or leaves it too late; nothing if none did
     * @param condition what is in the way, gone, or not there
     * @param reason why that matters, empty if not known
     * @param kept the kept orders that force it
     * @param remedies ways out, the one to take first
     */
    public static Conflict of(
            Kind kind,
            String operation,
            Optional<String> other,
            Condition condition,
            String reason,
            List<KeptOrder> kept,
            List<Remedy> remedies) {
        if (kind == Kind.CYCLE) {
            throw Refusal.of("kind", "operation", "be one operation's", "\"" + kind + "\": use ofCycle");
        }
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(operation, "operation");
        List<String> both = Objects.requireNonNull(other, "other").isPresent()
                ? List.of(operation, other.get())
                : List.of(operation);
        return new Conflict(
                kind,
                both,
                condition,
                Objects.requireNonNull(reason, "reason").isEmpty() ? List.of() : List.of(reason),
                kept,
                remedies);
    }

    /**
     * {@return a conflict of operations that must each come before the next, and the last before the first}
     *
     * @param operations two or more, in the order of the cycle
     * @param reasons why each must come before the next
     * @param kept the kept orders among the reasons
     */
    public static Conflict ofCycle(List<String> operations, List<String> reasons, List<KeptOrder> kept) {
        if (Objects.requireNonNull(operations, "operations").size() < 2) {
            throw Refusal.of("operations of a cycle", "at-least", "be 2 or more", "were", operations.size());
        }
        return new Conflict(Kind.CYCLE, operations, null, reasons, kept, List.of());
    }

    /** {@return how things conflict} */
    public Kind kind() {
        return kind;
    }

    /**
     * {@return the operations that conflict: the one that cannot be done as it should, then the one to blame; or those of
     * the cycle in order; one or more}
     */
    public List<String> operations() {
        return operations;
    }

    /** {@return the condition that is missing or in the way; the condition, or nothing for a cycle} */
    public Optional<Condition> condition() {
        return Optional.ofNullable(condition);
    }

    /** {@return why: one sentence, or one for each turn of a cycle; may be empty} */
    public List<String> reasons() {
        return reasons;
    }

    /**
     * {@return the kept orders that force the conflict together: as few as suffice, none of them idle; empty if the
     * operations conflict by themselves} Give one up and these no longer force it; others that were kept may.
     */
    public List<KeptOrder> keptOrders() {
        return kept;
    }

    /** {@return the ways out, the one to take first; empty if there is none} */
    public List<Remedy> remedies() {
        return remedies;
    }

    /** {@return the remedy to take; the remedy, or nothing if there is none} */
    public Optional<Remedy> remedy() {
        return remedies.stream().findFirst();
    }

    /** {@return what the remedy adds to the budget of the operation; nothing if there is none or it adds none} */
    public Optional<AddedError> adds() {
        return remedy().flatMap(remedy -> remedy.addsTo(operations.get(0)));
    }

    private static Predicate<Conflict> is(Kind kind) {
        return conflict -> conflict.kind == kind;
    }

    private boolean isStuck() {
        return remedies.isEmpty();
    }

    private Optional<String> by() {
        return operations.stream().skip(1).findFirst().filter(other -> kind != Kind.CYCLE);
    }

    private List<String> others() {
        return remedies.stream().skip(1).map(Remedy::name).toList();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {kind, operations, condition(), reasons, kept, remedies};
    }

    /** Returns the reasons with the kept orders first: those are the maker's to give up. */
    private List<Reason> keptFirst() {
        Set<String> ofKept = kept.stream().map(KeptOrder::reason).collect(Collectors.toSet());
        return reasons.stream()
                .sorted(Comparator.comparing((String reason) -> !ofKept.contains(reason)))
                .map(Reason::new)
                .toList();
    }

    /** How many reasons there is room for. */
    private int reasonsShown() {
        int left = MOST_REASON_CHARACTERS;
        int shown = 0;
        for (Reason reason : keptFirst()) {
            left -= reason.words().length() + ROW_CHARACTERS;
            shown += left >= 0 ? 1 : 0;
        }
        return shown;
    }

    private Optional<Integer> reasonsLeftOut() {
        return Optional.of(reasons.size() - reasonsShown()).filter(count -> count > 0);
    }
}
