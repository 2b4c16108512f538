package org.neckgeom.solid;

import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The probability that less wood is left under the channel than a limit, such as 0.8 % under 4 mm: 1 minus the
 * conformance probability. Immutable.
 */
public final class FloorProbability extends ValueAnswer {

    private static final Form<FloorProbability> FORM = Form.<FloorProbability>of("wood-chance")
            .fact("limit", Kind.MM, "of the wood left", c -> c.limit)
            .fact("probability", Kind.PROBABILITY, "that less is left", FloorProbability::probability)
            .finds("chance", "Probability of less than {limit:brief}: {probability}")
            .row(
                    "least",
                    "thinnest as designed",
                    Kind.answer(WoodAt.Sentences.UNTITLED),
                    "place",
                    FloorProbability::least)
            .fact("margin", Kind.MM, "of the thinnest place over the limit", c -> c.least.woodMm() - c.limit)
            .line("margin", "margin", "{margin:text}");

    private final double probability;
    private final double limit;
    private final WoodAt least;

    FloorProbability(double probability, double limit, WoodAt least, LengthStyle style) {
        super(FORM, style);
        this.probability = Math.max(0, Math.min(1, probability));
        this.limit = limit;
        this.least = least;
    }

    /** {@return the probability as a number; in [0, 1]} */
    public double probability() {
        return probability;
    }

    /** {@return the limit asked about} */
    public Amount<Length> limit() {
        return style().amount(limit);
    }

    /** {@return the thinnest place as designed; where and how much} */
    public WoodAt least() {
        return least;
    }

    /** {@return the wood of the thinnest place as designed less the limit; negative where it is under the limit} */
    public Amount<Length> margin() {
        return style().amount(least.woodMm() - limit);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {probability, limit, least};
    }
}
