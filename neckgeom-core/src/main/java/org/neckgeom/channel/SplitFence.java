package org.neckgeom.channel;

/**
 * What a split fence does whose halves are out of line: the way a straight edge rides over the step.
 *
 * <p>The edge is pressed home at the cutter, midway in the gap, and may touch the near half only
 * short of the gap and the far half only beyond it. Lengths in mm.
 */
final class SplitFence {

    private SplitFence() {}

    /**
     * How far the slot lies from where a straight fence would put it, positive too far from the fence.
     *
     * @param along where the cutter is, from the leading end of the piece
     * @param length the piece's length
     * @param halfGap half the gap between the fence's halves
     * @param proud how far the outgoing half stands proud of the incoming one, below 0 when it lies back
     */
    static double shift(double along, double length, double halfGap, double proud) {
        double left = length - along;
        if (left < halfGap) {
            return -proud;
        }
        if (along < halfGap) {
            return 0;
        }
        // Standing out, the far half's corner lifts an edge that still trails on the near half; lying
        // back, it lets the leading end drop over the near half's corner.
        return proud > 0 ? -proud * left / (halfGap + left) : -proud * halfGap / (halfGap + along);
    }
}
