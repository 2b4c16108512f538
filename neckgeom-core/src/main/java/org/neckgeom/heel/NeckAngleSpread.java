package org.neckgeom.heel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.SpreadLaw;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * How sure the neck's angle is when the measured rise from fret plane to saddle is off by a spread. Immutable.
 *
 * <p>The angle grows with the rise, so the ends of an interval of the rise are those of the angle's interval: exact, no
 * slope is taken. Only this one error is counted.
 */
public final class NeckAngleSpread extends ValueAnswer {

    private static final Form<NeckAngleSpread> FORM = Form.<NeckAngleSpread>of("neck-angle-spread")
            .fact("angle", Kind.answer(NeckAngle.Sentences.FORM), "as computed", s -> s.angle)
            .finds("spread", "Neck angle: {angle:finding}")
            .fact("standardUncertainty", Kind.RAD, "of the angle, first order", NeckAngleSpread::uncertaintyRad)
            .line("standardUncertainty", "standard uncertainty", "{standardUncertainty:2}")
            .row("rise", "from the rise", Kind.SPREAD, "of saddle less fret plane", s -> s.rise);

    private final NeckAngle angle;
    private final ErrorDistribution<Length> rise;

    private NeckAngleSpread(NeckAngle angle, ErrorDistribution<Length> rise) {
        super(FORM, angle.style());
        this.angle = angle;
        this.rise = rise;
    }

    static NeckAngleSpread of(NeckAngle angle, ErrorDistribution<Length> rise) {
        return new NeckAngleSpread(angle, Objects.requireNonNull(rise, "spread").in(angle.style()));
    }

    /**
     * {@return the interval that holds the angle with a probability, as much left out on either side, positive with the
     * head back}
     *
     * @param coverage more than 0 and less than 100 percent
     */
    public Interval<Angle> interval(Quantity<Dimensionless> coverage) {
        double left = (1 - LibraryUnits.probability(coverage, "coverage")) / 2;
        SpreadLaw law = new SpreadLaw(rise);
        return Interval.ofLibrary(
                angle.rad(law.passedWith(1 - left)), angle.rad(law.passedWith(left)), ShopUnit.DEGREE);
    }

    /**
     * {@return the angle's standard uncertainty from the slope: {@code u / (S cos t - a_s sin t)}; 0 or more} Estimate:
     * first order.
     */
    public Amount<Angle> standardUncertainty() {
        return Amount.ofLibrary(uncertaintyRad(), ShopUnit.DEGREE);
    }

    private double uncertaintyRad() {
        double t = angle.rad();
        double slope = angle.reachMm() * StrictMath.cos(t) - angle.stringMm() * StrictMath.sin(t);
        return StrictMath.sqrt(rise.libraryVariance()) / slope;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {angle, rise};
    }
}
