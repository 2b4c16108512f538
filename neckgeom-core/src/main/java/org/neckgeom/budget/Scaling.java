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
        double goodValue = good == 0.0 ? Double.NaN : outside.applyAsDouble(good);
        double badValue = outside.applyAsDouble(bad);
        for (int i = 0; bad - good > 1e-12 * bad; i++) {
            double middle = i % 3 == 2 ? 0.5 * (good + bad) : between(good, goodValue, bad, badValue, allowed);
            double value = outside.applyAsDouble(middle);
            if (value <= allowed) {
                good = middle;
                goodValue = value;
            } else {
                bad = middle;
                badValue = value;
            }
        }
        return good;
    }

    /**
     * Where a chord of the logarithms passes the allowed probability, a little past it in turn to either side, so that both ends
     * close in; the middle where there is no such place.
     */
    private static double between(double good, double goodValue, double bad, double badValue, double allowed) {
        double share = StrictMath.log(allowed / goodValue) / StrictMath.log(badValue / goodValue);
        if (!(share > 0.0 && share < 1.0)) {
            return 0.5 * (good + bad);
        }
        double chord = good + (bad - good) * share;
        double margin = 1e-3 * (bad - good);
        return share < 0.5
                ? Math.min(chord + margin, 0.5 * (good + bad))
                : Math.max(chord - margin, 0.5 * (good + bad));
    }
}
