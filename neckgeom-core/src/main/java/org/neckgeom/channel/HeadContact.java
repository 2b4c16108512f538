package org.neckgeom.channel;

/**
 * Where a neck really touches the fence or the table when its head stands in the way. All lengths in
 * mm, angles in rad; x from the nut, positive toward the body.
 */
final class HeadContact {

    private HeadContact() {}

    /**
     * How far the tip's corner stands proud of the shaft's edge, below 0 when it stays inside.
     *
     * @param swing angle between head and shaft in plan, positive toward the fence
     * @param planLength length of the head in plan: a pitched head is foreshortened by the cosine of its pitch
     * @param tipWidth width of the head at its tip
     * @param shaftWidth width of the shaft
     */
    static double proud(double swing, double planLength, double tipWidth, double shaftWidth) {
        return planLength * StrictMath.sin(swing) + tipWidth / 2 * StrictMath.cos(swing) - shaftWidth / 2;
    }

    /** How far in front of the nut that corner lies. */
    static double cornerReach(double swing, double planLength, double tipWidth) {
        return planLength * StrictMath.cos(swing) - tipWidth / 2 * StrictMath.sin(swing);
    }

    /**
     * The tangent of the angle between shaft and fence while station x is at the cutter.
     *
     * <p>The neck rides on the head's corner in front and on the shaft's far end behind. Where the
     * fence ends before the far end of the shaft, the fence's own end is the contact behind; where it
     * ends before the corner, the head's side, straight from the nut to the corner, runs back over the
     * fence's end until the neck lies straight.
     *
     * @param x station at the cutter
     * @param proud what stands out at the corner, 0 or less for nothing
     * @param reach how far in front of the nut the corner is, more than 0
     * @param shaftLength the shaft's far end, behind the nut
     * @param half length of fence on each side of the cutter
     */
    static double tangent(double x, double proud, double reach, double shaftLength, double half) {
        double front = Math.min(reach, half - x);
        if (!(proud > 0 && front > 0)) {
            return 0;
        }
        return proud * front / reach / (rearContact(x, shaftLength, half) + front);
    }

    /** How far the slot lies nearer the fence-side edge than it should at station x, 0 or more. */
    static double shift(double x, double proud, double reach, double shaftLength, double half) {
        return (rearContact(x, shaftLength, half) - x) * tangent(x, proud, reach, shaftLength, half);
    }

    private static double rearContact(double x, double shaftLength, double half) {
        return Math.min(shaftLength, x + half);
    }

    /** How far a veneer's edge on a pitched head stands above the plane of the glue face. */
    static double veneerHeight(double thickness, double pitch, double shortOfNut) {
        return Math.max(0, thickness * StrictMath.cos(pitch) - shortOfNut * StrictMath.sin(pitch));
    }

    /** How far in front of the nut that edge lies. */
    static double veneerReach(double thickness, double pitch, double shortOfNut) {
        return shortOfNut * StrictMath.cos(pitch) + thickness * StrictMath.sin(pitch);
    }

    /** How much too shallow the slot is at x when the neck stands on that edge and on its far end. */
    static double shallow(double x, double height, double reach, double farContact) {
        return Math.max(0, height * (farContact - x) / (farContact + reach));
    }
}
