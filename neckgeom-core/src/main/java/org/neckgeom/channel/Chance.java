package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/** How likely a slot is within its limit, such as {@code 92.3 % chance of being within 0.05 mm}. Immutable. */
public final class Chance implements SaysLengths<Chance> {

    private final double ratio;
    private final double limitMm;
    private final boolean afterOneMore;
    private final LengthStyle style;

    Chance(double ratio, double limitMm, boolean afterOneMore, LengthStyle style) {
        this.ratio = Math.min(1, Math.max(0, ratio));
        this.limitMm = limitMm;
        this.afterOneMore = afterOneMore;
        this.style = style;
    }

    /**
     * Returns the probability as a ratio.
     *
     * @return in [0, 1]
     */
    public double ratio() {
        return ratio;
    }

    /**
     * Returns the probability in percent.
     *
     * @return in [0, 100] percent
     */
    public Amount<Dimensionless> percent() {
        return Amount.ofHouse(ratio, ShopUnit.PERCENT);
    }

    @Override
    public Chance in(LengthStyle other) {
        return new Chance(ratio, limitMm, afterOneMore, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Chance that
                && Double.compare(ratio, that.ratio) == 0
                && Double.compare(limitMm, that.limitMm) == 0
                && afterOneMore == that.afterOneMore;
    }

    @Override
    public int hashCode() {
        return Objects.hash(ratio, limitMm, afterOneMore);
    }

    /** Returns it in words, such as {@code 92.3 % chance of being within 0.05 mm}. */
    @Override
    public String toString() {
        return Numbers.percent(ratio) + " chance of being within " + style.brief(limitMm)
                + (afterOneMore ? " after one more move" : "");
    }
}
