package org.neckgeom.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * Creep: how much further a neck bows under a load that stays, such as {@code 0.33 of the elastic bow after 180 days (95 %: 0.21
 * to 0.53)}. Immutable.
 *
 * <p>{@code phi = 0.7 (t/10 years)^0.25}, a factor of 1.6 either way (95 %). Estimate, held by 0.5 for seasoned lumber of which
 * half stays (NDS commentary), 0.6 (EN 1995-1-1) and about 1 after years (Wood Handbook 2010, ch. 5); the exponent is from
 * memory. It acts on the net moment, strings less rod: a neck that its rod sets straight creeps little. About half goes back
 * once the load is off. Relief is that of an hour after tuning, so that {@link Bow#after} grows by {@code (1 + phi)/(1 + phi of the
 * first hour)}.
 */
public final class Creep extends ValueAnswer {

    private static final double AFTER_TEN_YEARS = 0.7;
    private static final double TEN_YEARS = 3652.5;
    private static final double POWER = 0.25;
    private static final double FACTOR = 1.6;
    private static final double MOST_DAYS = 36_525;

    /** Relief is that of an hour after tuning. */
    private static final double HOUR = 1 / 24.0;

    private static final Form<Creep> FORM = Form.<Creep>of("creep")
            .fact("asGiven", Kind.NAME, "days in words", creep -> Numbers.plain(creep.days))
            .fact("days", Kind.RATIO, "under the load", creep -> creep.days)
            .fact("share", Kind.RATIO, "of the elastic bow, on top of it", Creep::share)
            .fact("lower", Kind.RATIO, "lower end of the 95 % interval", Creep::lowerShare)
            .fact("upper", Kind.RATIO, "upper end of the 95 % interval", Creep::upperShare)
            .finds("creep", "Creep after {asGiven} days: {share:2} of the elastic bow (95 %: {lower:2} to {upper:2})")
            .note("estimate", "Estimate: power law in time, net moment of strings and rod; about half goes back.");

    /** Within the first hour. */
    static final Creep NONE = new Creep(0);

    private final double days;

    private Creep(double days) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.days = days;
    }

    /**
     * {@return the creep after some days}
     *
     * @param days under the load, from 0 to 36,525
     */
    public static Creep after(double days) {
        if (!(days >= 0 && days <= MOST_DAYS)) {
            throw Refusal.of("days", "range", "be between 0 and " + Numbers.plain(MOST_DAYS), days);
        }
        return new Creep(days + 0.0);
    }

    /** {@return the bow by creep over the elastic bow, a ratio; 0 or more} */
    public double share() {
        return AFTER_TEN_YEARS * StrictMath.pow(days / TEN_YEARS, POWER);
    }

    /** {@return the lower end of its 95 % interval} */
    public double lowerShare() {
        return share() / FACTOR;
    }

    /** {@return the upper end of its 95 % interval} */
    public double upperShare() {
        return share() * FACTOR;
    }

    /** {@return the days under the load; from 0 to 36,525} */
    public double days() {
        return days;
    }

    /** Logarithm of a bow now over that an hour after tuning, some standard deviations of ln phi from its middle. */
    double logSinceTuning(double deviations) {
        double factor = StrictMath.exp(StrictMath.log(FACTOR) / ModulusSpread.K95 * deviations);
        double hour = AFTER_TEN_YEARS * StrictMath.pow(HOUR / TEN_YEARS, POWER);
        return days <= HOUR ? 0 : StrictMath.log1p(factor * share()) - StrictMath.log1p(factor * hour);
    }

    /** What has become of a relief set an hour after tuning on a neck that had some before: that part does not creep. */
    Likely<Length> of(Likely<Length> set, double before) {
        double few = before + (set.low() - before) * StrictMath.exp(logSinceTuning(-ModulusSpread.K95));
        double many = before + (set.high() - before) * StrictMath.exp(logSinceTuning(ModulusSpread.K95));
        return new Likely<>(
                before + (set.value() - before) * StrictMath.exp(logSinceTuning(0)),
                Math.min(few, many),
                Math.max(few, many),
                set.unit());
    }

    /**
     * {@return the bow that creep adds to an elastic one, in its unit}
     *
     * @param elastic net bow of strings and rod, half a minute after loading
     */
    public Amount<Length> on(Quantity<Length> elastic) {
        LengthStyle style = LengthStyle.of(elastic);
        return style.amount(share() * LibraryUnits.mm(elastic, "elastic bow"));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {days};
    }
}
