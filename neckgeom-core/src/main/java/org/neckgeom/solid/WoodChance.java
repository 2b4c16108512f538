package org.neckgeom.solid;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** The chance that less wood is left under the channel than a limit, such as 0.8 % under 4 mm. Immutable. */
public final class WoodChance implements Answer {

    private static final Form<WoodChance> FORM = Form.<WoodChance>of("wood-chance")
            .fact("limit", Kind.MM, "of the wood left", c -> c.limit)
            .fact("probability", Kind.PROBABILITY, "that less is left", WoodChance::probability)
            .phrase("percent", c -> c.probability > 0 && c.probability < 1e-6, "under 0.0001 %")
            .phrase("percent", c -> c.probability > 0 && c.probability < 1e-3, "{probability:percent digits 2}")
            .phrase("percent", "{probability}")
            .finds("chance", "Chance of less than {limit:brief}: {percent}")
            .row("least", "thinnest as designed", Kind.answer(WoodAt.Sentences.UNTITLED), "place", WoodChance::least)
            .fact("margin", Kind.MM, "of the thinnest place over the limit", c -> c.least.woodMm() - c.limit)
            .line("margin", "margin", "{margin:text}");

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

    /** {@return the chance as a number; in [0, 1]} */
    public double probability() {
        return probability;
    }

    /** {@return the limit asked about} */
    public Amount<Length> limit() {
        return style.amount(limit);
    }

    /** {@return the thinnest place as designed; where and how much} */
    public WoodAt least() {
        return least;
    }

    /**
     * {@return how much more wood the thinnest place has, as designed, than the limit; negative when the design itself
     * is under the limit}
     */
    public Amount<Length> margin() {
        return style.amount(least.woodMm() - limit);
    }

    @Override
    public Form<WoodChance> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return style;
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
        return text(style);
    }
}
