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
 * The wood to take off the heel's mating face in a {@index "neck reset"}, to raise or lower the fret plane at the bridge,
 * such as 0.308 mm at the top edge for 1 mm lower. Immutable.
 *
 * <p>{@code cut = heel height |change| / lever} at one end of the face, running out to nothing at the other. To raise the
 * projection the wood comes off at the cap and the head tips back about the top edge; to lower it the wood comes off at
 * the top edge and the head tips forward about the cap. Estimate: a small turn with its exact
 * lever, {@code S/cos t - a_s sin t/cos^2 t + p tan t}, p the fret plane over the edge it tips about; of second order in the turn:
 * under 0.3 % for a degree.
 */
public final class HeelWedge extends ValueAnswer {

    private static final Form<HeelWedge> FORM = Form.<HeelWedge>of("heel-wedge")
            .fact(
                    "cut",
                    Kind.MM,
                    "greatest thickness, 0 or more",
                    wedge -> wedge.cut().libraryValue())
            .phrase("other", HeelWedge::isAtCap, "at the top edge")
            .phrase("other", "at the cap")
            .phrase("turn", HeelWedge::isAtCap, "higher, head back")
            .phrase("turn", "lower, head forward")
            .phrase("length", w -> w.shorteningMm() > 0, "shorter")
            .phrase("length", "longer")
            .findsOnly("nothing", w -> w.change == 0, "Heel wedge: nothing to take off")
            .finds("at-the-cap", HeelWedge::isAtCap, "Heel wedge: {cut:text} at the cap")
            .finds("at-the-top-edge", "Heel wedge: {cut:text} at the top edge")
            .line("runOut", "runs out to nothing", "{other}")
            .fact("change", Kind.MM, "of the fret plane at the bridge; positive: higher", w -> w.change)
            .line("change", "bridge reading", "{change:size brief} {turn}")
            .fact("shortening", Kind.MM, "of the speaking length", HeelWedge::shorteningMm)
            .line("shortening", "strings", "{shortening:size text} {length}")
            .note("estimate", "estimate: lever rule for a small turn");

    private final double heel;
    private final double change;
    private final double lever;
    private final double plane;

    private HeelWedge(double heel, double change, double lever, double plane, LengthStyle style) {
        super(FORM, style);
        this.heel = heel;
        this.change = change;
        this.lever = lever;
        this.plane = plane;
    }

    static HeelWedge of(NeckAngle angle, Quantity<Length> heelHeight, Quantity<Length> change) {
        return new HeelWedge(
                LibraryUnits.mmPositive(heelHeight, "heel height"),
                LibraryUnits.mm(change, "change at the bridge"),
                angle.leverMm(
                        LibraryUnits.mm(change, "change at the bridge") > 0
                                ? 0
                                : LibraryUnits.mm(heelHeight, "heel height")),
                angle.planeMm(),
                angle.style());
    }

    /** {@return the greatest thickness of the wedge; 0 or more} */
    public Amount<Length> cut() {
        return style().amount(heel * Math.abs(change) / lever);
    }

    /**
     * {@return whether the wood comes off at the cap, to raise the projection; otherwise at the top edge; true for the
     * cap}
     */
    public boolean isAtCap() {
        return change > 0;
    }

    /**
     * {@return how much nearer the bridge the frets come: {@code (heel + fret plane) turn} when the neck tips about the
     * cap, {@code -fret plane turn} when it tips about the top edge; positive when the string's speaking length
     * shrinks} Move the bridge, or add it to the saddle's place.
     */
    public Amount<Length> shortening() {
        return style().amount(shorteningMm());
    }

    private double shorteningMm() {
        double turn = Math.abs(change) / lever;
        return isAtCap() ? -plane * turn : (heel + plane) * turn;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {heel, change, lever, plane};
    }
}
