package org.neckgeom.board;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * The bend of fret wire (over-radius) against the crown of the board: how far the wire's middle lies off the board with its ends
 * down, before it is pressed in. Immutable.
 *
 * <p>With w the board's width at the fret, {@code gap = d(Rw) - d(Rb)}, {@code d(R) = R - sqrt(R^2 - w^2/4)}, near
 * {@code w^2/8 (1/Rw - 1/Rb)}. Exact for arcs. Positive: the ends bear first, as wanted; negative: the wire is too flat, its ends
 * are off the board. Wire 10 to 20 % tighter than the board is common practice.
 */
public final class FretBend extends ValueAnswer {

    private static final double TIGHTEST = 0.8;
    private static final double FLATTEST = 0.9;

    private static final Form<FretBend> FORM = Form.<FretBend>of("fret-bend")
            .fact("fret", Kind.WHOLE, "1 or more", b -> b.fret)
            .fact("wire", Kind.MM, "radius the wire is bent to", b -> b.wire)
            .fact("board", Kind.MM, "radius of the board; none: flat", b -> b.board)
            .fact("gap", Kind.MM, "of the middle, ends down; below 0: of the ends, middle down", FretBend::gapMm)
            .fact("tightest", Kind.MM, "radius of wire, common practice; none: flat board", b -> TIGHTEST * b.board)
            .fact("flattest", Kind.MM, "radius of wire, common practice; none: flat board", b -> FLATTEST * b.board)
            .finds(
                    "middle",
                    b -> b.gapMm() >= 0,
                    "Fret {fret}: wire bears at its ends, its middle {gap:text} off the board")
            .finds(
                    "ends",
                    "Fret {fret}: wire bears in its middle, its ends {gap:size text} off the board: bend it tighter")
            .line("wire", "wire", b -> Double.isInfinite(b.board), "radius {wire:brief} on a flat board")
            .line("radii", "wire", b -> !Double.isInfinite(b.board), "radius {wire:brief} on {board:brief}")
            .line(
                    "practice",
                    "common practice",
                    b -> !Double.isInfinite(b.board),
                    "radius {tightest:brief} to {flattest:brief}: 10 to 20 % tighter");

    private final int fret;
    private final double halfWidth;
    private final double board;
    private final double wire;

    private FretBend(Neck neck, int fret, double wire) {
        super(FORM, neck.style());
        double x = neck.scale().fretMm(fret);
        this.fret = fret;
        this.halfWidth = neck.halfWidthAtMm(x);
        this.board = neck.crownRadiusAtMm(x);
        this.wire = wire;
    }

    /**
     * {@return the bend of a wire at a fret}
     *
     * @param neck with scale, frets and fingerboard
     * @param fret from 1 to the last fret
     * @param wireRadius to which the wire is bent, more than half the board's width there
     */
    public static FretBend of(Neck neck, int fret, Quantity<Length> wireRadius) {
        Objects.requireNonNull(neck, "neck");
        if (fret < 1 || fret > neck.frets()) {
            throw Refusal.of("fret", "range", "be from 1 to " + neck.frets(), fret);
        }
        double wire = LibraryUnits.mmPositive(wireRadius, "wire's radius");
        double half = neck.halfWidthAtMm(neck.scale().fretMm(fret));
        if (!(wire > half)) {
            throw LibraryUnits.refused(
                    "wire's radius",
                    "more-than",
                    "more than half the board's width, " + neck.style().brief(half),
                    wireRadius);
        }
        return new FretBend(neck, fret, wire);
    }

    private double gapMm() {
        double drop = Double.isInfinite(board) ? 0 : NeckSetKernel.drop(board, halfWidth);
        return NeckSetKernel.drop(wire, halfWidth) - drop + 0.0;
    }

    /** {@return the gap under the wire's middle with its ends down; negative: under its ends with its middle down} */
    public Amount<Length> gap() {
        return style().amount(gapMm());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {fret, halfWidth, board, wire};
    }
}
