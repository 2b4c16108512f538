package org.neckgeom.channel;

import java.util.Objects;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * What to do next at the fence, such as {@code cut the neck: 96.1 % chance of being within 0.05 mm}. Immutable.
 */
public final class NextStep implements SaysLengths<NextStep> {

    /** The four things there are to do. */
    public enum Kind {
        /** Good enough: stop setting and cut the neck. */
        CUT,
        /** Move the fence by the estimate. */
        MOVE,
        /** Read another trial cut before moving again. */
        READ_AGAIN,
        /** Neither moves nor readings of this kind will do it: a finer fence or calliper, or a wider limit. */
        FINER_MEANS
    }

    private final Kind kind;
    private final boolean consistent;
    private final FenceMove move;
    private final double now;
    private final double afterMove;
    private final double best;
    private final double limitMm;
    private final LengthStyle style;

    NextStep(
            Kind kind,
            boolean consistent,
            FenceMove move,
            double now,
            double afterMove,
            double best,
            double limitMm,
            LengthStyle style) {
        this.kind = kind;
        this.consistent = consistent;
        this.move = move;
        this.now = now;
        this.afterMove = afterMove;
        this.best = best;
        this.limitMm = limitMm;
        this.style = style;
    }

    /**
     * Returns what to do.
     *
     * @return the kind of step
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Returns the move the estimate asks for, whether or not it is the step to take.
     *
     * @return the move
     */
    public FenceMove move() {
        return move;
    }

    /**
     * Returns the chance of being within the limit as things are.
     *
     * @return a ratio in [0, 1]
     */
    public double chanceNow() {
        return now;
    }

    /**
     * Returns the chance of being within the limit after one more move.
     *
     * @return a ratio in [0, 1]
     */
    public double chanceAfterMove() {
        return afterMove;
    }

    /**
     * Returns the chance after a move made on readings without any error: no number of readings gets beyond it.
     *
     * @return a ratio in [0, 1]
     */
    public double bestChance() {
        return best;
    }

    @Override
    public NextStep in(LengthStyle other) {
        return new NextStep(kind, consistent, move.in(other), now, afterMove, best, limitMm, other);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof NextStep that
                && kind == that.kind
                && consistent == that.consistent
                && move.equals(that.move)
                && Double.compare(now, that.now) == 0
                && Double.compare(afterMove, that.afterMove) == 0
                && Double.compare(best, that.best) == 0
                && Double.compare(limitMm, that.limitMm) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, consistent, move, now, afterMove, best, limitMm);
    }

    /** Returns the step and its reason, such as {@code cut the neck: 96.1 % chance of being within 0.05 mm}. */
    @Override
    public String toString() {
        if (!consistent) {
            return "read another trial cut and start the rounds anew from it: readings and moves contradict each other";
        }
        String limit = style.brief(limitMm);
        String present = Numbers.percent(now) + " chance of being within " + limit;
        return switch (kind) {
            case CUT -> "cut the neck: " + present;
            case MOVE ->
                "move the " + move + ": " + Numbers.percent(afterMove) + " chance of being within " + limit
                        + " then, now " + Numbers.percent(now);
            case READ_AGAIN ->
                "read another trial cut: " + present + ", and a move now would make it " + Numbers.percent(afterMove);
            case FINER_MEANS ->
                "a finer fence or a wider limit: " + present + ", and moves as coarse as these reach "
                        + Numbers.percent(best) + " at best";
        };
    }
}
