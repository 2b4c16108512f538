package org.neckgeom.state;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.Estimate;
import org.neckgeom.text.Numbers;

/** What a part of an answer must be. */
final class Checked {

    private Checked() {}

    static double ratio(String name, double value) {
        if (!(value >= 0.0 && value <= 1.0)) {
            throw Refusal.of(name, "range", "be in [0, 1]", Numbers.plain(value));
        }
        return value + 0.0;
    }

    static double finite(String name, double value) {
        if (!(Math.abs(value) <= MOST)) {
            throw Refusal.of(name, "finite", "be a number of 1e100 or less in size", Numbers.plain(value));
        }
        return value + 0.0;
    }

    private static final double MOST = 1e100;

    /** An estimate may come in raw from another language. */
    static void length(String name, Estimate<Length> value) {
        if (Objects.requireNonNull(value, name).unit().kind() != (Class<?>) Length.class) {
            throw Refusal.of(name, "kind", "be a length", value);
        }
    }
}
