package org.neckgeom.kernel;

import org.neckgeom.shape.Curve;
import org.neckgeom.shape.Direction;
import org.neckgeom.shape.Frame;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;

/**
 * Where the head lies. Its face holds the nut line {@code x = y tan s} and falls by the head angle a along the centreline:
 * {@code z = tan a (x - y tan s)}. With d the angle between the faces square to the nut line, {@code tan d = tan a / cos s},
 * the face's normal is {@code (-sin d cos s, sin d sin s, cos d)}.
 *
 * <p>The swing g is measured in plan, positive toward the treble side; in the face the angle between the head's axis and
 * the centreline's is then psi, {@code tan psi = cos a tan g} behind a square nut.
 *
 * @param pitch a in rad
 * @param slant s in rad, positive when the nut's treble end lies nearer the body
 * @param face the wood's face, without veneer
 * @param frame axes along the head toward the body, across toward the treble side and out of the face
 * @param thickness of the wood in mm
 */
public record HeadPlanes(double pitch, double slant, Plane face, Frame frame, double thickness) {

    public static HeadPlanes of(double a, double s, double g, double thickness) {
        double d = dihedral(a, s);
        Direction normal = new Direction(
                -StrictMath.sin(d) * StrictMath.cos(s), StrictMath.sin(d) * StrictMath.sin(s), StrictMath.cos(d));
        double cosG = StrictMath.cos(g);
        double sinG = StrictMath.sin(g);
        Direction axis = new Direction(-cosG, sinG, -StrictMath.tan(a) * (cosG + sinG * StrictMath.tan(s)));
        Direction back = axis.opposite();
        Frame frame = new Frame(Point.ORIGIN, back, normal.cross(back), normal);
        return new HeadPlanes(a, s, new Plane(normal, 0), frame, thickness);
    }

    /** The neck's own axis in the face, {@code (-cos a, 0, -sin a)}, in the head's coordinates: along the head and across it. */
    public Spot neckAxis() {
        Point on = frame.toHere(new Point(-StrictMath.cos(pitch), 0, -StrictMath.sin(pitch)));
        return new Spot(-on.xMm(), on.yMm());
    }

    /** Angle in the face from the neck's axis to the head's, positive toward the treble side, in rad. */
    public double swingInFace() {
        return StrictMath.atan2(-neckAxis().vMm(), neckAxis().uMm()) + 0.0;
    }

    /** Angle between the head's face and the glue face, square to a nut line slanted by s: {@code atan(tan a / cos s)}. */
    public static double dihedral(double a, double s) {
        return StrictMath.atan(StrictMath.tan(a) / StrictMath.cos(s));
    }

    /** The head's back, its wood above it. */
    public Plane back() {
        return new Plane(face.normal().opposite(), thickness);
    }

    /** Depth of the head's back below the glue face along the centreline: {@code t / cos d - x tan a}. */
    public Curve backDepth() {
        return Curve.straight(0, thickness / face.normal().z(), -StrictMath.tan(pitch));
    }

    /** The nut line in the face, across the head's own axis: along = slope x across, both in the head's coordinates. */
    public double nutLine() {
        Point on = frame.toHere(new Point(StrictMath.tan(slant), 1, 0));
        return on.xMm() / on.yMm();
    }

    /**
     * A point of the head.
     *
     * @param along from the nut line's middle toward the tip, on the head's axis
     * @param across from that axis, positive toward the treble side
     * @param above the wood's face, negative below it
     */
    public Point at(double along, double across, double above) {
        return frame.toNeck(new Point(-along, across, above));
    }
}
