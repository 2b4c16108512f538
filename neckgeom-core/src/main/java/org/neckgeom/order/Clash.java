package org.neckgeom.order;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Names;
import org.neckgeom.text.Report;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * Two things that do not go together in an order of work, such as {@code cut rod channel with ears on}: which operations,
 * why, the remedy, and what the remedy adds to the budget. Immutable.
 */
public final class Clash implements SaysLengths<Clash> {

    /** How things clash. */
    public enum Kind {
        /** Something stands in the way of an operation. */
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

    private static final int MOST_REASON_CHARACTERS = 580;
    private static final int ROW_CHARACTERS = 12;
    private static final int MOST_KEPT = 2;

    private final Kind kind;
    private final List<String> operations;
    private final @Nullable Condition condition;
    private final List<String> reasons;
    private final List<KeptOrder> kept;
    private final List<Remedy> remedies;

    private Clash(
            Kind kind,
            List<String> operations,
            @Nullable Condition condition,
            List<String> reasons,
            List<KeptOrder> kept,
            List<Remedy> remedies) {
        this.kind = Objects.requireNonNull(kind, "kind");
        this.operations = Names.all(operations, "operation");
        this.condition = condition;
        this.reasons = Names.all(reasons, "reason");
        this.kept = Names.all(kept, "kept order");
        this.remedies = Names.all(remedies, "remedy");
        this.operations.forEach(name -> Names.checked(name, "an operation's name"));
    }

    /**
     * Returns a clash of an operation with a condition.
     *
     * @param kind any but {@link Kind#CYCLE}
     * @param operation the operation that cannot be done as it should
     * @param other the operation that put the condition, took it away or leaves it too late; nothing if none did
     * @param condition what is in the way, gone, or not there
     * @param reason why that matters, empty if not known
     * @param kept the kept orders that force it
     * @param remedies ways out, the one to take first
     * @return the clash
     */
    public static Clash of(
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
        return new Clash(
                kind,
                both,
                condition,
                Objects.requireNonNull(reason, "reason").isEmpty() ? List.of() : List.of(reason),
                kept,
                remedies);
    }

    /**
     * Returns a clash of operations that must each come before the next, and the last before the first.
     *
     * @param operations two or more, in the order of the cycle
     * @param reasons why each must come before the next
     * @param kept the kept orders among the reasons
     * @return the clash
     */
    public static Clash ofCycle(List<String> operations, List<String> reasons, List<KeptOrder> kept) {
        if (Objects.requireNonNull(operations, "operations").size() < 2) {
            throw Refusal.of("operations of a cycle", "at-least", "be 2 or more", "were", operations.size());
        }
        return new Clash(Kind.CYCLE, operations, null, reasons, kept, List.of());
    }

    /**
     * Returns how things clash.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Returns the operations that clash: the one that cannot be done as it should, then the one to blame; or those of the
     * cycle in order.
     *
     * @return one or more
     */
    public List<String> operations() {
        return operations;
    }

    /**
     * Returns the condition that is missing or in the way.
     *
     * @return the condition, or nothing for a cycle
     */
    public Optional<Condition> condition() {
        return Optional.ofNullable(condition);
    }

    /**
     * Returns why: one sentence, or one for each turn of a cycle.
     *
     * @return the reasons, may be empty
     */
    public List<String> reasons() {
        return reasons;
    }

    /**
     * Returns the kept orders that force the clash together: as few as suffice, none of them idle. Give one up and these no
     * longer force it; others that were kept may.
     *
     * @return the orders, empty if the operations clash by themselves
     */
    public List<KeptOrder> keptOrders() {
        return kept;
    }

    /**
     * Returns the ways out, the one to take first.
     *
     * @return the remedies, empty if there is none
     */
    public List<Remedy> remedies() {
        return remedies;
    }

    /**
     * Returns the remedy to take.
     *
     * @return the remedy, or nothing if there is none
     */
    public Optional<Remedy> remedy() {
        return remedies.stream().findFirst();
    }

    /**
     * Returns what the remedy adds to the budget of the operation.
     *
     * @return the error, or nothing if there is no remedy or it adds none
     */
    public Optional<AddedError> adds() {
        return remedy().flatMap(remedy -> remedy.addsTo(operations.get(0)));
    }

    /** Returns one line: the operations and what clashes. */
    String headline() {
        String operation = operations.get(0);
        String by = operations.size() < 2 ? "" : operations.get(1);
        return switch (kind) {
            case IN_THE_WAY ->
                operation + ": " + condition + " in the way, "
                        + (by.isEmpty() ? "there from the start" : "from \"" + by + "\"");
            case GONE -> operation + ": " + condition + " gone" + (by.isEmpty() ? "" : " since \"" + by + "\"");
            case NOT_YET -> operation + ": " + condition + " not yet there, left only later by \"" + by + "\"";
            case NEVER -> operation + ": " + condition + " never there, no operation leaves it";
            case CYCLE ->
                Names.shortList(operations) + ": each must come before the next and the last before the first";
        };
    }

    @Override
    public Clash in(LengthStyle other) {
        return new Clash(
                kind,
                operations,
                condition,
                reasons,
                kept,
                remedies.stream().map(remedy -> remedy.in(other)).toList());
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Clash other
                && kind == other.kind
                && operations.equals(other.operations)
                && Objects.equals(condition, other.condition)
                && reasons.equals(other.reasons)
                && kept.equals(other.kept)
                && remedies.equals(other.remedies);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, operations, condition, reasons, kept, remedies);
    }

    /** Returns the clash on one line, then the reason, the kept orders that force it, the remedy and what it adds. */
    @Override
    public String toString() {
        Report report = Report.titled(headline());
        int left = MOST_REASON_CHARACTERS;
        int shown = 0;
        for (String reason : keptFirst()) {
            left -= reason.length() + ROW_CHARACTERS;
            if (left >= 0) {
                report.row("why", reason);
                shown++;
            }
        }
        if (shown < reasons.size()) {
            report.row("", "and " + (reasons.size() - shown) + " more: reasons()");
        }
        if (kind != Kind.CYCLE) {
            for (int i = 0; i < Math.min(kept.size(), MOST_KEPT); i++) {
                report.row("kept", kept.get(i));
            }
        }
        if (remedies.isEmpty()) {
            return report.row("remedy", "none: " + wayOut()).toString();
        }
        Remedy best = remedies.get(0);
        report.row("remedy", best.name());
        if (!best.how().isEmpty()) {
            report.row("how", best.how());
        }
        report.row("adds", adds().map(AddedError::toString).orElse("no error told"));
        if (remedies.size() > 1) {
            List<String> others = remedies.stream().skip(1).map(Remedy::name).toList();
            report.row("or", Names.shortList(others));
        }
        return report.toString();
    }

    /** Returns the reasons with the kept orders first: those are the maker's to give up. */
    private List<String> keptFirst() {
        return reasons.stream()
                .sorted(Comparator.comparing((String reason) -> !reason.startsWith("kept: ")))
                .toList();
    }

    private String wayOut() {
        if (!kept.isEmpty()) {
            return "give up " + (kept.size() == 1 ? "the kept order" : "one of the kept orders");
        }
        return switch (kind) {
            case NEVER -> "add an operation that puts it, or .startingWith(...) it";
            case CYCLE -> "change what one of them needs or leaves";
            default -> "change what the operations need or leave";
        };
    }
}
