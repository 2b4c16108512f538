package org.neckgeom.strength;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a steady function crosses 0: by chords, the end that stays halved in weight (the Illinois rule; M. Dowell and P. Jarratt,
 * BIT 11 (1971) 168, from memory).
 */
final class Crossing {

    private static final int MOST_STEPS = 200;

    private Crossing() {}

    /**
     * The place, between two where the function has opposite signs.
     *
     * @param close how near two places are at which the search ends
     */
    static double of(DoubleUnaryOperator of, double from, double to, double close) {
        double a = from;
        double b = to;
        double atA = of.applyAsDouble(a);
        double atB = of.applyAsDouble(b);
        for (int i = 0; i < MOST_STEPS && atB != 0.0 && Math.abs(b - a) > close; i++) {
            double c = b - atB * (b - a) / (atB - atA);
            double atC = of.applyAsDouble(c);
            if (Math.signum(atC) == Math.signum(atB)) {
                atA *= 0.5;
            } else {
                a = b;
                atA = atB;
            }
            if (c == b) {
                return c;
            }
            b = c;
            atB = atC;
        }
        return b;
    }
}
