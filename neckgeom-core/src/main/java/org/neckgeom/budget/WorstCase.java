package org.neckgeom.budget;

import java.util.Optional;
import javax.measure.Quantity;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The worst that a budget can come to, every error at its end at once, such as {@code worst case -1.24 to 1.24 mm}.
 * Immutable.
 *
 * @param <Q> the kind of the result
 */
public final class WorstCase<Q extends Quantity<Q>> extends ValueAnswer {

    private static final Form<WorstCase<?>> FORM = Form.<WorstCase<?>>of("worst-case")
            .fact("title", Kind.NAME, "what adds up", worst -> worst.title)
            .fact("range", Kind.INTERVAL, "from the lowest to the highest result", WorstCase::range)
            .factIfAny(
                    "normalFactor",
                    Kind.RATIO,
                    "standard deviations at which normal parts are taken",
                    worst -> Optional.of(worst.normalFactor).filter(factor -> factor != 0))
            .finds(
                    "normal-parts",
                    "{title}: worst case {range:own fine}, normal parts at {normalFactor:..2} standard deviations")
            .finds("bounded", "{title}: worst case {range:own fine}");

    private final String title;
    private final double low;
    private final double high;
    private final double normalFactor;
    private final ShopUnit<Q> unit;

    WorstCase(String title, double low, double high, double normalFactor, ShopUnit<Q> unit) {
        super(FORM, LengthStyle.ofUnit(unit));
        this.title = title;
        this.low = low + 0.0;
        this.high = high + 0.0;
        this.normalFactor = normalFactor;
        this.unit = unit;
    }

    /** {@return everything from the lowest to the highest result} */
    public Interval<Q> range() {
        return Interval.ofLibrary(low, high, unit);
    }

    /** {@return the larger of the two ends without its sign; 0 or more} */
    public Amount<Q> largest() {
        return Amount.ofLibrary(Math.max(Math.abs(low), Math.abs(high)), unit);
    }

    /** {@return k, the standard deviations at which normal parts were taken; 0 where the case is a true bound} */
    public double normalFactor() {
        return normalFactor;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, low, high, normalFactor, unit.kind()};
    }
}
