package org.neckgeom.strength;

import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** The moisture that wood comes to in one climate and in another, in percent of its ovendry mass. */
record Moistures(double before, double after) {

    static final Kind<Moistures> KIND = Kind.answer(Form.<Moistures>of("moisture")
            .fact("before", Kind.AMOUNT, "moisture content, of the ovendry mass", x -> percent(x.before))
            .fact("after", Kind.AMOUNT, "moisture content, of the ovendry mass", x -> percent(x.after))
            .finds("moisture", "{before:1} to {after:1}"));

    /** Below 0 where wood dries. */
    double change() {
        return after - before;
    }

    /** When only a share of the change is done. */
    Moistures done(double share) {
        return new Moistures(before, before + share * change());
    }

    private static Amount<?> percent(double moisture) {
        return Amount.of(moisture, ShopUnit.PERCENT);
    }
}
