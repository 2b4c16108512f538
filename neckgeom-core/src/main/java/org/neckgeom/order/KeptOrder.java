package org.neckgeom.order;

import java.util.Optional;
import java.util.function.ToIntFunction;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Names;

/**
 * An order the maker must keep, such as {@code glue wings before cut rod channel}. Immutable.
 *
 * @param first the operation that comes first
 * @param then the operation that comes somewhere after it
 */
public record KeptOrder(String first, String then) implements Answer {

    static final Form<KeptOrder> FORM = Form.<KeptOrder>of("kept-order")
            .fact("first", Kind.NAME, "operation that comes first", KeptOrder::first)
            .fact("then", Kind.NAME, "operation that comes after it", KeptOrder::then)
            .finds("kept-order", "{first} before {then}");

    /**
     * Checks that there are two operations.
     *
     * @param first the operation that comes first
     * @param then the operation that comes somewhere after it
     */
    public KeptOrder {
        first = Names.checked(first, "an operation's name");
        then = Names.checked(then, "an operation's name");
        if (first.equals(then)) {
            throw Refusal.of(
                    "a kept order", "two-operations", "have two operations", "\"" + first + "\" before itself");
        }
    }

    /** What this order asks of one of its operations, the other by its number; nothing of any other operation. */
    Optional<String> asksOf(String operation, ToIntFunction<String> number) {
        if (first.equals(operation)) {
            return Optional.of("kept before " + number.applyAsInt(then));
        }
        return then.equals(operation) ? Optional.of("kept after " + number.applyAsInt(first)) : Optional.empty();
    }

    /** The reason of a turn of a cycle that it forces. */
    String reason() {
        return "kept: " + this;
    }

    @Override
    public Form<KeptOrder> form() {
        return FORM;
    }

    /** Returns such as {@code glue wings before cut rod channel}. */
    @Override
    public String toString() {
        return text(style());
    }
}
