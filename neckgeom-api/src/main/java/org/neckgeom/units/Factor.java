package org.neckgeom.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * An exact conversion {@code y = (x - zero) * factor}, its factor carried as two doubles, so that products come out
 * correctly rounded: 25.4 is no double, and {@code x * 25.4} misses the nearest one for every third inch value.
 *
 * <p>The zero is taken off first, as in {@code (F - 32) * 5/9}: 32 and 273.15 are as near to a double as the readings
 * they are taken from, and their multiples are not.
 */
final class Factor {

    private static final MathContext DIGITS = new MathContext(50);

    static final Factor IDENTITY = new Factor(BigDecimal.ZERO, BigDecimal.ONE);

    private final double high;
    private final double low;
    private final double zero;
    private final double backHigh;
    private final double backLow;
    private final boolean identity;

    private Factor(BigDecimal zero, BigDecimal factor) {
        BigDecimal back = BigDecimal.ONE.divide(factor, DIGITS);
        this.high = factor.doubleValue();
        this.low = factor.subtract(new BigDecimal(high)).doubleValue();
        this.backHigh = back.doubleValue();
        this.backLow = back.subtract(new BigDecimal(backHigh)).doubleValue();
        this.zero = zero.doubleValue();
        this.identity = high == 1 && low == 0 && this.zero == 0;
    }

    static Factor of(BigDecimal factor) {
        return new Factor(BigDecimal.ZERO, factor);
    }

    static Factor ratio(long numerator, long denominator) {
        return of(BigDecimal.valueOf(numerator).divide(BigDecimal.valueOf(denominator), DIGITS));
    }

    static Factor from(BigDecimal zero, BigDecimal factor) {
        return new Factor(zero, factor);
    }

    boolean hasOffset() {
        return zero != 0;
    }

    /** The double nearest {@code x} of this unit in the other one, or NaN where a zero lies elsewhere. */
    double valueIn(double x, Factor other) {
        if (hasOffset() || other.hasOffset()) {
            return Double.NaN;
        }
        return new BigDecimal(x).multiply(exact()).divide(other.exact(), DIGITS).doubleValue();
    }

    private BigDecimal exact() {
        return new BigDecimal(high).add(new BigDecimal(low));
    }

    double toLibrary(double x) {
        if (identity) {
            return x;
        }
        double from = x - zero;
        return Math.fma(from, high, from * low);
    }

    double fromLibrary(double y) {
        if (identity) {
            return y;
        }
        return Math.fma(y, backHigh, y * backLow) + zero;
    }
}
