package org.neckgeom.budget;

import java.util.Objects;
import javax.measure.Quantity;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * What one contributor has in a budget, such as {@code body joint at 345 mm: 44.9 % of the variance}. Immutable.
 *
 * @param <Q> the kind of the result
 */
public final class Share<Q extends Quantity<Q>> implements Answer {

    static final Form<Share<?>> FORM = Form.<Share<?>>of("share")
            .fact("name", Kind.NAME, "of the contributor or the step", Share::name)
            .fact("varianceShare", Kind.RATIO, "of the variance, 0 to 1", Share::fraction)
            .fact("contribution", Kind.AMOUNT, "standard deviation it brings into the result", Share::contribution)
            .finds("share", "{name}: {varianceShare:percent 1} of the variance, {contribution:own fine digits 2}");

    private final String name;
    private final double fraction;
    private final double contribution;
    private final ShopUnit<Q> unit;

    Share(String name, double fraction, double contribution, ShopUnit<Q> unit) {
        this.name = name;
        this.fraction = fraction;
        this.contribution = contribution;
        this.unit = unit;
    }

    /** {@return whose share it is; the contributor or the step} */
    public String name() {
        return name;
    }

    /** {@return the share of the variance; in [0, 1]} */
    public double fraction() {
        return fraction;
    }

    /** {@return the standard deviation it brings into the result; 0 or more} */
    public Amount<Q> contribution() {
        return Amount.ofHouse(contribution, unit);
    }

    double contributionHouse() {
        return contribution;
    }

    @Override
    public Form<Share<?>> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Share<?> other
                && name.equals(other.name)
                && Double.compare(fraction, other.fraction) == 0
                && Double.compare(contribution, other.contribution) == 0
                && unit.kind() == (Class<?>) other.unit.kind();
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, fraction, contribution);
    }

    /** Returns such as {@code body joint at 345 mm: 44.9 % of the variance, 0.16 mm}. */
    @Override
    public String toString() {
        return text(style());
    }
}
