package org.neckgeom.setup;

import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** How likely something is, such as {@code 92.3 % chance of being within 0.05 mm}. Immutable. */
public final class Chance {

    private final double ratio;
    private final String of;

    Chance(double ratio, String of) {
        this.ratio = Math.min(1, Math.max(0, ratio));
        this.of = of;
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
    public boolean equals(Object other) {
        return other instanceof Chance that && Double.compare(ratio, that.ratio) == 0 && of.equals(that.of);
    }

    @Override
    public int hashCode() {
        return Objects.hash(ratio, of);
    }

    /** Returns it in words, such as {@code 92.3 % chance of being within 0.05 mm}. */
    @Override
    public String toString() {
        return Numbers.percent(ratio) + " chance of " + of;
    }
}
