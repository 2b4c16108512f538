package org.neckgeom.channel;

import java.util.Arrays;

/** Splits a depth into equal passes and an optional light last one. */
final class PassSteps {

    // A depth that is a whole number of steps on paper must not gain a pass from rounding noise.
    private static final double SLACK = 1e-9;

    private PassSteps() {}

    /**
     * Returns the depth of each pass in order: the fewest equal passes of at most {@code most}, then
     * the last pass if it is more than 0.
     *
     * @param depth the whole depth in mm, more than 0
     * @param most the deepest pass allowed in mm, more than 0
     * @param last the light last pass in mm, 0 for none, below depth
     */
    static double[] of(double depth, double most, double last) {
        double rough = depth - last;
        int equal = Math.max(1, (int) Math.ceil(rough / most * (1 - SLACK)));
        double[] steps = new double[last > 0 ? equal + 1 : equal];
        Arrays.fill(steps, 0, equal, rough / equal);
        if (last > 0) {
            steps[equal] = last;
        }
        return steps;
    }
}
