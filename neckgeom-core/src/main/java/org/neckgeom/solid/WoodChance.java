package org.neckgeom.solid;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/** The chance that less wood is left under the channel than a limit, such as 0.8 % under 4 mm. Immutable. */
public final class WoodChance implements SaysLengths<WoodChance> {

    private final double probability;
    private final double limit;
    private final WoodAt least;
    private final LengthStyle style;

    private WoodChance(double probability, double limit, WoodAt least, LengthStyle style) {
        this.probability = Math.max(0, Math.min(1, probability));
        this.limit = limit;
        this.least = least;
        this.style = style;
    }

    static WoodChance of(double probability, double limit, WoodAt least, LengthStyle style) {
        return new WoodChance(probability, limit, least, style);
    }

    /**
     * Returns the chance as a number.
     *
     * @return in [0, 1]
     */
    public double probability() {
        return probability;
    }

    /**
     * Returns the limit asked about.
     *
     * @return the limit
     */
    public Amount<Length> limit() {
        return style.amount(limit);
    }

    /**
     * Returns the thinnest place as designed.
     *
     * @return where and how much
     */
    public WoodAt least() {
        return least;
    }

    /**
     * Returns how much more wood the thinnest place has, as designed, than the limit.
     *
     * @return the margin, negative when the design itself is under the limit
     */
    public Amount<Length> margin() {
        return style.amount(least.woodMm() - limit);
    }

    private String words() {
        double percent = 100 * probability;
        if (percent > 0 && percent < 1e-4) {
            return "under 0.0001 %";
        }
        return percent > 0 && percent < 0.1
                ? Numbers.fixed(percent, Numbers.decimalsFor(percent, 1)) + " %"
                : Numbers.percent(probability);
    }

    @Override
    public WoodChance in(LengthStyle other) {
        return new WoodChance(probability, limit, least.in(other), other);
    }

    /** True for the same chance, limit and place. */
    @Override
    public boolean equals(Object other) {
        return other instanceof WoodChance that
                && Double.compare(probability, that.probability) == 0
                && Double.compare(limit, that.limit) == 0
                && least.equals(that.least);
    }

    @Override
    public int hashCode() {
        return Objects.hash(probability, limit, least);
    }

    /** Returns the chance, then the thinnest place and its margin. */
    @Override
    public String toString() {
        double margin = least.woodMm() - limit;
        return Report.titled("Chance of less than " + style.brief(limit) + ": " + words())
                .row("thinnest as designed", least.toString().replaceFirst("^Wood left: ", ""))
                .row("margin", style.text(margin))
                .toString();
    }
}
