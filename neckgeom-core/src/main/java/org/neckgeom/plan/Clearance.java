package org.neckgeom.plan;

import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.units.Amount;

/** What is free between two things, in words that show its sign: a clearance, or by how much they meet. */
final class Clearance {

    /** One decimal prints less as 0.0. */
    private static final double PRINTED_AS_NOTHING_MM = 0.05;

    private Clearance() {}

    /**
     * A sentence with {@code {clear}} in it.
     *
     * @param free where it is 0 or more
     * @param met where it is negative; what is printed has no sign
     */
    static Statement of(Stages plan, Amount<Length> clear, String freeCode, String free, String metCode, String met) {
        double mm = clear.libraryValue();
        String way = mm < PRINTED_AS_NOTHING_MM && mm != 0 ? "{clear:size digits 2}" : "{clear:1|2}";
        return plan.words(mm < 0 ? metCode : freeCode, (mm < 0 ? met : free).replace("{clear}", way))
                .with("clear", Kind.MM, mm);
    }
}
