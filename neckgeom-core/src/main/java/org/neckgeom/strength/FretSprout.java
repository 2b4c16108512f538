package org.neckgeom.strength;

import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.Amount;

/**
 * Fret sprout ({@index "sharp fret ends"}): fret ends against the edges of a fingerboard that moved, such as
 * {@code 0.27 mm proud on each side}: positive when the ends stand proud, negative when they sink in. Immutable.
 *
 * <p>Half the change of the board's width, with the other sign; the metal keeps its length. Estimate, as the change is.
 */
public final class FretSprout extends ValueAnswer {

    /** How far the ends stand out or sink in, with the word for it. */
    static final Kind<FretSprout> SIDE = Kind.answer(Form.<FretSprout>of("fret-end")
            .fact("proud", Likely.SIZE, "negative when the ends sink in", FretSprout::likely)
            .finds("sunk-in", ends -> ends.likely().value() < 0, "{proud} sunk in")
            .finds("proud", "{proud} proud"));

    private static final Form<FretSprout> FORM = Form.<FretSprout>of("fret-ends")
            .finds("proud", ends -> ends.likely().value() > 0, "Fret ends: stand proud")
            .finds("sunk-in", ends -> ends.likely().value() < 0, "Fret ends: sink in")
            .finds("flush", "Fret ends: stay flush")
            .row("eachSide", "on each side", SIDE, "ends against each edge", ends -> ends)
            .row("board", "board", SizeChange.IN_ROW, "change of its width", FretSprout::board)
            .row("rings", "rings", SizeChange.RINGS, "how the growth rings lie", FretSprout::board)
            .note("estimate", "Estimate: fret ends dressed flush before, board free to move.");

    private final SizeChange board;

    FretSprout(SizeChange board) {
        super(FORM, board.style());
        this.board = board;
    }

    /** {@return the same for a quartersawn fingerboard, with the rings known} */
    public FretSprout quartersawn() {
        return new FretSprout(board.quartersawn());
    }

    /** {@return the same for a flatsawn fingerboard, with the rings known} */
    public FretSprout flatsawn() {
        return new FretSprout(board.flatsawn());
    }

    /** {@return the change of the board's width} */
    public SizeChange board() {
        return board;
    }

    /** {@return how far the fret ends stand proud of each edge, negative when they sink in} */
    public Amount<Length> proud() {
        return likely().amount();
    }

    /** {@return the 95 % interval, over boards, of how far the fret ends stand proud} */
    public Interval<Length> interval() {
        return likely().interval();
    }

    Likely<Length> likely() {
        return board.likely().times(-0.5);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {board};
    }
}
