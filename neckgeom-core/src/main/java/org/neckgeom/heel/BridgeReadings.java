package org.neckgeom.heel;

import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The readings of a straightedge at the bridge (projection), such as 0.587 mm of air over the bridge from the frets.
 * Immutable.
 *
 * <p>Both are read where the string meets the saddle, square to the body's reference plane: from the frets over the
 * bridge's top without its saddle, and from the bare glue face over the top itself, before the fingerboard is on.
 * Exact.
 */
public final class BridgeReadings extends ValueAnswer {

    private static final Form<BridgeReadings> FORM = Form.<BridgeReadings>of("bridge-readings")
            .fact("airOverBridge", Kind.MM, "under a straightedge on the frets; negative: it strikes", r -> r.air)
            .finds("bridge-readings", "Straightedge at the bridge")
            .line(
                    "airOverBridge",
                    "on the frets",
                    r -> r.air < 0,
                    "strikes the bridge {airOverBridge:size text} under its top")
            .line("airOverBridge", "on the frets", r -> !(r.air < 0), "{airOverBridge:text} over the bridge's top")
            .fact("bareFaceOverTop", Kind.MM, "of a straightedge; negative: it strikes", r -> r.bareFace)
            .line("bareFaceOverTop", "on the bare face", "{bareFaceOverTop:text} over the body's top");

    private final double air;
    private final double bareFace;

    private BridgeReadings(double air, double bareFace, LengthStyle style) {
        super(FORM, style);
        this.air = air + 0.0;
        this.bareFace = bareFace + 0.0;
    }

    static BridgeReadings ofMm(double air, double bareFace, LengthStyle style) {
        return new BridgeReadings(air, bareFace, style);
    }

    /**
     * {@return the air between a straightedge on the frets and the bridge's top; negative when it strikes the bridge}
     */
    public Amount<Length> airOverBridge() {
        return style().amount(air);
    }

    /**
     * {@return the height of a straightedge on the bare glue face over the body's top; negative when the neck's face
     * runs into the top}
     */
    public Amount<Length> bareFaceOverTop() {
        return style().amount(bareFace);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {air, bareFace};
    }
}
