package org.neckgeom.plan;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * One step at the machine: a trial cut that was read, or a fence move, such as {@code fence moved 0.7 mm toward the
 * cutter}. Immutable.
 */
public final class CentringStep implements SaysLengths<CentringStep> {

    private final @Nullable TrialCut cut;
    private final double move;
    private final LengthStyle style;

    private CentringStep(@Nullable TrialCut cut, double move, LengthStyle style) {
        this.cut = cut;
        this.move = move;
        this.style = style;
    }

    /**
     * Returns a trial cut that was read.
     *
     * @param cut the readings
     * @return the step
     */
    public static CentringStep read(TrialCut cut) {
        return new CentringStep(Objects.requireNonNull(cut, "trial cut"), 0, cut.style());
    }

    /**
     * Returns a fence move.
     *
     * @param towardTheCutter how far; negative when it went away from the cutter
     * @return the step
     */
    public static CentringStep moved(Quantity<Length> towardTheCutter) {
        return new CentringStep(null, HouseUnits.mm(towardTheCutter, "fence move"), LengthStyle.of(towardTheCutter));
    }

    /**
     * Returns the trial cut.
     *
     * @return the readings, or nothing for a move
     */
    public Optional<TrialCut> cut() {
        return Optional.ofNullable(cut);
    }

    /**
     * Returns the move in mm.
     *
     * @return positive toward the cutter; 0 for a cut
     */
    public double moveMm() {
        return move;
    }

    /**
     * Returns the style the step is printed in.
     *
     * @return the style
     */
    public LengthStyle style() {
        return style;
    }

    @Override
    public CentringStep in(LengthStyle other) {
        return new CentringStep(cut == null ? null : cut.in(other), move, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof CentringStep other
                && Objects.equals(cut, other.cut)
                && Double.compare(move, other.move) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(cut, move);
    }

    /** Returns the readings, or how far the fence was moved which way. */
    @Override
    public String toString() {
        return cut != null
                ? cut.toString()
                : "fence moved " + style.brief(Math.abs(move)) + (move < 0 ? " away from" : " toward") + " the cutter";
    }
}
