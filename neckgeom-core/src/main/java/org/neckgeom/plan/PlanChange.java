package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A check of a plan that an entry has changed, before and after, such as
 * {@code channel centred: open, not measured -> ok, slot 0.010 mm nearer the fence, u 0.014 mm}. Immutable.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class PlanChange {

    private final CheckCode code;
    private final @Nullable PlanCheck before;
    private final @Nullable PlanCheck after;

    private PlanChange(CheckCode code, @Nullable PlanCheck before, @Nullable PlanCheck after) {
        this.code = code;
        this.before = before;
        this.after = after;
    }

    /** {@return what is checked} */
    public CheckCode code() {
        return code;
    }

    /** {@return the check before the entry; nothing where there was none} */
    public Optional<PlanCheck> before() {
        return Optional.ofNullable(before);
    }

    /** {@return the check after it; nothing where there is none any more} */
    public Optional<PlanCheck> after() {
        return Optional.ofNullable(after);
    }

    /** Every check that one plan has otherwise than another, in the order of work. */
    static List<PlanChange> between(Plan before, Plan after) {
        Set<CheckCode> codes = EnumSet.noneOf(CheckCode.class);
        before.checks().forEach(check -> codes.add(check.code()));
        after.checks().forEach(check -> codes.add(check.code()));
        List<PlanChange> changes = new ArrayList<>();
        for (CheckCode code : codes) {
            PlanChange change = new PlanChange(
                    code, before.check(code).orElse(null), after.check(code).orElse(null));
            if (!change.was().equals(change.is())) {
                changes.add(change);
            }
        }
        return List.copyOf(changes);
    }

    private static String words(Optional<PlanCheck> check) {
        return check.map(one -> one.outcome() + ", " + one.found()).orElse("not checked");
    }

    /** {@return how it was decided and what was found before, such as {@code open, not measured}} */
    public String was() {
        return words(before());
    }

    /** {@return how it is decided and what is found now} */
    public String is() {
        return words(after());
    }

    /** True for the same check that was and is the same. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PlanChange that
                && code == that.code
                && before().equals(that.before())
                && after().equals(that.after());
    }

    @Override
    public int hashCode() {
        return code.hashCode();
    }

    /** Returns such as {@code channel centred: open, not measured -> ok, slot 0.010 mm nearer the fence, u 0.014 mm}. */
    @Override
    public String toString() {
        return code + ": " + was() + " -> " + is();
    }
}
