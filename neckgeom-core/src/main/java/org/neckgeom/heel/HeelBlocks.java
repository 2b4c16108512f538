package org.neckgeom.heel;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * Heel blocks ({@index "stacked heel"}, laminated heel): the height of the heel and the blocks glued for it, such as 94.2 mm
 * from four blocks of 20 mm under a 20 mm shaft. Immutable.
 *
 * <p>The mating face runs from the glue face down to the cap, level with the body's back. With D the body's depth at
 * the joint, o the overstand: the glue face above the top there, t the neck's angle (head back positive) and l the lean
 * of the body's end from square (positive when it runs in toward the bridge as it goes down):
 *
 * <pre>
 * mating face   (D + o) / cos l
 * heel height   (D + o) cos(t - l) / cos l, square to the glue face, which is how the blocks are stacked
 * blocks        (heel height - shaft) / block thickness, rounded up
 * </pre>
 *
 * Exact. A square end gives {@code (D + o) cos t}; an end that leans with the neck gives {@code (D + o) / cos t}.
 */
public final class HeelBlocks extends ValueAnswer {

    private static final Form<HeelBlocks> FORM = Form.<HeelBlocks>of("heel-blocks")
            .fact("blocks", Kind.WHOLE, "how many are stacked under the shaft", HeelBlocks::count)
            .fact("blockThickness", Kind.MM, "of each", h -> h.block)
            .fact("shaft", Kind.MM, "thickness of its wood over the blocks", h -> h.shaft)
            .phrase("last", h -> h.count() > 0, "last block")
            .phrase("last", "shaft")
            .finds(
                    "stacked",
                    h -> h.count() > 0,
                    "Heel: {blocks:of block/blocks} of {blockThickness:brief} under the shaft")
            .finds("no-block", "Heel: no block, the shaft's wood is {shaft:brief} deep")
            .fact("height", Kind.MM, "of the heel, square to the glue face", HeelBlocks::heightMm)
            .line("height", "height", "{height:text} square to the glue face")
            .fact("matingFace", Kind.MM, "from the glue face to the cap", HeelBlocks::matingFaceMm)
            .line("matingFace", "mating face", "{matingFace:text}")
            .fact("trim", Kind.MM, "wood to trim off", HeelBlocks::trimMm)
            .line("trim", "off the {last}", "{trim:text}");

    private static final double HAIR = 1e-9;

    private final double depth;
    private final double overstand;
    private final double angle;
    private final double lean;
    private final double shaft;
    private final double block;

    private HeelBlocks(
            double depth, double overstand, double angle, double lean, double shaft, double block, LengthStyle style) {
        super(FORM, style);
        this.depth = depth;
        this.overstand = overstand;
        this.angle = angle;
        this.lean = lean;
        this.shaft = shaft;
        this.block = block;
    }

    /**
     * {@return the heel for a body end square to its top, in line with the neck and level with the top, its blocks as
     * thick as the shaft}
     *
     * @param bodyDepth at the joint, top to back, more than 0
     * @param shaft thickness of the shaft's wood over the blocks, more than 0
     */
    public static HeelBlocks of(Quantity<Length> bodyDepth, Quantity<Length> shaft) {
        double t = LibraryUnits.mmPositive(shaft, "shaft thickness");
        return new HeelBlocks(
                LibraryUnits.mmPositive(bodyDepth, "body depth"), 0, 0, 0, t, t, LengthStyle.of(bodyDepth));
    }

    /**
     * {@return a copy with an overstand: its glue face is above the body's top, or below it where the board is let in}
     *
     * @param height of the glue face over the top at the joint, less deep below it than the body
     */
    public HeelBlocks overstand(Quantity<Length> height) {
        double mm = LibraryUnits.mm(height, "overstand");
        if (!(mm > -depth)) {
            throw LibraryUnits.refused(
                    "overstand", "more-than", "more than " + style().brief(-depth) + ", the body's depth", height);
        }
        return new HeelBlocks(depth, mm, angle, lean, shaft, block, style());
    }

    /**
     * {@return a copy at a neck angle}
     *
     * @param neckAngle positive with the head back, under 20 deg either way
     */
    public HeelBlocks at(Quantity<Angle> neckAngle) {
        double rad = LibraryUnits.radBetween(neckAngle, -20, 20, "neck angle");
        return new HeelBlocks(depth, overstand, rad, lean, shaft, block, style());
    }

    /**
     * {@return a copy for a body end that leans}
     *
     * @param fromSquare under 20 deg either way; positive when the end runs in toward the bridge as it goes down
     */
    public HeelBlocks leaning(Quantity<Angle> fromSquare) {
        double rad = LibraryUnits.radBetween(fromSquare, -20, 20, "lean of the body's end");
        return new HeelBlocks(depth, overstand, angle, rad, shaft, block, style());
    }

    /**
     * {@return a copy with blocks of their own thickness, as they are planed for gluing}
     *
     * @param thickness more than 0
     */
    public HeelBlocks blocks(Quantity<Length> thickness) {
        return new HeelBlocks(
                depth, overstand, angle, lean, shaft, LibraryUnits.mmPositive(thickness, "block thickness"), style());
    }

    /** {@return the heel's height square to the glue face; more than 0} */
    public Amount<Length> height() {
        return style().amount(heightMm());
    }

    /** {@return the length of the mating face from the glue face to the cap; more than 0} */
    public Amount<Length> matingFace() {
        return style().amount(matingFaceMm());
    }

    private double matingFaceMm() {
        return (depth + overstand) / StrictMath.cos(lean);
    }

    /** {@return how many blocks are stacked under the shaft; 0 or more} */
    public int count() {
        return (int) Math.max(0, Math.ceil((heightMm() - shaft) / block - HAIR));
    }

    /** {@return what is trimmed off the last block; 0 or more} */
    public Amount<Length> trim() {
        return style().amount(trimMm());
    }

    private double trimMm() {
        return Math.max(0, shaft + count() * block - heightMm());
    }

    private double heightMm() {
        return (depth + overstand) * StrictMath.cos(angle - lean) / StrictMath.cos(lean);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {depth, overstand, angle, lean, shaft, block};
    }
}
