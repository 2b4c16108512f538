package org.neckgeom.strength;

import java.util.function.DoubleBinaryOperator;

/**
 * The interval of an answer that rests on the moduli of two pieces of wood.
 *
 * <p>Each modulus is taken log-normal about the mean of its species, the two independent. The interval's ends are the
 * answer at the two points that lie k standard deviations of ln E to either side in the direction in which the answer
 * changes fastest: exact where the answer depends on one product of powers of the moduli, as stiffness nearly does.
 * Estimate; checked against simulation.
 *
 * @param back standard deviation of ln E of the neck's wood
 * @param board of the fingerboard's
 */
record ModulusSpread(double back, double board) {

    /** Two-sided 95 % of a normal law. */
    static final double K95 = 1.959963984540054;

    /** From the coefficients of variation of the two moduli, ratios. */
    static ModulusSpread of(double backVariation, double boardVariation) {
        return new ModulusSpread(logSpread(backVariation), logSpread(boardVariation));
    }

    private static double logSpread(double variation) {
        return Math.sqrt(StrictMath.log1p(variation * variation));
    }

    /**
     * Returns the answer at the means, for multiples of the species' moduli, then the lower and upper end of its 95 % interval. An answer that is NaN at an end
     * leaves that end NaN.
     */
    double[] interval(DoubleBinaryOperator answer) {
        double value = answer.applyAsDouble(1, 1);
        double half = 0.5;
        double alongBack = at(answer, half, 0) - at(answer, -half, 0);
        double alongBoard = at(answer, 0, half) - at(answer, 0, -half);
        double size = StrictMath.hypot(alongBack, alongBoard);
        if (size == 0) {
            return new double[] {value, value, value};
        }
        // Where the answer does not exist beside the means, soft and stiff together is the direction that matters.
        double toBack = Double.isNaN(size) ? Math.sqrt(0.5) : alongBack / size;
        double toBoard = Double.isNaN(size) ? Math.sqrt(0.5) : alongBoard / size;
        double low = at(answer, -K95 * toBack, -K95 * toBoard);
        double high = at(answer, K95 * toBack, K95 * toBoard);
        return low <= high ? new double[] {value, low, high} : new double[] {value, high, low};
    }

    /** The answer some standard deviations of ln E away from the medians. */
    private double at(DoubleBinaryOperator answer, double backDeviations, double boardDeviations) {
        return answer.applyAsDouble(factor(back, backDeviations), factor(board, boardDeviations));
    }

    private static double factor(double logSpread, double deviations) {
        return StrictMath.exp(logSpread * deviations - logSpread * logSpread / 2);
    }
}
