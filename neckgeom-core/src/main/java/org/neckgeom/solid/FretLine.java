package org.neckgeom.solid;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shape.Spot;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * A fret's line on the fingerboard, from its bass edge to its treble edge, square or fanned. Immutable.
 *
 * <p>It ends on both edges of the board, where {@link org.neckgeom.board.FannedFrets} has it. Its two ends differ, so its length is not the width where it crosses the
 * centreline. Exact. Fret 0 is the nut line.
 */
public final class FretLine extends ValueAnswer {

    private static final Form<FretLine> FORM = Form.<FretLine>of("fret-line")
            .fact("fret", Kind.WHOLE, "0: the nut line", f -> f.fret)
            .fact("crossing", Kind.MM, "of the centreline, from the nut", f -> f.crossing)
            .fact("slant", Kind.RAD, "positive: treble end nearer the body", f -> f.slantRad())
            .fact("bassX", Kind.MM, "of the bass end, from the nut", f -> f.bass.uMm())
            .fact("bassY", Kind.MM, "of the bass end, from the centreline", f -> f.bass.vMm())
            .fact("trebleX", Kind.MM, "of the treble end, from the nut", f -> f.treble.uMm())
            .fact("trebleY", Kind.MM, "of the treble end, from the centreline", f -> f.treble.vMm())
            .fact("length", Kind.MM, "from edge to edge", f -> f.bass.distanceMm(f.treble))
            .finds("fret", "Fret {fret}: {crossing:text} from the nut, {length:text} long")
            .line("ends", "ends", "bass {bassX:text}, treble {trebleX:text} from the nut");

    private final int fret;
    private final double crossing;
    private final Spot bass;
    private final Spot treble;

    FretLine(int fret, double crossing, Spot bass, Spot treble, LengthStyle style) {
        super(FORM, style);
        this.fret = fret;
        this.crossing = crossing;
        this.bass = bass;
        this.treble = treble;
    }

    /** {@return the fret's number; 0 for the nut line} */
    public int fret() {
        return fret;
    }

    /** {@return where it crosses the centreline; x} */
    public Amount<Length> crossing() {
        return style().amount(crossing);
    }

    /** {@return its angle from square to the centreline, positive when its treble end lies nearer the body} */
    public Amount<Angle> slant() {
        return Amount.ofLibrary(slantRad(), ShopUnit.DEGREE);
    }

    private double slantRad() {
        return StrictMath.atan2(treble.uMm() - bass.uMm(), treble.vMm() - bass.vMm()) + 0.0;
    }

    /** {@return its bass end: x and y} */
    public Spot bass() {
        return bass;
    }

    /** {@return its treble end: x and y} */
    public Spot treble() {
        return treble;
    }

    /** {@return its length from edge to edge; more than 0} */
    public Amount<Length> length() {
        return style().amount(bass.distanceMm(treble));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {fret, crossing, bass, treble};
    }
}
