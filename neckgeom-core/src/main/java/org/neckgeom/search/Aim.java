package org.neckgeom.search;

import java.util.function.Function;
import java.util.function.Supplier;
import org.neckgeom.fault.Refusal;
import org.neckgeom.units.Amount;

/** What shall be least, or greatest: {@code sign} 1 or -1 makes it least. */
record Aim<D>(String name, int sign, Function<? super D, ? extends Amount<?>> of) {

    /** A figure by a function that may have come without type arguments, and then gives another type. */
    static <T> T figure(String name, String must, Supplier<T> figure) {
        try {
            return figure.get();
        } catch (ClassCastException other) {
            throw Refusal.because(name, "kind", name + " must " + must).causedBy(other);
        }
    }
}
