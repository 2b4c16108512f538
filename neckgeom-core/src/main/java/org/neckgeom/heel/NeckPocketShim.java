package org.neckgeom.heel;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The shim ({@index wedge}) under a neck in a neck pocket, such as 0.30 mm for 1.2 mm at the bridge. Immutable.
 *
 * <p>{@code shim = |change| pocket length / distance from the other end to the saddle}. To raise the projection at the
 * bridge the shim goes under the end toward the bridge and the neck tips about the pocket's nut-side edge (the joint),
 * S from the saddle; to lower it, under the nut-side edge, and the neck tips about its end, S less the pocket's length
 * from the saddle. Estimate: the lever rule for small turns; a full-length tapered shim has this thickness at
 * its thick end.
 */
public final class NeckPocketShim extends ValueAnswer {

    private static final Form<NeckPocketShim> FORM = Form.<NeckPocketShim>of("pocket-shim")
            .fact(
                    "thickness",
                    Kind.MM,
                    "at its thick end, 0 or more",
                    s -> s.thickness().libraryValue())
            .phrase("turn", NeckPocketShim::isTowardBridge, "higher, head back")
            .phrase("turn", "lower, head forward")
            .findsOnly("nothing", s -> s.change == 0, "Pocket shim: none")
            .finds(
                    "toward-the-bridge",
                    NeckPocketShim::isTowardBridge,
                    "Pocket shim: {thickness:text} under the end toward the bridge")
            .finds("nut-side", "Pocket shim: {thickness:text} under the nut-side edge")
            .fact("change", Kind.MM, "of the projection at the bridge; positive: higher", s -> s.change)
            .line("change", "bridge reading", "{change:size brief} {turn}")
            .note("estimate", "estimate: lever rule for a small turn");

    private final double pocket;
    private final double change;
    private final double reach;

    private NeckPocketShim(double pocket, double change, double reach, LengthStyle style) {
        super(FORM, style);
        this.pocket = pocket;
        this.change = change;
        this.reach = reach;
    }

    static NeckPocketShim of(NeckAngle angle, Quantity<Length> pocketLength, Quantity<Length> change) {
        double pocket = LibraryUnits.mmPositive(pocketLength, "pocket length");
        if (!(pocket < angle.reachMm())) {
            throw LibraryUnits.refused(
                    "pocket length",
                    "less-than",
                    "less than " + angle.style().brief(angle.reachMm()) + " to the saddle",
                    pocketLength);
        }
        return new NeckPocketShim(
                pocket, LibraryUnits.mm(change, "change at the bridge"), angle.reachMm(), angle.style());
    }

    /** {@return the shim's thickness; 0 or more} */
    public Amount<Length> thickness() {
        return style().amount(pocket * Math.abs(change) / (change > 0 ? reach : reach - pocket));
    }

    /**
     * {@return whether the shim goes under the end toward the bridge; otherwise under the nut-side edge; true for the
     * end toward the bridge}
     */
    public boolean isTowardBridge() {
        return change > 0;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {pocket, change, reach};
    }
}
