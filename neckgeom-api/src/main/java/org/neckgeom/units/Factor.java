package org.neckgeom.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * An exact conversion {@code y = x * factor + offset} carried as two doubles, so that products come out correctly
 * rounded: 25.4 is no double, and {@code x * 25.4} misses the nearest one for every third inch value.
 */
final class Factor {

    private static final MathContext DIGITS = new MathContext(50);

    static final Factor IDENTITY = new Factor(BigDecimal.ONE, BigDecimal.ZERO);

    private final double high;
    private final double low;
    private final double offset;
    private final double backHigh;
    private final double backLow;
    private final boolean identity;

    private Factor(BigDecimal factor, BigDecimal offset) {
        BigDecimal back = BigDecimal.ONE.divide(factor, DIGITS);
        this.high = factor.doubleValue();
        this.low = factor.subtract(new BigDecimal(high)).doubleValue();
        this.backHigh = back.doubleValue();
        this.backLow = back.subtract(new BigDecimal(backHigh)).doubleValue();
        this.offset = offset.doubleValue();
        this.identity = high == 1 && low == 0 && this.offset == 0;
    }

    static Factor of(BigDecimal factor) {
        return new Factor(factor, BigDecimal.ZERO);
    }

    static Factor ratio(long numerator, long denominator) {
        return of(BigDecimal.valueOf(numerator).divide(BigDecimal.valueOf(denominator), DIGITS));
    }

    static Factor affine(BigDecimal factor, BigDecimal offset) {
        return new Factor(factor, offset);
    }

    boolean hasOffset() {
        return offset != 0;
    }

    double toHouse(double x) {
        return identity ? x : Math.fma(x, high, x * low) + offset;
    }

    double fromHouse(double y) {
        if (identity) {
            return y;
        }
        double x = y - offset;
        return Math.fma(x, backHigh, x * backLow);
    }
}
