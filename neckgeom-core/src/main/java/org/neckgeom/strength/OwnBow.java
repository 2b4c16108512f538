package org.neckgeom.strength;

import org.jspecify.annotations.Nullable;

/**
 * The bow that a neck has of its own, without strings and rod, even along it, as it follows from relief that was read: with slack
 * strings, or at pitch before the rod was turned, of which the strings' part is taken off. The later reading decides.
 *
 * @param slackMm relief read with slack strings and rod, mm; 0 where it was not
 * @param turned rod turned, the relief before read at pitch with the rod slack; or null
 * @param from x of the end nearer the nut of the straightedge of both reliefs, mm
 * @param to x of its other end, mm
 */
record OwnBow(double slackMm, @Nullable RodTurned turned, double from, double to) {

    static OwnBow of(StiffnessReadings readings, double from, double to) {
        return new OwnBow(readings.reliefSlackMm(), readings.rod().orElse(null), from, to);
    }

    /** How many unknowns of its own its interval rests on: the error of the feeler at pitch. */
    int unknowns() {
        return turned == null ? 0 : 1;
    }

    boolean isReadAtPitch() {
        return turned != null;
    }

    /**
     * Its curvature, 1/mm, positive where the neck hangs.
     *
     * @param strung the neck's strings and the straightedge, wherever it lies
     * @param deviations of the relief read at pitch, in its standard uncertainties
     */
    double curvature(Straightedge strung, double deviations) {
        if (turned == null) {
            return 8 * slackMm / ((to - from) * (to - from));
        }
        return strung.between(from, to).curvatureFor(turned.beforeMm() + deviations * turned.reliefUncertaintyMm());
    }
}
