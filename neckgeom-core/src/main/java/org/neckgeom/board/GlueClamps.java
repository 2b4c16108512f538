package org.neckgeom.board;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The clamps for gluing a fingerboard on: force over the whole joint, how many clamps, how far apart. Immutable.
 *
 * <p>{@code n = ceil(p A/F)}, A the glued area, p the pressure, F the force of one clamp. Under a stiff caul of thickness t a
 * clamp's force spreads by 45 deg, so that clamps are no more than 2 t apart. Exact in p and F; the pressure, 0.7 to 1.2 MPa in
 * common practice, and the spread of 45 deg are common practice. The glue's own sheet comes first.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class GlueClamps extends ValueAnswer {

    /** Least pressure on the joint, in MPa: common practice. */
    public static final double USUAL_PRESSURE_MPA = 0.7;

    /** Where a sum is whole but for rounding it is not one more. */
    private static final double ROUNDING = 1e-9;

    private static final Form<GlueClamps> FORM = Form.<GlueClamps>of("glue-clamps")
            .fact("pressure", Kind.libraryValue(ShopUnit.MEGAPASCAL), "on the joint", c -> c.pressure)
            .fact("length", Kind.MM, "of the joint", c -> c.length)
            .fact("meanWidth", Kind.MM, "of the joint", c -> c.width)
            .fact("force", Kind.libraryValue(ShopUnit.NEWTON), "of all clamps", GlueClamps::newton)
            .fact("each", Kind.libraryValue(ShopUnit.NEWTON), "force of one clamp", c -> c.each)
            .fact("caul", Kind.MM, "its thickness", c -> c.caul)
            .fact("spacing", Kind.MM, "greatest between two clamps", c -> 2 * c.caul)
            .factIfAny(
                    "clamps",
                    Kind.WHOLE,
                    "how many",
                    c -> c.count().isPresent() ? Optional.of(c.count().getAsInt()) : Optional.<Integer>empty())
            .finds("clamps", c -> c.count().isPresent(), "Clamps for the fingerboard: {clamps}, {force:0} in all")
            .finds("force", "Clamps for the fingerboard: {force:0} in all")
            .line("pressure", "pressure", "{pressure:2} over {length:brief} by {meanWidth:brief}")
            .line("each", "one clamp", c -> !Double.isNaN(c.each), "{each:0}")
            .line(
                    "spacing",
                    "apart",
                    c -> !Double.isNaN(c.caul),
                    "no more than {spacing:brief} under a caul {caul:brief} thick")
            .note("practice", "common practice: 0.7 to 1.2 MPa; the glue's own sheet comes first");

    private final double length;
    private final double width;
    private final double pressure;
    private final double each;
    private final double caul;

    private GlueClamps(double length, double width, double pressure, double each, double caul, LengthStyle style) {
        super(FORM, style);
        this.length = length;
        this.width = width;
        this.pressure = pressure;
        this.each = each;
        this.caul = caul;
    }

    /**
     * {@return the clamps of a neck's fingerboard, glued from the nut to the body joint}
     *
     * @param neck with scale and fingerboard
     */
    public static GlueClamps of(Neck neck) {
        double joint = Objects.requireNonNull(neck, "neck").bodyJointMm();
        double mean = neck.halfWidthAtMm(0) + neck.halfWidthAtMm(joint);
        return new GlueClamps(joint, mean, USUAL_PRESSURE_MPA, Double.NaN, Double.NaN, neck.style());
    }

    /**
     * {@return a copy with another pressure on the joint} Default: 0.7 MPa.
     *
     * @param onJoint more than 0
     */
    public GlueClamps pressure(Quantity<Pressure> onJoint) {
        double mpa = LibraryUnits.positive(onJoint, ShopUnit.MEGAPASCAL, "pressure");
        return new GlueClamps(length, width, mpa, each, caul, style());
    }

    /**
     * {@return a copy with the force of one clamp}
     *
     * @param force more than 0
     */
    public GlueClamps each(Quantity<Force> force) {
        double newton = LibraryUnits.positive(force, ShopUnit.NEWTON, "force of a clamp");
        return new GlueClamps(length, width, pressure, newton, caul, style());
    }

    /**
     * {@return a copy under a caul}
     *
     * @param thickness of the caul, more than 0
     */
    public GlueClamps caul(Quantity<Length> thickness) {
        double mm = LibraryUnits.mmPositive(thickness, "caul's thickness");
        return new GlueClamps(length, width, pressure, each, mm, style());
    }

    /** {@return the force of all clamps; more than 0} */
    public Amount<Force> force() {
        return Amount.ofLibrary(newton(), ShopUnit.NEWTON);
    }

    /** {@return how many clamps, by force and by their distance under the caul; nothing without the force of one} */
    public OptionalInt count() {
        if (Double.isNaN(each)) {
            return OptionalInt.empty();
        }
        double by = Double.isNaN(caul) ? 1 : length / (2 * caul);
        return OptionalInt.of((int) Math.ceil(Math.max(newton() / each, by) - ROUNDING));
    }

    private double newton() {
        return pressure * length * width;
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {length, width, pressure, each, caul};
    }
}
