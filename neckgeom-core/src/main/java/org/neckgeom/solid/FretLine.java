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
 * <p>The line is {@code x = x0 + S y}; on the edges {@code y = -+(W/2 + k x)} it ends at {@code x = (x0 -+ S W/2) / (1 +- S
 * k)}, the upper sign on the bass side. Its two ends differ, so its length is not the width where it crosses the
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

    private FretLine(int fret, double crossing, Spot bass, Spot treble, LengthStyle style) {
        super(FORM, style);
        this.fret = fret;
        this.crossing = crossing;
        this.bass = bass;
        this.treble = treble;
    }

    /**
     * @param slope what x grows by per y
     * @param half half the board's width at the nut
     * @param growth what half the width grows by per x
     */
    static FretLine of(int fret, double crossing, double slope, double half, double growth, LengthStyle style) {
        double bass = (crossing - slope * half) / (1 + slope * growth);
        double treble = (crossing + slope * half) / (1 - slope * growth);
        return new FretLine(
                fret,
                crossing,
                new Spot(bass, -(half + growth * bass)),
                new Spot(treble, half + growth * treble),
                style);
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
