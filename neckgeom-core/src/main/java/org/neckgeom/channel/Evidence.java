package org.neckgeom.channel;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The evidence in a record of trial cuts and fence moves. Lengths in mm. Immutable.
 *
 * @param state of the setting; null where no cut shows it yet
 * @param before the state before the last cut; null where it was the first
 * @param isRead whether the last step was a cut, so that it can be read again
 * @param readingsOfLastCut how many times the last cut has been read
 * @param isEachWallReadTwice whether each wall of the last cut was read more than once
 * @param cuts since the start, or since the fence was lost
 * @param isWarned whether the last cut closes with a warning
 * @param isPieceMissing whether the last cut has walls alone and is to be judged in a blank
 * @param readingVariance of the last cut's readings
 * @param biasVariance of what every reading shares and nothing cancels
 * @param contradiction what contradicts what; null where nothing does
 * @param lastClosure the check of the last cut's readings; null before the first
 * @param closures the check of each cut's readings, in the order of the record
 * @param leftOut what was left out, and why
 */
record Evidence(
        @Nullable SettingState state,
        @Nullable SettingState before,
        boolean isRead,
        int readingsOfLastCut,
        boolean isEachWallReadTwice,
        int cuts,
        boolean isWarned,
        boolean isPieceMissing,
        double readingVariance,
        double biasVariance,
        SlotVerdict.@Nullable Contradiction contradiction,
        @Nullable Closure lastClosure,
        List<Closure> closures,
        List<LeftOut> leftOut) {

    /** What was left out, and why. */
    enum LeftOut {
        MISREAD_CUT("a cut is left out until it is read again: its readings do not add up"),
        STEPS_BEFORE("two cuts agree that the fence is not where the moves put it: earlier steps are left out"),
        ODD_CUT("one cut is left out: the next one, the fence untouched, agrees with those before it");

        private final String sentence;

        LeftOut(String sentence) {
            this.sentence = sentence;
        }

        @Override
        public String toString() {
            return sentence;
        }
    }

    /** The decision's step where the record itself decides. */
    SlotStep step(SlotStep chosen) {
        if (contradiction == null) {
            return isPieceMissing ? SlotStep.MEASURE_PIECE : chosen;
        }
        return switch (contradiction) {
            case READINGS -> SlotStep.READ_AGAIN;
            case DIRECTION -> SlotStep.CHECK_MOVE;
            case SETTING -> readingsOfLastCut > 1 || isEachWallReadTwice ? SlotStep.TRIAL_CUT : SlotStep.READ_AGAIN;
            case FENCE_LOST -> SlotStep.CANNOT;
        };
    }
}
