package org.neckgeom.channel;

import java.util.Objects;

/**
 * A second pass in a slot that is begun: which one of its walls it cuts, and whether the cut climbs.
 *
 * <p>It holds for a fence toward which the cut pulls the work, as the caution {@code CLIMB_FEED} has it; to be confirmed by the
 * machine's instructions. The cut at the wall away from the fence goes against the cutter's turn; the one at the wall by the fence goes
 * with it, throws the work and is never made by hand.
 */
public enum SecondPass {
    /** The same edge on the fence, the fence set farther from the cutter. */
    FENCE_AWAY(false),
    /** The same edge on the fence, the fence set nearer the cutter. */
    FENCE_TOWARD(true),
    /** The fence as it is, the work turned end for end, its slot too far from the fence: it widens by twice the offset. */
    TURNED_TOO_FAR(false),
    /** The same with the slot too near the fence. */
    TURNED_TOO_NEAR(true);

    private final boolean climb;

    SecondPass(boolean climb) {
        this.climb = climb;
    }

    /**
     * {@return the pass with the work turned end for end, the fence as it is; by which side the slot lies on}
     *
     * @param offset of the slot that is there
     */
    public static SecondPass turned(SlotOffset offset) {
        return Objects.requireNonNull(offset, "offset").amountMm() < 0 ? TURNED_TOO_NEAR : TURNED_TOO_FAR;
    }

    /** {@return whether it climbs: the wall at the fence is cut, with the cutter's turn, which is never done by hand} */
    public boolean isClimb() {
        return climb;
    }

    /** Returns which wall is cut and how, such as {@code the far wall is cut, against the cutter's turn}. */
    @Override
    public String toString() {
        return climb
                ? "the wall at the fence is cut, a climb cut: never by hand"
                : "the far wall is cut, against the cutter's turn";
    }
}
