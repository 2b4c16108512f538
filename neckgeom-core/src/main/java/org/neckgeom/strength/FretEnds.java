package org.neckgeom.strength;

import javax.measure.quantity.Length;
import org.neckgeom.measure.Interval;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * Fret ends against the edges of a fingerboard that moved, such as {@code 0.27 mm proud on each side}: positive when the
 * ends stand out, negative when they sink in. Immutable.
 *
 * <p>Half the change of the board's width, with the other sign; the metal keeps its length. Estimate, as the change is.
 */
public final class FretEnds implements SaysLengths<FretEnds> {

    private final SizeChange board;

    private FretEnds(SizeChange board) {
        this.board = board;
    }

    static FretEnds of(SizeChange board) {
        return new FretEnds(board);
    }

    /**
     * Returns the same for a quartersawn fingerboard.
     *
     * @return with the rings known
     */
    public FretEnds quartersawn() {
        return new FretEnds(board.quartersawn());
    }

    /**
     * Returns the same for a flatsawn fingerboard.
     *
     * @return with the rings known
     */
    public FretEnds flatsawn() {
        return new FretEnds(board.flatsawn());
    }

    /**
     * Returns the change of the board's width.
     *
     * @return the change
     */
    public SizeChange board() {
        return board;
    }

    /**
     * Returns how far the fret ends stand proud of each edge.
     *
     * @return positive when they stand out, negative when they sink in
     */
    public Amount<Length> proud() {
        return board.style().amount(proudMm());
    }

    /**
     * Returns how far the fret ends stand proud of each edge.
     *
     * @return in mm, positive when they stand out, negative when they sink in
     */
    public double proudMm() {
        return -board.changeMm() / 2 + 0.0;
    }

    /**
     * Returns the interval of how far the fret ends stand proud.
     *
     * @return where it lies in 95 of 100 boards
     */
    public Interval<Length> interval() {
        return likely().interval();
    }

    Likely<Length> likely() {
        return board.likely().times(-0.5);
    }

    @Override
    public FretEnds in(LengthStyle other) {
        return new FretEnds(board.in(other));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof FretEnds other && board.equals(other.board);
    }

    @Override
    public int hashCode() {
        return board.hashCode();
    }

    /** How far the ends stand out or sink in, with the word for it. */
    String sideText() {
        return proudMm() < 0 ? likely().times(-1) + " sunk in" : likely() + " proud";
    }

    /** Returns how far the ends stand out or sink in, then the change of the board. */
    @Override
    public String toString() {
        double proud = proudMm();
        String word = proud > 0 ? "stand proud" : proud < 0 ? "sink in" : "stay flush";
        return Report.titled("Fret ends: " + word)
                .row("on each side", sideText())
                .row(
                        "board",
                        board.likely() + " on "
                                + board.style().brief(board.before().house()) + ", "
                                + board.wood().name())
                .row("rings", board.rings())
                .note("Estimate: fret ends dressed flush before, board free to move.")
                .toString();
    }
}
