package org.neckgeom.head;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A scarf laid out by its run along the blank instead of by its angle, such as 63.5 mm on 22.2 mm: 19.3 deg. Immutable.
 *
 * <p>{@code pitch = atan(thickness / run)}. Exact. Shows a layout that is not the angle it claims to be.
 */
public final class ScarfRun extends ValueAnswer {

    private static final Form<ScarfRun> FORM = Form.<ScarfRun>of("scarf-run")
            .fact("angle", Kind.RAD, "the layout really has", ScarfRun::pitchRad)
            .fact("thickness", Kind.MM, "of the blank", l -> l.thickness)
            .finds("laid-out-by-its-run", "Scarf laid out by its run: {angle:2}")
            .fact("run", Kind.MM, "along the blank's face", l -> l.run)
            .line("run", "run", "{run:brief} on {thickness:brief}")
            .fact("glueFace", Kind.MM, "along the slope", l -> ScarfKernel.slope(l.thickness, l.pitchRad()))
            .line("glueFace", "glue face", "{glueFace:text}");

    private final double thickness;
    private final double run;

    private ScarfRun(double thickness, double run, LengthStyle style) {
        super(FORM, style);
        this.thickness = thickness;
        this.run = run;
    }

    /**
     * {@return a layout}
     *
     * @param thickness of the blank, more than 0
     * @param run of the slope along the blank's face, more than 0
     */
    public static ScarfRun of(Quantity<Length> thickness, Quantity<Length> run) {
        return new ScarfRun(
                LibraryUnits.mmPositive(thickness, "thickness"),
                LibraryUnits.mmPositive(run, "run"),
                LengthStyle.of(thickness));
    }

    /** {@return the angle this layout really has} */
    public Amount<Angle> angle() {
        return Amount.ofLibrary(pitchRad(), ShopUnit.DEGREE);
    }

    /**
     * {@return the run the claimed angle would need}
     *
     * @param claimed the angle the layout is meant to have, [1, 45] deg
     */
    public Amount<Length> runFor(Quantity<Angle> claimed) {
        return style().amount(ScarfKernel.run(thickness, ScarfKernel.pitchRad(claimed)));
    }

    /**
     * {@return whether the layout is the angle it claims to be; true when it is}
     *
     * @param claimed the angle the layout is meant to have, [1, 45] deg
     * @param within the tolerance, either way; 0 or more, inclusive
     */
    public boolean isPitch(Quantity<Angle> claimed, Quantity<Angle> within) {
        double off = Math.abs(pitchRad() - ScarfKernel.pitchRad(claimed));
        return off <= LibraryUnits.notNegative(within, ShopUnit.RADIAN, "tolerance");
    }

    private double pitchRad() {
        return StrictMath.atan2(thickness, run);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {thickness, run};
    }
}
