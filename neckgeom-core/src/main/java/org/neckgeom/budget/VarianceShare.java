package org.neckgeom.budget;

import javax.measure.Quantity;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The variance share of one component in a budget, such as {@code body joint at 345 mm: 44.9 % of the variance}.
 * Immutable.
 *
 * @param <Q> the kind of the result
 */
public final class VarianceShare<Q extends Quantity<Q>> extends ValueAnswer {

    static final Form<VarianceShare<?>> FORM = Form.<VarianceShare<?>>of("share")
            .fact("name", Kind.NAME, "of the component or the step", VarianceShare::name)
            .fact(
                    "varianceShare",
                    Kind.RATIO,
                    "of the variance, 0 to 1; less than 0 where it offsets those it is correlated with",
                    VarianceShare::fraction)
            .fact(
                    "contribution",
                    Kind.AMOUNT,
                    "standard deviation it brings into the result",
                    VarianceShare::contribution)
            .phrase("part", share -> share.fraction < 0, "offsets")
            .phrase("part", "{varianceShare:percent 1}")
            .finds("offsets", share -> share.fraction < 0, "{name}: offsets others, {contribution:own fine digits 2}")
            .finds("share", "{name}: {part} of the variance, {contribution:own fine digits 2}");

    private final String name;
    private final double fraction;
    private final Amount<Q> contribution;

    VarianceShare(String name, double fraction, Amount<Q> contribution) {
        super(FORM, LengthStyle.ofUnit(contribution.unit()));
        this.name = name;
        this.fraction = fraction;
        this.contribution = contribution;
    }

    /** {@return whose share it is; the component or the step} */
    public String name() {
        return name;
    }

    /**
     * {@return the share of the variance; in [0, 1], or less than 0 where a component offsets those it is correlated with;
     * the shares of a budget add up to 1}
     */
    public double fraction() {
        return fraction;
    }

    /** {@return the standard deviation it brings into the result; 0 or more} */
    public Amount<Q> contribution() {
        return contribution;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {name, fraction, contribution};
    }
}
