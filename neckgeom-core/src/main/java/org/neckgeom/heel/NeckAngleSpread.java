package org.neckgeom.heel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.kernel.SpreadLaw;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Spread;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * How sure the neck's angle is when the measured rise from fret plane to saddle is off by a spread. Immutable.
 *
 * <p>The angle grows with the rise, so the ends of an interval of the rise are those of the angle's interval: exact, no
 * slope is taken. Only this one error is counted.
 */
public final class NeckAngleSpread implements Answer {

    private static final Form<NeckAngleSpread> FORM = Form.<NeckAngleSpread>of("neck-angle-spread")
            .fact("angle", Kind.answer(NeckAngle.Sentences.FORM), "as computed", s -> s.set.angle())
            .finds("spread", "Neck angle: {angle:finding}")
            .fact("standardUncertainty", Kind.RAD, "of the angle, first order", NeckAngleSpread::uncertaintyRad)
            .line("standardUncertainty", "standard uncertainty", "{standardUncertainty:2}")
            .row("rise", "from the rise", Kind.SPREAD, "of saddle less fret plane", s -> s.rise);

    private final BackSet set;
    private final Spread<Length> rise;

    private NeckAngleSpread(BackSet set, Spread<Length> rise) {
        this.set = set;
        this.rise = rise;
    }

    /**
     * {@return the spread of a neck set's angle; the angle's spread}
     *
     * @param set the neck set
     * @param rise spread of saddle less fret plane, positive higher at the saddle
     */
    public static NeckAngleSpread of(BackSet set, Spread<Length> rise) {
        return new NeckAngleSpread(
                Objects.requireNonNull(set, "set"),
                Objects.requireNonNull(rise, "spread").in(set.style()));
    }

    /**
     * {@return the interval that holds the angle with a probability, as much left out on either side, positive with the
     * head back}
     *
     * @param coverage more than 0 and less than 100 percent
     */
    public Interval<Angle> interval(Quantity<Dimensionless> coverage) {
        double left = (1 - HouseUnits.probability(coverage, "coverage")) / 2;
        SpreadLaw law = new SpreadLaw(rise);
        return Interval.ofHouse(
                set.angleRad(law.passedWith(1 - left)), set.angleRad(law.passedWith(left)), ShopUnit.DEGREE);
    }

    /**
     * {@return the angle's standard uncertainty from the slope: {@code u / (S cos t - a_s sin t)}; 0 or more} Estimate:
     * first order.
     */
    public Amount<Angle> standardUncertainty() {
        return Amount.ofHouse(uncertaintyRad(), ShopUnit.DEGREE);
    }

    private double uncertaintyRad() {
        double t = set.angleRad();
        double slope = set.reachMm() * StrictMath.cos(t) - set.stringAtSaddleMm() * StrictMath.sin(t);
        return StrictMath.sqrt(rise.varianceHouse()) / slope;
    }

    @Override
    public Form<NeckAngleSpread> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return set.style();
    }

    /** True for an equal neck set and spread. */
    @Override
    public boolean equals(Object other) {
        return other instanceof NeckAngleSpread that && set.equals(that.set) && rise.equals(that.rise);
    }

    @Override
    public int hashCode() {
        return Objects.hash(set, rise);
    }

    /** Returns the angle and its uncertainty. */
    @Override
    public String toString() {
        return text(set.style());
    }
}
