package org.neckgeom.channel;

import org.neckgeom.kernel.Powers;

/**
 * How far out a pair of values lies, in scales: of the normal law, {@code exp(-r^2/2)}, or of Student's of nu degrees of freedom,
 * {@code (1 + r^2/nu)^(-nu/2)}.
 */
final class PairLaw {

    /** Differences from the normal law are under 1e-7 in probability. */
    private static final double AS_GOOD_AS_NORMAL = 1e7;

    private static final double LN_2 = StrictMath.log(2);

    private final boolean isNormal;
    private final double perDegree;
    private final double power;

    PairLaw(double degreesOfFreedom) {
        this.isNormal = degreesOfFreedom > AS_GOOD_AS_NORMAL;
        this.perDegree = 1 / degreesOfFreedom;
        this.power = isNormal ? -1 / (2 * LN_2) : -degreesOfFreedom / 2;
    }

    /** The probability of a pair to lie farther out than a distance whose square is given. */
    double beyond(double square) {
        return Powers.exp2(power * (isNormal ? square : Powers.log2(1 + square * perDegree)));
    }

    /** The distance at which a probability becomes 0; may be infinite. */
    double reach(double chance) {
        double log = Powers.log2(chance) / power;
        return Math.sqrt(isNormal ? log : (StrictMath.pow(2, log) - 1) / perDegree);
    }
}
