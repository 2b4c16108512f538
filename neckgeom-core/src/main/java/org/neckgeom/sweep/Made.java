package org.neckgeom.sweep;

import java.util.Objects;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A design on its way through the axes, or the sentence in which one of them was refused.
 *
 * @param design the design, or null
 * @param refusal why there is none, or empty
 */
record Made<D>(@Nullable D design, String refusal) {

    static <D> Made<D> of(D design) {
        return new Made<>(design, "");
    }

    /** The design changed further; once refused it stays so. */
    Made<D> then(UnaryOperator<D> change) {
        if (design == null) {
            return this;
        }
        try {
            return of(Objects.requireNonNull(change.apply(design), "changed design"));
        } catch (IllegalArgumentException | ArithmeticException refused) {
            return new Made<>(null, sentence(refused));
        }
    }

    static String sentence(RuntimeException refused) {
        String message = refused.getMessage();
        return message == null ? refused.getClass().getSimpleName() : message;
    }
}
