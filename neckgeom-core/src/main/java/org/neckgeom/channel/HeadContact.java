package org.neckgeom.channel;

import org.neckgeom.kernel.HeadPlanes;
import org.neckgeom.neck.Head;
import org.neckgeom.shape.Point;

/**
 * The real contacts of a neck with fence or table when its head is in the way. All lengths in
 * mm, angles in rad; x from the nut, positive toward the body.
 */
final class HeadContact {

    private HeadContact() {}

    /** Places of a corner in what {@link #side} returns: station and how far it is proud, first by the nut, then at the tip. */
    static final int NUT_X = 0;

    static final int NUT_PROUD = 1;
    static final int TIP_X = 2;
    static final int TIP_PROUD = 3;

    /**
     * Both corners of the side of a head that is on the fence, placed in space: its face falls by the head angle, its axis is swung
     * in plan. The side is straight between them.
     *
     * @param atNut width of the head at the nut line; at the tip it is the head's own
     * @param swing angle between head and shaft in plan, positive toward the fence
     * @param edge distance of the shaft's edge, or of the strip on it, from the shaft's middle
     * @return the corner by the nut and the tip's, each its station and how far it is proud of the edge, below 0 inside it
     */
    static double[] side(Head head, double atNut, double swing, double edge) {
        double[] nut = corner(head, 0, atNut / 2, swing);
        double[] tip = corner(head, head.lengthMm(), head.widthMm() / 2, swing);
        return new double[] {nut[0], nut[1] - edge, tip[0], tip[1] - edge};
    }

    /** Station, and distance from the shaft's middle, of a corner so far along the face and beside the head's middle. */
    private static double[] corner(Head head, double along, double aside, double swing) {
        Point at = HeadPlanes.of(head.angleRad(), 0, swing, head.thicknessMm()).at(along, aside, 0);
        return new double[] {at.xMm(), at.yMm()};
    }

    /** The station of what is farthest before the nut: the tip, of a swung head one corner of it. */
    static double tipX(Head head) {
        return corner(head, head.lengthMm(), head.widthMm() / 2, -Math.abs(head.swingRad()))[0];
    }

    /** How far the tip's face is above the table, the glue face down. */
    static double tipHeight(Head head) {
        return head.lengthMm() * StrictMath.sin(head.angleRad());
    }

    /** The station at which a block of this height, lower than the tip, meets the sloping face of the head. */
    static double meetsFaceX(Head head, double height) {
        return -height / StrictMath.tan(head.angleRad());
    }

    /** Height of a veneer's edge on an angled head above the plane of the glue face. */
    static double veneerHeight(double thickness, double pitch, double shortOfNut) {
        return Math.max(0, thickness * StrictMath.cos(pitch) - shortOfNut * StrictMath.sin(pitch));
    }

    /** How far in front of the nut that edge lies. */
    static double veneerReach(double thickness, double pitch, double shortOfNut) {
        return shortOfNut * StrictMath.cos(pitch) + thickness * StrictMath.sin(pitch);
    }

    /** How much too shallow the slot is at x when the neck rests on that edge and on its far end. */
    static double shallow(double x, double height, double reach, double farContact) {
        return Math.max(0, height * (farContact - x) / (farContact + reach));
    }
}
