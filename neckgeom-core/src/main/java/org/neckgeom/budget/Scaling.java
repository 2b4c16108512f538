package org.neckgeom.budget;

import java.util.function.DoubleUnaryOperator;

/** Finds how far something may be scaled before a growing probability passes its limit. */
final class Scaling {

    private static final double MOST = 1e9;

    private Scaling() {}

    /**
     * The largest factor at which {@code outside(factor)} is still at most {@code allowed}, searched upward from 0, where
     * it must hold; infinity when nothing up to 1e9 breaks it. Right to 1e-12 relative.
     */
    static double most(DoubleUnaryOperator outside, double allowed) {
        double good = 0.0;
        double bad = 1.0;
        while (outside.applyAsDouble(bad) <= allowed) {
            good = bad;
            bad *= 2.0;
            if (bad > MOST) {
                return Double.POSITIVE_INFINITY;
            }
        }
        while (bad - good > 1e-12 * bad) {
            double middle = 0.5 * (good + bad);
            if (outside.applyAsDouble(middle) <= allowed) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }
}
