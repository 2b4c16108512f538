package org.neckgeom.solid;

import java.util.function.DoubleBinaryOperator;
import org.neckgeom.kernel.SpreadLaw;

/** The probability that wood less the carving error falls under a limit, on plain doubles in mm. */
final class WoodOdds {

    private static final int STEPS = 60;
    private static final int PARTS = 4;

    private WoodOdds() {}

    /**
     * Returns {@code P(wood(d, e) - c < limit)} for independent d (deeper), e (aside), c (carved off). One of d and c
     * goes in by its tail in closed form: a normal one before a bounded one, whose edges the nodes can follow, else the
     * wider. The other two go in by weighted nodes. Wood must fall as d grows.
     */
    static double below(double limit, DoubleBinaryOperator wood, SpreadLaw depth, SpreadLaw aside, SpreadLaw carving) {
        boolean tailOfCarving =
                carving.isNormal() == depth.isNormal() ? carving.variance() >= depth.variance() : carving.isNormal();
        double[][] asides = aside.nodes(2);
        double[][] others = tailOfCarving ? depth.nodes(PARTS) : carving.nodes(PARTS);
        double chance = 0;
        for (int i = 0; i < asides[0].length; i++) {
            double e = asides[0][i];
            for (int j = 0; j < others[0].length; j++) {
                double other = others[0][j];
                double tail = tailOfCarving
                        ? carving.above(wood.applyAsDouble(other, e) - limit)
                        : deeperThanAllowed(limit + other, wood, e, depth);
                chance += asides[1][i] * others[1][j] * tail;
            }
        }
        return chance;
    }

    /** Probability of a depth error that leaves less than a target, by bracketed false position on the falling wood. */
    private static double deeperThanAllowed(double target, DoubleBinaryOperator wood, double e, SpreadLaw depth) {
        double lo = depth.lowest();
        double hi = depth.highest();
        double atLo = wood.applyAsDouble(lo, e) - target;
        double atHi = wood.applyAsDouble(hi, e) - target;
        if (atLo <= 0) {
            return 1;
        }
        if (atHi >= 0) {
            return 0;
        }
        double x = lo;
        int kept = 0;
        for (int step = 0; step < STEPS && hi - lo > 1e-9; step++) {
            x = lo + (hi - lo) * atLo / (atLo - atHi);
            double at = wood.applyAsDouble(x, e) - target;
            if (Math.abs(at) < 1e-10) {
                break;
            }
            if (at > 0) {
                lo = x;
                atLo = at;
                // Halving the far end's value when it has stayed put keeps the steps from creeping (Illinois rule).
                atHi = kept == 1 ? atHi / 2 : atHi;
                kept = 1;
            } else {
                hi = x;
                atHi = at;
                atLo = kept == -1 ? atLo / 2 : atLo;
                kept = -1;
            }
        }
        return depth.above(x);
    }
}
