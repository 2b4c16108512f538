package org.neckgeom.heel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Heel;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * Height and side alignment corrected at once: what comes off at the four corners of the heel's mating face. Immutable.
 *
 * <p>The new face is a plane: at t below the top edge and y toward the treble cheek it takes off
 * {@code (change / S) t + (offset / S) y + c}, with c such that the least corner loses nothing. Taking both from one
 * plane keeps one correction from spoiling the other. Estimate: small turns, as {@link HeelWedge} and
 * {@link HeelCheek}.
 */
public final class HeelCorners extends ValueAnswer {

    private static final Form<HeelCorners> FORM = Form.<HeelCorners>of("heel-corners")
            .fact("topBass", Kind.MM, "off the top edge, 0 or more", c -> c.topBass)
            .fact("topTreble", Kind.MM, "off the top edge, 0 or more", c -> c.topTreble)
            .fact("capBass", Kind.MM, "off the cap, 0 or more", c -> c.capBass)
            .fact("capTreble", Kind.MM, "off the cap, 0 or more", c -> c.capTreble)
            .phrase("length", c -> c.shortening < 0, "longer")
            .phrase("length", "shorter")
            .finds("corners", "Heel correction, off the mating face")
            .line("topEdge", "top edge", "bass {topBass:text}, treble {topTreble:text}")
            .line("cap", "cap", "bass {capBass:text}, treble {capTreble:text}")
            .fact("shortening", Kind.MM, "of the speaking length", c -> c.shortening)
            .line("shortening", "strings", "{shortening:size text} {length}")
            .note("one-plane", "one plane through the four corners; read height and centreline again after each pass")
            .note("estimate", "estimate: lever rule for a small turn");

    private final double topBass;
    private final double topTreble;
    private final double capBass;
    private final double capTreble;
    private final double shortening;

    private HeelCorners(
            double topBass, double topTreble, double capBass, double capTreble, double shortening, LengthStyle style) {
        super(FORM, style);
        this.topBass = topBass + 0.0;
        this.topTreble = topTreble + 0.0;
        this.capBass = capBass + 0.0;
        this.capTreble = capTreble + 0.0;
        this.shortening = shortening + 0.0;
    }

    static HeelCorners of(NeckAngle angle, Heel heel, Quantity<Length> change, Quantity<Length> offset) {
        double rise = LibraryUnits.mm(change, "change at the bridge");
        double pivot = rise > 0 ? 0 : Objects.requireNonNull(heel, "heel").heightMm();
        double tip = rise / angle.leverMm(pivot);
        double swing = LibraryUnits.mm(offset, "centreline at the bridge") / angle.reachMm();
        double top = swing * Objects.requireNonNull(heel, "heel").widthMm() / 2;
        double cap = swing * heel.capWidthMm() / 2;
        double down = tip * heel.heightMm();
        double least = Math.min(-Math.abs(top), down - Math.abs(cap));
        return new HeelCorners(
                -top - least,
                top - least,
                down - cap - least,
                down + cap - least,
                // The middle of the top edge loses -least; the fret plane above it leans on by its height.
                -least - tip * angle.planeMm(),
                angle.style());
    }

    /** {@return the cut at the top edge on the bass side; 0 or more} */
    public Amount<Length> topBass() {
        return style().amount(topBass);
    }

    /** {@return the cut at the top edge on the treble side; 0 or more} */
    public Amount<Length> topTreble() {
        return style().amount(topTreble);
    }

    /** {@return the cut at the cap on the bass side; 0 or more} */
    public Amount<Length> capBass() {
        return style().amount(capBass);
    }

    /** {@return the cut at the cap on the treble side; 0 or more} */
    public Amount<Length> capTreble() {
        return style().amount(capTreble);
    }

    /**
     * {@return how much nearer the bridge the frets come on the centreline, positive when the string's speaking length
     * shrinks}
     */
    public Amount<Length> shortening() {
        return style().amount(shortening);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {topBass, topTreble, capBass, capTreble, shortening};
    }
}
