package org.neckgeom.channel;

import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * One pass of a slot: its depth step and the cutter's height for it, such as {@code pass 2: 2.9 mm, cutter at
 * 5.8 mm}. Immutable.
 */
public final class Pass extends ValueAnswer {

    static final Form<Pass> FORM = Form.<Pass>of("pass")
            .fact("number", Kind.WHOLE, "which pass, from 1", Pass::number)
            .fact("step", Kind.MM, "depth that the pass removes", pass -> pass.stepMm)
            .fact("height", Kind.MM, "of the cutter over the table, the gauge block's step", pass -> pass.heightMm)
            .finds("pass", "pass {number}: {step:table brief}, cutter at {height:table brief}");

    private final int number;
    private final double stepMm;
    private final double heightMm;

    Pass(int number, double stepMm, double heightMm, LengthStyle style) {
        super(FORM, style);
        this.number = number;
        this.stepMm = stepMm;
        this.heightMm = heightMm;
    }

    /** {@return which pass this is, counted from 1; 1 or more} */
    public int number() {
        return number;
    }

    /** {@return what this pass takes off; more than 0} */
    public Amount<Length> step() {
        return style().amount(stepMm);
    }

    /** {@return the cutter's height over the table for this pass: the gauge block's step, the depth reached} */
    public Amount<Length> height() {
        return style().amount(heightMm);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {number, stepMm, heightMm};
    }
}
