package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.Force;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The force of each string on the nut, square to the glue face, such as 19.9 N, 20.4 N: 80.7 N together. Immutable.
 *
 * <p>Estimate: no friction in the slots. Negative where a string would lift off.
 */
public final class NutForces extends ValueAnswer {

    private static final Form<NutForces> FORM = Form.<NutForces>of("nut-forces")
            .fact("total", Kind.AMOUNT, "of all strings; positive: down on the nut", NutForces::total)
            .fact(
                    "each",
                    Kind.list(Kind.libraryValue(ShopUnit.NEWTON)),
                    "from bass to treble; positive: down on the nut",
                    forces -> Arrays.stream(forces.newtons).boxed().toList())
            .finds("on-the-nut", "Strings on the nut: {total:1}")
            .line("each", "each", "{each:1 first 12}")
            .note("estimate", "estimate: no friction in the slots");

    private final double[] newtons;

    private NutForces(double[] newtons) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.newtons = newtons;
    }

    static NutForces ofNewton(double[] newtons) {
        return new NutForces(newtons.clone());
    }

    /** {@return the force of each string, from bass to treble, positive down on the nut} */
    public List<Amount<Force>> each() {
        List<Amount<Force>> all = new ArrayList<>();
        for (double one : newtons) {
            all.add(Amount.ofLibrary(one, ShopUnit.NEWTON));
        }
        return List.copyOf(all);
    }

    /** {@return the force of all strings together, positive down on the nut} */
    public Amount<Force> total() {
        return Amount.ofLibrary(Arrays.stream(newtons).sum(), ShopUnit.NEWTON);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {newtons};
    }
}
