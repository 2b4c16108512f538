package org.neckgeom.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * How fast the air reaches the wood: what share of a change of its moisture is done after some days, such as {@code 57 % (26 to
 * 82 %)}. Immutable.
 *
 * <p>A slab open on both faces: share done {@code 1 - sum 8/(pi^2 (2k+1)^2) exp(-(2k+1)^2 pi^2 D t/(4 l^2))}, l half the
 * thickness, or all of it where one face is glued. D across the grain 0.2 to 1e-10 m2/s (spruce 0.94 and 1.00e-10 as published,
 * dense woods 0.2 to 0.5e-10 from memory), less in dry wood; a finish slows it 3 to 10 times (from memory). Of a climate that
 * swings the slab's mean follows {@code |tanh z/z|, z^2 = i pi^3 tau/(2 period)}, tau its slowest time. Estimate.
 */
public final class AirInWood extends ValueAnswer {

    /** mm2 a day. */
    private static final double FAST = 1e-10 * 1e6 * 86_400;

    private static final double SLOW = 0.2e-10 * 1e6 * 86_400;
    private static final double MIDDLE = 0.45e-10 * 1e6 * 86_400;

    /** Standard deviation of ln D: dense wood to light softwood is its 95 % interval. */
    private static final double LOG_SPREAD = StrictMath.log(FAST / SLOW) / (2 * ModulusSpread.K95);

    private static final int TERMS = 200;
    private static final double MOST_DAYS = 36_525;

    /** In a row of another answer. */
    static final Kind<AirInWood> IN_ROW = Kind.answer(Form.<AirInWood>of("air-in-row")
            .fact("asGiven", Kind.NAME, "days in words", x -> Numbers.plain(x.days))
            .fact("days", Kind.RATIO, "in the new air", x -> x.days)
            .fact("done", Kind.RATIO, "share of the change of moisture", AirInWood::shareDone)
            .finds("air-in-row", "{done:percent 0} of the change after {asGiven} days"));

    private static final Form<AirInWood> FORM = Form.<AirInWood>of("air-in-wood")
            .fact("thickness", Kind.MM, "of the wood", x -> x.thickness)
            .fact("glued", Kind.FLAG, "whether one face is closed", x -> x.glued)
            .fact("asGiven", Kind.NAME, "days in words", x -> Numbers.plain(x.days))
            .fact("days", Kind.RATIO, "in the new air", x -> x.days)
            .fact("done", Kind.RATIO, "share of the change of moisture", AirInWood::shareDone)
            .fact("lower", Kind.RATIO, "of a dense wood", AirInWood::leastDone)
            .fact("upper", Kind.RATIO, "of a light softwood", AirInWood::mostDone)
            .phrase("faces", x -> x.glued, "one face glued")
            .phrase("faces", "open on both faces")
            .finds(
                    "air-in-wood",
                    "{thickness:brief} of bare wood, {faces}, {asGiven} days: {done:percent 0} of the change ({lower:percent 0} to"
                            + " {upper:percent 0})")
            .note(
                    "estimate",
                    "Estimate: diffusion across the grain, dense wood to light softwood; a finish slows it 3 to 10 times.");

    private final double thickness;
    private final boolean glued;
    private final double days;

    private AirInWood(double thickness, boolean glued, double days, LengthStyle style) {
        super(FORM, style);
        this.thickness = thickness;
        this.glued = glued;
        this.days = days;
    }

    /**
     * {@return the share of a change that is done after some days in wood open on both faces}
     *
     * @param thickness across the grain, more than 0
     * @param days in the new air, from 0 to 36,525
     */
    public static AirInWood of(Quantity<Length> thickness, double days) {
        double mm = LibraryUnits.mmPositive(thickness, "thickness");
        if (!(days >= 0 && days <= MOST_DAYS)) {
            throw Refusal.of("days", "range", "be between 0 and " + Numbers.plain(MOST_DAYS), days);
        }
        return new AirInWood(mm, false, days + 0.0, LengthStyle.of(thickness));
    }

    /** {@return the same for wood glued on one face, such as a fingerboard on its neck} */
    public AirInWood gluedOnOneFace() {
        return new AirInWood(thickness, true, days, style());
    }

    /** {@return the share that is done, in a wood between; from 0 to 1} */
    public double shareDone() {
        return done(MIDDLE);
    }

    /** {@return the share that is done in a dense wood; from 0 to 1} */
    public double leastDone() {
        return done(SLOW);
    }

    /** {@return the share that is done in a light softwood; from 0 to 1} */
    public double mostDone() {
        return done(FAST);
    }

    private double half() {
        return glued ? thickness : thickness / 2;
    }

    private double done(double mm2PerDay) {
        return share(mm2PerDay * days / (half() * half()));
    }

    /** The share that is done in a wood some standard deviations of ln D faster than the one between. */
    double doneIn(double deviations) {
        return done(MIDDLE * StrictMath.exp(LOG_SPREAD * deviations));
    }

    /** {@return how long the wood is in the new air, in days; 0 or more} */
    public double days() {
        return days;
    }

    /** The same wood after another time. */
    AirInWood after(double otherDays) {
        return new AirInWood(thickness, glued, otherDays, style());
    }

    /** Of {@code D t/l^2}. */
    static double share(double fourier) {
        double left = 0;
        for (int k = 0; k < TERMS; k++) {
            double odd = 2 * k + 1;
            left += 8 / (Math.PI * Math.PI * odd * odd) * StrictMath.exp(-odd * odd * Math.PI * Math.PI / 4 * fourier);
        }
        return fourier == 0 ? 0 : Math.min(1, Math.max(0, 1 - left));
    }

    /** The slowest time in days, {@code 4 l^2/(pi^2 D)}, of half a thickness in mm. */
    static double slowestDays(double halfMm, double mm2PerDay) {
        return 4 * halfMm * halfMm / (Math.PI * Math.PI * mm2PerDay);
    }

    /** What the slab's mean follows of a swing: {@code |tanh z/z|} for {@code z = a (1 + i)}. */
    static double follows(double slowestDays, double periodDays) {
        double a = Math.sqrt(Math.PI * Math.PI * Math.PI * slowestDays / (4 * periodDays));
        double up = StrictMath.exp(-2 * a);
        double c = StrictMath.cos(2 * a);
        // |tanh|^2 = (cosh 2a - cos 2a)/(cosh 2a + cos 2a), both over cosh's larger half.
        double tanh = Math.sqrt((1 + up * up - 2 * up * c) / (1 + up * up + 2 * up * c));
        return tanh / (a * Math.sqrt(2));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {thickness, glued, days};
    }
}
