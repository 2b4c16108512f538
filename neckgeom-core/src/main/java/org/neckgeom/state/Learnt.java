package org.neckgeom.state;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * What a shop has learnt of a kind of step from its log, such as {@code locating: 0.053 mm, 28 degrees of freedom, from 20
 * settings}. Immutable.
 */
public final class Learnt extends ValueAnswer {

    private static final Form<Learnt> FORM = Form.<Learnt>of("learnt")
            .fact("step", Kind.code(ShopStep.class), "kind of step", Learnt::step)
            .fact("before", Kind.AMOUNT, "standard deviation given before", Learnt::before)
            .fact("standardDeviation", Kind.AMOUNT, "standard deviation now", Learnt::standardDeviation)
            .fact("degrees", Kind.RATIO, "degrees of freedom of it", Learnt::degrees)
            .fact("count", Kind.WHOLE, "settings that were read", Learnt::count)
            .factIfAny("bias", Kind.AMOUNT, "mean error, where it is more than chance", Learnt::bias)
            .fact("unlike", Kind.NAME, "two jigs whose spreads are unlike; empty where none are", Learnt::unlike)
            .finds(
                    "nothing",
                    one -> one.count == 0,
                    "{step}: nothing read yet, {before:own fine digits 2} is common practice or as given")
            .finds(
                    "learnt",
                    "{step}: {standardDeviation:own fine digits 2}, {degrees:0} degrees of freedom, from {count:of setting/settings}; before {before:own fine digits 2}")
            .note("bias", one -> one.bias.isPresent(), "{bias:own fine digits 2} off on average: put that right first")
            .note("unlike", one -> !one.unlike.isEmpty(), "{unlike} spread unlike each other: log and use them apart");

    private final ShopStep step;
    private final double before;
    private final double deviation;
    private final double degrees;
    private final int count;
    private final Optional<Double> bias;
    private final String unlike;

    Learnt(
            ShopStep step,
            double before,
            double deviation,
            double degrees,
            int count,
            Optional<Double> bias,
            String unlike,
            LengthStyle style) {
        super(FORM, style);
        this.step = step;
        this.before = before;
        this.deviation = deviation;
        this.degrees = degrees;
        this.count = count;
        this.bias = bias;
        this.unlike = unlike;
    }

    /** {@return the kind of step} */
    public ShopStep step() {
        return step;
    }

    /** {@return the standard deviation given before, or of common practice} */
    public Amount<Length> before() {
        return style().amount(before);
    }

    /** {@return the standard deviation now; about the bias, where there is one} */
    public Amount<Length> standardDeviation() {
        return style().amount(deviation);
    }

    /** {@return the degrees of freedom of the standard deviation; 8 where nothing was read} */
    public double degrees() {
        return degrees;
    }

    /** {@return how many settings were read} */
    public int count() {
        return count;
    }

    /** {@return the mean error where it is more than twice its uncertainty, the first thing to put right} */
    public Optional<Amount<Length>> bias() {
        return bias.map(style()::amount);
    }

    /** {@return two jigs whose spreads are unlike (1 %, both sides), in words; empty where none are} */
    public String unlike() {
        return unlike;
    }

    /** How far off it is, bias and all: for what is moved and read at the bench, where no bias is kept. */
    Amount<Length> awayFrom0() {
        return style().amount(StrictMath.hypot(deviation, bias.orElse(0.0)));
    }

    /**
     * {@return the distribution of the next error: normal with these degrees of freedom, about the bias where there is one, which
     * is as uncertain as the mean of its settings and of the one before them}
     */
    public ErrorDistribution<Length> spread() {
        double wider = bias.isPresent() ? Math.sqrt(1.0 + 1.0 / (count + 1.0)) : 1.0;
        ErrorDistribution<Length> normal =
                ErrorDistribution.normal(style().amount(wider * deviation)).degreesOfFreedom(degrees);
        return bias().map(normal::shifted).orElse(normal);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {step, before, deviation, degrees, count, bias, unlike};
    }
}
